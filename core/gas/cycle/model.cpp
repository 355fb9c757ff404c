#include "core/gas/cycle/model.h"

#include "core/gas/cycle/phases.h"
#include "core/gas/models/knock.h"
#include "core/gas/models/supply.h"
#include "core/gas/models/wall_heat.h"
#include "core/gas/models/wiebe.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::gas {
namespace {

/// Stops closer than this are one [rad]; events are known to 1e-10.
constexpr double sameStop = 1e-11;

/// `angle` moved by whole periods into (start, start + period].
double intoPeriod(double angle, double start, double period) {
    const double turns = std::ceil((angle - start) / period) - 1.0;
    return angle - turns * period;
}

void sortAndMerge(std::vector<Stop>& stops) {
    std::sort(stops.begin(), stops.end(),
              [](const Stop& a, const Stop& b) { return a.angle < b.angle; });
    std::vector<Stop> merged;
    for (const Stop& stop : stops) {
        if (!merged.empty() && stop.angle - merged.back().angle < sameStop) {
            merged.back().actions |= stop.actions;
        } else {
            merged.push_back(stop);
        }
    }
    stops = std::move(merged);
}

/// Burn stops of the cycle, or why it cannot burn.
std::optional<Problem> addBurn(std::vector<Stop>& stops, const Model& model,
                               const CycleAngles& cycle, double previousClosing) {
    const double from = cycle.idc + model.burnStart;
    if (from <= previousClosing || from >= cycle.firstOpening) {
        return Problem{
            "/gas/burn/start_deg",
            Message(LW_TEXT("combustion starts at a cycle angle of %1; it must start between the "
                            "last port closing at %2 and the first opening at %3"),
                    withDecimals(from, in::degrees, 2),
                    withDecimals(previousClosing, in::degrees, 2),
                    withDecimals(cycle.firstOpening, in::degrees, 2))};
    }
    stops.push_back({from, burnStarts});
    stops.push_back({std::min(from + model.burnDuration, cycle.lastClosing), burnEnds});
    if (model.knock) {
        const Burn& burn = model.settings.burn;
        const double share = wiebeProgress(0.9, burn.wiebeA, burn.wiebeM);
        stops.push_back(
            {std::min(from + share * model.burnDuration, cycle.lastClosing), knockEnds});
    }
    return std::nullopt;
}

Result<std::vector<Stop>> makeStops(const Model& model) {
    const Chamber& chamber = *model.chamber;
    const double period = chamber.period();
    std::vector<Stop> stops;
    for (const double angle : chamber.kinks()) {
        stops.push_back({intoPeriod(angle, model.start, period), kink});
    }
    double previousClosing = model.start;
    for (const CycleAngles& cycle : chamber.cycles()) {
        stops.push_back({cycle.firstOpening, firstOpening});
        stops.push_back({cycle.inletOpens, inletOpens});
        stops.push_back({cycle.exhaustOpens, exhaustOpens});
        stops.push_back({cycle.inletCloses, inletCloses});
        stops.push_back({cycle.exhaustCloses, exhaustCloses});
        stops.push_back({cycle.lastClosing, lastClosing});
        if (model.fired) {
            if (auto problem = addBurn(stops, model, cycle, previousClosing)) {
                return *problem;
            }
        }
        previousClosing = cycle.lastClosing;
    }
    sortAndMerge(stops);
    // the period ends at the last closing of its last cycle, whatever rounding did to kinks there
    while (stops.size() > 1 && !(stops.back().actions & lastClosing)) {
        stops.pop_back();
    }
    stops.back().angle = model.start + period;
    stops.insert(stops.begin(), {model.start, kink});
    return stops;
}

void setScales(Model& model) {
    const Settings& settings = model.settings;
    const double pressure = settings.supply.kind == SupplyKind::reservoir
                                ? settings.supply.pressure
                                : settings.supply.ambientPressure;
    const double volume = model.chamber->at(model.start).volume;
    const GasGroup& air = model.gas.air;
    model.massScale = pressure * volume / (air.gasConstant() * settings.supply.ambientTemperature);
    model.energyScale = model.massScale * air.heat(300.0) * 300.0;
}

} // namespace

std::optional<Problem> Model::setBurnStart(double cycleAngle) {
    settings.burn.start = cycleAngle;
    burnStart = cycleAngle / chamber->cyclesPerTurn();
    Result<std::vector<Stop>> made = makeStops(*this);
    if (!made) {
        return made.problems().front();
    }
    stops = *made;
    return std::nullopt;
}

std::array<double, 2> Model::closedInterval() const {
    double earliest = -units::turn;
    double latest = units::turn;
    double previousClosing = start;
    for (const CycleAngles& cycle : chamber->cycles()) {
        earliest = std::max(earliest, previousClosing - cycle.idc);
        latest = std::min(latest, cycle.firstOpening - cycle.idc);
        previousClosing = cycle.lastClosing;
    }
    return {earliest * chamber->cyclesPerTurn(), latest * chamber->cyclesPerTurn()};
}

