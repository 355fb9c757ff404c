#include "core/solution/figures/figures.h"
#include "core/units.h"

#include <algorithm>
#include <cmath>

LW_TEXTS_OF(Core)

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

double shiftOf(const mechanism::Mechanism& mechanism, const mechanism::Adjuster& adjuster) {
    if (mechanism.isOneSided()) {
        return adjuster.axial;
    }
    return adjuster.helixLead * adjuster.setting / units::turn + adjuster.axial;
}

} // namespace

std::optional<ports::PortTiming> withAdjuster(const ports::PortTiming& timing,
                                              const mechanism::Adjuster& adjuster) {
    const auto& pair = timing.pair();
    auto mechanism = pair.mechanism();
    if (mechanism.adjuster.setting == adjuster.setting &&
        pair.shift(pair.pistons().back()) == shiftOf(pair.mechanism(), adjuster)) {
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
    const TextId why = rest && turned
                           ? TextId{}
                           : LW_TEXT("without the adjuster's setting the design breaks a rule");
    const auto difference = [&](auto&& quantity, bool phase) -> std::optional<double> {
        if (!rest || !turned) {
            return std::nullopt;
        }
        return phase ? quantity(*turned) - quantity(*rest) : quantity(timing) - quantity(*turned);
    };
    const auto geometric = [](const auto& t) { return compressionRatio(t); };
    const auto trapped = [](const auto& t) { return trappedCompressionRatio(t); };
    const auto overlap = [](const auto& t) { return t.cycles().front().overlap(); };
    const auto blowdown = [](const auto& t) { return t.cycles().front().blowdown(); };
    list.add({"compression_ratio_unadjusted"}, LW_TEXT("Compression ratio, adjuster at rest"),
             rest ? std::optional(geometric(*rest)) : std::nullopt, why);
    for (const bool phase : {true, false}) {
        const std::string suffix = phase ? "_change_phase" : "_change_axial";
        const auto cause = [&](TextId what) {
            return Message(phase ? LW_TEXT("%1, by turning the track")
                                 : LW_TEXT("%1, by moving the track"),
                           what);
        };
        list.add({"compression_ratio" + suffix}, cause(LW_TEXT("Change of compression ratio")),
                 difference(geometric, phase), why);
        list.add({"trapped_compression_ratio" + suffix},
                 cause(LW_TEXT("Change of trapped compression ratio")), difference(trapped, phase),
                 why);
        list.add({"overlap" + suffix, &in::shaftDegrees}, cause(LW_TEXT("Change of overlap")),
                 difference(overlap, phase), why);
        list.add({"blowdown" + suffix, &in::shaftDegrees}, cause(LW_TEXT("Change of blowdown")),
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
    list.add({"displacement", &in::cm3}, LW_TEXT("Displacement"),
             pair.mechanism().cylinders * pair.sweptVolume());
    list.add({"swept_volume", &in::cm3}, LW_TEXT("Swept volume of a cylinder"), pair.sweptVolume());
    list.add({"compression_ratio"}, LW_TEXT("Compression ratio"), compression.geometric);
    list.add({"trapped_compression_ratio"}, LW_TEXT("Trapped compression ratio"),
             compression.trapped);
    list.add({"minimum_volume", &in::cm3}, LW_TEXT("Smallest chamber volume"),
             compression.smallest);
    list.add({"maximum_volume", &in::cm3}, LW_TEXT("Largest chamber volume"), compression.largest);
    const double idc = timing.cycles().front().centres.idc;
    list.add({"surface_to_volume", &in::perMm}, LW_TEXT("Surface to volume at inner dead centre"),
             surface(pair, idc) / pair.volume(idc));
    list.add({"cycles_per_turn"}, LW_TEXT("Cycles per revolution and cylinder"), cycles);
    list.add({"power_strokes_per_turn"}, LW_TEXT("Power strokes per revolution, all cylinders"),
             cycles * pair.mechanism().cylinders);
    for (const End end : pair.pistons()) {
        const double stroke = pair.curve(end).stroke();
        list.add({"stroke", &in::mm, end}, LW_TEXT("Stroke"), stroke);
        list.add({"mean_piston_speed", &in::metrePerSecond, end}, LW_TEXT("Mean piston speed"),
                 2.0 * stroke * cycles * turnsPerSecond);
    }
    if (!pair.mechanism().isOneSided()) {
        addAdjusterShares(list, timing);
    }
}

void addTimingFigures(FigureList& list, const ports::PortTiming& timing, double speed) {
    const auto& pair = timing.pair();
    const auto& cycle = timing.cycles().front();
    const double perCycle = pair.cyclesPerTurn();
    const double cycleLength = units::turn / perCycle;

    list.group("timing");
    const auto addEvent = [&](const std::string& key, const Message& label, double angle) {
        list.add({key, &in::shaftDegrees}, label,
                 (angle - cycleLength * std::floor(angle / cycleLength)));
        const double fromIdc = perCycle * (angle - cycle.centres.idc);
        list.add({key, &in::degreesOfCycle}, Message(LW_TEXT("%1, from inner dead centre"), label),
                 (fromIdc - units::turn * std::floor(fromIdc / units::turn + 0.5)));
    };
    addEvent("inner_dead_centre", LW_TEXT("Inner dead centre"), cycle.centres.idc);
    addEvent("outer_dead_centre", LW_TEXT("Outer dead centre"), cycle.centres.odc);
    addEvent("exhaust_opens", LW_TEXT("Exhaust opens"), cycle.exhaustOpens);
    addEvent("inlet_opens", LW_TEXT("Inlet opens"), cycle.inletOpens);
    addEvent("inlet_closes", LW_TEXT("Inlet closes"), cycle.inletCloses);
    addEvent("exhaust_closes", LW_TEXT("Exhaust closes"), cycle.exhaustCloses);

    const auto addSpan = [&](const std::string& key, const Message& label, double span) {
        list.add({key, &in::shaftDegrees}, label, span);
        list.add({key, &in::degreesOfCycle}, label, perCycle * span);
        list.add({key, &in::ms}, label, span / speed);
    };
    addSpan("blowdown", LW_TEXT("Blowdown"), cycle.blowdown());
    addSpan("overlap", LW_TEXT("Scavenging overlap"), cycle.overlap());
    addSpan("after_charge", LW_TEXT("After-charge"), cycle.afterCharge());
    addSpan("inlet_open", LW_TEXT("Inlet open"), cycle.inletCloses - cycle.inletOpens);
    addSpan("exhaust_open", LW_TEXT("Exhaust open"), cycle.exhaustCloses - cycle.exhaustOpens);

    const auto areas = ports::specificTimeAreas(timing, cycle, pair.sweptVolume(), speed);
    list.add({"blowdown_time_area", &in::secondsPerMetre},
             LW_TEXT("Specific time-area of the blowdown"), areas.blowdown);
    list.add({"inlet_time_area", &in::secondsPerMetre}, LW_TEXT("Specific time-area of the inlet"),
             areas.inlet);
    list.add({"exhaust_time_area", &in::secondsPerMetre},
             LW_TEXT("Specific time-area of the exhaust"), areas.exhaust);
    for (const End end : bothEnds) {
        list.add({"full_port_area", &in::mm2, end}, LW_TEXT("Ports fully open"),
                 timing.fullArea(end));
    }
}

} // namespace lobewright::solution
