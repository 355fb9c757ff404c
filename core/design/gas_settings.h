#pragma once

#include "core/design/design.h"

#include <algorithm>
#include <cmath>

namespace lobewright::design {

/// Pressure that the load scales by supply, at full load [Pa]: of a constant supply itself, of any
/// other that before its intake.
inline double fullPressure(const gas::Supply& supply) {
    return supply.kind == gas::SupplyKind::reservoir ? supply.pressure : supply.ambientPressure;
}

/// The gas side of a design as the gas model takes it: in a one-sided engine the head stands where
/// the exhaust crown would; below full load the pressure of the supply, or that before its intake,
/// lies between its floor and its full value, or the excess-air ratio is divided by the load. A
/// floor that is not given is the exhaust back pressure of a constant supply; before the intake 0.8
/// of the ambient pressure with a wheel, which gives nothing against the exhaust when it is
/// throttled far, and with a row under the skirt, through which gas goes back to a low intake; else
/// a quarter [own estimates]. It is never above the full value.
inline gas::Settings gasSettings(const Design& design) {
    gas::Settings settings = design.gas;
    if (design.mechanism.isOneSided()) {
        settings.wallHeat.exhaustCrownTemperature = settings.wallHeat.headTemperature;
    }
    const Running& running = design.running;
    if (running.load == 1.0) {
        return settings;
    }
    if (running.loadBy == LoadBy::mixture) {
        settings.lambda /= running.load;
        return settings;
    }
    gas::Supply& supply = settings.supply;
    const bool isConstant = supply.kind == gas::SupplyKind::reservoir;
    const double full = fullPressure(supply);
    const bool letsBack = supply.kind == gas::SupplyKind::compressor ||
                          (supply.kind == gas::SupplyKind::underPiston && supply.pump.skirtRow);
    const double floor = running.loadFloor.value_or(
        isConstant ? settings.exhaustPressure : (letsBack ? 0.8 : 0.25) * supply.ambientPressure);
    const double pressure = std::lerp(std::min(floor, full), full, running.load);
    (isConstant ? supply.pressure : supply.throttle) =
        isConstant ? pressure : pressure / supply.ambientPressure;
    return settings;
}

} // namespace lobewright::design
