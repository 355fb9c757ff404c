#include "core/gas/integrators/dormand_prince.h"

#include "core/wide.h"

#include <algorithm>
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

/// Does it for the variables 0 … size − 1, four at a time while there are as many: `four(i)`, then
/// `one(i)`.
template <class Four, class One>
inline void forAll(int size, Four&& four, One&& one) {
    int i = 0;
    for (; i + 4 <= size; i += 4) {
        four(i);
    }
    for (; i < size; ++i) {
        one(i);
    }
}

} // namespace

DormandPrince::DormandPrince(int size) : DormandPrince(size, {{0, size}}) {}

DormandPrince::DormandPrince(int size, std::vector<VariableRange> coupled)
    : size_(size), stride_(size + 3), coupled_(std::move(coupled)),
      storage_(static_cast<std::size_t>(stride_) * rows, 0.0) {}

LW_WIDE void DormandPrince::begin(const double* y, const double* dy) {
    double *start = row(startRow), *stage = row(stageRow), *first = row(firstStage);
    forAll(
        size_,
        [&](int i) {
            fourAt(start + i) = fourAt(stage + i) = fourAt(y + i);
            fourAt(first + i) = fourAt(dy + i);
        },
        [&](int i) {
            start[i] = stage[i] = y[i];
            first[i] = dy[i];
        });
}

template <int stage>
inline void DormandPrince::advance(double h) {
    const double* start = row(startRow);
    const double* rates = row(firstStage);
    double* out = row(stageRow);
    for (const VariableRange& range : coupled_) {
        // up to three beyond the range do no harm
        for (int i = range.begin; i < range.end; i += 4) {
            Four sum = dormandPrince::a[stage][0] * fourAt(rates + i);
            for (int j = 1; j < stage; ++j) {
                sum += dormandPrince::a[stage][j] * fourAt(rates + j * stride_ + i);
            }
            fourAt(out + i) = fourAt(start + i) + h * sum;
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
    const double *start = row(startRow), *f = row(firstStage);
    double* end = row(endRow);
    const int n = stride_;
    for (int i = 0; i < size_; i += 4) {
        fourAt(end + i) =
            fourAt(start + i) + h * (a[0] * fourAt(f + i) + a[2] * fourAt(f + 2 * n + i) +
                                     a[3] * fourAt(f + 3 * n + i) + a[4] * fourAt(f + 4 * n + i) +
                                     a[5] * fourAt(f + 5 * n + i));
    }
}

LW_WIDE double DormandPrince::error(const double* weights) const {
    constexpr const double* e = dormandPrince::e;
    const double* f = row(firstStage);
    const int n = stride_;
    Four largest{}, all{}; // the sum of all tells whether one is not a number
    double last = 0.0;
    forAll(
        size_,
        [&](int i) {
            Four share = h_ / fourAt(weights + i) *
                         (e[0] * fourAt(f + i) + e[2] * fourAt(f + 2 * n + i) +
                          e[3] * fourAt(f + 3 * n + i) + e[4] * fourAt(f + 4 * n + i) +
                          e[5] * fourAt(f + 5 * n + i) + e[6] * fourAt(f + 6 * n + i));
            share = share < 0.0 ? -share : share;
            largest = share > largest ? share : largest;
            all += share;
        },
        [&](int i) {
            const double share =
                std::fabs(h_ / weights[i] *
                          (e[0] * f[i] + e[2] * f[2 * n + i] + e[3] * f[3 * n + i] +
                           e[4] * f[4 * n + i] + e[5] * f[5 * n + i] + e[6] * f[6 * n + i]));
            last = std::max(last, share);
            all[0] += share;
        });
    if (std::isnan(all[0] + all[1] + all[2] + all[3])) {
        return std::numeric_limits<double>::infinity();
    }
    return std::max({largest[0], largest[1], largest[2], largest[3], last});
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

// A virtual function cannot be compiled twice.
void DormandPrince::denseCoefficientsOfFour(int variable, double* r) const {
    findDense(variable, r);
}

LW_WIDE void DormandPrince::findDense(int variable, double* r) const {
    const auto at = [&](int index) -> const FourOf& { return fourAt(row(index) + variable); };
    const Four start = at(startRow);
    const Four rise = at(endRow) - start;
    const Four first = h_ * at(firstStage) - rise;
    fourAt(r) = start;
    fourAt(r + 4) = rise;
    fourAt(r + 8) = first;
    fourAt(r + 12) = rise - h_ * at(firstStage + 6) - first;
    fourAt(r + 16) =
        h_ * (d[0] * at(firstStage) + d[2] * at(firstStage + 2) + d[3] * at(firstStage + 3) +
              d[4] * at(firstStage + 4) + d[5] * at(firstStage + 5) + d[6] * at(firstStage + 6));
}

} // namespace lobewright::gas
