#include "core/reference/compared_values.h"

#include "core/units.h"

#include <algorithm>
#include <functional>

LW_TEXTS_OF(Core)

namespace lobewright::study {

namespace {

/// One column of the comparison.
struct ComparedColumn {
    solution::QuantityId id;
    TextId label;
    bool grows; ///< in proportion to the number of cylinders
    std::function<std::optional<double>(const ComparedValues&)> value; ///< SI
    TextId absent = LW_TEXT("not available for this engine");
};

std::vector<ComparedColumn> geometryColumns() {
    using V = ComparedValues;
    return {
        {{"shaft_speed", &in::turnsPerMinute},
         LW_TEXT("Speed of the output shaft"),
         false,
         [](const V& v) { return v.outputSpeed; }},
        {{"crank_speed", &in::turnsPerMinute},
         LW_TEXT("Speed of cam or crank"),
         false,
         [](const V& v) { return v.crankSpeed; }},
        {{"cylinders"}, LW_TEXT("Cylinders"), true, [](const V& v) { return v.cylinders; }},
        {{"displacement", &in::cm3},
         LW_TEXT("Displacement"),
         true,
         [](const V& v) { return v.cylinders * v.sweptVolume; }},
        {{"power_strokes_per_cylinder_and_turn"},
         LW_TEXT("Power strokes per cylinder and output revolution"),
         false,
         [](const V& v) { return v.cyclesPerTurn * v.crankSpeed / v.outputSpeed; }},
        {{"power_strokes_per_turn"},
         LW_TEXT("Power strokes per output revolution"),
         true,
         [](const V& v) { return v.cyclesPerSecond() * units::turn / v.outputSpeed; }},
        {{"power_strokes", &in::perSecond},
         LW_TEXT("Power strokes per second"),
         true,
         [](const V& v) { return v.cyclesPerSecond(); }},
        {{"displaced_volume", &in::litrePerSecond},
         LW_TEXT("Volume displaced per second"),
         true,
         [](const V& v) { return v.cyclesPerSecond() * v.sweptVolume; }},
        {{"bore", &in::mm}, LW_TEXT("Bore"), false, [](const V& v) { return v.bore; }},
        {{"stroke", &in::mm},
         LW_TEXT("Stroke of a piston"),
         false,
         [](const V& v) { return v.stroke; }},
        {{"compression_ratio"},
         LW_TEXT("Compression ratio"),
         false,
         [](const V& v) { return v.compressionRatio; }},
        {{"trapped_compression_ratio"},
         LW_TEXT("Trapped compression ratio"),
         false,
         [](const V& v) { return v.trappedCompressionRatio; }},
        {{"surface_to_volume", &in::perMm},
         LW_TEXT("Surface to volume at inner dead centre"),
         false,
         [](const V& v) { return v.surfaceToVolume; }},
        {{"mean_piston_speed", &in::metrePerSecond},
         LW_TEXT("Mean piston speed"),
         false,
         [](const V& v) { return v.meanPistonSpeed; }},
        {{"peak_piston_speed", &in::metrePerSecond},
         LW_TEXT("Peak piston speed"),
         false,
         [](const V& v) { return v.peakPistonSpeed; }},
        {{"peak_acceleration", &in::metrePerSecond2},
         LW_TEXT("Peak piston acceleration"),
         false,
         [](const V& v) { return v.peakAcceleration; }},
        {{"largest_lever_arm", &in::mmPerRad},
         LW_TEXT("Largest lever arm"),
         false,
         [](const V& v) { return v.leverArm; }},
    };
}

std::vector<ComparedColumn> pressureColumns() {
    using V = ComparedValues;
    const auto pressure = [](const char* id, TextId label, auto member) {
        return ComparedColumn{
            {id, &in::bar}, label, false, [member](const V& v) { return v.*member; }};
    };
    const auto friction = [&pressure](const char* id, TextId label, auto member) {
        ComparedColumn column = pressure(id, label, member);
        column.absent = withinTheFit;
        return column;
    };
    return {
        {{"burn_start", &in::degrees},
         LW_TEXT("Start of combustion, degrees of a reciprocation"),
         false,
         [](const V& v) { return v.burnStart; }},
        pressure("imep", LW_TEXT("Indicated mean effective pressure"), &V::imep),
        friction("fmep_ring", LW_TEXT("Friction of the piston rings"), &V::fmepRing),
        friction("fmep_guide", LW_TEXT("Friction of guides or skirts"), &V::fmepGuide),
        pressure("fmep_drive", LW_TEXT("Friction of rollers and bearings, or the whole fit"),
                 &V::fmepDrive),
        pressure("fmep_supply", LW_TEXT("Blower or compressor, deducted"), &V::fmepSupply),
        friction("fmep_auxiliary", LW_TEXT("Auxiliaries"), &V::fmepAuxiliary),
        {{"bmep", &in::bar},
         LW_TEXT("Brake mean effective pressure"),
         false,
         [](const V& v) { return v.bmep(); }},
        {{"brake_torque", &in::Nm},
         LW_TEXT("Brake torque"),
         true,
         [](const V& v) { return v.power() / v.outputSpeed; }},
        {{"brake_power", &in::kW},
         LW_TEXT("Brake power"),
         true,
         [](const V& v) { return v.power(); }},
        {{"supply_power", &in::kW},
         LW_TEXT("Power of the blower or compressor"),
         true,
         [](const V& v) { return v.supplyPower; }},
        {{"supply_power_counted"},
         LW_TEXT("Supply power deducted"),
         false,
         [](const V& v) { return v.supplyPaid ? 1.0 : 0.0; }},
    };
}

std::vector<ComparedColumn> gasColumns() {
    using V = ComparedValues;
    using F = gas::CycleFigures;
    const auto cycle = [](const char* id, TextId label, double F::*member) {
        return ComparedColumn{{id}, label, false, [member](const V& v) { return v.mean(member); }};
    };
    return {
        cycle("indicated_efficiency", LW_TEXT("Indicated thermal efficiency"),
              &F::indicatedEfficiency),
        {{"brake_efficiency"},
         LW_TEXT("Brake thermal efficiency"),
         false,
         [](const V& v) -> std::optional<double> {
             const double heat = v.mean(&F::fuelHeat);
             return heat > 0.0 ? std::optional(v.bmep() * v.sweptVolume / heat) : std::nullopt;
         }},
        cycle("delivery_ratio", LW_TEXT("Delivery ratio or volumetric efficiency, ambient density"),
              &F::deliveryRatio),
        cycle("trapping_efficiency", LW_TEXT("Trapping efficiency"), &F::trappingEfficiency),
        cycle("charging_efficiency", LW_TEXT("Charging efficiency"), &F::chargingEfficiency),
        {{"peak_pressure", &in::bar},
         LW_TEXT("Peak pressure"),
         false,
         [](const V& v) { return v.largest(&F::peakPressure); }},
        {{"peak_temperature", &in::kelvin},
         LW_TEXT("Peak mean temperature"),
         false,
         [](const V& v) { return v.largest(&F::peakTemperature); }},
        {{"wall_heat_share"},
         LW_TEXT("Heat to the walls, share of the fuel heat"),
         false,
         [](const V& v) { return v.wallHeatShare(); }},
        {{"friction_share"},
         LW_TEXT("Mechanical friction, share of the fuel heat"),
         false,
         [](const V& v) { return v.frictionShare(); }},
    };
}

std::vector<ComparedColumn> torqueColumns() {
    using V = ComparedValues;
    return {
        {{"peak_to_peak_torque", &in::Nm},
         LW_TEXT("Peak-to-peak torque"),
         false,
         [](const V& v) { return v.peakToPeakTorque; }},
        {{"torque_ripple"},
         LW_TEXT("Torque ripple, (max − min)/|mean|"),
         false,
         [](const V& v) { return v.ripple; }},
        {{"shortest_firing_interval", &in::degrees},
         LW_TEXT("Shortest firing interval, output shaft"),
         false,
         [](const V& v) { return v.shortestInterval; }},
        {{"longest_firing_interval", &in::degrees},
         LW_TEXT("Longest firing interval, output shaft"),
         false,
         [](const V& v) { return v.longestInterval; }},
        {{"cylinders_firing_together"},
         LW_TEXT("Cylinders that fire together"),
         false,
         [](const V& v) { return v.together; }},
        {{"highest_side_force", &in::N},
         LW_TEXT("Largest side force of a piston"),
         false,
         [](const V& v) { return v.sideForce; }},
        {{"shaking_force_peak", &in::N},
         LW_TEXT("Largest shaking force along the cylinders"),
         false,
         [](const V& v) { return v.shakingForce; }},
        {{"rocking_moment_peak", &in::Nm},
         LW_TEXT("Largest rocking moment"),
         false,
         [](const V& v) { return v.rockingMoment; }},
    };
}

const std::vector<ComparedColumn>& columns() {
    static const std::vector<ComparedColumn> all = [] {
        std::vector<ComparedColumn> list = geometryColumns();
        for (const auto& part : {pressureColumns(), gasColumns(), torqueColumns()}) {
            list.insert(list.end(), part.begin(), part.end());
        }
        return list;
    }();
    return all;
}

solution::Figure figure(const solution::QuantityId& id, TextId label) {
    return {id, "comparison", id.written(), label, {}, {}};
}

/// Heat kept against friction added, as shares of the fuel heat, against the reference.
void addWeighing(std::vector<solution::Figure>& figures, const ComparedValues* values,
                 const ComparedValues* reference, const Message& note) {
    auto kept = figure({"heat_kept_share"},
                       LW_TEXT("Heat kept from the walls against the four-stroke, share "
                               "of the fuel heat"));
    auto added = figure({"friction_added_share"},
                        LW_TEXT("Friction added against the four-stroke, share of the fuel heat"));
    auto weighed = figure({"heat_kept_less_friction_share"},
                          LW_TEXT("Work gained from the heat kept, at the indicated thermal "
                                  "efficiency, less added friction"));
    if (values != nullptr && reference != nullptr &&
        values->mean(&gas::CycleFigures::fuelHeat) > 0.0) {
        kept.value = reference->wallHeatShare() - values->wallHeatShare();
        added.value = values->frictionShare() - reference->frictionShare();
        weighed.value =
            *kept.value * values->mean(&gas::CycleFigures::indicatedEfficiency) - *added.value;
    }
    for (solution::Figure* one : {&kept, &added, &weighed}) {
        one->note = one->value ? "" : note;
        figures.push_back(*one);
    }
}

} // namespace

double ComparedValues::cyclesPerSecond() const {
    return cylinders * cyclesPerTurn * crankSpeed / units::turn;
}

double ComparedValues::power() const {
    return bmep() * sweptVolume * cyclesPerSecond();
}

double ComparedValues::mean(double gas::CycleFigures::*member) const {
    double sum = 0.0;
    for (const gas::CycleFigures& cycle : cycles) {
        sum += cycle.*member;
    }
    return cycles.empty() ? 0.0 : sum / static_cast<double>(cycles.size());
}

double ComparedValues::largest(double gas::CycleFigures::*member) const {
    double result = 0.0;
    for (const gas::CycleFigures& cycle : cycles) {
        result = std::max(result, cycle.*member);
    }
    return result;
}

double ComparedValues::wallHeatShare() const {
    const double heat = mean(&gas::CycleFigures::fuelHeat);
    return heat > 0.0 ? mean(&gas::CycleFigures::wallHeat) / heat : 0.0;
}

double ComparedValues::frictionShare() const {
    const double heat = mean(&gas::CycleFigures::fuelHeat);
    return heat > 0.0 ? mechanicalFmep() * sweptVolume / heat : 0.0;
}

std::vector<solution::Figure> comparedFigures(const ComparedValues& values, double scale,
                                              const ComparedValues* reference) {
    std::vector<solution::Figure> figures;
    auto enlarged = figure({"enlarged_by"}, LW_TEXT("Enlargement by equal cylinders, factor"));
    enlarged.value = scale;
    figures.push_back(enlarged);
    for (const ComparedColumn& column : columns()) {
        auto one = figure(column.id, column.label);
        if (const auto value = column.value(values)) {
            one.value =
                *value * (column.grows ? scale : 1.0) * one.unit->divisor / one.unit->factor;
        } else {
            one.note = column.absent;
        }
        one.isYesNo = one.name == "supply_power_counted";
        figures.push_back(one);
    }
    addWeighing(figures, &values, reference, LW_TEXT("no fired four-stroke to compare with"));
    return figures;
}

std::vector<solution::Figure> absentFigures(const Message& note) {
    std::vector<solution::Figure> figures = {
        figure({"enlarged_by"}, LW_TEXT("Enlargement by equal cylinders, factor"))};
    for (const ComparedColumn& column : columns()) {
        figures.push_back(figure(column.id, column.label));
    }
    addWeighing(figures, nullptr, nullptr, note);
    for (solution::Figure& one : figures) {
        one.note = note;
    }
    return figures;
}

Samples strokeAngles() {
    return Samples::LinSpaced(361, -units::pi, units::pi);
}

Samples twoTurns() {
    return Samples::LinSpaced(721, 0.0, 2.0 * units::turn);
}

} // namespace lobewright::study
