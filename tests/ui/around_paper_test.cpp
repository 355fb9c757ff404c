// Numbers and pages that leave the window: data of every view, printing, help beside a dialog.
#include "tests/ui/desktop_fixture.h"
#include "ui/help/help_window.h"
#include "ui/panels/figures_panel.h"
#include "ui/plots/base/plot_data.h"
#include "ui/plots/base/plot_export.h"
#include "ui/plots/turn/turn_plot.h"
#include "ui/window/hint_bar.h"
#include "ui/window/pane.h"
#include "ui/window/preferences.h"

#include <QApplication>
#include <QClipboard>
#include <QFile>
#include <QLabel>
#include <QMenu>
#include <QPrintDialog>
#include <QPrinter>
#include <QPushButton>
#include <QStatusBar>
#include <QTest>
#include <QToolButton>

using namespace lobewright;
using namespace lobewright::ui;
using namespace lobewright::ui::test;

namespace {

QByteArray contentOf(const QString& name) {
    QFile file(name);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

QAction* entry(const QMenu& menu, const QString& text) {
    for (QAction* action : menu.actions()) {
        if (QString(action->text()).remove(QLatin1Char('&')) == text)
            return action;
    }
    return nullptr;
}

/// Accepts the next print dialog with a file for its printer.
void printInto(const QString& file) {
    onNextDialog([file](QDialog& dialog) {
        auto* print = qobject_cast<QPrintDialog*>(&dialog);
        ASSERT_NE(print, nullptr);
        print->printer()->setOutputFormat(QPrinter::PdfFormat);
        print->printer()->setOutputFileName(file);
        print->done(QDialog::Accepted);
    });
}

double numberIn(const QString& text, qsizetype line, qsizetype column) {
    return text.split(QLatin1Char('\n'))
        .value(line)
        .split(QLatin1Char('\t'))
        .value(column)
        .toDouble();
}

} // namespace

TEST_F(WindowTest, EveryPlotGivesItsNumbers) {
    window_->keepBaseline();
    // Drawings, walks, entry forms and what is read as text have no columns; bands have none before
    // inputs have ranges, the map of a compressor none for an engine without one.
    const QStringList without = {"section", "tracks", "circle",   "liner",     "solid",  "clock",
                                 "walk",    "claims", "adjuster", "limits",    "ranges", "bands",
                                 "decides", "stages", "tasks",    "compressor"};
    for (const Views::View& view : window_->views().all()) {
        view.widget->setParent(window_.get());
        view.widget->show();
        if (!without.contains(view.key)) {
            // Studies and comparisons come from the background.
            EXPECT_TRUE(QTest::qWaitFor([&] { return !dataOf(*view.widget).empty(); }, 60000))
                << view.key.toStdString();
        }
        const auto sheets = dataOf(*view.widget);
        for (const DataSheet& sheet : sheets) {
            for (const QStringList& row : sheet.rows)
                ASSERT_EQ(row.size(), sheet.headings.size()) << view.key.toStdString();
            for (const QString& heading : sheet.headings) {
                EXPECT_FALSE(heading.startsWith(QLatin1String("Graph")))
                    << view.key.toStdString() << ": " << heading.toStdString();
            }
        }
        view.widget->hide();
    }
}

TEST_F(WindowTest, CopiedDataAreTheCurvesWithTheirUnits) {
    auto& plot = dynamic_cast<TurnPlot&>(view("position"));
    QMenu menu;
    plot.addOptions(menu);
    QAction* copy = entry(menu, QStringLiteral("Copy data"));
    ASSERT_NE(copy, nullptr);
    copy->trigger();
    const QString text = QApplication::clipboard()->text();
    EXPECT_TRUE(
        text.startsWith(QStringLiteral("shaft angle, °\tInlet piston, mm\tExhaust piston, mm\n")))
        << text.left(200).toStdString();
    const Curve& inlet = plot.curves().front();
    for (const Eigen::Index i : {Eigen::Index(0), inlet.values.size() / 3}) {
        EXPECT_NEAR(numberIn(text, i + 1, 0), inlet.theta[i] * 180.0 / 3.14159265358979, 1e-5);
        EXPECT_NEAR(numberIn(text, i + 1, 1), inlet.values[i], 1e-6);
    }
    ASSERT_TRUE(writeData(plot, fileIn("data.csv")));
    const QByteArray file = contentOf(fileIn("data.csv"));
    EXPECT_TRUE(file.startsWith("\"shaft angle, °\",\"Inlet piston, mm\""))
        << file.left(100).data();
    EXPECT_TRUE(file.endsWith("\r\n"));
    EXPECT_FALSE(writeData(plot, fileIn("no/folder/data.csv")));
}

TEST_F(WindowTest, CtrlPPrintsThePaneThatHasTheKeyboard) {
    view("torque").setFocus();
    EXPECT_EQ(viewHere()->key, QLatin1String("torque"));
    for (const char* theme : {"light", "dark"}) {
        window_->setTheme(QLatin1String(theme));
        const QString file = fileIn(QLatin1String(theme) + QStringLiteral(".pdf"));
        printInto(file);
        QTest::keyClick(window_.get(), Qt::Key_P, Qt::ControlModifier);
        EXPECT_TRUE(contentOf(file).startsWith("%PDF")) << theme;
        EXPECT_GT(contentOf(file).size(), 4000) << theme;
    }
    // The screen stays dark after printing in light tones.
    EXPECT_LT(view("torque").palette().color(QPalette::Window).lightness(), 100);
    window_->setTheme(QStringLiteral("light"));
}

TEST_F(WindowTest, ReportIsPrintedInTheBackground) {
    const QString file = fileIn("report.pdf");
    printInto(file);
    QTest::keyClick(window_.get(), Qt::Key_P, Qt::ControlModifier | Qt::ShiftModifier);
    ASSERT_TRUE(QTest::qWaitFor(
        [&] { return window_->statusBar()->currentMessage() == QLatin1String("Report printed"); },
        120000));
    const QByteArray pages = contentOf(file);
    EXPECT_TRUE(pages.startsWith("%PDF"));
    EXPECT_GE(pages.count("/Type /Page\n"), 4);
}

TEST_F(WindowTest, KeyF1OpensHelpBesideAModalDialog) {
    onNextDialog([](QDialog& dialog) {
        dialog.activateWindow();
        ASSERT_TRUE(QTest::qWaitFor([&] { return QApplication::activeWindow() == &dialog; }));
        QTest::keyClick(&dialog, Qt::Key_F1);
        auto* help = dialog.findChild<HelpWindow*>();
        ASSERT_NE(help, nullptr);
        EXPECT_TRUE(help->isVisible());
        EXPECT_EQ(help->page(), QLatin1String("preferences.md"));
        // It can be used while the dialog is open.
        EXPECT_EQ(QApplication::activeModalWidget(), &dialog);
        ASSERT_TRUE(QTest::qWaitFor([&] { return QApplication::activeWindow() == help; }));
        QTest::keyClick(help, Qt::Key_Home, Qt::AltModifier);
        EXPECT_EQ(help->page(), QLatin1String("contents.md"));
        help->close();
    });
    window_->editPreferences();
}

TEST_F(WindowTest, FirstHintIsShownOnceAndOnRequest) {
    const auto hintOf = [](const MainWindow& window) { return window.findChild<HintBar*>(); };
    const auto saysFirstHint = [](const HintBar& hint) {
        return hint.isVisible() &&
               hint.findChild<QLabel*>(QStringLiteral("hintText"))->text().startsWith("New here?");
    };
    EXPECT_FALSE(hintOf(*window_)->isVisibleTo(window_.get())); // asks nothing
    const auto opened = [&] {
        auto window = std::make_unique<MainWindow>(MainWindow::Options{fileIn("recovery"), true});
        window->show();
        window->openSomething();
        return window;
    };
    {
        const auto first = opened();
        EXPECT_TRUE(saysFirstHint(*hintOf(*first))); // what the sample is can wait
        QTest::mouseClick(hintOf(*first)->findChild<QToolButton*>(QStringLiteral("closeHint")),
                          Qt::LeftButton);
        EXPECT_FALSE(hintOf(*first)->isVisible());
    }
    const auto second = opened();
    EXPECT_FALSE(saysFirstHint(*hintOf(*second)));
    EXPECT_TRUE(hintOf(*second)->isVisible()); // now the sample
    for (QAction* action : second->findChildren<QAction*>()) {
        if (QString(action->text()).remove(QLatin1Char('&')) == QLatin1String("First hint"))
            action->trigger();
    }
    EXPECT_TRUE(saysFirstHint(*hintOf(*second)));
    QTest::keyClick(hintOf(*second), Qt::Key_Escape);
    EXPECT_FALSE(hintOf(*second)->isVisible());
}

TEST_F(WindowTest, FiguresTellTheirFormulaAndSource) {
    const QString help = window_->figures().helpOn(QStringLiteral("compression_ratio"));
    EXPECT_TRUE(help.contains(QLatin1String(" = "))) << help.toStdString();
    EXPECT_TRUE(help.contains(QLatin1String("Source: "))) << help.toStdString();
}
