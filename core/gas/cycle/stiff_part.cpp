// ∂f/∂y of the stiff variables, for the implicit method.
#include "core/gas/cycle/integration.h"

namespace lobewright::gas {
namespace {

/// About √ε/3: between a small transfer volume and the pump pressures differ by 1e-7, and a longer
/// step would turn the flow.
constexpr double differenceStep = 5e-9;

/// ∂(state of the plenum)/∂(a flow) and ∂(its pressure)/∂(state), of mass and temperature.
struct PlenumAnswer {
    Eigen::Vector2d draw = Eigen::Vector2d::Zero(); ///< of a kilogram drawn
    Eigen::Vector2d gradient = Eigen::Vector2d::Zero();
};

} // namespace

/// By differences: with its reed and its moving wall a pump answers to everything, and so do
/// cylinders between two plenums.
void Integration::findDerivativesByDifferences() {
    const std::vector<int>& indices = methods_->stiff;
    std::vector<double> moved(y_.begin(), y_.end()), rate(y_.size());
    for (std::size_t j = 0; j < indices.size(); ++j) {
        const auto at = static_cast<std::size_t>(indices[j]);
        const double step = differenceStep * weights_[at] / weightsTolerance_;
        moved[at] += step;
        rates(x_, moved.data(), rate.data());
        ++effort_.stepEvaluations;
        moved[at] = y_[at];
        for (std::size_t i = 0; i < indices.size(); ++i) {
            const auto row = static_cast<std::size_t>(indices[i]);
            methods_->derivatives(static_cast<Eigen::Index>(i), static_cast<Eigen::Index>(j)) =
                (rate[row] - dy_[row]) / step;
        }
    }
}

/// As far as the flows through ports answer to the pressures on both sides, and what fills a plenum
/// to its own: each flow changes the state of the cylinder, and of the plenum where fresh gas is
/// drawn from it.
void Integration::findStiffDerivatives() {
    if (hasPlenum_ && (model_->pumps() || model_->hasTurbine())) {
        findDerivativesByDifferences();
        return;
    }
    Eigen::MatrixXd& derivatives = methods_->derivatives;
    derivatives.setZero();
    const auto ofPlenum = static_cast<Eigen::Index>(cylinders.size()) * stiffCount;
    PlenumAnswer plenumAnswer;
    if (hasPlenum_) {
        const GasGroup& air = model_->gas.air;
        const double* p = &y_[cylinders.size() * cylinderVariables];
        const double pressure = supplyOf(x_, y_.data()).pressure;
        const double t = p[plenumTemperature];
        const double r = air.gasConstant();
        const double heat = p[plenumMass] * (air.heat(t) - r);
        plenumAnswer = {{-1.0, -r * t / heat}, {pressure / p[plenumMass], pressure / t}};
        const double feed = model_->feeder.slope(pressure) / model_->omega;
        if (feed > 0.0) { // a compressor's falls with the pressure
            const double in =
                air.enthalpy(model_->feeder.feed(pressure).temperature) - air.enthalpy(t) + r * t;
            derivatives.block<2, 2>(ofPlenum, ofPlenum) -=
                Eigen::Vector2d(feed, feed * in / heat) * plenumAnswer.gradient.transpose();
        }
    }
    for (std::size_t k = 0; k < cylinders.size(); ++k) {
        const RunningCylinder& cylinder = *cylinders[k];
        if (!cylinder.memory.mode.portsOpen()) {
            continue;
        }
        const Responses& seen = cylinder.responses;
        const auto of = static_cast<Eigen::Index>(k) * stiffCount;
        const Eigen::RowVector3d gradient(seen.pressurePerAir, seen.pressurePerProducts,
                                          seen.pressurePerKelvin);
        for (const PortResponse* port : {&seen.inlet, &seen.exhaust}) {
            const Eigen::Vector3d effect(1.0 - port->products, port->products,
                                         port->energy / seen.heatCapacity);
            derivatives.block<3, 3>(of, of) += effect * port->slope * gradient;
            if (!hasPlenum_ || port != &seen.inlet) {
                continue;
            }
            const Eigen::RowVector2d outer = port->outerSlope * plenumAnswer.gradient.transpose();
            derivatives.block<3, 2>(of, ofPlenum) += effect * outer;
            if (cylinder.memory.mode.inlet == InletFlow::fresh) {
                const Eigen::Vector2d draw = cylinder.weight * plenumAnswer.draw;
                derivatives.block<2, 3>(ofPlenum, of) += draw * port->slope * gradient;
                derivatives.block<2, 2>(ofPlenum, ofPlenum) += draw * outer;
            }
        }
    }
}

} // namespace lobewright::gas
