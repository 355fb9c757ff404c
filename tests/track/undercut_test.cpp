#include "brute_force.h"
#include "core/track/undercut.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

using namespace lobewright;
using namespace lobewright::track;
using namespace lobewright::track::test;

namespace {

constexpr unsigned designs = 520;

/// Deepest cut that the moving roller makes into the surface that it should leave, as a share of
/// its radius, at points of some angles and stations.
double deepestCut(const RandomTrack& track, double rollerRadius, Flank flank, const Samples& phi,
                  const Samples& rho, Stations roller) {
    const Surface s = surface(track.curve, phi, rho, rollerRadius, flank, {});
    const double window = 2.0 * std::asin(std::min(1.0, rollerRadius / track.pitchRadius));
    double deepest = 0.0;
    for (Eigen::Index i = 0; i < s.points.cols(); ++i) {
        const double distance =
            nearest(track.curve, s.points.col(i), phi(i % phi.size()), window, 32, roller);
        deepest = std::max(deepest, 1.0 - distance / rollerRadius);
    }
    return deepest;
}

/// The same over one period and the width, with the roller ending at its edges.
double deepestCut(const RandomTrack& track, double rollerRadius, Flank flank) {
    const Stations roller{track.pitchRadius - 0.5 * track.width,
                          track.pitchRadius + 0.5 * track.width};
    return deepestCut(track, rollerRadius, flank, Samples::LinSpaced(90, 0.0, track.curve.period()),
                      Samples::LinSpaced(3, roller.inner, roller.outer), roller);
}

/// The same at one place, with an endless roller.
double deepestCut(const RandomTrack& track, double rollerRadius, Flank flank, const Place& place) {
    return deepestCut(track, rollerRadius, flank, Samples::Constant(1, place.phi),
                      Samples::Constant(1, place.rho), {});
}

/// Largest radius that the planar rule allows, 1/κ of the pitch curve over the whole width.
double planarLimit(const RandomTrack& track, Flank flank) {
    double sharpest = 0.0;
    const std::vector<double>& bounds = track.curve.divisions();
    for (std::size_t i = 0; i + 1 < bounds.size(); ++i) {
        for (int j = 0; j <= 200; ++j) {
            const double phi = bounds[i] + (bounds[i + 1] - bounds[i]) * j / 200.0;
            for (const motion::Lift& lift : {track.curve.at(phi), track.curve.before(phi)}) {
                for (double side : {-0.5, 0.0, 0.5}) {
                    sharpest = std::max(
                        sharpest,
                        sign(flank) * pitchCurvature(lift, track.pitchRadius + side * track.width));
                }
            }
        }
    }
    return 1.0 / sharpest;
}

} // namespace

// A roller 0.05 % below the limit cuts nothing of its own surface, one 0.05 % above it does, by
// search over the rotation; both flanks, designs drawn from fixed seeds. The smaller roller ends
// at its edges, the larger is taken as endless, since an edge is cut from beyond it. Limits beyond
// half the pitch radius are left out: no such roller would fit beside the shaft.
TEST(LargestRollerRadius, IsWhereTheMovingRollerBeginsToCut) {
    int compared = 0, planarWrong = 0;
    for (unsigned seed = 0; seed < designs; ++seed) {
        const RandomTrack track = randomTrack(seed);
        const Flank flank = seed % 3 == 0 ? Flank::pull : Flank::push;
        const auto limit = largestRollerRadius(track.curve, track.pitchRadius, track.width, flank);
        ASSERT_TRUE(limit);
        if (limit->value > 0.5 * track.pitchRadius)
            continue;
        EXPECT_LT(deepestCut(track, 0.9995 * limit->value, flank), 1e-12) << "seed " << seed;
        EXPECT_GT(deepestCut(track, 1.0005 * limit->value, flank, limit->place), 1e-12)
            << "seed " << seed << " at " << limit->place.phi << ", " << limit->place.rho;
        ++compared;
        planarWrong += planarLimit(track, flank) > 1.0005 * limit->value;
    }
    EXPECT_GE(compared, 200);
    EXPECT_GE(planarWrong, 20) << "designs that the planar rule passes and the roller cuts";
    RecordProperty("compared", compared);
    RecordProperty("planar_wrong", planarWrong);
}

// The smallest relative radius changes sign exactly at the limit.
TEST(SmallestRelativeRadius, ChangesSignAtTheLimit) {
    for (unsigned seed = 0; seed < 60; ++seed) {
        const RandomTrack track = randomTrack(seed);
        for (Flank flank : {Flank::push, Flank::pull}) {
            const auto limit =
                largestRollerRadius(track.curve, track.pitchRadius, track.width, flank);
            ASSERT_TRUE(limit);
            const auto smallest = [&](double share) {
                const Roller roller{share * limit->value, track.width, {}, 0.0};
                return smallestRelativeRadius(track.curve, track.pitchRadius, roller, flank).value;
            };
            EXPECT_GT(smallest(1.0 - 1e-8), 0.0) << "seed " << seed;
            EXPECT_LT(smallest(1.0 + 1e-8), 0.0) << "seed " << seed;
        }
    }
}

// Never above any value of a fine scan, both limits at junctions included.
TEST(SmallestRelativeRadius, IsTheSmallestOfAFineScan) {
    for (unsigned seed = 0; seed < 40; ++seed) {
        const RandomTrack track = randomTrack(seed);
        const Roller roller{0.15 * track.pitchRadius, track.width, {}, 0.0};
        const Smallest found =
            smallestRelativeRadius(track.curve, track.pitchRadius, roller, Flank::push);
        double scanned = 1.0;
        const int n = 3000;
        for (int i = 0; i < n; ++i) {
            const double phi = track.curve.period() * i / n;
            for (int j = 0; j <= 8; ++j) {
                const double rho = roller.innerEdge(track.pitchRadius) + roller.width * j / 8.0;
                for (const motion::Lift& lift : {track.curve.at(phi), track.curve.before(phi)}) {
                    scanned =
                        std::min(scanned, relativeRadius(lift, rho, roller.radius, Flank::push));
                }
            }
        }
        EXPECT_LE(found.value, scanned + 1e-15) << "seed " << seed;
        EXPECT_GE(found.value, scanned - 2e-3 * roller.radius) << "seed " << seed;
        EXPECT_NEAR(std::min(relativeRadius(track.curve.at(found.place.phi), found.place.rho,
                                            roller.radius, Flank::push),
                             relativeRadius(track.curve.before(found.place.phi), found.place.rho,
                                            roller.radius, Flank::push)),
                    found.value, 1e-12);
    }
}

// Harmonic wave: the crest at the inner edge limits the push flank, 2ρ²/(h·N²); the pull flank
// mirrors it at outer dead centre.
TEST(LargestRollerRadius, OfAHarmonicWaveIsTheCrestRadiusAtTheInnerEdge) {
    const LiftCurve curve = harmonicWave();
    const double inner = 0.088, expected = 2.0 * inner * inner / (0.036 * 4.0);
    const auto push = largestRollerRadius(curve, 0.095, 0.014, Flank::push);
    const auto pull = largestRollerRadius(curve, 0.095, 0.014, Flank::pull);
    EXPECT_NEAR(push->value, expected, 1e-15);
    EXPECT_NEAR(push->place.phi, curve.period() / 2.0, 1e-7);
    EXPECT_NEAR(push->place.rho, inner, 1e-15);
    EXPECT_NEAR(pull->value, expected, 1e-15);
    EXPECT_NEAR(std::remainder(pull->place.phi, curve.period()), 0.0, 1e-7);
}
