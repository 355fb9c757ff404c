#include "core/ports/skirt_row.h"

#include "core/mechanism/bracketed_root.h"

namespace lobewright::ports {

double skirtPast(const Row& row, const mechanism::OpposedPair& pair, End end, double theta) {
    return pair.lift(end, theta).y - pair.shift(end) - row.edge;
}

Samples skirtArea(const Row& row, const mechanism::OpposedPair& pair, End end,
                  const Samples& theta) {
    return theta.unaryExpr(
        [&](double angle) { return row.count * openArea(row, skirtPast(row, pair, end, angle)); });
}

std::optional<SkirtOpening> skirtOpening(const Row& row, const mechanism::OpposedPair& pair,
                                         End end, const mechanism::DeadCentres& centres) {
    constexpr double step = 0.25 * units::degree;
    const auto depth = [&](double theta) { return skirtPast(row, pair, end, theta); };
    if (depth(centres.idc) <= 0.0) {
        return std::nullopt;
    }
    const auto edgeFrom = [&](double towards) -> std::optional<double> {
        for (double gone = 0.0; gone < pair.period(); gone += step) {
            const double here = centres.idc + towards * gone;
            const double next = here + towards * step;
            if (depth(next) <= 0.0) {
                return mechanism::bracketedRoot(depth, std::min(here, next), std::max(here, next));
            }
        }
        return std::nullopt;
    };
    const auto opens = edgeFrom(-1.0), closes = edgeFrom(1.0);
    if (!opens || !closes) {
        return std::nullopt;
    }
    return SkirtOpening{*opens, *closes};
}

} // namespace lobewright::ports
