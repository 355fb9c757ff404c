#include "core/solution/pipeline/closer_look.h"
#include "core/solution/pipeline/stages.h"
#include "core/units.h"
#include "tests/solution/solved_sample.h"

namespace lobewright {
namespace {

using solution::Detail;
using test::figure;
using test::sample;
using test::solved;

double trapezoid(const Samples& x, const Samples& y) {
    const Eigen::Index n = x.size() - 1;
    return (0.5 * (y.head(n) + y.tail(n)) * (x.tail(n) - x.head(n))).sum();
}

class EachSample : public testing::TestWithParam<const char*> {};

// Inner edge, middle and outer edge lie on the map: its largest pressure over the width is the
// channel of the nominal contact pressure.
TEST_P(EachSample, ContactMapHoldsTheContactPressureChannel) {
    const auto solution = solved(sample(GetParam()));
    for (const End end : bothEnds) {
        const auto map = solution::contactMap(solution, end, 15);
        ASSERT_TRUE(map);
        const auto* channel =
            solution.channel(std::string("contact_pressure_") + name(end) + "_MPa");
        const Samples largest = map->pressure.rowwise().maxCoeff();
        const double scale = channel->values.maxCoeff() * units::megapascal;
        EXPECT_LE((largest - channel->values * units::megapascal).abs().maxCoeff(), 1e-12 * scale);
        const auto& track = solution.stages->contact->track[end];
        EXPECT_NEAR(map->shear.maxCoeff(), track.deepestShear.maxCoeff(), 1e-9 * scale);
        EXPECT_NEAR(map->slip.maxCoeff(), track.slip.maxCoeff(), 1e-12 * track.slip.maxCoeff());
    }
}

// Whatever the lever, force × ∫lever dθ of one stroke is force × stroke: so is work.
TEST_P(EachSample, LeverOfTrackAndCrankSumToTheStroke) {
    const auto solution = solved(sample(GetParam()));
    const auto arms = solution::leverArms(solution);
    const auto& pair = solution.pair;
    for (const End end : bothEnds) {
        const double stroke = pair.curve(end).stroke();
        const double strokes = trapezoid(solution.theta, arms.track[end].abs()) / (2.0 * stroke);
        EXPECT_NEAR(strokes, pair.cyclesPerTurn(), 1e-3 * strokes);
        // Geared, the crank makes the strokes of the track in the same shaft angle.
        EXPECT_NEAR(trapezoid(solution.theta, arms.geared[end].abs()) / (2.0 * stroke),
                    pair.cyclesPerTurn(), 1e-3 * strokes);
        EXPECT_NEAR(arms.geared[end].maxCoeff(), pair.cyclesPerTurn() * arms.crank[end].maxCoeff(),
                    1e-12);
    }
}

TEST_P(EachSample, PistonPolygonClosesWhereTheRollerPresses) {
    const auto solution = solved(sample(GetParam()));
    for (const End end : bothEnds) {
        const auto& force = solution.stages->loads->piston[end].contactForce;
        for (Eigen::Index i = 0; i < solution.theta.size(); i += 37) {
            const auto polygon = solution::pistonPolygon(solution, end, solution.theta[i]);
            ASSERT_TRUE(polygon);
            if (force[i] > 0.0) {
                EXPECT_LE(polygon->sum().norm(), 1e-9 * force.abs().maxCoeff()) << i;
            }
        }
    }
}

TEST_P(EachSample, SupplyPathCostsWhatTheFiguresDeduct) {
    const auto solution = solved(sample(GetParam()));
    const auto path = solution::supplyPath(solution);
    ASSERT_TRUE(path);
    EXPECT_EQ(path->power / units::kilowatt, figure(solution, "supply_power_kW"));
    EXPECT_EQ(path->paid ? 1.0 : 0.0, figure(solution, "supply_power_counted"));
    EXPECT_EQ(path->compresses, path->power > 0.0);
    EXPECT_GE(path->compressed.temperature, path->ambient.temperature);
}

INSTANTIATE_TEST_SUITE_P(Samples, EachSample,
                         testing::Values("biogas-pump-set", "hydrogen-buoy-generator",
                                         "classroom-model", "sketched-lobes-blown",
                                         "turbocharged-works-generator"),
                         [](const auto& given) {
                             std::string text = given.param;
                             std::erase(text, '-');
                             return text;
                         });

TEST(CloserLook, StudiesKeepNoStages) {
    SilentMonitor monitor;
    const auto lean = solution::solve(sample("classroom-model"), monitor, nullptr, Detail::figures);
    ASSERT_TRUE(lean);
    EXPECT_FALSE(solution::contactMap(*lean, End::inlet, 3));
    EXPECT_FALSE(solution::shaftReactions(*lean));
}

// One thrust bearing and two radial ones hold the shaft: forces add up to nothing.
TEST(CloserLook, BearingsHoldTheShaft) {
    auto design = sample("biogas-pump-set");
    if (!design.mechanism.piston) {
        design.mechanism.piston.emplace();
        design.mechanism.piston->length = 0.07;
    }
    const auto solution = solved(design);
    const auto reactions = solution::shaftReactions(solution);
    ASSERT_TRUE(reactions);
    const auto& track = solution.stages->loads->track;
    const double scale = track.inlet.thrust.abs().maxCoeff();
    for (const auto& left :
         {Samples(reactions->radialX.inlet + reactions->radialX.exhaust + track.inlet.radialX +
                  track.exhaust.radialX),
          Samples(reactions->thrust - track.inlet.thrust + track.exhaust.thrust)}) {
        EXPECT_LE(left.abs().maxCoeff(), 1e-12 * scale);
    }
}

} // namespace
} // namespace lobewright
