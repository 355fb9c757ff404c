// Knots pulled, put in, taken out and typed in the window, and other descriptions turned into them.
#include "core/editing/knot_edits.h"
#include "core/motion/knot_fit.h"
#include "core/motion/lift_curve.h"
#include "core/units.h"
#include "tests/ui/desktop_fixture.h"
#include "ui/dialogs/knot_fit_dialog.h"
#include "ui/plots/turn/lift_handles.h"
#include "ui/plots/turn/position_plot.h"
#include "ui/scene/tracks/unrolled_tracks.h"

#include <QAction>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QPushButton>
#include <QSpinBox>
#include <QTest>
#include <QToolButton>

#include <cmath>

using namespace lobewright;
using namespace lobewright::editing;
using namespace lobewright::ui;
using namespace lobewright::ui::test;

namespace {

using On = LiftGrip::Curve;
using Overlay = PositionPlot::Overlay;

/// The window with its track described by twelve knots.
class KnotTest : public WindowTest {
  protected:
    void SetUp() override {
        WindowTest::SetUp();
        const auto curve = motion::LiftCurve::make(window_->document().design().tracks.inlet);
        window_->document().apply(knotsEdit(window_->document().design(), End::inlet,
                                            motion::fitKnotCount(*curve, 12).value()));
        ASSERT_TRUE(waitUntilSolved());
        QTest::qWait(50); // plots take the sizes and scales of the new track
    }

    PositionPlot& plot() { return dynamic_cast<PositionPlot&>(view("position")); }
    const std::vector<motion::Knot>& knots() const {
        return std::get<motion::KnotShape>(window_->document().design().tracks.inlet.shape).knots;
    }
    motion::LiftCurve curve() const {
        return motion::LiftCurve::make(window_->document().design().tracks.inlet).value();
    }
    motion::Lift atKnot(int index) const {
        return curve().at(knots()[static_cast<size_t>(index)].angle);
    }
    QPointF placeOf(int index, On on) {
        const auto place = plot().handles().placeOf(End::inlet, LiftGrip::Kind::knot, index, on);
        if (!place)
            throw std::runtime_error("knot out of sight");
        return *place;
    }
    double omega() const { return window_->document().design().running.speed; }
    void lay(Overlay overlay) {
        plot().setOverlay(overlay);
        QTest::qWait(50); // the strip above the plot takes another line
    }
    QString undoText() { return window_->document().undoStack().undoText(); }
    void undo() { window_->document().undoStack().undo(); }
};

} // namespace

TEST_F(KnotTest, PulledOnTheLiftMovesInAngleAndLift) {
    const motion::Knot before = knots()[3];
    const QPointF from = placeOf(3, On::lift);
    const QPointF to = from + QPointF(8.0, -20.0);
    const double raised =
        plot().canvas().yAxis->pixelToCoord(to.y()) - plot().canvas().yAxis->pixelToCoord(from.y());
    drag(plot().canvas(), from, to);
    EXPECT_GT(knots()[3].angle, before.angle);
    EXPECT_NEAR((knots()[3].lift - before.lift) / units::millimetre, raised, 0.26) << "half a step";
    EXPECT_TRUE(undoText().startsWith(QStringLiteral("Move knot 4"))) << undoText().toStdString();
    undo();
    EXPECT_EQ(knots()[3], before) << "one drag is one step";
}

