#pragma once

#include "core/ports/row.h"
#include "core/result.h"
#include "core/units.h"

#include <optional>
#include <vector>

namespace lobewright::gas {

enum class Fuel { petrol, methane, hydrogen, diesel, ethanol };
enum class SupplyKind { reservoir, blower, underPiston, compressor };
/// When the fuel comes to the air: after the last port has closed, or with it through the ports.
enum class Mixture { injected, premixed };
/// The pistons whose backs pump.
enum class PumpSides { inlet, both };
enum class ScavengingModel { perfectMixing, perfectDisplacement, displacementThenMixing };
enum class WallHeatModel { none, woschni, hohenberg };

struct Burn {
    bool bestTorque = false;                    ///< start searched for the highest net imep (F8)
    double start = -12.0 * units::pi / 180.0;   ///< cycle angle from IDC [rad]
    double duration = 50.0 * units::pi / 180.0; ///< cycle angle [rad], > 0
    double wiebeA = 6.908;
    double wiebeM = 2.0;
    bool operator==(const Burn&) const = default;
};

/// A reed valve that lets ambient gas into the space under a piston: its area opens in proportion
/// to the drop of pressure beyond that which cracks it.
struct Reed {
    double area = 260e-6;              ///< fully open [m²]
    double dischargeCoefficient = 0.7; ///< 0 < C_d ≤ 1
    double cracking = 0.01e5;          ///< drop at which it opens [Pa]
    double fullOpen = 0.04e5;          ///< further drop at which it is fully open [Pa]
    bool operator==(const Reed&) const = default;
};

/// The space under the pistons as pump: V_u = dead + areaFactor·A·y, filled through the reed or
/// through a row that the skirt uncovers, emptied through the inlet ports.
struct Pump {
    PumpSides sides = PumpSides::inlet; ///< of an opposed engine
    bool shared = false;                ///< one case for all cylinders instead of a chamber each
    double deadVolume = 130e-6;         ///< with the piston at outer dead centre [m³]
    double areaFactor = 0.92;           ///< 1 less the share of a piston rod
    double wallArea = 0.0;              ///< that the gas exchanges heat with [m²]; 0: adiabatic
    double wallCoefficient = 60.0;      ///< of heat transfer [W/(m²·K)]
    double wallTemperature = 350.0;     ///< [K]
    /// Between the pump chamber and the inlet ports [m³]; absent: the chamber is at the ports.
    std::optional<double> transferVolume;
    double transferArea = 600e-6; ///< effective, of the passage into it [m²]
    Reed reed;                    ///< where no skirt row is given
    /// Uncovered by the lower end of the skirt of every piston that pumps; `edge` is counted from
    /// that end at outer dead centre, inward, and is the edge uncovered first.
    std::optional<ports::Row> skirtRow;
    bool operator==(const Pump&) const = default;
};

/// How a compressor wheel is described: by coefficients, or by a table of measured points.
enum class WheelCharacteristic { coefficients, table };

/// A row of such a table, speed and flow corrected to the table's reference state.
struct WheelPoint {
    double speed = 1e4; ///< [rad/s]
    double flow = 0.05; ///< [kg/s]
    double pressureRatio = 1.5;
    double efficiency = 0.7; ///< isentropic
    bool operator==(const WheelPoint&) const = default;
};

/// A radial compressor wheel by its coefficients: φ = ṁ/(ρ₁·u·D²) of flow, ψ of isentropic head.
/// Defaults are those of radial blades: ψ₀ from slip factor 0.9, power input factor 1.04 and
/// efficiency 0.78 (Cohen, Rogers & Saravanamuttoo, Gas Turbine Theory, ch. 4, from memory; their
/// wheel runs at φ = 0.061); the other flow coefficients are own estimates about that.
struct Wheel {
    double diameter = 0.08;        ///< D at the tip [m]
    double headCoefficient = 0.73; ///< ψ₀, the highest
    double peakFlow = 0.045;       ///< φ_p, where the head is highest
    double surgeFlow = 0.04;       ///< φ_s, below which the wheel surges
    double chokeFlow = 0.105;      ///< φ_c, where no head is left
    double bestEfficiency = 0.78;
    double bestFlow = 0.06; ///< φ_b of the best efficiency
    WheelCharacteristic characteristic = WheelCharacteristic::coefficients;
    std::vector<WheelPoint> points;       ///< of a table, in any order
    double referencePressure = 1.0e5;     ///< that its speeds and flows are corrected to [Pa]
    double referenceTemperature = 298.15; ///< [K]
    bool operator==(const Wheel&) const = default;
};

/// A turbine behind an exhaust plenum: η = η_b·(2·ν − ν²), ν = (u/c₀)/(u/c₀)_b, with c₀ the
/// spouting velocity. An ideal radial wheel is best at u/c₀ = 0.707 (Dixon & Hall, ch. 8).
struct Turbine {
    double exhaustVolume = 3e-3;        ///< plenum between ports and nozzle [m³]
    double nozzleArea = 400e-6;         ///< effective [m²]
    double diameter = 0.08;             ///< of the wheel at its inlet [m]
    double bestEfficiency = 0.72;       ///< own estimate
    double bestSpeedRatio = 0.7;        ///< (u/c₀)_b
    double mechanicalEfficiency = 0.95; ///< of the bearings, own estimate
    bool operator==(const Turbine&) const = default;
};

/// What turns the wheel of a compressor.
enum class WheelDrive { gear, turbine };
/// What stands between ambient and plenum: the wheel alone, or a blower on the shaft behind it.
enum class Stages { wheel, wheelThenBlower };

/// A centrifugal compressor that fills the plenum.
struct Compressor {
    WheelDrive drive = WheelDrive::gear;
    double gearRatio = 15.0; ///< wheel turns per shaft turn
    Stages stages = Stages::wheel;
    /// Outlet of a cooler between wheel and blower [K]; absent: no cooler there.
    std::optional<double> interCoolerTemperature;
    Wheel wheel;
    Turbine turbine;
    bool operator==(const Compressor&) const = default;
};

struct Supply {
    SupplyKind kind = SupplyKind::reservoir;
    double ambientPressure = 1.0e5;     ///< [Pa]
    double ambientTemperature = 298.15; ///< [K]
    double isentropicEfficiency = 0.65;
    /// Pressure before the intake by that of the ambient air, as behind a throttle; not of a
    /// reservoir.
    double throttle = 1.0;
    // reservoir
    double pressure = 1.0e5;     ///< [Pa]
    double temperature = 298.15; ///< [K]
    bool unpaid = false;         ///< supply power shown as not counted instead of deducted (A8)
    // blower with plenum (F6); a compressor has the plenum and the cooler too
    double displacement = 500e-6; ///< per blower turn [m³]
    double driveRatio = 1.0;      ///< blower turns per shaft turn
    double volumetricEfficiency = 0.85;
    double plenumVolume = 3e-3;                   ///< [m³]
    std::optional<double> afterCoolerTemperature; ///< outlet [K]; absent: no cooler
    Pump pump;
    Compressor compressor;
    bool hasTurbine() const {
        return kind == SupplyKind::compressor && compressor.drive == WheelDrive::turbine;
    }
    bool operator==(const Supply&) const = default;
};

/// Short circuit of a one-sided engine where none is given: the stream has to turn round at the
/// head (own estimate; loop-scavenged cylinders lie between 0.05 and 0.3, Heywood, ch. 6.6, and
/// Blair, Design and Simulation of Two-Stroke Engines).
inline constexpr double oneSidedShortCircuit = 0.15;

struct Scavenging {
    ScavengingModel model = ScavengingModel::perfectMixing;
    double displacedFraction = 0.5; ///< used by displacementThenMixing
    double shortCircuitFraction = 0.0;
    bool operator==(const Scavenging&) const = default;
};

struct WallHeat {
    WallHeatModel model = WallHeatModel::woschni;
    double crownTemperature = 480.0;               ///< [K]
    std::optional<double> exhaustCrownTemperature; ///< [K]; absent: as the inlet crown
    std::optional<double> headTemperature; ///< of a one-sided engine [K]; absent: as the crown
    double linerTemperature = 420.0;       ///< [K]
    double multiplier = 1.0;
    bool operator==(const WallHeat&) const = default;
};

/// All settings of the gas side, as the design file states them, in SI.
struct Settings {
    Fuel fuel = Fuel::methane;
    double lambda = 1.0;
    Mixture mixture = Mixture::injected;
    double combustionEfficiency = 0.97;
    std::optional<double> octaneNumber; ///< absent: the fuel's own
    Burn burn;
    Supply supply;
    double exhaustPressure = 1.0e5; ///< [Pa]
    Scavenging scavenging;
    WallHeat wallHeat;
    bool operator==(const Settings&) const = default;
};

/// Every number out of its range, with its path in the design file.
Problems validate(const Settings& settings);

} // namespace lobewright::gas
