#include "core/contact/bearing_life.h"

#include "core/gas/models/elementary.h"

#include <algorithm>
#include <cmath>

namespace lobewright::contact {

double ratingLife(double dynamicRating, double equivalentLoad, double exponent) {
    return std::pow(dynamicRating / equivalentLoad, exponent);
}

double equivalentLoad(const Samples& load, const Samples& turns, double exponent) {
    constexpr double least = 1e-300; // of a load; less is none
    double sum = 0.0;
    for (Eigen::Index i = 0; i < load.size(); ++i) {
        const double logarithm = gas::logarithm(std::max(std::abs(load[i]), least));
        sum += gas::exponential(exponent * logarithm) * turns[i];
    }
    return std::pow(sum / turns.sum(), 1.0 / exponent);
}

double staticStress(double staticSafety) {
    return staticRatingStress / std::sqrt(staticSafety);
}

} // namespace lobewright::contact