// The slope of the knot is what the velocity curve shows there, v = ω·y'.
TEST_F(KnotTest, PulledOnTheVelocityPrescribesItsSlope) {
    lay(Overlay::velocity);
    const motion::Knot before = knots()[3];
    const double slope = atKnot(3).y1;
    const QPointF from = placeOf(3, On::velocity);
    const QPointF to = from + QPointF(0.0, -25.0);
    const double faster = plot().canvas().yAxis2->pixelToCoord(to.y()) -
                          plot().canvas().yAxis2->pixelToCoord(from.y());
    drag(plot().canvas(), from, to);
    ASSERT_TRUE(knots()[3].slope);
    EXPECT_EQ(knots()[3].lift, before.lift);
    EXPECT_EQ(knots()[3].angle, before.angle);
    EXPECT_NEAR((atKnot(3).y1 - slope) * omega(), faster, 0.02 * std::abs(faster) + 0.06);
    EXPECT_TRUE(undoText().startsWith(QStringLiteral("Change slope at knot 4")));
    // Backspace gives the slope back to the spline.
    QTest::keyClick(&plot().canvas(), Qt::Key_Backspace);
    EXPECT_FALSE(knots()[3].slope);
    EXPECT_NEAR(atKnot(3).y1, slope, 1e-9);
}

// An interpolating spline has no number for the acceleration at a knot: its lift is moved until the
// acceleration there is where the pointer is. Pointer and curve then agree to the grain of the
// lift, 0.1 µm.
TEST_F(KnotTest, PulledOnTheAccelerationMovesTheLiftUntilItFollows) {
    lay(Overlay::acceleration);
    const motion::Knot before = knots()[4];
    const QPointF from = placeOf(4, On::acceleration);
    const QPointF to = from - QPointF(0.0, 15.0);
    const double wanted = plot().canvas().yAxis2->pixelToCoord(to.y());
    drag(plot().canvas(), from, to, false);
    EXPECT_EQ(knots()[4].angle, before.angle);
    EXPECT_FALSE(knots()[4].slope);
    EXPECT_LT(knots()[4].lift, before.lift) << "more acceleration there: a lower knot";
    const double step = valueStep(On::acceleration, false) * units::millimetre /
                        (units::degree * units::degree) * omega() * omega();
    EXPECT_NEAR(atKnot(4).y2 * omega() * omega(), wanted, 0.6 * step);
    // Still held: curve and handle are under the pointer.
    EXPECT_NEAR(placeOf(4, On::acceleration).y(), to.y(),
                0.6 * step /
                    std::abs(plot().canvas().yAxis2->pixelToCoord(0.0) -
                             plot().canvas().yAxis2->pixelToCoord(1.0)));
    QTest::mouseRelease(&plot().canvas(), Qt::LeftButton, {}, to.toPoint());
    undo();
    EXPECT_EQ(knots()[4], before);
}

TEST_F(KnotTest, ArrowKeysNudgeTheChosenKnotAndShiftIsFine) {
    QTest::mouseClick(&plot().canvas(), Qt::LeftButton, {}, placeOf(3, On::lift).toPoint());
    const motion::Knot before = knots()[3];
    QTest::keyClick(&plot().canvas(), Qt::Key_Up);
    EXPECT_NEAR(knots()[3].lift - before.lift, 0.5 * units::millimetre, 1e-9);
    QTest::keyClick(&plot().canvas(), Qt::Key_Up, Qt::ShiftModifier);
    EXPECT_NEAR(knots()[3].lift - before.lift, 0.55 * units::millimetre, 1e-9);
    QTest::keyClick(&plot().canvas(), Qt::Key_Right, Qt::ShiftModifier);
    EXPECT_NEAR(knots()[3].angle - before.angle, 0.05 * units::degree, 1e-9);
    lay(Overlay::velocity);
    QTest::mouseClick(&plot().canvas(), Qt::LeftButton, {}, placeOf(3, On::velocity).toPoint());
    const double slope = atKnot(3).y1;
    QTest::keyClick(&plot().canvas(), Qt::Key_Down, Qt::ShiftModifier);
    EXPECT_NEAR(atKnot(3).y1 - slope, -0.001 * units::millimetre / units::degree, 1e-9);
}

