#include "core/mechanism/clearances.h"

#include "core/units.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace lobewright::mechanism {

namespace {

/// Two cylinders with none between them.
struct Neighbours {
    double first = 0.0, angle = 0.0; ///< ψ of the first and from it to the second [rad]
};

Neighbours nearestNeighbours(const Mechanism& mechanism) {
    std::vector<double> angles = cylinderAngles(mechanism);
    for (double& angle : angles) {
        angle -= units::turn * std::floor(angle / units::turn);
    }
    std::sort(angles.begin(), angles.end());
    Neighbours nearest{angles.back(), angles.front() + units::turn - angles.back()};
    for (std::size_t i = 1; i < angles.size(); ++i) {
        if (angles[i] - angles[i - 1] < nearest.angle) {
            nearest = {angles[i - 1], angles[i] - angles[i - 1]};
        }
    }
    return nearest;
}

/// Where the difference of the lifts changes its sign, to the step of the search.
double levelAngle(const OpposedPair& pair, const Neighbours& cylinders) {
    const double start = cylinders.first - cylinderAngles(pair.mechanism()).front();
    const auto difference = [&](double theta) {
        return pair.lift(End::inlet, theta - start).y -
               pair.lift(End::inlet, theta - start - cylinders.angle).y;
    };
    constexpr int steps = 720;
    const double step = pair.period() / steps;
    for (int i = 0; i < steps; ++i) {
        if (difference(i * step) * difference((i + 1) * step) <= 0.0) {
            return (i + 0.5) * step;
        }
    }
    return 0.0;
}

double rimHeight(const Mechanism& mechanism, double stroke, double rimThickness) {
    return stroke + mechanism.roller.radius + rimThickness;
}

} // namespace

std::optional<RollerGap> tightestRollerGap(const OpposedPair& pair) {
    const Mechanism& mechanism = pair.mechanism();
    if (mechanism.cylinders < 2) {
        return std::nullopt;
    }
    const Neighbours nearest = nearestNeighbours(mechanism);
    const double half = 0.5 * nearest.angle;
    const double inner = mechanism.roller.innerEdge(mechanism.pitchRadius);
    RollerGap result;
    result.angle = nearest.angle;
    result.largestRadius = inner * std::tan(half);
    result.gap = 2.0 * (inner * std::sin(half) - mechanism.roller.radius * std::cos(half));
    result.theta = levelAngle(pair, nearest);
    return result;
}

double crownToRollerAxis(const Mechanism& mechanism, double skirtLength, double stroke,
                         double rimThickness) {
    const double r = mechanism.roller.radius;
    const double behind = mechanism.closedTrack ? rimHeight(mechanism, stroke, rimThickness) : r;
    return skirtLength + behind + 0.2 * r;
}

} // namespace lobewright::mechanism
