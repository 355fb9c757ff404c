#include "ui/handles/hand.h"

#include "core/editing/tidy.h"
#include "ui/base/units.h"
#include "ui/handles/exact_entry.h"

#include <QAccessible>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QToolTip>
#include <QWidget>

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {

constexpr double reach = 9.0;        ///< how near the pointer must come [px]
constexpr double decidingMove = 5.0; ///< until a handle that goes one way has decided which [px]

double distanceToBar(const QLineF& bar, const QPointF& point) {
    const QPointF along = bar.p2() - bar.p1();
    const double length2 = QPointF::dotProduct(along, along);
    const double share =
        length2 > 0.0 ? std::clamp(QPointF::dotProduct(point - bar.p1(), along) / length2, 0.0, 1.0)
                      : 0.0;
    const QPointF off = point - (bar.p1() + share * along);
    return std::hypot(off.x(), off.y());
}

bool isFine(const QInputEvent& event) {
    return event.modifiers().testFlag(Qt::ShiftModifier);
}

std::vector<double> valuesOf(const Handle& handle) {
    std::vector<double> values;
    for (const HandleAxis& axis : handle.axes)
        values.push_back(axis.value);
    return values;
}

/// The axis that points most along a way, and how much; the first where none does.
std::pair<std::size_t, double> axisAlong(const Handle& handle, const QPointF& way) {
    std::size_t best = 0;
    double most = 0.0;
    for (std::size_t i = 0; i < handle.axes.size(); ++i) {
        const QPointF unit = handle.axes[i].perUnit;
        const double along = QPointF::dotProduct(unit, way) / std::hypot(unit.x(), unit.y());
        if (std::abs(along) > std::abs(most) + 1e-9) {
            most = along;
            best = i;
        }
    }
    return {best, most};
}

QPointF directionOf(int key) {
    return key == Qt::Key_Left    ? QPointF(-1, 0)
           : key == Qt::Key_Right ? QPointF(1, 0)
           : key == Qt::Key_Up    ? QPointF(0, -1)
           : key == Qt::Key_Down  ? QPointF(0, 1)
                                  : QPointF();
}

Qt::CursorShape shapeOver(const Handle& handle) {
    if (handle.axes.size() > 1)
        return Qt::SizeAllCursor;
    const QPointF way = handle.axes.front().perUnit;
    return std::abs(way.x()) > std::abs(way.y()) ? Qt::SizeHorCursor : Qt::SizeVerCursor;
}

} // namespace

double distanceTo(const Handle& handle, const QPointF& point) {
    if (!handle.grip.isNull())
        return distanceToBar(handle.grip, point);
    return std::hypot(point.x() - handle.at.x(), point.y() - handle.at.y());
}

Hand::Hand(QWidget& on, Shown shown) : QObject(&on), on_(on), shown_(shown) {
    on_.installEventFilter(this);
}

void Hand::freshen() const {
    if (freshen_)
        freshen_();
}

void Hand::setHandles(std::vector<Handle> handles) {
    handles_ = std::move(handles);
    const auto place = std::ranges::find(handles_, chosenKey_, &Handle::key);
    chosen_ = chosenKey_.empty() || place == handles_.end()
                  ? -1
                  : static_cast<int>(place - handles_.begin());
    hovered_ = pointerInside_ && !grip_ ? at(pointer_) : -1;
}

int Hand::at(const QPointF& point) const {
    int nearest = -1;
    double least = reach;
    for (std::size_t i = 0; i < handles_.size(); ++i) {
        const double distance = distanceTo(handles_[i], point);
        if (distance < least) {
            least = distance;
            nearest = static_cast<int>(i);
        }
    }
    return nearest;
}

const Handle* Hand::handleOf(int index) const {
    const bool exists = index >= 0 && index < static_cast<int>(handles_.size());
    return exists ? &handles_[static_cast<std::size_t>(index)] : nullptr;
}

void Hand::choose(int index) {
    const Handle* handle = handleOf(index);
    chosenKey_ = handle ? handle->key : std::string();
    if (chosen_ == index)
        return;
    chosen_ = index;
    announce();
    Q_EMIT changed();
}

bool Hand::choose(const std::string& key) {
    freshen();
    const auto place = std::ranges::find(handles_, key, &Handle::key);
    if (place == handles_.end())
        return false;
    choose(static_cast<int>(place - handles_.begin()));
    byKeyboard_ = true;
    on_.setFocus(Qt::OtherFocusReason);
    return true;
}

void Hand::announce() {
    QString text;
    if (const Handle* handle = handleOf(chosen_)) {
        text = handle->label;
        for (const auto& axis : handle->axes) {
            text +=
                QStringLiteral(", ") + axis.label + QLatin1Char(' ') + shownValue(axis, axis.value);
        }
    }
    if (text == said_)
        return;
    said_ = text;
    on_.setAccessibleDescription(text);
    QAccessibleEvent changed(&on_, QAccessible::DescriptionChanged);
    QAccessible::updateAccessibility(&changed);
}

