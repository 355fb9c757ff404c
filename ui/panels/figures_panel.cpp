#include "ui/panels/figures_panel.h"

#include "ui/base/core_text.h"
#include "ui/base/curve.h"
#include "ui/base/figure_text.h"
#include "ui/base/palette.h"
#include "ui/base/type_scale.h"
#include "ui/base/units.h"
#include "ui/plots/base/figure_help.h"
#include "ui/plots/base/plot_export.h"

#include <QContextMenuEvent>
#include <QHash>
#include <QHeaderView>
#include <QHelpEvent>
#include <QMenu>
#include <QStyledItemDelegate>
#include <QToolTip>

#include <algorithm>
#include <limits>
#include <utility>

namespace lobewright::ui {

namespace {

constexpr int leastNameWidth = 114, leastColumn = 24; // [px]

/// Rows as high as the name needs in the width of its column: item views keep to one line. Heights
/// are kept, because every solution of a drag fills the panel anew.
class WholeNames : public QStyledItemDelegate {
  public:
    explicit WholeNames(QTreeWidget* tree) : QStyledItemDelegate(tree), tree_(tree) {}

    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        constexpr int spare = 2, margins = 10;
        const QString text = index.data().toString();
        const int line = option.fontMetrics.height() + spare;
        if (index.column() > 0)
            return {option.fontMetrics.horizontalAdvance(text) + margins, line};
        const int depth = index.parent().isValid() ? 2 : 1;
        const int room = tree_->columnWidth(0) - depth * tree_->indentation() - margins + spare;
        if (room != room_ || line != line_) {
            heights_.clear();
            room_ = room;
            line_ = line;
        }
        int& height = heights_[text];
        if (height == 0) {
            height = option.fontMetrics
                         .boundingRect(QRect(0, 0, room, 100 * line), Qt::TextWordWrap, text)
                         .height();
        }
        return {room, std::max(line, height + spare)};
    }

  private:
    QTreeWidget* tree_;
    mutable QHash<QString, int> heights_;
    mutable int room_ = 0, line_ = 0;
};

} // namespace

QString FiguresPanel::groupTitle(const QString& key) {
    const std::pair<const char*, QString> titles[] = {
        {"geometry", tr("Geometry")},       {"timing", tr("Port timing")},
        {"performance", tr("Performance")}, {"energy", tr("Energy")},
        {"loads", tr("Forces and torque")}, {"contact", tr("Contact and life")},
        {"balance", tr("Balance")},         {"solver", tr("Numerical convergence")}};
    for (const auto& [known, title] : titles) {
        if (key == QLatin1String(known))
            return title;
    }
    QString title = key;
    return title.replace(QLatin1Char('_'), QLatin1Char(' '));
}

FiguresPanel::FiguresPanel(QWidget* parent) : QTreeWidget(parent) {
    setColumnCount(4);
    setHeaderLabels({tr("Result"), tr("Now"), tr("Change"), tr("Baseline")});
    setFrameShape(QFrame::NoFrame);
    setRootIsDecorated(true);
    setWordWrap(true); // names stay whole beside the changes
    setIndentation(10);
    setAccessibleName(tr("Results"));
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    header()->setSectionResizeMode(QHeaderView::Fixed);
    header()->setSectionResizeMode(nameColumn, QHeaderView::Stretch);
    header()->setMinimumSectionSize(leastColumn);
    header()->setStretchLastSection(false);
    header()->moveSection(baselineColumn, nowColumn);
    setColumnHidden(changeColumn, true);
    setColumnHidden(baselineColumn, true);
    connect(&Units::instance(), &Units::changed, this, &FiguresPanel::refillOnceSeen);
    const auto ask = [this](QTreeWidgetItem* item) {
        const QString figure = item->data(0, Qt::UserRole).toString();
        if (item->parent() && !figure.isEmpty())
            Q_EMIT workingWanted(figure);
        else if (item->parent())
            unfold(*item->parent());
    };
    connect(this, &QTreeWidget::itemClicked, this, ask);
    connect(this, &QTreeWidget::itemActivated, this, ask);
    setItemDelegate(new WholeNames(this));
    connect(header(), &QHeaderView::sectionResized, this,
            [this](int column) { column == 0 ? scheduleDelayedItemsLayout() : void(); });
}

void FiguresPanel::addOptions(QMenu& menu) {
    addPictureActions(menu, *this, tr("Results"));
}

QString FiguresPanel::helpOn(const QString& figure) const {
    const QString help = solution_ ? figureHelp(*solution_, figure.toStdString()) : QString();
    return help.isEmpty() ? help : help + QLatin1Char('\n') + tr("Click to see the working");
}

