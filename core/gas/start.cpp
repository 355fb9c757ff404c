#include "core/gas/start.h"

#include "core/gas/supply.h"

#include <algorithm>

namespace lobewright::gas {
namespace {

/// The pressure that the search starts from and that the trapped charge is guessed by.
double guessedSupplyPressure(const Settings& settings) {
    return settings.supply.kind == SupplyKind::reservoir
               ? settings.supply.pressure
               : std::max(settings.supply.ambientPressure, 1.15 * settings.exhaustPressure);
}

/// Air that the cylinders of a ring with a constant supply took in its last window [kg].
double deliveredInWindow(const Ring& ring) {
    double mass = 0.0;
    for (const CycleRecord& record : ring.records().front()) {
        mass += record.of(deliveredMass);
    }
    return mass;
}

} // namespace

SupplyState constantSupply(const Model& model, double pressure) {
    const Supply& supply = model.settings.supply;
    if (supply.kind == SupplyKind::reservoir) {
        return {supply.pressure, model.freshStream(supply.temperature)};
    }
    const double outlet = compress(supply, model.gas.air, pressure).outletTemperature;
    return {pressure,
            model.freshStream(std::min(outlet, supply.afterCoolerTemperature.value_or(outlet)))};
}

std::shared_ptr<const CycleStart> cycleStart(const Model& model, const Ring& ring,
                                             const AndersonAcceleration& acceleration) {
    return std::make_shared<const CycleStart>(
        CycleStart{model.period(), model.burnStart * model.chamber->cyclesPerTurn(), model.fired,
                   model.settings.supply.kind, ring.pose(), acceleration});
}

std::shared_ptr<const CycleStart>
startBetween(const std::vector<std::shared_ptr<const CycleStart>>& starts,
             const std::vector<double>& weights) {
    std::vector<const Ring::Pose*> poses;
    for (const auto& start : starts) {
        if (!start) {
            return nullptr;
        }
        poses.push_back(&start->pose);
    }
    if (poses.empty()) {
        return nullptr;
    }
    auto between = std::make_shared<CycleStart>(*starts.front());
    between->pose = blend(poses, weights);
    between->burnStart = 0.0;
    for (std::size_t i = 0; i < starts.size(); ++i) {
        between->burnStart += weights[i] * starts[i]->burnStart;
    }
    return between;
}

const CycleStart* startNear(const Model& model, const CycleOptions& options) {
    const CycleStart* near = options.near.get();
    const bool fits = near && near->period == model.period() && near->fired == model.fired &&
                      near->supply == model.settings.supply.kind;
    return fits ? near : nullptr;
}

Ring::Snapshot guessedCharge(const Model& model, const SupplyState& supply) {
    Ring::Snapshot guess;
    const double products = model.fired ? 0.15 : 0.0;
    const double t = supply.fresh.temperature * (model.fired ? 1.2 : 1.05);
    const Stream charge = model.stream(products, t);
    const double pressure = 0.5 * (supply.pressure + model.settings.exhaustPressure);
    const double mass = pressure * model.chamber->at(model.start).volume / (charge.gasConstant * t);
    guess.y[airMass] = (1.0 - products) * mass;
    guess.y[productsMass] = products * mass;
    guess.y[temperature] = t;
    guess.memory.exhaustBack =
        model.fired ? model.stream(0.6, 900.0) : model.stream(0.0, supply.fresh.temperature);
    return guess;
}

Result<ConstantSupplyStart> startOnConstantSupply(const Model& model, int cylinders,
                                                  const std::vector<double>& snapshotAngles) {
    constexpr int rounds = 6;
    constexpr double looseTolerance = 1e-4;
    const double exhaust = model.settings.exhaustPressure;
    const double share = blowerFlow(model.settings.supply, model.gas.air, model.omega) *
                         model.period() / (model.omega * cylinders);
    double pressure = guessedSupplyPressure(model.settings);
    Ring ring(model, constantSupply(model, pressure));
    ring.place(0, guessedCharge(model, constantSupply(model, pressure)));
    for (int i = 0; i < rounds; ++i) {
        const bool last = i + 1 == rounds;
        if (last) {
            ring.snapshotAngles = snapshotAngles;
        }
        if (auto problem = ring.advance(looseTolerance)) {
            return *problem;
        }
        if (!last) {
            const double taken = std::max(deliveredInWindow(ring), 0.01 * share);
            // orifice flow grows about as the root of the pressure difference
            const double factor = std::clamp((share / taken) * (share / taken), 0.25, 4.0);
            const double above = std::max(pressure - exhaust, 0.01 * exhaust);
            pressure = exhaust + above * factor;
            ring.setSupply(constantSupply(model, pressure));
        }
    }
    return ConstantSupplyStart{ring, pressure, constantSupply(model, pressure)};
}

void placeOn(Ring& ring, const Model& model, const ConstantSupplyStart& start,
             const std::vector<int>& cylinders) {
    for (std::size_t i = 0; i < cylinders.size(); ++i) {
        ring.place(cylinders[i], start.ring.snapshots[i]);
    }
    const double t = start.supply.fresh.temperature;
    ring.setPlenum(
        start.pressure * model.settings.supply.plenumVolume / (model.gas.air.gasConstant() * t), t);
}

} // namespace lobewright::gas
