#include "ui/plots/lift_handles.h"

#include "core/units.h"
#include "ui/plots/angle_ticks.h"

#include <QKeyEvent>
#include <QMouseEvent>

#include <cmath>

namespace lobewright::ui {

namespace {

constexpr double reach = 9.0;               // [px]
constexpr double decidingMove = 5.0;        // [px] until a bound keeps to one direction
constexpr double coarse = 0.5, fine = 0.05; // [deg] and [mm]

double stepFor(Qt::KeyboardModifiers modifiers) {
    return modifiers & Qt::ShiftModifier ? fine : coarse;
}

double onStep(double value, double step) {
    return std::round(value / step) * step;
}

} // namespace

LiftHandles::LiftHandles(TurnCanvas& canvas, QObject* parent) : QObject(parent), canvas_(canvas) {
    canvas_.setGrips(this);
    canvas_.addPaint(TurnCanvas::handles, [this](QCPPainter& painter) { paint(painter); });
}

void LiftHandles::show(const GeometryPointer& geometry) {
    geometry_ = geometry;
    handles_.clear();
    const mechanism::OpposedPair& pair = geometry_->pair;
    const int repetitions = static_cast<int>(std::lround(units::turn / pair.period()));
    for (const End end : bothEnds) {
        const double atZero = pair.trackAngle(end, 0.0);
        for (const LiftGrip& grip : liftGrips(geometry_->design, end)) {
            const double phi = grip.angle * units::degree;
            const double lift = pair.curve(end).at(phi).y / units::millimetre;
            for (int k = 0; k < repetitions; ++k) {
                double theta = std::fmod(phi - atZero + k * pair.period(), units::turn);
                if (theta < 0.0)
                    theta += units::turn;
                handles_.push_back({grip, theta, lift});
            }
        }
    }
}

QPointF LiftHandles::placeOf(const Handle& handle) const {
    return {canvas_.xOf(handle.theta), canvas_.yAxis->coordToPixel(handle.lift)};
}

std::optional<QPointF> LiftHandles::placeOf(End end, LiftGrip::Kind kind, int index) const {
    for (const Handle& handle : handles_) {
        const QPointF place = placeOf(handle);
        if (handle.grip.end == end && handle.grip.kind == kind && handle.grip.index == index &&
            canvas_.inside().contains(place))
            return place;
    }
    return std::nullopt;
}

std::optional<size_t> LiftHandles::at(const QPointF& position) const {
    std::optional<size_t> nearest;
    double least = reach;
    for (size_t i = 0; i < handles_.size(); ++i) {
        const QPointF away = placeOf(handles_[i]) - position;
        const double distance = std::hypot(away.x(), away.y());
        if (distance < least) {
            least = distance;
            nearest = i;
        }
    }
    return nearest;
}

bool LiftHandles::isSame(const Handle& handle, const std::optional<LiftGrip>& grip) const {
    return grip && handle.grip.end == grip->end && handle.grip.kind == grip->kind &&
           handle.grip.index == grip->index;
}

bool LiftHandles::press(const QMouseEvent& event) {
    const auto found = at(event.position());
    selected_ = found ? std::optional(handles_[*found].grip) : std::nullopt;
    canvas_.refreshLayer(TurnCanvas::handles);
    if (!found)
        return false;
    drag_ = Drag{*selected_, event.position()};
    drag_->alongAngle = selected_->movesAngle;
    drag_->alongLift = selected_->movesLift;
    drag_->decided = selected_->kind == LiftGrip::Kind::knot;
    return true;
}

bool LiftHandles::drag(const QMouseEvent& event) {
    if (!drag_)
        return false;
    const QPointF moved = event.position() - drag_->from;
    if (!drag_->decided) {
        if (std::max(std::abs(moved.x()), std::abs(moved.y())) < decidingMove)
            return true;
        const bool sideways = std::abs(moved.x()) >= std::abs(moved.y());
        drag_->alongAngle = drag_->alongAngle && (sideways || !drag_->alongLift);
        drag_->alongLift = drag_->alongLift && !drag_->alongAngle;
        drag_->decided = true;
    }
    const double step = stepFor(event.modifiers());
    double angle = drag_->grip.angle, lift = drag_->grip.lift;
    if (drag_->alongAngle) {
        const double turned =
            canvas_.thetaAt(event.position().x()) - canvas_.thetaAt(drag_->from.x());
        angle = onStep(angle + turned / units::degree, step);
    }
    if (drag_->alongLift) {
        const double raised = canvas_.yAxis->pixelToCoord(event.position().y()) -
                              canvas_.yAxis->pixelToCoord(drag_->from.y());
        lift = onStep(lift + raised, step);
    }
    moveTo(angle, lift);
    return true;
}

void LiftHandles::moveTo(double angle, double lift) {
    // The design has moved on since the press, the neighbours may have not: ask for the grip as
    // it is now.
    const LiftGrip& wanted = drag_ ? drag_->grip : *selected_;
    for (const LiftGrip& grip : liftGrips(geometry_->design, wanted.end)) {
        if (grip.kind == wanted.kind && grip.index == wanted.index) {
            Edit edit = moveGrip(geometry_->design, grip, angle, lift);
            Q_EMIT edited(edit);
            return;
        }
    }
}

bool LiftHandles::release() {
    drag_.reset();
    Q_EMIT editFinished();
    canvas_.refreshLayer(TurnCanvas::handles);
    return true;
}

bool LiftHandles::hover(const QPointF& position) {
    const auto found = at(position);
    const auto before = hovered_;
    hovered_ = found ? std::optional(handles_[*found].grip) : std::nullopt;
    if (before.has_value() != hovered_.has_value() ||
        (hovered_ && (before->index != hovered_->index || before->end != hovered_->end)))
        canvas_.refreshLayer(TurnCanvas::handles);
    return found.has_value();
}

bool LiftHandles::key(const QKeyEvent& event) {
    if (!selected_ || !geometry_)
        return false;
    double angle = 0.0, lift = 0.0;
    const double step = stepFor(event.modifiers());
    switch (event.key()) {
    case Qt::Key_Left:
        angle = -step;
        break;
    case Qt::Key_Right:
        angle = step;
        break;
    case Qt::Key_Up:
        lift = step;
        break;
    case Qt::Key_Down:
        lift = -step;
        break;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        Q_EMIT fieldWanted(QString::fromStdString(selected_->anglePath));
        return true;
    case Qt::Key_Escape:
        selected_.reset();
        Q_EMIT editFinished();
        canvas_.refreshLayer(TurnCanvas::handles);
        return true;
    default:
        return false;
    }
    for (const LiftGrip& grip : liftGrips(geometry_->design, selected_->end)) {
        if (grip.kind == selected_->kind && grip.index == selected_->index) {
            moveTo(grip.angle + angle, grip.lift + lift);
            break;
        }
    }
    return true;
}

bool LiftHandles::doubleClick(const QPointF& position) {
    const auto found = at(position);
    if (found)
        Q_EMIT fieldWanted(QString::fromStdString(handles_[*found].grip.anglePath));
    return found.has_value();
}

void LiftHandles::paint(QCPPainter& painter) const {
    const Palette& tones = canvas_.tones();
    for (const Handle& handle : handles_) {
        const QPointF place = placeOf(handle);
        const bool isSelected = isSame(handle, selected_);
        const double size = isSelected || isSame(handle, hovered_) ? 6.0 : 4.2;
        painter.setPen(QPen(tones.side(handle.grip.end), 1.6));
        painter.setBrush(isSelected ? tones.side(handle.grip.end) : tones.paper);
        if (handle.grip.kind == LiftGrip::Kind::knot)
            painter.drawEllipse(place, size, size);
        else
            painter.drawPolygon(QPolygonF{{place.x() - size, place.y()},
                                          {place.x(), place.y() - size},
                                          {place.x() + size, place.y()},
                                          {place.x(), place.y() + size}});
    }
    const auto& named = drag_ ? selected_ : hovered_;
    if (!named)
        return;
    for (const Handle& handle : handles_) {
        if (!isSame(handle, named))
            continue;
        const QString text = tr("%1: %2° on the track, %3 mm")
                                 .arg(handle.grip.label, degreesText(handle.grip.angle, 2),
                                      degreesText(handle.grip.lift, 2));
        painter.setFont(canvas_.xAxis->tickLabelFont());
        QRectF box = QFontMetricsF(painter.font()).boundingRect(text).adjusted(-5, -3, 5, 3);
        box.moveBottomLeft(placeOf(handle) + QPointF(8, -10));
        const QRectF inside = canvas_.inside();
        box.moveLeft(std::clamp(box.left(), inside.left(), inside.right() - box.width()));
        box.moveTop(std::clamp(box.top(), inside.top(), inside.bottom() - box.height()));
        painter.setPen(QPen(tones.grid, 1));
        painter.setBrush(tones.panel);
        painter.drawRect(box);
        painter.setPen(tones.ink);
        painter.drawText(box, Qt::AlignCenter, text);
        break;
    }
    painter.setBrush(Qt::NoBrush);
}

} // namespace lobewright::ui
