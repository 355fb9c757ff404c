#include "core/contact/crown_table.h"
#include "core/contact/elliptic_contact.h"
#include "core/contact/stations.h"
#include "core/units.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lobewright::contact {
namespace {

TEST(ChebyshevCurve, RepeatsAPolynomialAndItsNodes) {
    const auto f = [](double x) { return 1.0 + x * (2.0 - x * (0.5 + x * x)); };
    const Samples nodes = ChebyshevCurve::points(-1.0, 3.0, 6);
    const ChebyshevCurve curve(-1.0, 3.0, nodes.unaryExpr(f));
    const Samples x = Samples::LinSpaced(101, -1.0, 3.0);
    EXPECT_NEAR((curve(x) - x.unaryExpr(f)).abs().maxCoeff(), 0.0, 1e-12);
    EXPECT_NEAR((curve(nodes) - nodes.unaryExpr(f)).abs().maxCoeff(), 0.0, 1e-11);
}

TEST(CrownTable, AgreesWithTheExactSolution) {
    for (const auto& [low, high] : {std::pair{1.0, 1.0}, {1.0, 30.0}, {12.0, 60.0}, {5.0, 5.1}}) {
        const CrownTable table(low, high, 0.3);
        const Samples ratio = Samples::LinSpaced(57, low, high);
        const CrownTable::Ellipses found = table.at(ratio);
        for (Eigen::Index i = 0; i < ratio.size(); ++i) {
            const Ellipticity exact = ellipticity(ratio(i));
            const DeepestShear shear = ellipticDeepestShear(exact.k, 0.3);
            EXPECT_NEAR(found.axisRatio(i), exact.k, 1e-9 * exact.k) << ratio(i);
            EXPECT_NEAR(found.secondIntegral(i), exact.second, 1e-9) << ratio(i);
            EXPECT_NEAR(found.shearRatio(i), shear.ratio, 1e-5) << ratio(i);
            EXPECT_NEAR(found.shearDepth(i), shear.depth, 1e-4) << ratio(i);
        }
    }
}

class CrownedRoller : public testing::Test {
  protected:
    RollerOnTrack contact(double crown) const {
        RollerOnTrack c;
        c.roller = {0.016, 0.014, crown, 0.0005};
        c.pitchRadius = 0.095;
        c.modulus = 113e9;
        const auto low = std::max(crown / radius.maxCoeff(), radius.minCoeff() / crown);
        const auto high = std::max(crown / radius.minCoeff(), radius.maxCoeff() / crown);
        c.crown = std::make_shared<const CrownTable>(std::max(std::min(low, high), 1.0),
                                                     std::max(low, high), 0.3);
        return c;
    }
    Samples load = Samples::LinSpaced(20, 0.0, 8000.0);
    Samples radius = Samples::LinSpaced(20, 0.010, 0.030);
};

TEST_F(CrownedRoller, AgreesWithThePointContactOfEverySample) {
    for (const double crown : {0.02, 0.5}) { // across and along the roller
        const CrownedSamples found = crownedSamples(contact(crown), load, radius);
        for (Eigen::Index i = 0; i < load.size(); ++i) {
            const PointContact exact = pointContact(load(i), radius(i), crown, 113e9);
            const double length = crown >= radius(i) ? exact.longSemiAxis : exact.shortSemiAxis;
            EXPECT_NEAR(found.halfLength(i), length, 1e-8 * length);
            if (2 * length < 0.013) {
                EXPECT_NEAR(found.pressure(i), exact.peakPressure, 1e-8 * exact.peakPressure);
            }
        }
        EXPECT_EQ(found.pressure(0), 0.0);
    }
}

// Once the ellipse is longer than the roller the load is spread no further: the pressure of a
// straight roller is the least there can be.
TEST_F(CrownedRoller, BecomesAStraightRollerAsTheCrownGrows) {
    const Samples straight = linePeakPressure(load, 0.013, radius, 113e9);
    const CrownedSamples flat = crownedSamples(contact(1e5), load, radius);
    EXPECT_NEAR((flat.pressure - straight).abs().maxCoeff(), 0.0, 1e-3);
    double previous = 0.0;
    for (const double crown : {0.1, 1.0, 10.0, 100.0}) {
        const CrownedSamples found = crownedSamples(contact(crown), load, radius);
        EXPECT_GE((found.pressure - straight).minCoeff(), -1e-3);
        const double length = found.halfLength(19);
        EXPECT_GT(length, previous);
        previous = length;
    }
}

} // namespace
} // namespace lobewright::contact
