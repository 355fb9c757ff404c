#include "core/units.h"
#include "tests/ui/scene_fixture.h"
#include "ui/scene/section/section_view.h"
#include "ui/scene/walk/student_walk.h"

#include <QLabel>
#include <QPushButton>
#include <QRegularExpression>
#include <QTest>
#include <gtest/gtest.h>

#include <stdexcept>

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
    for (const bool motored : {false, true}) {
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

TEST(Walk, MotoredEnginesHoldAirAndNothingBurns) {
    design::Design design = twoLobeDesign();
    design.running.motored = true;
    for (const WalkStep& step : walkSteps(engineWith(inventedSolution(design)))) {
        EXPECT_FALSE(step.title.contains(QStringLiteral("burn")));
        // Burnt gas may be named only to say what it would do in a fired engine.
        if (step.text.contains(QStringLiteral("burnt gas"))) {
            EXPECT_TRUE(step.text.contains(QStringLiteral("air"))) << step.text.toStdString();
        }
        EXPECT_FALSE(step.text.contains(QStringLiteral("while the gas burns")));
    }
}

const WalkStep& titled(const std::vector<WalkStep>& steps, const char* title) {
    for (const WalkStep& step : steps) {
        if (step.title == QLatin1String(title))
            return step;
    }
    throw std::runtime_error(title);
}

/// The invented solution with another pressure in exhaust and supply [bar].
ShownEngine engineBetween(const design::Design& design, double exhaust, double supply) {
    auto solution = std::make_shared<solution::Solution>(*inventedSolution(design));
    solution->design.gas.exhaustPressure = exhaust * units::bar;
    solution->gas->plenumPressure = supply * units::bar;
    ShownEngine engine;
    engine.setSolution(solution);
    return engine;
}

TEST(Walk, SentencesFollowTheSignOfTheFlow) {
    const design::Design design = twoLobeDesign();
    const auto text = [&](double exhaust, double supply, const char* title) {
        return titled(walkSteps(engineBetween(design, exhaust, supply)), title).text;
    };
    EXPECT_TRUE(text(0.1, 1.3, "The exhaust opens").contains(QStringLiteral("rushes out")));
    EXPECT_TRUE(text(9.0, 9.0, "The exhaust opens").contains(QStringLiteral("flows in from ")));
    EXPECT_TRUE(text(0.1, 9.0, "The inlet opens").contains(QStringLiteral("scavenging")));
    EXPECT_TRUE(text(9.0, 9.0, "The inlet opens").contains(QStringLiteral("both sides")));
    EXPECT_TRUE(text(0.1, 0.1, "The inlet opens").contains(QStringLiteral("back into the inlet")));
    EXPECT_TRUE(text(0.1, 9.0, "The exhaust closes").contains(QStringLiteral("can add charge")));
    EXPECT_TRUE(
        text(0.1, 0.1, "The exhaust closes").contains(QStringLiteral("back into the supply")));
}

TEST(Walk, TheFlatTopHoldsThePistonsOnlyWhenItDoes) {
    // A dwell of 4 ° less the lead of 6 ° leaves no moment in which both pistons rest.
    const auto none =
        titled(walkSteps(engineWith(inventedSolution(twoLobeDesign()))), "Inner dead centre");
    EXPECT_TRUE(none.text.contains(QStringLiteral("never at rest together")))
        << none.text.toStdString();
    design::Design design = twoLobeDesign();
    design.mechanism.exhaustLead = 0.0;
    const auto some = titled(walkSteps(engineWith(inventedSolution(design))), "Inner dead centre");
    EXPECT_TRUE(some.text.contains(QStringLiteral("8.0°"))) << some.text.toStdString();
    EXPECT_TRUE(some.text.contains(QStringLiteral("50°")));
    EXPECT_FALSE(some.text.contains(QStringLiteral("while the gas burns")));
}

TEST(Walk, OpensWithWhatTurnsAndWhatSlides) {
    const QString text = walkOpening(engineWith(inventedSolution(twoLobeDesign())));
    EXPECT_TRUE(text.contains(QStringLiteral("fixed to the shaft and turn with it")));
    EXPECT_TRUE(text.contains(QStringLiteral("only slide")));
    EXPECT_TRUE(text.contains(QStringLiteral("36.0 mm")));
    EXPECT_TRUE(text.contains(QStringLiteral("6.0° ahead"))) << text.toStdString();
}

QPushButton* buttonOf(const QWidget& widget, const QString& words) {
    for (auto* button : widget.findChildren<QPushButton*>()) {
        if (button->text().remove(QLatin1Char('&')).contains(words))
            return button;
    }
    return nullptr;
}

TEST(StudentWalk, NextAndBackMoveTheShaftAndTheText) {
    TurnCursor cursor;
    StudentWalk walk(cursor);
    walk.setTravelTime(0.0);
    walk.showSolution(inventedSolution(twoLobeDesign()));
    walk.show();
    EXPECT_EQ(walk.step(), -1);
    QPushButton* on = buttonOf(walk, QStringLiteral("Next"));
    QPushButton* back = buttonOf(walk, QStringLiteral("Back"));
    ASSERT_TRUE(on && back);
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

QString shownText(const StudentWalk& walk) {
    QString all;
    for (const auto* label : walk.findChildren<QLabel*>())
        all += label->text() + QLatin1Char('\n');
    return all;
}

TEST(StudentWalk, TextFollowsTheShaftWhenAnotherHandTurnsIt) {
    TurnCursor cursor;
    StudentWalk walk(cursor);
    SectionView section(cursor);
    walk.setTravelTime(0.0);
    const auto solution = inventedSolution(twoLobeDesign());
    walk.showSolution(solution);
    section.showSolution(solution);
    walk.show();
    section.resize(700, 400);
    section.show();
    // Before the walk begins its first page stays, whatever the shaft does.
    QTest::keyClick(&section, Qt::Key_PageDown);
    EXPECT_EQ(walk.step(), -1);
    EXPECT_TRUE(shownText(walk).contains(QStringLiteral("only slide")));
    walk.start();
    const auto steps = walkSteps(engineWith(solution));
    QTest::keyClick(&section, Qt::Key_Home); // inner dead centre
    EXPECT_EQ(steps[static_cast<std::size_t>(walk.step())].title,
              QStringLiteral("Inner dead centre"));
    EXPECT_EQ(walk.beyond(), 0.0);
    dragMouse(section, {200, 30}, {260, 30});
    EXPECT_GT(walk.beyond(), 0.0);
    EXPECT_TRUE(shownText(walk).contains(QStringLiteral("moved on")));
    QPushButton* back = nullptr;
    for (auto* button : walk.findChildren<QPushButton*>()) {
        if (button->text().contains(QStringLiteral("Back")))
            back = button;
    }
    ASSERT_NE(back, nullptr);
    const int told = walk.step();
    QTest::mouseClick(back, Qt::LeftButton);
    EXPECT_EQ(walk.step(), told);
    EXPECT_EQ(walk.beyond(), 0.0);
    const double period = geometryOf(twoLobeDesign())->pair.period();
    EXPECT_NEAR(
        std::remainder(cursor.angle() - steps[static_cast<std::size_t>(told)].theta, period), 0.0,
        1e-9);
    // Every event of the second lobe is told as well.
    cursor.setAngle(steps[3].theta + period + 0.001);
    EXPECT_EQ(walk.step(), 3);
    walk.reset();
    EXPECT_EQ(walk.step(), -1);
}

TEST(StudentWalk, TextFollowsPlayingFromTheFirstPageOn) {
    TurnCursor cursor;
    StudentWalk walk(cursor);
    walk.showSolution(inventedSolution(twoLobeDesign()));
    walk.show();
    cursor.setAngle(walkSteps(engineWith(inventedSolution(twoLobeDesign())))[4].theta + 0.01);
    EXPECT_EQ(walk.step(), -1);
    cursor.setPlaying(true);
    EXPECT_GE(walk.step(), 4);
    cursor.setPlaying(false);
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

TEST(WalkPictures, ShowTheThemeAndTheirWords) {
    TurnCursor cursor;
    for (const bool dark : {false, true}) {
        StudentWalk walk(cursor);
        useTones(walk, dark);
        walk.setTravelTime(0.0);
        walk.showSolution(inventedSolution(twoLobeDesign()));
        walk.resize(380, 200);
        for (int i = 0; i < 4; ++i)
            walk.goOn();
        expectPicture(walk, dark ? QStringLiteral("walk-dark") : QStringLiteral("walk-light"));
    }
}

} // namespace
} // namespace lobewright::ui::test
