#pragma once

#include "core/draft/brief.h"
#include "core/draft/rules.h"
#include "core/monitor.h"
#include "core/solution/solution.h"

#include <string>
#include <vector>

namespace lobewright::draft {

/// A figure of the brief beside the same of the draft.
struct Comparison {
    std::string name; ///< of the figure in the summary, "brake_power_kW"
    Message label;    ///< "Brake power"
    std::string unit;
    double wanted = 0.0, reached = 0.0;
    bool isLimit = false; ///< wanted is an upper limit, of a life a lower one
    Message why;          ///< where it is missed: why, and what is nearest; empty: reached
};

/// Reached: to 1 %, or to the rounding of the published figure where that is coarser.
inline constexpr double reachedWithin = 0.01;

/// A whole engine made of a few figures.
struct Draft {
    design::Design design; ///< valid; its knowledge notes the origin and range of every input
    solution::Solution solution;
    std::vector<Step> steps;
    std::vector<Comparison> comparisons;
    /// Lower power at which every limit of the duty is kept; only where one is missed [W].
    std::optional<double> nearestPower;
};

struct Options {
    int lobes = 2;
    OwnNumbers own; ///< numbers of the person in place of a rule's
};

/// Completes the engine by the rules. The roller is as wide as its stress asks for, and the supply
/// pressure is searched for the power wanted.
/// Errors: the figures exclude each other so far that no valid engine comes of them (path of the
/// design with the rule it breaks), an own number out of range, cancelled (path "").
Result<Draft> draft(const Brief& brief, const Options& options, Monitor& monitor);

/// The numbers of lobes that come into question: the given one, else 1, 2 and 3.
std::vector<int> candidateLobes(const Brief& brief);

/// What the draft reached, rule by rule, as lines of text: label, value, range, origin, working.
std::string describe(const Draft& draft);

} // namespace lobewright::draft
