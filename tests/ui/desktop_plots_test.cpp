#include "core/units.h"
#include "tests/solution/solved_sample.h"
#include "tests/ui/desktop_fixture.h"
#include "ui/base/palette.h"
#include "ui/plots/base/angle_ticks.h"
#include "ui/plots/base/plot_export.h"
#include "ui/plots/base/turn_events.h"
#include "ui/plots/contact/stress_plot.h"
#include "ui/plots/turn/port_plot.h"
#include "ui/plots/turn/position_plot.h"

#include <QFile>
#include <QImage>
#include <QPainter>
#include <QProcess>
#include <QSvgRenderer>
#include <QTest>

#include <cmath>
#include <limits>

using namespace lobewright;
using namespace lobewright::ui;
using namespace lobewright::ui::test;

TEST(TurnCursor, AngleStaysWithinOneTurn) {
    TurnCursor cursor;
    cursor.setAngle(-0.1);
    EXPECT_NEAR(cursor.angle(), units::turn - 0.1, 1e-12);
    cursor.setAngle(units::turn);
    EXPECT_EQ(cursor.angle(), 0.0);
}

TEST(TurnCursor, PlayingTurnsAtItsRate) {
    TurnCursor cursor;
    cursor.setRate(0.5);
    cursor.setPlaying(true);
    QElapsedTimer clock;
    clock.start();
    QTest::qWait(400);
    cursor.setPlaying(false);
    const double expected = 0.5 * units::turn * static_cast<double>(clock.elapsed()) * 1e-3;
    EXPECT_NEAR(cursor.angle(), expected, 0.2 * expected + 0.1);
}

TEST(TurnEvents, EverythingHappensOnceACycle) {
    SilentMonitor monitor;
    const auto solved = solution::solve(sampleDesign(), monitor);
    ASSERT_TRUE(solved);
    const auto events = turnEvents(solved->pair, solved->timing);
    EXPECT_EQ(events.size(), 6U * static_cast<size_t>(solved->pair.cyclesPerTurn()));
    EXPECT_TRUE(std::ranges::is_sorted(events, {}, &TurnEvent::theta));
    for (const TurnEvent& event : events) {
        if (event.kind == TurnEvent::Kind::innerDeadCentre) {
            EXPECT_NEAR(cycleAngle(solved->pair, event.theta), 0.0, 1e-6);
        }
    }
}

TEST(TurnEvents, MissingAndZeroForcesAreStretches) {
    Samples theta(6), force(6);
    theta << 0, 1, 2, 3, 4, 5;
    force << 5, 0, 0, 7, std::numeric_limits<double>::quiet_NaN(), 2;
    const auto stretches = stretchesWithout(theta, force);
    ASSERT_EQ(stretches.size(), 2U);
    EXPECT_EQ(stretches[0].from, 1.0);
    EXPECT_EQ(stretches[0].to, 2.0);
    EXPECT_EQ(stretches[1].from, 4.0);
}

TEST(TurnEvents, ValueBesideAGapIsNoNumber) {
    Samples theta(3), values(3);
    theta << 0, 1, 2;
    values << 1, std::numeric_limits<double>::quiet_NaN(), 3;
    EXPECT_TRUE(std::isnan(valueAt(theta, values, 0.5)));
    EXPECT_EQ(valueAt(theta, values, 2.0), 3.0);
}

TEST(AngleText, HasATrueMinusAndNoNeedlessDigits) {
    EXPECT_EQ(degreesText(-12.0), QStringLiteral("\u221212"));
    EXPECT_EQ(degreesText(7.5), QStringLiteral("7.5"));
    EXPECT_EQ(degreesText(-0.01), QStringLiteral("0"));
}

TEST_F(WindowTest, EveryTurnPlotFollowsOneCursor) {
    window_->cursor().setAngle(1.0);
    for (const char* key : {"position", "ports", "torque", "stress"}) {
        auto& plot = dynamic_cast<TurnPlot&>(view(QString::fromLatin1(key)));
        EXPECT_EQ(plot.canvas().cursor().angle(), 1.0) << key;
        ASSERT_FALSE(plot.curves().empty());
        EXPECT_GT(plot.curves().front().values.size(), 700) << key << " has no curve";
    }
}

