#pragma once

#include "core/gas/integrators/dense_step.h"

#include <Eigen/Dense>

#include <vector>

namespace lobewright::gas {

/// One step of the implicit three-stage Radau IIA method of order 5, for stretches where the gas
/// follows the pressure outside its ports so closely that an explicit method would have to crawl.
/// The stages are found by Newton's method simplified: only the stiff part of the derivatives,
/// which couples a few of the variables, is in its matrix; the converged stages do not depend on
/// it. All storage is taken once, at construction. [Hairer & Wanner, Solving Ordinary Differential
/// Equations II, §IV.8]
class Radau final : public DenseStep {
  public:
    /// `size` variables; `stiff`: indices of those that the matrix couples.
    Radau(int size, std::vector<int> stiff);
    /// `coupled`: the variables that the rates depend on, `stiff` among them. The others are mere
    /// integrals: to the stages they are shown as they were at the start of the step.
    Radau(int size, std::vector<int> stiff, const std::vector<VariableRange>& coupled);

    /// Takes a step h from (x, y) with dy = f(x, y); `derivatives`: ∂f/∂y of the stiff variables at
    /// (x, y), shape (stiff, stiff). `weights`: tolerated errors, > 0. False: the stages were not
    /// found; try a shorter step.
    template <class Rates>
    bool attempt(Rates&& rates, double x, double h, const double* y, const double* dy,
                 const Eigen::MatrixXd& derivatives, const double* weights);

    /// Largest |error estimate|/weight of the stiff variables in the last step.
    double error(const double* weights);

    const double* end() const override { return row(stages + 2); }
    const double* endRates() const override { return row(stageRates + 2); }
    void denseCoefficients(int variable, double* coefficients) const override;
    void denseCoefficientsOfFour(int first, double* coefficients) const override;

  private:
    enum Row {
        start,
        startRates,
        stages,
        stageRates = stages + 3,
        increments = stageRates + 3,
        residuals = increments + 3,
        rows = residuals + 3
    };
    double* row(int index) {
        return &storage_[static_cast<std::size_t>(index) * static_cast<std::size_t>(size_)];
    }
    const double* row(int index) const {
        return &storage_[static_cast<std::size_t>(index) * static_cast<std::size_t>(size_)];
    }
    void begin(double x, double h, const double* y, const double* dy,
               const Eigen::MatrixXd& derivatives);
    /// h·A·f − z from the stage rates; returns its largest size over the weights.
    double findResidual(const double* weights);
    void correct();                                 ///< Newton's correction from the residual
    void finish();                                  ///< z := h·A·f of all variables
    double stageSum(int stage, int variable) const; ///< Σ a·f
    void predict(double x, double h, const double* y, const double* dy);

    int size_;
    double x_ = 0.0, h_ = 0.0;
    bool found_ = false; ///< the last attempt succeeded
    std::vector<double> storage_;
    std::vector<int> stiff_, coupled_;
    Eigen::MatrixXd newtonMatrix_, filterMatrix_;
    Eigen::PartialPivLU<Eigen::MatrixXd> newton_;
    Eigen::PartialPivLU<Eigen::MatrixXd> filter_; ///< of the error estimate
    Eigen::VectorXd right_, solution_, estimate_, filtered_;
};

namespace radau {
inline constexpr double root6 = 2.449489742783178;
inline constexpr double c[3] = {(4.0 - root6) / 10.0, (4.0 + root6) / 10.0, 1.0};
inline constexpr int iterationLimit = 15;
inline constexpr double stageAccuracy = 0.1; ///< residual of the stages, a share of the tolerance
} // namespace radau

template <class Rates>
bool Radau::attempt(Rates&& rates, double x, double h, const double* y, const double* dy,
                    const Eigen::MatrixXd& derivatives, const double* weights) {
    begin(x, h, y, dy, derivatives);
    double previous = 0.0;
    for (int iteration = 0; iteration < radau::iterationLimit; ++iteration) {
        for (int i = 0; i < 3; ++i) {
            rates(x + radau::c[i] * h, row(stages + i), row(stageRates + i));
        }
        const double residual = findResidual(weights);
        if (residual < radau::stageAccuracy) {
            // z := h·A·f, so that what flows between the variables adds up exactly
            finish();
            found_ = true;
            rates(x + h, row(stages + 2), row(stageRates + 2));
            return true;
        }
        const bool diverges = iteration > 1 && residual > 2.0 * previous;
        if (!(residual < 1e12) || diverges) {
            return false;
        }
        correct();
        previous = residual;
    }
    return false;
}

} // namespace lobewright::gas
