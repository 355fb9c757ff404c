#include "core/mechanism/clearances.h"
#include "core/solution/checks/checks.h"
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

} // namespace

void addClearanceChecks(CheckList& list, const mechanism::OpposedPair& pair) {
    addRollers(list, pair);
}

} // namespace lobewright::solution