void Hand::emitEdit(const Handle& handle, const std::vector<double>& values) {
    Edit edit = handle.edit(values);
    if (edit.changes.empty() && !edit.replacement)
        return; // held, not moved
    edit.mergeKey = QString::fromStdString(handle.key);
    Q_EMIT edited(edit);
}

void Hand::apply(const std::optional<Edit>& edit, const std::string& next) {
    if (!edit)
        return;
    choose(-1); // what was chosen may have another name now
    chosenKey_ = next;
    Q_EMIT edited(*edit);
    Q_EMIT editFinished();
    freshen();
    announce();
    Q_EMIT changed();
}

void Hand::put(const std::optional<Addition>& addition) {
    if (!addition)
        return;
    apply(addition->edit);
    choose(at(addition->at));
}

bool Hand::isFree(const Grip& grip, std::size_t axis) const {
    return !grip.handle.goesOneWay || grip.onlyAxis == axis;
}

void Hand::drag(const QPointF& to, bool fine) {
    Grip& grip = *grip_;
    if (grip.handle.goesOneWay && !grip.onlyAxis) {
        const QPointF way = to - grip.from;
        if (std::max(std::abs(way.x()), std::abs(way.y())) < decidingMove)
            return;
        grip.onlyAxis = axisAlong(grip.handle, way).first;
    }
    const auto moved = [&grip](const QPointF& point, std::size_t i) {
        const HandleAxis& axis = grip.handle.axes[i];
        const QPointF way = point - grip.from;
        return grip.start[i] + (grip.fine ? 0.1 : 1.0) * QPointF::dotProduct(way, axis.perUnit) /
                                   QPointF::dotProduct(axis.perUnit, axis.perUnit);
    };
    if (fine != grip.fine) {
        // The stretch with the other gearing starts where this one ends.
        std::vector<double> reached;
        for (std::size_t i = 0; i < grip.start.size(); ++i)
            reached.push_back(moved(to, i));
        grip.start = reached;
        grip.from = to;
        grip.fine = fine;
        return;
    }
    std::vector<double> values = valuesOf(grip.handle);
    for (std::size_t i = 0; i < grip.start.size(); ++i) {
        const HandleAxis& axis = grip.handle.axes[i];
        if (isFree(grip, i))
            values[i] = snapped(axis, moved(to, i), fine ? axis.fine : axis.snap);
    }
    if (values == valuesOf(grip.handle))
        return;
    for (std::size_t i = 0; i < values.size(); ++i)
        grip.handle.axes[i].value = values[i];
    grip.moved = true;
    const Handle handle = grip.handle; // receivers may make the handles anew
    emitEdit(handle, values);
    freshen();
    announce();
}

void Hand::drop(bool keep) {
    const Grip grip = *grip_;
    grip_.reset();
    if (grip.moved) {
        if (!keep)
            emitEdit(grip.handle, grip.before);
        Q_EMIT editFinished();
    }
    Q_EMIT gripped(false);
    freshen();
    announce();
    Q_EMIT changed();
}

void Hand::nudge(const Handle& handle, QPointF direction, bool fine) {
    auto [best, most] = axisAlong(handle, direction);
    if (std::abs(most) < 0.1) // across a single axis, up and right mean more
        most = direction.x() - direction.y();
    std::vector<double> values = valuesOf(handle);
    const HandleAxis& axis = handle.axes[best];
    const double step =
        unitFor(axis.unit).step(fine ? axis.fine : axis.snap) * (most > 0.0 ? 1.0 : -1.0);
    values[best] = std::clamp(editing::tidy(axis.value + step), axis.min, axis.max);
    if (values[best] == axis.value)
        return;
    nudging_ = byKeyboard_ = true;
    const Handle copy = handle;
    emitEdit(copy, values);
    freshen();
    announce();
}

void Hand::finishNudging() {
    if (std::exchange(nudging_, false))
        Q_EMIT editFinished();
}

void Hand::openExactEntry(const Handle& handle) {
    if (entry_)
        entry_->deleteLater();
    // It may be taller than its drawing: it lies over the window.
    QWidget& window = *on_.window();
    entry_ = new ExactEntry(handle, &window);
    const QPoint wanted = on_.mapTo(&window, (handle.at + QPointF(14, 14)).toPoint());
    entry_->move(std::clamp(wanted.x(), 0, std::max(0, window.width() - entry_->width())),
                 std::clamp(wanted.y(), 0, std::max(0, window.height() - entry_->height())));
    connect(entry_, &ExactEntry::accepted, this, [this, handle](const std::vector<double>& values) {
        on_.setFocus(Qt::OtherFocusReason);
        emitEdit(handle, values);
        Q_EMIT editFinished();
    });
    entry_->show();
    entry_->setFocus(Qt::PopupFocusReason);
}

bool Hand::press(const QMouseEvent& event) {
    isBusyBeside_ = true;
    if (event.button() != Qt::LeftButton)
        return false;
    byKeyboard_ = false;
    released_.clear();
    QToolTip::hideText(); // the tag of the handle says more
    const int hit = at(event.position());
    choose(hit);
    const Handle* handle = handleOf(hit);
    if (!handle)
        return false;
    isBusyBeside_ = false;
    const std::vector<double> values = valuesOf(*handle);
    grip_ = Grip{*handle, event.position(), values, values, isFine(event), false, std::nullopt};
    Q_EMIT gripped(true);
    Q_EMIT changed();
    return true;
}