// A knot on the curve changes nothing yet: the spline through it is the same spline.
TEST_F(KnotTest, DoubleClickOnTheCurvePutsAKnotThereAndDeleteTakesItOut) {
    const motion::LiftCurve before = curve();
    const auto old = knots();
    TurnCanvas& canvas = plot().canvas();
    const QPointF from = placeOf(3, On::lift), next = placeOf(4, On::lift);
    const double x = std::round(0.5 * (from.x() + next.x()));
    const double theta = canvas.thetaAt(x);
    const double lift = window_->solution()->pair.lift(End::inlet, theta).y / units::millimetre;
    const QPoint place(static_cast<int>(x), static_cast<int>(canvas.yAxis->coordToPixel(lift)));
    QTest::mouseDClick(&canvas, Qt::LeftButton, {}, place);
    ASSERT_EQ(knots().size(), old.size() + 1);
    EXPECT_TRUE(undoText().startsWith(QStringLiteral("Add knot at "))) << undoText().toStdString();
    for (double phi = 0.0; phi < before.period(); phi += 0.01)
        EXPECT_NEAR(curve().at(phi).y, before.at(phi).y, 0.2e-6) << "rounding of the new lift";
    // The new one is chosen: keys reach it.
    EXPECT_TRUE(plot().handles().knotChosen());
    QTest::keyClick(&canvas, Qt::Key_Delete);
    EXPECT_EQ(knots(), old);
    EXPECT_TRUE(undoText().startsWith(QStringLiteral("Remove knot at ")));
    undo();
    undo();
    EXPECT_EQ(knots(), old);
}

TEST_F(KnotTest, InsertPutsAKnotAtTheShaftAngleOnceAndNotTooClose) {
    const size_t before = knots().size();
    window_->cursor().setAngle(0.5 * (knots()[5].angle + knots()[6].angle) -
                               window_->solution()->pair.trackAngle(End::inlet, 0.0));
    plot().canvas().setFocus();
    QTest::keyClick(&plot().canvas(), Qt::Key_Insert);
    EXPECT_EQ(knots().size(), before + 1);
    QTest::keyClick(&plot().canvas(), Qt::Key_Insert);
    EXPECT_EQ(knots().size(), before + 1) << "a knot stands there already";
}

TEST_F(KnotTest, UnrolledTrackTakesKnotsInAndOutToo) {
    auto& tracks = dynamic_cast<UnrolledTracks&>(view("tracks"));
    const size_t before = knots().size();
    const double u =
        0.5 * (knots()[3].angle + knots()[4].angle) - tracks.frame().patternAngle(End::inlet, 0.0);
    QTest::mouseDClick(&tracks, Qt::LeftButton, {},
                       tracks.frame().axisPoint(End::inlet, u).toPoint());
    ASSERT_EQ(knots().size(), before + 1);
    ASSERT_GE(tracks.chosenHandle(), 0);
    EXPECT_TRUE(tracks.handles()[static_cast<size_t>(tracks.chosenHandle())].key.starts_with(
        "/tracks/inlet/knots/4"));
    QTest::keyClick(&tracks, Qt::Key_Delete);
    EXPECT_EQ(knots().size(), before);
    ASSERT_TRUE(waitUntilSolved());
}

// While the mouse is still down the solved quantities follow too, not only the curves.
TEST_F(KnotTest, EverythingIsSolvedWhileAKnotIsHeld) {
    const auto before = window_->solution();
    const QPointF from = placeOf(4, On::lift);
    drag(plot().canvas(), from, from + QPointF(0.0, 12.0), false);
    EXPECT_TRUE(QTest::qWaitFor([&] { return window_->solution() != before; }, 30000));
    QTest::mouseRelease(&plot().canvas(), Qt::LeftButton, {}, from.toPoint());
}

