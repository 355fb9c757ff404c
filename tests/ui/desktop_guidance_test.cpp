#include "core/editing/knot_edits.h"
#include "core/motion/lift_curve.h"
#include "core/study/speed_sweep.h"
#include "core/units.h"
#include "tests/ui/desktop_fixture.h"
#include "ui/document/samples.h"
#include "ui/panels/figures_panel.h"
#include "ui/panels/number_panel.h"
#include "ui/panels/working_view.h"
#include "ui/plots/base/custom_plot.h"
#include "ui/plots/contact/stress_plot.h"
#include "ui/plots/study/supply_strip.h"
#include "ui/plots/study/torque_curve.h"
#include "ui/plots/turn/timing_circle.h"
#include "ui/scene/walk/student_walk.h"
#include "ui/window/pane.h"
#include "ui/window/view_themes.h"

#include <QLabel>
#include <QMenu>
#include <QRegularExpression>
#include <QTest>
#include <QTextBrowser>
#include <QToolButton>
#include <QUrl>

#include <cmath>
#include <set>

using namespace lobewright;
using namespace lobewright::editing;
using namespace lobewright::ui;
using namespace lobewright::ui::test;

// ---- the walk through a cycle ----

TEST_F(WindowTest, WalkFollowsNextEventAndBeginsAnewWithAnotherDesign) {
    window_->arrange(QStringLiteral("student"));
    auto& walk = dynamic_cast<StudentWalk&>(view(QStringLiteral("walk")));
    walk.setTravelTime(0.0);
    walk.start();
    ASSERT_EQ(walk.step(), 0);
    QAction* next = nullptr;
    for (QAction* action : window_->findChildren<QAction*>()) {
        if (action->shortcut() == QKeySequence(Qt::Key_F8))
            next = action;
    }
    ASSERT_NE(next, nullptr);
    std::set<int> told;
    for (int i = 0; i < 8; ++i) {
        next->trigger();
        EXPECT_EQ(walk.beyond(), 0.0) << "step " << walk.step();
        told.insert(walk.step());
    }
    EXPECT_GE(told.size(), 5U);
    ASSERT_TRUE(window_->saveTo(fileIn(QStringLiteral("other.lobewright.json"))));
    ASSERT_TRUE(window_->openFile(fileIn(QStringLiteral("other.lobewright.json"))));
    EXPECT_EQ(walk.step(), -1);
}

// ---- menus and panes ----

TEST_F(WindowTest, EveryViewStandsInOneThemeOfTheMenus) {
    QStringList listed;
    for (const ViewTheme& theme : viewThemes()) {
        EXPECT_LE(theme.views.size(), 12);
        listed += theme.views;
    }
    for (const auto& view : window_->views().all())
        EXPECT_EQ(listed.count(view.key), 1) << view.key.toStdString();
    EXPECT_EQ(listed.size(), static_cast<qsizetype>(window_->views().all().size()));
    const auto* menu = window_->findChild<QMenu*>(QStringLiteral("everyView"));
    EXPECT_EQ(menu->actions().size(), static_cast<qsizetype>(viewThemes().size()));
}

TEST_F(WindowTest, EnlargedPaneOffersTheWayBack) {
    Pane* pane = window_->findChild<Pane*>();
    QToolButton* button = nullptr;
    for (auto* candidate : pane->findChildren<QToolButton*>(Qt::FindDirectChildrenOnly)) {
        if (candidate->text() == QLatin1String("Enlarge"))
            button = candidate;
    }
    ASSERT_NE(button, nullptr);
    QTest::mouseClick(button, Qt::LeftButton);
    EXPECT_EQ(button->text(), QStringLiteral("Back to all panes"));
    QTest::mouseClick(button, Qt::LeftButton);
    EXPECT_EQ(button->text(), QStringLiteral("Enlarge"));
}

TEST_F(WindowTest, DurabilityAndBalanceShowsTheShakingForce) {
    window_->arrange(QStringLiteral("durability"));
    EXPECT_TRUE(view(QStringLiteral("balance")).isVisible());
}

