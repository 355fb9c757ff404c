#include "app/cli/progress.h"

#include "app/cli/say.h"

#include <algorithm>
#include <atomic>
#include <cstdio>
#include <unistd.h>

namespace lobewright::cli {

namespace {

std::atomic<bool> stopAsked{false};
static_assert(std::atomic<bool>::is_always_lock_free, "a signal handler may not wait");

void askToStop(int) {
    stopAsked = true;
}

} // namespace

Progress::Progress() : isTerminal_(::isatty(STDERR_FILENO) == 1) {
    stopAsked = false;
    struct sigaction action {};
    action.sa_handler = askToStop;
    ::sigaction(SIGINT, &action, &interrupt_);
    ::sigaction(SIGTERM, &action, &terminate_);
}

Progress::~Progress() {
    ::sigaction(SIGINT, &interrupt_, nullptr);
    ::sigaction(SIGTERM, &terminate_, nullptr);
    if (isShown_) {
        say("\r\033[K");
    }
}

bool Progress::step(double fraction, const Message& what) {
    if (isTerminal_) {
        const std::lock_guard lock(mutex_);
        const auto now = std::chrono::steady_clock::now();
        constexpr auto pause = std::chrono::milliseconds(100); // a line a person can follow
        if (now - lastShown_ >= pause) {
            lastShown_ = now;
            isShown_ = true;
            say("\r{:3.0f} %  {}\033[K", 100.0 * std::clamp(fraction, 0.0, 1.0), what.english());
            std::fflush(stderr);
        }
    }
    return !stopAsked;
}

bool Progress::isInterrupted() const {
    return stopAsked;
}

} // namespace lobewright::cli
