#include "ui/plots/turn/position_plot.h"

#include "core/units.h"
#include "ui/base/side_words.h"
#include "ui/base/units.h"
#include "ui/plots/turn/lift_handles.h"

#include <QActionGroup>
#include <QMenu>

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {

constexpr int liftSamples = 721; // every half degree and both ends

struct OverlayWords {
    const char* key;
    const char* unit;
};
constexpr OverlayWords overlayWords[] = {
    {"none", ""}, {"velocity", "m/s"}, {"acceleration", "m/s²"}, {"jerk", "m/s³"}};

/// The curve whose knots can be pulled while it lies over the lift.
LiftGrip::Curve gripsOn(PositionPlot::Overlay overlay) {
    switch (overlay) {
    case PositionPlot::Overlay::velocity:
        return LiftGrip::Curve::velocity;
    case PositionPlot::Overlay::acceleration:
        return LiftGrip::Curve::acceleration;
    default:
        return LiftGrip::Curve::lift;
    }
}

QString overlayHelp(PositionPlot::Overlay overlay) {
    switch (overlay) {
    case PositionPlot::Overlay::velocity:
        return PositionPlot::tr("In the lift direction, at constant shaft speed. Pulling a knot up "
                                "or down here prescribes its slope.");
    case PositionPlot::Overlay::acceleration:
        return PositionPlot::tr("In the lift direction, at constant shaft speed. Pulling a knot up "
                                "or down here moves its lift until the acceleration follows.");
    default:
        return PositionPlot::tr("In the lift direction, at constant shaft speed.");
    }
}

QString overlayLabel(PositionPlot::Overlay overlay) {
    switch (overlay) {
    case PositionPlot::Overlay::none:
        return PositionPlot::tr("Lift only");
    case PositionPlot::Overlay::velocity:
        return PositionPlot::tr("Velocity");
    case PositionPlot::Overlay::acceleration:
        return PositionPlot::tr("Acceleration");
    case PositionPlot::Overlay::jerk:
        return PositionPlot::tr("Jerk");
    }
    return {};
}

} // namespace

PositionPlot::PositionPlot(TurnCursor& cursor, QWidget* parent)
    : TurnPlot(cursor, tr("Piston position"), parent), handles_(new LiftHandles(canvas(), this)) {
    canvas().setLeftLabel(tr("lift"), QStringLiteral("mm"));
    const QString help = tr("Inward travel y of the piston from its outer dead centre.");
    for (const End end : bothEnds) {
        CurveLook look{pistonTitle(end, false), QStringLiteral("mm"), help, toneOf(end)};
        look.alone = pistonTitle(end, true);
        lift_[end] = addCurve(look);
    }
    for (const End end : bothEnds) {
        CurveLook look;
        look.tone = end == End::inlet ? Tone::inlet : Tone::exhaust;
        look.style = Qt::DotLine; // of the right axis
        look.width = 1.4;
        look.onRight = true;
        derivative_[end] = addCurve(look);
    }
    canvas().addPaint(TurnCanvas::shading,
                      [this](QCPPainter& painter) { paintPortEdges(painter); });
    canvas().addPaint(TurnCanvas::marks, [this](QCPPainter& painter) {
        paintZero(painter);
        paintJumps(painter);
    });
    connect(handles_, &LiftHandles::edited, this, &TurnPlot::edited);
    connect(handles_, &LiftHandles::editFinished, this, &TurnPlot::editFinished);
    setOverlay(Overlay::none);
}

void PositionPlot::setOverlay(Overlay overlay) {
    overlay_ = overlay;
    const OverlayWords& words = overlayWords[static_cast<int>(overlay)];
    for (const End end : bothEnds) {
        CurveLook look = curve(derivative_[end]).look;
        look.label = end == End::inlet ? tr("%1, inlet").arg(overlayLabel(overlay))
                                       : tr("%1, exhaust").arg(overlayLabel(overlay));
        look.alone = overlayLabel(overlay);
        look.unit = QString::fromUtf8(words.unit);
        look.help = overlayHelp(overlay);
        setLook(derivative_[end], look);
        setCurveVisible(derivative_[end], overlay != Overlay::none);
    }
    canvas().setRightLabel(overlay == Overlay::none ? QString() : overlayLabel(overlay).toLower(),
                           QString::fromUtf8(words.unit));
    if (geometry())
        refill();
    Q_EMIT stateChanged();
}

void PositionPlot::refill() {
    const Samples theta = Samples::LinSpaced(liftSamples, 0.0, units::turn);
    for (const End end : bothEnds) {
        if (geometry()->pair.uncovers(end) != end) { // a head stands there
            setValues(lift_[end], {}, {});
            setBaselineValues(lift_[end], {}, {});
            continue;
        }
        setValues(lift_[end], theta, geometry()->pair.lift(end, theta).y / units::millimetre);
        if (baseline()) {
            setBaselineValues(lift_[end], theta,
                              baseline()->pair.lift(end, theta).y / units::millimetre);
        } else
            setBaselineValues(lift_[end], {}, {});
    }
    fillDerivatives();
    handles_->show(geometry(), gripsOn(overlay_));
    finishRefill();
}

