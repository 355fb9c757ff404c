#include "core/contact/crown_table.h"

#include "core/contact/elliptic_contact.h"
#include "core/units.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace lobewright::contact {

namespace {

constexpr Eigen::Index ellipseNodes = 14;
constexpr Eigen::Index shearNodes = 8;

} // namespace

Samples ChebyshevCurve::points(double low, double high, Eigen::Index count) {
    const Samples angle = Samples::LinSpaced(count, 0.0, units::pi);
    return 0.5 * (low + high) - 0.5 * (high - low) * angle.cos();
}

ChebyshevCurve::ChebyshevCurve(double low, double high, Samples values)
    : points_(points(low, high, values.size())), values_(std::move(values)) {}

Samples ChebyshevCurve::operator()(const Samples& x) const {
    const Eigen::Index last = points_.size() - 1;
    constexpr double onNode = 1e-200; // the value of that node prevails
    Samples numerator = Samples::Zero(x.size());
    Samples denominator = Samples::Zero(x.size());
    for (Eigen::Index j = 0; j <= last; ++j) {
        const double weight = (j % 2 == 0 ? 1.0 : -1.0) * (j == 0 || j == last ? 0.5 : 1.0);
        const Samples distance = x - points_(j);
        const Samples share = weight / (distance == 0.0).select(onNode, distance);
        numerator += share * values_(j);
        denominator += share;
    }
    return numerator / denominator;
}

CrownTable::Curves CrownTable::tabulate(double low, double high, double poissonRatio) {
    Samples logAxisRatio = ChebyshevCurve::points(low, high, ellipseNodes);
    Samples secondIntegral(ellipseNodes);
    for (Eigen::Index i = 0; i < ellipseNodes; ++i) {
        const Ellipticity exact = ellipticity(std::exp(std::max(logAxisRatio(i), 0.0)));
        logAxisRatio(i) = std::log(exact.k);
        secondIntegral(i) = exact.second;
    }
    Samples shearRatio = ChebyshevCurve::points(low, high, shearNodes);
    Samples shearDepth(shearNodes);
    for (Eigen::Index i = 0; i < shearNodes; ++i) {
        const double k = ellipticity(std::exp(std::max(shearRatio(i), 0.0))).k;
        const DeepestShear exact = ellipticDeepestShear(k, poissonRatio);
        shearRatio(i) = exact.ratio;
        shearDepth(i) = exact.depth;
    }
    return {{low, high, std::move(logAxisRatio)},
            {low, high, std::move(secondIntegral)},
            {low, high, std::move(shearRatio)},
            {low, high, std::move(shearDepth)}};
}

CrownTable::CrownTable(double lowest, double highest, double poissonRatio)
    : low_(std::log(lowest)), high_(std::max(std::log(highest), low_ + 1e-3)),
      curves_(tabulate(low_, high_, poissonRatio)) {}

CrownTable::Ellipses CrownTable::at(const Samples& ratio) const {
    const Samples logarithm = ratio.log().max(low_).min(high_);
    return {curves_.logAxisRatio(logarithm).exp(), curves_.secondIntegral(logarithm),
            curves_.shearRatio(logarithm), curves_.shearDepth(logarithm)};
}

} // namespace lobewright::contact
