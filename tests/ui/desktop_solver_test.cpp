#include "core/units.h"
#include "tests/ui/desktop_fixture.h"
#include "ui/document/solver.h"

#include <QSignalSpy>
#include <QTest>

#include <chrono>
#include <thread>

using namespace lobewright;
using namespace lobewright::ui;
using namespace lobewright::ui::test;

namespace {

/// A piece of work that lasts as long as the speed of its design says [ms], asks its monitor every
/// millisecond, and yields the geometry only.
Result<solution::Solution> slowWork(const design::Design& design, Monitor& monitor,
                                    const solution::Solution*, Solver::Pace) {
    const int milliseconds = static_cast<int>(design.running.speed);
    for (int i = 0; i < milliseconds; ++i) {
        if (!monitor.step(static_cast<double>(i) / milliseconds, "waiting"))
            return Problem{"", "cancelled"};
        std::this_thread::sleep_for(std::chrono::milliseconds(1));
    }
    SilentMonitor silent;
    static const auto solved = solution::solve(sampleDesign(), silent);
    solution::Solution answer = *solved;
    answer.design = design;
    return answer;
}

design::Design lasting(int milliseconds) {
    design::Design design = sampleDesign();
    design.running.speed = milliseconds;
    return design;
}

class SolverTest : public ::testing::Test {
  protected:
    SolverTest() {
        QObject::connect(
            &solver_, &Solver::solved, &solver_,
            [this](const SolutionPointer&, quint64 revision) { arrived_.push_back(revision); });
    }
    bool waitUntilIdle() {
        return QTest::qWaitFor([this] { return !solver_.isBusy(); }, 20000);
    }
    Solver solver_{nullptr, &slowWork};
    std::vector<quint64> arrived_;
};

} // namespace

TEST_F(SolverTest, NewestSettledEditWinsAndOlderResultsAreDropped) {
    for (quint64 revision = 1; revision <= 5; ++revision)
        solver_.request(lasting(50), revision, Solver::Pace::settled);
    ASSERT_TRUE(waitUntilIdle());
    EXPECT_EQ(arrived_, std::vector<quint64>{5});
}

TEST_F(SolverTest, SettledEditStopsWhatRuns) {
    solver_.request(lasting(60000), 1, Solver::Pace::settled);
    QTest::qWait(50);
    solver_.request(lasting(1), 2, Solver::Pace::settled);
    ASSERT_TRUE(waitUntilIdle());
    EXPECT_EQ(arrived_, std::vector<quint64>{2});
}

TEST_F(SolverTest, DragShowsResultsOnTheWayAndEndsWithTheNewest) {
    for (quint64 revision = 1; revision <= 20; ++revision) {
        solver_.request(lasting(30), revision, Solver::Pace::live);
        QTest::qWait(10);
    }
    ASSERT_TRUE(waitUntilIdle());
    ASSERT_GT(arrived_.size(), 1U);
    EXPECT_LT(arrived_.size(), 20U);
    EXPECT_TRUE(std::is_sorted(arrived_.begin(), arrived_.end()));
    EXPECT_EQ(arrived_.back(), 20U);
}

TEST_F(SolverTest, CancelledWorkNeverArrives) {
    solver_.request(lasting(100), 1, Solver::Pace::settled);
    QTest::qWait(20);
    solver_.cancel();
    EXPECT_FALSE(solver_.isBusy());
    QTest::qWait(200);
    EXPECT_TRUE(arrived_.empty());
}

TEST_F(SolverTest, LongWorkReportsProgress) {
    QSignalSpy progressed(&solver_, &Solver::progressed);
    solver_.request(lasting(700), 1, Solver::Pace::settled);
    ASSERT_TRUE(waitUntilIdle());
    EXPECT_GE(progressed.count(), 1);
}

TEST(Solver, ClosingDoesNotWaitForTheWorkToEnd) {
    const auto begin = std::chrono::steady_clock::now();
    {
        Solver solver(nullptr, &slowWork);
        solver.request(lasting(60000), 1, Solver::Pace::settled);
        QTest::qWait(50);
    }
    EXPECT_LT(std::chrono::steady_clock::now() - begin, std::chrono::seconds(5));
}

TEST(Solver, InvalidDesignFailsWithItsProblems) {
    Solver solver;
    design::Design design = sampleDesign();
    design.mechanism.clearance = -1.0;
    QSignalSpy failed(&solver, &Solver::failed);
    solver.request(design, 1, Solver::Pace::settled);
    ASSERT_TRUE(QTest::qWaitFor([&] { return failed.count() > 0; }, 20000));
}
