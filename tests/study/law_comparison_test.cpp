#include "core/study/law_comparison.h"
#include "core/units.h"
#include "tests/design/sample.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <string>

namespace lobewright::study {
namespace {

using motion::Law;

std::vector<ComparedLaw> compared(const design::Design& design, std::optional<int> segment = {}) {
    SilentMonitor monitor;
    auto rows = compareLaws(design, End::inlet, segment, monitor);
    EXPECT_TRUE(rows) << (rows ? "" : rows.problems().front().message.english());
    return rows ? std::move(rows).value() : std::vector<ComparedLaw>();
}

// Peaks follow from the handbook factors: v = C_v·h·ω/β, a = C_a·h·ω²/β² [VDI 2143-1].
TEST(LawComparison, ScalesTheFactorsToTheDesign) {
    const design::Design design = design::testing::sample();
    const auto& shape = std::get<motion::SegmentShape>(design.tracks.inlet.shape);
    double shortest = units::turn;
    for (const motion::Segment& segment : shape.segments) {
        if (segment.kind != motion::SegmentKind::dwell)
            shortest = std::min(shortest, segment.span);
    }
    const double omega = design.running.speed;
    const auto rows = compared(design);
    ASSERT_EQ(rows.size(), std::size(motion::allLaws));
    for (const ComparedLaw& row : rows) {
        const auto& c = row.factors;
        EXPECT_NEAR(row.velocity, c.velocity * shape.stroke * omega / shortest, 1e-9);
        EXPECT_NEAR(row.acceleration, c.acceleration * shape.stroke * std::pow(omega / shortest, 2),
                    1e-6);
        EXPECT_NEAR(std::tan(row.pressureAngle),
                    c.velocity * shape.stroke / shortest / design.mechanism.pitchRadius, 1e-12);
        EXPECT_EQ(std::isinf(row.jerk), row.law == Law::harmonic || row.law == Law::parabolic);
    }
}

// The row of the present law is the present design.
TEST(LawComparison, PresentLawHasTheFiguresOfTheDesign) {
    const design::Design design = design::testing::sample();
    SilentMonitor monitor;
    const auto solved = solution::solve(design, monitor);
    ASSERT_TRUE(solved);
    int present = 0;
    for (const ComparedLaw& row : compared(design)) {
        if (!row.isPresent)
            continue;
        ++present;
        ASSERT_TRUE(row.contactPressure);
        // Both tracks have the pattern: the worse of them counts.
        ASSERT_FALSE(design.tracks.exhaust);
        double pressure = 0.0;
        double force = 1e300;
        for (const End end : bothEnds) {
            const std::string side = name(end);
            pressure = std::max(pressure,
                                *solved->figure("peak_contact_pressure_" + side + "_MPa")->value);
            force = std::min(force, *solved->figure("lowest_contact_force_" + side + "_N")->value);
        }
        EXPECT_NEAR(*row.contactPressure / units::megapascal, pressure, 1e-6 * pressure);
        EXPECT_NEAR(*row.leastContactForce, force, 1e-6 * std::abs(force));
    }
    EXPECT_EQ(present, 1);
}

TEST(LawComparison, OneSegmentAloneTakesTheLaw) {
    const design::Design design = design::testing::sample();
    const design::Design changed = withLaw(design, End::inlet, 2, Law::polynomial4567);
    const auto& before = std::get<motion::SegmentShape>(design.tracks.inlet.shape).segments;
    const auto& after = std::get<motion::SegmentShape>(changed.tracks.inlet.shape).segments;
    for (std::size_t i = 0; i < before.size(); ++i) {
        EXPECT_EQ(after[i].law, i == 2 ? Law::polynomial4567 : before[i].law);
        EXPECT_EQ(after[i].span, before[i].span);
    }
}

TEST(LawComparison, NamesWhatCannotTakeALaw) {
    const design::Design design = design::testing::sample();
    SilentMonitor monitor;
    const auto dwell = compareLaws(design, End::exhaust, 1, monitor);
    ASSERT_FALSE(dwell);
    EXPECT_EQ(dwell.problems().front().path, "/tracks/inlet/segments/1") << "both tracks are one";
    EXPECT_FALSE(compareLaws(design, End::inlet, 99, monitor));
    design::Design free = design;
    free.tracks.inlet.shape = motion::HarmonicShape{{{1, -0.018, 0.0}}};
    const auto none = compareLaws(free, End::inlet, {}, monitor);
    ASSERT_FALSE(none);
    EXPECT_EQ(none.problems().front().path, "/tracks/inlet");
}

TEST(LawComparison, StopsWhenAsked) {
    struct Stopper final : Monitor {
        bool step(double, const Message&) override { return false; }
    } stopper;
    const auto rows = compareLaws(design::testing::sample(), End::inlet, {}, stopper);
    ASSERT_FALSE(rows);
    EXPECT_EQ(rows.problems().front().message.english(), "cancelled");
}

} // namespace
} // namespace lobewright::study
