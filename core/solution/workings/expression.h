#pragma once

#include "core/result.h"
#include "core/samples.h"

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// Formulas as people write them, evaluated as they stand. Knows nothing of engines, so that it can
/// judge the figures that the stages computed.
namespace lobewright::solution {

/// A number, or an array over the turn; arrays of one formula have equal shapes.
using Quantity = Samples; ///< shape (1) or (samples)

/// The value of a symbol; absent when there is none of that name.
using Lookup = std::function<std::optional<Quantity>(std::string_view symbol)>;

/// One piece of a formula's text.
struct FormulaPiece {
    enum class Kind { symbol, number, function, sign };
    Kind kind = Kind::sign;
    std::string text;
};

/// The formula cut into pieces, blanks dropped. Numbers are decimal; symbols and functions begin
/// with a letter (any script) and go on with letters, digits, "_" and "′"; a function is followed
/// by "(". Error: a byte that begins none of them.
Result<std::vector<FormulaPiece>> pieces(std::string_view formula);

/// The value of a formula: + − · / ^ and parentheses with the usual ranks ("-" and "*" too),
/// ² for ^2, π, and the functions
///   √ abs exp cos sin atan         of a number or, element by element, an array; angles in degrees
///   min max                        of their arguments; of a single array: its extreme
///   mod(x, m), wrap(x)             into 0 … m; into −180 … 180
///   ∮(y, x)                        over the turn, by trapezia between the samples
///   ∫(y, x)                        the same from the first sample to each of them, an array
///   ∫(y, x, a, b)                  one number from x = a on to x = b, x repeating after 360
/// Errors (path ""): syntax, unknown symbol or function, wrong number of arguments, a result that
/// is not finite or not a single number. Gaps (NaN) of an array count as 0 in integrals and are
/// left out of extremes.
Result<double> evaluate(std::string_view formula, const Lookup& lookup);

} // namespace lobewright::solution
