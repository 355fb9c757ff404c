#include "core/gas/integrators/dormand_prince.h"

#include "core/wide.h"

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

DormandPrince::DormandPrince(int size) : DormandPrince(size, {{0, size}}) {}

DormandPrince::DormandPrince(int size, std::vector<VariableRange> coupled)
    : size_(size), coupled_(inPairs(std::move(coupled))),
      storage_(static_cast<std::size_t>(size) * rows + 1, 0.0) {}

std::vector<VariableRange> DormandPrince::inPairs(std::vector<VariableRange> ranges) {
    for (VariableRange& range : ranges) {
        range.end += (range.end - range.begin) % 2;
    }
    return ranges;
}

template <int stage>
inline void DormandPrince::advance(double h) {
    const double* start = row(startRow);
    const double* rates = row(firstStage);
    double* out = row(stageRow);
    using Pair = Eigen::Map<const Eigen::Array2d>;
    for (const VariableRange& range : coupled_) {
        for (int i = range.begin; i < range.end; i += 2) {
            Eigen::Array2d sum = dormandPrince::a[stage][0] * Pair(rates + i);
            for (int j = 1; j < stage; ++j) {
                sum += dormandPrince::a[stage][j] * Pair(rates + j * size_ + i);
            }
            Eigen::Map<Eigen::Array2d>(out + i) = Pair(start + i) + h * sum;
        }
    }
}

LW_WIDE void DormandPrince::advanceTo(int stage, double h) {
    switch (stage) {
    case 1:
        return advance<1>(h);
    case 2:
        return advance<2>(h);
    case 3:
        return advance<3>(h);
    case 4:
        return advance<4>(h);
    default:
        return advance<5>(h);
    }
}

/// The fifth-order result, of all variables.
LW_WIDE void DormandPrince::finish(double h) {
    constexpr const double* a = dormandPrince::a[6];
    Eigen::Map<Eigen::ArrayXd>(row(endRow), size_) =
        Row(row(startRow), size_) +
        h * (a[0] * stageRates(0) + a[2] * stageRates(2) + a[3] * stageRates(3) +
             a[4] * stageRates(4) + a[5] * stageRates(5));
}

LW_WIDE double DormandPrince::error(const double* weights) const {
    constexpr const double* e = dormandPrince::e;
    const double largest =
        ((h_ * (e[0] * stageRates(0) + e[2] * stageRates(2) + e[3] * stageRates(3) +
                e[4] * stageRates(4) + e[5] * stageRates(5) + e[6] * stageRates(6)))
             .abs() /
         Row(weights, size_))
            .maxCoeff<Eigen::PropagateNaN>();
    return std::isnan(largest) ? std::numeric_limits<double>::infinity() : largest;
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
