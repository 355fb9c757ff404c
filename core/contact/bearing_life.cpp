#include "core/contact/bearing_life.h"

#include <cmath>

namespace lobewright::contact {

double ratingLife(double dynamicRating, double equivalentLoad, double exponent) {
    return std::pow(dynamicRating / equivalentLoad, exponent);
}

double equivalentLoad(const Samples& load, const Samples& turns, double exponent) {
    return std::pow((load.abs().pow(exponent) * turns).sum() / turns.sum(), 1.0 / exponent);
}

double staticStress(double staticSafety) {
    return staticRatingStress / std::sqrt(staticSafety);
}

} // namespace lobewright::contact
