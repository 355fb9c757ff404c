#pragma once

#include "core/design/catalogue.h"
#include "core/units.h"

/// Units of the design file.
namespace lobewright::design::in {

inline constexpr Unit pure{"", 1.0, 1.0};
inline constexpr Unit mm{"mm", 1.0, 1e3};
inline constexpr Unit um{"µm", 1.0, 1e6};
inline constexpr Unit cm3{"cm³", 1.0, 1e6};
inline constexpr Unit degrees{"°", units::pi, 180.0};
inline constexpr Unit cycleDegrees{"° cycle", units::pi, 180.0};
inline constexpr Unit mmPerDegree{"mm/°", 180.0, 1e3 * units::pi};
inline constexpr Unit bar{"bar", 1e5, 1.0};
inline constexpr Unit MPa{"MPa", 1e6, 1.0};
inline constexpr Unit GPa{"GPa", 1e9, 1.0};
inline constexpr Unit perGPa{"1/GPa", 1.0, 1e9};
inline constexpr Unit pascalSecond{"Pa·s", 1.0, 1.0};
inline constexpr Unit kelvin{"K", 1.0, 1.0};
inline constexpr Unit kg{"kg", 1.0, 1.0};
inline constexpr Unit kgm2{"kg·m²", 1.0, 1.0};
inline constexpr Unit kW{"kW", 1e3, 1.0};
inline constexpr Unit kN{"kN", 1e3, 1.0};
inline constexpr Unit rpm{"1/min", 2.0 * units::pi, 60.0};
inline constexpr Unit metrePerSecond{"m/s", 1.0, 1.0};
inline constexpr Unit hours{"h", 3600.0, 1.0};

} // namespace lobewright::design::in
