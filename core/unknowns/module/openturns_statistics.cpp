// The only source that reads OpenTURNS: a library of its own, loaded on first use.
#include "core/unknowns/statistics.h"

#include <algorithm>
#include <cmath>
#include <mutex>
#include <openturns/ComposedDistribution.hxx>
#include <openturns/CorrectedLeaveOneOut.hxx>
#include <openturns/Exception.hxx>
#include <openturns/FixedStrategy.hxx>
#include <openturns/FunctionalChaosAlgorithm.hxx>
#include <openturns/HyperbolicAnisotropicEnumerateFunction.hxx>
#include <openturns/LARS.hxx>
#include <openturns/LeastSquaresMetaModelSelectionFactory.hxx>
#include <openturns/LeastSquaresStrategy.hxx>
#include <openturns/Normal.hxx>
#include <openturns/OrthogonalProductPolynomialFactory.hxx>
#include <openturns/ResourceMap.hxx>
#include <openturns/SobolSequence.hxx>
#include <openturns/StandardDistributionPolynomialFactory.hxx>
#include <openturns/Triangular.hxx>
#include <openturns/TruncatedDistribution.hxx>
#include <openturns/Uniform.hxx>
#include <set>
#include <vector>

namespace lobewright::unknowns {

namespace {

OT::Distribution distributionOf(const Marginal& marginal) {
    switch (marginal.kind) {
    case Marginal::Kind::uniform:
        return OT::Uniform(marginal.low, marginal.high);
    case Marginal::Kind::triangular:
        return OT::Triangular(marginal.low, marginal.mode, marginal.high);
    case Marginal::Kind::normal: {
        const OT::Normal normal(marginal.mean(), marginal.deviation());
        if (!marginal.isCut()) {
            return normal;
        }
        const double reach = 8.0 * marginal.deviation();
        return OT::TruncatedDistribution(normal, std::max(marginal.least, marginal.mean() - reach),
                                         std::min(marginal.most, marginal.mean() + reach));
    }
    case Marginal::Kind::choice:
        break;
    }
    // Its line is orthonormal to 1 on a contrast too, and it gets no other polynomial.
    return OT::Uniform(-std::sqrt(3.0), std::sqrt(3.0));
}

/// One column of numbers for each unknown, but for a choice of k words k − 1 contrasts (Helmert):
/// orthonormal where every word is as likely.
struct Column {
    std::size_t unknown = 0;
    int contrast = 0; ///< of a choice, from 1; 0: a number

    double value(const Marginal& marginal, double x) const {
        if (contrast == 0) {
            return x;
        }
        const double j = contrast;
        const double scale = std::sqrt(marginal.options / (j * (j + 1.0)));
        return x < j ? scale : x > j ? 0.0 : -j * scale;
    }
};
std::vector<Column> columnsOf(std::span<const Marginal> marginals) {
    std::vector<Column> columns;
    for (std::size_t k = 0; k < marginals.size(); ++k) {
        const bool isChoice = marginals[k].kind == Marginal::Kind::choice;
        const int last = isChoice ? marginals[k].options - 1 : 0;
        for (int contrast = isChoice ? 1 : 0; contrast <= last; ++contrast) {
            columns.push_back({k, contrast});
        }
    }
    return columns;
}

/// As many polynomials as the samples bear: those of the lowest degrees first, products of many
/// unknowns last. Few unknowns get higher degrees.
struct Basis {
    OT::HyperbolicAnisotropicEnumerateFunction order;
    OT::UnsignedInteger size;
};
Basis basisFor(const std::vector<Column>& columns, OT::UnsignedInteger samples) {
    const OT::UnsignedInteger width = columns.size();
    const double norm = width <= 4 ? 0.9 : 0.6;
    const OT::UnsignedInteger most =
        std::min<OT::UnsignedInteger>(std::max<OT::UnsignedInteger>(samples * 3 / 4, 2), 400);
    Basis basis{OT::HyperbolicAnisotropicEnumerateFunction(width, norm), 1};
    constexpr OT::UnsignedInteger highestDegree = 14;
    OT::Indices bounds(width);
    for (OT::UnsignedInteger k = 0; k < width; ++k) {
        bounds[k] = columns[k].contrast > 0 ? 1 : highestDegree;
    }
    basis.order.setUpperBound(bounds);
    try {
        for (OT::UnsignedInteger degree = 1; degree <= highestDegree; ++degree) {
            const OT::UnsignedInteger size = basis.order.getBasisSizeFromTotalDegree(degree);
            if (size > most) {
                break;
            }
            basis.size = size;
        }
    } catch (const OT::Exception&) { // there are no more: the bounds are reached
    }
    // Not even all straight lines: as many as there is room for.
    basis.size = std::max(basis.size, std::min(most, width + 1));
    return basis;
}

class OpenTurns final : public Statistics {
  public:
    OpenTurns() {
        // A third of the time of the default, with the same answer.
        OT::ResourceMap::SetAsString("LeastSquaresMetaModelSelection-DecompositionMethod",
                                     "Cholesky");
    }

