#include "ui/scene/solid/solid_mesh.h"

#include "core/mechanism/clearances.h"
#include "core/track/surface.h"
#include "core/units.h"
#include "ui/scene/solid/solid_points.h"

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {

constexpr int aroundTrack = 540; ///< angles of the track surface
constexpr int acrossTrack = 5;   ///< stations over its width
constexpr int aroundTube = 48;
} // namespace

void SolidMesh::triangle(const QVector3D (&points)[3], const QVector3D (&normals)[3]) {
    // Counter-clockwise seen from outside: what is turned away need not be drawn.
    const QVector3D face = QVector3D::crossProduct(points[1] - points[0], points[2] - points[0]);
    const bool isTurned = QVector3D::dotProduct(face, normals[0] + normals[1] + normals[2]) < 0.0F;
    for (const int i : {0, isTurned ? 2 : 1, isTurned ? 1 : 2}) {
        for (const QVector3D& v : {points[i], normals[i]})
            corners.insert(corners.end(), {v.x(), v.y(), v.z()});
    }
}

void SolidMesh::quad(const QVector3D (&points)[4], const QVector3D (&normals)[4]) {
    triangle({points[0], points[1], points[2]}, {normals[0], normals[1], normals[2]});
    triangle({points[0], points[2], points[3]}, {normals[0], normals[2], normals[3]});
}

void SolidMesh::append(const SolidMesh& other) {
    corners.insert(corners.end(), other.corners.begin(), other.corners.end());
}

double drawnPistonLength(const mechanism::OpposedPair& pair) {
    const auto& mechanism = pair.mechanism();
    return mechanism.piston ? mechanism.piston->length : 1.1 * mechanism.bore;
}

SolidSizes solidSizes(const mechanism::OpposedPair& pair) {
    const auto& mechanism = pair.mechanism();
    SolidSizes sizes;
    sizes.pistonLength = drawnPistonLength(pair);
    sizes.trackWidth = 1.4 * mechanism.roller.width;
    if (mechanism.closedTrack) { // the piston stays clear of the inner rim
        sizes.pullThickness = 0.6 * mechanism.roller.radius;
    }
    sizes.axisDistance =
        mechanism::crownToRollerAxis(pair, sizes.pistonLength, sizes.pullThickness);
    const double free =
        mechanism.pitchRadius - std::max(0.55 * mechanism.bore, 0.5 * sizes.trackWidth);
    sizes.shaftRadius = std::max(0.05 * mechanism.pitchRadius, 0.4 * free);
    for (const End end : bothEnds) {
        const double out = 0.5 * mechanism.clearance + pair.curve(end).stroke() + pair.shift(end) +
                           sizes.axisDistance;
        sizes.rollerOrigin[end] = end == End::inlet ? -out : out;
    }
    const double reach = std::abs(sizes.rollerOrigin.inlet) + 4.2 * mechanism.roller.radius;
    sizes.shaftLow = -reach;
    // No second track to carry: the shaft ends behind the heads.
    sizes.shaftHigh = mechanism.isOneSided() ? 0.5 * mechanism.clearance + mechanism.bore : reach;
    return sizes;
}

double headTop(const mechanism::OpposedPair& pair) {
    return 0.5 * pair.mechanism().clearance + 0.225 * pair.mechanism().bore;
}

namespace {

/// A flank, and apart from it what stands between it and the plane z = `back`, with both rims;
/// `outward`: the direction from flank to plane.
void addFlank(TrackMesh& mesh, const track::Surface& flank, double back, double outward) {
    const auto point = [&](int i, int j) {
        const auto p = flank.points.col(i + j * (aroundTrack + 1));
        return vector(p.x(), p.y(), p.z());
    };
    // Away from the material, whichever way the surface counts.
    const auto normal = [&](int i, int j) {
        const auto n = flank.normals.col(i + j * (aroundTrack + 1));
        const double sign = n.z() * outward > 0.0 ? -1.0 : 1.0;
        return vector(sign * n.x(), sign * n.y(), sign * n.z());
    };
    const auto atBack = [&](const QVector3D& p) { return vector(p.x(), p.y(), back); };
    const auto radial = [](const QVector3D& p, float sign) {
        return QVector3D(sign * p.x(), sign * p.y(), 0.0F).normalized();
    };
    const QVector3D behind = vector(0.0, 0.0, outward);
    for (int i = 0; i < aroundTrack; ++i) {
        for (int j = 0; j + 1 < acrossTrack; ++j) {
            mesh.running.quad(
                {point(i, j), point(i + 1, j), point(i + 1, j + 1), point(i, j + 1)},
                {normal(i, j), normal(i + 1, j), normal(i + 1, j + 1), normal(i, j + 1)});
        }
        for (const int j : {0, acrossTrack - 1}) {
            const QVector3D a = point(i, j), b = point(i + 1, j);
            const float sign = j == 0 ? -1.0F : 1.0F;
            mesh.blank.quad({a, b, atBack(b), atBack(a)},
                            {radial(a, sign), radial(b, sign), radial(b, sign), radial(a, sign)});
        }
        const QVector3D a = atBack(point(i, 0)), b = atBack(point(i + 1, 0));
        const QVector3D c = atBack(point(i + 1, acrossTrack - 1)),
                        d = atBack(point(i, acrossTrack - 1));
        mesh.blank.quad({a, b, c, d}, {behind, behind, behind, behind});
    }
}

} // namespace