bool FiguresPanel::viewportEvent(QEvent* event) {
    if (event->type() == QEvent::ToolTip) {
        const auto* help = static_cast<QHelpEvent*>(event);
        const QModelIndex at = indexAt(help->pos());
        const QString figure = at.column() == 0 && at.parent().isValid()
                                   ? at.data(Qt::UserRole).toString()
                                   : QString();
        if (!figure.isEmpty()) {
            QToolTip::showText(help->globalPos(), helpOn(figure), this);
            return true;
        }
    }
    return QTreeWidget::viewportEvent(event);
}

QString FiguresPanel::selectedFigure() const {
    const QTreeWidgetItem* item = currentItem();
    return item && item->parent() ? item->data(0, Qt::UserRole).toString() : QString();
}

void FiguresPanel::contextMenuEvent(QContextMenuEvent* event) {
    const QTreeWidgetItem* item = itemAt(event->pos());
    if (!item || !item->parent() || isFold(*item))
        return;
    const QString figure = item->data(0, Qt::UserRole).toString();
    QMenu menu(this);
    menu.addAction(tr("How it came about"), this, [&] { Q_EMIT workingWanted(figure); });
    menu.addAction(tr("&Make this…"), this, [&] { Q_EMIT goalWanted(figure); });
    menu.exec(event->globalPos());
}

void FiguresPanel::showSolution(const SolutionPointer& solution) {
    solution_ = solution;
    refillOnceSeen();
}

void FiguresPanel::showBaseline(const SolutionPointer& baseline) {
    baseline_ = baseline;
    refillOnceSeen();
}

/// Filling is a fifth of a drag's step, and mostly another tab lies above.
void FiguresPanel::refillOnceSeen() {
    isStale_ = !isVisible();
    if (!isStale_)
        refill();
}

void FiguresPanel::showEvent(QShowEvent* event) {
    if (std::exchange(isStale_, false))
        refill();
    QTreeWidget::showEvent(event);
}

void FiguresPanel::setFilter(const QString& text) {
    filter_ = text.trimmed();
    filterRows();
}

void FiguresPanel::setChangedOnly(bool only) {
    changedOnly_ = only;
    filterRows();
}

void FiguresPanel::choose(const QString& figure) {
    for (int i = 0; i < topLevelItemCount(); ++i) {
        for (int row = 0; row < topLevelItem(i)->childCount(); ++row) {
            QTreeWidgetItem* item = topLevelItem(i)->child(row);
            if (item->data(0, Qt::UserRole).toString() != figure)
                continue;
            if (item->isHidden())
                unfold(*topLevelItem(i));
            setCurrentItem(item);
            scrollToItem(item);
            return;
        }
    }
}

void FiguresPanel::resizeEvent(QResizeEvent* event) {
    QTreeWidget::resizeEvent(event);
    fitColumns();
}

/// Columns as wide as their longest text; where the names would keep too little room, that of the
/// baseline goes, whose values stand in the tooltips of the changes as well.
void FiguresPanel::fitColumns() {
    constexpr int margins = 14;
    // Before it is shown it has no width yet, and everything may stand.
    int room = isVisible() ? viewport()->width() - leastNameWidth : std::numeric_limits<int>::max();
    for (const Column column : {nowColumn, changeColumn, baselineColumn}) {
        const bool isWanted = column == nowColumn || baseline_;
        const QString title = headerItem()->text(column);
        const int wanted = std::max(fontMetrics().horizontalAdvance(longest_[column]),
                                    fontMetrics().horizontalAdvance(title)) +
                           margins;
        const bool fits = isWanted && (column == nowColumn || wanted <= room);
        if (isColumnHidden(column) == fits)
            setColumnHidden(column, !fits);
        if (!fits)
            continue;
        room -= wanted;
        if (columnWidth(column) != wanted)
            setColumnWidth(column, wanted);
    }
}

void FiguresPanel::filterRows() {
    const bool isPlain = filter_.isEmpty() && !changedOnly_;
    for (int i = 0; i < topLevelItemCount(); ++i) {
        QTreeWidgetItem* group = topLevelItem(i);
        const bool isFolded =
            isPlain && !unfolded_.contains(group->data(0, Qt::UserRole).toString());
        int shown = 0;
        for (int row = 0; row < group->childCount(); ++row) {
            QTreeWidgetItem* item = group->child(row);
            if (isFold(*item)) {
                item->setHidden(!isFolded);
                continue;
            }
            if (isPlain) {
                item->setHidden(isFolded && item->data(nowColumn, Qt::UserRole).toBool());
                continue;
            }
            const QString change = item->text(changeColumn);
            const QString name = item->text(nameColumn).remove(QChar::SoftHyphen);
            const bool fits = name.contains(filter_, Qt::CaseInsensitive) &&
                              !(changedOnly_ && (change.isEmpty() || change == QLatin1String("=")));
            item->setHidden(!fits);
            shown += fits ? 1 : 0;
        }
        group->setHidden(!isPlain && shown == 0);
    }
}

