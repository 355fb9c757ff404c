#pragma once

#include "core/gas/cycle/cycle.h"
#include "core/gas/properties/properties.h"

#include <vector>

namespace lobewright::gas {

/// The space under the pistons over the angle from the start of cylinder 1's period.
struct PumpSpace {
    const Chamber* chamber = nullptr;
    Pump pump;
    double start = 0.0;       ///< local angle of cylinder 1 where its period starts [rad]
    std::vector<double> lags; ///< of the cylinders whose pistons move in it [rad]

    /// V_u = dead + areaFactor·Σ A·y [m³, m³/rad].
    SpaceBehind at(double window) const;
    /// Largest and smallest volume, to the step of a search in quarter degrees of the cycle [m³].
    struct Bounds {
        double smallest = 0.0, largest = 0.0;
    };
    Bounds bounds() const;
};

/// Ambient gas through the reed at a pressure in the pump chamber [kg/s], ≥ 0: quasi-steady, area
/// A·clip((p_amb − p_u − p_crack)/p_full, 0, 1); behind a throttle its pressure is p_amb.
double reedFlow(const Supply& supply, const GasGroup& air, double pumpPressure);

} // namespace lobewright::gas
