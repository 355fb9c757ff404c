#include "core/contact/line_contact.h"

#include "core/units.h"

#include <cmath>

namespace lobewright::contact {

double contactModulus(const Elastic& a, const Elastic& b) {
    const auto compliance = [](const Elastic& body) {
        return (1.0 - body.poissonRatio * body.poissonRatio) / body.modulus;
    };
    return 1.0 / (compliance(a) + compliance(b));
}

Samples linePeakPressure(const Samples& load, double length, const Samples& radius,
                         double modulus) {
    return (load * (modulus / (units::pi * length)) / radius).sqrt();
}

double linePeakPressure(double load, double length, double radius, double modulus) {
    return std::sqrt(load * modulus / (units::pi * length * radius));
}

Samples lineHalfWidth(const Samples& load, double length, const Samples& radius, double modulus) {
    return (load * radius * (4.0 / (units::pi * length * modulus))).sqrt();
}

double lineHalfWidth(double load, double length, double radius, double modulus) {
    return std::sqrt(4.0 * load * radius / (units::pi * length * modulus));
}

DeepestShear lineDeepestShear() {
    // τ/p₀ = ζ − ζ²/√(1 + ζ²) on the axis; its maximum solves ζ⁴ + ζ² = 1.
    const double square = 0.5 * (std::sqrt(5.0) - 1.0);
    const double depth = std::sqrt(square);
    return {depth - square / std::sqrt(1.0 + square), depth};
}

} // namespace lobewright::contact
