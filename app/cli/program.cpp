#include "app/cli/program.h"

#include "app/cli/command.h"
#include "app/cli/say.h"
#include "core/exchange/libraries.h"
#include "core/printable.h"
#include "core/text/caution.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <cstdio>
#include <exception>
#include <fcntl.h>
#include <unistd.h>

namespace lobewright::cli {

namespace {

/// Were one of the three streams closed, the next file opened would take its number, and what is
/// said would go into it. Opened for reading alone, so that writing still fails.
void keepStreams() {
    for (const int stream : {STDIN_FILENO, STDOUT_FILENO, STDERR_FILENO}) {
        if (::fcntl(stream, F_GETFD) < 0) {
            [[maybe_unused]] const int kept = ::open("/dev/null", O_RDONLY);
        }
    }
}

} // namespace

std::string versionOf(std::string_view program, const std::vector<std::string>& more) {
    std::string text = fmt::format("{} {}", program, LOBEWRIGHT_VERSION);
    std::vector<std::string> libraries = exchange::libraries();
    libraries.emplace_back("CLI11 " CLI11_VERSION);
    libraries.insert(libraries.end(), more.begin(), more.end());
    for (const std::string& library : libraries) {
        text += "\n  " + library;
    }
    return text;
}

int refuse(std::string_view why) {
    say("{}\nRun with --help for more information.\n", printable(why));
    return wrongUsage;
}

int endOf(const CLI::App& program, const CLI::ParseError& error) {
    return error.get_exit_code() == 0 ? program.exit(error) : refuse(error.what());
}

int statusOf(const std::function<int()>& work) {
    int status = done;
    try {
        status = work();
    } catch (const Refusal& refusal) {
        status = refusal.status;
    }
    if (status == done || status == interrupted) {
        say("{}\n", shortCaution().text);
    }
    return status;
}

int runGuarded(const std::function<int()>& work) {
    keepStreams();
    try {
        const int status = work();
        const bool isWritten = std::fflush(stdout) == 0 && std::ferror(stdout) == 0;
        if (!isWritten) {
            say("the standard output cannot be written\n");
        }
        return isWritten || status != done ? status : fileFailure;
    } catch (const std::exception& error) {
        say("internal error: {}\n", error.what());
    } catch (...) {
        say("internal error\n");
    }
    return internalError;
}

} // namespace lobewright::cli
