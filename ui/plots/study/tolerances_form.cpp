#include "ui/plots/study/tolerances_form.h"

#include "core/units.h"
#include "ui/base/controls.h"
#include "ui/base/units.h"

#include <QCheckBox>
#include <QDoubleSpinBox>
#include <QFormLayout>

namespace lobewright::ui {

namespace {

enum Place {
    lift,
    portEdge,
    clearance,
    distance,
    pistonLength,
    blockTemperature,
    shaftTemperature,
    pistonTemperature
};

} // namespace

TolerancesForm::TolerancesForm(QWidget* parent)
    : QWidget(parent), isWarm_(new QCheckBox(tr("Warm engine"), this)) {
    auto* form = new QFormLayout(this);
    form->setContentsMargins(0, 0, 0, 0);
    form->setVerticalSpacing(4);
    constexpr double mm = units::millimetre;
    const unknowns::Tolerances usual;
    add(*form, tr("Lift of a lobe ±"), tr("How far the lift of a lobe may be off"), "mm", mm,
        usual.lift, false);
    add(*form, tr("Port edges ±"), tr("How far the edge of a port may be off"), "mm", mm,
        usual.portEdge, false);
    add(*form, tr("Clearance ±"), tr("How far the cold crown clearance may be off"), "mm", mm,
        usual.clearance, false);
    isWarm_->setToolTip(tr("Block, shaft and pistons have grown from 293 K, by ΔL = L·α·ΔT: the "
                           "bands are those of the warm engine"));
    form->addRow(isWarm_);
    add(*form, tr("Distance of the tracks"),
        tr("Between the two track planes; the shaft between "
           "them grows"),
        "mm", mm, 0.3, true);
    add(*form, tr("Piston, roller to crown"), tr("From the axis of the roller to the crown"), "mm",
        mm, 0.1, true);
    add(*form, tr("Block"), tr("Temperature of the block, aluminium"), "K", 1.0, 363.0, true);
    add(*form, tr("Shaft"), tr("Temperature of the shaft, steel"), "K", 1.0, 343.0, true);
    add(*form, tr("Pistons"), tr("Mean temperature of the pistons, aluminium"), "K", 1.0, 453.0,
        true);
    connect(isWarm_, &QCheckBox::toggled, this, [this] {
        refill();
        Q_EMIT changed(tolerances());
    });
    connect(&Units::instance(), &Units::changed, this, &TolerancesForm::refill);
    refill();
}

void TolerancesForm::add(QFormLayout& form, const QString& label, const QString& help,
                         const char* unit, double perUnit, double value, bool isGrowth) {
    auto* box = new QDoubleSpinBox(this);
    box->setButtonSymbols(QAbstractSpinBox::NoButtons);
    box->setKeyboardTracking(false);
    describe(*box, label, help);
    form.addRow(label, box);
    const std::size_t place = entries_.size();
    entries_.push_back({box, unit, perUnit, value, isGrowth});
    connect(box, &QDoubleSpinBox::valueChanged, this, [this, place] { take(place); });
}

void TolerancesForm::showDesign(const design::Design& design) {
    if (isLengthTyped_)
        return;
    const auto& m = design.mechanism;
    entries_[pistonLength].value = m.piston ? m.piston->length : m.bore;
    entries_[distance].value = m.clearance + 2.0 * entries_[pistonLength].value;
    refill();
}

void TolerancesForm::refill() {
    isFilling_ = true;
    for (const Entry& entry : entries_) {
        const Unit unit = unitFor(QString::fromLatin1(entry.unit));
        const bool isLength = entry.perUnit != 1.0;
        entry.box->setDecimals(unit.decimals(isLength ? 2 : 0));
        // No engine is larger than 10 m, nor runs beyond these temperatures.
        entry.box->setRange(unit.shown(isLength ? 0.0 : 200.0), unit.shown(isLength ? 1e4 : 900.0));
        entry.box->setSuffix(QLatin1Char(' ') + unit.text);
        entry.box->setValue(unit.shown(entry.value / entry.perUnit));
        entry.box->setEnabled(!entry.isGrowth || isWarm_->isChecked());
    }
    isFilling_ = false;
}

void TolerancesForm::take(std::size_t place) {
    if (isFilling_)
        return;
    Entry& entry = entries_[place];
    entry.value =
        unitFor(QString::fromLatin1(entry.unit)).metric(entry.box->value()) * entry.perUnit;
    isLengthTyped_ = isLengthTyped_ || place == distance || place == pistonLength;
    Q_EMIT changed(tolerances());
}

unknowns::Tolerances TolerancesForm::tolerances() const {
    unknowns::Tolerances found{.lift = entries_[lift].value,
                               .portEdge = entries_[portEdge].value,
                               .clearance = entries_[clearance].value,
                               .growth = {}};
    if (isWarm_->isChecked()) {
        auto& growth = found.growth.emplace();
        growth.length = entries_[distance].value;
        growth.pistonLength = entries_[pistonLength].value;
        growth.blockTemperature = entries_[blockTemperature].value;
        growth.shaftTemperature = entries_[shaftTemperature].value;
        growth.pistonTemperature = entries_[pistonTemperature].value;
    }
    return found;
}

} // namespace lobewright::ui
