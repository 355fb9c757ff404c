#include "ui/scene/walk/walk_steps.h"

#include "core/units.h"
#include "ui/base/core_text.h"
#include "ui/base/words.h"
#include "ui/scene/walk/walk_lessons.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Walk)
};

/// A value in its metric unit, as displayed.
QString displayed(double metric, const lobewright::Unit& unit, int decimals) {
    return amountText(withDecimals(toSi(unit, metric), unit, decimals));
}

/// Writes the steps of one cycle; every member tells one event.
class Teller {
  public:
    Teller(const ShownEngine& engine, const ports::CycleEvents& cycle)
        : engine_(engine), cycle_(cycle) {}

    WalkStep charged() const;
    WalkStep ignition(double theta) const;
    WalkStep innerDeadCentre() const;
    WalkStep peak(double theta) const;
    WalkStep exhaustOpens() const;
    WalkStep inletOpens() const;
    WalkStep outerDeadCentre() const;
    WalkStep firstClosing() const;
    std::optional<WalkStep> hardestPush() const;

  private:
    QString bar(double theta) const {
        const auto gas = engine_.gasAt(theta);
        return gas ? displayed(gas->pressure, in::bar, 2) : QString();
    }
    QString volume(double theta) const {
        return amountText(withDecimals(engine_.pair().volume(theta), in::cm3, 1));
    }
    QString span(double radians) const {
        const double ms = radians / engine_.design().running.speed * 1e3;
        return Words::tr("%1 of the shaft (%2 ms)")
            .arg(words::degrees(radians, 1), words::number(ms, 2));
    }
    QString fromIdc(double theta) const {
        const double cycleAngle = (theta - cycle_.centres.idc) * engine_.pair().cyclesPerTurn();
        return (cycleAngle < 0.0 ? Words::tr("%1 of the cycle before inner dead centre")
                                 : Words::tr("%1 of the cycle after inner dead centre"))
            .arg(words::degrees(std::abs(cycleAngle), 1));
    }
    bool knowsGas() const { return engine_.gasAt(cycle_.centres.idc).has_value(); }
    /// Nothing burns: what is inside is air and stays air.
    bool isMotored() const { return engine_.design().running.motored; }
    /// Which way gas goes through open ports; the textbook's way where no gas is solved.
    bool flowsIn(End end, double theta) const {
        return engine_.flowsIn(end, theta).value_or(end == End::inlet);
    }
    double commonRest() const;
    QString burnAtRest() const;
    QString blowdown() const;
    QString flowThrough() const;
    QString afterCharge() const;
    bool isOneSided() const { return engine_.pair().mechanism().isOneSided(); }
    QString exhaustRemains() const;

    const ShownEngine& engine_;
    const ports::CycleEvents& cycle_;
};

WalkStep Teller::charged() const {
    // The last closing of the cycle before stands a period of the cycle earlier.
    const double period = engine_.pair().period();
    const auto& cycles = engine_.timing().cycles();
    const double theta = cycles.back().lastClosing() - period;
    WalkStep step{theta, Words::tr("The ports close"), {}};
    step.event = WalkEvent::portsClose;
    const double ratio = engine_.pair().volume(theta) / engine_.pair().volume(cycle_.centres.idc);
    step.text =
        knowsGas()
            ? Words::tr("The last port closes on %1 of gas at %2: from here on the charge is "
                        "trapped.")
                  .arg(volume(theta), bar(theta))
            : Words::tr("The last port closes on %1 of gas: from here on the charge is trapped.")
                  .arg(volume(theta));
    step.text +=
        QLatin1Char(' ') +
        (isOneSided() ? Words::tr("The piston now moves inward and squeezes it to %1, a trapped "
                                  "compression ratio of %2.")
                      : Words::tr("Both pistons now move inward and squeeze it to %1, a trapped "
                                  "compression ratio of %2."))
            .arg(volume(cycle_.centres.idc), words::number(ratio, 2));
    return step;
}

WalkStep Teller::ignition(double theta) const {
    WalkStep step{theta, Words::tr("Combustion starts"), {}};
    step.event = WalkEvent::combustion;
    const auto gas = engine_.gasAt(theta);
    step.text = Words::tr("The charge, squeezed to %1 and %2, starts to burn %3.")
                    .arg(bar(theta), gas ? displayed(gas->temperature, in::kelvin, 0) : QString(),
                         fromIdc(theta));
    const QString burn = words::degrees(engine_.design().gas.burn.duration, 0);
    step.text += QLatin1Char(' ');
    step.text +=
        theta < cycle_.centres.idc
            ? Words::tr("It burns for %1 of the cycle, so it has to start early for the "
                        "pressure to be highest when the pistons begin to part.")
                  .arg(burn)
            : Words::tr("It burns for %1 of the cycle, while the pistons already part.").arg(burn);
    return step;
}

