#include "core/mechanism/clearances.h"
#include "core/solution/checks/checks.h"
#include "core/solution/sides.h"
#include "core/units.h"

LW_TEXTS_OF(Core)

namespace lobewright::solution {

namespace {

using units::millimetre;

void addRollers(CheckList& list, const mechanism::OpposedPair& pair) {
    const auto tightest = mechanism::tightestRollerGap(pair);
    if (!tightest || tightest->gap > 0.0) {
        return;
    }
    list.add({"rollers-meet", Severity::error,
              Message(LW_TEXT("Rollers of neighbouring cylinders meet at their inner edges by %1 "
                              "where both stand at the same height. Use a roller radius below %2, "
                              "a larger pitch radius or fewer cylinders."),
                      Amount(-tightest->gap, in::mm, 3), Amount(tightest->largestRadius, in::mm)),
              tightest->gap / millimetre, 0.0, &in::mm, "/mechanism/roller/radius_mm",
              tightest->theta});
}

void addSkirt(CheckList& list, const mechanism::OpposedPair& pair, End end, double rimThickness) {
    const auto tightest = mechanism::skirtGap(pair, end, rimThickness);
    if (!tightest || tightest->gap > 0.0) {
        return;
    }
    const Amount depth(-tightest->gap, in::mm, 3);
    const Message met =
        pair.mechanism().closedTrack
            ? Message(LW_TEXT("At outer dead centre the skirt %1 runs into the rim "
                              "of its closed track by %2. Place the roller axis further behind "
                              "the crown or shorten the skirt."),
                      ofPistonWords(pair, end), depth)
            : Message(LW_TEXT("The skirt %1 runs into its track beside the roller "
                              "by %2. Place the roller axis further behind the crown or shorten "
                              "the skirt."),
                      ofPistonWords(pair, end), depth);
    list.add({"skirt-meets-track", Severity::error, met, tightest->gap / millimetre, 0.0, &in::mm,
              "/mechanism/piston/roller_axis_mm", tightest->theta, std::nullopt, end});
}

} // namespace

void addClearanceChecks(CheckList& list, const mechanism::OpposedPair& pair, double rimThickness) {
    addRollers(list, pair);
    for (const End end : pair.pistons()) {
        addSkirt(list, pair, end, rimThickness);
    }
}

} // namespace lobewright::solution
