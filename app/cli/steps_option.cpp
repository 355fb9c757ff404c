#include "app/cli/steps_option.h"

#include "app/cli/command.h"
#include "core/printable.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <charconv>
#include <cmath>
#include <optional>
#include <string_view>

namespace lobewright::cli {

namespace {

/// The number before the next colon, which is taken off with it.
template <class Number>
std::optional<Number> takeNumber(std::string_view& text, bool isLast) {
    const std::size_t colon = text.find(':');
    if (isLast != (colon == std::string_view::npos)) {
        return std::nullopt;
    }
    const std::string_view part = text.substr(0, colon);
    text.remove_prefix(isLast ? text.size() : colon + 1);
    Number value{};
    const auto end = std::from_chars(part.data(), part.data() + part.size(), value);
    const bool isWhole = end.ec == std::errc() && end.ptr == part.data() + part.size();
    return isWhole ? std::optional(value) : std::nullopt;
}

std::optional<study::MapSteps> readSteps(std::string_view text) {
    const auto from = takeNumber<double>(text, false);
    const auto to = from ? takeNumber<double>(text, false) : std::nullopt;
    const auto count = to ? takeNumber<int>(text, true) : std::nullopt;
    const bool isUsable =
        count && std::isfinite(*from) && std::isfinite(*to) && *count >= 2 && *count <= mostPoints;
    return isUsable ? std::optional(study::MapSteps{*from, *to, *count}) : std::nullopt;
}

} // namespace

CLI::Option* addSteps(CLI::App& command, const std::string& name, study::MapSteps& steps,
                      const std::string& help) {
    return command
        .add_option(
            name,
            [&steps, name](const CLI::results_t& texts) {
                const auto read = readSteps(texts.front());
                if (!read) {
                    throw CLI::ValidationError(
                        name, fmt::format("\"{}\" is not FROM:TO:COUNT, as in 600:2400:10",
                                          printable(texts.front())));
                }
                steps = *read;
                return true;
            },
            help)
        ->type_name("FROM:TO:COUNT");
}

} // namespace lobewright::cli