/// How long both pistons stand still around inner dead centre [rad of the shaft].
double Teller::commonRest() const {
    const mechanism::OpposedPair& pair = engine_.pair();
    double before = pair.period(), after = pair.period();
    for (const End end : pair.pistons()) {
        const double angle = pair.trackAngle(end, cycle_.centres.idc);
        const auto& plateaus = pair.curve(end).plateaus();
        const auto into = [&](const motion::Plateau& plateau) {
            return mechanism::wrapped(angle - plateau.begin, pair.period());
        };
        const auto rest = std::ranges::find_if(plateaus, [&](const motion::Plateau& plateau) {
            return into(plateau) < plateau.end - plateau.begin;
        });
        if (rest == plateaus.end())
            return 0.0;
        before = std::min(before, into(*rest));
        after = std::min(after, rest->end - rest->begin - into(*rest));
    }
    return before + after;
}

QString Teller::burnAtRest() const {
    const double rest = commonRest() * engine_.pair().cyclesPerTurn();
    const double burn = engine_.design().gas.burn.duration;
    const QString pressure = bar(cycle_.centres.idc);
    if (rest >= 0.8 * burn) {
        return Words::tr("Pressure is %1 and the flat top of the lobes holds the pistons here "
                         "while the gas burns.")
            .arg(pressure);
    }
    if (rest > 0.0) {
        return Words::tr("Pressure is %1; the flat tops of the lobes hold both pistons still for "
                         "%2 of the cycle, combustion lasts %3.")
            .arg(pressure, words::degrees(rest, 1), words::degrees(burn, 0));
    }
    return Words::tr("Pressure is %1; the pistons are never at rest together, so the volume "
                     "changes throughout the combustion, which lasts %2 of the cycle.")
        .arg(pressure, words::degrees(burn, 0));
}

WalkStep Teller::innerDeadCentre() const {
    const double theta = cycle_.centres.idc;
    WalkStep step{theta, Words::tr("Inner dead centre"), {}};
    step.event = WalkEvent::innerDeadCentre;
    step.text =
        (isOneSided()
             ? Words::tr(
                   "The crown stands %1 from the head and the chamber is at its smallest, %2.")
             : Words::tr("The crowns stand %1 apart and the chamber is at its smallest, %2."))
            .arg(amountText(withDecimals(engine_.pair().gap(theta), in::mm, 2)), volume(theta));
    step.text += QLatin1Char(' ');
    if (!knowsGas()) {
        step.text +=
            isOneSided()
                ? Words::tr("Crown, head and bore enclose the gas: the head is cold surface that "
                            "two opposed pistons do without.")
                : Words::tr("There is no head: the two crowns and the bore are all that encloses "
                            "the gas.");
    } else if (engine_.design().running.motored) {
        step.text +=
            Words::tr("Pressure has risen to %1 by compression alone, because nothing burns.")
                .arg(bar(theta));
    } else {
        step.text += burnAtRest();
    }
    return step;
}

WalkStep Teller::peak(double theta) const {
    WalkStep step{theta, Words::tr("Highest pressure"), {}};
    step.event = WalkEvent::highestPressure;
    step.text = Words::tr("Pressure peaks at %1, %2.").arg(bar(theta), fromIdc(theta));
    const auto inlet = engine_.channel("contact_force_inlet_N", theta);
    const auto exhaust = engine_.channel("contact_force_exhaust_N", theta);
    step.text += QLatin1Char(' ');
    if (isMotored()) {
        step.text +=
            Words::tr("Nothing has burned: what this pressure gives back on the way out is "
                      "less than compression took, and the shaft has to be driven.");
    } else if (inlet && isOneSided()) {
        step.text += Words::tr("The roller presses on its track with %1, and where the track "
                               "slopes away this force turns the shaft.")
                         .arg(amountText(withDecimals(*inlet, in::kN, 2)));
    } else if (inlet && exhaust) {
        step.text += Words::tr("The rollers press on their tracks with %1 and %2, and where a "
                               "track slopes away this force turns the shaft.")
                         .arg(amountText(withDecimals(*inlet, in::kN, 2)),
                              amountText(withDecimals(*exhaust, in::kN, 2)));
    } else {
        step.text += Words::tr("It pushes both rollers onto their tracks, and where a track slopes "
                               "away this force turns the shaft.");
    }
    return step;
}

