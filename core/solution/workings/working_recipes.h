#pragma once

#include "core/solution/workings/working.h"

#include <algorithm>
#include <iterator>
#include <optional>
#include <span>
#include <string>
#include <string_view>

/// Workings as a table: one row a formula, so that all of them can be read side by side.
namespace lobewright::solution {

/// A mark in a row stands for several words, and the row serves as many figures: "{side}" inlet or
/// exhaust, "{event}" a dead centre or port event, "{span}" a span between events, "{loss}" a part
/// of the friction, "{highest}" the upper bound of contact by both its names. Of several rows for
/// one figure the first counts whose operands are all there and can be worked out.
struct Recipe {
    std::string_view figure, symbol, formula;
    /// Symbols with where they come from, separated by blanks: "λ=field:/gas/lambda",
    /// "P=figure:brake_power_kW", "p=channel:pressure_bar", "H=value:lower_heating_value". Those
    /// that mean the same nearly everywhere stand alone: "θ", "n", "c" (usualMeaning()).
    std::string_view operands;
    TextId source;
    double tolerance = 1e-9;
    double absolute = 0.0;
    TextId note = {};
    int digits = 6;
};

/// Tolerances of a working that reads columns: they are searched or summed at half degrees.
constexpr double sampled = 1e-3;
constexpr double sampledAtCorners = 3e-3; ///< where ports open and flows turn

std::span<const Recipe> geometryRecipes();
std::span<const Recipe> timingRecipes();
std::span<const Recipe> performanceRecipes();
std::span<const Recipe> supplyRecipes();
std::span<const Recipe> energyRecipes();
std::span<const Recipe> loadRecipes();
std::span<const Recipe> contactRecipes();
std::span<const Recipe> crownRecipes();
std::span<const Recipe> balanceRecipes();

/// A quantity that workings need and no figure, field or channel holds; absent where there is no
/// such value in this solution. Symbol left empty.
std::optional<Operand> innerValue(const Solution& solution, std::string_view name);
std::optional<Operand> geometryValue(const Solution& solution, std::string_view name);
std::optional<Operand> gasValue(const Solution& solution, std::string_view name);
std::optional<Operand> supplyValue(const Solution& solution, std::string_view name);
std::optional<Operand> energyValue(const Solution& solution, std::string_view name);
std::optional<Operand> loadValue(const Solution& solution, std::string_view name);
std::optional<Operand> contactSpeedValue(const Solution& solution, std::string_view name);
std::optional<Operand> crownValue(const Solution& solution, std::string_view name);
std::optional<Operand> balanceValue(const Solution& solution, std::string_view name);

/// The ports of one end row by row, and the amplitudes of shaft orders: formulas whose length or
/// numbers depend on the design.
std::optional<Working> portAreaWorking(const Solution& solution, const Figure& figure);
std::optional<Working> orderWorking(const Solution& solution, const Figure& figure);
/// Means and extremes over several cycles that are not alike.
std::optional<Working> cyclesWorking(const Solution& solution, const Figure& figure);
/// Which cylinders fire when.
std::optional<Working> firingWorking(const Solution& solution, const Figure& figure);

/// An operand without a number: the formula holds only there; absent where it does not.
std::optional<Operand> condition(bool holds, const Message& where);
/// A number that no table shows; `note` says where it is from.
Operand inner(Message label, std::string unit, double number, Message note = {});
/// One of physics or of a table.
Operand constant(Message label, std::string unit, double number, Message note);
/// A number at an angle [rad], from a column where one is named.
Operand reading(Message label, std::string unit, double number, double theta, Message note = {},
                std::string channel = {});
/// The angle itself [rad].
Operand angleReading(Message label, double theta, Message note = {});

/// Rows of the two by their names, found in a context such as the solution.
template <class Context>
struct InnerNumber {
    std::string_view name;
    TextId label;
    const char* unit;
    double (*number)(const Context&);
    TextId note = {};
    std::optional<Operand> operand(const Context& context) const {
        return inner(label, unit, number(context), note);
    }
};
template <class Context>
struct InnerCondition {
    std::string_view name;
    bool (*holds)(const Context&);
    TextId where;
    std::optional<Operand> operand(const Context& context) const {
        return condition(holds(context), where);
    }
};
template <class Rows, class Context>
std::optional<Operand> rowOperand(const Rows& rows, const Context& context, std::string_view name) {
    const auto row =
        std::ranges::find_if(rows, [name](const auto& one) { return one.name == name; });
    return row != std::end(rows) ? row->operand(context) : std::nullopt;
}

/// The side that ends a name, "jam_angle_inlet".
inline End endOf(std::string_view name) {
    return name.ends_with("inlet") ? End::inlet : End::exhaust;
}

/// A field of the design, a figure, or a channel as an operand; absent where it has no number.
std::optional<Operand> fieldOperand(const Solution& solution, std::string_view path);
std::optional<Operand> figureOperand(const Solution& solution, std::string_view name);
std::optional<Operand> channelOperand(const Solution& solution, std::string_view name);
/// The channel read at an angle [rad], linear between samples.
std::optional<Operand> readingOperand(const Solution& solution, std::string_view channel,
                                      double theta);

} // namespace lobewright::solution
