#include "ui/picture/readings_table.h"

#include "core/design/design.h"
#include "core/units.h"
#include "ui/base/core_text.h"
#include "ui/base/side_words.h"
#include "ui/base/units.h"

#include <QComboBox>
#include <QHeaderView>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>

#include <algorithm>
#include <map>

namespace lobewright::ui {

namespace {

enum Column { toolColumn, valueColumn, rangeColumn, inputColumn, columns };

const auto degrees = QStringLiteral("°"), millimetres = QStringLiteral("mm");

/// Where a circle goes to a radius, that is read.
bool isRadius(const std::string& path) {
    return path.find("radius") != std::string::npos;
}

/// In the unit of the file.
double inFile(double si, bool isAngle) {
    return isAngle ? si / units::degree : si / units::millimetre;
}

QString longName(const design::Field& field) {
    return field.groupLabel.empty()
               ? coreText(field.label)
               : coreText(field.groupLabel) + QStringLiteral(": ") + coreText(field.label);
}

/// A reading is good to a handful of digits; the file shall not claim more.
double rounded(double value) {
    return std::round(value * 1e3) / 1e3;
}

} // namespace

ReadingsTable::ReadingsTable(QWidget* parent)
    : QWidget(parent), table_(new QTableWidget(0, columns, this)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    table_->setObjectName(QStringLiteral("readings"));
    table_->setAccessibleName(tr("Readings"));
    table_->setHorizontalHeaderLabels({tr("Reading"), tr("Value"), tr("Range"), tr("Goes to")});
    table_->verticalHeader()->hide();
    table_->verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 14);
    table_->horizontalHeader()->setSectionResizeMode(inputColumn, QHeaderView::Stretch);
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    column->addWidget(table_, 1);
    auto* button = new QPushButton(tr("Re&move the reading"), this);
    button->setAutoDefault(false);
    column->addWidget(button, 0, Qt::AlignLeft);
    connect(button, &QPushButton::clicked, this, &ReadingsTable::remove);
}

void ReadingsTable::setDesign(const design::Design& design) {
    design_ = design;
    lengths_.clear();
    angles_.clear();
    for (design::Field& field : design::fields(design)) {
        if (field.kind != design::FieldKind::number || field.path.starts_with("/limits/"))
            continue;
        if (field.unit == "mm")
            lengths_.push_back(std::move(field));
        else if (field.unit == "°")
            angles_.push_back(std::move(field));
    }
}

void ReadingsTable::show(const PictureMarks& marks) {
    marks_ = marks;
    table_->setRowCount(0);
    for (int row = 0; row < static_cast<int>(marks.readings.size()); ++row)
        addRow(row);
    for (int column = 0; column < inputColumn; ++column)
        table_->resizeColumnToContents(column);
}

void ReadingsTable::addRow(int row) {
    const PictureMark& mark = marks_.readings[static_cast<size_t>(row)];
    const bool isAngle = mark.tool == PictureTool::angle;
    const bool halved = isRadius(mark.input);
    const auto reading = marks_.read(mark, halved);
    QString name = toolName(mark.tool).remove(QLatin1Char('&')), value, range;
    if (mark.tool == PictureTool::circle)
        name = halved ? tr("Radius") : tr("Diameter");
    if (reading) {
        const QString unit = isAngle ? degrees : millimetres;
        const Unit shown = unitFor(unit);
        const auto text = [&](double si) {
            return QLocale().toString(shown.shown(inFile(si, isAngle)), 'f', shown.decimals(2));
        };
        value = quantityText(inFile(reading->value, isAngle), unit);
        range = tr("%1 … %2").arg(text(reading->low), text(reading->high));
    } else if (mark.tool == PictureTool::curve) {
        value = tr("%1 places").arg(mark.places.size());
    } else {
        value = needsAxis(mark.tool) && !marks_.axis ? tr("needs the axis") : tr("needs the scale");
    }
    table_->insertRow(row);
    table_->setItem(row, toolColumn, new QTableWidgetItem(name));
    table_->setItem(row, valueColumn, new QTableWidgetItem(value));
    table_->setItem(row, rangeColumn, new QTableWidgetItem(range));
    table_->setCellWidget(row, inputColumn, inputChooser(row));
}

QWidget* ReadingsTable::inputChooser(int row) {
    const PictureMark& mark = marks_.readings[static_cast<size_t>(row)];
    auto* box = new QComboBox(table_);
    box->setAccessibleName(tr("Input that the reading goes to"));
    box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    box->addItem(tr("nowhere"));
    if (mark.tool == PictureTool::curve) {
        for (const End end : design_.mechanism.pistons())
            box->addItem(trackTitle(end, design_.mechanism.isOneSided()) + QChar(0x2026),
                         QVariant::fromValue(end));
        connect(box, &QComboBox::activated, this, [this, box, row](int index) {
            const QVariant end = box->itemData(index);
            box->setCurrentIndex(0);
            if (end.isValid())
                Q_EMIT lobeWanted(row, end.value<End>());
        });
        return box;
    }
    for (const design::Field& field : mark.tool == PictureTool::angle ? angles_ : lengths_)
        box->addItem(longName(field), QString::fromStdString(field.path));
    box->setCurrentIndex(std::max(0, box->findData(QString::fromStdString(mark.input))));
    connect(box, &QComboBox::activated, this, [this, box, row] {
        PictureMarks marks = marks_;
        marks.readings[static_cast<size_t>(row)].input =
            box->currentData().toString().toStdString();
        Q_EMIT wanted(marks);
    });
    return box;
}

void ReadingsTable::remove() {
    const int row = table_->currentRow() >= 0 ? table_->currentRow() : table_->rowCount() - 1;
    if (row < 0)
        return;
    PictureMarks marks = marks_;
    marks.readings.erase(marks.readings.begin() + row);
    Q_EMIT wanted(marks);
}

Edit measuredEdit(const design::Design& design, const PictureMarks& marks, const QString& source) {
    std::map<std::string, std::vector<picture::Reading>> found;
    for (const PictureMark& mark : marks.readings) {
        if (const auto reading = marks.read(mark, isRadius(mark.input));
            reading && !mark.input.empty())
            found[mark.input].push_back(*reading);
    }
    Edit edit;
    edit.text = ReadingsTable::tr("Measure a picture");
    edit.knowledge = design.knowledge;
    for (const auto& [path, readings] : found) {
        const auto field = design::findField(design, path);
        if (!field)
            continue;
        const bool isAngle = field->unit == "°";
        const picture::Reading all = picture::together(readings);
        const double value = rounded(inFile(all.value, isAngle));
        const double low = std::max(rounded(inFile(all.low, isAngle)), field->range.min);
        const double high = std::min(rounded(inFile(all.high, isAngle)), field->range.max);
        edit.changes.push_back({path, value});
        design::Known known{.origin = design::Origin::measured, .source = source.toStdString()};
        if (low < high && low <= value && value <= high) {
            known.low = low;
            known.high = high;
        }
        (*edit.knowledge)[path] = known;
    }
    return edit;
}

} // namespace lobewright::ui
