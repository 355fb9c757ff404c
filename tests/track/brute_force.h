#pragma once

#include "core/motion/lift_curve.h"
#include "core/track/surface.h"
#include "core/units.h"

#include <Eigen/Geometry>
#include <boost/math/tools/minima.hpp>
#include <boost/math/tools/roots.hpp>

#include <cmath>
#include <cstdint>
#include <random>

/// The roller's path in space, straight from its definition, as a second opinion on the contact
/// formulas: only lifts are used, no derivative of the lift.
namespace lobewright::track::test {

using Eigen::Vector3d;
using motion::LiftCurve;

inline Vector3d radial(double polarAngle) {
    return {std::cos(polarAngle), std::sin(polarAngle), 0.0};
}
inline Vector3d tangential(double polarAngle) {
    return {-std::sin(polarAngle), std::cos(polarAngle), 0.0};
}

/// Distance of a point, in the frame of the inlet track, from the roller axis at angle ψ.
inline double axisDistance(const LiftCurve& curve, const Vector3d& point, double psi) {
    return std::hypot(point.dot(tangential(-psi)), point.z() - curve.at(psi).y);
}

/// The stretch of the axis that carries the roller; without bounds the axis is endless.
struct Stations {
    double inner = -1.0, outer = 1e3;
};

/// Smallest distance of a point from the axis, over the stretch of rotation of half width `window`
/// round ψ, as long as the point stands beside the roller and not beyond its edges.
inline double nearest(const LiftCurve& curve, const Vector3d& point, double psi, double window,
                      int positions = 48, Stations roller = {}) {
    const auto distance = [&](double at) {
        const double foot = point.dot(radial(-at));
        const bool beside = foot >= roller.inner - 1e-12 && foot <= roller.outer + 1e-12;
        return beside ? axisDistance(curve, point, at) : 1e3;
    };
    double best = distance(psi), place = psi;
    for (int i = 0; i <= positions; ++i) {
        const double at = psi + window * (2.0 * i / positions - 1.0);
        const double here = distance(at);
        if (here < best) {
            best = here;
            place = at;
        }
    }
    const double step = 2.0 * window / positions;
    std::uintmax_t steps = 60;
    const auto refined =
        boost::math::tools::brent_find_minima(distance, place - step, place + step, 26, steps);
    return std::min(best, refined.second);
}

/// A design drawn at random: several lobes, laws and dwells, or a few harmonics.
struct RandomTrack {
    LiftCurve curve;
    double pitchRadius, width;
};

inline RandomTrack randomTrack(unsigned seed) {
    std::mt19937 engine(seed);
    const auto between = [&](double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(engine);
    };
    const int lobes = std::uniform_int_distribution<int>(1, 4)(engine);
    const double pitchRadius = between(0.06, 0.14);
    const double stroke = pitchRadius * between(0.2, 0.9) * 2.0 / (1.0 + lobes);
    const double period = units::turn / lobes;
    motion::Pattern pattern{lobes, {}};
    if (seed % 4 == 0) {
        motion::HarmonicShape shape{{{1, -0.5 * stroke, 0.0}}};
        for (int order = 2; order <= 4; ++order) {
            shape.harmonics.push_back({order, stroke * between(-0.1, 0.1) / (order * order),
                                       stroke * between(-0.1, 0.1) / (order * order)});
        }
        pattern.shape = shape;
    } else {
        const auto law = motion::allLaws[std::uniform_int_distribution<std::size_t>(0, 6)(engine)];
        const double parts[] = {between(1.0, 2.0), between(0.05, 0.6), between(1.0, 2.0),
                                between(0.05, 0.6)};
        const double sum = parts[0] + parts[1] + parts[2] + parts[3];
        using motion::SegmentKind;
        const SegmentKind kinds[] = {SegmentKind::rise, SegmentKind::dwell, SegmentKind::fall,
                                     SegmentKind::dwell};
        motion::SegmentShape shape{stroke, {}};
        for (std::size_t i = 0; i < 4; ++i)
            shape.segments.push_back({kinds[i], period * parts[i] / sum, law, {}});
        pattern.shape = shape;
    }
    return {LiftCurve::make(pattern).value(), pitchRadius, pitchRadius * between(0.08, 0.25)};
}

/// Two lobes, lift 36 mm, pitch radius 95 mm: the design of several examples.
inline LiftCurve harmonicWave() {
    return LiftCurve::make({2, motion::HarmonicShape{{{1, -0.018, 0.0}}}}).value();
}

} // namespace lobewright::track::test
