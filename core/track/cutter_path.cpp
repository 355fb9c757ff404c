#include "core/track/cutter_path.h"

#include "core/units.h"

#include <boost/math/tools/roots.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <utility>

LW_TEXTS_OF(Core)

namespace lobewright::track {
namespace {

using motion::Lift;
using motion::LiftCurve;

/// The cutter's axis as it passes: −polar angle (so that it grows with φ) and lift, with their
/// derivatives per radian.
struct Axis {
    double along, lift;
    double along1, lift1;
};

Axis axisAt(const LiftCurve& curve, double phi, double pitchRadius, double offset) {
    const Lift lift = curve.at(phi);
    const double d2 = pitchRadius * pitchRadius + lift.y1 * lift.y1, d = std::sqrt(d2);
    const double sine = lift.y1 / d, cosine = pitchRadius / d;
    const double turning = pitchRadius * lift.y2 / d2; // dα/dφ
    const double shift = offset * sine / pitchRadius;
    return {phi - std::atan(shift), lift.y + offset * cosine,
            1.0 - offset * cosine * turning / pitchRadius / (1.0 + shift * shift),
            lift.y1 - offset * sine * turning};
}

/// A surface point, seen from the roller that makes it: `ahead` in the direction of growing φ.
struct Point {
    double phi, rho, ahead, lift;
};

Point surfacePoint(const LiftCurve& curve, double phi, double rho, double rollerRadius,
                   Flank flank) {
    const Lift lift = curve.at(phi);
    const double d = std::hypot(rho, lift.y1);
    const double r = sign(flank) * rollerRadius;
    return {phi, rho, r * lift.y1 / d, lift.y - r * rho / d};
}

/// Squared distance of a point from the cutter's axis, and half its derivative along the path.
struct Distance {
    double squared, slope;
};

Distance distance(const Point& point, const Axis& axis) {
    const double turn = point.phi - axis.along;
    const double s = std::sin(turn), c = std::cos(turn);
    const double across = point.rho * s + point.ahead * c;
    const double above = point.lift - axis.lift;
    return {across * across + above * above,
            -across * axis.along1 * (point.rho * c - point.ahead * s) - above * axis.lift1};
}

/// Smallest distance of a point from the axis over the stretch of path that can reach it.
double smallestDistance(const LiftCurve& curve, const Point& point, double pitchRadius,
                        double offset, double reach) {
    constexpr int positions = 128; // to find the basin
    const double window =
        std::asin(std::min(1.0, reach / point.rho)) + std::atan(std::abs(offset) / pitchRadius);
    const auto at = [&](double phi) {
        return distance(point, axisAt(curve, phi, pitchRadius, offset));
    };
    const auto position = [&](int i) { return point.phi + window * (2.0 * i / positions - 1.0); };
    int nearest = 0;
    double smallest = at(position(0)).squared;
    for (int i = 1; i <= positions; ++i) {
        const double squared = at(position(i)).squared;
        if (squared < smallest) {
            smallest = squared;
            nearest = i;
        }
    }
    const double left = position(std::max(nearest - 1, 0));
    const double right = position(std::min(nearest + 1, positions));
    const auto slope = [&](double phi) { return at(phi).slope; };
    const double atLeft = slope(left), atRight = slope(right);
    if (atLeft < 0.0 && atRight > 0.0) {
        std::uintmax_t steps = 100;
        const auto bracket =
            boost::math::tools::toms748_solve(slope, left, right, atLeft, atRight,
                                              boost::math::tools::eps_tolerance<double>(48), steps);
        smallest = std::min(smallest, at(0.5 * (bracket.first + bracket.second)).squared);
    }
    return std::sqrt(smallest);
}

Problems checkCutter(double cutterRadius) {
    if (cutterRadius > 0.0 && std::isfinite(cutterRadius))
        return {};
    return {{"/cutter_radius_mm", Message(LW_TEXT("cutter radius is %1, must be positive"),
                                          Amount(cutterRadius, in::mm, 9))}};
}

CutterDeviation extremes(const Samples& phi, const Samples& deviation, double rho) {
    Eigen::Index most = 0, least = 0;
    const double largest = deviation.maxCoeff(&most);
    const double smallest = deviation.minCoeff(&least);
    return {rho, largest, phi(most), smallest, phi(least)};
}

} // namespace

Result<CutterPath> cutterPath(const LiftCurve& curve, const Samples& phi, double pitchRadius,
                              double rollerRadius, double cutterRadius, Flank flank,
                              const Placement& placement) {
    if (Problems problems = checkCutter(cutterRadius); !problems.empty())
        return problems;
    const double offset = sign(flank) * (cutterRadius - rollerRadius);
    CutterPath path{phi, Samples(phi.size()), Samples(phi.size()), Samples(phi.size())};
    for (Eigen::Index i = 0; i < phi.size(); ++i) {
        const Axis axis = axisAt(curve, phi(i), pitchRadius, offset);
        path.polarAngle(i) = placement.polarAngle(axis.along);
        path.lift(i) = axis.lift;
        path.axial(i) = placement.axial(axis.lift);
    }
    return path;
}

Result<Samples> cutterDeviation(const LiftCurve& curve, const Samples& phi, double rho,
                                double pitchRadius, double rollerRadius, double cutterRadius,
                                Flank flank) {
    Problems problems = checkCutter(cutterRadius);
    if (!(rho > 0.0)) {
        problems.push_back(
            {"/rho", Message(LW_TEXT("position along the roller is %1, must be positive"),
                             Amount(rho, in::mm, 9))});
    }
    if (!problems.empty())
        return problems;
    const double offset = sign(flank) * (cutterRadius - rollerRadius);
    Samples deviation(phi.size());
    for (Eigen::Index i = 0; i < phi.size(); ++i) {
        const Point point = surfacePoint(curve, phi(i), rho, rollerRadius, flank);
        deviation(i) =
            smallestDistance(curve, point, pitchRadius, offset, cutterRadius + rollerRadius) -
            cutterRadius;
    }
    return deviation;
}

Result<CutterDeviations> cutterDeviations(const LiftCurve& curve, double pitchRadius,
                                          const Roller& roller, double cutterRadius, Flank flank) {
    const Eigen::Index angles = 720;
    const Samples phi = Samples::LinSpaced(angles + 1, 0.0, curve.period()).head(angles);
    CutterDeviations result;
    const std::pair<CutterDeviation*, double> places[] = {
        {&result.inner, roller.innerEdge(pitchRadius)},
        {&result.middle, pitchRadius},
        {&result.outer, roller.outerEdge(pitchRadius)}};
    for (const auto& [place, rho] : places) {
        const Result<Samples> deviation =
            cutterDeviation(curve, phi, rho, pitchRadius, roller.radius, cutterRadius, flank);
        if (!deviation)
            return deviation.problems();
        *place = extremes(phi, *deviation, rho);
    }
    return result;
}

} // namespace lobewright::track
