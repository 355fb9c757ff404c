// Work that goes wrong, files that others write to, and what a crash leaves.
#include "core/design/file.h"
#include "tests/ui/trust_dialogs.h"
#include "ui/plots/study/comparison_worker.h"
#include "ui/plots/study/study_runner.h"

#include <QAbstractButton>
#include <QApplication>
#include <QDir>
#include <QLabel>
#include <QMessageBox>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <QTimer>
#include <QToolButton>
#include <QTreeWidget>

#include <stdexcept>
#include <sys/stat.h>

namespace lobewright::ui::test {
namespace {

Edit boreEdit(double mm) {
    return {QStringLiteral("Change bore"), {{"/mechanism/bore_mm", mm}}, {}, {}};
}

QAbstractButton* buttonOf(const QWidget& widget, const QString& text) {
    for (auto* button : widget.findChildren<QAbstractButton*>()) {
        if (button->text() == text)
            return button;
    }
    return nullptr;
}

// --- Barriers --------------------------------------------------------------------------------

TEST(Barrier, MistakeInASolveIsAProblemAndTheSolverGoesOn) {
    bool isFirst = true;
    Solver solver(nullptr,
                  [&](const design::Design& design, Monitor& monitor, const solution::Solution*,
                      Solver::Pace) -> Result<solution::Solution> {
                      if (std::exchange(isFirst, false))
                          throw std::domain_error("quadrature did not converge");
                      return solution::solve(design, monitor);
                  });
    QSignalSpy failed(&solver, &Solver::failed), solved(&solver, &Solver::solved);
    solver.request(sampleDesign(), 1, Solver::Pace::settled);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !failed.isEmpty(); }, 20000));
    const auto problems = failed.front().front().value<Problems>();
    EXPECT_NE(problems.front().message.english().find("quadrature did not converge"),
              std::string::npos);
    solver.request(sampleDesign(), 2, Solver::Pace::settled);
    EXPECT_TRUE(QTest::qWaitFor([&] { return !solved.isEmpty(); }, 20000));
}

TEST(Barrier, MistakeInAStudyEndsTheStudyOnly) {
    StudyRunner runner;
    QSignalSpy failed(&runner, &StudyRunner::failed);
    runner.request(
        [](Monitor&, const study::PointSink&) -> Result<study::Table> { throw std::bad_alloc(); });
    ASSERT_TRUE(QTest::qWaitFor([&] { return !failed.isEmpty(); }, 20000));
    EXPECT_FALSE(runner.isBusy());
}

// --- A file that somebody else writes to -------------------------------------------------------

class ForeignChange : public WindowTest {
  protected:
    void SetUp() override {
        WindowTest::SetUp();
        file_ = fileIn("shared.lobewright.json");
        ASSERT_TRUE(window_->saveTo(file_));
    }
    /// As another window would save it.
    void writeElsewhere(double bore) {
        Document other;
        ASSERT_TRUE(other.open(file_).empty());
        ASSERT_TRUE(other.apply(boreEdit(bore)).empty());
        ASSERT_FALSE(other.save(file_));
    }
    double boreOnDisk() const { return design::loadDesign(file_.toStdString())->mechanism.bore; }
    QString hint() const {
        const auto* label = window_->findChild<QLabel*>("hintText");
        return label->isVisible() ? label->text() : QString();
    }
    QString file_;
};

TEST_F(ForeignChange, SavingShowsWhatDiffersAndCancelLosesNothing) {
    writeElsewhere(70.5);
    window_->document().apply(boreEdit(66.0));
    QString input, mine, theirs;
    DialogSeries dialogs({[&](QDialog& dialog) {
        const auto* list = dialog.findChild<QTreeWidget*>("differences");
        ASSERT_TRUE(list);
        ASSERT_EQ(list->topLevelItemCount(), 1);
        input = list->topLevelItem(0)->text(0);
        mine = list->topLevelItem(0)->text(1);
        theirs = list->topLevelItem(0)->text(2);
        dialog.reject();
    }});
    EXPECT_FALSE(window_->saveTo(file_));
    EXPECT_TRUE(dialogs.waitUntilOver());
    EXPECT_TRUE(input.endsWith("Bore")) << input.toStdString();
    EXPECT_EQ(mine, "66 mm");
    EXPECT_EQ(theirs, "70.5 mm");
    EXPECT_NEAR(boreOnDisk(), 0.0705, 1e-12);
    EXPECT_TRUE(window_->document().isModified());
}

