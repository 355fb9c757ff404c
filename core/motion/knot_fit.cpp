#include "core/motion/knot_fit.h"

#include "core/motion/lift_form.h"
#include "core/units.h"

#include <Eigen/Cholesky>
#include <Eigen/QR>
#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::motion {
namespace {

Problems checkOptions(const FitOptions& options) {
    Problems problems;
    if (!(options.tolerance > 0.0) || !std::isfinite(options.tolerance)) {
        problems.push_back({"/tolerance_mm", Message(LW_TEXT("tolerance is %1, must be positive"),
                                                     Amount(options.tolerance, in::mm, 9))});
    }
    if (options.mostKnots < 3) {
        problems.push_back(
            {"/most_knots",
             Message(LW_TEXT("%1 knots are allowed, must be at least 3"), options.mostKnots)});
    }
    return problems;
}

/// Angles of the first knots: segment bounds, halved until there are three, or even ones.
std::vector<double> firstAngles(const LiftCurve& curve) {
    std::vector<double> angles;
    for (const Junction& junction : curve.junctions()) {
        if (!junction.insideLaw)
            angles.push_back(junction.angle);
    }
    if (angles.empty())
        angles.push_back(0.0);
    while (angles.size() < 3) {
        std::vector<double> halved;
        for (std::size_t i = 0; i < angles.size(); ++i) {
            const double next = i + 1 < angles.size() ? angles[i + 1] : angles[0] + curve.period();
            halved.push_back(angles[i]);
            halved.push_back(0.5 * (angles[i] + next));
        }
        angles = halved;
    }
    return angles;
}

constexpr Eigen::Index comparedEach = 128; ///< angles for each division of a curve

/// Angles at which two lifts are compared.
Samples comparisonAngles(const LiftCurve& curve) {
    const std::vector<double>& bounds = curve.divisions();
    Samples angles(comparedEach * static_cast<Eigen::Index>(bounds.size() - 1));
    for (std::size_t i = 0; i + 1 < bounds.size(); ++i) {
        angles.segment(comparedEach * static_cast<Eigen::Index>(i), comparedEach) =
            Samples::LinSpaced(comparedEach + 1, bounds[i], bounds[i + 1]).head(comparedEach);
    }
    return angles;
}

void keepLarger(Deviation& deviation, double difference, double angle) {
    if (std::abs(difference) > deviation.value)
        deviation = {std::abs(difference), angle};
}

/// The slope and curvature of a fit against what it stands for, both limits at every junction.
void compareDerivatives(const LiftCurve& curve, const Samples& phi, KnotFit& fit) {
    const LiftCurve fitted = LiftCurve::make({curve.lobes(), fit.shape}).value();
    Deviation slope, curvature;
    const auto compare = [&](const Lift& wanted, const Lift& found, double angle) {
        keepLarger(slope, found.y1 - wanted.y1, angle);
        keepLarger(curvature, found.y2 - wanted.y2, angle);
    };
    for (double angle : phi)
        compare(curve.at(angle), fitted.at(angle), angle);
    for (const Junction& junction : curve.junctions()) {
        compare(junction.before, fitted.before(junction.angle), junction.angle);
        compare(junction.after, fitted.at(junction.angle), junction.angle);
    }
    fit.slope = slope;
    fit.curvature = curvature;
}

/// Puts a knot in the middle of the interval that holds this angle.
void divideInterval(std::vector<double>& angles, double angle, double period) {
    const auto next = std::upper_bound(angles.begin(), angles.end(), angle);
    if (next == angles.begin() || next == angles.end()) {
        const double middle = 0.5 * (angles.back() + angles.front() + period);
        if (middle < period) {
            angles.push_back(middle);
        } else {
            angles.insert(angles.begin(), middle - period);
        }
        return;
    }
    angles.insert(next, 0.5 * (*(next - 1) + *next));
}

KnotShape knotsOn(const LiftCurve& curve, const std::vector<double>& angles) {
    KnotShape shape;
    for (double angle : angles)
        shape.knots.push_back({angle, curve.at(angle).y, {}});
    return shape;
}

/// Fits of one curve, compared on the same grid.
class CurveFitter {
  public:
    explicit CurveFitter(const LiftCurve& curve)
        : curve_(curve), phi_(comparisonAngles(curve)), target_(curve.sample(phi_).y) {}

