#include "ui/plots/turn/lift_handles.h"

#include "core/editing/knot_edits.h"
#include "core/units.h"
#include "ui/plots/base/angle_ticks.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QToolTip>

#include <cmath>

namespace lobewright::ui {

namespace {

constexpr double reach = 9.0;        // [px]
constexpr double decidingMove = 5.0; // [px] until a bound keeps to one direction

bool isFine(Qt::KeyboardModifiers modifiers) {
    return modifiers & Qt::ShiftModifier;
}

double onStep(double value, double step) {
    return std::round(value / step) * step;
}

} // namespace

LiftHandles::LiftHandles(TurnCanvas& canvas, QObject* parent) : QObject(parent), canvas_(canvas) {
    canvas_.setGrips(this);
    canvas_.addPaint(TurnCanvas::handles, [this](QCPPainter& painter) { paint(painter); });
}

void LiftHandles::show(const GeometryPointer& geometry, LiftGrip::Curve derivative) {
    geometry_ = geometry;
    derivative_ = derivative;
    handles_.clear();
    addHandles(LiftGrip::Curve::lift);
    if (derivative != LiftGrip::Curve::lift)
        addHandles(derivative);
    if (selected_ && !grip(*selected_))
        selected_.reset(); // taken out, or undone
}

const QCPAxis& LiftHandles::axisOf(LiftGrip::Curve curve) const {
    return curve == LiftGrip::Curve::lift ? *canvas_.yAxis : *canvas_.yAxis2;
}

Unit LiftHandles::unitOf(LiftGrip::Curve curve) {
    return unitFor(curve == LiftGrip::Curve::lift       ? QStringLiteral("mm")
                   : curve == LiftGrip::Curve::velocity ? QStringLiteral("m/s")
                                                        : QStringLiteral("m/s²"));
}

double LiftHandles::shownStep(LiftGrip::Curve curve, bool fine) {
    // Lift, slope and its change are all lengths per power of a degree.
    return unitFor(QStringLiteral("mm")).step(editing::valueStep(curve, fine));
}

double LiftHandles::plottedPerUnit(LiftGrip::Curve curve) const {
    const double shown = unitOf(curve).factor;
    const double perSecond = geometry_->design.running.speed / units::degree; // [deg/s]
    switch (curve) {
    case LiftGrip::Curve::lift:
        return shown;
    case LiftGrip::Curve::velocity:
        return shown * units::millimetre * perSecond;
    case LiftGrip::Curve::acceleration:
        return shown * units::millimetre * perSecond * perSecond;
    }
    return 1.0;
}

double LiftHandles::plottedAt(End end, LiftGrip::Curve curve, double theta) const {
    const motion::Lift lift = geometry_->pair.lift(end, theta);
    const double omega = geometry_->design.running.speed;
    const Unit unit = unitOf(curve);
    switch (curve) {
    case LiftGrip::Curve::lift:
        return unit.shown(lift.y / units::millimetre);
    case LiftGrip::Curve::velocity:
        return unit.shown(lift.y1 * omega);
    case LiftGrip::Curve::acceleration:
        return unit.shown(lift.y2 * omega * omega);
    }
    return 0.0;
}

void LiftHandles::addHandles(LiftGrip::Curve curve) {
    const mechanism::OpposedPair& pair = geometry_->pair;
    const int repetitions = static_cast<int>(std::lround(units::turn / pair.period()));
    for (const End end : pair.pistons()) {
        const double atZero = pair.trackAngle(end, 0.0);
        for (const LiftGrip& grip : editing::liftGrips(
                 geometry_->design, editing::patternEnd(geometry_->design, end), curve)) {
            for (int k = 0; k < repetitions; ++k) {
                double theta =
                    std::fmod(grip.angle * units::degree - atZero + k * pair.period(), units::turn);
                if (theta < 0.0)
                    theta += units::turn;
                handles_.push_back({grip, theta, plottedAt(end, curve, theta), end});
            }
        }
    }
}

QPointF LiftHandles::placeOf(const Handle& handle) const {
    return {canvas_.xOf(handle.theta), axisOf(handle.grip.curve).coordToPixel(handle.plotted)};
}

std::optional<QPointF> LiftHandles::placeOf(End end, LiftGrip::Kind kind, int index,
                                            LiftGrip::Curve curve) const {
    LiftGrip wanted;
    wanted.end = end;
    wanted.kind = kind;
    wanted.index = index;
    wanted.curve = curve;
    for (const Handle& handle : handles_) {
        const QPointF place = placeOf(handle);
        if (handle.grip.isSameAs(wanted) && canvas_.inside().contains(place))
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
    return grip && handle.grip.isSameAs(*grip);
}

std::optional<LiftGrip> LiftHandles::grip(const LiftGrip& like) const {
    for (const Handle& handle : handles_) {
        if (handle.grip.isSameAs(like))
            return handle.grip;
    }
    return std::nullopt;
}

bool LiftHandles::press(const QMouseEvent& event) {
    const auto found = at(event.position());
    pointer_ = event.position();
    released_.reset();
    selected_ = found ? std::optional(handles_[*found].grip) : std::nullopt;
    canvas_.refreshLayer(TurnCanvas::handles);
    if (!found)
        return false;
    drag_ = Drag{*selected_, event.position()};
    drag_->alongAngle = selected_->movesAngle;
    drag_->alongValue = selected_->movesValue;
    drag_->decided =
        selected_->kind == LiftGrip::Kind::knot && selected_->curve == LiftGrip::Curve::lift;
    return true;
}

bool LiftHandles::drag(const QMouseEvent& event) {
    if (!drag_)
        return false;
    pointer_ = event.position();
    const QPointF moved = event.position() - drag_->from;
    if (!drag_->decided) {
        if (std::max(std::abs(moved.x()), std::abs(moved.y())) < decidingMove)
            return true;
        const bool sideways = std::abs(moved.x()) >= std::abs(moved.y());
        drag_->alongAngle = drag_->alongAngle && (sideways || !drag_->alongValue);
        drag_->alongValue = drag_->alongValue && !drag_->alongAngle;
        drag_->decided = true;
    }
    const bool fine = isFine(event.modifiers());
    const LiftGrip& start = drag_->grip;
    double angle = start.angle;
    if (drag_->alongAngle) {
        const double turned =
            canvas_.thetaAt(event.position().x()) - canvas_.thetaAt(drag_->from.x());
        angle = onStep(angle + turned / units::degree, editing::angleStep(fine));
    }
    if (drag_->alongValue) {
        const QCPAxis& axis = axisOf(start.curve);
        const double raised =
            axis.pixelToCoord(event.position().y()) - axis.pixelToCoord(drag_->from.y());
        moveTo(angle, onStep(start.value + raised / plottedPerUnit(start.curve),
                             shownStep(start.curve, fine)));
    } else if (const auto now = grip(start)) {
        moveTo(angle, now->value);
    }
    return true;
}

void LiftHandles::moveTo(double angle, double value) {
    // The design has moved on since the press, the neighbours may have not: ask for the grip as
    // it is now.
    if (const auto now = grip(drag_ ? drag_->grip : *selected_)) {
        const Edit edit = editing::moveGrip(geometry_->design, *now, angle, value);
        if (!edit.changes.empty())
            Q_EMIT edited(edit);
    }
}

bool LiftHandles::release() {
    if (drag_)
        released_ = drag_->grip;
    drag_.reset();
    Q_EMIT editFinished();
    canvas_.refreshLayer(TurnCanvas::handles);
    return true;
}

bool LiftHandles::hover(const QPointF& position) {
    const auto found = at(position);
    const auto before = hovered_;
    hovered_ = found ? std::optional(handles_[*found].grip) : std::nullopt;
    pointer_ = position;
    if (released_ && (!hovered_ || !hovered_->isSameAs(*released_)))
        released_.reset();
    if (before.has_value() != hovered_.has_value() || (hovered_ && !before->isSameAs(*hovered_)))
        canvas_.refreshLayer(TurnCanvas::handles);
    return found.has_value();
}

bool LiftHandles::nudge(const QKeyEvent& event) {
    const auto now = selected_ ? grip(*selected_) : std::nullopt;
    if (!now)
        return false;
    const bool fine = isFine(event.modifiers());
    const double turn = editing::angleStep(fine), rise = shownStep(now->curve, fine);
    switch (event.key()) {
    case Qt::Key_Left:
        moveTo(now->angle - turn, now->value);
        return true;
    case Qt::Key_Right:
        moveTo(now->angle + turn, now->value);
        return true;
    case Qt::Key_Up:
        moveTo(now->angle, now->value + rise);
        return true;
    case Qt::Key_Down:
        moveTo(now->angle, now->value - rise);
        return true;
    default:
        return false;
    }
}

bool LiftHandles::key(const QKeyEvent& event) {
    if (!geometry_)
        return false;
    if (event.key() == Qt::Key_Insert && hasKnots()) {
        insertKnot();
        return true;
    }
    if (!selected_)
        return false;
    switch (event.key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
        Q_EMIT fieldWanted(QString::fromStdString(
            selected_->valuePath.empty() ? selected_->anglePath : selected_->valuePath));
        return true;
    case Qt::Key_Escape:
        selected_.reset();
        Q_EMIT editFinished();
        canvas_.refreshLayer(TurnCanvas::handles);
        return true;
    case Qt::Key_Delete:
        removeChosen();
        return true;
    case Qt::Key_Backspace:
        freeChosenSlope();
        return true;
    default:
        return nudge(event);
    }
}

bool LiftHandles::doubleClick(const QPointF& position) {
    if (const auto found = at(position)) {
        const LiftGrip& grip = handles_[*found].grip;
        const bool onVelocity = grip.curve == LiftGrip::Curve::velocity;
        Q_EMIT fieldWanted(QString::fromStdString(onVelocity ? grip.valuePath : grip.anglePath));
        return true;
    }
    if (!geometry_ || !hasKnots() || !canvas_.inside().contains(position))
        return false;
    const double theta = canvas_.thetaAt(position.x());
    for (const End end : geometry_->pair.pistons()) {
        for (const LiftGrip::Curve curve : {LiftGrip::Curve::lift, derivative_}) {
            const double y = axisOf(curve).coordToPixel(plottedAt(end, curve, theta));
            if (std::abs(y - position.y()) < reach && addKnotAt(end, theta, position))
                return true;
        }
    }
    return false;
}

bool LiftHandles::hasKnots() const {
    return geometry_ && std::ranges::any_of(bothEnds, [this](End end) {
               return std::holds_alternative<motion::KnotShape>(
                   geometry_->design.tracks[end].shape);
           });
}

bool LiftHandles::knotChosen() const {
    return selected_ && selected_->kind == LiftGrip::Kind::knot;
}

bool LiftHandles::slopeChosen() const {
    return geometry_ && knotChosen() &&
           editing::freeSlope(geometry_->design, selected_->end, selected_->index).has_value();
}

bool LiftHandles::addKnotAt(End end, double theta, const QPointF& pointer) {
    const design::Design& design = geometry_->design;
    if (!std::holds_alternative<motion::KnotShape>(design.tracks[end].shape))
        return false;
    const double angle = geometry_->pair.trackAngle(end, theta) / units::degree;
    const auto edit = editing::addKnot(design, end, angle);
    if (!edit) {
        say(tr("Knots stand at least %1° apart.").arg(degreesText(editing::closestKnots)), pointer);
        return true;
    }
    selected_ = LiftGrip();
    selected_->kind = LiftGrip::Kind::knot;
    selected_->end = editing::patternEnd(design, end);
    selected_->index = editing::knotAt(*edit->replacement, end, angle);
    apply(edit);
    return true;
}

void LiftHandles::insertKnot() {
    const double theta = canvas_.cursor().angle();
    const QPointF pointer(canvas_.xOf(theta), canvas_.inside().center().y());
    if (selected_ && addKnotAt(selected_->end, theta, pointer))
        return;
    for (const End end : geometry_->pair.pistons()) {
        if (addKnotAt(end, theta, pointer))
            return;
    }
}

void LiftHandles::removeChosen() {
    if (!knotChosen())
        return;
    const LiftGrip gone = *selected_;
    const auto edit = editing::removeKnot(geometry_->design, gone.end, gone.index);
    if (!edit) {
        say(tr("A track keeps at least three knots."),
            {canvas_.xOf(canvas_.cursor().angle()), canvas_.inside().center().y()});
        return;
    }
    selected_.reset();
    apply(edit);
}

void LiftHandles::freeChosenSlope() {
    if (slopeChosen())
        apply(editing::freeSlope(geometry_->design, selected_->end, selected_->index));
}

void LiftHandles::apply(const std::optional<Edit>& edit) {
    if (!edit)
        return;
    Q_EMIT edited(*edit);
    Q_EMIT editFinished();
    canvas_.refreshLayer(TurnCanvas::handles);
}

void LiftHandles::say(const QString& text, const QPointF& at) const {
    QToolTip::showText(canvas_.mapToGlobal(at.toPoint()), text, &canvas_);
}

} // namespace lobewright::ui
