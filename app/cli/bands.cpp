#include "app/cli/command.h"
#include "app/cli/design_input.h"
#include "app/cli/files.h"
#include "app/cli/number_option.h"
#include "app/cli/progress.h"
#include "app/cli/say.h"
#include "app/cli/table_command.h"
#include "core/claims/claims_file.h"
#include "core/exchange/bands_files.h"
#include "core/files/read_file.h"
#include "core/files/write_file.h"
#include "core/printable.h"
#include "core/units.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <memory>

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

/// An answer, or the exit status after the reasons have gone to stderr.
template <class T>
using Answer = std::variant<T, int>;

/// mm and °C as given, SI inside; the sentence that is wrong with them.
std::optional<std::string> readTolerances(const BandsArguments& given,
                                          unknowns::Tolerances& tolerances) {
    constexpr double mm = units::millimetre, celsius = 273.15;
    if (!given.tolerances.empty()) {
        if (given.tolerances.size() != 3 || std::ranges::min(given.tolerances) < 0.0) {
            return "--tolerances needs three numbers that are not negative: lift, port edge, "
                   "clearance [mm]";
        }
        tolerances.lift = given.tolerances[0] * mm;
        tolerances.portEdge = given.tolerances[1] * mm;
        tolerances.clearance = given.tolerances[2] * mm;
    }
    if (given.growth.empty()) {
        return std::nullopt;
    }
    if (given.growth.size() != 5) {
        return "--growth needs five numbers: distance of the tracks and length of a piston [mm], "
               "temperature of block, shaft and pistons [°C]";
    }
    auto& growth = tolerances.growth.emplace();
    growth.length = given.growth[0] * mm;
    growth.pistonLength = given.growth[1] * mm;
    growth.blockTemperature = given.growth[2] + celsius;
    growth.shaftTemperature = given.growth[3] + celsius;
    growth.pistonTemperature = given.growth[4] + celsius;
    return std::nullopt;
}

/// The design with the ranges that are asked for.
Answer<design::Design> readDesign(const BandsArguments& given, unknowns::Purpose purpose) {
    auto loaded = loadOrReport(given.design);
    if (const int* status = std::get_if<int>(&loaded)) {
        return *status;
    }
    unknowns::Tolerances tolerances;
    if (const auto wrong = readTolerances(given, tolerances)) {
        say("{}\n", *wrong);
        return wrongUsage;
    }
    auto ranged = unknowns::withRangesFor(std::get<design::Design>(loaded), purpose, tolerances);
    if (!ranged) {
        report(given.design, ranged.problems());
        return invalidDesign;
    }
    return std::move(ranged).value();
}

Answer<std::vector<Condition>> readConditions(const std::string& file) {
    if (file.empty()) {
        return std::vector<Condition>();
    }
    const auto text = readOrReport(file, study::largestClaims + 1);
    if (const int* status = std::get_if<int>(&text)) {
        return *status;
    }
    const auto claims = study::readClaims(std::get<std::string>(text));
    if (!claims) {
        report(file, claims.problems());
        return invalidDesign;
    }
    auto conditions = unknowns::conditionsOf(*claims);
    if (conditions.empty()) {
        say("{}: no published figure can be held against the results of the engines\n",
            printable(file));
        return notSolvable;
    }
    return conditions;
}

Answer<unknowns::Plan> readPlan(const BandsArguments& given, const design::Design& design) {
    const auto shard = readShard(given.part);
    if (!shard) {
        say("--part: \"{}\" is not I/N with 1 ≤ I ≤ N\n", printable(given.part));
        return wrongUsage;
    }
    const bool isRange = given.from || given.to || given.points;
    if (isRange && !(given.from && given.to && given.points)) {
        say("--from, --to and --points belong together\n");
        return wrongUsage;
    }
    unknowns::Plan plan;
    plan.samples = given.samples;
    plan.seed = static_cast<std::uint64_t>(given.seed);
    plan.part = *shard;
    plan.speeds = isRange ? study::evenlySpaced(*given.from, *given.to, *given.points)
                          : unknowns::usualSpeeds(design);
    return plan;
}

/// The engines of all parts that --join names.
Answer<Ensemble> join(const BandsArguments& given, const design::Design& design,
                      const exchange::PartPlan& part) {
    std::vector<std::string> texts;
    for (const std::string& folder : given.joined) {
        auto text = readOrReport(folder + "/samples.csv", largestTable);
        if (const int* status = std::get_if<int>(&text)) {
            return *status;
        }
        texts.push_back(std::move(std::get<std::string>(text)));
    }
    auto whole = unknowns::emptyEnsemble(design, part.plan);
    if (!whole) {
        report(given.design, whole.problems());
        return invalidDesign;
    }
    auto joined = exchange::joinedEnsemble(std::move(whole).value(), texts);
    if (!joined) {
        report("--join", joined.problems());
        return notSolvable;
    }
    return std::move(joined).value();
}