TEST_F(ForeignChange, OverwritingAndReloadingAreOffered) {
    writeElsewhere(70.5);
    window_->document().apply(boreEdit(66.0));
    {
        DialogSeries dialogs(
            {[](QDialog& dialog) { buttonOf(dialog, "&Reload the file")->click(); }});
        EXPECT_FALSE(window_->saveTo(file_));
        EXPECT_TRUE(dialogs.waitUntilOver());
    }
    EXPECT_NEAR(number("/mechanism/bore_mm"), 70.5, 1e-12);
    EXPECT_FALSE(window_->document().isModified());
    window_->document().undoStack().undo();
    EXPECT_NEAR(number("/mechanism/bore_mm"), 66.0, 1e-12) << "nothing is lost by reloading";
    writeElsewhere(71.0);
    {
        DialogSeries dialogs(
            {[](QDialog& dialog) { buttonOf(dialog, "&Overwrite the file")->click(); }});
        EXPECT_TRUE(window_->saveTo(file_));
        EXPECT_TRUE(dialogs.waitUntilOver());
    }
    EXPECT_NEAR(boreOnDisk(), 0.066, 1e-12);
}

TEST_F(ForeignChange, IsNoticedAtOnceAndOwnSavesAreNot) {
    for (const double mm : {66.0, 67.0, 68.0}) {
        window_->document().apply(boreEdit(mm));
        ASSERT_TRUE(window_->saveTo(file_));
        QTest::qWait(300);
    }
    EXPECT_FALSE(hint().contains("another window")) << hint().toStdString();
    writeElsewhere(70.5);
    ASSERT_TRUE(QTest::qWaitFor([&] { return hint().contains("another window"); }, 5000));
    DialogSeries dialogs({[](QDialog& dialog) { buttonOf(dialog, "&Reload the file")->click(); }});
    buttonOf(*window_, "Compare…")->click();
    EXPECT_TRUE(dialogs.waitUntilOver());
    EXPECT_NEAR(number("/mechanism/bore_mm"), 70.5, 1e-12);
}

TEST_F(ForeignChange, FileThatIsNoDesignAnyMoreIsNotReplacedUnasked) {
    write(file_, "not a design");
    window_->document().apply(boreEdit(66.0));
    DialogSeries dialogs({[](QDialog& dialog) {
        EXPECT_FALSE(buttonOf(dialog, "&Reload the file")->isEnabled());
        dialog.reject();
    }});
    EXPECT_FALSE(window_->saveTo(file_));
    EXPECT_TRUE(dialogs.waitUntilOver());
    EXPECT_EQ(contents(file_), "not a design");
}

// Read from a pipe that is filled only later: the window goes on handling events meanwhile.
TEST_F(ForeignChange, FileThatTakesLongIsReadBesideTheWindow) {
    const QString pipe = fileIn("slow.lobewright.json");
    ASSERT_EQ(::mkfifo(pipe.toLocal8Bit().constData(), 0600), 0);
    const std::string text = design::writeDesign(sampleDesign());
    bool isShown = false;
    QTimer::singleShot(1500, window_.get(), [&] {
        isShown = QApplication::activeModalWidget() != nullptr;
        write(pipe, QByteArray::fromStdString(text));
    });
    EXPECT_TRUE(window_->openFile(pipe));
    EXPECT_TRUE(isShown) << "that it is being read";
    EXPECT_EQ(window_->document().design(), sampleDesign());
}

// --- Recovery ------------------------------------------------------------------------------------

class Recovery : public ::testing::Test {
  protected:
    QString recovery() const { return folder_.filePath("recovery"); }
    QString in(const QString& name) const { return recovery() + QLatin1Char('/') + name; }
    void SetUp() override { QDir().mkpath(recovery()); }
    QTemporaryDir folder_;
};

