#include "app/cli/command.h"
#include "app/cli/design_input.h"
#include "app/cli/files.h"
#include "app/cli/say.h"
#include "app/cli/solving.h"
#include "core/claims/claims_file.h"
#include "core/claims/claims_report.h"

#include <CLI/CLI.hpp>

#include <memory>
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
    const auto text = readOrReport(arguments.file, study::largestClaims + 1);
    if (const int* status = std::get_if<int>(&text)) {
        return *status;
    }
    const auto claims = study::readClaims(std::get<std::string>(text));
    if (!claims) {
        report(arguments.file, claims.problems());
        return invalidDesign;
    }
    std::optional<solution::Solution> design;
    if (!arguments.design.empty()) {
        const auto loaded = loadOrReport(arguments.design);
        if (const int* status = std::get_if<int>(&loaded)) {
            return *status;
        }
        auto solved = solveOrReport(arguments.design, std::get<design::Design>(loaded));
        if (const int* status = std::get_if<int>(&solved)) {
            return *status;
        }
        design = std::get<solution::Solution>(std::move(solved));
    }
    const study::VerdictPage result = study::verdictPage(*claims, design ? &*design : nullptr);
    put("{}", arguments.asJson ? study::claimsJson(result) : study::claimsText(result));
    return done;
}

} // namespace

void addClaims(CLI::App& program, Action& action) {
    CLI::App* command =
        addCommand(program, "claims", "Hold published figures and statements against arithmetic");
    const auto arguments = std::make_shared<ClaimsArguments>();
    command->add_option("FILE", arguments->file, "Claims file, *.claims.json")->required();
    command->add_option("--design", arguments->design,
                        "Design that statements are answered from where it is the same engine");
    command->add_flag("--json", arguments->asJson, "For machines: JSON instead of text");
    command->callback(
        [&action, arguments] { action = [arguments] { return checkClaims(*arguments); }; });
}

} // namespace lobewright::cli
