#include "app/cli/solving.h"

#include "app/cli/command.h"
#include "app/cli/design_input.h"
#include "app/cli/progress.h"
#include "app/cli/say.h"

#include <fmt/format.h>

namespace lobewright::cli {

std::variant<solution::Solution, int> solveOrReport(const std::string& file,
                                                    const design::Design& design) {
    auto [result, wasInterrupted] =
        watched([&](Progress& progress) { return solution::solve(design, progress); });
    if (wasInterrupted) {
        say("stopped; nothing was written\n");
        return interrupted;
    }
    if (!result) {
        report(file, result.problems());
        return invalidDesign;
    }
    return std::move(result).value();
}

std::string whyNotSolved(const solution::Solution& solution) {
    if (solution.gas) {
        return {};
    }
    for (const solution::Check& check : solution.checks) {
        if (check.id == "not-converged") {
            return check.path.empty() ? check.message.english()
                                      : fmt::format("{}: {}", check.path, check.message.english());
        }
    }
    return "the gas cycle has no solution";
}

} // namespace lobewright::cli
