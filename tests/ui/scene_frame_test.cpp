// The frame of the window: the scrubber of the turn, pictures of arrangements.
#include "core/units.h"
#include "tests/ui/scene_fixture.h"
#include "ui/window/arrangement_sheet.h"
#include "ui/window/figures_bar.h"
#include "ui/window/result_card.h"
#include "ui/window/scrubber.h"

#include <QSettings>
#include <QSignalSpy>
#include <QTest>
#include <QToolButton>
#include <gtest/gtest.h>

#include <cmath>

namespace lobewright::ui::test {
namespace {

class TurnScrubber : public ::testing::Test {
  protected:
    TurnScrubber() {
        scrubber.resize(500, 30);
        scrubber.showGeometry(geometry);
        scrubber.show();
    }
    GeometryPointer geometry = geometryOf(twoLobeDesign());
    Scrubber scrubber;
};

TEST_F(TurnScrubber, HasATickForEveryEventAndCoversTheTurnWithPhases) {
    EXPECT_EQ(scrubber.ticks().size(), 12u); // six events of each of two cycles
    double reached = 0.0;
    for (const auto& stretch : scrubber.stretches()) {
        EXPECT_NEAR(stretch.from, reached, 1e-6);
        EXPECT_GT(stretch.to, stretch.from);
        reached = stretch.to;
    }
    EXPECT_NEAR(reached, units::turn, 1e-6);
}

TEST_F(TurnScrubber, PhasesAreThoseOfTheOpenPorts) {
    for (const auto& stretch : scrubber.stretches()) {
        const double middle = 0.5 * (stretch.from + stretch.to);
        const bool inlet = geometry->timing.area(End::inlet, middle) > 0.0;
        const bool exhaust = geometry->timing.area(End::exhaust, middle) > 0.0;
        EXPECT_EQ(stretch.phase == Phase::scavenging, inlet && exhaust);
        EXPECT_EQ(stretch.phase == Phase::compression || stretch.phase == Phase::expansion,
                  !inlet && !exhaust);
    }
}

TEST_F(TurnScrubber, AClickOrADragGoesThere) {
    const QPoint at(static_cast<int>(scrubber.x(1.0)), 15);
    QTest::mouseClick(&scrubber, Qt::LeftButton, {}, at);
    EXPECT_NEAR(scrubber.value() * units::degree / Scrubber::perDegree, 1.0, 0.02);
    dragMouse(scrubber, at, QPointF(scrubber.x(4.0), 15.0));
    EXPECT_NEAR(scrubber.value() * units::degree / Scrubber::perDegree, 4.0, 0.02);
    QTest::keyClick(&scrubber, Qt::Key_Right);
    EXPECT_NEAR(scrubber.value() * units::degree / Scrubber::perDegree, 4.0 + units::degree, 0.02);
    expectPicture(scrubber, QStringLiteral("scrubber"));
}

class Cards : public ::testing::Test {
  protected:
    Cards() {
        QSettings().remove(QStringLiteral("window/cards"));
        bar.showSolution(solved);
        bar.show();
    }
    ~Cards() override { QSettings().remove(QStringLiteral("window/cards")); }
    std::vector<const ResultCard*> cards() const {
        std::vector<const ResultCard*> found;
        for (const auto* card : bar.findChildren<ResultCard*>()) {
            if (bar.chosen().size() > static_cast<qsizetype>(found.size()) &&
                !card->name().isEmpty())
                found.push_back(card);
        }
        return found;
    }
    SolutionPointer solved = solvedSample("biogas-pump-set");
    FiguresBar bar;
};

TEST_F(Cards, SayTheUsualResultsWithTheirUnits) {
    const auto shown = cards();
    ASSERT_EQ(shown.size(), 5u);
    EXPECT_EQ(shown[0]->name(), QStringLiteral("Power"));
    EXPECT_TRUE(shown[0]->value().contains(QStringLiteral("kW")));
    EXPECT_TRUE(shown[1]->value().startsWith(QStringLiteral("92.")));
    EXPECT_TRUE(shown[2]->value().endsWith(QLatin1Char('%')));
    for (const auto* card : shown) {
        EXPECT_TRUE(card->change().isEmpty());
        EXPECT_TRUE(card->accessibleName().contains(card->value()));
    }
}

TEST_F(Cards, SayHowTheyChangedAgainstTheBaseline) {
    design::Design richer = solved->design;
    richer.running.speed *= 1.1;
    SilentMonitor monitor;
    bar.showBaseline(
        std::make_shared<const solution::Solution>(solution::solve(richer, monitor).value()));
    const auto shown = cards();
    EXPECT_TRUE(shown[0]->change().startsWith(QChar(0x2212))) << shown[0]->change().toStdString();
    EXPECT_TRUE(shown[0]->accessibleName().contains(QStringLiteral("against the baseline")));
    bar.showBaseline(nullptr);
    EXPECT_TRUE(cards()[0]->change().isEmpty());
}

TEST_F(Cards, AreChosenByThePersonAndKept) {
    bar.choose({QStringLiteral("imep_bar"), QStringLiteral("compression_ratio")});
    QTest::qWait(1); // those before are deleted later
    const auto shown = cards();
    ASSERT_EQ(shown.size(), 2u);
    EXPECT_TRUE(shown[0]->value().contains(QStringLiteral("bar")));
    QSignalSpy wanted(&bar, &FiguresBar::workingWanted);
    QTest::mouseClick(const_cast<ResultCard*>(shown[0]), Qt::LeftButton);
    ASSERT_EQ(wanted.count(), 1);
    EXPECT_EQ(wanted.at(0).at(0).toString(), QStringLiteral("imep_bar"));
    EXPECT_EQ(FiguresBar().chosen(), bar.chosen());
    expectPicture(bar, QStringLiteral("cards"));
}

TEST(Sheet, ShowsEveryArrangementAndAnswersToKeys) {
    auto* sheet = new ArrangementSheet(QStringLiteral("student"));
    QSignalSpy chosen(sheet, &ArrangementSheet::chosen);
    QWidget place;
    place.setGeometry(0, 700, 80, 24);
    place.show();
    sheet->popUp(place);
    const auto buttons = sheet->findChildren<QToolButton*>();
    EXPECT_EQ(buttons.size(), static_cast<qsizetype>(arrangements().size()));
    for (const auto* button : buttons) {
        EXPECT_FALSE(button->icon().isNull());
        EXPECT_FALSE(button->accessibleName().isEmpty());
        EXPECT_FALSE(button->toolTip().isEmpty());
    }
    expectPicture(*sheet, QStringLiteral("arrangements"));
    QTest::keyClick(sheet, Qt::Key_Right);
    QTest::keyClick(sheet, Qt::Key_Return);
    ASSERT_EQ(chosen.count(), 1);
    EXPECT_EQ(chosen.at(0).at(0).toString(), arrangements()[2].key);
}

} // namespace
} // namespace lobewright::ui::test