TEST_F(WindowTest, DragInAPlotTurnsTheShaft) {
    auto& canvas = dynamic_cast<TurnPlot&>(view("torque")).canvas();
    const QRectF box = canvas.inside();
    drag(canvas, {box.left() + 20, box.center().y()}, {canvas.xOf(2.0), box.center().y()});
    EXPECT_NEAR(window_->cursor().angle(), 2.0, 0.02);
}

TEST_F(WindowTest, WheelZoomsAllPlotsAndDoubleClickShowsTheWholeTurn) {
    auto& torque = dynamic_cast<TurnPlot&>(view("torque")).canvas();
    auto& ports = dynamic_cast<TurnPlot&>(view("ports")).canvas();
    const QPointF at = torque.inside().center();
    QWheelEvent wheel(at, torque.mapToGlobal(at), {}, {0, 240}, Qt::NoButton, Qt::NoModifier,
                      Qt::NoScrollPhase, false);
    QApplication::sendEvent(&torque, &wheel);
    EXPECT_LT(ports.xAxis->range().size(), 300.0);
    EXPECT_EQ(ports.xAxis->range(), torque.xAxis->range());
    QTest::mouseDClick(&torque, Qt::LeftButton, {}, at.toPoint());
    EXPECT_NEAR(ports.xAxis->range().size(), 360.0, 1e-9);
}

