#include "ui/plots/turn/position_plot.h"

#include "core/units.h"
#include "ui/base/menus.h"
#include "ui/base/side_words.h"
#include "ui/base/units.h"
#include "ui/plots/turn/lift_handles.h"

#include <QActionGroup>

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {

constexpr int liftSamples = 721; // every half degree and both ends

struct OverlayWords {
    const char* key;
    QString unit, label, help;
    LiftGrip::Curve grips; ///< the curve whose knots can be pulled while it lies over the lift
};

const OverlayWords& wordsOf(PositionPlot::Overlay overlay) {
    static const OverlayWords all[] = {
        {"none", {}, PositionPlot::tr("Lift only"), {}, LiftGrip::Curve::lift},
        {"velocity", QStringLiteral("m/s"), PositionPlot::tr("Velocity"),
         PositionPlot::tr("In the lift direction, at constant shaft speed. Pulling a knot up or "
                          "down here prescribes its slope."),
         LiftGrip::Curve::velocity},
        {"acceleration", QStringLiteral("m/s²"), PositionPlot::tr("Acceleration"),
         PositionPlot::tr("In the lift direction, at constant shaft speed. Pulling a knot up or "
                          "down here moves its lift until the acceleration follows."),
         LiftGrip::Curve::acceleration},
        {"jerk", QStringLiteral("m/s³"), PositionPlot::tr("Jerk"),
         PositionPlot::tr("In the lift direction, at constant shaft speed."),
         LiftGrip::Curve::lift}};
    return all[static_cast<size_t>(overlay)];
}

constexpr PositionPlot::Overlay everyOverlay[] = {
    PositionPlot::Overlay::none, PositionPlot::Overlay::velocity,
    PositionPlot::Overlay::acceleration, PositionPlot::Overlay::jerk};

} // namespace

PositionPlot::PositionPlot(TurnCursor& cursor, QWidget* parent)
    : TurnPlot(cursor, tr("Piston position"), parent), handles_(new LiftHandles(canvas(), this)) {
    canvas().setLeftLabel(tr("lift"), QStringLiteral("mm"));
    const QString help = tr("Inward travel y of the piston from its outer dead centre.");
    lift_ = addSides({{}, QStringLiteral("mm"), help}, pistonTitle);
    CurveLook look;
    look.style = Qt::DotLine; // of the right axis
    look.width = 1.4;
    look.onRight = true;
    derivative_ = addSides(look, [](End, bool) { return QString(); }); // by the overlay
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
    const OverlayWords& words = wordsOf(overlay);
    for (const End end : bothEnds) {
        CurveLook look = curve(derivative_[end]).look;
        look.label = (end == End::inlet ? tr("%1, inlet") : tr("%1, exhaust")).arg(words.label);
        look.alone = words.label;
        look.unit = words.unit;
        look.help = words.help;
        setLook(derivative_[end], look);
    }
    setSidesVisible(derivative_, overlay != Overlay::none);
    canvas().setRightLabel(overlay == Overlay::none ? QString() : words.label.toLower(),
                           words.unit);
    takeChoice();
}

void PositionPlot::refill() {
    for (const End end : bothEnds) {
        setFromGeometry(lift_[end], [end](const Geometry& geometry) {
            if (geometry.pair.uncovers(end) != end) // a head stands there
                return Line{};
            const Samples theta = Samples::LinSpaced(liftSamples, 0.0, units::turn);
            return Line{theta, geometry.pair.lift(end, theta).y / units::millimetre};
        });
    }
    fillDerivatives();
    handles_->show(geometry(), wordsOf(overlay_).grips);
    finishRefill();
}

void PositionPlot::fillDerivatives() {
    jumps_.clear();
    if (overlay_ == Overlay::none)
        return;
    const int order = static_cast<int>(overlay_);
    jumps_ = shownJumps(geometry()->pair, order, geometry()->design.running.speed);
    for (const End end : bothEnds) {
        setFromGeometry(derivative_[end], [end, order](const Geometry& geometry) {
            if (geometry.pair.uncovers(end) != end)
                return Line{};
            const MotionCurve curve =
                motionCurve(geometry.pair, end, order, geometry.design.running.speed);
            return Line{curve.theta, curve.values};
        });
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
    item.unit = wordsOf(overlay_).unit;
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
    for (const Overlay overlay : everyOverlay) {
        group->addAction(addChoice(menu, wordsOf(overlay).label, overlay == overlay_, this,
                                   [this, overlay] { setOverlay(overlay); }));
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
    return QLatin1String(wordsOf(overlay_).key);
}

void PositionPlot::restoreState(const QString& state) {
    for (const Overlay overlay : everyOverlay) {
        if (state == QLatin1String(wordsOf(overlay).key))
            setOverlay(overlay);
    }
}

} // namespace lobewright::ui