// ---- studies ----

namespace {

TorqueCurve& shownCurve(MainWindow& window) {
    window.arrange(QStringLiteral("performance"));
    return dynamic_cast<TorqueCurve&>(*window.views().find(QStringLiteral("torque-curve"))->widget);
}

} // namespace

TEST_F(WindowTest, TorqueCurveIsHatchedWhereARollerLiftsOff) {
    TorqueCurve& curve = shownCurve(*window_);
    const double speed = number("/running/speed_rpm");
    curve.setRange(std::pair(0.5 * speed, 12.0 * speed));
    ASSERT_TRUE(QTest::qWaitFor([&] { return !curve.isBusy() && !curve.points().empty(); }, 60000));
    const auto& names = study::speedSweepFigures();
    const auto column = std::ranges::find(names, "keeps_contact") - names.begin();
    int lifted = 0;
    for (const auto& [parameter, point] : curve.points()) {
        if (point.values[static_cast<size_t>(column)] != 0.0)
            continue;
        ++lifted;
        ASSERT_TRUE(curve.beyond().contains(parameter)) << parameter;
        EXPECT_TRUE(curve.beyond().at(parameter).contains(QStringLiteral("lifts off")));
    }
    EXPECT_GT(lifted, 0);
    EXPECT_TRUE(curve.readoutText().contains(QStringLiteral("hatched: a roller lifts off")));
    int hatched = 0;
    for (int i = 0; i < curve.plot().itemCount(); ++i)
        hatched += qobject_cast<QCPItemRect*>(curve.plot().item(i)) ? 1 : 0;
    EXPECT_GT(hatched, 0);
}

TEST_F(WindowTest, TorqueCurveTellsTheTruePresentSpeedAndItsValues) {
    TorqueCurve& curve = shownCurve(*window_);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !curve.isBusy() && !curve.points().empty(); }, 60000));
    const QString told = curve.readoutText();
    EXPECT_TRUE(told.contains(
        QStringLiteral("now at %1").arg(QString::number(number("/running/speed_rpm")))))
        << told.toStdString();
    const double torque = *window_->solution()->figure("brake_torque_Nm")->value;
    EXPECT_TRUE(told.contains(QLocale().toString(torque, 'f', 1).left(4))) << told.toStdString();
}

TEST_F(WindowTest, AStudyCountsItsPointsAndCanBeStopped) {
    TorqueCurve& curve = shownCurve(*window_);
    auto* cancel = curve.findChild<QToolButton*>();
    ASSERT_NE(cancel, nullptr);
    curve.setRange(std::pair(300.0, 301.0));
    ASSERT_TRUE(curve.isBusy());
    EXPECT_TRUE(cancel->isVisible());
    QTest::mouseClick(cancel, Qt::LeftButton);
    EXPECT_FALSE(curve.isBusy());
    EXPECT_FALSE(cancel->isVisible());
    bool said = false;
    for (const auto* label : curve.findChildren<QLabel*>())
        said = said || label->text().startsWith(QStringLiteral("stopped"));
    EXPECT_TRUE(said);
}

// ---- words of the diagrams ----

TEST_F(WindowTest, TheWorkOfTheLoopIsANumberThatLeadsToTheLoop) {
    window_->arrange(QStringLiteral("reviewer"));
    Q_EMIT window_->figures().workingWanted(QStringLiteral("imep_bar"));
    const QString text = window_->working().text();
    EXPECT_FALSE(text.contains(QStringLiteral("∮(p, V)"))) << text.toStdString();
    const auto match = QRegularExpression(QStringLiteral("∮p dV = ([0-9.]+) J")).match(text);
    ASSERT_TRUE(match.hasMatch()) << text.toStdString();
    const auto figure = [&](const char* name) { return *window_->solution()->figure(name)->value; };
    const double joules = 0.1 * figure("imep_bar") * figure("swept_volume_cm3") *
                          window_->solution()->pair.cyclesPerTurn();
    EXPECT_NEAR(match.captured(1).toDouble(), joules, 0.01 * joules);
    auto* browser = window_->working().findChild<QTextBrowser*>();
    Q_EMIT browser->anchorClicked(QUrl(QStringLiteral("view:pressure-volume")));
    EXPECT_TRUE(view(QStringLiteral("pressure-volume")).isVisible());
}

