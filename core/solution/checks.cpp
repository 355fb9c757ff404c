#include "core/solution/checks.h"

#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace lobewright::solution {

namespace {

std::string withUnit(double value, const std::string& unit) {
    return unit.empty() ? fmt::format("{:.4g}", value) : fmt::format("{:.4g} {}", value, unit);
}

Check entry(const CheckSubject& subject, Severity severity, double value, double limit) {
    const std::string is = withUnit(value, subject.unit), bound = withUnit(limit, subject.unit);
    return {
        subject.id,
        severity,
        value > limit
            ? fmt::format("{} is {}, above {}: {}.", subject.quantity, is, bound, subject.advice)
            : fmt::format("{} is {}, below {}: {}.", subject.quantity, is, bound, subject.advice),
        value,
        limit,
        subject.unit,
        subject.path,
        subject.angle};
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

void addPortChecks(CheckList& list, const ports::PortTiming& timing) {
    const double bore = timing.pair().mechanism().bore;
    constexpr double thinWeb = 0.04; // of the bore, own estimate
    for (const auto& web : ports::webs(timing.rows(), bore)) {
        list.atLeast({"port-webs", fmt::format("Web between ports, {} side", name(web.end)), "mm",
                      fmt::format("/ports/{}/{}/width_mm", name(web.end), web.row),
                      "fewer or narrower ports leave piston rings something to run on",
                      std::nullopt},
                     web.chord / units::millimetre, {thinWeb * bore / units::millimetre, 0.0});
    }
    for (const auto& cycle : timing.cycles()) {
        if (cycle.exhaustCloses > cycle.inletCloses) {
            const double late = (cycle.exhaustCloses - cycle.inletCloses) / units::degree;
            list.add(
                {"exhaust-closing-order", Severity::remark,
                 fmt::format("The exhaust closes {:.3g} shaft ° after the inlet, so fresh gas can "
                             "still leave: "
                             "more exhaust lead or a lower exhaust port turns the order round.",
                             late),
                 late, 0.0, "shaft °", "/mechanism/exhaust_lead_deg", cycle.exhaustCloses});
            break;
        }
    }
}

void addSpeedChecks(CheckList& list, const ports::PortTiming& timing, const design::Limits& limits,
                    double speed) {
    const auto& pair = timing.pair();
    const double stroke =
        std::max(pair.curve(End::inlet).stroke(), pair.curve(End::exhaust).stroke());
    list.atMost({"mean-piston-speed", "Mean piston speed", "m/s", "/running/speed_rpm",
                 "less speed, stroke or lobes", std::nullopt},
                2.0 * stroke * pair.cyclesPerTurn() * speed / units::turn, limits.meanPistonSpeed);
}

void addGasChecks(CheckList& list, const Result<gas::CycleSolution>& gas,
                  const design::Design& design) {
    if (!gas) {
        for (const auto& problem : gas.problems()) {
            list.add({"not-converged", Severity::error, problem.message, 0.0, 0.0, "", problem.path,
                      std::nullopt});
        }
        return;
    }
    const auto worst =
        std::max_element(gas->cycles.begin(), gas->cycles.end(), [](const auto& a, const auto& b) {
            return a.peakPressure < b.peakPressure;
        });
    const auto& limits = design.limits;
    list.atMost({"peak-pressure", "Peak pressure", "bar", "/mechanism/clearance_mm",
                 "more clearance, a later or longer burn, or less supply pressure",
                 worst->peakPressureAngle},
                worst->peakPressure / units::bar,
                {limits.peakPressure.warning / units::bar, limits.peakPressure.error / units::bar});
    for (const auto& cycle : gas->cycles) {
        if (cycle.knockIntegral && *cycle.knockIntegral > limits.knockIntegral.warning) {
            list.atMost({"knock", "Knock integral", "", "/gas/burn/start_deg",
                         "a later burn, less compression or a cooler supply", cycle.knockAngle},
                        *cycle.knockIntegral, limits.knockIntegral);
            break;
        }
    }
    for (const auto& remark : gas->remarks) {
        list.add({"gas-remark", Severity::remark, remark, 0.0, 0.0, "", "/gas", std::nullopt});
    }
    if (!gas->supplyPaid) {
        const double power = gas->supplyPower / units::kilowatt;
        list.add(
            {"supply-power-not-counted", Severity::remark,
             fmt::format(
                 "Supply power not counted: {:.3g} kW would be needed to charge the reservoir; "
                 "every brake value is that much too kind.",
                 power),
             power, 0.0, "kW", "/gas/supply/unpaid", std::nullopt});
    }
}

} // namespace lobewright::solution
