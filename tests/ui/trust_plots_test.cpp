// A part of a plot that somebody chose stays; the engine shown decides the rest; reasons are told.
#include "core/editing/knot_edits.h"
#include "core/units.h"
#include "tests/ui/desktop_fixture.h"
#include "ui/base/units.h"
#include "ui/plots/base/kept_view.h"
#include "ui/plots/study/contact_range_box.h"
#include "ui/plots/study/torque_curve.h"
#include "ui/plots/turn/pressure_volume_plot.h"
#include "ui/window/figures_bar.h"
#include "ui/window/result_card.h"
#include "ui/window/views.h"

#include <QApplication>
#include <QLabel>
#include <QTest>
#include <QToolButton>
#include <QWheelEvent>

namespace lobewright::ui::test {
namespace {

void zoom(QCustomPlot& plot) {
    const QPointF at = plot.axisRect()->rect().center();
    QWheelEvent wheel(at, plot.mapToGlobal(at), {}, {0, 240}, Qt::NoButton, Qt::NoModifier,
                      Qt::NoScrollPhase, false);
    QApplication::sendEvent(&plot, &wheel);
}

class Plots : public WindowTest {
  protected:
    bool change(const char* path, double value) {
        Edit edit;
        edit.changes = {{path, value}};
        return window_->document().apply(edit).empty() && waitUntilSolved();
    }
    /// With the present solution and baseline, though it is out of sight.
    PressureVolumePlot& loop() {
        const Views::View& shown = *window_->views().find(QStringLiteral("pressure-volume"));
        window_->views().refresh(shown);
        return dynamic_cast<PressureVolumePlot&>(*shown.widget);
    }
    TorqueCurve& torqueCurve() {
        window_->arrange(QStringLiteral("performance"));
        auto* curve = window_->findChild<TorqueCurve*>();
        EXPECT_TRUE(QTest::qWaitFor([&] { return curve->isVisible(); }));
        return *curve;
    }
};

TEST_F(Plots, AChosenPartStaysWhenTheDesignChanges) {
    loop().resize(500, 400);
    loop().setViewport(loop().rect()); // out of sight it is not told of its size
    loop().replot();
    zoom(loop());
    const QCPRange volumes = loop().xAxis->range(), pressures = loop().yAxis->range();
    ASSERT_TRUE(change("/gas/burn/start_deg", -6.0));
    EXPECT_EQ(loop().xAxis->range(), volumes);
    EXPECT_EQ(loop().yAxis->range(), pressures);
    QTest::mouseDClick(&loop(), Qt::LeftButton, {}, loop().axisRect()->rect().center());
    EXPECT_GT(loop().xAxis->range().size(), volumes.size());

    TorqueCurve& curve = torqueCurve();
    ASSERT_TRUE(QTest::qWaitFor([&] { return !curve.isBusy() && !curve.points().empty(); }, 60000));
    zoom(curve.plot());
    const QCPRange speeds = curve.plot().xAxis->range(), torques = curve.plot().yAxis->range();
    ASSERT_TRUE(change("/gas/burn/start_deg", -8.0));
    ASSERT_TRUE(QTest::qWaitFor([&] { return !curve.isBusy(); }, 60000));
    EXPECT_EQ(curve.plot().xAxis->range(), speeds);
    EXPECT_EQ(curve.plot().yAxis->range(), torques);
}

TEST_F(Plots, ABaselineDoesNotPressTheEnginesOwnCurveFlat) {
    const double own = loop().yAxis->range().size();
    ASSERT_TRUE(change("/gas/supply/pressure_bar", 4.0));
    const double charged = loop().yAxis->range().size();
    ASSERT_GT(charged, 2.0 * own);
    window_->keepBaseline();
    ASSERT_TRUE(change("/gas/supply/pressure_bar", number("/gas/exhaust_pressure_bar") + 0.08));
    EXPECT_LT(loop().yAxis->range().size(), 0.7 * charged);
}

// Rounded at their own scale, without what arithmetic leaves of nothing, and with words where a
// minus sign would only puzzle.
TEST_F(Plots, NumbersSpeakAtTheirOwnScale) {
    EXPECT_EQ(quantityText(2.3e-13, QStringLiteral("N·m")),
              quantityText(0.0, QStringLiteral("N·m")));
    EXPECT_FALSE(quantityText(1e-10, QStringLiteral("J")).contains('e'));
    motion::KnotShape knots;
    knots.knots = {{12.3456789012 * units::degree, 1.602042e-5 * units::millimetre, {}}};
    EXPECT_EQ(editing::readable(knots).knots.front().lift / units::millimetre, 2e-5);
    Edit edit;
    edit.changes = {{"/running/motored", true}};
    ASSERT_TRUE(window_->document().apply(edit).empty());
    ASSERT_TRUE(waitUntilSolved());
    QStringList told;
    for (const auto* card : window_->findChild<FiguresBar*>()->findChildren<ResultCard*>())
        told << card->name() + ' ' + card->value();
    const QString all = told.join(QLatin1Char('|'));
    EXPECT_TRUE(all.contains("Driven by") && all.contains("to turn")) << all.toStdString();
    EXPECT_FALSE(all.contains("none N") || all.contains(QStringLiteral("−0.0")))
        << all.toStdString();
}

TEST(ContentRange, TakesOfOthersWhatLiesNearItsOwn) {
    const QCPRange own(0.0, 100.0);
    EXPECT_EQ(contentRange(own, QCPRange(-10.0, 110.0)), QCPRange(-10.0, 110.0));
    EXPECT_EQ(contentRange(own, QCPRange(20.0, 900.0)), QCPRange(0.0, 125.0));
    EXPECT_EQ(contentRange(own, QCPRange(-500.0, -400.0)), QCPRange(-25.0, 100.0));
    EXPECT_EQ(contentRange({}, QCPRange(1.0, 2.0)), QCPRange(1.0, 2.0));
    EXPECT_FALSE(contentRange({}, {}));
}

TEST_F(Plots, APointThatCannotRunSaysWhyUnderThePointer) {
    TorqueCurve& curve = torqueCurve();
    const double speed = number("/running/speed_rpm");
    curve.setRange(std::pair(0.5 * speed, 12.0 * speed));
    ASSERT_TRUE(QTest::qWaitFor([&] { return !curve.isBusy() && !curve.beyond().empty(); }, 60000));
    const auto& [place, why] = *curve.beyond().rbegin();
    auto& plot = curve.plot();
    QTest::mouseMove(&plot, QPoint(static_cast<int>(plot.xAxis->coordToPixel(place)),
                                   plot.axisRect()->center().y()));
    ASSERT_TRUE(QTest::qWaitFor([&] { return plot.toolTip().contains(why); }));
    QTest::mouseMove(&plot, QPoint(static_cast<int>(plot.xAxis->coordToPixel(speed)),
                                   plot.axisRect()->center().y()));
    EXPECT_TRUE(QTest::qWaitFor([&] { return plot.toolTip().isEmpty(); }));
}

TEST_F(Plots, ContactSpeedsAreFoundBesideTheWindowAndMarked) {
    TorqueCurve& curve = torqueCurve();
    const double speed = number("/running/speed_rpm");
    curve.setRange(std::pair(0.5 * speed, 6.0 * speed));
    ASSERT_TRUE(QTest::qWaitFor([&] { return !curve.isBusy() && !curve.points().empty(); }, 60000));
    ContactRangeBox& box = curve.contact();
    QTest::mouseClick(box.findChild<QToolButton*>("findContact"), Qt::LeftButton);
    EXPECT_TRUE(box.isBusy());
    ASSERT_TRUE(QTest::qWaitFor([&] { return box.found().has_value(); }, 60000));
    const auto& found = *box.found();
    ASSERT_FALSE(found.kept.empty());
    EXPECT_TRUE(found.kept.back().above) << "six times the speed lifts the rollers off";
    EXPECT_EQ(curve.marks().back(), found.kept.back().to);
    EXPECT_TRUE(box.text().contains(QStringLiteral("keep contact"))) << box.text().toStdString();
    const auto tip = box.findChild<QLabel*>("contactSpeeds")->toolTip();
    EXPECT_TRUE(tip.contains(QStringLiteral("inertia exceeds"))) << tip.toStdString();
    ASSERT_TRUE(change("/gas/burn/start_deg", -6.0));
    EXPECT_FALSE(box.found()) << "of another design";
    EXPECT_TRUE(curve.marks().empty());
}

} // namespace
} // namespace lobewright::ui::test
