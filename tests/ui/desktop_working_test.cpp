#include "core/solution/workings/working.h"
#include "tests/ui/desktop_fixture.h"
#include "ui/panels/figures_panel.h"
#include "ui/panels/limits_list.h"
#include "ui/panels/working_view.h"
#include "ui/window/result_card.h"

#include <QAction>
#include <QApplication>
#include <QTest>
#include <QTextBrowser>
#include <QToolButton>
#include <QTreeWidget>
#include <QUrl>

using namespace lobewright;
using namespace lobewright::ui;
using namespace lobewright::ui::test;

namespace {

class WorkingTest : public WindowTest {
  protected:
    WorkingView& working() { return window_->working(); }
    /// The row of a figure, scrolled into view.
    QTreeWidgetItem* row(const QString& figure) {
        QTreeWidget& tree = window_->figures();
        for (int i = 0; i < tree.topLevelItemCount(); ++i) {
            QTreeWidgetItem* group = tree.topLevelItem(i);
            for (int j = 0; j < group->childCount(); ++j) {
                if (group->child(j)->data(0, Qt::UserRole).toString() == figure) {
                    tree.scrollToItem(group->child(j));
                    return group->child(j);
                }
            }
        }
        return nullptr;
    }
    void showFiguresTab() { window_->arrange(QStringLiteral("reviewer")); }
};

} // namespace

TEST_F(WorkingTest, ClickOnAFigureOpensItsFormulaWithItsNumbers) {
    showFiguresTab();
    QTreeWidgetItem* item = row(QStringLiteral("swept_volume_cm3"));
    ASSERT_NE(item, nullptr);
    EXPECT_FALSE(working().isVisible());
    QTest::mouseClick(window_->figures().viewport(), Qt::LeftButton, {},
                      window_->figures().visualItemRect(item).center());
    ASSERT_TRUE(working().isVisible());
    EXPECT_EQ(working().figure(), QStringLiteral("swept_volume_cm3"));
    const QString text = working().text();
    EXPECT_TRUE(text.contains(QStringLiteral("π/4·58²·(34 + 34)/1000"))) << text.toStdString();
    EXPECT_TRUE(text.contains(QStringLiteral("179.7 cm³"))) << text.toStdString();
    EXPECT_TRUE(text.contains(QStringLiteral("Bore"))) << text.toStdString();
}

TEST_F(WorkingTest, StepsBackThroughFiguresToANumberOfTheDesign) {
    showFiguresTab();
    Q_EMIT window_->figures().workingWanted(QStringLiteral("displacement_cm3"));
    working().follow(QUrl(QStringLiteral("figure:swept_volume_cm3")));
    EXPECT_EQ(working().figure(), QStringLiteral("swept_volume_cm3"));
    QTest::keyClick(working().findChild<QTextBrowser*>(), Qt::Key_Left, Qt::AltModifier);
    EXPECT_EQ(working().figure(), QStringLiteral("displacement_cm3"));
    working().follow(QUrl(QStringLiteral("field:/mechanism/cylinders")));
    ASSERT_TRUE(QTest::qWaitFor([&] { return !working().isVisible(); })); // the tab of numbers
    EXPECT_TRUE(QTest::qWaitFor([&] {
        auto* focused = QApplication::focusWidget();
        return focused && focused->isVisible() && !focused->accessibleName().isEmpty();
    }));
}

TEST_F(WorkingTest, LinksOnThePageLeadSomewhere) {
    for (const char* figure :
         {"trapped_compression_ratio", "brake_torque_Nm", "contact_safety_inlet"}) {
        Q_EMIT window_->figures().workingWanted(QString::fromLatin1(figure));
        const QString html = working().findChild<QTextBrowser*>()->toHtml();
        EXPECT_TRUE(html.contains(QStringLiteral("href=\"figure:")) ||
                    html.contains(QStringLiteral("href=\"angle:")))
            << figure;
    }
    window_->cursor().setAngle(1.0);
    working().follow(QUrl(QStringLiteral("angle:2.5")));
    EXPECT_DOUBLE_EQ(window_->cursor().angle(), 2.5);
}

TEST_F(WorkingTest, FollowsTheDesign) {
    Q_EMIT window_->figures().workingWanted(QStringLiteral("swept_volume_cm3"));
    window_->document().apply({QStringLiteral("bore"), {{"/mechanism/bore_mm", 60.0}}, {}, {}});
    ASSERT_TRUE(waitUntilSolved());
    EXPECT_TRUE(working().text().contains(QStringLiteral("π/4·60²")));
}

TEST_F(WorkingTest, MainFiguresOfTheStatusBarOpenTheirs) {
    for (ResultCard* card : window_->findChildren<ResultCard*>()) {
        if (card->name() == QStringLiteral("Compression")) {
            QTest::mouseClick(card, Qt::LeftButton);
            EXPECT_EQ(working().figure(), QStringLiteral("compression_ratio"));
            return;
        }
    }
    FAIL() << "no compression ratio in the status bar";
}

TEST_F(WorkingTest, LimitsOpenTheWorkingOfWhatTheyJudge) {
    Edit narrow{QStringLiteral("limit"), {{"/limits/peak_pressure_bar/warning", 10.0}}, {}, {}};
    window_->document().apply(narrow);
    ASSERT_TRUE(waitUntilSolved());
    LimitsList& list = window_->limits();
    const auto& checks = window_->solution()->checks;
    ASSERT_TRUE(checks.front().figure);
    EXPECT_EQ(checks.front().figure->written(), "peak_pressure_bar");
    list.setCurrentIndex(list.model()->index(0, 0));
    list.actions().front()->trigger();
    EXPECT_EQ(working().figure(), QStringLiteral("peak_pressure_bar"));
    EXPECT_TRUE(working().text().contains(QStringLiteral("pressure_bar of channels.csv")));
}

TEST_F(WorkingTest, FigureOfTheSolverNamesTheColumnsItIsSummedFrom) {
    Q_EMIT window_->figures().workingWanted(QStringLiteral("wall_heat_J"));
    EXPECT_TRUE(
        working().text().contains(QStringLiteral("wall_coefficient_W_per_m2K of channels.csv")));
    EXPECT_TRUE(working().text().contains(QStringLiteral("∮(")));
}

TEST_F(WorkingTest, FigureWithoutValueSaysWhy) {
    Q_EMIT window_->figures().workingWanted(QStringLiteral("roller_life_inlet_h"));
    EXPECT_TRUE(working().text().contains(QStringLiteral("rating")));
}