// Jumps of harmonic acceleration at its ends: C_a·h/(2β²) with C_a = π²/2 on both sides
// [VDI 2143 part 1], marked at every junction of both tracks.
TEST_F(WindowTest, JumpsAreMarkedOnTheDerivativeTheyBelongTo) {
    design::Design design = window_->document().design();
    auto& segments = std::get<motion::SegmentShape>(design.tracks.inlet.shape).segments;
    for (motion::Segment& segment : segments)
        segment.law = motion::Law::harmonic;
    Edit edit;
    edit.text = QStringLiteral("Harmonic");
    edit.replacement = design;
    window_->document().apply(edit);
    ASSERT_TRUE(waitUntilSolved());
    auto& plot = dynamic_cast<PositionPlot&>(view("position"));
    plot.setOverlay(PositionPlot::Overlay::velocity);
    EXPECT_TRUE(plot.jumps().empty());
    plot.setOverlay(PositionPlot::Overlay::acceleration);
    ASSERT_FALSE(plot.jumps().empty());
    const auto& shape = std::get<motion::SegmentShape>(design.tracks.inlet.shape);
    const double omega = design.running.speed;
    double largest = 0.0;
    for (const motion::Segment& segment : shape.segments) {
        if (segment.kind != motion::SegmentKind::dwell) {
            largest = std::max(largest, 0.5 * units::pi * units::pi * shape.stroke /
                                            (segment.span * segment.span) * omega * omega);
        }
    }
    double found = 0.0;
    for (const ShownJump& jump : plot.jumps())
        found = std::max(found, std::abs(jump.after - jump.before));
    EXPECT_NEAR(found, largest, 1e-9 * largest);
}

TEST_F(WindowTest, TrackIsTurnedIntoKnotsByToleranceWithTheErrorShown) {
    const design::Design before = window_->document().design();
    QString message;
    int count = 0;
    onNextDialog([&](QDialog& dialog) {
        auto& fit = dynamic_cast<KnotFitDialog&>(dialog);
        fit.findChild<QDoubleSpinBox*>(QStringLiteral("tolerance"))->setValue(20.0);
        message = fit.findChild<QLabel*>(QStringLiteral("message"))->text();
        count = static_cast<int>(fit.fit()->shape.knots.size());
        fit.findChild<QPushButton*>(QStringLiteral("use"))->click();
    });
    QTest::keyClick(window_.get(), Qt::Key_K, Qt::ControlModifier);
    for (const char* part : {"knots. Off by at most: lift", "velocity", "acceleration", "peak"})
        EXPECT_TRUE(message.contains(QLatin1String(part))) << message.toStdString();
    const auto& shape =
        std::get<motion::KnotShape>(window_->document().design().tracks.inlet.shape);
    EXPECT_EQ(static_cast<int>(shape.knots.size()), count);
    const auto old = motion::LiftCurve::make(before.tracks.inlet);
    const auto made = motion::LiftCurve::make(window_->document().design().tracks.inlet);
    for (double phi = 0.0; phi < old->period(); phi += 0.003)
        EXPECT_NEAR(made->at(phi).y, old->at(phi).y, 20.5e-6);
    const QString step = window_->document().undoStack().undoText();
    EXPECT_TRUE(step.startsWith(QStringLiteral("Turn into %1 knots, error ").arg(count)))
        << step.toStdString();
    window_->document().undoStack().undo();
    EXPECT_EQ(window_->document().design(), before);
}

TEST_F(WindowTest, TrackIsTurnedIntoANumberOfKnots) {
    onNextDialog([&](QDialog& dialog) {
        dialog.findChild<QComboBox*>(QStringLiteral("choice"))->setCurrentIndex(1);
        dialog.findChild<QSpinBox*>(QStringLiteral("count"))->setValue(9);
        dialog.findChild<QPushButton*>(QStringLiteral("use"))->click();
    });
    for (QToolButton* button : window_->findChildren<QToolButton*>()) {
        if (button->accessibleName() == QStringLiteral("Turn the inlet track into knots"))
            button->click();
    }
    const auto* shape =
        std::get_if<motion::KnotShape>(&window_->document().design().tracks.inlet.shape);
    ASSERT_NE(shape, nullptr);
    EXPECT_EQ(shape->knots.size(), 9U);
    EXPECT_TRUE(waitUntilSolved());
}
