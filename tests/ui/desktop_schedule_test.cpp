// Inputs that follow the speed: the strip below the torque curve, the search, the inputs; and the
// map over speed and load.
#include "core/design/fields.h"
#include "core/design/schedules.h"
#include "core/study/load_map.h"
#include "core/units.h"
#include "tests/ui/desktop_fixture.h"
#include "ui/base/palette.h"
#include "ui/dialogs/schedule_dialog.h"
#include "ui/panels/number_chapter.h"
#include "ui/panels/number_panel.h"
#include "ui/plots/study/load_map_plot.h"
#include "ui/plots/study/schedule_canvas.h"
#include "ui/plots/study/schedule_strip.h"
#include "ui/plots/study/torque_curve.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QSpinBox>
#include <QTableWidget>
#include <QTest>
#include <QToolButton>

#include <cmath>

using namespace lobewright;
using namespace lobewright::ui;
using namespace lobewright::ui::test;

namespace {

const std::string setting = "/mechanism/adjuster/setting_deg";
constexpr double rpm = units::revPerMinute;

class ScheduleTest : public WindowTest {
  protected:
    const design::Design& design() const { return window_->document().design(); }
    /// Three points over the speeds of the torque curve.
    void follow() {
        Edit edit;
        edit.text = QStringLiteral("schedule");
        edit.replacement = design();
        const double own = design().running.speed;
        edit.replacement->schedules = {{setting, {0.5 * own, own, 1.5 * own}, {4.0, 1.0, -2.0}}};
        ASSERT_TRUE(window_->document().apply(edit).empty());
        ASSERT_TRUE(waitUntilSolved());
    }
    ScheduleCanvas& canvas() {
        auto& canvas = shown<TorqueCurve>("torque-curve").strip().canvas();
        QTest::qWait(50); // until both plots were painted with the same speeds
        return canvas;
    }
    const design::Schedule& schedule() const { return design().schedules.at(0); }
    double solvedSetting() const {
        return window_->solution()->pair.mechanism().adjuster.setting / units::degree;
    }
};

} // namespace

TEST_F(ScheduleTest, TheStripIsThereOnlyWhereAnInputFollowsTheSpeed) {
    auto& curve = shown<TorqueCurve>("torque-curve");
    EXPECT_FALSE(curve.strip().isVisible());
    follow();
    EXPECT_TRUE(curve.strip().isVisible());
    EXPECT_EQ(curve.strip().input(), setting);
    EXPECT_NEAR(solvedSetting(), 1.0, 1e-9);
    window_->document().undoStack().undo();
    EXPECT_FALSE(curve.strip().isVisible());
}

TEST_F(ScheduleTest, APointDraggedWithTheMouseIsOneStepOfUndo) {
    follow();
    auto& strip = canvas();
    const auto before = schedule();
    const int steps = window_->document().undoStack().count();
    const QPointF from = *strip.placeOf(1);
    drag(strip, from, from + QPointF(0.0, -12.0));
    ASSERT_TRUE(waitUntilSolved());
    EXPECT_EQ(window_->document().undoStack().count(), steps + 1);
    EXPECT_GT(schedule().value[1], before.value[1]);
    EXPECT_EQ(schedule().speed, before.speed);
    EXPECT_NEAR(solvedSetting(), schedule().value[1], 1e-9); // the engine runs at this very speed
    const QPointF now = *strip.placeOf(1);
    drag(strip, now, now + QPointF(15.0, 0.0));
    EXPECT_GT(schedule().speed[1], before.speed[1]);
    EXPECT_EQ(window_->document().undoStack().count(), steps + 2);
    window_->document().undoStack().undo();
    window_->document().undoStack().undo();
    EXPECT_EQ(schedule(), before);
}

TEST_F(ScheduleTest, APointStaysBetweenItsNeighbours) {
    follow();
    auto& strip = canvas();
    const QPointF from = *strip.placeOf(1);
    drag(strip, from, from + QPointF(strip.width(), 0.0));
    EXPECT_NEAR(schedule().speed[1] / rpm, schedule().speed[2] / rpm - 1.0, 0.01);
    drag(strip, *strip.placeOf(1), QPointF(-50.0, from.y()));
    EXPECT_NEAR(schedule().speed[1] / rpm, schedule().speed[0] / rpm + 1.0, 0.01);
}

