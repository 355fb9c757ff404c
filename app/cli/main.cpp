#include "app/cli/command.h"
#include "app/cli/program.h"
#include "core/design/nearest.h"
#include "core/printable.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <string>
#include <vector>

namespace lobewright::cli {

namespace {

constexpr const char* description =
    "Lobewright computes engines whose opposed pistons run on undulating tracks.\n"
    "Estimates for comparison only; not a basis for manufacture, release or operation.";

constexpr const char* footer =
    "Exit status: 0 done, 1 internal error, 2 wrong usage, 3 the design is invalid (every problem\n"
    "listed with its path in the file), 4 valid but not solvable, 5 a file cannot be read or\n"
    "written, 130 stopped by Ctrl-C.";

std::string version() {
    return versionOf("lobewright-cli");
}

/// The name of the command where it is none, with the one that may have been meant.
std::string wrongCommand(const CLI::App& program, int argc, char** argv) {
    const std::string given = argc > 1 ? argv[1] : "";
    std::vector<std::string> names;
    for (const CLI::App* command : program.get_subcommands({})) {
        names.push_back(command->get_name());
    }
    if (given.empty() || given.front() == '-' || std::ranges::find(names, given) != names.end()) {
        return {};
    }
    return fmt::format("\"{}\" is no command; the nearest is \"{}\"", printable(given),
                       design::nearest(given, names));
}

int run(int argc, char** argv) {
    CLI::App program(description, "lobewright-cli");
    program.set_version_flag("--version", version);
    program.require_subcommand(1);
    program.footer(footer);
    Action action;
    for (const AddCommand add : commands) {
        add(program, action);
    }
    if (const std::string why = wrongCommand(program, argc, argv); !why.empty()) {
        return refuse(why);
    }
    try {
        program.parse(argc, argv);
    } catch (const CLI::ParseError& error) {
        return endOf(program, error);
    }
    return statusOf(action);
}

} // namespace

CLI::App& addCommand(CLI::App& program, Action& action, std::string_view name,
                     std::string_view help, Action run) {
    CLI::App& command = *program.add_subcommand(std::string(name), std::string(help));
    command.set_version_flag("--version", version);
    command.footer(footer);
    command.callback([&action, run = std::move(run)] { action = run; });
    return command;
}

} // namespace lobewright::cli

int main(int argc, char** argv) {
    using namespace lobewright::cli;
    return runGuarded([&] { return run(argc, argv); });
}