WalkStep Teller::exhaustOpens() const {
    const double theta = cycle_.exhaustOpens;
    WalkStep step{theta, Words::tr("The exhaust opens"), {}};
    step.event = WalkEvent::exhaustOpens;
    if (isOneSided()) {
        step.text = knowsGas() ? Words::tr("The piston uncovers the exhaust ports with %1 still in "
                                           "the chamber.")
                                     .arg(bar(theta))
                               : Words::tr("The piston uncovers the exhaust ports.");
    } else {
        step.text = knowsGas() ? Words::tr("The exhaust piston uncovers its ports with %1 still in "
                                           "the chamber.")
                                     .arg(bar(theta))
                               : Words::tr("The exhaust piston uncovers its ports.");
    }
    step.text += QLatin1Char(' ');
    step.text += cycle_.blowdown() > 0.0
                     ? blowdown()
                     : Words::tr("The inlet has been open for %1 already, so gas could leave "
                                 "through it: there is no blowdown.")
                           .arg(span(-cycle_.blowdown()));
    return step;
}

QString Teller::blowdown() const {
    const QString time = span(cycle_.blowdown());
    if (flowsIn(End::exhaust, cycle_.exhaustOpens)) {
        return Words::tr(
                   "The exhaust back pressure is above the chamber pressure, so gas flows in from "
                   "the exhaust until the inlet opens %1 later: this blowdown lets nothing out.")
            .arg(time);
    }
    if (flowsIn(End::exhaust, cycle_.inletOpens)) {
        return isMotored() ? Words::tr("In the next %1, the blowdown, air first flows out and then "
                                       "back in, because the pressure of the growing chamber falls "
                                       "below the exhaust back pressure.")
                                 .arg(time)
                           : Words::tr("In the next %1, the blowdown, burnt gas first rushes out "
                                       "and then comes back, because the pressure of the growing "
                                       "chamber falls below the exhaust back pressure.")
                                 .arg(time);
    }
    return isMotored() ? Words::tr("For the next %1 air flows out by its own pressure before the "
                                   "inlet opens: the blowdown.")
                             .arg(time)
                       : Words::tr("For the next %1 burnt gas rushes out by its own pressure "
                                   "before the inlet opens: the blowdown.")
                             .arg(time);
}

WalkStep Teller::inletOpens() const {
    const double theta = cycle_.inletOpens;
    WalkStep step{theta, Words::tr("The inlet opens"), {}};
    step.event = WalkEvent::inletOpens;
    const auto supply = engine_.pressureOutside(End::inlet);
    if (!knowsGas() || !supply) {
        step.text = Words::tr("The inlet piston uncovers its ports. Fresh gas can enter at this "
                              "side and push the gas inside out at the other: scavenging.");
        return step;
    }
    step.text = Words::tr("The inlet piston uncovers its ports with %1 in the chamber and %2 in "
                          "the supply.")
                    .arg(bar(theta), displayed(*supply, in::bar, 2));
    step.text += QLatin1Char(' ') + flowThrough();
    return step;
}

/// What the two rows do when the inlet opens.
QString Teller::flowThrough() const {
    const double theta = cycle_.inletOpens;
    if (!flowsIn(End::inlet, theta)) {
        return isMotored()
                   ? Words::tr("The chamber pressure is still above the supply pressure, so some "
                               "air first flows back into the inlet.")
                   : Words::tr(
                         "The chamber pressure is still above the supply pressure, so some burnt "
                         "gas first flows back into the inlet; more blowdown would avoid that.");
    }
    if (theta < cycle_.exhaustOpens) {
        return Words::tr(
            "Fresh gas flows in at this side, and nothing leaves before the exhaust opens too.");
    }
    if (flowsIn(End::exhaust, theta)) {
        return Words::tr(
            "Gas flows in at both sides, because the chamber pressure is below the exhaust back "
            "pressure too; it flows through only once the chamber has filled.");
    }
    return isMotored() ? Words::tr("Fresh air flows in at this side and pushes the air inside out "
                                   "at the other, as scavenging does with burnt gas.")
                       : Words::tr("Fresh gas flows in at this side and pushes burnt gas out at "
                                   "the other: scavenging.");
}

