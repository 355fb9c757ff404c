#include "ui/plots/study/wheel_plot.h"

#include "core/gas/models/wheel_lines.h"
#include "core/units.h"
#include "ui/base/curve.h"
#include "ui/base/palette.h"
#include "ui/base/units.h"
#include "ui/base/watching.h"
#include "ui/plots/base/end_labels.h"
#include "ui/plots/base/low_frames.h"
#include "ui/plots/base/plot_tones.h"

#include <algorithm>
#include <utility>

namespace lobewright::ui {

namespace {

Unit flowUnit() {
    return unitFor(QStringLiteral("kg/s"));
}

} // namespace

WheelPlot::WheelPlot(QWidget* parent)
    : QCustomPlot(parent), surge_(new QCPCurve(xAxis, yAxis)),
      operating_(new QCPCurve(xAxis, yAxis)), points_(addGraph()), ends_(new EndLabels(*this)) {
    setAccessibleName(tr("Pressure ratio of the compressor over its corrected flow"));
    setMinimumSize(200, 140);
    new LowFrames(*this);
    points_->setLineStyle(QCPGraph::lsNone);
    surge_->setName(tr("surge line"));
    operating_->setName(tr("operating line"));
    yAxis->setLabel(tr("pressure ratio"));
    whenLookChanges(*this, [this] { applyTones(); });
    applyTones();
}

void WheelPlot::clearWheel() {
    for (QCPCurve* line : std::exchange(lines_, {}))
        removePlottable(line);
    names_.clear();
    ends_->setLabels({});
    surge_->data()->clear();
}

void WheelPlot::setWheel(const gas::Wheel& wheel, const std::vector<double>& speeds) {
    clearWheel();
    const Unit unit = flowUnit();
    QVector<double> surgeFlow, surgeRatio;
    for (const gas::WheelLine& line : gas::wheelLines(wheel, speeds)) {
        auto* curve = new QCPCurve(xAxis, yAxis); // owned by the plot
        for (std::size_t i = 0; i < line.flow.size(); ++i)
            curve->addData(unit.shown(line.flow[i]), line.ratio[i]);
        lines_.push_back(curve);
        surgeFlow << unit.shown(line.flow.front());
        surgeRatio << line.ratio.front();
        names_.push_back({shortText(line.speed / units::revPerMinute), Palette::of(*this).quiet,
                          unit.shown(line.flow.back()), line.ratio.back()});
    }
    surge_->setData(surgeFlow, surgeRatio);
    ends_->setLabels(names_);
    fitAxes();
}

void WheelPlot::setOperatingLine(const std::vector<Place>& line) {
    operating_->data()->clear();
    for (const Place& place : line)
        operating_->addData(flowUnit().shown(place.flow), place.ratio);
    fitAxes();
}

void WheelPlot::setPoints(const std::vector<Place>& points) {
    points_->data()->clear();
    for (const Place& place : points)
        points_->addData(flowUnit().shown(place.flow), place.ratio);
    fitAxes();
}

void WheelPlot::fitAxes() {
    double widest = 0.0, lowest = 1.0, highest = 1.05;
    const auto take = [&](double flow, double ratio) {
        widest = std::max(widest, flow);
        lowest = std::min(lowest, ratio);
        highest = std::max(highest, ratio);
    };
    for (const QCPCurve* curve : lines_) {
        for (const QCPCurveData& point : *curve->data())
            take(point.key, point.value);
    }
    for (const QCPCurveData& point : *operating_->data())
        take(point.key, point.value);
    for (const QCPGraphData& point : *points_->data())
        take(point.key, point.value);
    xAxis->setLabel(axisText(tr("corrected flow"), QStringLiteral("kg/s")));
    xAxis->setRange(0.0, widest > 0.0 ? 1.05 * widest : 1.0);
    const double room = 0.06 * (highest - lowest);
    yAxis->setRange(lowest - room, highest + 1.5 * room);
    applyTones();
    replot(QCustomPlot::rpQueuedReplot);
}

void WheelPlot::applyTones() {
    const Palette& tones = Palette::of(*this);
    applyPlotTones(*this, tones);
    for (QCPCurve* line : lines_)
        line->setPen(QPen(tones.quiet, 1.2));
    for (EndLabels::Label& name : names_)
        name.colour = tones.quiet;
    ends_->setLabels(names_);
    surge_->setPen(QPen(tones.warning, 1.8, Qt::DashLine));
    operating_->setPen(QPen(tones.inlet, 2.4));
    operating_->setScatterStyle(
        QCPScatterStyle(QCPScatterStyle::ssDisc, QPen(tones.inlet), tones.inlet, 5));
    points_->setScatterStyle(
        QCPScatterStyle(QCPScatterStyle::ssCrossCircle, QPen(tones.cursor, 1.6), tones.paper, 9));
}

} // namespace lobewright::ui