    const Samples& angles() const { return phi_; }

    /// Errors: the knots make no lift curve.
    Result<KnotFit> through(const std::vector<double>& angles, double tolerance) const {
        KnotFit fit;
        fit.shape = knotsOn(curve_, angles);
        const Result<LiftCurve> made = LiftCurve::make({curve_.lobes(), fit.shape});
        if (!made)
            return made.problems();
        Eigen::Index worst = 0;
        fit.largestError = (made->sample(phi_).y - target_).abs().maxCoeff(&worst);
        fit.angle = phi_(worst);
        fit.withinTolerance = fit.largestError <= tolerance;
        return fit;
    }

  private:
    const LiftCurve& curve_;
    Samples phi_, target_;
};

std::string row(std::size_t i, const char* column) {
    return fmt::format("/rows/{}/{}", i, column);
}

Problems checkRows(const LiftTable& table, double period) {
    if (table.angles.size() != table.lifts.size()) {
        return {{"/rows", Message(LW_TEXT("there are %1 angles and %2 lifts, must be as many"),
                                  table.angles.size(), table.lifts.size())}};
    }
    Problems problems;
    if (table.angles.size() < 4) {
        problems.push_back(
            {"/rows", Message(LW_TEXT("there are %1 rows, need at least 4"), table.angles.size())});
    }
    for (std::size_t i = 0; i < table.angles.size(); ++i) {
        const double angle = table.angles[i] / units::degree;
        if (!std::isfinite(angle)) {
            problems.push_back({row(i, "angle_deg"),
                                Message(LW_TEXT("angle is %1, must be a number"), asTyped(angle))});
        } else if (i > 0 && table.angles[i] <= table.angles[i - 1]) {
            problems.push_back(
                {row(i, "angle_deg"), Message(LW_TEXT("angle is %1 after %2, must increase"),
                                              Amount(table.angles[i], in::degrees, 9),
                                              Amount(table.angles[i - 1], in::degrees, 9))});
        }
        if (!std::isfinite(table.lifts[i])) {
            problems.push_back({row(i, "lift_mm"), Message(LW_TEXT("lift is %1, must be a number"),
                                                           asTyped(table.lifts[i]))});
        }
    }
    if (!problems.empty())
        return problems;
    const double length = table.angles.back() - table.angles.front();
    if (length > period * (1.0 + 1e-9)) {
        return {{row(table.angles.size() - 1, "angle_deg"),
                 Message(LW_TEXT("the rows cover %1; they must cover at most the period of %2"),
                         Amount(length, in::degrees, 9), Amount(period, in::degrees, 9))}};
    }
    const auto [lowest, highest] = std::minmax_element(table.lifts.begin(), table.lifts.end());
    if (*lowest == *highest) {
        return {{"/rows", Message(LW_TEXT("all lifts are %1, the lift must change"),
                                  Amount(*lowest, in::mm, 9))}};
    }
    return {};
}

/// One period of a table without its closing row.
struct Rows {
    Samples angles, lifts;
    double widestGap;
};

Result<Rows> openRows(const LiftTable& table, double period, double tolerance) {
    std::size_t count = table.angles.size();
    if (std::abs(table.angles.back() - table.angles.front() - period) <= 1e-9 * period) {
        --count;
        if (!(std::abs(table.lifts.back() - table.lifts.front()) <= tolerance)) {
            return Problem{row(count, "lift_mm"),
                           Message(LW_TEXT("lift is %1 where the table closes, must be that of the "
                                           "first row, %2, to %3"),
                                   Amount(table.lifts.back(), in::mm, 9),
                                   Amount(table.lifts.front(), in::mm, 9),
                                   Amount(tolerance, in::mm, 3))};
        }
    }
    Rows rows{Eigen::Map<const Samples>(table.angles.data(), static_cast<Eigen::Index>(count)),
              Eigen::Map<const Samples>(table.lifts.data(), static_cast<Eigen::Index>(count)),
              table.angles.front() + period - table.angles[count - 1]};
    for (std::size_t i = 1; i < count; ++i)
        rows.widestGap = std::max(rows.widestGap, table.angles[i] - table.angles[i - 1]);
    if (rows.widestGap > 0.25 * period * (1.0 + 1e-9)) {
        return Problem{
            "/rows",
            Message(
                LW_TEXT("rows are up to %1 apart, must be at most %2 (a quarter of the period)"),
                Amount(rows.widestGap, in::degrees, 9), Amount(0.25 * period, in::degrees, 9))};
    }
    return rows;
}

/// The six quintic B-splines on evenly spaced knots that are not 0 in one interval, `u` of 0 … 1
/// into it, by their recurrence [de Boor 2001, ch. IX, eq. 14].
std::array<double, 6> basisAt(double u) {
    std::array<double, 6> values{1.0};
    for (int degree = 1; degree < 6; ++degree) {
        for (int r = degree; r >= 0; --r) {
            const auto i = static_cast<std::size_t>(r);
            const double below = r > 0 ? (u + degree - r) * values[i - 1] : 0.0;
            const double same = r < degree ? (r + 1 - u) * values[i] : 0.0;
            values[i] = (below + same) / degree;
        }
    }
    return values;
}

/// Periodic quintic splines on evenly spaced knots, written in B-splines: each row of a table
/// touches six of them, so that the work grows with the rows and not with rows times knots squared.
class EvenSpline {
  public:
    EvenSpline(double period, int count) : period_(period), count_(count) {}

