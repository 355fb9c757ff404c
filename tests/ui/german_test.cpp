#include "tests/places.h"
#include "tests/ui/desktop_fixture.h"
#include "tests/ui/translations.h"
#include "ui/base/core_text.h"
#include "ui/document/samples.h"
#include "ui/panels/field_editor.h"
#include "ui/panels/figures_panel.h"
#include "ui/panels/limits_list.h"
#include "ui/panels/number_edit.h"
#include "ui/panels/number_panel.h"
#include "ui/window/arrangement.h"

#include <QAbstractButton>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QProcess>
#include <QRegularExpression>
#include <QScrollArea>
#include <QTemporaryDir>
#include <QTest>
#include <QToolButton>
#include <QTreeWidget>

#include <set>

using namespace lobewright;
using namespace lobewright::ui;
using namespace lobewright::ui::test;

namespace {

const QString sourceFolder = QString::fromStdString(lobewright::test::sourceFolder());

QStringList placesIn(const QString& text) {
    static const QRegularExpression place(QStringLiteral("%\\d+"));
    QStringList found;
    for (auto it = place.globalMatch(text); it.hasNext();)
        found << it.next().captured();
    found.removeDuplicates();
    found.sort();
    return found;
}

QString mnemonicOf(QString text) {
    text.remove(QLatin1String("&&"));
    const auto at = text.indexOf(QLatin1Char('&'));
    return at < 0 ? QString() : text.mid(at + 1, 1).toLower();
}

} // namespace

TEST(German, EveryStringIsTranslated) {
    const Messages messages = readTranslations(germanFile());
    EXPECT_GT(messages.size(), 1000U);
    for (const auto& [key, message] : messages) {
        EXPECT_TRUE(message.finished && !message.translation.isEmpty())
            << key.first.toStdString() << ": " << key.second.toStdString();
    }
}

TEST(German, PlacesMnemonicsAndBreaksAreKept) {
    for (const auto& [key, message] : readTranslations(germanFile())) {
        EXPECT_EQ(placesIn(message.source), placesIn(message.translation))
            << message.source.toStdString() << " | " << message.translation.toStdString();
        EXPECT_EQ(mnemonicOf(message.source).isEmpty(), mnemonicOf(message.translation).isEmpty())
            << message.source.toStdString() << " | " << message.translation.toStdString();
        EXPECT_EQ(message.source.startsWith(' '), message.translation.startsWith(' '))
            << message.source.toStdString();
    }
}

// resources/translations/refresh brings the file up to date.
TEST(German, FileHoldsEveryStringOfTheSources) {
    const QTemporaryDir folder;
    const QString fresh = folder.filePath("fresh.ts");
    QProcess lupdate;
    lupdate.setWorkingDirectory(sourceFolder);
    lupdate.start(QStringLiteral(LUPDATE),
                  {"-I", ".", "-tr-function-alias",
                   "tr+=LW_TEXT,Q_DECLARE_TR_FUNCTIONS+=LW_TEXTS_OF", "-locations", "none",
                   "-no-obsolete", "-silent", "core", "ui", "app", "-ts", fresh});
    ASSERT_TRUE(lupdate.waitForFinished(120000));
    const QByteArray said = lupdate.readAllStandardError();
    ASSERT_EQ(lupdate.exitCode(), 0) << said.toStdString();
    // "Qualifying with unknown namespace": it took a text of the core for that of another class.
    EXPECT_TRUE(said.isEmpty()) << said.toStdString();
    const Messages wanted = readTranslations(fresh), present = readTranslations(germanFile());
    ASSERT_GT(wanted.size(), 1000U);
    for (const auto& [key, message] : wanted) {
        EXPECT_TRUE(present.contains(key))
            << "missing: " << key.first.toStdString() << ": " << key.second.toStdString();
    }
    for (const auto& [key, message] : present) {
        EXPECT_TRUE(wanted.contains(key))
            << "no longer used: " << key.first.toStdString() << ": " << key.second.toStdString();
    }
}

TEST(German, SamplesAreInTheFile) {
    const Messages messages = readTranslations(germanFile());
    for (const Sample& sample : samples()) {
        for (const QString& text : {sample.title, sample.notes})
            EXPECT_TRUE(messages.contains({QStringLiteral("Samples"), text})) << text.toStdString();
    }
}

