#include "core/motion/lift_form.h"
#include "core/motion/polynomial.h"
#include "core/units.h"

#include <Eigen/SparseLU>
#include <fmt/format.h>

#include <algorithm>
#include <cassert>
#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::motion {
namespace {

/// Closer knots make a spline of rounding errors [own estimate].
constexpr double closestKnots = 1e-6; // of the period

std::string knotPlace(std::size_t knot, const char* key) {
    return fmt::format("/knots/{}/{}", knot, key);
}

void checkKnot(const std::vector<Knot>& knots, std::size_t i, double period, Problems& problems) {
    const Knot& knot = knots[i];
    const double angle = knot.angle / units::degree;
    if (!(knot.angle >= 0.0 && knot.angle < period)) {
        problems.push_back(
            {knotPlace(i, "angle_deg"),
             Message(LW_TEXT("angle is %1, must be at least 0° and below the period of %2"),
                     amountIn(in::degrees, angle, 9), Amount(period, in::degrees, 9))});
    } else if (i > 0 && std::isfinite(knots[i - 1].angle) &&
               !(knot.angle - knots[i - 1].angle >= closestKnots * period)) {
        problems.push_back(
            {knotPlace(i, "angle_deg"),
             Message(LW_TEXT("angle is %1 after %2, must increase by at least %3"),
                     amountIn(in::degrees, angle, 9), Amount(knots[i - 1].angle, in::degrees, 9),
                     Amount(closestKnots * period, in::degrees, 3))});
    }
    if (!std::isfinite(knot.lift)) {
        problems.push_back({knotPlace(i, "lift_mm"), Message(LW_TEXT("lift is %1, must be finite"),
                                                             Amount(knot.lift, in::mm, 9))});
    }
    if (knot.slope && !std::isfinite(*knot.slope)) {
        problems.push_back({knotPlace(i, "slope_mm_per_deg"),
                            Message(LW_TEXT("slope is %1 per degree, must be finite"),
                                    Amount(*knot.slope * units::degree, in::mm, 9))});
    }
}

Problems check(const std::vector<Knot>& knots, double period) {
    Problems problems;
    if (knots.size() < 3) {
        problems.push_back(
            {"/knots", Message(LW_TEXT("there are %1 knots, need at least 3"), knots.size())});
    }
    for (std::size_t i = 0; i < knots.size(); ++i)
        checkKnot(knots, i, period, problems);
    if (problems.empty() &&
        knots.front().angle + period - knots.back().angle < closestKnots * period) {
        problems.push_back(
            {knotPlace(knots.size() - 1, "angle_deg"),
             Message(LW_TEXT("angle is %1, must stay %2 before the first knot of the next period"),
                     Amount(knots.back().angle, in::degrees, 9),
                     Amount(closestKnots * period, in::degrees, 3))});
    }
    return problems;
}

/// Slope and curvature at every knot, in units of one mean span.
struct KnotDerivatives {
    Eigen::VectorXd slope, curvature;
};

/// Third and fourth derivative of the quintic with given end values, as rows over
/// (slope, curvature) at start and end; the rise goes to the right-hand side.
struct HighDerivative {
    double rise, slopeStart, slopeEnd, curvatureStart, curvatureEnd;
};
constexpr HighDerivative thirdAtStart{60.0, -36.0, -24.0, -9.0, 3.0};
constexpr HighDerivative thirdAtEnd{60.0, -24.0, -36.0, -3.0, 9.0};
constexpr HighDerivative fourthAtStart{-360.0, 192.0, 168.0, 36.0, -24.0};
constexpr HighDerivative fourthAtEnd{360.0, -168.0, -192.0, -24.0, 36.0};

/// The linear system of a periodic quintic spline: third and fourth derivative continuous at each
/// knot, except that a prescribed slope takes the place of the fourth. Unique solution: it
/// minimises ∫ y'''² among all curves through the data [de Boor 2001, ch. XIII].
class SplineSystem {
  public:
    SplineSystem(const std::vector<Knot>& knots, double period)
        : knots_(knots), n_(static_cast<int>(knots.size())), mean_(period / n_), period_(period),
          right_(Eigen::VectorXd::Zero(2 * n_)) {
        for (int i = 0; i < n_; ++i) {
            addContinuity(2 * i, i, 3, thirdAtEnd, thirdAtStart);
            const std::optional<double>& slope = knots[static_cast<std::size_t>(i)].slope;
            if (slope) {
                entries_.emplace_back(2 * i + 1, 2 * i, 1.0);
                right_(2 * i + 1) = *slope * mean_;
            } else {
                addContinuity(2 * i + 1, i, 4, fourthAtEnd, fourthAtStart);
            }
        }
    }