    /// Where an angle lies: the first of its six splines, and their values.
    struct Place {
        int first;
        std::array<double, 6> values;
    };
    Place at(double angle) const {
        const double turns = angle / period_;
        const double x = (turns - std::floor(turns)) * count_;
        const int interval = std::min(static_cast<int>(x), count_ - 1);
        return {interval, basisAt(x - interval)};
    }
    Eigen::Index index(const Place& place, int r) const { return (place.first + r) % count_; }

    double value(const Place& place, const Eigen::VectorXd& weights) const {
        double sum = 0.0;
        for (int r = 0; r < 6; ++r) {
            sum += place.values[static_cast<std::size_t>(r)] * weights(index(place, r));
        }
        return sum;
    }

    /// Least squares by the normal equations: evenly spaced B-splines are so nearly independent of
    /// each other that squaring their condition costs two or three digits of sixteen.
    Eigen::VectorXd fitted(const Rows& rows) const {
        Eigen::MatrixXd normal = Eigen::MatrixXd::Zero(count_, count_);
        Eigen::VectorXd right = Eigen::VectorXd::Zero(count_);
        for (Eigen::Index i = 0; i < rows.angles.size(); ++i) {
            const Place place = at(rows.angles(i));
            for (int r = 0; r < 6; ++r) {
                const double value = place.values[static_cast<std::size_t>(r)];
                right(index(place, r)) += value * rows.lifts(i);
                for (int q = 0; q < 6; ++q) {
                    normal(index(place, r), index(place, q)) +=
                        value * place.values[static_cast<std::size_t>(q)];
                }
            }
        }
        const Eigen::LDLT<Eigen::MatrixXd> solver(normal);
        constexpr double independent = 1e-12; // below it rows are missing where knots are
        const auto pivots = solver.vectorD();
        return pivots.minCoeff() > independent * pivots.maxCoeff()
                   ? Eigen::VectorXd(solver.solve(right))
                   : Eigen::VectorXd(normal.colPivHouseholderQr().solve(right));
    }

