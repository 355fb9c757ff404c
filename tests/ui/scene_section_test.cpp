#include "core/units.h"
#include "tests/ui/scene_fixture.h"
#include "ui/base/palette.h"
#include "ui/scene/section/gas_tone.h"
#include "ui/scene/section/section_view.h"

#include <QApplication>
#include <QDoubleSpinBox>
#include <QSignalSpy>
#include <QTest>
#include <gtest/gtest.h>

#include <cmath>

namespace lobewright::ui::test {
namespace {

constexpr double mm = units::millimetre;
constexpr double deg = units::degree;

class Section : public ::testing::Test {
  protected:
    Section() {
        view.resize(900, 500);
        view.show();
        view.activateWindow();
        if (!QTest::qWaitForWindowActive(&view, 2000))
            QApplication::setActiveWindow(&view);
        view.setFocus();
    }
    double value(const char* key) const { return handleNamed(view, key).axes[0].value; }

    TurnCursor cursor;
    SectionView view{cursor};
    Applied applied{view, twoLobeDesign()};
};

// To scale: what the drawing calls a millimetre is one everywhere in it.
TEST_F(Section, CrownsAndRollersStandWhereTheMechanismSays) {
    const ShownEngine& engine = view.engine();
    const SectionFrame frame(engine, QRectF(0, 0, 900, 400));
    for (double theta = 0.0; theta < 6.28; theta += 0.37) {
        EXPECT_NEAR(frame.crown(End::exhaust, theta) - frame.crown(End::inlet, theta),
                    engine.pair().gap(theta), 1e-12);
        for (const End end : bothEnds) {
            // The roller touches the drawn track surface and nowhere cuts into it: with a lift
            // curve free of undercut the envelope stays a radius away from the roller's middle.
            const QPointF centre = frame.at(frame.rollerAxis(end, theta), 0.0);
            double least = 1e300;
            for (const QPointF& point : frame.trackProfile(end, theta, false))
                least = std::min(least, std::hypot(point.x() - centre.x(), point.y() - centre.y()));
            EXPECT_NEAR(least / frame.scale(), 16.0 * mm, 0.03 * mm);
        }
    }
}

// The skirt was drawn through the rim: over the turn it stays a fifth of the roller radius away, or
// runs into it by what the limits list says where the distance is given too short.
TEST(SectionFrameOfAClosedTrack, KeepsTheSkirtOutOfTheRim) {
    auto design = twoLobeDesign();
    design.mechanism.closedTrack = true;
    const auto least = [](const design::Design& drawn) {
        ShownEngine engine;
        engine.setGeometry(geometryOf(drawn));
        const SectionFrame frame(engine, QRectF(0, 0, 900, 400));
        double room = 1e300;
        for (double theta = 0.0; theta < 2.0 * units::turn; theta += 0.5 * deg) {
            for (const End end : bothEnds) {
                const double out = SectionFrame::outward(end);
                const double skirt =
                    frame.at(frame.crown(end, theta) + out * frame.pistonLength(), 0.0).x();
                room = std::min(room, out * (frame.rimFace(end) - skirt) / frame.scale());
            }
        }
        return room;
    };
    const double radius = design.mechanism.roller.radius;
    EXPECT_NEAR(least(design), 0.2 * radius, 0.01 * mm);
    const double rim = track::rimThickness(design.trackBlank, design.mechanism.roller);
    design.mechanism.piston->rollerAxis =
        design.mechanism.piston->length + 36.0 * mm + radius + rim - 1.0 * mm;
    EXPECT_NEAR(least(design), -1.0 * mm, 0.01 * mm);
}

TEST_F(Section, PortsOpenInTheDrawingExactlyWhenTheyAreTimedToOpen) {
    const ShownEngine& engine = view.engine();
    const SectionFrame frame(engine, QRectF(0, 0, 900, 400));
    const auto& cycle = engine.timing().cycles().front();
    for (const End end : bothEnds) {
        const double edge = frame.portPlace(end, engine.design().ports[end].front().edge);
        EXPECT_NEAR(frame.crown(end, cycle.opens(end)), edge, 1e-9);
        EXPECT_NEAR(frame.crown(end, cycle.closes(end)), edge, 1e-9);
    }
}

TEST_F(Section, ChamberIsPaintedInTheToneOfItsTemperature) {
    view.showSolution(inventedSolution(twoLobeDesign()));
    cursor.setAngle(40.0 * deg);
    const auto gas = view.engine().gasAt(40.0 * deg);
    ASSERT_TRUE(gas);
    const QImage image = view.grab().toImage().convertToFormat(QImage::Format_RGB32);
    const QPointF chamber = view.frame().at(0.0, 0.6 * view.frame().halfBore());
    EXPECT_EQ(image.pixelColor((chamber * image.devicePixelRatio()).toPoint()).name(),
              heatTone(Palette::of(view), gas->temperature).name());
}

TEST_F(Section, DraggingThePortEdgeMovesItByTheSameDistanceToScale) {
    const char* key = "/ports/exhaust/0/edge_mm";
    const Handle before = handleNamed(view, key);
    const double scale = std::hypot(before.axes[0].perUnit.x(), before.axes[0].perUnit.y());
    // Inward is to the left on the exhaust side.
    dragMouse(view, before.at, before.at - QPointF(5.0 * scale, 0.0));
    EXPECT_NEAR(value(key), 15.5, 0.051); // 10.5 + 5, on the 0.1 mm grid
    EXPECT_NEAR(applied.design().ports.exhaust[0].edge, 15.5 * mm, 0.051 * mm);
    EXPECT_DOUBLE_EQ(applied.design().ports.exhaust[0].height, 10.5 * mm);
    EXPECT_EQ(applied.finished(), 1);
    ASSERT_FALSE(applied.edits().empty());
    for (const Edit& edit : applied.edits()) {
        EXPECT_EQ(edit.mergeKey.toStdString(), key); // one undo step
        EXPECT_EQ(edit.text, QStringLiteral("Move exhaust port edge"));
        const double number = std::get<double>(edit.changes.at(0).value);
        EXPECT_NEAR(number * 10.0, std::round(number * 10.0), 1e-9);
    }
}

TEST_F(Section, DraggingTheOuterEndChangesTheHeightOnly) {
    const char* key = "/ports/inlet/0/height_mm";
    const Handle before = handleNamed(view, key);
    const double scale = std::hypot(before.axes[0].perUnit.x(), before.axes[0].perUnit.y());
    dragMouse(view, before.at, before.at + QPointF(2.0 * scale, 0.0)); // towards the middle
    EXPECT_NEAR(applied.design().ports.inlet[0].height, 5.5 * mm, 0.051 * mm);
    EXPECT_DOUBLE_EQ(applied.design().ports.inlet[0].edge, 7.5 * mm);
}

TEST_F(Section, ShiftMovesTenTimesFiner) {
    const char* key = "/ports/exhaust/0/edge_mm";
    const Handle before = handleNamed(view, key);
    const double scale = std::hypot(before.axes[0].perUnit.x(), before.axes[0].perUnit.y());
    dragMouse(view, before.at, before.at - QPointF(5.0 * scale, 0.0), Qt::ShiftModifier);
    EXPECT_NEAR(applied.design().ports.exhaust[0].edge, 11.0 * mm, 0.006 * mm);
}

TEST_F(Section, EscapeInADragBringsTheOldValueBack) {
    const char* key = "/ports/exhaust/0/edge_mm";
    const QPointF from = handleNamed(view, key).at;
    dragMouse(view, from, from - QPointF(20.0, 0.0), Qt::NoModifier, false);
    EXPECT_NE(applied.design(), twoLobeDesign());
    QTest::keyClick(&view, Qt::Key_Escape);
    EXPECT_EQ(applied.design(), twoLobeDesign());
    EXPECT_EQ(applied.finished(), 1);
}

TEST_F(Section, TabWalksTheHandlesAndArrowsNudgeThem) {
    QTest::keyClick(&view, Qt::Key_Tab);
    ASSERT_EQ(view.chosenHandle(), 0);
    EXPECT_EQ(view.handles()[0].key, "/ports/inlet/0/edge_mm");
    EXPECT_TRUE(view.accessibleDescription().contains(QStringLiteral("7.50")));
    QTest::keyClick(&view, Qt::Key_Right); // inward on the inlet side
    EXPECT_NEAR(applied.design().ports.inlet[0].edge, 7.6 * mm, 1e-9);
    QTest::keyClick(&view, Qt::Key_Left, Qt::ShiftModifier);
    EXPECT_NEAR(applied.design().ports.inlet[0].edge, 7.59 * mm, 1e-9);
    EXPECT_EQ(applied.finished(), 2);
    for (int i = 0; i < 3; ++i)
        QTest::keyClick(&view, Qt::Key_Tab);
    EXPECT_EQ(view.handles()[static_cast<std::size_t>(view.chosenHandle())].key,
              "/ports/exhaust/0/height_mm");
    QTest::keyClick(&view, Qt::Key_Backtab);
    EXPECT_EQ(view.chosenHandle(), 2);
}

TEST_F(Section, EnterOpensExactEntryAndEnterAcceptsIt) {
    ASSERT_TRUE(view.chooseHandle("/ports/exhaust/0/edge_mm"));
    QTest::keyClick(&view, Qt::Key_Return);
    auto* box = view.findChild<QDoubleSpinBox*>();
    ASSERT_NE(box, nullptr);
    box->selectAll();
    QTest::keyClicks(box, "12.345");
    QTest::keyClick(box, Qt::Key_Return);
    EXPECT_NEAR(applied.design().ports.exhaust[0].edge, 12.345 * mm, 1e-12);
    EXPECT_EQ(applied.finished(), 1);
}

TEST_F(Section, DoubleClickOpensExactEntryAndEscapeLeavesTheValue) {
    const QPoint at = handleNamed(view, "/ports/inlet/0/height_mm").at.toPoint();
    QTest::mouseDClick(&view, Qt::LeftButton, {}, at);
    auto* box = view.findChild<QDoubleSpinBox*>();
    ASSERT_NE(box, nullptr);
    EXPECT_DOUBLE_EQ(box->value(), 7.5);
    QTest::keyClicks(box, "3");
    QTest::keyClick(box, Qt::Key_Escape);
    EXPECT_EQ(applied.design(), twoLobeDesign());
}

TEST_F(Section, GroundDragWheelAndArrowsTurnTheShaft) {
    cursor.setAngle(1.0);
    dragMouse(view, {450, 480}, {550, 480});
    EXPECT_GT(cursor.angle(), 1.05);
    EXPECT_TRUE(applied.edits().empty());
    cursor.setAngle(1.0);
    QTest::keyClick(&view, Qt::Key_Right);
    EXPECT_NEAR(cursor.angle(), 1.0 + 1.0 * deg, 1e-12);
    QTest::keyClick(&view, Qt::Key_Left, Qt::ShiftModifier);
    EXPECT_NEAR(cursor.angle(), 1.0 + 0.9 * deg, 1e-12);
    QWheelEvent wheel(QPointF(450, 250), view.mapToGlobal(QPointF(450, 250)), {}, QPoint(0, 120),
                      Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
    QApplication::sendEvent(&view, &wheel);
    EXPECT_NEAR(cursor.angle(), 1.0 + 2.9 * deg, 1e-12);
    QTest::keyClick(&view, Qt::Key_Space);
    EXPECT_TRUE(cursor.isPlaying());
    QTest::keyClick(&view, Qt::Key_Space);
    EXPECT_FALSE(cursor.isPlaying());
}

// The tracks pass up and down in the section: a vertical drag takes them along with the hand.
TEST_F(Section, AVerticalDragTakesTheTracksAlong) {
    const auto& frame = view.frame();
    const double radius = view.engine().pair().mechanism().pitchRadius;
    cursor.setAngle(0.5);
    const double pixels = 0.1 * radius * frame.scale();
    dragMouse(view, {450, 30}, QPointF(450, 30 + pixels));
    EXPECT_NEAR(cursor.angle(), 0.6, 1e-3);
}

TEST_F(Section, PageKeysStepThroughThePortEventsInOrder) {
    const auto& cycle = view.engine().timing().cycles().front();
    cursor.setAngle(cycle.centres.idc);
    for (const double event : {cycle.exhaustOpens, cycle.inletOpens, cycle.centres.odc}) {
        QTest::keyClick(&view, Qt::Key_PageDown);
        EXPECT_NEAR(std::remainder(cursor.angle() - event, view.engine().pair().period()), 0.0,
                    1e-9);
    }
    QTest::keyClick(&view, Qt::Key_PageUp);
    EXPECT_NEAR(std::remainder(cursor.angle() - cycle.inletOpens, view.engine().pair().period()),
                0.0, 1e-9);
}

TEST_F(Section, ChoosingACylinderShowsItAtItsOwnAngle) {
    cursor.setAngle(0.5);
    const QImage first = view.grab().toImage();
    view.setCylinder(1);
    EXPECT_NE(view.grab().toImage(), first);
    // A third of a turn later cylinder 2 is where cylinder 1 was.
    EXPECT_NEAR(view.engine().angleOfCylinder(1, 0.5 + units::turn / 3.0), 0.5, 1e-12);
}

TEST(SectionWithoutDesign, SaysSoAndIgnoresTheHand) {
    TurnCursor cursor;
    SectionView view(cursor);
    view.resize(380, 250);
    view.show();
    dragMouse(view, {100, 100}, {200, 100});
    QTest::keyClick(&view, Qt::Key_Home);
    QTest::keyClick(&view, Qt::Key_PageDown);
    EXPECT_EQ(cursor.angle(), 0.0);
    EXPECT_FALSE(view.grab().isNull());
}

TEST(SectionPictures, ShowTheThemeAndTheirWords) {
    TurnCursor cursor;
    for (const bool dark : {false, true}) {
        for (const QSize size : {QSize(380, 250), QSize(700, 420), QSize(1300, 620)}) {
            SectionView view(cursor);
            useTones(view, dark);
            view.resize(size);
            view.showSolution(inventedSolution(twoLobeDesign()));
            for (const double angle : {0.0, 40.0, 100.0, 175.0}) {
                cursor.setAngle(angle * deg);
                expectPicture(view, QStringLiteral("section-%1-%2-%3")
                                        .arg(size.width())
                                        .arg(dark ? "dark" : "light")
                                        .arg(angle));
            }
            view.show();
            QTest::mouseMove(&view, QPoint(size.width() / 2, size.height() / 2));
            QTest::mouseMove(&view, handleNamed(view, "/ports/exhaust/0/edge_mm").at.toPoint());
            QTest::qWait(20);
            expectPicture(view, QStringLiteral("section-%1-%2-hover")
                                    .arg(size.width())
                                    .arg(dark ? "dark" : "light"));
        }
    }
}

} // namespace
} // namespace lobewright::ui::test
