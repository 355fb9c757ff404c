#include "core/gas/ring.h"
#include "core/gas/supply.h"
#include "core/gas/wall_heat.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace lobewright::gas {
namespace {

constexpr double sameAngle = 1e-12;     ///< window angles closer than this are one [rad]
constexpr double negligibleSlug = 1e-9; ///< share of a charge below which no slug is left

} // namespace

void Ring::startWindow() {
    theta_ = 0.0;
    stretch_ = 0;
    if (h_ <= 0.0) {
        h_ = window_ / 500.0;
    }
    if (!neighbours_.none() && !steps_.begin.empty()) {
        neighbours_.remember(steps_, freshIntervals_);
    }
    neighbours_.startWindow();
    steps_.clear();
    modeChanges_.clear();
    freshIntervals_.clear();
    for (auto& row : records_) {
        std::fill(row.begin(), row.end(), CycleRecord{});
    }
    for (std::size_t k = 0; k < members_.size(); ++k) {
        Member& member = members_[k];
        member.offset = member.localStart;
        member.nextStop = stopAfter(member.localStart);
        member.lastEvent = -1.0;
        member.hintsStale = true;
        if (member.localStart - model_->start < sameAngle) {
            member.memory.cycle = 0;
            beginCycle(k);
        }
        startCounting(k);
    }
    if (hasPlenum()) {
        for (const int variable : {blowerWork, pressureSum, temperatureSum}) {
            y_[plenumOffset_ + static_cast<std::size_t>(variable)] = 0.0;
        }
    }
}

void Ring::finishWindow() {
    for (std::size_t k = 0; k < members_.size(); ++k) {
        count(k);
    }
    if (hasPlenum()) {
        const double* plenum = &y_[plenumOffset_];
        plenumPressure_ = plenum[pressureSum] / window_;
        plenumTemperature_ = plenum[temperatureSum] / window_;
        blowerPower_ = plenum[blowerWork] / window_ * model_->omega;
    }
    if (!even_ || members_.size() == 1) {
        return;
    }
    // each cylinder now stands where the next one began
    std::rotate(y_.begin(),
                y_.begin() + static_cast<std::ptrdiff_t>(plenumOffset_) - cylinderVariables,
                y_.begin() + static_cast<std::ptrdiff_t>(plenumOffset_));
    const Memory last = members_.back().memory;
    for (std::size_t k = members_.size() - 1; k > 0; --k) {
        members_[k].memory = members_[k - 1].memory;
    }
    members_.front().memory = last;
}

void Ring::startCounting(std::size_t index) {
    double* y = variables(index);
    std::fill(y + carriedVariables, y + cylinderVariables, 0.0);
    Member& member = members_[index];
    member.countedMass = y[airMass] + y[productsMass];
    member.countedEnergy = member.cylinder.internalEnergy(y);
}

void Ring::count(std::size_t index) {
    const double* y = variables(index);
    const Member& member = members_[index];
    CycleRecord& record = records_[member.record][static_cast<std::size_t>(member.memory.cycle)];
    for (int i = 0; i < countedVariables; ++i) {
        record.counted[static_cast<std::size_t>(i)] += y[carriedVariables + i];
    }
    record.massChange += y[airMass] + y[productsMass] - member.countedMass;
    record.energyChange += member.cylinder.internalEnergy(y) - member.countedEnergy;
    startCounting(index);
}

/// Index of the first stop after a local angle.
std::size_t Ring::stopAfter(double localAngle) const {
    const std::vector<Stop>& stops = model_->stops;
    const auto next =
        std::upper_bound(stops.begin(), stops.end(), localAngle + sameAngle,
                         [](double angle, const Stop& stop) { return angle < stop.angle; });
    return static_cast<std::size_t>(next - stops.begin());
}

double Ring::nextStopAngle() const {
    double next = window_;
    for (const Member& member : members_) {
        if (member.nextStop < model_->stops.size()) {
            next = std::min(next, model_->stops[member.nextStop].angle - member.offset);
        }
    }
    return next;
}

bool Ring::applyStops() {
    bool applied = false;
    for (std::size_t k = 0; k < members_.size(); ++k) {
        Member& member = members_[k];
        while (member.nextStop < model_->stops.size() &&
               model_->stops[member.nextStop].angle - member.offset <= theta_ + sameAngle) {
            const unsigned actions = model_->stops[member.nextStop].actions;
            ++member.nextStop;
            applyStop(k, actions);
            member.hintsStale = true;
            applied = true;
        }
    }
    return applied;
}

