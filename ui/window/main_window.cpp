#include "ui/window/main_window.h"

#include "ui/base/calm_wheel.h"
#include "ui/base/layouts.h"
#include "ui/help/dialog_help.h"
#include "ui/panels/figures_panel.h"
#include "ui/panels/number_panel.h"
#include "ui/plots/study/schedule_strip.h"
#include "ui/plots/study/torque_curve.h"
#include "ui/window/dialog_commands.h"
#include "ui/window/field_keys.h"
#include "ui/window/figures_bar.h"
#include "ui/window/hint_bar.h"
#include "ui/window/playback_bar.h"
#include "ui/window/preferences.h"
#include "ui/window/sample_hints.h"
#include "ui/window/small_screen.h"
#include "ui/window/snapshot_commands.h"
#include "ui/window/space_plays.h"
#include "ui/window/status_line.h"

#include <QCloseEvent>
#include <QMenuBar>
#include <QMimeData>
#include <QScreen>
#include <QSplitter>
#include <QStandardPaths>
#include <QTimer>

#include <algorithm>
#include <utility>

namespace lobewright::ui {

namespace {
constexpr QSize firstSize(1280, 800);
constexpr int frameTime = 150; // [ms] that a window manager may take to put on its frame
} // namespace

MainWindow::MainWindow(const Options& options, QWidget* parent)
    : QMainWindow(parent), options_(options), session_(*this) {
    setObjectName(QStringLiteral("window"));
    setAcceptDrops(true);
    resize(firstSize.boundedTo(screen()->availableSize()));
    buildCentre();
    connectResults(); // before the commands: views show a solution before they show a baseline of
                      // it
    buildCommands();
    buildMenus();
    fieldKeys_ = new FieldKeys(*this);
    new CalmWheel(this);
    new DialogFit(this);
    new SpacePlays(session_.cursor, *this);
    connectDocument();
    connectCommands();
    preferences_->apply(Preferences::load());
    layout_->restore();
    updateTitle();
    new DialogHelp(this);
    hints_->greetOnce();
}

/// What goes last shall tell nobody any more.
MainWindow::~MainWindow() {
    session_.live.solver().disconnect();
    session_.live.disconnect();
    session_.baseline.disconnect();
    session_.document.disconnect();
    session_.document.undoStack().disconnect();
}

void MainWindow::buildCentre() {
    auto* centre = new QWidget(this);
    auto* column = columnOf(centre, {0, 0, 0, 0}, 0, {});
    auto* split = new QSplitter(Qt::Horizontal);
    side_ = new SidePanel(session_.cursor, split);
    views_ = new Views(session_.cursor, centre);
    layout_ = new WindowLayout(session_, *split, *side_, *views_);
    status_ = new StatusLine(session_, *centre);
    playback_ = new PlaybackBar(session_.cursor, centre);
    auto* scroll = new CentreScroll(split, centre);
    column->addWidget(scroll, 1);
    column->addWidget(playback_);
    hint_ = new HintBar(*scroll);
    setCentralWidget(centre);
}

void MainWindow::buildCommands() {
    QString folder = options_.recoveryFolder;
    if (folder.isEmpty()) {
        folder = QStandardPaths::writableLocation(QStandardPaths::AppDataLocation) +
                 QStringLiteral("/recovery");
    }
    safekeeping_ = std::make_unique<Safekeeping>(session_.document, folder, *this, *hint_,
                                                 status_->recoveryState());
    hints_ = new SampleHints(session_.document, *hint_, options_.asksQuestions);
    files_ = new DesignFiles(session_, *safekeeping_, options_.asksQuestions);
    dialogs_ = new DialogCommands(session_, *files_, *side_, *views_, *hint_);
    baselines_ = new BaselineCommands(session_);
    reports_ = new ReportCommands(session_, *views_, *layout_);
    preferences_ = new PreferenceCommands(session_, autosave(), *playback_);
    help_ = new HelpCommands(session_, *side_, *layout_, *hints_);
    new SnapshotCommands(session_, side_->snapshots());
}

void MainWindow::buildMenus() {
    QMenu& file = *menuBar()->addMenu(tr("&File"));
    dialogs_->addNew(file);
    files_->addOpening(file);
    file.addSeparator();
    files_->addSaving(file);
    reports_->addTo(file);
    dialogs_->addExchange(file);
    file.addSeparator();
    file.addAction(tr("&Quit"), QKeySequence(tr("Ctrl+Q")), this, &QWidget::close);

    QMenu& edit = *menuBar()->addMenu(tr("&Edit"));
    QUndoStack& undoStack = document().undoStack();
    QAction* undo = undoStack.createUndoAction(this, tr("&Undo"));
    undo->setShortcut(QKeySequence::Undo);
    QAction* redo = undoStack.createRedoAction(this, tr("&Redo"));
    redo->setShortcuts({QKeySequence(tr("Ctrl+Shift+Z")), QKeySequence(tr("Ctrl+Y"))});
    edit.addActions({undo, redo});
    edit.addSeparator();
    side_->addTo(edit);
    dialogs_->addEditing(edit);
    edit.addSeparator();
    preferences_->addDialog(edit);

    baselines_->addTo(*menuBar()->addMenu(tr("&Baseline")));

    QMenu& view = *menuBar()->addMenu(tr("&View"));
    layout_->addTo(view);
    view.addAction(tr("Show the &whole turn"), &cursor(), &TurnCursor::showWholeTurn);
    view.addSeparator();
    preferences_->addChoices(view);
    layout_->addFullScreen(view);

    playback_->addTo(*menuBar()->addMenu(tr("&Motion")));
    help_->addTo(*menuBar()->addMenu(tr("&Help")));
}

void MainWindow::connectDocument() {
    Document& document = session_.document;
    connect(&document, &Document::designChanged, this, [this](Document::Change change) {
        const design::Design& design = session_.document.design();
        side_->showDesign(design);
        views_->showDesign(design);
        if (change == Document::Change::replaced)
            views_->startAnew();
        session_.live.follow(change);
        updateTitle();
    });
    connect(&document, &Document::modifiedChanged, this, &MainWindow::updateTitle);
    connect(&document, &Document::pathChanged, this, &MainWindow::updateTitle);
    connect(&document, &Document::refused, this,
            [this](const Problems& problems) { session_.say(problems); });
    NumberPanel& numbers = side_->numbers();
    connect(&numbers, &NumberPanel::edited, this, [this, &numbers](const Edit& edit) {
        numbers.showProblems(session_.document.apply(edit));
    });
    connect(&numbers, &NumberPanel::editFinished, &document, &Document::finishEdit);
    connect(views_, &Views::edited, &document,
            [&document](const Edit& edit) { document.apply(edit); });
    connect(views_, &Views::editFinished, &document, &Document::finishEdit);
}

void MainWindow::connectResults() {
    LiveSolution& live = session_.live;
    connect(&live, &LiveSolution::solved, this, [this](const SolutionPointer& solution) {
        views_->showSolution(solution);
        side_->showSolution(solution);
        status_->figures().showSolution(solution);
        status_->showLimits(side_->limits());
        playback_->showGeometry(geometryOf(*solution));
        session_.updateActions();
    });
    connect(&live, &LiveSolution::failed, this,
            [this](const Problems& problems) { session_.say(problems); });
    connect(&live, &LiveSolution::geometryChanged, views_, &Views::showGeometry);
    connect(&live, &LiveSolution::geometryChanged, playback_, &PlaybackBar::showGeometry);
    connect(&live, &LiveSolution::geometryDragged, views_, &Views::showGeometryWhereEdited);
    connect(&session_.baseline, &Baseline::changed, this, [this] {
        const SolutionPointer& baseline = session_.baseline.solution();
        views_->showBaseline(baseline);
        side_->showBaseline(baseline);
        status_->figures().showBaseline(baseline);
        session_.updateActions();
    });
}

void MainWindow::connectCommands() {
    connect(files_, &DesignFiles::opened, hints_, &SampleHints::forget);
    connect(files_, &DesignFiles::sampleOpened, hints_, &SampleHints::introduceSample);
    connect(files_, &DesignFiles::saving, fieldKeys_, &FieldKeys::commit);
    connect(files_, &DesignFiles::saved, hints_, &SampleHints::offerOwnTitle);
    connect(files_, &DesignFiles::reloaded, hint_, &QWidget::hide);
    connect(hints_, &SampleHints::fieldWanted, side_, &SidePanel::goToField);
    connect(hints_, &SampleHints::saveWanted, files_,
            [this] { files_->saveTo(session_.document.path()); });
    connect(status_, &StatusLine::cautionsWanted, help_,
            [this] { openHelp(QStringLiteral("cautions.md")); });
    connect(status_, &StatusLine::limitsWanted, side_,
            [this] { side_->open(SidePanel::Tab::limits); });
    connect(&status_->figures(), &FiguresBar::workingWanted, side_, &SidePanel::showWorking);
    connect(playback_, &PlaybackBar::arrangementsWanted, layout_, &WindowLayout::offerArrangements);
    connect(views_, &Views::workingWanted, side_, &SidePanel::showWorking);
    connect(views_, &Views::fieldWanted, side_, &SidePanel::goToField);
    connect(views_, &Views::arrangementWanted, layout_, &WindowLayout::arrange);
    connect(views_, &Views::wheelWanted, dialogs_, &DialogCommands::importWheel);
    connect(views_, &Views::scheduleWanted, dialogs_, &DialogCommands::scheduleInput);
    connect(&side_->figures(), &FiguresPanel::goalWanted, dialogs_, &DialogCommands::makeThis);
    NumberPanel& numbers = side_->numbers();
    connect(&numbers, &NumberPanel::knotsWanted, dialogs_, &DialogCommands::turnIntoKnots);
    connect(&numbers, &NumberPanel::helpWanted, help_, &HelpCommands::searchFor);
    // The schedule of an input stands below the torque curve.
    connect(&numbers, &NumberPanel::scheduleWanted, this, [this](const QString& input) {
        layout_->reveal(QStringLiteral("torque-curve"));
        views_->torqueCurve().strip().showInput(input.toStdString());
    });
}

void MainWindow::updateTitle() {
    const Document& document = session_.document;
    QString title = document.name() + QStringLiteral("[*]");
    if (document.path().isEmpty())
        title += tr(" (not saved yet)");
    setWindowTitle(title + tr(" – Lobewright"));
    setWindowModified(document.isModified());
    setWindowFilePath(document.path());
    session_.updateActions();
}

QRect fittingClient(const QRect& client, const QRect& frame, const QRect& available) {
    const QSize spare = frame.size() - client.size();
    const QSize size = client.size().boundedTo(available.size() - spare);
    const QPoint corner = client.topLeft() - frame.topLeft();
    const int right = available.x() + available.width() - spare.width() - size.width();
    const int bottom = available.y() + available.height() - spare.height() - size.height();
    const QPoint place(std::clamp(frame.x(), available.x(), std::max(available.x(), right)),
                       std::clamp(frame.y(), available.y(), std::max(available.y(), bottom)));
    return {place + corner, size};
}

void MainWindow::fitOnScreen() {
    if (isMaximized() || isFullScreen() || !screen())
        return;
    const QRect fitting = fittingClient(geometry(), frameGeometry(), screen()->availableGeometry());
    if (fitting != geometry())
        setGeometry(fitting);
}

void MainWindow::showEvent(QShowEvent* event) {
    QMainWindow::showEvent(event);
    // The frame is known only once the window manager has drawn it.
    if (!std::exchange(wasShown_, true))
        QTimer::singleShot(frameTime, this, &MainWindow::fitOnScreen);
}

void MainWindow::resizeEvent(QResizeEvent* event) {
    QMainWindow::resizeEvent(event);
    if (layout_)
        layout_->fitSide();
}

void MainWindow::closeEvent(QCloseEvent* event) {
    fieldKeys_->commit();
    if (!files_->mayDiscard()) {
        event->ignore();
        return;
    }
    layout_->save();
    solver().cancel();
    event->accept();
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
    const auto urls = event->mimeData()->urls();
    if (urls.size() == 1 && urls.front().isLocalFile())
        event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event) {
    const QString file = event->mimeData()->urls().front().toLocalFile();
    event->acceptProposedAction();
    fieldKeys_->commit();
    if (files_->mayDiscard())
        openFile(file);
}

} // namespace lobewright::ui
