#pragma once

#include <optional>
#include <vector>

namespace lobewright::loads {

/// One piston ring.
struct PistonRing {
    double height = 0.0;          ///< h [m]
    double tensionPressure = 0.0; ///< q [Pa]
    double gasFactor = 0.0;       ///< c, share of the gas pressure behind the ring
    bool operator==(const PistonRing&) const = default;
};

/// Friction of the mechanism. Defaults are the documented ones.
struct Friction {
    std::vector<PistonRing> rings = {
        {1.2e-3, 0.15e6, 0.5}, {1.2e-3, 0.12e6, 0.1}, {2.0e-3, 0.40e6, 0.0}};
    double ringBoundary = 0.12;          ///< f_b
    double ringHydrodynamic = 2.5;       ///< f_h
    double ringCriticalDuty = 1e-4;      ///< D_c
    double linerViscosity = 0.008;       ///< η [Pa·s]
    double guide = 0.08;                 ///< μ_guide
    std::optional<double> guideOverhang; ///< [m]; absent: roller radius
    std::optional<double> guideLength;   ///< [m]; absent: bore
    double rolling = 0.001;              ///< c_r
    double rollerBearing = 0.0025;       ///< μ_b
    double slip = 0.05;                  ///< μ_s
    double shaftBearing = 0.0018;        ///< μ
    double auxiliaryPower = 0.0;         ///< [W]
    bool operator==(const Friction&) const = default;
};

} // namespace lobewright::loads
