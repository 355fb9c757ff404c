#include "core/design/file.h"
#include "core/text/caution.h"
#include "core/units.h"
#include "tests/ui/desktop_fixture.h"
#include "ui/base/core_text.h"
#include "ui/base/dialogs.h"
#include "ui/dialogs/export_dialog.h"
#include "ui/help/help_window.h"
#include "ui/panels/field_editor.h"
#include "ui/panels/figures_panel.h"
#include "ui/panels/limits_list.h"
#include "ui/panels/number_edit.h"
#include "ui/panels/number_panel.h"
#include "ui/plots/turn/lift_handles.h"
#include "ui/plots/turn/position_plot.h"
#include "ui/window/arrangement.h"
#include "ui/window/pane_grid.h"

#include <QFile>
#include <QLabel>
#include <QMessageBox>
#include <QMimeData>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTest>
#include <QTextDocument>
#include <QTextEdit>
#include <QToolButton>
#include <QTreeWidget>

using namespace lobewright;
using namespace lobewright::editing;
using namespace lobewright::ui;
using namespace lobewright::ui::test;

namespace {

NumberEdit& numberEdit(MainWindow& window, const std::string& path) {
    for (FieldEditor* editor : window.numbers().findChildren<FieldEditor*>()) {
        if (editor->path() == path)
            return *editor->findChild<NumberEdit*>();
    }
    throw std::runtime_error("no editor for " + path);
}

void type(NumberEdit& edit, const QString& text) {
    edit.setFocus();
    edit.selectAll();
    QTest::keyClicks(&edit, text);
    QTest::keyClick(&edit, Qt::Key_Return);
}

QStringList problemsShown(MainWindow& window) {
    QStringList shown;
    for (const QLabel* label : window.numbers().findChildren<QLabel*>("problem")) {
        if (label->isVisible())
            shown << label->text();
    }
    return shown;
}

constexpr const char* firstSpan = "/tracks/inlet/segments/0/span_deg";

} // namespace

TEST_F(WindowTest, OpensOnASolvedSampleThatTurns) {
    EXPECT_FALSE(window_->solution()->channels.empty());
    EXPECT_FALSE(window_->document().isModified());
    for (const char* key : {"section", "tracks", "position", "ports", "torque", "stress"})
        EXPECT_TRUE(view(QString::fromLatin1(key)).isVisible()) << key;
    const double before = window_->cursor().angle();
    QTest::mouseClick(window_->findChild<QToolButton*>("play"), Qt::LeftButton);
    EXPECT_TRUE(window_->cursor().isPlaying());
    QTest::qWait(300);
    QTest::mouseClick(window_->findChild<QToolButton*>("play"), Qt::LeftButton);
    EXPECT_FALSE(window_->cursor().isPlaying());
    EXPECT_NE(window_->cursor().angle(), before);
}

