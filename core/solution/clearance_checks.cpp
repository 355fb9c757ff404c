#include "core/mechanism/clearances.h"
#include "core/solution/checks.h"
#include "core/units.h"

#include <fmt/format.h>

#include <optional>

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

void addSkirtOnRim(CheckList& list, const mechanism::OpposedPair& pair, End end,
                   double rimThickness) {
    const auto gap = mechanism::skirtToRim(pair, end, rimThickness);
    if (!gap || *gap > 0.0) {
        return;
    }
    const auto& points = pair.turningPoints(end);
    std::optional<double> outer;
    for (const auto& point : points) {
        if (!point.maximum && !outer) {
            outer = point.middle();
        }
    }
    list.add(
        {"skirt-meets-rim", Severity::error,
         fmt::format("At outer dead centre the skirt of the {} piston runs into the rim of its "
                     "closed track by {:.3g} mm. Place the roller axis further behind the "
                     "crown or shorten the skirt.",
                     name(end), -*gap / millimetre),
         *gap / millimetre, 0.0, "mm", "/mechanism/piston/roller_axis_mm", outer});
}

} // namespace

void addClearanceChecks(CheckList& list, const mechanism::OpposedPair& pair, double rimThickness) {
    addRollers(list, pair);
    for (const End end : bothEnds) {
        addSkirtOnRim(list, pair, end, rimThickness);
    }
}

} // namespace lobewright::solution
