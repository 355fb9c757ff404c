#include "core/units.h"
#include "tests/ui/scene_fixture.h"
#include "ui/scene/student_walk.h"

#include <QLabel>
#include <QPushButton>
#include <QRegularExpression>
#include <QTest>
#include <gtest/gtest.h>

namespace lobewright::ui::test {
namespace {

constexpr double deg = units::degree;

int sentences(const QString& text) {
    return static_cast<int>(text.count(QRegularExpression(QStringLiteral("[.](\\s|$)"))));
}

ShownEngine engineWith(const SolutionPointer& solution) {
    ShownEngine engine;
    engine.setSolution(solution);
    return engine;
}

TEST(Walk, GoesThroughOneCycleInTheOrderOfItsEvents) {
    const auto engine = engineWith(inventedSolution(twoLobeDesign()));
    const auto steps = walkSteps(engine);
    ASSERT_EQ(steps.size(), 7U);
    const auto& cycle = engine.timing().cycles().front();
    const double period = engine.pair().period();
    EXPECT_NEAR(steps.front().theta, cycle.lastClosing() - period, 1e-9);
    for (std::size_t i = 1; i < steps.size(); ++i)
        EXPECT_GT(steps[i].theta, steps[i - 1].theta);
    EXPECT_LT(steps.back().theta, steps.front().theta + period);
    // 12 cycle degrees before inner dead centre are 6 shaft degrees with two lobes.
    EXPECT_NEAR(steps[1].theta, cycle.centres.idc - 6.0 * deg, 1e-9);
}

TEST(Walk, EveryStepIsTwoSentencesWithANumber) {
    for (const bool motored : {false, true})
        for (const auto& solved : {true, false}) {
            design::Design design = twoLobeDesign();
            design.running.motored = motored;
            ShownEngine engine;
            if (solved)
                engine.setSolution(inventedSolution(design));
            else
                engine.setGeometry(geometryOf(design));
            for (const WalkStep& step : walkSteps(engine)) {
                EXPECT_EQ(sentences(step.text), 2) << step.text.toStdString();
                EXPECT_FALSE(step.text.contains(QLatin1Char('%')) &&
                             step.text.contains(QRegularExpression(QStringLiteral("%\\d"))))
                    << step.text.toStdString();
                EXPECT_FALSE(step.text.contains(QStringLiteral("nan")));
            }
        }
}

TEST(Walk, TellsTheNumbersOfThisDesign) {
    const auto engine = engineWith(inventedSolution(twoLobeDesign()));
    const auto steps = walkSteps(engine);
    // Stands at its lead's compromise: the gap at inner dead centre, from the mechanism itself.
    const double gap = engine.pair().gap(engine.timing().cycles().front().centres.idc) * 1e3;
    EXPECT_TRUE(steps[2].text.contains(QString::number(gap, 'f', 2)))
        << steps[2].text.toStdString();
    EXPECT_TRUE(steps[3].title.contains(QStringLiteral("exhaust opens")));
    // Blowdown in shaft degrees and in milliseconds at 1800 rev/min (10.8 ° a millisecond).
    const double blowdown = engine.timing().cycles().front().blowdown() / deg;
    EXPECT_TRUE(steps[3].text.contains(QString::number(blowdown, 'f', 1)));
    EXPECT_TRUE(
        steps[3].text.contains(QString::number(blowdown / 10.8, 'f', 2) + QStringLiteral(" ms")));
}

TEST(Walk, MotoredEnginesHaveNoIgnition) {
    design::Design design = twoLobeDesign();
    design.running.motored = true;
    for (const WalkStep& step : walkSteps(engineWith(inventedSolution(design))))
        EXPECT_FALSE(step.title.contains(QStringLiteral("burn")));
}

TEST(StudentWalk, NextAndBackMoveTheShaftAndTheText) {
    TurnCursor cursor;
    StudentWalk walk(cursor);
    walk.setTravelTime(0.0);
    walk.showSolution(inventedSolution(twoLobeDesign()));
    walk.show();
    EXPECT_EQ(walk.step(), -1);
    const auto buttons = walk.findChildren<QPushButton*>();
    ASSERT_EQ(buttons.size(), 2);
    QPushButton* on = buttons[0]->text().contains(QStringLiteral("Next")) ? buttons[0] : buttons[1];
    QPushButton* back = on == buttons[0] ? buttons[1] : buttons[0];
    EXPECT_FALSE(back->isEnabled());
    const auto steps = walkSteps(engineWith(inventedSolution(twoLobeDesign())));
    for (int i = 0; i < 3; ++i) {
        QTest::mouseClick(on, Qt::LeftButton);
        const double target = steps[static_cast<std::size_t>(i)].theta;
        EXPECT_NEAR(std::remainder(cursor.angle() - target, units::turn), 0.0, 1e-9);
    }
    QTest::mouseClick(back, Qt::LeftButton);
    EXPECT_EQ(walk.step(), 1);
    QTest::keyClick(&walk, Qt::Key_PageDown);
    EXPECT_EQ(walk.step(), 2);
    // A new design keeps the place and changes the numbers.
    design::Design other = twoLobeDesign();
    other.mechanism.clearance = 10.0 * units::millimetre;
    const auto labels = walk.findChildren<QLabel*>();
    walk.showSolution(inventedSolution(other));
    EXPECT_EQ(walk.step(), 2);
}

TEST(StudentWalk, TravelsForwardThroughTheTurnWhenGivenTime) {
    TurnCursor cursor;
    StudentWalk walk(cursor);
    walk.setTravelTime(0.05);
    walk.showGeometry(geometryOf(twoLobeDesign()));
    walk.start();
    const double target = walkSteps(engineWith(inventedSolution(twoLobeDesign())))[0].theta;
    EXPECT_TRUE(QTest::qWaitFor(
        [&] { return std::abs(std::remainder(cursor.angle() - target, units::turn)) < 1e-9; },
        2000));
}

TEST(StudentWalk, WithoutADesignThereIsNothingToWalk) {
    TurnCursor cursor;
    StudentWalk walk(cursor);
    walk.goOn();
    walk.goBack();
    EXPECT_EQ(walk.step(), -1);
}

TEST(WalkPictures, AreKept) {
    TurnCursor cursor;
    for (const bool dark : {false, true}) {
        StudentWalk walk(cursor);
        useTones(walk, dark);
        walk.setTravelTime(0.0);
        walk.showSolution(inventedSolution(twoLobeDesign()));
        walk.resize(380, 200);
        for (int i = 0; i < 4; ++i)
            walk.goOn();
        keepPicture(walk, dark ? QStringLiteral("walk-dark") : QStringLiteral("walk-light"));
    }
}

} // namespace
} // namespace lobewright::ui::test
