// The part of ScheduleCanvas that is dragged, moved by keys and typed into.
#include "core/design/schedule_edits.h"
#include "core/design/schedules.h"
#include "core/editing/tidy.h"
#include "core/units.h"
#include "ui/base/core_text.h"
#include "ui/base/units.h"
#include "ui/handles/exact_entry.h"
#include "ui/plots/study/schedule_canvas.h"

#include <QKeyEvent>
#include <QMouseEvent>

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {

constexpr double reach = 9.0;                            // [px]
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

std::optional<std::size_t> ScheduleCanvas::pointAt(const QPointF& place) const {
    std::optional<std::size_t> nearest;
    double least = reach;
    for (std::size_t i = 0; schedule() && i < schedule()->speed.size(); ++i) {
        const auto at = placeOf(i);
        const double distance = at ? std::hypot(at->x() - place.x(), at->y() - place.y()) : least;
        if (distance < least) {
            least = distance;
            nearest = i;
        }
    }
    return nearest;
}

Edit ScheduleCanvas::moved(std::size_t point, double speed, double value) const {
    Edit edit;
    edit.text = tr("Move a point of the schedule of %1").arg(inSentence(coreText(field_->label)));
    edit.changes = {{pathOf(*index_, "speed_rpm", point), speed},
                    {pathOf(*index_, "value", point), value}};
    edit.mergeKey = QStringLiteral("schedule %1 %2").arg(*index_).arg(point);
    return edit;
}

void ScheduleCanvas::moveTo(std::size_t point, double speed, double value, bool fine) {
    const Unit unit = unitFor(field_->unit);
    const double tenth = fine ? 0.1 : 1.0;
    const double speedStep = tenth * plainStep(xAxis->range().size() / speedSteps);
    const double valueStep = tenth * plainStep(yAxis->range().size() / valueSteps);
    const design::SpeedRange room = design::roomOf(*schedule(), point);
    const double onStep = std::clamp(editing::tidy(speedStep * std::round(speed / speedStep)),
                                     editing::tidy(room.min / units::revPerMinute),
                                     editing::tidy(room.max / units::revPerMinute));
    const double shown = editing::tidy(valueStep * std::round(value / valueStep));
    const double wanted = std::clamp(unit.metric(shown), field_->range.min, field_->range.max);
    if (onStep == editing::tidy(shownSpeed(point)) && wanted == schedule()->value[point])
        return;
    Q_EMIT edited(moved(point, onStep, wanted));
}

void ScheduleCanvas::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton || !schedule() || !field_) {
        QCustomPlot::mousePressEvent(event);
        return;
    }
    const auto point = pointAt(event->position());
    choose(point);
    if (point)
        drag_ = Drag{*point, *placeOf(*point) - event->position()};
}

void ScheduleCanvas::mouseMoveEvent(QMouseEvent* event) {
    if (!schedule() || !field_) {
        QCustomPlot::mouseMoveEvent(event);
        return;
    }
    if (drag_) {
        const QPointF at = event->position() + drag_->offset;
        drag_->moved = true;
        moveTo(drag_->point, xAxis->pixelToCoord(at.x()), yAxis->pixelToCoord(at.y()),
               event->modifiers() & Qt::ShiftModifier);
        say();
        return;
    }
    const auto under = pointAt(event->position());
    setCursor(under ? Qt::SizeAllCursor : Qt::ArrowCursor);
    if (under != hovered_) {
        hovered_ = under;
        refill();
    }
    say();
    if (!under) {
        const double speed = xAxis->pixelToCoord(event->position().x());
        Q_EMIT said(words(speed, design::valueAt(*schedule(), speed * units::revPerMinute)));
    }
}

void ScheduleCanvas::mouseReleaseEvent(QMouseEvent* event) {
    if (!drag_) {
        QCustomPlot::mouseReleaseEvent(event);
        return;
    }
    const bool hasMoved = drag_->moved;
    drag_.reset();
    if (hasMoved)
        Q_EMIT editFinished();
    refill();
    say();
}

void ScheduleCanvas::mouseDoubleClickEvent(QMouseEvent* event) {
    if (!schedule() || !field_)
        return;
    drag_.reset();
    if (const auto point = pointAt(event->position()))
        openExactEntry(*point);
    else
        insertAt(xAxis->pixelToCoord(event->position().x()));
}

void ScheduleCanvas::leaveEvent(QEvent* event) {
    QCustomPlot::leaveEvent(event);
    hovered_.reset();
    refill();
    say();
}

void ScheduleCanvas::replace(const std::optional<design::Schedule>& next, const QString& text) {
    if (!next)
        return;
    Edit edit;
    edit.text = text.arg(inSentence(coreText(field_->label)));
    edit.replacement = design::withScheduleAt(design_, *index_, *next);
    Q_EMIT edited(edit);
    Q_EMIT editFinished();
}

void ScheduleCanvas::insertAt(double speed) {
    const double step = plainStep(xAxis->range().size() / speedSteps);
    const double onStep = editing::tidy(step * std::round(speed / step)) * units::revPerMinute;
    auto next = design::withPoint(*schedule(), onStep);
    if (!next)
        return;
    const auto place = std::ranges::find(next->speed, onStep) - next->speed.begin();
    replace(next, tr("Add a point to the schedule of %1"));
    choose(static_cast<std::size_t>(place));
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
    if (chosen_)
        gap = std::min(*chosen_, speed.size() - 2);
    insertAt(0.5 * (shownSpeed(gap) + shownSpeed(gap + 1)));
}

