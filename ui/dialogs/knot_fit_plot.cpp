#include "ui/dialogs/knot_fit_plot.h"

#include "core/units.h"
#include "ui/base/palette.h"
#include "ui/base/units.h"
#include "ui/base/watching.h"
#include "ui/dialogs/two_areas.h"

#include <tuple>

namespace lobewright::ui {

namespace {

constexpr int points = 1441;

} // namespace

KnotFitPlot::KnotFitPlot(QWidget* parent) : QCustomPlot(parent) {
    setAccessibleName(tr("Acceleration before and after, and what is left between the lifts"));
    std::tie(above_, below_) = stackTwoAreas(*this);
    above_->axis(QCPAxis::atLeft)->setLabel(axisText(tr("Acceleration"), QStringLiteral("m/s²")));
    below_->axis(QCPAxis::atLeft)->setLabel(axisText(tr("Lift error"), QStringLiteral("µm")));
    below_->axis(QCPAxis::atBottom)->setLabel(tr("Angle on the track, °"));
    before_ = graphOn(*this, *above_);
    before_->setName(tr("as it is"));
    after_ = graphOn(*this, *above_);
    after_->setName(tr("by knots"));
    knots_ = graphOn(*this, *above_);
    knots_->setName(tr("knots"));
    knots_->setLineStyle(QCPGraph::lsNone);
    deviation_ = graphOn(*this, *below_);
    QCPLegend* named = legendAbove(*this);
    for (QCPGraph* graph : {before_, after_, knots_})
        graph->addToLegend(named);
    setMinimumSize(460, 320);
    whenLookChanges(*this, [this] { applyTones(); });
    applyTones();
}

void KnotFitPlot::setEnd(End end) {
    end_ = end;
    applyTones();
}

void KnotFitPlot::fillAccelerations(const motion::LiftCurve& before, const motion::LiftCurve& after,
                                    double omega) {
    const double unit = unitFor(QStringLiteral("m/s²")).factor * omega * omega;
    const Unit deviations = unitFor(QStringLiteral("µm"));
    QVector<double> angles, is, becomes, off;
    for (int i = 0; i < points; ++i) {
        const double phi = before.period() * i / (points - 1);
        const bool isLast = i + 1 == points;
        const motion::Lift old = isLast ? before.before(phi) : before.at(phi);
        const motion::Lift made = isLast ? after.before(phi) : after.at(phi);
        angles += phi / units::degree;
        is += old.y2 * unit;
        becomes += made.y2 * unit;
        off += deviations.shown((made.y - old.y) / units::micrometre);
    }
    before_->setData(angles, is, true);
    after_->setData(angles, becomes, true);
    deviation_->setData(angles, off, true);
}

void KnotFitPlot::show(const motion::LiftCurve& before, const motion::LiftCurve& after,
                       const motion::KnotShape& knots, double omega) {
    fillAccelerations(before, after, omega);
    QVector<double> angles, accelerations;
    for (const motion::Knot& knot : knots.knots) {
        angles += knot.angle / units::degree;
        accelerations +=
            unitFor(QStringLiteral("m/s²")).shown(after.at(knot.angle).y2 * omega * omega);
    }
    knots_->setData(angles, accelerations, true);
    for (QCPAxisRect* area : {above_, below_}) {
        area->axis(QCPAxis::atBottom)->setRange(0.0, before.period() / units::degree);
        area->axis(QCPAxis::atLeft)->rescale();
        area->axis(QCPAxis::atLeft)->scaleRange(1.1, area->axis(QCPAxis::atLeft)->range().center());
    }
    // What is off by rounding only shall look like nothing.
    const double least = unitFor(QStringLiteral("µm")).shown(0.01);
    QCPAxis& off = *below_->axis(QCPAxis::atLeft);
    off.setRange(std::min(off.range().lower, -least), std::max(off.range().upper, least));
    replot(QCustomPlot::rpQueuedReplot);
}

void KnotFitPlot::applyTones() {
    const Palette& tones = Palette::of(*this);
    applyAreaTones(*this);
    // What was stands behind in the tone of a baseline, as in every other plot.
    const QColor hue = tones.side(end_);
    before_->setPen(QPen(tones.baseline(hue), 4.0));
    after_->setPen(QPen(hue, 1.4));
    knots_->setScatterStyle(QCPScatterStyle(QCPScatterStyle::ssCircle, hue, tones.paper, 7.0));
    deviation_->setPen(QPen(hue, 1.2));
    replot(QCustomPlot::rpQueuedReplot);
}

} // namespace lobewright::ui