TrackMesh trackMesh(const mechanism::OpposedPair& pair, const SolidSizes& sizes, End end) {
    const auto& mechanism = pair.mechanism();
    const double r = mechanism.roller.radius;
    const double lead = pair.trackAngle(end, 0.0) - pair.trackAngle(End::inlet, 0.0);
    const track::Placement placement{end, lead, sizes.rollerOrigin[end]};
    const double half = 0.5 * sizes.trackWidth;
    const Samples phi = Samples::LinSpaced(aroundTrack + 1, 0.0, units::turn);
    const Samples rho =
        Samples::LinSpaced(acrossTrack, mechanism.pitchRadius - half, mechanism.pitchRadius + half);
    const auto flank = [&](track::Flank which) {
        return track::surface(pair.curve(end), phi, rho, r, which, placement);
    };
    const double outward = end == End::inlet ? -1.0 : 1.0;
    const double back = placement.origin + outward * 2.0 * r;
    TrackMesh mesh;
    addFlank(mesh, flank(track::Flank::push), back, outward);
    if (mechanism.closedTrack) {
        const double front =
            placement.axial(pair.curve(end).stroke()) - outward * (r + sizes.pullThickness);
        addFlank(mesh, flank(track::Flank::pull), front, -outward);
        const double floor = mechanism.pitchRadius - half;
        mesh.blank.append(tubeMesh(floor - 0.5 * mechanism.roller.width, floor,
                                   std::min(back, front), std::max(back, front), 0.0, units::turn));
    }
    return mesh;
}

SolidMesh tubeMesh(double inner, double outer, double z1, double z2, double from, double to) {
    SolidMesh mesh;
    const bool whole = to - from > units::turn - 1e-6;
    const int steps =
        std::max(6, static_cast<int>(std::lround(aroundTube * (to - from) / units::turn)));
    const QVector3D low = vector(0, 0, -1), high = vector(0, 0, 1);
    for (int i = 0; i < steps; ++i) {
        const double a = from + (to - from) * i / steps, b = from + (to - from) * (i + 1) / steps;
        const QVector3D na = polar(1.0, a, 0.0), nb = polar(1.0, b, 0.0);
        mesh.quad(
            {polar(outer, a, z1), polar(outer, b, z1), polar(outer, b, z2), polar(outer, a, z2)},
            {na, nb, nb, na});
        if (inner > 0.0) {
            mesh.quad({polar(inner, a, z1), polar(inner, b, z1), polar(inner, b, z2),
                       polar(inner, a, z2)},
                      {-na, -nb, -nb, -na});
        }
        for (const double z : {z1, z2}) {
            const QVector3D n = z == z1 ? low : high;
            mesh.quad(
                {polar(inner, a, z), polar(inner, b, z), polar(outer, b, z), polar(outer, a, z)},
                {n, n, n, n});
        }
    }
    if (whole)
        return mesh;
    for (const double angle : {from, to}) { // the cut faces of a part
        const double sign = angle == from ? -1.0 : 1.0;
        const QVector3D n = polar(sign, angle + 0.25 * units::turn, 0.0);
        mesh.quad({polar(inner, angle, z1), polar(outer, angle, z1), polar(outer, angle, z2),
                   polar(inner, angle, z2)},
                  {n, n, n, n});
    }
    return mesh;
}

