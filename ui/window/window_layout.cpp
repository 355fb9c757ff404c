#include "ui/window/window_layout.h"

#include "ui/panels/number_panel.h"
#include "ui/window/arrangement.h"
#include "ui/window/arrangement_sheet.h"
#include "ui/window/pane_grid.h"
#include "ui/window/preferences.h"
#include "ui/window/session.h"
#include "ui/window/side_panel.h"
#include "ui/window/view_themes.h"

#include <QActionGroup>
#include <QMainWindow>
#include <QMenu>
#include <QSettings>
#include <QSplitter>

#include <algorithm>

namespace lobewright::ui {

namespace {
constexpr int sideWidth = 318, wideSide = 480; // narrow screens and wide ones
} // namespace

WindowLayout::WindowLayout(Session& session, QSplitter& split, SidePanel& side, Views& views)
    : QObject(&split), window_(session.window), split_(split), side_(side), views_(views),
      grid_(new PaneGrid(views, &split)), arrangements_(new QActionGroup(this)),
      sideShown_(new QAction(tr("S&ide panel"), this)) {
    side_.setMinimumWidth(sideWidth);
    split_.setHandleWidth(5);
    split_.addWidget(&side_);
    split_.addWidget(grid_);
    split_.setStretchFactor(0, 0);
    split_.setStretchFactor(1, 1);
    split_.setCollapsible(0, false);
    split_.setCollapsible(1, false);
    sideShown_->setShortcut(QKeySequence(tr("F9")));
    sideShown_->setCheckable(true);
    sideShown_->setChecked(true);
    connect(sideShown_, &QAction::toggled, &side_, &QWidget::setVisible);
    connect(&split_, &QSplitter::splitterMoved, this, [this] { isSideChosen_ = true; });
    connect(&side_, &SidePanel::sightWanted, sideShown_, [this] { sideShown_->setChecked(true); });
    connect(&side_, &SidePanel::viewWanted, this, &WindowLayout::reveal);
}

void WindowLayout::reveal(const QString& key) {
    grid_->reveal(key);
}

QStringList WindowLayout::shownViews() const {
    return grid_->shownViews();
}

void WindowLayout::arrange(const QString& key) {
    for (const Arrangement& arrangement : arrangements()) {
        if (arrangement.key != key)
            continue;
        arrangement_ = key;
        grid_->arrange(arrangement);
        QSettings().setValue(QStringLiteral("arrangement/current"), key);
        sideShown_->setChecked(arrangement.side != Arrangement::Side::none);
        if (arrangement.side != Arrangement::Side::none)
            side_.setCurrentIndex(static_cast<int>(arrangement.side) - 1);
        for (QAction* action : arrangements_->actions())
            action->setChecked(action->data().toString() == key);
    }
}

void WindowLayout::offerArrangements(const QWidget& beside) {
    auto* sheet = new ArrangementSheet(arrangement_, &window_);
    connect(sheet, &ArrangementSheet::chosen, this, &WindowLayout::arrange);
    sheet->popUp(beside);
}

void WindowLayout::save() const {
    grid_->save();
    QSettings settings;
    settings.setValue(QStringLiteral("window/geometry"), window_.saveGeometry());
    if (isSideChosen_)
        settings.setValue(QStringLiteral("window/split"), split_.saveState());
    settings.setValue(QStringLiteral("window/chapters"), side_.numbers().openChapters());
    for (const Views::View& view : views_.all()) {
        if (view.state)
            settings.setValue(QStringLiteral("view/") + view.key, view.state());
    }
}

void WindowLayout::restore() {
    const bool wanted = Preferences::load().restoresLayout;
    if (!wanted)
        QSettings().remove(QStringLiteral("arrangement"));
    const QSettings settings;
    const auto kept = [&](const char* key) {
        return wanted ? settings.value(QLatin1String(key)) : QVariant();
    };
    window_.restoreGeometry(kept("window/geometry").toByteArray());
    isSideChosen_ = split_.restoreState(kept("window/split").toByteArray());
    fitSide();
    const QVariant open = kept("window/chapters");
    if (open.isValid())
        side_.numbers().setOpenChapters(open.toStringList());
    for (const Views::View& view : views_.all()) {
        const QVariant state = settings.value(QStringLiteral("view/") + view.key);
        if (view.restoreState && state.isValid())
            view.restoreState(state.toString());
    }
    arrange(settings.value(QStringLiteral("arrangement/current"), arrangements().front().key)
                .toString());
}

/// A fifth of a wide window keeps the names of figures on a line or two.
void WindowLayout::fitSide() {
    if (isSideChosen_)
        return;
    const int wanted = std::clamp(window_.width() / 5, sideWidth, wideSide);
    split_.setSizes({wanted, std::max(window_.width(), split_.width()) - wanted});
}

void WindowLayout::addTo(QMenu& menu) {
    addArrangements(menu);
    menu.addAction(tr("&Reset this arrangement"), this, [this] { grid_->reset(); });
    QMenu* everyView = menu.addMenu(tr("Sho&w in the lower right pane"));
    everyView->setObjectName(QStringLiteral("everyView"));
    addViewMenus(*everyView, views_, {}, [this](const QString& key) { reveal(key); });
    menu.addSeparator();
    menu.addAction(sideShown_);
}

void WindowLayout::addArrangements(QMenu& menu) {
    int number = 0;
    for (const Arrangement& arrangement : arrangements()) {
        QAction* action = menu.addAction(QStringLiteral("&") + arrangement.title,
                                         QKeySequence(tr("Ctrl+%1").arg(++number % 10)), this,
                                         [this, key = arrangement.key] { arrange(key); });
        action->setCheckable(true);
        action->setData(arrangement.key);
        action->setStatusTip(arrangement.hint);
        arrangements_->addAction(action);
    }
}

void WindowLayout::addFullScreen(QMenu& menu) {
    QAction* full = menu.addAction(tr("F&ull screen"));
    full->setShortcut(QKeySequence(tr("F11")));
    full->setCheckable(true);
    connect(full, &QAction::toggled, this, [this](bool on) {
        window_.setWindowState(window_.windowState().setFlag(Qt::WindowFullScreen, on));
    });
}

} // namespace lobewright::ui
