#include "core/gas/ring.h"

#include <algorithm>

namespace lobewright::gas {
namespace {

constexpr Variable stiffOfCylinder[] = {airMass, productsMass, temperature};
constexpr int stiffCount = 3;

} // namespace

std::vector<VariableRange> Ring::coupledRanges(std::size_t cylinders, bool plenum) {
    std::vector<VariableRange> ranges;
    for (std::size_t k = 0; k < cylinders; ++k) {
        const int first = static_cast<int>(k) * cylinderVariables;
        ranges.push_back({first, first + coupledVariables});
    }
    if (plenum) {
        const int first = static_cast<int>(cylinders) * cylinderVariables;
        ranges.push_back({first, first + plenumTemperature + 1});
    }
    return ranges;
}

std::vector<int> Ring::stiffVariables(std::size_t cylinders, bool plenum) {
    std::vector<int> indices;
    for (std::size_t k = 0; k < cylinders; ++k) {
        for (const Variable variable : stiffOfCylinder) {
            indices.push_back(static_cast<int>(k) * cylinderVariables + variable);
        }
    }
    if (plenum) {
        const int offset = static_cast<int>(cylinders) * cylinderVariables;
        indices.push_back(offset + plenumMass);
        indices.push_back(offset + plenumTemperature);
    }
    return indices;
}

/// Rate at which the plenum's pressure answers to what the cylinders draw [1/rad].
double Ring::plenumRelaxation() const {
    double draw = 0.0;
    for (const Member& member : members_) {
        if (member.memory.mode.inlet == InletFlow::fresh) {
            draw += member.weight * member.observed.inletResponse.outerSlope;
        }
    }
    if (!neighbours_.none()) {
        draw += neighbours_.draw(theta_, plenumState(y_.data())).slope;
    }
    const double* plenum = &y_[plenumOffset_];
    const double gamma = model_->gas.air.heatRatio(plenum[plenumTemperature]);
    return draw * gamma * plenumState(y_.data()).pressure / plenum[plenumMass];
}

/// ∂f/∂y as far as the flow through the ports answers to the pressures on both sides: each flow
/// changes the state of the cylinder, and of the plenum where fresh gas is drawn from it.
void Ring::findStiffDerivatives() {
    derivatives_.setZero();
    const auto plenumColumn = static_cast<Eigen::Index>(members_.size()) * stiffCount;
    double plenumGradient[2] = {0.0, 0.0};
    double drawEffect[2] = {0.0, 0.0};
    if (hasPlenum()) {
        const double* plenum = &y_[plenumOffset_];
        const double pressure = plenumState(y_.data()).pressure;
        const double t = plenum[plenumTemperature];
        const double r = model_->gas.air.gasConstant();
        plenumGradient[0] = pressure / plenum[plenumMass];
        plenumGradient[1] = pressure / t;
        drawEffect[0] = -1.0;
        drawEffect[1] = -r * t / (plenum[plenumMass] * (model_->gas.air.heat(t) - r));
        if (!neighbours_.none()) {
            const double slope = neighbours_.draw(theta_, plenumState(y_.data())).slope;
            for (int i = 0; i < 2; ++i) {
                for (int j = 0; j < 2; ++j) {
                    derivatives_(plenumColumn + i, plenumColumn + j) +=
                        drawEffect[i] * slope * plenumGradient[j];
                }
            }
        }
    }
    for (std::size_t k = 0; k < members_.size(); ++k) {
        const Member& member = members_[k];
        const Observed& seen = member.settled;
        const auto first = static_cast<Eigen::Index>(k) * stiffCount;
        const double gradient[stiffCount] = {seen.pressurePerAir, seen.pressurePerProducts,
                                             seen.pressurePerKelvin};
        const bool draws = hasPlenum() && member.memory.mode.inlet == InletFlow::fresh;
        for (const PortResponse* port : {&seen.inletResponse, &seen.exhaustResponse}) {
            const double effect[stiffCount] = {1.0 - port->products, port->products,
                                               port->energy / seen.heatCapacity};
            for (int j = 0; j < stiffCount; ++j) {
                const double slope = port->slope * gradient[j];
                for (int i = 0; i < stiffCount; ++i) {
                    derivatives_(first + i, first + j) += effect[i] * slope;
                }
                if (draws && port == &seen.inletResponse) {
                    derivatives_(plenumColumn, first + j) += member.weight * drawEffect[0] * slope;
                    derivatives_(plenumColumn + 1, first + j) +=
                        member.weight * drawEffect[1] * slope;
                }
            }
            if (!hasPlenum() || port != &seen.inletResponse) {
                continue;
            }
            for (int j = 0; j < 2; ++j) {
                const double slope = port->outerSlope * plenumGradient[j];
                for (int i = 0; i < stiffCount; ++i) {
                    derivatives_(first + i, plenumColumn + j) += effect[i] * slope;
                }
                for (int i = 0; draws && i < 2; ++i) {
                    derivatives_(plenumColumn + i, plenumColumn + j) +=
                        member.weight * drawEffect[i] * slope;
                }
            }
        }
    }
}

} // namespace lobewright::gas
