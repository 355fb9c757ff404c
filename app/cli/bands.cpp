#include "app/cli/command.h"
#include "app/cli/design_input.h"
#include "app/cli/files.h"
#include "app/cli/number_option.h"
#include "app/cli/progress.h"
#include "app/cli/say.h"
#include "app/cli/table_command.h"
#include "core/exchange/bands_files.h"
#include "core/files/read_file.h"
#include "core/files/write_file.h"
#include "core/printable.h"
#include "core/units.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

LW_TEXTS_OF(Core)

namespace lobewright::cli {

namespace {

using exchange::BandsStudy;
using unknowns::Condition;
using unknowns::Ensemble;

/// Of a table of samples; a line is a few hundred bytes.
constexpr std::uintmax_t largestTable = 4'000'000'000;
constexpr std::uintmax_t largestSummary = 10'000'000;

struct BandsArguments {
    std::string design, claims, part, folder;
    std::string purpose = "unknown";
    std::vector<std::string> joined;
    int samples = 512;
    int seed = 1;
    std::optional<double> from, to;
    std::optional<int> points;
    std::vector<double> tolerances, growth;
};

/// mm and °C as given, SI inside.
unknowns::Tolerances tolerancesOf(const BandsArguments& given) {
    constexpr double mm = units::millimetre, celsius = 273.15;
    unknowns::Tolerances tolerances;
    if (!given.tolerances.empty()) {
        if (given.tolerances.size() != 3 || std::ranges::min(given.tolerances) < 0.0) {
            say("--tolerances needs three numbers that are not negative: lift, port edge, "
                "clearance [mm]\n");
            throw Refusal{wrongUsage};
        }
        tolerances.lift = given.tolerances[0] * mm;
        tolerances.portEdge = given.tolerances[1] * mm;
        tolerances.clearance = given.tolerances[2] * mm;
    }
    if (given.growth.empty()) {
        return tolerances;
    }
    if (given.growth.size() != 5) {
        say("--growth needs five numbers: distance of the tracks and length of a piston [mm], "
            "temperature of block, shaft and pistons [°C]\n");
        throw Refusal{wrongUsage};
    }
    tolerances.growth = unknowns::Tolerances::Growth{.length = given.growth[0] * mm,
                                                     .blockTemperature = given.growth[2] + celsius,
                                                     .shaftTemperature = given.growth[3] + celsius,
                                                     .pistonTemperature = given.growth[4] + celsius,
                                                     .pistonLength = given.growth[1] * mm};
    return tolerances;
}

/// The design with the ranges that are asked for.
design::Design readDesign(const BandsArguments& given, unknowns::Purpose purpose) {
    const auto design = loadedDesign(given.design);
    return valueOf(unknowns::withRangesFor(design, purpose, tolerancesOf(given)), given.design,
                   invalidDesign);
}

std::vector<Condition> readConditions(const std::string& file) {
    if (file.empty()) {
        return {};
    }
    auto conditions = unknowns::conditionsOf(loadedClaims(file));
    if (conditions.empty()) {
        say("{}: no published figure can be held against the results of the engines\n",
            printable(file));
        throw Refusal{notSolvable};
    }
    return conditions;
}

unknowns::Plan readPlan(const BandsArguments& given, const design::Design& design) {
    unknowns::Plan plan;
    plan.part = readShard(given.part);
    const auto speeds = readSpeeds(given.from, given.to, given.points);
    plan.samples = given.samples;
    plan.seed = static_cast<std::uint64_t>(given.seed);
    plan.speeds = speeds ? *speeds : unknowns::usualSpeeds(design);
    return plan;
}

/// The engines of all parts that --join names.
Ensemble join(const BandsArguments& given, const design::Design& design,
              const exchange::PartPlan& part) {
    std::vector<std::string> texts;
    for (const std::string& folder : given.joined) {
        texts.push_back(readInput(folder + "/samples.csv", largestTable));
    }
    return valueOf(exchange::joinedEnsemble(valueOf(unknowns::emptyEnsemble(design, part.plan),
                                                    given.design, invalidDesign),
                                            texts),
                   "--join", notSolvable);
}

exchange::PartPlan readPart(const std::string& folder) {
    const std::string file = folder + "/summary.json";
    return valueOf(exchange::readPartPlan(readInput(file, largestSummary)), file, fileFailure);
}

std::string percent(double share) {
    return fmt::format("{:.1f} %", 100.0 * share);
}

void showFeasibility(const Ensemble& ensemble) {
    const auto found = unknowns::feasibility(ensemble);
    const auto share = [&](long count) {
        return percent(static_cast<double>(count) / static_cast<double>(found.engines));
    };
    put("{} engines: {} run, {} cannot be built, {} cannot run\n", found.engines, share(found.runs),
        share(found.notBuilt), share(found.notRun));
    for (const auto& reason : found.reasons) {
        put("  {:>7}  e.g. {}\n", share(reason.count), printable(reason.example.english()));
    }
}

void showDecisions(const BandsStudy& study) {
    const auto bands = unknowns::resultBands(study.ensemble);
    for (const auto& decided : study.decided) {
        const auto& result = bands[decided.result];
        const std::string unit = result.column.unit.empty() ? "" : " " + result.column.unit;
        put("\n{}: {:.4g} to {:.4g}{} (5 to 95 %), half of them {:.4g} to {:.4g}{}",
            result.column.label.english(), result.band->p05, result.band->p95, unit,
            result.band->p25, result.band->p75, unit);
        put("{}\n",
            result.nominal ? fmt::format("; as it is {:.4g}{}", *result.nominal, unit) : "");
        const auto& strongest = decided.decision.influences.front();
        put("  decided most by {} ({} of the variance by itself{})\n",
            study.ensemble.unknowns[strongest.unknown].label.english(), percent(strongest.first),
            decided.decision.isOfSurrogate ? "" : ", from the samples");
        put("  {}\n", unknowns::sentence(decided.advice, study.ensemble.unknowns).english());
    }
}

/// What the nearest engine has instead of what was published.
void showNearest(const BandsStudy& study) {
    for (const Condition& condition : study.required->conditions) {
        const std::size_t result = *study.ensemble.result(condition.result);
        const auto& column = study.ensemble.results[result];
        put("    {}: {:.4g}{}{} instead of {}\n", column.label.english(),
            study.required->nearest.results[result], column.unit.empty() ? "" : " ", column.unit,
            printable(condition.said));
    }
}

void showRequirement(const BandsStudy& study) {
    const auto& required = *study.required;
    put("\nWhat would have to be true:\n");
    for (const Condition& condition : required.conditions) {
        put("  published: {} [{}]\n", printable(condition.said), condition.result);
    }
    if (required.runs.empty()) {
        put("  none in {} engines", required.engines + required.tries);
        put("{}\n", std::isfinite(required.nearestMiss)
                        ? fmt::format("; the nearest misses by {}", percent(required.nearestMiss))
                        : "");
        showNearest(study);
        return;
    }
    put("  {:.3g} % of the possible engines keep to all of it; {} of them computed\n",
        100.0 * required.share, required.runs.size());
    for (const Message& sentence : unknowns::sentences(required, study.ensemble.unknowns)) {
        put("  {}\n", sentence.english());
    }
}

/// What the computation and the searches gave.
BandsStudy studied(const BandsArguments& given, const design::Design& design, BandsStudy study,
                   const unknowns::Plan& plan, const std::vector<Condition>& conditions) {
    Progress progress;
    const auto end = [&](const Problems& problems) {
        if (progress.isInterrupted()) {
            say("stopped; nothing was written\n");
            throw Refusal{interrupted};
        }
        endWith(given.design, problems, problems.front().path.empty() ? wrongUsage : invalidDesign);
    };
    if (given.joined.empty()) {
        auto ensemble = unknowns::computeEnsemble(design, plan, progress);
        if (!ensemble) {
            end(ensemble.problems());
        }
        study.ensemble = std::move(ensemble).value();
    }
    if (study.ensemble.plan.part.of > 1) {
        return study;
    }
    const auto library = unknowns::statistics();
    if (!library) {
        end(library.problems());
    }
    auto decided =
        unknowns::decideAll(**library, study.ensemble, unknowns::principalResults(), progress);
    if (!decided) {
        end({Problem{"", LW_TEXT("cancelled")}});
    }
    study.decided = std::move(*decided);
    if (!conditions.empty()) {
        auto required = unknowns::whatWouldHaveToBeTrue(
            design, study.ensemble, conditions, {.seed = study.ensemble.plan.seed}, progress);
        if (!required) {
            end(required.problems());
        }
        study.required = std::move(required).value();
    }
    return study;
}

int computeBands(const BandsArguments& given) {
    BandsStudy study;
    std::optional<exchange::PartPlan> part;
    study.purpose = *exchange::purposeOf(given.purpose);
    if (!given.joined.empty()) {
        part = readPart(given.joined.front());
        study.purpose = part->purpose;
    }
    const auto design = readDesign(given, study.purpose);
    study.title = design.title;
    const auto conditions = readConditions(given.claims);
    const auto plan = readPlan(given, design);
    if (const auto problem = files::checkFolder(given.folder)) {
        endWith("--out", {*problem}, fileFailure);
    }
    if (part) {
        study.ensemble = join(given, design, *part);
    }
    const auto found = studied(given, design, std::move(study), plan, conditions);
    const std::filesystem::path inputs[] = {given.design, given.claims};
    if (const auto problem = exchange::writeBands(
            found, given.folder, std::span(inputs, given.claims.empty() ? 1 : 2))) {
        endWith("--out", {*problem}, fileFailure);
    }
    showFeasibility(found.ensemble);
    showDecisions(found);
    if (found.required) {
        showRequirement(found);
    }
    return done;
}

} // namespace

void addBands(CLI::App& program, Action& action) {
    const auto [command, given] =
        newCommand(program, action, computeBands, "bands",
                   "Results of a design of which not everything is known, as "
                   "bands: what decides them, and what would have to be true for "
                   "published figures to hold");
    addDesignFile(command, given.design);
    addNumber(command, "--samples", given.samples, 16, unknowns::mostSamples,
              "Engines to compute; 512 unless given");
    addNumber(command, "--seed", given.seed, 0, 2147483647,
              "Another seed draws other engines; 1 unless given");
    addNumber(command, "--from", given.from,
              "First speed of the curve [1/min]; 25 % of the design's unless given");
    addNumber(command, "--to", given.to, "Last speed [1/min]; 130 % unless given");
    addNumber(command, "--points", given.points, 3, 1000, "Number of speeds; 9 unless given");
    command
        .add_option("--purpose", given.purpose,
                    "What the ranges stand for: unknown (what the design says is not certain), "
                    "scatter (of manufacture), free (what may still be chosen)")
        ->check(CLI::IsMember({"unknown", "scatter", "free"}));
    addNumbers(command, "--tolerances", given.tolerances,
               "Of scatter: ± of a lobe's lift, a port edge, the clearance [mm]; 0.05,0.1,0.1 "
               "unless given");
    addNumbers(command, "--growth", given.growth,
               "Of scatter, for a warm engine: distance of the tracks and length of a piston from "
               "roller to crown [mm], temperature of block, shaft and pistons [°C]");
    command
        .add_option("--claims", given.claims,
                    "Published figures: say what would have to be true for them to hold")
        ->type_name("CLAIMS");
    command
        .add_option("--part", given.part,
                    "Only part I of N (job arrays); put them together with --join")
        ->type_name("I/N");
    command
        .add_option("--join", given.joined,
                    "Put together the folders that --part wrote, instead of computing")
        ->type_name("DIR");
    addOutput(command, given.folder, "Folder to write", "DIR");
}

} // namespace lobewright::cli
