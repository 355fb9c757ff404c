#include "core/study/phase_map.h"

#include "app/cli/design_input.h"
#include "app/cli/table_command.h"
#include "core/units.h"

#include <CLI/CLI.hpp>

#include <map>

namespace lobewright::cli {

namespace {

struct PhaseMapArguments {
    DesignArguments design;
    RangeArguments range;
    study::PhaseParameter over = study::PhaseParameter::exhaustLead;
};

int mapPhase(const PhaseMapArguments& arguments) {
    const auto design = loadedDesign(arguments.design);
    const auto& range = arguments.range;
    const auto compute = [&](const study::Shard& shard, Monitor& monitor,
                             const study::PointSink& sink) {
        return study::phaseMap(design, arguments.over, range.from, range.to, range.points, shard,
                               monitor, sink);
    };
    return writeTable(
        arguments.design.file, range,
        {study::phaseMapParameter(arguments.over), study::phaseMapFigures(), compute});
}

} // namespace

void addPhaseMap(CLI::App& program, Action& action) {
    const auto [command, arguments] = newCommand(
        program, action, mapPhase, "phase-map",
        "One design over its exhaust lead or adjuster setting; write a table. Stopped by "
        "Ctrl-C, the points that are done are kept in NAME.unfinished.csv");
    addDesignArguments(command, arguments.design);
    addRangeArguments(command, arguments.range, "shaft °");
    const std::map<std::string, study::PhaseParameter> names = {
        {"lead", study::PhaseParameter::exhaustLead},
        {"adjuster", study::PhaseParameter::adjuster}};
    command.add_option("--over", arguments.over, "What is turned: lead (default) or adjuster")
        ->transform(CLI::CheckedTransformer(names))
        ->option_text("lead|adjuster");
}

} // namespace lobewright::cli
