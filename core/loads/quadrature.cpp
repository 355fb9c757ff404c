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

Quadrature periodQuadrature(const mechanism::OpposedPair& pair, const std::vector<double>& breaks) {
    using Rule = boost::math::quadrature::gauss<double, 5>;
    const double period = pair.period();
    std::vector<double> cuts{0.0};
    const auto add = [&](double angle) { cuts.push_back(mechanism::wrapped(angle, period)); };
    std::for_each(pair.junctions().begin(), pair.junctions().end(), add);
    std::for_each(breaks.begin(), breaks.end(), add);
    for (const End end : bothEnds) {
        for (const mechanism::Extreme& extreme : pair.turningPoints(end)) {
            add(extreme.begin);
            add(extreme.end);
        }
    }
    std::sort(cuts.begin(), cuts.end());
    cuts.push_back(period);

    const double usual = 6.0 * units::degree / pair.cyclesPerTurn();
    std::vector<double> theta;
    std::vector<double> weight;
    for (std::size_t i = 0; i + 1 < cuts.size(); ++i) {
        const double span = cuts[i + 1] - cuts[i];
        const int pieces = static_cast<int>(std::ceil(span / usual));
        for (int j = 0; j < pieces; ++j) {
            const double from = cuts[i] + span * graded(static_cast<double>(j) / pieces);
            const double to = cuts[i] + span * graded(static_cast<double>(j + 1) / pieces);
            const double half = 0.5 * (to - from);
            for (std::size_t n = 0; n < Rule::abscissa().size(); ++n) {
                const double offset = half * Rule::abscissa()[n];
                for (const double at : {-offset, offset}) {
                    theta.push_back(0.5 * (from + to) + at);
                    weight.push_back(half * Rule::weights()[n]);
                    if (offset == 0.0) {
                        break;
                    }
                }
            }
        }
    }
    const auto size = static_cast<Eigen::Index>(theta.size());
    return {Eigen::Map<const Samples>(theta.data(), size),
            Eigen::Map<const Samples>(weight.data(), size)};
}

} // namespace lobewright::loads
