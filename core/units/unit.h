#pragma once

#include "core/units.h"

#include <span>
#include <string_view>

/// The one table of units: of files, tables, formulas and screens.
namespace lobewright {

/// A metric unit of files and screens, and how a reader of inches sees it.
struct Unit {
    std::string_view symbol;
    /// SI = value·factor/divisor. Two numbers, because division by 1000 is exact where
    /// multiplication by 1e-3 is not.
    double factor = 1.0, divisor = 1.0;
    std::string_view inchSymbol{}; ///< empty: both systems share the unit
    double inchFactor = 1.0;       ///< value in inchSymbol = value·inchFactor + inchOffset
    double inchOffset = 0.0;       ///< of a temperature on another scale
};

double toSi(const Unit& unit, double value);
/// The shortest decimal that toSi() turns into exactly `si`; where no double does, the nearest with
/// 15 digits.
double fromSi(const Unit& unit, double si);

/// The decimal of so many significant digits that is nearest; what is not finite stays.
double roundedTo(int digits, double value);

/// Every row of the table.
std::span<const Unit* const> allUnits();
/// The row of this symbol; null where there is none.
const Unit* findUnit(std::string_view symbol);

// Exact by definition: international inch, avoirdupois pound, standard gravity (NIST SP 811).
namespace units {
inline constexpr double inch = 0.0254;                 // [m]
inline constexpr double foot = 0.3048;                 // [m]
inline constexpr double pound = 0.45359237;            // [kg]
inline constexpr double gravity = 9.80665;             // [m/s²]
inline constexpr double poundForce = pound * gravity;  // [N]
inline constexpr double poundFoot = poundForce * foot; // [N·m], [J]
inline constexpr double psi = poundForce / (inch * inch);
inline constexpr double horsepower = 550.0 * poundFoot; // [W]
inline constexpr double thermalUnit = 1055.05585262;    // Btu, international table [J]
} // namespace units

/// "12.5 in mm": the rows of the table.
namespace in {

inline constexpr Unit pure{""};
inline constexpr Unit percent{"%", 1.0, 100.0};

inline constexpr Unit m{"m", 1.0, 1.0, "ft", 1.0 / units::foot};
inline constexpr Unit mm{"mm", 1.0, 1e3, "in", 1e-3 / units::inch};
inline constexpr Unit um{"µm", 1.0, 1e6, "µin", 1.0 / units::inch};
inline constexpr Unit perMm{"1/mm", 1e3, 1.0, "1/in", 1e3 * units::inch};
inline constexpr Unit mm2{"mm²", 1.0, 1e6, "in²", 1e-6 / (units::inch * units::inch)};
inline constexpr Unit cm2{"cm²", 1.0, 1e4, "in²", 1e-4 / (units::inch * units::inch)};
inline constexpr Unit cm3{"cm³", 1.0, 1e6, "in³", 1e-6 / (units::inch * units::inch * units::inch)};
inline constexpr Unit litrePerSecond{"L/s", 1.0, 1e3};

inline constexpr Unit degrees{"°", units::pi, 180.0};
inline constexpr Unit shaftDegrees{"shaft °", units::pi, 180.0};
inline constexpr Unit cycleDegrees{"° cycle", units::pi, 180.0};
inline constexpr Unit degreesOfCycle{"cycle °", units::pi, 180.0};
inline constexpr Unit mmPerRad{"mm/rad", 1.0, 1e3, "in/rad", 1e-3 / units::inch};
inline constexpr Unit mmPerRad2{"mm/rad²", 1.0, 1e3, "in/rad²", 1e-3 / units::inch};
inline constexpr Unit mmPerRad3{"mm/rad³", 1.0, 1e3, "in/rad³", 1e-3 / units::inch};
inline constexpr Unit mmPerDegree{"mm/°", 180.0, 1e3 * units::pi, "in/°", 1e-3 / units::inch};
inline constexpr Unit mmPerTurn{"mm/turn", 1.0, 1e3, "in/turn", 1e-3 / units::inch};

inline constexpr Unit seconds{"s"};
inline constexpr Unit ms{"ms", 1.0, 1e3};
inline constexpr Unit hours{"h", 3600.0, 1.0};
inline constexpr Unit perSecond{"1/s"};
inline constexpr Unit perHour{"1/h", 1.0, 3600.0};
inline constexpr Unit rpm{"1/min", 2.0 * units::pi, 60.0}; ///< of a shaft, rad/s in SI
inline constexpr Unit turnsPerMinute{"rpm", 2.0 * units::pi, 60.0};
inline constexpr Unit metrePerSecond{"m/s", 1.0, 1.0, "ft/s", 1.0 / units::foot};
inline constexpr Unit metrePerSecond2{"m/s²", 1.0, 1.0, "ft/s²", 1.0 / units::foot};
inline constexpr Unit metrePerSecond3{"m/s³", 1.0, 1.0, "ft/s³", 1.0 / units::foot};
inline constexpr Unit secondsPerMetre{"s/m", 1.0, 1.0, "s/ft", units::foot};

inline constexpr Unit N{"N", 1.0, 1.0, "lbf", 1.0 / units::poundForce};
inline constexpr Unit kN{"kN", 1e3, 1.0, "lbf", 1e3 / units::poundForce};
inline constexpr Unit Nm{"N·m", 1.0, 1.0, "lb·ft", 1.0 / units::poundFoot};
inline constexpr Unit J{"J", 1.0, 1.0, "ft·lbf", 1.0 / units::poundFoot};
inline constexpr Unit kW{"kW", 1e3, 1.0, "hp", 1e3 / units::horsepower};
inline constexpr Unit W{"W", 1.0, 1.0, "hp", 1.0 / units::horsepower};
inline constexpr Unit WPerMm2{"W/mm²", 1e6, 1.0, "hp/in²",
                              1e6 * units::inch* units::inch / units::horsepower};

inline constexpr Unit bar{"bar", 1e5, 1.0, "psi", 1e5 / units::psi};
inline constexpr Unit MPa{"MPa", 1e6, 1.0, "ksi", 1e3 / units::psi};
inline constexpr Unit GPa{"GPa", 1e9, 1.0, "10⁶ psi", 1e3 / units::psi};
inline constexpr Unit perGPa{"1/GPa", 1.0, 1e9, "10⁻⁶/psi", units::psi / 1e3};
inline constexpr Unit pascalSecond{"Pa·s", 1.0, 1.0, "µreyn", 1e6 / units::psi};

inline constexpr Unit kg{"kg", 1.0, 1.0, "lb", 1.0 / units::pound};
inline constexpr Unit g{"g", 1.0, 1e3, "lb", 1e-3 / units::pound};
inline constexpr Unit mg{"mg", 1.0, 1e6, "gr", 7000.0e-6 / units::pound};
inline constexpr Unit kgm2{"kg·m²", 1.0, 1.0, "lb·ft²",
                           1.0 / (units::pound * units::foot * units::foot)};
inline constexpr Unit gPerSecond{"g/s", 1.0, 1e3, "lb/s", 1e-3 / units::pound};
inline constexpr Unit kgPerHour{"kg/h", 1.0, 3600.0, "lb/h", 1.0 / units::pound};
inline constexpr Unit kgPerSecond{"kg/s", 1.0, 1.0, "lb/s", 1.0 / units::pound};
inline constexpr Unit gPerKWh{"g/kWh", 1.0, 3.6e9, "lb/hp·h",
                              1e-6 / units::pound* units::horsepower};

inline constexpr Unit kelvin{"K", 1.0, 1.0, "°F", 1.8, -459.67};
inline constexpr Unit kJPerKg{"kJ/kg", 1e3, 1.0, "Btu/lb", 1e3 * units::pound / units::thermalUnit};
inline constexpr Unit MJPerKg{"MJ/kg", 1e6, 1.0, "Btu/lb", 1e6 * units::pound / units::thermalUnit};
inline constexpr Unit JPerKgK{"J/(kg·K)", 1.0, 1.0, "ft·lbf/(lb·°F)",
                              units::pound / (1.8 * units::poundFoot)};
inline constexpr Unit WPerM2K{"W/(m²·K)", 1.0, 1.0, "Btu/(h·ft²·°F)",
                              3600.0 * units::foot* units::foot / (1.8 * units::thermalUnit)};

} // namespace in
} // namespace lobewright