WalkStep Teller::outerDeadCentre() const {
    const double theta = cycle_.centres.odc;
    WalkStep step{theta, Words::tr("Outer dead centre"), {}};
    step.event = WalkEvent::outerDeadCentre;
    step.text =
        (isOneSided()
             ? Words::tr(
                   "The piston is farthest from the head and the chamber volume is largest, %1.")
             : Words::tr("The pistons are farthest apart and the chamber volume is largest, %1."))
            .arg(volume(theta));
    step.text += QLatin1Char(' ');
    const auto gas = engine_.gasAt(theta);
    const QString overlap = span(cycle_.overlap());
    step.text +=
        gas && isMotored()
            ? Words::tr("Both rows of ports are open together for %1; all that is inside is air, "
                        "because nothing burns.")
                  .arg(overlap)
        : gas ? Words::tr("Both rows of ports are open together for %1; by now %2 % of the gas "
                          "inside is burnt gas.")
                    .arg(overlap, words::number(100.0 * gas->burntShare, 0))
              : Words::tr("Both rows of ports are open together for %1, the time for "
                          "scavenging.")
                    .arg(overlap);
    return step;
}

WalkStep Teller::firstClosing() const {
    const bool exhaustFirst = cycle_.afterCharge() > 0.0;
    const double theta = std::min(cycle_.exhaustCloses, cycle_.inletCloses);
    WalkStep step{
        theta, exhaustFirst ? Words::tr("The exhaust closes") : Words::tr("The inlet closes"), {}};
    step.event = WalkEvent::firstClosing;
    step.text = exhaustFirst ? Words::tr("The exhaust ports close %1 before the inlet ports.")
                                   .arg(span(cycle_.afterCharge()))
                             : Words::tr("The inlet ports close %1 before the exhaust ports.")
                                   .arg(span(-cycle_.afterCharge()));
    step.text += QLatin1Char(' ');
    step.text += exhaustFirst ? afterCharge() : exhaustRemains();
    return step;
}

QString Teller::afterCharge() const {
    if (!flowsIn(End::inlet, cycle_.exhaustCloses)) {
        return Words::tr(
            "Until the inlet closes too, charge flows back into the supply, because the pistons "
            "have already compressed the chamber above the supply pressure.");
    }
    if (!flowsIn(End::inlet, cycle_.inletCloses)) {
        return Words::tr("Until the inlet closes too, the supply first adds charge that no longer "
                         "escapes, the after-charge; then some flows back, because the pistons "
                         "compress the chamber above the supply pressure.");
    }
    return Words::tr("Until the inlet closes too, the supply can add charge that "
                     "no longer escapes: the after-charge.");
}

QString Teller::exhaustRemains() const {
    if (isOneSided()) {
        return Words::tr("One piston closes both rows in the reverse of the order in which it "
                         "opened them, so until the exhaust closes too, fresh charge can escape: "
                         "that is the arrangement, no fault of the design.");
    }
    if (flowsIn(End::exhaust, cycle_.inletCloses)) {
        return Words::tr("Until the exhaust closes too, gas comes back from it, because the "
                         "chamber pressure is below the exhaust back pressure.");
    }
    return Words::tr("Until the exhaust closes too, fresh charge can escape: some "
                     "exhaust lead would turn the order round.");
}

/// Where this cylinder turns the shaft most.
std::optional<WalkStep> Teller::hardestPush() const {
    const auto* solution = engine_.solution();
    const auto* torque = solution ? solution->channel("torque_cylinder_Nm") : nullptr;
    if (!torque || torque->values.size() != solution->theta.size() || isMotored())
        return std::nullopt;
    double most = 0.0, theta = 0.0;
    for (Eigen::Index i = 0; i < torque->values.size(); ++i) {
        if (torque->values[i] > most) {
            most = torque->values[i];
            theta = solution->theta[i];
        }
    }
    if (most <= 0.0)
        return std::nullopt;
    const double idc = cycle_.centres.idc;
    WalkStep step{
        idc + std::remainder(theta - idc, engine_.pair().period()), Words::tr("Hardest push"), {}};
    step.event = WalkEvent::hardestPush;
    const double steep = engine_.channel("pressure_angle_inlet_deg", step.theta).value_or(0.0);
    step.text = Words::tr("Here the shaft is pushed hardest, %1: the pressure has fallen to %2, "
                          "but the track is now %3 steep.")
                    .arg(fromIdc(step.theta), bar(step.theta),
                         words::degrees(std::abs(steep) * units::degree, 0));
    step.text += QLatin1Char(' ');
    step.text += Words::tr("This cylinder alone turns the shaft with %1.")
                     .arg(amountText(withDecimals(most, in::Nm, 0)));
    return step;
}

} // namespace

