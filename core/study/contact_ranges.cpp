#include "core/study/contact_ranges.h"

#include "core/design/file.h"
#include "core/loads/pulling_force.h"
#include "core/solution/pipeline/stages.h"
#include "core/solution/sides.h"
#include "core/study/operating_points.h"
#include "core/study/speed_sweep.h"
#include "core/units.h"

#include <boost/math/tools/toms748_solve.hpp>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <string>

LW_TEXTS_OF(Core)

namespace lobewright::study {

namespace {

/// A search that the person stopped, or a speed between two with a solution that has none.
struct Stopped {};
struct NoSolution {};

constexpr double closeness = 1e-5; ///< of an end of a range, relative
constexpr TextId closingIn = LW_TEXT("closing in");

/// How far a speed lies beyond the bounds of its own solution [1/min]; negative: contact is kept.
/// No lower bound: no speed keeps contact with that pressure.
double excess(double speed, std::optional<double> low, std::optional<double> high) {
    const double below = low ? *low - speed : speed;
    const double above = high ? speed - *high : -speed;
    return std::max(below, above);
}

/// The design at other speeds, one after the other.
class Trials {
  public:
    Trials(const design::Design& design, Monitor& monitor) : design_(design), monitor_(monitor) {
        const std::string run = design.running.motored ? "motored_rpm" : "fired_rpm";
        low_ = "contact_speed_low_" + run;
        high_ = "contact_speed_high_" + run;
    }

    /// The speeds tried first; beyond their own bounds by so much, absent: no solution.
    Result<std::vector<std::optional<double>>> first(const std::vector<double>& speeds,
                                                     ContactRanges& ranges) {
        std::vector<Variant> variants;
        variants.reserve(speeds.size());
        for (const double speed : speeds) {
            variants.push_back({speed, at(speed)});
        }
        PartOfWork half(monitor_, 0.0, 0.5);
        const auto table = solveVariants(speedSweepParameter(), variants, {}, {low_, high_}, half,
                                         {}, Course::smooth);
        if (!table) {
            return table.problems();
        }
        std::vector<std::optional<double>> found;
        for (const Point& point : table->points) {
            if (point.failure.empty()) {
                found.emplace_back(excess(point.parameter, point.values[0], point.values[1]));
                continue;
            }
            found.emplace_back();
            if (ranges.unsolved++ == 0) {
                ranges.failure = point.failure;
            }
        }
        return found;
    }

    /// Throws Stopped or NoSolution.
    double excessAt(double speed) {
        const auto solved = solve(speed, solution::Detail::figures);
        const auto* low = solved.figure(low_);
        const auto* high = solved.figure(high_);
        if (!solved.gas || !low || !high) {
            throw NoSolution{};
        }
        return excess(speed, low->value, high->value);
    }

    /// What ends the contact at this speed.
    ContactLoss lossAt(double speed) {
        const auto solved = solve(speed, solution::Detail::everything);
        const double omega = solved.design.running.speed;
        ContactLoss worst;
        double most = -omega;
        for (const End end : solved.pair.pistons()) {
            const loads::ContactSpeeds& bounds = solved.stages->loads->contactSpeeds[end];
            const auto consider = [&](const std::optional<loads::SpeedBound>& bound, double by) {
                if (bound && by > most) {
                    most = by;
                    worst = {end, bound->theta, bound->shares};
                }
            };
            consider(bounds.low, bounds.low ? bounds.low->omega - omega : 0.0);
            consider(bounds.high, bounds.high ? omega - bounds.high->omega : 0.0);
        }
        return worst;
    }

  private:
    design::Design at(double speed) const {
        design::Design changed = design_;
        changed.running.speed = speed * units::revPerMinute;
        return changed;
    }
    solution::Solution solve(double speed, solution::Detail detail) {
        constexpr double shareOfTheRest = 0.03;
        left_ *= 1.0 - shareOfTheRest;
        if (!monitor_.step(1.0 - 0.5 * left_, closingIn)) {
            throw Stopped{};
        }
        const auto solved = solution::solve(at(speed), monitor_, before_ ? &*before_ : nullptr,
                                            solution::Request(detail));
        if (!solved) {
            throw Stopped{}; // the speeds at both sides are valid
        }
        before_ = *solved;
        return *solved;
    }

