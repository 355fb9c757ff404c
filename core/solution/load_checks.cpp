#include "core/solution/checks.h"
#include "core/units.h"

#include <fmt/format.h>

namespace lobewright::solution {

namespace {

void addLiftOffCheck(CheckList& list, const StageResults& results, End end) {
    const auto& lowest = results.loads.lowestContactForce[end];
    const bool canPull = results.pair().mechanism().closedTrack;
    if (canPull || lowest.value >= 0.0) {
        return;
    }
    list.add(
        {"lift-off", Severity::error,
         fmt::format(
             "The roller of the {} side leaves its open track: following it would take {:.4g} N of "
             "pull; less speed, a lighter piston, a gentler lobe or a closed track keeps it on.",
             name(end), -lowest.value),
         lowest.value, 0.0, "N", fmt::format("/mechanism/piston_mass_kg/{}", name(end)),
         lowest.theta});
}

void addFlankChangeCheck(CheckList& list, const StageResults& results) {
    const auto& changes = results.loads.flankChanges;
    if (!results.pair().mechanism().closedTrack || changes.empty()) {
        return;
    }
    list.add(
        {"flank-change", Severity::remark,
         fmt::format(
             "The load changes flank {} times a pattern: the rollers rattle and reverse their spin "
             "there; more supply pressure or lighter pistons keep them on the push flank.",
             changes.size()),
         static_cast<double>(changes.size()), 0.0, "", "/mechanism/closed_track",
         changes.front().theta});
}

} // namespace

void addLoadChecks(CheckList& list, const StageResults& results) {
    for (const End end : bothEnds) {
        addLiftOffCheck(list, results, end);
        const auto& margin = results.loads.jamMargin[end];
        list.atLeast(
            {"jam", fmt::format("Jam margin of the guide, {} side", name(end)), "",
             "/friction/guide_coefficient",
             "a flatter pressure angle, a longer guide or less friction keeps the piston free",
             margin.theta},
            margin.value, results.design.limits.guideBracket);
    }
    addFlankChangeCheck(list, results);
}

} // namespace lobewright::solution