std::vector<WalkStep> walkSteps(const ShownEngine& engine) {
    if (engine.isEmpty())
        return {};
    const auto& cycle = engine.timing().cycles().front();
    const Teller teller(engine, cycle);
    std::vector<WalkStep> steps = {teller.charged(), teller.innerDeadCentre(),
                                   teller.exhaustOpens(), teller.inletOpens(),
                                   teller.outerDeadCentre()};
    if (std::abs(cycle.afterCharge()) > 1e-9)
        steps.push_back(teller.firstClosing());
    const auto* solution = engine.solution();
    if (engine.gasAt(cycle.centres.idc) && solution->gas && !solution->gas->cycles.empty()) {
        const auto& figures = solution->gas->cycles.front();
        if (!engine.design().running.motored) {
            steps.push_back(teller.ignition(cycle.centres.idc +
                                            figures.burnStart / engine.pair().cyclesPerTurn()));
        }
        if (figures.peakPressure > 0.0) {
            const double period = engine.pair().period();
            const double offset =
                std::remainder(figures.peakPressureAngle - cycle.centres.idc, period);
            steps.push_back(teller.peak(cycle.centres.idc + offset));
        }
    }
    if (auto hardest = teller.hardestPush())
        steps.push_back(std::move(*hardest));
    for (WalkStep& step : steps)
        addLesson(step, engine, cycle);
    std::stable_sort(steps.begin(), steps.end(),
                     [](const WalkStep& a, const WalkStep& b) { return a.theta < b.theta; });
    return steps;
}

PassedStep lastPassed(const std::vector<WalkStep>& steps, double theta, double period) {
    PassedStep passed{-1, period};
    for (std::size_t i = 0; i < steps.size(); ++i) {
        const double turns = (theta - steps[i].theta) / period;
        const double past = (turns - std::floor(turns)) * period;
        if (past < passed.beyond)
            passed = {static_cast<int>(i), past};
    }
    return passed;
}

QString walkOpening(const ShownEngine& engine) {
    if (engine.isEmpty())
        return {};
    const auto& mechanism = engine.design().mechanism;
    const double lead = mechanism.exhaustLead + mechanism.adjuster.setting;
    if (mechanism.isOneSided()) {
        return Words::tr("The track is fixed to the shaft and turns with it; the piston only "
                         "slides, on a roller that the track pushes inward and the gas pushes "
                         "back out. A fixed head closes the other end, and the one piston "
                         "uncovers the exhaust ports and then the inlet ports.") +
               QLatin1Char(' ') +
               Words::tr("Here the stroke is %1. Cylinders: %2; cycles of each per shaft "
                         "revolution: %3; no cranks.")
                   .arg(amountText(
                       withDecimals(engine.pair().curve(End::inlet).stroke(), in::mm, 1)))
                   .arg(mechanism.cylinders)
                   .arg(engine.pair().cyclesPerTurn());
    }
    QString text =
        Words::tr("Both tracks are fixed to the shaft and turn with it; the pistons only slide, "
                  "each on a roller that its track pushes inward and the gas pushes back out.");
    text +=
        QLatin1Char(' ') +
        Words::tr("Here the stroke is %1 on the inlet side and %2 on the exhaust side. Cylinders: "
                  "%3; cycles of each per shaft revolution: %4; no cranks.")
            .arg(amountText(withDecimals(engine.pair().curve(End::inlet).stroke(), in::mm, 1)),
                 amountText(withDecimals(engine.pair().curve(End::exhaust).stroke(), in::mm, 1)))
            .arg(mechanism.cylinders)
            .arg(engine.pair().cyclesPerTurn());
    if (std::abs(lead) > 1e-9) {
        text += QLatin1Char(' ') +
                (lead > 0.0 ? Words::tr("The exhaust track is %1 ahead of the inlet track.")
                            : Words::tr("The exhaust track is %1 behind the inlet track."))
                    .arg(words::degrees(std::abs(lead), 1));
    }
    return text;
}

} // namespace lobewright::ui