    double span(int i) const {
        const auto here = static_cast<std::size_t>(i), next = static_cast<std::size_t>(after(i));
        return knots_[next].angle - knots_[here].angle + (after(i) == 0 ? period_ : 0.0);
    }

    KnotDerivatives solve() const {
        Eigen::SparseMatrix<double> matrix(2 * n_, 2 * n_);
        matrix.setFromTriplets(entries_.begin(), entries_.end());
        Eigen::SparseLU<Eigen::SparseMatrix<double>> lu(matrix);
        assert(lu.info() == Eigen::Success);
        Eigen::VectorXd unknowns = lu.solve(right_);
        unknowns += lu.solve(right_ - matrix * unknowns);
        KnotDerivatives result{Eigen::VectorXd(n_), Eigen::VectorXd(n_)};
        for (int i = 0; i < n_; ++i) {
            result.slope(i) = unknowns(2 * i) / mean_;
            result.curvature(i) = unknowns(2 * i + 1) / (mean_ * mean_);
        }
        return result;
    }

  private:
    int after(int i) const { return (i + 1) % n_; }

    void addContinuity(int row, int knot, int order, const HighDerivative& end,
                       const HighDerivative& start) {
        addTerm(row, (knot + n_ - 1) % n_, order, end, 1.0);
        addTerm(row, knot, order, start, -1.0);
    }

    void addTerm(int row, int interval, int order, const HighDerivative& d, double sign) {
        const double h = span(interval) / mean_;
        const double scale = sign / std::pow(h, order);
        const int i = interval, j = after(interval);
        entries_.emplace_back(row, 2 * i, scale * d.slopeStart * h);
        entries_.emplace_back(row, 2 * j, scale * d.slopeEnd * h);
        entries_.emplace_back(row, 2 * i + 1, scale * d.curvatureStart * h * h);
        entries_.emplace_back(row, 2 * j + 1, scale * d.curvatureEnd * h * h);
        right_(row) -=
            scale * d.rise *
            (knots_[static_cast<std::size_t>(j)].lift - knots_[static_cast<std::size_t>(i)].lift);
    }