TEST_F(WindowTest, TypedSpanIsSolvedAndUndone) {
    const design::Design before = window_->document().design();
    const double span = number(firstSpan);
    type(numberEdit(*window_, firstSpan), QString::number(span - 1.5));
    EXPECT_NEAR(number(firstSpan), span - 1.5, 1e-9);
    ASSERT_TRUE(waitUntilSolved());
    ASSERT_TRUE(window_->document().undoStack().canUndo());
    window_->activateWindow();
    QTest::keyClick(window_.get(), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(window_->document().design(), before);
    EXPECT_EQ(readNumber(numberEdit(*window_, firstSpan).text()), span);
    ASSERT_TRUE(waitUntilSolved());
}

TEST_F(WindowTest, EntryThatBreaksARuleShowsItAndKeepsTheValue) {
    const double span = number(firstSpan);
    type(numberEdit(*window_, firstSpan), QStringLiteral("-4"));
    EXPECT_EQ(number(firstSpan), span);
    EXPECT_EQ(readNumber(numberEdit(*window_, firstSpan).text()), span);
    ASSERT_EQ(problemsShown(*window_).size(), 1);
    EXPECT_TRUE(problemsShown(*window_).front().contains(QStringLiteral("\u22124")));
    type(numberEdit(*window_, firstSpan), QString::number(span - 1.0));
    EXPECT_TRUE(problemsShown(*window_).isEmpty());
}

TEST_F(WindowTest, ArrowKeyStepsOfOneVisitAreOneUndoStep) {
    NumberEdit& speed = numberEdit(*window_, "/running/speed_rpm");
    const double before = number("/running/speed_rpm");
    speed.setFocus();
    for (int i = 0; i < 3; ++i)
        QTest::keyClick(&speed, Qt::Key_Up);
    EXPECT_GT(number("/running/speed_rpm"), before);
    EXPECT_EQ(window_->document().undoStack().count(), 1);
    ASSERT_TRUE(waitUntilSolved());
}

TEST_F(WindowTest, DraggedBoundMovesSpansOnBothSidesAsOneStep) {
    auto& plot = dynamic_cast<PositionPlot&>(view("position"));
    const auto from = plot.handles().placeOf(End::inlet, LiftGrip::Kind::bound, 1);
    ASSERT_TRUE(from);
    const double first = number(firstSpan);
    const double second = number("/tracks/inlet/segments/1/span_deg");
    const double pixels = plot.canvas().xOf(5.0 * units::degree) - plot.canvas().xOf(0.0);
    drag(plot.canvas(), *from, *from - QPointF(pixels, 0.0));
    EXPECT_NEAR(number(firstSpan), first - 5.0, 0.51);
    EXPECT_NEAR(number(firstSpan) + number("/tracks/inlet/segments/1/span_deg"), first + second,
                1e-9);
    EXPECT_EQ(window_->document().undoStack().count(), 1);
    ASSERT_TRUE(waitUntilSolved());
    window_->document().undoStack().undo();
    EXPECT_NEAR(number(firstSpan), first, 1e-9);
}

TEST_F(WindowTest, DraggedLiftChangesTheStroke) {
    auto& plot = dynamic_cast<PositionPlot&>(view("position"));
    const auto from = plot.handles().placeOf(End::inlet, LiftGrip::Kind::bound, 1);
    ASSERT_TRUE(from);
    const double stroke = number("/tracks/inlet/stroke_mm");
    const double pixels =
        plot.canvas().yAxis->coordToPixel(0.0) - plot.canvas().yAxis->coordToPixel(2.0);
    drag(plot.canvas(), *from, *from + QPointF(0.0, pixels));
    EXPECT_NEAR(number("/tracks/inlet/stroke_mm"), stroke - 2.0, 0.51);
    EXPECT_EQ(number(firstSpan),
              *std::get_if<double>(&design::findField(sampleDesign(), firstSpan)->value));
}

TEST_F(WindowTest, PlotsFollowWhileTheHandleIsStillHeld) {
    auto& plot = dynamic_cast<PositionPlot&>(view("position"));
    const auto from = plot.handles().placeOf(End::inlet, LiftGrip::Kind::bound, 1);
    ASSERT_TRUE(from);
    const Samples before = plot.curves().front().values;
    drag(plot.canvas(), *from, *from - QPointF(12.0, 0.0), false);
    EXPECT_GT((plot.curves().front().values - before).abs().maxCoeff(), 0.05);
    QTest::mouseRelease(&plot.canvas(), Qt::LeftButton, {}, from->toPoint());
}

TEST_F(WindowTest, ReleasedHandleAndRestingHandBothSettleTheSolution) {
    auto& plot = dynamic_cast<PositionPlot&>(view("position"));
    const auto from = plot.handles().placeOf(End::inlet, LiftGrip::Kind::bound, 1);
    ASSERT_TRUE(from);
    QSignalSpy solved(&window_->solver(), &Solver::solved);
    drag(plot.canvas(), *from, *from - QPointF(12.0, 0.0), false);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !solved.isEmpty(); }, 20000));
    EXPECT_TRUE(solved.first().first().value<SolutionPointer>()->live);
    ASSERT_TRUE(waitUntilSolved()) << "the hand rests, still holding";
    QTest::mouseMove(&plot.canvas(), (*from - QPointF(15.0, 0.0)).toPoint());
    QTest::mouseRelease(&plot.canvas(), Qt::LeftButton, {}, (*from - QPointF(15.0, 0.0)).toPoint());
    ASSERT_TRUE(waitUntilSolved());
    SilentMonitor silent;
    const auto fresh = solution::solve(window_->document().design(), silent);
    ASSERT_TRUE(fresh);
    EXPECT_EQ(*window_->solution()->figure("imep_bar")->value, *fresh->figure("imep_bar")->value);
}

TEST_F(WindowTest, TabGoesDownTheNumbers) {
    auto& panel = *window_->findChild<NumberPanel*>();
    NumberEdit& first = numberEdit(*window_, "/running/speed_rpm");
    first.setFocus();
    QTest::keyClick(&first, Qt::Key_Tab);
    EXPECT_EQ(QApplication::focusWidget(),
              &numberEdit(*window_, "/running/under_piston_pressure_bar"));
    // Everything that Tab reaches on the way stands below what it came from.
    int last = -1;
    for (int i = 0; i < 12; ++i) {
        QWidget* now = QApplication::focusWidget();
        ASSERT_TRUE(panel.isAncestorOf(now));
        const int y = now->mapTo(&panel, QPoint(0, now->height() / 2)).y() +
                      panel.findChild<QScrollArea*>()->verticalScrollBar()->value();
        EXPECT_GE(y, last - now->height()) << i;
        last = y;
        QTest::keyClick(now, Qt::Key_Tab);
    }
}

