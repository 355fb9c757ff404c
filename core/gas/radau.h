#pragma once

#include "core/gas/cylinder.h"
#include "core/gas/dense_step.h"

#include <Eigen/Dense>

#include <span>
#include <vector>

namespace lobewright::gas {

/// One step of the implicit three-stage Radau IIA method of order 5, for stretches where the gas
/// follows the pressure outside its ports so closely that an explicit method would have to crawl.
/// The stages are found by Newton's method simplified: only the stiff part of the derivatives,
/// which couples air, products and temperature of each cylinder, is in its matrix; the converged
/// stages do not depend on it. All storage is taken once, at construction.
/// [Hairer & Wanner, Solving Ordinary Differential Equations II, §IV.8]
class Radau final : public DenseStep {
  public:
    /// `size` variables; cylinder k's block stands at k·cylinderVariables.
    Radau(int size, int cylinders);

    /// Takes a step h from (x, y) with dy = f(x, y); `blocks`: one a cylinder, at (x, y).
    /// `weights`: tolerated errors, > 0. False: the stages were not found; try a shorter step.
    template <class Rates>
    bool attempt(Rates&& rates, double x, double h, const double* y, const double* dy,
                 std::span<const StiffBlock> blocks, const double* weights);

    /// Largest |error estimate|/weight of the last step.
    double error(const double* weights);

    const double* end() const override { return row(stages + 2); }
    const double* endRates() const override { return row(stageRates + 2); }
    void denseCoefficients(int variable, double* coefficients) const override;

  private:
    enum Row {
        start,
        startRates,
        stages,
        stageRates = stages + 3,
        increments = stageRates + 3,
        errors = increments + 3,
        rows
    };
    double* row(int index) { return &storage_[static_cast<std::size_t>(index * size_)]; }
    const double* row(int index) const {
        return &storage_[static_cast<std::size_t>(index * size_)];
    }
    void begin(double h, const double* y, const double* dy, std::span<const StiffBlock> blocks);
    /// One Newton correction from the stage rates; returns its largest size over the weights.
    double correct(const double* weights);
    double largestRelative(const double* values, const double* weights) const;

    int size_;
    double h_ = 0.0;
    std::vector<double> storage_;
    std::vector<Eigen::PartialPivLU<Eigen::Matrix<double, 9, 9>>> newton_;
    std::vector<Eigen::PartialPivLU<Eigen::Matrix3d>> filter_; ///< of the error estimate
};

namespace radau {
inline constexpr double root6 = 2.449489742783178;
inline constexpr double c[3] = {(4.0 - root6) / 10.0, (4.0 + root6) / 10.0, 1.0};
inline constexpr int iterationLimit = 12;
inline constexpr double stageAccuracy = 1e-2; ///< of the stages, as a share of the tolerance
} // namespace radau

template <class Rates>
bool Radau::attempt(Rates&& rates, double x, double h, const double* y, const double* dy,
                    std::span<const StiffBlock> blocks, const double* weights) {
    begin(h, y, dy, blocks);
    double previous = 0.0;
    for (int iteration = 0; iteration < radau::iterationLimit; ++iteration) {
        for (int i = 0; i < 3; ++i) {
            rates(x + radau::c[i] * h, row(stages + i), row(stageRates + i));
        }
        const double change = correct(weights);
        if (!(change < 1e12)) {
            return false;
        }
        if (change == 0.0) {
            break;
        }
        if (iteration > 0) {
            const double contraction = change / previous;
            if (contraction >= 1.0 && change > radau::stageAccuracy) {
                return false;
            }
            if (contraction / (1.0 - std::min(contraction, 0.99)) * change < radau::stageAccuracy) {
                break;
            }
        }
        previous = change;
        if (iteration + 1 == radau::iterationLimit) {
            return false;
        }
    }
    rates(x + h, row(stages + 2), row(stageRates + 2));
    return true;
}

} // namespace lobewright::gas