Answer<exchange::PartPlan> readPart(const std::string& folder) {
    const std::string file = folder + "/summary.json";
    const auto text = readOrReport(file, largestSummary);
    if (const int* status = std::get_if<int>(&text)) {
        return *status;
    }
    const auto part = exchange::readPartPlan(std::get<std::string>(text));
    if (!part) {
        report(file, part.problems());
        return fileFailure;
    }
    return *part;
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

/// What the computation and the searches gave, or the exit status.
Answer<BandsStudy> studied(const BandsArguments& given, const design::Design& design,
                           BandsStudy study, const unknowns::Plan& plan,
                           const std::vector<Condition>& conditions) {
    Progress progress;
    const auto ended = [&](const Problems& problems) {
        if (progress.isInterrupted()) {
            say("stopped; nothing was written\n");
            return static_cast<int>(interrupted);
        }
        report(given.design, problems);
        return static_cast<int>(problems.front().path.empty() ? wrongUsage : invalidDesign);
    };
    if (given.joined.empty()) {
        auto ensemble = unknowns::computeEnsemble(design, plan, progress);
        if (!ensemble) {
            return ended(ensemble.problems());
        }
        study.ensemble = std::move(ensemble).value();
    }
    if (study.ensemble.plan.part.of > 1) {
        return study;
    }
    const auto library = unknowns::statistics();
    if (!library) {
        return ended(library.problems());
    }
    auto decided =
        unknowns::decideAll(**library, study.ensemble, unknowns::principalResults(), progress);
    if (!decided) {
        return ended({Problem{"", LW_TEXT("cancelled")}});
    }
    study.decided = std::move(*decided);
    if (!conditions.empty()) {
        auto required = unknowns::whatWouldHaveToBeTrue(
            design, study.ensemble, conditions, {.seed = study.ensemble.plan.seed}, progress);
        if (!required) {
            return ended(required.problems());
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
        auto read = readPart(given.joined.front());
        if (const int* status = std::get_if<int>(&read)) {
            return *status;
        }
        part = std::get<exchange::PartPlan>(read);
        study.purpose = part->purpose;
    }
    const auto read = readDesign(given, study.purpose);
    if (const int* status = std::get_if<int>(&read)) {
        return *status;
    }
    const auto& design = std::get<design::Design>(read);
    study.title = design.title;
    const auto conditions = readConditions(given.claims);
    if (const int* status = std::get_if<int>(&conditions)) {
        return *status;
    }
    const auto plan = readPlan(given, design);
    if (const int* status = std::get_if<int>(&plan)) {
        return *status;
    }
    if (const auto problem = files::checkFolder(given.folder)) {
        report("--out", {*problem});
        return fileFailure;
    }
    if (part) {
        auto joined = join(given, design, *part);
        if (const int* status = std::get_if<int>(&joined)) {
            return *status;
        }
        study.ensemble = std::move(std::get<Ensemble>(joined));
    }
    const auto done = studied(given, design, std::move(study), std::get<unknowns::Plan>(plan),
                              std::get<std::vector<Condition>>(conditions));
    if (const int* status = std::get_if<int>(&done)) {
        return *status;
    }
    const auto& found = std::get<BandsStudy>(done);
    const std::filesystem::path inputs[] = {given.design, given.claims};
    if (const auto problem = exchange::writeBands(
            found, given.folder, std::span(inputs, given.claims.empty() ? 1 : 2))) {
        report("--out", {*problem});
        return fileFailure;
    }
    showFeasibility(found.ensemble);
    showDecisions(found);
    if (found.required) {
        showRequirement(found);
    }
    return cli::done;
}

} // namespace

void addBands(CLI::App& program, Action& action) {
    CLI::App* command = addCommand(program, "bands",
                                   "Results of a design of which not everything is known, as "
                                   "bands: what decides them, and what would have to be true for "
                                   "published figures to hold");
    const auto given = std::make_shared<BandsArguments>();
    addDesignFile(*command, given->design);
    addNumber(*command, "--samples", given->samples, 16, unknowns::mostSamples,
              "Engines to compute; 512 unless given");
    addNumber(*command, "--seed", given->seed, 0, 2147483647,
              "Another seed draws other engines; 1 unless given");
    addNumber(*command, "--from", given->from,
              "First speed of the curve [1/min]; 25 % of the design's unless given");
    addNumber(*command, "--to", given->to, "Last speed [1/min]; 130 % unless given");
    addNumber(*command, "--points", given->points, 3, 1000, "Number of speeds; 9 unless given");
    command
        ->add_option("--purpose", given->purpose,
                     "What the ranges stand for: unknown (what the design says is not certain), "
                     "scatter (of manufacture), free (what may still be chosen)")
        ->check(CLI::IsMember({"unknown", "scatter", "free"}));
    addNumbers(*command, "--tolerances", given->tolerances,
               "Of scatter: ± of a lobe's lift, a port edge, the clearance [mm]; 0.05,0.1,0.1 "
               "unless given");
    addNumbers(*command, "--growth", given->growth,
               "Of scatter, for a warm engine: distance of the tracks and length of a piston from "
               "roller to crown [mm], temperature of block, shaft and pistons [°C]");
    command
        ->add_option("--claims", given->claims,
                     "Published figures: say what would have to be true for them to hold")
        ->type_name("CLAIMS");
    command
        ->add_option("--part", given->part,
                     "Only part I of N (job arrays); put them together with --join")
        ->type_name("I/N");
    command
        ->add_option("--join", given->joined,
                     "Put together the folders that --part wrote, instead of computing")
        ->type_name("DIR");
    command->add_option("--out", given->folder, "Folder to write")->required()->type_name("DIR");
    command->callback([&action, given] { action = [given] { return computeBands(*given); }; });
}

} // namespace lobewright::cli
