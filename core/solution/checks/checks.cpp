#include "core/solution/checks/checks.h"

#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <iterator>

LW_TEXTS_OF(Core)

namespace lobewright::solution {

namespace {

Check entry(const CheckSubject& subject, Severity severity, double value, double limit) {
    const TextId text =
        value > limit ? LW_TEXT("%1 is %2, above %3: %4.") : LW_TEXT("%1 is %2, below %3: %4.");
    return {subject.id,
            severity,
            {text, subject.quantity, amountIn(*subject.unit, value), amountIn(*subject.unit, limit),
             subject.advice},
            value,
            limit,
            subject.unit,
            subject.path,
            subject.angle,
            subject.figure,
            subject.end};
}

} // namespace

void CheckList::atMost(const CheckSubject& subject, double value, const design::Limit& limit) {
    if (value > limit.error) {
        add(entry(subject, Severity::error, value, limit.error));
    } else if (value > limit.warning) {
        add(entry(subject, Severity::warning, value, limit.warning));
    }
}

void CheckList::atLeast(const CheckSubject& subject, double value, const design::Limit& limit) {
    if (value < limit.error) {
        add(entry(subject, Severity::error, value, limit.error));
    } else if (value < limit.warning) {
        add(entry(subject, Severity::warning, value, limit.warning));
    }
}

void CheckList::append(CheckList more) {
    std::ranges::move(more.checks_, std::back_inserter(checks_));
}

std::vector<Check> CheckList::take() {
    std::stable_sort(checks_.begin(), checks_.end(),
                     [](const Check& a, const Check& b) { return a.severity > b.severity; });
    for (Check& check : checks_) {
        if (check.angle) { // events may lie in the turn after
            *check.angle -= units::turn * std::floor(*check.angle / units::turn);
        }
    }
    return std::move(checks_);
}

namespace {

/// One piston closes both rows as it opened them: said once, as what the arrangement costs.
void addSymmetricTiming(CheckList& list, const ports::PortTiming& timing) {
    const auto& cycle = timing.cycles().front();
    const double late = (cycle.exhaustCloses - cycle.inletCloses) / units::degree;
    if (late <= 0.0) {
        return;
    }
    list.add({"symmetric-timing", Severity::remark,
              Message(LW_TEXT("One piston uncovers both rows of ports, so the exhaust closes %1 "
                              "after the inlet, by as much as it opens before it: this follows "
                              "from the arrangement and is no fault of the design. A second piston "
                              "that leads, or a valve in the exhaust, would close it earlier."),
                      Amount(cycle.exhaustCloses - cycle.inletCloses, in::shaftDegrees, 3)),
              late, 0.0, &in::shaftDegrees, "/mechanism/arrangement", cycle.exhaustCloses,
              QuantityId{"after_charge", &in::shaftDegrees}});
}

} // namespace

void addPortChecks(CheckList& list, const ports::PortTiming& timing) {
    const double bore = timing.pair().mechanism().bore;
    constexpr double thinWeb = 0.04; // of the bore, own estimate
    for (const auto& web :
         ports::webs(timing.rows(), bore, timing.pair().mechanism().isOneSided())) {
        list.atLeast(
            {"port-webs",
             ofSide(LW_TEXT("Port bridge"), web.end),
             &in::mm,
             fmt::format("/ports/{}/{}/width_mm", name(web.end), web.row),
             LW_TEXT("use fewer or narrower ports, so that the bridges carry the piston rings"),
             std::nullopt,
             {},
             web.end},
            web.chord / units::millimetre, {thinWeb * bore / units::millimetre, 0.0});
    }
    if (timing.pair().mechanism().isOneSided()) {
        addSymmetricTiming(list, timing);
        return;
    }
    for (const auto& cycle : timing.cycles()) {
        if (cycle.exhaustCloses > cycle.inletCloses) {
            const double late = (cycle.exhaustCloses - cycle.inletCloses) / units::degree;
            list.add(
                {"exhaust-closing-order", Severity::remark,
                 Message(LW_TEXT("The exhaust closes %1 after the inlet, so fresh gas can still "
                                 "escape: increase the exhaust lead or lower the exhaust ports."),
                         Amount(cycle.exhaustCloses - cycle.inletCloses, in::shaftDegrees, 3)),
                 late, 0.0, &in::shaftDegrees, "/mechanism/exhaust_lead_deg", cycle.exhaustCloses,
                 QuantityId{"after_charge", &in::shaftDegrees}});
            break;
        }
    }
}

void addSpeedChecks(CheckList& list, const ports::PortTiming& timing, const design::Limits& limits,
                    double speed) {
    const auto& pair = timing.pair();
    const double stroke =
        std::max(pair.curve(End::inlet).stroke(), pair.curve(End::exhaust).stroke());
    list.atMost({"mean-piston-speed", LW_TEXT("Mean piston speed"), &in::metrePerSecond,
                 "/running/speed_rpm",
                 LW_TEXT("lower the speed, the stroke or the number of lobes"), std::nullopt,
                 QuantityId{"mean_piston_speed", &in::metrePerSecond, End::inlet}},
                2.0 * stroke * pair.cyclesPerTurn() * speed / units::turn, limits.meanPistonSpeed);
}

namespace {

/// Mixture through the ports: what is not trapped is neither burnt nor gone.
void addLostFuel(CheckList& list, const gas::CycleSolution& gas, const design::Design& design) {
    double supplied = 0.0, trapped = 0.0;
    for (const auto& cycle : gas.cycles) {
        supplied += cycle.suppliedFuelMass;
        trapped += cycle.fuelMass;
    }
    if (design.gas.mixture != gas::Mixture::premixed || design.running.motored || supplied <= 0.0) {
        return;
    }
    const double lost = 1.0 - trapped / supplied;
    list.add(
        {"fuel-lost", Severity::remark,
         Message(
             LW_TEXT("Of the fuel supplied, %1 leaves through the exhaust ports unburnt, as "
                     "hydrocarbons. Mixture pushed back through the inlet ports is taken in again "
                     "and counts once. Fuel injected after the ports have closed is not lost."),
             Amount(lost, in::percent, 3)),
         100.0 * lost, 0.0, &in::percent, "/gas/mixture", std::nullopt,
         QuantityId{"fuel_lost_share"}});
}

} // namespace

void addGasChecks(CheckList& list, const Result<gas::CycleSolution>& gas,
                  const design::Design& design) {
    if (!gas) {
        for (const auto& problem : gas.problems()) {
            list.add({"not-converged", Severity::error, problem.message, 0.0, 0.0, &in::pure,
                      problem.path, std::nullopt});
        }
        return;
    }
    const auto worst =
        std::max_element(gas->cycles.begin(), gas->cycles.end(), [](const auto& a, const auto& b) {
            return a.peakPressure < b.peakPressure;
        });
    const auto& limits = design.limits;
    list.atMost({"peak-pressure", LW_TEXT("Peak pressure"), &in::bar, "/mechanism/clearance_mm",
                 LW_TEXT("increase the clearance, start combustion later or extend it, or lower "
                         "the supply pressure"),
                 worst->peakPressureAngle, QuantityId{"peak_pressure", &in::bar}},
                worst->peakPressure / units::bar,
                {limits.peakPressure.warning / units::bar, limits.peakPressure.error / units::bar});
    for (const auto& cycle : gas->cycles) {
        if (cycle.knockIntegral && *cycle.knockIntegral > limits.knockIntegral.warning) {
            list.atMost(
                {"knock", LW_TEXT("Knock integral"), &in::pure, "/gas/burn/start_deg",
                 LW_TEXT("start combustion later, lower the compression ratio or cool the supply"),
                 cycle.knockAngle, QuantityId{"knock_integral"}},
                *cycle.knockIntegral, limits.knockIntegral);
            break;
        }
    }
    for (const auto& remark : gas->remarks) {
        list.add(
            {"gas-remark", Severity::remark, remark, 0.0, 0.0, &in::pure, "/gas", std::nullopt});
    }
    addLostFuel(list, *gas, design);
    addSupplyChecks(list, *gas, design);
    if (!gas->supplyPaid) {
        const double power = gas->supplyPower / units::kilowatt;
        list.add({"supply-power-not-counted", Severity::remark,
                  Message(LW_TEXT("Supply power not counted: %1 would be required to fill the "
                                  "reservoir; every brake value is too high by that amount."),
                          Amount(gas->supplyPower, in::kW, 3)),
                  power, 0.0, &in::kW, "/gas/supply/unpaid", std::nullopt,
                  QuantityId{"supply_power", &in::kW}});
    }
}

} // namespace lobewright::solution
