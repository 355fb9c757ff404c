#pragma once

#include "core/gas/models/settings.h"
#include "core/monitor.h"
#include "core/result.h"
#include "core/samples.h"

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace lobewright::gas {

/// What the gas sees of the mechanism at one shaft angle.
struct ChamberGeometry {
    double volume = 0.0;      ///< [m³]
    double volumeRate = 0.0;  ///< dV/dθ [m³/rad]
    double inletArea = 0.0;   ///< effective, Σ C_d·A [m²]
    double exhaustArea = 0.0; ///< effective, Σ C_d·A [m²]
    double linerLength = 0.0; ///< exposed liner [m]
};

/// Space that pistons have moved out of with their backs.
struct SpaceBehind {
    double volume = 0.0; ///< A·Σ y, from where they stand at outer dead centre without shift [m³]
    double rate = 0.0;   ///< [m³/rad]
};

/// Angles of one cycle [rad of the shaft], as in ports::CycleEvents, without wrapping.
struct CycleAngles {
    double idc = 0.0;
    double firstOpening = 0.0;
    double inletOpens = 0.0;
    double exhaustOpens = 0.0;
    double inletCloses = 0.0;
    double exhaustCloses = 0.0;
    double lastClosing = 0.0;
};

/// A chamber whose volume and openings are known functions of the shaft angle. The cam-track pair,
/// the pair on cranks and the four-stroke cylinder all present themselves this way.
class Chamber {
  public:
    virtual ~Chamber() = default;
    /// A copy that lives as long as the solution that needs it.
    virtual std::unique_ptr<Chamber> clone() const = 0;
    virtual ChamberGeometry at(double theta) const = 0;
    virtual double volume(double theta) const { return at(theta).volume; } ///< alone [m³]
    /// Behind the pistons that `sides` means; nothing where the chamber has none to pump with.
    virtual SpaceBehind behind(double theta, PumpSides sides) const {
        (void)theta;
        (void)sides;
        return {};
    }
    virtual double period() const = 0;        ///< after which everything repeats [rad]
    virtual double cyclesPerTurn() const = 0; ///< c; ½ for a four-stroke
    virtual double bore() const = 0;          ///< [m]
    virtual double sweptVolume() const = 0;   ///< V_s [m³]
    /// S_i + S_e, or 2·S of an only piston [m]: mean piston speed = this·c·n (A5)
    virtual double meanStrokeSum() const = 0;
    /// One entry per cycle of a period; the period runs from cycles().back().lastClosing − period.
    virtual const std::vector<CycleAngles>& cycles() const = 0;
    /// Angles in [0, period) where the geometry is not smooth; the integrator stops there.
    /// Ascending.
    virtual const std::vector<double>& kinks() const = 0;
};

/// How the chamber is run.
struct RunConditions {
    double omega = 0.0; ///< [rad/s], > 0
    bool motored = false;
    int cylinders = 1;
    std::vector<double> cylinderAngles; ///< ψ_k [rad]
};

struct CycleStart; ///< where a converged period begins; see steady_state.h

/// Criteria of the steady-state search; change only to study convergence.
struct CycleOptions {
    double relativeTolerance = 3e-7; ///< of the integrator
    double steadyTolerance =
        1e-6; ///< relative change a period of trapped mass, temperature, plenum state
    int maxPeriods = 400;
    /// Evaluations of one cylinder's rates after which the search gives up, that for the best burn
    /// start included; some seconds' worth, of which ordinary engines need a thousandth. As many
    /// more for every four cylinders on one plenum that run differently.
    long maxEvaluations = 6000000;
    /// Integrate evenly phased cylinders on one plenum over the whole period although they run
    /// alike.
    bool integrateTogether = false;
    /// The cycle of a similar engine, to begin the search from. Null, or one that does not fit:
    /// everything is searched for.
    std::shared_ptr<const CycleStart> near = nullptr;
    /// Where the best burn start is asked for: that of `near` will do. Otherwise the best is looked
    /// for beside it, unless it is known well enough.
    bool keepBurnStart = false;
    /// As relativeTolerance and steadyTolerance, for that search.
    double nearTolerance = 3e-7, nearSteadiness = 1e-6;
};

/// Figures of one cycle [SI].
struct CycleFigures {
    double work = 0.0;               ///< ∮p dV [J]
    double imep = 0.0;               ///< [Pa]
    double fuelMass = 0.0;           ///< m_f [kg], 0 when motored
    double burntFuelMass = 0.0;      ///< m_f,b·x(end) [kg]
    double fuelHeat = 0.0;           ///< m_f·LHV [J]
    double suppliedFuelMass = 0.0;   ///< m_f, and what of a mixture leaves unburnt with it [kg]
    double heatReleased = 0.0;       ///< [J]
    double wallHeat = 0.0;           ///< to the walls [J]
    double exhaustEnthalpy = 0.0;    ///< net, sensible from 298.15 K, out positive [J]
    double supplyEnthalpy = 0.0;     ///< net, in positive [J]
    double trappedMass = 0.0;        ///< at the last port closing [kg]
    double trappedPressure = 0.0;    ///< [Pa]
    double trappedTemperature = 0.0; ///< [K]
    double purity = 0.0;             ///< m_air/m_trapped
    double deliveredMass = 0.0;      ///< m_d [kg]
    double deliveryRatio = 0.0, scavengeRatio = 0.0;
    double trappingEfficiency = 0.0, scavengingEfficiency = 0.0, chargingEfficiency = 0.0;
    double indicatedEfficiency = 0.0;
    double peakPressure = 0.0, peakPressureAngle = 0.0;       ///< [Pa], θ [rad]
    double peakTemperature = 0.0, peakTemperatureAngle = 0.0; ///< [K], θ [rad]
    double burnStart = 0.0;              ///< cycle angle from IDC [rad], found or given
    std::optional<double> knockIntegral; ///< absent: not available for this fuel or motored
    std::optional<double> knockAngle;    ///< θ where the integral reaches 1 [rad]
    double massResidual = 0.0;           ///< F7, relative to the trapped mass
    double energyResidual = 0.0;         ///< F7, relative to the fuel heat (unfired: p_r·V_r)
    // what the residuals are made of
    double inletMass = 0.0, exhaustMass = 0.0;   ///< in through the inlet, out by the exhaust [kg]
    double massChange = 0.0, energyChange = 0.0; ///< of the chamber over the cycle [kg], [J]
    double energyReference = 0.0;                ///< [J]
};

/// State of the chamber at many shaft angles, shape (samples).
struct GasSamples {
    Samples pressure, temperature, airMass, productsMass; ///< [Pa], [K], [kg], [kg]
};

/// A periodic solution that can be read at any angle (dense output of the integrator).
class GasTrace {
  public:
    virtual ~GasTrace() = default;
    /// θ any finite angle [rad]; wrapped into the period. `cylinder` counts from 0 and matters only
    /// when the cylinders are unevenly phased on one plenum; otherwise it shifts the trace of
    /// cylinder 1.
    virtual GasSamples sample(const Samples& theta, int cylinder = 0) const = 0;
    virtual double pressure(double theta, int cylinder = 0) const = 0;
    /// Pressure under the pistons that pump [Pa]; empty where they do not.
    virtual Samples pumpPressure(const Samples& theta, int cylinder = 0) const {
        (void)theta;
        (void)cylinder;
        return {};
    }
};

/// What passes ports and walls of cylinder 1, shape (samples); gaps are NaN.
struct GasFlows {
    Samples inlet, exhaust; ///< into the chamber, out of it [kg/s]
    Samples fresh;          ///< into the chamber for the first time [kg/s]
    /// Of what passes, sensible from 298.15 K [J/kg]; gaps where nothing does.
    Samples inletEnthalpy, exhaustEnthalpy;
    Samples wallCoefficient;                   ///< multiplier included [W/(m²·K)]
    Samples unburntTemperature;                ///< ahead of the flame, all ports closed [K]
    Samples supplyPressure, supplyTemperature; ///< before the inlet ports [Pa], [K]
    /// In an exhaust plenum [Pa], [K]; without one pressure behind the ports, temperature a gap.
    Samples exhaustPressure, exhaustTemperature;
};

/// The flows of a periodic solution, to be read at any angle.
class FlowTrace {
  public:
    virtual ~FlowTrace() = default;
    /// θ any finite angles [rad]; wrapped into the period.
    virtual GasFlows sample(const Samples& theta) const = 0;
};

/// What the search for the steady state took. Everything is counted where it happens.
struct Effort {
    int unsteadyPeriods = 0;  ///< integrated before the one that repeated itself
    double lastChange = 0.0;  ///< of the state over that one, relative
    double askedChange = 0.0; ///< largest that counts as repeating
    long explicitSteps = 0, implicitSteps = 0;
    long stepEvaluations = 0;    ///< in steps, those tried in vain included
    long restartEvaluations = 0; ///< where the equations change
};

/// The space under the pistons over a cycle, mean of all.
struct PumpFigures {
    double work = 0.0;                            ///< ∮p_u dV_u, negative where it takes work [J]
    double lowPressure = 0.0, highPressure = 0.0; ///< [Pa]
    double compressionRatio = 0.0;                ///< largest by smallest volume
    double intakeMass = 0.0;                      ///< through reed or skirt row, net [kg]
    double massResidual = 0.0;   ///< intake − ports − change, relative to the intake
    double energyResidual = 0.0; ///< the same of energy, relative to the intake's enthalpy from 0 K
};

/// A compressor over a period: means.
struct CompressorFigures {
    double wheelSpeed = 0.0; ///< [rad/s]
    double tipSpeed = 0.0;   ///< [m/s]
    double flow = 0.0;       ///< [kg/s]
    double flowCoefficient = 0.0;
    double surgeFlow = 0.0, chokeFlow = 0.0; ///< φ at this speed
    double pressureRatio = 0.0;              ///< mean pressure behind the wheel by that before it
    double outletTemperature = 0.0;          ///< behind the wheel, at the mean flow [K]
    double efficiency = 0.0;                 ///< isentropic, at the mean flow
    double power = 0.0;                      ///< [W]
    double massResidual = 0.0;   ///< of the plenum: in − out − change, relative to what came in
    double energyResidual = 0.0; ///< the same of energy, relative to the enthalpy from 0 K
};

/// A turbine behind its exhaust plenum over a period: means.
struct TurbineFigures {
    bool sustained = true; ///< false: the wheel hardly turns, the exhaust cannot drive it
    double flow = 0.0;     ///< [kg/s]
    double power = 0.0;    ///< from the gas [W]
    double friction = 0.0; ///< lost in the bearings [W]
    double pressure = 0.0, temperature = 0.0; ///< in the exhaust plenum [Pa], [K]
    double outletTemperature = 0.0;           ///< behind the turbine, of the mean flow [K]
    double outletEnthalpy = 0.0;              ///< of what leaves it, sensible from 298.15 K [W]
    double speedRatio = 0.0;                  ///< u/c₀ at the mean pressure and temperature
    double efficiency = 0.0;      ///< power over that of an isentropic expansion of the mean flow
    double balanceResidual = 0.0; ///< of powers on the wheel shaft, relative to the compressor's
    double massResidual = 0.0;    ///< of the exhaust plenum, relative to what came in
    double energyResidual = 0.0;  ///< the same of energy, relative to its enthalpy from 0 K
};

/// A converged cycle. `cycles` has one entry per cycle of a period.
struct CycleSolution {
    std::vector<CycleFigures> cycles; ///< of cylinder 1
    /// Every cylinder's cycles, where unevenly phased cylinders on one plenum run differently;
    /// empty when all run as cylinder 1.
    std::vector<std::vector<CycleFigures>> cylinders;
    std::shared_ptr<const GasTrace> trace;
    std::shared_ptr<const FlowTrace> flows;
    double supplyPower = 0.0;    ///< blower drive or compressor power of all cylinders [W], ≥ 0
    bool supplyPaid = true;      ///< false: shown as not counted (A8)
    double plenumPressure = 0.0; ///< mean [Pa]; the reservoir's pressure for a reservoir
    double plenumTemperature = 0.0; ///< mean [K]
    std::optional<PumpFigures> pump;
    std::optional<CompressorFigures> compressor;
    std::optional<TurbineFigures> turbine;
    int periods = 0; ///< periods integrated until steady
    long rhsEvaluations = 0, steps = 0;
    Effort effort;
    std::shared_ptr<const CycleStart> start; ///< for CycleOptions::near
    bool near = false;                       ///< found from there
    std::vector<Message> remarks; ///< e.g. temperature above the range of the property fits
};

/// Where the period begins in an engine between engines like it: the weighted sum of their starts,
/// the nearest first, the weights adding up to 1. `fewer`: weights of the nearest of them only,
/// none where there are too few; a burn start on which both agree need not be looked for. Null
/// where there is none or one of them is.
std::shared_ptr<const CycleStart>
startBetween(const std::vector<std::shared_ptr<const CycleStart>>& starts,
             const std::vector<double>& weights, const std::vector<double>& fewer = {});

struct WorkingGas;

/// Solves the gas cycle to cyclic steady state: single zone, two gas groups, thermally perfect.
/// Errors (path ""): not converged within the limit, no air at the last port closing, temperature
/// or mass out of range, cancelled by the monitor; with a path: numbers out of range, a burn that
/// starts while ports are open. Never returns NaN.
Result<CycleSolution> solveCycle(const Chamber& chamber, const Settings& settings,
                                 const RunConditions& run, Monitor& monitor,
                                 const CycleOptions& options = {});
/// The same with a gas of one's own instead of air and the products of `settings.fuel`.
Result<CycleSolution> solveCycle(const Chamber& chamber, const Settings& settings,
                                 const WorkingGas& gas, const RunConditions& run, Monitor& monitor,
                                 const CycleOptions& options = {});

} // namespace lobewright::gas
