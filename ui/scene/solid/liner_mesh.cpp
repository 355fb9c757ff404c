#include "ui/scene/solid/liner_mesh.h"

#include "core/design/skirt_row.h"
#include "core/units.h"
#include "ui/scene/solid/solid_points.h"

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {

constexpr int aroundLiner = 48;
/// A third is cut out: piston, gas and crowns are seen without glass before them.
constexpr double cutFrom = units::turn / 6.0, cutTo = units::turn - cutFrom;
constexpr double linerWall = 1.12;  ///< outer radius of a liner by its inner one
constexpr double skirtMargin = 0.2; ///< of the bore's radius, beyond a row that the skirt uncovers

/// Beyond the crown at outer dead centre [m].
double crownAtOuter(const mechanism::OpposedPair& pair, End piston) {
    return 0.5 * pair.mechanism().clearance + pair.curve(piston).stroke();
}

/// A row about the bore; `first`: how far its nearer edge lies outward of the middle [m]; `span`:
/// the part of the circumference that it has, from polar angle 0 on, either way round [rad].
void addRow(std::vector<Opening>& all, const ports::Row& row, double bore, double sign,
            double first, double span) {
    const double half = std::asin(std::clamp(row.width / bore, 0.0, 1.0));
    const double z1 = sign * first, z2 = sign * (first + row.height);
    for (int i = 0; i < row.count; ++i) {
        const double middle = span * (i + 0.5) / row.count;
        const double whole = middle < 0.0 ? middle + units::turn : middle;
        if (whole < cutFrom || whole > cutTo)
            continue;
        all.push_back({std::max(whole - half, cutFrom), std::min(whole + half, cutTo),
                       std::min(z1, z2), std::max(z1, z2)});
    }
}

/// Ascending, those that are one but for rounding only once.
std::vector<double> inOrder(std::vector<double> places, double rounding) {
    std::ranges::sort(places);
    const auto rest =
        std::ranges::unique(places, [&](double a, double b) { return b - a < rounding; });
    places.erase(rest.begin(), rest.end());
    return places;
}

} // namespace

std::vector<Opening> openingsOf(const ShownEngine& engine, End end) {
    const auto& pair = engine.pair();
    const double bore = pair.mechanism().bore;
    std::vector<Opening> all;
    const End piston = pair.uncovers(end);
    const double sign = piston == End::inlet ? -1.0 : 1.0;
    // One piston uncovers both rows: they share the circumference, half and half.
    const double span = !pair.mechanism().isOneSided() ? units::turn
                        : end == End::inlet            ? units::pi
                                                       : -units::pi;
    for (const auto& row : engine.design().ports[end])
        addRow(all, row, bore, sign, crownAtOuter(pair, piston) - row.edge, span);
    if (const auto* row = design::skirtRow(engine.design(), end)) {
        const double edge = row->edge - drawnPistonLength(pair); // from the crown
        addRow(all, *row, bore, sign, crownAtOuter(pair, end) - edge - row->height, units::turn);
    }
    return all;
}

double linerReach(const ShownEngine& engine, End end) {
    const auto& pair = engine.pair();
    if (pair.uncovers(end) != end)
        return 0.0;
    const double length = drawnPistonLength(pair);
    double beyond = 0.4 * length;
    if (const auto* row = design::skirtRow(engine.design(), end))
        beyond = std::max(beyond, length - row->edge + 0.5 * skirtMargin * pair.mechanism().bore);
    return crownAtOuter(pair, end) + beyond;
}

double linerCut() {
    return cutFrom;
}

SolidMesh railMesh(const ShownEngine& engine, End end) {
    const auto& pair = engine.pair();
    const auto& mechanism = pair.mechanism();
    const double b = 0.5 * mechanism.bore, r = mechanism.roller.radius;
    const double sign = end == End::inlet ? -1.0 : 1.0;
    const double from = sign * linerReach(engine, end);
    const double to = sign * (crownAtOuter(pair, end) + drawnPistonLength(pair) + 1.6 * r);
    SolidMesh mesh;
    for (const double side : {-1.0, 1.0}) {
        const double inside = side * 1.005 * b, outside = side * 1.1 * b;
        mesh.append(boxMesh(vector(std::min(inside, outside), -0.4 * r, std::min(from, to)),
                            vector(std::max(inside, outside), 0.4 * r, std::max(from, to))));
    }
    return mesh;
}

