#include "core/gas/cycle/figures.h"

#include "core/gas/models/supply.h"

#include <boost/math/tools/minima.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>

LW_TEXTS_OF(Core)

namespace lobewright::gas {
namespace {

double ratio(double part, double whole) {
    return whole > 0.0 ? part / whole : 0.0;
}

/// Largest value of a quantity of the gas and where it stands.
struct Peak {
    double value = -std::numeric_limits<double>::infinity();
    double angle = 0.0;
    double reach = 0.0; ///< the peak lies within ± reach [rad]
    void offer(double candidate, double at, double stepLength) {
        if (candidate > value) {
            value = candidate;
            angle = at;
            reach = stepLength;
        }
    }
    template <class Quantity>
    void refine(Quantity&& quantity) {
        std::uintmax_t iterations = 30;
        const auto [at, negative] = boost::math::tools::brent_find_minima(
            [&](double x) { return -quantity(x); }, angle - reach, angle + reach, 26, iterations);
        offer(-negative, at, 0.0);
    }
};

struct CyclePeaks {
    Peak pressure, temperature;
};

/// Index of the cycle that a local angle of the period belongs to.
std::size_t cycleAt(const Model& model, double local) {
    const std::vector<CycleAngles>& cycles = model.chamber->cycles();
    double into = local - model.start;
    into -= std::floor(into / model.period()) * model.period();
    std::size_t index = 0;
    while (index + 1 < cycles.size() && model.start + into > cycles[index].lastClosing) {
        ++index;
    }
    return index;
}

std::vector<CyclePeaks> findPeaks(const Model& model, const RecordedTrace& trace, int cylinder) {
    std::vector<CyclePeaks> peaks(model.chamber->cycles().size());
    const StepRecord& record = trace.recordOf(cylinder);
    double previousLength = record.length.front();
    for (std::size_t i = 0; i < record.begin.size(); ++i) {
        const double local = model.start + record.begin[i];
        const double reach = std::max(previousLength, record.length[i]);
        previousLength = record.length[i];
        const RecordedTrace::State state = trace.stateInStep(record, i, 0.0);
        CyclePeaks& cycle = peaks[cycleAt(model, local)];
        cycle.pressure.offer(state.pressure, local, reach);
        cycle.temperature.offer(state.temperature, local, reach);
    }
    for (CyclePeaks& cycle : peaks) {
        cycle.pressure.refine([&](double x) { return trace.stateAt(x, cylinder).pressure; });
        cycle.temperature.refine([&](double x) { return trace.stateAt(x, cylinder).temperature; });
    }
    return peaks;
}

void setScavenging(CycleFigures& f, const Model& model, const CycleRecord& record) {
    const double reference =
        ambientDensity(model.settings.supply, model.gas.air) * model.chamber->sweptVolume();
    // what a pump chamber gives and takes back does not count twice
    f.deliveredMass = model.pumps() ? record.of(inletMass) : record.of(deliveredMass);
    f.deliveryRatio = f.deliveredMass / reference;
    f.scavengeRatio = ratio(f.deliveredMass, record.closingMass);
    f.trappingEfficiency = ratio(record.retainedFresh, f.deliveredMass);
    f.scavengingEfficiency = ratio(record.retainedFresh, record.closingMass);
    f.chargingEfficiency = record.retainedFresh / reference;
}

void setResiduals(CycleFigures& f, const Model& model, const CycleRecord& record) {
    f.inletMass = record.of(inletMass);
    f.exhaustMass = record.of(exhaustMass);
    f.massChange = record.massChange;
    f.energyChange = record.energyChange;
    const double injected = model.premixed() ? 0.0 : record.of(burntFuel);
    f.massResidual =
        std::fabs(record.of(inletMass) - record.of(exhaustMass) + injected - record.massChange) /
        record.trappedMass;
    f.energyReference =
        f.fuelHeat > 0.0 ? f.fuelHeat : record.trappedPressure * record.trappedVolume;
    f.energyResidual = std::fabs(f.heatReleased - f.wallHeat - f.work + f.supplyEnthalpy -
                                 f.exhaustEnthalpy - record.energyChange) /
                       f.energyReference;
}

CycleFigures figuresOf(const Model& model, const CycleRecord& record, const CyclePeaks& peaks) {
    CycleFigures f;
    f.work = record.of(work);
    f.imep = f.work / model.chamber->sweptVolume();
    f.fuelMass = record.fuelMass;
    f.burntFuelMass = record.of(burntFuel);
    f.fuelHeat = f.fuelMass * model.gas.lowerHeatingValue;
    f.heatReleased =
        f.burntFuelMass * model.gas.lowerHeatingValue * model.settings.combustionEfficiency;
    f.wallHeat = record.of(wallHeat);
    f.exhaustEnthalpy = record.of(exhaustEnthalpy);
    f.supplyEnthalpy = record.of(inletEnthalpy);
    f.trappedMass = record.trappedMass;
    f.trappedPressure = record.trappedPressure;
    f.trappedTemperature = record.trappedTemperature;
    f.purity = ratio(record.trappedAir, record.trappedMass);
    setScavenging(f, model, record);
    f.suppliedFuelMass = model.premixed() ? model.fuelShare * f.deliveredMass : f.fuelMass;
    f.indicatedEfficiency = ratio(f.work, f.fuelHeat);
    f.peakPressure = peaks.pressure.value;
    f.peakPressureAngle = peaks.pressure.angle;
    f.peakTemperature = peaks.temperature.value;
    f.peakTemperatureAngle = peaks.temperature.angle;
    f.burnStart = model.settings.burn.start;
    if (model.knock) {
        f.knockIntegral = record.knockIntegral;
        f.knockAngle = record.knockAngle;
    }
    setResiduals(f, model, record);
    return f;
}

} // namespace

std::vector<CycleFigures> figuresOf(const Model& model, const std::vector<CycleRecord>& records,
                                    const RecordedTrace& trace, int cylinder) {
    const std::vector<CyclePeaks> peaks = findPeaks(model, trace, cylinder);
    std::vector<CycleFigures> figures;
    for (std::size_t j = 0; j < records.size(); ++j) {
        figures.push_back(figuresOf(model, records[j], peaks[j]));
    }
    return figures;
}

std::vector<Message> remarksOn(const Model& model, const CycleSolution& solution) {
    std::vector<Message> remarks;
    double warmest = 0.0;
    for (const CycleFigures& cycle : solution.cycles) {
        warmest = std::max(warmest, cycle.peakTemperature);
    }
    if (model.fired) {
        remarks.emplace_back(
            LW_TEXT("The products hold no dissociated gas and no carbon monoxide: near λ = 1 "
                    "the peak temperature is 100 to 250 K too high."));
    }
    if (warmest > fitUpperLimit) {
        remarks.push_back(Message(LW_TEXT("The gas reaches %1; the property fits end at %2."),
                                  withDecimals(warmest, in::kelvin, 0),
                                  withDecimals(fitUpperLimit, in::kelvin, 0)));
    }
    if (model.fired && model.settings.lambda < 0.9) {
        remarks.push_back(Message(
            LW_TEXT("λ = %1 is outside the model, which knows no unburnt products below λ = 0.9."),
            withDecimals(model.settings.lambda, in::pure, 3)));
    }
    if (model.burnStartRough) {
        remarks.emplace_back(
            LW_TEXT("The start of combustion for the best torque is known to 8° of the cycle only: "
                    "the engine settles too slowly, or not at all, at starts nearby."));
    }
    if (!solution.supplyPaid && solution.supplyPower > 0.0) {
        remarks.push_back(Message(LW_TEXT("Supply power not counted: %1 to compress the air."),
                                  withDecimals(solution.supplyPower, in::kW, 2)));
    }
    return remarks;
}

} // namespace lobewright::gas
