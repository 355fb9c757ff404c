#include "app/cli/design_input.h"
#include "app/cli/steps_option.h"
#include "app/cli/table_command.h"
#include "core/study/load_map.h"

#include <CLI/CLI.hpp>

#include <memory>

namespace lobewright::cli {

namespace {

struct MapArguments {
    std::string design;
    study::MapSteps speeds, loads;
    std::string file;
};

int mapLoad(const MapArguments& arguments) {
    const auto loaded = loadOrReport(arguments.design);
    if (const int* status = std::get_if<int>(&loaded)) {
        return *status;
    }
    RangeArguments range;
    range.file = arguments.file;
    const auto compute = [&](const study::Shard&, Monitor& monitor, const study::PointSink& sink) {
        return study::loadMap(std::get<design::Design>(loaded), arguments.speeds, arguments.loads,
                              monitor, sink);
    };
    return writeTable(arguments.design, range,
                      {study::loadMapParameter(),
                       study::loadMapColumns(std::get<design::Design>(loaded)), compute});
}

} // namespace

void addMap(CLI::App& program, Action& action) {
    CLI::App* command = addCommand(
        program, "map",
        "One design over speed and load; write a table. Stopped by Ctrl-C, the points that are "
        "done are kept in NAME.unfinished.csv");
    const auto arguments = std::make_shared<MapArguments>();
    addDesignFile(*command, arguments->design);
    addSteps(*command, "--speeds", arguments->speeds, "Shaft speeds [1/min], ends included")
        ->required();
    addSteps(*command, "--loads", arguments->loads,
             "Loads from 0 to 1, ends included, set as load_by of the design says")
        ->required();
    command->add_option("--out", arguments->file, "Table to write")
        ->required()
        ->type_name("FILE.csv");
    command->callback(
        [&action, arguments] { action = [arguments] { return mapLoad(*arguments); }; });
}

} // namespace lobewright::cli
