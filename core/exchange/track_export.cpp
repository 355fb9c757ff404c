#include "core/exchange/track_export.h"

#include "core/exchange/step_file.h"
#include "core/exchange/stl_file.h"
#include "core/exchange/track_drawing.h"
#include "core/exchange/track_mesh.h"
#include "core/exchange/track_part.h"
#include "core/exchange/track_tables.h"
#include "core/files/source_date.h"
#include "core/files/write_file.h"
#include "core/printable.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>

LW_TEXTS_OF(Core)

namespace lobewright::exchange {

namespace {

constexpr double finest = 1e-8, coarsest = 1e-3; // [m]

std::optional<Problem> checkTolerance(double tolerance) {
    if (tolerance >= finest * (1.0 - 1e-9) && tolerance <= coarsest * (1.0 + 1e-9)) {
        return std::nullopt;
    }
    return Problem{"/tolerance_um",
                   Message(LW_TEXT("tolerance is %1; it must lie within %2 and %3"),
                           Amount(tolerance, in::um, 6), Amount(finest, in::um, 6).bare(),
                           Amount(coarsest, in::um, 6))};
}

Result<std::string> mesh(const TrackPart& part, double tolerance, Monitor& monitor) {
    const auto made = trackMesh(part, tolerance, monitor);
    if (!made) {
        return made.problems();
    }
    return stlBytes(part, *made, tolerance);
}

Result<std::string> exported(const TrackPart& part, const ExportOptions& options,
                             Monitor& monitor) {
    switch (options.kind) {
    case ExportKind::step:
        return stepText(part, options.tolerance, monitor);
    case ExportKind::stl:
        return mesh(part, options.tolerance, monitor);
    case ExportKind::dxf:
        return trackDrawing(part, {options.radii, options.tolerance}, monitor);
    case ExportKind::liftTable:
        return liftTable(part, options.step.value_or(0.5 * units::degree), monitor);
    case ExportKind::cutterPath:
        return cutterTable(
            part,
            {options.cutterRadius.value_or(part.roller.radius), options.tolerance, options.step},
            monitor);
    case ExportKind::inspection:
        return inspectionTable(part, options.radii, options.step.value_or(5.0 * units::degree),
                               monitor);
    }
    return Problem{"", LW_TEXT("unknown kind of export")};
}

} // namespace

const ExportWords& words(ExportKind kind) {
    return *std::ranges::find(exportWords, kind, &ExportWords::kind);
}

std::string originOf(const std::filesystem::path& designFile) {
    return fmt::format("{}, {}", printable(designFile.filename().native()), files::dayOfFiles());
}

Result<std::string> exportTrack(const design::Design& design, const ExportOptions& options,
                                Monitor& monitor) {
    if (words(options.kind).takesTolerance) {
        if (auto problem = checkTolerance(options.tolerance)) {
            return *problem;
        }
    }
    auto part = trackPart(design, options.end);
    if (!part) {
        return part.problems();
    }
    TrackPart named = std::move(part).value();
    named.origin = options.origin;
    return exported(named, options, monitor);
}

Problems writeTrack(const design::Design& design, const ExportOptions& options,
                    const std::filesystem::path& file, Monitor& monitor) {
    const auto bytes = exportTrack(design, options, monitor);
    if (!bytes) {
        return bytes.problems();
    }
    if (!monitor.step(0.95, LW_TEXT("writing the file"))) {
        return {{"", LW_TEXT("cancelled")}};
    }
    if (auto problem = files::writeFile(file, *bytes)) {
        return {*problem};
    }
    return {};
}

} // namespace lobewright::exchange
