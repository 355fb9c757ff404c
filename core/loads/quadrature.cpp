#include "core/loads/quadrature.h"

#include "core/units.h"

#include <boost/math/quadrature/gauss.hpp>

#include <algorithm>
#include <cmath>

namespace lobewright::loads {

namespace {

/// Pieces crowd at both ends of an interval: pressure leaves a port event like a broken power.
double graded(double share) {
    return share * share * (3.0 - 2.0 * share);
}

} // namespace

Quadrature periodQuadrature(double period, const std::vector<double>& breaks, double usual) {
    using Rule = boost::math::quadrature::gauss<double, 5>;
    std::vector<double> cuts{0.0};
    for (const double angle : breaks) {
        cuts.push_back(mechanism::wrapped(angle, period));
    }
    std::sort(cuts.begin(), cuts.end());
    cuts.push_back(period);

    std::vector<double> theta;
    std::vector<double> weight;
    for (std::size_t i = 0; i + 1 < cuts.size(); ++i) {
        const double span = cuts[i + 1] - cuts[i];
        const int pieces = static_cast<int>(std::ceil(span / usual));
        for (int j = 0; j < pieces; ++j) {
            const double from = cuts[i] + span * graded(static_cast<double>(j) / pieces);
            const double to = cuts[i] + span * graded(static_cast<double>(j + 1) / pieces);
            const double half = 0.5 * (to - from);
            const auto add = [&](double offset, std::size_t n) {
                theta.push_back(0.5 * (from + to) + offset);
                weight.push_back(half * Rule::weights()[n]);
            };
            for (std::size_t n = Rule::abscissa().size(); n-- > 1;) {
                add(-half * Rule::abscissa()[n], n);
            }
            for (std::size_t n = 0; n < Rule::abscissa().size(); ++n) {
                add(half * Rule::abscissa()[n], n);
            }
        }
    }
    const auto size = static_cast<Eigen::Index>(theta.size());
    return {Eigen::Map<const Samples>(theta.data(), size),
            Eigen::Map<const Samples>(weight.data(), size)};
}

Quadrature periodQuadrature(const mechanism::OpposedPair& pair, const std::vector<double>& breaks) {
    std::vector<double> cuts = breaks;
    cuts.insert(cuts.end(), pair.junctions().begin(), pair.junctions().end());
    for (const End end : bothEnds) {
        for (const mechanism::Extreme& extreme : pair.turningPoints(end)) {
            cuts.push_back(extreme.begin);
            cuts.push_back(extreme.end);
        }
    }
    return periodQuadrature(pair.period(), cuts, 6.0 * units::degree / pair.cyclesPerTurn());
}

} // namespace lobewright::loads