void PositionPlot::fillDerivatives() {
    jumps_.clear();
    if (overlay_ == Overlay::none)
        return;
    const int order = static_cast<int>(overlay_);
    const double omega = geometry()->design.running.speed;
    jumps_ = shownJumps(geometry()->pair, order, omega);
    for (const End end : bothEnds) {
        if (geometry()->pair.uncovers(end) != end) {
            setValues(derivative_[end], {}, {});
            setBaselineValues(derivative_[end], {}, {});
            continue;
        }
        const MotionCurve now = motionCurve(geometry()->pair, end, order, omega);
        setValues(derivative_[end], now.theta, now.values);
        if (!baseline()) {
            setBaselineValues(derivative_[end], {}, {});
            continue;
        }
        const MotionCurve before =
            motionCurve(baseline()->pair, end, order, baseline()->design.running.speed);
        setBaselineValues(derivative_[end], before.theta, before.values);
    }
}

std::vector<ReadoutStrip::Item> PositionPlot::remarks() const {
    if (jumps_.empty())
        return {};
    double largest = 0.0;
    for (const ShownJump& jump : jumps_)
        largest = std::max(largest, std::abs(jump.after - jump.before));
    const bool isWarning = overlay_ != Overlay::jerk;
    ReadoutStrip::Item item;
    item.pen = QPen(isWarning ? tones().warning : tones().quiet, 3.0);
    item.label = tr("Jumps per revolution: %1, up to").arg(jumps_.size());
    item.value = shortText(largest);
    item.unit = QString::fromUtf8(overlayWords[static_cast<int>(overlay_)].unit);
    item.help = overlay_ == Overlay::velocity ? tr("The piston would be struck: an error.")
                : overlay_ == Overlay::acceleration
                    ? tr("Infinite jerk: use a law with continuous acceleration.")
                    : tr("Usual for most laws, harmless at moderate speed.");
    return {item};
}

void PositionPlot::paintJumps(QCPPainter& painter) const {
    const QCPAxis& axis = *canvas().yAxis2;
    const QColor colour = overlay_ == Overlay::jerk ? tones().quiet : tones().warning;
    for (const ShownJump& jump : jumps_) {
        const double x = canvas().xOf(jump.theta);
        const double from = axis.coordToPixel(jump.before), to = axis.coordToPixel(jump.after);
        painter.setPen(QPen(colour, 2.4, Qt::SolidLine, Qt::FlatCap));
        painter.drawLine(QPointF(x, from), QPointF(x, to));
        // Short bars at both ends: told apart from a steep curve without colour.
        painter.drawLine(QPointF(x - 4.0, from), QPointF(x, from));
        painter.drawLine(QPointF(x, to), QPointF(x + 4.0, to));
    }
}

/// Where the derivative on the right axis changes sign.
void PositionPlot::paintZero(QCPPainter& painter) const {
    const QRectF box = canvas().inside();
    const double y = canvas().yAxis2->coordToPixel(0.0);
    if (overlay_ == Overlay::none || y < box.top() || y > box.bottom())
        return;
    painter.setPen(QPen(tones().quiet, 1.0, Qt::DashLine));
    painter.drawLine(QPointF(box.left(), y), QPointF(box.right(), y));
    painter.setFont(canvas().xAxis->tickLabelFont());
    painter.drawText(QPointF(box.right() - 14.0, y - 3.0), QStringLiteral("0"));
}

void PositionPlot::paintPortEdges(QCPPainter& painter) const {
    if (!geometry())
        return;
    const QRectF box = canvas().inside();
    for (const End end : bothEnds) {
        const auto& rows = geometry()->design.ports[end];
        if (rows.empty())
            continue;
        const double edge = std::ranges::max(rows, {}, &ports::Row::edge).edge;
        const double at =
            (edge + geometry()->pair.shift(geometry()->pair.uncovers(end))) / units::millimetre;
        const double y = canvas().yAxis->coordToPixel(unitFor(QStringLiteral("mm")).shown(at));
        painter.setPen(QPen(tones().tint(tones().side(end), 0.55), 1, Qt::DashDotLine));
        painter.drawLine(QPointF(box.left(), y), QPointF(box.right(), y));
    }
}

void PositionPlot::addOptions(QMenu& menu) {
    auto* group = new QActionGroup(&menu);
    for (const Overlay overlay :
         {Overlay::none, Overlay::velocity, Overlay::acceleration, Overlay::jerk}) {
        QAction* action = menu.addAction(overlayLabel(overlay));
        action->setCheckable(true);
        action->setChecked(overlay == overlay_);
        group->addAction(action);
        connect(action, &QAction::triggered, this, [this, overlay] { setOverlay(overlay); });
    }
    menu.addSeparator();
    addKnotActions(menu);
    TurnPlot::addOptions(menu);
}

void PositionPlot::addKnotActions(QMenu& menu) {
    if (!handles_->hasKnots())
        return;
    menu.addAction(tr("&Add a knot at the shaft angle"), handles_, &LiftHandles::insertKnot)
        ->setShortcut(QKeySequence(Qt::Key_Insert));
    QAction* removal =
        menu.addAction(tr("&Remove the chosen knot"), handles_, &LiftHandles::removeChosen);
    removal->setShortcut(QKeySequence(Qt::Key_Delete));
    removal->setEnabled(handles_->knotChosen());
    QAction* freeing =
        menu.addAction(tr("&Free the slope there"), handles_, &LiftHandles::freeChosenSlope);
    freeing->setShortcut(QKeySequence(Qt::Key_Backspace));
    freeing->setEnabled(handles_->slopeChosen());
    menu.addSeparator();
}

QString PositionPlot::state() const {
    return QString::fromUtf8(overlayWords[static_cast<int>(overlay_)].key);
}

void PositionPlot::restoreState(const QString& state) {
    for (int i = 0; i < 4; ++i) {
        if (state == QLatin1String(overlayWords[i].key))
            setOverlay(static_cast<Overlay>(i));
    }
}

} // namespace lobewright::ui
