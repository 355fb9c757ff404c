#include "brute_force.h"
#include "core/track/surface.h"
#include "core/track/track.h"

#include <gtest/gtest.h>

#include <cmath>

using namespace lobewright;
using namespace lobewright::track;
using namespace lobewright::track::test;

namespace {

/// Contact point, normal out of the track, and the direction in the surface square to the contact
/// line (whose direction is taken from points on both sides).
struct ContactFrame {
    Vector3d point, normal, across;
};

ContactFrame frameAt(const LiftCurve& curve, double phi, double rho, double rollerRadius,
                     Flank flank) {
    const double step = 1e-4 * rho;
    const Samples angle = Samples::Constant(1, phi);
    Samples stations(3);
    stations << rho - step, rho, rho + step;
    const Surface s = surface(curve, angle, stations, rollerRadius, flank, {});
    const Vector3d along = (s.points.col(2) - s.points.col(0)).normalized();
    return {s.points.col(1), s.normals.col(1), s.normals.col(1).cross(along).normalized()};
}

/// Gap between roller and track at a distance from the contact line: along the normal from the
/// tangent plane, up to the roller's surface and down to the first point that no roller position
/// sweeps.
double gap(const LiftCurve& curve, const ContactFrame& frame, double distance, double phi,
           double rollerRadius) {
    const Vector3d foot = frame.point + distance * frame.across;
    const double depth = distance * distance / rollerRadius;
    const auto solve = [&](const auto& excess) {
        std::uintmax_t steps = 100;
        const auto bracket =
            boost::math::tools::toms748_solve(excess, -20.0 * depth, 20.0 * depth,
                                              boost::math::tools::eps_tolerance<double>(45), steps);
        return 0.5 * (bracket.first + bracket.second);
    };
    const double roller = solve([&](double height) {
        return axisDistance(curve, foot + height * frame.normal, phi) - rollerRadius;
    });
    const double window = 10.0 * std::abs(distance) / frame.point.norm();
    const double track = solve([&](double height) {
        return nearest(curve, foot + height * frame.normal, phi, window, 8) - rollerRadius;
    });
    return roller - track;
}

/// Relative radius from the gap s²/(2·R), even in s, extrapolated to s → 0.
double relativeRadiusFromGap(const LiftCurve& curve, double phi, double rho, double rollerRadius,
                             Flank flank) {
    const ContactFrame frame = frameAt(curve, phi, rho, rollerRadius, flank);
    const auto curvature = [&](double s) {
        return (gap(curve, frame, s, phi, rollerRadius) +
                gap(curve, frame, -s, phi, rollerRadius)) /
               (s * s);
    };
    const double s = 0.01 * rollerRadius;
    return 1.0 / ((4.0 * curvature(0.5 * s) - curvature(s)) / 3.0);
}

} // namespace

// The gap that the rotating roller leaves, found by search over the rotation, at 200 places of
// smooth curves on both flanks, inner to outer edge.
TEST(RelativeRadius, EqualsTheGapLeftByTheMovingRoller) {
    const LiftCurve wave = harmonicWave();
    const LiftCurve lobe =
        LiftCurve::make({2, motion::HarmonicShape{{{1, -0.018, 0.002}, {2, 0.0015, -0.001}}}})
            .value();
    const double rollerRadius = 0.016;
    int compared = 0;
    for (const LiftCurve* curve : {&wave, &lobe}) {
        for (Flank flank : {Flank::push, Flank::pull}) {
            for (double rho : {0.080, 0.095, 0.110}) {
                for (int i = 0; i < 17; ++i) {
                    const double phi = curve->period() * (i + 0.3) / 17.0;
                    const double exact = relativeRadius(curve->at(phi), rho, rollerRadius, flank);
                    EXPECT_NEAR(relativeRadiusFromGap(*curve, phi, rho, rollerRadius, flank), exact,
                                1e-6 * exact)
                        << "angle " << phi << ", station " << rho;
                    ++compared;
                }
            }
        }
    }
    EXPECT_GE(compared, 200);
}

