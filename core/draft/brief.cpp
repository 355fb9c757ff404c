#include "core/draft/brief.h"

#include "core/claims/claims_keys.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace lobewright::draft {

namespace {

/// "2.50" is meant to ±0.005; whole numbers ending in zeros to half their last other digit at most
/// to 0.5 %.
double precisionOf(double number) {
    const std::string text = fmt::format("{}", std::abs(number));
    const auto point = text.find('.');
    const double unit = point == std::string::npos
                            ? 1.0
                            : std::pow(10.0, -static_cast<double>(text.size() - point - 1));
    return number == 0.0 ? 0.0 : std::min(0.5 * unit / std::abs(number), 0.005);
}

std::optional<Figure> figure(const std::optional<study::Amount>& amount) {
    if (!amount) {
        return std::nullopt;
    }
    return Figure{amount->si, precisionOf(amount->number), study::text(*amount)};
}

std::optional<Figure> figure(const std::optional<double>& number) {
    if (!number) {
        return std::nullopt;
    }
    return Figure{*number, precisionOf(*number), fmt::format("{}", *number)};
}

std::optional<int> whole(const std::optional<double>& number) {
    return number && std::trunc(*number) == *number && *number >= 1.0 && *number <= 64.0
               ? std::optional(static_cast<int>(*number))
               : std::nullopt;
}

/// Where one of three is missing, the other two tell it.
void completeCounts(Brief& brief, const study::ClaimedEngine& engine) {
    if (!brief.cylinders && engine.pistons) {
        brief.cylinders = whole(*engine.pistons / 2.0);
    }
    if (!engine.eventsPerTurn) {
        return;
    }
    if (brief.cylinders && !brief.lobes) {
        brief.lobes = whole(*engine.eventsPerTurn / *brief.cylinders);
    } else if (brief.lobes && !brief.cylinders) {
        brief.cylinders = whole(*engine.eventsPerTurn / *brief.lobes);
    }
}

} // namespace

Brief briefOf(const study::Claims& claims) {
    const auto& engine = claims.engine;
    const auto& figures = claims.figures;
    Brief brief;
    brief.title = claims.title;
    brief.source = claims.source;
    brief.cylinders = whole(engine.cylinders);
    brief.lobes = whole(engine.reciprocations);
    brief.isOneSided = engine.pistons && engine.cylinders && *engine.pistons == *engine.cylinders;
    completeCounts(brief, engine);
    brief.fuel = engine.fuel;
    brief.ignition = engine.ignition;
    brief.charging = engine.charging;
    if (claims.conditions.supplyPower) {
        brief.supplyUnpaid = *claims.conditions.supplyPower == study::SupplyPower::notCounted;
    }
    brief.displacement = figure(engine.displacement);
    brief.bore = figure(engine.bore);
    brief.stroke = figure(engine.stroke);
    brief.compression = figure(engine.compressionRatio);
    brief.highCompression = figure(engine.highestCompressionRatio);
    if (!brief.compression ||
        (brief.highCompression && brief.highCompression->value < brief.compression->value)) {
        brief.compression.swap(brief.highCompression);
    }
    brief.diameter = figure(engine.diameter);
    brief.length = figure(engine.length);
    brief.power = figure(figures.power);
    brief.powerSpeed = figure(figures.powerSpeed);
    brief.torque = figure(figures.torque);
    brief.torqueSpeed = figure(figures.torqueSpeed);
    brief.maximumSpeed = figure(figures.maximumSpeed);
    brief.meanPressure = figure(figures.meanPressure);
    brief.pistonSpeed = figure(figures.pistonSpeed);
    brief.airRatio = figure(figures.airRatio);
    brief.efficiency = figure(figures.efficiency);
    brief.supplyPressure = figure(engine.chargePressure);
    return brief;
}

bool isFollowed(std::string_view path) {
    static constexpr std::string_view followed[] = {"/engine/ignition",
                                                    "/engine/charging",
                                                    "/engine/cylinders",
                                                    "/engine/pistons",
                                                    "/engine/events_per_turn",
                                                    "/engine/reciprocations_per_turn",
                                                    "/engine/fuel",
                                                    "/engine/displacement",
                                                    "/engine/bore",
                                                    "/engine/stroke",
                                                    "/engine/compression_ratio",
                                                    "/engine/highest_compression_ratio",
                                                    "/engine/diameter",
                                                    "/engine/length",
                                                    "/engine/charge_pressure",
                                                    "/figures/power",
                                                    "/figures/power_speed",
                                                    "/figures/torque",
                                                    "/figures/torque_speed",
                                                    "/figures/maximum_speed",
                                                    "/figures/mean_effective_pressure",
                                                    "/figures/mean_piston_speed",
                                                    "/figures/efficiency",
                                                    "/figures/air_ratio",
                                                    "/conditions/supply_power"};
    return std::ranges::find(followed, path) != std::end(followed);
}

} // namespace lobewright::draft
