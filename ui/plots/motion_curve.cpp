#include "ui/plots/motion_curve.h"

#include "core/motion/jumps.h"
#include "core/units.h"

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {

constexpr int gridPoints = 721; ///< every half degree and both ends

double valueOf(const motion::Lift& lift, int derivative, double omega) {
    const double values[] = {lift.y, lift.y1 * omega, lift.y2 * omega * omega,
                             lift.y3 * omega * omega * omega};
    return values[derivative];
}

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

MotionCurve motionCurve(const mechanism::OpposedPair& pair, End end, int derivative, double omega) {
    struct Point {
        double theta, value;
    };
    const motion::LiftCurve& curve = pair.curve(end);
    std::vector<Point> points;
    for (int i = 0; i < gridPoints; ++i) {
        const double theta = units::turn * i / (gridPoints - 1);
        points.push_back({theta, valueOf(pair.lift(end, theta), derivative, omega)});
    }
    for (const motion::Junction& junction : curve.junctions()) {
        for (const double theta : shaftAngles(pair, end, junction.angle)) {
            // The grid may hold the same angle: both limits go before and after it.
            std::erase_if(points,
                          [&](const Point& point) { return std::abs(point.theta - theta) < 1e-9; });
            const auto place = std::ranges::upper_bound(points, theta, {}, &Point::theta);
            points.insert(place, {{theta, valueOf(junction.before, derivative, omega)},
                                  {theta, valueOf(junction.after, derivative, omega)}});
        }
    }
    MotionCurve made{Samples(static_cast<Eigen::Index>(points.size())),
                     Samples(static_cast<Eigen::Index>(points.size()))};
    for (size_t i = 0; i < points.size(); ++i) {
        made.theta[static_cast<Eigen::Index>(i)] = points[i].theta;
        made.values[static_cast<Eigen::Index>(i)] = points[i].value;
    }
    return made;
}

std::vector<ShownJump> shownJumps(const mechanism::OpposedPair& pair, int derivative,
                                  double omega) {
    std::vector<ShownJump> shown;
    const double unit = std::pow(omega, derivative);
    for (const End end : bothEnds) {
        for (const motion::Jump& jump : motion::jumps(pair.curve(end), derivative)) {
            for (const double theta : shaftAngles(pair, end, jump.angle))
                shown.push_back({end, theta, jump.before * unit, jump.after * unit});
        }
    }
    return shown;
}

} // namespace lobewright::ui
