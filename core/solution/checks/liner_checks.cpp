#include "core/ports/liner_sweep.h"
#include "core/solution/checks/checks.h"
#include "core/solution/sides.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>

LW_TEXTS_OF(Core)

namespace lobewright::solution {

namespace {

/// First sample angle at which the ring stands within the row; the sweep says that there is one.
std::optional<double> angleInRow(const mechanism::OpposedPair& pair, End end, double distance,
                                 const ports::Stretch& row, const Samples& theta,
                                 const Samples& lift) {
    for (Eigen::Index i = 0; i < theta.size(); ++i) {
        const double place = lift[i] - pair.shift(end) - distance;
        if (row.from <= place && place <= row.to) {
            return theta[i];
        }
    }
    return std::nullopt;
}

void addSkirt(CheckList& list, const mechanism::OpposedPair& pair, End end,
              const ports::LinerSweep& sweep, double innermost) {
    if (sweep.rowsUncoveredBySkirt.empty()) {
        return;
    }
    const auto& worst =
        *std::ranges::max_element(sweep.rowsUncoveredBySkirt, {}, &ports::RowUnderSkirt::depth);
    const double open = worst.depth / units::millimetre;
    list.add({"skirt-uncovers-port", Severity::warning,
              Message(LW_TEXT("At inner dead centre the skirt %1 uncovers its port "
                              "row %2 by %3, so the ports open to the space under the piston: "
                              "lengthen the piston by at least that much."),
                      ofPistonWords(pair, end), worst.row + 1, amountIn(in::mm, open, 3)),
              open, 0.0, &in::mm, "/mechanism/piston/length_mm", innermost, std::nullopt,
              worst.side});
}

} // namespace

void addLinerChecks(CheckList& list, const ports::PortTiming& timing,
                    const PerEnd<motion::LiftSamples>& lifts, const Samples& theta) {
    const auto& pair = timing.pair();
    const auto& mechanism = pair.mechanism();
    if (!mechanism.piston) {
        return;
    }
    const auto sweeps = ports::linerSweep(timing.rows(), pair);
    const double wide = ports::widePort * mechanism.bore / units::millimetre;
    for (const End end : pair.pistons()) {
        const Samples& lift = lifts[end].y;
        Eigen::Index innermost = 0;
        lift.maxCoeff(&innermost);
        addSkirt(list, pair, end, sweeps[end], theta[innermost]);
        for (const auto& pass : sweeps[end].ringsOverWide) {
            const auto& row = timing.rows()[pass.side][static_cast<std::size_t>(pass.row)];
            const double distance =
                mechanism.piston->ringDistances[static_cast<std::size_t>(pass.ring)];
            list.add(
                {"ring-over-wide-port", Severity::warning,
                 Message(LW_TEXT("Ring %1 %2 runs over ports of row %3 that are %4 "
                                 "wide, above %5 (0.4 of the bore, own estimate), and may catch in "
                                 "them: use more and narrower ports, or a bar across each."),
                         pass.ring + 1, ofPistonWords(pair, end), pass.row + 1,
                         Amount(row.width, in::mm), amountIn(in::mm, wide)),
                 row.width / units::millimetre, wide, &in::mm,
                 fmt::format("/ports/{}/{}/width_mm", name(pass.side), pass.row),
                 angleInRow(pair, end, distance, ports::stretchOf(row), theta, lift), std::nullopt,
                 pass.side});
        }
    }
}

void addOpeningOrderCheck(CheckList& list, const ports::PortTiming& timing) {
    const auto worst = std::ranges::min_element(timing.cycles(), {}, &ports::CycleEvents::blowdown);
    if (worst == timing.cycles().end() || worst->blowdown() >= 0.0) {
        return;
    }
    const auto& rows = timing.rows().exhaust;
    const auto highest = std::ranges::max_element(rows, {}, &ports::Row::edge);
    const double early = -worst->blowdown() / units::degree;
    list.add(
        {"inlet-opens-first", Severity::warning,
         Message(LW_TEXT("The inlet opens %1 before the exhaust, so there is no blowdown and burnt "
                         "gas blows back into the inlet: move the exhaust edge further inward, the "
                         "inlet edge further outward, or increase the exhaust lead."),
                 amountIn(in::shaftDegrees, early, 3)),
         early, 0.0, &in::shaftDegrees,
         fmt::format("/ports/exhaust/{}/edge_mm", highest - rows.begin()), worst->inletOpens});
}

} // namespace lobewright::solution
