#include "core/loads/free_body.h"
#include "core/solution/figures/figures.h"
#include "core/solution/figures/thrust_bearing.h"
#include "core/solution/pipeline/angles.h"
#include "core/solution/pipeline/stage_results.h"
#include "core/units.h"

#include <algorithm>
#include <optional>

LW_TEXTS_OF(Core)

namespace lobewright::solution {

namespace {

using MaybeContactSpeeds = std::optional<PerEnd<loads::ContactSpeeds>>;

/// The speed above which both pistons keep to their tracks [rad/s]; absent where none does.
std::optional<double> lowOf(const PerEnd<loads::ContactSpeeds>& speeds) {
    if (!speeds.inlet.low || !speeds.exhaust.low) {
        return std::nullopt;
    }
    return std::max(speeds.inlet.low->omega, speeds.exhaust.low->omega);
}

/// The speed below which they do [rad/s]; absent where neither is ever decelerated.
std::optional<double> highOf(const PerEnd<loads::ContactSpeeds>& speeds) {
    std::optional<double> lowest;
    for (const End end : bothEnds) {
        if (const auto& bound = speeds[end].high; bound && (!lowest || bound->omega < *lowest)) {
            lowest = bound->omega;
        }
    }
    return lowest;
}

/// A bound of the speeds with contact, and why it may be missing.
struct BoundWords {
    const char* id;
    TextId label, noBound;
};

void addSpeedBound(FigureList& list, const BoundWords& words, const MaybeContactSpeeds& speeds,
                   std::optional<double> (*of)(const PerEnd<loads::ContactSpeeds>&), bool closed) {
    const bool isJudged = speeds && !closed;
    const auto omega = isJudged ? of(*speeds) : std::nullopt;
    list.add({words.id, &in::rpm}, words.label, omega,
             closed     ? LW_TEXT("a closed track holds the roller")
             : isJudged ? words.noBound
                        : LW_TEXT("no pressure trace to judge it by"));
}

/// Bounds of the speeds with contact, with the pressure traces of this speed held.
void addContactSpeeds(FigureList& list, const StageResults& results) {
    const bool closed = results.pair().mechanism().closedTrack;
    const bool isFired = results.gas && !results.design.running.motored;
    const MaybeContactSpeeds own = results.loads.contactSpeeds;
    const MaybeContactSpeeds fired = isFired ? own : std::nullopt;
    const MaybeContactSpeeds motored =
        isFired || !results.gas ? results.loads.contactSpeedsMotored : own;
    constexpr TextId noHigh = LW_TEXT("no piston is ever decelerated");
    constexpr TextId noLow =
        LW_TEXT("no speed keeps contact: gas or ring friction pulls a piston off "
                "its track where inertia does not press it on");
    addSpeedBound(
        list, {"lift_off_speed_fired", LW_TEXT("Lift-off speed, this pressure trace held"), noHigh},
        fired, highOf, closed);
    addSpeedBound(list, {"lift_off_speed_motored", LW_TEXT("Lift-off speed, motored"), noHigh},
                  motored, highOf, closed);
    addSpeedBound(list,
                  {"contact_speed_low_fired",
                   LW_TEXT("Lowest speed with contact, fired (pressure trace held)"), noLow},
                  fired, lowOf, closed);
    addSpeedBound(list,
                  {"contact_speed_high_fired",
                   LW_TEXT("Highest speed with contact, fired (pressure trace held)"), noHigh},
                  fired, highOf, closed);
    addSpeedBound(list,
                  {"contact_speed_low_motored",
                   LW_TEXT("Lowest speed with contact, motored (pressure trace held)"), noLow},
                  motored, lowOf, closed);
    addSpeedBound(list,
                  {"contact_speed_high_motored",
                   LW_TEXT("Highest speed with contact, motored (pressure trace held)"), noHigh},
                  motored, highOf, closed);
    const bool leaves = results.leavesTrack(End::inlet) || results.leavesTrack(End::exhaust);
    // Without the gas of a fired engine nothing presses the pistons on as it will.
    const bool isJudged = closed || results.gas || results.design.running.motored;
    list.addYesNo("keeps_contact", LW_TEXT("Rollers keep contact over the whole revolution"),
                  isJudged ? std::optional(!leaves) : std::nullopt,
                  LW_TEXT("no pressure trace to judge it by"));
}

void addTorqueFigures(FigureList& list, const loads::Loads& loads) {
    list.add({"mean_torque", &in::Nm}, LW_TEXT("Mean torque of gas, inertia and friction"),
             loads.meanTorque);
    list.add({"highest_torque", &in::Nm}, LW_TEXT("Maximum torque over the revolution"),
             loads.highestTorque);
    list.add({"lowest_torque", &in::Nm}, LW_TEXT("Minimum torque over the revolution"),
             loads.lowestTorque);
    list.add({"peak_to_peak_torque", &in::Nm}, LW_TEXT("Peak-to-peak torque"),
             loads.peakToPeakTorque);
    list.add({"torque_ripple"}, LW_TEXT("Torque ripple, (max − min)/|mean|"), loads.ripple,
             LW_TEXT("the mean torque is below 1 % of the peak"));
    list.add({"shortest_firing_interval", &in::shaftDegrees}, LW_TEXT("Shortest firing interval"),
             loads.firing.shortestInterval);
    list.add({"longest_firing_interval", &in::shaftDegrees}, LW_TEXT("Longest firing interval"),
             loads.firing.longestInterval);
    list.add({"cylinders_firing_together"}, LW_TEXT("Cylinders that fire together"),
             loads.firing.together);
}

/// Where the contact force that the motion demands would have to pull. A closed track holds the
/// roller by its other flank.
double offTrackShare(const StageResults& results, End end) {
    if (results.pair().mechanism().closedTrack) {
        return 0.0;
    }
    const Samples demanded = results.loads.piston[end].demandedForce;
    return meanOverTurn(demanded.unaryExpr([](double force) { return force < 0.0 ? 1.0 : 0.0; }),
                        results.theta);
}

/// What holds the exhaust track at its setting.
void addAdjuster(FigureList& list, const StageResults& results) {
    const auto& mechanism = results.pair().mechanism();
    const auto held = loads::adjusterLoads(
        results.loads.track.exhaust, mechanism.adjuster.helixLead, loads::defaultSpline(mechanism));
    list.add({"adjuster_torque_peak", &in::Nm},
             LW_TEXT("Largest torque that the adjuster must hold"), held.torque.abs().maxCoeff());
    list.add({"adjuster_torque_mean", &in::Nm},
             LW_TEXT("Mean torque that the adjuster must hold, forward positive"),
             meanOverTurn(held.torque, results.theta));
    list.add(
        {"adjuster_axial_force_peak", &in::N},
        LW_TEXT("Largest axial force to hold where the adjuster pushes the track along its helix"),
        held.axialForce ? std::optional(held.axialForce->abs().maxCoeff()) : std::nullopt,
        LW_TEXT("without a helix the track cannot be turned by pushing it"));
    list.add({"adjuster_holding_margin", &in::N},
             LW_TEXT("Friction of the adjuster's spline less the force along it, minimum (at half "
                     "the pitch radius)"),
             held.holdingMargin.minCoeff());
    list.addYesNo("adjuster_holds_itself", LW_TEXT("Adjuster's spline holds itself"),
                  held.holdsItself);
}

/// In a one-sided engine nothing answers the thrust of the track inside the shaft.
void addThrustBearing(FigureList& list, const StageResults& results) {
    const Samples& thrust = results.loads.track.inlet.thrust;
    list.add({"thrust_bearing_force_peak", &in::N}, LW_TEXT("Largest force on the thrust bearing"),
             thrust.abs().maxCoeff());
    list.add({"thrust_bearing_force_mean", &in::N},
             LW_TEXT("Mean force on the thrust bearing, away from the cylinders"),
             meanOverTurn(thrust, results.theta));
    const ThrustBearingDuty duty = thrustBearingDuty(results);
    list.add({"thrust_bearing_equivalent_load", &in::N},
             LW_TEXT("Equivalent load of the thrust bearing"), duty.equivalentLoad);
    list.add({"thrust_bearing_life", &in::hours}, LW_TEXT("Rating life of the thrust bearing"),
             duty.life, LW_TEXT("no dynamic rating is given"));
}

} // namespace

void addLoadFigures(FigureList& list, const StageResults& results) {
    const auto& loads = results.loads;
    list.group("loads");
    addTorqueFigures(list, loads);
    for (const End end : results.pair().pistons()) {
        list.add({"highest_contact_force", &in::N, end}, LW_TEXT("Maximum contact force"),
                 loads.highestContactForce[end].value);
        list.add({"lowest_contact_force", &in::N, end},
                 LW_TEXT("Minimum contact force that the motion demands"),
                 loads.lowestContactForce[end].value);
        list.add({"off_track_share", &in::pure, end},
                 LW_TEXT("Share of the revolution with the roller off its track"),
                 offTrackShare(results, end));
        list.add({"highest_side_force", &in::N, end}, LW_TEXT("Maximum side force on the guide"),
                 loads.highestSideForce[end].value);
        list.add({"guide_bracket", &in::pure, end},
                 LW_TEXT("Minimum margin of the guide against jamming"),
                 loads.jamMargin[end].value);
        list.add({"peak_piston_speed", &in::metrePerSecond, end}, LW_TEXT("Peak piston speed"),
                 results.omega() * loads.piston[end].lift.y1.abs().maxCoeff());
        list.add({"peak_pressure_angle", &in::degrees, end}, LW_TEXT("Largest pressure angle"),
                 loads.piston[end].pressureAngle.abs().maxCoeff());
    }
    addContactSpeeds(list, results);
    list.add({"gas_work", &in::J}, LW_TEXT("Gas work per revolution"), loads.work.gas);
    list.add({"friction_work", &in::J}, LW_TEXT("Friction work per revolution"),
             loads.work.friction);
    list.add({"shaft_work", &in::J}, LW_TEXT("Shaft work per revolution"), loads.work.shaft);
    list.add({"work_balance_residual"},
             LW_TEXT("Gas − friction − shaft work, share of the work exchanged"),
             loads.work.residual);
    if (results.pair().mechanism().isOneSided()) {
        addThrustBearing(list, results);
    } else {
        addAdjuster(list, results);
    }
}

} // namespace lobewright::solution
