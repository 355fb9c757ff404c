#include "ui/plots/base/plot_data.h"

#include "ui/plots/base/custom_plot.h"

#include <QAbstractItemModel>
#include <QHeaderView>
#include <QTableView>
#include <QTreeView>

#include <cmath>

namespace lobewright::ui {

namespace {

using Points = std::vector<std::pair<double, double>>;

/// "torque, N·m": curves of plots with a legend are named without what the axis says.
QString headingOf(const QCPAbstractPlottable& plottable) {
    const QCustomPlot& plot = *plottable.parentPlot();
    return plot.legend && plot.legend->visible()
               ? plottable.name() + QStringLiteral(", ") + plottable.valueAxis()->label()
               : plottable.name();
}

Points pointsOf(const QCPAbstractPlottable& plottable) {
    Points points;
    if (const auto* graph = qobject_cast<const QCPGraph*>(&plottable)) {
        for (const QCPGraphData& point : *graph->data())
            points.emplace_back(point.key, point.value);
    } else if (const auto* curve = qobject_cast<const QCPCurve*>(&plottable)) {
        for (const QCPCurveData& point : *curve->data())
            points.emplace_back(point.key, point.value);
    }
    return points;
}

bool sameAbscissa(const DataSheet& sheet, const Points& points) {
    if (sheet.rows.size() != points.size())
        return false;
    for (size_t i = 0; i < points.size(); ++i) {
        if (sheet.rows[i].front() != dataText(points[i].first))
            return false;
    }
    return true;
}

void addPoints(std::vector<DataSheet>& sheets, const QCPAbstractPlottable& plottable) {
    const Points points = pointsOf(plottable);
    // Plots over a turn write their scale into the corner instead.
    const QString label = plottable.keyAxis()->label();
    const QString abscissa = label.isEmpty() ? QObject::tr("shaft angle, °") : label;
    if (points.empty())
        return;
    auto sheet = std::ranges::find_if(sheets, [&](const DataSheet& other) {
        return other.headings.front() == abscissa && sameAbscissa(other, points);
    });
    if (sheet == sheets.end()) {
        DataSheet fresh{{abscissa}, {}};
        for (const auto& [x, y] : points)
            fresh.rows.push_back({dataText(x)});
        sheets.push_back(std::move(fresh));
        sheet = std::prev(sheets.end());
    }
    sheet->headings << headingOf(plottable);
    for (size_t i = 0; i < points.size(); ++i)
        sheet->rows[i] << dataText(points[i].second);
}

/// A row for every cell that holds a value.
DataSheet sheetOf(const QCPColorMap& map) {
    DataSheet sheet{{map.keyAxis()->label(), map.valueAxis()->label(), map.name()}, {}};
    for (int i = 0; i < map.data()->keySize(); ++i) {
        for (int j = 0; j < map.data()->valueSize(); ++j) {
            const double value = map.data()->cell(i, j);
            double x = 0.0, y = 0.0;
            map.data()->cellToCoord(i, j, &x, &y);
            if (std::isfinite(value))
                sheet.rows.push_back({dataText(x), dataText(y), dataText(value)});
        }
    }
    return sheet;
}

void addPlot(std::vector<DataSheet>& sheets, QCustomPlot& plot) {
    std::vector<DataSheet> own;
    for (int i = 0; i < plot.plottableCount(); ++i) {
        const QCPAbstractPlottable& plottable = *plot.plottable(i);
        // Marks that only show the cursor or a place have no name.
        if (!plottable.visible() || plottable.name().isEmpty())
            continue;
        if (const auto* map = qobject_cast<const QCPColorMap*>(&plottable)) {
            own.push_back(sheetOf(*map));
        } else {
            addPoints(own, plottable);
        }
    }
    std::ranges::move(own, std::back_inserter(sheets));
}

QString plain(const QVariant& value) {
    return value.toString().simplified();
}

void addRows(DataSheet& sheet, const QAbstractItemModel& model, const QModelIndex& parent,
             bool named) {
    for (int row = 0; row < model.rowCount(parent); ++row) {
        QStringList cells;
        if (named)
            cells << plain(model.headerData(row, Qt::Vertical));
        for (int column = 0; column < model.columnCount(parent); ++column)
            cells << plain(model.index(row, column, parent).data());
        sheet.rows.push_back(cells);
        addRows(sheet, model, model.index(row, 0, parent), named);
    }
}

DataSheet sheetOf(const QAbstractItemView& view) {
    const auto* table = qobject_cast<const QTableView*>(&view);
    const bool named = table && table->verticalHeader()->isVisibleTo(table);
    DataSheet sheet;
    if (named)
        sheet.headings << QString();
    for (int column = 0; column < view.model()->columnCount(); ++column)
        sheet.headings << plain(view.model()->headerData(column, Qt::Horizontal));
    addRows(sheet, *view.model(), {}, named);
    return sheet;
}

void addWidget(std::vector<DataSheet>& sheets, QWidget& widget) {
    if (const auto* source = dynamic_cast<const DataSource*>(&widget)) {
        sheets.push_back(source->dataSheet());
    } else if (auto* plot = qobject_cast<QCustomPlot*>(&widget)) {
        addPlot(sheets, *plot);
    } else if (qobject_cast<QTableView*>(&widget) || qobject_cast<QTreeView*>(&widget)) {
        sheets.push_back(sheetOf(static_cast<const QAbstractItemView&>(widget)));
    }
}

QString quoted(QString cell, QChar separator) {
    if (!cell.contains(separator) && !cell.contains(QLatin1Char('"')))
        return cell;
    return '"' + cell.replace(QLatin1Char('"'), QLatin1String("\"\"")) + '"';
}

QString joined(const std::vector<DataSheet>& sheets, QChar separator, const QString& end) {
    QString text;
    const auto put = [&](const QStringList& cells) {
        for (qsizetype i = 0; i < cells.size(); ++i)
            text += (i > 0 ? QString(separator) : QString()) + quoted(cells[i], separator);
        text += end;
    };
    for (const DataSheet& sheet : sheets) {
        if (!text.isEmpty())
            text += end;
        put(sheet.headings);
        for (const QStringList& row : sheet.rows)
            put(row);
    }
    return text;
}

} // namespace

QString dataText(double value) {
    return std::isfinite(value) ? QString::number(value, 'g', 9) : QString();
}

std::vector<DataSheet> dataOf(QWidget& view) {
    std::vector<DataSheet> sheets;
    addWidget(sheets, view);
    for (QWidget* child : view.findChildren<QWidget*>()) {
        if (child->isVisibleTo(&view))
            addWidget(sheets, *child);
    }
    std::erase_if(sheets, [](const DataSheet& sheet) { return sheet.isEmpty(); });
    return sheets;
}

QString csvOf(const std::vector<DataSheet>& sheets) {
    return joined(sheets, QLatin1Char(','), QStringLiteral("\r\n"));
}

QString tabbedOf(const std::vector<DataSheet>& sheets) {
    return joined(sheets, QLatin1Char('\t'), QStringLiteral("\n"));
}

} // namespace lobewright::ui
