#include "app/cli/command.h"
#include "app/cli/design_input.h"
#include "app/cli/files.h"
#include "app/cli/say.h"
#include "app/cli/solving.h"
#include "core/exchange/solution_files.h"
#include "core/printable.h"
#include "core/units.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <cstdio>
#include <filesystem>

namespace lobewright::cli {

namespace {

struct SolveArguments {
    DesignArguments design;
    std::string folder;
};

/// What a person asks first; everything else stands in the summary.
constexpr const char* mainFigures[] = {"brake_power_kW",
                                       "brake_torque_Nm",
                                       "torque_ripple",
                                       "imep_bar",
                                       "fmep_bar",
                                       "bmep_bar",
                                       "brake_efficiency",
                                       "peak_pressure_bar",
                                       "compression_ratio",
                                       "trapped_compression_ratio",
                                       "blowdown_deg",
                                       "overlap_deg",
                                       "delivery_ratio",
                                       "scavenging_efficiency",
                                       "peak_contact_pressure_inlet_MPa",
                                       "peak_contact_pressure_exhaust_MPa",
                                       "contact_speed_low_fired_rpm",
                                       "contact_speed_high_fired_rpm",
                                       "shaking_force_peak_N"};

void printMainFigures(const solution::Solution& solution) {
    put("{}, {:.0f}/min\n", printable(solution.design.title),
        solution.design.running.speed / units::revPerMinute);
    for (const char* name : mainFigures) {
        const auto* figure = solution.figure(name);
        if (!figure) {
            continue;
        }
        if (figure->value) {
            put("  {:<52} {:>10.4g} {}\n", figure->label.english(), *figure->value,
                figure->unit->symbol);
        } else {
            put("  {:<52} {:>10} ({})\n", figure->label.english(), "–", figure->note.english());
        }
    }
    const auto count = [&](solution::Severity severity) {
        return std::ranges::count(solution.checks, severity, &solution::Check::severity);
    };
    const auto counted = [&](solution::Severity severity, const char* word) {
        const auto number = count(severity);
        return fmt::format("{} {}{}", number, word, number == 1 ? "" : "s");
    };
    put("  limits: {}, {}, {}\n", counted(solution::Severity::error, "error"),
        counted(solution::Severity::warning, "warning"),
        counted(solution::Severity::remark, "remark"));
    put("Estimates only: residuals say how well the equations are solved, but correlations "
        "are good "
        "to ±10–20 %.\nHave a qualified engineer review before metal is cut.\n");
}

int solveDesign(const SolveArguments& arguments) {
    const auto design = loadedDesign(arguments.design);
    const std::filesystem::path inputs[] = {arguments.design.file};
    if (const auto problem = exchange::checkSolutionFolder(arguments.folder, inputs)) {
        say("--out: {}\n", problem->message.english());
        return fileFailure;
    }
    const auto solution = solvedDesign(arguments.design.file, design);
    if (const std::string why = whyNotSolved(solution); !why.empty()) {
        say("{}: not solvable: {}\n", printable(arguments.design.file), why);
        return notSolvable;
    }
    if (const auto problem = exchange::writeSolution(solution, arguments.folder, inputs)) {
        say("--out: {}\n", problem->message.english());
        return fileFailure;
    }
    printMainFigures(solution);
    return done;
}

} // namespace

void addSolve(CLI::App& program, Action& action) {
    const auto [command, arguments] =
        newCommand(program, action, solveDesign, "solve",
                   "Compute one design; write DIR/summary.json, DIR/channels.csv");
    addDesignArguments(command, arguments.design);
    addOutput(command, arguments.folder, "Folder for the two files, made if missing", "DIR");
}

} // namespace lobewright::cli