bool Hand::move(const QMouseEvent& event) {
    pointer_ = event.position();
    if (grip_) {
        drag(event.position(), isFine(event));
        return true;
    }
    if (isBusyBeside_)
        return false;
    const bool wasInside = std::exchange(pointerInside_, true);
    const int before = std::exchange(hovered_, at(event.position()));
    const Handle* handle = handleOf(hovered_);
    const bool isLeft = !released_.empty() && (!handle || handle->key != released_);
    if (isLeft)
        released_.clear();
    if (handle)
        on_.setCursor(shapeOver(*handle));
    // Which handles show hangs on the very place only where they are approached.
    if (approach_ > 0.0 || !wasInside || isLeft || hovered_ != before)
        Q_EMIT changed();
    return handle != nullptr;
}

bool Hand::release(const QMouseEvent& event) {
    isBusyBeside_ = false;
    if (event.button() != Qt::LeftButton || !grip_)
        return false;
    released_ = grip_->handle.key;
    drop(true);
    return true;
}

bool Hand::doubleClick(const QMouseEvent& event) {
    const Handle* handle =
        event.button() == Qt::LeftButton ? handleOf(at(event.position())) : nullptr;
    if (!handle)
        return false;
    if (std::exchange(grip_, std::nullopt))
        Q_EMIT gripped(false);
    openExactEntry(*handle);
    return true;
}

bool Hand::key(const QKeyEvent& event) {
    if (event.modifiers() & (Qt::ControlModifier | Qt::AltModifier))
        return false;
    if (event.key() == Qt::Key_Escape && grip_) {
        drop(false);
        return true;
    }
    if (isWalking_ && (event.key() == Qt::Key_Tab || event.key() == Qt::Key_Backtab))
        return walk(event.key() == Qt::Key_Tab && !isFine(event));
    const Handle* handle = handleOf(chosen_);
    if (!handle)
        return false;
    const QPointF direction = directionOf(event.key());
    if (!direction.isNull()) {
        nudge(*handle, direction, isFine(event));
        return true;
    }
    switch (event.key()) {
    case Qt::Key_Escape:
        choose(-1);
        return true;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        openExactEntry(*handle);
        return true;
    case Qt::Key_Delete:
        if (handle->removal)
            apply(handle->removal());
        return true;
    default:
        return false;
    }
}

bool Hand::walk(bool next) {
    const int step = next ? 1 : -1;
    const int count = static_cast<int>(handles_.size());
    // Backwards from the drawing itself leaves it; backwards from the first handle returns to it.
    int index = chosen_ < 0 ? (next ? 0 : -1) : chosen_ + step;
    while (index >= 0 && index < count && !handles_[static_cast<std::size_t>(index)].inTabOrder)
        index += step;
    if (index >= 0 && index < count) {
        byKeyboard_ = true;
        choose(index);
        return true;
    }
    const bool stay = !next && chosen_ >= 0;
    choose(-1);
    return stay;
}

bool Hand::eventFilter(QObject* watched, QEvent* event) {
    if (watched != &on_)
        return QObject::eventFilter(watched, event);
    switch (event->type()) {
    case QEvent::MouseButtonPress:
        freshen();
        return press(*static_cast<QMouseEvent*>(event));
    case QEvent::MouseMove:
        freshen();
        return move(*static_cast<QMouseEvent*>(event));
    case QEvent::MouseButtonRelease:
        return release(*static_cast<QMouseEvent*>(event));
    case QEvent::MouseButtonDblClick:
        freshen();
        return doubleClick(*static_cast<QMouseEvent*>(event));
    case QEvent::KeyPress:
        freshen();
        return key(*static_cast<QKeyEvent*>(event));
    case QEvent::KeyRelease:
        if (!static_cast<QKeyEvent*>(event)->isAutoRepeat())
            finishNudging();
        return false;
    case QEvent::ShortcutOverride: {
        // Arrows and Escape belong to the handle, not to shortcuts.
        const auto& pressed = *static_cast<QKeyEvent*>(event);
        const bool isPlain = !(pressed.modifiers() & (Qt::ControlModifier | Qt::AltModifier));
        const bool isMeant =
            !directionOf(pressed.key()).isNull() || pressed.key() == Qt::Key_Escape;
        if (isPlain && isMeant && (grip_ || chosen_ >= 0)) {
            event->accept();
            return true;
        }
        return false;
    }
    case QEvent::ToolTip: // a tag stands there already
        return grip_ || hovered_ >= 0;
    case QEvent::Leave:
        pointerInside_ = false;
        hovered_ = -1;
        Q_EMIT changed();
        return false;
    case QEvent::FocusOut:
        if (grip_)
            drop(true);
        finishNudging();
        return false;
    default:
        return false;
    }
}

} // namespace lobewright::ui
