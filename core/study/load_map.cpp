#include "core/study/load_map.h"

#include "core/study/supply_columns.h"
#include "core/units.h"

#include <algorithm>
#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::study {

namespace {

const std::vector<std::string>& figures() {
    static const std::vector<std::string> names = {"brake_torque_Nm",
                                                   "brake_power_kW",
                                                   "bmep_bar",
                                                   "brake_specific_fuel_g_per_kWh",
                                                   "brake_efficiency",
                                                   "indicated_efficiency",
                                                   "delivery_ratio",
                                                   "trapping_efficiency",
                                                   "supply_pressure_bar",
                                                   "peak_pressure_bar",
                                                   "knock_integral",
                                                   "off_track_share_inlet",
                                                   "off_track_share_exhaust"};
    return names;
}

const Column& loadColumn() {
    static const Column column{"load", LW_TEXT("Load"), ""};
    return column;
}

std::optional<Problem> problemOf(const MapSteps& speeds, const MapSteps& loads) {
    const auto isSpeed = [](double speed) { return speed > 0.0 && std::isfinite(speed); };
    if (!isSpeed(speeds.from) || !isSpeed(speeds.to)) {
        return Problem{"",
                       Message(LW_TEXT("speeds are %1 and %2, both must be positive"),
                               asTyped(speeds.from, in::rpm).bare(), asTyped(speeds.to, in::rpm))};
    }
    const auto isLoad = [](double load) { return load >= 0.0 && load <= 1.0; };
    if (!isLoad(loads.from) || !isLoad(loads.to)) {
        return Problem{"", Message(LW_TEXT("loads are %1 and %2, both must lie between 0 and 1"),
                                   asTyped(loads.from), asTyped(loads.to))};
    }
    for (const MapSteps* steps : {&speeds, &loads}) {
        if (steps->count < 2) {
            return Problem{"", Message(LW_TEXT("the number of points is %1, must be at least 2"),
                                       steps->count)};
        }
    }
    return std::nullopt;
}

/// The design at every speed of one load.
std::vector<Variant> rowOf(const design::Design& design, const std::vector<double>& speeds,
                           double load) {
    std::vector<Variant> variants;
    for (const double speed : speeds) {
        variants.push_back({speed, design});
        design::Design& varied = variants.back().design;
        std::erase_if(varied.schedules, [](const design::Schedule& schedule) {
            return schedule.input == "/running/load";
        });
        varied.running.speed = speed * units::revPerMinute;
        varied.running.load = load;
    }
    return variants;
}

} // namespace

std::vector<std::string> loadMapColumns(const design::Design& design) {
    std::vector<std::string> names{loadColumn().name};
    names.insert(names.end(), figures().begin(), figures().end());
    return withSupplyColumns(std::move(names), design);
}

Column loadMapParameter() {
    return {"speed_rpm", LW_TEXT("Shaft speed"), "1/min"};
}

Result<Table> loadMap(const design::Design& design, const MapSteps& speeds, const MapSteps& loads,
                      Monitor& monitor, const PointSink& sink) {
    if (auto problem = problemOf(speeds, loads)) {
        return std::move(*problem);
    }
    const Column parameter = loadMapParameter();
    const auto along = evenlySpaced(speeds.from, speeds.to, speeds.count);
    const auto rows = evenlySpaced(loads.from, loads.to, loads.count);
    Table map{parameter, {}, {}};
    for (std::size_t row = 0; row < rows.size(); ++row) {
        const auto placed = [&](Point point) {
            point.index += row * along.size();
            point.values.insert(point.values.begin(), rows[row]);
            return point;
        };
        PartOfWork part(monitor, static_cast<double>(row) / static_cast<double>(rows.size()),
                        static_cast<double>(row + 1) / static_cast<double>(rows.size()));
        PointSink placing;
        if (sink) {
            placing = [&](const Point& point) { sink(placed(point)); };
        }
        const auto table =
            solveVariants(parameter, rowOf(design, along, rows[row]), {},
                          withSupplyColumns(figures(), design), part, placing, Course::smooth);
        if (!table) {
            return table.problems();
        }
        // A row where nothing runs knows no labels.
        if (map.columns.empty() || map.columns.front().unit.empty()) {
            map.columns = table->columns;
        }
        for (const Point& point : table->points) {
            map.points.push_back(placed(point));
        }
    }
    map.columns.insert(map.columns.begin(), loadColumn());
    return map;
}

} // namespace lobewright::study
