#pragma once

#include "core/ends.h"
#include "core/mechanism/opposed_pair.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
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
    Place place(double theta) const {
        double angle = theta;
        if (!(angle >= 0.0 && angle < period_)) {
            angle -= period_ * std::floor(theta / period_);
            if (!(angle >= 0.0 && angle < period_)) {
                angle = 0.0; // rounding
            }
        }
        std::size_t stretch = buckets_[static_cast<std::uint32_t>(angle * bucketsPerRadian_)];
        while (stretches_[stretch].end <= angle) { // the last ends with the period
            ++stretch;
        }
        return {stretch, (angle - stretches_[stretch].begin) * stretches_[stretch].scale - 1.0};
    }

    struct Motion {
        double gap = 0.0;     ///< between the crowns [m]
        double gapRate = 0.0; ///< [m/rad]
        /// Lift less the adjuster's shift [m], the position that uncovers ports.
        PerEnd<double> positions;
    };
    Motion motion(const Place& place) const {
        const Stretch& stretch = stretches_[place.stretch];
        // even and odd powers apart, so that the two sums run side by side
        const double square = place.share * place.share;
        Four even = stretch.motion[terms - 2];
        Four odd = stretch.motion[terms - 1];
        for (std::size_t i = terms - 2; i >= 2; i -= 2) {
            even = even * square + stretch.motion[i - 2];
            odd = odd * square + stretch.motion[i - 1];
        }
        const Four sum = even + place.share * odd;
        return {sum[0], sum[1], {sum[2], sum[3]}};
    }
    /// Slopes of the positions [m/rad].
    PerEnd<double> positionRates(const Place& place) const;
    std::size_t stretches() const { return stretches_.size(); }
    /// Bounds of a stretch [rad], ascending from 0 to the period.
    double begin(std::size_t stretch) const { return stretches_[stretch].begin; }
    double end(std::size_t stretch) const { return stretches_[stretch].end; }

  private:
    static constexpr std::size_t terms = 14;      ///< even
    using Polynomial = std::array<double, terms>; ///< ascending powers of the share
    using Four __attribute__((vector_size(4 * sizeof(double)))) = double;
    struct Stretch {
        double begin = 0.0, end = 0.0;
        double scale = 0.0; ///< d(share)/dθ [1/rad]
        /// Gap, its rate, positions of inlet and exhaust, side by side.
        alignas(sizeof(Four)) Four motion[terms];
    };
    static Polynomial fit(const std::array<double, terms>& values, double tolerated, bool& good);
    void divide(const OpposedPair& pair, double begin, double end, int halvings);
    void index();

    double period_ = 0.0;
    double bucketsPerRadian_ = 0.0;
    double tolerance_ = 0.0;     ///< of gap and positions [m]
    double rateTolerance_ = 0.0; ///< [m/rad]
    std::vector<Stretch> stretches_;
    /// Stretch at, or just before, the start of equally long parts of the period; one more part, as
    /// rounding may lead there.
    std::vector<std::size_t> buckets_;
};

} // namespace lobewright::mechanism
