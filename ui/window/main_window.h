#pragma once

#include "ui/window/baseline_commands.h"
#include "ui/window/design_files.h"
#include "ui/window/help_commands.h"
#include "ui/window/preference_commands.h"
#include "ui/window/report_commands.h"
#include "ui/window/safekeeping.h"
#include "ui/window/session.h"
#include "ui/window/side_panel.h"
#include "ui/window/views.h"
#include "ui/window/window_layout.h"

#include <QMainWindow>

#include <memory>

namespace lobewright::ui {

class DialogCommands;
class FieldKeys;
class HintBar;
class SampleHints;
class StatusLine;

/// The client area nearest to the present one whose frame lies within the part of the screen that
/// windows may use.
QRect fittingClient(const QRect& client, const QRect& frame, const QRect& available);

/// The window of the program: one document, its solution, and everything that shows them. It makes
/// the parts and connects them; each part does its own work.
class MainWindow : public QMainWindow {
    Q_OBJECT

  public:
    struct Options {
        QString recoveryFolder;    ///< empty: the program's own
        bool asksQuestions = true; ///< false: nothing is asked on closing or opening (pictures)
    };

    explicit MainWindow(const Options& options, QWidget* parent = nullptr);
    explicit MainWindow(QWidget* parent = nullptr) : MainWindow(Options(), parent) {}
    ~MainWindow() override;

    Document& document() { return session_.document; }
    TurnCursor& cursor() { return session_.cursor; }
    Solver& solver() { return session_.live.solver(); }
    const Baseline& baseline() const { return session_.baseline; }
    /// Of the newest design that could be solved; null before the first.
    const SolutionPointer& solution() const { return session_.live.solution(); }
    Autosave& autosave() { return safekeeping_->autosave(); }

    Views& views() { return *views_; }
    NumberPanel& numbers() { return side_->numbers(); }
    LimitsList& limits() { return side_->limits(); }
    FiguresPanel& figures() { return side_->figures(); }
    SnapshotsPanel& snapshots() { return side_->snapshots(); }
    WorkingView& working() { return side_->working(); }
    PlaybackBar& playback() { return *playback_; }
    /// Null before it was opened first.
    HelpWindow* helpWindow() const { return help_->window(); }

    bool openFile(const QString& file) { return files_->open(file); }
    void openSomething(const QString& file = {}) { files_->openSomething(file); }
    bool saveTo(const QString& file) { return files_->saveTo(file); }
    void writeReport(const QString& file) { reports_->write(file); }
    void keepBaseline() { baselines_->keep(); }
    void arrange(const QString& key) { layout_->arrange(key); }
    void setTheme(const QString& name) { preferences_->setTheme(name); }
    void editPreferences() { preferences_->edit(); }
    void openHelp(const QString& page) { help_->open(page); }
    QString helpPageHere() const { return help_->pageHere(); }

  protected:
    void closeEvent(QCloseEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

  private:
    void buildCentre();
    void buildCommands();
    void buildMenus();
    void connectCommands();
    void connectDocument();
    void connectResults();
    void updateTitle();
    void fitOnScreen();

    Options options_;
    Session session_;
    Views* views_ = nullptr;
    SidePanel* side_ = nullptr;
    PlaybackBar* playback_ = nullptr;
    HintBar* hint_ = nullptr;
    WindowLayout* layout_ = nullptr;
    StatusLine* status_ = nullptr;
    std::unique_ptr<Safekeeping> safekeeping_;
    SampleHints* hints_ = nullptr;
    DesignFiles* files_ = nullptr;
    DialogCommands* dialogs_ = nullptr;
    BaselineCommands* baselines_ = nullptr;
    ReportCommands* reports_ = nullptr;
    PreferenceCommands* preferences_ = nullptr;
    HelpCommands* help_ = nullptr;
    FieldKeys* fieldKeys_ = nullptr;
    bool wasShown_ = false;
};

} // namespace lobewright::ui
