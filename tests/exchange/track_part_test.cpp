#include "core/exchange/track_part.h"
#include "core/track/undercut.h"
#include "core/units.h"
#include "tests/exchange/parts.h"

#include <gmock/gmock.h>

namespace lobewright::exchange {
namespace {

using namespace testing;
using ::testing::HasSubstr;
using units::millimetre;

// The surface over (φ, s) is the surface over (φ, ρ), seen from where it lies.
TEST(FlankSection, LiesOnTheEnvelope) {
    for (End end : {End::inlet, End::exhaust}) {
        for (const FlankForm& form : part(designWith(skewTrack(), true), end).flanks) {
            for (double phi = 0.05; phi < 6.2; phi += 0.37) {
                for (double rho : {0.095, 0.104, 0.113}) {
                    const auto exact = track::surface(form.curve, Samples::Constant(1, phi),
                                                      Samples::Constant(1, rho), form.rollerRadius,
                                                      form.flank, form.placement);
                    const Eigen::Vector3d point = exact.points.col(0);
                    const double s = std::hypot(point.x(), point.y());
                    EXPECT_NEAR((spacePoint(form, phi, s).value - point).norm(), 0.0, 1e-15);
                    EXPECT_NEAR((normal(form, phi, s) - exact.normals.col(0)).norm(), 0.0, 1e-13);
                    EXPECT_NEAR(section(form, phi, s).rho.value, rho, 1e-15);
                    EXPECT_NEAR(contactDistance(form.curve.at(phi).y1, rho, form.rollerRadius), s,
                                1e-15);
                }
            }
        }
    }
}

// Central differences of the value and of the first derivative; the step's own error is step².
TEST(FlankSection, DerivativesAreThoseOfThePoint) {
    const FlankForm form = part(designWith(harmonicTrack(), true)).flanks[1];
    constexpr double step = 1e-5, radius = 0.100;
    for (double phi = 0.1; phi < 6.0; phi += 0.29) {
        const SpacePoint at = spacePoint(form, phi, radius);
        const SpacePoint before = spacePoint(form, phi - step, radius);
        const SpacePoint after = spacePoint(form, phi + step, radius);
        EXPECT_NEAR(((after.value - before.value) / (2.0 * step) - at.first).norm(), 0.0, 1e-9);
        EXPECT_NEAR(((after.first - before.first) / (2.0 * step) - at.second).norm(), 0.0, 1e-8);
    }
}

// With the track turning forward the pattern must pass under the roller in rising order: at the
// inlet end the lift grows along z and against the polar angle; at the exhaust end it grows
// against z, the pattern δ ahead. The same pattern therefore makes mirror images: the exhaust
// track is the inlet track mirrored in a plane across the shaft and turned by δ, and no turning
// alone brings the one onto the other.
TEST(TrackPart, SamePatternsMakeMirrorImages) {
    const design::Design design = designWith(skewTrack());
    const FlankForm inlet = part(design, End::inlet).flanks[0];
    const FlankForm exhaust = part(design, End::exhaust).flanks[0];
    const double lead = design.mechanism.exhaustLead + design.mechanism.adjuster.setting;
    ASSERT_NE(lead, 0.0);
    double leastTurnedOver = 1.0;
    const auto turned = [](const Eigen::Vector3d& p, double angle) {
        return Eigen::Vector3d(p.x() * std::cos(angle) - p.y() * std::sin(angle),
                               p.x() * std::sin(angle) + p.y() * std::cos(angle), p.z());
    };
    std::vector<Eigen::Vector3d> points;
    for (double phi = 0.0; phi < units::turn; phi += 0.21) {
        points.push_back(spacePoint(inlet, phi, 0.104).value);
    }
    for (const Eigen::Vector3d& p : points) {
        const Eigen::Vector3d mirrored(p.x(), p.y(), -p.z());
        EXPECT_NEAR(gap(exhaust, turned(mirrored, lead)), 0.0, 1e-12);
    }
    // Turned over (half a turn about an axis across the shaft) at any angle, it does not fit.
    for (double angle = 0.0; angle < units::turn; angle += 0.01) {
        double worst = 0.0;
        for (const Eigen::Vector3d& p : points) {
            worst = std::max(worst, std::abs(gap(exhaust, turned({p.x(), -p.y(), -p.z()}, angle))));
        }
        leastTurnedOver = std::min(leastTurnedOver, worst);
    }
    EXPECT_GT(leastTurnedOver, 0.1 * millimetre);
}

// A cylinder at polar angle 0 looks at polar angle −θ of a track that has turned forward by θ;
// there must stand the pattern angle that the mechanism has at θ.
TEST(TrackPart, StandsUnderTheRollerAsTheMechanismTurns) {
    design::Design design = designWith(skewTrack());
    design.mechanism.adjuster.setting = 3.0 * units::degree;
    const auto pair = machines::pair(design.mechanism, design.tracks.inlet);
    for (End end : {End::inlet, End::exhaust}) {
        const TrackPart track = part(design, end);
        for (double theta : {0.3, 1.1, 2.4}) {
            const double onTrack = track.placement().polarAngle(pair.trackAngle(end, theta));
            EXPECT_NEAR(std::remainder(onTrack + theta, units::turn), 0.0, 1e-14);
        }
    }
}

TEST(TrackPart, UndercutIsRefusedWithPlaceAndLargestRoller) {
    design::Design design = designWith(machines::wave(4, 0.040));
    design.mechanism.roller.radius = 0.045;
    const auto made = trackPart(design, End::exhaust);
    ASSERT_FALSE(made);
    ASSERT_EQ(made.problems().size(), 1U) << listed(made.problems());
    const Problem& problem = made.problems().front();
    EXPECT_EQ(problem.path, "/mechanism/roller/radius_mm");
    EXPECT_THAT(problem.message.english(), HasSubstr("45 mm"));
    EXPECT_THAT(problem.message.english(), HasSubstr("push flank of the exhaust track"));
    // The limit it names is the real one: a hair less passes, a hair more does not.
    const auto at = problem.message.english().find("up to a radius of ");
    ASSERT_NE(at, std::string::npos);
    const double limit = std::stod(problem.message.english().substr(at + 18)) * millimetre;
    EXPECT_LT(limit, 0.045);
    // Without the overhang of the face, so that only the roller decides.
    design.trackBlank.boreDiameter =
        2.0 * design.mechanism.roller.innerEdge(design.mechanism.pitchRadius);
    design.mechanism.roller.radius = limit * 0.999;
    EXPECT_TRUE(trackPart(design, End::exhaust)) << limit;
    design.mechanism.roller.radius = limit * 1.001;
    EXPECT_FALSE(trackPart(design, End::exhaust)) << limit;
}

// Only the pull flank of a closed track undercuts where the lift is hollow.
TEST(TrackPart, PullFlankUndercutsAtOuterDeadCentre) {
    design::Design design =
        designWith(machines::lobe(3, 0.034, 40.0, 39.0, 40.0, 1.0, motion::Law::harmonic));
    design.mechanism.roller.radius = 0.030;
    design.mechanism.closedTrack = true;
    const auto made = trackPart(design, End::inlet);
    ASSERT_FALSE(made);
    EXPECT_EQ(made.problems().front().path, "/mechanism/roller/radius_mm");
    EXPECT_THAT(made.problems().back().message.english(),
                HasSubstr("pull flank of the inlet track"));
}

// Barely enough radius at the inner edge of the roller; the face further inside would fold.
TEST(TrackPart, UndercutBesideTheRollerIsRefusedToo) {
    design::Design design = designWith(machines::wave(4, 0.040));
    const auto limit = track::largestRollerRadius(
        machines::curve(design.tracks.inlet), design.mechanism.pitchRadius,
        design.mechanism.roller.width, track::Flank::push);
    ASSERT_TRUE(limit);
    design.mechanism.roller.radius = 0.999 * limit->value;
    design.trackBlank.boreDiameter = 0.140;
    const auto made = trackPart(design, End::inlet);
    ASSERT_FALSE(made);
    EXPECT_EQ(made.problems().front().path, "/track_blank/bore_diameter_mm");
    EXPECT_THAT(made.problems().front().message.english(), HasSubstr("beside the roller"));
}

TEST(TrackPart, BlankFollowsFromTheRollerAndCoversTheContact) {
    const design::Design design = design::testing::sample();
    const TrackPart open = part(design);
    const track::Roller& roller = design.mechanism.roller;
    const double pitch = design.mechanism.pitchRadius;
    EXPECT_NEAR(open.boreRadius, pitch - 0.6 * roller.width, 1e-12);
    EXPECT_EQ(open.faceInner, open.boreRadius);
    EXPECT_NEAR(open.backHeight, -roller.radius - roller.width, 1e-12);
    double outermost = 0.0;
    for (double phi = 0.0; phi < units::turn; phi += 0.001) {
        outermost = std::max(outermost, contactDistance(open.curve().at(phi).y1,
                                                        roller.outerEdge(pitch), roller.radius));
    }
    EXPECT_NEAR(open.faceOuter, outermost + 0.1 * roller.width, 1e-5);
    EXPECT_GT(open.faceOuter, outermost);

    const TrackPart closed = part(designWith(skewTrack(), true));
    EXPECT_NEAR(closed.faceInner, pitch - 0.6 * roller.width, 1e-12);
    EXPECT_NEAR(closed.boreRadius, closed.faceInner - 0.5 * roller.width, 1e-12);
    EXPECT_NEAR(closed.frontHeight, 0.034 + roller.radius + roller.width, 1e-12);
}

// The steepest place may lie anywhere between two samples: the blank is never too small by a
// sample.
TEST(TrackPart, BlankCoversTheContactOfEveryKindOfTrack) {
    for (const motion::Pattern& pattern :
         {skewTrack(), parabolicTrack(), knotTrack(), harmonicTrack()}) {
        const design::Design design = designWith(pattern);
        const track::Roller& roller = design.mechanism.roller;
        const TrackPart made = part(design);
        double steepest = 0.0;
        for (double phi = 0.0; phi < units::turn; phi += 1e-4) {
            steepest = std::max(steepest, std::abs(made.curve().at(phi).y1));
        }
        const double contact = contactDistance(
            steepest, roller.outerEdge(design.mechanism.pitchRadius), roller.radius);
        EXPECT_GE(made.faceOuter, contact + 0.1 * roller.width);
        EXPECT_LE(made.faceOuter, contact + 0.1 * roller.width + 2e-5);
    }
}

TEST(TrackPart, BlankThatDoesNotHoldTheTrackIsRefused) {
    struct Wrong {
        const char* key;
        std::optional<double> track::Blank::*member;
        double value;
        bool isClosed;
    };
    for (const Wrong& wrong :
         {Wrong{"bore_diameter_mm", &track::Blank::boreDiameter, 0.195, false},
          Wrong{"bore_diameter_mm", &track::Blank::boreDiameter, 0.004, false},
          Wrong{"outside_diameter_mm", &track::Blank::outsideDiameter, 0.2281, false},
          Wrong{"groove_diameter_mm", &track::Blank::grooveDiameter, 0.19, true},
          Wrong{"bore_diameter_mm", &track::Blank::boreDiameter, 0.187, true},
          Wrong{"bore_diameter_mm", &track::Blank::boreDiameter, -0.1, true},
          Wrong{"back_thickness_mm", &track::Blank::backThickness, 0.0, true},
          Wrong{"front_thickness_mm", &track::Blank::frontThickness, 0.0, true}}) {
        design::Design design = designWith(skewTrack(), wrong.isClosed);
        design.trackBlank.*wrong.member = wrong.value;
        const auto made = trackPart(design, End::inlet);
        ASSERT_FALSE(made) << wrong.key << " " << wrong.value;
        EXPECT_EQ(made.problems().front().path, std::string("/track_blank/") + wrong.key)
            << wrong.value << listed(made.problems());
    }
}

TEST(Sectors, MeetWhereTheAccelerationJumpsAndSeamsStandAtDeadCentres) {
    for (const motion::Pattern& pattern :
         {skewTrack(), parabolicTrack(), knotTrack(), harmonicTrack()}) {
        const motion::LiftCurve curve = machines::curve(pattern);
        const Sectors divided = sectors(curve);
        EXPECT_NEAR(divided.bounds.back() - divided.bounds.front(), units::turn, 1e-14);
        ASSERT_GT(divided.seam, 0U);
        ASSERT_LT(divided.seam, divided.bounds.size() - 1);
        EXPECT_NEAR(curve.at(divided.bounds.front()).y1, 0.0, 1e-12);
        EXPECT_NEAR(curve.at(divided.bounds[divided.seam]).y1, 0.0, 1e-9);
        for (const motion::Junction& junction : curve.junctions()) {
            if (std::abs(junction.after.y2 - junction.before.y2) < 1e-6) {
                continue;
            }
            for (int lobe = 0; lobe < curve.lobes(); ++lobe) {
                const double angle = junction.angle + lobe * curve.period();
                const bool isBound = std::ranges::any_of(divided.bounds, [&](double bound) {
                    return std::abs(std::remainder(bound - angle, units::turn)) < 1e-9;
                });
                EXPECT_TRUE(isBound) << angle;
            }
        }
    }
}

} // namespace
} // namespace lobewright::exchange