TEST_F(ScheduleTest, KeysGoFromPointToPointMoveAddAndRemove) {
    follow();
    auto& strip = canvas();
    ASSERT_TRUE(activate());
    strip.setFocus();
    QTest::keyClick(&strip, Qt::Key_Tab);
    QTest::keyClick(&strip, Qt::Key_Tab);
    ASSERT_EQ(strip.chosen(), 1U);
    EXPECT_TRUE(strip.accessibleDescription().contains(QLatin1String("2")));
    const auto before = schedule();
    const int steps = window_->document().undoStack().count();
    QTest::keyClick(&strip, Qt::Key_Up);
    EXPECT_GT(schedule().value[1], before.value[1]);
    EXPECT_EQ(window_->document().undoStack().count(), steps + 1);
    QTest::keyClick(&strip, Qt::Key_Right);
    EXPECT_GT(schedule().speed[1], before.speed[1]);
    QTest::keyClick(&strip, Qt::Key_Insert);
    ASSERT_EQ(schedule().speed.size(), 4U);
    EXPECT_EQ(strip.chosen(), 2U);
    QTest::keyClick(&strip, Qt::Key_Delete);
    EXPECT_EQ(schedule().speed.size(), 3U);
}

TEST_F(ScheduleTest, APointChosenInOneScheduleIsNotChosenInTheNext) {
    follow();
    Edit edit;
    edit.text = QStringLiteral("second schedule");
    edit.replacement = design();
    const std::string burn = "/gas/burn/start_deg";
    edit.replacement->schedules.push_back({burn, schedule().speed, {-10.0, -14.0, -18.0}});
    ASSERT_TRUE(window_->document().apply(edit).empty());
    ASSERT_TRUE(waitUntilSolved());
    auto& canvas = this->canvas();
    auto& strip = shown<TorqueCurve>("torque-curve").strip();
    ASSERT_TRUE(activate());
    canvas.setFocus();
    QTest::keyClick(&canvas, Qt::Key_Tab);
    QTest::keyClick(&canvas, Qt::Key_Tab);
    ASSERT_EQ(canvas.chosen(), 1U);
    auto* inputs = strip.findChild<QComboBox*>();
    const std::string first = strip.input();
    inputs->setCurrentIndex(1 - inputs->currentIndex());
    ASSERT_NE(strip.input(), first);
    EXPECT_FALSE(canvas.chosen());
    const auto before = design().schedules;
    QTest::keyClick(&canvas, Qt::Key_Delete);
    EXPECT_EQ(design().schedules, before);
}

TEST_F(ScheduleTest, ADoubleClickOnAFreePlaceAddsAPointOnTheCurve) {
    follow();
    auto& strip = canvas();
    const QPointF middle = 0.5 * (*strip.placeOf(0) + *strip.placeOf(1));
    const QPoint free(static_cast<int>(middle.x()), strip.axisRect()->rect().top() + 3);
    QTest::mouseDClick(&strip, Qt::LeftButton, {}, free);
    ASSERT_EQ(schedule().speed.size(), 4U);
    EXPECT_GT(schedule().value[1], 1.0);
    EXPECT_LT(schedule().value[1], 4.0);
}

TEST_F(ScheduleTest, WithoutItsScheduleTheInputHasItsFixedValueAgain) {
    const double fixed = number(setting);
    follow();
    auto& strip = shown<TorqueCurve>("torque-curve").strip();
    // An edit of a view, made from what is shown at this speed, must not change the fixed value.
    Edit edit;
    edit.text = QStringLiteral("whole design");
    edit.replacement = window_->solution()->design;
    edit.replacement->title = "another";
    ASSERT_TRUE(window_->document().apply(edit).empty());
    EXPECT_EQ(design().title, "another");
    EXPECT_EQ(number(setting), fixed);
    for (auto* button : strip.findChildren<QToolButton*>()) {
        if (button->text() == ScheduleStrip::tr("Remove"))
            button->click();
    }
    EXPECT_TRUE(design().schedules.empty());
    ASSERT_TRUE(waitUntilSolved());
    EXPECT_NEAR(solvedSetting(), fixed, 1e-12);
}

TEST_F(ScheduleTest, AChapterThatIsNotThereStaysAwayWhenASearchEnds) {
    auto* panel = window_->findChild<NumberPanel*>();
    const auto seen = [&] {
        QStringList keys;
        for (const auto* chapter : panel->findChildren<NumberChapter*>()) {
            for (const auto* heading :
                 chapter->findChildren<QToolButton*>(QString(), Qt::FindDirectChildrenOnly)) {
                if (heading->isVisibleTo(panel))
                    keys << chapter->key();
            }
        }
        return keys;
    };
    const QStringList before = seen();
    ASSERT_FALSE(before.contains(QLatin1String("schedules")));
    panel->goTo(QString::fromStdString(setting)); // ends a search
    EXPECT_EQ(seen(), before);
}

