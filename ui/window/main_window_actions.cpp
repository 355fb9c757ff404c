#include "ui/base/core_text.h"
#include "ui/base/dialogs.h"
#include "ui/base/look.h"
#include "ui/dialogs/knot_fit_dialog.h"
#include "ui/dialogs/lift_import_dialog.h"
#include "ui/dialogs/wheel_import_dialog.h"
#include "ui/document/recent_files.h"
#include "ui/document/samples.h"
#include "ui/help/help_pages.h"
#include "ui/help/help_window.h"
#include "ui/panels/figures_panel.h"
#include "ui/panels/limits_list.h"
#include "ui/panels/number_panel.h"
#include "ui/panels/snapshots_panel.h"
#include "ui/window/frames_dialog.h"
#include "ui/window/main_window.h"
#include "ui/window/pane.h"
#include "ui/window/pane_grid.h"
#include "ui/window/playback_bar.h"
#include "ui/window/shortcuts.h"
#include "ui/window/view_themes.h"

#include <QActionGroup>
#include <QApplication>
#include <QMenuBar>
#include <QSettings>
#include <QTabWidget>

namespace lobewright::ui {

void MainWindow::buildActions() {
    buildFileMenu();
    buildEditMenu();
    buildBaselineMenu();
    buildViewMenu();
    buildMotionMenu();
    buildHelpMenu();
}

void MainWindow::buildFileMenu() {
    QMenu* menu = menuBar()->addMenu(tr("&File"));
    menu->addAction(tr("&New…"), QKeySequence::New, this, &MainWindow::newEngine)
        ->setStatusTip(tr("From published figures, a duty, a picture, a sample, or blank"));
    buildSampleMenu(*menu->addMenu(tr("New from &sample")));
    menu->addAction(tr("&Open…"), QKeySequence::Open, this, &MainWindow::askForFile);
    recent_ = new RecentFiles(this);
    menu->addMenu(recent_);
    connect(recent_, &RecentFiles::fileChosen, this, [this](const QString& file) {
        if (mayDiscard() && !openFile(file))
            recent_->remove(file);
    });
    menu->addSeparator();
    save_ = menu->addAction(tr("&Save"), QKeySequence::Save, this, &MainWindow::save);
    menu->addAction(tr("Save &as…"), QKeySequence(tr("Ctrl+Shift+S")), this, &MainWindow::saveAs);
    exportResults_ =
        menu->addAction(tr("&Export results…"), this, &MainWindow::askForResultsFolder);
    exportResults_->setStatusTip(tr("Channels over one revolution as CSV, all results as JSON"));
    addReportAction(*menu);
    addPrintActions(*menu);
    menu->addAction(tr("Export a &track…"), QKeySequence(tr("Ctrl+E")), this,
                    &MainWindow::exportTrack)
        ->setStatusTip(tr("Solid, mesh, drawing, cutter path or tables of one track"));
    menu->addAction(tr("Export &pictures over one revolution…"), this,
                    [this] {
                        const Views::View* here = viewHere();
                        FramesDialog(*views_, cursor_, document_.name(),
                                     here ? here->key : QString(), this)
                            .exec();
                    })
        ->setStatusTip(tr("A drawing as numbered pictures that join into a loop"));
    menu->addAction(tr("&Import a lift table…"), this,
                    [this] { LiftImportDialog(document_, this).exec(); })
        ->setStatusTip(tr("A table of angle and lift becomes knots of a track"));
    menu->addAction(tr("Import measured &compressor points…"), this, &MainWindow::importWheel)
        ->setStatusTip(tr("A table of speed, flow, pressure ratio and efficiency becomes the "
                          "compressor wheel"));
    menu->addSeparator();
    menu->addAction(tr("&Quit"), QKeySequence(tr("Ctrl+Q")), this, &QWidget::close);
}

namespace {
QString notesOf(const Sample& sample) {
    return QStringLiteral("<p>%1</p>").arg(sampleText(sample.notes).toHtmlEscaped());
}
} // namespace

void MainWindow::importWheel() {
    WheelImportDialog(document_, this).exec();
}

void MainWindow::buildSampleMenu(QMenu& menu) {
    menu.setToolTipsVisible(true);
    for (int i = 0; i < static_cast<int>(samples().size()); ++i) {
        const Sample& sample = samples()[static_cast<size_t>(i)];
        QAction* action = menu.addAction(sampleText(sample.title));
        action->setToolTip(notesOf(sample));
        connect(action, &QAction::triggered, this, [this, i] {
            if (mayDiscard())
                openSample(i);
        });
    }
}

void MainWindow::buildEditMenu() {
    QMenu* menu = menuBar()->addMenu(tr("&Edit"));
    QAction* undo = document_.undoStack().createUndoAction(this, tr("&Undo"));
    undo->setShortcut(QKeySequence::Undo);
    QAction* redo = document_.undoStack().createRedoAction(this, tr("&Redo"));
    redo->setShortcuts({QKeySequence(tr("Ctrl+Shift+Z")), QKeySequence(tr("Ctrl+Y"))});
    menu->addAction(undo);
    menu->addAction(redo);
    menu->addSeparator();
    addSnapshotActions(*menu);
    menu->addSeparator();
    menu->addAction(tr("&Find an input"), QKeySequence::Find, this, [this] {
        sideShown_->setChecked(true);
        side_->setCurrentWidget(numbers_);
        numbers_->focusSearch();
    });
    addKnownActions(*menu);
    menu->addAction(tr("Turn a track into &knots…"), QKeySequence(tr("Ctrl+K")), this,
                    [this] { turnIntoKnots(End::inlet); })
        ->setStatusTip(tr("Any track becomes a free-form one; shows what the fit costs"));
    menu->addSeparator();
    menu->addAction(tr("&Preferences…"), QKeySequence(tr("Ctrl+,")), this,
                    &MainWindow::editPreferences)
        ->setMenuRole(QAction::PreferencesRole);
}

void MainWindow::turnIntoKnots(End end) {
    KnotFitDialog(document_, end, this).exec();
}

void MainWindow::buildBaselineMenu() {
    QMenu* menu = menuBar()->addMenu(tr("&Baseline"));
    keepBaseline_ = menu->addAction(tr("&Keep this design as baseline"), QKeySequence(tr("Ctrl+B")),
                                    this, &MainWindow::keepBaseline);
    menu->addAction(tr("&Open a file as baseline…"), this, &MainWindow::openBaseline);
    QMenu* sampleMenu = menu->addMenu(tr("A &sample as baseline"));
    sampleMenu->setObjectName(QStringLiteral("sampleBaselines"));
    sampleMenu->setToolTipsVisible(true);
    for (const Sample& sample : samples()) {
        const QString title = sampleText(sample.title);
        QAction* action = sampleMenu->addAction(title, this, [this, &sample, title] {
            if (const auto design = loadSample(sample))
                baseline_.keep(*design, title);
        });
        action->setToolTip(notesOf(sample));
    }
    swapBaseline_ =
        menu->addAction(tr("&Exchange design and baseline"), this, &MainWindow::swapWithBaseline);
    menu->addSeparator();
    forgetBaseline_ =
        menu->addAction(tr("&Forget the baseline"), this, [this] { baseline_.forget(); });
}

void MainWindow::buildViewMenu() {
    QMenu* menu = menuBar()->addMenu(tr("&View"));
    arrangementGroup_ = new QActionGroup(this);
    int number = 0;
    for (const Arrangement& arrangement : arrangements()) {
        QAction* action = menu->addAction(QStringLiteral("&") + arrangement.title,
                                          QKeySequence(tr("Ctrl+%1").arg(++number % 10)), this,
                                          [this, key = arrangement.key] { arrange(key); });
        action->setCheckable(true);
        action->setData(arrangement.key);
        action->setStatusTip(arrangement.hint);
        arrangementGroup_->addAction(action);
    }
    menu->addAction(tr("&Reset this arrangement"), this, [this] { grid_->reset(); });
    QMenu* everyView = menu->addMenu(tr("Sho&w in the lower right pane"));
    everyView->setObjectName(QStringLiteral("everyView"));
    addViewMenus(*everyView, *views_, {}, [this](const QString& key) { grid_->reveal(key); });
    menu->addSeparator();
    sideShown_ = menu->addAction(tr("S&ide panel"));
    sideShown_->setShortcut(QKeySequence(tr("F9")));
    sideShown_->setCheckable(true);
    sideShown_->setChecked(true);
    connect(sideShown_, &QAction::toggled, this, [this](bool shown) { side_->setVisible(shown); });
    menu->addAction(tr("Show the &whole turn"), &cursor_, &TurnCursor::showWholeTurn);
    menu->addSeparator();
    buildUnitsMenu(*menu->addMenu(tr("U&nits")));
    buildThemeMenu(*menu->addMenu(tr("&Theme")));
    QAction* full = menu->addAction(tr("F&ull screen"));
    full->setShortcut(QKeySequence(tr("F11")));
    full->setCheckable(true);
    connect(full, &QAction::toggled, this,
            [this](bool on) { setWindowState(windowState().setFlag(Qt::WindowFullScreen, on)); });
}

void MainWindow::buildUnitsMenu(QMenu& menu) {
    unitsGroup_ = new QActionGroup(this);
    const std::pair<UnitSystem, QString> listed[] = {{UnitSystem::metric, tr("&Metric")},
                                                     {UnitSystem::inch, tr("&Inch")}};
    for (const auto& [system, title] : listed) {
        QAction* action = menu.addAction(title);
        action->setCheckable(true);
        action->setData(static_cast<int>(system));
        unitsGroup_->addAction(action);
        connect(action, &QAction::triggered, this,
                [chosen = system] { Units::instance().setSystem(chosen); });
    }
    unitsGroup_->actions()[1]->setStatusTip(
        tr("Inches, psi, lb·ft and °F wherever numbers are shown or typed; files stay metric"));
    const auto showChosen = [this] {
        for (QAction* action : unitsGroup_->actions())
            action->setChecked(action->data().toInt() ==
                               static_cast<int>(Units::instance().system()));
    };
    connect(&Units::instance(), &Units::changed, this, showChosen);
    showChosen();
}

void MainWindow::buildThemeMenu(QMenu& menu) {
    themeGroup_ = new QActionGroup(this);
    const std::pair<Theme, QString> listed[] = {{Theme::system, tr("As the &system")},
                                                {Theme::light, tr("&Light")},
                                                {Theme::dark, tr("&Dark")}};
    for (const auto& [theme, title] : listed) {
        QAction* action = menu.addAction(title);
        action->setCheckable(true);
        action->setData(nameOf(theme));
        themeGroup_->addAction(action);
        connect(action, &QAction::triggered, this,
                [this, action] { setTheme(action->data().toString()); });
    }
}

void MainWindow::buildMotionMenu() {
    QMenu* menu = menuBar()->addMenu(tr("&Motion"));
    play_ =
        menu->addAction(tr("&Play"), QKeySequence(tr("F5")), &cursor_, &TurnCursor::togglePlaying);
    menu->addAction(tr("Pre&vious event"), QKeySequence(tr("F7")), playback_,
                    &PlaybackBar::toPreviousEvent);
    menu->addAction(tr("&Next event"), QKeySequence(tr("F8")), playback_,
                    &PlaybackBar::toNextEvent);
    connect(&cursor_, &TurnCursor::playingChanged, this,
            [this](bool playing) { play_->setText(playing ? tr("&Pause") : tr("&Play")); });
}

void MainWindow::buildHelpMenu() {
    QMenu* menu = menuBar()->addMenu(tr("&Help"));
    menu->addAction(tr("&Help on this pane"), QKeySequence(tr("F1")), this,
                    [this] { openHelp(helpPageHere()); })
        ->setStatusTip(tr("The page of the pane that has the keyboard"));
    menu->addAction(tr("Help &contents"), this, [this] { openHelp(helpPages().front().file); });
    menu->addAction(tr("&First hint"), this, &MainWindow::greet)
        ->setStatusTip(tr("The hint shown at the first start"));
    menu->addAction(tr("&Keyboard shortcuts…"), QKeySequence(tr("Shift+F1")), this,
                    [this] { showShortcuts(this, *menuBar()); });
    menu->addSeparator();
    menu->addAction(tr("&About Lobewright"), this, [this] { showAbout(this); });
}

QString MainWindow::helpPageHere() const {
    const auto pageOf = [this](const QWidget* widget) -> QString {
        if (widget == numbers_ || numbers_->isAncestorOf(widget))
            return QStringLiteral("numbers.md");
        if (widget == limits_ || figures_->parentWidget()->isAncestorOf(widget))
            return QStringLiteral("limits.md");
        if (snapshots_->isAncestorOf(widget))
            return QStringLiteral("baseline.md");
        const Pane* pane = paneOf(widget);
        return pane ? helpOfView(pane->view()->key) : QString();
    };
    for (const QWidget* widget :
         {QApplication::focusWidget(), QApplication::widgetAt(QCursor::pos())}) {
        if (const QString page = pageOf(widget); !page.isEmpty())
            return page;
    }
    const QAction* arrangement = arrangementGroup_->checkedAction();
    return arrangement ? helpOfArrangement(arrangement->data().toString()) : QString();
}

void MainWindow::openHelp(const QString& page) {
    if (!help_)
        help_ = new HelpWindow(this);
    help_->open(page);
}

void MainWindow::searchHelp(const QString& words) {
    if (!help_)
        help_ = new HelpWindow(this);
    help_->searchFor(words);
}

void MainWindow::updateActions() {
    const bool solved = isSettled();
    keepBaseline_->setEnabled(solved || solver_.isBusy());
    exportResults_->setEnabled(solved);
    report_->setEnabled(solved);
    printReport_->setEnabled(solved);
    const bool compares = baseline_.solution() != nullptr;
    swapBaseline_->setEnabled(compares);
    forgetBaseline_->setEnabled(compares);
    save_->setEnabled(document_.isModified() || document_.path().isEmpty());
}

void MainWindow::updateTitle() {
    QString title = document_.name() + QStringLiteral("[*]");
    if (document_.path().isEmpty())
        title += tr(" (not saved yet)");
    setWindowTitle(title + tr(" – Lobewright"));
    setWindowModified(document_.isModified());
    setWindowFilePath(document_.path());
    updateActions();
}

void MainWindow::setTheme(const QString& name) {
    Preferences preferences = Preferences::load();
    preferences.theme = themeNamed(name);
    preferences.save();
    applyToProgram(preferences);
    applyPreferences(preferences);
}

void MainWindow::applyPreferences(const Preferences& preferences) {
    for (QAction* action : themeGroup_->actions())
        action->setChecked(action->data().toString() == nameOf(preferences.theme));
    autosave().setInterval(std::chrono::seconds(preferences.autosaveInterval));
    playback_->setUsualFactor(preferences.slowMotion);
}

void MainWindow::editPreferences() {
    PreferencesDialog dialog(this);
    connect(&dialog, &PreferencesDialog::changed, this, [this](const Preferences& preferences) {
        applyToProgram(preferences);
        applyPreferences(preferences);
    });
    dialog.exec();
}

} // namespace lobewright::ui
