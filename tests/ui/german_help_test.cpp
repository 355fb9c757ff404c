#include "tests/ui/desktop_fixture.h"
#include "tests/ui/translations.h"
#include "ui/help/help_pages.h"
#include "ui/help/help_window.h"

#include <QDir>
#include <QFile>
#include <QLineEdit>
#include <QRegularExpression>
#include <QTest>
#include <QTextBrowser>
#include <QTreeWidget>

using namespace lobewright;
using namespace lobewright::ui;
using namespace lobewright::ui::test;

namespace {

QString textOf(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString();
}

QString english(const HelpPage& page) {
    return textOf(QStringLiteral(":/help/") + page.file);
}

/// What the groups of a pattern find in a text, in order.
QStringList all(const QString& text, const QString& pattern) {
    const QRegularExpression wanted(pattern, QRegularExpression::MultilineOption |
                                                 QRegularExpression::UseUnicodePropertiesOption);
    QStringList found;
    for (auto it = wanted.globalMatch(text); it.hasNext();)
        found << it.next().captured(1);
    return found;
}

QStringList sorted(QStringList list) {
    list.sort();
    return list;
}

/// Keys by the names that are printed on an English keyboard.
QStringList keysOf(QString text) {
    text.replace(QLatin1String("Strg"), QLatin1String("Ctrl"));
    text.replace(QLatin1String("Umschalt"), QLatin1String("Shift"));
    return sorted(all(text, QStringLiteral("((?:Ctrl|Shift|Alt)\\+[\\w,+]+\\b|\\bF\\d+)")));
}

/// Numbers as they are computed with, whichever decimal mark they are written with.
QStringList numbersOf(const QString& text) {
    return sorted(all(text, QStringLiteral("(?<![\\w.,])(\\d+(?:[.,]\\d+)?)"))
                      .replaceInStrings(QStringLiteral(","), QStringLiteral(".")));
}

/// Emphasised words, the steps of a menu path one by one.
QStringList emphasised(const QString& text) {
    QStringList words;
    for (const QString& path : all(text, QStringLiteral("\\*{1,2}([^*\\n]+)\\*{1,2}")))
        words << path.split(QStringLiteral(" > "));
    return words;
}

/// A label as it is spoken of: without mnemonic, dots and soft hyphens.
QString spoken(QString label) {
    return label.remove(QLatin1Char('&')).remove(QStringLiteral("…")).remove(QChar::SoftHyphen);
}

} // namespace

TEST(GermanHelp, EveryPageIsThereAndNoneTooMany) {
    const QStringList files = QDir(QStringLiteral(":/help")).entryList({"*.md"});
    EXPECT_GT(files.size(), 30);
    EXPECT_EQ(QDir(QStringLiteral(":/help/de")).entryList({"*.md"}), files);
    for (const QString& file : files)
        EXPECT_EQ(helpPath(file), QStringLiteral(":/help/de/") + file);
    EXPECT_EQ(helpPath(QStringLiteral("nowhere.md")), QStringLiteral(":/help/nowhere.md"));
}

TEST(GermanHelp, PagesAreBuiltLikeTheEnglishOnes) {
    const QStringList patterns = {QStringLiteral("^(#+) "),           // headings
                                  QStringLiteral("\\]\\(([^)]+)\\)"), // links and pictures
                                  QStringLiteral("^(-|\\d\\.) "),     // items of lists
                                  QStringLiteral("(`[^`\\n]+`)"),     // names of files and keys
                                  QStringLiteral("^(\\|)")};          // rows of tables
    for (const HelpPage& page : helpPages()) {
        for (const QString& pattern : patterns) {
            EXPECT_EQ(all(page.text, pattern), all(english(page), pattern))
                << page.file.toStdString() << ": " << pattern.toStdString();
        }
    }
}

TEST(GermanHelp, NumbersAndKeysAreTheSame) {
    for (const HelpPage& page : helpPages()) {
        EXPECT_EQ(numbersOf(page.text), numbersOf(english(page))) << page.file.toStdString();
        EXPECT_EQ(keysOf(page.text), keysOf(english(page))) << page.file.toStdString();
        EXPECT_FALSE(page.text.contains(QLatin1String("Ctrl"))) << page.file.toStdString();
    }
}

// A page that speaks of a button by another name than the window sends its reader searching.
TEST(GermanHelp, LabelsAreCalledAsTheWindowCallsThem) {
    std::multimap<QString, QString> labels;
    for (const auto& [key, message] : readTranslations(germanFile())) {
        const QString label = spoken(message.source);
        if (!label.isEmpty() && label.front().isUpper()) // not a word within sentences
            labels.emplace(label, spoken(message.translation));
    }
    int known = 0;
    for (const HelpPage& page : helpPages()) {
        for (const QString& word : emphasised(english(page))) {
            const auto [first, last] = labels.equal_range(word);
            known += first != last;
            EXPECT_TRUE(first == last || std::any_of(first, last,
                                                     [&](const auto& label) {
                                                         return page.text.contains(
                                                             label.second, Qt::CaseInsensitive);
                                                     }))
                << page.file.toStdString() << ": " << word.toStdString();
        }
    }
    EXPECT_GT(known, 40);
}

TEST(GermanHelp, SearchFindsGermanWords) {
    EXPECT_EQ(helpPagesWith(QStringLiteral("Reibung")).front()->file, QLatin1String("friction.md"));
    EXPECT_TRUE(helpPagesWith(QStringLiteral("between")).empty());
}

TEST_F(WindowTest, KeyF1OpensTheGermanPage) {
    view("ports").setFocus();
    QTest::keyClick(window_.get(), Qt::Key_F1);
    ASSERT_NE(window_->helpWindow(), nullptr);
    HelpWindow& help = *window_->helpWindow();
    EXPECT_EQ(help.page(), QLatin1String("ports.md"));
    auto* text = help.findChild<QTextBrowser*>();
    EXPECT_TRUE(text->toPlainText().startsWith(QStringLiteral("Schlitze und Steuerzeiten")));
    // A link leads from one German page to another, and the way back as well.
    text->setSource(QUrl(QStringLiteral("qrc:/help/de/adjuster.md")));
    Q_EMIT text->anchorClicked(QUrl(QStringLiteral("balance.md")));
    EXPECT_TRUE(text->toPlainText().startsWith(QStringLiteral("Massenausgleich")));
    QTest::keyClick(text, Qt::Key_Left, Qt::AltModifier);
    EXPECT_TRUE(text->toPlainText().startsWith(QStringLiteral("Versteller")));
    help.findChild<QLineEdit*>()->setText(QStringLiteral("Stribeck"));
    ASSERT_EQ(help.findChild<QTreeWidget*>()->topLevelItemCount(), 1);
    EXPECT_EQ(help.findChild<QTreeWidget*>()->topLevelItem(0)->text(0), QStringLiteral("Reibung"));
}
