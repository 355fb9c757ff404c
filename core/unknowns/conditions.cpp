#include "core/unknowns/conditions.h"

#include "core/draft/brief.h"
#include "core/units.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <limits>

namespace lobewright::unknowns {

namespace {

constexpr double never = std::numeric_limits<double>::infinity();
/// Of the speed at which a flat curve is highest [own estimate].
constexpr double speedTolerance = 0.05;

void add(std::vector<Condition>& conditions, const std::optional<draft::Figure>& figure,
         const char* result, Condition::Sense sense, double unit, double leastTolerance = 0.0) {
    if (figure && figure->value > 0.0) {
        const double target = figure->value / unit;
        conditions.push_back({result, sense, target,
                              std::max(figure->precision, leastTolerance) * target, figure->text});
    }
}

} // namespace

std::vector<Condition> conditionsOf(const study::Claims& claims) {
    using enum Condition::Sense;
    const draft::Brief brief = draft::briefOf(claims);
    std::vector<Condition> conditions;
    add(conditions, brief.power, "peak_power_kW", atLeast, 1e3);
    add(conditions, brief.torque, "peak_torque_Nm", atLeast, 1.0);
    add(conditions, brief.powerSpeed, "peak_power_speed_rpm", about, units::revPerMinute,
        speedTolerance);
    add(conditions, brief.torqueSpeed, "peak_torque_speed_rpm", about, units::revPerMinute,
        speedTolerance);
    add(conditions, brief.meanPressure, "bmep_bar", atLeast, 1e5);
    add(conditions, brief.efficiency, "brake_efficiency", atLeast, 1.0);
    return conditions;
}

double miss(const Condition& condition, double value) {
    if (!std::isfinite(value)) {
        return never;
    }
    const double over = value - condition.target;
    double off = 0.0;
    switch (condition.sense) {
    case Condition::Sense::atLeast:
        off = -over;
        break;
    case Condition::Sense::atMost:
        off = over;
        break;
    case Condition::Sense::about:
        off = std::abs(over);
        break;
    }
    return std::max(0.0, off - condition.tolerance) / condition.target;
}

double miss(const Run& run, const Ensemble& ensemble, const std::vector<Condition>& conditions) {
    if (!run.runs()) {
        return never;
    }
    double largest = 0.0;
    for (const Condition& condition : conditions) {
        const auto column = ensemble.result(condition.result);
        assert(column);
        largest = std::max(largest, miss(condition, run.results[*column]));
    }
    return largest;
}

} // namespace lobewright::unknowns
