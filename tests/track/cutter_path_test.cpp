#include "brute_force.h"
#include "core/track/cutter_path.h"
#include "core/track/undercut.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <limits>

using namespace lobewright;
using namespace lobewright::track;
using namespace lobewright::track::test;

namespace {

constexpr double pitchRadius = 0.095;
const Roller roller{0.016, 0.014, {}, 0.0005};

double micrometres(double metres) {
    return metres / units::micrometre;
}

Samples period(const LiftCurve& curve, Eigen::Index count) {
    return Samples::LinSpaced(count + 1, 0.0, curve.period()).head(count);
}

} // namespace

// Own brute-force search in another language: roller 16, pitch radius 95, width 14, lift 36 mm
// harmonic, two lobes: 61 µm with a 10 mm cutter, 41 µm with a 20 mm cutter.
TEST(CutterPath, OfAnotherRadiusLeavesErrorsAtTheEdges) {
    const LiftCurve curve = harmonicWave();
    for (Flank flank : {Flank::push, Flank::pull}) {
        const CutterDeviations thin = *cutterDeviations(curve, pitchRadius, roller, 0.010, flank);
        const CutterDeviations thick = *cutterDeviations(curve, pitchRadius, roller, 0.020, flank);
        EXPECT_NEAR(micrometres(std::max(thin.inner.magnitude(), thin.outer.magnitude())), 61.0,
                    0.5);
        EXPECT_NEAR(micrometres(std::max(thick.inner.magnitude(), thick.outer.magnitude())), 41.0,
                    0.5);
        EXPECT_GT(thin.inner.most, 0.0) << "a thinner cutter leaves material at the inner edge";
        EXPECT_LT(thin.outer.least, 0.0) << "and gouges the outer edge";
        EXPECT_LT(thick.inner.least, 0.0) << "a thicker cutter gouges the inner edge";
        EXPECT_GT(thick.outer.most, 0.0) << "and leaves material at the outer edge";
    }
}

// Brute force: the cutter at all places of its path near a point of the flank, from the exported
// coordinates and no derivative.
TEST(CutterPath, DeviatesAsASearchOverItsWholePathSays) {
    const LiftCurve curve = harmonicWave();
    const double near = 0.060;
    const Placement placement{End::inlet, 0.0, 0.0};
    for (const double cutter : {0.003, 0.010, 0.035}) {
        for (const Flank flank : {Flank::push, Flank::pull}) {
            for (const double at : {0.3, 0.7, 1.2}) {
                const Samples phi = Samples::Constant(1, at);
                const Samples path = Samples::LinSpaced(120001, at - 0.6, at + 0.6);
                const CutterPath moved =
                    *cutterPath(curve, path, near, roller.radius, cutter, flank, placement);
                for (const double rho : {0.053, 0.067}) {
                    const Vector3d point = surface(curve, phi, Samples::Constant(1, rho),
                                                   roller.radius, flank, placement)
                                               .points.col(0);
                    double least = 1.0;
                    for (Eigen::Index i = 0; i < path.size(); ++i) {
                        least =
                            std::min(least, std::hypot(point.dot(tangential(moved.polarAngle(i))),
                                                       point.z() - moved.axial(i)));
                    }
                    const double found =
                        (*cutterDeviation(curve, phi, rho, near, roller.radius, cutter, flank))(0);
                    EXPECT_NEAR(found, least - cutter, 2e-11 / cutter)
                        << cutter << " " << at << " " << rho;
                }
            }
        }
    }
}

TEST(CutterPath, OfTheRollerRadiusIsExactOverTheWidth) {
    const LiftCurve curve = harmonicWave();
    const CutterDeviations same =
        *cutterDeviations(curve, pitchRadius, roller, roller.radius, Flank::push);
    for (const CutterDeviation* each : {&same.inner, &same.middle, &same.outer})
        EXPECT_LT(each->magnitude(), 1e-15);
}

// At R the moved axis is radial again and so no longer square to the normal: its distance from the
// contact falls short of c by c·(1 − √(1 − (sin α·sin γ)²)), 0.31 µm for the 10 mm cutter.
TEST(CutterPath, IsNearlyExactAtThePitchRadius) {
    const LiftCurve curve = harmonicWave();
    const double cutter = 0.010;
    const Samples phi = period(curve, 180);
    const Samples deviation =
        *cutterDeviation(curve, phi, pitchRadius, pitchRadius, roller.radius, cutter, Flank::push);
    EXPECT_NEAR(micrometres(deviation.minCoeff()), -0.315, 0.001);
    EXPECT_LT(deviation.maxCoeff(), 1e-15);
    for (Eigen::Index i = 0; i < phi.size(); ++i) {
        const double alpha = contactAngle(curve.at(phi(i)), pitchRadius);
        const double gamma = std::atan((cutter - roller.radius) * std::sin(alpha) / pitchRadius);
        const double product = std::sin(alpha) * std::sin(gamma);
        EXPECT_NEAR(deviation(i), -cutter * (1.0 - std::sqrt(1.0 - product * product)), 2e-8);
    }
}

