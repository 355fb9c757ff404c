#pragma once

#include "app/cli/command.h"
#include "app/cli/say.h"
#include "core/monitor.h"

#include <chrono>
#include <csignal>
#include <mutex>
#include <utility>

namespace lobewright::cli {

/// Shows progress on stderr when that is a terminal, and stops the work at Ctrl-C (SIGINT) or a
/// request to end (SIGTERM). The signals are caught only while this object lives: at any other time
/// they end the program at once, which holds no half-written output.
class Progress final : public Monitor {
  public:
    Progress();
    ~Progress() override;
    Progress(const Progress&) = delete;
    Progress& operator=(const Progress&) = delete;

    bool step(double fraction, const Message& what) override;
    bool isInterrupted() const;

  private:
    bool isTerminal_;
    std::mutex mutex_;
    std::chrono::steady_clock::time_point lastShown_{};
    bool isShown_ = false;
    struct sigaction interrupt_ {};
    struct sigaction terminate_ {};
};

/// Does a work that takes a monitor; says beside its result whether a signal stopped it. The
/// signals are caught only meanwhile.
template <class Work>
auto watched(Work work) {
    struct Watched {
        decltype(work(std::declval<Progress&>())) result;
        bool wasInterrupted;
    };
    Progress progress;
    auto result = work(progress);
    return Watched{std::move(result), progress.isInterrupted()};
}

/// The result of such a work; ends the command where a signal stopped it.
template <class Work>
auto finished(Work work) {
    auto [result, wasInterrupted] = watched(std::move(work));
    if (wasInterrupted) {
        say("stopped; nothing was written\n");
        throw Refusal{interrupted};
    }
    return std::move(result);
}

} // namespace lobewright::cli
