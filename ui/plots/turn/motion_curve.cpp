#include "ui/plots/turn/motion_curve.h"

#include "core/motion/jumps.h"
#include "core/units.h"

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {

constexpr int gridPoints = 721; ///< every half degree and both ends

} // namespace

std::vector<double> shaftAngles(const mechanism::OpposedPair& pair, End end, double phi) {
    std::vector<double> angles;
    const int repetitions = pair.curve(end).lobes();
    const double first = phi - pair.trackAngle(end, 0.0);
    for (int k = 0; k < repetitions; ++k) {
        double theta = std::fmod(first + k * pair.curve(end).period(), units::turn);
        if (theta < 0.0)
            theta += units::turn;
        if (units::turn - theta < 1e-12) // rounding of a whole turn
            theta = 0.0;
        angles.push_back(theta);
    }
    std::ranges::sort(angles);
    return angles;
}

TurnMotion turnMotion(const mechanism::OpposedPair& pair, End end) {
    struct Point {
        double theta;
        motion::Lift lift;
    };
    const motion::LiftCurve& curve = pair.curve(end);
    std::vector<Point> points;
    for (int i = 0; i < gridPoints; ++i) {
        const double theta = units::turn * i / (gridPoints - 1);
        points.push_back({theta, pair.lift(end, theta)});
    }
    for (const motion::Junction& junction : curve.junctions()) {
        for (const double theta : shaftAngles(pair, end, junction.angle)) {
            // The grid may hold the same angle: both limits go in its place.
            std::erase_if(points,
                          [&](const Point& point) { return std::abs(point.theta - theta) < 1e-9; });
            const auto place = std::ranges::upper_bound(points, theta, {}, &Point::theta);
            points.insert(place, {{theta, junction.before}, {theta, junction.after}});
        }
    }
    const auto count = static_cast<Eigen::Index>(points.size());
    TurnMotion made{Samples(count),
                    {Samples(count), Samples(count), Samples(count), Samples(count)}};
    for (Eigen::Index i = 0; i < count; ++i) {
        const Point& point = points[static_cast<size_t>(i)];
        made.theta[i] = point.theta;
        made.lift.y[i] = point.lift.y;
        made.lift.y1[i] = point.lift.y1;
        made.lift.y2[i] = point.lift.y2;
        made.lift.y3[i] = point.lift.y3;
    }
    return made;
}

MotionCurve motionCurve(const mechanism::OpposedPair& pair, End end, int derivative, double omega) {
    const TurnMotion all = turnMotion(pair, end);
    const Samples* values[] = {&all.lift.y, &all.lift.y1, &all.lift.y2, &all.lift.y3};
    return {all.theta, *values[derivative] * std::pow(omega, derivative)};
}

std::vector<ShownJump> shownJumps(const mechanism::OpposedPair& pair, int derivative,
                                  double omega) {
    std::vector<ShownJump> shown;
    const double unit = std::pow(omega, derivative);
    for (const End end : pair.pistons()) {
        for (const motion::Jump& jump : motion::jumps(pair.curve(end), derivative)) {
            for (const double theta : shaftAngles(pair, end, jump.angle))
                shown.push_back({end, theta, jump.before * unit, jump.after * unit});
        }
    }
    return shown;
}

} // namespace lobewright::ui
