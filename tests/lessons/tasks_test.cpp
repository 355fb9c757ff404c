// Every task of the lessons, solved once on a sample, and failed once.
#include "core/design/file.h"
#include "core/lessons/task.h"
#include "core/track/undercut.h"
#include "core/units.h"
#include "tests/places.h"

#include <gtest/gtest.h>

#include <cmath>
#include <filesystem>
#include <set>
#include <stdexcept>

namespace lobewright::lessons {
namespace {

constexpr double deg = units::degree;
constexpr double mm = units::millimetre;

solution::Solution solved(const design::Design& design) {
    SilentMonitor monitor;
    auto solution = solution::solve(design, monitor);
    if (!solution) {
        throw std::runtime_error(solution.problems().front().message.english());
    }
    return std::move(solution).value();
}

design::Design sample(const std::string& name) {
    const auto design = design::loadDesign(std::filesystem::path(lobewright::test::sourceFolder()) /
                                           "samples" / (name + ".lobewright.json"));
    if (!design) {
        throw std::runtime_error(design.problems().front().message.english());
    }
    return *design;
}

const solution::Solution& engine() {
    static const solution::Solution solution = solved(sample("biogas-pump-set"));
    return solution;
}

double figure(const solution::Solution& solution, const char* name) {
    return solution.figure(name)->value.value();
}

class Tasks : public ::testing::Test {
  protected:
    Verdict guessed(const char* id, double guess) {
        return judge(id, {engine(), engine(), guess, 0.0}, monitor).value();
    }
    Verdict pointed(const char* id, double angle) {
        return judge(id, {engine(), engine(), {}, angle}, monitor).value();
    }
    Verdict built(const char* id, const design::Design& design) {
        const solution::Solution now = solved(design);
        return judge(id, {engine(), now, {}, 0.0}, monitor).value();
    }
    /// The right guess is right, one far off is not, and the causes make the whole change.
    void expectPrediction(const char* id, double right, double wrong) {
        const Verdict good = guessed(id, right), bad = guessed(id, wrong);
        EXPECT_TRUE(good.isRight) << id << ": " << good.answer;
        EXPECT_FALSE(bad.isRight) << id;
        EXPECT_NEAR(good.answer, right, 1e-6 * std::abs(right)) << id;
        EXPECT_FALSE(good.text.empty());
        if (!good.causes.empty()) {
            double sum = good.before;
            for (const Cause& cause : good.causes) {
                EXPECT_FALSE(cause.what.empty());
                sum += cause.amount;
            }
            EXPECT_NEAR(sum, good.answer, 1e-9 * std::abs(good.answer)) << id;
        }
    }
    /// Angle at which a channel is largest.
    double largest(const char* name, bool magnitude) {
        const Samples values = magnitude ? Samples(engine().channel(name)->values.abs())
                                         : engine().channel(name)->values;
        Eigen::Index at = 0;
        values.maxCoeff(&at);
        return engine().theta[at];
    }

