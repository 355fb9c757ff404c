#include "core/loads/quadrature.h"

#include "core/units.h"

#include <boost/math/quadrature/gauss.hpp>

#include <algorithm>
#include <cmath>

namespace lobewright::loads {

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

    const double longest = 3.0 * units::degree / pair.cyclesPerTurn();
    std::vector<double> theta;
    std::vector<double> weight;
    for (std::size_t i = 0; i + 1 < cuts.size(); ++i) {
        const double span = cuts[i + 1] - cuts[i];
        const int pieces = static_cast<int>(std::ceil(span / longest));
        for (int j = 0; j < pieces; ++j) {
            const double half = 0.5 * span / pieces;
            const double middle = cuts[i] + half * (2 * j + 1);
            for (std::size_t n = 0; n < Rule::abscissa().size(); ++n) {
                const double offset = half * Rule::abscissa()[n];
                for (const double at : {-offset, offset}) {
                    theta.push_back(middle + at);
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
