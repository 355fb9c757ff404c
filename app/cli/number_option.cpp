#include "app/cli/number_option.h"

#include "core/printable.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <charconv>
#include <cmath>
#include <string_view>

namespace lobewright::cli {

namespace {

template <class Number>
std::optional<Number> read(std::string_view text) {
    if (text.starts_with('+') && !text.starts_with("+-")) {
        text.remove_prefix(1);
    }
    Number value{};
    const auto end = std::from_chars(text.data(), text.data() + text.size(), value);
    const bool isWhole = end.ec == std::errc() && end.ptr == text.data() + text.size();
    return isWhole && std::isfinite(static_cast<double>(value)) ? std::optional(value)
                                                                : std::nullopt;
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

} // namespace lobewright::cli
