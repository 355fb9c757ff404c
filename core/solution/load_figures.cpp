#include "core/loads/free_body.h"
#include "core/solution/figures.h"
#include "core/solution/stage_results.h"
#include "core/units.h"

#include <optional>

namespace lobewright::solution {

namespace {

/// Lowest lift-off speed of the two pistons [rad/s]; absent when neither can lift off.
std::optional<double> lowest(const PerEnd<loads::LiftOff>& liftOff) {
    const auto& inlet = liftOff.inlet.omega;
    const auto& exhaust = liftOff.exhaust.omega;
    if (inlet && exhaust) {
        return std::min(*inlet, *exhaust);
    }
    return inlet ? inlet : exhaust;
}

void addLiftOff(FigureList& list, const std::string& key, const std::string& label,
                const std::optional<PerEnd<loads::LiftOff>>& liftOff, bool closed) {
    std::optional<double> value;
    std::string note = closed ? "a closed track holds the roller" : "no trace to judge it by";
    if (liftOff && !closed) {
        value = lowest(*liftOff);
        note = "nothing decelerates a piston";
    }
    list.add(key, label, "1/min",
             value ? std::optional(*value / units::revPerMinute) : std::nullopt, note);
}

void addTorqueFigures(FigureList& list, const loads::Loads& loads) {
    list.add("mean_torque_Nm", "Mean torque of gas, inertia and friction", "N·m", loads.meanTorque);
    list.add("highest_torque_Nm", "Highest torque over a turn", "N·m", loads.highestTorque);
    list.add("lowest_torque_Nm", "Lowest torque over a turn", "N·m", loads.lowestTorque);
    list.add("peak_to_peak_torque_Nm", "Peak-to-peak torque", "N·m", loads.peakToPeakTorque);
    list.add("torque_ripple", "Torque ripple, (max − min)/|mean|", "", loads.ripple,
             "the mean torque is below 1 % of the peak");
    list.add("shortest_firing_interval_deg", "Shortest firing interval", "shaft °",
             loads.firing.shortestInterval / units::degree);
    list.add("longest_firing_interval_deg", "Longest firing interval", "shaft °",
             loads.firing.longestInterval / units::degree);
    list.add("cylinders_firing_together", "Cylinders that fire together", "",
             loads.firing.together);
}

/// Over the angle, not over the samples, which crowd at events.
double meanOverTurn(const Samples& values, const Samples& theta) {
    const Eigen::Index steps = theta.size() - 1;
    const Samples length = theta.tail(steps) - theta.head(steps);
    return (0.5 * (values.tail(steps) + values.head(steps)) * length).sum() / length.sum();
}

/// What holds the exhaust track at its setting.
void addAdjuster(FigureList& list, const StageResults& results) {
    const auto& mechanism = results.pair().mechanism();
    const auto held = loads::adjusterLoads(
        results.loads.track.exhaust, mechanism.adjuster.helixLead, loads::defaultSpline(mechanism));
    list.add("adjuster_torque_peak_Nm", "Largest torque that the adjuster must hold", "N·m",
             held.torque.abs().maxCoeff());
    list.add("adjuster_torque_mean_Nm", "Mean torque that the adjuster must hold, forward positive",
             "N·m", meanOverTurn(held.torque, results.theta));
    list.add("adjuster_axial_force_peak_N",
             "Largest axial force to hold where the adjuster pushes the track along its helix", "N",
             held.axialForce ? std::optional(held.axialForce->abs().maxCoeff()) : std::nullopt,
             "without a helix the track cannot be turned by pushing it");
    list.add("adjuster_holding_margin_N",
             "Friction of the adjuster's spline less the force along it, least (on "
             "half the pitch radius)",
             "N", held.holdingMargin.minCoeff());
    list.add("adjuster_holds_itself", "Adjuster's spline holds itself", "",
             held.holdsItself ? 1.0 : 0.0);
}

} // namespace

void addLoadFigures(FigureList& list, const StageResults& results) {
    const auto& loads = results.loads;
    const bool closed = results.pair().mechanism().closedTrack;
    list.group("loads");
    addTorqueFigures(list, loads);
    for (const End end : bothEnds) {
        const std::string side = name(end);
        list.add("highest_contact_force_" + side + "_N", "Highest contact force, " + side + " side",
                 "N", loads.highestContactForce[end].value);
        list.add("lowest_contact_force_" + side + "_N",
                 "Lowest contact force that the motion demands, " + side + " side", "N",
                 loads.lowestContactForce[end].value);
        list.add("highest_side_force_" + side + "_N",
                 "Highest side force on the guide, " + side + " side", "N",
                 loads.highestSideForce[end].value);
        list.add("guide_bracket_" + side, "Lowest jam margin of the guide, " + side + " side", "",
                 loads.jamMargin[end].value);
        list.add("peak_piston_speed_" + side + "_m_per_s", "Peak piston speed, " + side + " side",
                 "m/s", results.omega() * loads.piston[end].lift.y1.abs().maxCoeff());
        list.add("peak_pressure_angle_" + side + "_deg",
                 "Largest pressure angle, " + side + " side", "°",
                 loads.piston[end].pressureAngle.abs().maxCoeff() / units::degree);
    }
    const bool fired = results.gas && !results.design.running.motored;
    addLiftOff(list, "lift_off_speed_fired_rpm", "Lift-off speed with this pressure trace",
               fired ? std::optional(loads.liftOffFired) : std::nullopt, closed);
    addLiftOff(list, "lift_off_speed_motored_rpm", "Lift-off speed when motored",
               fired || !results.gas ? loads.liftOffMotored : std::optional(loads.liftOffFired),
               closed);
    list.add("gas_work_J", "Gas work of a turn", "J", loads.work.gas);
    list.add("friction_work_J", "Friction work of a turn", "J", loads.work.friction);
    list.add("shaft_work_J", "Shaft work of a turn", "J", loads.work.shaft);
    list.add("work_balance_residual", "Gas − friction − shaft work, share of the work moved", "",
             loads.work.residual);
    addAdjuster(list, results);
}

} // namespace lobewright::solution
