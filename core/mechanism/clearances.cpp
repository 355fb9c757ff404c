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

/// How far the track of an end stands inward of its roller's axis, where the skirt passes.
struct Reach {
    double height = 0.0; ///< [m]; < 0: outward of the axis
    double phi = 0.0;    ///< track angle at the roller [rad]
};

Reach rimReach(const Mechanism& mechanism, const motion::LiftCurve& curve, double rimThickness) {
    const auto lowest = [&] {
        double phi = 0.0;
        for (double at = 0.0; at < curve.period(); at += curve.period() / 720) {
            if (curve.at(at).y < curve.at(phi).y) {
                phi = at;
            }
        }
        return phi;
    };
    return {curve.stroke() + mechanism.roller.radius + rimThickness, lowest()};
}

/// Beside the roller the push flank rises, on the pitch radius by y − r·cos α over its axis there.
Reach flankReach(const Mechanism& mechanism, const motion::LiftCurve& curve) {
    constexpr int steps = 360;
    const double step = curve.period() / steps, radius = mechanism.pitchRadius;
    const double half = 0.5 * mechanism.bore;
    struct Place {
        double lift, height, aside; ///< of the surface that the roller touches here [m]
    };
    std::vector<Place> places;
    for (int i = 0; i < steps; ++i) {
        const motion::Lift lift = curve.at(i * step);
        const double slope = lift.y1 / radius, cosine = 1.0 / std::hypot(1.0, slope);
        const double r = mechanism.roller.radius;
        places.push_back({lift.y, lift.y - r * cosine, r * slope * cosine});
    }
    Reach worst{-mechanism.roller.radius, 0.0};
    const int width = static_cast<int>(std::min(half / (radius * step), 0.5 * steps)) + 1;
    for (int i = 0; i < steps; ++i) {
        for (int k = -width; k <= width; ++k) {
            const Place& beside = places[static_cast<std::size_t>((i + k + 2 * steps) % steps)];
            const bool isPassed = std::abs(k * step * radius + beside.aside) <= half;
            const double height = beside.height - places[static_cast<std::size_t>(i)].lift;
            if (isPassed && height > worst.height) {
                worst = {height, i * step};
            }
        }
    }
    return worst;
}

Reach trackReach(const OpposedPair& pair, End end, double rimThickness) {
    const Mechanism& mechanism = pair.mechanism();
    return mechanism.closedTrack ? rimReach(mechanism, pair.curve(end), rimThickness)
                                 : flankReach(mechanism, pair.curve(end));
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

double crownToRollerAxis(const OpposedPair& pair, double skirtLength, double rimThickness) {
    const Mechanism& mechanism = pair.mechanism();
    if (mechanism.piston && mechanism.piston->rollerAxis) {
        return *mechanism.piston->rollerAxis;
    }
    double behind = mechanism.roller.radius;
    for (const End end : pair.pistons()) {
        behind = std::max(behind, trackReach(pair, end, rimThickness).height);
    }
    return skirtLength + behind + 0.2 * mechanism.roller.radius;
}

std::optional<SkirtGap> skirtGap(const OpposedPair& pair, End end, double rimThickness) {
    const Mechanism& mechanism = pair.mechanism();
    if (!mechanism.piston || !mechanism.piston->rollerAxis) {
        return std::nullopt;
    }
    const Reach reach = trackReach(pair, end, rimThickness);
    const double theta = reach.phi - pair.trackAngle(end, 0.0);
    const double period = pair.period();
    return SkirtGap{*mechanism.piston->rollerAxis - mechanism.piston->length - reach.height,
                    theta - period * std::floor(theta / period)};
}

} // namespace lobewright::mechanism
