#pragma once

#include "core/unknowns/ensemble.h"
#include "core/unknowns/statistics.h"

#include <gtest/gtest.h>

#include <cmath>
#include <functional>
#include <numbers>
#include <vector>

namespace lobewright::unknowns::testing {

inline const Statistics& library() {
    const auto loaded = statistics();
    if (!loaded) {
        throw std::runtime_error(loaded.problems().front().message.english());
    }
    return **loaded;
}

/// Values of unknowns at points of the program's own sequence, shape (samples, unknowns).
inline Matrix drawn(const std::vector<Marginal>& marginals, long samples, std::uint64_t seed = 1) {
    Matrix x = sharesOf(library(), static_cast<int>(marginals.size()), seed, 0, samples);
    for (Eigen::Index i = 0; i < x.rows(); ++i) {
        for (Eigen::Index k = 0; k < x.cols(); ++k) {
            x(i, k) = marginals[static_cast<std::size_t>(k)].value(x(i, k));
        }
    }
    return x;
}

inline Samples evaluated(const Matrix& x, const std::function<double(const double*)>& f) {
    Samples y(x.rows());
    for (Eigen::Index i = 0; i < x.rows(); ++i) {
        y[i] = f(x.row(i).data());
    }
    return y;
}

inline Marginal uniform(double low, double high) {
    return {.kind = Marginal::Kind::uniform, .low = low, .high = high};
}
/// Mean and standard deviation.
inline Marginal normal(double mean, double deviation) {
    constexpr double percentile95 = 1.6448536269514722;
    return {.kind = Marginal::Kind::normal,
            .low = mean - percentile95 * deviation,
            .high = mean + percentile95 * deviation};
}

} // namespace lobewright::unknowns::testing
