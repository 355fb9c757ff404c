#pragma once

#include "core/exchange/track_part.h"
#include "core/monitor.h"
#include "core/result.h"

#include <optional>
#include <string>
#include <vector>

/// Tables of one track as text: comment lines that begin with "#", a line of names, rows; fields
/// separated by commas, lines ended by CR LF.
namespace lobewright::exchange {

/// Lift and its derivatives per degree over one turn, from pattern angle 0 in steps [rad]. At a
/// junction the derivatives are those after it.
/// Errors: step not within 0.001° … 90° ("/step_deg"), cancelled (path "").
Result<std::string> liftTable(const TrackPart& part, double step, Monitor& monitor);

struct CutterTableOptions {
    double cutterRadius = 0.0;  ///< [m]
    double tolerance = 1e-6;    ///< between rows, when both axes go straight from row to row [m]
    std::optional<double> step; ///< fixed steps of the pattern angle instead [rad]
};

/// Path of a cutter whose axis is radial to the shaft, flank after flank over one turn: rotary
/// angle, axial, offset. Names the error that a radius other than the roller's leaves at the edges.
/// Errors: cutter radius not positive, too large for a hollow stretch, or for the groove of a
/// closed track ("/cutter_radius_mm"); tolerance or step out of range; cancelled (path "").
Result<std::string> cutterTable(const TrackPart& part, const CutterTableOptions& options,
                                Monitor& monitor);

/// Points and normals of the flanks on cylinders of these radii [m] (empty: through both edges and
/// the middle of the roller), in steps of the pattern angle [rad], with the distance that the
/// planar approximation (the cylinder unrolled, the pitch curve offset by r, wrapped again) lies
/// outside the exact flank. Errors: a radius outside the face ("/radii_mm/0"), step ("/step_deg"),
/// cancelled (path "").
Result<std::string> inspectionTable(const TrackPart& part, std::vector<double> radii, double step,
                                    Monitor& monitor);

/// The radii where nothing else is asked for: both edges and the middle of the roller [m].
std::vector<double> usualRadii(const TrackPart& part);

/// Problems of radii that lie outside the face; paths "/radii_mm/0", ….
Problems checkRadii(const TrackPart& part, const std::vector<double>& radii);

} // namespace lobewright::exchange
