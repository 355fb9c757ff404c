#include "core/gas/cycle/pump_space.h"

#include "core/gas/models/orifice.h"
#include "core/gas/models/supply.h"

#include <algorithm>

namespace lobewright::gas {

SpaceBehind PumpSpace::at(double window) const {
    SpaceBehind space{pump.deadVolume, 0.0};
    for (const double lag : lags) {
        const SpaceBehind one = chamber->behind(start + window - lag, pump.sides);
        space.volume += pump.areaFactor * one.volume;
        space.rate += pump.areaFactor * one.rate;
    }
    return space;
}

PumpSpace::Bounds PumpSpace::bounds() const {
    constexpr int steps = 1440;
    Bounds bounds{at(0.0).volume, at(0.0).volume};
    const double step = chamber->period() / (steps * static_cast<double>(chamber->cycles().size()));
    for (double window = step; window < chamber->period(); window += step) {
        const double volume = at(window).volume;
        bounds.smallest = std::min(bounds.smallest, volume);
        bounds.largest = std::max(bounds.largest, volume);
    }
    return bounds;
}

double reedFlow(const Supply& supply, const GasGroup& air, double pumpPressure) {
    const Reed& reed = supply.pump.reed;
    const double intake = intakePressure(supply);
    const double drop = intake - pumpPressure - reed.cracking;
    if (drop <= 0.0) {
        return 0.0;
    }
    const double area = reed.area * std::min(drop / reed.fullOpen, 1.0);
    const double t = supply.ambientTemperature;
    const double psi = flowFunction(pumpPressure / intake, air.heatRatio(t)).value;
    return orificeFlow(reed.dischargeCoefficient * area, intake, t, air.gasConstant(), psi);
}

} // namespace lobewright::gas
