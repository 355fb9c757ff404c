#include "app/cli/command.h"
#include "app/cli/report_arguments.h"
#include "app/cli/say.h"
#include "core/printable.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <filesystem>
#include <system_error>
#include <unistd.h>
#include <vector>

namespace lobewright::cli {

namespace {

/// The report is drawn by the desktop's own plots. They stand in a program of their own, so that
/// the batch program is built, and runs, without them.
std::filesystem::path reportProgram() {
    std::error_code error;
    const auto self = std::filesystem::read_symlink("/proc/self/exe", error);
    return self.parent_path() / "lobewright-report";
}

std::vector<std::string> wordsOf(const ReportArguments& given) {
    std::vector<std::string> words{"lobewright-report", "--out", given.file};
    if (given.design.speed) {
        words.insert(words.end(), {"--speed", fmt::format("{}", *given.design.speed)});
    }
    if (given.design.motored) {
        words.emplace_back("--motored");
    }
    if (!given.claims.empty()) {
        words.insert(words.end(), {"--claims", given.claims});
    }
    words.insert(words.end(), {"--", given.design.file}); // a name may begin with a dash
    return words;
}

/// This process becomes the report program: its messages, exit status and Ctrl-C are the command's.
int becomeReportProgram(const ReportArguments& given) {
    const auto program = reportProgram();
    auto words = wordsOf(given);
    std::vector<char*> arguments;
    arguments.reserve(words.size() + 1);
    for (std::string& word : words) {
        arguments.push_back(word.data());
    }
    arguments.push_back(nullptr);
    ::execv(program.c_str(), arguments.data());
    say("report: {} cannot be started: {}. This build has no report if it was made without "
        "the desktop program, whose plots a report needs\n",
        printable(program.native()), std::generic_category().message(errno));
    return wrongUsage;
}

} // namespace

void addReport(CLI::App& program, Action& action) {
    const auto [command, given] =
        newCommand(program, action, becomeReportProgram, "report", reportDescription);
    addReportArguments(command, given);
}

} // namespace lobewright::cli
