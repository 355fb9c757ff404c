#pragma once

#include "core/draft/draft.h"

namespace lobewright::draft {

/// Every figure of the brief beside the draft's. `powerNote`: why the power is missed.
std::vector<Comparison> compare(const Brief& brief, const design::Design& design,
                                const solution::Solution& solved, const Message& powerNote);

/// Whether the design keeps the limits of the brief on diameter and length.
bool keepsSize(const Brief& brief, const design::Design& design);

} // namespace lobewright::draft