void Ring::applyStop(std::size_t index, unsigned actions) {
    Member& member = members_[index];
    Mode& mode = member.memory.mode;
    if (actions & inletCloses) {
        mode.inlet = InletFlow::closed;
    }
    if (actions & exhaustCloses) {
        mode.exhaust = ExhaustFlow::closed;
    }
    if (actions & knockEnds) {
        mode.knockCounting = false;
        records_[member.record][static_cast<std::size_t>(member.memory.cycle)].knockIntegral =
            variables(index)[knockIntegral];
    }
    if (actions & burnEnds) {
        mode.burning = false;
    }
    if (actions & lastClosing) {
        endCycle(index);
        const bool periodEnds = member.nextStop == model_->stops.size();
        if (periodEnds && theta_ < window_ - sameAngle) {
            member.offset -= model_->period();
            member.nextStop = 1;
        }
        if (theta_ < window_ - sameAngle) {
            beginCycle(index);
        }
    }
    if (actions & burnStarts) {
        startBurn(index);
    }
    if (actions & firstOpening) {
        mode.combustionHeat = false;
        variables(index)[freshMass] = 0.0;
    }
    if (actions & exhaustOpens) {
        openExhaust(index);
    }
    if (actions & inletOpens) {
        openInlet(index);
    }
}

void Ring::openExhaust(std::size_t index) {
    Member& member = members_[index];
    const double p = member.cylinder.pressure(theta_ + member.offset, variables(index));
    member.memory.mode.exhaust =
        p >= model_->settings.exhaustPressure ? ExhaustFlow::out : ExhaustFlow::back;
}

void Ring::openInlet(std::size_t index) {
    Member& member = members_[index];
    Memory& memory = member.memory;
    double* y = variables(index);
    const double mass = y[airMass] + y[productsMass];
    y[residualMass] = mass;
    memory.residual = model_->stream(y[productsMass] / mass, y[temperature]);
    memory.displacedUntil = model_->residualThreshold * mass;
    memory.mode.displacing = model_->residualThreshold < 1.0;
    const double p = member.cylinder.pressure(theta_ + member.offset, y);
    if (p > plenumState(y_.data()).pressure) {
        memory.mode.inlet = InletFlow::back;
    } else {
        setInletInflow(index);
    }
}

/// What was pushed back into the runner returns before fresh gas.
void Ring::setInletInflow(std::size_t index) {
    double* y = variables(index);
    Memory& memory = members_[index].memory;
    if (y[slugMass] <= negligibleSlug * model_->massScale) {
        y[slugMass] = y[slugProducts] = y[slugEnthalpy] = 0.0;
        memory.mode.inlet = InletFlow::fresh;
        return;
    }
    memory.slug = model_->streamOfEnthalpy(std::clamp(y[slugProducts] / y[slugMass], 0.0, 1.0),
                                           y[slugEnthalpy] / y[slugMass]);
    memory.mode.inlet = InletFlow::slug;
}

void Ring::startBurn(std::size_t index) {
    Member& member = members_[index];
    Memory& memory = member.memory;
    double* y = variables(index);
    const double angle = theta_ + member.offset;
    memory.startVolume = member.cylinder.geometry(angle).volume;
    memory.startPressure = member.cylinder.pressure(angle, y);
    memory.motoredIndex = motoredIndex(memory.trappedPressure, memory.trappedVolume,
                                       memory.startPressure, memory.startVolume);
    memory.mode.burning = true;
    memory.mode.burnStarted = true;
    memory.mode.combustionHeat = true;
    memory.mode.pressureExcess = true;
    y[unburntTemperature] = y[temperature];
}

void Ring::beginCycle(std::size_t index) {
    Member& member = members_[index];
    Memory& memory = member.memory;
    double* y = variables(index);
    const double angle = theta_ + member.offset;
    memory.trappedMass = y[airMass] + y[productsMass];
    memory.trappedAir = y[airMass];
    memory.trappedTemperature = y[temperature];
    memory.trappedVolume = member.cylinder.geometry(angle).volume;
    memory.trappedPressure = member.cylinder.pressure(angle, y);
    memory.mode = {};
    y[knockIntegral] = 0.0;
    y[unburntTemperature] = y[temperature];
    y[outflowMass] = y[outflowProducts] = y[outflowTemperature] = 0.0;
    if (model_->fired) {
        const double ratio = model_->gas.airFuelRatio;
        memory.fuelMass = y[airMass] / (model_->settings.lambda * ratio);
        memory.burnableFuel = std::min(memory.fuelMass, y[airMass] / ratio);
        memory.mode.knockCounting = model_->knock;
    }
    CycleRecord& record = records_[member.record][static_cast<std::size_t>(memory.cycle)];
    record.trappedMass = memory.trappedMass;
    record.trappedAir = memory.trappedAir;
    record.trappedPressure = memory.trappedPressure;
    record.trappedTemperature = memory.trappedTemperature;
    record.trappedVolume = memory.trappedVolume;
    record.fuelMass = memory.fuelMass;
}

