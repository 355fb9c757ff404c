#include "core/gas/ring.h"

#include <algorithm>
#include <cmath>

namespace lobewright::gas {
namespace {

constexpr double exhaustTemperatureScale = 1000.0; ///< [K]
constexpr int atClosing = 6; ///< numbers of a cylinder that stands at its last closing
constexpr int midway = 3;    ///< numbers of any other; it carries its past with it

bool possibleTemperature(double t) {
    return t > 100.0 && t < 6000.0;
}

} // namespace

Eigen::VectorXd Ring::repeating() const {
    Eigen::VectorXd state(static_cast<Eigen::Index>(members_.size()) * atClosing + 2);
    Eigen::Index n = 0;
    for (std::size_t k = 0; k < members_.size(); ++k) {
        const double* y = variables(k);
        const double mass = model_->massScale;
        state[n++] = y[airMass] / mass;
        state[n++] = y[productsMass] / mass;
        state[n++] = y[temperature] / scales_[temperature];
        if (!standsAtClosing(k)) {
            continue;
        }
        const Stream& exhaust = members_[k].memory.exhaustBack;
        state[n++] = y[slugMass] / mass;
        state[n++] = exhaust.products;
        state[n++] = exhaust.temperature / exhaustTemperatureScale;
    }
    if (hasPlenum()) {
        state[n++] = y_[plenumOffset_ + plenumMass] / scales_[plenumOffset_ + plenumMass];
        state[n++] =
            y_[plenumOffset_ + plenumTemperature] / scales_[plenumOffset_ + plenumTemperature];
    }
    return state.head(n);
}

bool Ring::standsAtClosing(std::size_t member) const {
    return std::fabs(members_[member].localStart - model_->start) < 1e-12;
}

bool Ring::setRepeating(const Eigen::VectorXd& state) {
    Eigen::Index n = 0;
    for (std::size_t k = 0; k < members_.size(); ++k) {
        const bool whole = standsAtClosing(k);
        const bool gas = state[n] + state[n + 1] > 0.01 && state[n] >= -1e-3 &&
                         state[n + 1] >= -1e-3 &&
                         possibleTemperature(state[n + 2] * scales_[temperature]);
        const bool exhaust = !whole || possibleTemperature(state[n + 5] * exhaustTemperatureScale);
        if (!gas || !exhaust) {
            return false;
        }
        n += whole ? atClosing : midway;
    }
    if (hasPlenum() &&
        !(state[n] > 0.01 &&
          possibleTemperature(state[n + 1] * scales_[plenumOffset_ + plenumTemperature]))) {
        return false;
    }
    n = 0;
    for (std::size_t k = 0; k < members_.size(); ++k) {
        double* y = variables(k);
        const double mass = model_->massScale;
        y[airMass] = std::max(state[n++], 0.0) * mass;
        y[productsMass] = std::max(state[n++], 0.0) * mass;
        y[temperature] = state[n++] * scales_[temperature];
        if (!standsAtClosing(k)) {
            continue;
        }
        // the slug keeps its composition and temperature: only its mass is moved
        const double slug = std::max(state[n++], 0.0) * mass;
        const double share = y[slugMass] > 0.0 ? slug / y[slugMass] : 0.0;
        y[slugMass] *= share;
        y[slugProducts] *= share;
        y[slugEnthalpy] *= share;
        const double products = std::clamp(state[n++], 0.0, 1.0);
        members_[k].memory.exhaustBack =
            model_->stream(products, state[n++] * exhaustTemperatureScale);
    }
    if (hasPlenum()) {
        y_[plenumOffset_ + plenumMass] = state[n++] * scales_[plenumOffset_ + plenumMass];
        y_[plenumOffset_ + plenumTemperature] =
            state[n++] * scales_[plenumOffset_ + plenumTemperature];
    }
    return true;
}

} // namespace lobewright::gas
