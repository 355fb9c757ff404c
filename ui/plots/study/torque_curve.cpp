#include "ui/plots/study/torque_curve.h"

#include "core/study/speed_sweep.h"
#include "core/units.h"
#include "ui/plots/base/custom_plot.h"
#include "ui/plots/study/schedule_strip.h"

#include <QMenu>

#include <cmath>

namespace lobewright::ui {

namespace {
constexpr int pointCount = 25;
constexpr double wholeSpeeds = 100.0; // ends of the range that follows the design [1/min]
} // namespace

TorqueCurve::TorqueCurve(QWidget* parent)
    : StudyPlot(tr("Torque against speed"),
                {QStringLiteral("brake_torque_Nm"), QStringLiteral("brake_power_kW")}, parent),
      strip_(new ScheduleStrip(this)) {
    addBelow(strip_);
    connect(&plot(), &QCustomPlot::afterReplot, this, &TorqueCurve::alignStrip);
    connect(strip_, &ScheduleStrip::edited, this, &TorqueCurve::edited);
    connect(strip_, &ScheduleStrip::editFinished, this, &TorqueCurve::editFinished);
    connect(strip_, &ScheduleStrip::searchWanted, this, &TorqueCurve::scheduleWanted);
}

void TorqueCurve::showDesign(const design::Design& design) {
    strip_->show(design);
    alignStrip();
}

void TorqueCurve::alignStrip() {
    const QCPRange speeds = plot().xAxis->range();
    const QCPAxisRect& axes = *plot().axisRect();
    strip_->alignTo(speeds.lower, speeds.upper, axes.rect().left(),
                    plot().width() - axes.rect().right() - 1);
}

void TorqueCurve::addChoices(QMenu& menu) {
    menu.addAction(tr("Let an input &follow the speed…"), this,
                   [this] { Q_EMIT scheduleWanted({}); });
    menu.addSeparator();
}

StudyRunner::Work TorqueCurve::work(const design::Design& design,
                                    std::pair<double, double> range) const {
    return [design, range](Monitor& monitor, const study::PointSink& sink) {
        return study::speedSweep(design, range.first, range.second, pointCount, {}, monitor, sink);
    };
}

const std::vector<std::string>& TorqueCurve::everyFigure() const {
    return study::speedSweepFigures();
}

QString TorqueCurve::axisLabel() const {
    return tr("shaft speed, rpm");
}

double TorqueCurve::parameterOf(const design::Design& design) const {
    return design.running.speed / units::revPerMinute;
}

int TorqueCurve::pointsWanted() const {
    return pointCount;
}

double TorqueCurve::speedShare(double parameter) const {
    return parameter / parameterOf(solution()->design);
}

std::pair<double, double> TorqueCurve::ownRange(const design::Design& design) const {
    const double speed = parameterOf(design);
    const double from = std::round(0.3 * speed / wholeSpeeds) * wholeSpeeds;
    const double to = std::ceil(1.8 * speed / wholeSpeeds) * wholeSpeeds;
    return {std::max(from, 0.5 * wholeSpeeds), to};
}

} // namespace lobewright::ui
