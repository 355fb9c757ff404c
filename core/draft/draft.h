#pragma once

#include "core/draft/brief.h"
#include "core/draft/rules.h"
#include "core/draft/tuning.h"
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
    std::vector<Exceeded> exceeded;          ///< limits that the rules could not keep
    std::optional<study::Charging> charging; ///< as given, or of the candidate
    /// Lower power at which every limit of the duty is kept; only where one is missed [W].
    std::optional<double> nearestPower;
};

struct Options {
    int lobes = 2;
    std::optional<study::Charging> charging; ///< where the brief leaves it open
    OwnNumbers own;                          ///< numbers of the person in place of a rule's
};

/// Completes the engine by the rules. The roller is as wide as its stress asks for, and the supply
/// pressure is searched for the power wanted.
/// Errors: the figures exclude each other so far that no valid engine comes of them (path of the
/// design with the rule it breaks), an own number out of range, cancelled (path "").
Result<Draft> draft(const Brief& brief, const Options& options, Monitor& monitor);

/// The number of lobes that come into question: the given one, else 1, 2 and 3; each not boosted
/// and boosted, unless charging or supply pressure are given.
std::vector<Options> candidates(const Brief& brief);

/// What the draft reached, rule by rule, as lines of text: label, value, range, origin, working.
std::string describe(const Draft& draft);

} // namespace lobewright::draft
