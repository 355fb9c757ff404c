#include "ui/plots/turn/lift_handles.h"

#include "core/editing/knot_edits.h"
#include "core/units.h"
#include "ui/base/unit_words.h"
#include "ui/handles/lift_handle.h"
#include "ui/plots/base/angle_ticks.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QToolTip>

#include <cmath>

namespace lobewright::ui {

namespace {

constexpr double reach = 9.0; ///< of a curve that takes a knot [px]

/// How the values of a curve's axis are shown now: mm, m/s, m/s² or their inch counterparts.
Unit unitOf(LiftGrip::Curve curve) {
    return unitFor(curve == LiftGrip::Curve::lift       ? in::mm
                   : curve == LiftGrip::Curve::velocity ? in::metrePerSecond
                                                        : in::metrePerSecond2);
}

} // namespace

LiftHandles::LiftHandles(TurnCanvas& canvas, QObject* parent)
    : QObject(parent), canvas_(canvas), hand_(new Hand(canvas, Hand::Shown::always)) {
    hand_->setWalking(false); // a plot is left by one Tab
    hand_->setFreshener([this] { freshen(); });
    canvas_.installEventFilter(this);
    canvas_.addPaint(TurnCanvas::handles, [this](QCPPainter& painter) { hand_->paint(painter); });
    connect(hand_, &Hand::edited, this, &LiftHandles::edited);
    connect(hand_, &Hand::editFinished, this, &LiftHandles::editFinished);
    connect(hand_, &Hand::gripped, &canvas_, &TurnCanvas::holdContent);
    connect(hand_, &Hand::changed, this, [this] { canvas_.refreshLayer(TurnCanvas::handles); });
}

void LiftHandles::show(const GeometryPointer& geometry, LiftGrip::Curve derivative) {
    geometry_ = geometry;
    derivative_ = derivative;
    fresh_.reset();
}

LiftHandles::Scale LiftHandles::scale() const {
    return {geometry_,
            canvas_.xAxis->range(),
            canvas_.yAxis->range(),
            canvas_.yAxis2->range(),
            canvas_.axisRect()->rect(),
            Units::instance().system()};
}

void LiftHandles::freshen() {
    const Scale now = scale();
    if (!geometry_ || fresh_ == now)
        return;
    fresh_ = now;
    grips_.clear();
    std::vector<Handle> handles;
    addHandles(LiftGrip::Curve::lift, handles);
    if (derivative_ != LiftGrip::Curve::lift)
        addHandles(derivative_, handles);
    hand_->setHandles(std::move(handles));
}

const QCPAxis& LiftHandles::axisOf(LiftGrip::Curve curve) const {
    return curve == LiftGrip::Curve::lift ? *canvas_.yAxis : *canvas_.yAxis2;
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

QString LiftHandles::plottedWords(LiftGrip::Curve curve, double value) const {
    const Unit unit = unitOf(curve);
    const int decimals = unit.decimals(curve == LiftGrip::Curve::acceleration ? 0 : 2);
    return withUnit(degreesText(value * plottedPerUnit(curve), decimals), unit.text);
}

void LiftHandles::addHandles(LiftGrip::Curve curve, std::vector<Handle>& handles) {
    const std::shared_ptr<const design::Design> design(geometry_, &geometry_->design);
    for (const End end : geometry_->pair.pistons()) {
        for (const LiftGrip& grip :
             editing::liftGrips(*design, editing::patternEnd(*design, end), curve)) {
            Handle handle = liftHandle(design, grip);
            handle.side = end;
            const QPointF scales[] = {{canvas_.xOf(units::degree) - canvas_.xOf(0.0), 0.0},
                                      {0.0, axisOf(curve).coordToPixel(plottedPerUnit(curve)) -
                                                axisOf(curve).coordToPixel(0.0)}};
            for (size_t i = 0; i < handle.axes.size(); ++i)
                handle.axes[i].perUnit = scales[grip.movesAngle ? i : 1];
            HandleAxis& value = handle.axes.back();
            if (curve == LiftGrip::Curve::velocity) {
                value.note = [this](double slope) {
                    return tr(", plotted %1").arg(plottedWords(LiftGrip::Curve::velocity, slope));
                };
            }
            if (curve == LiftGrip::Curve::acceleration) {
                value.words = [this](double wanted) {
                    return tr("%1, by its lift")
                        .arg(plottedWords(LiftGrip::Curve::acceleration, wanted));
                };
            }
            addRepetitions(handle, grip, end, handles);
        }
    }
}

/// Over the turn, and on the curves of both pistons where they share the pattern.
void LiftHandles::addRepetitions(const Handle& handle, const LiftGrip& grip, End shown,
                                 std::vector<Handle>& handles) {
    const mechanism::OpposedPair& pair = geometry_->pair;
    const int repetitions = static_cast<int>(std::lround(units::turn / pair.period()));
    for (int k = 0; k < repetitions; ++k) {
        double theta =
            std::fmod(grip.angle * units::degree - pair.trackAngle(shown, 0.0) + k * pair.period(),
                      units::turn);
        if (theta < 0.0)
            theta += units::turn;
        Handle repeated = handle;
        if (k > 0)
            repeated.key += '#' + std::to_string(k);
        if (shown != grip.end)
            repeated.key += "@exhaust";
        repeated.at = {canvas_.xOf(theta),
                       axisOf(grip.curve).coordToPixel(plottedAt(shown, grip.curve, theta))};
        handles.push_back(std::move(repeated));
        grips_.push_back(grip);
    }
}

std::optional<QPointF> LiftHandles::placeOf(End end, LiftGrip::Kind kind, int index,
                                            LiftGrip::Curve curve) {
    freshen();
    LiftGrip wanted;
    wanted.end = end;
    wanted.kind = kind;
    wanted.index = index;
    wanted.curve = curve;
    for (size_t i = 0; i < grips_.size(); ++i) {
        const QPointF place = hand_->handles()[i].at;
        if (grips_[i].isSameAs(wanted) && canvas_.inside().contains(place))
            return place;
    }
    return std::nullopt;
}

bool LiftHandles::eventFilter(QObject* watched, QEvent* event) {
    if (watched != &canvas_ || !geometry_)
        return QObject::eventFilter(watched, event);
    if (event->type() == QEvent::MouseButtonDblClick) {
        freshen();
        const QPointF at = static_cast<QMouseEvent*>(event)->position();
        return hand_->at(at) < 0 && addKnotOnCurve(at);
    }
    if (event->type() != QEvent::KeyPress)
        return false;
    freshen();
    switch (static_cast<QKeyEvent*>(event)->key()) {
    case Qt::Key_Insert:
        if (!hasKnots())
            return false;
        insertKnot();
        return true;
    case Qt::Key_Delete:
        if (!knotChosen())
            return false;
        removeChosen();
        return true;
    case Qt::Key_Backspace:
        if (!knotChosen())
            return false;
        freeChosenSlope();
        return true;
    default:
        return false;
    }
}

bool LiftHandles::addKnotOnCurve(const QPointF& at) {
    if (!hasKnots() || !canvas_.inside().contains(at))
        return false;
    const double theta = canvas_.thetaAt(at.x());
    for (const End end : geometry_->pair.pistons()) {
        for (const LiftGrip::Curve curve : {LiftGrip::Curve::lift, derivative_}) {
            const double y = axisOf(curve).coordToPixel(plottedAt(end, curve, theta));
            if (std::abs(y - at.y()) < reach && addKnotAt(end, theta, at))
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

const LiftGrip* LiftHandles::chosenKnot() const {
    const int chosen = hand_->chosen();
    if (chosen < 0 || chosen >= static_cast<int>(grips_.size()))
        return nullptr;
    const LiftGrip& grip = grips_[static_cast<size_t>(chosen)];
    return grip.kind == LiftGrip::Kind::knot ? &grip : nullptr;
}

bool LiftHandles::slopeChosen() const {
    const LiftGrip* knot = chosenKnot();
    return knot && editing::freeSlope(geometry_->design, knot->end, knot->index).has_value();
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
    const int index = editing::knotAt(*edit->replacement, end, angle);
    for (const LiftGrip& grip :
         editing::liftGrips(*edit->replacement, editing::patternEnd(design, end))) {
        if (grip.index == index) {
            hand_->apply(*edit, liftHandle(nullptr, grip).key);
            break;
        }
    }
    return true;
}

void LiftHandles::insertKnot() {
    const double theta = canvas_.cursor().angle();
    const QPointF pointer(canvas_.xOf(theta), canvas_.inside().center().y());
    if (const LiftGrip* knot = chosenKnot(); knot && addKnotAt(knot->end, theta, pointer))
        return;
    for (const End end : geometry_->pair.pistons()) {
        if (addKnotAt(end, theta, pointer))
            return;
    }
}

void LiftHandles::removeChosen() {
    const LiftGrip* knot = chosenKnot();
    if (!knot)
        return;
    const auto edit = editing::removeKnot(geometry_->design, knot->end, knot->index);
    if (edit)
        hand_->apply(*edit);
    else {
        say(tr("A track keeps at least three knots."),
            {canvas_.xOf(canvas_.cursor().angle()), canvas_.inside().center().y()});
    }
}

void LiftHandles::freeChosenSlope() {
    if (!slopeChosen())
        return;
    const std::string key = hand_->handles()[static_cast<size_t>(hand_->chosen())].key;
    const LiftGrip knot = *chosenKnot();
    hand_->apply(editing::freeSlope(geometry_->design, knot.end, knot.index), key);
}

void LiftHandles::say(const QString& text, const QPointF& at) const {
    QToolTip::showText(canvas_.mapToGlobal(at.toPoint()), text, &canvas_);
}

} // namespace lobewright::ui
