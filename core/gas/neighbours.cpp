#include "core/gas/neighbours.h"

#include "core/gas/orifice.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace lobewright::gas {
namespace {

constexpr double sameAngle = 1e-12; ///< [rad]

/// How far the chamber pressure follows the supply's where a steady stream passes both ports in
/// turn: p_s − p and p − p_e stand inversely as the squares of the areas. Without it the memory
/// would lag a period behind the plenum; in the steady state it changes nothing.
double response(const ChamberGeometry& geometry) {
    const double inlet = geometry.inletArea * geometry.inletArea;
    const double exhaust = geometry.exhaustArea * geometry.exhaustArea;
    return inlet > 0.0 ? inlet / (inlet + exhaust) : 0.0;
}

} // namespace

Neighbours::Neighbours(const Model& model, std::vector<double> lags, double weight)
    : model_(&model), lags_(std::move(lags)), weight_(weight), drawing_(lags_.size(), false) {}

double Neighbours::windowAngle(double theta, std::size_t neighbour) const {
    const double angle = theta - lags_[neighbour];
    return angle < 0.0 ? angle + model_->period() : angle;
}

void Neighbours::remember(const StepRecord& steps, const std::vector<FreshInterval>& intervals) {
    steps_ = steps;
    intervals_ = intervals;
    changes_.clear();
    const double period = model_->period();
    for (std::size_t k = 0; k < lags_.size(); ++k) {
        for (const FreshInterval& interval : intervals_) {
            for (const bool begins : {true, false}) {
                const double angle = lags_[k] + (begins ? interval.from : interval.to);
                changes_.push_back({angle >= period ? angle - period : angle, k, begins});
            }
        }
    }
    std::sort(changes_.begin(), changes_.end(),
              [](const Change& a, const Change& b) { return a.angle < b.angle; });
}

void Neighbours::startWindow() {
    next_ = 0;
    const double probe = changes_.empty() ? 0.0 : 0.5 * changes_.front().angle;
    for (std::size_t k = 0; k < lags_.size(); ++k) {
        const double at = windowAngle(probe, k);
        drawing_[k] =
            std::any_of(intervals_.begin(), intervals_.end(), [at](const FreshInterval& interval) {
                return at >= interval.from && at < interval.to;
            });
    }
}

double Neighbours::nextChange() const {
    return next_ < changes_.size() ? changes_[next_].angle
                                   : std::numeric_limits<double>::infinity();
}

bool Neighbours::pass(double theta) {
    const std::size_t before = next_;
    while (next_ < changes_.size() && changes_[next_].angle <= theta + sameAngle) {
        drawing_[changes_[next_].neighbour] = changes_[next_].begins;
        ++next_;
    }
    return next_ != before;
}

Neighbours::Draw Neighbours::draw(double theta, const SupplyState& supply) const {
    Draw sum;
    for (std::size_t k = 0; k < lags_.size(); ++k) {
        if (!drawing_[k]) {
            continue;
        }
        const double window = windowAngle(theta, k);
        const ChamberGeometry geometry = model_->chamber->at(model_->start + window);
        const RecordedGas gas = steps_.gasAt(window);
        const double remembered = (gas.air * model_->gas.air.gasConstant() +
                                   gas.products * model_->gas.products.gasConstant()) *
                                  gas.temperature / geometry.volume;
        const double pressure =
            remembered + response(geometry) * (supply.pressure - steps_.supplyPressureAt(window));
        const double ratio = pressure / supply.pressure;
        if (ratio >= 1.0) {
            continue;
        }
        const FlowFunction psi = flowFunction(ratio, supply.fresh.gamma);
        const double conductance =
            weight_ *
            orificeFlow(geometry.inletArea, supply.pressure, supply.fresh.temperature,
                        supply.fresh.gasConstant, 1.0) /
            model_->omega;
        sum.rate += conductance * psi.value;
        sum.slope += conductance / supply.pressure * (psi.value - ratio * psi.slope);
    }
    return sum;
}

} // namespace lobewright::gas
