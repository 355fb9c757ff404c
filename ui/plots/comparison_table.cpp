#include "ui/plots/comparison_table.h"

#include "ui/core_words.h"
#include "ui/editing/figures_panel.h"
#include "ui/units.h"

#include <QApplication>
#include <QClipboard>
#include <QHeaderView>
#include <QKeyEvent>

namespace lobewright::ui {

namespace {
/// What a name has even where the columns want all the room: so many characters, but in a narrow
/// table only this share of the width. A longer one is cut, and stands in its tooltip.
constexpr int leastName = 46;
constexpr double nameShare = 0.6;
} // namespace

ComparisonTable::ComparisonTable(QWidget* parent) : QTableWidget(parent) {
    setAccessibleName(tr("Figures of the engines compared"));
    connect(&Units::instance(), &Units::changed, this, [this] { show(comparison_); });
    setFrameShape(QFrame::NoFrame);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setSelectionMode(QAbstractItemView::ContiguousSelection);
    setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    verticalHeader()->setTextElideMode(Qt::ElideRight);
    verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 6);
    horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
}

void ComparisonTable::show(study::Comparison comparison) {
    comparison_ = std::move(comparison);
    const auto& engines = comparison_.engines;
    if (engines.empty())
        return;
    setColumnCount(static_cast<int>(engines.size()));
    setRowCount(static_cast<int>(engines.front().figures.size()));
    for (int column = 0; column < columnCount(); ++column) {
        const study::ComparedEngine& engine = engines[static_cast<std::size_t>(column)];
        // Two lines keep the columns narrow.
        auto* head = new QTableWidgetItem(coreText(study::label(engine.engine))
                                              .replace(QLatin1String(", "), QLatin1String(",\n")));
        head->setToolTip(coreText(engine.problem));
        setHorizontalHeaderItem(column, head);
        for (int row = 0; row < rowCount(); ++row) {
            const solution::Figure& figure = engine.figures[static_cast<std::size_t>(row)];
            auto* item = new QTableWidgetItem(
                figure.value ? figureText(unitFor(figure.unit).shown(*figure.value))
                             : QStringLiteral("–"));
            item->setToolTip(coreText(figure.note));
            item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
            setItem(row, column, item);
        }
    }
    for (int row = 0; row < rowCount(); ++row) {
        const solution::Figure& figure = engines.front().figures[static_cast<std::size_t>(row)];
        QString name = coreText(figure.label);
        name = axisText(name, QString::fromStdString(figure.unit));
        auto* head = new QTableWidgetItem(name);
        head->setToolTip(name);
        setVerticalHeaderItem(row, head);
    }
    shareWidth();
}

void ComparisonTable::shareWidth() {
    const int whole = viewport()->width() + verticalHeader()->width();
    const int least =
        std::min(leastName * fontMetrics().averageCharWidth(), static_cast<int>(nameShare * whole));
    verticalHeader()->setMaximumWidth(std::max(least, whole - horizontalHeader()->length()));
}

void ComparisonTable::resizeEvent(QResizeEvent* event) {
    QTableWidget::resizeEvent(event);
    shareWidth();
}

QString ComparisonTable::text() const {
    QString lines;
    const auto put = [&lines](const QTableWidgetItem* item) {
        lines += QLatin1Char('\t') +
                 (item ? item->text().replace(QLatin1Char('\n'), QLatin1Char(' ')) : QString());
    };
    for (int column = 0; column < columnCount(); ++column)
        put(horizontalHeaderItem(column));
    for (int row = 0; row < rowCount(); ++row) {
        lines += QLatin1Char('\n') +
                 (verticalHeaderItem(row) ? verticalHeaderItem(row)->text() : QString());
        for (int column = 0; column < columnCount(); ++column)
            put(item(row, column));
    }
    return lines;
}

void ComparisonTable::keyPressEvent(QKeyEvent* event) {
    if (event->matches(QKeySequence::Copy))
        QApplication::clipboard()->setText(text());
    else
        QTableWidget::keyPressEvent(event);
}

} // namespace lobewright::ui
