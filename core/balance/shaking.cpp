#include "core/balance/shaking.h"

#include "core/loads/quadrature.h"
#include "core/mechanism/folded_angles.h"
#include "core/units.h"

#include <cmath>
#include <complex>

namespace lobewright::balance {

namespace {

/// Complex amplitudes of the force of cylinder 1, exact to the quadrature between junctions.
Eigen::ArrayXcd cylinderOrders(const mechanism::OpposedPair& pair, double omega, int highest) {
    using Complex = std::complex<double>;
    const int lobes = pair.curve(End::inlet).lobes();
    const loads::Quadrature nodes = loads::periodQuadrature(pair, {});
    const Eigen::ArrayXcd step =
        (Complex(0.0, -lobes) * nodes.theta.cast<Complex>()).exp(); // one lobe order further
    Eigen::ArrayXcd term =
        (lobes / units::pi * nodes.weight * cylinderForce(pair, omega, nodes.theta))
            .cast<Complex>();
    Eigen::ArrayXcd result = Eigen::ArrayXcd::Zero(highest + 1);
    result(0) = 0.5 * term.sum();
    for (int q = lobes; q <= highest; q += lobes) {
        term *= step;
        result(q) = term.sum();
    }
    return result;
}

} // namespace

Samples cylinderForce(const mechanism::OpposedPair& pair, double omega, const Samples& theta) {
    PerEnd<double> mass = pair.mechanism().pistonMass;
    if (pair.mechanism().isOneSided()) {
        mass.exhaust = 0.0;
    }
    return omega * omega *
           (mass.exhaust * pair.lift(End::exhaust, theta).y2 -
            mass.inlet * pair.lift(End::inlet, theta).y2);
}

Shaking shaking(const mechanism::OpposedPair& pair, double omega, const Samples& theta) {
    const std::vector<double> angles = mechanism::cylinderAngles(pair.mechanism());
    const double radius = pair.mechanism().pitchRadius;
    Shaking sum{Samples::Zero(theta.size()), Samples::Zero(theta.size()),
                Samples::Zero(theta.size())};
    const mechanism::FoldedAngles folded(pair.period(), theta,
                                         mechanism::cylinderLags(pair.mechanism()));
    const Samples places = cylinderForce(pair, omega, folded.places());
    for (std::size_t k = 0; k < angles.size(); ++k) {
        const double psi = angles[k];
        const Samples force = folded.unfolded(places, k);
        sum.force += force;
        sum.momentX += radius * std::sin(psi) * force;
        sum.momentY -= radius * std::cos(psi) * force;
    }
    return sum;
}

ShakingOrders shakingOrders(const mechanism::OpposedPair& pair, double omega, int highest) {
    using Complex = std::complex<double>;
    const std::vector<double> angles = mechanism::cylinderAngles(pair.mechanism());
    const double radius = pair.mechanism().pitchRadius;
    const Eigen::ArrayXcd cylinder = cylinderOrders(pair, omega, highest);

    ShakingOrders result;
    result.cylinder = cylinder.abs();
    result.force = result.momentX = result.momentY = result.forward = result.backward =
        Samples::Zero(highest + 1);
    for (int q = 0; q <= highest; ++q) {
        Complex force = 0.0;
        Complex momentX = 0.0;
        Complex momentY = 0.0;
        for (const double psi : angles) {
            const Complex one = cylinder(q) * std::polar(1.0, -q * (psi - angles.front()));
            force += one;
            momentX += radius * std::sin(psi) * one;
            momentY -= radius * std::cos(psi) * one;
        }
        constexpr Complex i{0.0, 1.0};
        result.force(q) = std::abs(force);
        result.momentX(q) = std::abs(momentX);
        result.momentY(q) = std::abs(momentY);
        result.forward(q) = 0.5 * std::abs(momentX + i * momentY);
        result.backward(q) = 0.5 * std::abs(momentX - i * momentY);
    }
    return result;
}

} // namespace lobewright::balance
