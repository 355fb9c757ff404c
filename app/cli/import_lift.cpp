#include "app/cli/command.h"
#include "app/cli/design_input.h"
#include "app/cli/files.h"
#include "app/cli/number_option.h"
#include "app/cli/say.h"
#include "core/design/file.h"
#include "core/exchange/lift_import.h"
#include "core/printable.h"
#include "core/units.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <iterator>

namespace lobewright::cli {

namespace {

using exchange::ImportedLift;
using units::degree;
using units::micrometre;
using units::millimetre;

struct ImportArguments {
    std::string design, table, track, file, residuals;
    double tolerance = 0.0; ///< [µm]; 0: as proposed
    exchange::ImportOptions options;
};

std::string residualTable(const ImportedLift& lift) {
    std::string text = "angle_deg,lift_mm,residual_um\r\n";
    for (const auto& row : lift.rows) {
        fmt::format_to(std::back_inserter(text), "{:.9g},{:.9g},{:.4f}\r\n", row.angle / degree,
                       row.lift / millimetre, row.residual / micrometre);
    }
    return text;
}

void show(const ImportedLift& lift) {
    const auto& knots = std::get<motion::KnotShape>(lift.pattern.shape).knots;
    put("{} rows, {} lobe{} a turn, {} knots\n", lift.rows.size(), lift.pattern.lobes,
        lift.pattern.lobes == 1 ? "" : "s", knots.size());
    put("largest residual {:.3g} µm at {:.6g}°, root mean square {:.3g} µm\n",
        lift.largestResidual / micrometre, lift.angle / degree, lift.meanSquareRoot / micrometre);
    double highest = 0.0;
    for (const auto& row : lift.rows) {
        highest = std::max(highest, std::abs(row.acceleration));
    }
    put("noise of the table {:.3g} µm, tolerance {:.3g} µm; acceleration up to {:.4g} mm/rad², of "
        "which noise about {:.3g} mm/rad²\n",
        lift.noise / micrometre, lift.tolerance / micrometre, highest / millimetre,
        lift.accelerationNoise / millimetre);
}

int importLift(const ImportArguments& given) {
    auto design = loadedDesign(given.design);
    const std::string table = readInput(given.table, exchange::largestLiftTable + 1);
    if (given.residuals == given.file) {
        say("--residuals: names the same file as --out\n");
        return wrongUsage;
    }
    const OutputFile out("--out", given.file, {given.design, given.table});
    const OutputFile residuals("--residuals", given.residuals,
                               {given.design, given.table, given.file});
    out.check();
    if (!given.residuals.empty()) {
        residuals.check();
    }
    exchange::ImportOptions options = given.options;
    options.tolerance = given.tolerance * micrometre;
    const auto lift = valueOf(exchange::importLift(table, options), given.table, wrongUsage);
    show(lift);
    if (!given.residuals.empty()) {
        residuals.write(residualTable(lift));
    }
    if (!lift.withinTolerance) {
        say("{}: {} knots do not come within {:.6g} µm; allow more knots or a wider "
            "tolerance; nothing was written\n",
            printable(given.table), options.mostKnots, lift.tolerance / micrometre);
        return notSolvable;
    }
    if (given.track == name(End::inlet)) {
        design.tracks.inlet = lift.pattern;
    } else if (design.mechanism.isOneSided()) {
        say("{}: a one-sided engine has no exhaust track\n", printable(given.design));
        return invalidDesign;
    } else {
        design.tracks.exhaust = lift.pattern;
    }
    if (const Problems problems = design::validate(design); !problems.empty()) {
        report(given.file, problems);
        return invalidDesign;
    }
    return out.write(design::writeDesign(design));
}

} // namespace

void addImportLift(CLI::App& program, Action& action) {
    const auto [command, given] =
        newCommand(program, action, importLift, "import-lift",
                   "Turn a table of angle and lift into knots of a design's track");
    addDesignFile(command, given.design);
    command
        .add_option(
            "TABLE", given.table,
            "Angle in degrees and lift in mm over one repetition of the pattern or a turn (CSV)")
        ->required();
    command
        .add_option("--track", given.track,
                    "Which track: inlet (an exhaust track that is the same follows) or exhaust")
        ->required()
        ->check(CLI::IsMember({"inlet", "exhaust"}));
    addOutput(command, given.file, "Design file to write");
    addNumber(command, "--tolerance", given.tolerance,
              "Largest residual allowed in µm; unless given what the noise measured in the table "
              "explains, at least 5")
        ->type_name("UM");
    constexpr int mostLobes = 24, fewestKnots = 3, mostKnots = 500;
    addNumber(command, "--lobes", given.options.lobes, 1, mostLobes,
              "Repetitions of the pattern a turn; from the table unless given");
    addNumber(command, "--knots", given.options.mostKnots, fewestKnots, mostKnots,
              "Knots allowed; 120 unless given");
    command.add_option("--residuals", given.residuals, "Write the residual of every row here")
        ->type_name("FILE.csv");
}

} // namespace lobewright::cli
