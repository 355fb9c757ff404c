#include "core/solution/figures.h"
#include "core/units.h"

#include <algorithm>
#include <cmath>

namespace lobewright::solution {

namespace {

/// Volume extremes and ratios over all cycles of a period.
struct Compression {
    double smallest = 0.0, largest = 0.0; ///< [m³]
    double geometric = 0.0;               ///< lowest of the cycles
    double trapped = 0.0;                 ///< lowest of the cycles
};

Compression compressionOf(const ports::PortTiming& timing) {
    const auto& pair = timing.pair();
    Compression result;
    for (const auto& cycle : timing.cycles()) {
        const double smallest = pair.volume(cycle.centres.idc);
        const double largest = pair.volume(cycle.centres.odc);
        const double geometric = largest / smallest;
        const double trapped = pair.volume(cycle.lastClosing()) / smallest;
        const bool first = result.geometric == 0.0;
        result.smallest = first ? smallest : std::min(result.smallest, smallest);
        result.largest = std::max(result.largest, largest);
        result.geometric = first ? geometric : std::min(result.geometric, geometric);
        result.trapped = first ? trapped : std::min(result.trapped, trapped);
    }
    return result;
}

double shiftOf(const mechanism::Adjuster& adjuster) {
    return adjuster.helixLead * adjuster.setting / units::turn + adjuster.axial;
}

} // namespace

std::optional<ports::PortTiming> withAdjuster(const ports::PortTiming& timing,
                                              const mechanism::Adjuster& adjuster) {
    const auto& pair = timing.pair();
    auto mechanism = pair.mechanism();
    if (mechanism.adjuster.setting == adjuster.setting &&
        pair.shift(End::exhaust) == shiftOf(adjuster)) {
        return timing;
    }
    mechanism.adjuster = adjuster;
    auto moved =
        mechanism::OpposedPair::make(mechanism, {pair.curve(End::inlet), pair.curve(End::exhaust)});
    if (!moved) {
        return std::nullopt;
    }
    auto ports = ports::PortTiming::make(timing.rows(), *moved);
    return ports ? std::optional(*ports) : std::nullopt;
}

double compressionRatio(const ports::PortTiming& timing) {
    return compressionOf(timing).geometric;
}

double trappedCompressionRatio(const ports::PortTiming& timing) {
    return compressionOf(timing).trapped;
}

namespace {

/// What the adjuster did, split into turning the track and moving it: compression and timing.
void addAdjusterShares(FigureList& list, const ports::PortTiming& timing) {
    const auto adjuster = timing.pair().mechanism().adjuster;
    const auto rest = withAdjuster(timing, {adjuster.helixLead, 0.0, 0.0});
    const auto turned = withAdjuster(timing, {0.0, adjuster.setting, 0.0});
    const std::string why =
        rest && turned ? "" : "the design cannot stand without the adjuster's setting";
    const auto difference = [&](auto&& quantity, bool phase) -> std::optional<double> {
        if (!rest || !turned) {
            return std::nullopt;
        }
        return phase ? quantity(*turned) - quantity(*rest) : quantity(timing) - quantity(*turned);
    };
    const auto geometric = [](const auto& t) { return compressionRatio(t); };
    const auto trapped = [](const auto& t) { return trappedCompressionRatio(t); };
    const auto overlap = [](const auto& t) { return t.cycles().front().overlap() / units::degree; };
    const auto blowdown = [](const auto& t) {
        return t.cycles().front().blowdown() / units::degree;
    };
    list.add("compression_ratio_unadjusted", "Compression ratio, adjuster at rest", "",
             rest ? std::optional(geometric(*rest)) : std::nullopt, why);
    for (const bool phase : {true, false}) {
        const std::string suffix = phase ? "_change_phase" : "_change_axial";
        const std::string cause = phase ? ", by turning the track" : ", by moving the track";
        list.add("compression_ratio" + suffix, "Change of compression ratio" + cause, "",
                 difference(geometric, phase), why);
        list.add("trapped_compression_ratio" + suffix,
                 "Change of trapped compression ratio" + cause, "", difference(trapped, phase),
                 why);
        list.add("overlap" + suffix + "_deg", "Change of overlap" + cause, "shaft °",
                 difference(overlap, phase), why);
        list.add("blowdown" + suffix + "_deg", "Change of blowdown" + cause, "shaft °",
                 difference(blowdown, phase), why);
    }
}

double surface(const mechanism::OpposedPair& pair, double theta) {
    return 2.0 * pair.pistonArea() + units::pi * pair.mechanism().bore * pair.gap(theta);
}

} // namespace

void addGeometryFigures(FigureList& list, const ports::PortTiming& timing, double speed) {
    const auto& pair = timing.pair();
    const auto compression = compressionOf(timing);
    const double turnsPerSecond = speed / units::turn;
    const int cycles = pair.cyclesPerTurn();

    list.group("geometry");
    list.add("displacement_cm3", "Displacement", "cm³",
             pair.mechanism().cylinders * pair.sweptVolume() / units::cubicCentimetre);
    list.add("swept_volume_cm3", "Swept volume of a cylinder", "cm³",
             pair.sweptVolume() / units::cubicCentimetre);
    list.add("compression_ratio", "Compression ratio", "", compression.geometric);
    list.add("trapped_compression_ratio", "Trapped compression ratio", "", compression.trapped);
    list.add("minimum_volume_cm3", "Smallest chamber volume", "cm³",
             compression.smallest / units::cubicCentimetre);
    list.add("maximum_volume_cm3", "Largest chamber volume", "cm³",
             compression.largest / units::cubicCentimetre);
    const double idc = timing.cycles().front().centres.idc;
    list.add("surface_to_volume_per_mm", "Surface to volume at inner dead centre", "1/mm",
             surface(pair, idc) / pair.volume(idc) * units::millimetre);
    list.add("cycles_per_turn", "Gas cycles a turn and cylinder", "", cycles);
    list.add("power_strokes_per_turn", "Power strokes a turn, all cylinders", "",
             cycles * pair.mechanism().cylinders);
    for (const End end : bothEnds) {
        const std::string side = name(end);
        const double stroke = pair.curve(end).stroke();
        list.add("stroke_" + side + "_mm", "Stroke, " + side + " side", "mm",
                 stroke / units::millimetre);
        list.add("mean_piston_speed_" + side + "_m_per_s", "Mean piston speed, " + side + " side",
                 "m/s", 2.0 * stroke * cycles * turnsPerSecond);
    }
    addAdjusterShares(list, timing);
}

void addTimingFigures(FigureList& list, const ports::PortTiming& timing, double speed) {
    const auto& pair = timing.pair();
    const auto& cycle = timing.cycles().front();
    const double perCycle = pair.cyclesPerTurn();
    const double cycleLength = units::turn / perCycle;

    list.group("timing");
    const auto addEvent = [&](const std::string& key, const std::string& label, double angle) {
        list.add(key + "_deg", label, "shaft °",
                 (angle - cycleLength * std::floor(angle / cycleLength)) / units::degree);
        const double fromIdc = perCycle * (angle - cycle.centres.idc);
        list.add(key + "_cycle_deg", label + ", from inner dead centre", "cycle °",
                 (fromIdc - units::turn * std::floor(fromIdc / units::turn + 0.5)) / units::degree);
    };
    addEvent("inner_dead_centre", "Inner dead centre", cycle.centres.idc);
    addEvent("outer_dead_centre", "Outer dead centre", cycle.centres.odc);
    addEvent("exhaust_opens", "Exhaust opens", cycle.exhaustOpens);
    addEvent("inlet_opens", "Inlet opens", cycle.inletOpens);
    addEvent("inlet_closes", "Inlet closes", cycle.inletCloses);
    addEvent("exhaust_closes", "Exhaust closes", cycle.exhaustCloses);

    const auto addSpan = [&](const std::string& key, const std::string& label, double span) {
        list.add(key + "_deg", label, "shaft °", span / units::degree);
        list.add(key + "_cycle_deg", label, "cycle °", perCycle * span / units::degree);
        list.add(key + "_ms", label, "ms", span / speed * 1e3);
    };
    addSpan("blowdown", "Blowdown", cycle.blowdown());
    addSpan("overlap", "Scavenging overlap", cycle.overlap());
    addSpan("after_charge", "After-charge", cycle.afterCharge());
    addSpan("inlet_open", "Inlet open", cycle.inletCloses - cycle.inletOpens);
    addSpan("exhaust_open", "Exhaust open", cycle.exhaustCloses - cycle.exhaustOpens);

    const auto areas = ports::specificTimeAreas(timing, cycle, pair.sweptVolume(), speed);
    list.add("blowdown_time_area_s_per_m", "Specific time-area of the blowdown", "s/m",
             areas.blowdown);
    list.add("inlet_time_area_s_per_m", "Specific time-area of the inlet", "s/m", areas.inlet);
    list.add("exhaust_time_area_s_per_m", "Specific time-area of the exhaust", "s/m",
             areas.exhaust);
    for (const End end : bothEnds) {
        const std::string side = name(end);
        list.add("full_port_area_" + side + "_mm2", "Ports fully open, " + side + " side", "mm²",
                 timing.fullArea(end) / units::squareMillimetre);
    }
}

} // namespace lobewright::solution
