#pragma once

#include "core/ports/events.h"

namespace lobewright::ports {

/// A row that the lower end of a skirt uncovers near inner dead centre; `Row::edge` is counted from
/// that end at outer dead centre, inward, and is the edge uncovered first.
///
/// How far the skirt's end stands beyond that edge at a shaft angle [m]; negative: covered.
double skirtPast(const Row& row, const mechanism::OpposedPair& pair, End end, double theta);

/// Open area of the row at shaft angles [m²], geometric.
Samples skirtArea(const Row& row, const mechanism::OpposedPair& pair, End end,
                  const Samples& theta);

/// Shaft angles at which the skirt begins and ceases to uncover the row about a dead centre [rad].
struct SkirtOpening {
    double opens = 0.0, closes = 0.0;
};
/// Absent where the row stays covered there. Found to 1e-10 rad.
std::optional<SkirtOpening> skirtOpening(const Row& row, const mechanism::OpposedPair& pair,
                                         End end, const mechanism::DeadCentres& centres);

} // namespace lobewright::ports
