#include "core/study/operating_points.h"
#include "core/units.h"
#include "tests/ui/desktop_fixture.h"
#include "tests/ui/drawn_text.h"
#include "ui/base/core_text.h"
#include "ui/base/figure_text.h"
#include "ui/panels/figures_panel.h"
#include "ui/plots/study/comparison_pane.h"
#include "ui/plots/study/comparison_table.h"
#include "ui/window/pane_grid.h"

#include <QApplication>
#include <QComboBox>
#include <QElapsedTimer>
#include <QHeaderView>
#include <QLabel>
#include <QProgressBar>
#include <QSignalSpy>
#include <QTest>
#include <QToolButton>

#include <cmath>

using namespace lobewright;
using namespace lobewright::ui;
using namespace lobewright::ui::test;

namespace {

constexpr double rpm = units::revPerMinute;

/// The window with the comparison in place of the claims.
class ComparisonTest : public WindowTest {
  protected:
    void SetUp() override {
        WindowTest::SetUp();
        ASSERT_TRUE(QTest::qWaitForWindowActive(window_.get()));
        QTest::keyClick(window_.get(), Qt::Key_5, Qt::ControlModifier);
        window_->findChild<PaneGrid*>()->reveal(QStringLiteral("comparison"));
        ASSERT_TRUE(QTest::qWaitFor([this] { return pane().isVisible(); }));
        QTest::qWait(50); // the panes take their places
        ASSERT_TRUE(waitUntilCompared());
    }

    ComparisonPane& pane() { return dynamic_cast<ComparisonPane&>(view("comparison")); }
    QToolButton& cancel() {
        for (auto* button : pane().findChildren<QToolButton*>()) {
            if (button->text() == QLatin1String("Cancel"))
                return *button;
        }
        throw std::runtime_error("no cancel");
    }
    bool waitUntilCompared() {
        return QTest::qWaitFor([this] { return !pane().isBusy(); }, 120000);
    }

    /// Chooses by key, as a person without a mouse does.
    void choose(const QString& box, int row) {
        for (auto* one : pane().findChildren<QComboBox*>()) {
            if (one->accessibleName() != box)
                continue;
            one->setFocus();
            QTest::keyClick(one, Qt::Key_Home);
            for (int i = 0; i < row; ++i)
                QTest::keyClick(one, Qt::Key_Down);
            return;
        }
        throw std::runtime_error("no such choice");
    }

    /// Text of the table in the line of a figure.
    QString cell(const study::Comparison& like, const char* name, int engine) {
        const auto& figures = like.engines.front().figures;
        const auto line = std::ranges::find(figures, name, &solution::Figure::name);
        return pane().table().item(static_cast<int>(line - figures.begin()), engine)->text();
    }
    study::Comparison computed(study::Basis basis) {
        SilentMonitor monitor;
        return *study::compare(window_->document().design(), basis, monitor);
    }
};

} // namespace

TEST_F(ComparisonTest, TableHasEveryEngineAndFigureOfTheStudy) {
    const study::Comparison expected = computed(study::Basis::displacement);
    ComparisonTable& table = pane().table();
    ASSERT_EQ(table.columnCount(), 5);
    ASSERT_EQ(table.rowCount(), static_cast<int>(expected.engines.front().figures.size()));
    for (int column = 0; column < 5; ++column) {
        const auto& engine = expected.engines[static_cast<std::size_t>(column)];
        ASSERT_TRUE(engine.problem.empty());
        for (int row = 0; row < table.rowCount(); ++row) {
            const auto& figure = engine.figures[static_cast<std::size_t>(row)];
            EXPECT_EQ(table.item(row, column)->text(),
                      !figure.value && figure.note == study::withinTheFit ? coreText(figure.note)
                      : !figure.value                                     ? QStringLiteral("–")
                      : figure.isYesNo                                    ? figureText(figure)
                                       : figureText(*figure.value))
                << figure.name << " of " << study::label(engine.engine).text;
        }
    }
}

TEST_F(ComparisonTest, EveryQuantityIsDrawnForAllFiveEngines) {
    for (std::size_t i = 0; i < comparedQuantities().size(); ++i) {
        choose("Shown", static_cast<int>(i));
        EXPECT_EQ(pane().quantity(), comparedQuantities()[i].quantity);
        ASSERT_TRUE(waitUntilCompared());
        ComparisonPlot& plot = pane().plot();
        ASSERT_EQ(plot.plottableCount(), 5) << comparedQuantities()[i].key;
        for (int engine = 0; engine < 5; ++engine) {
            const auto* curve = dynamic_cast<QCPCurve*>(plot.plottable(engine));
            ASSERT_TRUE(curve);
            EXPECT_GE(curve->data()->size(), isSpeedCurve(pane().quantity()) ? 5 : 300);
            for (const QCPCurveData& point : *curve->data())
                ASSERT_TRUE(std::isfinite(point.key) && std::isfinite(point.value));
        }
    }
}