bool FiguresPanel::isFold(const QTreeWidgetItem& item) {
    return item.data(0, Qt::UserRole).toString().isEmpty();
}

void FiguresPanel::unfold(const QTreeWidgetItem& group) {
    unfolded_.insert(group.data(0, Qt::UserRole).toString());
    filterRows();
}

/// Results without a value and those of an adjuster that is none say nothing about this engine.
bool FiguresPanel::isUnused(const solution::Solution& of, const solution::Figure& figure) {
    const auto& adjuster = of.design.mechanism.adjuster;
    if (!figure.value)
        return true;
    return adjuster.helixLead == 0.0 && adjuster.setting == 0.0 &&
           (figure.name.starts_with("adjuster_") || figure.name.ends_with("_unadjusted") ||
            figure.name.find("_change_phase") != std::string::npos ||
            figure.name.find("_change_axial") != std::string::npos);
}

/// The last row of a group: how many of it are folded away.
void FiguresPanel::addFold(QTreeWidgetItem& group) {
    int unused = 0;
    for (int row = 0; row < group.childCount(); ++row)
        unused += group.child(row)->data(nowColumn, Qt::UserRole).toBool() ? 1 : 0;
    if (unused == 0)
        return;
    auto* fold = new QTreeWidgetItem(&group, {tr("Not used or without a value: %1").arg(unused)});
    fold->setToolTip(0, tr("Click to show these results as well"));
    fold->setForeground(0, Palette::of(*this).quiet);
}

QTreeWidgetItem* FiguresPanel::groupItem(const QString& key) {
    for (int i = 0; i < topLevelItemCount(); ++i) {
        if (topLevelItem(i)->data(0, Qt::UserRole).toString() == key)
            return topLevelItem(i);
    }
    auto* item = new QTreeWidgetItem(this, {groupTitle(key)});
    item->setData(0, Qt::UserRole, key);
    item->setFont(0, inBold(font()));
    item->setFirstColumnSpanned(true);
    item->setExpanded(key != QLatin1String("solver"));
    return item;
}

void FiguresPanel::refill() {
    if (!solution_)
        return;
    longest_ = {};
    const double shaftPeriod = 360.0 / solution_->pair.cyclesPerTurn();
    for (int i = 0; i < topLevelItemCount(); ++i) {
        QTreeWidgetItem* group = topLevelItem(i);
        group->setData(1, Qt::UserRole, 0); // rows used so far
        if (group->childCount() > 0 && isFold(*group->child(group->childCount() - 1)))
            delete group->takeChild(group->childCount() - 1);
    }
    for (const solution::Figure& figure : solution_->figures) {
        QTreeWidgetItem* group = groupItem(QString::fromStdString(figure.group));
        const int row = group->data(1, Qt::UserRole).toInt();
        group->setData(1, Qt::UserRole, row + 1);
        QTreeWidgetItem* item =
            row < group->childCount() ? group->child(row) : new QTreeWidgetItem(group);
        const QString name = QString::fromStdString(figure.name);
        if (item->data(0, Qt::UserRole) != name) {
            item->setText(0, coreTextToWrap(figure.label));
            item->setData(0, Qt::UserRole, name);
            for (const Column column : {nowColumn, changeColumn, baselineColumn})
                item->setTextAlignment(column, Qt::AlignRight | Qt::AlignVCenter);
        }
        item->setToolTip(nowColumn, coreText(figure.note));
        const auto* before = baseline_ ? baseline_->figure(figure.name) : nullptr;
        const bool isUsedBefore = before && !isUnused(*baseline_, *before);
        item->setData(nowColumn, Qt::UserRole, isUnused(*solution_, figure) && !isUsedBefore);
        const FigureChange change =
            before ? figureChange(figure, *before, shaftPeriod) : FigureChange();
        put(*item, nowColumn, figureText(figure));
        put(*item, changeColumn, change.text);
        put(*item, baselineColumn, before ? figureText(*before) : QString());
        item->setToolTip(changeColumn, change.sentence);
    }
    for (int i = 0; i < topLevelItemCount(); ++i) {
        QTreeWidgetItem* group = topLevelItem(i);
        while (group->childCount() > group->data(1, Qt::UserRole).toInt())
            delete group->takeChild(group->childCount() - 1);
        addFold(*group);
    }
    fitColumns();
    filterRows();
}

void FiguresPanel::put(QTreeWidgetItem& item, Column column, const QString& text) {
    item.setText(column, text);
    // Digits are of one width: the text with the most letters is the widest, or nearly so.
    if (text.size() > longest_[column].size())
        longest_[column] = text;
}

} // namespace lobewright::ui
