#include "app/cli/command.h"
#include "app/cli/design_input.h"
#include "app/cli/say.h"
#include "app/cli/solving.h"
#include "core/printable.h"
#include "core/units.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <memory>

namespace lobewright::cli {

namespace {

using solution::Check;
using solution::Severity;

const char* word(Severity severity) {
    switch (severity) {
    case Severity::error:
        return "error";
    case Severity::warning:
        return "warning";
    case Severity::remark:
        break;
    }
    return "remark";
}

void print(const Check& check) {
    put("{:<8} {:<24} {}", word(check.severity), check.id, printable(check.message.english()));
    put(" [{:.4g}{}{}, limit {:.4g}", check.value, check.unit->symbol.empty() ? "" : " ",
        check.unit->symbol, check.limit);
    if (check.angle) {
        put(", at {:.1f}° of the shaft", *check.angle / units::degree);
    }
    put("]{}{}\n", check.path.empty() ? "" : " ", check.path);
}

int checkDesign(const DesignArguments& arguments) {
    const auto loaded = loadOrReport(arguments);
    if (const int* status = std::get_if<int>(&loaded)) {
        return *status;
    }
    const auto solved = solveOrReport(arguments.file, std::get<design::Design>(loaded));
    if (const int* status = std::get_if<int>(&solved)) {
        return *status;
    }
    const auto& solution = std::get<solution::Solution>(solved);
    const auto count = [&](Severity severity) {
        return std::ranges::count(solution.checks, severity, &Check::severity);
    };
    for (const Severity severity : {Severity::error, Severity::warning, Severity::remark}) {
        for (const Check& check : solution.checks) {
            if (check.severity == severity) {
                print(check);
            }
        }
    }
    put("errors: {}, warnings: {}, remarks: {}\n", count(Severity::error), count(Severity::warning),
        count(Severity::remark));
    if (const std::string why = whyNotSolved(solution); !why.empty()) {
        say("{}: not solvable: {}\n", printable(arguments.file), why);
        return notSolvable;
    }
    return done;
}

} // namespace

void addCheck(CLI::App& program, Action& action) {
    CLI::App* command = addCommand(program, "check", "List the limits that one design touches");
    const auto arguments = std::make_shared<DesignArguments>();
    addDesignArguments(*command, *arguments);
    command->callback(
        [&action, arguments] { action = [arguments] { return checkDesign(*arguments); }; });
}

} // namespace lobewright::cli
