#include "core/mechanism/pair_polynomials.h"

#include "core/units.h"

#include <algorithm>
#include <cmath>

namespace lobewright::mechanism {
namespace {

constexpr int deepest = 12; ///< halvings of a stretch; a smooth law needs two or three

/// Values at Chebyshev's nodes -> coefficients.
template <std::size_t terms>
struct Interpolation {
    using Row = std::array<double, terms>;
    Row nodes{};
    std::array<Row, terms> weights{}; ///< of the values in the coefficient of T_degree
    std::array<Row, terms> powers{};  ///< of T_degree, ascending

    Interpolation() {
        for (std::size_t j = 0; j < terms; ++j) {
            const double angle = units::pi * (static_cast<double>(j) + 0.5) / terms;
            nodes[j] = std::cos(angle);
            for (std::size_t k = 0; k < terms; ++k) {
                weights[k][j] =
                    (k == 0 ? 1.0 : 2.0) / terms * std::cos(static_cast<double>(k) * angle);
            }
        }
        powers[0][0] = powers[1][1] = 1.0;
        for (std::size_t k = 2; k < terms; ++k) { // T_k = 2x·T_{k−1} − T_{k−2}
            for (std::size_t i = 0; i < terms; ++i) {
                powers[k][i] = (i > 0 ? 2.0 * powers[k - 1][i - 1] : 0.0) - powers[k - 2][i];
            }
        }
    }
    static const Interpolation& shared() {
        static const Interpolation interpolation;
        return interpolation;
    }
};

} // namespace

PairPolynomials::PairPolynomials(const OpposedPair& pair) : period_(pair.period()) {
    const double strokes = pair.curve(End::inlet).stroke() + pair.curve(End::exhaust).stroke();
    tolerance_ = accuracy * strokes;
    rateTolerance_ = accuracy * strokes * units::turn / period_;
    std::vector<double> bounds{0.0, period_};
    for (const End end : bothEnds) {
        for (const double angle : pair.curve(end).divisions()) {
            bounds.push_back(wrapped(angle - pair.trackAngle(end, 0.0), period_));
        }
    }
    std::sort(bounds.begin(), bounds.end());
    for (std::size_t i = 0; i + 1 < bounds.size(); ++i) {
        if (bounds[i + 1] - bounds[i] > 1e-12) {
            divide(pair, stretches_.empty() ? 0.0 : stretches_.back().end, bounds[i + 1], 0);
        }
    }
    stretches_.back().end = period_;
    index();
}

PairPolynomials::Polynomial PairPolynomials::fit(const std::array<double, terms>& values,
                                                 double tolerated, bool& good) {
    const auto& with = Interpolation<terms>::shared();
    std::array<double, terms> series{};
    for (std::size_t k = 0; k < terms; ++k) {
        for (std::size_t j = 0; j < terms; ++j) {
            series[k] += with.weights[k][j] * values[j];
        }
    }
    good = good && std::fabs(series[terms - 1]) + std::fabs(series[terms - 2]) < tolerated;
    Polynomial result{};
    for (std::size_t k = 0; k < terms; ++k) {
        for (std::size_t i = 0; i <= k; ++i) {
            result[i] += series[k] * with.powers[k][i];
        }
    }
    return result;
}

void PairPolynomials::divide(const OpposedPair& pair, double begin, double end, int halvings) {
    const auto& with = Interpolation<terms>::shared();
    const double middle = 0.5 * (begin + end);
    const double half = 0.5 * (end - begin);
    std::array<double, terms> gaps{}, rates{};
    PerEnd<std::array<double, terms>> positions;
    for (std::size_t j = 0; j < terms; ++j) {
        const PairState state = pair.at(middle + half * with.nodes[j]);
        gaps[j] = state.gap;
        rates[j] = -state.lift.inlet.y1 - state.lift.exhaust.y1;
        for (const End side : bothEnds) {
            positions[side][j] = state.lift[side].y - pair.shift(side);
        }
    }
    bool good = true;
    const Polynomial parts[] = {fit(gaps, tolerance_, good), fit(rates, rateTolerance_, good),
                                fit(positions.inlet, tolerance_, good),
                                fit(positions.exhaust, tolerance_, good)};
    Stretch stretch{begin, end, 1.0 / half, {}};
    for (std::size_t i = 0; i < terms; ++i) {
        stretch.motion[i] = Four{parts[0][i], parts[1][i], parts[2][i], parts[3][i]};
    }
    if (!good && halvings < deepest) {
        divide(pair, begin, middle, halvings + 1);
        divide(pair, middle, end, halvings + 1);
    } else {
        stretches_.push_back(stretch);
    }
}

void PairPolynomials::index() {
    constexpr double before = 1e-6; // of a part, much more than rounding
    const std::size_t count = 4 * stretches_.size();
    bucketsPerRadian_ = static_cast<double>(count) / period_;
    std::size_t stretch = 0;
    for (std::size_t i = 0; i <= count; ++i) {
        const double angle =
            period_ * (static_cast<double>(i) - before) / static_cast<double>(count);
        while (stretch + 1 < stretches_.size() && stretches_[stretch].end <= angle) {
            ++stretch;
        }
        buckets_.push_back(stretch);
    }
}

PerEnd<double> PairPolynomials::positionRates(const Place& place) const {
    const Stretch& stretch = stretches_[place.stretch];
    Four slope{};
    for (std::size_t i = terms - 1; i >= 1; --i) {
        slope = slope * place.share + static_cast<double>(i) * stretch.motion[i];
    }
    return {slope[2] * stretch.scale, slope[3] * stretch.scale};
}

} // namespace lobewright::mechanism
