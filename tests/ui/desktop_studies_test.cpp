#include "core/study/speed_sweep.h"
#include "tests/places.h"
#include "tests/ui/desktop_fixture.h"
#include "ui/plots/study/compressor_plot.h"
#include "ui/plots/study/phase_plot.h"
#include "ui/plots/study/torque_curve.h"
#include "ui/plots/study/wheel_plot.h"

#include <QSignalSpy>
#include <QTest>

#include <atomic>
#include <thread>

using namespace lobewright;
using namespace lobewright::ui;
using namespace lobewright::ui::test;

namespace {

class StudyWindowTest : public WindowTest {
  protected:
    bool waitFor(const StudyPlot& plot) {
        return QTest::qWaitFor([&] { return !plot.isBusy() && !plot.points().empty(); }, 60000);
    }
};

// The compressor's points over speed are those of single solves, on the lines of its wheel.
TEST_F(StudyWindowTest, CompressorRunsAlongItsOperatingLine) {
    ASSERT_TRUE(window_->openFile(QString::fromStdString(lobewright::test::sourceFolder()) +
                                  "/samples/turbocharged-works-generator.lobewright.json"));
    ASSERT_TRUE(waitUntilSolved());
    auto& map = shown<CompressorPlot>("compressor");
    ASSERT_TRUE(QTest::qWaitFor([&] { return !map.isBusy() && map.points().size() == 13; }, 60000));
    EXPECT_GT(map.plot().lineCount(), 3);
    EXPECT_GE(map.plot().operatingLine().data()->size(), 10);
    EXPECT_EQ(map.plot().surge().data()->size(), map.plot().lineCount());
    ASSERT_EQ(map.plot().points().data()->size(), 1);
    const double ratio = *window_->solution()->figure("compressor_pressure_ratio")->value;
    EXPECT_EQ(map.plot().points().data()->at(0)->value, ratio);
    const double flow = *window_->solution()->figure("compressor_corrected_flow_kg_per_s")->value;
    EXPECT_TRUE(map.readOut(flow, ratio).contains(QStringLiteral("surge margin")));
}

TEST_F(StudyWindowTest, CompressorOfAnotherSupplySaysThatThereIsNone) {
    auto& map = shown<CompressorPlot>("compressor");
    EXPECT_TRUE(map.stateText().contains(QStringLiteral("no compressor wheel")));
    EXPECT_EQ(map.plot().lineCount(), 0);
}

// Another supply has other columns: points that stand under other names are not shown.
TEST_F(StudyWindowTest, TorqueCurveShowsTheSupplyOfTheDesign) {
    auto& curve = shown<TorqueCurve>("torque-curve");
    ASSERT_TRUE(waitFor(curve));
    ASSERT_TRUE(window_->openFile(QString::fromStdString(lobewright::test::sourceFolder()) +
                                  "/samples/harbour-crane-auxiliary.lobewright.json"));
    ASSERT_TRUE(waitUntilSolved());
    curve.setFigures({QStringLiteral("pump_pressure_high_bar")});
    ASSERT_TRUE(waitFor(curve));
    EXPECT_TRUE(curve.readoutText().contains(QStringLiteral("pump chamber")));
    EXPECT_EQ(curve.points().begin()->second.values.size(),
              study::speedSweepFigures(window_->document().design()).size());
}

} // namespace

TEST(StudyRunner, NewestStudyWinsAndEachPointComesBeforeTheTable) {
    StudyRunner runner;
    std::atomic<int> started = 0;
    const auto lasting = [&](int milliseconds) {
        return [&started, milliseconds](Monitor& monitor,
                                        const study::PointSink& sink) -> Result<study::Table> {
            ++started;
            for (int i = 0; i < milliseconds; ++i) {
                if (!monitor.step(0.0, ""))
                    return Problem{"", "cancelled"};
                std::this_thread::sleep_for(std::chrono::milliseconds(1));
            }
            sink(study::Point{});
            return study::Table{};
        };
    };
    QSignalSpy points(&runner, &StudyRunner::pointArrived);
    QSignalSpy tables(&runner, &StudyRunner::finished);
    runner.request(lasting(60000));
    ASSERT_TRUE(QTest::qWaitFor([&] { return started == 1; }));
    runner.request(lasting(60000));
    const quint64 newest = runner.request(lasting(1));
    ASSERT_TRUE(QTest::qWaitFor([&] { return !runner.isBusy(); }, 20000));
    EXPECT_EQ(started, 2);
    ASSERT_EQ(tables.count(), 1);
    EXPECT_EQ(points.count(), 1);
    EXPECT_EQ(tables.front().at(1).toULongLong(), newest);
}

TEST(StudyRunner, CancelledStudyNeverArrives) {
    StudyRunner runner;
    QSignalSpy tables(&runner, &StudyRunner::finished);
    runner.request([](Monitor& monitor, const study::PointSink&) -> Result<study::Table> {
        while (monitor.step(0.0, ""))
            std::this_thread::sleep_for(std::chrono::milliseconds(1));
        return study::Table{};
    });
    QTest::qWait(20);
    runner.cancel();
    EXPECT_FALSE(runner.isBusy());
    QTest::qWait(50);
    EXPECT_EQ(tables.count(), 0);
}

