#include "core/reference/crank_cycle.h"

#include "core/design/gas_settings.h"

#include <vector>

namespace lobewright::study {

namespace {

CrankPairGeometry pairGeometry(const solution::Solution& solution) {
    const mechanism::OpposedPair& pair = solution.pair;
    const mechanism::Mechanism& mechanism = pair.mechanism();
    CrankPairGeometry geometry;
    geometry.bore = mechanism.bore;
    geometry.rodRatio = solution.design.reference.rodRatio;
    geometry.clearance = mechanism.clearance;
    geometry.recess = mechanism.recess;
    geometry.lead = pair.cyclesPerTurn() * (mechanism.exhaustLead + mechanism.adjuster.setting);
    geometry.oneSided = mechanism.isOneSided();
    geometry.shift = pair.shift(pair.pistons().back());
    geometry.ports = solution.design.ports;
    for (const End end : pair.pistons()) {
        geometry.stroke[end] = pair.curve(end).stroke();
    }
    return geometry;
}

} // namespace

gas::RunConditions evenConditions(const design::Design& design, double omega, int cylinders,
                                  double period) {
    gas::RunConditions run;
    run.omega = omega;
    run.motored = design.running.motored;
    run.cylinders = cylinders;
    for (int k = 0; k < cylinders; ++k) {
        run.cylinderAngles.push_back(period * k / cylinders);
    }
    return run;
}

Result<CrankCycle> crankCycle(const solution::Solution& solution, bool samePistonSpeed,
                              Monitor& monitor) {
    const design::Design& design = solution.design;
    auto chamber = CrankPairChamber::make(pairGeometry(solution));
    if (!chamber) {
        return chamber.problems();
    }
    const double perTurn = solution.pair.cyclesPerTurn();
    const double omega = (samePistonSpeed ? perTurn : 1.0) * design.running.speed;
    gas::Settings settings = design::gasSettings(design);
    settings.supply.driveRatio /= perTurn;
    settings.supply.compressor.gearRatio /= perTurn;
    const auto run = evenConditions(design, omega, design.mechanism.cylinders, chamber->period());
    auto gas = gas::solveCycle(*chamber, settings, run, monitor);
    if (!gas) {
        return gas.problems();
    }
    return CrankCycle{std::move(chamber).value(), settings, run, std::move(gas).value()};
}

} // namespace lobewright::study