TEST_F(ScheduleTest, TheInputsShowTheValueAtThisSpeedAndThatItFollows) {
    follow();
    auto* panel = window_->findChild<NumberPanel*>();
    panel->goTo(QString::fromStdString(setting));
    QToolButton* mark = nullptr;
    for (auto* button : panel->findChildren<QToolButton*>(QStringLiteral("follows"))) {
        if (button->isVisibleTo(panel))
            mark = button;
    }
    ASSERT_TRUE(mark);
    EXPECT_FALSE(mark->accessibleName().isEmpty());
    EXPECT_TRUE(mark->toolTip().contains(QLatin1Char('1')));
    auto* number = mark->parentWidget()->findChild<QLineEdit*>(QStringLiteral("number"));
    ASSERT_TRUE(number);
    EXPECT_EQ(number->text(), QStringLiteral("1"));
    EXPECT_TRUE(number->isReadOnly());
    window_->document().undoStack().undo();
    EXPECT_FALSE(number->isReadOnly());
}

TEST_F(ScheduleTest, TheSearchShowsBothTorquesAndAppliesWhatItFound) {
    ScheduleDialog dialog(window_->document(), setting, {800.0, 1400.0}, window_.get());
    dialog.show();
    dialog.findChild<QLineEdit*>(QStringLiteral("from"))->setText(QStringLiteral("-6"));
    dialog.findChild<QLineEdit*>(QStringLiteral("to"))->setText(QStringLiteral("10"));
    dialog.findChild<QSpinBox*>()->setValue(3);
    QTest::mouseClick(dialog.findChild<QPushButton*>(QStringLiteral("search")), Qt::LeftButton);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !dialog.isBusy() && dialog.answer(); }, 120000));
    auto* rows = dialog.findChild<QTableWidget*>(QStringLiteral("rows"));
    EXPECT_EQ(rows->rowCount(), 3);
    const QString words = dialog.findChild<QLabel*>(QStringLiteral("message"))->text();
    EXPECT_FALSE(words.isEmpty());
    const auto found = dialog.answer()->schedule();
    QTest::mouseClick(dialog.findChild<QPushButton*>(QStringLiteral("apply")), Qt::LeftButton);
    ASSERT_EQ(design().schedules.size(), 1U);
    EXPECT_EQ(schedule(), found);
    window_->document().undoStack().undo();
    EXPECT_TRUE(design().schedules.empty());
}

TEST_F(ScheduleTest, WhatTheDialogProposesCanBeReadAgain) {
    ScheduleDialog dialog(window_->document(), setting, {500.0, 12300.0}, window_.get());
    EXPECT_EQ(dialog.findChild<QLineEdit*>(QStringLiteral("fastest"))->text(),
              QStringLiteral("12300"));
    dialog.findChild<QSpinBox*>()->setValue(2);
    QTest::mouseClick(dialog.findChild<QPushButton*>(QStringLiteral("search")), Qt::LeftButton);
    EXPECT_TRUE(dialog.isBusy());
}

TEST_F(ScheduleTest, TheSearchStopsWhenAsked) {
    ScheduleDialog dialog(window_->document(), setting, {400.0, 2400.0}, window_.get());
    dialog.show();
    dialog.findChild<QSpinBox*>()->setValue(40);
    auto* search = dialog.findChild<QPushButton*>(QStringLiteral("search"));
    QTest::mouseClick(search, Qt::LeftButton);
    ASSERT_TRUE(QTest::qWaitFor([&] { return dialog.isBusy(); }));
    QTest::mouseClick(search, Qt::LeftButton);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !dialog.isBusy(); }, 20000));
    EXPECT_FALSE(dialog.answer());
    EXPECT_TRUE(design().schedules.empty());
}

TEST_F(ScheduleTest, TheMapReadsOutWhatASingleSolveGives) {
    auto& map = shown<LoadMapPlot>("load-map");
    ASSERT_TRUE(QTest::qWaitFor([&] { return !map.isBusy(); }, 120000));
    map.setFigure(QStringLiteral("peak_pressure_bar"));
    // Full load at the fastest speed of the map: a corner, read without interpolation.
    const double speed = map.plot().xAxis->range().upper;
    auto corner = design();
    corner.running.speed = speed * rpm;
    SilentMonitor monitor;
    const auto solved = solution::solve(corner, monitor);
    ASSERT_TRUE(solved);
    const double torque = *solved->figure("brake_torque_Nm")->value;
    const double peak = *solved->figure("peak_pressure_bar")->value;
    bool isNumber = false;
    const double read = map.readoutAt(speed, torque - 1e-4 * std::abs(torque)).toDouble(&isNumber);
    ASSERT_TRUE(isNumber);
    EXPECT_NEAR(read, peak, 5e-3 * peak);
}