TEST_F(WindowTest, SavedReopenedAndComparedDesignIsTheSame) {
    type(numberEdit(*window_, "/running/speed_rpm"), QStringLiteral("1111"));
    const QString file = fileIn("engine.lobewright.json");
    ASSERT_TRUE(window_->saveTo(file));
    EXPECT_FALSE(window_->isWindowModified());
    const design::Design saved = window_->document().design();
    ASSERT_TRUE(waitUntilSolved());
    window_->keepBaseline();
    type(numberEdit(*window_, "/running/speed_rpm"), QStringLiteral("1222"));
    ASSERT_TRUE(waitUntilSolved());
    EXPECT_TRUE(window_->isWindowModified());
    FiguresPanel* figures = &shownFigures();
    EXPECT_FALSE(figures->isColumnHidden(2));

    ASSERT_TRUE(window_->openFile(file));
    ASSERT_TRUE(waitUntilSolved());
    EXPECT_EQ(window_->document().design(), saved);
    // The same design as the baseline: every difference reads "=".
    QTreeWidgetItemIterator item(figures);
    int compared = 0;
    for (; *item; ++item) {
        const QString difference = (*item)->text(2);
        if ((*item)->parent() && (*item)->parent()->data(0, Qt::UserRole) != "solver" &&
            !difference.isEmpty()) {
            EXPECT_EQ(difference, QStringLiteral("=")) << (*item)->text(0).toStdString();
            ++compared;
        }
    }
    EXPECT_GT(compared, 20);
}

TEST_F(WindowTest, UnusableFileListsItsProblemsAndKeepsTheDesign) {
    const QString file = fileIn("broken.lobewright.json");
    auto text = QString::fromStdString(design::writeDesign(sampleDesign()));
    text.replace(QRegularExpression("\"bore_mm\": [0-9.]+"), "\"bore_mm\": -64");
    text.replace(QRegularExpression("\"count\": [0-9]+"), "\"count\": \"many\"");
    QFile broken(file);
    ASSERT_TRUE(broken.open(QIODevice::WriteOnly));
    broken.write(text.toUtf8());
    broken.close();
    const design::Design before = window_->document().design();
    QStringList paths;
    onNextDialog([&](QDialog& dialog) {
        auto* list = dialog.findChild<QTreeWidget*>();
        for (int i = 0; list && i < list->topLevelItemCount(); ++i)
            paths << list->topLevelItem(i)->text(0);
    });
    EXPECT_FALSE(window_->openFile(file));
    EXPECT_TRUE(paths.contains("/mechanism/bore_mm"));
    EXPECT_TRUE(paths.contains("/ports/inlet/0/count"));
    EXPECT_EQ(window_->document().design(), before);
}