// The path is the envelope's parallel curve: each cutter position touches the contact at R of its
// own angle, in the coordinates of either end.
TEST(CutterPath, KeepsTheCutterAtTheContact) {
    const LiftCurve curve = randomTrack(4).curve;
    const Samples phi = period(curve, 40), rho = Samples::Constant(1, pitchRadius);
    const double cutter = 0.013;
    for (End end : bothEnds) {
        const Placement placement{end, end == End::exhaust ? 0.3 : 0.0, 0.02};
        for (Flank flank : {Flank::push, Flank::pull}) {
            const CutterPath path =
                *cutterPath(curve, phi, pitchRadius, roller.radius, cutter, flank, placement);
            const Surface s = surface(curve, phi, rho, roller.radius, flank, placement);
            for (Eigen::Index i = 0; i < phi.size(); ++i) {
                const Vector3d point = s.points.col(i);
                const double distance = std::hypot(point.dot(tangential(path.polarAngle(i))),
                                                   point.z() - path.axial(i));
                EXPECT_NEAR(distance, cutter, 2e-6);
                EXPECT_NEAR(path.axial(i), placement.axial(path.lift(i)), 1e-16);
            }
        }
    }
}

TEST(CutterPath, OfTheRollerRadiusIsThePitchCurve) {
    const LiftCurve curve = harmonicWave();
    const Samples phi = period(curve, 30);
    const CutterPath path = *cutterPath(curve, phi, pitchRadius, roller.radius, roller.radius,
                                        Flank::push, {End::exhaust, 0.1, 0.0});
    EXPECT_LT((path.polarAngle - (0.1 - phi)).abs().maxCoeff(), 1e-15);
    EXPECT_LT((path.lift - curve.sample(phi).y).abs().maxCoeff(), 1e-17);
    EXPECT_LT((path.axial + path.lift).abs().maxCoeff(), 1e-17);
}

// Hollow of a harmonic wave: 1/κ = 2ρ²/(h·N²) at outer dead centre, smallest at the inner edge.
// A cutter just larger than that gouges there, a smaller one does not.
TEST(LargestCutterRadius, IsWhereTheHollowBeginsToBeGouged) {
    const LiftCurve curve = LiftCurve::make({4, motion::HarmonicShape{{{1, -0.016, 0.0}}}}).value();
    const Roller narrow{0.008, 1e-6, {}, 0.0};
    const auto limit = largestCutterRadius(curve, pitchRadius, narrow, Flank::push);
    const double inner = narrow.innerEdge(pitchRadius);
    ASSERT_TRUE(limit);
    EXPECT_NEAR(limit->value, narrow.radius + 2.0 * inner * inner / (0.032 * 16.0), 1e-12);
    const auto gouge = [&](double cutter) {
        const Samples hollow = Samples::LinSpaced(41, -0.02, 0.02);
        return cutterDeviation(curve, hollow, pitchRadius, pitchRadius, narrow.radius, cutter,
                               Flank::push)
            ->minCoeff();
    };
    EXPECT_GT(gouge(0.9 * limit->value), -0.3e-6) << "only the small error at R";
    EXPECT_LT(gouge(1.1 * limit->value), -3e-6);
}

TEST(LargestCutterRadius, StandsAtTheHollowOfEachFlank) {
    // A pull flank sees the lobes the other way round: its hollow is at inner dead centre.
    const LiftCurve curve = harmonicWave();
    EXPECT_NEAR(largestCutterRadius(curve, pitchRadius, roller, Flank::pull)->place.phi,
                curve.period() / 2.0, 1e-6);
}

TEST(CutterPath, RefusesARadiusThatIsNotPositive) {
    const LiftCurve curve = harmonicWave();
    for (double cutter : {0.0, -0.01, std::numeric_limits<double>::quiet_NaN()}) {
        const auto path = cutterPath(curve, period(curve, 3), pitchRadius, roller.radius, cutter,
                                     Flank::push, {});
        ASSERT_FALSE(path);
        EXPECT_EQ(path.problems()[0].path, "/cutter_radius_mm");
        EXPECT_THAT(path.problems()[0].message.english(), testing::HasSubstr("must be positive"));
        EXPECT_FALSE(cutterDeviations(curve, pitchRadius, roller, cutter, Flank::push));
    }
}
