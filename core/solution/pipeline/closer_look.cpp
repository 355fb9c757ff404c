#include "core/solution/pipeline/closer_look.h"

#include "core/design/gas_settings.h"
#include "core/gas/models/feeder.h"
#include "core/gas/models/fuel.h"
#include "core/loads/lever_arm.h"
#include "core/solution/pipeline/angles.h"
#include "core/solution/pipeline/stages.h"

#include <algorithm>

namespace lobewright::solution {

std::optional<SupplyPath> supplyPath(const Solution& solution) {
    if (!solution.gas) {
        return std::nullopt;
    }
    const auto supply = design::gasSettings(solution.design).supply;
    const auto& gas = *solution.gas;
    const auto air = gas::workingGas(solution.design.gas.fuel).air;
    SupplyPath path;
    path.kind = supply.kind;
    path.ambient = {supply.ambientPressure, supply.ambientTemperature};
    path.ready = {gas.plenumPressure, gas.plenumTemperature};
    path.pump = gas.pump;
    path.hasTransfer = gas.pump && supply.pump.transferVolume.has_value();
    path.drawsUnderSkirt = gas.pump && supply.pump.skirtRow.has_value();
    path.compresses = !gas.pump && path.ready.pressure > path.ambient.pressure;
    const gas::Feeder feeder(supply, air, solution.design.running.speed,
                             gas.compressor ? gas.compressor->wheelSpeed : 1.0);
    path.compressed = {path.ready.pressure, feeder.feed(path.ready.pressure).hottest};
    const bool hasPlenum = gas.compressor || supply.kind == gas::SupplyKind::blower;
    if (hasPlenum && supply.afterCoolerTemperature) {
        path.cooled = {path.ready.pressure,
                       std::min(path.compressed.temperature, *supply.afterCoolerTemperature)};
    }
    path.trapped = {gas.cycles.front().trappedPressure, gas.cycles.front().trappedTemperature};
    path.power = gas.supplyPower;
    if (gas.compressor) {
        path.wheel = SupplyPath::Wheel{std::nullopt, std::nullopt, gas.compressor->power};
        if (const auto& between = feeder.between()) {
            path.wheel->behind = SupplyPath::State{between->pressure, between->hottest};
            if (supply.compressor.interCoolerTemperature) {
                path.wheel->cooled = SupplyPath::State{between->pressure, between->temperature};
            }
        }
    }
    if (gas.turbine) {
        path.turbine = SupplyPath::Turbine{
            {gas.turbine->pressure, gas.turbine->temperature},
            {solution.design.gas.exhaustPressure, gas.turbine->outletTemperature},
            gas.turbine->power,
            gas.turbine->friction,
            gas.turbine->sustained};
    }
    path.paid = gas.supplyPaid;
    return path;
}

std::optional<contact::ContactMap> contactMap(const Solution& solution, End end, int widths) {
    if (!solution.stages || !solution.stages->loads) {
        return std::nullopt;
    }
    const auto& design = solution.design;
    return contact::contactMap({solution.pair, *solution.stages->loads, design.materials,
                                design.lubricant, design.rollerBearing, design.running.speed},
                               solution.pair.uncovers(end), widths);
}

LeverArms leverArms(const Solution& solution) {
    const auto& pair = solution.pair;
    const Samples tau =
        cycleAngles(solution.theta, solution.timing, pair.period(), pair.cyclesPerTurn());
    LeverArms arms;
    for (const End end : pair.pistons()) {
        arms.track[end] = loads::leverArm(pair.lift(end, solution.theta).y1);
        arms.crank[end] =
            loads::crankLeverArm(pair.curve(end).stroke(), solution.design.reference.rodRatio, tau);
        arms.geared[end] = pair.cyclesPerTurn() * arms.crank[end];
    }
    return arms;
}

std::optional<loads::ShaftReactions> shaftReactions(const Solution& solution) {
    const auto distance = loads::trackDistance(solution.pair);
    if (!distance || !solution.stages || !solution.stages->loads) {
        return std::nullopt;
    }
    return loads::shaftReactions(solution.stages->loads->track, *distance);
}

std::optional<loads::PistonPolygon> pistonPolygon(const Solution& solution, End end, double theta) {
    if (!solution.stages || !solution.stages->loads) {
        return std::nullopt;
    }
    Eigen::Index nearest = 0;
    (solution.theta - theta).abs().minCoeff(&nearest);
    return loads::pistonPolygon(solution.stages->loads->piston[end], nearest);
}

} // namespace lobewright::solution
