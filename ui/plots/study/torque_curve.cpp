#include "ui/plots/study/torque_curve.h"

#include "core/study/speed_sweep.h"
#include "core/units.h"
#include "ui/base/palette.h"
#include "ui/base/watching.h"
#include "ui/plots/base/custom_plot.h"
#include "ui/plots/base/kept_view.h"
#include "ui/plots/study/contact_range_box.h"
#include "ui/plots/study/schedule_strip.h"

#include <QLayout>
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
      strip_(new ScheduleStrip(this)), contact_(new ContactRangeBox(this)) {
    addBelow(strip_);
    connect(&plot(), &QCustomPlot::afterReplot, this, &TorqueCurve::alignStrip);
    connect(strip_, &ScheduleStrip::edited, this, &TorqueCurve::edited);
    connect(strip_, &ScheduleStrip::editFinished, this, &TorqueCurve::editFinished);
    connect(strip_, &ScheduleStrip::searchWanted, this, &TorqueCurve::scheduleWanted);
    layout()->addWidget(contact_);
    connect(contact_, &ContactRangeBox::changed, this, &TorqueCurve::markContact);
    whenLookChanges(*this, [this] { markContact(); });
}

void TorqueCurve::subjectChanged() {
    contact_->setSubject(solution(), range());
}

/// A line where contact begins or ends; none at the ends of the speeds looked at.
void TorqueCurve::markContact() {
    for (QCPItemStraightLine* mark : marks_)
        plot().removeItem(mark);
    marks_.clear();
    const auto mark = [this](double speed) {
        auto* line = new QCPItemStraightLine(&plot()); // owned by the plot
        standAt(*line, speed);
        line->setPen(QPen(Palette::of(*this).warning, 1.4, Qt::DashLine));
        marks_.push_back(line);
    };
    if (contact_->found()) {
        for (const study::ContactRange& range : contact_->found()->kept) {
            if (range.below)
                mark(range.from);
            if (range.above)
                mark(range.to);
        }
    }
    plot().replot(QCustomPlot::rpQueuedReplot);
}

std::vector<double> TorqueCurve::marks() const {
    std::vector<double> speeds;
    for (const QCPItemStraightLine* mark : marks_)
        speeds.push_back(mark->point1->coords().x());
    return speeds;
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

std::vector<std::string> TorqueCurve::everyFigure(const design::Design& design) const {
    return study::speedSweepFigures(design);
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

std::pair<double, double> TorqueCurve::ownRange(const design::Design& design) const {
    const double speed = parameterOf(design);
    const double from = std::round(0.3 * speed / wholeSpeeds) * wholeSpeeds;
    const double to = std::ceil(1.8 * speed / wholeSpeeds) * wholeSpeeds;
    return {std::max(from, 0.5 * wholeSpeeds), to};
}

} // namespace lobewright::ui
