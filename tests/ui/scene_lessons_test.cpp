// Learn: stages, card, plot of the stage and tasks.
#include "core/units.h"
#include "tests/ui/drawn_text.h"
#include "tests/ui/scene_fixture.h"
#include "ui/plots/turn/port_plot.h"
#include "ui/plots/turn/pressure_volume_plot.h"
#include "ui/plots/turn/torque_plot.h"
#include "ui/scene/walk/cause_bars.h"
#include "ui/scene/walk/lesson_plot.h"
#include "ui/scene/walk/stage_strip.h"
#include "ui/scene/walk/student_walk.h"
#include "ui/scene/walk/task_view.h"

#include <QDoubleSpinBox>
#include <QFile>
#include <QLabel>
#include <QPushButton>
#include <QRegularExpression>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <QToolButton>
#include <gtest/gtest.h>

#include <algorithm>

namespace lobewright::ui::test {
namespace {

SolutionPointer engine() {
    static const SolutionPointer solved = solvedSample("biogas-pump-set");
    return solved;
}

std::vector<WalkStep> steps() {
    ShownEngine shown;
    shown.setSolution(engine());
    return walkSteps(shown);
}

TEST(Lessons, EveryStageHasAFormulaWithNumbersAQuestionAndAnAnswer) {
    const auto all = steps();
    EXPECT_EQ(all.size(), 9u);
    for (const WalkStep& step : all) {
        EXPECT_TRUE(step.formula.contains(QLatin1Char('='))) << step.title.toStdString();
        EXPECT_TRUE(step.formula.contains(QRegularExpression(QStringLiteral("\\d"))));
        EXPECT_FALSE(step.formula.contains(QStringLiteral("nan")));
        EXPECT_FALSE(step.formula.contains(QLatin1Char('%'))) << step.formula.toStdString();
        EXPECT_TRUE(step.question.endsWith(QLatin1Char('?'))) << step.question.toStdString();
        EXPECT_FALSE(step.answer.isEmpty());
    }
}

TEST(Lessons, TheHardestPushIsWhereTheTorqueOfTheCylinderIsLargest) {
    const auto all = steps();
    const auto hardest = std::ranges::find(all, WalkEvent::hardestPush, &WalkStep::event);
    ASSERT_NE(hardest, all.end());
    ShownEngine shown;
    shown.setSolution(engine());
    EXPECT_NEAR(*shown.channel("torque_cylinder_Nm", hardest->theta),
                engine()->channel("torque_cylinder_Nm")->values.maxCoeff(), 1e-6);
    // After the highest pressure: the lever arm is still short there.
    const auto peak = std::ranges::find(all, WalkEvent::highestPressure, &WalkStep::event);
    EXPECT_GT(hardest->theta, peak->theta);
}

class Stages : public ::testing::Test {
  protected:
    Stages() {
        strip.resize(760, 84);
        strip.showSolution(engine());
        strip.show();
    }
    TurnCursor cursor;
    StageStrip strip{cursor};
};

TEST_F(Stages, ThePresentOneFollowsTheShaft) {
    QSignalSpy changed(&strip, &StageStrip::presentChanged);
    for (int i = 0; i < strip.stages(); ++i) {
        cursor.setAngle(strip.stage(i).theta + 0.01);
        EXPECT_EQ(strip.present(), i);
        EXPECT_EQ(strip.accessibleDescription(), strip.stage(i).title);
    }
    EXPECT_GE(changed.count(), strip.stages() - 1);
}

TEST_F(Stages, AClickOrTheKeyboardChoosesOne) {
    QSignalSpy chosen(&strip, &StageStrip::stageChosen);
    QTest::mouseClick(&strip, Qt::LeftButton, {}, strip.cell(3).center().toPoint());
    ASSERT_EQ(chosen.count(), 1);
    EXPECT_EQ(chosen.takeFirst().at(0).toInt(), 3);
    QTest::keyClick(&strip, Qt::Key_Right);
    QTest::keyClick(&strip, Qt::Key_Return);
    ASSERT_EQ(chosen.count(), 1);
    EXPECT_EQ(chosen.takeFirst().at(0).toInt(), 4);
}

/// Pixels of a colour in a part of a picture.
int pixelsOf(const QImage& picture, const QRect& part, const QColor& colour) {
    int found = 0;
    for (int x = part.left(); x <= part.right(); ++x) {
        for (int y = part.top(); y <= part.bottom(); ++y)
            found += picture.pixelColor(x, y) == colour ? 1 : 0;
    }
    return found;
}

// Where all ports are closed nothing of the exhaust is in the picture of a one-sided engine: a
// crown in that colour would be a second piston. Of an opposed engine it is there.
TEST_F(Stages, AOneSidedEngineHasOnePistonAgainstAHead) {
    const Palette& tones = Palette::of(strip);
    const auto exhaustInClosedStages = [&](const SolutionPointer& solution) {
        strip.showSolution(solution);
        ShownEngine shown;
        shown.setSolution(solution);
        const auto& timing = shown.timing();
        const QImage picture = strip.grab().toImage();
        int found = 0;
        for (int i = 0; i < strip.stages(); ++i) {
            const double theta = strip.stage(i).theta;
            if (timing.area(End::inlet, theta) + timing.area(End::exhaust, theta) == 0.0)
                found += pixelsOf(picture, strip.cell(i).toRect(), tones.exhaust);
        }
        return found;
    };
    EXPECT_GT(exhaustInClosedStages(engine()), 20);
    EXPECT_EQ(exhaustInClosedStages(solvedSample("harbour-crane-auxiliary")), 0);
    expectPicture(strip, QStringLiteral("stages-one-sided"));
}

TEST_F(Stages, NamesStandWithinTheirCells) {
    for (const DrawnText& drawn : drawnText(strip)) {
        const bool isInside = [&] {
            for (int i = 0; i < strip.stages(); ++i) {
                if (strip.cell(i).adjusted(-1, -1, 1, 1).contains(drawn.box))
                    return true;
            }
            return false;
        }();
        EXPECT_TRUE(isInside) << drawn.text.toStdString();
    }
    expectPicture(strip, QStringLiteral("stages"));
}

TEST(Card, AnswersOnlyWhenAsked) {
    TurnCursor cursor;
    StudentWalk walk(cursor);
    walk.setTravelTime(0.0);
    walk.showSolution(engine());
    walk.resize(500, 420);
    walk.show();
    walk.goTo(4);
    EXPECT_EQ(walk.step(), 4);
    const QString answer = steps()[4].answer;
    const auto shows = [&](const QString& words) {
        const auto labels = walk.findChildren<QLabel*>();
        return std::ranges::any_of(labels, [&](const QLabel* label) {
            return label->isVisibleTo(&walk) && label->text() == words;
        });
    };
    EXPECT_TRUE(shows(steps()[4].question));
    EXPECT_TRUE(shows(steps()[4].formula));
    EXPECT_FALSE(shows(answer));
    walk.findChild<QToolButton*>()->click();
    EXPECT_TRUE(shows(answer));
    walk.goOn();
    EXPECT_FALSE(shows(answer));
    expectPicture(walk, QStringLiteral("card"));
}

TEST(Plot, FitsTheStage) {
    TurnCursor cursor;
    LessonPlot plot(cursor);
    plot.showSolution(engine());
    plot.setEvent(WalkEvent::combustion);
    EXPECT_NE(qobject_cast<PressureVolumePlot*>(plot.currentWidget()), nullptr);
    plot.setEvent(WalkEvent::hardestPush);
    EXPECT_NE(qobject_cast<TorquePlot*>(plot.currentWidget()), nullptr);
    plot.setEvent(WalkEvent::inletOpens);
    EXPECT_NE(qobject_cast<PortPlot*>(plot.currentWidget()), nullptr);
}

class TaskPane : public ::testing::Test {
  protected:
    TaskPane() {
        view.resize(500, 600);
        view.showSolution(engine());
        view.show();
    }
    void choose(const char* id) {
        const auto& all = view.tasks();
        for (std::size_t i = 0; i < all.size(); ++i) {
            if (all[i].id == id)
                view.chooseTask(static_cast<int>(i));
        }
    }
    bool lockAndWait() {
        view.lock();
        return QTest::qWaitFor([&] { return !view.isBusy(); }, 30000);
    }
    TurnCursor cursor;
    TaskView view{cursor};
};

TEST_F(TaskPane, APredictionIsLockedAndAnsweredWithItsCauses) {
    ASSERT_EQ(view.tasks().size(), 12u);
    choose("exhaust-lead");
    auto* guess = view.findChild<QDoubleSpinBox*>();
    ASSERT_TRUE(guess->isVisible());
    guess->setValue(8.0); // the lobes alone, without what inner dead centre moves
    ASSERT_TRUE(lockAndWait());
    EXPECT_FALSE(view.isSolved("exhaust-lead"));
    auto* causes = view.findChild<CauseBars*>();
    EXPECT_TRUE(
        causes->accessibleDescription().contains(QStringLiteral("exhaust piston is ahead")));
    EXPECT_GT(causes->sizeHint().height(), 40);
    QTest::qWait(50);
    expectPicture(view, QStringLiteral("task-predicted"));
    guess->setValue(4.0);
    ASSERT_TRUE(lockAndWait());
    EXPECT_TRUE(view.isSolved("exhaust-lead"));
}

TEST_F(TaskPane, APlaceIsFoundByTurningTheShaft) {
    choose("exhaust-opens");
    EXPECT_FALSE(view.findChild<QDoubleSpinBox*>()->isVisible());
    const double opens = engine()->timing.cycles().front().exhaustOpens;
    cursor.setAngle(opens + 0.4);
    ASSERT_TRUE(lockAndWait());
    EXPECT_FALSE(view.isSolved("exhaust-opens"));
    cursor.setAngle(opens);
    ASSERT_TRUE(lockAndWait());
    EXPECT_TRUE(view.isSolved("exhaust-opens"));
}

TEST_F(TaskPane, ABuiltDesignIsHeldAgainstTheOneThatWasAskedAbout) {
    choose("after-charge");
    design::Design changed = engine()->design;
    changed.mechanism.exhaustLead = 7.5 * units::degree;
    changed.ports.inlet.front().edge = changed.ports.inlet.front().height = 8.4 * units::millimetre;
    SilentMonitor monitor;
    view.showSolution(
        std::make_shared<const solution::Solution>(solution::solve(changed, monitor).value()));
    ASSERT_TRUE(lockAndWait());
    EXPECT_TRUE(view.isSolved("after-charge"));
    // The lab sheet tells it, and can be written as a PDF.
    EXPECT_TRUE(view.labSheet().contains(QStringLiteral("✓")));
    const QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("sheet.pdf"));
    ASSERT_TRUE(view.writeLabSheet(file));
    QFile written(file);
    ASSERT_TRUE(written.open(QIODevice::ReadOnly));
    EXPECT_TRUE(written.readAll().startsWith("%PDF"));
    EXPECT_FALSE(view.writeLabSheet(folder.filePath(QStringLiteral("no/such/folder.pdf"))));
}

TEST_F(TaskPane, HintsComeOneByOne) {
    choose("firings");
    const auto words = [&] {
        QString all;
        for (const auto* label : view.findChildren<QLabel*>()) {
            if (label->isVisibleTo(&view))
                all += label->text();
        }
        return all;
    };
    EXPECT_FALSE(words().contains(QStringLiteral("Count the lobes")));
    view.hint();
    EXPECT_TRUE(words().contains(QStringLiteral("Count the lobes")));
    EXPECT_FALSE(words().contains(QStringLiteral("Cylinders times cycles")));
    view.hint();
    EXPECT_TRUE(words().contains(QStringLiteral("Cylinders times cycles")));
}

TEST_F(TaskPane, AnotherDesignBeginsThemAnew) {
    choose("exhaust-opens");
    cursor.setAngle(engine()->timing.cycles().front().exhaustOpens);
    ASSERT_TRUE(lockAndWait());
    ASSERT_TRUE(view.isSolved("exhaust-opens"));
    view.reset();
    EXPECT_EQ(view.task(), -1);
    view.showSolution(engine());
    EXPECT_FALSE(view.isSolved("exhaust-opens"));
}

} // namespace
} // namespace lobewright::ui::test
