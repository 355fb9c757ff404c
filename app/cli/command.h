#pragma once

#include <functional>
#include <memory>
#include <string_view>

namespace CLI {
class App;
}

/// The batch program: one file a command, one row a command in the table below.
namespace lobewright::cli {

/// What the program tells its caller; part of the interface.
enum ExitStatus {
    done = 0,
    internalError = 1,
    wrongUsage = 2,
    invalidDesign = 3, ///< every problem is listed on stderr, each with its path in the file
    notSolvable = 4,   ///< valid, but the computation says why it cannot answer
    fileFailure = 5,   ///< a file cannot be read or written
    interrupted = 130  ///< stopped by Ctrl-C or a request to end, as shells report it
};

/// Ends a command with a status; the reason has gone to stderr.
struct Refusal {
    int status;
};

/// Of one study, so that its table stays within what a person can look at.
inline constexpr int mostPoints = 100000;

/// What the chosen command does once all arguments have been read.
using Action = std::function<int()>;

/// Adds one command to the program. The command sets `action` when it is chosen.
using AddCommand = void (*)(CLI::App& program, Action& action);

void addSolve(CLI::App& program, Action& action);
void addCheck(CLI::App& program, Action& action);
void addClaims(CLI::App& program, Action& action);
void addCompare(CLI::App& program, Action& action);
void addSweep(CLI::App& program, Action& action);
void addContactSpeeds(CLI::App& program, Action& action);
void addPhaseMap(CLI::App& program, Action& action);
void addMap(CLI::App& program, Action& action);
void addSchedule(CLI::App& program, Action& action);
void addSolveFor(CLI::App& program, Action& action);
void addDraft(CLI::App& program, Action& action);
void addBands(CLI::App& program, Action& action);
void addExport(CLI::App& program, Action& action);
void addImportLift(CLI::App& program, Action& action);
void addImportWheel(CLI::App& program, Action& action);
void addReport(CLI::App& program, Action& action);
void addSchema(CLI::App& program, Action& action);

/// In the order of the help.
inline constexpr AddCommand commands[] = {
    addSolve,      addSweep,       addContactSpeeds, addPhaseMap, addMap,   addCompare,
    addClaims,     addSolveFor,    addSchedule,      addDraft,    addBands, addExport,
    addImportLift, addImportWheel, addReport,        addCheck,    addSchema};

/// A command with --help and --version that does this when it is chosen.
CLI::App& addCommand(CLI::App& program, Action& action, std::string_view name,
                     std::string_view help, Action run);

template <class Arguments>
struct NewCommand {
    CLI::App& command;
    Arguments& given; ///< for its options; lives as long as the program
};
/// The same with arguments of its own.
template <class Arguments>
NewCommand<Arguments> newCommand(CLI::App& program, Action& action, int (*run)(const Arguments&),
                                 std::string_view name, std::string_view help) {
    const auto given = std::make_shared<Arguments>();
    return {addCommand(program, action, name, help, [given, run] { return run(*given); }), *given};
}

} // namespace lobewright::cli
