#pragma once

#include "core/gas/cycle/cycle.h"
#include "core/gas/cycle/state.h"
#include "core/gas/properties/properties.h"

#include <array>
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
    /// C_d·A of the rows that skirts uncover [m²]; 0 where there are none.
    double skirtArea(double window) const;
    /// Window angles at which a skirt begins or ends to uncover its row, over a period [rad].
    std::vector<double> skirtEvents() const;
    /// Largest and smallest volume, to the step of a search in quarter degrees of the cycle [m³].
    struct Bounds {
        double smallest = 0.0, largest = 0.0;
    };
    Bounds bounds() const;

  private:
    /// Inward positions of the pistons of a cylinder, from outer dead centre [m]; 0 of a piston
    /// that does not pump: it uncovers nothing.
    std::array<double, 2> positions(double window, double lag) const;
};

/// Ambient gas through the reed at a pressure in the pump chamber [kg/s], ≥ 0: quasi-steady, area
/// A·clip((p_amb − p_u − p_crack)/p_full, 0, 1); behind a throttle its pressure is p_amb.
double reedFlow(const Supply& supply, const GasGroup& air, double pumpPressure);

/// Gas through the passage between a pump chamber and its transfer volume [kg/s], positive into the
/// volume: quasi-steady, both ways.
double transferFlow(const Pump& pump, const Stream& chamber, double chamberPressure,
                    const Stream& volume, double volumePressure);

/// Gas through an open row under the skirt [kg/s], positive from ambient into the pump chamber:
/// quasi-steady, both ways. `area`: C_d·A [m²]; `inside`: what would leave.
double skirtFlow(const Supply& supply, const GasGroup& air, double area, const Stream& inside,
                 double pumpPressure);

} // namespace lobewright::gas
