#include "ui/plots/study/comparison_table.h"

#include "ui/base/core_text.h"
#include "ui/base/figure_text.h"
#include "ui/base/units.h"

#include <QApplication>
#include <QClipboard>
#include <QHeaderView>
#include <QKeyEvent>
#include <QScrollBar>

#include <algorithm>

namespace lobewright::ui {

namespace {
constexpr int leastNameWidth = 130; ///< [px]; names are broken into lines
constexpr int headLine = 12;        ///< characters of a line of a column's head, where words allow

/// Broken at spaces, so that heads are no wider than values.
QString brokenHead(const QString& text) {
    QString lines, line;
    for (const QString& word : text.split(QLatin1Char(' '))) {
        if (!line.isEmpty() && line.size() + 1 + word.size() > headLine) {
            lines += line + QLatin1Char('\n');
            line.clear();
        }
        line += (line.isEmpty() ? QString() : QStringLiteral(" ")) + word;
    }
    return lines + line;
}
} // namespace

ComparisonTable::ComparisonTable(QWidget* parent) : QTableWidget(parent) {
    setAccessibleName(tr("Results of the engines compared"));
    connect(&Units::instance(), &Units::changed, this, [this] { show(comparison_); });
    setFrameShape(QFrame::NoFrame);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setSelectionMode(QAbstractItemView::ContiguousSelection);
    setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    verticalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter |
                                          static_cast<Qt::Alignment>(Qt::TextWordWrap));
    verticalHeader()->setMinimumSectionSize(fontMetrics().height() + 6);
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
        auto* head = new QTableWidgetItem(brokenHead(coreText(study::label(engine.engine))));
        head->setToolTip(coreText(engine.problem));
        setHorizontalHeaderItem(column, head);
        for (int row = 0; row < rowCount(); ++row) {
            const solution::Figure& figure = engine.figures[static_cast<std::size_t>(row)];
            auto* item = new QTableWidgetItem(
                !figure.value && figure.note == study::withinTheFit ? coreText(figure.note)
                : !figure.value                                     ? QStringLiteral("–")
                : figure.isYesNo                                    ? figureText(figure)
                                 : figureText(unitFor(*figure.unit).shown(*figure.value)));
            item->setToolTip(coreText(figure.note));
            item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
            setItem(row, column, item);
        }
    }
    for (int row = 0; row < rowCount(); ++row) {
        const solution::Figure& figure = engines.front().figures[static_cast<std::size_t>(row)];
        QString name = coreText(figure.label);
        name = axisText(name, QString::fromStdString(figure.symbolOfUnit()));
        auto* head = new QTableWidgetItem(name);
        head->setToolTip(name);
        setVerticalHeaderItem(row, head);
    }
    shareWidth();
}

int ComparisonTable::wholeWidth() const {
    int columns = 0;
    for (int column = 0; column < columnCount(); ++column)
        columns += horizontalHeader()->sectionSizeHint(column);
    return columns == 0 ? 0 : std::max(columns, horizontalHeader()->length()) + 2 * leastNameWidth;
}

/// What the columns leave belongs to the names; longer ones take more lines.
void ComparisonTable::shareWidth() {
    if (rowCount() == 0 || !verticalHeaderItem(rowCount() - 1))
        return; // heads may resize the table before its names are there
    int longest = 0;
    for (int row = 0; row < rowCount(); ++row) {
        longest =
            std::max(longest, fontMetrics().horizontalAdvance(verticalHeaderItem(row)->text()));
    }
    constexpr int margins = 16;
    const int spare = contentsRect().width() - verticalScrollBar()->sizeHint().width() -
                      horizontalHeader()->length();
    const int width =
        std::clamp(spare, leastNameWidth, std::max(leastNameWidth, longest + margins));
    verticalHeader()->setFixedWidth(width);
    for (int row = 0; row < rowCount(); ++row) {
        const QRect lines = fontMetrics().boundingRect(
            QRect(0, 0, width - margins, 1000), Qt::TextWordWrap, verticalHeaderItem(row)->text());
        setRowHeight(row, lines.height() + 6);
    }
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