// The whole-array functions are the pointwise ones.
TEST(ContactArrays, EqualPointwiseEvaluation) {
    const LiftCurve curve = randomTrack(5).curve;
    const Samples phi = Samples::LinSpaced(50, 0.0, curve.period());
    const motion::LiftSamples lift = curve.sample(phi);
    const Samples angle = contactAngle(lift, 0.09), curvature = pitchCurvature(lift, 0.09);
    const Samples push = relativeRadius(lift, 0.09, 0.012, Flank::push);
    const Samples pull = relativeRadius(lift, 0.09, 0.012, Flank::pull);
    for (Eigen::Index i = 0; i < phi.size(); ++i) {
        const motion::Lift at = curve.at(phi(i));
        EXPECT_NEAR(angle(i), contactAngle(at, 0.09), 1e-15);
        EXPECT_NEAR(curvature(i), pitchCurvature(at, 0.09), 1e-12);
        EXPECT_NEAR(push(i), relativeRadius(at, 0.09, 0.012, Flank::push), 1e-16);
        EXPECT_NEAR(pull(i), relativeRadius(at, 0.09, 0.012, Flank::pull), 1e-16);
    }
}

// Signs: rise positive; the crest of a lobe is convex for the push flank.
TEST(ContactAngle, IsPositiveOnARise) {
    const LiftCurve curve = harmonicWave();
    const double rising = curve.period() / 4.0, crest = curve.period() / 2.0;
    EXPECT_GT(contactAngle(curve.at(rising), 0.095), 0.0);
    EXPECT_LT(contactAngle(curve.at(rising + crest), 0.095), 0.0);
    EXPECT_GT(pitchCurvature(curve.at(crest), 0.095), 0.0);
    EXPECT_LT(pitchCurvature(curve.at(0.0), 0.095), 0.0);
}

// r ≪ ρ: the difference from the planar rule falls with r³/ρ², one power faster than r² itself.
TEST(PlanarRelativeRadius, IsTheLimitForASmallRoller) {
    const LiftCurve curve = harmonicWave();
    const motion::LiftSamples lift = curve.sample(Samples::LinSpaced(31, 0.0, curve.period()));
    const auto error = [&](double rollerRadius) {
        return (relativeRadius(lift, 0.095, rollerRadius, Flank::push) -
                planarRelativeRadius(lift, 0.095, rollerRadius, Flank::push))
            .abs()
            .maxCoeff();
    };
    EXPECT_NEAR(error(2e-4) / error(1e-4), 8.0, 0.1);
    EXPECT_LT(error(1e-4), 1e-9);
}

// Where the surface neither rises nor bends, track and roller touch as on a plane.
TEST(RelativeRadius, OnADwellIsTheRollerRadius) {
    const motion::Lift rest{0.02, 0.0, 0.0, 0.0};
    EXPECT_EQ(relativeRadius(rest, 0.095, 0.016, Flank::push), 0.016);
    EXPECT_EQ(relativeRadius(rest, 0.095, 0.016, Flank::pull), 0.016);
}

// Both carry the same factor, so both vanish together at a cusp.
TEST(AreaFactor, VanishesWithTheRelativeRadius) {
    const motion::Lift lift{0.0, 0.03, -0.09, 0.0};
    const double limit = rollerRadiusLimit(lift, 0.09, Flank::push);
    const motion::LiftSamples one{Samples::Constant(1, lift.y), Samples::Constant(1, lift.y1),
                                  Samples::Constant(1, lift.y2), Samples::Constant(1, lift.y3)};
    EXPECT_NEAR(relativeRadius(lift, 0.09, limit, Flank::push), 0.0, 1e-15);
    EXPECT_NEAR(areaFactor(one, 0.09, limit, Flank::push)(0), 0.0, 1e-15);
    EXPECT_GT(relativeRadius(lift, 0.09, 0.999 * limit, Flank::push), 0.0);
    EXPECT_LT(relativeRadius(lift, 0.09, 1.001 * limit, Flank::push), 0.0);
}

TEST(RollerRadiusLimit, IsTheRootOfTheRelativeRadiusEverywhere) {
    for (double y1 : {0.0, 1e-9, 1e-3, 0.04, -0.09}) {
        for (double y2 : {-0.2, -1e-3, 1e-3, 0.2}) {
            for (Flank flank : {Flank::push, Flank::pull}) {
                const motion::Lift lift{0.0, y1, y2, 0.0};
                const double limit = rollerRadiusLimit(lift, 0.09, flank);
                if (std::isinf(limit)) {
                    EXPECT_TRUE(y1 == 0.0 && sign(flank) * y2 > 0.0);
                } else {
                    EXPECT_NEAR(relativeRadius(lift, 0.09, limit, flank), 0.0, 1e-12 * limit);
                }
            }
        }
    }
}
