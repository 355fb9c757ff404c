#include "brute_force.h"
#include "core/track/surface.h"

#include <gtest/gtest.h>

using namespace lobewright;
using namespace lobewright::track;
using namespace lobewright::track::test;

namespace {

constexpr double rollerRadius = 0.016;

Samples stations() {
    return Samples::LinSpaced(3, 0.088, 0.102);
}

Samples angles(const LiftCurve& curve, Eigen::Index count = 60) {
    return Samples::LinSpaced(count + 1, 0.0, curve.period()).head(count);
}

} // namespace

// Every point is at r from the axis of the roller that makes it, at no less from all others.
TEST(Surface, IsTouchedByTheRollerAndNeverCut) {
    const LiftCurve curve = harmonicWave();
    const Samples phi = angles(curve), rho = stations();
    for (Flank flank : {Flank::push, Flank::pull}) {
        const Surface s = surface(curve, phi, rho, rollerRadius, flank, {});
        for (Eigen::Index i = 0; i < s.points.cols(); ++i) {
            const double at = phi(i % phi.size());
            EXPECT_NEAR(axisDistance(curve, s.points.col(i), at), rollerRadius, 1e-16);
            EXPECT_NEAR(nearest(curve, s.points.col(i), at, 0.4), rollerRadius, 1e-15);
        }
    }
}

// Push below (outward), pull above; on a rise the push contact lies behind the axis, at a smaller
// polar angle.
TEST(Surface, LiesWhereTheFlankSays) {
    const LiftCurve curve = harmonicWave();
    const double rising = curve.period() / 4.0;
    const Samples phi = Samples::Constant(1, rising), rho = Samples::Constant(1, 0.095);
    const Surface push = surface(curve, phi, rho, rollerRadius, Flank::push, {});
    const Surface pull = surface(curve, phi, rho, rollerRadius, Flank::pull, {});
    const double y = curve.at(rising).y;
    EXPECT_LT(push.points(2, 0), y);
    EXPECT_GT(pull.points(2, 0), y);
    EXPECT_LT(push.points.col(0).dot(tangential(-rising)), 0.0);
    EXPECT_GT(pull.points.col(0).dot(tangential(-rising)), 0.0);
    EXPECT_GT(push.normals(2, 0), 0.0);
    EXPECT_LT(pull.normals(2, 0), 0.0);
}

// Unit normals, square to the surface by central differences over angle and width.
TEST(SurfaceNormals, AreSquareToTheSurface) {
    const LiftCurve curve = harmonicWave();
    const double step = 1e-5;
    for (Flank flank : {Flank::push, Flank::pull}) {
        for (End end : bothEnds) {
            const Placement placement{end, 0.1, 0.03};
            for (double phi : {0.0, 0.3, 1.0, 2.2}) {
                Samples around(3), rho(3);
                around << phi - step, phi, phi + step;
                rho << 0.095 - step, 0.095, 0.095 + step;
                const Surface s = surface(curve, around, rho, rollerRadius, flank, placement);
                const Vector3d normal = s.normals.col(4);
                const Vector3d overAngle = s.points.col(5) - s.points.col(3);
                const Vector3d overWidth = s.points.col(7) - s.points.col(1);
                EXPECT_NEAR(normal.norm(), 1.0, 1e-15);
                EXPECT_NEAR(normal.dot(overAngle.normalized()), 0.0, 1e-9);
                EXPECT_NEAR(normal.dot(overWidth.normalized()), 0.0, 1e-9);
            }
        }
    }
}

// Turned forward by θ, each track presents pattern angle φ = θ (inlet) or θ + δ + Δ (exhaust) to a
// cylinder at ring angle 0: its surface then touches a roller that stands there at that lift.
TEST(Placement, GivesTheLiftOfTheShaftAngle) {
    const LiftCurve curve = randomTrack(4).curve;
    const Samples phi = angles(curve, 2000), rho = Samples::Constant(1, 0.095);
    const double lead = 0.2, small = 0.008;
    for (End end : bothEnds) {
        const Placement placement{end, end == End::exhaust ? lead : 0.0,
                                  end == End::exhaust ? 0.3 : -0.1};
        const double outward = end == End::inlet ? 1.0 : -1.0;
        const Surface s = surface(curve, phi, rho, small, Flank::push, placement);
        for (double theta : {0.0, 0.4, 1.1}) {
            const Eigen::Matrix3d turned =
                Eigen::AngleAxisd(theta, Vector3d::UnitZ()).toRotationMatrix();
            const double y = curve.at(theta + placement.turned).y;
            const double height = placement.origin + outward * y;
            double closest = 1.0;
            for (Eigen::Index i = 0; i < s.points.cols(); ++i) {
                const Vector3d point = turned * s.points.col(i);
                if (point.x() > 0.0)
                    closest = std::min(closest, std::hypot(point.y(), point.z() - height));
            }
            EXPECT_NEAR(closest, small, 1e-5) << name(end) << " at " << theta;
            EXPECT_GE(closest, small - 1e-12) << name(end) << " at " << theta;
        }
    }
}

TEST(Placement, MakesEqualPatternsMirrorImages) {
    const LiftCurve curve = randomTrack(4).curve;
    const Samples phi = angles(curve), rho = stations();
    const Surface inlet = surface(curve, phi, rho, rollerRadius, Flank::push, {});
    const Surface exhaust =
        surface(curve, phi, rho, rollerRadius, Flank::push, {End::exhaust, 0.0, 0.0});
    EXPECT_EQ(inlet.points.topRows(2), exhaust.points.topRows(2));
    EXPECT_EQ(inlet.points.row(2), -exhaust.points.row(2));
}

// Angle fastest, as the header draws it.
TEST(Surface, OrdersItsPointsByAngleFirst) {
    const LiftCurve curve = harmonicWave();
    const Samples phi = angles(curve, 5), rho = stations();
    const Surface s = surface(curve, phi, rho, rollerRadius, Flank::push, {});
    ASSERT_EQ(s.points.cols(), 15);
    for (Eigen::Index station = 0; station < 3; ++station) {
        for (Eigen::Index i = 0; i < 5; ++i)
            EXPECT_NEAR(s.points.col(5 * station + i).dot(radial(-phi(i))), rho(station), 1e-15);
    }
}
