#include "core/gas/integrators/radau.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace lobewright::gas {
namespace {

using radau::root6;

constexpr double a[3][3] = {
    {(88.0 - 7.0 * root6) / 360.0, (296.0 - 169.0 * root6) / 1800.0, (-2.0 + 3.0 * root6) / 225.0},
    {(296.0 + 169.0 * root6) / 1800.0, (88.0 + 7.0 * root6) / 360.0, (-2.0 - 3.0 * root6) / 225.0},
    {(16.0 - root6) / 36.0, (16.0 + root6) / 36.0, 1.0 / 9.0}};

/// Weights of the stage increments in the error estimate, and the real eigenvalue of the inverse of
/// the matrix of coefficients, (6 + ∛81 − ∛9)/30 inverted.
constexpr double e[3] = {-(13.0 + 7.0 * root6) / 3.0, -(13.0 - 7.0 * root6) / 3.0, -1.0 / 3.0};
constexpr double realEigenvalue = 3.637834252744496;

} // namespace

Radau::Radau(int size, std::vector<int> stiff) : Radau(size, std::move(stiff), {{0, size}}) {}

Radau::Radau(int size, std::vector<int> stiff, const std::vector<VariableRange>& coupled)
    : size_(size), storage_(static_cast<std::size_t>(size) * rows, 0.0), stiff_(std::move(stiff)) {
    for (const VariableRange& range : coupled) {
        for (int v = range.begin; v < range.end; ++v) {
            coupled_.push_back(v);
        }
    }
    const auto count = static_cast<Eigen::Index>(stiff_.size());
    newtonMatrix_.setIdentity(3 * count, 3 * count);
    filterMatrix_.setIdentity(count, count);
    newton_.compute(newtonMatrix_);
    filter_.compute(filterMatrix_);
    right_.setZero(3 * count);
    solution_.setZero(3 * count);
    estimate_.setZero(count);
    filtered_.setZero(count);
}

void Radau::begin(double x, double h, const double* y, const double* dy,
                  const Eigen::MatrixXd& derivatives) {
    predict(x, h, y, dy);
    x_ = x;
    h_ = h;
    found_ = false;
    std::copy_n(y, size_, row(start));
    std::copy_n(dy, size_, row(startRates));
    for (int i = 0; i < 3; ++i) {
        std::copy_n(y, size_, row(stages + i));
        for (const int v : coupled_) {
            row(stages + i)[v] += row(increments + i)[v];
        }
    }
    const Eigen::Index count = derivatives.rows();
    for (int i = 0; i < 3; ++i) {
        for (int j = 0; j < 3; ++j) {
            newtonMatrix_.block(i * count, j * count, count, count) = -h * a[i][j] * derivatives;
        }
    }
    newtonMatrix_.diagonal().array() += 1.0;
    filterMatrix_ = -derivatives;
    filterMatrix_.diagonal().array() += realEigenvalue / h;
    newton_.compute(newtonMatrix_);
    filter_.compute(filterMatrix_);
}

/// First guess of the increments: the last step's polynomial where this one follows on it, else the
/// tangent. From y alone the pressure would start far off, as the volume moves on.
void Radau::predict(double x, double h, const double* y, const double* dy) {
    const bool follows = found_ && x == x_ + h_;
    double r[denseTerms];
    for (const int v : coupled_) {
        if (follows) {
            denseCoefficients(v, r);
        }
        for (int i = 0; i < 3; ++i) {
            row(increments + i)[v] = follows ? denseValue(r, 1.0 + radau::c[i] * h / h_) - y[v]
                                             : radau::c[i] * h * dy[v];
        }
    }
}

double Radau::stageSum(int stage, int variable) const {
    double sum = 0.0;
    for (int j = 0; j < 3; ++j) {
        sum += a[stage][j] * row(stageRates + j)[variable];
    }
    return sum;
}

double Radau::findResidual(const double* weights) {
    double largest = 0.0;
    for (int i = 0; i < 3; ++i) {
        for (const int v : coupled_) {
            const double residual = h_ * stageSum(i, v) - row(increments + i)[v];
            row(residuals + i)[v] = residual;
            const double relative = std::fabs(residual) / weights[v];
            if (std::isnan(relative)) {
                return std::numeric_limits<double>::infinity();
            }
            largest = std::max(largest, relative);
        }
    }
    return largest;
}

void Radau::finish() {
    for (int i = 0; i < 3; ++i) {
        for (int v = 0; v < size_; ++v) {
            row(increments + i)[v] = h_ * stageSum(i, v);
            row(stages + i)[v] = row(start)[v] + row(increments + i)[v];
        }
    }
}

void Radau::correct() {
    const std::size_t count = stiff_.size();
    for (std::size_t i = 0; i < 3; ++i) {
        for (std::size_t n = 0; n < count; ++n) {
            right_[static_cast<Eigen::Index>(i * count + n)] =
                row(residuals + static_cast<int>(i))[stiff_[n]];
        }
    }
    solution_.noalias() = newton_.solve(right_);
    for (std::size_t i = 0; i < 3; ++i) {
        for (std::size_t n = 0; n < count; ++n) {
            row(residuals + static_cast<int>(i))[stiff_[n]] =
                solution_[static_cast<Eigen::Index>(i * count + n)];
        }
    }
    for (int i = 0; i < 3; ++i) {
        for (const int v : coupled_) {
            row(increments + i)[v] += row(residuals + i)[v];
            row(stages + i)[v] = row(start)[v] + row(increments + i)[v];
        }
    }
}

/// Error of the stiff variables only: what passes a port is as good as they are.
double Radau::error(const double* weights) {
    const auto count = static_cast<Eigen::Index>(stiff_.size());
    for (Eigen::Index n = 0; n < count; ++n) {
        const int v = stiff_[static_cast<std::size_t>(n)];
        estimate_[n] = row(startRates)[v];
        for (int i = 0; i < 3; ++i) {
            estimate_[n] += e[i] / h_ * row(increments + i)[v];
        }
    }
    filtered_.noalias() = filter_.solve(estimate_);
    double largest = 0.0;
    for (Eigen::Index n = 0; n < count; ++n) {
        const double relative =
            std::fabs(filtered_[n]) / weights[stiff_[static_cast<std::size_t>(n)]];
        if (std::isnan(relative)) {
            return std::numeric_limits<double>::infinity();
        }
        largest = std::max(largest, relative);
    }
    return largest;
}

void Radau::denseCoefficients(int variable, double* r) const {
    const double z1 = row(increments)[variable];
    const double z2 = row(increments + 1)[variable];
    const double z3 = row(increments + 2)[variable];
    const auto bend = [z3](double c, double z) { return (z - c * z3) / (c * (1.0 - c)); };
    const double first = bend(radau::c[0], z1);
    const double second = bend(radau::c[1], z2);
    const double slope = (second - first) / (radau::c[1] - radau::c[0]);
    r[0] = row(start)[variable];
    r[1] = z3;
    r[2] = first - slope * radau::c[0];
    r[3] = slope;
    r[4] = 0.0;
}

void Radau::denseCoefficientsOfFour(int variable, double* r) const {
    for (int i = 0; i < 4; ++i) {
        double own[denseTerms];
        denseCoefficients(variable + i, own);
        for (int term = 0; term < denseTerms; ++term) {
            r[4 * term + i] = own[term];
        }
    }
}

} // namespace lobewright::gas
