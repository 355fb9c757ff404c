#pragma once

#include "core/exchange/track_part.h"
#include "tests/design/sample.h"
#include "tests/machines.h"

#include <boost/math/tools/minima.hpp>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <random>
#include <string>

/// Tracks to export, and what a roller says about a point of them.
namespace lobewright::exchange::testing {

using design::testing::listed;

/// The pump set with another track.
inline design::Design designWith(const motion::Pattern& track, bool isClosed = false) {
    design::Design design = design::testing::sample();
    design.tracks.inlet = track;
    design.mechanism.closedTrack = isClosed;
    return design;
}

/// Steep and skew: rise, dwell and return differ.
inline motion::Pattern skewTrack() {
    return machines::lobe(2, 0.034, 86.0, 6.0, 74.0, 14.0, motion::Law::polynomial345);
}
/// Accelerations that jump.
inline motion::Pattern parabolicTrack() {
    return machines::lobe(3, 0.020, 60.0, 0.5, 59.0, 0.5, motion::Law::parabolic);
}
/// One unequal turn through knots.
inline motion::Pattern knotTrack() {
    motion::KnotShape shape;
    const double lifts[] = {0.0, 0.011, 0.030, 0.036, 0.022, 0.004, 0.003, 0.016, 0.027, 0.012};
    for (int i = 0; i < 10; ++i) {
        shape.knots.push_back({0.3 + i * units::turn / 10.0, lifts[i], {}});
    }
    return {1, shape};
}
inline motion::Pattern harmonicTrack() {
    return {2, motion::HarmonicShape{{{1, -0.016, 0.004}, {2, 0.001, -0.0008}}}};
}

inline TrackPart part(const design::Design& design, End end = End::inlet) {
    auto made = trackPart(design, end);
    EXPECT_TRUE(made) << listed(made.problems());
    return std::move(made).value();
}

/// Smallest distance of a point from the path of the roller's axis, less r [m]: 0 on the flank,
/// positive in the metal. By search over the positions of the roller; no formula of the surface.
inline double gap(const FlankForm& form, const Eigen::Vector3d& point) {
    const double s = std::hypot(point.x(), point.y()), angle = std::atan2(point.y(), point.x());
    const double up = form.placement.end == End::inlet ? 1.0 : -1.0;
    const double height = up * (point.z() - form.placement.origin);
    const auto distance = [&](double phi) {
        const double turn = angle - form.placement.turned + phi;
        return std::hypot(s * std::sin(turn), height - form.curve.at(phi).y);
    };
    const double middle = form.placement.turned - angle;
    const double window = std::asin(std::min(1.0, 1.5 * form.rollerRadius / s));
    constexpr int positions = 96;
    const auto position = [&](int i) { return middle + window * (2.0 * i / positions - 1.0); };
    int nearest = 1;
    for (int i = 1; i < positions; ++i) {
        if (distance(position(i)) < distance(position(nearest))) {
            nearest = i;
        }
    }
    std::uintmax_t steps = 100;
    return boost::math::tools::brent_find_minima(distance, position(nearest - 1),
                                                 position(nearest + 1), 50, steps)
               .second -
           form.rollerRadius;
}

/// Volume of the part from the swept roller alone [m³]: at every place of the ring the metal ends
/// where the lowest (push) or highest (pull) position of the roller's surface is. Midpoint rule.
inline double sweptVolume(const TrackPart& part, int angles, int radii) {
    const double r = part.roller.radius;
    const auto surface = [&](double s, double beta, double sense) {
        // height of the roller's outer or inner side over (s, beta) while it passes
        const auto height = [&](double phi) {
            const double across = s * std::sin(beta - phi);
            return part.curve().at(phi).y -
                   sense * std::sqrt(std::max(r * r - across * across, 0.0));
        };
        const double window = std::asin(std::min(1.0, r / s));
        constexpr int positions = 48;
        const auto position = [&](int i) { return beta + window * (2.0 * i / positions - 1.0); };
        int best = 1;
        for (int i = 1; i < positions; ++i) {
            if (sense * height(position(i)) < sense * height(position(best))) {
                best = i;
            }
        }
        std::uintmax_t steps = 60;
        return sense * boost::math::tools::brent_find_minima(
                           [&](double phi) { return sense * height(phi); }, position(best - 1),
                           position(best + 1), 26, steps)
                           .second;
    };
    const double width = part.faceOuter - part.faceInner;
    double volume = 0.0;
    for (int j = 0; j < radii; ++j) {
        const double s = part.faceInner + (j + 0.5) * width / radii;
        const double cell = s * (units::turn / angles) * (width / radii);
        for (int i = 0; i < angles; ++i) {
            const double beta = (i + 0.5) * units::turn / angles;
            volume += cell * (surface(s, beta, 1.0) - part.backHeight);
            if (part.isClosed()) {
                volume += cell * (part.frontHeight - surface(s, beta, -1.0));
            }
        }
    }
    if (part.isClosed()) {
        volume += units::pi *
                  (part.faceInner * part.faceInner - part.boreRadius * part.boreRadius) *
                  (part.frontHeight - part.backHeight);
    }
    return volume;
}

} // namespace lobewright::exchange::testing
