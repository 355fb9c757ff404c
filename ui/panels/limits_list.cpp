#include "ui/panels/limits_list.h"

#include "core/solution/workings/working.h"
#include "core/units.h"
#include "ui/base/core_text.h"
#include "ui/base/curve.h"
#include "ui/base/palette.h"
#include "ui/base/units.h"
#include "ui/plots/base/angle_ticks.h"
#include "ui/plots/base/turn_events.h"

#include <QAbstractListModel>
#include <QAction>
#include <QApplication>
#include <QPainter>
#include <QStyledItemDelegate>

#include <algorithm>
#include <vector>

namespace lobewright::ui {

namespace {

QString severityWord(solution::Severity severity) {
    switch (severity) {
    case solution::Severity::error:
        return LimitsList::tr("Error");
    case solution::Severity::warning:
        return LimitsList::tr("Warning");
    case solution::Severity::remark:
        return LimitsList::tr("Remark");
    }
    return {};
}

QString errorsText(int count) {
    return count == 1 ? LimitsList::tr("1 error") : LimitsList::tr("%1 errors").arg(count);
}

QString warningsText(int count) {
    return count == 1 ? LimitsList::tr("1 warning") : LimitsList::tr("%1 warnings").arg(count);
}

QString remarksText(int count) {
    return count == 1 ? LimitsList::tr("1 remark") : LimitsList::tr("%1 remarks").arg(count);
}

constexpr int padding = 6;

} // namespace

QString valueAndLimit(const solution::Check& check) {
    const QString unit = QString::fromStdString(std::string(check.unit->symbol));
    const QString value = quantityText(check.value, unit);
    // "-3°, limit 0°" says less than the sentence above it.
    if (check.limit == 0.0)
        return value;
    return (check.severity == solution::Severity::remark ? LimitsList::tr("%1, usual limit %2")
                                                         : LimitsList::tr("%1, limit %2"))
        .arg(value, quantityText(check.limit, unit));
}

class LimitsList::Model final : public QAbstractListModel {
  public:
    using QAbstractListModel::QAbstractListModel;

    void set(const SolutionPointer& solution) {
        beginResetModel();
        checks.clear();
        shown = solution;
        if (solution)
            checks = solution->checks;
        std::ranges::stable_sort(checks, std::ranges::greater(), &solution::Check::severity);
        endResetModel();
    }
    int rowCount(const QModelIndex& parent) const override {
        return parent.isValid() ? 0 : static_cast<int>(checks.size());
    }
    const solution::Check& at(const QModelIndex& index) const {
        return checks[static_cast<size_t>(index.row())];
    }
    QVariant data(const QModelIndex& index, int role) const override {
        const solution::Check& check = at(index);
        if (role == Qt::DisplayRole || role == Qt::AccessibleTextRole)
            return severityWord(check.severity) + QStringLiteral(": ") + coreText(check.message);
        if (role == Qt::ToolTipRole) {
            return LimitsList::tr(
                "Click: go to the input and the angle; Ctrl+Return: show the working");
        }
        return {};
    }
    /// "38.2°, limit 35°, at 123.5° shaft, −12° cycle".
    QString numbers(const solution::Check& check) const {
        if (check.value == 0.0 && check.limit == 0.0 && !check.angle)
            return {}; // a remark that no number decides
        QString text = valueAndLimit(check);
        if (check.angle && shown) {
            text += LimitsList::tr(", at %1° shaft, %2° cycle")
                        .arg(degreesText(*check.angle / units::degree),
                             degreesText(cycleAngle(shown->pair, *check.angle) / units::degree));
        }
        return text;
    }