// Beside their lines where there is room, else in a legend below.
TEST_F(ComparisonTest, EnginesAreNamedBesideTheirCurves) {
    choose("Shown", 0);
    ASSERT_TRUE(waitUntilCompared());
    ComparisonPlot& plot = pane().plot();
    plot.setParent(window_.get());
    plot.setVisible(true);
    const auto named = [&] {
        QStringList words;
        for (const DrawnText& text : drawnText(plot))
            words << text.text;
        return words;
    };
    for (const int width : {1000, 330}) {
        plot.setGeometry(0, 0, width, 420);
        QTest::qWait(50);
        EXPECT_EQ(plot.legend->itemCount(), width == 1000 ? 0 : 5);
        for (int engine = 0; engine < 5; ++engine) {
            const QString name = coreText(study::label(static_cast<study::Compared>(engine)));
            EXPECT_TRUE(named().contains(name)) << name.toStdString() << " at " << width;
        }
    }
}

TEST_F(ComparisonTest, ChoiceOfWhatIsMadeEqualReachesTheTable) {
    // Mean piston speeds of the design and of a four-stroke with as many cylinders of another
    // stroke are equal only where that is asked for.
    const study::Comparison like = computed(study::Basis::displacement);
    const char* name = "mean_piston_speed_m_per_s";
    EXPECT_NE(cell(like, name, 3), cell(like, name, 0));
    choose("Made equal", 2);
    EXPECT_EQ(pane().basis(), study::Basis::pistonSpeed);
    ASSERT_TRUE(waitUntilCompared());
    EXPECT_EQ(cell(like, name, 3), cell(like, name, 0));
    EXPECT_EQ(cell(like, "displacement_cm3", 3), cell(like, "displacement_cm3", 0));
}

TEST_F(ComparisonTest, CurvesAgainstSpeedHoldTheTorqueOfSingleComparisons) {
    choose("Shown", 7);
    ASSERT_TRUE(waitUntilCompared());
    const auto* cam = dynamic_cast<QCPCurve*>(pane().plot().plottable(0));
    ASSERT_TRUE(cam);
    ASSERT_EQ(cam->data()->size(), 9);
    const QCPCurveData& first = *cam->data()->constBegin();
    design::Design slow = window_->document().design();
    slow.running.speed = first.key * rpm;
    SilentMonitor monitor;
    const auto single = study::compare(slow, study::Basis::displacement, monitor);
    ASSERT_TRUE(single);
    const double torque = *single->engines[0].figure("brake_torque_Nm")->value;
    EXPECT_NEAR(first.value, torque, 1e-3 * std::abs(torque));
    // Power is torque by speed.
    QVector<double> torques;
    for (const QCPCurveData& point : *cam->data())
        torques << point.value;
    choose("Shown", 8);
    ASSERT_TRUE(waitUntilCompared());
    const auto* power = dynamic_cast<QCPCurve*>(pane().plot().plottable(0));
    int i = 0;
    for (const QCPCurveData& point : *power->data()) {
        EXPECT_NEAR(point.value, torques[i] * point.key * rpm / units::kilowatt,
                    1e-3 * point.value);
        ++i;
    }
}

TEST_F(ComparisonTest, WindowAnswersWhileEnginesAreCompared) {
    // Own estimate of what is felt as waiting: half a second, with every processor at work.
    choose("Shown", 7);
    ASSERT_TRUE(pane().isBusy());
    QElapsedTimer since;
    since.start();
    qint64 longest = 0;
    QTimer ticks;
    QObject::connect(&ticks, &QTimer::timeout,
                     [&] { longest = std::max(longest, since.restart()); });
    ticks.start(10);
    ASSERT_TRUE(waitUntilCompared());
    EXPECT_LT(longest, 500) << "ms without an answer";
}

TEST_F(ComparisonTest, CancelStopsAndKeepsWhatWasShown) {
    const QString before = pane().table().text();
    QSignalSpy shown(pane().findChild<QProgressBar*>(), &QProgressBar::valueChanged);
    choose("Shown", 8);
    ASSERT_TRUE(pane().isBusy());
    ASSERT_TRUE(QTest::qWaitFor([&] { return shown.count() > 0; }, 30000));
    ASSERT_TRUE(cancel().isVisible());
    QTest::mouseClick(&cancel(), Qt::LeftButton);
    EXPECT_FALSE(pane().isBusy());
    EXPECT_FALSE(cancel().isVisible());
    QTest::qWait(1500);
    EXPECT_EQ(pane().table().text(), before);
    // The choices say again what is shown.
    EXPECT_EQ(pane().quantity(), ComparedQuantity::torque);
    EXPECT_TRUE(pane().table().isEnabled());
    // The next wish is served.
    choose("Shown", 0);
    ASSERT_TRUE(waitUntilCompared());
    EXPECT_EQ(pane().table().text(), before);
}

