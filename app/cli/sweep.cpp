#include "app/cli/design_input.h"
#include "app/cli/table_command.h"
#include "core/study/speed_sweep.h"

#include <CLI/CLI.hpp>

namespace lobewright::cli {

namespace {

struct SweepArguments {
    std::string design;
    RangeArguments range;
};

int sweepDesign(const SweepArguments& arguments) {
    const auto design = loadedDesign(arguments.design);
    const auto& range = arguments.range;
    const auto compute = [&](const study::Shard& shard, Monitor& monitor,
                             const study::PointSink& sink) {
        return study::speedSweep(design, range.from, range.to, range.points, shard, monitor, sink);
    };
    return writeTable(arguments.design, range,
                      {study::speedSweepParameter(), study::speedSweepFigures(design), compute});
}

} // namespace

void addSweep(CLI::App& program, Action& action) {
    const auto [command, arguments] = newCommand(
        program, action, sweepDesign, "sweep",
        "One design at many speeds; write a table. Stopped by Ctrl-C, the points that are "
        "done are kept in NAME.unfinished.csv");
    addDesignFile(command, arguments.design);
    addRangeArguments(command, arguments.range, "1/min");
}

} // namespace lobewright::cli
