#include "ui/plots/study/schedule_canvas.h"

#include "core/design/schedules.h"
#include "core/units.h"
#include "ui/base/core_text.h"
#include "ui/base/palette.h"
#include "ui/base/units.h"
#include "ui/base/watching.h"
#include "ui/plots/base/kept_view.h"
#include "ui/plots/base/plot_tones.h"

#include <QLocale>

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {

constexpr int curvePoints = 240; // over the width

QString speedText(double speed) {
    return ScheduleCanvas::tr("%1 rpm").arg(
        QLocale().toString(std::round(10.0 * speed) / 10.0, 'g', 6));
}

} // namespace

ScheduleCanvas::ScheduleCanvas(QWidget* parent)
    : QCustomPlot(parent), hand_(new Hand(*this)), curve_(addGraph()), points_(addGraph()),
      marked_(addGraph()), fixed_(new QCPItemStraightLine(this)),
      now_(new QCPItemStraightLine(this)) {
    setMinimumSize(160, 64);
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    points_->setLineStyle(QCPGraph::lsNone);
    marked_->setLineStyle(QCPGraph::lsNone);
    points_->setName({});
    marked_->setName({});
    yAxis->ticker()->setTickCount(3);
    yAxis->setNumberPrecision(5);
    xAxis->setTickLabels(false);
    axisRect()->setMinimumMargins(QMargins(46, 4, 14, 4));
    connect(&Units::instance(), &Units::changed, this, &ScheduleCanvas::refill);
    hand_->setFreshener([this] { makeHandles(); });
    connect(hand_, &Hand::edited, this, &ScheduleCanvas::edited);
    connect(hand_, &Hand::editFinished, this, &ScheduleCanvas::editFinished);
    connect(hand_, &Hand::changed, this, [this] {
        refill();
        say();
        Q_EMIT chosenChanged();
    });
    whenLookChanges(*this, [this] {
        applyTones();
        replot(rpQueuedReplot);
    });
    applyTones();
}

const design::Schedule* ScheduleCanvas::schedule() const {
    return index_ && *index_ < design_.schedules.size() ? &design_.schedules[*index_] : nullptr;
}

double ScheduleCanvas::shownSpeed(std::size_t point) const {
    return schedule()->speed[point] / units::revPerMinute;
}

void ScheduleCanvas::show(const design::Design& design, std::optional<std::size_t> index) {
    design_ = design;
    index_ = index;
    field_ = schedule() ? design::findField(design_, schedule()->input) : std::nullopt;
    const QString name = field_ ? coreText(field_->label) : QString();
    setAccessibleName(tr("%1 against speed").arg(name));
    makeHandles(); // what was chosen is chosen by its key
    refill();
    if (strong())
        say();
    Q_EMIT chosenChanged();
}

void ScheduleCanvas::setSpeeds(double from, double to) {
    if (xAxis->range() == QCPRange(from, to))
        return;
    xAxis->setRange(from, to);
    refill();
}

/// The axis stands still in a drag, so that the point stays under the pointer.
void ScheduleCanvas::fitValues() {
    if (hand_->isGripping())
        return;
    const Unit unit = unitFor(field_->unit);
    double low = unit.shown(std::ranges::min(schedule()->value));
    double high = unit.shown(std::ranges::max(schedule()->value));
    if (const auto* fixed = std::get_if<double>(&field_->value)) {
        low = std::min(low, unit.shown(*fixed));
        high = std::max(high, unit.shown(*fixed));
    }
    const double least = std::max(0.1 * std::max(std::abs(low), std::abs(high)), 1e-3);
    const double span = std::max(high - low, least), middle = 0.5 * (low + high);
    yAxis->setRange(middle - 0.75 * span, middle + 0.75 * span);
}

void ScheduleCanvas::refill() {
    for (QCPGraph* graph : {curve_, points_, marked_})
        graph->data()->clear();
    const bool isShown = schedule() && field_ && !schedule()->speed.empty() &&
                         schedule()->speed.size() == schedule()->value.size();
    if (isShown) {
        fitValues();
        const Unit unit = unitFor(field_->unit);
        const QCPRange speeds = xAxis->range();
        for (int i = 0; i <= curvePoints; ++i) {
            const double speed = speeds.lower + speeds.size() * i / curvePoints;
            curve_->addData(speed,
                            unit.shown(design::valueAt(*schedule(), speed * units::revPerMinute)));
        }
        for (std::size_t i = 0; i < schedule()->speed.size(); ++i)
            points_->addData(shownSpeed(i), unit.shown(schedule()->value[i]));
        if (const auto point = strong())
            marked_->addData(shownSpeed(*point), unit.shown(schedule()->value[*point]));
        yAxis->setLabel(unit.text);
        const auto* fixed = std::get_if<double>(&field_->value);
        fixed_->setVisible(fixed != nullptr);
        const double level = fixed ? unit.shown(*fixed) : 0.0;
        fixed_->point1->setCoords(0.0, level);
        fixed_->point2->setCoords(1.0, level);
        standAt(*now_, design_.running.speed / units::revPerMinute);
    }
    curve_->setName(accessibleName());
    replot(rpQueuedReplot);
}

std::optional<QPointF> ScheduleCanvas::placeOf(std::size_t point) const {
    if (!schedule() || !field_ || point >= schedule()->speed.size())
        return std::nullopt;
    const Unit unit = unitFor(field_->unit);
    return QPointF(xAxis->coordToPixel(shownSpeed(point)),
                   yAxis->coordToPixel(unit.shown(schedule()->value[point])));
}

QString ScheduleCanvas::words(double speed, double value) const {
    return tr("%1: %2").arg(speedText(speed),
                            quantityText(value, QString::fromStdString(field_->unit)));
}

void ScheduleCanvas::say() {
    const auto point = strong();
    Q_EMIT said(point ? words(shownSpeed(*point), schedule()->value[*point]) : QString());
}

void ScheduleCanvas::applyTones() {
    const Palette& tones = Palette::of(*this);
    applyPlotTones(*this, tones);
    curve_->setPen(QPen(tones.ink, 1.6));
    points_->setScatterStyle(
        QCPScatterStyle(QCPScatterStyle::ssCircle, QPen(tones.ink, 1.4), tones.paper, 8.0));
    marked_->setScatterStyle(
        QCPScatterStyle(QCPScatterStyle::ssCircle, QPen(tones.ink, 2.0), tones.ink, 9.0));
    fixed_->setPen(QPen(tones.quiet, 1.2, Qt::DashLine));
    now_->setPen(QPen(tones.cursor, 1.2));
}

} // namespace lobewright::ui
