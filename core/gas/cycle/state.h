#pragma once

/// State of one cylinder during the integration over the shaft angle. Private to core/gas.
namespace lobewright::gas {

/// Angles that differ by less are the same [rad].
constexpr double sameAngle = 1e-12;

/// Variables of a cylinder in the integrator's vector; rates are per radian of the shaft.
/// The rates depend on the first few only: an integrator's stages need no others.
enum Variable : int {
    // carried on from window to window
    airMass,            ///< [kg]
    productsMass,       ///< [kg]
    temperature,        ///< [K]
    freshMass,          ///< tracer: supplied since the first port opening [kg]
    unburntTemperature, ///< of the gas ahead of the flame [K]
    coupledVariables,
    // events are judged by these as well
    residualMass = coupledVariables, ///< gas of before the inlet opened that is still there [kg]
    slugMass,                        ///< gas pushed back into the inlet runner [kg]
    knockIntegral,                   ///< Livengood–Wu integral
    judgedVariables,
    slugProducts = judgedVariables, ///< of the slug [kg]
    slugEnthalpy,                   ///< of the slug [J]
    outflowMass,                    ///< through the exhaust since the last closing [kg]
    outflowProducts,                ///< its products [kg]
    outflowTemperature,             ///< ∫T dm of it [kg·K]
    carriedVariables,
    // counted from the start of a window or cycle
    work = carriedVariables, ///< ∫p dV [J]
    wallHeat,                ///< [J]
    inletEnthalpy,           ///< in through the inlet, net [J]
    exhaustEnthalpy,         ///< out through the exhaust, net [J]
    inletMass,               ///< in, net [kg]
    exhaustMass,             ///< out, net [kg]
    deliveredMass,           ///< fresh gas in, net [kg]
    burntFuel,               ///< [kg]
    cylinderVariables
};
inline constexpr int countedVariables = cylinderVariables - carriedVariables;

/// A gas about to pass a port.
struct Stream {
    double products = 0.0; ///< share by mass
    double temperature = 0.0;
    double enthalpy = 0.0;    ///< [J/kg]
    double gasConstant = 0.0; ///< [J/(kg·K)]
    double gamma = 0.0;
};

/// What a cylinder carries from one period into the next, at the closing where its period begins.
struct Charge {
    double air = 0.0, products = 0.0; ///< [kg]
    double temperature = 0.0;         ///< [K]
    double slugMass = 0.0, slugProducts = 0.0,
           slugEnthalpy = 0.0;       ///< in the runner [kg], [kg], [J]
    double exhaustProducts = 0.0;    ///< share of the last period's outflow
    double exhaustTemperature = 0.0; ///< of it [K]
    double fresh = 0.0;              ///< taken in since the ports opened and kept [kg]
};

enum class InletFlow { closed, fresh, slug, back };
enum class ExhaustFlow { closed, out, back };

/// Which equations hold just now. They change only where the integrator stops.
struct Mode {
    InletFlow inlet = InletFlow::closed;
    ExhaustFlow exhaust = ExhaustFlow::closed;
    bool displacing = false; ///< outflow is still the gas of before the inlet opened
    bool burning = false;
    bool combustionHeat = false; ///< Woschni's combustion term is on
    bool knockCounting = false;
    bool burnStarted = false;
    // these only tell where a formula bends; the formulas decide for themselves
    bool inletChoked = false, exhaustChoked = false, hot = false, pressureExcess = true;
    bool freshLimitsShortCircuit = true;
    bool knockReached = false;
    bool portsOpen() const { return inlet != InletFlow::closed || exhaust != ExhaustFlow::closed; }
};

/// What a cylinder remembers of earlier in the cycle.
struct Memory {
    int cycle = 0; ///< index in the period
    double trappedMass = 0.0, trappedPressure = 0.0, trappedTemperature = 0.0;
    double trappedVolume = 0.0; ///< at the last port closing
    double trappedAir = 0.0;
    double fuelMass = 0.0;                         ///< m_f [kg]
    double burnableFuel = 0.0;                     ///< m_f,b [kg]
    double startPressure = 0.0, startVolume = 1.0; ///< at the burn start
    double motoredIndex = 1.35;
    double displacedUntil = 0.0; ///< residual mass at which displacement ends [kg]
    Stream residual;             ///< composition at inlet opening; temperature not used
    Stream slug;                 ///< while it returns
    Stream exhaustBack;          ///< mean outflow of the previous cycle
    Mode mode;
};

} // namespace lobewright::gas
