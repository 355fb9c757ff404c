#include "core/design/gas_settings.h"
#include "core/loads/net_pressure.h"
#include "core/reference/compared_values.h"
#include "core/reference/crank_cycle.h"
#include "core/reference/crank_loads.h"
#include "core/reference/four_stroke.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

LW_TEXTS_OF(Core)

/// The references of the comparison: opposed pistons on cranks and the four-stroke.
namespace lobewright::study {

namespace {

/// Where the pressure is not smooth: openings and both ends of the burn [rad of the crank].
std::vector<double> pressureBreaks(const gas::Chamber& chamber, const gas::CycleSolution& gas,
                                   const gas::Settings& settings) {
    std::vector<double> breaks = chamber.kinks();
    const double start =
        chamber.cycles().front().idc + gas.cycles.front().burnStart / chamber.cyclesPerTurn();
    breaks.push_back(start);
    breaks.push_back(start + settings.burn.duration / chamber.cyclesPerTurn());
    return breaks;
}

/// What gas and geometry say alike for every engine on cranks.
void addCommon(ComparedValues& values, const gas::Chamber& chamber, const gas::CycleSolution& gas,
               const CrankEngineLoads& loads, bool motored) {
    values.cyclesPerTurn = chamber.cyclesPerTurn();
    values.sweptVolume = chamber.sweptVolume();
    values.bore = chamber.bore();
    const double idc = chamber.cycles().front().idc;
    const gas::ChamberGeometry least = chamber.at(idc);
    const double area = units::pi * chamber.bore() * chamber.bore() / 4.0;
    values.surfaceToVolume =
        (2.0 * area + units::pi * chamber.bore() * least.linerLength) / least.volume;
    values.trappedCompressionRatio =
        chamber.at(chamber.cycles().front().lastClosing).volume / least.volume;
    values.cycles = gas.cycles;
    values.supplyPower = gas.supplyPower;
    values.supplyPaid = gas.supplyPaid;
    double imep = 0.0;
    for (const gas::CycleFigures& cycle : gas.cycles) {
        imep += cycle.imep / static_cast<double>(gas.cycles.size());
    }
    values.imep = imep;
    if (!motored) {
        // Cycle degrees of a four-stroke are half crank degrees.
        const double share = std::min(1.0, chamber.cyclesPerTurn());
        values.burnStart = gas.cycles.front().burnStart / share;
    }
    values.ripple = loads.ripple;
    values.together = loads.together;
    values.sideForce = loads.highestSideForce;
    values.shakingForce = loads.shakingForce;
    values.peakPistonSpeed = loads.highestSpeed;
    values.peakAcceleration = loads.highestAcceleration;
}

/// Values that a gear of ratio `gear` (crank turns an output turn) changes.
void addGeared(ComparedValues& values, const CrankEngineLoads& loads, double gear) {
    values.leverArm = gear * loads.highestLeverArm;
    values.peakToPeakTorque = gear * (loads.highestTorque - loads.lowestTorque);
    values.shortestInterval = loads.shortestInterval / gear;
    values.longestInterval = loads.longestInterval / gear;
}

/// What an axial force by the mean effective pressure costs, as torque on the crank.
double torqueOf(const ComparedValues& values, double pressure) {
    return pressure * values.cyclesPerTurn * values.cylinders * values.sweptVolume / units::turn;
}

double pressureOf(const ComparedValues& values, double torque) {
    return torque / torqueOf(values, 1.0);
}

void deductSupply(ComparedValues& values, double auxiliaryPower) {
    const double perPower = 1.0 / values.crankSpeed;
    values.fmepSupply = values.supplyPaid ? pressureOf(values, values.supplyPower * perPower) : 0.0;
    values.fmepAuxiliary = pressureOf(values, auxiliaryPower * perPower);
}

/// Periodic samples of the loads read at other angles, linear between them.
Samples periodic(const CrankEngineLoads& loads, const Samples& values, double period,
                 const Samples& theta) {
    const Eigen::Index count = loads.theta.size();
    const double step = period / static_cast<double>(count);
    Samples result(theta.size());
    for (Eigen::Index i = 0; i < theta.size(); ++i) {
        const double place = theta(i) / step;
        const double floor = std::floor(place);
        const auto below = static_cast<Eigen::Index>(floor);
        const auto wrap = [count](Eigen::Index k) { return (k % count + count) % count; };
        const double share = place - floor;
        result(i) = (1.0 - share) * values(wrap(below)) + share * values(wrap(below + 1));
    }
    return result;
}

ComparedCurves curvesOf(const CrankEngine& engine, const CrankEngineLoads& loads,
                        const gas::Chamber& chamber, double gear, double constantLoss) {
    ComparedCurves curves;
    curves.strokeAngle = strokeAngles();
    const Samples theta = chamber.cycles().front().idc + curves.strokeAngle;
    const CrankPiston& piston = engine.pistons.front();
    const motion::LiftSamples lift = piston.crank.at(theta + piston.phase);
    curves.lift = lift.y;
    curves.speed = engine.omega * lift.y1;
    curves.acceleration = engine.omega * engine.omega * lift.y2;
    curves.leverArm = -gear * lift.y1;
    curves.pressure = engine.trace->sample(theta).pressure;
    curves.volume = theta.unaryExpr([&](double at) { return chamber.at(at).volume; });
    curves.turnAngle = twoTurns();
    curves.totalTorque =
        gear *
        (periodic(loads, loads.totalTorque, engine.period, gear * curves.turnAngle) - constantLoss);
    return curves;
}

/// The ripple about the mean that remains after a loss that does not change over the turn.
std::optional<double> rippleLess(const CrankEngineLoads& loads, double constantLoss) {
    const double mean = loads.meanTorque - constantLoss;
    const double high = loads.highestTorque - constantLoss;
    const double low = loads.lowestTorque - constantLoss;
    const double peak = std::max(std::abs(high), std::abs(low));
    return std::abs(mean) < 0.01 * peak ? std::nullopt
                                        : std::optional((high - low) / std::abs(mean));
}

/// Share of the bore that pumps behind every piston on a crank.
double pumpAreaOf(const design::Design& design) {
    const gas::Supply& supply = design.gas.supply;
    const bool all = design.mechanism.isOneSided() || supply.pump.sides == gas::PumpSides::both;
    return supply.kind == gas::SupplyKind::underPiston && all ? supply.pump.areaFactor : 0.0;
}

CrankEngine pairEngine(const solution::Solution& solution, const CrankCycle& cycle,
                       const gas::GasTrace& trace) {
    CrankEngine engine;
    const CrankPairChamber& chamber = cycle.chamber;
    const mechanism::Mechanism& mechanism = solution.pair.mechanism();
    for (const End end : chamber.pistons()) {
        engine.pistons.push_back(
            {chamber.crank(end), chamber.tau(end, 0.0), mechanism.pistonMass[end], mechanism.bore});
    }
    engine.cylinderAngles = cycle.run.cylinderAngles;
    engine.period = chamber.period();
    engine.friction = &solution.design.friction;
    engine.omega = cycle.run.omega;
    engine.underPistonPressure = solution.design.running.underPistonPressure;
    engine.trace = &trace;
    engine.breaks = pressureBreaks(chamber, cycle.gas, solution.design.gas);
    engine.firings = {chamber.cycles().front().idc};
    return engine;
}

/// The supply as the four-stroke gets it: ambient air, or the state before the design's ports.
gas::Settings fourStrokeSettings(const solution::Solution& solution, bool sameSupply) {
    gas::Settings settings = design::gasSettings(solution.design);
    gas::Supply& supply = settings.supply;
    supply.kind = gas::SupplyKind::reservoir;
    supply.pressure = sameSupply ? solution.gas->plenumPressure : supply.ambientPressure;
    supply.temperature = sameSupply ? solution.gas->plenumTemperature : supply.ambientTemperature;
    supply.unpaid = sameSupply && !solution.gas->supplyPaid;
    if (sameSupply && solution.gas->turbine) {
        // the exhaust that drives the turbine stands against these valves as well
        settings.exhaustPressure = solution.gas->turbine->pressure;
        supply.unpaid = true;
    }
    settings.scavenging = {};
    settings.wallHeat.exhaustCrownTemperature.reset();
    // Cycle degrees of a four-stroke are half crank degrees; the burn lasts as long in degrees of
    // one reciprocation.
    settings.burn.duration *= 0.5;
    const design::FourStroke& wanted = solution.design.reference.fourStroke;
    settings.burn.bestTorque = wanted.bestTorque;
    settings.burn.start = 0.5 * wanted.burnStart;
    return settings;
}

double fourStrokeSpeed(const solution::Solution& solution, const FourStrokeChamber& chamber,
                       Basis basis) {
    const double omega = solution.design.running.speed;
    const mechanism::OpposedPair& pair = solution.pair;
    const double reciprocations = pair.cyclesPerTurn();
    switch (basis) {
    case Basis::displacement:
    case Basis::power:
        break;
    case Basis::displacedVolume:
        return omega * reciprocations / 0.5;
    case Basis::pistonSpeed: {
        return omega * reciprocations * pair.meanStroke() / chamber.crank().stroke();
    }
    }
    return omega;
}

CrankEngine fourStrokeCranks(const solution::Solution& solution, const FourStrokeChamber& chamber,
                             const gas::CycleSolution& gas, const gas::Settings& settings,
                             const gas::RunConditions& run) {
    const mechanism::Mechanism& mechanism = solution.pair.mechanism();
    // Pistons of like proportions: mass as the cube of the bore.
    const double size = chamber.bore() / mechanism.bore;
    double ofPistons = 0.0;
    for (const End end : mechanism.pistons()) {
        ofPistons += mechanism.pistonMass[end];
    }
    const double mass =
        ofPistons / static_cast<double>(mechanism.pistons().size()) * size * size * size;
    CrankEngine engine;
    engine.pistons = {{chamber.crank(), 0.0, mass, chamber.bore()}};
    engine.cylinderAngles = run.cylinderAngles;
    engine.period = chamber.period();
    engine.omega = run.omega;
    engine.underPistonPressure = solution.design.running.underPistonPressure;
    engine.trace = gas.trace.get();
    engine.breaks = pressureBreaks(chamber, gas, settings);
    engine.firings = {0.0};
    return engine;
}

} // namespace

Result<ComparedResult> crankEngine(const solution::Solution& solution, bool samePistonSpeed,
                                   Monitor& monitor) {
    const design::Design& design = solution.design;
    const auto cycle = crankCycle(solution, samePistonSpeed, monitor);
    if (!cycle) {
        return cycle.problems();
    }
    const CrankPairChamber& chamber = cycle->chamber;
    if (jams(chamber.crank(End::inlet), design.friction)) {
        return Problem{
            "/reference/rod_ratio",
            LW_TEXT("guide friction blocks the pistons at the steepest rod; the ratio must be "
                    "smaller")};
    }
    const double omega = cycle->run.omega;
    const loads::NetPressure trace(*cycle->gas.trace, pumpAreaOf(design),
                                   design.running.underPistonPressure);
    const CrankEngine engine = pairEngine(solution, *cycle, trace);
    const CrankEngineLoads loads = crankEngineLoads(engine, !chamber.geometry().oneSided);
    const double gear = samePistonSpeed ? solution.pair.cyclesPerTurn() : 1.0;
    ComparedValues values;
    values.outputSpeed = design.running.speed;
    values.crankSpeed = omega;
    values.cylinders = cycle->run.cylinders;
    values.stroke = chamber.crank(End::inlet).stroke();
    addCommon(values, chamber, cycle->gas, loads, design.running.motored);
    addGeared(values, loads, gear);
    double most = 0.0;
    for (const double theta : loads.theta) {
        most = std::max(most, chamber.at(theta).volume);
    }
    values.compressionRatio = most / chamber.at(chamber.cycles().front().idc).volume;
    double longest = 0.0;
    for (const End end : chamber.pistons()) {
        longest = std::max(longest, chamber.crank(end).stroke());
    }
    values.meanPistonSpeed = 2.0 * longest * omega / units::turn;
    values.fmepRing = pressureOf(values, loads.ringLoss);
    values.fmepGuide = pressureOf(values, loads.guideLoss);
    values.fmepDrive = design.reference.crankBearingFmep;
    deductSupply(values, design.friction.auxiliaryPower);
    const double bearingLoss = torqueOf(values, values.fmepDrive);
    values.ripple = rippleLess(loads, bearingLoss);
    return ComparedResult{values, curvesOf(engine, loads, chamber, gear, bearingLoss)};
}

Result<ComparedResult> fourStrokeEngine(const solution::Solution& solution, bool sameSupply,
                                        Basis basis, Monitor& monitor) {
    const design::Design& design = solution.design;
    const design::FourStroke& wanted = design.reference.fourStroke;
    const int cylinders = wanted.cylinders > 0 ? wanted.cylinders : design.mechanism.cylinders;
    const double displacement = design.mechanism.cylinders * solution.pair.sweptVolume();
    auto chamber =
        FourStrokeChamber::make(wanted, displacement / cylinders, design.reference.rodRatio);
    if (!chamber) {
        return chamber.problems();
    }
    const double omega = fourStrokeSpeed(solution, *chamber, basis);
    const gas::Settings settings = fourStrokeSettings(solution, sameSupply);
    const auto run = evenConditions(design, omega, cylinders, chamber->period());
    const auto gas = gas::solveCycle(*chamber, settings, run, monitor);
    if (!gas) {
        return gas.problems();
    }
    const CrankEngine engine = fourStrokeCranks(solution, *chamber, *gas, settings, run);
    const CrankEngineLoads loads = crankEngineLoads(engine, false);
    ComparedValues values;
    values.outputSpeed = values.crankSpeed = omega;
    values.cylinders = cylinders;
    values.stroke = chamber->crank().stroke();
    addCommon(values, *chamber, *gas, loads, design.running.motored);
    addGeared(values, loads, 1.0);
    values.compressionRatio = wanted.compressionRatio;
    values.meanPistonSpeed = 2.0 * values.stroke * omega / units::turn;
    values.fmepDrive = fourStrokeFmep(omega);
    deductSupply(values, 0.0);
    values.fmepAuxiliary.reset(); // the friction fit holds the auxiliaries, as it does the rings
    const double friction = torqueOf(values, values.fmepDrive);
    values.ripple = rippleLess(loads, friction);
    return ComparedResult{values, curvesOf(engine, loads, *chamber, 1.0, friction)};
}

} // namespace lobewright::study