    SilentMonitor monitor;
};

TEST_F(Tasks, ThereAreTwelveForAFiredEngine) {
    const auto all = tasks(engine());
    EXPECT_EQ(all.size(), 12u);
    std::set<std::string> ids;
    for (const Task& task : all) {
        ids.insert(task.id);
        EXPECT_FALSE(task.title.empty());
        EXPECT_FALSE(task.question.empty());
        EXPECT_FALSE(task.hints.empty()) << task.id;
        EXPECT_EQ(task.question.english().find('%'), std::string::npos) << task.id;
    }
    EXPECT_EQ(ids.size(), all.size());
}

TEST_F(Tasks, OnlyWhatTheEngineCanShowIsAsked) {
    design::Design motored = sample("biogas-pump-set");
    motored.running.motored = true;
    for (const Task& task : tasks(solved(motored))) {
        EXPECT_NE(task.id, "firings");
        EXPECT_NE(task.id, "faster");
        EXPECT_NE(task.id, "after-charge");
    }
    for (const Task& task : tasks(solved(sample("harbour-crane-auxiliary")))) {
        EXPECT_NE(task.id, "exhaust-lead");
        EXPECT_NE(task.id, "after-charge");
    }
}

TEST_F(Tasks, StrokesAreCounted) {
    expectPrediction("strokes", 2.0, 4.0);
}

TEST_F(Tasks, FiringsAreCylindersTimesLobesTimesRevolutions) {
    expectPrediction("firings", 3.0 * 2.0 * 1000.0, 3000.0);
}

TEST_F(Tasks, LeadMovesTheExhaustOpeningByLessThanTheLobesMultiply) {
    design::Design more = engine().design;
    more.mechanism.exhaustLead += 4.0 * deg;
    const double moved = (figure(engine(), "exhaust_opens_cycle_deg") -
                          figure(solved(more), "exhaust_opens_cycle_deg")) *
                         deg;
    EXPECT_GT(moved, 0.0);
    EXPECT_LT(moved, 8.0 * deg);
    expectPrediction("exhaust-lead", moved, 8.0 * deg);
}

TEST_F(Tasks, ClearanceLowersTheCompressionRatio) {
    design::Design more = engine().design;
    more.mechanism.clearance += 1.0 * mm;
    expectPrediction("clearance", figure(solved(more), "trapped_compression_ratio"),
                     figure(engine(), "trapped_compression_ratio"));
}

TEST_F(Tasks, PowerAtAHigherSpeed) {
    design::Design faster = engine().design;
    faster.running.speed *= 1.5;
    const double power = 1e3 * figure(solved(faster), "brake_power_kW");
    expectPrediction("faster", power, 1.3 * power);
}

TEST_F(Tasks, HalfAsManyLobes) {
    design::Design one = engine().design;
    one.tracks.inlet.lobes = 1;
    for (auto& segment : std::get<motion::SegmentShape>(one.tracks.inlet.shape).segments) {
        segment.span *= 2.0;
    }
    const double torque = figure(solved(one), "brake_torque_Nm");
    expectPrediction("lobes", torque, 1.3 * torque);
    EXPECT_EQ(guessed("lobes", torque).causes.size(), 3u); // events, lead, the rest
}

TEST_F(Tasks, PlacesOfTheShaftAreFoundByTurningIt) {
    const std::pair<const char*, double> places[] = {
        {"exhaust-opens", engine().timing.cycles().front().exhaustOpens},
        {"highest-pressure", largest("pressure_bar", true)},
        {"steepest", largest("pressure_angle_inlet_deg", true)},
        {"largest-torque", largest("torque_total_Nm", false)}};
    for (const auto& [id, angle] : places) {
        EXPECT_TRUE(pointed(id, angle).isRight) << id;
        // A whole turn further is the same place; a sixteenth of a turn further is another.
        EXPECT_TRUE(pointed(id, angle + units::turn).isRight) << id;
        EXPECT_FALSE(pointed(id, angle + units::turn / 16.0).isRight) << id;
    }
}

TEST_F(Tasks, AfterChargeIsBuiltWithoutLosingTorque) {
    EXPECT_FALSE(built("after-charge", engine().design).isRight);
    design::Design led = engine().design;
    led.mechanism.exhaustLead = 9.5 * deg; // enough after-charge, too little torque
    EXPECT_FALSE(built("after-charge", led).isRight);
    design::Design later = engine().design;
    later.mechanism.exhaustLead = 7.5 * deg;
    later.ports.inlet.front().edge = later.ports.inlet.front().height = 8.4 * mm;
    EXPECT_TRUE(built("after-charge", later).isRight);
}

TEST_F(Tasks, RollerIsEnlargedUpToUndercut) {
    const auto limit = track::largestRollerRadius(engine().pair.curve(End::inlet), 104.0 * mm,
                                                  20.0 * mm, track::Flank::push)
                           ->value;
    const auto with = [&](double radius) {
        design::Design design = engine().design;
        design.mechanism.roller.radius = radius;
        return built("undercut", design);
    };
    EXPECT_TRUE(with(limit - 0.4 * mm).isRight);
    EXPECT_FALSE(with(limit - 3.0 * mm).isRight);
    EXPECT_FALSE(with(limit + 0.5 * mm).isRight);
}

TEST_F(Tasks, WithoutAGuessOrATaskThereIsNoVerdict) {
    EXPECT_FALSE(judge("firings", {engine(), engine(), {}, 0.0}, monitor));
    EXPECT_FALSE(judge("no-such-task", {engine(), engine(), 1.0, 0.0}, monitor));
}

} // namespace
} // namespace lobewright::lessons
