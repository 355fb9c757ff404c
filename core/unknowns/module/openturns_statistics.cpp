// The only source that reads OpenTURNS: a library of its own, loaded on first use.
#include "core/unknowns/statistics.h"

#include <algorithm>
#include <cmath>
#include <mutex>
#include <openturns/ComposedDistribution.hxx>
#include <openturns/CorrectedLeaveOneOut.hxx>
#include <openturns/FixedStrategy.hxx>
#include <openturns/FunctionalChaosAlgorithm.hxx>
#include <openturns/FunctionalChaosSobolIndices.hxx>
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
#include <openturns/UserDefined.hxx>

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
    OT::Sample words(static_cast<OT::UnsignedInteger>(marginal.options), 1);
    for (int i = 0; i < marginal.options; ++i) {
        words(static_cast<OT::UnsignedInteger>(i), 0) = i;
    }
    return OT::UserDefined(words);
}

/// As many polynomials as the samples bear: those of the lowest degrees first, products of many
/// unknowns last. Few unknowns get higher degrees.
struct Basis {
    OT::HyperbolicAnisotropicEnumerateFunction order;
    OT::UnsignedInteger size;
};
Basis basisFor(OT::UnsignedInteger unknowns, OT::UnsignedInteger samples) {
    const double norm = unknowns <= 4 ? 0.9 : 0.6;
    const OT::UnsignedInteger most =
        std::min<OT::UnsignedInteger>(std::max<OT::UnsignedInteger>(samples * 3 / 4, 2), 400);
    Basis basis{OT::HyperbolicAnisotropicEnumerateFunction(unknowns, norm), 1};
    constexpr OT::UnsignedInteger highestDegree = 14;
    for (OT::UnsignedInteger degree = 1; degree <= highestDegree; ++degree) {
        const OT::UnsignedInteger size = basis.order.getBasisSizeFromTotalDegree(degree);
        if (size > most) {
            break;
        }
        basis.size = size;
    }
    // Not even all straight lines: as many as there is room for.
    basis.size = std::max(basis.size, std::min(most, unknowns + 1));
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
        const auto samples = static_cast<OT::UnsignedInteger>(x.rows());
        const auto unknowns = static_cast<OT::UnsignedInteger>(x.cols());
        OT::Sample input(samples, unknowns);
        OT::Sample output(samples, 1);
        for (OT::UnsignedInteger i = 0; i < samples; ++i) {
            const auto row = static_cast<Eigen::Index>(i);
            for (OT::UnsignedInteger k = 0; k < unknowns; ++k) {
                input(i, k) = x(row, static_cast<Eigen::Index>(k));
            }
            output(i, 0) = y[row];
        }
        OT::ComposedDistribution::DistributionCollection distributions;
        OT::OrthogonalProductPolynomialFactory::PolynomialFamilyCollection families;
        for (const Marginal& marginal : marginals) {
            distributions.add(distributionOf(marginal));
            families.add(OT::StandardDistributionPolynomialFactory(
                distributions[distributions.getSize() - 1]));
        }
        const Basis basis = basisFor(unknowns, samples);
        const OT::OrthogonalProductPolynomialFactory polynomials(families, basis.order);
        const OT::LeastSquaresMetaModelSelectionFactory selection{OT::LARS(),
                                                                  OT::CorrectedLeaveOneOut()};
        OT::FunctionalChaosAlgorithm algorithm(input, output,
                                               OT::ComposedDistribution(distributions),
                                               OT::FixedStrategy(polynomials, basis.size),
                                               OT::LeastSquaresStrategy(input, output, selection));
        algorithm.run();
        return surrogateOf(algorithm.getResult(), unknowns);
    }

    static std::optional<Surrogate> surrogateOf(const OT::FunctionalChaosResult& result,
                                                OT::UnsignedInteger unknowns) {
        const OT::FunctionalChaosSobolIndices indices(result);
        Surrogate surrogate;
        surrogate.quality = 1.0 - result.getRelativeErrors()[0];
        bool isFinite = std::isfinite(surrogate.quality);
        for (OT::UnsignedInteger k = 0; k < unknowns; ++k) {
            surrogate.first.push_back(indices.getSobolIndex(k));
            surrogate.total.push_back(indices.getSobolTotalIndex(k));
            isFinite = isFinite && std::isfinite(surrogate.first.back()) &&
                       std::isfinite(surrogate.total.back());
        }
        return isFinite ? std::optional(surrogate) : std::nullopt;
    }

    mutable std::mutex mutex_; ///< the library keeps state of its own
};

} // namespace

} // namespace lobewright::unknowns

extern "C" const lobewright::unknowns::Statistics* lobewrightStatistics() {
    static const lobewright::unknowns::OpenTurns statistics;
    return &statistics;
}