TEST(German, MessagesOfTheCoreAreGerman) {
    EXPECT_EQ(coreText(Message(LW_TEXT("%1 %2"), LW_TEXT("Segment"), 3)),
              QStringLiteral("Abschnitt 3"));
    EXPECT_EQ(coreText(ofSide(LW_TEXT("Piston mass"), End::inlet)),
              QStringLiteral("Kolbenmasse, Einlassseite"));
    EXPECT_EQ(
        coreText(Message(LW_TEXT("%1 is %2, above %3: %4."), LW_TEXT("Peak pressure"),
                         Amount(85.2e5, in::bar), Amount(80e5, in::bar),
                         LW_TEXT("increase the clearance, start combustion later or extend it, or "
                                 "lower the supply pressure"))),
        QStringLiteral("Höchstdruck: 85,2 bar, über 80 bar. Abhilfe: mehr Bodenabstand, spätere "
                       "oder längere Verbrennung oder weniger Ladedruck."));
}

TEST_F(WindowTest, MenusSpeakGermanWithMnemonicsOfTheirOwn) {
    QStringList titles;
    for (const QAction* action : window_->menuBar()->actions())
        titles << QString(action->text()).remove('&');
    EXPECT_EQ(titles.front(), QStringLiteral("Datei"));
    EXPECT_TRUE(titles.contains(QStringLiteral("Ansicht")));
    EXPECT_TRUE(titles.contains(QStringLiteral("Hilfe")));
    std::set<QString> taken;
    for (const QAction* action : window_->menuBar()->actions()) {
        EXPECT_TRUE(taken.insert(mnemonicOf(action->text())).second)
            << action->text().toStdString();
    }
    for (const QAction* action : window_->menuBar()->actions()) {
        taken.clear();
        for (const QAction* entry : action->menu()->actions()) {
            const QString key = mnemonicOf(entry->text());
            if (!entry->isSeparator()) {
                EXPECT_FALSE(key.isEmpty()) << entry->text().toStdString();
            }
        }
    }
}

TEST_F(WindowTest, GermanLabelsAreNotClipped) {
    window_->resize(1280, 800);
    for (const Arrangement& arrangement : arrangements()) {
        window_->arrange(arrangement.key);
        QTest::qWait(100);
        for (const QWidget* widget : window_->findChildren<QWidget*>()) {
            if (!widget->isVisible() || widget->width() <= 0)
                continue;
            const auto* label = qobject_cast<const QLabel*>(widget);
            const auto* button = qobject_cast<const QAbstractButton*>(widget);
            if ((!label || label->text().isEmpty() || label->wordWrap()) &&
                (!button || button->text().isEmpty()))
                continue;
            EXPECT_GE(widget->width() + 1, widget->minimumSizeHint().width())
                << arrangement.key.toStdString() << ": "
                << (label ? label->text() : button->text()).toStdString();
        }
    }
}

TEST_F(WindowTest, NumberPanelIsNoWiderThanItsPlace) {
    window_->resize(1280, 800);
    QTest::qWait(100);
    const auto* scroll = window_->numbers().findChild<QScrollArea*>();
    ASSERT_NE(scroll, nullptr);
    EXPECT_LE(scroll->widget()->minimumSizeHint().width(), scroll->viewport()->width());
}

TEST_F(WindowTest, LimitsTellTheirNumbersInGerman) {
    QString shown;
    for (QWidget* part : window_->findChildren<LimitsList*>()) {
        const auto& model = *static_cast<LimitsList*>(part)->model();
        for (int row = 0; row < model.rowCount(); ++row)
            shown += model.index(row, 0).data(Qt::ToolTipRole).toString();
    }
    EXPECT_TRUE(shown.contains(QStringLiteral("Klicken: zur Eingabe"))) << shown.toStdString();
}

TEST_F(WindowTest, NumbersAndFiguresAreNamedInGerman) {
    QStringList names;
    for (const QLabel* label : window_->numbers().findChildren<QLabel*>())
        names << label->text();
    EXPECT_TRUE(names.contains(QStringLiteral("Bohrung")));
    EXPECT_FALSE(names.contains(QStringLiteral("Bore")));
    QStringList figures;
    for (QTreeWidgetItemIterator it(&shownFigures()); *it; ++it)
        figures << (*it)->text(0);
    EXPECT_TRUE(figures.contains(QStringLiteral("Effektives Drehmoment")))
        << figures.join(QStringLiteral("; ")).toStdString();
    // The decimal comma of the language, shown and typed.
    for (FieldEditor* editor : window_->numbers().findChildren<FieldEditor*>()) {
        if (editor->path() != "/mechanism/clearance_mm")
            continue;
        auto* edit = editor->findChild<NumberEdit*>();
        edit->setFocus();
        edit->selectAll();
        QTest::keyClicks(edit, QStringLiteral("8,25"));
        QTest::keyClick(edit, Qt::Key_Return);
        EXPECT_EQ(edit->text(), QStringLiteral("8,25"));
    }
    EXPECT_EQ(number("/mechanism/clearance_mm"), 8.25);
}
