#include "core/reference/crank_cycle.h"
#include "core/units.h"
#include "tests/ui/scene_fixture.h"
#include "ui/scene/base/phase.h"
#include "ui/scene/section/clock_view.h"
#include "ui/scene/section/gas_tone.h"
#include "ui/scene/solid/space_view.h"

#include <QTest>
#include <gtest/gtest.h>

namespace lobewright::ui::test {
namespace {

class Clock : public ::testing::Test {
  protected:
    void SetUp() override {
        useTones(view, false);
        view.resize(700, 480);
        view.showSolution(inventedSolution(twoLobeDesign()));
    }
    const mechanism::OpposedPair& pair() const { return view.engine().pair(); }
    double innerDeadCentre() const { return pair().deadCentres().front().idc; }

    TurnCursor cursor;
    ClockView view{cursor};
};

TEST_F(Clock, BothEnginesAreAtInnerDeadCentreTogether) {
    const double idc = innerDeadCentre();
    EXPECT_NEAR(view.crankAngle(End::inlet, idc) + view.crankAngle(End::exhaust, idc), 0.0, 1e-12);
    const double sum = view.crankLift(End::inlet, idc) + view.crankLift(End::exhaust, idc);
    for (const double away : {-0.2, 0.2}) {
        EXPECT_LT(view.crankLift(End::inlet, idc + away) + view.crankLift(End::exhaust, idc + away),
                  sum);
    }
}

TEST_F(Clock, CranksMakeOneStrokeATurnOrAsManyAsTheTracks) {
    const double idc = innerDeadCentre();
    EXPECT_NEAR(view.crankAngle(End::inlet, idc + 1.0) - view.crankAngle(End::inlet, idc), 1.0,
                1e-12);
    view.setGear(ClockView::Gear::sameStrokes);
    EXPECT_NEAR(view.crankAngle(End::inlet, idc + 1.0) - view.crankAngle(End::inlet, idc),
                pair().cyclesPerTurn(), 1e-12);
    // Half a cycle on, both engines are near outer dead centre.
    const double half = units::pi / pair().cyclesPerTurn();
    EXPECT_LT(view.crankLift(End::inlet, idc + half), 0.05 * pair().curve(End::inlet).stroke());
    EXPECT_LT(pair().lift(End::inlet, idc + half).y, 0.05 * pair().curve(End::inlet).stroke());
}

TEST_F(Clock, ExhaustCrankLeadsByTheLeadInDegreesOfACycle) {
    const double lead = view.engine().design().mechanism.exhaustLead;
    EXPECT_NEAR(view.crankAngle(End::exhaust, 1.0) - view.crankAngle(End::inlet, 1.0),
                pair().cyclesPerTurn() * lead, 1e-12);
}

TEST_F(Clock, AGasCycleBeginsAtTheLastPortClosing) {
    const auto& cycle = view.engine().timing().cycles().front();
    const double period = pair().period(), away = 0.01;
    EXPECT_EQ(view.gasCycle(cycle.centres.idc), 1);
    EXPECT_EQ(view.gasCycle(cycle.lastClosing() - away), 1);
    EXPECT_EQ(view.gasCycle(cycle.lastClosing()), 2);
    EXPECT_EQ(view.gasCycle(cycle.lastClosing() + away), 2); // compresses for the second firing
    EXPECT_EQ(view.gasCycle(cycle.centres.idc + period), 2);
    EXPECT_EQ(view.gasCycle(cycle.lastClosing() + period + away), 1);
}

TEST_F(Clock, AtAnEventThePhaseIsThatAfterItHoweverTheAngleWasReached) {
    const auto& engine = view.engine();
    const auto& cycle = engine.timing().cycles().front();
    for (const double rounding : {-1e-12, 0.0, 1e-12}) {
        EXPECT_EQ(phaseAt(engine, cycle.exhaustCloses + rounding), Phase::afterCharge);
        EXPECT_EQ(phaseAt(engine, cycle.exhaustOpens + rounding), Phase::blowdown);
        EXPECT_EQ(phaseAt(engine, cycle.inletOpens + rounding), Phase::scavenging);
    }
}

TEST_F(Clock, PictureMovesWithTheShaft) {
    cursor.setAngle(0.2);
    const QImage before = view.grab().toImage();
    cursor.setAngle(0.9);
    EXPECT_NE(view.grab().toImage(), before);
    expectPicture(view, QStringLiteral("clock-same-speed"));
    view.setGear(ClockView::Gear::sameStrokes);
    view.resize(360, 240);
    expectPicture(view, QStringLiteral("clock-same-strokes"));
}

// Burns, breathes and shows the colour of its own gas, in both gears.
class ClockGas : public ::testing::TestWithParam<ClockView::Gear> {};

TEST_P(ClockGas, CranksRunTheirOwnSolvedCycle) {
    TurnCursor cursor;
    ClockView view{cursor};
    useTones(view, false);
    view.resize(700, 480);
    const auto solution = solvedSample("biogas-pump-set");
    view.showSolution(solution);
    view.setGear(GetParam());
    EXPECT_FALSE(view.crankGas(0.0)) << "solved beside the window";
    ASSERT_TRUE(QTest::qWaitFor([&] { return view.isComplete(); }));
    SilentMonitor monitor;
    const auto own =
        study::crankCycle(*solution, GetParam() == ClockView::Gear::sameStrokes, monitor);
    ASSERT_TRUE(own);
    double highest = 0.0, burningAt = -1.0;
    for (double theta = 0.0; theta < units::turn; theta += units::degree) {
        const double angle = view.crankAngle(End::inlet, theta) + units::pi;
        const auto gas = view.crankGas(theta);
        ASSERT_TRUE(gas);
        EXPECT_NEAR(gas->pressure * units::bar, own->gas.trace->pressure(angle), 1.0);
        highest = std::max(highest, gas->pressure);
        if (gas->burning)
            burningAt = theta;
        const auto chamber = own->chamber.at(angle);
        for (const End side : bothEnds) {
            double open = 0.0;
            for (const auto& row : solution->design.ports[side])
                open += view.crankOpening(side, row, theta);
            const double area = side == End::inlet ? chamber.inletArea : chamber.exhaustArea;
            EXPECT_EQ(open > 1e-9, area > 1e-12) << name(side) << " at " << theta;
        }
    }
    EXPECT_GT(highest, 20.0) << "compressed and fired";
    ASSERT_GE(burningAt, 0.0);
    cursor.setAngle(burningAt);
    const QImage picture = view.grab().toImage();
    const QRgb tone = heatTone(Palette::of(view), view.crankGas(burningAt)->temperature).rgb();
    int burning = 0;
    for (int y = picture.height() / 2; y < picture.height(); ++y) {
        for (int x = 0; x < picture.width(); ++x)
            burning += picture.pixelColor(x, y).rgb() == tone ? 1 : 0;
    }
    EXPECT_GT(burning, 50);
    expectPicture(view, GetParam() == ClockView::Gear::sameSpeed ? QStringLiteral("clock-burning")
                                                                 : QStringLiteral("clock-geared"));
}

INSTANTIATE_TEST_SUITE_P(Gears, ClockGas,
                         ::testing::Values(ClockView::Gear::sameSpeed,
                                           ClockView::Gear::sameStrokes));

TEST(SpaceView, HoldsTheOpenGLViewOnlyWhileItIsSeen) {
    TurnCursor cursor;
    SpaceView place(cursor);
    place.resize(400, 300);
    place.showSolution(inventedSolution(twoLobeDesign()));
    EXPECT_EQ(place.solid(), nullptr);
    place.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&place));
    ASSERT_NE(place.solid(), nullptr);
    place.solid()->setView({10.0F, 30.0F, 0.8F});
    place.hide();
    EXPECT_EQ(place.solid(), nullptr);
    place.show();
    ASSERT_NE(place.solid(), nullptr);
    EXPECT_EQ(place.solid()->view(), (EngineSolid::View{10.0F, 30.0F, 0.8F}));
}

} // namespace
} // namespace lobewright::ui::test
