#include "app/cli/solving.h"

#include "app/cli/command.h"
#include "app/cli/design_input.h"
#include "app/cli/progress.h"

#include <fmt/format.h>

namespace lobewright::cli {

solution::Solution solvedDesign(const std::string& file, const design::Design& design) {
    return valueOf(finished([&](Progress& progress) { return solution::solve(design, progress); }),
                   file, invalidDesign);
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
