#pragma once

#include "core/design/design.h"
#include "core/result.h"

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

/// The catalogue of everything that can be edited: one description serves the file reader and
/// writer, validation, the schema test and the editors of the desktop.
namespace lobewright::design {

/// Admissible values in the unit of the file.
struct Range {
    double min = 0.0, max = 0.0;
    bool minExcluded = false, maxExcluded = false;
    /// e.g. "> 0 and ≤ 2000 mm".
    Message describe(const Unit& unit = in::pure) const;
    bool contains(double value) const;
};

using FieldValue =
    std::variant<double, int, bool, std::string, std::monostate>; ///< monostate: null

enum class FieldKind { number, integer, boolean, choice, text };

/// One editable value of one design, as a file shows it.
struct Field {
    std::string path;   ///< JSON pointer, e.g. "/mechanism/bore_mm"
    std::string group;  ///< JSON pointer of the section it stands in, e.g. "/mechanism/roller"
    Message groupLabel; ///< trade words for the section, e.g. "Roller", "Segment 3"
    Message label;      ///< trade words, e.g. "Bore"
    std::string unit;   ///< as shown, e.g. "mm"; empty for a pure number
    Message help;       ///< one or two sentences, with symbol and, for a default, its source
    FieldKind kind = FieldKind::number;
    FieldValue value;
    bool nullable = false;
    Range range; ///< numbers and integers
    /// Keys of a choice, e.g. "modified-sine". Of a number: words accepted instead of a number
    /// ("best-torque"). An optional section or list (own exhaust track, piston, listed cylinder
    /// angles) is a choice of two at its own path; choosing the second fills it in.
    std::vector<std::string> choices;
    std::vector<TextId> choiceLabels; ///< trade words for the choices, same order
};

/// All fields of this design, in file order (lists expanded; only the keys that its kinds use).
/// Snapshots are kept as a whole: their values are no fields.
std::vector<Field> fields(const Design& design);

/// The same with the keys of kinds that the design does not use at present.
std::vector<Field> fieldsOfAllKinds(const Design& design);

/// A copy of the design with one value changed. Errors: unknown path, wrong type, out of range.
Result<Design> withField(const Design& design, std::string_view path, const FieldValue& value);

/// The same for several values, in this order.
using FieldValues = std::vector<std::pair<std::string, FieldValue>>;
Result<Design> withFields(const Design& design, const FieldValues& values);

/// Every single value outside its range and every list with too few or too many entries.
enum class WithSnapshots { no, yes };
Problems checkRanges(const Design& design, WithSnapshots snapshots = WithSnapshots::yes);

/// The value at the path, if it is a field of this design.
std::optional<Field> findField(const Design& design, std::string_view path);

/// Trade word for a choice of the field; empty where it has no such choice.
TextId choiceLabel(const Field& field, std::string_view choice);

} // namespace lobewright::design
