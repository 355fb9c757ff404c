// The panes that judge a lobe: over the roller's width, factors and junctions, laws side by side.
#include "core/editing/knot_edits.h"
#include "core/motion/knot_fit.h"
#include "core/motion/motion_law.h"
#include "core/track/undercut.h"
#include "core/units.h"
#include "tests/ui/desktop_fixture.h"
#include "ui/plots/turn/law_frames.h"
#include "ui/plots/turn/law_pane.h"
#include "ui/plots/turn/lift_handles.h"
#include "ui/plots/turn/lobe_factors.h"
#include "ui/plots/turn/position_plot.h"
#include "ui/plots/turn/width_plot.h"

#include <QComboBox>
#include <QPushButton>
#include <QTest>

#include <cmath>

using namespace lobewright;
using namespace lobewright::editing;
using namespace lobewright::ui;
using namespace lobewright::ui::test;

namespace {

class LobeTest : public WindowTest {
  protected:
    /// Shows a view, so that it is up to date.
    template <class View>
    View& shown(const char* key) {
        window_->arrange(QStringLiteral("lobes"));
        auto* view = dynamic_cast<View*>(window_->views().find(QLatin1String(key))->widget);
        if (!view->isVisible()) {
            view->setParent(window_.get());
            view->show();
        }
        return *view;
    }
    LawPane& laws() {
        auto& pane = shown<LawPane>("laws");
        EXPECT_TRUE(QTest::qWaitFor([&] { return !pane.isBusy() && !pane.laws().empty(); }, 30000));
        return pane;
    }
    const design::Design& design() const { return window_->document().design(); }
    const motion::LiftCurve& curve() const { return window_->solution()->pair.curve(End::inlet); }
    double figure(const char* name) const {
        const auto* found = window_->solution()->figure(name);
        return found && found->value ? *found->value : std::nan("");
    }
    void makeKnots() {
        window_->document().apply(
            knotsEdit(design(), End::inlet, motion::fitKnotCount(curve(), 12).value()));
        ASSERT_TRUE(waitUntilSolved());
    }
};

} // namespace

// tan α = y'/ρ is steepest at the inner edge; on a rise of C_v with lift h over β it is
// C_v·h/(β·ρ) [VDI 2143-1].
TEST_F(LobeTest, PressureAngleIsSteepestAtTheInnerEdge) {
    const auto& plot = shown<WidthPlot>("width-angle");
    const auto& shape = std::get<motion::SegmentShape>(design().tracks.inlet.shape);
    double steepest = 0.0;
    for (const motion::SegmentPeaks& peaks : motion::segmentPeaks(shape))
        steepest = std::max(steepest, peaks.velocity);
    const auto& mechanism = design().mechanism;
    const double inner = mechanism.roller.innerEdge(mechanism.pitchRadius);
    ASSERT_TRUE(plot.worst());
    EXPECT_EQ(plot.worst()->station, 0);
    EXPECT_NEAR(std::abs(plot.worst()->value), std::atan(steepest / inner) / units::degree, 1e-3);
}

// The least of the half-degree grid is the least of the exact search, to the grid.
TEST_F(LobeTest, RadiusAndMarginAgreeWithTheExactSearch) {
    const auto& mechanism = design().mechanism;
    const auto& radius = shown<WidthPlot>("width-radius");
    const double exact = track::smallestRelativeRadius(curve(), mechanism.pitchRadius,
                                                       mechanism.roller, track::Flank::push)
                             .value /
                         units::millimetre;
    ASSERT_TRUE(radius.worst());
    EXPECT_GE(radius.worst()->value, exact - 1e-9);
    EXPECT_NEAR(radius.worst()->value, exact, 2e-3 * exact);
    const auto& margin = shown<WidthPlot>("width-margin");
    const auto limit = track::largestRollerRadius(curve(), mechanism.pitchRadius,
                                                  mechanism.roller.width, track::Flank::push);
    ASSERT_TRUE(limit && margin.worst());
    const double room = (limit->value - mechanism.roller.radius) / units::millimetre;
    EXPECT_GE(margin.worst()->value, room - 1e-9);
    EXPECT_NEAR(margin.worst()->value, room, 5e-3 * room);
}

TEST_F(LobeTest, SlipAndPressureTimesSlipAreTheFiguresOfTheList) {
    const auto& slip = shown<WidthPlot>("width-slip");
    ASSERT_TRUE(slip.worst());
    EXPECT_NEAR(slip.worst()->value, figure("highest_slip_inlet_m_per_s"),
                0.08 * slip.worst()->value)
        << "the list takes the loaded width, the plot the whole roller";
    const auto& heat = shown<WidthPlot>("width-pressure-slip");
    ASSERT_TRUE(heat.worst());
    EXPECT_NEAR(heat.worst()->value, figure("highest_pressure_slip_inlet_W_per_mm2"),
                1e-6 * heat.worst()->value);
}

TEST_F(LobeTest, WidthPlotsRememberTheirTrack) {
    auto& plot = shown<WidthPlot>("width-angle");
    plot.restoreState(QStringLiteral("exhaust"));
    EXPECT_EQ(plot.end(), End::exhaust);
    EXPECT_EQ(plot.state(), QStringLiteral("exhaust"));
}

