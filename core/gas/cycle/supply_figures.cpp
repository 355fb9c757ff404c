#include "core/gas/cycle/coupled_cylinders.h"
#include "core/gas/cycle/turbine.h"
#include "core/gas/models/supply.h"

#include <algorithm>
#include <cmath>
#include <limits>

/// What the last window tells of plenum, pump, compressor and turbine.
namespace lobewright::gas {
namespace {

/// Internal energy of gas that holds products [J].
double energyOf(const WorkingGas& gas, double mass, double products, double t) {
    return (mass - products) * gas.air.internalEnergy(t) +
           products * gas.products.internalEnergy(t);
}

} // namespace

double CoupledCylinders::meanPlenumPressure() const {
    return together_.plenum[pressureSum] / window_;
}

double CoupledCylinders::meanPlenumTemperature() const {
    return together_.plenum[temperatureSum] / window_;
}

double CoupledCylinders::meanBlowerPower() const {
    return together_.plenum[blowerWork] / window_ * model_->omega;
}

PumpFigures CoupledCylinders::pump() const {
    const PlenumState &begin = windowBegin_, &end = together_.plenum;
    // chamber and transfer volume
    const auto energy = [this](const PlenumState& s) {
        double sum = energyOf(model_->gas, s[plenumMass], s[plenumProducts], s[plenumTemperature]);
        if (model_->hasTransfer()) {
            sum +=
                energyOf(model_->gas, s[transferMass], s[transferProducts], s[transferTemperature]);
        }
        return sum;
    };
    const auto mass = [this](const PlenumState& s) {
        return s[plenumMass] + (model_->hasTransfer() ? s[transferMass] : 0.0);
    };
    const double cycles =
        static_cast<double>(model_->chamber->cycles().size()) / static_cast<double>(windows_);
    // of one cylinder and cycle
    const double share = 1.0 / (cycles * static_cast<double>(model_->pumpSpace.lags.size()));
    PumpFigures figures;
    figures.work = -end[blowerWork] * share;
    figures.intakeMass = end[intakeMass] * share;
    figures.massResidual = std::fabs(end[intakeMass] - end[portMass] - mass(end) + mass(begin)) /
                           std::max(end[intakeMass], 1e-6 * model_->massScale);
    figures.energyResidual = std::fabs(end[intakeEnthalpy] - end[portEnthalpy] + end[blowerWork] -
                                       energy(end) + energy(begin)) /
                             model_->energyScale;
    const PumpSpace::Bounds bounds = model_->pumpSpace.bounds();
    figures.compressionRatio = bounds.largest / bounds.smallest;
    figures.lowPressure = std::numeric_limits<double>::infinity();
    const SupplyTrace& trace = together_.plenumRecord;
    for (std::size_t i = 0; i < trace.begin.size(); ++i) {
        for (const double s : {0.0, 0.5}) {
            const double pressure = trace.pumpPressure(trace.begin[i] + s * trace.length[i],
                                                       model_->gas.air.gasConstant(),
                                                       model_->gas.products.gasConstant());
            figures.lowPressure = std::min(figures.lowPressure, pressure);
            figures.highPressure = std::max(figures.highPressure, pressure);
        }
    }
    return figures;
}

CompressorFigures CoupledCylinders::compressor() const {
    const TurningWheel& wheel = *model_->feeder.wheel();
    const GasGroup& air = model_->gas.air;
    const PlenumState &begin = windowBegin_, &end = together_.plenum;
    const auto energy = [&air](const PlenumState& state) {
        return state[plenumMass] * air.internalEnergy(state[plenumTemperature]);
    };
    CompressorFigures figures;
    figures.wheelSpeed = wheel.speed();
    figures.tipSpeed = wheel.tipSpeed();
    figures.flow = end[intakeMass] / window_ * model_->omega;
    figures.flowCoefficient = wheel.flowCoefficient(figures.flow);
    figures.surgeFlow = wheel.curve().surgeFlow();
    figures.chokeFlow = wheel.curve().chokeFlow();
    const auto& between = model_->feeder.between();
    figures.pressureRatio = (between ? between->pressure : meanPlenumPressure()) /
                            intakePressure(model_->settings.supply);
    figures.outletTemperature = wheel.compression(figures.flow).outletTemperature;
    figures.efficiency = wheel.efficiency(figures.flow);
    figures.power = model_->hasTurbine() ? meanWheelPower()
                    : between            ? between->flow * between->work
                                         : meanBlowerPower();
    const double passed = std::max(end[intakeMass], 1e-6 * model_->massScale);
    figures.massResidual =
        std::fabs(end[intakeMass] - end[portMass] - end[plenumMass] + begin[plenumMass]) / passed;
    figures.energyResidual =
        std::fabs(end[intakeEnthalpy] - end[portEnthalpy] - energy(end) + energy(begin)) /
        (passed * air.heat(referenceTemperature) * referenceTemperature);
    return figures;
}

double CoupledCylinders::meanWheelPower() const {
    return together_.plenum[wheelWork] / window_ * model_->omega;
}

double CoupledCylinders::meanTurbinePower() const {
    return together_.plenum[turbineWork] / window_ * model_->omega;
}

TurbineFigures CoupledCylinders::turbine() const {
    const Turbine& turbine = model_->settings.supply.compressor.turbine;
    const PlenumState &begin = windowBegin_, &end = together_.plenum;
    const auto energy = [this](const PlenumState& state) {
        return energyOf(model_->gas, state[exhaustPlenumMass], state[exhaustPlenumProducts],
                        state[exhaustPlenumTemperature]);
    };
    TurbineFigures figures;
    figures.flow = end[nozzleMass] / window_ * model_->omega;
    figures.power = meanTurbinePower();
    figures.friction = (1.0 - turbine.mechanicalEfficiency) * figures.power;
    figures.pressure = end[exhaustPressureSum] / window_;
    figures.temperature = end[exhaustTemperatureSum] / window_;
    const double share = std::clamp(end[exhaustPlenumProducts] / end[exhaustPlenumMass], 0.0, 1.0);
    const ExhaustState mean{figures.pressure, model_->stream(share, figures.temperature)};
    const double spouting = spoutingVelocity(mean, model_->settings.exhaustPressure);
    const double tip = 0.5 * turbine.diameter * model_->feeder.wheel()->speed();
    figures.speedRatio = spouting > 0.0 ? tip / spouting : 0.0;
    const double ideal = 0.5 * figures.flow * spouting * spouting;
    figures.efficiency = ideal > 0.0 ? figures.power / ideal : 0.0;
    const double passed = std::max(end[nozzleMass], 1e-6 * model_->massScale);
    figures.outletTemperature =
        model_->streamOfEnthalpy(share, (end[nozzleEnthalpy] - end[turbineWork]) / passed)
            .temperature;
    figures.outletEnthalpy = (end[nozzleEnthalpy] - end[turbineWork]) / window_ * model_->omega;
    const double taken = meanWheelPower();
    figures.balanceResidual =
        std::fabs(figures.power - figures.friction - taken) / std::max(taken, 1e-300);
    figures.massResidual = std::fabs(end[exhaustInMass] - end[nozzleMass] - end[exhaustPlenumMass] +
                                     begin[exhaustPlenumMass]) /
                           passed;
    figures.energyResidual =
        std::fabs(end[exhaustInEnthalpy] - end[nozzleEnthalpy] - energy(end) + energy(begin)) /
        (passed * mean.stream.gasConstant * figures.temperature * mean.stream.gamma /
         (mean.stream.gamma - 1.0));
    return figures;
}

} // namespace lobewright::gas
