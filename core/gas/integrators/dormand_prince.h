#pragma once

#include "core/gas/integrators/dense_step.h"

#include <vector>

namespace lobewright::gas {

/// One step of the explicit Runge–Kutta pair of Dormand and Prince of orders 5 and 4, with the
/// continuous extension of order 4. All storage is taken once, at construction.
/// [Dormand & Prince 1980; Hairer, Nørsett & Wanner, Solving Ordinary Differential Equations I,
/// §II.5, §II.6]
class DormandPrince final : public DenseStep {
  public:
    explicit DormandPrince(int size);
    /// `coupled`: the variables that the rates depend on. The others are mere integrals: to the
    /// stages between they are shown as they were at the start of the step.
    DormandPrince(int size, std::vector<VariableRange> coupled);
    int size() const { return size_; }

    /// Takes a step h from (x, y) with dy = f(x, y) given. `rates(x, y, dy)` is called six times,
    /// the last time at the end of the step: it becomes the first stage of the next one.
    template <class Rates>
    void attempt(Rates&& rates, double x, double h, const double* y, const double* dy);

    /// Largest |error estimate|/weight of the last step; weight_i > 0, shape (size).
    double error(const double* weights) const;

    const double* end() const override { return row(endRow); }
    const double* endRates() const override { return row(firstStage + 6); }
    void denseCoefficients(int variable, double* coefficients) const override;
    void denseCoefficientsOfFour(int first, double* coefficients) const override;

  private:
    enum RowIndex { firstStage = 0, startRow = 7, endRow = 8, stageRow = 9, rows = 10 };
    double* row(int index) {
        return &storage_[static_cast<std::size_t>(index) * static_cast<std::size_t>(stride_)];
    }
    const double* row(int index) const {
        return &storage_[static_cast<std::size_t>(index) * static_cast<std::size_t>(stride_)];
    }
    void begin(const double* y, const double* dy);
    template <int stage>
    void advance(double h);
    void advanceTo(int stage, double h); ///< 1 … 5
    void finish(double h);
    void findDense(int first, double* coefficients) const;

    int size_;
    /// Variables are worked on four at a time: rows have room for three more than there are.
    int stride_;
    std::vector<VariableRange> coupled_;
    double h_ = 0.0;
    std::vector<double> storage_;
};

namespace dormandPrince {
inline constexpr double c[7] = {0.0, 1.0 / 5, 3.0 / 10, 4.0 / 5, 8.0 / 9, 1.0, 1.0};
inline constexpr double a[7][6] = {
    {},
    {1.0 / 5},
    {3.0 / 40, 9.0 / 40},
    {44.0 / 45, -56.0 / 15, 32.0 / 9},
    {19372.0 / 6561, -25360.0 / 2187, 64448.0 / 6561, -212.0 / 729},
    {9017.0 / 3168, -355.0 / 33, 46732.0 / 5247, 49.0 / 176, -5103.0 / 18656},
    {35.0 / 384, 0.0, 500.0 / 1113, 125.0 / 192, -2187.0 / 6784, 11.0 / 84}};
/// Fifth less fourth order.
inline constexpr double e[7] = {71.0 / 57600,      0.0,          -71.0 / 16695, 71.0 / 1920,
                                -17253.0 / 339200, 22.0 / 525.0, -1.0 / 40};
} // namespace dormandPrince

template <class Rates>
void DormandPrince::attempt(Rates&& rates, double x, double h, const double* y, const double* dy) {
    h_ = h;
    begin(y, dy);
    const auto stageAt = [&](int stage, double* at) {
        rates(x + dormandPrince::c[stage] * h, at, row(firstStage + stage));
    };
    double* at = row(stageRow);
    advanceTo(1, h);
    stageAt(1, at);
    advanceTo(2, h);
    stageAt(2, at);
    advanceTo(3, h);
    stageAt(3, at);
    advanceTo(4, h);
    stageAt(4, at);
    advanceTo(5, h);
    stageAt(5, at);
    finish(h);
    stageAt(6, row(endRow));
}

} // namespace lobewright::gas
