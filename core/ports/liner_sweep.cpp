#include "core/ports/liner_sweep.h"

#include <algorithm>
#include <limits>

namespace lobewright::ports {

namespace {

double leastGap(const mechanism::OpposedPair& pair) {
    double least = std::numeric_limits<double>::max();
    for (const auto& centres : pair.deadCentres()) {
        least = std::min(least, pair.gap(centres.idc));
    }
    return least;
}

/// What the piston does to the rows of one side.
void addRows(LinerSweep& sweep, const Rows& rows, End side, double bore) {
    for (std::size_t i = 0; i < rows[side].size(); ++i) {
        const Row& row = rows[side][i];
        const int index = static_cast<int>(i);
        const double margin = stretchOf(row).from - sweep.skirt.to;
        sweep.skirtMargin = std::min(sweep.skirtMargin.value_or(margin), margin);
        if (margin < 0.0) {
            sweep.rowsUncoveredBySkirt.push_back({index, side, -margin});
        }
        if (row.width <= widePort * bore) {
            continue;
        }
        for (std::size_t ring = 0; ring < sweep.rings.size(); ++ring) {
            if (sweep.rings[ring].meets(stretchOf(row))) {
                sweep.ringsOverWide.push_back({static_cast<int>(ring), index, side});
            }
        }
    }
}

} // namespace

Stretch stretchOf(const Row& row) {
    return {row.edge - row.height, row.edge};
}

PerEnd<LinerSweep> linerSweep(const Rows& rows, const mechanism::OpposedPair& pair) {
    const auto& mechanism = pair.mechanism();
    PerEnd<LinerSweep> sweeps;
    for (const End end : pair.pistons()) {
        LinerSweep& sweep = sweeps[end];
        const double outermost = -pair.shift(end);
        const double innermost = outermost + pair.curve(end).stroke();
        sweep.crown = {outermost, innermost};
        if (!mechanism.piston) {
            continue;
        }
        const auto behindCrown = [&](double distance) {
            return Stretch{outermost - distance, innermost - distance};
        };
        sweep.skirt = behindCrown(mechanism.piston->length);
        for (const double distance : mechanism.piston->ringDistances) {
            sweep.rings.push_back(behindCrown(distance));
        }
        for (const End side : bothEnds) {
            if (pair.uncovers(side) == end) {
                addRows(sweep, rows, side, mechanism.bore);
            }
        }
    }
    return sweeps;
}

CrownGap leastCrownGap(const mechanism::OpposedPair& pair) {
    CrownGap gap{leastGap(pair), std::nullopt};
    auto mechanism = pair.mechanism();
    mechanism.adjuster.setting = 0.0;
    mechanism.adjuster.axial = 0.0;
    const auto rest =
        mechanism::OpposedPair::make(mechanism, {pair.curve(End::inlet), pair.curve(End::exhaust)});
    if (rest) {
        gap.atRest = leastGap(*rest);
    }
    return gap;
}

} // namespace lobewright::ports