    const std::vector<Knot>& knots_;
    int n_;
    double mean_, period_;
    std::vector<Eigen::Triplet<double>> entries_;
    Eigen::VectorXd right_;
};

/// Quintic from values, slopes and curvatures at both ends, in the local variable 0 … 1.
Piece quintic(const Knot& from, const Knot& to, double span, double slope0, double slope1,
              double curvature0, double curvature1) {
    const double rise = to.lift - from.lift;
    const double m0 = slope0 * span, m1 = slope1 * span;
    const double k0 = curvature0 * span * span, k1 = curvature1 * span * span;
    Piece piece;
    piece.begin = piece.origin = from.angle;
    piece.rate = 1.0 / span;
    piece.degree = 5;
    piece.polynomial = {from.lift,
                        m0,
                        0.5 * k0,
                        10.0 * rise - 6.0 * m0 - 4.0 * m1 - 1.5 * k0 + 0.5 * k1,
                        -15.0 * rise + 8.0 * m0 + 7.0 * m1 + 1.5 * k0 - k1,
                        6.0 * rise - 3.0 * m0 - 3.0 * m1 - 0.5 * k0 + 0.5 * k1};
    return piece;
}

/// Local variables in 0 … 1 that divide a piece into monotone parts, bounds included.
std::vector<double> monotoneParts(const Piece& piece) {
    const Polynomial lift(piece.polynomial.begin(), piece.polynomial.begin() + piece.degree + 1);
    std::vector<double> parts = signChanges(derivative(lift), 0.0, 1.0);
    parts.insert(parts.begin(), 0.0);
    parts.push_back(1.0);
    return parts;
}

/// A stretch over which the spline only rises or only falls.
struct Run {
    double angle;       ///< where it begins [rad]
    double left, right; ///< lifts at its ends
};

std::vector<Run> monotoneRuns(const std::vector<Piece>& pieces) {
    std::vector<Run> runs;
    for (const Piece& piece : pieces) {
        const std::vector<double> parts = monotoneParts(piece);
        Piece local = piece;
        local.origin = 0.0;
        local.rate = 1.0;
        for (std::size_t i = 0; i + 1 < parts.size(); ++i) {
            const Run run{piece.origin + parts[i] / piece.rate, evaluate(local, parts[i]).y,
                          evaluate(local, parts[i + 1]).y};
            if (run.left != run.right)
                runs.push_back(run);
        }
    }
    return runs;
}

/// Sets stroke, turning points and the base of every piece so that the lowest lift is 0.
void setExtremes(LiftForm& form) {
    const std::vector<Run> runs = monotoneRuns(form.pieces);
    if (runs.empty())
        return;
    double lowest = runs.front().left, highest = lowest;
    for (const Run& run : runs) {
        lowest = std::min({lowest, run.left, run.right});
        highest = std::max({highest, run.left, run.right});
    }
    form.stroke = highest - lowest;
    for (Piece& piece : form.pieces)
        piece.base = -lowest;
    for (std::size_t i = 0; i < runs.size(); ++i) {
        const Run& before = runs[(i + runs.size() - 1) % runs.size()];
        const bool rose = before.right > before.left, rises = runs[i].right > runs[i].left;
        if (rose != rises) {
            form.turningPoints.push_back(
                {runs[i].angle, runs[i].angle, runs[i].left - lowest, rose});
        }
    }
    settleTurningPoints(form);
}

} // namespace

Result<LiftForm> makeForm(const KnotShape& shape, double period) {
    const std::vector<Knot>& knots = shape.knots;
    if (Problems problems = check(knots, period); !problems.empty())
        return problems;
    const SplineSystem system(knots, period);
    const KnotDerivatives derivatives = system.solve();
    LiftForm form;
    form.period = period;
    const int n = static_cast<int>(knots.size());
    for (int i = 0; i < n; ++i) {
        const int j = (i + 1) % n;
        form.pieces.push_back(quintic(knots[static_cast<std::size_t>(i)],
                                      knots[static_cast<std::size_t>(j)], system.span(i),
                                      derivatives.slope(i), derivatives.slope(j),
                                      derivatives.curvature(i), derivatives.curvature(j)));
        form.junctions.push_back({knots[static_cast<std::size_t>(i)].angle, {}, {}, i, false});
    }
    setExtremes(form);
    if (form.stroke < smallestStroke) {
        return Problem{"/knots",
                       Message(LW_TEXT("lift changes by %1, must change by at least %2"),
                               Amount(form.stroke, in::mm, 3), Amount(smallestStroke, in::mm, 3))};
    }
    if (form.pieces.front().begin > 0.0) {
        // The last piece also covers the start of the period, seen one period earlier.
        Piece wrapped = form.pieces.back();
        wrapped.begin = 0.0;
        wrapped.origin -= period;
        form.pieces.insert(form.pieces.begin(), wrapped);
    }
    form.index();
    evaluateJunctions(form);
    return form;
}

} // namespace lobewright::motion
