#include "core/contact/elliptic_contact.h"
#include "core/contact/stations.h"

#include <boost/math/interpolators/barycentric_rational.hpp>

#include <algorithm>
#include <cmath>
#include <vector>

namespace lobewright::contact {

namespace {

/// Deepest shear over the range of axis ratios of one turn: exact at a few ratios, rational
/// interpolation in ln k between them (error below 1e-6).
class ShearByRatio {
  public:
    ShearByRatio(double lowest, double highest, double poissonRatio) {
        constexpr int nodes = 8;
        const double span = std::max(std::log(highest / lowest), 1e-3);
        for (int i = 0; i < nodes; ++i) {
            const double at = std::log(lowest) + span * i / (nodes - 1);
            const DeepestShear exact = ellipticDeepestShear(std::exp(at), poissonRatio);
            logarithm_.push_back(at);
            ratio_.push_back(exact.ratio);
            depth_.push_back(exact.depth);
        }
    }
    Samples ratio(const Samples& k) const { return interpolated(ratio_, k); }
    Samples depth(const Samples& k) const { return interpolated(depth_, k); }

  private:
    Samples interpolated(const std::vector<double>& values, const Samples& k) const {
        const boost::math::barycentric_rational<double> curve(logarithm_.data(), values.data(),
                                                              values.size());
        return k.log().unaryExpr([&curve](double at) { return curve(at); });
    }
    std::vector<double> logarithm_, ratio_, depth_;
};

} // namespace

CrownedSamples crownedSamples(const RollerOnTrack& contact, const Samples& load,
                              const Samples& relativeRadius) {
    const Eigen::Index count = load.size();
    const double crown = *contact.roller.crownRadius;
    const Samples none = Samples::Zero(count);
    CrownedSamples result{Samples::Ones(count), none, none, none, none, none};
    if (count == 0) {
        return result;
    }
    Samples longOverShort = Samples::Ones(count);
    double guess = 0.0;
    for (Eigen::Index i = 0; i < count; ++i) {
        if (!(load(i) > 0.0)) {
            continue;
        }
        const PointContact point =
            pointContact(load(i), relativeRadius(i), crown, contact.modulus, guess);
        const bool alongRoller = crown >= relativeRadius(i);
        guess = point.shape.k;
        longOverShort(i) = point.shape.k;
        result.ellipticity(i) = alongRoller ? point.shape.k : 1.0 / point.shape.k;
        result.pressure(i) = point.peakPressure;
        result.halfWidth(i) = alongRoller ? point.shortSemiAxis : point.longSemiAxis;
        result.halfLength(i) = alongRoller ? point.longSemiAxis : point.shortSemiAxis;
    }
    const ShearByRatio shear(longOverShort.minCoeff(), longOverShort.maxCoeff(),
                             contact.poissonRatio);
    result.shear = shear.ratio(longOverShort) * result.pressure;
    result.depth = shear.depth(longOverShort) * result.halfWidth.min(result.halfLength);

    // An ellipse longer than the roller cannot spread its load further than a straight roller does.
    const double length = contact.loadedWidth();
    const Samples sound = (load > 0.0).select(relativeRadius, 1.0);
    const Samples straight = linePeakPressure(load, length, sound, contact.modulus);
    const Samples strip = lineHalfWidth(load, length, sound, contact.modulus);
    const Eigen::Array<bool, Eigen::Dynamic, 1> cut =
        2.0 * result.halfLength > length && straight > result.pressure;
    const DeepestShear line = lineDeepestShear();
    result.pressure = cut.select(straight, result.pressure);
    result.halfWidth = cut.select(strip, result.halfWidth);
    result.shear = cut.select(line.ratio * straight, result.shear);
    result.depth = cut.select(line.depth * strip, result.depth);
    return result;
}

} // namespace lobewright::contact
