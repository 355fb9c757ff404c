#pragma once

#include "core/monitor.h"

#include <chrono>
#include <csignal>
#include <mutex>

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

} // namespace lobewright::cli
