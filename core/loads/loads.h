#pragma once

#include "core/gas/cycle/cycle.h"
#include "core/loads/contact_speeds.h"
#include "core/loads/free_body.h"
#include "core/loads/piston.h"
#include "core/loads/quadrature.h"
#include "core/mechanism/folded_angles.h"

#include <memory>
#include <optional>
#include <vector>

namespace lobewright::loads {

/// What the mechanism alone decides: it can be kept while speed and pressures change.
struct Kinematics {
    Samples theta;                  ///< the angles wanted, then what they lack of an even period
    std::vector<Eigen::Index> even; ///< where in theta the samples of one even period stand
    mechanism::FoldedAngles folded; ///< of theta, cylinders by lag
    PerEnd<PistonMotion> motion;    ///< at folded.places(); of a piston that runs
    PerEnd<Samples> pressureAngle;  ///< there [rad]
    /// Cylinder 1 at the even samples of one period, then just before every junction: left-hand
    /// limits, which extremes must not miss.
    struct Period {
        Samples theta; ///< [rad]
        Eigen::Index junctions = 0;
        PerEnd<PistonMotion> motion; ///< of a piston that runs
    } period;
};
/// `theta`: shaft angles wanted [rad], shape (samples), not empty.
Kinematics kinematics(const mechanism::OpposedPair& pair, const Samples& theta);

/// Motion at the nodes of the quadrature between these breaks, one period of cylinder 1.
struct NodeMotion {
    std::vector<double> breaks; ///< [rad]
    Quadrature nodes;
    PerEnd<PistonMotion> motion; ///< of a piston that runs
};
NodeMotion nodeMotion(const mechanism::OpposedPair& pair, std::vector<double> breaks);

/// Lift of one end just before every junction of the pair.
motion::LiftSamples liftBeforeJunctions(const mechanism::OpposedPair& pair, End end);

/// Everything the stage depends on. References must outlive the call.
struct Inputs {
    const mechanism::OpposedPair& pair;
    const Friction& friction;
    double omega = 0.0;               ///< ω [rad/s], > 0
    double underPistonPressure = 0.0; ///< [Pa]
    const Samples& theta;             ///< shaft angles wanted [rad], shape (samples), not empty
    /// Absent: the chamber stands at the under-piston pressure.
    const gas::GasTrace* trace = nullptr;
    const gas::GasTrace* motoredTrace = nullptr; ///< for the speeds of contact without firing
    /// Shaft angles of cylinder 1 where the pressure is not smooth (port kinks) [rad]; any period.
    /// They only serve accuracy.
    std::vector<double> breaks = {};
    /// Unevenly phased cylinders on one plenum: their pressures differ by more than a shift.
    bool cylindersDiffer = false;
    /// Of this pair and these angles; null: found anew.
    const Kinematics* kinematics = nullptr;
    /// Of this pair, taken where its breaks are met again; null: found anew.
    std::shared_ptr<const NodeMotion> nodeMotion = nullptr;
    /// Only what figures are made of; needs `kinematics`: no tilting moments of tracks, no torque
    /// of a cylinder, evenTotalTorque over one period.
    bool forStudy = false;
    bool wantsOrders = true; ///< of the torque; then evenTotalTorque is over the turn in any case
    /// Share of the bore that pumps behind each piston; 0 where it does not.
    PerEnd<double> pumpArea = {};
    /// More breaks, which move with the speed while the others stay (burn start and end).
    std::vector<double> movingBreaks = {};
};

/// Mean loss torques of the whole engine [N·m], ≥ 0.
struct MeanLosses {
    double ring = 0.0, guide = 0.0;
    double roller = 0.0; ///< rolling resistance and roller bearing
    double slip = 0.0, shaftBearing = 0.0;
    double total() const { return ring + guide + roller + slip + shaftBearing; }
};

/// A loss (or gain) as mean effective pressure: 2π·T/(c·cylinders·V_s) [Pa].
double meanEffectivePressure(const mechanism::OpposedPair& pair, double meanTorque);

/// Work of a turn, all cylinders [J], by quadrature between events (not from the output samples).
struct WorkBalance {
    double gas = 0.0;      ///< ∮p dV, less what the pump takes
    double friction = 0.0; ///< rings, guide, rollers, slip, shaft bearings
    double shaft = 0.0;    ///< ∮T dθ
    double moved = 0.0;    ///< Σ∫|T_piston|dθ
    double inertia = 0.0;  ///< of the inertia torque; exactly 0 on paper
    /// |shaft − (gas − friction)| relative to the work moved, Σ∫|T_piston|dθ. Large where a piston
    /// lifts off or jams: its force balance is open there.
    double residual = 0.0;
};

/// Firing order of the engine.
struct Firing {
    std::vector<double> angles; ///< IDC of every cylinder and cycle in a turn [rad], ascending
    double shortestInterval = 0.0, longestInterval = 0.0; ///< between different angles [rad]
    int together = 1; ///< largest number of cylinders that fire at the same angle
};

/// Load changes between the flanks of a closed track (rattle), or lift-off and landing on an open
/// one.
struct FlankChange {
    End end = End::inlet;
    double theta = 0.0;      ///< shaft angle of cylinder 1 [rad]
    bool leavesPush = false; ///< from the push flank; false: back to it
};

/// A value at a place.
struct Extremum {
    double value = 0.0;
    double theta = 0.0; ///< [rad]
};

/// The lowest contact force and what it is made of.
struct LowestContact : Extremum {
    AxialShares shares; ///< along the cylinder; inertia, gas or rings pull where negative
};

/// Forces at quadrature nodes over one period of cylinder 1: ∮f dθ over the period = Σ w·f. Not in
/// order.
struct Nodes {
    Samples theta, weight, pressure;
    PerEnd<PistonLoads> piston;
};

struct Loads {
    Samples theta, pressure;            ///< [rad], [Pa] cylinder 1
    PerEnd<PistonLoads> piston;         ///< cylinder 1
    Samples cylinderTorque;             ///< cylinder 1 [N·m]
    Samples totalTorque;                ///< gas, inertia and friction of all cylinders [N·m]
    Samples shaftBearingLoss;           ///< whole engine [N·m], ≥ 0
    PerEnd<TrackForces> track;          ///< all rollers on each track
    Samples evenTheta, evenTotalTorque; ///< even samples over a turn, for orders
    Nodes nodes;
    std::shared_ptr<const NodeMotion> nodeMotion; ///< for the next speed
    /// Cylinder 1 just before each junction of its lift curves over a turn: left-hand limits, which
    /// extremes must not miss. Angles [rad].
    Samples edgeTheta;
    PerEnd<PistonLoads> edgePiston;