// C_v of the modified sine is 1.760, C_a 5.528, C_j 69.47 [Norton, Cam Design and Manufacturing
// Handbook, table of factors].
TEST_F(LobeTest, FactorsAreThoseOfTheHandbook) {
    auto& pane = shown<LobeFactors>("factors");
    ASSERT_EQ(pane.factors().rowCount(), 2);
    EXPECT_EQ(pane.factors().item(0, 1)->text(), QStringLiteral("Modified sine"));
    EXPECT_EQ(pane.factors().item(0, 4)->text(), QStringLiteral("1.760"));
    EXPECT_EQ(pane.factors().item(0, 5)->text(), QStringLiteral("5.528"));
    EXPECT_NEAR(pane.factors().item(0, 6)->text().toDouble(), 69.47, 0.006);
    EXPECT_EQ(pane.junctions().rowCount(), 4) << "jerk jumps at both ends of rise and return";
    // A row takes the shaft where it happens.
    Q_EMIT pane.factors().cellClicked(1, 0);
    const auto& shape = std::get<motion::SegmentShape>(design().tracks.inlet.shape);
    const double begin = shape.segments[0].span + shape.segments[1].span;
    EXPECT_NEAR(
        std::remainder(window_->solution()->pair.trackAngle(End::inlet, window_->cursor().angle()) -
                           begin,
                       curve().period()),
        0.0, 1e-9);
}

TEST_F(LobeTest, FreeFormStrokesHaveFactorsThatFollowADrag) {
    makeKnots();
    auto& pane = shown<LobeFactors>("factors");
    ASSERT_EQ(pane.factors().rowCount(), 2);
    EXPECT_EQ(pane.factors().item(0, 1)->text(), QStringLiteral("free-form"));
    // Close to its origin; the degrees of a dwell between equal knots may count to either stroke.
    EXPECT_NEAR(pane.factors().item(0, 4)->text().toDouble(), 1.76, 0.3);
    const QString before = pane.factors().text();
    auto& position = dynamic_cast<PositionPlot&>(view("position"));
    const auto from = position.handles().placeOf(End::inlet, LiftGrip::Kind::knot, 3);
    ASSERT_TRUE(from);
    drag(position.canvas(), *from, *from - QPointF(0.0, 15.0), false);
    EXPECT_NE(pane.factors().text(), before);
    QTest::mouseRelease(&position.canvas(), Qt::LeftButton, {}, from->toPoint());
}

TEST_F(LobeTest, LawsStandSideBySideAndThePresentOneIsMarked) {
    LawPane& pane = laws();
    ASSERT_EQ(pane.table().rowCount(), 7);
    int present = 0;
    for (int row = 0; row < 7; ++row)
        present += pane.table().item(row, 0)->text().endsWith(QStringLiteral("(present)")) ? 1 : 0;
    EXPECT_EQ(present, 1);
    // The present law's contact pressure is the design's: the worse of both, which share a pattern.
    for (const study::ComparedLaw& row : pane.laws()) {
        if (row.isPresent) {
            EXPECT_NEAR(*row.contactPressure / units::megapascal,
                        std::max(figure("peak_contact_pressure_inlet_MPa"),
                                 figure("peak_contact_pressure_exhaust_MPa")),
                        1e-3);
        }
    }
    EXPECT_EQ(pane.table().item(0, 3)->text(), QString(QChar(0x221E))) << "harmonic beside a dwell";
}

TEST_F(LobeTest, ChosenLawIsUsedAsOneUndoStep) {
    const design::Design before = design();
    LawPane& pane = laws();
    QTest::mouseClick(&pane.frames(), Qt::LeftButton, {},
                      pane.frames().frameOf(1).center().toPoint());
    EXPECT_EQ(pane.frames().chosen(), 1);
    EXPECT_EQ(pane.table().currentRow(), 1);
    pane.findChild<QPushButton*>(QStringLiteral("use"))->click();
    for (const motion::Segment& segment :
         std::get<motion::SegmentShape>(design().tracks.inlet.shape).segments) {
        if (segment.kind != motion::SegmentKind::dwell) {
            EXPECT_EQ(segment.law, motion::Law::cycloidal);
        }
    }
    EXPECT_TRUE(window_->document().undoStack().undoText().startsWith(
        QStringLiteral("Use cycloidal (both tracks")))
        << window_->document().undoStack().undoText().toStdString();
    window_->document().undoStack().undo();
    EXPECT_EQ(design(), before);
}

TEST_F(LobeTest, OneSegmentCanTakeALawOfItsOwn) {
    LawPane& pane = laws();
    auto* target = pane.findChild<QComboBox*>(QStringLiteral("target"));
    target->setCurrentIndex(2);
    Q_EMIT target->activated(2);
    laws();
    QTest::mouseDClick(&pane.frames(), Qt::LeftButton, {},
                       pane.frames().frameOf(5).center().toPoint());
    const auto& segments = std::get<motion::SegmentShape>(design().tracks.inlet.shape).segments;
    EXPECT_EQ(segments[0].law, motion::Law::modifiedSine);
    EXPECT_EQ(segments[2].law, motion::Law::polynomial345);
}

TEST_F(LobeTest, LawsForTheRiseOfAFreeFormTrackStandBesideIt) {
    makeKnots();
    auto& pane = shown<LawPane>("laws");
    EXPECT_TRUE(QTest::qWaitFor([&] { return !pane.isBusy() && pane.lobe(); }, 30000));
    ASSERT_EQ(pane.table().rowCount(), 8);
    EXPECT_EQ(pane.table().item(7, 0)->text(), QStringLiteral("This lobe"));
    // The same lift and span: velocities are to each other as the factors C_v.
    const study::ComparedLaw& law = pane.laws().front();
    EXPECT_NEAR(pane.lobe()->velocity / law.velocity,
                pane.lobe()->factors.velocity / law.factors.velocity, 1e-12);
    pane.frames().setFocus();
    Q_EMIT pane.frames().lawChosen(2);
    EXPECT_FALSE(pane.findChild<QPushButton*>(QStringLiteral("use"))->isEnabled());
}
