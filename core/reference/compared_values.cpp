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

/// As large with more cylinders of the same size. `value`: a member of the values, or of them.
template <class Value>
ComparedColumn same(const char* id, const Unit& unit, TextId label, Value value) {
    const auto of = [value](const ComparedValues& values) -> std::optional<double> {
        return std::invoke(value, values);
    };
    return {{id, &unit}, label, false, of};
}

/// In proportion to their number.
template <class Value>
ComparedColumn grows(const char* id, const Unit& unit, TextId label, Value value) {
    ComparedColumn column = same(id, unit, label, value);
    column.grows = true;
    return column;
}

std::vector<ComparedColumn> geometryColumns() {
    using V = ComparedValues;
    return {
        same("shaft_speed", in::turnsPerMinute, LW_TEXT("Speed of the output shaft"),
             &V::outputSpeed),
        same("crank_speed", in::turnsPerMinute, LW_TEXT("Speed of cam or crank"), &V::crankSpeed),
        grows("cylinders", in::pure, LW_TEXT("Cylinders"), &V::cylinders),
        grows("displacement", in::cm3, LW_TEXT("Displacement"),
              [](const V& v) { return v.cylinders * v.sweptVolume; }),
        same("power_strokes_per_cylinder_and_turn", in::pure,
             LW_TEXT("Power strokes per cylinder and output revolution"),
             [](const V& v) { return v.cyclesPerTurn * v.crankSpeed / v.outputSpeed; }),
        grows("power_strokes_per_turn", in::pure, LW_TEXT("Power strokes per output revolution"),
              [](const V& v) { return v.cyclesPerSecond() * units::turn / v.outputSpeed; }),
        grows("power_strokes", in::perSecond, LW_TEXT("Power strokes per second"),
              &V::cyclesPerSecond),
        grows("displaced_volume", in::litrePerSecond, LW_TEXT("Volume displaced per second"),
              [](const V& v) { return v.cyclesPerSecond() * v.sweptVolume; }),
        same("bore", in::mm, LW_TEXT("Bore"), &V::bore),
        same("stroke", in::mm, LW_TEXT("Stroke of a piston"), &V::stroke),
        same("compression_ratio", in::pure, LW_TEXT("Compression ratio"), &V::compressionRatio),
        same("trapped_compression_ratio", in::pure, LW_TEXT("Trapped compression ratio"),
             &V::trappedCompressionRatio),
        same("surface_to_volume", in::perMm, LW_TEXT("Surface to volume at inner dead centre"),
             &V::surfaceToVolume),
        same("mean_piston_speed", in::metrePerSecond, LW_TEXT("Mean piston speed"),
             &V::meanPistonSpeed),
        same("peak_piston_speed", in::metrePerSecond, LW_TEXT("Peak piston speed"),
             &V::peakPistonSpeed),
        same("peak_acceleration", in::metrePerSecond2, LW_TEXT("Peak piston acceleration"),
             &V::peakAcceleration),
        same("largest_lever_arm", in::mmPerRad, LW_TEXT("Largest lever arm"), &V::leverArm),
    };
}

std::vector<ComparedColumn> pressureColumns() {
    using V = ComparedValues;
    const auto friction = [](const char* id, TextId label, auto member) {
        ComparedColumn column = same(id, in::bar, label, member);
        column.absent = withinTheFit;
        return column;
    };
    return {
        same("burn_start", in::degrees, LW_TEXT("Start of combustion, degrees of a reciprocation"),
             &V::burnStart),
        same("imep", in::bar, LW_TEXT("Indicated mean effective pressure"), &V::imep),
        friction("fmep_ring", LW_TEXT("Friction of the piston rings"), &V::fmepRing),
        friction("fmep_guide", LW_TEXT("Friction of guides or skirts"), &V::fmepGuide),
        same("fmep_drive", in::bar, LW_TEXT("Friction of rollers and bearings, or the whole fit"),
             &V::fmepDrive),
        same("fmep_supply", in::bar, LW_TEXT("Blower or compressor, deducted"), &V::fmepSupply),
        friction("fmep_auxiliary", LW_TEXT("Auxiliaries"), &V::fmepAuxiliary),
        same("bmep", in::bar, LW_TEXT("Brake mean effective pressure"), &V::bmep),
        grows("brake_torque", in::Nm, LW_TEXT("Brake torque"),
              [](const V& v) { return v.power() / v.outputSpeed; }),
        grows("brake_power", in::kW, LW_TEXT("Brake power"), &V::power),
        grows("supply_power", in::kW, LW_TEXT("Power of the blower or compressor"),
              &V::supplyPower),
        same("supply_power_counted", in::pure, LW_TEXT("Supply power deducted"),
             [](const V& v) { return v.supplyPaid ? 1.0 : 0.0; }),
    };
}

std::vector<ComparedColumn> gasColumns() {
    using V = ComparedValues;
    using F = gas::CycleFigures;
    const auto cycle = [](const char* id, TextId label, double F::*member) {
        return same(id, in::pure, label, [member](const V& v) { return v.mean(member); });
    };
    return {
        cycle("indicated_efficiency", LW_TEXT("Indicated thermal efficiency"),
              &F::indicatedEfficiency),
        same("brake_efficiency", in::pure, LW_TEXT("Brake thermal efficiency"),
             [](const V& v) -> std::optional<double> {
                 const double heat = v.mean(&F::fuelHeat);
                 return heat > 0.0 ? std::optional(v.bmep() * v.sweptVolume / heat) : std::nullopt;
             }),
        cycle("delivery_ratio", LW_TEXT("Delivery ratio or volumetric efficiency, ambient density"),
              &F::deliveryRatio),
        cycle("trapping_efficiency", LW_TEXT("Trapping efficiency"), &F::trappingEfficiency),
        cycle("charging_efficiency", LW_TEXT("Charging efficiency"), &F::chargingEfficiency),
        same("peak_pressure", in::bar, LW_TEXT("Peak pressure"),
             [](const V& v) { return v.largest(&F::peakPressure); }),
        same("peak_temperature", in::kelvin, LW_TEXT("Peak mean temperature"),
             [](const V& v) { return v.largest(&F::peakTemperature); }),
        same("wall_heat_share", in::pure, LW_TEXT("Heat to the walls, share of the fuel heat"),
             &V::wallHeatShare),
        same("friction_share", in::pure, LW_TEXT("Mechanical friction, share of the fuel heat"),
             &V::frictionShare),
    };
}

std::vector<ComparedColumn> torqueColumns() {
    using V = ComparedValues;
    return {
        same("peak_to_peak_torque", in::Nm, LW_TEXT("Peak-to-peak torque"), &V::peakToPeakTorque),
        same("torque_ripple", in::pure, LW_TEXT("Torque ripple, (max − min)/|mean|"), &V::ripple),
        same("shortest_firing_interval", in::degrees,
             LW_TEXT("Shortest firing interval, output shaft"), &V::shortestInterval),
        same("longest_firing_interval", in::degrees,
             LW_TEXT("Longest firing interval, output shaft"), &V::longestInterval),
        same("cylinders_firing_together", in::pure, LW_TEXT("Cylinders that fire together"),
             &V::together),
        same("highest_side_force", in::N, LW_TEXT("Largest side force of a piston"), &V::sideForce),
        same("shaking_force_peak", in::N, LW_TEXT("Largest shaking force along the cylinders"),
             &V::shakingForce),
        same("rocking_moment_peak", in::Nm, LW_TEXT("Largest rocking moment"), &V::rockingMoment),
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
