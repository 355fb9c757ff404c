#include "core/design/fields.h"
#include "core/units.h"
#include "tests/ui/scene_fixture.h"
#include "ui/scene/tracks/adjuster_panel.h"

#include <QDoubleSpinBox>
#include <QLabel>
#include <QSignalSpy>
#include <QSlider>
#include <QTableWidget>
#include <QTest>
#include <gtest/gtest.h>

namespace lobewright::ui::test {
namespace {

constexpr double mm = units::millimetre;
constexpr double deg = units::degree;

void addFigure(solution::Solution& solution, const char* group, const char* name, double value) {
    solution::Figure figure;
    figure.group = group;
    figure.name = name;
    figure.value = value;
    solution.figures.push_back(figure);
}

class Adjuster : public ::testing::Test {
  protected:
    Adjuster() {
        panel.resize(520, 420);
        panel.show();
        panel.showGeometry(geometryOf(design));
        QObject::connect(&panel, &AdjusterPanel::edited, &panel, [this](const Edit& edit) {
            edits.push_back(edit);
            for (const auto& change : edit.changes)
                design = design::withField(design, change.path, change.value).value();
            panel.showGeometry(geometryOf(design));
        });
    }
    QSlider* slider(const char* path) {
        return panel.findChild<QSlider*>(QString::fromLatin1(path));
    }

    AdjusterPanel panel;
    design::Design design = twoLobeDesign();
    std::vector<Edit> edits;
};

TEST_F(Adjuster, SliderTurnsTheTrackInTenthsOfADegree) {
    QSlider* turn = slider("/mechanism/adjuster/setting_deg");
    ASSERT_NE(turn, nullptr);
    turn->setFocus();
    for (int i = 0; i < 3; ++i)
        QTest::keyClick(turn, Qt::Key_Right);
    EXPECT_NEAR(design.mechanism.adjuster.setting, 0.3 * deg, 1e-12);
    ASSERT_EQ(edits.size(), 3U);
    EXPECT_EQ(edits[0].mergeKey, edits[2].mergeKey); // one undo step
}

TEST_F(Adjuster, ExactEntryMovesTheTrack) {
    const auto boxes = panel.findChildren<QDoubleSpinBox*>();
    ASSERT_EQ(boxes.size(), 2);
    boxes[1]->setFocus();
    boxes[1]->selectAll();
    QTest::keyClicks(boxes[1], "1.25");
    QTest::keyClick(boxes[1], Qt::Key_Return);
    EXPECT_NEAR(design.mechanism.adjuster.axial, 1.25 * mm, 1e-12);
    EXPECT_EQ(edits.size(), 1U);
}

// Moving the exhaust piston inward by more than the clearance lets the crowns meet.
TEST_F(Adjuster, WhatCannotStandIsRefusedWithItsReason) {
    slider("/mechanism/adjuster/axial_mm")->setValue(-99);
    EXPECT_TRUE(edits.empty());
    EXPECT_EQ(design, twoLobeDesign());
    bool said = false;
    for (const auto* label : panel.findChildren<QLabel*>()) {
        said = said ||
               (label->isVisible() && label->text().startsWith(QStringLiteral("Not possible")));
    }
    EXPECT_TRUE(said);
    slider("/mechanism/adjuster/axial_mm")->setValue(5);
    EXPECT_EQ(edits.size(), 1U);
}

TEST_F(Adjuster, TableShowsTheSolutionsFiguresAndTheBaselineOnRequest) {
    auto solution = std::make_shared<solution::Solution>(*inventedSolution(design));
    addFigure(*solution, "geometry", "compression_ratio", 11.25);
    addFigure(*solution, "geometry", "compression_ratio_change_phase", -0.124);
    panel.showSolution(solution);
    auto* table = panel.findChild<QTableWidget*>();
    ASSERT_NE(table, nullptr);
    EXPECT_EQ(table->item(0, 2)->text(), QStringLiteral("−0.12"));
    EXPECT_EQ(table->item(0, 4)->text(), QStringLiteral("11.25"));
    EXPECT_TRUE(table->isColumnHidden(5));
    panel.showBaseline(solution);
    EXPECT_FALSE(table->isColumnHidden(5));
    EXPECT_EQ(table->item(0, 5)->text(), QStringLiteral("11.25"));
}

// A row can be added up: the lead alone, what turning and what moving adds, the value now.
TEST_F(Adjuster, LeadAndSettingAddUpToWhatIsThereNow) {
    design.mechanism.exhaustLead = 22.5 * deg;
    design.mechanism.adjuster.setting = 8.0 * deg;
    auto solution = std::make_shared<solution::Solution>(*inventedSolution(design));
    addFigure(*solution, "timing", "blowdown_deg", 42.1);
    addFigure(*solution, "geometry", "blowdown_change_phase_deg", -8.0);
    addFigure(*solution, "geometry", "blowdown_change_axial_deg", 2.3);
    addFigure(*solution, "balance", "shaking_force_peak_N", 1234.0);
    panel.showSolution(solution);
    const auto* table = panel.findChild<QTableWidget*>();
    EXPECT_EQ(table->item(2, 1)->text(), QStringLiteral("47.8"));
    EXPECT_EQ(table->item(2, 2)->text(), QStringLiteral("−8.0"));
    EXPECT_EQ(table->item(2, 3)->text(), QStringLiteral("+2.3"));
    EXPECT_EQ(table->item(2, 4)->text(), QStringLiteral("42.1"));
    EXPECT_TRUE(table->item(8, 4)->text().startsWith(QStringLiteral("1234")));
    bool said = false;
    for (const auto* label : panel.findChildren<QLabel*>())
        said = said || label->text().contains(QStringLiteral("22.50° + setting 8.00° = 30.50°"));
    EXPECT_TRUE(said);
}

TEST(AdjusterPictures, ShowTheThemeAndTheirWords) {
    for (const bool dark : {false, true}) {
        AdjusterPanel panel;
        useTones(panel, dark);
        panel.resize(560, 380);
        panel.showSolution(inventedSolution(twoLobeDesign()));
        expectPicture(panel,
                      dark ? QStringLiteral("adjuster-dark") : QStringLiteral("adjuster-light"));
    }
}

} // namespace
} // namespace lobewright::ui::test