TEST_F(Recovery, WhatCannotBeReadIsSetAsideAndNamed) {
    const QByteArray newer = R"({"format": "lobewright-design", "format_version": 99})";
    write(in("newer.lobewright.json"), newer);
    write(in("cut.lobewright.json"), R"({"format": "lobewright-de)");
    MainWindow window(MainWindow::Options{recovery(), true});
    QStringList said;
    const auto read = [&](QDialog& dialog) {
        said << dynamic_cast<QMessageBox&>(dialog).text();
        dialog.accept();
    };
    DialogSeries dialogs({read, read});
    window.openSomething();
    EXPECT_TRUE(dialogs.waitUntilOver());
    EXPECT_EQ(contents(in("unread/newer.lobewright.json")), newer);
    EXPECT_TRUE(QFile::exists(in("unread/cut.lobewright.json")));
    EXPECT_TRUE(said.join(' ').contains(in("unread/newer.lobewright.json")));
    EXPECT_TRUE(window.autosave().leftovers().empty()) << "said once";
}

TEST_F(Recovery, SaysWhenNoCopiesCanBeKept) {
    write(folder_.filePath("file"), "in the way of the folder");
    MainWindow window(MainWindow::Options{folder_.filePath("file/recovery"), false});
    window.show();
    const auto* state = window.findChild<QLabel*>("recoveryState");
    ASSERT_TRUE(state);
    EXPECT_TRUE(state->isVisible());
    EXPECT_EQ(state->text(), "Recovery off");
    EXPECT_FALSE(state->accessibleDescription().isEmpty());
}

TEST_F(Recovery, RemovesWhatEndedProgramsLeftBesideNoCopy) {
    write(in("gone.lobewright.json.ini"), "[General]\nname=gone\n");
    write(in(".gone.lobewright.json.4711.part"), "{");
    write(in("kept.lobewright.json"), design::writeDesign(sampleDesign()).c_str());
    write(in("kept.lobewright.json.ini"), "[General]\nname=kept\n");
    write(in("notes.txt"), "not ours");
    Document document;
    document.start(sampleDesign(), QStringLiteral("sample"));
    const Autosave autosave(document, recovery());
    EXPECT_FALSE(QFile::exists(in("gone.lobewright.json.ini")));
    EXPECT_FALSE(QFile::exists(in(".gone.lobewright.json.4711.part")));
    EXPECT_FALSE(QFile::exists(in("gone.lobewright.json.lock")));
    EXPECT_TRUE(QFile::exists(in("kept.lobewright.json.ini")));
    EXPECT_TRUE(QFile::exists(in("notes.txt")));
    ASSERT_EQ(autosave.leftovers().size(), 1U);
    EXPECT_EQ(autosave.leftovers().front().name, "kept");
}

TEST_F(Recovery, KnowsThatTheFileWentOnWithoutTheCopy) {
    // Work on a file, a copy of it, and after the crash somebody saves the file anew.
    const QString file = folder_.filePath("engine.lobewright.json");
    Document before;
    before.start(sampleDesign(), {});
    ASSERT_FALSE(before.save(file));
    ASSERT_TRUE(before.apply(boreEdit(66.0)).empty());
    Autosave crashed(before, recovery());
    crashed.update();
    for (const char* extra : {"", ".ini"}) {
        ASSERT_TRUE(QFile::copy(crashed.file() + extra,
                                in(QStringLiteral("copy.lobewright.json") + extra)));
    }
    Document other;
    ASSERT_TRUE(other.open(file).empty());
    ASSERT_TRUE(other.apply(boreEdit(70.5)).empty());
    ASSERT_FALSE(other.save(file));

    MainWindow window(MainWindow::Options{recovery(), true});
    DialogSeries dialogs({[](QDialog& dialog) { buttonOf(dialog, "&Recover them")->click(); }});
    window.openSomething();
    EXPECT_TRUE(dialogs.waitUntilOver());
    EXPECT_NEAR(window.document().design().mechanism.bore, 0.066, 1e-12);
    EXPECT_TRUE(window.document().isFileChanged());
}

} // namespace
} // namespace lobewright::ui::test
