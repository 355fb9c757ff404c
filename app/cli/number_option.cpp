#include "app/cli/number_option.h"

#include "app/cli/command.h"
#include "core/parsed.h"
#include "core/printable.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <cmath>
#include <string_view>

namespace lobewright::cli {

namespace {

template <class Number>
std::optional<Number> read(std::string_view text) {
    if (text.starts_with('+') && !text.starts_with("+-")) {
        text.remove_prefix(1);
    }
    const auto value = parsed<Number>(text);
    return value && std::isfinite(static_cast<double>(*value)) ? value : std::nullopt;
}

double numberOf(const std::string& option, const std::string& text) {
    if (const auto value = read<double>(text)) {
        return *value;
    }
    throw CLI::ValidationError(
        option, fmt::format("\"{}\" is no number; write digits with a decimal point, 1650.5",
                            printable(text)));
}

int wholeOf(const std::string& option, const std::string& text, int least, int most) {
    const auto value = read<int>(text);
    if (!value || *value < least || *value > most) {
        throw CLI::ValidationError(option, fmt::format("\"{}\" is no whole number from {} to {}",
                                                       printable(text), least, most));
    }
    return *value;
}

using Texts = CLI::results_t;

/// An option that takes one text.
template <class Take>
CLI::Option* addOne(CLI::App& command, const std::string& name, const std::string& help,
                    const char* type, Take take) {
    return command
        .add_option(
            name,
            [take](const Texts& texts) {
                take(texts.front());
                return true;
            },
            help)
        ->type_name(type);
}

template <class Value>
CLI::Option* addReal(CLI::App& command, const std::string& name, Value& value,
                     const std::string& help) {
    return addOne(command, name, help, "NUMBER",
                  [&value, name](const std::string& text) { value = numberOf(name, text); });
}

template <class Value>
CLI::Option* addWhole(CLI::App& command, const std::string& name, Value& value, int least, int most,
                      const std::string& help) {
    return addOne(command, name, help, "N", [&value, name, least, most](const std::string& text) {
        value = wholeOf(name, text, least, most);
    });
}

/// The number before the next colon, which is taken off with it.
template <class Number>
std::optional<Number> takeNumber(std::string_view& text, bool isLast) {
    const std::size_t colon = text.find(':');
    if (isLast != (colon == std::string_view::npos)) {
        return std::nullopt;
    }
    const std::string_view part = text.substr(0, colon);
    text.remove_prefix(isLast ? text.size() : colon + 1);
    return parsed<Number>(part);
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

CLI::Option* addNumber(CLI::App& command, const std::string& name, double& value,
                       const std::string& help) {
    return addReal(command, name, value, help);
}

CLI::Option* addNumber(CLI::App& command, const std::string& name, std::optional<double>& value,
                       const std::string& help) {
    return addReal(command, name, value, help);
}

CLI::Option* addNumber(CLI::App& command, const std::string& name, int& value, int least, int most,
                       const std::string& help) {
    return addWhole(command, name, value, least, most, help);
}

CLI::Option* addNumber(CLI::App& command, const std::string& name, std::optional<int>& value,
                       int least, int most, const std::string& help) {
    return addWhole(command, name, value, least, most, help);
}

CLI::Option* addNumbers(CLI::App& command, const std::string& name, std::vector<double>& values,
                        const std::string& help) {
    return command
        .add_option(
            name,
            [&values, name](const Texts& texts) {
                values.clear();
                for (const std::string& text : texts) {
                    values.push_back(numberOf(name, text));
                }
                return true;
            },
            help)
        ->delimiter(',')
        ->expected(1, 1000)
        ->allow_extra_args(false)
        ->type_name("NUMBER,NUMBER");
}

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

void addVaried(CLI::App& command, std::string& input, double& from, double& to,
               const std::string& example) {
    command.add_option("--vary", input, "JSON pointer of the input, " + example)
        ->required()
        ->type_name("POINTER");
    addNumber(command, "--from", from, "Lower end of its range, as in the file")->required();
    addNumber(command, "--to", to, "Upper end of its range")->required();
}

} // namespace lobewright::cli