void ScheduleCanvas::removePoint() {
    if (schedule() && field_ && chosen_)
        replace(design::withoutPoint(*schedule(), *chosen_),
                tr("Remove a point of the schedule of %1"));
}

void ScheduleCanvas::nudge(double speeds, double values, bool fine) {
    const Unit unit = unitFor(field_->unit);
    const double tenth = fine ? 0.1 : 1.0;
    const double speedStep = tenth * plainStep(xAxis->range().size() / speedSteps);
    const double valueStep = tenth * plainStep(yAxis->range().size() / valueSteps);
    isNudging_ = true;
    moveTo(*chosen_, shownSpeed(*chosen_) + speeds * speedStep,
           unit.shown(schedule()->value[*chosen_]) + values * valueStep, fine);
    say();
}

void ScheduleCanvas::keyPressEvent(QKeyEvent* event) {
    if (!schedule() || !field_) {
        QCustomPlot::keyPressEvent(event);
        return;
    }
    const bool fine = event->modifiers() & Qt::ShiftModifier;
    if (event->key() == Qt::Key_Insert) {
        addPoint();
    } else if (!chosen_) {
        QCustomPlot::keyPressEvent(event);
    } else if (event->key() == Qt::Key_Delete) {
        removePoint();
    } else if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        openExactEntry(*chosen_);
    } else if (event->key() == Qt::Key_Escape) {
        choose({});
    } else if (event->key() == Qt::Key_Left || event->key() == Qt::Key_Right) {
        nudge(event->key() == Qt::Key_Left ? -1.0 : 1.0, 0.0, fine);
    } else if (event->key() == Qt::Key_Up || event->key() == Qt::Key_Down) {
        nudge(0.0, event->key() == Qt::Key_Down ? -1.0 : 1.0, fine);
    } else {
        QCustomPlot::keyPressEvent(event);
    }
}

void ScheduleCanvas::keyReleaseEvent(QKeyEvent* event) {
    QCustomPlot::keyReleaseEvent(event);
    if (!event->isAutoRepeat() && std::exchange(isNudging_, false))
        Q_EMIT editFinished();
}

void ScheduleCanvas::focusOutEvent(QFocusEvent* event) {
    QCustomPlot::focusOutEvent(event);
    if (std::exchange(isNudging_, false))
        Q_EMIT editFinished();
}

bool ScheduleCanvas::focusNextPrevChild(bool next) {
    const auto count = schedule() ? schedule()->speed.size() : 0;
    if (entry_ && entry_->isVisible())
        return QCustomPlot::focusNextPrevChild(next);
    if (next && count > 0 && (!chosen_ || *chosen_ + 1 < count)) {
        choose(chosen_ ? *chosen_ + 1 : 0);
        return true;
    }
    if (!next && chosen_) {
        choose(*chosen_ > 0 ? std::optional(*chosen_ - 1) : std::nullopt);
        return true;
    }
    choose({});
    return QCustomPlot::focusNextPrevChild(next);
}

Handle ScheduleCanvas::handleOf(std::size_t point) const {
    const design::SpeedRange room = design::roomOf(*schedule(), point);
    const double speedStep = plainStep(xAxis->range().size() / speedSteps);
    const double valueStep = plainStep(yAxis->range().size() / valueSteps);
    Handle handle;
    handle.key = "schedule point " + std::to_string(point);
    handle.label = tr("Point %1 of %2").arg(point + 1).arg(schedule()->speed.size());
    handle.at = *placeOf(point);
    HandleAxis speed, value;
    speed.label = tr("Speed");
    speed.unit = QStringLiteral("1/min");
    speed.value = shownSpeed(point);
    speed.min = room.min / units::revPerMinute;
    speed.max = room.max / units::revPerMinute;
    speed.snap = speedStep;
    speed.decimals = decimalsOf(speedStep);
    value.label = coreText(field_->label);
    value.unit = QString::fromStdString(field_->unit);
    value.value = schedule()->value[point];
    value.min = field_->range.min;
    value.max = field_->range.max;
    value.snap = valueStep;
    value.decimals = decimalsOf(valueStep) + 1;
    handle.axes = {speed, value};
    return handle;
}

void ScheduleCanvas::openExactEntry(std::size_t point) {
    if (entry_)
        entry_->deleteLater();
    choose(point);
    const Handle handle = handleOf(point);
    // It may be taller than the strip: it lies over the window.
    entry_ = new ExactEntry(handle, window());
    const QPoint wanted = mapTo(window(), (handle.at + QPointF(14, 14)).toPoint());
    entry_->move(std::clamp(wanted.x(), 0, std::max(0, window()->width() - entry_->width())),
                 std::clamp(wanted.y(), 0, std::max(0, window()->height() - entry_->height())));
    connect(entry_, &ExactEntry::accepted, this, [this, point](const std::vector<double>& values) {
        setFocus(Qt::OtherFocusReason);
        Q_EMIT edited(moved(point, values[0], values[1]));
        Q_EMIT editFinished();
    });
    entry_->show();
    entry_->setFocus(Qt::PopupFocusReason);
}

} // namespace lobewright::ui
