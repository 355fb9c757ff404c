#include "ui/scene/walk/walk_lessons.h"

#include "core/units.h"
#include "ui/base/core_text.h"
#include "ui/base/words.h"

#include <QCoreApplication>

#include <cmath>

namespace lobewright::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Walk)
};

QString shown(double si, const lobewright::Unit& unit, int digits = 3) {
    return amountText(Amount(si, unit, digits));
}

/// The formulas of one cycle.
class Formulas {
  public:
    Formulas(const ShownEngine& engine, const ports::CycleEvents& cycle)
        : engine_(engine), pair_(engine.pair()), cycle_(cycle) {}

    QString of(const WalkStep& step) const {
        switch (step.event) {
        case WalkEvent::portsClose:
            return ratio(step.theta);
        case WalkEvent::combustion:
            return duration();
        case WalkEvent::innerDeadCentre:
            return smallestVolume();
        case WalkEvent::highestPressure:
            return pistonForce(step.theta);
        case WalkEvent::hardestPush:
            return torque(step.theta);
        case WalkEvent::exhaustOpens:
            return time(QStringLiteral("t"), std::abs(cycle_.blowdown()));
        case WalkEvent::inletOpens:
            return pressures(step.theta);
        case WalkEvent::outerDeadCentre:
            return sweptVolume();
        case WalkEvent::firstClosing:
            return time(QStringLiteral("t"), std::abs(cycle_.afterCharge()));
        }
        return {};
    }

  private:
    QString ratio(double theta) const {
        const double trapped = pair_.volume(theta), least = pair_.volume(cycle_.centres.idc);
        return QStringLiteral("ε = V₁ / V₂ = %1 / %2 = %3")
            .arg(shown(trapped, in::cm3), shown(least, in::cm3), words::number(trapped / least, 2));
    }
    QString duration() const {
        return time(QStringLiteral("t"),
                    engine_.design().gas.burn.duration / pair_.cyclesPerTurn());
    }
    /// How long a part of a revolution takes.
    QString time(const QString& symbol, double angle) const {
        const double speed = engine_.design().running.speed;
        return QStringLiteral("%1 = Δθ / ω = %2 / (%3 · 360°) = %4")
            .arg(symbol, words::degrees(angle, 1), shown(speed, in::turnsPerMinute, 4),
                 shown(angle / speed, in::ms));
    }
    QString smallestVolume() const {
        const double gap = pair_.gap(cycle_.centres.idc), area = pair_.pistonArea();
        const double recess = pair_.volume(cycle_.centres.idc) - area * gap;
        const QString product =
            QStringLiteral("V = A · s = %1 · %2").arg(shown(area, in::cm2), shown(gap, in::mm));
        const QString bowl =
            recess > 1e-12 ? QStringLiteral(" + %1").arg(shown(recess, in::cm3)) : QString();
        return product + bowl +
               QStringLiteral(" = %1").arg(shown(pair_.volume(cycle_.centres.idc), in::cm3));
    }
    QString pistonForce(double theta) const {
        const auto gas = engine_.gasAt(theta);
        if (!gas)
            return {};
        const double under = engine_.design().running.underPistonPressure;
        const double over = gas->pressure * units::bar - under;
        return QStringLiteral("F = (p − p₀) · A = %1 · %2 = %3")
            .arg(shown(over, in::bar), shown(pair_.pistonArea(), in::cm2),
                 shown(over * pair_.pistonArea(), in::kN));
    }
    QString torque(double theta) const {
        const auto turning = engine_.channel("torque_inlet_Nm", theta);
        const double lever = std::abs(pair_.lift(End::inlet, theta).y1);
        if (!turning || lever < 1e-9)
            return {};
        return QStringLiteral("T = F · dy/dθ = %1 · %2 = %3")
            .arg(shown(std::abs(*turning) / lever, in::kN), shown(lever, in::mmPerRad),
                 shown(std::abs(*turning), in::Nm));
    }
    QString pressures(double theta) const {
        const auto gas = engine_.gasAt(theta);
        const auto supply = engine_.pressureOutside(End::inlet);
        if (!gas || !supply)
            return {};
        return QStringLiteral("p / pₛ = %1 / %2 = %3")
            .arg(shown(gas->pressure * units::bar, in::bar), shown(*supply * units::bar, in::bar),
                 words::number(gas->pressure / *supply, 2));
    }
    QString sweptVolume() const {
        if (pair_.mechanism().isOneSided()) {
            return QStringLiteral("V = A · S = %1 · %2 = %3")
                .arg(shown(pair_.pistonArea(), in::cm2),
                     shown(pair_.curve(End::inlet).stroke(), in::mm),
                     shown(pair_.sweptVolume(), in::cm3));
        }
        return QStringLiteral("V = A · (S₁ + S₂) = %1 · (%2 + %3) = %4")
            .arg(shown(pair_.pistonArea(), in::cm2),
                 shown(pair_.curve(End::inlet).stroke(), in::mm),
                 shown(pair_.curve(End::exhaust).stroke(), in::mm),
                 shown(pair_.sweptVolume(), in::cm3));
    }