    double meanTorque = 0.0; ///< of totalTorque [N·m]
    double highestTorque = 0.0, lowestTorque = 0.0;
    double peakToPeakTorque = 0.0;
    std::optional<double> ripple; ///< (max − min)/|mean|; none where |mean| < 1 % of the peak
    Samples torqueOrders;         ///< amplitude of shaft orders 0 (the mean) … [N·m]
    Firing firing;
    MeanLosses losses;
    WorkBalance work;

    PerEnd<ContactSpeeds> contactSpeeds;                       ///< with the trace of this run
    std::optional<PerEnd<ContactSpeeds>> contactSpeedsMotored; ///< absent without a motored trace
    std::vector<FlankChange> flankChanges; ///< over one period of cylinder 1, ascending
    /// Extremes of cylinder 1 over the samples and both sides of every junction.
    PerEnd<LowestContact> lowestContactForce; ///< demanded, negative where an open track is left
    PerEnd<Extremum> highestContactForce;     ///< largest |N|
    PerEnd<Extremum> highestSideForce;        ///< largest |N·sin α|
    PerEnd<Extremum> jamMargin; ///< lowest bracket where N·ẏ > 0 (1 where there is none)
};

/// Forces and torques of a whole engine.
Loads solveLoads(const Inputs& inputs);

/// Firing angles of the engine; needs only the mechanism.
Firing firing(const mechanism::OpposedPair& pair);

} // namespace lobewright::loads
