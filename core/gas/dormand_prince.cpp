#include "core/gas/dormand_prince.h"

#include <cmath>
#include <limits>

namespace lobewright::gas {
namespace {

/// Weights of the continuous extension. [Hairer, Nørsett & Wanner, eq. II.6.12, in the form that
/// needs no further stage]
constexpr double d[7] = {-12715105075.0 / 11282082432.0,  0.0,
                         87487479700.0 / 32700410799.0,   -10690763975.0 / 1880347072.0,
                         701980252875.0 / 199316789632.0, -1453857185.0 / 822651844.0,
                         69997945.0 / 29380423.0};

} // namespace

DormandPrince::DormandPrince(int size)
    : size_(size), storage_(static_cast<std::size_t>(size) * rows, 0.0) {}

double DormandPrince::error(const double* weights) const {
    double largest = 0.0;
    for (int i = 0; i < size_; ++i) {
        double sum = 0.0;
        for (int j = 0; j < 7; ++j) {
            sum += dormandPrince::e[j] * row(firstStage + j)[i];
        }
        const double relative = std::fabs(h_ * sum) / weights[i];
        if (!(relative <= largest)) {
            if (std::isnan(relative)) {
                return std::numeric_limits<double>::infinity();
            }
            largest = relative;
        }
    }
    return largest;
}

void DormandPrince::denseCoefficients(int variable, double* r) const {
    const double start = row(startRow)[variable];
    const double rise = row(endRow)[variable] - start;
    const double first = h_ * row(firstStage)[variable] - rise;
    r[0] = start;
    r[1] = rise;
    r[2] = first;
    r[3] = rise - h_ * row(firstStage + 6)[variable] - first;
    double sum = 0.0;
    for (int j = 0; j < 7; ++j) {
        sum += d[j] * row(firstStage + j)[variable];
    }
    r[4] = h_ * sum;
}

} // namespace lobewright::gas
