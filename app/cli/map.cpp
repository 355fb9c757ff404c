#include "app/cli/design_input.h"
#include "app/cli/files.h"
#include "app/cli/number_option.h"
#include "app/cli/table_command.h"
#include "core/study/load_map.h"

#include <CLI/CLI.hpp>

namespace lobewright::cli {

namespace {

struct MapArguments {
    std::string design;
    study::MapSteps speeds, loads;
    std::string file;
};

int mapLoad(const MapArguments& arguments) {
    const auto design = loadedDesign(arguments.design);
    RangeArguments range;
    range.file = arguments.file;
    const auto compute = [&](const study::Shard&, Monitor& monitor, const study::PointSink& sink) {
        return study::loadMap(design, arguments.speeds, arguments.loads, monitor, sink);
    };
    return writeTable(arguments.design, range,
                      {study::loadMapParameter(), study::loadMapColumns(design), compute});
}

} // namespace

void addMap(CLI::App& program, Action& action) {
    const auto [command, arguments] = newCommand(
        program, action, mapLoad, "map",
        "One design over speed and load; write a table. Stopped by Ctrl-C, the points that are "
        "done are kept in NAME.unfinished.csv");
    addDesignFile(command, arguments.design);
    addSteps(command, "--speeds", arguments.speeds, "Shaft speeds [1/min], ends included")
        ->required();
    addSteps(command, "--loads", arguments.loads,
             "Loads from 0 to 1, ends included, set as load_by of the design says")
        ->required();
    addOutput(command, arguments.file, "Table to write", "FILE.csv");
}

} // namespace lobewright::cli
