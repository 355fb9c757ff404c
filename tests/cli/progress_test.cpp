#include "app/cli/progress.h"

#include <gtest/gtest.h>

#include <csignal>

namespace lobewright::cli {
namespace {

TEST(Progress, CtrlCStopsTheWorkAtItsNextStep) {
    Progress progress;
    EXPECT_TRUE(progress.step(0.1, "cycle 1"));
    std::raise(SIGINT);
    EXPECT_FALSE(progress.step(0.2, "cycle 2"));
    EXPECT_TRUE(progress.isInterrupted());
}

TEST(Progress, ARequestToEndStopsTheWorkToo) {
    Progress progress;
    std::raise(SIGTERM);
    EXPECT_FALSE(progress.step(0.2, "cycle 2"));
}

TEST(Progress, SignalsAreHandledAsBeforeOnceTheWorkIsDone) {
    struct sigaction before {
    }, after{};
    ::sigaction(SIGINT, nullptr, &before);
    { const Progress progress; }
    ::sigaction(SIGINT, nullptr, &after);
    EXPECT_EQ(before.sa_handler, after.sa_handler);
}

} // namespace
} // namespace lobewright::cli