TEST_F(ComparisonTest, TheTableSaysWhatItIsOfUntilTheNewOneIsThere) {
    const auto* heading = pane().findChild<QLabel*>("comparisonHeading");
    ASSERT_TRUE(heading && heading->isVisible());
    EXPECT_TRUE(heading->text().contains(QLatin1String("equal displacement, equal shaft speed")));
    const QPoint place = cancel().mapTo(&pane(), QPoint());
    choose("Made equal", 2);
    ASSERT_TRUE(pane().isBusy());
    EXPECT_TRUE(heading->text().contains(QLatin1String("until")));
    EXPECT_TRUE(heading->text().contains(QLatin1String("equal displacement, equal shaft speed")));
    EXPECT_FALSE(pane().table().isEnabled());
    ASSERT_TRUE(waitUntilCompared());
    EXPECT_TRUE(heading->text().contains(QLatin1String("equal mean piston speed")));
    EXPECT_FALSE(heading->text().contains(QLatin1String("until")));
    EXPECT_TRUE(pane().table().isEnabled());
    // Nothing moves to where Cancel was.
    const QWidget* there = pane().childAt(place + QPoint(3, 3));
    EXPECT_FALSE(qobject_cast<const QComboBox*>(there));
    for (const auto* box : pane().findChildren<QComboBox*>())
        EXPECT_LT(box->mapTo(&pane(), QPoint(box->width(), 0)).x(), place.x() + 1);
}

TEST_F(ComparisonTest, FlagsReadYesAndNo) {
    const study::Comparison like = computed(study::Basis::displacement);
    EXPECT_EQ(cell(like, "supply_power_counted", 0), QStringLiteral("yes"));
}

TEST_F(ComparisonTest, EnlargedItShowsAllEnginesAndWholeNames) {
    ComparisonTable& table = pane().table();
    QWidget alone;
    alone.resize(760, 600);
    table.setParent(&alone);
    table.setGeometry(alone.rect());
    alone.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&alone));
    QTest::qWait(20);
    EXPECT_LE(table.columnViewportPosition(4) + table.columnWidth(4), table.viewport()->width());
    for (int row = 0; row < table.rowCount(); ++row) {
        const QRect needed = table.fontMetrics().boundingRect(
            QRect(0, 0, table.verticalHeader()->width() - 8, 1000), Qt::TextWordWrap,
            table.verticalHeaderItem(row)->text());
        EXPECT_LE(needed.height(), table.rowHeight(row)) << row;
    }
    table.setParent(&pane());
}

TEST_F(ComparisonTest, NewestEditWins) {
    const study::Comparison like = computed(study::Basis::displacement);
    choose("Shown", 7); // takes long
    for (const double speed : {820.0, 940.0, 1130.0}) {
        Edit edit;
        edit.changes = {{"/running/speed_rpm", speed}};
        ASSERT_TRUE(window_->document().apply(edit).empty());
        ASSERT_TRUE(waitUntilSolved());
        QTest::qWait(300);
    }
    ASSERT_TRUE(waitUntilCompared());
    EXPECT_EQ(cell(like, "shaft_speed_rpm", 0), figureText(1130.0));
}

TEST_F(ComparisonTest, AReferenceThatCannotRunSaysWhyAndLeavesTheOthers) {
    Edit edit;
    edit.changes = {{"/reference/rod_ratio", 0.9}, {"/friction/guide_coefficient", 0.9}};
    const Problems problems = window_->document().apply(edit);
    ASSERT_TRUE(problems.empty()) << problems.front().path << problems.front().message.english();
    ASSERT_TRUE(waitUntilSolved());
    ASSERT_TRUE(waitUntilCompared());
    EXPECT_EQ(pane().plot().plottableCount(), 3);
    EXPECT_TRUE(pane().message().contains(QLatin1String("blocks")))
        << pane().message().toStdString();
}

TEST_F(ComparisonTest, TableIsCopiedForSpreadsheets) {
    auto& table = pane().table();
    table.setFocus();
    QTest::keyClick(&table, Qt::Key_C, Qt::ControlModifier);
    const QStringList lines = QApplication::clipboard()->text().split(QLatin1Char('\n'));
    ASSERT_EQ(lines.size(), table.rowCount() + 1);
    for (const QString& line : lines)
        EXPECT_EQ(line.count(QLatin1Char('\t')), 5) << line.toStdString();
}

TEST_F(ComparisonTest, ChoicesAreKeptBetweenRuns) {
    choose("Made equal", 1);
    choose("Shown", 3);
    window_->close();
    window_ = std::make_unique<MainWindow>(MainWindow::Options{fileIn("recovery"), false});
    EXPECT_EQ(pane().basis(), study::Basis::displacedVolume);
    EXPECT_EQ(pane().quantity(), ComparedQuantity::pressure);
}

TEST_F(ComparisonTest, HiddenComparisonDoesNoWork) {
    QTest::keyClick(window_.get(), Qt::Key_1, Qt::ControlModifier);
    ASSERT_FALSE(pane().isVisible());
    Edit edit;
    edit.changes = {{"/running/speed_rpm", 900.0}};
    ASSERT_TRUE(window_->document().apply(edit).empty());
    ASSERT_TRUE(waitUntilSolved());
    EXPECT_FALSE(pane().isBusy());
}
