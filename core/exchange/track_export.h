#pragma once

#include "core/design/design.h"
#include "core/monitor.h"
#include "core/result.h"

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

LW_TEXTS_OF(Core)

/// Files of one track for other programs and for the workshop.
namespace lobewright::exchange {

enum class ExportKind { step, stl, dxf, liftTable, cutterPath, inspection };

/// What people and programs call a kind.
struct ExportWords {
    ExportKind kind;
    std::string_view key;       ///< "cutter-path"
    TextId label;               ///< "Cutter path"
    std::string_view extension; ///< without the dot
    TextId help;                ///< one sentence
    bool takesTolerance, takesRadii, takesStep, takesCutter;
};
inline constexpr ExportWords exportWords[] = {
    {ExportKind::step, "step", LW_TEXT("Solid (STEP)"), "step",
     LW_TEXT("Closed solid for CAD; the track faces are B-splines."), true, false, false, false},
    {ExportKind::stl, "stl", LW_TEXT("Mesh (STL)"), "stl",
     LW_TEXT("Watertight triangles, binary, in millimetres."), true, false, false, false},
    {ExportKind::dxf, "dxf", LW_TEXT("Unrolled drawing (DXF)"), "dxf",
     LW_TEXT("Pitch curve and flanks unrolled from cylinders of chosen radii."), true, true, false,
     false},
    {ExportKind::liftTable, "csv", LW_TEXT("Lift table (CSV)"), "csv",
     LW_TEXT("Lift and its three derivatives over one revolution."), false, false, true, false},
    {ExportKind::cutterPath, "cutter-path", LW_TEXT("Cutter path (CSV)"), "csv",
     LW_TEXT("Rotary angle, axial and offset of a cutter whose axis is radial to the shaft."), true,
     false, true, true},
    {ExportKind::inspection, "inspection", LW_TEXT("Inspection points (CSV)"), "csv",
     LW_TEXT("Points and normals of the flanks, with the error of the planar approximation."),
     false, true, true, false},
};
const ExportWords& words(ExportKind kind);

struct ExportOptions {
    End end = End::inlet;
    ExportKind kind = ExportKind::step;
    /// Largest distance from the exact track [m]: of faces (STEP), chords (STL, DXF, cutter path).
    double tolerance = 1e-6;
    std::vector<double>
        radii; ///< cylinders [m]; empty: through both edges and middle of the roller
    /// Between rows [rad]. Absent: 0.5° (lift table), 5° (inspection), as the tolerance asks
    /// (cutter path).
    std::optional<double> step;
    std::optional<double> cutterRadius; ///< [m]; absent: that of the roller
    std::string origin = {};            ///< said in the file where its format allows; empty: not
};

/// "mine.lobewright.json, 2024-05-31": the design's file and today, for ExportOptions::origin.
std::string originOf(const std::filesystem::path& designFile);

/// The file's bytes. Errors: those of trackPart, of the kind, tolerance not within 0.01 µm … 1 mm
/// ("/tolerance_um"), cancelled (path ""). Paths of options are "/tolerance_um", "/radii_mm/0",
/// "/step_deg", "/cutter_radius_mm"; all others point into the design.
Result<std::string> exportTrack(const design::Design& design, const ExportOptions& options,
                                Monitor& monitor);

/// The same, written all or nothing. Empty: done.
Problems writeTrack(const design::Design& design, const ExportOptions& options,
                    const std::filesystem::path& file, Monitor& monitor);

} // namespace lobewright::exchange