void Model::setWheelSpeed(double speed) {
    feeder = Feeder(settings.supply, gas.air, omega, speed);
}

Stream Model::freshStream(double temperature) const {
    return {0.0, temperature, gas.air.enthalpy(temperature), gas.air.gasConstant(),
            gas.air.heatRatio(temperature)};
}

Stream Model::stream(double products, double temperature) const {
    const double air = 1.0 - products;
    const double constant = air * gas.air.gasConstant() + products * gas.products.gasConstant();
    const double heat = air * gas.air.heat(temperature) + products * gas.products.heat(temperature);
    return {products, temperature,
            air * gas.air.enthalpy(temperature) + products * gas.products.enthalpy(temperature),
            constant, heat / (heat - constant)};
}

Stream Model::streamOfEnthalpy(double products, double enthalpy) const {
    const double air = 1.0 - products;
    double guess = referenceTemperature + enthalpy / gas.air.heat(referenceTemperature);
    guess = std::clamp(guess, 100.0, 5000.0);
    for (int i = 0; i < 50; ++i) {
        const double h = air * gas.air.enthalpy(guess) + products * gas.products.enthalpy(guess);
        const double cp = air * gas.air.heat(guess) + products * gas.products.heat(guess);
        const double change = (enthalpy - h) / cp;
        guess = std::clamp(guess + change, 50.0, 10000.0);
        if (std::fabs(change) <= 1e-13 * guess) {
            break;
        }
    }
    return stream(products, guess);
}

Result<Model> makeModel(const Chamber& chamber, const Settings& settings, const WorkingGas& gas,
                        const RunConditions& run) {
    Problems problems = validate(settings);
    if (!(run.omega > 0.0) || !std::isfinite(run.omega)) {
        problems.push_back({"/running/speed_rpm",
                            Message(LW_TEXT("speed is %1, must be positive"),
                                    asTyped(run.omega / units::revPerMinute, in::turnsPerMinute))});
    }
    if (!problems.empty()) {
        return problems;
    }
    Model model;
    model.chamber = &chamber;
    model.gas = gas;
    model.groups = {gas.air, gas.products};
    model.settings = settings;
    model.omega = run.omega;
    model.fired = !run.motored;
    model.start = chamber.cycles().back().lastClosing - chamber.period();
    model.bore = chamber.bore();
    model.sweptVolume = chamber.sweptVolume();
    model.crownArea = units::pi / 4 * model.bore * model.bore;
    const double cyclesPerTurn = chamber.cyclesPerTurn();
    model.meanPistonSpeed = chamber.meanStrokeSum() * cyclesPerTurn * run.omega / units::turn;
    model.burnDuration = settings.burn.duration / cyclesPerTurn;
    model.woschniFactor = woschniOfBore(model.bore);
    const std::optional<double> octane =
        gas.octaneNumber && settings.octaneNumber ? settings.octaneNumber : gas.octaneNumber;
    model.knock = model.fired && octane.has_value();
    if (model.knock) {
        model.delayFactor = delayOfFuel(*octane);
    }
    model.exhaustCrown =
        settings.wallHeat.exhaustCrownTemperature.value_or(settings.wallHeat.crownTemperature);
    const Scavenging& scavenging = settings.scavenging;
    const double displaced = scavenging.model == ScavengingModel::perfectMixing ? 0.0
                             : scavenging.model == ScavengingModel::perfectDisplacement
                                 ? 1.0
                                 : scavenging.displacedFraction;
    model.residualThreshold = 1.0 - displaced;
    if (model.fired && settings.mixture == Mixture::premixed) {
        model.fuelShare = 1.0 / (1.0 + settings.lambda * gas.airFuelRatio);
    }
    if (model.pumps()) {
        model.pumpSpace = {&chamber, settings.supply.pump, model.start, {0.0}};
        if (settings.supply.pump.shared) {
            model.pumpSpace.lags = cylinderLags(run);
        }
        if (!(model.pumpSpace.bounds().smallest > 0.0)) {
            return Problem{"/gas/supply/dead_cm3",
                           LW_TEXT("leaves no space under the piston at outer dead centre with the "
                                   "adjuster's shift, must be more")};
        }
    }
    model.setWheelSpeed(model.hasTurbine() ? likelySpeed(settings.supply, gas.air)
                                           : gearedSpeed(settings.supply, run.omega));
    setScales(model);
    double burnStart = settings.burn.start;
    if (model.searchesBurnStart()) {
        // somewhere to begin the search from
        const auto [earliest, latest] = model.closedInterval();
        burnStart = std::clamp(-15.0 * units::degree, 0.9 * earliest, 0.9 * latest);
    }
    if (auto problem = model.setBurnStart(burnStart)) {
        return *problem;
    }
    return model;
}

} // namespace lobewright::gas