SolidMesh boxMesh(const QVector3D& low, const QVector3D& high) {
    SolidMesh mesh;
    for (int axis = 0; axis < 3; ++axis) {
        const int u = (axis + 1) % 3, v = (axis + 2) % 3;
        for (const float side : {0.0F, 1.0F}) {
            QVector3D corners[4];
            for (int k = 0; k < 4; ++k) {
                corners[k][axis] = side > 0.0F ? high[axis] : low[axis];
                corners[k][u] = k == 1 || k == 2 ? high[u] : low[u];
                corners[k][v] = k >= 2 ? high[v] : low[v];
            }
            QVector3D out;
            out[axis] = side > 0.0F ? 1.0F : -1.0F;
            mesh.quad(corners, {out, out, out, out});
        }
    }
    return mesh;
}

CrossheadMesh crossheadMesh(const mechanism::OpposedPair& pair, const SolidSizes& sizes) {
    const auto& mechanism = pair.mechanism();
    const double b = 0.5 * mechanism.bore, r = mechanism.roller.radius;
    const double axis = sizes.axisDistance, skirt = sizes.pistonLength;
    const bool isClosed = mechanism.closedTrack;
    const double plate = isClosed ? skirt + 0.16 * r : axis - 1.05 * r;
    const double armIn =
        isClosed ? 0.5 * sizes.trackWidth + 0.08 * r : 0.5 * mechanism.roller.width + 0.08 * r;
    const double armOut = armIn + 0.34 * r, wide = 0.42 * r;
    CrossheadMesh mesh;
    mesh.steel = tubeMesh(0.0, 0.28 * b, 0.2 * b, skirt, 0.0, units::turn);
    mesh.steel.append(boxMesh(vector(-0.97 * b, -wide, skirt + 0.01 * r),
                              vector(std::max(0.97 * b, armOut), wide, plate)));
    mesh.steel.append(boxMesh(vector(armIn, -wide, plate), vector(armOut, wide, axis + 0.46 * r)));
    if (!isClosed) {
        mesh.steel.append(
            boxMesh(vector(-armOut, -wide, plate), vector(-armIn, wide, axis + 0.46 * r)));
    }
    // The pin is radial to the shaft.
    const double pin = 0.24 * r;
    SolidMesh bolt = tubeMesh(0.0, pin, isClosed ? 0.0 : -armOut - 0.06 * r, armOut + 0.06 * r, 0.0,
                              units::turn);
    for (std::size_t i = 0; i < bolt.corners.size(); i += 3)
        std::swap(bolt.corners[i], bolt.corners[i + 2]);
    for (std::size_t i = 0; i < bolt.corners.size(); i += 6)
        bolt.corners[i + 2] += static_cast<float>(axis);
    mesh.bronze = bolt;
    for (const double side : {-1.0, 1.0}) {
        const double inside = side * 0.86 * b, outside = side * 0.995 * b;
        mesh.bronze.append(boxMesh(vector(std::min(inside, outside), -0.9 * wide, skirt + 0.02 * r),
                                   vector(std::max(inside, outside), 0.9 * wide, skirt + 1.5 * r)));
    }
    return mesh;
}

SolidMesh rollerMarks(const track::Roller& roller) {
    constexpr int count = 3;
    constexpr double half = 7.0 * units::degree;
    const double r = roller.radius, w = 0.5 * roller.width, proud = 0.012 * r;
    SolidMesh mesh;
    for (int i = 0; i < count; ++i) {
        const double middle = units::turn * i / count;
        mesh.append(
            tubeMesh(0.62 * r, r + proud, -w - proud, w + proud, middle - half, middle + half));
    }
    return mesh;
}

SolidMesh ringMesh(const ShownEngine& engine) {
    const auto& mechanism = engine.design().mechanism;
    const double b = 0.5 * mechanism.bore;
    SolidMesh mesh;
    if (!mechanism.piston)
        return mesh;
    const auto& rings = engine.design().friction.rings;
    for (std::size_t i = 0; i < mechanism.piston->ringDistances.size(); ++i) {
        const double from = mechanism.piston->ringDistances[i];
        const double high = i < rings.size() ? rings[i].height : 0.02 * mechanism.bore;
        mesh.append(tubeMesh(0.96 * b, 0.996 * b, from, from + high, 0.0, units::turn));
    }
    return mesh;
}

} // namespace lobewright::ui