    Matrix sobolPoints(int unknowns, long from, long to) const override {
        const std::scoped_lock lock(mutex_);
        OT::SobolSequence sequence(static_cast<OT::UnsignedInteger>(unknowns));
        Matrix points(to - from, unknowns);
        for (long i = 0; i < to; ++i) {
            const OT::Point point = sequence.generate();
            for (int k = 0; i >= from && k < unknowns; ++k) {
                points(i - from, k) = point[static_cast<OT::UnsignedInteger>(k)];
            }
        }
        return points;
    }

    std::optional<Surrogate> fit(const Matrix& x, const Samples& y,
                                 std::span<const Marginal> marginals) const override {
        const std::scoped_lock lock(mutex_);
        try {
            return fitted(x, y, marginals);
        } catch (const std::exception&) { // its ways of saying that there is no fit
            return std::nullopt;
        }
    }

  private:
    static std::optional<Surrogate> fitted(const Matrix& x, const Samples& y,
                                           std::span<const Marginal> marginals) {
        const auto columns = columnsOf(marginals);
        const auto samples = static_cast<OT::UnsignedInteger>(x.rows());
        OT::Sample input(samples, columns.size());
        OT::Sample output(samples, 1);
        for (OT::UnsignedInteger i = 0; i < samples; ++i) {
            const auto row = static_cast<Eigen::Index>(i);
            for (OT::UnsignedInteger k = 0; k < columns.size(); ++k) {
                const std::size_t unknown = columns[k].unknown;
                input(i, k) = columns[k].value(marginals[unknown],
                                               x(row, static_cast<Eigen::Index>(unknown)));
            }
            output(i, 0) = y[row];
        }
        OT::ComposedDistribution::DistributionCollection distributions;
        OT::OrthogonalProductPolynomialFactory::PolynomialFamilyCollection families;
        for (const Column& column : columns) {
            const OT::Distribution distribution = distributionOf(marginals[column.unknown]);
            distributions.add(distribution);
            families.add(OT::StandardDistributionPolynomialFactory(distribution));
        }
        const Basis basis = basisFor(columns, samples);
        const OT::OrthogonalProductPolynomialFactory polynomials(families, basis.order);
        const OT::LeastSquaresMetaModelSelectionFactory selection{OT::LARS(),
                                                                  OT::CorrectedLeaveOneOut()};
        OT::FunctionalChaosAlgorithm algorithm(input, output,
                                               OT::ComposedDistribution(distributions),
                                               OT::FixedStrategy(polynomials, basis.size),
                                               OT::LeastSquaresStrategy(input, output, selection));
        algorithm.run();
        return surrogateOf(algorithm.getResult(), basis, columns, marginals.size());
    }

    /// Sobol' indices are sums of squared coefficients: of the polynomials of one unknown alone,
    /// and of all in which it appears [Sudret 2008].
    static std::optional<Surrogate> surrogateOf(const OT::FunctionalChaosResult& result,
                                                const Basis& basis,
                                                const std::vector<Column>& columns,
                                                std::size_t unknowns) {
        Surrogate surrogate;
        surrogate.quality = 1.0 - result.getRelativeErrors()[0];
        surrogate.first.assign(unknowns, 0.0);
        surrogate.total.assign(unknowns, 0.0);
        const OT::Indices chosen = result.getIndices();
        const OT::Sample coefficients = result.getCoefficients();
        double variance = 0.0;
        for (OT::UnsignedInteger i = 0; i < chosen.getSize(); ++i) {
            const OT::Indices degrees = basis.order(chosen[i]);
            std::set<std::size_t> present;
            for (std::size_t k = 0; k < columns.size(); ++k) {
                if (degrees[k] > 0) {
                    present.insert(columns[k].unknown);
                }
            }
            const double part = coefficients(i, 0) * coefficients(i, 0);
            for (const std::size_t k : present) {
                surrogate.total[k] += part;
                surrogate.first[k] += present.size() == 1 ? part : 0.0;
            }
            variance += present.empty() ? 0.0 : part;
        }
        if (!std::isfinite(surrogate.quality) || !std::isfinite(variance) || !(variance > 0.0)) {
            return std::nullopt;
        }
        for (std::size_t k = 0; k < unknowns; ++k) {
            surrogate.first[k] /= variance;
            surrogate.total[k] /= variance;
        }
        return surrogate;
    }

    mutable std::mutex mutex_; ///< the library keeps state of its own
};

} // namespace

} // namespace lobewright::unknowns

extern "C" const lobewright::unknowns::Statistics* lobewrightStatistics() {
    static const lobewright::unknowns::OpenTurns statistics;
    return &statistics;
}
