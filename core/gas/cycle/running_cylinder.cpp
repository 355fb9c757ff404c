#include "core/gas/cycle/running_cylinder.h"

#include "core/gas/models/wall_heat.h"

#include <algorithm>
#include <cmath>

namespace lobewright::gas {
namespace {

constexpr double roundedAngle = 1e-10;  ///< of one among several cylinders [rad]
constexpr double negligibleSlug = 1e-9; ///< share of a charge below which no slug is left

} // namespace

void CylinderRecord::clear() {
    std::fill(cycles.begin(), cycles.end(), CycleRecord{});
    steps.clear();
    modeChanges.clear();
}

void CylinderRecord::sort() {
    steps.sort();
    std::stable_sort(modeChanges.begin(), modeChanges.end(),
                     [](const ModeChange& a, const ModeChange& b) { return a.window < b.window; });
}

RunningCylinder::RunningCylinder(const Model& model) : equations(model), model_(&model) {}

void RunningCylinder::begin(const Charge& charge, std::size_t cycle) {
    y.fill(0.0);
    y[airMass] = charge.air;
    y[productsMass] = charge.products;
    y[temperature] = charge.temperature;
    y[slugMass] = charge.slugMass;
    y[slugProducts] = charge.slugProducts;
    y[slugEnthalpy] = charge.slugEnthalpy;
    y[freshMass] = charge.fresh;
    memory = {};
    memory.exhaustBack = model_->stream(charge.exhaustProducts, charge.exhaustTemperature);
    memory.cycle = static_cast<int>(cycle);
    const std::vector<CycleAngles>& cycles = model_->chamber->cycles();
    angle = cycle == 0 ? model_->start : cycles[cycle - 1].lastClosing;
    findNextStop();
    lastEvent = -1e300;
    hintsStale = true;
    beginCycle();
    startCounting();
}

void RunningCylinder::findNextStop() {
    nextStop = 0;
    while (nextStop < model_->stops.size() && model_->stops[nextStop].angle <= angle + sameAngle) {
        ++nextStop;
    }
    passKinks();
}

/// A rough integration does not stop where the geometry is merely not smooth.
void RunningCylinder::passKinks() {
    while (rough && nextStop < model_->stops.size() && model_->stops[nextStop].actions == kink) {
        ++nextStop;
    }
}

double RunningCylinder::nextStopAngle() const {
    return nextStop < model_->stops.size() ? model_->stops[nextStop].angle
                                           : model_->start + model_->period();
}

bool RunningCylinder::portOpens() const {
    const Stop* last = nextStop > 0 ? &model_->stops[nextStop - 1] : nullptr;
    return last && last->angle > angle - roundedAngle &&
           (last->actions & (inletOpens | exhaustOpens));
}

bool RunningCylinder::portClosesAt(double at) const {
    const Stop* next = nextStop < model_->stops.size() ? &model_->stops[nextStop] : nullptr;
    return next && next->angle < at + roundedAngle &&
           (next->actions & (inletCloses | exhaustCloses));
}

Charge RunningCylinder::carried() const {
    return {y[airMass],
            y[productsMass],
            y[temperature],
            y[slugMass],
            y[slugProducts],
            y[slugEnthalpy],
            memory.exhaustBack.products,
            memory.exhaustBack.temperature,
            y[freshMass]};
}

unsigned RunningCylinder::applyStops(const PortPressures& outside) {
    unsigned applied = 0;
    while (nextStop < model_->stops.size() && model_->stops[nextStop].angle <= angle + sameAngle) {
        const unsigned actions = model_->stops[nextStop++].actions;
        applyStop(actions, outside);
        applied |= actions;
        hintsStale = true;
        passKinks();
    }
    return applied;
}

void RunningCylinder::applyStop(unsigned actions, const PortPressures& outside) {
    Mode& mode = memory.mode;
    if (actions & inletCloses) {
        mode.inlet = InletFlow::closed;
    }
    if (actions & exhaustCloses) {
        mode.exhaust = ExhaustFlow::closed;
    }
    if (actions & knockEnds) {
        mode.knockCounting = false;
        record().knockIntegral = y[knockIntegral];
    }
    if (actions & burnEnds) {
        mode.burning = false;
    }
    if (actions & lastClosing) {
        endCycle();
    }
    if (actions & burnStarts) {
        startBurn();
    }
    if (actions & firstOpening) {
        mode.combustionHeat = false;
        y[freshMass] = 0.0;
    }
    if (actions & exhaustOpens) {
        openExhaust(outside.exhaust);
    }
    if (actions & inletOpens) {
        openInlet(outside.inlet);
    }
}

void RunningCylinder::openExhaust(double exhaustPressure) {
    const double p = equations.pressure(angle, y.data());
    memory.mode.exhaust = p >= exhaustPressure ? ExhaustFlow::out : ExhaustFlow::back;
}

void RunningCylinder::openInlet(double supplyPressure) {
    const double mass = y[airMass] + y[productsMass];
    y[residualMass] = mass;
    memory.residual = model_->stream(y[productsMass] / mass, y[temperature]);
    memory.displacedUntil = model_->residualThreshold * mass;
    memory.mode.displacing = model_->residualThreshold < 1.0;
    const double p = equations.pressure(angle, y.data());
    if (p > supplyPressure) {
        memory.mode.inlet = InletFlow::back;
    } else {
        setInletInflow();
    }
}

/// What was pushed back into the runner returns before fresh gas.
void RunningCylinder::setInletInflow() {
    if (y[slugMass] <= negligibleSlug * model_->massScale) {
        y[slugMass] = y[slugProducts] = y[slugEnthalpy] = 0.0;
        memory.mode.inlet = InletFlow::fresh;
        return;
    }
    memory.slug = model_->streamOfEnthalpy(std::clamp(y[slugProducts] / y[slugMass], 0.0, 1.0),
                                           y[slugEnthalpy] / y[slugMass]);
    memory.mode.inlet = InletFlow::slug;
}

void RunningCylinder::startBurn() {
    memory.startVolume = equations.geometry(angle).volume;
    memory.startPressure = equations.pressure(angle, y.data());
    memory.motoredIndex = motoredIndex(memory.trappedPressure, memory.trappedVolume,
                                       memory.startPressure, memory.startVolume);
    memory.mode.burning = true;
    memory.mode.burnStarted = true;
    memory.mode.combustionHeat = true;
    memory.mode.pressureExcess = true;
    y[unburntTemperature] = y[temperature];
}

void RunningCylinder::beginCycle() {
    memory.trappedMass = y[airMass] + y[productsMass];
    memory.trappedAir = y[airMass];
    memory.trappedTemperature = y[temperature];
    memory.trappedVolume = equations.geometry(angle).volume;
    memory.trappedPressure = equations.pressure(angle, y.data());
    memory.mode = {};
    y[knockIntegral] = 0.0;
    y[unburntTemperature] = y[temperature];
    y[outflowMass] = y[outflowProducts] = y[outflowTemperature] = 0.0;
    if (model_->fired) {
        const double ratio = model_->gas.airFuelRatio;
        if (model_->premixed()) {
            memory.fuelMass = model_->fuelShare * std::min(y[freshMass], y[airMass]);
            memory.burnableFuel = std::min(memory.fuelMass, (y[airMass] - memory.fuelMass) / ratio);
        } else {
            memory.fuelMass = y[airMass] / (model_->settings.lambda * ratio);
            memory.burnableFuel = std::min(memory.fuelMass, y[airMass] / ratio);
        }
        memory.mode.knockCounting = model_->knock;
    }
    CycleRecord& cycle = record();
    cycle.trappedMass = memory.trappedMass;
    cycle.trappedAir = memory.trappedAir;
    cycle.trappedPressure = memory.trappedPressure;
    cycle.trappedTemperature = memory.trappedTemperature;
    cycle.trappedVolume = memory.trappedVolume;
    cycle.fuelMass = memory.fuelMass;
}

void RunningCylinder::endCycle() {
    count();
    CycleRecord& cycle = record();
    cycle.closingMass = y[airMass] + y[productsMass];
    cycle.retainedFresh = y[freshMass];
    if (y[outflowMass] > 0.0) {
        memory.exhaustBack =
            model_->stream(std::clamp(y[outflowProducts] / y[outflowMass], 0.0, 1.0),
                           y[outflowTemperature] / y[outflowMass]);
    }
    memory.mode.displacing = false;
    // gas that drifts away through the inlet cycle after cycle does not come back from farther than
    // a charge; so the state stays bounded (own estimate)
    if (y[slugMass] > cycle.closingMass) {
        const double kept = cycle.closingMass / y[slugMass];
        y[slugMass] *= kept;
        y[slugProducts] *= kept;
        y[slugEnthalpy] *= kept;
    }
    const int cycles = static_cast<int>(model_->chamber->cycles().size());
    memory.cycle = (memory.cycle + 1) % cycles;
}

void RunningCylinder::toggle(Event event) {
    Mode& mode = memory.mode;
    switch (event) {
    case Event::inletTurns:
        mode.inletChoked = false;
        if (mode.inlet == InletFlow::back) {
            setInletInflow();
        } else {
            mode.inlet = InletFlow::back;
        }
        break;
    case Event::slugReturned:
        y[slugMass] = y[slugProducts] = y[slugEnthalpy] = 0.0;
        mode.inlet = InletFlow::fresh;
        hintsStale = true;
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
        record().knockAngle = angle;
        break;
    case Event::airUsedUp:
        mode.burning = false;
        break;
    }
}

void RunningCylinder::startCounting() {
    std::fill(y.begin() + carriedVariables, y.end(), 0.0);
    countedMass_ = y[airMass] + y[productsMass];
    countedEnergy_ = equations.internalEnergy(y.data());
}

void RunningCylinder::count() {
    CycleRecord& cycle = record();
    for (int i = 0; i < countedVariables; ++i) {
        const int variable = carriedVariables + i;
        cycle.counted[static_cast<std::size_t>(i)] += y[static_cast<std::size_t>(variable)];
    }
    cycle.massChange += y[airMass] + y[productsMass] - countedMass_;
    cycle.energyChange += equations.internalEnergy(y.data()) - countedEnergy_;
    startCounting();
}

} // namespace lobewright::gas
