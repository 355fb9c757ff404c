#include "ui/dialogs/draft_steps.h"

#include "ui/base/controls.h"
#include "ui/base/core_text.h"
#include "ui/base/layouts.h"
#include "ui/base/units.h"
#include "ui/panels/number_edit.h"
#include "ui/panels/origin_words.h"

#include <QHeaderView>
#include <QLabel>
#include <QTableWidget>

namespace lobewright::ui {

namespace {

enum Column { quantityColumn, valueColumn, unitColumn, rangeColumn, originColumn, columns };

QString shown(double value, const std::string& unit) {
    return QLocale().toString(unitFor(unit).shown(value), 'g', 5);
}

} // namespace

DraftSteps::DraftSteps(QWidget* parent)
    : QWidget(parent), table_(new QTableWidget(0, columns, this)), working_(new QLabel(this)) {
    table_->setObjectName(QStringLiteral("steps"));
    table_->setAccessibleName(tr("Numbers of the draft"));
    table_->setHorizontalHeaderLabels(
        {tr("Quantity"), tr("Value"), tr("Unit"), tr("Range"), tr("Origin")});
    table_->verticalHeader()->hide();
    table_->verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 8);
    table_->horizontalHeader()->setHighlightSections(false);
    table_->horizontalHeader()->setSectionResizeMode(quantityColumn, QHeaderView::Stretch);
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setEditTriggers(QAbstractItemView::DoubleClicked | QAbstractItemView::EditKeyPressed |
                            QAbstractItemView::AnyKeyPressed);
    table_->setTabKeyNavigation(false);
    table_->setToolTip(tr("Type your own number over a value: the rest of the draft follows. An "
                          "empty value is the rule's again."));
    makeParagraph(*working_, "working");
    working_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    working_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    working_->setMinimumHeight(4 * fontMetrics().lineSpacing());
    columnOf(this, {0, 0, 0, 0}, -1, {{table_, 1}, working_});
    connect(table_, &QTableWidget::cellChanged, this, &DraftSteps::take);
    connect(table_, &QTableWidget::currentCellChanged, this, [this](int row) {
        if (isFilling_)
            return;
        row_ = row;
        explain(row);
    });
}

void DraftSteps::show(const draft::Draft* made) {
    isFilling_ = true;
    made_ = made;
    table_->setRowCount(0);
    if (made) {
        for (const draft::Step& step : made->steps)
            addRow(step);
        for (int column = valueColumn; column < columns; ++column)
            table_->resizeColumnToContents(column);
    }
    if (row_ >= 0 && row_ < table_->rowCount())
        table_->setCurrentCell(row_, valueColumn);
    isFilling_ = false;
    explain(table_->currentRow());
}

void DraftSteps::addRow(const draft::Step& step) {
    const bool hasRange = step.span.low < step.span.high;
    const QString texts[] = {coreText(step.label), shown(step.span.value, step.unit),
                             unitFor(step.unit).text,
                             hasRange ? tr("%1 … %2").arg(shown(step.span.low, step.unit),
                                                          shown(step.span.high, step.unit))
                                      : QString(),
                             originWord(step.origin)};
    const int row = table_->rowCount();
    table_->insertRow(row);
    for (int column = 0; column < columns; ++column) {
        auto* item = new QTableWidgetItem(texts[column]);
        if (column != valueColumn || !step.rule || step.isResult)
            item->setFlags(item->flags() & ~Qt::ItemIsEditable);
        if (column == valueColumn)
            item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
        table_->setItem(row, column, item);
    }
}

void DraftSteps::explain(int row) {
    if (!made_ || row < 0 || row >= static_cast<int>(made_->steps.size())) {
        working_->setText(made_ ? tr("Choose a row to see how its number was derived.")
                                : QString());
        return;
    }
    const draft::Step& step = made_->steps[static_cast<size_t>(row)];
    QStringList lines;
    if (step.rule) {
        lines << coreText(step.rule->title) + QStringLiteral(": ") + coreText(step.rule->formula);
        if (!step.working.empty())
            lines << coreText(step.working);
        if (!step.rule->range.empty())
            lines << tr("Assumed: %1").arg(coreText(step.rule->range));
        lines << tr("Source: %1").arg(coreText(step.rule->source));
    } else {
        lines << tr("Given: %1").arg(coreText(step.working));
    }
    working_->setText(lines.join(QLatin1Char('\n')));
}

void DraftSteps::take(int row, int column) {
    if (isFilling_ || column != valueColumn || !made_)
        return;
    const draft::Step& step = made_->steps[static_cast<size_t>(row)];
    const QString text = table_->item(row, column)->text().trimmed();
    const auto number = readNumber(text);
    if (!step.rule || step.isResult || (!number && !text.isEmpty())) {
        isFilling_ = true;
        table_->item(row, column)->setText(shown(step.span.value, step.unit));
        isFilling_ = false;
        return;
    }
    Q_EMIT ownNumber(std::string(step.rule->id),
                     number ? std::optional(unitFor(step.unit).metric(*number)) : std::nullopt);
}

} // namespace lobewright::ui