    const design::Design& design_;
    Monitor& monitor_;
    std::string low_, high_;                   ///< figures that bound the speed
    std::optional<solution::Solution> before_; ///< lends its stages
    double left_ = 1.0;
};

/// A speed with its excess.
struct Trial {
    double speed = 0.0, excess = 0.0;
};

/// An end of a range between one speed that keeps contact and one that does not.
struct FoundEnd {
    double speed = 0.0;
    std::optional<ContactLoss> loss;
};

FoundEnd endBetween(const Trial& low, const Trial& high, Trials& trials) {
    const auto isNarrow = [](double a, double b) { return std::abs(b - a) <= closeness * b; };
    std::uintmax_t evaluations = 60;
    try {
        const auto [a, b] = boost::math::tools::toms748_solve(
            [&](double speed) { return trials.excessAt(speed); }, low.speed, high.speed, low.excess,
            high.excess, isNarrow, evaluations);
        const double speed = 0.5 * (a + b);
        return {speed, trials.lossAt(speed)};
    } catch (const NoSolution&) {
        return {low.excess <= 0.0 ? low.speed : high.speed, std::nullopt};
    }
}

void findRanges(const std::vector<double>& speeds, const std::vector<std::optional<double>>& found,
                Trials& trials, ContactRanges& ranges) {
    std::optional<ContactRange> open;
    const auto close = [&](double speed, const std::optional<ContactLoss>& loss) {
        open->to = speed;
        open->above = loss;
        ranges.kept.push_back(*open);
        open.reset();
    };
    for (std::size_t i = 0; i < speeds.size(); ++i) {
        const bool isKept = found[i] && *found[i] <= 0.0;
        const bool hasBefore = i > 0 && found[i - 1];
        if (isKept && !open) {
            open = ContactRange{speeds[i], speeds[i], {}, {}};
            if (hasBefore) {
                const auto end =
                    endBetween({speeds[i - 1], *found[i - 1]}, {speeds[i], *found[i]}, trials);
                open->from = end.speed;
                open->below = end.loss;
            }
        } else if (!isKept && open) {
            if (!found[i]) {
                close(speeds[i - 1], std::nullopt);
                continue;
            }
            const auto end =
                endBetween({speeds[i - 1], *found[i - 1]}, {speeds[i], *found[i]}, trials);
            close(end.speed, end.loss);
        }
    }
    if (open) {
        close(speeds.back(), std::nullopt);
    }
}

/// Why a roller leaves there.
TextId why(const ContactLoss& loss) {
    switch (loads::pullingForce(loss.shares)) {
    case loads::PullingForce::inertia:
        return LW_TEXT("inertia exceeds the gas force");
    case loads::PullingForce::gas:
        return LW_TEXT("the chamber pressure is below the under-piston pressure");
    case loads::PullingForce::rings:
        break;
    }
    return LW_TEXT("ring friction holds the piston back");
}

Amount speedAmount(double speed) {
    return Amount(speed * units::revPerMinute, in::turnsPerMinute, 4);
}

} // namespace

Result<ContactRanges> contactRanges(const design::Design& design, double from, double to,
                                    Monitor& monitor) {
    if (!(from > 0.0 && from < to && std::isfinite(to))) {
        return Problem{"", Message(LW_TEXT("speeds are %1 and %2; both must be positive and the "
                                           "second larger"),
                                   asTyped(from, in::rpm).bare(), asTyped(to, in::rpm))};
    }
    if (auto problems = design::validateEngine(design); !problems.empty()) {
        return problems;
    }
    ContactRanges ranges;
    ranges.from = from;
    ranges.to = to;
    ranges.isOneSided = design.mechanism.isOneSided();
    if (design.mechanism.closedTrack) {
        ranges.isClosed = true;
        ranges.kept.push_back({from, to, {}, {}});
        return ranges;
    }
    Trials trials(design, monitor);
    const auto speeds = evenlySpaced(from, to, contactTrials);
    const auto found = trials.first(speeds, ranges);
    if (!found) {
        return found.problems();
    }
    if (ranges.unsolved == contactTrials) {
        return Problem{"", ranges.failure};
    }
    try {
        findRanges(speeds, *found, trials, ranges);
    } catch (const Stopped&) {
        return Problem{"", LW_TEXT("cancelled")};
    }
    return ranges;
}

std::vector<Message> sentences(const ContactRanges& ranges) {
    if (ranges.isClosed) {
        return {LW_TEXT("A closed track holds the rollers at every speed.")};
    }
    std::vector<Message> told;
    if (ranges.kept.empty()) {
        told.emplace_back(LW_TEXT("The rollers keep contact at no speed between %1 and %2."),
                          speedAmount(ranges.from).bare(), speedAmount(ranges.to));
    }
    for (const ContactRange& range : ranges.kept) {
        told.emplace_back(LW_TEXT("The rollers keep contact from %1 to %2."),
                          speedAmount(range.from).bare(), speedAmount(range.to));
        if (const auto& loss = range.below) {
            told.emplace_back(LW_TEXT("Below %1 %2 leaves its track at a "
                                      "shaft angle of %3: %4."),
                              speedAmount(range.from),
                              solution::rollerWithin(ranges.isOneSided, loss->end),
                              withDecimals(loss->theta, in::degrees, 1), why(*loss));
        }
        if (const auto& loss = range.above) {
            told.emplace_back(LW_TEXT("Above %1 %2 leaves its track at a "
                                      "shaft angle of %3: %4."),
                              speedAmount(range.to),
                              solution::rollerWithin(ranges.isOneSided, loss->end),
                              withDecimals(loss->theta, in::degrees, 1), why(*loss));
        }
    }
    if (ranges.unsolved > 0) {
        told.emplace_back(LW_TEXT("%1 of %2 speeds have no solution: %3"), ranges.unsolved,
                          contactTrials, ranges.failure);
    }
    return told;
}

} // namespace lobewright::study
