#include "core/motion/lift_curve.h"
#include "patterns.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <random>

using namespace lobewright;
using namespace lobewright::motion;
using namespace lobewright::motion::test;
using testing::HasSubstr;

namespace {

constexpr double nothing = std::numeric_limits<double>::quiet_NaN();
constexpr double endless = std::numeric_limits<double>::infinity();
constexpr Law law = Law::cycloidal;

/// Expects exactly one problem, with this path and these words.
void expectProblem(const Pattern& pattern, const std::string& path, const std::string& words) {
    const Result<LiftCurve> curve = LiftCurve::make(pattern);
    ASSERT_FALSE(curve) << "accepted, expected: " << words;
    ASSERT_EQ(curve.problems().size(), 1u) << curve.problems()[0].message.english();
    EXPECT_EQ(curve.problems()[0].path, path);
    EXPECT_THAT(curve.problems()[0].message.english(), HasSubstr(words));
}

Pattern segments(std::vector<Segment> list, double stroke = 0.036, int lobes = 2) {
    return {lobes, SegmentShape{stroke, std::move(list)}};
}

Pattern knots(std::vector<Knot> list) {
    for (Knot& knot : list)
        knot.angle *= units::degree;
    return {2, KnotShape{std::move(list)}};
}

} // namespace

TEST(InvalidSegments, NameTheSpanThatIsNotPositive) {
    expectProblem(segments({rise(94, law), dwell(90), fall(-4, law)}), "/segments/2/span_deg",
                  "span is -4°, must be positive");
    expectProblem(segments({rise(90, law), dwell(0), fall(90, law)}), "/segments/1/span_deg",
                  "span is 0°, must be positive");
    expectProblem(segments({rise(nothing, law), fall(90, law)}), "/segments/0/span_deg",
                  "must be positive");
    expectProblem(segments({rise(endless, law), fall(90, law)}), "/segments/0/span_deg",
                  "must be positive");
    expectProblem(segments({rise(1e-9, law), dwell(90), fall(90 - 1e-9, law)}),
                  "/segments/0/span_deg", "must be at least 1e-06°");
}

TEST(InvalidSegments, MustFillThePeriod) {
    expectProblem(segments({rise(90, law), fall(89, law)}), "/segments",
                  "spans add up to 179°; they must add up to 180°");
    expectProblem(segments({rise(90, law), fall(90.001, law)}), "/segments", "180.001°");
    EXPECT_TRUE(LiftCurve::make(segments({rise(90, law), fall(90 + 1e-8, law)})));
}

TEST(InvalidSegments, NameTheLiftThatBreaksTheKind) {
    expectProblem(segments({rise(60, law), rise(30, law), fall(90, law)}), "/segments/1/kind",
                  "rise goes from 36 mm to 36 mm, must end higher");
    expectProblem(segments({fall(60, law), rise(30, law), fall(90, law)}), "/segments/0/kind",
                  "return goes from 0 mm to 0 mm, must end lower");
    expectProblem(segments({rise(60, law), fall(30, law, 0.036), fall(90, law)}),
                  "/segments/1/lift_mm", "must end lower");
    expectProblem(segments({rise(90, law, 0.037), fall(90, law)}), "/segments/0/lift_mm",
                  "end lift is 37 mm, must be within 0 … 36 mm");
    expectProblem(segments({rise(90, law, nothing), fall(90, law)}), "/segments/0/lift_mm",
                  "must be within");
    Segment sloping = dwell(10);
    sloping.endLift = 0.030;
    expectProblem(segments({rise(90, law), sloping, fall(80, law)}), "/segments/1/lift_mm",
                  "must keep its lift");
}

TEST(InvalidSegments, MustReachTheStrokeAndReturn) {
    expectProblem(segments({rise(90, law, 0.030), fall(90, law)}), "/stroke_mm",
                  "highest lift is 30 mm, the stroke is 36 mm");
    expectProblem(segments({rise(90, law), fall(90, law, 0.002)}), "/segments",
                  "ends at lift 2 mm, must end at 0 mm");
    expectProblem(segments({dwell(180)}), "/segments", "no rise");
    for (double stroke : {0.0, -0.036, nothing, endless}) {
        expectProblem(segments({rise(90, law), fall(90, law)}, stroke), "/stroke_mm",
                      "must be positive");
    }
}

TEST(InvalidSegments, AreAllListed) {
    const Result<LiftCurve> curve =
        LiftCurve::make(segments({rise(-1, law), dwell(-2), rise(5, law), fall(-3, law)}));
    ASSERT_FALSE(curve);
    std::vector<std::string> paths;
    for (const Problem& problem : curve.problems())
        paths.push_back(problem.path);
    EXPECT_THAT(paths, testing::ElementsAre("/segments/0/span_deg", "/segments/1/span_deg",
                                            "/segments/3/span_deg", "/segments/2/kind"));
}

TEST(InvalidSegments, MayBeNone) {
    const Result<LiftCurve> curve = LiftCurve::make(segments({}));
    ASSERT_FALSE(curve);
    EXPECT_EQ(curve.problems()[0].path, "/segments");
}

TEST(InvalidPattern, NeedsAtLeastOneLobe) {
    expectProblem(segments({rise(90, law), fall(90, law)}, 0.036, 0), "/lobes",
                  "lobes is 0, must be at least 1");
    expectProblem(segments({rise(90, law), fall(90, law)}, 0.036, -2), "/lobes", "at least 1");
}