    const ShownEngine& engine_;
    const mechanism::OpposedPair& pair_;
    const ports::CycleEvents& cycle_;
};

struct Question {
    QString asked, answer;
};

Question questionOf(WalkEvent event, const ShownEngine& engine) {
    switch (event) {
    case WalkEvent::portsClose:
        return {Words::tr("Why does the compression ratio count from here and not from outer dead "
                          "centre?"),
                Words::tr("Before the last port closes nothing is enclosed: what the pistons "
                          "displace goes out through the ports.")};
    case WalkEvent::combustion:
        return {
            Words::tr("What would be lost if it all burnt at once, exactly at inner dead "
                      "centre?"),
            Words::tr(
                "None of the work, in theory, but the pressure would rise like a blow: a higher "
                "peak, more force on roller and track, more heat into the walls.")};
    case WalkEvent::innerDeadCentre:
        return {Words::tr("The pressure is high. How much does this cylinder turn the shaft now?"),
                Words::tr("Hardly at all: where the pistons stand still, the track is level, and a "
                          "force straight onto it turns nothing.")};
    case WalkEvent::highestPressure:
        return {Words::tr("Is the torque largest where the pressure is?"),
                Words::tr("No: the track is still nearly level. Go on to where the shaft is pushed "
                          "hardest.")};
    case WalkEvent::hardestPush:
        return {Words::tr("What would a steeper track change?"),
                Words::tr("More torque from the same force, over a shorter part of the "
                          "revolution, and more side force on the guides. The work stays that of "
                          "the gas.")};
    case WalkEvent::exhaustOpens:
        return {Words::tr("What does opening the exhaust earlier cost, and what does it bring?"),
                Words::tr("It costs the work that the gas would still do on the pistons; it brings "
                          "time for the pressure to fall before the inlet opens.")};
    case WalkEvent::inletOpens:
        return {Words::tr("Why should the exhaust open before the inlet?"),
                Words::tr("So that the pressure in the chamber has fallen below that of the "
                          "supply; else burnt gas flows into the inlet.")};
    case WalkEvent::outerDeadCentre:
        return {Words::tr("Count aloud: how many strokes has one cycle?"),
                engine.pair().mechanism().isOneSided()
                    ? Words::tr("Two strokes, once outward and once inward: a two-stroke.")
                    : Words::tr("Two strokes, once outward and once inward, both pistons at the "
                                "same time: a two-stroke.")};
    case WalkEvent::firstClosing:
        return {
            Words::tr("Which side should close first, and why?"),
            Words::tr("The exhaust: then the supply can still add charge that no longer escapes. "
                      "Without a lead of the exhaust piston the side that opens first closes "
                      "last.")};
    }
    return {};
}

} // namespace

void addLesson(WalkStep& step, const ShownEngine& engine, const ports::CycleEvents& cycle) {
    step.formula = Formulas(engine, cycle).of(step);
    const Question question = questionOf(step.event, engine);
    step.question = question.asked;
    step.answer = question.answer;
}

} // namespace lobewright::ui
