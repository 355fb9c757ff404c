#include "tests/ui/desktop_fixture.h"
#include "ui/help/help_pages.h"
#include "ui/help/help_window.h"
#include "ui/panels/number_panel.h"
#include "ui/window/pane_grid.h"

#include <QLineEdit>
#include <QTest>
#include <QTextBrowser>
#include <QTreeWidget>

using namespace lobewright;
using namespace lobewright::ui;
using namespace lobewright::ui::test;

TEST(Help, SearchFindsPagesByTheirWordsTitlesFirst) {
    const auto found = helpPagesWith(QStringLiteral("pressure angle"));
    ASSERT_FALSE(found.empty());
    for (const HelpPage* page : found)
        EXPECT_TRUE(page->text.contains(QLatin1String("angle"), Qt::CaseInsensitive));
    EXPECT_EQ(helpPagesWith(QStringLiteral("friction")).front()->file,
              QLatin1String("friction.md"));
    EXPECT_TRUE(helpPagesWith(QStringLiteral("zzyzx")).empty());
}

TEST_F(WindowTest, KeyF1OpensThePageOfThePaneThatHasTheKeyboard) {
    view("ports").setFocus();
    QTest::keyClick(window_.get(), Qt::Key_F1);
    ASSERT_NE(window_->helpWindow(), nullptr);
    EXPECT_TRUE(window_->helpWindow()->isVisible());
    EXPECT_EQ(window_->helpWindow()->page(), QLatin1String("ports.md"));
    auto* pages = window_->helpWindow()->findChild<QTreeWidget*>();
    const auto marked = [&] { return pages->currentItem()->data(0, Qt::UserRole).toString(); };
    EXPECT_EQ(marked(), QLatin1String("ports.md"));
    QTest::qWait(100);
    EXPECT_EQ(marked(), QLatin1String("ports.md"));
    window_->helpWindow()->close();
    window_->activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(window_.get()));
    window_->numbers().setFocus();
    for (auto* edit : window_->numbers().findChildren<QLineEdit*>()) {
        if (edit->isVisible()) {
            edit->setFocus();
            break;
        }
    }
    ASSERT_TRUE(window_->numbers().isVisible());
    EXPECT_EQ(window_->helpPageHere(), QLatin1String("numbers.md"));
    QTest::keyClick(window_.get(), Qt::Key_F1);
    EXPECT_EQ(window_->helpWindow()->page(), QLatin1String("numbers.md"));
}

TEST_F(WindowTest, HelpGoesForwardAndBackAndSearches) {
    window_->openHelp(QStringLiteral("ports.md"));
    HelpWindow& help = *window_->helpWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&help));
    auto* text = help.findChild<QTextBrowser*>();
    EXPECT_TRUE(text->toPlainText().startsWith(QLatin1String("Ports and timing")));
    Q_EMIT text->anchorClicked(QUrl(QStringLiteral("adjuster.md")));
    EXPECT_EQ(help.page(), QLatin1String("adjuster.md"));
    QTest::keyClick(text, Qt::Key_Left, Qt::AltModifier);
    EXPECT_EQ(help.page(), QLatin1String("ports.md"));
    QTest::keyClick(text, Qt::Key_Right, Qt::AltModifier);
    EXPECT_EQ(help.page(), QLatin1String("adjuster.md"));
    auto* list = help.findChild<QTreeWidget*>();
    const int groups = list->topLevelItemCount();
    help.findChild<QLineEdit*>()->setText(QStringLiteral("Stribeck"));
    ASSERT_EQ(list->topLevelItemCount(), 1);
    list->setCurrentItem(list->topLevelItem(0));
    EXPECT_EQ(help.page(), QLatin1String("friction.md"));
    help.findChild<QLineEdit*>()->clear();
    EXPECT_EQ(list->topLevelItemCount(), groups);
    help.findChild<QLineEdit*>()->setText(QStringLiteral("knock"));
    QTest::keyClick(help.findChild<QLineEdit*>(), Qt::Key_Return);
    EXPECT_EQ(help.page(), list->topLevelItem(0)->data(0, Qt::UserRole).toString());
    window_->openHelp(QStringLiteral("ports.md"));
    EXPECT_TRUE(help.findChild<QLineEdit*>()->text().isEmpty()) << "the search of before is over";
    EXPECT_EQ(list->topLevelItemCount(), groups);
    EXPECT_EQ(list->currentItem()->data(0, Qt::UserRole).toString(), QLatin1String("ports.md"));
}
