#include "core/gas/ring.h"

#include <algorithm>
#include <cmath>

namespace lobewright::gas {
namespace {

constexpr double exhaustTemperatureScale = 1000.0; ///< [K]
constexpr double chargeTemperatureScale = 300.0;   ///< [K]
constexpr double pressureScale = 1e5;              ///< [Pa]
constexpr double leastPressure = 1.0;              ///< [Pa]

bool possibleTemperature(double t) {
    return t > 100.0 && t < 6000.0;
}

/// Reads and writes the numbers of a cylinder's state one after the other, so that the order is
/// written down once.
template <class Exchange>
void exchangeCharge(Exchange& with, double* y, Memory& memory, const Model& model) {
    const double mass = model.massScale;
    with.number(y[airMass], mass);
    with.number(y[productsMass], mass);
    with.number(y[temperature], chargeTemperatureScale);
    with.slug(y, model);
    with.number(memory.exhaustBack.products, 1.0);
    with.number(memory.exhaustBack.temperature, exhaustTemperatureScale);
}

/// What a cylinder midway through its cycle carries besides.
template <class Exchange>
void exchangePast(Exchange& with, double* y, Memory& memory, const Model& model) {
    const double mass = model.massScale;
    with.number(memory.burnableFuel, mass / model.gas.airFuelRatio);
    with.number(memory.trappedPressure, pressureScale);
    with.number(memory.trappedTemperature, chargeTemperatureScale);
    with.number(memory.startPressure, 10.0 * pressureScale);
    with.number(y[outflowMass], mass);
    with.number(y[outflowProducts], mass);
    with.number(y[outflowTemperature], mass * exhaustTemperatureScale);
}

struct Reading {
    std::vector<double> numbers;
    void number(double& value, double scale) { numbers.push_back(value / scale); }
    void slug(const double* y, const Model& model) {
        numbers.push_back(y[slugMass] / model.massScale);
        numbers.push_back(y[slugProducts] / model.massScale);
        numbers.push_back(y[slugEnthalpy] / model.energyScale);
    }
};

struct Writing {
    const Eigen::VectorXd& state;
    Eigen::Index next = 0;
    void number(double& value, double scale) { value = state[next++] * scale; }
    /// The slug keeps its composition and temperature: only its mass is moved.
    void slug(double* y, const Model& model) {
        const double mass = std::max(state[next], 0.0) * model.massScale;
        const double share = y[slugMass] > 0.0 ? mass / y[slugMass] : 0.0;
        for (const Variable variable : {slugMass, slugProducts, slugEnthalpy}) {
            y[variable] *= share;
        }
        next += 3;
    }
};

/// Bends what extrapolation made impossible back to the nearest possible state; false where there
/// is none.
bool makePossible(double* y, Memory& memory, const Model& model) {
    y[airMass] = std::max(y[airMass], 0.0);
    y[productsMass] = std::max(y[productsMass], 0.0);
    memory.burnableFuel = std::max(memory.burnableFuel, 0.0);
    Stream& exhaust = memory.exhaustBack;
    if (!(y[airMass] + y[productsMass] > 0.01 * model.massScale) ||
        !possibleTemperature(y[temperature]) || !possibleTemperature(exhaust.temperature)) {
        return false;
    }
    for (const Variable variable : {outflowMass, outflowProducts, outflowTemperature}) {
        y[variable] = std::max(y[variable], 0.0);
    }
    memory.trappedPressure = std::max(memory.trappedPressure, leastPressure);
    memory.startPressure = std::max(memory.startPressure, leastPressure);
    exhaust = model.stream(std::clamp(exhaust.products, 0.0, 1.0), exhaust.temperature);
    return true;
}

} // namespace

bool Ring::standsAtClosing(std::size_t member) const {
    return std::fabs(members_[member].localStart - model_->start) < 1e-12;
}

Eigen::VectorXd Ring::repeating() {
    Reading reading;
    for (std::size_t k = 0; k < members_.size(); ++k) {
        exchangeCharge(reading, variables(k), members_[k].memory, *model_);
        if (!standsAtClosing(k)) {
            exchangePast(reading, variables(k), members_[k].memory, *model_);
        }
    }
    if (hasPlenum()) {
        for (const int variable : {plenumMass, plenumTemperature}) {
            const std::size_t index = plenumOffset_ + static_cast<std::size_t>(variable);
            reading.number(y_[index], scales_[index]);
        }
    }
    return Eigen::Map<Eigen::VectorXd>(reading.numbers.data(),
                                       static_cast<Eigen::Index>(reading.numbers.size()));
}

bool Ring::setRepeating(const Eigen::VectorXd& state) {
    const std::vector<double> y = y_;
    std::vector<Memory> memories;
    for (const Member& member : members_) {
        memories.push_back(member.memory);
    }
    Writing writing{state};
    bool possible = state.allFinite();
    for (std::size_t k = 0; k < members_.size(); ++k) {
        exchangeCharge(writing, variables(k), members_[k].memory, *model_);
        if (!standsAtClosing(k)) {
            exchangePast(writing, variables(k), members_[k].memory, *model_);
        }
        possible = possible && makePossible(variables(k), members_[k].memory, *model_);
    }
    if (hasPlenum()) {
        double* plenum = &y_[plenumOffset_];
        writing.number(plenum[plenumMass], scales_[plenumOffset_ + plenumMass]);
        writing.number(plenum[plenumTemperature], scales_[plenumOffset_ + plenumTemperature]);
        possible = possible && plenum[plenumMass] > 0.01 * scales_[plenumOffset_] &&
                   possibleTemperature(plenum[plenumTemperature]);
    }
    if (!possible) {
        y_ = y;
        for (std::size_t k = 0; k < members_.size(); ++k) {
            members_[k].memory = memories[k];
        }
    }
    return possible;
}

} // namespace lobewright::gas
