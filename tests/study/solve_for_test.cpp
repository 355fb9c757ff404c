#include "core/study/solve_for.h"
#include "core/units.h"
#include "tests/solution/solved_sample.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace lobewright::study {
namespace {

using test::sample;
using test::solved;

Goal byPressure(const std::string& result, double target) {
    return {result, target, "/gas/supply/pressure_bar", 1.1, 2.5};
}

GoalAnswer answered(const design::Design& design, const Goal& goal) {
    SilentMonitor monitor;
    auto answer = solveFor(design, goal, monitor);
    if (!answer) {
        throw std::runtime_error(answer.problems().front().message.english());
    }
    return *answer;
}

double resultAt(const design::Design& design, const Goal& goal, double input) {
    return *solved(withGoal(design, goal, input)).figure(goal.result)->value;
}

/// Where the straight line through two neighbours of a fine sweep meets the target.
double byFineSweep(const design::Design& design, const Goal& goal, double centre, double width) {
    double low = centre - width, high = centre + width;
    for (int i = 0; i < 40; ++i) { // halves: no method in common with what is tested
        const double middle = 0.5 * (low + high);
        const bool isBelow = (resultAt(design, goal, middle) < goal.target) ==
                             (resultAt(design, goal, low) < goal.target);
        (isBelow ? low : high) = middle;
    }
    return 0.5 * (low + high);
}

TEST(SolveFor, AgreesWithAFineSweep) {
    const auto design = sample("biogas-pump-set");
    const Goal goal = byPressure("peak_pressure_bar", 60.0);
    const auto answer = answered(design, goal);
    ASSERT_EQ(answer.solutions.size(), 1U);
    const Trial& found = answer.solutions.front();
    EXPECT_NEAR(found.result, 60.0, 60.0 * 1e-6);
    EXPECT_NEAR(found.input / byFineSweep(design, goal, found.input, 0.05), 1.0, 1e-6);
    EXPECT_NEAR(resultAt(design, goal, found.input), 60.0, 60.0 * 2e-6);
    EXPECT_EQ(answer.input.label.english(), "Supply pressure");
    EXPECT_EQ(answer.result.unit, "bar");
}

// Torque over the start of combustion has one maximum: anything below it is reached twice.
TEST(SolveFor, FindsBothOfTwoSolutions) {
    const auto design = sample("biogas-pump-set");
    Goal goal{"brake_torque_Nm", 0.0, "/gas/burn/start_deg", -60.0, 20.0};
    const auto range = answered(design, goal);
    goal.target = 0.5 * (range.lowest.result + range.highest.result);
    const auto atLow = resultAt(design, goal, goal.from), atHigh = resultAt(design, goal, goal.to);
    goal.target = 0.5 * (std::max(atLow, atHigh) + range.highest.result);
    const auto answer = answered(design, goal);
    ASSERT_EQ(answer.solutions.size(), 2U);
    EXPECT_LT(answer.solutions[0].input, answer.highest.input);
    EXPECT_GT(answer.solutions[1].input, answer.highest.input);
    for (const Trial& trial : answer.solutions) {
        EXPECT_NEAR(resultAt(design, goal, trial.input) / goal.target, 1.0, 2e-6);
    }
}

// Between two points of the coarse sweep: only the search of the peak sees them.
TEST(SolveFor, FindsTwoSolutionsCloseBesideAPeak) {
    const auto design = sample("biogas-pump-set");
    Goal goal{"brake_torque_Nm", 1e6, "/gas/burn/start_deg", -60.0, 20.0};
    const double peak = answered(design, goal).highest.result;
    goal.target = peak * (1.0 - 1e-5);
    const auto answer = answered(design, goal);
    ASSERT_EQ(answer.solutions.size(), 2U);
    EXPECT_LT(answer.solutions[1].input - answer.solutions[0].input, 80.0 / (sweepPoints - 1));
}

TEST(SolveFor, SaysWhatIsNearestWhereTheTargetIsOutOfReach) {
    const auto design = sample("biogas-pump-set");
    const Goal goal = byPressure("peak_pressure_bar", 500.0);
    const auto answer = answered(design, goal);
    EXPECT_TRUE(answer.solutions.empty());
    EXPECT_EQ(answer.nearest.input, 2.5);
    EXPECT_NEAR(answer.nearest.result, resultAt(design, goal, 2.5), 2e-6 * answer.nearest.result);
    EXPECT_EQ(answer.highest.result, answer.nearest.result);
}

TEST(SolveFor, GoesOnWhereTheEngineCannotBeBuiltInPartOfTheRange) {
    const auto design = sample("biogas-pump-set");
    const double width = design.ports.exhaust.front().width / units::millimetre;
    const double ratio = *solved(design).figure("delivery_ratio")->value;
    // Eight ports wider than an eighth of the circumference do not fit around the bore.
    const Goal goal{"delivery_ratio", ratio, "/ports/exhaust/0/width_mm", 0.7 * width, 3.5 * width};
    const auto answer = answered(design, goal);
    EXPECT_GT(answer.failed, 0);
    EXPECT_FALSE(answer.failure.empty());
    ASSERT_EQ(answer.solutions.size(), 1U);
    EXPECT_NEAR(answer.solutions.front().input, width, 1e-3);
}

TEST(SolveFor, SaysWhichPartOfTheQuestionIsWrong) {
    const auto design = sample("biogas-pump-set");
    SilentMonitor monitor;
    const auto path = [&](const Goal& goal) {
        const auto answer = solveFor(design, goal, monitor);
        return answer ? "answered" : answer.problems().front().path;
    };
    EXPECT_EQ(path({"brake_power_kW", 5.0, "/gas/supply/presure_bar", 1.0, 2.0}),
              "/gas/supply/presure_bar");
    EXPECT_EQ(path({"brake_power_kW", 5.0, "/gas/fuel", 1.0, 2.0}), "/gas/fuel");
    EXPECT_EQ(path({"brake_power_kW", 5.0, "/mechanism/cylinders", 1.0, 4.0}),
              "/mechanism/cylinders");
    EXPECT_EQ(path({"brake_power_kW", 5.0, "/gas/supply/pressure_bar", 2.0, 1.0}),
              "/gas/supply/pressure_bar");
    EXPECT_EQ(path({"brake_power_kW", 5.0, "/gas/supply/pressure_bar", 1.0, 200.0}),
              "/gas/supply/pressure_bar");
    EXPECT_EQ(path({"brake_pour_kW", 5.0, "/gas/supply/pressure_bar", 1.0, 2.0}), "");
    EXPECT_EQ(path({"brake_power_kW", std::nan(""), "/gas/supply/pressure_bar", 1.0, 2.0}), "");
}

TEST(SolveFor, StopsWhenAsked) {
    class Impatient final : public Monitor {
      public:
        bool step(double, const Message&) override { return ++steps_ < 40; }

      private:
        int steps_ = 0;
    } monitor;
    const auto answer =
        solveFor(sample("biogas-pump-set"), byPressure("peak_pressure_bar", 60.0), monitor);
    ASSERT_FALSE(answer);
    EXPECT_EQ(answer.problems().front().message.english(), "cancelled");
}

TEST(WithGoal, WidensTheRangeOfTheInput) {
    auto design = sample("biogas-pump-set");
    const Goal goal = byPressure("peak_pressure_bar", 60.0);
    design.knowledge[goal.input] = {.low = 1.0, .high = 1.5};
    EXPECT_EQ(withGoal(design, goal, 1.8).knowledge.at(goal.input).high, 1.8);
}

// Auxiliaries that take just what the engine gives at 1.4 bar leave no torque there, and less than
// none over most of the range.
TEST(SolveFor, FindsWhereNothingIsLeft) {
    auto design = sample("biogas-pump-set");
    design.gas.supply.pressure = 1.4e5;
    design.friction.auxiliaryPower = 0.0;
    design.friction.auxiliaryPower = 1e3 * *solved(design).figure("brake_power_kW")->value;
    const auto answer =
        answered(design, {"brake_torque_Nm", 0.0, "/gas/supply/pressure_bar", 1.1, 1.43});
    ASSERT_EQ(answer.solutions.size(), 1U);
    EXPECT_NEAR(answer.solutions.front().input, 1.4, 1e-4);
}

TEST(FigureDifferences, ListWhatChangedAndNothingElse) {
    const auto design = sample("biogas-pump-set");
    const auto before = solved(design);
    EXPECT_TRUE(figureDifferences(before, before).empty());
    const auto after = solved(withGoal(design, byPressure("x", 1.0), 1.7));
    const auto differences = figureDifferences(before, after);
    const auto holds = [&](const char* name) {
        return std::ranges::any_of(differences, [name](const FigureDifference& difference) {
            return difference.after.name == name;
        });
    };
    EXPECT_TRUE(holds("brake_power_kW"));
    EXPECT_FALSE(holds("displacement_cm3"));
}

} // namespace
} // namespace lobewright::study
