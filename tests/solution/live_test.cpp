#include "core/solution/pipeline/stages.h"
#include "core/units.h"
#include "tests/solution/solved_sample.h"

#include <cmath>

namespace lobewright {
namespace {

using test::figure;
using test::sample;
using test::solved;

solution::Solution solvedLive(const design::Design& design, const solution::Solution& previous) {
    SilentMonitor monitor;
    solution::Request request;
    request.live = true;
    auto solution = solution::solve(design, monitor, &previous, request);
    if (!solution) {
        throw std::runtime_error(solution.problems().front().message.english());
    }
    return std::move(solution).value();
}

/// The step of a hand: a little less clearance.
design::Design nudged(design::Design design) {
    design.mechanism.clearance -= 0.02 * units::millimetre;
    return design;
}

class LivePicture : public testing::TestWithParam<const char*> {};

// 1e-3 of a plot's height is less than a pixel.
TEST_P(LivePicture, IsWithinAPixelOfTheSettledOne) {
    const auto before = solved(sample(GetParam()));
    const auto design = nudged(before.design);
    const auto picture = solvedLive(design, before);
    const auto settled = solved(design);
    ASSERT_TRUE(picture.gas && settled.gas);
    EXPECT_TRUE(picture.live);
    EXPECT_FALSE(settled.live);
    for (const char* name : {"imep_bar", "peak_pressure_bar", "trapped_mass_mg"}) {
        EXPECT_NEAR(figure(picture, name), figure(settled, name),
                    1e-3 * std::abs(figure(settled, name)))
            << name;
    }
    EXPECT_LE(picture.gas->periods, settled.gas->periods);
}

TEST_P(LivePicture, OfAnUnchangedDesignIsTheSettledOne) {
    const auto before = solved(sample(GetParam()));
    const auto picture = solvedLive(before.design, before);
    EXPECT_EQ(picture.stages->gas, before.stages->gas);
    EXPECT_FALSE(picture.live);
}

// However the hand went there, the design that stays has one answer.
TEST_P(LivePicture, LeavesNoTraceInTheSettledOne) {
    const auto before = solved(sample(GetParam()));
    const auto design = nudged(before.design);
    const auto picture = solvedLive(design, before);
    const auto after = solved(design, &picture);
    const auto fresh = solved(design);
    EXPECT_FALSE(after.live);
    EXPECT_EQ(figure(after, "imep_bar"), figure(fresh, "imep_bar"));
    EXPECT_EQ(figure(after, "peak_pressure_bar"), figure(fresh, "peak_pressure_bar"));
}

INSTANTIATE_TEST_SUITE_P(Samples, LivePicture,
                         testing::Values("biogas-pump-set", "classroom-model",
                                         "hydrogen-buoy-generator", "sketched-lobes-blown",
                                         "unequal-lobes"),
                         [](const auto& sampleInfo) {
                             std::string name = sampleInfo.param;
                             std::replace(name.begin(), name.end(), '-', '_');
                             return name;
                         });

// Knots that pass openings and closings of ports change the order of what happens, not the engine:
// a search from nothing takes ten times as long, which the hand feels.
TEST(LivePictureOfADrag, BeginsWhereTheLastEndedWhateverTheKnotPasses) {
    const auto start = sample("sketched-lobes-blown");
    auto picture = solved(start);
    for (int step = 1; step <= 30; ++step) {
        auto design = start;
        auto& knot = std::get<motion::KnotShape>(design.tracks.inlet.shape).knots[1];
        knot.angle += std::sin(0.4 * step) * units::degree;
        knot.lift += 0.8 * std::sin(0.28 * step) * units::millimetre;
        picture = solvedLive(design, picture);
        EXPECT_TRUE(picture.live) << step;
    }
}

// Another engine's cycle is no place to begin: lobes, firing or the kind of supply may have
// changed.
TEST(LivePictureOfAnotherEngine, IsSearchedForFromTheBeginning) {
    const auto before = solved(sample("biogas-pump-set"));
    const auto picture = solvedLive(sample("sketched-lobes-blown"), before);
    ASSERT_TRUE(picture.gas);
    const auto fresh = solved(sample("sketched-lobes-blown"));
    EXPECT_NEAR(figure(picture, "imep_bar"), figure(fresh, "imep_bar"),
                1e-3 * figure(fresh, "imep_bar"));
}

TEST(FigureGroups, OnlyThoseAskedForAreMade) {
    SilentMonitor monitor;
    solution::Request request(solution::Detail::figures);
    request.groups = {"loads", "energy"};
    const auto lean = solution::solve(sample("biogas-pump-set"), monitor, nullptr, request);
    ASSERT_TRUE(lean);
    const auto whole = solved(sample("biogas-pump-set"));
    EXPECT_EQ(lean->figure("compression_ratio"), nullptr);
    EXPECT_EQ(figure(*lean, "mean_torque_Nm"), figure(whole, "mean_torque_Nm"));
    EXPECT_EQ(figure(*lean, "fuel_heat_J"), figure(whole, "fuel_heat_J"));
}

} // namespace
} // namespace lobewright