void Ring::endCycle(std::size_t index) {
    Member& member = members_[index];
    Memory& memory = member.memory;
    double* y = variables(index);
    count(index);
    CycleRecord& record = records_[member.record][static_cast<std::size_t>(memory.cycle)];
    record.closingMass = y[airMass] + y[productsMass];
    record.retainedFresh = y[freshMass];
    if (y[outflowMass] > 0.0) {
        memory.exhaustBack =
            model_->stream(std::clamp(y[outflowProducts] / y[outflowMass], 0.0, 1.0),
                           y[outflowTemperature] / y[outflowMass]);
    }
    memory.mode.displacing = false;
    // gas that drifts away through the inlet cycle after cycle does not come back from farther than
    // a charge; so the state stays bounded (own estimate)
    if (y[slugMass] > record.closingMass) {
        const double kept = record.closingMass / y[slugMass];
        y[slugMass] *= kept;
        y[slugProducts] *= kept;
        y[slugEnthalpy] *= kept;
    }
    const int cycles = static_cast<int>(model_->chamber->cycles().size());
    memory.cycle = (memory.cycle + 1) % cycles;
}

void Ring::toggle(std::size_t index, Event event) {
    Member& member = members_[index];
    Mode& mode = member.memory.mode;
    double* y = variables(index);
    switch (event) {
    case Event::inletTurns:
        mode.inletChoked = false;
        if (mode.inlet == InletFlow::back) {
            setInletInflow(index);
        } else {
            mode.inlet = InletFlow::back;
        }
        break;
    case Event::slugReturned:
        y[slugMass] = y[slugProducts] = y[slugEnthalpy] = 0.0;
        mode.inlet = InletFlow::fresh;
        member.hintsStale = true;
        break;
    case Event::exhaustTurns:
        mode.exhaustChoked = false;
        mode.exhaust = mode.exhaust == ExhaustFlow::out ? ExhaustFlow::back : ExhaustFlow::out;
        break;
    case Event::displacementEnds:
        mode.displacing = false;
        break;
    case Event::inletChokes:
        mode.inletChoked = !mode.inletChoked;
        break;
    case Event::exhaustChokes:
        mode.exhaustChoked = !mode.exhaustChoked;
        break;
    case Event::motoredPressureCrossed:
        mode.pressureExcess = !mode.pressureExcess;
        break;
    case Event::fitBreakCrossed:
        mode.hot = !mode.hot;
        break;
    case Event::shortCircuitLimited:
        mode.freshLimitsShortCircuit = !mode.freshLimitsShortCircuit;
        break;
    case Event::knockReached:
        mode.knockReached = true;
        records_[member.record][static_cast<std::size_t>(member.memory.cycle)].knockAngle =
            theta_ + member.offset;
        break;
    case Event::airUsedUp:
        mode.burning = false;
        break;
    }
}

void Ring::place(int cylinder, const Snapshot& snapshot) {
    const std::size_t index = static_cast<std::size_t>(cylinder);
    std::copy(snapshot.y.begin(), snapshot.y.end(), variables(index));
    members_[index].memory = snapshot.memory;
}

void Ring::setPlenum(double mass, double temperature) {
    y_[plenumOffset_ + plenumMass] = mass;
    y_[plenumOffset_ + plenumTemperature] = temperature;
}

/// What happens to a cylinder up to a local angle. Kinks change nothing and may stand anywhere.
std::vector<unsigned> Ring::eventsUpTo(double localAngle) const {
    std::vector<unsigned> events;
    for (const Stop& stop : model_->stops) {
        if (stop.actions != kink && stop.angle <= localAngle + sameAngle) {
            events.push_back(stop.actions);
        }
    }
    return events;
}

std::vector<Stretch> Ring::stretches() const {
    std::vector<Stretch> result;
    for (const Member& member : members_) {
        result.push_back({member.localStart});
    }
    return result;
}

} // namespace lobewright::gas
