#pragma once

#include "core/result.h"

#include <functional>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

/// Where the inputs of a design come from, and how far each may be off.
namespace lobewright::design {

struct Design;

enum class Origin {
    given,    ///< published
    measured, ///< off a picture or a part
    derived,  ///< follows from other inputs by a rule
    assumed,  ///< guessed
    chosen    ///< a decision of the person; what an input without an entry is
};

/// How likely the values between low and high are.
enum class Spread {
    uniform,
    triangular, ///< mode at the value of the design
    normal      ///< low and high are the 5th and the 95th percentile
};

/// What is known about one input. Numbers are in the unit of the design file, which the pointer
/// names ("/mechanism/bore_mm").
struct Known {
    Origin origin = Origin::assumed;
    std::optional<double> low = {}, high = {}; ///< of a number; both or none
    Spread spread = Spread::uniform;           ///< of a number with a range
    std::vector<std::string> options = {};     ///< of a choice: the words that are possible
    std::string group = {};                    ///< inputs of one group move together; empty: alone
    std::string rule = {};   ///< id of the rule that a derived or assumed value follows
    std::string source = {}; ///< where it is published, measured or worked out
    bool operator==(const Known&) const = default;
};

/// By JSON pointer of the input.
using Knowledge = std::map<std::string, Known>;

/// What is known about the input; an entry with origin `chosen` where nothing is noted.
Known knownOf(const Design& design, const std::string& path);

/// Every rule that an entry breaks, with the path of the entry: it names no number, flag or choice
/// of this design; a range that is not in order, leaves the admissible values or misses the value;
/// options that are none of the input's or miss its value; ranges of choices, options of numbers.
/// Inputs of kinds that the design does not use at present may keep their entries.
Problems brokenKnowledgeRules(const Design& design);

/// The knowledge after an edit: a range or options that the value has left are widened to hold it,
/// entries of rows that are gone are left out. Nothing else changes.
Knowledge settledKnowledge(const Design& design);

/// The same entries after rows of a list were moved: `place` gives the new index of a row, or
/// nothing where the row is gone.
Knowledge movedRows(const Knowledge& knowledge, const std::string& listPath,
                    const std::function<std::optional<int>(int)>& place);

} // namespace lobewright::design
