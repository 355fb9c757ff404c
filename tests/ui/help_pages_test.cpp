// The help pages in the language of the program that runs these tests.
#include "tests/ui/desktop_fixture.h"
#include "ui/help/help_pages.h"
#include "ui/window/arrangement.h"

#include <QDir>
#include <QFile>
#include <QRegularExpression>
#include <QTextDocument>

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

TEST_F(WindowTest, EveryPaneAndEveryArrangementHasAPage) {
    for (const Views::View& view : window_->views().all())
        EXPECT_NE(helpPage(helpOfView(view.key)), nullptr) << view.key.toStdString();
    for (const Arrangement& arrangement : arrangements()) {
        EXPECT_NE(helpPage(helpOfArrangement(arrangement.key)), nullptr)
            << arrangement.key.toStdString();
    }
}
