#include "core/units.h"
#include "tests/ui/scene_fixture.h"
#include "ui/scene/section/cylinder_circle.h"

#include <QSignalSpy>
#include <QTest>
#include <gtest/gtest.h>

namespace lobewright::ui::test {
namespace {

constexpr double deg = units::degree;

FiringOrder orderOf(int cylinders, const std::vector<double>& ringDegrees = {}) {
    design::Design design = twoLobeDesign();
    design.mechanism.cylinders = cylinders;
    if (!ringDegrees.empty()) {
        std::vector<double> angles;
        for (const double angle : ringDegrees)
            angles.push_back(angle * deg);
        design.mechanism.cylinderAngles = angles;
    }
    return firingOrder(geometryOf(design)->pair);
}

// Two lobes: a period of 180 °. Cylinders at 0, 120, 240 ° reach inner dead centre at the same
// angle modulo 180 °: 0, 120, 60 °.
TEST(FiringOrder, ThreeCylindersOnTwoLobesFireOneThreeTwoEverySixtyDegrees) {
    const FiringOrder order = orderOf(3);
    EXPECT_EQ(order.text(), QStringLiteral("1 – 3 – 2"));
    EXPECT_NEAR(order.evenInterval() / deg, 60.0, 1e-9);
    EXPECT_EQ(order.placeOf(0), 1);
    EXPECT_EQ(order.placeOf(2), 2);
}

// Opposite cylinders stand on lobes half a turn apart, so they fire together.
TEST(FiringOrder, FourCylindersOnTwoLobesFireInPairs) {
    const FiringOrder order = orderOf(4);
    EXPECT_EQ(order.text(), QStringLiteral("1+3 – 2+4"));
    EXPECT_NEAR(order.evenInterval() / deg, 90.0, 1e-9);
}

TEST(FiringOrder, UnevenRingAnglesGiveNoEvenInterval) {
    const FiringOrder order = orderOf(2, {0.0, 70.0});
    EXPECT_EQ(order.text(), QStringLiteral("1 – 2"));
    EXPECT_EQ(order.evenInterval(), 0.0);
}

TEST(CylinderCircle, ClickAndDigitChooseACylinder) {
    TurnCursor cursor;
    CylinderCircle view(cursor);
    view.resize(400, 400);
    view.showGeometry(geometryOf(twoLobeDesign()));
    view.show();
    QSignalSpy chosen(&view, &CylinderCircle::cylinderChosen);
    QTest::mouseClick(&view, Qt::LeftButton, {}, view.middleOf(2).toPoint());
    ASSERT_EQ(chosen.count(), 1);
    EXPECT_EQ(chosen.at(0).at(0).toInt(), 2);
    QTest::keyClick(&view, Qt::Key_2);
    EXPECT_EQ(view.cylinder(), 1);
    QTest::keyClick(&view, Qt::Key_9);
    EXPECT_EQ(view.cylinder(), 1);
    EXPECT_EQ(chosen.count(), 2);
}

// Seen from the inlet end with the shaft axis pointing away, forward rotation is clockwise and
// ring angles grow clockwise from the top.
TEST(CylinderCircle, RingAnglesGrowClockwiseFromTheTop) {
    TurnCursor cursor;
    CylinderCircle view(cursor);
    view.resize(400, 400);
    view.showGeometry(geometryOf(twoLobeDesign()));
    EXPECT_LT(view.middleOf(0).y(), view.middleOf(1).y());
    EXPECT_GT(view.middleOf(1).x(), view.middleOf(0).x());
    EXPECT_LT(view.middleOf(2).x(), view.middleOf(0).x());
}

TEST(CirclePictures, ShowTheThemeAndTheirWords) {
    TurnCursor cursor;
    for (const bool dark : {false, true}) {
        for (const QSize size : {QSize(300, 240), QSize(380, 520), QSize(700, 420)}) {
            CylinderCircle view(cursor);
            useTones(view, dark);
            view.resize(size);
            view.showSolution(inventedSolution(twoLobeDesign()));
            cursor.setAngle(100.0 * deg);
            expectPicture(
                view,
                QStringLiteral("circle-%1-%2").arg(size.width()).arg(dark ? "dark" : "light"));
        }
    }
}

} // namespace
} // namespace lobewright::ui::test