TEST_F(WindowTest, EveryEventOfTheTimingDiagramIsSpeltOutUnderThePointer) {
    window_->arrange(QStringLiteral("reviewer"));
    auto& circle = dynamic_cast<TimingCircle&>(view(QStringLiteral("timing")));
    QTest::qWait(100); // for its place in the window
    std::set<QString> found;
    for (int x = 0; x < circle.width(); x += 3) {
        for (int y = 0; y < circle.height(); y += 3) {
            if (const QString text = circle.eventAt(QPointF(x, y)); !text.isEmpty())
                found.insert(text.section(QLatin1Char(','), 0, 0));
        }
    }
    const std::set<QString> wanted = {
        QStringLiteral("EO: exhaust opens"), QStringLiteral("IO: inlet opens"),
        QStringLiteral("EC: exhaust closes"), QStringLiteral("IC: inlet closes"),
        QStringLiteral("IDC: inner dead centre")};
    EXPECT_EQ(found, wanted);
}

TEST_F(WindowTest, AllowableStressStaysInsideTheFrame) {
    auto& stress = dynamic_cast<StressPlot&>(view(QStringLiteral("stress")));
    const auto figure = [&](const char* name) { return *window_->solution()->figure(name)->value; };
    const double allowable =
        figure("contact_safety_inlet") * figure("peak_contact_pressure_inlet_MPa");
    const QCPRange range = stress.canvas().yAxis->range();
    EXPECT_TRUE(range.contains(allowable) || allowable > 2.0 * range.upper)
        << allowable << " in " << range.upper;
}

TEST_F(WindowTest, SupplyStandsInLinesWhereBoxesFindNoRoom) {
    window_->arrange(QStringLiteral("performance"));
    auto& strip = dynamic_cast<SupplyStrip&>(view(QStringLiteral("supply")));
    strip.setFixedWidth(1200);
    EXPECT_FALSE(strip.isStacked());
    strip.setFixedWidth(240);
    EXPECT_TRUE(strip.isStacked());
}

// ---- segments and knots ----

TEST_F(WindowTest, FieldsOfKnotsSayWhatPlotsAddToThem) {
    design::Design design = window_->document().design();
    constexpr double mm = units::millimetre, deg = units::degree;
    motion::KnotShape shape;
    const double period = 360.0 / design.tracks.inlet.lobes;
    for (const auto& [share, lift] : {std::pair(0.0, 0.0), {0.1, 3.0}, {0.5, 30.0}, {0.9, 6.0}})
        shape.knots.push_back({share * period * deg, lift * mm, {}});
    design.tracks.inlet.shape = shape;
    design.tracks.exhaust.reset();
    const double shift = knotShift(design, End::inlet);
    const auto curve = motion::LiftCurve::make(design.tracks.inlet);
    ASSERT_TRUE(curve);
    for (const motion::Knot& knot : shape.knots)
        EXPECT_NEAR(curve->at(knot.angle).y, knot.lift + shift, 1e-9);
    ASSERT_GT(std::abs(shift), 0.01 * mm);
    NumberPanel panel;
    panel.show(design);
    const auto* label = panel.findChild<QLabel*>(QStringLiteral("knotShift"));
    ASSERT_NE(label, nullptr);
    EXPECT_FALSE(label->isHidden());
    EXPECT_TRUE(label->text().contains(QLocale().toString(std::abs(shift) / mm, 'f', 2)))
        << label->text().toStdString();
    panel.show(sampleDesign());
    EXPECT_TRUE(label->isHidden());
}
