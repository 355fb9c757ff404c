// The design on the help page about undercut: every number on the page is the program's, and the
// verdict is that of a search over the rotation.
#include "brute_force.h"
#include "core/track/undercut.h"
#include "tests/places.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

#include <fstream>
#include <sstream>
#include <string>

using namespace lobewright;
using namespace lobewright::track;
using namespace lobewright::track::test;

namespace {

constexpr double pitchRadius = 0.070, width = 0.014;
constexpr double inner = pitchRadius - 0.5 * width;

motion::KnotShape pageKnots() {
    const double d = units::degree;
    return {{{0.0, 0.0, {}},
             {27.0 * d, 0.015, {}},
             {36.0 * d, 0.023, {}},
             {46.0 * d, 0.027, {}},
             {90.0 * d, 0.017, {}}}};
}

motion::LiftCurve pageCurve() {
    return motion::LiftCurve::make({3, pageKnots()}).value();
}

std::string page() {
    std::ifstream stream(lobewright::test::sourceFolder() + "/resources/help/undercut.md");
    std::stringstream text;
    text << stream.rdbuf();
    std::string all = text.str();
    std::ranges::replace(all, '\n', ' ');
    return all;
}

template <class F>
double least(const motion::LiftCurve& curve, const F& f) {
    double smallest = 1e300;
    for (double phi = 0.0; phi < curve.period(); phi += 2e-5)
        smallest = std::min(smallest, f(curve.at(phi)));
    return smallest;
}

double planarLimit(const motion::LiftCurve& curve, double rho) {
    return least(curve, [&](const motion::Lift& lift) {
        const double curvature = pitchCurvature(lift, rho);
        return curvature > 0.0 ? 1.0 / curvature : 1e300;
    });
}

double planarRadius(const motion::LiftCurve& curve, double rho, double rollerRadius) {
    return least(curve, [&](const motion::Lift& lift) {
        return rollerRadius * (1.0 - rollerRadius * pitchCurvature(lift, rho));
    });
}

/// How deep the roller cuts into the surface that it should leave, round the shoulder.
double deepestCut(const motion::LiftCurve& curve, double rollerRadius) {
    const Stations stations{inner, pitchRadius + 0.5 * width};
    const Samples phi = Samples::LinSpaced(601, 30.0 * units::degree, 60.0 * units::degree);
    const Surface s = surface(curve, phi, Samples::LinSpaced(3, stations.inner, stations.outer),
                              rollerRadius, Flank::push, {});
    const double window = 2.0 * std::asin(rollerRadius / pitchRadius);
    double deepest = 0.0;
    for (Eigen::Index i = 0; i < s.points.cols(); ++i) {
        const double distance =
            nearest(curve, s.points.col(i), phi(i % phi.size()), window, 64, stations);
        deepest = std::max(deepest, rollerRadius - distance);
    }
    return deepest;
}

void expectOnPage(const std::string& text, const std::string& words) {
    EXPECT_NE(text.find(words), std::string::npos) << "the page does not say \"" << words << '"';
}

} // namespace

TEST(UndercutPage, GivesTheDesign) {
    const std::string text = page();
    for (const motion::Knot& knot : pageKnots().knots) {
        expectOnPage(text, fmt::format("| {:8.0f} | {:8.0f} |", knot.angle / units::degree,
                                       knot.lift / units::millimetre));
    }
    const motion::LiftCurve curve = pageCurve();
    double steepest = -least(curve, [](const motion::Lift& lift) { return -std::abs(lift.y1); });
    expectOnPage(text, fmt::format("the largest pressure angle is {:.1f}°",
                                   std::atan(steepest / pitchRadius) / units::degree));
    expectOnPage(text, fmt::format("the stroke {:.2f} mm", curve.stroke() / units::millimetre));
}

TEST(UndercutPage, LimitsOfThreeCriteria) {
    const std::string text = page();
    const motion::LiftCurve curve = pageCurve();
    const auto exact = largestRollerRadius(curve, pitchRadius, width, Flank::push);
    ASSERT_TRUE(exact);
    EXPECT_EQ(exact->place.rho, inner);
    const auto inMillimetres = [](double radius) { return radius / units::millimetre; };
    expectOnPage(text, fmt::format("at the pitch radius | {:.2f} mm",
                                   inMillimetres(planarLimit(curve, pitchRadius))));
    expectOnPage(text, fmt::format("inner edge of the roller | {:.2f} mm",
                                   inMillimetres(planarLimit(curve, inner))));
    expectOnPage(text, fmt::format("worst at the inner edge, {:.1f}° on the track | {:.2f} mm",
                                   exact->place.phi / units::degree, inMillimetres(exact->value)));
}

// A roller of 26 mm: the planar rule passes it everywhere, the exact one and the search do not.
TEST(UndercutPage, RollerThatThePlanarRulePassesCutsItsTrack) {
    const std::string text = page();
    const motion::LiftCurve curve = pageCurve();
    const double radius = 0.026;
    const double atInner = planarRadius(curve, inner, radius);
    const double atPitch = planarRadius(curve, pitchRadius, radius);
    const double exact =
        smallestRelativeRadius(curve, pitchRadius, {radius, width, {}, 0.0}, Flank::push).value;
    EXPECT_GT(atInner, 0.0);
    EXPECT_LT(exact, 0.0);
    expectOnPage(text, fmt::format("leaves {:.2f} mm of relative radius at the inner edge and",
                                   atInner / units::millimetre));
    expectOnPage(text,
                 fmt::format("and {:.2f} mm at the pitch radius", atPitch / units::millimetre));
    expectOnPage(text, fmt::format("relative radius is −{:.2f} mm", -exact / units::millimetre));
    const double cut = deepestCut(curve, radius);
    EXPECT_GT(cut, 0.0);
    expectOnPage(text, fmt::format("cuts {:.1f} µm deep", cut / units::micrometre));
    EXPECT_LT(deepestCut(curve, 0.0255), 1e-12) << "half a millimetre less runs";
}

TEST(UndercutPage, RuleAtThePitchRadiusPassesADeepCut) {
    const std::string text = page();
    const motion::LiftCurve curve = pageCurve();
    const double radius = 0.030;
    expectOnPage(text, fmt::format("with {:.2f} mm to spare",
                                   planarRadius(curve, pitchRadius, radius) / units::millimetre));
    expectOnPage(text,
                 fmt::format("is {:.2f} mm deep", deepestCut(curve, radius) / units::millimetre));
}

TEST(UndercutPage, PlanarRuleIsTooKindOnRandomDesigns) {
    const std::string text = page();
    double kindest = 1.0;
    for (unsigned seed = 0; seed < 520; ++seed) {
        const RandomTrack track = randomTrack(seed);
        const auto limit =
            largestRollerRadius(track.curve, track.pitchRadius, track.width, Flank::push);
        ASSERT_TRUE(limit);
        if (limit->value > 0.5 * track.pitchRadius)
            continue; // no such roller would fit beside the shaft
        double sharpest = 0.0;
        for (int i = 0; i < 4000; ++i) {
            const double phi = track.curve.period() * i / 4000.0;
            for (const motion::Lift& lift : {track.curve.at(phi), track.curve.before(phi)}) {
                sharpest =
                    std::max(sharpest, pitchCurvature(lift, track.pitchRadius - 0.5 * track.width));
            }
        }
        kindest = std::max(kindest, 1.0 / sharpest / limit->value);
    }
    expectOnPage(text,
                 fmt::format("permits radii too large by up to {:.1f} %", 100.0 * (kindest - 1.0)));
}
