#include "ui/window/main_window.h"

#include "core/text/caution.h"
#include "ui/base/calm_wheel.h"
#include "ui/base/core_text.h"
#include "ui/base/plain_message.h"
#include "ui/base/units.h"
#include "ui/document/recent_files.h"
#include "ui/help/dialog_help.h"
#include "ui/panels/figures_panel.h"
#include "ui/panels/figures_view.h"
#include "ui/panels/limits_list.h"
#include "ui/panels/number_panel.h"
#include "ui/panels/snapshots_panel.h"
#include "ui/panels/working_view.h"
#include "ui/window/arrangement_sheet.h"
#include "ui/window/field_keys.h"
#include "ui/window/figures_bar.h"
#include "ui/window/foot_message.h"
#include "ui/window/hint_bar.h"
#include "ui/window/pane_grid.h"
#include "ui/window/playback_bar.h"
#include "ui/window/small_screen.h"
#include "ui/window/space_plays.h"
#include "ui/window/stale_mark.h"

#include <QActionGroup>
#include <QCloseEvent>
#include <QFileInfo>
#include <QLabel>
#include <QMimeData>
#include <QProgressBar>
#include <QProxyStyle>
#include <QScreen>
#include <QSettings>
#include <QSplitter>
#include <QStandardPaths>
#include <QStatusBar>
#include <QTabBar>
#include <QTabWidget>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace lobewright::ui {

namespace {

constexpr int messageTime = 8000;              // [ms]
constexpr int sideWidth = 318, wideSide = 480; // narrow screens and wide ones
constexpr int longestBaselineName = 180;       // [px]
constexpr QSize firstSize(1280, 800);

/// Tabs with little room around their words: all four fit over the narrow panel, counts included.
class SnugTabs final : public QProxyStyle {
  public:
    SnugTabs() : QProxyStyle(QStringLiteral("Fusion")) {}
    int pixelMetric(PixelMetric metric, const QStyleOption* option,
                    const QWidget* widget) const override {
        constexpr int room = 12; // of a tab beside its word, both sides
        return metric == PM_TabBarTabHSpace ? room
                                            : QProxyStyle::pixelMetric(metric, option, widget);
    }
};

constexpr int frameTime = 150; // [ms] that a window manager may take to put on its frame

} // namespace

MainWindow::MainWindow(const Options& options, QWidget* parent)
    : QMainWindow(parent), options_(options) {
    setObjectName(QStringLiteral("window"));
    setAcceptDrops(true);
    resize(firstSize.boundedTo(screen()->availableSize()));
    buildCentre();
    buildStatusBar();
    buildActions();
    fieldKeys_ = new FieldKeys(*this);
    new CalmWheel(this);
    new DialogFit(this);
    new SpacePlays(cursor_, *this);
    connectParts();
    if (options_.recoveryFolder.isEmpty())
        options_.recoveryFolder =
            QStandardPaths::writableLocation(QStandardPaths::AppDataLocation) +
            QStringLiteral("/recovery");
    safekeeping_ = std::make_unique<Safekeeping>(document_, options_.recoveryFolder, *this, *hint_,
                                                 *recoveryState_);
    connect(safekeeping_.get(), &Safekeeping::answered, this, &MainWindow::goOnWith);
    applyPreferences(Preferences::load());
    restoreLayout();
    updateActions();
    updateTitle();
    new DialogHelp(this);
    greets_ = options_.asksQuestions && isFirstStart();
    if (greets_)
        greet();
}

MainWindow::~MainWindow() {
    solver_.disconnect(this);
    document_.disconnect(this);
    document_.undoStack().disconnect(this);
}

void MainWindow::buildCentre() {
    auto* centre = new QWidget(this);
    auto* column = new QVBoxLayout(centre);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    split_ = new QSplitter(Qt::Horizontal);
    split_->setHandleWidth(5);
    side_ = new QTabWidget(split_);
    side_->setDocumentMode(true);
    side_->setMinimumWidth(sideWidth);
    auto* snug = new SnugTabs;
    snug->setParent(side_);
    side_->tabBar()->setStyle(snug);
    numbers_ = new NumberPanel(side_);
    limits_ = new LimitsList(side_);
    auto* figuresView = new FiguresView(side_);
    figures_ = &figuresView->panel();
    connect(&baseline_, &Baseline::changed, figuresView,
            [this, figuresView] { figuresView->showBaseline(baseline_.solution()); });
    side_->addTab(numbers_, tr("Inputs"));
    side_->addTab(limits_, tr("Limits"));
    buildWorking();
    buildSnapshots();
    views_ = new Views(cursor_, centre);
    grid_ = new PaneGrid(*views_, split_);
    split_->addWidget(side_);
    split_->addWidget(grid_);
    split_->setStretchFactor(0, 0);
    split_->setStretchFactor(1, 1);
    split_->setCollapsible(0, false);
    split_->setCollapsible(1, false);
    stale_ = new StaleMark(*centre);
    connect(split_, &QSplitter::splitterMoved, this, [this] { isSideChosen_ = true; });
    playback_ = new PlaybackBar(cursor_, centre);
    auto* scroll = new CentreScroll(split_, centre);
    column->addWidget(scroll, 1);
    column->addWidget(playback_);
    hint_ = new HintBar(*scroll);
    setCentralWidget(centre);
}

