// The part of ScheduleCanvas that is dragged, moved by keys and typed into.
#include "core/design/schedule_edits.h"
#include "core/design/schedules.h"
#include "core/editing/tidy.h"
#include "core/units.h"
#include "ui/base/core_text.h"
#include "ui/base/units.h"
#include "ui/plots/study/schedule_canvas.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {

constexpr double speedSteps = 200.0, valueSteps = 100.0; // of a drag over the axes, at most

/// 1, 2 or 5 times a power of ten, not above `step`.
double plainStep(double step) {
    const double decade = std::pow(10.0, std::floor(std::log10(step)));
    const double share = step / decade;
    return decade * (share < 2.0 ? 1.0 : share < 5.0 ? 2.0 : 5.0);
}

int decimalsOf(double step) {
    return std::max(0, static_cast<int>(-std::floor(std::log10(step) + 1e-9)));
}

std::string pathOf(std::size_t schedule, const char* list, std::size_t point) {
    return "/schedules/" + std::to_string(schedule) + '/' + list + '/' + std::to_string(point);
}

} // namespace

std::optional<std::size_t> ScheduleCanvas::pointOf(int handle) const {
    const bool exists = schedule() && field_ && handle >= 0 &&
                        static_cast<std::size_t>(handle) <
                            std::min(schedule()->speed.size(), schedule()->value.size());
    return exists ? std::optional(static_cast<std::size_t>(handle)) : std::nullopt;
}

std::optional<std::size_t> ScheduleCanvas::strong() const {
    const bool isOver = !hand_->isGripping() && hand_->hovered() >= 0;
    return pointOf(isOver ? hand_->hovered() : hand_->chosen());
}

void ScheduleCanvas::makeHandles() {
    std::vector<Handle> handles;
    for (std::size_t i = 0; pointOf(static_cast<int>(i)); ++i)
        handles.push_back(handleOf(i));
    hand_->setHandles(std::move(handles));
}

Edit ScheduleCanvas::moved(std::size_t point, const std::vector<double>& values) const {
    if (!pointOf(static_cast<int>(point)))
        return {}; // it went while its exact value was typed
    Edit edit;
    edit.text = tr("Move a point of the schedule of %1").arg(inSentence(coreText(field_->label)));
    edit.changes = {{pathOf(*index_, "speed_rpm", point), values[0]},
                    {pathOf(*index_, "value", point), values[1]}};
    return edit;
}

Edit ScheduleCanvas::replaced(const design::Schedule& next, const QString& text) const {
    return {text.arg(inSentence(coreText(field_->label))),
            {},
            design::withScheduleAt(design_, *index_, next)};
}

Handle ScheduleCanvas::handleOf(std::size_t point) const {
    const design::SpeedRange room = design::roomOf(*schedule(), point);
    const double speedStep = plainStep(xAxis->range().size() / speedSteps);
    const double valueStep = plainStep(yAxis->range().size() / valueSteps);
    const Unit unit = unitFor(field_->unit);
    Handle handle;
    handle.key = fmt::format("schedule {} point {}", *index_, point);
    handle.label = tr("Point %1 of %2").arg(point + 1).arg(schedule()->speed.size());
    handle.at = *placeOf(point);
    HandleAxis speed, value;
    speed.label = tr("Speed");
    speed.unit = QStringLiteral("1/min");
    speed.value = shownSpeed(point);
    speed.min = editing::tidy(room.min / units::revPerMinute);
    speed.max = editing::tidy(room.max / units::revPerMinute);
    speed.snap = speedStep;
    speed.fine = 0.1 * speedStep;
    speed.decimals = decimalsOf(speedStep);
    speed.perUnit = {xAxis->coordToPixel(1.0) - xAxis->coordToPixel(0.0), 0.0};
    value.label = coreText(field_->label);
    value.unit = QString::fromStdString(field_->unit);
    value.value = schedule()->value[point];
    value.min = field_->range.min;
    value.max = field_->range.max;
    value.snap = valueStep / unit.factor;
    value.fine = 0.1 * value.snap;
    value.decimals = decimalsOf(valueStep) + 1;
    value.perUnit = {0.0, yAxis->coordToPixel(unit.factor) - yAxis->coordToPixel(0.0)};
    handle.axes = {speed, value};
    handle.edit = [this, point](const std::vector<double>& values) { return moved(point, values); };
    handle.removal = [this, point]() -> std::optional<Edit> {
        const auto next = design::withoutPoint(*schedule(), point);
        return next ? std::optional(replaced(*next, tr("Remove a point of the schedule of %1")))
                    : std::nullopt;
    };
    return handle;
}

void ScheduleCanvas::mouseMoveEvent(QMouseEvent* event) {
    if (!schedule() || !field_) {
        QCustomPlot::mouseMoveEvent(event);
        return;
    }
    setCursor(Qt::ArrowCursor);
    const double speed = xAxis->pixelToCoord(event->position().x());
    Q_EMIT said(words(speed, design::valueAt(*schedule(), speed * units::revPerMinute)));
}

void ScheduleCanvas::mouseDoubleClickEvent(QMouseEvent* event) {
    if (schedule() && field_)
        insertAt(xAxis->pixelToCoord(event->position().x()));
}

void ScheduleCanvas::leaveEvent(QEvent* event) {
    QCustomPlot::leaveEvent(event);
    say();
}

void ScheduleCanvas::insertAt(double speed) {
    const double step = plainStep(xAxis->range().size() / speedSteps);
    const double onStep = editing::tidy(step * std::round(speed / step)) * units::revPerMinute;
    const auto next = design::withPoint(*schedule(), onStep);
    if (!next)
        return;
    const auto place = std::ranges::find(next->speed, onStep) - next->speed.begin();
    hand_->apply(replaced(*next, tr("Add a point to the schedule of %1")),
                 fmt::format("schedule {} point {}", *index_, place));
}

void ScheduleCanvas::addPoint() {
    if (!schedule() || !field_)
        return;
    const auto& speed = schedule()->speed;
    if (speed.size() == 1) {
        const bool isBelow = shownSpeed(0) > xAxis->range().center();
        insertAt(isBelow ? xAxis->range().lower + 0.1 * xAxis->range().size()
                         : xAxis->range().upper - 0.1 * xAxis->range().size());
        return;
    }
    std::size_t gap = 0;
    for (std::size_t i = 1; i + 1 < speed.size(); ++i)
        gap = speed[i + 1] - speed[i] > speed[gap + 1] - speed[gap] ? i : gap;
    if (const auto point = chosen())
        gap = std::min(*point, speed.size() - 2);
    insertAt(0.5 * (shownSpeed(gap) + shownSpeed(gap + 1)));
}

void ScheduleCanvas::removePoint() {
    if (const auto point = chosen())
        hand_->apply(handleOf(*point).removal());
}

void ScheduleCanvas::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Insert) {
        addPoint();
    } else {
        QCustomPlot::keyPressEvent(event);
    }
}

} // namespace lobewright::ui