namespace {

/// Mean difference of grey levels, of 255.
double difference(const QImage& a, const QImage& b) {
    const QImage other = b.scaled(a.size(), Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
    double sum = 0.0;
    for (int y = 0; y < a.height(); ++y) {
        for (int x = 0; x < a.width(); ++x)
            sum += std::abs(qGray(a.pixel(x, y)) - qGray(other.pixel(x, y)));
    }
    return sum / (a.width() * a.height());
}

} // namespace

// Plots keep their size beside the rest of the view on devices of every resolution.
TEST_F(WindowTest, PicturesLookLikeTheScreen) {
    QWidget& plot = view("ports");
    QTest::qWait(200); // layout and queued painting
    const QImage screen = plot.grab().toImage();
    QImage blank(screen.size(), QImage::Format_RGB32);
    blank.fill(Palette::of(plot).paper);
    const double most = 0.7 * difference(screen, blank); // other smoothing of letters and hairlines
    const QString stem = fileIn(QStringLiteral("ports"));
    for (const char* ending : {".png", ".svg", ".pdf"})
        ASSERT_TRUE(writePicture(plot, QStringLiteral("Ports"), stem + QLatin1String(ending)));
    EXPECT_LT(difference(screen, QImage(stem + ".png")), most);
    QImage drawn = blank;
    QPainter painter(&drawn);
    QSvgRenderer(stem + ".svg").render(&painter);
    painter.end();
    EXPECT_LT(difference(screen, drawn), most);
    ASSERT_EQ(QProcess::execute(QStringLiteral("pdftoppm"),
                                {"-r", "96", "-png", "-singlefile", stem + ".pdf", stem + "-page"}),
              0);
    EXPECT_LT(difference(screen, QImage(stem + "-page.png")), most);
}

TEST_F(WindowTest, PictureIsWrittenAsPngSvgAndPdf) {
    QWidget& plot = view("ports");
    for (const char* ending : {"png", "svg", "pdf"}) {
        const QString file = fileIn(QStringLiteral("ports.") + QLatin1String(ending));
        ASSERT_TRUE(writePicture(plot, QStringLiteral("Ports"), file));
        QFile written(file);
        ASSERT_TRUE(written.open(QIODevice::ReadOnly));
        const QByteArray bytes = written.readAll();
        EXPECT_GT(bytes.size(), 4000) << ending;
        const QByteArray start = bytes.left(400);
        EXPECT_TRUE(start.contains("PNG") || start.contains("<svg") || start.contains("%PDF"))
            << ending;
    }
    // Twice the resolution of the screen.
    EXPECT_EQ(QImage(fileIn("ports.png")).size(), plot.size() * 2);
    // Lines stay lines: curves of a scalable drawing are no bitmap.
    QFile svg(fileIn("ports.svg"));
    ASSERT_TRUE(svg.open(QIODevice::ReadOnly));
    EXPECT_GT(svg.readAll().count("<polyline"), 2);
}

TEST_F(WindowTest, LiftOffIsMarkedInTheStressPlot) {
    // At a speed far beyond its lift-off speed the roller of an open track leaves it.
    Edit edit;
    edit.changes = {{"/running/speed_rpm", 9000.0}, {"/running/motored", true}};
    ASSERT_TRUE(window_->document().apply(edit).empty());
    ASSERT_TRUE(waitUntilSolved());
    auto& stress = dynamic_cast<StressPlot&>(view("stress"));
    EXPECT_FALSE(stress.liftOff(End::inlet).empty());
    EXPECT_FALSE(stress.liftOff(End::exhaust).empty());
}

TEST_F(WindowTest, BaselineStandsBehindThePlots) {
    auto& ports = dynamic_cast<TurnPlot&>(view("ports"));
    EXPECT_EQ(ports.curves().front().baselineValues.size(), 0);
    window_->keepBaseline();
    EXPECT_GT(ports.curves().front().baselineValues.size(), 700);
}

TEST_F(WindowTest, ABaselineWithOtherLobesIsLaidOverCycleDegrees) {
    auto& ports = dynamic_cast<PortPlot&>(view("ports"));
    window_->keepBaseline();
    // The same lobes, stretched from two on a turn to one.
    design::Design wide = window_->document().design();
    const auto oneLobe = [](motion::Pattern& track) {
        track.lobes = 1;
        for (auto& segment : std::get<motion::SegmentShape>(track.shape).segments)
            segment.span *= 2.0;
    };
    oneLobe(wide.tracks.inlet);
    if (wide.tracks.exhaust)
        oneLobe(*wide.tracks.exhaust);
    wide.mechanism.exhaustLead *= 2.0;
    ASSERT_TRUE(window_->document().apply({QStringLiteral("one lobe"), {}, wide, {}}).empty());
    ASSERT_TRUE(waitUntilSolved());
    const auto furthest = [&] {
        const Curve& curve = ports.curves().front();
        double apart = 0.0;
        for (Eigen::Index i = 0; i < curve.theta.size(); ++i) {
            apart = std::max(
                apart, std::abs(curve.values[i] - valueAt(curve.baselineTheta, curve.baselineValues,
                                                          curve.theta[i])));
        }
        return apart;
    };
    const double largest = ports.curves().front().values.maxCoeff();
    EXPECT_GT(furthest(), 0.5 * largest);
    ports.setBaselineByCycle(true);
    EXPECT_LT(furthest(), 0.01 * largest);
    EXPECT_EQ(ports.state(), QStringLiteral("baseline-by-cycle"));
}

// Unequal lobes: a cycle lasts from the last port closing of the one before to its own, wherever
// the nearest inner dead centre is.
TEST(CyclePlace, ChangesAtTheLastPortClosing) {
    const auto solution = lobewright::test::solved(lobewright::test::sample("unequal-lobes"));
    const auto& cycles = solution.timing.cycles();
    ASSERT_EQ(cycles.size(), 2U);
    for (size_t i = 0; i < 2; ++i) {
        const double closing = cycles[i].lastClosing();
        for (const double turns : {-1.0, 0.0, 1.0}) {
            const double at = closing + turns * solution.pair.period();
            const CyclePlace before = cyclePlace(solution.timing, at - 1e-6);
            EXPECT_EQ(before.cycle, i);
            EXPECT_NEAR(before.offset, closing - 1e-6 - cycles[i].centres.idc, 1e-9);
            EXPECT_EQ(cyclePlace(solution.timing, at + 1e-6).cycle, 1 - i);
        }
        // The scavenging of a cycle is its own although the next inner dead centre is nearer.
        const double scavenging = 0.5 * (cycles[i].inletOpens + cycles[i].inletCloses);
        EXPECT_EQ(cyclePlace(solution.timing, scavenging).cycle, i);
    }
}
