#include "app/cli/command.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <cstdio>
#include <exception>
#include <string>

namespace lobewright::cli {

namespace {

constexpr AddCommand commands[] = {addSolve,      addSweep,    addPhaseMap, addCompare,
                                   addClaims,     addSolveFor, addDraft,    addExport,
                                   addImportLift, addReport,   addCheck,    addSchema};

constexpr const char* version = "lobewright-cli " LOBEWRIGHT_VERSION;

constexpr const char* description =
    "Lobewright computes engines whose opposed pistons run on undulating tracks.\n"
    "Estimates only: nothing it says makes a design fit to build or to run.";

constexpr const char* footer =
    "Exit status: 0 done, 1 internal error, 2 wrong usage, 3 the design is invalid (every problem\n"
    "listed with its path in the file), 4 valid but not solvable, 5 a file cannot be read\n"
    "or written, 130 stopped by Ctrl-C.";

int run(int argc, char** argv) {
    CLI::App program(description, "lobewright-cli");
    program.set_version_flag("--version", version);
    program.require_subcommand(1);
    program.footer(footer);
    Action action;
    for (const AddCommand add : commands) {
        add(program, action);
    }
    try {
        program.parse(argc, argv);
    } catch (const CLI::ParseError& error) {
        return program.exit(error) == 0 ? done : wrongUsage;
    }
    return action();
}

} // namespace

CLI::App* addCommand(CLI::App& program, std::string_view name, std::string_view help) {
    CLI::App* command = program.add_subcommand(std::string(name), std::string(help));
    command->set_version_flag("--version", version);
    command->footer(footer);
    return command;
}

} // namespace lobewright::cli

int main(int argc, char** argv) {
    using namespace lobewright::cli;
    try {
        const int status = run(argc, argv);
        const bool isWritten = std::fflush(stdout) == 0 && std::ferror(stdout) == 0;
        if (!isWritten) {
            fmt::print(stderr, "the output cannot be written\n");
        }
        return isWritten || status != done ? status : fileFailure;
    } catch (const std::exception& error) {
        fmt::print(stderr, "internal error: {}\n", error.what());
    } catch (...) {
        fmt::print(stderr, "internal error\n");
    }
    return internalError;
}
