#include "core/gas/radau.h"

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

constexpr std::size_t stiffVariables[3] = {airMass, productsMass, temperature};

} // namespace

Radau::Radau(int size, int cylinders)
    : size_(size), storage_(static_cast<std::size_t>(size) * rows, 0.0),
      newton_(static_cast<std::size_t>(cylinders)), filter_(static_cast<std::size_t>(cylinders)) {}

void Radau::begin(double x, double h, const double* y, const double* dy,
                  std::span<const StiffBlock> blocks) {
    predict(x, h, y, dy);
    x_ = x;
    h_ = h;
    found_ = false;
    std::copy_n(y, size_, row(start));
    std::copy_n(dy, size_, row(startRates));
    for (int i = 0; i < 3; ++i) {
        for (int v = 0; v < size_; ++v) {
            row(stages + i)[v] = y[v] + row(increments + i)[v];
        }
    }
    for (std::size_t k = 0; k < blocks.size(); ++k) {
        const Eigen::Map<const Eigen::Matrix<double, 3, 3, Eigen::RowMajor>> block(
            blocks[k].data());
        Eigen::Matrix<double, 9, 9> matrix = Eigen::Matrix<double, 9, 9>::Identity();
        for (int i = 0; i < 3; ++i) {
            for (int j = 0; j < 3; ++j) {
                matrix.block<3, 3>(3 * i, 3 * j) -= h * a[i][j] * block;
            }
        }
        newton_[k].compute(matrix);
        filter_[k].compute(realEigenvalue / h * Eigen::Matrix3d::Identity() - block);
    }
}

/// First guess of the increments: the last step's polynomial where this one follows on it, else the
/// tangent. From y alone the pressure would start far off, as the volume moves on.
void Radau::predict(double x, double h, const double* y, const double* dy) {
    const bool follows = found_ && x == x_ + h_;
    double r[denseTerms];
    for (int v = 0; v < size_; ++v) {
        if (follows) {
            denseCoefficients(v, r);
        }
        for (int i = 0; i < 3; ++i) {
            row(increments + i)[v] = follows ? denseValue(r, 1.0 + radau::c[i] * h / h_) - y[v]
                                             : radau::c[i] * h * dy[v];
        }
    }
}

double Radau::largestRelative(const double* values, const double* weights) const {
    double largest = 0.0;
    for (int v = 0; v < size_; ++v) {
        const double relative = std::fabs(values[v]) / weights[v];
        if (std::isnan(relative)) {
            return std::numeric_limits<double>::infinity();
        }
        largest = std::max(largest, relative);
    }
    return largest;
}

double Radau::findResidual(const double* weights) {
    double largest = 0.0;
    for (int i = 0; i < 3; ++i) {
        for (int v = 0; v < size_; ++v) {
            double sum = 0.0;
            for (int j = 0; j < 3; ++j) {
                sum += a[i][j] * row(stageRates + j)[v];
            }
            row(residuals + i)[v] = h_ * sum - row(increments + i)[v];
        }
        largest = std::max(largest, largestRelative(row(residuals + i), weights));
    }
    return largest;
}

void Radau::addResidual() {
    for (int i = 0; i < 3; ++i) {
        for (int v = 0; v < size_; ++v) {
            row(increments + i)[v] += row(residuals + i)[v];
            row(stages + i)[v] = row(start)[v] + row(increments + i)[v];
        }
    }
}

void Radau::correct() {
    for (std::size_t k = 0; k < newton_.size(); ++k) {
        const std::size_t offset = k * cylinderVariables;
        Eigen::Matrix<double, 9, 1> residual;
        for (int i = 0; i < 3; ++i) {
            for (int n = 0; n < 3; ++n) {
                residual[3 * i + n] = row(residuals + i)[offset + stiffVariables[n]];
            }
        }
        const Eigen::Matrix<double, 9, 1> correction = newton_[k].solve(residual);
        for (int i = 0; i < 3; ++i) {
            for (int n = 0; n < 3; ++n) {
                row(residuals + i)[offset + stiffVariables[n]] = correction[3 * i + n];
            }
        }
    }
    addResidual();
}

/// Error of the stiff variables only: what passes a port is as good as they are.
double Radau::error(const double* weights) {
    double largest = 0.0;
    for (std::size_t k = 0; k < filter_.size(); ++k) {
        const std::size_t offset = k * cylinderVariables;
        Eigen::Vector3d estimate;
        for (int n = 0; n < 3; ++n) {
            const std::size_t v = offset + stiffVariables[n];
            estimate[n] = row(startRates)[v];
            for (int i = 0; i < 3; ++i) {
                estimate[n] += e[i] / h_ * row(increments + i)[v];
            }
        }
        estimate = filter_[k].solve(estimate);
        for (int n = 0; n < 3; ++n) {
            const double relative = std::fabs(estimate[n]) / weights[offset + stiffVariables[n]];
            if (std::isnan(relative)) {
                return std::numeric_limits<double>::infinity();
            }
            largest = std::max(largest, relative);
        }
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

} // namespace lobewright::gas
