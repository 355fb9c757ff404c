#pragma once

#include "core/exchange/track_part.h"
#include "core/monitor.h"
#include "core/result.h"

#include <Eigen/Core>

#include <array>
#include <cstddef>
#include <cstdint>
#include <vector>

namespace lobewright::exchange {

/// A closed surface of triangles.
struct Mesh {
    Eigen::Matrix3Xd vertices; ///< [m]
    /// Indices of vertices, counterclockwise seen from outside.
    std::vector<std::array<std::uint32_t, 3>> triangles;
};

/// No mesh has more triangles, about [of the flanks; the walls add some]: 200 MB of STL.
inline constexpr std::size_t mostTriangles = 4000000;

/// The track as triangles whose corners lie on the exact surface and which stray from it by no more
/// than `chordError` [m]. Watertight: every edge belongs to two triangles.
/// Errors: chord error below 0.01 µm or too many triangles ("/tolerance_um"), cancelled (path "").
Result<Mesh> trackMesh(const TrackPart& part, double chordError, Monitor& monitor);

} // namespace lobewright::exchange
