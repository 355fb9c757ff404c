#include "app/cli/command.h"
#include "app/cli/design_input.h"
#include "app/cli/say.h"
#include "app/cli/solving.h"
#include "core/claims/claims_file.h"
#include "core/claims/claims_report.h"

#include <CLI/CLI.hpp>

#include <optional>
#include <string>

namespace lobewright::cli {

namespace {

struct ClaimsArguments {
    std::string file;
    bool asJson = false;
    std::string design; ///< empty: none
};

int checkClaims(const ClaimsArguments& arguments) {
    const study::Claims claims = loadedClaims(arguments.file);
    std::optional<solution::Solution> solution;
    if (!arguments.design.empty()) {
        solution = solvedDesign(arguments.design, loadedDesign(arguments.design));
    }
    const study::VerdictPage result = study::verdictPage(claims, solution ? &*solution : nullptr);
    put("{}", arguments.asJson ? study::claimsJson(result) : study::claimsText(result));
    return done;
}

} // namespace

void addClaims(CLI::App& program, Action& action) {
    const auto [command, arguments] =
        newCommand(program, action, checkClaims, "claims",
                   "Hold published figures and statements against arithmetic");
    command.add_option("FILE", arguments.file, "Claims file, *.claims.json")->required();
    command.add_option("--design", arguments.design,
                       "Design that statements are answered from where it is the same engine");
    command.add_flag("--json", arguments.asJson, "For machines: JSON instead of text");
}

} // namespace lobewright::cli
