#include "core/draft/draft.h"

#include "app/cli/command.h"
#include "app/cli/design_input.h"
#include "app/cli/files.h"
#include "app/cli/progress.h"
#include "app/cli/say.h"
#include "core/claims/claims_check.h"
#include "core/claims/claims_file.h"
#include "core/claims/claims_keys.h"
#include "core/design/file.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

namespace lobewright::cli {

namespace {

struct DraftArguments {
    std::string claims, duty, file;
    std::optional<int> lobes;
    std::string charging; ///< empty: as published, or whatever the power asks for
    std::vector<std::string> dropped;
};

/// Figures that exclude each other, said before the draft goes on with what it takes.
void sayConflicts(const std::string& file, const study::Claims& claims) {
    for (const auto& conflict : study::checkClaims(claims).conflicts) {
        say("{}: {}: {} [{}]\n", file, study::name(conflict.verdict).text,
            conflict.message.english(), conflict.arithmetic.english());
        say("    leave one out with --without: {}\n", fmt::join(conflict.paths, ", "));
    }
}

draft::Brief readBrief(const DraftArguments& given) {
    if (given.claims.empty() == given.duty.empty()) {
        say("draft needs either CLAIMS.json or --duty\n");
        throw Refusal{wrongUsage};
    }
    if (!given.duty.empty()) {
        return valueOf(draft::readDuty(given.duty), "--duty", wrongUsage);
    }
    study::Claims used = loadedClaims(given.claims);
    for (const std::string& path : given.dropped) {
        used = study::without(used, path);
    }
    sayConflicts(given.claims, used);
    return draft::briefOf(used);
}

int makeDraft(const DraftArguments& given) {
    const draft::Brief brief = readBrief(given);
    const OutputFile out("--out", given.file, {given.claims});
    out.check();
    draft::Options options;
    options.lobes = given.lobes.value_or(brief.lobes.value_or(2));
    if (!given.charging.empty()) {
        options.charging = given.charging == "boosted" ? study::Charging::boosted
                                                       : study::Charging::naturallyAspirated;
    }
    const auto made =
        finished([&](Progress& progress) { return draft::draft(brief, options, progress); });
    if (!made) {
        say("no valid engine has these figures:\n");
        report(given.claims.empty() ? "--duty" : given.claims, made.problems());
        return notSolvable;
    }
    put("{}", draft::describe(*made));
    return out.write(design::writeDesign(made->design));
}

} // namespace

void addDraft(CLI::App& program, Action& action) {
    const auto [command, given] =
        newCommand(program, action, makeDraft, "draft",
                   "Complete an engine from published figures or from a duty");
    command.add_option("CLAIMS", given.claims, "Claims file with the published figures");
    command
        .add_option("--duty", given.duty,
                    "Instead: what the engine is to do, \"power=12 kW, speed=1800 rpm, "
                    "fuel=methane, diameter<320 mm, length<700 mm, life>2000 h\"")
        ->type_name("TEXT");
    command
        .add_option("--lobes", given.lobes, "Lobes of the tracks; as published, or 2 unless given")
        ->check(CLI::Range(1, 24));
    command
        .add_option("--charging", given.charging,
                    "Boosted or not, where that is not published; without it the supply pressure "
                    "is whatever the power asks for")
        ->check(CLI::IsMember({"naturally-aspirated", "boosted"}));
    command
        .add_option("--without", given.dropped,
                    "Leave a figure of the claims out, /figures/torque; may be repeated")
        ->type_name("PATH");
    addOutput(command, given.file, "Design file to write", "DESIGN");
}

} // namespace lobewright::cli