void MainWindow::buildStatusBar() {
    figuresBar_ = new FiguresBar(this);
    auto* baselineName = new QLabel(this);
    baselineName->setObjectName(QStringLiteral("baselineName"));
    baselineName->setTextFormat(Qt::PlainText);
    baselineName->hide();
    connect(&baseline_, &Baseline::changed, baselineName, [this, baselineName] {
        const QString& name = baseline_.name();
        baselineName->setVisible(baseline_.solution() != nullptr);
        baselineName->setText(fontMetrics().elidedText(tr("Baseline: %1").arg(name), Qt::ElideRight,
                                                       longestBaselineName));
        baselineName->setToolTip(
            plainToolTip(tr("“%1” is shown behind every plot and result").arg(name)));
    });
    limitsButton_ = new ElidedButton(this);
    limitsButton_->setAutoRaise(true);
    limitsButton_->setToolTip(tr("Show the list of limits"));
    recoveryState_ = new QLabel(this);
    recoveryState_->setObjectName(QStringLiteral("recoveryState"));
    recoveryState_->hide();
    solveState_ = new QLabel(this);
    solveState_->setObjectName(QStringLiteral("solveState"));
    progress_ = new QProgressBar(this);
    progress_->setObjectName(QStringLiteral("solveProgress"));
    progress_->setAccessibleName(tr("Progress of solving"));
    progress_->setRange(0, 1000);
    progress_->setMaximumWidth(140);
    progress_->setTextVisible(false);
    progress_->hide();
    cancel_ = new QToolButton(this);
    cancel_->setObjectName(QStringLiteral("stopSolving"));
    cancel_->setText(tr("Stop"));
    cancel_->setToolTip(tr("Stop solving; the results stay those of the earlier input"));
    cancel_->hide();
    statusBar()->addPermanentWidget(figuresBar_);
    statusBar()->addPermanentWidget(baselineName);
    statusBar()->addPermanentWidget(recoveryState_);
    statusBar()->addPermanentWidget(limitsButton_);
    statusBar()->addPermanentWidget(solveState_);
    statusBar()->addPermanentWidget(progress_);
    statusBar()->addPermanentWidget(cancel_);
    addCaution();
    new FootMessage(*statusBar());
}

/// The cautions stand in every view, at the same place: the last thing on the right.
void MainWindow::addCaution() {
    auto* button = new QToolButton(this);
    button->setObjectName(QStringLiteral("caution"));
    button->setAutoRaise(true);
    button->setText(tr("Estimates only"));
    button->setToolTip(plainToolTip(coreText(caution())));
    button->setAccessibleName(tr("Estimates only: read the cautions"));
    connect(button, &QToolButton::clicked, this,
            [this] { openHelp(QStringLiteral("cautions.md")); });
    statusBar()->addPermanentWidget(button);
}

