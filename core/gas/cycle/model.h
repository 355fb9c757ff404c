#pragma once

#include "core/gas/cycle/cycle.h"
#include "core/gas/cycle/pump_space.h"
#include "core/gas/cycle/state.h"
#include "core/gas/models/feeder.h"
#include "core/gas/models/fuel.h"

#include <array>
#include <optional>
#include <vector>

namespace lobewright::gas {

/// A place where the integrator stops: what happens there to the cylinder, as bits.
enum StopAction : unsigned {
    kink = 0,
    inletCloses = 1u << 0,
    exhaustCloses = 1u << 1,
    lastClosing = 1u << 2,
    firstOpening = 1u << 3,
    exhaustOpens = 1u << 4,
    inletOpens = 1u << 5,
    burnStarts = 1u << 6,
    knockEnds = 1u << 7,
    burnEnds = 1u << 8
};

struct Stop {
    double angle = 0.0; ///< of the cylinder [rad]
    unsigned actions = kink;
};

/// Everything that stays fixed while a cycle is solved, in the form that the rates need.
struct Model {
    const Chamber* chamber = nullptr;
    WorkingGas gas;
    GasPair groups; ///< air and products of it
    Settings settings;
    double omega = 0.0;
    bool fired = false;
    bool knock = false;             ///< a knock integral is counted
    double start = 0.0;             ///< first angle of the period: the last closing before cycle 1
    double crownArea = 0.0;         ///< one crown [m²]
    double bore = 0.0;              ///< [m]
    double sweptVolume = 0.0;       ///< [m³]
    double meanPistonSpeed = 0.0;   ///< mean of both ends [m/s]
    double burnStart = 0.0;         ///< shaft angle from IDC [rad]
    double burnDuration = 0.0;      ///< shaft angle [rad]
    bool isWheelSustained = true;   ///< the turbine found a balance
    bool burnStartRough = false;    ///< the search for the best one was cut short
    double woschniFactor = 0.0;     ///< woschniOfBore
    double delayFactor = 0.0;       ///< delayOfFuel [s]
    double massScale = 0.0;         ///< a charge [kg]
    double energyScale = 0.0;       ///< its enthalpy [J]
    double exhaustCrown = 0.0;      ///< [K]
    double residualThreshold = 0.0; ///< share of the residual that is not displaced
    PumpSpace pumpSpace;            ///< where the pistons pump
    Feeder feeder;                  ///< of a plenum
    /// Share of fuel vapour in fresh gas; 0 where the fuel is injected.
    double fuelShare = 0.0;
    std::vector<Stop> stops; ///< of one period from `start`, ascending, first at `start`

    double period() const { return chamber->period(); }
    bool pumps() const { return settings.supply.kind == SupplyKind::underPiston; }
    /// The pump gives to a volume of its own before the inlet ports.
    bool hasTransfer() const { return pumps() && settings.supply.pump.transferVolume.has_value(); }
    /// A blower's or compressor's.
    bool hasPlenum() const {
        return settings.supply.kind == SupplyKind::blower ||
               settings.supply.kind == SupplyKind::compressor;
    }
    /// An exhaust plenum receives the outflow and drives a turbine.
    bool hasTurbine() const { return settings.supply.hasTurbine(); }
    /// Lets the wheel of a compressor turn at another speed [rad/s], > 0.
    void setWheelSpeed(double speed);
    bool premixed() const { return fuelShare > 0.0; }
    bool searchesBurnStart() const { return fired && settings.burn.bestTorque; }
    /// Moves the burn start [cycle angle, rad]. Error: ports would be open.
    std::optional<Problem> setBurnStart(double cycleAngle);
    /// Earliest and latest cycle angle at which all ports of every cycle are closed [rad].
    std::array<double, 2> closedInterval() const;
    /// Fresh gas at a temperature.
    Stream freshStream(double temperature) const;
    /// Gas with a share of products at a temperature.
    Stream stream(double products, double temperature) const;
    /// Gas with a share of products and an enthalpy [J/kg].
    Stream streamOfEnthalpy(double products, double enthalpy) const;
};

/// Errors: numbers out of range, a burn that starts while ports are open, a chamber without cycles.
/// Paths are relative to the design file.
Result<Model> makeModel(const Chamber& chamber, const Settings& settings, const WorkingGas& gas,
                        const RunConditions& run);

} // namespace lobewright::gas
