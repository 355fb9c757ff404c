#include "core/loads/pulling_force.h"
#include "core/solution/checks/checks.h"
#include "core/solution/sides.h"
#include "core/units.h"

#include <fmt/format.h>

#include <string>

LW_TEXTS_OF(Core)

namespace lobewright::solution {

namespace {

/// Where a roller is pulled off, the samples and the places that bound the speed considered.
struct PulledOff {
    double force = 0.0; ///< contact force that the motion demands, < 0 [N]
    double theta = 0.0; ///< [rad]
    loads::AxialShares shares;
};

PulledOff worstPull(const StageResults& results, End end) {
    const auto& lowest = results.loads.lowestContactForce[end];
    const auto& speeds = results.loads.contactSpeeds[end];
    PulledOff worst{lowest.value, lowest.theta, lowest.shares};
    for (const auto& bound : {speeds.low, speeds.high}) {
        if (bound && bound->shares.total() < worst.force) {
            worst = {bound->shares.total(), bound->theta, bound->shares};
        }
    }
    return worst;
}

/// Why the roller leaves and what keeps it on, by the share of the force that pulls hardest.
Message liftOffSentence(const PulledOff& worst, const mechanism::OpposedPair& pair, End end) {
    const auto& shares = worst.shares;
    const Amount pull(-worst.force, in::N);
    const TextId roller = rollerWords(pair, end);
    const loads::PullingForce hardest = loads::pullingForce(shares);
    if (hardest == loads::PullingForce::inertia) {
        return Message(
            LW_TEXT("%1 leaves its track: inertia exceeds the gas force, "
                    "and following the track would take a pull of %2. Lower the speed, the piston "
                    "mass or the deceleration, or close the track."),
            roller, pull);
    }
    if (hardest == loads::PullingForce::gas) {
        return Message(LW_TEXT("%1 leaves its track: the chamber pressure "
                               "is below the under-piston pressure, and following the track would "
                               "take a pull of %2. Raise the supply pressure, lower the "
                               "under-piston pressure, add a spring or close the track."),
                       roller, pull);
    }
    if (shares.inertia > 0.0) {
        return Message(
            LW_TEXT("%1 leaves its track: ring friction holds the piston back, "
                    "and following the track would take a pull of %2. Raise the speed, lower the "
                    "under-piston pressure or the ring friction, add a spring or close the track."),
            roller, pull);
    }
    return Message(
        LW_TEXT(
            "%1 leaves its track: ring friction holds the piston back where "
            "inertia does not press it on, and following the track would take a pull of %2. Lower "
            "the under-piston pressure or the ring friction, add a spring or close the track."),
        roller, pull);
}

void addLiftOffCheck(CheckList& list, const StageResults& results, End end) {
    if (!results.leavesTrack(end)) {
        return;
    }
    const PulledOff worst = worstPull(results, end);
    list.add({"lift-off", Severity::error, liftOffSentence(worst, results.pair(), end), worst.force,
              0.0, &in::N, fmt::format("/mechanism/piston_mass_kg/{}", name(end)), worst.theta,
              QuantityId{"lowest_contact_force", &in::N, end}, end});
}

/// An engine has to pass the speeds below its running speed when it starts.
void addStartingCheck(CheckList& list, const StageResults& results) {
    const bool isFired = results.gas && !results.design.running.motored;
    const auto& motored = results.loads.contactSpeedsMotored;
    if (results.pair().mechanism().closedTrack || !isFired || !motored ||
        results.leavesTrack(End::inlet) || results.leavesTrack(End::exhaust)) {
        return;
    }
    const loads::SpeedBound* bound = nullptr;
    for (const End end : results.pair().pistons()) {
        const auto& low = (*motored)[end].low;
        if (low && (!bound || low->omega > bound->omega)) {
            bound = &*low;
        }
    }
    if (!bound || bound->omega <= 0.0) {
        return;
    }
    const double rpm = bound->omega / units::revPerMinute;
    list.add({"contact-when-starting", Severity::remark,
              Message(LW_TEXT("When motored, the rollers keep contact only above about %1: at "
                              "lower speed ring friction holds the pistons back as they move "
                              "outward. Start with springs, supply pressure or a closed track."),
                      withDecimals(bound->omega, in::turnsPerMinute, 0)),
              rpm, 0.0, &in::rpm, "/mechanism/closed_track", bound->theta});
}

void addFlankChangeCheck(CheckList& list, const StageResults& results) {
    const auto& changes = results.loads.flankChanges;
    if (!results.pair().mechanism().closedTrack || changes.empty()) {
        return;
    }
    list.add(
        {"flank-change", Severity::remark,
         Message(LW_TEXT("The contact force changes sign %1 times per pattern: the rollers strike "
                         "the other flank and reverse their spin. Raise the supply pressure or "
                         "reduce the piston mass or the speed to keep them on the push flank."),
                 changes.size()),
         static_cast<double>(changes.size()), 0.0, &in::pure, "/mechanism/closed_track",
         changes.front().theta});
}

/// Cylinders whose angles all meet the pattern in the same place.
void addFiringRemark(CheckList& list, const StageResults& results) {
    const int cylinders = results.design.mechanism.cylinders;
    const auto& firing = results.loads.firing;
    if (results.design.running.motored || cylinders < 2 || firing.together != cylinders) {
        return;
    }
    list.add({"all-fire-together", Severity::remark,
              Message(LW_TEXT("All %1 cylinders fire at the same moment, %2 times per revolution: "
                              "the torque swings as that of one large cylinder. Another number of "
                              "lobes or of cylinders, or other cylinder angles, spread the "
                              "firing."),
                      cylinders, results.pair().cyclesPerTurn()),
              double(firing.together), 1.0, &in::pure, "/tracks/inlet/lobes", std::nullopt,
              QuantityId{"cylinders_firing_together"}});
}

} // namespace

void addLoadChecks(CheckList& list, const StageResults& results) {
    for (const End end : results.pair().pistons()) {
        addLiftOffCheck(list, results, end);
        const auto& margin = results.loads.jamMargin[end];
        list.atLeast({"jam",
                      ofTrack(results.pair(), LW_TEXT("Margin of the guide against jamming"), end),
                      &in::pure, "/friction/guide_coefficient",
                      LW_TEXT("reduce the pressure angle or the friction, or lengthen the guide"),
                      margin.theta, QuantityId{"guide_bracket", &in::pure, end}, end},
                     margin.value, results.design.limits.guideBracket);
    }
    addStartingCheck(list, results);
    addFiringRemark(list, results);
    addFlankChangeCheck(list, results);
}

} // namespace lobewright::solution