    std::vector<solution::Check> checks;
    SolutionPointer shown;
};

/// The word of the severity, the sentence, and below it the numbers.
class LimitsList::Delegate final : public QStyledItemDelegate {
  public:
    Delegate(const Model& model, QListView& view)
        : QStyledItemDelegate(&view), model_(model), view_(view) {}

    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        const int width = view_.viewport()->width();
        const QFontMetrics metrics(option.font);
        const QRect box =
            metrics.boundingRect(QRect(0, 0, width - 2 * padding - 4, 10000), Qt::TextWordWrap,
                                 index.data(Qt::DisplayRole).toString());
        const QRect below =
            metrics.boundingRect(QRect(0, 0, width - 2 * padding - 4, 10000), Qt::TextWordWrap,
                                 model_.numbers(model_.at(index)));
        return {width, box.height() + below.height() + 2 * padding};
    }

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override {
        const Palette& tones = Palette::of(view_);
        const solution::Check& check = model_.at(index);
        painter->save();
        if (option.state & QStyle::State_Selected)
            painter->fillRect(option.rect, tones.tint(tones.cursor, 0.18));
        // A bar at the left, wider the graver: severity does not rest on colour alone.
        const int bar = check.severity == solution::Severity::error     ? 5
                        : check.severity == solution::Severity::warning ? 3
                                                                        : 0;
        painter->fillRect(QRect(option.rect.topLeft(), QSize(bar, option.rect.height())),
                          tones.warning);
        QRect box = option.rect.adjusted(padding + 4, padding, -padding, -padding);
        painter->setFont(option.font);
        painter->setPen(tones.ink);
        QRect used;
        painter->drawText(box, Qt::TextWordWrap, index.data(Qt::DisplayRole).toString(), &used);
        box.setTop(used.bottom() + 1);
        painter->setPen(tones.quiet);
        painter->drawText(box, Qt::TextWordWrap, model_.numbers(check));
        painter->setPen(tones.grid);
        painter->drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
        painter->restore();
    }

  private:
    const Model& model_;
    QListView& view_;
};

LimitsList::LimitsList(QWidget* parent) : QListView(parent), model_(new Model(this)) {
    setModel(model_);
    setItemDelegate(new Delegate(*model_, *this));
    setFrameShape(QFrame::NoFrame);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setAccessibleName(tr("Limits"));
    connect(&Units::instance(), &Units::changed, this, [this] { model_->set(model_->shown); });
    connect(this, &QListView::clicked, this, &LimitsList::follow);
    connect(this, &QListView::activated, this, &LimitsList::follow);
    auto* working = new QAction(tr("Show the &working"), this);
    working->setShortcut(QKeySequence(tr("Ctrl+Return")));
    working->setShortcutContext(Qt::WidgetShortcut);
    connect(working, &QAction::triggered, this, &LimitsList::askForWorking);
    addAction(working);
    setContextMenuPolicy(Qt::ActionsContextMenu);
}

void LimitsList::askForWorking() {
    if (!currentIndex().isValid())
        return;
    if (const auto& figure = model_->at(currentIndex()).figure)
        Q_EMIT workingWanted(QString::fromStdString(figure->written()));
}

void LimitsList::showSolution(const SolutionPointer& solution) {
    model_->set(solution);
    const int errors = count(solution::Severity::error);
    const int warnings = count(solution::Severity::warning);
    const int remarks = count(solution::Severity::remark);
    QStringList parts;
    if (errors + warnings == 0)
        parts << tr("No checked limit exceeded (estimates)");
    if (errors > 0)
        parts << errorsText(errors);
    if (warnings > 0)
        parts << warningsText(warnings);
    if (remarks > 0)
        parts << remarksText(remarks);
    summary_ = parts.join(QStringLiteral(", "));
}

int LimitsList::count(solution::Severity severity) const {
    return static_cast<int>(
        std::ranges::count(model_->checks, severity, &solution::Check::severity));
}

void LimitsList::follow(const QModelIndex& index) {
    const solution::Check& check = model_->at(index);
    if (check.angle)
        Q_EMIT angleWanted(*check.angle);
    if (!check.path.empty())
        Q_EMIT fieldWanted(QString::fromStdString(check.path));
}

void LimitsList::resizeEvent(QResizeEvent* event) {
    QListView::resizeEvent(event);
    scheduleDelayedItemsLayout(); // wrapped lines need other heights
}

} // namespace lobewright::ui
