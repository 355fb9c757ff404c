#include "ui/plots/turn/lever_plot.h"

#include "core/solution/pipeline/closer_look.h"
#include "core/units.h"
#include "ui/base/side_words.h"
#include "ui/base/units.h"

#include <QLabel>
#include <QLayout>

namespace lobewright::ui {

LeverPlot::LeverPlot(TurnCursor& cursor, QWidget* parent)
    : TurnPlot(cursor, tr("Lever arm compared with a crank"), parent) {
    canvas().setLeftLabel(tr("lever arm"), QStringLiteral("mm/rad"));
    const QString help = tr("−y' = −dy/dθ: torque per axial force of one piston on the shaft.");
    for (const End end : bothEnds) {
        CurveLook look{trackTitle(end, false), QStringLiteral("mm/rad"), help, toneOf(end)};
        look.alone = trackTitle(end, true);
        track_[end] = addCurve(look);
    }
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
    const auto show = [this](const SolutionPointer& from, auto set) {
        const auto arms = solution::leverArms(*from);
        for (const End end : bothEnds) {
            const bool isPiston = from->pair.uncovers(end) == end;
            (this->*set)(track_[end], isPiston ? from->theta : Samples(),
                         arms.track[end] / units::millimetre);
        }
        (this->*set)(geared_, from->theta, arms.geared.inlet / units::millimetre);
        const bool isGeared = from->pair.cyclesPerTurn() > 1; // else both cranks are one
        (this->*set)(crank_, isGeared ? from->theta : Samples(),
                     isGeared ? Samples(arms.crank.inlet / units::millimetre) : Samples());
        return arms;
    };
    const auto arms = show(solution(), &LeverPlot::setValues);
    lesson_->setText(lesson(arms));
    if (baseline())
        show(baseline(), &LeverPlot::setBaselineValues);
    else {
        for (const size_t index : {track_.inlet, track_.exhaust, geared_, crank_})
            setBaselineValues(index, {}, {});
    }
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
    const auto* work = solution()->figure("shaft_work_J");
    const auto* torque = solution()->figure("mean_torque_Nm");
    if (work && work->value && torque && torque->value) {
        text += tr(" Here %1 / 2π = %2.")
                    .arg(quantityText(*work->value, QStringLiteral("J")),
                         quantityText(*torque->value, QStringLiteral("N·m")));
    }
    return text;
}

BearingPlot::BearingPlot(TurnCursor& cursor, QWidget* parent)
    : TurnPlot(cursor, tr("Main bearing loads"), parent) {
    canvas().setLeftLabel(tr("bearing load"), QStringLiteral("N"));
    const QString help = tr("Radial bearing in the plane of this track's roller axes at outer "
                            "dead centre, on the shaft.");
    for (const End end : bothEnds) {
        const bool isInlet = end == End::inlet;
        CurveLook look{isInlet ? tr("Radial, inlet side") : tr("Radial, exhaust side"),
                       QStringLiteral("N"), help, toneOf(end)};
        look.alone = isInlet ? tr("Radial, at the track") : tr("Radial, at the head");
        radial_[end] = addCurve(look);
    }
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
    const auto show = [this](const SolutionPointer& from, auto set) {
        const auto loads = from ? solution::shaftReactions(*from) : std::nullopt;
        for (const End end : bothEnds) {
            (this->*set)(radial_[end], loads ? from->theta : Samples(),
                         loads ? loads->radial(end) : Samples());
        }
        (this->*set)(thrust_, loads ? from->theta : Samples(), loads ? loads->thrust : Samples());
        return loads.has_value();
    };
    known_ = show(solution(), &BearingPlot::setValues);
    show(baseline(), &BearingPlot::setBaselineValues);
    finishRefill();
}

} // namespace lobewright::ui