  private:
    double period_;
    int count_;
};

/// Least-squares knots, evenly spaced.
KnotFit leastSquares(const Rows& rows, double period, int count) {
    const EvenSpline spline(period, count);
    const Eigen::VectorXd weights = spline.fitted(rows);
    KnotFit fit;
    for (int j = 0; j < count; ++j) {
        const EvenSpline::Place knot{j, basisAt(0.0)};
        fit.shape.knots.push_back({period * j / count, spline.value(knot, weights), {}});
    }
    for (Eigen::Index i = 0; i < rows.angles.size(); ++i) {
        const double error =
            std::abs(spline.value(spline.at(rows.angles(i)), weights) - rows.lifts(i));
        if (error >= fit.largestError) {
            fit.largestError = error;
            fit.angle = rows.angles(i);
        }
    }
    return fit;
}

} // namespace

Result<KnotFit> fitKnots(const LiftCurve& curve, const FitOptions& options) {
    if (Problems problems = checkOptions(options); !problems.empty())
        return problems;
    const CurveFitter fitter(curve);
    std::vector<double> angles = firstAngles(curve);
    KnotFit closest;
    for (;; divideInterval(angles, closest.angle, curve.period())) {
        const Result<KnotFit> fit = fitter.through(angles, options.tolerance);
        if (!fit && closest.shape.knots.empty())
            return fit.problems();
        if (fit)
            closest = *fit;
        const bool isFull = static_cast<int>(angles.size()) >= options.mostKnots;
        if (!fit || fit->withinTolerance || isFull) {
            compareDerivatives(curve, fitter.angles(), closest);
            return closest;
        }
    }
}

Result<KnotFit> fitKnotCount(const LiftCurve& curve, int count) {
    if (count < 3 || count > mostFittedKnots) {
        return Problem{"/knots", Message(LW_TEXT("%1 knots are wanted, must be 3 to %2"), count,
                                         mostFittedKnots)};
    }
    const CurveFitter fitter(curve);
    const double tolerance = FitOptions().tolerance;
    std::vector<double> angles = firstAngles(curve);
    if (static_cast<int>(angles.size()) > count) {
        angles.clear();
        for (int i = 0; i < count; ++i)
            angles.push_back(curve.period() * i / count);
    }
    Result<KnotFit> fit = fitter.through(angles, tolerance);
    while (fit && static_cast<int>(angles.size()) < count) {
        divideInterval(angles, fit->angle, curve.period());
        fit = fitter.through(angles, tolerance);
    }
    if (!fit)
        return fit.problems();
    KnotFit made = std::move(fit).value();
    compareDerivatives(curve, fitter.angles(), made);
    return made;
}

Result<KnotFit> fitKnots(const LiftTable& table, int lobes, const FitOptions& options) {
    Problems problems = checkOptions(options);
    if (lobes < 1)
        problems.push_back({"/lobes", Message(LW_TEXT("lobes is %1, must be at least 1"), lobes)});
    if (!problems.empty())
        return problems;
    const double period = units::turn / lobes;
    if (problems = checkRows(table, period); !problems.empty())
        return problems;
    const Result<Rows> rows = openRows(table, period, options.tolerance);
    if (!rows)
        return rows.problems();
    // A knot interval without a row would leave its knots undetermined [de Boor 2001, ch. XIV].
    const int supported = static_cast<int>(period / rows->widestGap * (1.0 + 1e-9));
    const int most = std::min(options.mostKnots, supported);
    KnotFit closest;
    // The fewest knots, where they are many to a few in the hundred.
    constexpr int share = 32;
    for (int count = 3; count <= most; count += std::max(1, count / share)) {
        KnotFit fit = leastSquares(*rows, period, count);
        fit.withinTolerance = fit.largestError <= options.tolerance;
        if (closest.shape.knots.empty() || fit.largestError < closest.largestError)
            closest = std::move(fit);
        if (closest.withinTolerance)
            break;
    }
    return closest;
}

} // namespace lobewright::motion
