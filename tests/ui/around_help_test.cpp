#include "tests/ui/desktop_fixture.h"
#include "ui/editing/number_panel.h"
#include "ui/workspace/arrangement.h"
#include "ui/workspace/help_pages.h"
#include "ui/workspace/help_window.h"
#include "ui/workspace/pane_grid.h"

#include <QDir>
#include <QFile>
#include <QLineEdit>
#include <QRegularExpression>
#include <QTest>
#include <QTextBrowser>
#include <QTextDocument>
#include <QTreeWidget>

#include <set>

using namespace lobewright;
using namespace lobewright::ui;
using namespace lobewright::ui::test;

namespace {

/// Targets of the links and pictures of a page.
QStringList targetsOf(const HelpPage& page) {
    QStringList targets;
    const QRegularExpression link(QStringLiteral("\\]\\(([^)]+)\\)"));
    for (auto it = link.globalMatch(page.text); it.hasNext();)
        targets << it.next().captured(1);
    return targets;
}

} // namespace

TEST(Help, EveryPageCanBeReachedAndHasATitleAndText) {
    std::set<QString> listed;
    for (const HelpPage& page : helpPages()) {
        EXPECT_TRUE(listed.insert(page.file).second) << page.file.toStdString();
        EXPECT_TRUE(page.text.startsWith(QLatin1String("# "))) << page.file.toStdString();
        EXPECT_FALSE(page.title.isEmpty()) << page.file.toStdString();
        EXPECT_GT(page.text.size(), 250) << page.file.toStdString();
    }
    for (const QString& file : QDir(QStringLiteral(":/help")).entryList({"*.md"}))
        EXPECT_TRUE(listed.contains(file)) << file.toStdString() << " is not in the contents";
}

TEST(Help, EveryLinkAndPictureLeadsSomewhere) {
    int links = 0;
    for (const HelpPage& page : helpPages()) {
        for (const QString& target : targetsOf(page)) {
            ++links;
            EXPECT_TRUE(QFile::exists(QStringLiteral(":/help/") + target))
                << page.file.toStdString() << " -> " << target.toStdString();
        }
    }
    EXPECT_GT(links, 60);
}

// Markdown that was not understood would stand in the page as it was typed.
TEST(Help, PagesAreReadAsMarkdown) {
    for (const HelpPage& page : helpPages()) {
        QTextDocument document;
        document.setMarkdown(page.text);
        const QString shown = document.toPlainText();
        EXPECT_FALSE(shown.contains(QLatin1String("**"))) << page.file.toStdString();
        EXPECT_FALSE(shown.contains(QLatin1String("]("))) << page.file.toStdString();
        EXPECT_FALSE(shown.contains(QLatin1String("| --- |"))) << page.file.toStdString();
        EXPECT_TRUE(shown.startsWith(page.title)) << page.file.toStdString();
    }
}

TEST(Help, SearchFindsPagesByTheirWordsTitlesFirst) {
    const auto found = helpPagesWith(QStringLiteral("pressure angle"));
    ASSERT_FALSE(found.empty());
    for (const HelpPage* page : found)
        EXPECT_TRUE(page->text.contains(QLatin1String("angle"), Qt::CaseInsensitive));
    EXPECT_EQ(helpPagesWith(QStringLiteral("friction")).front()->file,
              QLatin1String("friction.md"));
    EXPECT_TRUE(helpPagesWith(QStringLiteral("zzyzx")).empty());
}

TEST_F(WindowTest, EveryPaneAndEveryArrangementHasAPage) {
    for (const Views::View& view : window_->views().all())
        EXPECT_NE(helpPage(helpOfView(view.key)), nullptr) << view.key.toStdString();
    for (const Arrangement& arrangement : arrangements())
        EXPECT_NE(helpPage(helpOfArrangement(arrangement.key)), nullptr)
            << arrangement.key.toStdString();
}

TEST_F(WindowTest, KeyF1OpensThePageOfThePaneThatHasTheKeyboard) {
    view("ports").setFocus();
    QTest::keyClick(window_.get(), Qt::Key_F1);
    ASSERT_NE(window_->helpWindow(), nullptr);
    EXPECT_TRUE(window_->helpWindow()->isVisible());
    EXPECT_EQ(window_->helpWindow()->page(), QLatin1String("ports.md"));
    window_->activateWindow();
    window_->numbers().setFocus();
    window_->numbers().findChild<QLineEdit*>()->setFocus();
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
}
