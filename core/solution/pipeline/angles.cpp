#include "core/solution/pipeline/angles.h"

#include "core/units.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace lobewright::solution {

namespace {

/// Every event of every repetition of the period within the turn, ascending.
std::vector<double> eventsOfTurn(const ports::PortTiming& timing, double period) {
    std::vector<double> events;
    const auto repetitions = std::lround(units::turn / period);
    for (const auto& cycle : timing.cycles()) {
        for (const double angle : {cycle.centres.idc, cycle.centres.odc, cycle.exhaustOpens,
                                   cycle.inletOpens, cycle.inletCloses, cycle.exhaustCloses}) {
            const double first = angle - period * std::floor(angle / period);
            for (long i = 0; i < repetitions; ++i) {
                events.push_back(first + period * static_cast<double>(i));
            }
        }
    }
    std::sort(events.begin(), events.end());
    return events;
}

constexpr int steps = 720; // a turn
constexpr double near = 1e-9;

} // namespace

Samples sampleAngles(const ports::PortTiming& timing, double period) {
    std::vector<double> events = eventsOfTurn(timing, period);
    // The ends of the turn stay exactly 0 and 2π.
    std::erase_if(events, [](double angle) { return angle < near || angle > units::turn - near; });

    std::vector<double> angles;
    angles.reserve(steps + 1 + events.size());
    auto event = events.begin();
    const auto addEvent = [&] {
        if (angles.empty() || *event - angles.back() > near) {
            angles.push_back(*event);
        }
        ++event;
    };
    for (int i = 0; i <= steps; ++i) {
        const double grid = units::turn * i / steps;
        while (event != events.end() && *event < grid + near) {
            addEvent();
        }
        if (angles.empty() || grid - angles.back() > near) {
            angles.push_back(grid);
        }
    }
    return Eigen::Map<Samples>(angles.data(), static_cast<Eigen::Index>(angles.size()));
}

Samples onePeriodOf(const Samples& theta, double period) {
    const auto repetitions = std::lround(units::turn / period);
    if (steps % repetitions != 0) {
        return theta;
    }
    const auto end = std::upper_bound(theta.begin(), theta.end(), period + near);
    return theta.head(end - theta.begin());
}

Samples cycleAngles(const Samples& theta, const ports::PortTiming& timing, double period,
                    double cyclesPerTurn) {
    const auto& cycles = timing.cycles();
    const auto nearest = [period](double angle, double idc) {
        const double offset = angle - idc;
        return offset - period * std::floor(offset / period + 0.5);
    };
    return theta.unaryExpr([&](double angle) {
        double best = nearest(angle, cycles.front().centres.idc);
        for (const auto& cycle : cycles) {
            const double offset = nearest(angle, cycle.centres.idc);
            if (std::abs(offset) < std::abs(best)) {
                best = offset;
            }
        }
        return cyclesPerTurn * best;
    });
}

double meanOverTurn(const Samples& values, const Samples& theta) {
    const Eigen::Index steps = theta.size() - 1;
    const Samples length = theta.tail(steps) - theta.head(steps);
    return (0.5 * (values.tail(steps) + values.head(steps)) * length).sum() / length.sum();
}

} // namespace lobewright::solution
