#include "core/exchange/flank_spline.h"

#include "core/exchange/refine.h"
#include "core/exchange/track_part.h"
#include "core/units.h"

#include <Eigen/LU>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::exchange {

namespace {

constexpr int fewestAcross = 3, mostAcross = 16;
constexpr double jumpShare = 1e-9; ///< a smaller jump of a derivative is rounding

/// Stations on [0, 1] whose interpolation stays close to the best polynomial, both ends included.
Samples chebyshevStations(int degree) {
    return 0.5 - 0.5 * (Samples::LinSpaced(degree + 1, 0.0, units::pi)).cos();
}

/// Bernstein polynomials of this degree at v, shape (degree + 1).
Eigen::RowVectorXd bernstein(int degree, double v) {
    Eigen::RowVectorXd values = Eigen::RowVectorXd::Zero(degree + 1);
    values(0) = 1.0;
    for (int k = 1; k <= degree; ++k) {
        for (int j = k; j >= 1; --j) {
            values(j) = (1.0 - v) * values(j) + v * values(j - 1);
        }
        values(0) *= 1.0 - v;
    }
    return values;
}

/// Maps values at the stations to Bernstein coefficients.
Eigen::MatrixXd fromStations(int degree) {
    const Samples v = chebyshevStations(degree);
    Eigen::MatrixXd collocation(degree + 1, degree + 1);
    for (int i = 0; i <= degree; ++i) {
        collocation.row(i) = bernstein(degree, v(i));
    }
    return collocation.inverse();
}

/// Point and derivatives at both ends of a span [a, b], at a share t of it [Farin 2002].
template <class Point>
Point hermite(const Point& p0, const Point& d0, const Point& e0, const Point& p1, const Point& d1,
              const Point& e1, double h, double t) {
    const double t3 = t * t * t, t4 = t3 * t, t5 = t4 * t;
    return p0 * (1.0 - 10.0 * t3 + 15.0 * t4 - 6.0 * t5) +
           d0 * (h * (t - 6.0 * t3 + 8.0 * t4 - 3.0 * t5)) +
           e0 * (0.5 * h * h * (t * t - 3.0 * t3 + 3.0 * t4 - t5)) +
           p1 * (10.0 * t3 - 15.0 * t4 + 6.0 * t5) + d1 * (h * (7.0 * t4 - 4.0 * t3 - 3.0 * t5)) +
           e1 * (0.5 * h * h * (t3 - 2.0 * t4 + t5));
}

class Fit {
  public:
    Fit(const FlankForm& form, double inner, double outer, double tolerance)
        : form_(form), inner_(inner), outer_(outer), tolerance_(tolerance) {}

    Result<FlankSpline> run(double begin, double end) {
        // Half of the tolerance for each direction.
        const auto isFine = [&](double a, double b) {
            return errorAlong(a, b) <= 0.5 * tolerance_;
        };
        spline_.knots = refined(stretchBounds(form_.curve, begin, end), isFine);
        double along = 0.0;
        for (std::size_t i = 0; i + 1 < spline_.knots.size(); ++i) {
            along = std::max(along, errorAlong(spline_.knots[i], spline_.knots[i + 1]));
        }
        spline_.degreeAcross = fewestAcross;
        double across = errorAcross(fewestAcross);
        while (across > 0.5 * tolerance_ && spline_.degreeAcross < mostAcross) {
            across = errorAcross(++spline_.degreeAcross);
        }
        spline_.deviation = along + across;
        if (spline_.deviation > tolerance_) {
            return Problem{"", Message(LW_TEXT("the flank between pattern angles %1 and %2 cannot "
                                               "be fitted within %3; ask for a coarser tolerance"),
                                       Amount(begin, in::degrees), Amount(end, in::degrees),
                                       Amount(tolerance_, in::um, 3))};
        }
        assemble();
        return std::move(spline_);
    }

  private:
    SpacePoint point(double phi, double share, Limit limit = Limit::after) const {
        return spacePoint(form_, phi, inner_ + share * (outer_ - inner_), limit);
    }

    /// Largest distance between spline and surface on one span, at both cylinders and between.
    double errorAlong(double a, double b) const {
        double largest = 0.0;
        for (double share : {0.0, 0.5, 1.0}) {
            const SpacePoint p = point(a, share), q = point(b, share, Limit::before);
            for (double t : {0.25, 0.5, 0.75}) {
                const Eigen::Vector3d fitted =
                    hermite(p.value, p.first, p.second, q.value, q.first, q.second, b - a, t);
                const Eigen::Vector3d exact = point(a + t * (b - a), share).value;
                largest = std::max(largest, (fitted - exact).norm());
            }
        }
        return largest;
    }

    /// Largest distance between the polynomial across and the surface, midway between stations.
    double errorAcross(int degree) const {
        const Eigen::MatrixXd inverse = fromStations(degree);
        const Samples v = chebyshevStations(degree);
        double largest = 0.0;
        for (std::size_t i = 0; i + 1 < spline_.knots.size(); ++i) {
            const double phi = 0.5 * (spline_.knots[i] + spline_.knots[i + 1]);
            Eigen::MatrixX3d values(degree + 1, 3);
            for (int j = 0; j <= degree; ++j) {
                values.row(j) = point(phi, v(j)).value.transpose();
            }
            const Eigen::MatrixX3d coefficients = inverse * values;
            for (int j = 0; j < degree; ++j) {
                const double between = 0.5 * (v(j) + v(j + 1));
                const Eigen::RowVector3d fitted = bernstein(degree, between) * coefficients;
                const Eigen::RowVector3d exact = point(phi, between).value.transpose();
                largest = std::max(largest, (fitted - exact).norm());
            }
        }
        return largest;
    }

