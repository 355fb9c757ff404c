#include "ui/plots/lever_plot.h"

#include "core/solution/closer_look.h"
#include "core/units.h"
#include "ui/units.h"

namespace lobewright::ui {

namespace {
constexpr double lessonShare = 0.2; // of the height
} // namespace

LeverPlot::LeverPlot(TurnCursor& cursor, QWidget* parent)
    : TurnPlot(cursor, tr("Lever arm beside a crank"), parent) {
    canvas().setLeftLabel(tr("lever arm"), QStringLiteral("mm/rad"));
    const QString help = tr("−y' = −dy/dθ: torque per axial force of one piston on the shaft.");
    track_.inlet = addCurve({tr("Inlet track"), QStringLiteral("mm/rad"), help, Tone::inlet});
    track_.exhaust = addCurve({tr("Exhaust track"), QStringLiteral("mm/rad"), help, Tone::exhaust});
    crank_ = addCurve({tr("Crank of equal stroke"), QStringLiteral("mm/rad"),
                       tr("Crank with the inlet track's stroke and the reference rod, one turn a "
                          "cycle, per angle of its own turn."),
                       Tone::quiet, Qt::DashLine, 1.4});
    canvas().addPaint(TurnCanvas::marks, [this](QCPPainter& painter) { paintLesson(painter); });
}

void LeverPlot::refill() {
    if (!solution())
        return;
    const auto show = [this](const SolutionPointer& from, auto set) {
        const auto arms = solution::leverArms(*from);
        for (const End end : bothEnds)
            (this->*set)(track_[end], from->theta, arms.track[end] / units::millimetre);
        (this->*set)(crank_, from->theta, arms.crank.inlet / units::millimetre);
    };
    show(solution(), &LeverPlot::setValues);
    if (baseline())
        show(baseline(), &LeverPlot::setBaselineValues);
    else
        for (const size_t index : {track_.inlet, track_.exhaust, crank_})
            setBaselineValues(index, {}, {});
    finishRefill();
}

QCPRange LeverPlot::contentRange(bool onRight) const {
    QCPRange range = TurnPlot::contentRange(onRight);
    range.lower -= lessonShare * range.size();
    return range;
}

void LeverPlot::paintLesson(QCPPainter& painter) const {
    const auto* work = solution() ? solution()->figure("shaft_work_J") : nullptr;
    const auto* torque = solution() ? solution()->figure("mean_torque_Nm") : nullptr;
    QString text = tr("Mean torque is the work of a turn / 2π, whatever the lever.");
    if (solution())
        text += tr(" The track's is longer than the crank's because it works %1 × a turn.")
                    .arg(solution()->pair.cyclesPerTurn());
    if (work && work->value && torque && torque->value)
        text += tr(" Here %1 / 2π = %2.")
                    .arg(quantityText(*work->value, QStringLiteral("J")),
                         quantityText(*torque->value, QStringLiteral("N·m")));
    const QRectF box = canvas().inside();
    painter.setFont(canvas().xAxis->tickLabelFont());
    const QFontMetricsF metrics(painter.font());
    QRectF ground = metrics
                        .boundingRect(box.adjusted(8, 0, -8, 0),
                                      Qt::AlignHCenter | Qt::AlignBottom | Qt::TextWordWrap, text)
                        .adjusted(-4, -1, 4, 1);
    ground.moveBottom(box.bottom() - 3);
    painter.fillRect(ground, tones().panel);
    painter.setPen(tones().ink);
    painter.drawText(ground, Qt::AlignCenter | Qt::TextWordWrap, text);
}

BearingPlot::BearingPlot(TurnCursor& cursor, QWidget* parent)
    : TurnPlot(cursor, tr("Main bearing loads"), parent) {
    canvas().setLeftLabel(tr("bearing load"), QStringLiteral("N"));
    const QString help = tr("Radial bearing in the plane of this track's roller axes at outer "
                            "dead centre, on the shaft.");
    radial_.inlet = addCurve({tr("Radial, inlet end"), QStringLiteral("N"), help, Tone::inlet});
    radial_.exhaust =
        addCurve({tr("Radial, exhaust end"), QStringLiteral("N"), help, Tone::exhaust});
    thrust_ =
        addCurve({tr("Thrust"), QStringLiteral("N"),
                  tr("Thrust bearing on the shaft, positive toward the exhaust end."), Tone::ink});
    canvas().addPaint(TurnCanvas::marks, [this](QCPPainter& painter) {
        if (known_)
            return;
        painter.setPen(tones().ink);
        painter.drawText(canvas().inside(), Qt::AlignCenter | Qt::TextWordWrap,
                         tr("The bearings stand a piston length behind each crown: give the "
                            "length of the pistons to see their loads."));
    });
}

void BearingPlot::refill() {
    if (!solution())
        return;
    const auto show = [this](const SolutionPointer& from, auto set) {
        const auto loads = from ? solution::shaftReactions(*from) : std::nullopt;
        for (const End end : bothEnds)
            (this->*set)(radial_[end], loads ? from->theta : Samples(),
                         loads ? loads->radial(end) : Samples());
        (this->*set)(thrust_, loads ? from->theta : Samples(), loads ? loads->thrust : Samples());
        return loads.has_value();
    };
    known_ = show(solution(), &BearingPlot::setValues);
    show(baseline(), &BearingPlot::setBaselineValues);
    finishRefill();
}

} // namespace lobewright::ui
