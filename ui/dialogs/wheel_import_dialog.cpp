#include "ui/dialogs/wheel_import_dialog.h"

#include "core/exchange/wheel_table.h"
#include "core/gas/models/wheel_lines.h"
#include "core/units.h"
#include "ui/base/controls.h"
#include "ui/base/core_text.h"
#include "ui/base/layouts.h"
#include "ui/base/message_line.h"
#include "ui/base/units.h"
#include "ui/dialogs/table_file.h"
#include "ui/document/document.h"
#include "ui/plots/study/wheel_plot.h"

#include <QDialogButtonBox>
#include <QDoubleSpinBox>
#include <QFormLayout>
#include <QLabel>
#include <QPushButton>

namespace lobewright::ui {

namespace {

/// What is wrong with the points of a wheel as they would stand in the design.
std::optional<Problem> flawOf(const gas::Wheel& wheel) {
    gas::Settings settings;
    settings.supply.kind = gas::SupplyKind::compressor;
    settings.supply.compressor.wheel = wheel;
    Problems problems = gas::validate(settings);
    return problems.empty() ? std::nullopt : std::optional(std::move(problems.front()));
}

} // namespace

WheelImportDialog::WheelImportDialog(Document& document, QWidget* parent)
    : QDialog(parent), document_(document),
      file_(new TableFile(tr("Open a table of compressor points"),
                          static_cast<qint64>(exchange::largestWheelTable), this)),
      plot_(new WheelPlot(this)), message_(messageLine(3, this)) {
    setObjectName(QStringLiteral("wheelImport"));
    setWindowTitle(tr("Measured points to compressor wheel"));
    const gas::Wheel& now = document.design().gas.supply.compressor.wheel;
    pressure_ = numberBox("referencePressure", QStringLiteral("bar"), 0.5, 2.0,
                          now.referencePressure / units::bar, 4, this);
    temperature_ = numberBox("referenceTemperature", QStringLiteral("K"), 200.0, 400.0,
                             now.referenceTemperature, 2, this);
    pressure_->setToolTip(tr("Pressure before the wheel to which flows and speeds of the table are "
                             "corrected"));
    temperature_->setToolTip(tr("Temperature before the wheel to which flows and speeds of the "
                                "table are corrected"));
    auto* form = new QFormLayout;
    form->addRow(tr("Table"), file_);
    form->addRow(tr("Reference &pressure"), pressure_);
    form->addRow(tr("Reference &temperature"), temperature_);
    auto* buttons = footOf(*this, QDialogButtonBox::Cancel);
    use_ = addButton(*buttons, tr("&Use as compressor wheel"), QDialogButtonBox::AcceptRole, "use");
    use_->setEnabled(false);
    columnOf(this, {form, {plot_, 1}, message_, buttons});
    connect(file_, &TableFile::opened, this, [this](const QByteArray& table) {
        table_ = table;
        read();
    });
    connect(file_, &TableFile::refused, this, [this](const QString& why) { say(why, true); });
    for (QDoubleSpinBox* box : {pressure_, temperature_})
        connect(box, &QDoubleSpinBox::valueChanged, this, &WheelImportDialog::read);
    connect(buttons, &QDialogButtonBox::accepted, this, &WheelImportDialog::use);
    say(tr("A table with a row for each point: corrected speed in rpm, corrected flow in kg/s, "
           "pressure ratio and isentropic efficiency from 0 to 1. At least three flows at each "
           "speed."),
        false);
    resize(620, 560);
}

bool WheelImportDialog::openTable(const QString& file) {
    return file_->open(file);
}

void WheelImportDialog::read() {
    if (table_.isEmpty())
        return;
    wheel_.reset();
    use_->setEnabled(false);
    plot_->clearWheel();
    plot_->setPoints({});
    const auto points =
        exchange::readWheelTable({table_.constData(), static_cast<std::size_t>(table_.size())});
    if (!points) {
        say(TableFile::wordsOf(points.problems().front()), true);
        return;
    }
    gas::Wheel wheel = document_.design().gas.supply.compressor.wheel;
    wheel.characteristic = gas::WheelCharacteristic::table;
    wheel.points = *points;
    wheel.referencePressure =
        unitFor(QStringLiteral("bar")).metric(pressure_->value()) * units::bar;
    wheel.referenceTemperature = unitFor(QStringLiteral("K")).metric(temperature_->value());
    if (const auto flaw = flawOf(wheel)) {
        say(coreText(flaw->message), true);
        return;
    }
    const std::vector<double> speeds = gas::measuredSpeeds(wheel);
    plot_->setWheel(wheel, speeds);
    std::vector<WheelPlot::Place> places;
    for (const gas::WheelPoint& point : wheel.points)
        places.push_back({point.flow, point.pressureRatio});
    plot_->setPoints(places);
    wheel_ = std::move(wheel);
    use_->setEnabled(true);
    QString text = tr("%1 points at %2 speeds.").arg(wheel_->points.size()).arg(speeds.size());
    if (document_.design().gas.supply.kind != gas::SupplyKind::compressor)
        text += QLatin1Char(' ') + tr("The air supply of the design becomes a compressor.");
    say(text, false);
}

void WheelImportDialog::use() {
    if (!wheel_)
        return;
    Edit edit;
    edit.text = tr("Import compressor points");
    design::Design design = document_.design();
    design.gas.supply.kind = gas::SupplyKind::compressor;
    design.gas.supply.compressor.wheel = *wheel_;
    edit.replacement = std::move(design);
    if (const Problems problems = document_.apply(edit); !problems.empty()) {
        say(tr("The design would break a rule: %1").arg(coreText(problems.front().message)), true);
        return;
    }
    accept();
}

void WheelImportDialog::say(const QString& text, bool isWarning) {
    setMessage(*message_, text, isWarning);
}

} // namespace lobewright::ui