    /// What one knot fixes: all stations one below the other, then both traces.
    struct Node {
        Eigen::VectorXd value, first, second;
    };
    Node node(double phi, Limit limit) const {
        const int rows = 3 * (spline_.degreeAcross + 1);
        Node result{Eigen::VectorXd(rows + 4), Eigen::VectorXd(rows + 4),
                    Eigen::VectorXd(rows + 4)};
        const Samples v = chebyshevStations(spline_.degreeAcross);
        for (int j = 0; j <= spline_.degreeAcross; ++j) {
            const SpacePoint p = point(phi, v(j), limit);
            result.value.segment<3>(3 * j) = p.value;
            result.first.segment<3>(3 * j) = p.first;
            result.second.segment<3>(3 * j) = p.second;
        }
        const int last = rows - 1;
        for (bool isOuter : {false, true}) {
            const int row = rows + (isOuter ? 2 : 0), z = isOuter ? last : 2;
            const Jet angle = section(form_, phi, isOuter ? outer_ : inner_, limit).angle;
            result.value.segment<2>(row) << angle.value, result.value(z);
            result.first.segment<2>(row) << angle.first, result.first(z);
            result.second.segment<2>(row) << angle.second, result.second(z);
        }
        return result;
    }

    static bool jumps(const Eigen::VectorXd& before, const Eigen::VectorXd& after) {
        return (after - before).norm() > jumpShare * after.norm();
    }

    /// Joins the spans: poles are the blossom values at five consecutive knots [Farin 2002].
    void assemble() {
        const std::vector<double>& t = spline_.knots;
        const std::size_t last = t.size() - 1;
        std::vector<Eigen::VectorXd> columns;
        const auto reach = [](const Node& n, double h, int order) -> Eigen::VectorXd {
            // Bézier points of a span next to its end; h < 0 seen from the far end
            const Eigen::VectorXd one = n.value + h / 5.0 * n.first;
            return order == 1 ? one : 2.0 * one - n.value + h * h / 20.0 * n.second;
        };
        Node start = node(t[0], Limit::after);
        columns.push_back(start.value);
        columns.push_back(reach(start, t[1] - t[0], 1));
        columns.push_back(reach(start, t[1] - t[0], 2));
        spline_.multiplicities.push_back(degreeEnd);
        for (std::size_t i = 1; i < last; ++i) {
            const Node before = node(t[i], Limit::before), after = node(t[i], Limit::after);
            const double h0 = t[i] - t[i - 1], h1 = t[i + 1] - t[i];
            const Eigen::VectorXd far = reach(before, -h0, 2), near = reach(before, -h0, 1);
            columns.push_back(far);
            if (jumps(before.second, after.second)) {
                columns.push_back(near);
                columns.push_back(reach(after, h1, 1));
                spline_.multiplicities.push_back(4);
            } else {
                columns.push_back(near + h1 / h0 * (near - far));
                spline_.multiplicities.push_back(3);
            }
            columns.push_back(reach(after, h1, 2));
        }
        const Node end = node(t[last], Limit::before);
        const double h = t[last] - t[last - 1];
        columns.push_back(reach(end, -h, 2));
        columns.push_back(reach(end, -h, 1));
        columns.push_back(end.value);
        spline_.multiplicities.push_back(degreeEnd);
        distribute(columns);
    }

    void distribute(const std::vector<Eigen::VectorXd>& columns) {
        const auto count = static_cast<Eigen::Index>(columns.size());
        const int stations = spline_.degreeAcross + 1;
        Eigen::MatrixXd all(columns.front().size(), count);
        for (Eigen::Index i = 0; i < count; ++i) {
            all.col(i) = columns[static_cast<std::size_t>(i)];
        }
        const Eigen::MatrixXd inverse = fromStations(spline_.degreeAcross);
        for (int k = 0; k < stations; ++k) {
            Eigen::Matrix3Xd poles = Eigen::Matrix3Xd::Zero(3, count);
            for (int j = 0; j < stations; ++j) {
                poles += inverse(k, j) * all.middleRows<3>(3 * j);
            }
            spline_.poles.push_back(poles);
        }
        // Exactly the boundary curves, free of the rounding of the inverse.
        spline_.poles.front() = all.topRows<3>();
        spline_.poles.back() = all.middleRows<3>(3 * (stations - 1));
        spline_.innerTrace = all.middleRows<2>(3 * stations);
        spline_.outerTrace = all.bottomRows<2>();
    }

    static constexpr int degreeEnd = FlankSpline::degreeAlong + 1;
    const FlankForm& form_;
    double inner_, outer_, tolerance_;
    FlankSpline spline_;
};

} // namespace

Result<FlankSpline> fitFlank(const FlankForm& form, double faceInner, double faceOuter,
                             double begin, double end, double tolerance) {
    return Fit(form, faceInner, faceOuter, tolerance).run(begin, end);
}

} // namespace lobewright::exchange
