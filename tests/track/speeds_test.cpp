#include "brute_force.h"
#include "core/track/speeds.h"

#include <gtest/gtest.h>

using namespace lobewright;
using namespace lobewright::track;
using namespace lobewright::track::test;

namespace {

constexpr double omega = 190.0, pitchRadius = 0.095, rollerRadius = 0.016;

/// Roller at ring angle 0 over a track that turns: x radial, y tangential, z axial; all vectors in
/// the frame of the engine.
struct Scene {
    motion::Lift lift;
    Vector3d contact, normal, rolling; ///< rolling: in the tangent plane, square to the roller axis
    Vector3d track, roller;            ///< velocity of both surfaces at the contact
};

Vector3d contactAt(const motion::Lift& lift, double rho, Flank flank) {
    const Vector3d normal = sign(flank) * Vector3d(0.0, lift.y1, rho).normalized();
    return Vector3d(rho, 0.0, lift.y) - rollerRadius * normal;
}

Scene sceneAt(const LiftCurve& curve, double phi, double rho, Flank flank) {
    Scene s;
    s.lift = curve.at(phi);
    const Vector3d axis(rho, 0.0, s.lift.y);
    s.contact = contactAt(s.lift, rho, flank);
    s.normal = (axis - s.contact) / rollerRadius;
    s.rolling = s.normal.cross(Vector3d::UnitX());
    s.track = Vector3d(0.0, 0.0, omega).cross(s.contact);
    // Spin about the radial axis that gives no slip across it at R.
    const Vector3d carried(0.0, 0.0, omega * s.lift.y1);
    const Vector3d contactR = contactAt(s.lift, pitchRadius, flank);
    const Vector3d normalR = (Vector3d(pitchRadius, 0.0, s.lift.y) - contactR) / rollerRadius;
    const Vector3d rollingR = normalR.cross(Vector3d::UnitX());
    const Vector3d trackR = Vector3d(0.0, 0.0, omega).cross(contactR);
    const double spin = (trackR - carried).dot(rollingR) / rollerRadius;
    s.roller = carried + spin * rollerRadius * s.rolling;
    return s;
}

motion::LiftSamples single(const motion::Lift& lift) {
    return {Samples::Constant(1, lift.y), Samples::Constant(1, lift.y1),
            Samples::Constant(1, lift.y2), Samples::Constant(1, lift.y3)};
}

template <class F>
void everywhere(const F& check) {
    const LiftCurve curve = harmonicWave();
    for (Flank flank : {Flank::push, Flank::pull}) {
        for (double rho : {0.088, 0.095, 0.102}) {
            for (int i = 0; i < 24; ++i)
                check(curve, curve.period() * (i + 0.2) / 24.0, rho, flank);
        }
    }
}

} // namespace

// Rigid-body velocities of both surfaces at the contact, in vectors.
TEST(Slip, IsTheDifferenceOfSurfaceVelocities) {
    everywhere([](const LiftCurve& curve, double phi, double rho, Flank flank) {
        const Scene s = sceneAt(curve, phi, rho, flank);
        const Slip ours = slip(single(s.lift), rho, pitchRadius, rollerRadius, omega, flank);
        const Vector3d difference = s.track - s.roller;
        const double forward = sign(flank) * difference.dot(s.rolling);
        EXPECT_NEAR(difference.dot(s.normal), 0.0, 1e-13) << "surfaces must not separate";
        EXPECT_NEAR(ours.rolling(0), forward, 1e-12);
        EXPECT_NEAR(ours.axial(0), difference.x(), 1e-12);
        EXPECT_NEAR(ours.magnitude()(0), difference.norm(), 1e-12);
        if (rho == pitchRadius) {
            EXPECT_EQ(ours.rolling(0), 0.0);
        }
    });
}

TEST(SurfaceSpeed, IsTheTrackPastTheRollerAxis) {
    everywhere([](const LiftCurve& curve, double phi, double rho, Flank flank) {
        const Scene s = sceneAt(curve, phi, rho, flank);
        const Vector3d carried(0.0, 0.0, omega * s.lift.y1);
        EXPECT_NEAR(surfaceSpeed(single(s.lift), rho, omega)(0),
                    std::abs((s.track - carried).dot(s.rolling)), 1e-12);
    });
}

// Mean of both surface velocities relative to the contact, whose own velocity is a central
// difference of its position at constant ρ.
TEST(EntrainmentSpeed, IsTheMeanRelativeToTheMovingContact) {
    everywhere([](const LiftCurve& curve, double phi, double rho, Flank flank) {
        const Scene s = sceneAt(curve, phi, rho, flank);
        const double step = 1e-6;
        const Vector3d contact = omega *
                                 (contactAt(curve.at(phi + step), rho, flank) -
                                  contactAt(curve.at(phi - step), rho, flank)) /
                                 (2.0 * step);
        const double mean = sign(flank) * (0.5 * (s.track + s.roller) - contact).dot(s.rolling);
        EXPECT_NEAR(
            entrainmentSpeed(single(s.lift), rho, pitchRadius, rollerRadius, omega, flank)(0), mean,
            1e-8);
    });
}

// At R the track rolls by its own surface length per turn of the contact: v_t·(1 ∓ r·κ).
TEST(EntrainmentSpeed, AtThePitchRadiusIsReducedByTheCurvature) {
    const LiftCurve curve = harmonicWave();
    const motion::LiftSamples lift = curve.sample(Samples::LinSpaced(40, 0.0, curve.period()));
    for (Flank flank : {Flank::push, Flank::pull}) {
        const Samples ours =
            entrainmentSpeed(lift, pitchRadius, pitchRadius, rollerRadius, omega, flank);
        const Samples expected =
            surfaceSpeed(lift, pitchRadius, omega) *
            (1.0 - sign(flank) * rollerRadius * pitchCurvature(lift, pitchRadius));
        EXPECT_LT((ours - expected).abs().maxCoeff(), 1e-13);
    }
}
