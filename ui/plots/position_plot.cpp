#include "ui/plots/position_plot.h"

#include "core/units.h"
#include "ui/plots/lift_handles.h"

#include <QActionGroup>
#include <QMenu>

#include <algorithm>

namespace lobewright::ui {

namespace {

constexpr int liftSamples = 721; // every half degree and both ends

struct OverlayWords {
    const char* key;
    const char* channel; ///< %1 stands for the end
    const char* unit;
};
constexpr OverlayWords overlayWords[] = {{"none", "", ""},
                                         {"velocity", "velocity_%1_m_per_s", "m/s"},
                                         {"acceleration", "acceleration_%1_m_per_s2", "m/s²"},
                                         {"jerk", "jerk_%1_m_per_s3", "m/s³"}};

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
    canvas().setLeftLabel(tr("lift, mm"));
    const QString help = tr("Inward travel y of the piston from its outer dead centre.");
    lift_.inlet = addCurve({tr("Inlet piston"), tr("mm"), help, Tone::inlet});
    lift_.exhaust = addCurve({tr("Exhaust piston"), tr("mm"), help, Tone::exhaust});
    for (const End end : bothEnds) {
        CurveLook look;
        look.tone = end == End::inlet ? Tone::inlet : Tone::exhaust;
        look.style = Qt::DashLine;
        look.width = 1.2;
        look.onRight = true;
        derivative_[end] = addCurve(look);
    }
    canvas().addPaint(TurnCanvas::shading,
                      [this](QCPPainter& painter) { paintPortEdges(painter); });
    connect(handles_, &LiftHandles::edited, this, &TurnPlot::edited);
    connect(handles_, &LiftHandles::editFinished, this, &TurnPlot::editFinished);
    connect(handles_, &LiftHandles::fieldWanted, this, &TurnPlot::fieldWanted);
    setOverlay(Overlay::none);
}

void PositionPlot::setOverlay(Overlay overlay) {
    overlay_ = overlay;
    const OverlayWords& words = overlayWords[static_cast<int>(overlay)];
    for (const End end : bothEnds) {
        CurveLook look = curve(derivative_[end]).look;
        look.label = end == End::inlet ? tr("%1, inlet").arg(overlayLabel(overlay))
                                       : tr("%1, exhaust").arg(overlayLabel(overlay));
        look.unit = QString::fromUtf8(words.unit);
        look.help = tr("In the lift direction, at constant shaft speed.");
        setLook(derivative_[end], look);
        setCurveVisible(derivative_[end], overlay != Overlay::none);
    }
    canvas().setRightLabel(overlay == Overlay::none
                               ? QString()
                               : overlayLabel(overlay).toLower() + QStringLiteral(", ") +
                                     QString::fromUtf8(words.unit));
    if (geometry())
        refill();
    Q_EMIT stateChanged();
}

void PositionPlot::refill() {
    const Samples theta = Samples::LinSpaced(liftSamples, 0.0, units::turn);
    for (const End end : bothEnds) {
        setValues(lift_[end], theta, geometry()->pair.lift(end, theta).y / units::millimetre);
        if (baseline())
            setBaselineValues(lift_[end], theta,
                              baseline()->pair.lift(end, theta).y / units::millimetre);
        else
            setBaselineValues(lift_[end], {}, {});
        if (overlay_ != Overlay::none) {
            const QString channel =
                QString::fromUtf8(overlayWords[static_cast<int>(overlay_)].channel);
            setFromChannel(derivative_[end], channel.arg(QLatin1String(name(end))).toStdString());
        }
    }
    handles_->show(geometry());
    finishRefill();
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
        const double at = (edge + geometry()->pair.shift(end)) / units::millimetre;
        const double y = canvas().yAxis->coordToPixel(at);
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
    TurnPlot::addOptions(menu);
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
