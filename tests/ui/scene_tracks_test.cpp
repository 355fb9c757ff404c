#include "core/track/undercut.h"
#include "core/units.h"
#include "tests/ui/drawn_text.h"
#include "tests/ui/scene_fixture.h"
#include "ui/scene/tracks/unrolled_tracks.h"

#include <QApplication>
#include <QMenu>
#include <QMouseEvent>
#include <QSignalSpy>
#include <QTest>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace lobewright::ui::test {
namespace {

constexpr double mm = units::millimetre;
constexpr double deg = units::degree;

const motion::SegmentShape& shapeOf(const design::Design& design, End end = End::inlet) {
    return std::get<motion::SegmentShape>(design.tracks[end].shape);
}

double spanDegrees(const design::Design& design, std::size_t i) {
    return shapeOf(design).segments[i].span / deg;
}

void showActive(QWidget& view) {
    view.resize(1000, 500);
    view.show();
    view.activateWindow();
    if (!QTest::qWaitForWindowActive(&view, 2000))
        QApplication::setActiveWindow(&view);
    view.setFocus();
}

class Tracks : public ::testing::Test {
  protected:
    Tracks() { showActive(view); }
    double pixelsPerDegree() const { return view.frame().pixelsPerRadian() * deg; }

    TurnCursor cursor;
    UnrolledTracks view{cursor};
    Applied applied{view, twoLobeDesign()};
};

design::Design knotDesign() {
    design::Design design = twoLobeDesign();
    motion::KnotShape shape;
    shape.knots = {{0.0, 0.0, {}},
                   {45.0 * deg, 20.0 * mm, {}},
                   {90.0 * deg, 36.0 * mm, {}},
                   {135.0 * deg, 16.0 * mm, {}}};
    design.tracks.inlet = {2, shape};
    return design;
}

// To scale: a turn is as long as the pitch circle's circumference.
TEST_F(Tracks, OneTurnIsAsLongAsThePitchCircle) {
    const auto& frame = view.frame();
    EXPECT_NEAR((frame.right() - frame.left()) / frame.scale(), units::turn * 95.0 * mm, 1e-9);
    EXPECT_NEAR(std::abs(frame.y(End::inlet, 36.0 * mm) - frame.y(End::inlet, 0.0)) / frame.scale(),
                36.0 * mm, 1e-12);
}

TEST_F(Tracks, RollersTouchBothTracksAndNeverCutIntoThem) {
    const auto& frame = view.frame();
    for (const End end : bothEnds) {
        const QPolygonF surface = frame.surface(end, false);
        for (double u = 0.3; u < 6.0; u += 0.41) {
            const QPointF centre = frame.axisPoint(end, u);
            double least = 1e300;
            for (qsizetype i = 1; i < surface.size(); ++i)
                least = std::min(least, distanceToStretch(centre, surface[i - 1], surface[i]));
            EXPECT_NEAR(least / frame.scale(), 16.0 * mm, 0.03 * mm);
        }
    }
}

TEST_F(Tracks, DraggingABoundGivesOneSpanWhatTheOtherLoses) {
    const Handle bound = handleNamed(view, "/tracks/inlet/segments/1/span_deg");
    dragMouse(view, bound.at, bound.at + QPointF(6.0 * pixelsPerDegree(), 0.0));
    EXPECT_NEAR(spanDegrees(applied.design(), 1), 10.0, 0.3);
    EXPECT_NEAR(spanDegrees(applied.design(), 1) + spanDegrees(applied.design(), 2), 82.0, 1e-9);
    EXPECT_NEAR(spanDegrees(applied.design(), 0), 82.0, 1e-12);
    EXPECT_EQ(applied.finished(), 1);
    for (const Edit& edit : applied.edits()) { // every step on the half-degree grid
        const double end = 82.0 + std::get<double>(edit.changes.at(0).value);
        EXPECT_NEAR(end * 2.0, std::round(end * 2.0), 1e-9);
        EXPECT_EQ(edit.mergeKey, QStringLiteral("/tracks/inlet/segments/1/span_deg"));
    }
}

TEST_F(Tracks, ABoundStopsBeforeItsNeighbour) {
    const Handle bound = handleNamed(view, "/tracks/inlet/segments/1/span_deg");
    dragMouse(view, bound.at, bound.at - QPointF(60.0 * pixelsPerDegree(), 0.0));
    EXPECT_NEAR(spanDegrees(applied.design(), 1), 0.5, 1e-9);
}

TEST_F(Tracks, TheTopOfARiseSetsTheStroke) {
    const Handle bound = handleNamed(view, "/tracks/inlet/segments/0/span_deg");
    ASSERT_EQ(bound.axes.size(), 2U);
    dragMouse(view, bound.at, bound.at + 4.0 * bound.axes[1].perUnit);
    EXPECT_NEAR(shapeOf(applied.design()).stroke, 40.0 * mm, 0.26 * mm);
    EXPECT_NEAR(spanDegrees(applied.design(), 0), 82.0, 1e-9);
}

TEST_F(Tracks, TheSecondLobeEditsTheSamePattern) {
    const Handle bound = handleNamed(view, "/tracks/inlet/segments/1/span_deg#1");
    EXPECT_FALSE(bound.inTabOrder);
    dragMouse(view, bound.at, bound.at + QPointF(4.0 * pixelsPerDegree(), 0.0));
    EXPECT_NEAR(spanDegrees(applied.design(), 1), 8.0, 0.3);
}

TEST_F(Tracks, ArrowKeysNudgeByHalfADegreeAndFinerWithShift) {
    ASSERT_TRUE(view.chooseHandle("/tracks/inlet/segments/2/span_deg"));
    QTest::keyClick(&view, Qt::Key_Right);
    EXPECT_NEAR(spanDegrees(applied.design(), 2), 78.5, 1e-9);
    QTest::keyClick(&view, Qt::Key_Left, Qt::ShiftModifier);
    EXPECT_NEAR(spanDegrees(applied.design(), 2), 78.45, 1e-9);
    EXPECT_NEAR(spanDegrees(applied.design(), 3), 15.55, 1e-9);
}

TEST_F(Tracks, SlidingTheExhaustTrackToTheLeftIncreasesItsLead) {
    const Handle lead = handleNamed(view, "/mechanism/exhaust_lead_deg");
    dragMouse(view, lead.at, lead.at - QPointF(5.0 * pixelsPerDegree(), 0.0));
    EXPECT_NEAR(applied.design().mechanism.exhaustLead / deg, 11.0, 0.26);
    // The drawn exhaust lobes follow the hand: 5 ° earlier in u.
    EXPECT_NEAR(view.frame().lead(End::exhaust) / deg, 11.0, 0.26);
}

TEST_F(Tracks, TheBarOfTheLeadSlidesWithTheTrackAndNamesTheSum) {
    design::Design design = twoLobeDesign();
    design.mechanism.adjuster.setting = 8.0 * deg;
    UnrolledTracks other(cursor);
    showActive(other);
    Applied turned(other, design);
    const Handle lead = handleNamed(other, "/mechanism/exhaust_lead_deg");
    EXPECT_TRUE(lead.atRest);
    ASSERT_TRUE(lead.axes[0].note);
    const QString sum = lead.axes[0].note(22.5);
    EXPECT_TRUE(sum.contains(QStringLiteral("8.00°"))) << sum.toStdString();
    EXPECT_TRUE(sum.contains(QStringLiteral("30.50°"))) << sum.toStdString();
    const double pixels = 5.0 * other.frame().pixelsPerRadian() * deg;
    dragMouse(other, lead.at, lead.at - QPointF(pixels, 0.0));
    const Handle moved = handleNamed(other, "/mechanism/exhaust_lead_deg");
    EXPECT_NEAR(lead.at.x() - moved.at.x(), pixels, 0.5 * pixels / 5.0);
}

// One pattern for both tracks: its dots stand on both, so that nobody is surprised by the other.
TEST_F(Tracks, ASharedPatternHasHandlesOnBothTracks) {
    const Handle bound = handleNamed(view, "/tracks/inlet/segments/1/span_deg@exhaust");
    EXPECT_TRUE(bound.label.contains(QStringLiteral("Both tracks")));
    EXPECT_GT(bound.at.y(), view.frame().middle().center().y());
    dragMouse(view, bound.at, bound.at + QPointF(6.0 * pixelsPerDegree(), 0.0));
    EXPECT_NEAR(spanDegrees(applied.design(), 1), 10.0, 0.3);
    QMenu menu;
    view.addOptions(menu);
    QAction* own = menu.actions().front();
    EXPECT_TRUE(own->text().contains(QStringLiteral("its own")));
    QSignalSpy edits(&view, &TurnView::edited);
    own->trigger();
    ASSERT_EQ(edits.count(), 1);
    const Edit edit = edits.front().front().value<Edit>();
    ASSERT_TRUE(edit.replacement);
    EXPECT_TRUE(edit.replacement->tracks.exhaust.has_value());
}

// The least radius is that of the checks, and stands at the inner edge of this track.
TEST_F(Tracks, LeastRadiusIsTheRefinedOneAndNamesItsPlace) {
    const auto& mechanism = view.engine().design().mechanism;
    const auto exact =
        track::smallestRelativeRadius(view.engine().pair().curve(End::inlet), mechanism.pitchRadius,
                                      mechanism.roller, track::Flank::push);
    EXPECT_NEAR(view.limits(End::inlet).leastRelativeRadius, exact.value, 1e-12);
    EXPECT_LT(exact.place.rho, mechanism.pitchRadius);
    EXPECT_EQ(view.limits(End::inlet).leastRadiusAt, TrackLimits::Across::innerEdge);
}

TEST_F(Tracks, TheTagGoesWithTheHandAndSaysWhichAngle) {
    const auto isTagged = [this] {
        return std::ranges::any_of(drawnText(view), [](const DrawnText& drawn) {
            return drawn.text.contains(QStringLiteral("track angle"));
        });
    };
    const Handle bound = handleNamed(view, "/tracks/inlet/segments/1/span_deg");
    const QPointF way(2.0 * pixelsPerDegree(), 0.0);
    dragMouse(view, bound.at, bound.at + way, Qt::NoModifier, false);
    EXPECT_TRUE(isTagged());
    QMouseEvent release(QEvent::MouseButtonRelease, bound.at + way,
                        view.mapToGlobal(bound.at + way), Qt::LeftButton, Qt::NoButton,
                        Qt::NoModifier);
    QApplication::sendEvent(&view, &release);
    EXPECT_FALSE(isTagged());
    ASSERT_TRUE(view.chooseHandle("/tracks/inlet/segments/1/span_deg"));
    EXPECT_TRUE(isTagged()); // with the keyboard there is no pointer to say it
}

TEST_F(Tracks, ANarrowPaneShortensTheWordsButKeepsTheFigures) {
    const QString angle =
        QString::number(view.limits(End::inlet).largestPressureAngle / deg, 'f', 1);
    for (const int width : {1000, 420, 260}) {
        view.resize(width, 300);
        bool found = false;
        for (const DrawnText& drawn : drawnText(view))
            found = found || drawn.text.contains(angle);
        EXPECT_TRUE(found) << width;
    }
}

TEST_F(Tracks, AnExhaustTrackOfItsOwnHasItsOwnHandles) {
    design::Design design = twoLobeDesign();
    for (const auto& handle : view.handles())
        EXPECT_EQ(handle.key.find("/tracks/exhaust"), std::string::npos);
    design.tracks.exhaust = design.tracks.inlet;
    UnrolledTracks other(cursor);
    showActive(other);
    Applied own(other, design);
    const Handle bound = handleNamed(other, "/tracks/exhaust/segments/2/span_deg");
    dragMouse(other, bound.at, bound.at + QPointF(3.0 * pixelsPerDegree(), 0.0));
    EXPECT_NEAR(shapeOf(own.design(), End::exhaust).segments[2].span / deg, 81.0, 0.3);
    EXPECT_NEAR(shapeOf(own.design(), End::inlet).segments[2].span / deg, 78.0, 1e-9);
}

TEST_F(Tracks, KnotsMoveInAngleAndLift) {
    UnrolledTracks other(cursor);
    showActive(other);
    Applied free(other, knotDesign());
    const Handle knot = handleNamed(other, "/tracks/inlet/knots/1");
    dragMouse(other, knot.at, knot.at + 5.0 * knot.axes[0].perUnit + 2.0 * knot.axes[1].perUnit);
    const auto& knots = std::get<motion::KnotShape>(free.design().tracks.inlet.shape).knots;
    EXPECT_NEAR(knots[1].angle / deg, 50.0, 0.26);
    EXPECT_NEAR(knots[1].lift / mm, 22.0, 0.26);
    // The knot stays under the pointer.
    const Handle moved = handleNamed(other, "/tracks/inlet/knots/1");
    EXPECT_NEAR(moved.at.x() - knot.at.x(), 5.0 * knot.axes[0].perUnit.x(), 1.5);
}

TEST_F(Tracks, DraggingTheGroundRollsTheRollersWithThePointer) {
    cursor.setAngle(1.0);
    const double y = view.frame().middle().center().y();
    const double step = 40.0;
    dragMouse(view, {400, y}, {400 + step, y});
    EXPECT_NEAR(cursor.angle(), 1.0 + step / view.frame().pixelsPerRadian(), 1e-9);
    // A plain click brings the chosen cylinder there.
    QTest::mouseClick(&view, Qt::LeftButton, {}, QPoint(300, static_cast<int>(y)));
    EXPECT_NEAR(view.frame().x(cursor.angle()), 300.0, 1.0);
}

// Pressure angle of a cycloidal rise: tan α = C_v·S/(R·span) with C_v = 2 [VDI 2143 part 1].
TEST_F(Tracks, SteepStretchesAreMarkedFromTheDesignsOwnLimit) {
    design::Design design = twoLobeDesign();
    auto shape = shapeOf(design);
    shape.segments[0].law = motion::Law::cycloidal;
    shape.segments[2].law = motion::Law::cycloidal;
    design.tracks.inlet.shape = shape;
    const double steepest = std::atan(2.0 * 36.0 / (95.0 * 78.0 * deg));
    design.limits.pressureAngle = {0.9 * steepest, 1.1 * steepest};
    view.showGeometry(geometryOf(design));
    const auto& limits = view.limits(End::inlet);
    EXPECT_NEAR(limits.largestPressureAngle, steepest, 1e-4);
    EXPECT_EQ(limits.steep.size(), 4U); // rise and return of both lobes pass 0.9 of it
    EXPECT_TRUE(limits.tooSteep.empty());
    EXPECT_TRUE(limits.undercut.empty());
    design.limits.pressureAngle = {0.5 * steepest, 0.99 * steepest};
    view.showGeometry(geometryOf(design));
    EXPECT_EQ(view.limits(End::inlet).tooSteep.size(), 2U); // only the shorter return
}

// At the crest of a parabolic lobe y' = 0 and |y''| = 4·S/span², so the pitch curve's radius at ρ
// is ρ²/|y''|; it is least at the roller's inner edge, ρ = 88 mm: 14.7 mm for 30 °, 26.2 mm for 40
// °. A roller of 16 mm undercuts the first and not the second.
TEST_F(Tracks, UndercutIsMarkedWhereTheLobeIsSharperThanTheRoller) {
    for (const double span : {30.0, 40.0}) {
        design::Design design = twoLobeDesign();
        auto shape = shapeOf(design);
        using motion::Law, motion::SegmentKind;
        shape.segments = {{SegmentKind::rise, span * deg, Law::parabolic, {}},
                          {SegmentKind::fall, span * deg, Law::parabolic, {}},
                          {SegmentKind::dwell, (180.0 - 2.0 * span) * deg, Law::harmonic, {}}};
        design.tracks.inlet.shape = shape;
        view.showGeometry(geometryOf(design));
        const auto& limits = view.limits(End::inlet);
        EXPECT_EQ(limits.undercut.size(), span < 35.0 ? 2U : 0U); // one crest a lobe
        EXPECT_EQ(limits.leastRelativeRadius <= 0.0, span < 35.0);
    }
}

TEST(TrackPictures, ShowTheThemeAndTheirWords) {
    TurnCursor cursor;
    for (const bool dark : {false, true}) {
        for (const QSize size : {QSize(380, 250), QSize(700, 420), QSize(1300, 620)}) {
            UnrolledTracks view(cursor);
            useTones(view, dark);
            view.resize(size);
            view.showSolution(inventedSolution(twoLobeDesign()));
            cursor.setAngle(40.0 * deg);
            const QString name =
                QStringLiteral("tracks-%1-%2").arg(size.width()).arg(dark ? "dark" : "light");
            expectPicture(view, name);
            view.showGeometry(geometryOf(knotDesign()));
            view.showBaseline(inventedSolution(twoLobeDesign()));
            view.show();
            const QPointF knot = handleNamed(view, "/tracks/inlet/knots/2").at;
            dragMouse(view, knot, knot + QPointF(6.0, -3.0));
            QTest::mouseMove(&view, (knot + QPointF(2.0, 0.0)).toPoint());
            QTest::qWait(20);
            expectPicture(view, name + QStringLiteral("-knots"));
        }
    }
}

// In a half of a small window the caption lay over the rollers at inner dead centre.
TEST_F(Tracks, CaptionsMeetNoRoller) {
    const double r = applied.design().mechanism.roller.radius;
    for (const QSize size :
         {QSize(1000, 500), QSize(1000, 300), QSize(500, 300), QSize(380, 210)}) {
        view.resize(size);
        QApplication::processEvents();
        const UnrolledFrame& frame = view.frame();
        const double reach = r * frame.scale();
        EXPECT_GT(reach, 5.0) << size.width() << " x " << size.height();
        EXPECT_LE(frame.caption(End::inlet).bottom(), frame.y(End::inlet, 0.0) - reach);
        EXPECT_GE(frame.caption(End::exhaust).top(), frame.y(End::exhaust, 0.0) + reach);
        EXPECT_GE(frame.caption(End::inlet).top(), 0.0);
        EXPECT_LE(frame.caption(End::exhaust).bottom(), view.height());
        int found = 0;
        for (const DrawnText& text : drawnText(view)) {
            for (const End end : bothEnds)
                found += frame.caption(end).adjusted(-6, -4, 6, 4).contains(text.box) ? 1 : 0;
        }
        EXPECT_GE(found, 4) << "both captions stand in their strips";
    }
}

} // namespace
} // namespace lobewright::ui::test
