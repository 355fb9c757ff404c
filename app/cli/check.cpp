#include "app/cli/command.h"
#include "app/cli/design_input.h"
#include "app/cli/say.h"
#include "app/cli/solving.h"
#include "core/exchange/solution_files.h"
#include "core/printable.h"
#include "core/units.h"

#include <CLI/CLI.hpp>

#include <algorithm>

namespace lobewright::cli {

namespace {

using solution::Check;
using solution::Severity;

void print(const Check& check) {
    put("{:<8} {:<24} {}", exchange::word(check.severity), check.id,
        printable(check.message.english()));
    put(" [{:.4g}{}{}, limit {:.4g}", check.value, check.unit->symbol.empty() ? "" : " ",
        check.unit->symbol, check.limit);
    if (check.angle) {
        put(", at {:.1f}° of the shaft", *check.angle / units::degree);
    }
    put("]{}{}\n", check.path.empty() ? "" : " ", check.path);
}

int checkDesign(const DesignArguments& arguments) {
    const auto design = loadedDesign(arguments);
    const auto solution = solvedDesign(arguments.file, design);
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
    const auto [command, arguments] = newCommand(program, action, checkDesign, "check",
                                                 "List the limits that one design touches");
    addDesignArguments(command, arguments);
}

} // namespace lobewright::cli