SolidMesh portMesh(const ShownEngine& engine, End end) {
    const double inner = 0.5 * engine.pair().mechanism().bore, outer = linerWall * inner;
    SolidMesh mesh;
    constexpr int steps = 4;
    for (const Opening& port : openingsOf(engine, end)) {
        for (const double angle : {port.from, port.to}) {
            const double sign = angle == port.from ? 1.0 : -1.0; // into the opening
            const QVector3D n = polar(sign, angle + 0.25 * units::turn, 0.0);
            mesh.quad({polar(inner, angle, port.low), polar(outer, angle, port.low),
                       polar(outer, angle, port.high), polar(inner, angle, port.high)},
                      {n, n, n, n});
        }
        for (int s = 0; s < steps; ++s) {
            const double a = port.from + (port.to - port.from) * s / steps;
            const double b = port.from + (port.to - port.from) * (s + 1) / steps;
            for (const double z : {port.low, port.high}) {
                const QVector3D n = vector(0.0, 0.0, z == port.low ? 1.0 : -1.0);
                mesh.quad({polar(inner, a, z), polar(inner, b, z), polar(outer, b, z),
                           polar(outer, a, z)},
                          {n, n, n, n});
            }
        }
    }
    return mesh;
}

SolidMesh linerMesh(const ShownEngine& engine, double low, double high) {
    const double inner = 0.5 * engine.pair().mechanism().bore, outer = linerWall * inner;
    std::vector<Opening> openings;
    for (const End end : bothEnds) {
        for (const Opening& port : openingsOf(engine, end))
            openings.push_back(port);
    }
    std::vector<double> angles, heights{low, high};
    constexpr int steps = 2 * aroundLiner / 3;
    for (int i = 0; i <= steps; ++i)
        angles.push_back(cutFrom + (cutTo - cutFrom) * i / steps);
    for (const Opening& port : openings) {
        for (const double angle : {port.from, port.to})
            angles.push_back(angle);
        for (const double z : {port.low, port.high})
            heights.push_back(std::clamp(z, low, high));
    }
    angles = inOrder(std::move(angles), 1e-6);
    heights = inOrder(std::move(heights), 1e-7);
    const auto isOpen = [&](double angle, double z) {
        return std::ranges::any_of(openings, [&](const Opening& port) {
            return angle > port.from && angle < port.to && z > port.low && z < port.high;
        });
    };
    SolidMesh mesh;
    for (std::size_t i = 0; i + 1 < angles.size(); ++i) {
        const double a = angles[i], b = angles[i + 1];
        const QVector3D na = polar(1.0, a, 0.0), nb = polar(1.0, b, 0.0);
        for (std::size_t k = 0; k + 1 < heights.size(); ++k) {
            const double z1 = heights[k], z2 = heights[k + 1];
            if (isOpen(0.5 * (a + b), 0.5 * (z1 + z2)))
                continue;
            mesh.quad({polar(outer, a, z1), polar(outer, b, z1), polar(outer, b, z2),
                       polar(outer, a, z2)},
                      {na, nb, nb, na});
            mesh.quad({polar(inner, a, z1), polar(inner, b, z1), polar(inner, b, z2),
                       polar(inner, a, z2)},
                      {-na, -nb, -nb, -na});
        }
        for (const double z : {low, high}) {
            const QVector3D n = vector(0.0, 0.0, z == low ? -1.0 : 1.0);
            mesh.quad(
                {polar(inner, a, z), polar(inner, b, z), polar(outer, b, z), polar(outer, a, z)},
                {n, n, n, n});
        }
    }
    for (const double angle : {cutFrom, cutTo}) { // the cut faces
        const QVector3D n = polar(angle == cutFrom ? -1.0 : 1.0, angle + 0.25 * units::turn, 0.0);
        mesh.quad({polar(inner, angle, low), polar(outer, angle, low), polar(outer, angle, high),
                   polar(inner, angle, high)},
                  {n, n, n, n});
    }
    return mesh;
}

} // namespace lobewright::ui