// Every number is finite, the jerk is not.
TEST(InvalidPattern, MustStayWithinTheRangeOfNumbers) {
    expectProblem(segments({rise(90, law), fall(90, law)}, 1e308), "", "range of numbers");
    const HarmonicShape huge{{{200, 1e303, 0.0}}};
    expectProblem({2, huge}, "", "range of numbers");
}

TEST(InvalidKnots, AreNamed) {
    expectProblem(knots({{0, 0.0, {}}, {90, 0.036, {}}}), "/knots",
                  "there are 2 knots, need at least 3");
    expectProblem(knots({{0, 0.0, {}}, {90, 0.036, {}}, {180, 0.0, {}}}), "/knots/2/angle_deg",
                  "angle is 180°, must be at least 0° and below the period of 180°");
    expectProblem(knots({{-1, 0.0, {}}, {90, 0.036, {}}, {120, 0.0, {}}}), "/knots/0/angle_deg",
                  "angle is -1°");
    expectProblem(knots({{0, 0.0, {}}, {90, 0.036, {}}, {80, 0.0, {}}}), "/knots/2/angle_deg",
                  "angle is 80° after 90°, must increase");
    expectProblem(knots({{0, 0.0, {}}, {90, 0.036, {}}, {179.99999, 0.0, {}}}),
                  "/knots/2/angle_deg", "before the first knot of the next period");
    expectProblem(knots({{0, nothing, {}}, {90, 0.036, {}}, {120, 0.0, {}}}), "/knots/0/lift_mm",
                  "must be finite");
    expectProblem(knots({{0, 0.0, {}}, {90, 0.036, endless}, {120, 0.0, {}}}),
                  "/knots/1/slope_mm_per_deg", "must be finite");
    expectProblem(knots({{0, 0.01, {}}, {90, 0.01, {}}, {120, 0.01, {}}}), "/knots",
                  "lift changes by 0 mm, must change by at least 1e-06 mm");
}

TEST(InvalidHarmonics, AreNamed) {
    const auto harmonics = [](std::vector<Harmonic> list) {
        return Pattern{2, HarmonicShape{std::move(list)}};
    };
    expectProblem(harmonics({}), "/harmonics", "there are 0 harmonics");
    expectProblem(harmonics({{0, 0.01, 0.0}}), "/harmonics/0/order",
                  "order is 0, must be within 1 … 200");
    expectProblem(harmonics({{1, 0.01, 0.0}, {1, 0.0, 0.01}}), "/harmonics/1/order",
                  "order 1 is given before");
    expectProblem(harmonics({{1, nothing, 0.0}}), "/harmonics/0/cos_mm", "must be finite");
    expectProblem(harmonics({{1, 0.01, endless}}), "/harmonics/0/sin_mm", "must be finite");
    expectProblem(harmonics({{1, 0.0, 0.0}}), "/harmonics", "amplitudes add up to 0 mm");
}

// 3000 patterns drawn from awkward numbers: each is refused with a message, or finite everywhere.
TEST(AnyPattern, IsRefusedOrFinite) {
    std::mt19937 random(11);
    const double numbers[] = {0.0,      -0.0,  1.0,   -1.0,   1e-300, 1e300, nothing, endless,
                              -endless, 0.036, 0.018, 1e-6,   1e-12,  0.7,   1.4,     2.2,
                              3.1,      6.28,  0.01,  5e-324, 1e-9,   1e9,   0.5,     1.5};
    const auto pick = [&] {
        return numbers[std::uniform_int_distribution<std::size_t>(0,
                                                                  std::size(numbers) - 1)(random)];
    };
    const auto upTo = [&](int most) { return std::uniform_int_distribution<int>(0, most)(random); };
    const auto shape = [&]() -> std::variant<SegmentShape, KnotShape, HarmonicShape> {
        const int kind = upTo(2), count = upTo(6);
        if (kind == 0) {
            SegmentShape list{pick(), {}};
            for (int i = 0; i < count; ++i) {
                list.segments.push_back({static_cast<SegmentKind>(upTo(2)), pick(),
                                         allLaws[static_cast<std::size_t>(upTo(6))],
                                         upTo(1) ? std::optional(pick()) : std::nullopt});
            }
            return list;
        }
        if (kind == 1) {
            KnotShape list;
            std::vector<double> angles;
            angles.reserve(static_cast<std::size_t>(count));
            for (int i = 0; i < count; ++i)
                angles.push_back(pick());
            if (upTo(3) > 0) {
                std::sort(angles.begin(), angles.end(), [](double a, double b) {
                    return std::isnan(b) ? !std::isnan(a) : a < b;
                });
            }
            for (double angle : angles) {
                list.knots.push_back(
                    {angle, pick(), upTo(1) ? std::optional(pick()) : std::nullopt});
            }
            return list;
        }
        HarmonicShape list;
        for (int i = 0; i < count; ++i)
            list.harmonics.push_back({upTo(20), pick(), pick()});
        return list;
    };
    int accepted = 0;
    for (int i = 0; i < 3000; ++i) {
        const Result<LiftCurve> curve = LiftCurve::make({1 + upTo(1), shape()});
        if (!curve) {
            EXPECT_FALSE(curve.problems()[0].message.english().empty());
            continue;
        }
        ++accepted;
        for (int j = 0; j < 50; ++j) {
            const Lift lift = curve->at(curve->period() * j / 50.0);
            EXPECT_TRUE(std::isfinite(lift.y) && std::isfinite(lift.y1) && std::isfinite(lift.y2) &&
                        std::isfinite(lift.y3));
        }
        EXPECT_GE(curve->risesPerPattern(), 1);
    }
    EXPECT_GT(accepted, 5);
}
