#include "core/mechanism/clearances.h"
#include "core/solution/checks.h"
#include "core/units.h"

#include <fmt/format.h>

namespace lobewright::solution {

namespace {

using units::millimetre;

void addRollers(CheckList& list, const mechanism::OpposedPair& pair) {
    const auto tightest = mechanism::tightestRollerGap(pair);
    if (!tightest || tightest->gap > 0.0) {
        return;
    }
    list.add(
        {"rollers-meet", Severity::error,
         fmt::format("Rollers of neighbouring cylinders meet at their inner edges by {:.3g} mm "
                     "where both stand at the same height. Use a roller radius below {:.4g} "
                     "mm, a larger pitch radius or fewer cylinders.",
                     -tightest->gap / millimetre, tightest->largestRadius / millimetre),
         tightest->gap / millimetre, 0.0, "mm", "/mechanism/roller/radius_mm", tightest->theta});
}

} // namespace

void addClearanceChecks(CheckList& list, const mechanism::OpposedPair& pair) {
    addRollers(list, pair);
}

} // namespace lobewright::solution
