// The part of TurnView that grips, nudges and draws handles.
#include "core/editing/tidy.h"
#include "ui/base/units.h"
#include "ui/handles/exact_entry.h"
#include "ui/scene/base/turn_view.h"

#include <QAccessible>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {

constexpr double reach = 9.0; ///< how near the pointer must come [px]

double distanceToBar(const QLineF& bar, const QPointF& point) {
    const QPointF along = bar.p2() - bar.p1();
    const double length2 = QPointF::dotProduct(along, along);
    const double share =
        length2 > 0.0 ? std::clamp(QPointF::dotProduct(point - bar.p1(), along) / length2, 0.0, 1.0)
                      : 0.0;
    const QPointF off = point - (bar.p1() + share * along);
    return std::hypot(off.x(), off.y());
}

double distanceTo(const Handle& handle, const QPointF& point) {
    if (!handle.grip.isNull())
        return distanceToBar(handle.grip, point);
    return std::hypot(point.x() - handle.at.x(), point.y() - handle.at.y());
}

} // namespace

int TurnView::handleAt(const QPointF& point) const {
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

const Handle* TurnView::handleOf(int index) const {
    const bool exists = index >= 0 && index < static_cast<int>(handles_.size());
    return exists ? &handles_[static_cast<std::size_t>(index)] : nullptr;
}

void TurnView::choose(int index) {
    if (chosen_ == index)
        return;
    chosen_ = index;
    announce();
    update();
}

bool TurnView::chooseHandle(const std::string& key) {
    for (std::size_t i = 0; i < handles_.size(); ++i) {
        if (handles_[i].key == key) {
            choose(static_cast<int>(i));
            byKeyboard_ = true;
            setFocus(Qt::OtherFocusReason);
            return true;
        }
    }
    return false;
}

void TurnView::announce() {
    QString text;
    if (const Handle* handle = handleOf(chosen_)) {
        text = handle->label;
        for (const auto& axis : handle->axes) {
            text +=
                QStringLiteral(", ") + axis.label + QLatin1Char(' ') + shownValue(axis, axis.value);
        }
    }
    setAccessibleDescription(text);
    QAccessibleEvent changed(this, QAccessible::DescriptionChanged);
    QAccessible::updateAccessibility(&changed);
}

void TurnView::emitEdit(const Handle& handle, const std::vector<double>& values) {
    Edit edit = handle.edit(values);
    if (edit.changes.empty() && !edit.replacement)
        return; // held, not moved
    edit.mergeKey = QString::fromStdString(handle.key);
    Q_EMIT edited(edit);
}

void TurnView::emitWhole(const std::optional<Edit>& edit) {
    if (!edit)
        return;
    choose(-1); // what was chosen may have another name now
    Q_EMIT edited(*edit);
    Q_EMIT editFinished();
}

void TurnView::add(const std::optional<Addition>& addition) {
    if (!addition)
        return;
    emitWhole(addition->edit);
    choose(handleAt(addition->at));
}

void TurnView::dragHandle(const QPointF& to, bool fine) {
    Grip& grip = *grip_;
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
    std::vector<double> values;
    for (std::size_t i = 0; i < grip.start.size(); ++i) {
        const HandleAxis& axis = grip.handle.axes[i];
        values.push_back(snapped(axis, moved(to, i), fine ? axis.fine : axis.snap));
    }
    bool same = true;
    for (std::size_t i = 0; i < values.size(); ++i)
        same = same && values[i] == grip.handle.axes[i].value;
    if (same)
        return;
    for (std::size_t i = 0; i < values.size(); ++i)
        grip.handle.axes[i].value = values[i];
    grip.moved = true;
    const Handle handle = grip.handle; // receivers may refresh this view
    emitEdit(handle, values);
}

void TurnView::dropHandle(bool keep) {
    const Grip grip = *grip_;
    grip_.reset();
    if (grip.moved) {
        if (!keep)
            emitEdit(grip.handle, grip.before);
        Q_EMIT editFinished();
    }
    refresh();
    announce();
}

void TurnView::nudge(const Handle& handle, QPointF direction, bool fine) {
    // The axis that points most along the key; across a single axis, up and right mean more.
    std::size_t best = 0;
    double most = 0.0;
    for (std::size_t i = 0; i < handle.axes.size(); ++i) {
        const QPointF unit = handle.axes[i].perUnit;
        const double along = QPointF::dotProduct(unit, direction) / std::hypot(unit.x(), unit.y());
        if (std::abs(along) > std::abs(most) + 1e-9) {
            most = along;
            best = i;
        }
    }
    if (std::abs(most) < 0.1)
        most = direction.x() - direction.y();
    std::vector<double> values;
    for (const auto& axis : handle.axes)
        values.push_back(axis.value);
    const HandleAxis& axis = handle.axes[best];
    const Unit unit = unitFor(axis.unit);
    const double step = unit.step(fine ? axis.fine : axis.snap) * (most > 0.0 ? 1.0 : -1.0);
    values[best] = std::clamp(editing::tidy(axis.value + step), axis.min, axis.max);
    if (values[best] == axis.value)
        return;
    nudging_ = byKeyboard_ = true;
    const Handle copy = handle;
    emitEdit(copy, values);
    announce();
}

void TurnView::openExactEntry(const Handle& handle) {
    if (entry_)
        entry_->deleteLater();
    entry_ = new ExactEntry(handle, this);
    const QPointF corner = handle.at + QPointF(14, 14);
    entry_->move(
        std::clamp(static_cast<int>(corner.x()), 0, std::max(0, width() - entry_->width())),
        std::clamp(static_cast<int>(corner.y()), 0, std::max(0, height() - entry_->height())));
    connect(entry_, &ExactEntry::accepted, this, [this, handle](const std::vector<double>& values) {
        setFocus(Qt::OtherFocusReason);
        emitEdit(handle, values);
        Q_EMIT editFinished();
    });
    entry_->show();
    entry_->setFocus(Qt::PopupFocusReason);
}

bool TurnView::focusNextPrevChild(bool next) {
    const int step = next ? 1 : -1;
    const int count = static_cast<int>(handles_.size());
    if (entry_ && entry_->isVisible())
        return QWidget::focusNextPrevChild(next);
    // Backwards from the drawing itself leaves it; backwards from the first handle returns to it.
    int index = chosen_ < 0 ? (next ? 0 : -1) : chosen_ + step;
    while (index >= 0 && index < count && !handles_[static_cast<std::size_t>(index)].inTabOrder)
        index += step;
    if (index >= 0 && index < count) {
        choose(index);
        byKeyboard_ = true;
        return true;
    }
    const bool stay = !next && chosen_ >= 0;
    choose(-1);
    return stay || QWidget::focusNextPrevChild(next);
}

void TurnView::paintHandle(QPainter& painter, const Handle& handle, bool strong) const {
    const Palette& p = tones();
    painter.setPen(QPen(strong ? p.ink : p.quiet, strong ? 1.6 : 1.0));
    painter.setBrush(strong ? p.paper : p.panel);
    if (handle.grip.isNull()) {
        const double size = strong ? 5.5 : 4.0;
        painter.drawEllipse(handle.at, size, size);
        return;
    }
    QPainterPath bar;
    bar.moveTo(handle.grip.p1());
    bar.lineTo(handle.grip.p2());
    QPainterPathStroker stroker;
    stroker.setWidth(approach() > 0.0 ? 10.0 : strong ? 6.0 : 4.0);
    stroker.setCapStyle(Qt::RoundCap);
    painter.drawPath(stroker.createStroke(bar));
}

void TurnView::paintTag(QPainter& painter, const Handle& handle) const {
    const Palette& p = tones();
    QString text = handle.label + QLatin1Char('\n');
    for (std::size_t i = 0; i < handle.axes.size(); ++i) {
        const auto& axis = handle.axes[i];
        text += (i ? QStringLiteral("   ") : QString()) + axis.label + QLatin1Char(' ') +
                shownValue(axis, axis.value);
        if (axis.note)
            text += axis.note(axis.value);
    }
    const QRectF bounds =
        painter.fontMetrics().boundingRect(QRect(0, 0, width(), height()), Qt::AlignLeft, text);
    QRectF box(0, 0, bounds.width() + 14, bounds.height() + 8);
    box.moveTopLeft(handle.at + QPointF(12, 12));
    if (box.right() > width() - 4)
        box.moveRight(handle.at.x() - 10);
    if (box.bottom() > height() - 4)
        box.moveBottom(handle.at.y() - 12);
    box.moveLeft(std::max(4.0, box.left()));
    box.moveTop(std::max(4.0, box.top()));
    painter.setPen(QPen(p.quiet, 1.0));
    painter.setBrush(p.panel);
    painter.drawRoundedRect(box, 4, 4);
    painter.setPen(p.ink);
    painter.drawText(box.adjusted(7, 4, -7, -4), Qt::AlignLeft | Qt::AlignVCenter, text);
}

bool TurnView::isApproached(const Handle& handle) const {
    return approach() <= 0.0 || (hasFocus() && byKeyboard_) ||
           (pointerInside_ && distanceTo(handle, pointer_) <= approach());
}

void TurnView::paintHandles(QPainter& painter) {
    if (!pointerInside_ && !hasFocus() && !grip_) {
        // At rest only a hint that the curve can be taken there.
        for (const auto& handle : handles_) {
            if (approach() > 0.0)
                break;
            painter.setPen(Qt::NoPen);
            painter.setBrush(tones().quiet);
            if (handle.grip.isNull())
                painter.drawEllipse(handle.at, 2.5, 2.5);
            else if (handle.atRest)
                paintHandle(painter, handle, false);
        }
        return;
    }
    for (const auto& handle : handles_) {
        if (isApproached(handle))
            paintHandle(painter, handle, false);
    }
    if (const Handle* chosen = handleOf(chosen_); chosen && hasFocus())
        paintHandle(painter, *chosen, true);
    // One tag at most: what is gripped, else what is under the pointer, else what keys would move.
    const Handle* strong = handleOf(hovered_);
    if (strong && strong->key == released_)
        strong = nullptr;
    if (!strong && hasFocus() && byKeyboard_)
        strong = handleOf(chosen_);
    if (grip_) {
        strong = &grip_->handle;
        for (const auto& handle : handles_) {
            if (handle.key == grip_->handle.key) {
                strong = &handle;
                break;
            }
        }
    }
    if (!strong)
        return;
    paintHandle(painter, *strong, true);
    paintTag(painter, *strong);
}

} // namespace lobewright::ui
