#pragma once

#include "core/four.h"

#include <array>
#include <span>

/// Thermodynamic properties of the working gas. Thermally perfect; enthalpies are sensible, counted
/// from 298.15 K. Temperatures in K, specific quantities per kg.
namespace lobewright::gas {

inline constexpr double molarGasConstant = 8.314462618; ///< [J/(mol·K)]
inline constexpr double referenceTemperature = 298.15;  ///< zero of sensible enthalpy [K]
inline constexpr double fitBreak = 1000.0;      ///< the two ranges of the fits meet here [K]
inline constexpr double fitUpperLimit = 3500.0; ///< above it the fits extrapolate [K]

enum class Species { nitrogen, oxygen, argon, carbonDioxide, water };
inline constexpr Species allSpecies[] = {Species::nitrogen, Species::oxygen, Species::argon,
                                         Species::carbonDioxide, Species::water};

double molarMass(Species species); ///< [kg/mol]
/// Molar heat at constant pressure [J/(mol·K)], T > 0. NASA seven-coefficient fits of GRI-Mech 3.0,
/// also used outside their range.
double molarHeat(Species species, double temperature);
/// Sensible molar enthalpy [J/mol]. The integration constant above 1000 K is chosen so that the two
/// ranges meet; that moves the published fit by about one part in 10⁶.
double molarEnthalpy(Species species, double temperature);

/// An amount of one species in a mixture [mol].
struct Portion {
    Species species;
    double amount = 0.0;
};

/// A gas of fixed composition with its fits summed beforehand, so that a property is one
/// polynomial.
class GasGroup {
  public:
    /// At least one positive amount.
    static GasGroup mixture(std::span<const Portion> portions);
    /// A calorically perfect gas: specific gas constant and heat at constant pressure [J/(kg·K)].
    static GasGroup constant(double gasConstant, double heat);

    double gasConstant() const { return gasConstant_; } ///< [J/(kg·K)]
    double heat(double temperature) const {             ///< c_p [J/(kg·K)]
        const auto& a = range(temperature).heat;
        return a[0] + temperature *
                          (a[1] + temperature * (a[2] + temperature * (a[3] + temperature * a[4])));
    }
    double enthalpy(double temperature) const { ///< sensible [J/kg]
        const auto& b = range(temperature).enthalpy;
        return b[0] +
               temperature *
                   (b[1] +
                    temperature *
                        (b[2] + temperature * (b[3] + temperature * (b[4] + temperature * b[5]))));
    }
    double internalEnergy(double temperature) const { ///< h − R·T [J/kg]
        return enthalpy(temperature) - gasConstant_ * temperature;
    }
    double heatRatio(double temperature) const { ///< γ
        const double cp = heat(temperature);
        return cp / (cp - gasConstant_);
    }

  private:
    friend class GasPair;
    struct Range {
        std::array<double, 5> heat{};     ///< ascending powers of T
        std::array<double, 6> enthalpy{}; ///< ascending powers of T
    };
    const Range& range(double temperature) const { return ranges_[temperature < fitBreak ? 0 : 1]; }
    std::array<Range, 2> ranges_;
    double gasConstant_ = 0.0;
};

/// Of two gases [J/(kg·K)], [J/kg].
struct PairProperties {
    std::array<double, 2> heat{}, enthalpy{};
};

/// Two gases whose properties are evaluated side by side, in a quarter of the time.
class GasPair {
  public:
    GasPair() = default;
    GasPair(const GasGroup& first, const GasGroup& second) {
        for (std::size_t r = 0; r < 2; ++r) {
            const GasGroup::Range &a = first.ranges_[r], &b = second.ranges_[r];
            for (std::size_t i = 0; i < terms; ++i) {
                const bool ofHeat = i < a.heat.size();
                ranges_[r][i] = Four{ofHeat ? a.heat[i] : 0.0, ofHeat ? b.heat[i] : 0.0,
                                     a.enthalpy[i], b.enthalpy[i]};
            }
        }
    }
    PairProperties at(double temperature) const {
        const Four* a = ranges_[temperature < fitBreak ? 0 : 1];
        Four sum = a[terms - 1];
        for (std::size_t i = terms - 1; i-- > 0;) {
            sum = sum * temperature + a[i];
        }
        return {{sum[0], sum[1]}, {sum[2], sum[3]}};
    }

  private:
    static constexpr std::size_t terms = 6; ///< ascending powers of T
    Four ranges_[2][terms]{};
};

/// Dry air: N₂ 0.7809, O₂ 0.2095, Ar 0.0093, CO₂ 0.0003 by mole.
const GasGroup& dryAir();
inline constexpr double oxygenShareOfAir = 0.2095; ///< by mole
double molarMassOfAir();                           ///< [kg/mol]
/// The portions of `amount` mol of dry air.
std::array<Portion, 4> portionsOfAir(double amount);

} // namespace lobewright::gas
