#include "ui/plots/turn/lever_plot.h"

#include "core/solution/pipeline/closer_look.h"
#include "core/units.h"
#include "ui/base/side_words.h"
#include "ui/base/units.h"

#include <QLabel>
#include <QLayout>

namespace lobewright::ui {

namespace {

QString radialTitle(End end, bool isOnly) {
    if (isOnly) {
        return end == End::inlet ? BearingPlot::tr("Radial, at the track")
                                 : BearingPlot::tr("Radial, at the head");
    }
    return end == End::inlet ? BearingPlot::tr("Radial, inlet side")
                             : BearingPlot::tr("Radial, exhaust side");
}

} // namespace

LeverPlot::LeverPlot(TurnCursor& cursor, QWidget* parent)
    : TurnPlot(cursor, tr("Lever arm compared with a crank"), parent) {
    canvas().setLeftLabel(tr("lever arm"), QStringLiteral("mm/rad"));
    const QString help = tr("−y' = −dy/dθ: torque per axial force of one piston on the shaft.");
    track_ = addSides({{}, QStringLiteral("mm/rad"), help}, trackTitle);
    geared_ = addCurve({tr("Geared crank"), QStringLiteral("mm/rad"),
                        tr("Crank with the inlet track's stroke and the reference rod, geared to "
                           "as many cycles per shaft revolution as the track."),
                        Tone::gearedCrank, Qt::SolidLine, 1.6});
    crank_ = addCurve({tr("Crank on its own shaft"), QStringLiteral("mm/rad"),
                       tr("The same crank without gear, one cycle per revolution of its own "
                          "shaft, drawn at the same point of the cycle."),
                       Tone::crank, Qt::SolidLine, 1.6});
    lesson_ = new QLabel;
    lesson_->setWordWrap(true);
    lesson_->setContentsMargins(8, 0, 8, 4);
    layout()->addWidget(lesson_);
}

void LeverPlot::refill() {
    if (!solution())
        return;
    using solution::Solution;
    for (const End end : bothEnds) {
        setFromSolutions(track_[end], [end](const Solution& from) {
            const bool isPiston = from.pair.uncovers(end) == end;
            return isPiston ? Line{from.theta, leverArms(from).track[end] / units::millimetre}
                            : Line{};
        });
    }
    setFromSolutions(geared_, [](const Solution& from) {
        return Line{from.theta, leverArms(from).geared.inlet / units::millimetre};
    });
    setFromSolutions(crank_, [](const Solution& from) {
        const bool isGeared = from.pair.cyclesPerTurn() > 1; // else both cranks are one
        return isGeared ? Line{from.theta, leverArms(from).crank.inlet / units::millimetre}
                        : Line{};
    });
    lesson_->setText(lesson(solution::leverArms(*solution())));
    finishRefill();
}

QString LeverPlot::lesson(const solution::LeverArms& arms) const {
    const auto largest = [](const Samples& arm) {
        return quantityText(arm.abs().maxCoeff() / units::millimetre, QStringLiteral("mm/rad"));
    };
    const double cycles = solution()->pair.cyclesPerTurn();
    QString text = cycles > 1.0
                       ? tr("Largest lever arm: track %1; crank geared to the same %2 cycles per "
                            "revolution %3; the same crank on its own shaft, one cycle per "
                            "revolution, "
                            "%4. Track and gear make the lever %2 times as long, because a stroke "
                            "takes "
                            "1/%2 of the shaft angle.")
                             .arg(largest(arms.track.inlet))
                             .arg(cycles)
                             .arg(largest(arms.geared.inlet), largest(arms.crank.inlet))
                       : tr("Largest lever arm: track %1; crank %2. Both make one cycle per "
                            "revolution: "
                            "only the motion law distinguishes them.")
                             .arg(largest(arms.track.inlet), largest(arms.crank.inlet));
    text += QLatin1Char(' ') + tr("The mean torque is the work per revolution divided by 2π, "
                                  "whatever the lever arm.");
    const auto work = figureValue(solution(), "shaft_work_J");
    const auto torque = figureValue(solution(), "mean_torque_Nm");
    if (work && torque) {
        text += tr(" Here %1 / 2π = %2.")
                    .arg(quantityText(*work, QStringLiteral("J")),
                         quantityText(*torque, QStringLiteral("N·m")));
    }
    return text;
}

BearingPlot::BearingPlot(TurnCursor& cursor, QWidget* parent)
    : TurnPlot(cursor, tr("Main bearing loads"), parent) {
    canvas().setLeftLabel(tr("bearing load"), QStringLiteral("N"));
    const QString help = tr("Radial bearing in the plane of this track's roller axes at outer "
                            "dead centre, on the shaft.");
    radial_ = addSides({{}, QStringLiteral("N"), help}, radialTitle);
    thrust_ = addCurve({tr("Thrust"), QStringLiteral("N"),
                        tr("Thrust bearing on the shaft, positive towards the exhaust side."),
                        Tone::ink});
    canvas().addPaint(TurnCanvas::marks, [this](QCPPainter& painter) {
        if (known_)
            return;
        painter.setPen(tones().ink);
        painter.drawText(canvas().inside(), Qt::AlignCenter | Qt::TextWordWrap,
                         tr("The bearings are assumed one piston length behind each crown: enter "
                            "the piston length to see their loads."));
    });
}

void BearingPlot::refill() {
    if (!solution())
        return;
    const auto show = [this](size_t index, auto load) {
        setFromSolutions(index, [load](const solution::Solution& from) {
            const auto loads = solution::shaftReactions(from);
            return loads ? Line{from.theta, load(*loads)} : Line{};
        });
    };
    for (const End end : bothEnds)
        show(radial_[end], [end](const auto& loads) -> Samples { return loads.radial(end); });
    show(thrust_, [](const auto& loads) -> Samples { return loads.thrust; });
    known_ = curves()[thrust_].values.size() > 0;
    finishRefill();
}

} // namespace lobewright::ui
