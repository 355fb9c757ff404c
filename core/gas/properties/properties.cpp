#include "core/gas/properties/properties.h"

#include <cassert>

namespace lobewright::gas {
namespace {

/// c_p/R = Σ a_k·T^k and h/R = ∫ of it + a₆, below and above 1000 K.
struct NasaFit {
    double mass; // [g/mol]
    std::array<double, 6> low, high;
};

// GRI-Mech 3.0 thermodynamic data (Smith et al., gri_mech). Argon has one range.
constexpr NasaFit fits[] = {
    {28.0134,
     {3.298677, 1.4082404e-3, -3.963222e-6, 5.641515e-9, -2.444854e-12, -1020.8999},
     {2.92664, 1.4879768e-3, -5.68476e-7, 1.0097038e-10, -6.753351e-15, -922.7977}},
    {31.9988,
     {3.78245636, -2.99673416e-3, 9.84730201e-6, -9.68129509e-9, 3.24372837e-12, -1063.94356},
     {3.28253784, 1.48308754e-3, -7.57966669e-7, 2.09470555e-10, -2.16717794e-14, -1088.45772}},
    {39.948, {2.5, 0, 0, 0, 0, -745.375}, {2.5, 0, 0, 0, 0, -745.375}},
    {44.0095,
     {2.35677352, 8.98459677e-3, -7.12356269e-6, 2.45919022e-9, -1.43699548e-13, -48371.9697},
     {3.85746029, 4.41437026e-3, -2.21481404e-6, 5.23490188e-10, -4.72084164e-14, -48759.166}},
    {18.01528,
     {4.19864056, -2.0364341e-3, 6.52040211e-6, -5.48797062e-9, 1.77197817e-12, -30293.7267},
     {3.03399249, 2.17691804e-3, -1.64072518e-7, -9.7041987e-11, 1.68200992e-14, -30004.2971}},
};

const NasaFit& fitOf(Species species) {
    return fits[static_cast<std::size_t>(species)];
}

double polynomialOf(const std::array<double, 6>& a, double t) {
    return a[0] + t * (a[1] + t * (a[2] + t * (a[3] + t * a[4])));
}

double integralOf(const std::array<double, 6>& a, double t) {
    return t * (a[0] + t * (a[1] / 2 + t * (a[2] / 3 + t * (a[3] / 4 + t * a[4] / 5))));
}

/// Constants of integration of h/R that make it zero at 298.15 K and continuous at the break.
std::array<double, 2> constantsOf(const NasaFit& fit) {
    const double low = -integralOf(fit.low, referenceTemperature);
    const double high = low + integralOf(fit.low, fitBreak) - integralOf(fit.high, fitBreak);
    return {low, high};
}

} // namespace

double molarMass(Species species) {
    return 1e-3 * fitOf(species).mass;
}

double molarHeat(Species species, double temperature) {
    const NasaFit& fit = fitOf(species);
    return molarGasConstant *
           polynomialOf(temperature < fitBreak ? fit.low : fit.high, temperature);
}

double molarEnthalpy(Species species, double temperature) {
    const NasaFit& fit = fitOf(species);
    const std::array<double, 2> constants = constantsOf(fit);
    const bool low = temperature < fitBreak;
    return molarGasConstant *
           (constants[low ? 0 : 1] + integralOf(low ? fit.low : fit.high, temperature));
}

GasGroup GasGroup::mixture(std::span<const Portion> portions) {
    double mass = 0.0;
    double amount = 0.0;
    for (const Portion& portion : portions) {
        mass += portion.amount * molarMass(portion.species);
        amount += portion.amount;
    }
    assert(mass > 0.0);
    GasGroup group;
    group.gasConstant_ = molarGasConstant * amount / mass;
    for (const Portion& portion : portions) {
        const NasaFit& fit = fitOf(portion.species);
        const double factor = molarGasConstant * portion.amount / mass;
        const std::array<double, 2> constants = constantsOf(fit);
        for (std::size_t r = 0; r < 2; ++r) {
            Range& range = group.ranges_[r];
            range.enthalpy[0] += factor * constants[r];
            for (std::size_t k = 0; k < 5; ++k) {
                const double a = factor * (r == 0 ? fit.low : fit.high)[k];
                range.heat[k] += a;
                range.enthalpy[k + 1] += a / static_cast<double>(k + 1);
            }
        }
    }
    return group;
}

GasGroup GasGroup::constant(double gasConstant, double heat) {
    assert(gasConstant > 0.0 && heat > gasConstant);
    GasGroup group;
    group.gasConstant_ = gasConstant;
    for (Range& range : group.ranges_) {
        range.heat[0] = heat;
        range.enthalpy = {-heat * referenceTemperature, heat, 0, 0, 0, 0};
    }
    return group;
}

std::array<Portion, 4> portionsOfAir(double amount) {
    return {{{Species::nitrogen, 0.7809 * amount},
             {Species::oxygen, oxygenShareOfAir * amount},
             {Species::argon, 0.0093 * amount},
             {Species::carbonDioxide, 0.0003 * amount}}};
}

double molarMassOfAir() {
    double mass = 0.0;
    for (const Portion& portion : portionsOfAir(1.0)) {
        mass += portion.amount * molarMass(portion.species);
    }
    return mass;
}

const GasGroup& dryAir() {
    static const GasGroup air = GasGroup::mixture(portionsOfAir(1.0));
    return air;
}

} // namespace lobewright::gas
