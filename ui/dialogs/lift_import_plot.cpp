#include "ui/dialogs/lift_import_plot.h"

#include "core/units.h"
#include "ui/base/palette.h"
#include "ui/base/units.h"
#include "ui/base/watching.h"
#include "ui/dialogs/two_areas.h"

#include <tuple>

namespace lobewright::ui {

namespace {

using units::degree;
using units::micrometre;
using units::millimetre;

} // namespace

LiftImportPlot::LiftImportPlot(QWidget* parent) : QCustomPlot(parent) {
    setAccessibleName(tr("Table, pattern, acceleration and residual"));
    std::tie(above_, below_) = stackTwoAreas(*this);
    middle_ = addAreaBetween(*this, *above_, *below_);
    above_->axis(QCPAxis::atLeft)->setLabel(axisText(tr("lift"), QStringLiteral("mm")));
    middle_->axis(QCPAxis::atLeft)
        ->setLabel(axisText(tr("acceleration"), QStringLiteral("mm/rad²")));
    below_->axis(QCPAxis::atLeft)->setLabel(axisText(tr("residual"), QStringLiteral("µm")));
    below_->axis(QCPAxis::atBottom)->setLabel(tr("pattern angle, °"));
    pattern_ = graphOn(*this, *above_);
    table_ = graphOn(*this, *above_);
    table_->setLineStyle(QCPGraph::lsNone);
    acceleration_ = graphOn(*this, *middle_);
    noisy_ = graphOn(*this, *middle_);
    quieter_ = graphOn(*this, *middle_);
    upper_ = graphOn(*this, *below_);
    lower_ = graphOn(*this, *below_);
    residual_ = graphOn(*this, *below_);
    QCPLegend* named = legendAbove(*this);
    for (const auto& [graph, name] :
         {std::pair(table_, tr("table")), std::pair(pattern_, tr("pattern")),
          std::pair(noisy_, tr("noise of the table")), std::pair(upper_, tr("tolerance"))}) {
        graph->setName(name);
        graph->addToLegend(named);
    }
    setMinimumSize(420, 300);
    whenLookChanges(*this, [this] { applyTones(); });
    applyTones();
}

void LiftImportPlot::setFit(const exchange::ImportedLift& lift) {
    const Unit lengths = unitFor(QStringLiteral("mm")), deviations = unitFor(QStringLiteral("µm"));
    const Unit accelerations = unitFor(QStringLiteral("mm/rad²"));
    QVector<double> angles, lifts, made, residuals, acceleration, noisy, quieter;
    for (const exchange::ImportedRow& row : lift.rows) {
        angles += row.angle / degree;
        lifts += lengths.shown(row.lift / millimetre);
        made += lengths.shown((row.lift + row.residual) / millimetre);
        residuals += deviations.shown(row.residual / micrometre);
        const auto shown = [&](double value) { return accelerations.shown(value / millimetre); };
        acceleration += shown(row.acceleration);
        noisy += shown(row.acceleration + lift.accelerationNoise);
        quieter += shown(row.acceleration - lift.accelerationNoise);
    }
    table_->setData(angles, lifts, true);
    pattern_->setData(angles, made, true);
    residual_->setData(angles, residuals, true);
    acceleration_->setData(angles, acceleration, true);
    noisy_->setData(angles, noisy, true);
    quieter_->setData(angles, quieter, true);
    const double band = deviations.shown(lift.tolerance / micrometre);
    upper_->setData({angles.front(), angles.back()}, {band, band}, true);
    lower_->setData({angles.front(), angles.back()}, {-band, -band}, true);
    for (QCPAxisRect* area : {above_, middle_, below_}) {
        area->axis(QCPAxis::atBottom)->setRange(angles.front(), angles.back());
        area->axis(QCPAxis::atLeft)->rescale();
        area->axis(QCPAxis::atLeft)->scaleRange(1.1, area->axis(QCPAxis::atLeft)->range().center());
    }
    replot(QCustomPlot::rpQueuedReplot);
}

void LiftImportPlot::clear() {
    for (int i = 0; i < graphCount(); ++i)
        graph(i)->data()->clear();
    replot(QCustomPlot::rpQueuedReplot);
}

void LiftImportPlot::applyTones() {
    const Palette& tones = Palette::of(*this);
    applyAreaTones(*this);
    pattern_->setPen(QPen(tones.ink, 1.8));
    table_->setScatterStyle(QCPScatterStyle(QCPScatterStyle::ssCircle, tones.quiet, 4.0));
    residual_->setPen(QPen(tones.ink, 1.2));
    acceleration_->setPen(QPen(tones.ink, 1.6));
    for (QCPGraph* edge : {noisy_, quieter_})
        edge->setPen(QPen(tones.quiet, 1.0));
    noisy_->setBrush(QBrush(tones.tint(tones.quiet, 0.25)));
    noisy_->setChannelFillGraph(quieter_);
    for (QCPGraph* band : {upper_, lower_})
        band->setPen(QPen(tones.warning, 1.2, Qt::DashLine));
    replot(QCustomPlot::rpQueuedReplot);
}

} // namespace lobewright::ui
