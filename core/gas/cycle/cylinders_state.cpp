#include "core/gas/cycle/coupled_cylinders.h"
#include "core/gas/models/supply.h"

#include <algorithm>

/// What repeats from period to period, as numbers for the search.
namespace lobewright::gas {
namespace {

/// Of the last outflow, in the exhaust: only as much of it counts as comes back.
constexpr double exhaustProductsScale = 10.0, exhaustTemperatureScale = 1e4;
constexpr double exhaustGasScale =
    1000.0; ///< of temperatures in the one under way and in a plenum [K]
constexpr double temperatureScale = 300.0; ///< [K]

constexpr double coldestOutflow = 200.0, hottestOutflow = 4000.0; ///< [K]

bool possibleTemperature(double t) {
    return t > 100.0 && t < 6000.0;
}

/// The plenum filled with ambient air [kg].
double plenumScale(const Model& model) {
    return ambientDensity(model.settings.supply, model.gas.air) *
           model.settings.supply.plenumVolume;
}

/// Reads or writes the numbers of a state one after the other, so that the order is written down
/// once. `number(value, scale)` passes one; what was pushed back into the runner keeps its
/// composition and temperature: `slug(mass, products, enthalpy)` passes its mass.
template <class State, class Exchange>
void exchange(State& state, const Model& model, Exchange& with) {
    const double mass = model.massScale;
    for (auto& c : state.charges) {
        with.number(c.air, mass);
        with.number(c.products, mass);
        with.number(c.temperature, temperatureScale);
        with.slug(c.slugMass, c.slugProducts, c.slugEnthalpy);
        with.number(c.exhaustProducts, exhaustProductsScale);
        with.number(c.exhaustTemperature, exhaustTemperatureScale);
        if (model.premixed()) {
            with.number(c.fresh, mass);
        }
    }
    for (auto& b : state.breathing) {
        for (const Variable variable :
             {airMass, productsMass, freshMass, residualMass, outflowMass, outflowProducts}) {
            with.number(b.y[variable], mass);
        }
        with.number(b.y[temperature], temperatureScale);
        with.slug(b.y[slugMass], b.y[slugProducts], b.y[slugEnthalpy]);
        with.number(b.y[outflowTemperature], mass * exhaustGasScale);
        with.number(b.memory.exhaustBack.products, exhaustProductsScale);
        with.number(b.memory.exhaustBack.temperature, exhaustTemperatureScale);
        with.number(b.memory.displacedUntil, mass);
        with.number(b.memory.residual.products, 1.0);
        with.number(b.memory.residual.gasConstant, 300.0);
    }
    if (model.pumps() && state.plenum[plenumMass] > 0.0) {
        with.number(state.plenum[plenumMass], mass);
        with.number(state.plenum[plenumTemperature], temperatureScale);
        with.number(state.plenum[plenumProducts], mass);
        if (model.hasTransfer()) {
            with.number(state.plenum[transferMass], mass);
            with.number(state.plenum[transferTemperature], temperatureScale);
            with.number(state.plenum[transferProducts], mass);
        }
    } else if (state.plenum[plenumMass] > 0.0) {
        // a large plenum changes little in a window, however wrong it is: its numbers are weighed
        // with how many windows' delivery it holds
        const double weight = std::max(1.0, plenumScale(model) / state.delivery);
        with.number(state.plenum[plenumMass], plenumScale(model) / weight);
        with.number(state.plenum[plenumTemperature], temperatureScale / weight);
    }
    if (model.hasTurbine()) {
        with.number(state.plenum[exhaustPlenumMass], mass);
        with.number(state.plenum[exhaustPlenumTemperature], exhaustGasScale);
        with.number(state.plenum[exhaustPlenumProducts], mass);
    }
}

struct Reading {
    double massScale;
    std::vector<double> numbers;
    void number(double value, double scale) { numbers.push_back(value / scale); }
    void slug(double mass, double, double) { numbers.push_back(mass / massScale); }
};

struct Writing {
    double massScale;
    const Eigen::VectorXd& numbers;
    Eigen::Index next = 0;
    void number(double& value, double scale) { value = numbers[next++] * scale; }
    void slug(double& mass, double& products, double& enthalpy) {
        const double now = std::max(numbers[next++], 0.0) * massScale;
        const double share = mass > 0.0 ? now / mass : 0.0;
        mass *= share;
        products *= share;
        enthalpy *= share;
    }
};

/// Bends what extrapolation made impossible back to the nearest possible charge; false where there
/// is none.
bool makePossible(double& air, double& products, double t, double& exhaustProducts,
                  double exhaustTemperature, const Model& model) {
    air = std::max(air, 0.0);
    products = std::max(products, 0.0);
    exhaustProducts = std::clamp(exhaustProducts, 0.0, 1.0);
    return air + products > 0.01 * model.massScale && possibleTemperature(t) &&
           possibleTemperature(exhaustTemperature);
}

/// Every number of a state.
std::vector<double*> numbersOf(CoupledCylinders::State& state) {
    std::vector<double*> numbers;
    for (Charge& c : state.charges) {
        numbers.insert(numbers.end(),
                       {&c.air, &c.products, &c.temperature, &c.slugMass, &c.slugProducts,
                        &c.slugEnthalpy, &c.exhaustProducts, &c.exhaustTemperature, &c.fresh});
    }
    for (CoupledCylinders::Breathing& b : state.breathing) {
        for (double& number : b.y) {
            numbers.push_back(&number);
        }
        Memory& m = b.memory;
        numbers.insert(numbers.end(),
                       {&m.trappedMass, &m.trappedPressure, &m.trappedTemperature, &m.trappedVolume,
                        &m.trappedAir, &m.fuelMass, &m.burnableFuel, &m.startPressure,
                        &m.startVolume, &m.motoredIndex, &m.displacedUntil});
        for (Stream* stream : {&m.residual, &m.slug, &m.exhaustBack}) {
            numbers.insert(numbers.end(),
                           {&stream->products, &stream->temperature, &stream->enthalpy,
                            &stream->gasConstant, &stream->gamma});
        }
    }
    numbers.insert(numbers.end(),
                   {&state.plenum[plenumMass], &state.plenum[plenumTemperature],
                    &state.plenum[plenumProducts], &state.plenum[exhaustPlenumMass],
                    &state.plenum[exhaustPlenumTemperature], &state.plenum[exhaustPlenumProducts]});
    return numbers;
}

} // namespace

Eigen::VectorXd CoupledCylinders::State::scaled(const Model& model) const {
    Reading reading{model.massScale, {}};
    exchange(*this, model, reading);
    return Eigen::Map<Eigen::VectorXd>(reading.numbers.data(),
                                       static_cast<Eigen::Index>(reading.numbers.size()));
}

std::optional<CoupledCylinders::State> CoupledCylinders::State::with(const Eigen::VectorXd& numbers,
                                                                     const Model& model) const {
    State made = *this;
    Writing writing{model.massScale, numbers};
    exchange(made, model, writing);
    bool possible = numbers.allFinite();
    for (Charge& c : made.charges) {
        possible = possible && makePossible(c.air, c.products, c.temperature, c.exhaustProducts,
                                            c.exhaustTemperature, model);
    }
    for (Breathing& b : made.breathing) {
        Stream& exhaust = b.memory.exhaustBack;
        possible = possible && makePossible(b.y[airMass], b.y[productsMass], b.y[temperature],
                                            exhaust.products, exhaust.temperature, model);
        // sums of one outflow: a mean share and a mean temperature that a gas can have
        const double out = b.y[outflowMass] = std::max(b.y[outflowMass], 0.0);
        b.y[outflowProducts] = std::clamp(b.y[outflowProducts], 0.0, out);
        b.y[outflowTemperature] =
            std::clamp(b.y[outflowTemperature], coldestOutflow * out, hottestOutflow * out);
        if (possible) {
            exhaust = model.stream(exhaust.products, exhaust.temperature);
        }
    }
    if (plenum[plenumMass] > 0.0) {
        possible = possible && made.plenum[plenumMass] > 0.01 * plenum[plenumMass] &&
                   possibleTemperature(made.plenum[plenumTemperature]);
        made.plenum[plenumProducts] = std::max(made.plenum[plenumProducts], 0.0);
    }
    if (model.hasTransfer()) {
        possible = possible && made.plenum[transferMass] > 0.01 * plenum[transferMass] &&
                   possibleTemperature(made.plenum[transferTemperature]);
        made.plenum[transferProducts] = std::max(made.plenum[transferProducts], 0.0);
    }
    return possible ? std::optional(made) : std::nullopt;
}

CoupledCylinders::State blend(const std::vector<const CoupledCylinders::State*>& states,
                              const std::vector<double>& weights) {
    const CoupledCylinders::State& first = *states.front();
    const auto alike = [&](const CoupledCylinders::State* state) {
        return state->charges.size() == first.charges.size() &&
               std::equal(state->breathing.begin(), state->breathing.end(), first.breathing.begin(),
                          first.breathing.end(), [](const auto& a, const auto& b) {
                              return a.row == b.row && a.memory.cycle == b.memory.cycle;
                          });
    };
    if (!std::all_of(states.begin(), states.end(), alike)) {
        return first;
    }
    CoupledCylinders::State sum = first;
    const std::vector<double*> to = numbersOf(sum);
    for (double* number : to) {
        *number *= weights.front();
    }
    for (std::size_t i = 1; i < states.size(); ++i) {
        CoupledCylinders::State other = *states[i];
        const std::vector<double*> from = numbersOf(other);
        for (std::size_t j = 0; j < to.size(); ++j) {
            *to[j] += weights[i] * *from[j];
        }
    }
    return sum;
}

} // namespace lobewright::gas
