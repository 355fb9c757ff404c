#include "app/cli/design_input.h"
#include "app/cli/table_command.h"
#include "core/study/speed_sweep.h"

#include <CLI/CLI.hpp>

#include <memory>

namespace lobewright::cli {

namespace {

struct SweepArguments {
    std::string design;
    RangeArguments range;
};

int sweepDesign(const SweepArguments& arguments) {
    const auto loaded = loadOrReport(arguments.design);
    if (const int* status = std::get_if<int>(&loaded)) {
        return *status;
    }
    const auto& range = arguments.range;
    const auto compute = [&](const study::Shard& shard, Monitor& monitor,
                             const study::PointSink& sink) {
        return study::speedSweep(std::get<design::Design>(loaded), range.from, range.to,
                                 range.points, shard, monitor, sink);
    };
    return writeTable(arguments.design, range,
                      {study::speedSweepParameter(),
                       study::speedSweepFigures(std::get<design::Design>(loaded)), compute});
}

} // namespace

void addSweep(CLI::App& program, Action& action) {
    CLI::App* command = addCommand(
        program, "sweep",
        "One design at many speeds; write a table. Stopped by Ctrl-C, the points that are "
        "done are kept in NAME.unfinished.csv");
    const auto arguments = std::make_shared<SweepArguments>();
    addDesignFile(*command, arguments->design);
    addRangeArguments(*command, arguments->range, "1/min");
    command->callback(
        [&action, arguments] { action = [arguments] { return sweepDesign(*arguments); }; });
}

} // namespace lobewright::cli
