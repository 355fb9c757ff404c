#include "core/study/solve_for.h"

#include "app/cli/command.h"
#include "app/cli/design_input.h"
#include "app/cli/files.h"
#include "app/cli/number_option.h"
#include "app/cli/progress.h"
#include "app/cli/say.h"
#include "app/cli/solving.h"
#include "core/design/file.h"
#include "core/printable.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace lobewright::cli {

namespace {

struct SolveForArguments {
    DesignArguments design;
    study::Goal goal;
    std::optional<double> near;
    std::string file;
};

std::string spaced(const std::string& unit) {
    return unit.empty() ? std::string() : " " + unit;
}

/// "2.17 bar: 60 kW"
std::string shown(const study::Trial& trial, const study::GoalAnswer& answer) {
    return fmt::format("{:.9g}{}: {:.9g}{}", trial.input, spaced(answer.input.unit), trial.result,
                       spaced(answer.result.unit));
}

/// The solution nearest to where the person wants it.
study::Trial chosen(const study::GoalAnswer& answer, double near) {
    return std::ranges::min(answer.solutions, {}, [near](const study::Trial& trial) {
        return std::abs(trial.input - near);
    });
}

void showDifferences(const solution::Solution& before, const solution::Solution& after) {
    put("\n{:<38} {:>14} {:>14}\n", "result", "before", "after");
    const auto text = [](const solution::Figure& figure) {
        return figure.value ? fmt::format("{:.6g}", *figure.value) : std::string("-");
    };
    for (const auto& difference : study::figureDifferences(before, after)) {
        put("{:<38} {:>14} {:>14}\n", difference.after.name, text(difference.before),
            text(difference.after));
    }
}

void sayNotReachable(const study::Goal& goal, const study::GoalAnswer& answer) {
    const char* which = goal.target > answer.highest.result  ? "largest"
                        : goal.target < answer.lowest.result ? "smallest"
                                                             : "nearest";
    say("{} = {:.9g} is not reachable between {:.9g} and {:.9g}{}: the {} is {:.9g}{} at "
        "{:.9g}{}\n",
        goal.result, goal.target, goal.from, goal.to, spaced(answer.input.unit), which,
        answer.nearest.result, spaced(answer.result.unit), answer.nearest.input,
        spaced(answer.input.unit));
}

/// Tells what changed, and writes the changed design.
int writeChanged(const SolveForArguments& given, const OutputFile& out,
                 const design::Design& design, const design::Design& changed) {
    const auto before = solvedDesign(given.design.file, design);
    const auto after = solvedDesign(given.design.file, changed);
    showDifferences(before, after);
    return out.write(design::writeDesign(changed));
}

int solveFor(const SolveForArguments& given) {
    const auto design = loadedDesign(given.design);
    const OutputFile out("--out", given.file, {given.design.file});
    out.check();
    const auto answer = valueOf(
        finished([&](Progress& progress) { return study::solveFor(design, given.goal, progress); }),
        given.design.file, wrongUsage);
    if (answer.failed > 0) {
        say("{} of {} values cannot be built or run: {}\n", answer.failed, study::sweepPoints,
            printable(answer.failure.english()));
    }
    if (answer.solutions.empty()) {
        sayNotReachable(given.goal, answer);
        return notSolvable;
    }
    put("{} against {}\n", answer.result.name, printable(given.goal.input));
    for (const auto& trial : answer.solutions) {
        put("{}\n", shown(trial, answer));
    }
    const double near = given.near.value_or(std::get<double>(answer.input.value));
    return writeChanged(given, out, design,
                        study::withGoal(design, given.goal, chosen(answer, near).input));
}

} // namespace

void addSolveFor(CLI::App& program, Action& action) {
    const auto [command, given] =
        newCommand(program, action, solveFor, "solve-for",
                   "Find the value of one input that gives a result its target");
    addDesignArguments(command, given.design);
    command.add_option("--result", given.goal.result, "Name of a result in summary.json")
        ->required()
        ->type_name("NAME");
    addNumber(command, "--value", given.goal.target, "Its target, in the unit of its name")
        ->required();
    addVaried(command, given.goal.input, given.goal.from, given.goal.to, "/gas/lambda");
    addNumber(command, "--near", given.near,
              "Of several solutions write the one nearest to this; the present value unless given");
    addOutput(command, given.file, "Design file to write", "DESIGN");
}

} // namespace lobewright::cli
