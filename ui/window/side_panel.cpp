#include "ui/window/side_panel.h"

#include "ui/panels/figures_panel.h"
#include "ui/panels/figures_view.h"
#include "ui/panels/limits_list.h"
#include "ui/panels/number_panel.h"
#include "ui/panels/snapshots_panel.h"
#include "ui/panels/working_view.h"
#include "ui/plots/base/turn_cursor.h"

#include <QMenu>
#include <QProxyStyle>
#include <QSplitter>
#include <QTabBar>

namespace lobewright::ui {

namespace {

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

} // namespace

SidePanel::SidePanel(TurnCursor& cursor, QWidget* parent)
    : QTabWidget(parent), numbers_(new NumberPanel(this)), limits_(new LimitsList(this)),
      figures_(new FiguresView(this)) {
    setDocumentMode(true);
    auto* snug = new SnugTabs;
    snug->setParent(this);
    tabBar()->setStyle(snug);
    addTab(numbers_, tr("Inputs"));
    addTab(limits_, tr("Limits"));
    addResults();
    snapshots_ = new SnapshotsPanel(this);
    addTab(snapshots_, tr("Snapshots"));
    connectTabs(cursor);
}

void SidePanel::addResults() {
    auto* split = new QSplitter(Qt::Vertical, this);
    split->setObjectName(QStringLiteral("figuresAndWorking"));
    split->setChildrenCollapsible(false);
    working_ = new WorkingView(split);
    split->addWidget(figures_);
    split->addWidget(working_);
    working_->hide();
    addTab(split, tr("Results"));
}

void SidePanel::connectTabs(TurnCursor& cursor) {
    connect(&figures(), &FiguresPanel::workingWanted, this, &SidePanel::showWorking);
    connect(limits_, &LimitsList::workingWanted, this, &SidePanel::showWorking);
    connect(limits_, &LimitsList::fieldWanted, this, &SidePanel::goToField);
    connect(limits_, &LimitsList::angleWanted, &cursor, &TurnCursor::setAngle);
    connect(working_, &WorkingView::fieldWanted, this, &SidePanel::goToField);
    connect(working_, &WorkingView::angleWanted, &cursor, &TurnCursor::setAngle);
    connect(working_, &WorkingView::viewWanted, this, &SidePanel::viewWanted);
    connect(working_, &WorkingView::closed, working_, &QWidget::hide);
}

FiguresPanel& SidePanel::figures() const {
    return figures_->panel();
}

void SidePanel::showDesign(const design::Design& design) {
    numbers_->show(design);
    snapshots_->show(design);
}

void SidePanel::showSolution(const SolutionPointer& solution) {
    figures().showSolution(solution);
    working_->showSolution(solution);
    limits_->showSolution(solution);
    const int graver =
        limits_->count(solution::Severity::error) + limits_->count(solution::Severity::warning);
    // A tab lays the whole side out anew even for the same words.
    const int tab = indexOf(limits_);
    const QString title = graver ? tr("Limits (%1)").arg(graver) : tr("Limits");
    if (tabText(tab) != title)
        setTabText(tab, title);
}

void SidePanel::showBaseline(const SolutionPointer& baseline) {
    figures_->showBaseline(baseline);
    snapshots_->showBaseline(baseline);
}

void SidePanel::open(Tab tab) {
    Q_EMIT sightWanted();
    setCurrentIndex(static_cast<int>(tab));
}

void SidePanel::goToField(const QString& path) {
    open(Tab::numbers);
    numbers_->goTo(path);
}

void SidePanel::showWorking(const QString& figure) {
    open(Tab::figures);
    if (working_->isHidden()) {
        auto* split = static_cast<QSplitter*>(working_->parentWidget());
        working_->show();
        split->setSizes({split->height() / 2, split->height() / 2});
    }
    working_->showFigure(figure);
    figures().choose(figure);
}

void SidePanel::addTo(QMenu& menu) {
    menu.addAction(tr("&Take a snapshot"), QKeySequence(tr("Ctrl+T")), this,
                   [this] {
                       open(Tab::snapshots);
                       snapshots_->startTaking();
                   })
        ->setStatusTip(tr("Keep the present design in the file under a name"));
    menu.addSeparator();
    menu.addAction(tr("&Find an input"), QKeySequence::Find, this, [this] {
        open(Tab::numbers);
        numbers_->focusSearch();
    });
}

QString SidePanel::helpPageOf(const QWidget* widget) const {
    const std::pair<const QWidget*, const char*> pages[] = {{numbers_, "numbers.md"},
                                                            {limits_, "limits.md"},
                                                            {figures_, "limits.md"},
                                                            {snapshots_, "baseline.md"}};
    for (const auto& [part, page] : pages) {
        if (widget == part || part->isAncestorOf(widget))
            return QLatin1String(page);
    }
    return {};
}

} // namespace lobewright::ui
