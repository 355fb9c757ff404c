#pragma once

#include "core/four.h"

namespace lobewright::gas {

/// Variables begin … end − 1 of a state.
struct VariableRange {
    int begin = 0, end = 0;
};

/// A step that has been taken, with its continuous extension. Each variable is a polynomial in the
/// share s of the step, given by `denseTerms` coefficients; see `denseValue`.
class DenseStep {
  public:
    static constexpr int denseTerms = 5;
    virtual ~DenseStep() = default;
    virtual const double* end() const = 0;      ///< y at the end of the step
    virtual const double* endRates() const = 0; ///< dy/dx there
    virtual void denseCoefficients(int variable, double* coefficients) const = 0;
    /// Of four variables from `first` on, those of each term side by side; shape (denseTerms, 4).
    virtual void denseCoefficientsOfFour(int first, double* coefficients) const = 0;
};

/// Value of the continuous extension from its coefficients.
inline double denseValue(const double* r, double s) {
    const double q = 1.0 - s;
    return r[0] + s * (r[1] + q * (r[2] + s * (r[3] + q * r[4])));
}

/// Values of four variables from their coefficients side by side.
inline void denseValuesOfFour(const double* r, double s, double* values) {
    const double q = 1.0 - s;
    fourAt(values) =
        fourAt(r) +
        s * (fourAt(r + 4) + q * (fourAt(r + 8) + s * (fourAt(r + 12) + q * fourAt(r + 16))));
}

} // namespace lobewright::gas