// The window's curve passes through the figures of the window: one computation, two ways to it.
TEST_F(StudyWindowTest, TorqueCurvePassesThroughThePresentDesign) {
    auto& curve = shown<TorqueCurve>("torque-curve");
    const double speed = number("/running/speed_rpm");
    curve.setRange(std::pair(speed, 2.0 * speed));
    ASSERT_TRUE(waitFor(curve));
    const auto& names = study::speedSweepFigures();
    const auto& first = curve.points().begin()->second;
    for (const char* name : {"brake_torque_Nm", "bmep_bar", "brake_efficiency"}) {
        const auto column = static_cast<size_t>(std::ranges::find(names, name) - names.begin());
        const double wanted = *window_->solution()->figure(name)->value;
        EXPECT_NEAR(first.values[column].value(), wanted, 1e-5 * std::abs(wanted)) << name;
    }
}

TEST_F(StudyWindowTest, TorqueCurveFollowsADragAndEndsWithTheNewestDesign) {
    auto& curve = shown<TorqueCurve>("torque-curve");
    ASSERT_TRUE(waitFor(curve));
    const auto torque = [&] { return curve.points().begin()->second.values.front().value(); };
    const double before = torque();
    QSignalSpy edits(&window_->document(), &Document::designChanged);
    Edit edit;
    for (int i = 1; i <= 5; ++i) {
        edit.changes = {{"/gas/lambda", 1.1 + 0.1 * i}};
        edit.mergeKey = QStringLiteral("lambda");
        window_->document().apply(edit);
        QTest::qWait(30);
    }
    window_->document().finishEdit();
    ASSERT_TRUE(waitUntilSolved());
    ASSERT_TRUE(waitFor(curve));
    SilentMonitor silent;
    const auto& design = window_->document().design();
    const auto direct =
        study::speedSweep(design, curve.range().first, curve.range().second, 25, {}, silent);
    ASSERT_TRUE(direct);
    EXPECT_LT(torque(), before); // a leaner charge gives less
    EXPECT_EQ(torque(), direct->points.front().values.front().value());
}

TEST_F(StudyWindowTest, BaselineStandsBehindTheTorqueCurve) {
    auto& curve = shown<TorqueCurve>("torque-curve");
    ASSERT_TRUE(waitFor(curve));
    window_->keepBaseline();
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return !curve.isBusy() && !curve.baselinePoints().empty(); }, 60000));
    EXPECT_EQ(curve.baselinePoints().size(), curve.points().size());
    for (const auto& [speed, point] : curve.points())
        EXPECT_EQ(point.values, curve.baselinePoints().at(speed).values) << speed;
}

TEST_F(StudyWindowTest, AtMostTwoUnitsShareAStudy) {
    auto& curve = shown<TorqueCurve>("torque-curve");
    QMenu menu;
    curve.addOptions(menu);
    QMenu* figures = menu.findChild<QMenu*>();
    for (QAction* action : figures->actions()) {
        if (action->text().contains(QLatin1String("(bar)")) ||
            action->text().contains(QLatin1String("(MPa)")))
            action->setChecked(true);
    }
    EXPECT_FALSE(curve.figures().contains(QStringLiteral("brake_torque_Nm")));
    EXPECT_TRUE(curve.figures().contains(QStringLiteral("bmep_bar")));
    const QString kept = curve.state();
    curve.restoreState(QStringLiteral("brake_power_kW;500;900"));
    EXPECT_EQ(curve.range(), std::pair(500.0, 900.0));
    curve.restoreState(kept);
    EXPECT_TRUE(curve.figures().contains(QStringLiteral("bmep_bar")));
}

// Turning the exhaust track either way from zero lead moves the pistons apart at the shared
// centre: the largest compression ratio stands at no lead (equal symmetric tracks would give
// exactly this; a lead never raises it).
TEST_F(StudyWindowTest, ExhaustLeadNeverRaisesTheCompressionRatio) {
    auto& phase = shown<PhasePlot>("phase-map");
    phase.setRange(std::pair(0.0, 15.0));
    ASSERT_TRUE(waitFor(phase));
    double before = std::numeric_limits<double>::infinity();
    for (const auto& [lead, point] : phase.points()) {
        ASSERT_TRUE(point.values.front()) << lead;
        EXPECT_LE(*point.values.front(), before) << lead;
        before = *point.values.front();
    }
}

TEST_F(StudyWindowTest, PhaseMapTurnsLeadOrAdjuster) {
    auto& phase = shown<PhasePlot>("phase-map");
    phase.setParameter(study::PhaseParameter::adjuster);
    ASSERT_TRUE(waitFor(phase));
    EXPECT_EQ(phase.range(), std::pair(-10.0, 10.0));
    const QString kept = phase.state();
    phase.setParameter(study::PhaseParameter::exhaustLead);
    phase.restoreState(kept);
    EXPECT_EQ(phase.parameter(), study::PhaseParameter::adjuster);
}
