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

using Rule = boost::math::quadrature::gauss<double, Quadrature::nodesOfPiece>;

/// Puts the nodes of one piece from index `at` on.
template <class Nodes>
void addPiece(Nodes& to, std::size_t at, double from, double until) {
    const double half = 0.5 * (until - from);
    auto place = static_cast<Eigen::Index>(at);
    const auto add = [&](double offset, std::size_t n) {
        to.theta[place] = 0.5 * (from + until) + offset;
        to.weight[place] = half * Rule::weights()[n];
        ++place;
    };
    for (std::size_t n = Rule::abscissa().size(); n-- > 1;) {
        add(-half * Rule::abscissa()[n], n);
    }
    for (std::size_t n = 0; n < Rule::abscissa().size(); ++n) {
        add(half * Rule::abscissa()[n], n);
    }
}

Quadrature onPieces(std::vector<double> bounds) {
    const std::size_t pieces = bounds.size() - 1;
    const auto nodes = static_cast<Eigen::Index>(pieces * Quadrature::nodesOfPiece);
    Quadrature result{Samples(nodes), Samples(nodes), std::move(bounds)};
    for (std::size_t i = 0; i < pieces; ++i) {
        addPiece(result, i * Quadrature::nodesOfPiece, result.bounds[i], result.bounds[i + 1]);
    }
    return result;
}

} // namespace

Quadrature periodQuadrature(double period, const std::vector<double>& breaks, double usual) {
    std::vector<double> cuts{0.0};
    for (const double angle : breaks) {
        cuts.push_back(mechanism::wrapped(angle, period));
    }
    std::sort(cuts.begin(), cuts.end());
    cuts.push_back(period);

    std::vector<double> bounds;
    for (std::size_t i = 0; i + 1 < cuts.size(); ++i) {
        const double span = cuts[i + 1] - cuts[i];
        const int pieces = static_cast<int>(std::ceil(span / usual));
        for (int j = 0; j < pieces; ++j) {
            bounds.push_back(cuts[i] + span * graded(static_cast<double>(j) / pieces));
        }
    }
    bounds.push_back(period);
    return onPieces(std::move(bounds));
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

Division dividedAt(const Quadrature& whole, const std::vector<double>& breaks) {
    std::vector<double> inside;
    inside.reserve(breaks.size());
    for (const double angle : breaks) {
        inside.push_back(mechanism::wrapped(angle, whole.bounds.back()));
    }
    std::sort(inside.begin(), inside.end());
    Division result;
    std::vector<double> cuts; ///< both bounds of every part
    for (auto next = inside.begin(); next != inside.end();) {
        const auto above = std::upper_bound(whole.bounds.begin(), whole.bounds.end(), *next);
        if (above == whole.bounds.end()) {
            break; // the end of the period
        }
        result.pieces.push_back(static_cast<std::size_t>(above - whole.bounds.begin()) - 1);
        double from = *(above - 1);
        for (; next != inside.end() && *next < *above; ++next) {
            cuts.insert(cuts.end(), {from, *next});
            from = *next;
        }
        cuts.insert(cuts.end(), {from, *above});
    }
    const std::size_t parts = cuts.size() / 2;
    const auto nodes = static_cast<Eigen::Index>(parts * Quadrature::nodesOfPiece);
    result.theta = result.weight = Samples(nodes);
    for (std::size_t i = 0; i < parts; ++i) {
        addPiece(result, i * Quadrature::nodesOfPiece, cuts[2 * i], cuts[2 * i + 1]);
    }
    return result;
}

} // namespace lobewright::loads
