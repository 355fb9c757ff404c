#pragma once

#include "core/ends.h"
#include "core/mechanism/opposed_pair.h"

#include <Eigen/Core>

#include <array>
#include <vector>

namespace lobewright::mechanism {

/// The motion of both pistons as polynomials on short stretches between junctions, for integrators
/// that ask thousands of times. Each is the Chebyshev interpolant of the closed form, of a degree
/// that leaves about `accuracy` of the strokes; polynomial laws and splines come out exact but
/// for rounding. [Trefethen, Approximation Theory and Approximation Practice, ch. 8]
class PairPolynomials {
  public:
    static constexpr double accuracy = 1e-14;

    explicit PairPolynomials(const OpposedPair& pair);

    /// Where a shaft angle falls.
    struct Place {
        std::size_t stretch = 0;
        double share = 0.0; ///< −1 … 1 over the stretch
    };
    /// θ any finite angle [rad].
    Place place(double theta) const;

    struct Gap {
        double value = 0.0; ///< between the crowns [m]
        double rate = 0.0;  ///< [m/rad]
    };
    Gap gap(const Place& place) const {
        const Eigen::Array2d both = valueOf(stretches_[place.stretch].gap, place.share);
        return {both[0], both[1]};
    }
    /// Lift less the adjuster's shift [m], the position that uncovers ports.
    PerEnd<double> positions(const Place& place) const {
        const Eigen::Array2d both = valueOf(stretches_[place.stretch].position, place.share);
        return {both[0], both[1]};
    }
    /// Its slope [m/rad].
    PerEnd<double> positionRates(const Place& place) const;
    std::size_t stretches() const { return stretches_.size(); }
    /// Bounds of a stretch [rad], ascending from 0 to the period.
    double begin(std::size_t stretch) const { return stretches_[stretch].begin; }
    double end(std::size_t stretch) const { return stretches_[stretch].end; }

  private:
    static constexpr std::size_t terms = 14;      ///< even
    using Polynomial = std::array<double, terms>; ///< ascending powers of the share
    /// Two of them, evaluated side by side.
    using Polynomials = std::array<Eigen::Array2d, terms>;
    struct Stretch {
        double begin = 0.0, end = 0.0;
        double scale = 0.0;   ///< d(share)/dθ [1/rad]
        Polynomials gap;      ///< and its rate
        Polynomials position; ///< inlet, exhaust
    };
    /// Even and odd powers apart, so that the two sums run side by side.
    static Eigen::Array2d valueOf(const Polynomials& polynomials, double share) {
        const double square = share * share;
        Eigen::Array2d even = polynomials[terms - 2];
        Eigen::Array2d odd = polynomials[terms - 1];
        for (std::size_t i = terms - 2; i >= 2; i -= 2) {
            even = even * square + polynomials[i - 2];
            odd = odd * square + polynomials[i - 1];
        }
        return even + share * odd;
    }
    static Polynomial fit(const std::array<double, terms>& values, double tolerated, bool& good);
    static Polynomials sideBySide(const Polynomial& first, const Polynomial& second);
    void divide(const OpposedPair& pair, double begin, double end, int halvings);
    void index();

    double period_ = 0.0;
    double tolerance_ = 0.0;     ///< of gap and positions [m]
    double rateTolerance_ = 0.0; ///< [m/rad]
    std::vector<Stretch> stretches_;
    std::vector<std::size_t> buckets_; ///< stretch at the start of equally long parts of the period
};

} // namespace lobewright::mechanism
