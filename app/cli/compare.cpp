#include "app/cli/command.h"
#include "app/cli/design_input.h"
#include "app/cli/files.h"
#include "app/cli/number_option.h"
#include "app/cli/progress.h"
#include "app/cli/say.h"
#include "app/cli/table_command.h"
#include "core/reference/comparison.h"
#include "core/study/operating_points.h"
#include "core/units.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

namespace lobewright::cli {

namespace {

struct CompareArguments {
    std::string design;
    std::optional<double> speed, from, to; ///< [1/min]
    std::optional<int> points;
    std::string basis = std::string(study::basisWords[0].key);
    std::string file;
};

/// The speeds to compare at [rad/s].
std::vector<double> speedsOf(const CompareArguments& arguments, const design::Design& design) {
    auto speeds = readSpeeds(arguments.from, arguments.to, arguments.points)
                      .value_or(std::vector{
                          arguments.speed.value_or(design.running.speed / units::revPerMinute)});
    for (double& speed : speeds) {
        if (!(speed > 0.0)) {
            say("a speed of {} 1/min is not positive\n", speed);
            throw Refusal{wrongUsage};
        }
        speed *= units::revPerMinute;
    }
    return speeds;
}

int compareDesign(const CompareArguments& arguments) {
    const auto design = loadedDesign(arguments.design);
    const std::vector<double> speeds = speedsOf(arguments, design);
    const OutputFile out("--out", arguments.file, {arguments.design});
    out.check();
    const auto* word =
        std::ranges::find(study::basisWords, arguments.basis, &study::BasisWord::key);
    const auto compared = finished([&](Progress& progress) {
        return study::compareSpeeds(design, speeds, word->basis, progress);
    });
    if (!compared) {
        report(arguments.design, compared.problems());
        return compared.problems().front().path.empty() ? notSolvable : invalidDesign;
    }
    return out.write(study::comparisonCsv(*compared));
}

} // namespace

void addCompare(CLI::App& program, Action& action) {
    const auto [command, arguments] =
        newCommand(program, action, compareDesign, "compare",
                   "One design beside the same pistons on cranks and a conventional four-stroke");
    addDesignFile(command, arguments.design);
    auto* speed = addNumber(command, "--speed", arguments.speed, "Shaft speed [1/min]");
    addNumber(command, "--from", arguments.from, "First shaft speed [1/min]")->excludes(speed);
    addNumber(command, "--to", arguments.to, "Last shaft speed [1/min]")->excludes(speed);
    addNumber(command, "--points", arguments.points, 2, mostPoints,
              "Number of speeds, both ends included")
        ->excludes(speed);
    std::vector<std::string> bases;
    for (const study::BasisWord& word : study::basisWords) {
        bases.emplace_back(word.key);
    }
    command
        .add_option("--basis", arguments.basis,
                    "What is made equal between the design and the four-stroke; \"power\" "
                    "enlarges every engine to the power of the design")
        ->check(CLI::IsMember(bases))
        ->capture_default_str();
    addOutput(command, arguments.file, "Table to write", "FILE.csv");
}

} // namespace lobewright::cli
