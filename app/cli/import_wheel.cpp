#include "app/cli/command.h"
#include "app/cli/design_input.h"
#include "app/cli/files.h"
#include "app/cli/number_option.h"
#include "app/cli/say.h"
#include "core/design/file.h"
#include "core/exchange/wheel_table.h"
#include "core/printable.h"
#include "core/units.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <set>

namespace lobewright::cli {

namespace {

struct WheelArguments {
    std::string design, table, file;
    double pressure = 1.0;       ///< of reference [bar]
    double temperature = 298.15; ///< [K]
};

int importWheel(const WheelArguments& given) {
    auto design = loadedDesign(given.design);
    const std::string table = readInput(given.table, exchange::largestWheelTable + 1);
    const OutputFile out("--out", given.file, {given.design, given.table});
    out.check();
    const auto points = valueOf(exchange::readWheelTable(table), given.table, wrongUsage);
    if (design.gas.supply.kind != gas::SupplyKind::compressor) {
        say("{}: the air supply is no compressor; set /gas/supply/kind first\n",
            printable(given.design));
        return invalidDesign;
    }
    gas::Wheel& wheel = design.gas.supply.compressor.wheel;
    wheel.characteristic = gas::WheelCharacteristic::table;
    wheel.points = points;
    wheel.referencePressure = given.pressure * units::bar;
    wheel.referenceTemperature = given.temperature;
    if (const Problems problems = design::validate(design); !problems.empty()) {
        report(given.file, problems);
        return invalidDesign;
    }
    std::set<double> speeds;
    for (const gas::WheelPoint& point : points) {
        speeds.insert(point.speed);
    }
    put("{} points at {} speeds\n", points.size(), speeds.size());
    return out.write(design::writeDesign(design));
}

} // namespace

void addImportWheel(CLI::App& program, Action& action) {
    const auto [command, given] =
        newCommand(program, action, importWheel, "import-wheel",
                   "Turn measured points of a compressor wheel into those of a design");
    addDesignFile(command, given.design);
    command
        .add_option("TABLE", given.table,
                    "Corrected speed in rpm, corrected flow in kg/s, pressure ratio and "
                    "isentropic efficiency (CSV)")
        ->required();
    addOutput(command, given.file, "Design file to write");
    addNumber(command, "--reference-pressure", given.pressure,
              "To which the table is corrected, in bar; 1 unless given")
        ->type_name("BAR");
    addNumber(command, "--reference-temperature", given.temperature,
              "To which the table is corrected, in K; 298.15 unless given")
        ->type_name("K");
}

} // namespace lobewright::cli