TEST_F(WindowTest, DroppedFileIsOpened) {
    const QString file = fileIn("dropped.lobewright.json");
    design::Design other = sampleDesign();
    other.title = "Dropped";
    ASSERT_FALSE(design::saveDesign(other, file.toStdString()));
    QMimeData data;
    data.setUrls({QUrl::fromLocalFile(file)});
    QDragEnterEvent enter({100, 100}, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(window_.get(), &enter);
    EXPECT_TRUE(enter.isAccepted());
    QDropEvent drop({100, 100}, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(window_.get(), &drop);
    EXPECT_EQ(window_->document().design().title, "Dropped");
}

TEST_F(WindowTest, CloseAsksAboutUnsavedChangesAndCancelStays) {
    window_ = std::make_unique<MainWindow>(MainWindow::Options{fileIn("recovery"), true});
    window_->show();
    window_->openSomething();
    ASSERT_TRUE(waitUntilSolved());
    Edit edit;
    edit.changes = {{"/mechanism/bore_mm", number("/mechanism/bore_mm") + 0.5}};
    ASSERT_TRUE(window_->document().apply(edit).empty());
    bool asked = false;
    onNextDialog([&](QDialog& dialog) {
        asked = true;
        QTest::mouseClick(static_cast<QMessageBox&>(dialog).button(QMessageBox::Cancel),
                          Qt::LeftButton);
    });
    EXPECT_FALSE(window_->close());
    EXPECT_TRUE(asked);
    onNextDialog([](QDialog& dialog) {
        QTest::mouseClick(static_cast<QMessageBox&>(dialog).button(QMessageBox::Discard),
                          Qt::LeftButton);
    });
    EXPECT_TRUE(window_->close());
}

TEST_F(WindowTest, ArrangementsAreOneKeystrokeApart) {
    auto* grid = window_->findChild<PaneGrid*>();
    ASSERT_NE(grid, nullptr);
    window_->activateWindow();
    QTest::keyClick(window_.get(), Qt::Key_3, Qt::ControlModifier);
    EXPECT_TRUE(grid->shownViews().contains("timing"));
    EXPECT_TRUE(grid->shownViews().contains("limits"));
    QTest::keyClick(window_.get(), Qt::Key_2, Qt::ControlModifier);
    EXPECT_TRUE(grid->shownViews().contains("stages"));
    EXPECT_FALSE(window_->numbers().isVisible());
    QTest::keyClick(window_.get(), Qt::Key_1, Qt::ControlModifier);
    EXPECT_TRUE(grid->shownViews().contains("tracks"));
    EXPECT_TRUE(window_->numbers().isVisible());
}

TEST_F(WindowTest, LimitGoesToItsFieldAndAngle) {
    // A pressure angle beyond its limit: a track of small radius.
    Edit edit;
    edit.changes = {{"/limits/pressure_angle_deg/warning", 5.0}};
    ASSERT_TRUE(window_->document().apply(edit).empty());
    ASSERT_TRUE(waitUntilSolved());
    LimitsList& limits = window_->limits();
    ASSERT_GT(limits.count(solution::Severity::warning), 0);
    QString wanted;
    QObject::connect(&limits, &LimitsList::fieldWanted, &limits,
                     [&](const QString& path) { wanted = path; });
    const auto& checks = window_->solution()->checks;
    const auto found = std::ranges::find_if(checks, [](const solution::Check& check) {
        return check.angle && !check.path.empty() && check.severity == solution::Severity::warning;
    });
    ASSERT_NE(found, checks.end());
    for (int row = 0; row < limits.model()->rowCount(); ++row) {
        const QModelIndex index = limits.model()->index(row, 0);
        if (index.data().toString().endsWith(QString::fromStdString(found->message.english())))
            Q_EMIT limits.clicked(index);
    }
    EXPECT_EQ(wanted.toStdString(), found->path);
    EXPECT_NEAR(window_->cursor().angle(), *found->angle, 1e-9);
}

TEST_F(WindowTest, LayoutIsRememberedFromRunToRun) {
    window_->arrange("reviewer");
    window_->close();
    MainWindow next({fileIn("recovery"), false});
    EXPECT_EQ(next.findChild<PaneGrid*>()->shownViews().front(), QStringLiteral("ports"));
}

// ---- the one caution ----

TEST_F(WindowTest, CautionStandsInTheStatusBarInAboutAndBeforeAnExport) {
    const QString words = coreText(caution());
    auto* button = window_->findChild<QToolButton*>(QStringLiteral("caution"));
    ASSERT_NE(button, nullptr);
    EXPECT_TRUE(button->isVisible());
    QTextDocument tip;
    tip.setHtml(button->toolTip());
    EXPECT_TRUE(tip.toPlainText().simplified().contains(words));
    button->click();
    ASSERT_NE(window_->helpWindow(), nullptr);
    EXPECT_EQ(window_->helpWindow()->page(), QStringLiteral("cautions.md"));
    QString about;
    onNextDialog([&about](QDialog& dialog) {
        if (auto* text = dialog.findChild<QTextEdit*>())
            about = text->toPlainText();
        dialog.reject();
    });
    showAbout(window_.get());
    EXPECT_TRUE(about.simplified().contains(words)) << about.toStdString();
    const ExportDialog out(window_->document().design(), QStringLiteral("x"), window_.get());
    auto* fixed = out.findChild<QLabel*>(QStringLiteral("caution"));
    ASSERT_NE(fixed, nullptr);
    EXPECT_EQ(fixed->text(), words);
}

// A value beyond its usual limit is said where limits are counted.
TEST_F(WindowTest, RemarksAreCountedBesideLimits) {
    Edit edit;
    edit.changes = {{"/roller_bearing/dynamic_rating_kN", std::monostate{}}};
    ASSERT_TRUE(window_->document().apply(edit).empty());
    ASSERT_TRUE(waitUntilSolved());
    const LimitsList& limits = window_->limits();
    int remarks = 0;
    for (const auto& check : window_->solution()->checks)
        remarks += check.severity == solution::Severity::remark ? 1 : 0;
    ASSERT_GT(remarks, 0);
    EXPECT_TRUE(limits.summary().contains(QString::number(remarks)))
        << limits.summary().toStdString();
    EXPECT_TRUE(limits.summary().contains(QStringLiteral("remark")));
}
