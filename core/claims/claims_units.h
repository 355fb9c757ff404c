#pragma once

#include "core/result.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

/// Units of published figures: people write hp, PS, lb·ft and cu in, and mean different things by
/// them. Every factor is exact by definition, with the definition named.
namespace lobewright::study {

enum class Dimension {
    power,
    torque,
    speed, ///< of the shaft
    volume,
    length,
    mass,
    pressure,
    temperature,
    velocity,        ///< of a piston
    fuelConsumption, ///< fuel mass per work
    angle,
    fraction ///< pure number, also as per cent
};

/// What a dimension is called in a message, with an example: "a torque, e.g. \"300 N·m\"".
TextId describe(Dimension dimension);

/// Symbol of the SI unit, e.g. "N·m"; empty for a fraction.
std::string_view siSymbol(Dimension dimension);
/// What the source of a unit says that is SI itself, or a power of ten of it.
inline constexpr std::string_view siUnit = "SI";

/// SI = (number + offset)·factor.
struct TradeUnit {
    std::string_view symbol; ///< as shown, e.g. "lb·ft"
    Dimension dimension;
    double factor = 1.0;
    std::string_view source; ///< the definition behind the factor
    std::vector<std::string_view> spoken =
        {}; ///< other spellings, lower case without spaces and dots
    double offset = 0.0;
};

/// All units, grouped by dimension; the first of each dimension is the one findings are shown in.
std::span<const TradeUnit> tradeUnits();
/// The unit that findings of this dimension are shown in, e.g. kW.
const TradeUnit& shownUnit(Dimension dimension);

/// A figure as somebody published it.
struct Amount {
    double number = 0.0;
    std::string unit; ///< symbol of a trade unit
    double si = 0.0;  ///< the same in SI
    bool operator==(const Amount&) const = default;
};

/// A number of the given trade unit. The symbol must be that of a unit.
Amount amount(double number, std::string_view symbol);
/// "120 hp".
std::string text(const Amount& amount);

/// Reads "120 hp", "1.5e3 rpm", "30 %". The unit may follow without a space; capitals, dots and
/// middle dots in it do not matter, except that a small m is never read as mega. A fraction needs
/// no unit. Errors (path ""): no number, thousands separators, a number that is not finite, no
/// unit, an unknown unit (names the nearest), a unit of another dimension (says what it measures).
Result<Amount> parseAmount(std::string_view text, Dimension dimension);

} // namespace lobewright::study
