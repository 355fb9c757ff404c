#include "core/solution/workings/working_recipes.h"
#include "core/units.h"

#include <fmt/format.h>

LW_TEXTS_OF(Core)

namespace lobewright::solution {

namespace {

using Cycle = gas::CycleFigures;

/// A figure that is a mean or the largest over the cycles of the engine.
struct OverCycles {
    std::string_view figure, symbol;
    double Cycle::*member;
    double factor = 1.0;
    bool largest = false;
};

const OverCycles* find(std::string_view figure) {
    static const OverCycles all[] = {
        {"imep_bar", "p_i", &Cycle::imep, units::bar},
        {"delivery_ratio", "DR", &Cycle::deliveryRatio},
        {"scavenge_ratio", "SR", &Cycle::scavengeRatio},
        {"trapping_efficiency", "η_t", &Cycle::trappingEfficiency},
        {"scavenging_efficiency", "η_s", &Cycle::scavengingEfficiency},
        {"charging_efficiency", "η_ch", &Cycle::chargingEfficiency},
        {"purity", "Y", &Cycle::purity},
        {"trapped_mass_mg", "m", &Cycle::trappedMass, units::milligram},
        {"trapped_pressure_bar", "p", &Cycle::trappedPressure, units::bar},
        {"trapped_temperature_K", "T", &Cycle::trappedTemperature},
        {"peak_pressure_bar", "p_max", &Cycle::peakPressure, units::bar, true},
        {"peak_temperature_K", "T_max", &Cycle::peakTemperature, 1.0, true},
        {"fuel_heat_J", "Q", &Cycle::fuelHeat},
        {"supply_enthalpy_J", "H_s", &Cycle::supplyEnthalpy},
        {"wall_heat_J", "Q_w", &Cycle::wallHeat},
        {"exhaust_enthalpy_J", "H_e", &Cycle::exhaustEnthalpy}};
    for (const OverCycles& one : all) {
        if (one.figure == figure) {
            return &one;
        }
    }
    return nullptr;
}

} // namespace

std::optional<Working> cyclesWorking(const Solution& solution, const Figure& figure) {
    const OverCycles* kind = find(figure.name);
    if (kind == nullptr || !solution.gas) {
        return std::nullopt;
    }
    const auto& gas = *solution.gas;
    const std::vector<std::vector<Cycle>> alike = {gas.cycles};
    const auto& cylinders = gas.cylinders.empty() ? alike : gas.cylinders;
    Working working{.figure = figure.name,
                    .symbol = std::string(kind->symbol),
                    .unit = figure.symbolOfUnit(),
                    .value = *figure.value,
                    .source = kind->largest ? LW_TEXT("Maximum of all cycles of a pattern.")
                                            : LW_TEXT("Mean of all cycles of a pattern.")};
    std::string list;
    for (std::size_t k = 0; k < cylinders.size(); ++k) {
        for (std::size_t j = 0; j < cylinders[k].size(); ++j) {
            const std::string symbol = fmt::format("x{}", working.operands.size() + 1);
            const char* separator = list.empty() ? "" : kind->largest ? ", " : " + ";
            list += separator + symbol;
            working.operands.push_back(
                {.symbol = symbol,
                 .label = figure.label,
                 .unit = figure.symbolOfUnit(),
                 .values = Samples::Constant(1, cylinders[k][j].*kind->member / kind->factor),
                 .note = gas.cylinders.empty()
                             ? Message(LW_TEXT("cycle %1 of the pattern"), j + 1)
                             : Message(LW_TEXT("cycle %1 of cylinder %2"), j + 1, k + 1)});
        }
    }
    if (working.operands.size() < 2) {
        return std::nullopt; // that would be the figure itself
    }
    working.formula = kind->largest ? fmt::format("max({})", list)
                                    : fmt::format("({})/{}", list, working.operands.size());
    return working;
}

} // namespace lobewright::solution
