// The part of Hand that draws handles and says what the one under it is.
#include "ui/base/drawing.h"
#include "ui/base/palette.h"
#include "ui/handles/hand.h"

#include <QPainterPath>
#include <QWidget>

#include <algorithm>

namespace lobewright::ui {

bool Hand::isApproached(const Handle& handle) const {
    return shown_ == Shown::always || approach_ <= 0.0 || (on_.hasFocus() && byKeyboard_) ||
           (pointerInside_ && distanceTo(handle, pointer_) <= approach_);
}

void Hand::paintHandle(QPainter& painter, const Handle& handle, bool strong) const {
    const Palette& p = Palette::of(on_);
    const QColor own = handle.side ? p.side(*handle.side) : strong ? p.ink : p.quiet;
    const bool isChosen = handle.side && handle.key == chosenKey_;
    fillAndOutline(painter,
                   isChosen                ? own
                   : strong || handle.side ? p.paper
                                           : p.panel,
                   QPen(own, strong || handle.side ? 1.6 : 1.0));
    if (!handle.grip.isNull()) {
        QPainterPath bar;
        bar.moveTo(handle.grip.p1());
        bar.lineTo(handle.grip.p2());
        QPainterPathStroker stroker;
        stroker.setWidth(approach_ > 0.0 ? 10.0 : strong ? 6.0 : 4.0);
        stroker.setCapStyle(Qt::RoundCap);
        painter.drawPath(stroker.createStroke(bar));
        return;
    }
    const double size = (strong ? 5.5 : 4.0) - (handle.isMinor ? 1.2 : 0.0);
    if (handle.mark == Handle::Mark::diamond) {
        painter.drawPolygon(QPolygonF{handle.at - QPointF(size, 0), handle.at - QPointF(0, size),
                                      handle.at + QPointF(size, 0), handle.at + QPointF(0, size)});
        return;
    }
    painter.drawEllipse(handle.at, size, size);
}

/// At rest only a hint that the curve can be taken there.
void Hand::paintHint(QPainter& painter, const Handle& handle) const {
    if (!handle.grip.isNull()) {
        if (handle.atRest)
            paintHandle(painter, handle, false);
        return;
    }
    fillOnly(painter, Palette::of(on_).quiet);
    painter.drawEllipse(handle.at, 2.5, 2.5);
}

void Hand::paintTag(QPainter& painter, const Handle& handle) const {
    const Palette& p = Palette::of(on_);
    QString text = handle.label + QLatin1Char('\n');
    for (std::size_t i = 0; i < handle.axes.size(); ++i) {
        const auto& axis = handle.axes[i];
        text += (i ? QStringLiteral("   ") : QString()) + axis.label + QLatin1Char(' ') +
                shownValue(axis, axis.value);
        if (axis.note)
            text += axis.note(axis.value);
    }
    painter.setFont(on_.font());
    const QRectF bounds = painter.fontMetrics().boundingRect(on_.rect(), Qt::AlignLeft, text);
    QRectF box(0, 0, bounds.width() + 14, bounds.height() + 8);
    box.moveTopLeft(handle.at + QPointF(12, 12));
    if (box.right() > on_.width() - 4)
        box.moveRight(handle.at.x() - 10);
    if (box.bottom() > on_.height() - 4)
        box.moveBottom(handle.at.y() - 12);
    box.moveLeft(std::max(4.0, box.left()));
    box.moveTop(std::max(4.0, box.top()));
    fillAndOutline(painter, p.panel, QPen(p.quiet, 1.0));
    painter.drawRoundedRect(box, 4, 4);
    painter.setPen(p.ink);
    painter.drawText(box.adjusted(7, 4, -7, -4), Qt::AlignLeft | Qt::AlignVCenter, text);
}

/// One tag at most: of what is gripped, else of what is under the pointer, else of what keys would
/// move.
const Handle* Hand::named() const {
    if (grip_) {
        const auto now = std::ranges::find(handles_, grip_->handle.key, &Handle::key);
        return now == handles_.end() ? &grip_->handle : &*now;
    }
    const Handle* under = handleOf(hovered_);
    if (under && under->key != released_)
        return under;
    return on_.hasFocus() && byKeyboard_ ? handleOf(chosen_) : nullptr;
}

void Hand::paint(QPainter& painter) {
    freshen();
    if (shown_ == Shown::whenAwake && !pointerInside_ && !on_.hasFocus() && !grip_) {
        for (const auto& handle : handles_) {
            if (approach_ <= 0.0)
                paintHint(painter, handle);
        }
        return;
    }
    for (const auto& handle : handles_) {
        if (isApproached(handle))
            paintHandle(painter, handle, false);
    }
    if (const Handle* chosen = handleOf(chosen_); chosen && on_.hasFocus())
        paintHandle(painter, *chosen, true);
    if (const Handle* strong = named()) {
        paintHandle(painter, *strong, true);
        paintTag(painter, *strong);
    }
    painter.setBrush(Qt::NoBrush);
}

} // namespace lobewright::ui
