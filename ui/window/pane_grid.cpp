#include "ui/window/pane_grid.h"

#include "ui/window/pane.h"
#include "ui/window/view_themes.h"

#include <QMenu>
#include <QSettings>

#include <algorithm>

namespace lobewright::ui {

PaneGrid::PaneGrid(Views& views, QWidget* parent)
    : QSplitter(Qt::Horizontal, parent), views_(views) {
    setChildrenCollapsible(false);
    setHandleWidth(5);
}

void PaneGrid::arrange(const Arrangement& arrangement) {
    if (!arrangement_.key.isEmpty())
        save();
    arrangement_ = arrangement;
    takeDown();
    build(arrangement.columns);
    const QStringList kept = QSettings().value(setting("views")).toStringList();
    for (size_t i = 0; i < panes_.size() && static_cast<qsizetype>(i) < kept.size(); ++i)
        setView(*panes_[i], kept[static_cast<qsizetype>(i)]);
    restoreSizes();
}

void PaneGrid::takeDown() {
    enlarged_ = nullptr;
    for (Pane* pane : panes_)
        pane->release(this->parentWidget());
    panes_.clear();
    for (QSplitter* column : columns_)
        delete column;
    columns_.clear();
}

void PaneGrid::build(const std::vector<Arrangement::Column>& columns) {
    for (const Arrangement::Column& column : columns) {
        auto* splitter = new QSplitter(Qt::Vertical, this);
        splitter->setChildrenCollapsible(false);
        splitter->setHandleWidth(5);
        addWidget(splitter);
        columns_.push_back(splitter);
        for (const Arrangement::Slot& row : column.rows) {
            auto* pane = new Pane(splitter);
            splitter->addWidget(pane);
            panes_.push_back(pane);
            pane->setView(views_.find(row.view));
            connect(pane, &Pane::choicesWanted, this,
                    [this, pane](QMenu* menu) { addChoices(*menu, *pane); });
            connect(pane, &Pane::enlargeWanted, this, [this, pane] { enlarge(*pane); });
        }
    }
}

void PaneGrid::restoreSizes() {
    const QSettings settings;
    QList<int> widths;
    for (size_t i = 0; i < columns_.size(); ++i) {
        const Arrangement::Column& column = arrangement_.columns[i];
        widths << column.share * 20;
        QList<int> heights;
        for (const Arrangement::Slot& row : column.rows)
            heights << row.share * 20;
        columns_[i]->setSizes(heights);
        for (int r = 0; r < columns_[i]->count(); ++r)
            columns_[i]->setStretchFactor(r, column.rows[static_cast<size_t>(r)].share);
        const QByteArray kept = settings.value(setting("rows") + QString::number(i)).toByteArray();
        if (!kept.isEmpty())
            columns_[i]->restoreState(kept);
        setStretchFactor(static_cast<int>(i), column.share);
    }
    setSizes(widths);
    const QByteArray kept = settings.value(setting("columns")).toByteArray();
    if (!kept.isEmpty())
        restoreState(kept);
}

QString PaneGrid::keptUnder() const {
    const QString edition =
        arrangement_.edition > 1 ? QStringLiteral("-%1").arg(arrangement_.edition) : QString();
    return QStringLiteral("arrangement/") + arrangement_.key + edition;
}

QString PaneGrid::setting(const char* name) const {
    return keptUnder() + QLatin1Char('/') + QLatin1String(name);
}

void PaneGrid::save() const {
    QSettings settings;
    settings.setValue(setting("views"), shownViews());
    if (enlarged_)
        return; // sizes of hidden panes say nothing
    settings.setValue(setting("columns"), saveState());
    for (size_t i = 0; i < columns_.size(); ++i)
        settings.setValue(setting("rows") + QString::number(i), columns_[i]->saveState());
}

void PaneGrid::reset() {
    QSettings settings;
    settings.remove(keptUnder());
    takeDown();
    build(arrangement_.columns);
    restoreSizes();
}

QStringList PaneGrid::shownViews() const {
    QStringList keys;
    for (const Pane* pane : panes_)
        keys << (pane->view() ? pane->view()->key : QString());
    return keys;
}

void PaneGrid::setView(Pane& pane, const QString& key) {
    const Views::View* wanted = views_.find(key);
    if (!wanted || pane.view() == wanted)
        return;
    const auto other =
        std::ranges::find_if(panes_, [&](const Pane* p) { return p->view() == wanted; });
    const Views::View* mine = pane.view();
    pane.release(parentWidget());
    if (other != panes_.end()) {
        // It stands elsewhere: the two change places.
        (*other)->release(parentWidget());
        (*other)->setView(mine);
    }
    pane.setView(wanted);
}

void PaneGrid::addChoices(QMenu& menu, Pane& pane) {
    addViewMenus(menu, views_, pane.view() ? pane.view()->key : QString(),
                 [this, &pane](const QString& key) {
                     setView(pane, key);
                     save();
                 });
}

void PaneGrid::reveal(const QString& key) {
    const bool shown = std::ranges::any_of(
        panes_, [&](const Pane* p) { return p->view() && p->view()->key == key; });
    if (!shown && !panes_.empty())
        setView(*panes_.back(), key);
    const Views::View* view = views_.find(key);
    if (view)
        view->widget->setFocus(Qt::ShortcutFocusReason);
}

void PaneGrid::enlarge(Pane& pane) {
    if (!enlarged_)
        save(); // the sizes to come back to
    enlarged_ = enlarged_ ? nullptr : &pane;
    for (Pane* other : panes_) {
        other->setVisible(!enlarged_ || other == enlarged_);
        other->setEnlarged(other == enlarged_);
    }
    for (QSplitter* column : columns_)
        column->setVisible(!enlarged_ || column->isAncestorOf(enlarged_));
    if (!enlarged_)
        restoreSizes();
    // Not to the button: the next key would bring everything back.
    pane.view()->widget->setFocus(Qt::OtherFocusReason);
}

} // namespace lobewright::ui
