#include "app/cli/command.h"
#include "app/cli/design_input.h"
#include "app/cli/solving.h"
#include "core/exchange/solution_files.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <cstdio>
#include <memory>

namespace lobewright::cli {

namespace {

struct SolveArguments {
    DesignArguments design;
    std::string folder;
};

int solveDesign(const SolveArguments& arguments) {
    const auto loaded = loadOrReport(arguments.design);
    if (const int* status = std::get_if<int>(&loaded)) {
        return *status;
    }
    const auto solved = solveOrReport(arguments.design.file, std::get<design::Design>(loaded));
    if (const int* status = std::get_if<int>(&solved)) {
        return *status;
    }
    const auto& solution = std::get<solution::Solution>(solved);
    if (const std::string why = whyNotSolved(solution); !why.empty()) {
        fmt::print(stderr, "{}: not solvable: {}\n", arguments.design.file, why);
        return notSolvable;
    }
    if (const auto problem = exchange::writeSolution(solution, arguments.folder)) {
        fmt::print(stderr, "--out: {}\n", problem->message);
        return wrongUsage;
    }
    return done;
}

} // namespace

void addSolve(CLI::App& program, Action& action) {
    CLI::App* command = addCommand(program, "solve",
                                   "Compute one design; write DIR/summary.json, DIR/channels.csv");
    const auto arguments = std::make_shared<SolveArguments>();
    addDesignArguments(*command, arguments->design);
    command->add_option("--out", arguments->folder, "Folder for the two files, made if missing")
        ->required()
        ->type_name("DIR");
    command->callback(
        [&action, arguments] { action = [arguments] { return solveDesign(*arguments); }; });
}

} // namespace lobewright::cli
