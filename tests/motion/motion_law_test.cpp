#include "core/motion/lift_curve.h"
#include "core/motion/motion_law.h"
#include "core/units.h"

#include <gtest/gtest.h>

using namespace lobewright;
using namespace lobewright::motion;

TEST(LiftCurve, EveryLawRisesToStrokeAndReturns) {
    for (Law law : allLaws) {
        const double quarter = units::pi / 2.0;
        const SegmentShape shape{
            0.036, {{SegmentKind::rise, quarter, law, {}}, {SegmentKind::fall, quarter, law, {}}}};
        const Result<LiftCurve> curve = LiftCurve::make({2, shape});
        ASSERT_TRUE(curve);
        EXPECT_NEAR(curve->at(0.0).y, 0.0, 1e-16);
        EXPECT_NEAR(curve->at(quarter / 2.0).y, 0.018, 1e-16);
        EXPECT_NEAR(curve->at(quarter).y, 0.036, 1e-16);
        EXPECT_NEAR(curve->at(1.5 * quarter).y, 0.018, 1e-16);
        EXPECT_EQ(curve->risesPerPattern(), 1);
        EXPECT_NEAR(unitLift(law, 0.5).y, 0.5, 1e-15);
    }
}
