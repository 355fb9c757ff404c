#include "core/exchange/wheel_table.h"
#include "core/units.h"

#include <gtest/gtest.h>

namespace lobewright::exchange {
namespace {

TEST(WheelTable, ReadsSpeedFlowRatioAndEfficiency) {
    const auto points = readWheelTable("# measured\nspeed,flow,ratio,efficiency\r\n"
                                       "60000,0.05,1.42,0.71\r\n60000, 0.08 ,1.35,0.74,note\n");
    ASSERT_TRUE(points);
    ASSERT_EQ(points->size(), 2u);
    EXPECT_DOUBLE_EQ((*points)[0].speed, 60000.0 * units::revPerMinute);
    EXPECT_EQ((*points)[1].flow, 0.08);
    EXPECT_EQ((*points)[1].pressureRatio, 1.35);
    EXPECT_EQ((*points)[1].efficiency, 0.74);
}

TEST(WheelTable, ReadsDecimalCommas) {
    const auto points = readWheelTable("60000;0,05;1,42;0,71\n");
    ASSERT_TRUE(points);
    EXPECT_EQ(points->front().flow, 0.05);
}

TEST(WheelTable, NamesTheLineThatIsNone) {
    const auto points = readWheelTable("speed,flow,ratio,efficiency\n60000,0.05,1.42\n");
    ASSERT_FALSE(points);
    EXPECT_EQ(points.problems().front().path, "/lines/2");
    EXPECT_FALSE(readWheelTable("# nothing\n"));
}

} // namespace
} // namespace lobewright::exchange
