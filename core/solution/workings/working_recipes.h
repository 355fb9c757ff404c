#pragma once

#include "core/solution/workings/working.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>

/// Workings as a table: one row a formula, so that all of them can be read side by side.
namespace lobewright::solution {

/// A mark in a row stands for several words, and the row serves as many figures: "{side}" inlet or
/// exhaust, "{event}" a dead centre or port event, "{span}" a span between events, "{loss}" a part
/// of the friction. Of several rows for one figure the first counts whose operands are all there
/// and can be worked out.
struct Recipe {
    std::string_view figure, symbol, formula;
    /// Symbols with where they come from, separated by blanks: "z=field:/mechanism/cylinders",
    /// "V=figure:swept_volume_cm3", "p=channel:pressure_bar", "H=value:lower_heating_value".
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
/// A field of the design, a figure, or a channel as an operand; absent where it has no number.
std::optional<Operand> fieldOperand(const Solution& solution, std::string_view path);
std::optional<Operand> figureOperand(const Solution& solution, std::string_view name);
std::optional<Operand> channelOperand(const Solution& solution, std::string_view name);
/// The channel read at an angle [rad], linear between samples.
std::optional<Operand> readingOperand(const Solution& solution, std::string_view channel,
                                      double theta);

} // namespace lobewright::solution
