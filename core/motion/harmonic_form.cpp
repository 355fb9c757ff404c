#include "core/motion/lift_form.h"
#include "core/units.h"

#include <Eigen/Eigenvalues>
#include <boost/math/tools/roots.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <complex>
#include <cstdint>

LW_TEXTS_OF(Core)

namespace lobewright::motion {
namespace {

/// Beyond this the search for all extremes takes longer than a drag of the mouse allows
/// [own estimate].
constexpr int highestOrder = 200;

Problems check(const std::vector<Harmonic>& harmonics) {
    Problems problems;
    if (harmonics.empty())
        problems.push_back({"/harmonics", LW_TEXT("there are 0 harmonics, need at least 1")});
    for (std::size_t i = 0; i < harmonics.size(); ++i) {
        const Harmonic& term = harmonics[i];
        const auto place = [&](const char* key) { return fmt::format("/harmonics/{}/{}", i, key); };
        if (term.order < 1 || term.order > highestOrder) {
            problems.push_back(
                {place("order"),
                 Message(LW_TEXT("order is %1, must be within 1 … %2"), term.order, highestOrder)});
        }
        const auto same = [&](const Harmonic& other) { return other.order == term.order; };
        if (std::count_if(harmonics.begin(), harmonics.begin() + static_cast<std::ptrdiff_t>(i),
                          same) > 0) {
            problems.push_back(
                {place("order"),
                 Message(LW_TEXT("order %1 is given before, must be given once"), term.order)});
        }
        if (!std::isfinite(term.cosine)) {
            problems.push_back({place("cos_mm"), Message(LW_TEXT("amplitude is %1, must be finite"),
                                                         Amount(term.cosine, in::mm, 9))});
        }
        if (!std::isfinite(term.sine)) {
            problems.push_back({place("sin_mm"), Message(LW_TEXT("amplitude is %1, must be finite"),
                                                         Amount(term.sine, in::mm, 9))});
        }
    }
    return problems;
}

/// Arguments of all roots of the slope, taken as a polynomial in exp(i·x), x = 2π·φ/period: every
/// angle where the slope changes sign is among them. Eigenvalues of the companion matrix.
std::vector<double> slopeRootArguments(const std::vector<Harmonic>& harmonics) {
    double largest = 0.0;
    for (const Harmonic& term : harmonics)
        largest = std::max(largest, term.order * std::hypot(term.cosine, term.sine));
    int degree = 0; // terms below rounding would make the leading coefficient vanish
    for (const Harmonic& term : harmonics) {
        if (term.order * std::hypot(term.cosine, term.sine) > 1e-15 * largest)
            degree = std::max(degree, term.order);
    }
    using Complex = std::complex<double>;
    Eigen::VectorXcd coefficients = Eigen::VectorXcd::Zero(2 * degree + 1);
    for (const Harmonic& term : harmonics) {
        if (term.order > degree)
            continue;
        // slope = Σ k·(b cos kx − a sin kx) = Σ k·Re[(b + i·a)·exp(i·k·x)]
        const Complex c = 0.5 * term.order / largest * Complex(term.sine, term.cosine);
        coefficients(degree + term.order) = c;
        coefficients(degree - term.order) = std::conj(c);
    }
    Eigen::MatrixXcd companion = Eigen::MatrixXcd::Zero(2 * degree, 2 * degree);
    companion.diagonal(-1).setOnes();
    companion.col(2 * degree - 1) = -coefficients.head(2 * degree) / coefficients(2 * degree);
    const Eigen::VectorXcd roots = companion.eigenvalues();
    std::vector<double> arguments;
    for (Eigen::Index i = 0; i < roots.size(); ++i)
        arguments.push_back(std::arg(roots(i)));
    std::sort(arguments.begin(), arguments.end());
    return arguments;
}

/// One angle within each interval between neighbouring root arguments, one period round, starting
/// where the slope is steepest (there its sign is beyond doubt).
std::vector<double> anglesBetweenRoots(const LiftForm& form) {
    std::vector<double> arguments = slopeRootArguments(form.harmonics);
    arguments.push_back(arguments.front() + units::turn);
    std::vector<double> between;
    for (std::size_t i = 0; i + 1 < arguments.size(); ++i)
        between.push_back(0.5 * (arguments[i] + arguments[i + 1]) * form.period / units::turn);
    const auto gentler = [&](double a, double b) {
        return std::abs(form.at(a, LiftForm::Side::after).y1) <
               std::abs(form.at(b, LiftForm::Side::after).y1);
    };
    const auto steepest = std::max_element(between.begin(), between.end(), gentler);
    for (auto angle = between.begin(); angle != steepest; ++angle)
        *angle += form.period;
    std::rotate(between.begin(), steepest, between.end());
    between.push_back(between.front() + form.period);
    return between;
}

/// Angles where the slope changes sign.
std::vector<double> extremeAngles(const LiftForm& form) {
    const std::vector<double> between = anglesBetweenRoots(form);
    const auto slope = [&](double phi) { return form.at(phi, LiftForm::Side::after).y1; };
    std::vector<double> extremes;
    double left = between.front(), atLeft = slope(left);
    for (std::size_t i = 1; i < between.size(); ++i) {
        const double right = between[i], atRight = slope(right);
        if (atRight == 0.0)
            continue;
        if ((atLeft < 0.0) != (atRight < 0.0)) {
            std::uintmax_t steps = 200;
            const auto bracket = boost::math::tools::toms748_solve(
                slope, left, right, atLeft, atRight, boost::math::tools::eps_tolerance<double>(50),
                steps);
            extremes.push_back(0.5 * (bracket.first + bracket.second));
        }
        left = right;
        atLeft = atRight;
    }
    return extremes;
}

} // namespace

Result<LiftForm> makeForm(const HarmonicShape& shape, double period) {
    if (Problems problems = check(shape.harmonics); !problems.empty())
        return problems;
    LiftForm form;
    form.period = period;
    double amplitudes = 0.0;
    for (const Harmonic& term : shape.harmonics) {
        amplitudes += std::hypot(term.cosine, term.sine);
        if (term.cosine != 0.0 || term.sine != 0.0)
            form.harmonics.push_back(term);
    }
    if (amplitudes < smallestStroke) {
        return Problem{"/harmonics",
                       Message(LW_TEXT("amplitudes add up to %1, must be at least %2"),
                               Amount(amplitudes, in::mm, 3), Amount(smallestStroke, in::mm, 3))};
    }
    std::sort(form.harmonics.begin(), form.harmonics.end(),
              [](const Harmonic& a, const Harmonic& b) { return a.order < b.order; });
    double lowest = 0.0, highest = 0.0; // the mean without the constant is 0
    for (double phi : extremeAngles(form)) {
        const double y = form.at(phi, LiftForm::Side::after).y;
        lowest = std::min(lowest, y);
        highest = std::max(highest, y);
        form.turningPoints.push_back({phi, phi, y, false});
    }
    form.constant = -lowest;
    form.stroke = highest - lowest;
    for (std::size_t i = 0; i < form.turningPoints.size(); ++i) {
        TurningPoint& point = form.turningPoints[i];
        point.lift -= lowest;
        point.crest = point.lift > (i > 0 ? form.turningPoints[i - 1].lift
                                          : form.turningPoints[1].lift - lowest);
    }
    settleTurningPoints(form);
    return form;
}

} // namespace lobewright::motion
