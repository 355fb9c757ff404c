#pragma once

#include "core/monitor.h"
#include "core/result.h"
#include "core/solution/solution.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// Short exercises on the engine at hand, with the answer found by the same calculation that the
/// person uses.
namespace lobewright::lessons {

enum class TaskKind {
    predict, ///< guess a number, then see it and why
    point,   ///< turn the shaft to a place
    build    ///< change the design until it does something
};

struct Task {
    std::string id = {}; ///< "exhaust-lead", kept in files
    TaskKind kind = TaskKind::predict;
    Message title;                ///< a few words
    Message question;             ///< with the numbers of this engine
    std::vector<Message> hints;   ///< from a nudge to nearly the answer; not empty
    const Unit* unit = &in::pure; ///< of the guess of a prediction
    int decimals = 0;             ///< of the guess in that unit
};

/// What a person did about a task. Angles in rad, the guess in SI.
struct Attempt {
    const solution::Solution& start; ///< the engine that the question was asked about
    const solution::Solution& now;   ///< as it is now; the same where nothing was built
    std::optional<double> guess;     ///< of a prediction
    double angle = 0.0;              ///< where the shaft stands
};

/// One reason for a change, and how much of it it makes (SI).
struct Cause {
    Message what;
    double amount = 0.0;
};

struct Verdict {
    bool isRight = false;
    double before = 0.0;       ///< what the question starts from, SI; 0 where nothing changes
    double answer = 0.0;       ///< SI, in the unit of the task
    std::vector<Cause> causes; ///< their sum is answer − before; empty where there is one cause
    Message text;              ///< what comes out and why
};

/// The tasks that this engine allows, in the order in which they are best done; twelve for a fired
/// engine with lobes of segments whose largest roller has a limit.
std::vector<Task> tasks(const solution::Solution& start);

/// Judges an attempt; a prediction about a changed engine is solved for that. Errors: no such task
/// for this engine, a prediction without a guess, what was asked cannot be solved, or stopped
/// (path "").
Result<Verdict> judge(std::string_view id, const Attempt& attempt, Monitor& monitor);

} // namespace lobewright::lessons
