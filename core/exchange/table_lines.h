#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// Lines of tables that other programs wrote.
namespace lobewright::exchange {

/// Without blanks at its ends.
std::string_view trimmed(std::string_view text);

/// The first columns of a line, 64 at most, separated by semicolons or tabs, else by commas, else
/// by blanks; with semicolons and tabs decimal commas become points.
std::vector<std::string> columnsOf(std::string_view line);

/// A finite number that is the whole text.
std::optional<double> numberOf(std::string_view text);

/// The beginning of a bad line, fit to be shown.
std::string shownLine(std::string_view line);

} // namespace lobewright::exchange
