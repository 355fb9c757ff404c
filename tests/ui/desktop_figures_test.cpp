#include "core/units.h"
#include "tests/ui/desktop_fixture.h"
#include "ui/base/figure_text.h"
#include "ui/panels/figures_panel.h"
#include "ui/panels/figures_view.h"

#include <QCheckBox>
#include <QHeaderView>
#include <QLineEdit>
#include <QTabWidget>
#include <QTest>
#include <QTreeWidgetItemIterator>

using namespace lobewright;
using namespace lobewright::ui;
using namespace lobewright::ui::test;

namespace {

solution::Figure figureOf(const std::string& group, const std::string& unit,
                          std::optional<double> value, bool isYesNo = false) {
    return {{"name", findUnit(unit)}, group, "name", "Label", value, {}, isYesNo};
}
QString change(const std::string& unit, double now, double before, double period = 180.0) {
    return figureChange(figureOf("timing", unit, now), figureOf("timing", unit, before), period)
        .text;
}

class FiguresTest : public WindowTest {
  protected:
    void SetUp() override {
        WindowTest::SetUp();
        shownFigures();
    }
    QTreeWidgetItem* row(const QString& figure) {
        QTreeWidgetItemIterator item(&window_->figures());
        for (; *item; ++item) {
            if ((*item)->parent() && (*item)->data(0, Qt::UserRole).toString() == figure)
                return *item;
        }
        return nullptr;
    }
    int shownRows() {
        int count = 0;
        QTreeWidgetItemIterator item(&window_->figures());
        for (; *item; ++item)
            count += (*item)->parent() && !(*item)->isHidden() ? 1 : 0;
        return count;
    }
    void keepAndWiden() {
        window_->keepBaseline();
        ASSERT_TRUE(window_->document()
                        .apply({QStringLiteral("wider"),
                                {{"/mechanism/bore_mm", number("/mechanism/bore_mm") + 2.0}},
                                {},
                                {}})
                        .empty());
        ASSERT_TRUE(waitUntilSolved());
    }
    FiguresView& figuresView() {
        return dynamic_cast<FiguresView&>(*window_->figures().parentWidget());
    }
};

} // namespace

TEST(FigureChange, AnglesDifferInDegreesTheShorterWayRound) {
    EXPECT_EQ(change("cycle °", 180.0, -180.0), QStringLiteral("="));
    EXPECT_EQ(change("cycle °", -178.0, 179.0), QStringLiteral("+3.00°"));
    EXPECT_EQ(change("shaft °", 1.0, 178.5), QStringLiteral("+2.50°")); // two lobes: 180° apart
    EXPECT_EQ(change("°", 30.0, 31.25), QStringLiteral("−1.25°"));
}

TEST(FigureChange, SharesAreGivenOnlyWhereTheyMeanSomething) {
    EXPECT_EQ(change("kW", 11.0, 10.0), QStringLiteral("+10 %"));
    EXPECT_EQ(change("N·m", -2.6, -14.0), QStringLiteral("+11.4"));
    EXPECT_EQ(change("N·m", 2.6, -14.0), QStringLiteral("+16.6"));
    EXPECT_EQ(change("N", 0.00123, 0.0), QStringLiteral("+0.00123"));
    EXPECT_EQ(change("kW", 10.0, 10.0), QStringLiteral("="));
    EXPECT_TRUE(figureChange(figureOf("loads", "N", std::nullopt), figureOf("loads", "N", 1.0), 90)
                    .text.isEmpty());
}

TEST(FigureChange, FlagsReadYesAndNo) {
    EXPECT_EQ(figureText(figureOf("loads", "", 0.0, true)), QStringLiteral("no"));
    EXPECT_EQ(figureText(figureOf("performance", "", 1.0, true)), QStringLiteral("yes"));
}

TEST_F(FiguresTest, BaselineStandsBesideThePresentValue) {
    keepAndWiden();
    const QTreeWidgetItem* item = row(QStringLiteral("displacement_cm3"));
    ASSERT_TRUE(item);
    const auto* before = window_->baseline().solution()->figure("displacement_cm3");
    EXPECT_EQ(item->text(3), figureText(*before));
    EXPECT_EQ(item->text(1), figureText(*window_->solution()->figure("displacement_cm3")));
    EXPECT_TRUE(item->text(2).startsWith('+') && item->text(2).endsWith('%'));
    // Baseline left of now, as time runs.
    const QHeaderView& header = *window_->figures().header();
    EXPECT_LT(header.visualIndex(3), header.visualIndex(1));
}

TEST_F(FiguresTest, NoShownValueIsClippedAtTheUsualWidth) {
    keepAndWiden();
    window_->arrange(QStringLiteral("designer"));
    FiguresPanel& panel = shownFigures();
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return panel.isVisible() && panel.viewport()->width() > 200; }));
    for (int column = 1; column < 4; ++column) {
        if (panel.isColumnHidden(column))
            continue;
        QTreeWidgetItemIterator item(&panel);
        for (; *item; ++item) {
            if ((*item)->parent()) {
                EXPECT_LE(panel.fontMetrics().horizontalAdvance((*item)->text(column)),
                          panel.columnWidth(column) - 6)
                    << (*item)->text(column).toStdString();
            }
        }
    }
    EXPECT_FALSE(panel.isColumnHidden(1));
    EXPECT_FALSE(panel.isColumnHidden(2));
    EXPECT_GE(panel.columnWidth(0), 90);
}

TEST_F(FiguresTest, AreFoundByNameAndByChange) {
    auto* search = figuresView().findChild<QLineEdit*>();
    auto* changed = figuresView().findChild<QCheckBox*>();
    ASSERT_TRUE(search && changed);
    EXPECT_TRUE(changed->isHidden()); // nothing to compare with
    keepAndWiden();
    const int all = shownRows(); // which results have a value depends on the design
    EXPECT_FALSE(changed->isHidden());
    changed->setChecked(true);
    const int different = shownRows();
    EXPECT_LT(different, all);
    EXPECT_GT(different, 10);
    EXPECT_TRUE(row(QStringLiteral("lobes_per_turn")) == nullptr ||
                row(QStringLiteral("lobes_per_turn"))->isHidden());
    EXPECT_FALSE(row(QStringLiteral("displacement_cm3"))->isHidden());
    QTest::keyClicks(search, QStringLiteral("DISPLACEMENT"));
    EXPECT_GE(shownRows(), 1);
    EXPECT_LT(shownRows(), 5);
    search->clear();
    changed->setChecked(false);
    EXPECT_EQ(shownRows(), all);
}