void MainWindow::connectParts() {
    connect(&document_, &Document::designChanged, this, &MainWindow::designChanged);
    connect(&document_, &Document::modifiedChanged, this, &MainWindow::updateTitle);
    connect(&document_, &Document::pathChanged, this, &MainWindow::updateTitle);
    connect(&document_, &Document::refused, this, [this](const Problems& problems) {
        statusBar()->showMessage(coreText(problems.front().message), messageTime);
    });
    const auto apply = [this](const Edit& edit) { document_.apply(edit); };
    connect(numbers_, &NumberPanel::edited, this,
            [this](const Edit& edit) { numbers_->showProblems(document_.apply(edit)); });
    connect(numbers_, &NumberPanel::editFinished, &document_, &Document::finishEdit);
    connect(numbers_, &NumberPanel::knotsWanted, this, &MainWindow::turnIntoKnots);
    connect(views_, &Views::edited, this, apply);
    connect(views_, &Views::editFinished, &document_, &Document::finishEdit);
    connect(views_, &Views::fieldWanted, this, &MainWindow::goToField);
    connect(views_, &Views::arrangementWanted, this, &MainWindow::arrange);
    connect(playback_, &PlaybackBar::arrangementsWanted, this, [this](const QWidget& beside) {
        const QAction* now = arrangementGroup_->checkedAction();
        auto* sheet = new ArrangementSheet(now ? now->data().toString() : QString(), this);
        connect(sheet, &ArrangementSheet::chosen, this, &MainWindow::arrange);
        sheet->popUp(beside);
    });
    connect(views_, &Views::wheelWanted, this, &MainWindow::importWheel);
    connect(views_, &Views::scheduleWanted, this, &MainWindow::scheduleInput);
    connect(numbers_, &NumberPanel::scheduleWanted, this, &MainWindow::showSchedule);
    connect(numbers_, &NumberPanel::helpWanted, this, &MainWindow::searchHelp);
    connect(limits_, &LimitsList::fieldWanted, this, &MainWindow::goToField);
    connect(limits_, &LimitsList::angleWanted, &cursor_, &TurnCursor::setAngle);
    connect(limitsButton_, &QToolButton::clicked, this, [this] {
        sideShown_->setChecked(true);
        side_->setCurrentIndex(static_cast<int>(SideTab::limits));
    });

    connectWorking();
    connectSolving();
    connect(&baseline_, &Baseline::changed, this, [this] {
        views_->showBaseline(baseline_.solution());
        figuresBar_->showBaseline(baseline_.solution());
        snapshots_->showBaseline(baseline_.solution());
        updateActions();
    });
    connect(&baseline_, &Baseline::failed, this, [this](const Problems& problems) {
        statusBar()->showMessage(coreText(problems.front().message), messageTime);
    });
}

void MainWindow::goToField(const QString& path) {
    sideShown_->setChecked(true);
    side_->setCurrentIndex(static_cast<int>(SideTab::numbers));
    numbers_->goTo(path);
}

void MainWindow::arrange(const QString& key) {
    for (const Arrangement& arrangement : arrangements()) {
        if (arrangement.key != key)
            continue;
        grid_->arrange(arrangement);
        QSettings settings;
        settings.setValue(QStringLiteral("arrangement/current"), key);
        sideShown_->setChecked(arrangement.side != Arrangement::Side::none);
        if (arrangement.side != Arrangement::Side::none)
            side_->setCurrentIndex(static_cast<int>(arrangement.side) - 1);
        for (QAction* action : arrangementGroup_->actions())
            action->setChecked(action->data().toString() == key);
    }
}

void MainWindow::saveLayout() {
    grid_->save();
    QSettings settings;
    settings.setValue(QStringLiteral("window/geometry"), saveGeometry());
    if (isSideChosen_)
        settings.setValue(QStringLiteral("window/split"), split_->saveState());
    settings.setValue(QStringLiteral("window/chapters"), numbers_->openChapters());
    for (const Views::View& view : views_->all()) {
        if (view.state)
            settings.setValue(QStringLiteral("view/") + view.key, view.state());
    }
}

/// A fifth of a wide window keeps the names of figures on a line or two.
void MainWindow::fitSide() {
    if (isSideChosen_)
        return;
    const int wanted = std::clamp(width() / 5, sideWidth, wideSide);
    split_->setSizes({wanted, std::max(width(), split_->width()) - wanted});
}

void MainWindow::resizeEvent(QResizeEvent* event) {
    QMainWindow::resizeEvent(event);
    fitSide();
}

void MainWindow::restoreLayout() {
    const bool wanted = Preferences::load().restoresLayout;
    if (!wanted)
        QSettings().remove(QStringLiteral("arrangement"));
    const QSettings settings;
    const auto kept = [&](const char* key) {
        return wanted ? settings.value(QLatin1String(key)) : QVariant();
    };
    restoreGeometry(kept("window/geometry").toByteArray());
    isSideChosen_ = split_->restoreState(kept("window/split").toByteArray());
    fitSide();
    const QVariant open = kept("window/chapters");
    if (open.isValid())
        numbers_->setOpenChapters(open.toStringList());
    for (const Views::View& view : views_->all()) {
        const QVariant state = settings.value(QStringLiteral("view/") + view.key);
        if (view.restoreState && state.isValid())
            view.restoreState(state.toString());
    }
    arrange(settings.value(QStringLiteral("arrangement/current"), arrangements().front().key)
                .toString());
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

void MainWindow::closeEvent(QCloseEvent* event) {
    fieldKeys_->commit();
    if (!mayDiscard()) {
        event->ignore();
        return;
    }
    saveLayout();
    solver_.cancel();
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
    if (mayDiscard())
        openFile(file);
}

} // namespace lobewright::ui
