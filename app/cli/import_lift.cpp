#include "app/cli/command.h"
#include "app/cli/design_input.h"
#include "core/design/atomic_file.h"
#include "core/design/file.h"
#include "core/exchange/lift_import.h"
#include "core/units.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <cstdio>
#include <fstream>
#include <iterator>
#include <memory>
#include <sstream>

namespace lobewright::cli {

namespace {

using exchange::ImportedLift;
using units::degree;
using units::micrometre;
using units::millimetre;

struct ImportArguments {
    std::string design, table, track, file, residuals;
    double tolerance = 5.0; ///< [µm]
    exchange::ImportOptions options;
};

std::optional<std::string> readFile(const std::string& file) {
    std::ifstream stream(file, std::ios::binary);
    std::ostringstream text;
    text << stream.rdbuf();
    if (!stream || !text) {
        fmt::print(stderr, "{}: cannot be read\n", file);
        return std::nullopt;
    }
    return std::move(text).str();
}

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
    fmt::print("{} rows, {} lobe{} a turn, {} knots\n", lift.rows.size(), lift.pattern.lobes,
               lift.pattern.lobes == 1 ? "" : "s", knots.size());
    fmt::print("largest residual {:.3g} µm at {:.6g}°, root mean square {:.3g} µm\n",
               lift.largestResidual / micrometre, lift.angle / degree,
               lift.meanSquareRoot / micrometre);
}

/// Status done, or what went wrong after it has been said.
int write(const std::string& option, const std::string& file, const std::string& bytes) {
    if (const auto problem = design::writeAtomically(file, bytes)) {
        fmt::print(stderr, "{}: {}\n", option, problem->message);
        return wrongUsage;
    }
    return done;
}

int importInto(const ImportArguments& given) {
    const auto loaded = loadOrReport(given.design);
    if (const int* status = std::get_if<int>(&loaded)) {
        return *status;
    }
    const auto text = readFile(given.table);
    if (!text) {
        return wrongUsage;
    }
    exchange::ImportOptions options = given.options;
    options.tolerance = given.tolerance * micrometre;
    const auto lift = exchange::importLift(*text, options);
    if (!lift) {
        report(given.table, lift.problems());
        return wrongUsage;
    }
    show(*lift);
    if (!given.residuals.empty()) {
        if (const int status = write("--residuals", given.residuals, residualTable(*lift))) {
            return status;
        }
    }
    if (!lift->withinTolerance) {
        fmt::print(stderr,
                   "{}: {} knots do not come within {:.6g} µm; allow more knots or a wider "
                   "tolerance; nothing was written\n",
                   given.table, options.mostKnots, given.tolerance);
        return notSolvable;
    }
    auto design = std::get<design::Design>(loaded);
    if (given.track == name(End::inlet)) {
        design.tracks.inlet = lift->pattern;
    } else {
        design.tracks.exhaust = lift->pattern;
    }
    if (const Problems problems = design::validate(design); !problems.empty()) {
        report(given.file, problems);
        return invalidDesign;
    }
    return write("--out", given.file, design::writeDesign(design));
}

} // namespace

void addImportLift(CLI::App& program, Action& action) {
    CLI::App* command = addCommand(program, "import-lift",
                                   "Turn a table of angle and lift into knots of a design's track");
    const auto given = std::make_shared<ImportArguments>();
    addDesignFile(*command, given->design);
    command
        ->add_option(
            "TABLE", given->table,
            "Angle in degrees and lift in mm over one repetition of the pattern or a turn (CSV)")
        ->required();
    command
        ->add_option("--track", given->track,
                     "Which track: inlet (an exhaust track that is the same follows) or exhaust")
        ->required()
        ->check(CLI::IsMember({"inlet", "exhaust"}));
    command->add_option("--out", given->file, "Design file to write")
        ->required()
        ->type_name("FILE");
    command
        ->add_option("--tolerance", given->tolerance,
                     "Largest residual allowed in µm, above the noise of the table; 5 unless given")
        ->type_name("UM");
    command
        ->add_option("--lobes", given->options.lobes,
                     "Repetitions of the pattern a turn; from the table unless given")
        ->check(CLI::Range(1, 24));
    command->add_option("--knots", given->options.mostKnots, "Knots allowed; 120 unless given")
        ->check(CLI::Range(3, 500));
    command->add_option("--residuals", given->residuals, "Write the residual of every row here")
        ->type_name("FILE.csv");
    command->callback([&action, given] { action = [given] { return importInto(*given); }; });
}

} // namespace lobewright::cli
