#pragma once

#include "core/design/fields.h"
#include "core/design/knowledge.h"

#include <string>
#include <vector>

namespace lobewright::design {

/// An input that may lie anywhere in a range, or be any of several words.
struct RangedInput {
    Field field; ///< with its present value
    Known known; ///< low and high are both there, or options are
    bool isChoice() const { return !known.options.empty(); }
};

/// The inputs of this design whose value is not certain, in file order: what a sampling study
/// varies (set the samples with withFields()). An input that holds a word instead of a number, or
/// nothing, is left out; so is one of a kind that the design does not use, and one that follows the
/// speed by a schedule.
std::vector<RangedInput> rangedInputs(const Design& design);

/// How many inputs of this design have which origin.
struct OriginCounts {
    int given = 0, measured = 0, derived = 0, assumed = 0, chosen = 0;
    bool operator==(const OriginCounts&) const = default;
};
OriginCounts originCounts(const Design& design);

} // namespace lobewright::design
