#include "app/cli/command.h"
#include "app/cli/design_input.h"
#include "app/cli/files.h"
#include "app/cli/number_option.h"
#include "app/cli/progress.h"
#include "app/cli/say.h"
#include "core/exchange/track_export.h"
#include "core/printable.h"
#include "core/units.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <set>

namespace lobewright::cli {

namespace {

using exchange::ExportOptions;
using exchange::ExportWords;

struct ExportArguments {
    std::string design, track, kind, file;
    std::optional<double> tolerance, cutterRadius, step; ///< [µm], [mm], [degrees]
    std::vector<double> radii;                           ///< [mm]
};

/// Options that this kind has no use for would mislead whoever gave them.
std::optional<std::string> uselessOption(const ExportArguments& given, const ExportWords& kind) {
    const std::pair<const char*, bool> options[] = {
        {"--tolerance", given.tolerance && !kind.takesTolerance},
        {"--radii", !given.radii.empty() && !kind.takesRadii},
        {"--step", given.step && !kind.takesStep},
        {"--cutter-radius", given.cutterRadius && !kind.takesCutter}};
    for (const auto& [name, isUseless] : options) {
        if (isUseless) {
            return fmt::format("{}: not used by --kind {}", name, kind.key);
        }
    }
    return std::nullopt;
}

ExportOptions optionsOf(const ExportArguments& given, const ExportWords& kind) {
    ExportOptions options;
    options.end = given.track == name(End::inlet) ? End::inlet : End::exhaust;
    options.kind = kind.kind;
    options.origin = exchange::originOf(given.design);
    if (given.tolerance) {
        options.tolerance = *given.tolerance * units::micrometre;
    }
    if (given.cutterRadius) {
        options.cutterRadius = *given.cutterRadius * units::millimetre;
    }
    if (given.step) {
        options.step = *given.step * units::degree;
    }
    for (double radius : given.radii) {
        options.radii.push_back(radius * units::millimetre);
    }
    return options;
}

/// The option that a problem is about; empty: it is about the design.
std::string optionOf(const Problem& problem) {
    const std::pair<const char*, const char*> options[] = {
        {"/tolerance_um", "--tolerance"},
        {"/radii_mm", "--radii"},
        {"/step_deg", "--step"},
        {"/cutter_radius_mm", "--cutter-radius"}};
    for (const auto& [path, option] : options) {
        if (problem.path.starts_with(path)) {
            return option;
        }
    }
    return {};
}

int refuse(const std::string& file, const Problems& problems) {
    bool isUsage = true;
    for (const Problem& problem : problems) {
        const std::string option = optionOf(problem);
        isUsage = isUsage && !option.empty();
        if (!option.empty()) {
            say("{}: {}\n", option, problem.message.english());
        } else {
            say("{}: {}{}{}\n", printable(file), printable(problem.path),
                problem.path.empty() ? "" : ": ", printable(problem.message.english()));
        }
    }
    return isUsage ? wrongUsage : notSolvable;
}

int exportDesign(const ExportArguments& given) {
    const ExportWords& kind =
        *std::ranges::find(exchange::exportWords, std::string_view(given.kind), &ExportWords::key);
    if (const auto useless = uselessOption(given, kind)) {
        say("{}\n", *useless);
        return wrongUsage;
    }
    const auto design = loadedDesign(given.design);
    const OutputFile out("--out", given.file, {given.design});
    out.check();
    const auto bytes = finished([&](Progress& progress) {
        return exchange::exportTrack(design, optionsOf(given, kind), progress);
    });
    if (!bytes) {
        return refuse(given.design, bytes.problems());
    }
    return out.write(*bytes);
}

} // namespace

void addExport(CLI::App& program, Action& action) {
    const auto [command, given] = newCommand(program, action, exportDesign, "export",
                                             "Write one track for CAD, the workshop or inspection");
    std::set<std::string> kinds;
    std::string help = "What to write:";
    for (const ExportWords& kind : exchange::exportWords) {
        kinds.emplace(kind.key);
        help += fmt::format("\n{}: {}", kind.key, kind.help.text);
    }
    addDesignFile(command, given.design);
    command.add_option("--track", given.track, "Which track: inlet or exhaust")
        ->required()
        ->check(CLI::IsMember({"inlet", "exhaust"}));
    command.add_option("--kind", given.kind, help)->required()->check(CLI::IsMember(kinds));
    addOutput(command, given.file, "File to write");
    addNumber(command, "--tolerance", given.tolerance,
              "Largest distance from the exact track in µm, 1 unless given (step, stl, dxf, "
              "cutter-path)")
        ->type_name("UM");
    addNumbers(command, "--radii", given.radii,
               "Cylinders about the shaft in mm, separated by commas; both edges and the middle of "
               "the roller unless given (dxf, inspection)")
        ->type_name("MM,MM");
    addNumber(command, "--step", given.step,
              "Degrees between rows (csv 0.5, inspection 5 unless given; cutter-path: as the "
              "tolerance asks)")
        ->type_name("DEG");
    addNumber(command, "--cutter-radius", given.cutterRadius,
              "Radius of the cutter in mm, that of the roller unless given (cutter-path)")
        ->type_name("MM");
}

} // namespace lobewright::cli
