#include "ui/editing/figures_panel.h"

#include "ui/core_words.h"
#include "ui/plots/curve.h"
#include "ui/plots/figure_help.h"
#include "ui/plots/plot_export.h"
#include "ui/units.h"

#include <QHash>
#include <QHeaderView>
#include <QHelpEvent>
#include <QStyledItemDelegate>
#include <QToolTip>

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {

QString groupTitle(const QString& key) {
    const std::pair<const char*, QString> titles[] = {
        {"geometry", FiguresPanel::tr("Geometry")},
        {"timing", FiguresPanel::tr("Port timing")},
        {"performance", FiguresPanel::tr("Performance")},
        {"energy", FiguresPanel::tr("Energy")},
        {"loads", FiguresPanel::tr("Forces and torque")},
        {"contact", FiguresPanel::tr("Contact and life")},
        {"balance", FiguresPanel::tr("Balance")},
        {"solver", FiguresPanel::tr("How well the equations are solved")}};
    for (const auto& [known, title] : titles) {
        if (key == QLatin1String(known))
            return title;
    }
    QString title = key;
    return title.replace(QLatin1Char('_'), QLatin1Char(' '));
}

QString signedText(double value, const QString& magnitude) {
    return (value > 0.0 ? QStringLiteral("+") : QString(QChar(0x2212))) + magnitude;
}

/// "+1.2 kW", the difference in the figure's own unit.
QString changeText(double change, const Unit& unit) {
    const double shown = unit.difference(change);
    return signedText(shown, QLocale().toString(std::abs(shown), 'g', 3) + ' ' + unit.text);
}

/// "+3.4 %", or the plain difference from zero; "=" where both figures read the same. Short, so
/// that the names of the figures stay readable beside it.
QString differenceText(double now, double before) {
    if (figureText(now) == figureText(before))
        return QStringLiteral("=");
    if (before == 0.0)
        return changeText(now - before, {});
    const double percent = 100.0 * (now - before) / std::abs(before);
    return signedText(percent,
                      QLocale().toString(std::abs(percent), 'f', std::abs(percent) < 10.0 ? 1 : 0) +
                          QStringLiteral(" %"));
}

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

QString figureText(double value) {
    if (value != 0.0 && (std::abs(value) < 1e-3 || std::abs(value) >= 1e6))
        return QLocale().toString(value, 'g', 3);
    return valueText(value, value);
}

FiguresPanel::FiguresPanel(QWidget* parent) : QTreeWidget(parent) {
    setColumnCount(3);
    setHeaderLabels({tr("Figure"), tr("Now"), tr("Change")});
    setFrameShape(QFrame::NoFrame);
    setRootIsDecorated(true);
    setWordWrap(true); // names stay whole beside the changes
    setIndentation(10);
    setAccessibleName(tr("Figures"));
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    header()->setSectionResizeMode(0, QHeaderView::Stretch);
    header()->setSectionResizeMode(1, QHeaderView::ResizeToContents);
    header()->setSectionResizeMode(2, QHeaderView::ResizeToContents);
    header()->setStretchLastSection(false);
    setColumnHidden(2, true);
    connect(&Units::instance(), &Units::changed, this, &FiguresPanel::refill);
    const auto ask = [this](QTreeWidgetItem* item) {
        const QString figure = item->data(0, Qt::UserRole).toString();
        if (item->parent() && !figure.isEmpty())
            Q_EMIT workingWanted(figure);
    };
    connect(this, &QTreeWidget::itemClicked, this, ask);
    connect(this, &QTreeWidget::itemActivated, this, ask);
    setItemDelegate(new WholeNames(this));
    header()->setResizeContentsPrecision(0); // by the rows in sight
    connect(header(), &QHeaderView::sectionResized, this,
            [this](int column) { column == 0 ? scheduleDelayedItemsLayout() : void(); });
}

void FiguresPanel::addOptions(QMenu& menu) {
    addPictureActions(menu, *this, tr("Figures"));
}

QString FiguresPanel::helpOn(const QString& figure) const {
    const QString help = solution_ ? figureHelp(*solution_, figure.toStdString()) : QString();
    return help.isEmpty() ? help : help + QLatin1Char('\n') + tr("Click: how it came about");
}

bool FiguresPanel::viewportEvent(QEvent* event) {
    if (event->type() == QEvent::ToolTip) {
        const auto* help = static_cast<QHelpEvent*>(event);
        const QModelIndex at = indexAt(help->pos());
        if (at.isValid() && at.column() == 0 && at.parent().isValid()) {
            QToolTip::showText(help->globalPos(), helpOn(at.data(Qt::UserRole).toString()), this);
            return true;
        }
    }
    return QTreeWidget::viewportEvent(event);
}

void FiguresPanel::showSolution(const SolutionPointer& solution) {
    solution_ = solution;
    refill();
}

void FiguresPanel::showBaseline(const SolutionPointer& baseline) {
    baseline_ = baseline;
    setColumnHidden(2, !baseline_);
    refill();
}

QTreeWidgetItem* FiguresPanel::groupItem(const QString& key) {
    for (int i = 0; i < topLevelItemCount(); ++i) {
        if (topLevelItem(i)->data(0, Qt::UserRole).toString() == key)
            return topLevelItem(i);
    }
    auto* item = new QTreeWidgetItem(this, {groupTitle(key)});
    item->setData(0, Qt::UserRole, key);
    QFont bold = font();
    bold.setBold(true);
    item->setFont(0, bold);
    item->setFirstColumnSpanned(true);
    item->setExpanded(key != QLatin1String("solver"));
    return item;
}

void FiguresPanel::refill() {
    if (!solution_)
        return;
    for (int i = 0; i < topLevelItemCount(); ++i)
        topLevelItem(i)->setData(1, Qt::UserRole, 0); // rows used so far
    for (const solution::Figure& figure : solution_->figures) {
        QTreeWidgetItem* group = groupItem(QString::fromStdString(figure.group));
        const int row = group->data(1, Qt::UserRole).toInt();
        group->setData(1, Qt::UserRole, row + 1);
        QTreeWidgetItem* item =
            row < group->childCount() ? group->child(row) : new QTreeWidgetItem(group);
        const Unit unit = unitFor(figure.unit);
        item->setText(0, coreTextToWrap(figure.label));
        item->setData(0, Qt::UserRole, QString::fromStdString(figure.name));
        item->setText(1, figure.value ? figureText(unit.shown(*figure.value)) + ' ' + unit.text
                                      : tr("not available"));
        item->setToolTip(1, coreText(figure.note));
        item->setTextAlignment(1, Qt::AlignRight | Qt::AlignVCenter);
        item->setTextAlignment(2, Qt::AlignRight | Qt::AlignVCenter);
        const auto* before = baseline_ ? baseline_->figure(figure.name) : nullptr;
        QString difference, change;
        if (before && before->value && figure.value) {
            difference = differenceText(*figure.value, *before->value);
            change = tr("%1 against %2 %3 of the baseline")
                         .arg(changeText(*figure.value - *before->value, unit),
                              figureText(unit.shown(*before->value)), unit.text);
        }
        item->setText(2, difference);
        item->setToolTip(2, change);
    }
    for (int i = 0; i < topLevelItemCount(); ++i) {
        QTreeWidgetItem* group = topLevelItem(i);
        while (group->childCount() > group->data(1, Qt::UserRole).toInt())
            delete group->takeChild(group->childCount() - 1);
    }
}

} // namespace lobewright::ui
