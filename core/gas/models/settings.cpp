#include "core/gas/models/settings.h"

#include "core/gas/models/wheel_curve.h"

#include <fmt/format.h>

#include <cmath>
#include <limits>
#include <string>

LW_TEXTS_OF(Core)

namespace lobewright::gas {
namespace {

/// Collects broken rules.
class Rules {
  public:
    explicit Rules(Problems& problems) : problems_(problems) {}
    void positive(const char* key, double value) {
        require(std::isfinite(value) && value > 0.0, key, value, LW_TEXT("must be positive"));
    }
    void within(const char* key, double value, double low, double high) {
        require(value >= low && value <= high, key, value,
                Message(LW_TEXT("must lie between %1 and %2"), asTyped(low), asTyped(high)));
    }
    void notNegative(const char* key, double value) {
        require(std::isfinite(value) && value >= 0.0, key, value, LW_TEXT("must not be negative"));
    }

    /// What a row of ports must be in any bore.
    void row(const std::string& key, const ports::Row& row) {
        for (Problem problem : ports::rowProblems(row, std::numeric_limits<double>::infinity())) {
            problem.path = "/gas/" + key + problem.path;
            problems_.push_back(problem);
        }
    }

    /// The points of a wheel, and that lines can be drawn through them.
    void table(const Wheel& wheel) {
        for (std::size_t i = 0; i < wheel.points.size(); ++i) {
            const WheelPoint& point = wheel.points[i];
            const std::string at = fmt::format("supply/wheel/map/{}/", i);
            positive((at + "speed_rpm").c_str(), point.speed);
            positive((at + "flow_kg_per_s").c_str(), point.flow);
            positive((at + "pressure_ratio").c_str(), point.pressureRatio);
            within((at + "efficiency").c_str(), point.efficiency, 0.01, 1.0);
        }
        if (problems_.empty()) {
            if (auto flaw = flawOfTable(wheel)) {
                flaw->path = "/gas/supply/wheel" + flaw->path;
                problems_.push_back(*flaw);
            }
        }
    }

  private:
    void require(bool holds, const char* key, double value, const Message& rule) {
        if (!holds) {
            problems_.push_back({fmt::format("/gas/{}", key),
                                 Message(LW_TEXT("value is %1 (SI), %2"), asTyped(value), rule)});
        }
    }
    Problems& problems_;
};

void checkBlower(const std::string& section, const Supply& supply, Rules& rules) {
    rules.positive((section + "displacement_cm3_per_turn").c_str(), supply.displacement);
    rules.positive((section + "drive_ratio").c_str(), supply.driveRatio);
    rules.within((section + "volumetric_efficiency").c_str(), supply.volumetricEfficiency, 0.01,
                 1.5);
}

void checkCompressor(const Compressor& compressor, Rules& rules) {
    const Wheel& wheel = compressor.wheel;
    if (compressor.drive == WheelDrive::gear) {
        rules.positive("supply/ratio", compressor.gearRatio);
    } else {
        const Turbine& turbine = compressor.turbine;
        rules.positive("supply/turbine/exhaust_plenum_cm3", turbine.exhaustVolume);
        rules.positive("supply/turbine/nozzle_mm2", turbine.nozzleArea);
        rules.positive("supply/turbine/diameter_mm", turbine.diameter);
        rules.within("supply/turbine/best_efficiency", turbine.bestEfficiency, 0.05, 1.0);
        rules.within("supply/turbine/best_speed_ratio", turbine.bestSpeedRatio, 0.1, 1.5);
        rules.within("supply/turbine/mechanical_efficiency", turbine.mechanicalEfficiency, 0.05,
                     1.0);
    }
    rules.positive("supply/wheel/diameter_mm", wheel.diameter);
    if (wheel.characteristic == WheelCharacteristic::table) {
        rules.positive("supply/wheel/reference_pressure_bar", wheel.referencePressure);
        rules.within("supply/wheel/reference_temperature_K", wheel.referenceTemperature, 200.0,
                     400.0);
        rules.table(wheel);
        return;
    }
    rules.positive("supply/wheel/head_coefficient", wheel.headCoefficient);
    rules.positive("supply/wheel/surge_flow", wheel.surgeFlow);
    rules.positive("supply/wheel/peak_flow", wheel.peakFlow);
    rules.within("supply/wheel/choke_flow", wheel.chokeFlow, 1.01 * wheel.peakFlow, 10.0);
    rules.within("supply/wheel/best_efficiency", wheel.bestEfficiency, 0.05, 1.0);
    rules.positive("supply/wheel/best_flow", wheel.bestFlow);
}

void checkSupply(const Supply& supply, Rules& rules) {
    rules.positive("supply/ambient_pressure_bar", supply.ambientPressure);
    rules.within("supply/ambient_temperature_K", supply.ambientTemperature, 200.0, 400.0);
    rules.within("supply/isentropic_efficiency", supply.isentropicEfficiency, 0.05, 1.0);
    if (supply.kind == SupplyKind::reservoir) {
        rules.positive("supply/pressure_bar", supply.pressure);
        rules.within("supply/temperature_K", supply.temperature, 200.0, 1000.0);
        return;
    }
    if (supply.kind == SupplyKind::underPiston) {
        const Pump& pump = supply.pump;
        rules.positive("supply/dead_cm3", pump.deadVolume);
        rules.within("supply/area_factor", pump.areaFactor, 0.01, 1.0);
        if (pump.skirtRow) {
            rules.row("supply/skirt_row", *pump.skirtRow);
        }
        if (pump.transferVolume) {
            rules.positive("supply/transfer_cm3", *pump.transferVolume);
            rules.positive("supply/transfer_mm2", pump.transferArea);
        }
        rules.notNegative("supply/wall_area_cm2", pump.wallArea);
        rules.notNegative("supply/wall_coefficient_W_per_m2K", pump.wallCoefficient);
        rules.positive("supply/wall_K", pump.wallTemperature);
        rules.positive("supply/reed/area_mm2", pump.reed.area);
        rules.within("supply/reed/discharge_coefficient", pump.reed.dischargeCoefficient, 0.01,
                     1.0);
        rules.notNegative("supply/reed/cracking_bar", pump.reed.cracking);
        rules.positive("supply/reed/full_open_bar", pump.reed.fullOpen);
        return;
    }
    if (supply.kind == SupplyKind::compressor) {
        checkCompressor(supply.compressor, rules);
        if (supply.compressor.stages == Stages::wheelThenBlower) {
            checkBlower("supply/blower/", supply, rules);
            if (const auto cooled = supply.compressor.interCoolerTemperature) {
                rules.within("supply/inter_cooler_outlet_K", *cooled, 200.0, 1000.0);
            }
        }
    } else {
        checkBlower("supply/", supply, rules);
    }
    rules.positive("supply/plenum_cm3", supply.plenumVolume);
    if (supply.afterCoolerTemperature) {
        rules.within("supply/after_cooler_outlet_K", *supply.afterCoolerTemperature, 200.0, 1000.0);
    }
}

} // namespace

Problems validate(const Settings& settings) {
    Problems problems;
    Rules rules(problems);
    rules.positive("lambda", settings.lambda);
    rules.within("combustion_efficiency", settings.combustionEfficiency, 0.0, 1.0);
    if (settings.octaneNumber) {
        rules.within("octane_number", *settings.octaneNumber, 1.0, 150.0);
    }
    if (!settings.burn.bestTorque) {
        rules.within("burn/start_deg", settings.burn.start, -6.3, 6.3);
    }
    rules.positive("burn/duration_deg", settings.burn.duration);
    rules.within("burn/wiebe_a", settings.burn.wiebeA, 0.1, 50.0);
    rules.within("burn/wiebe_m", settings.burn.wiebeM, 0.0, 20.0);
    checkSupply(settings.supply, rules);
    rules.positive("exhaust_pressure_bar", settings.exhaustPressure);
    rules.within("scavenging/displaced_fraction", settings.scavenging.displacedFraction, 0.0, 1.0);
    rules.within("scavenging/short_circuit_fraction", settings.scavenging.shortCircuitFraction, 0.0,
                 1.0);
    rules.within("wall_heat/crown_K", settings.wallHeat.crownTemperature, 200.0, 2000.0);
    rules.within("wall_heat/liner_K", settings.wallHeat.linerTemperature, 200.0, 2000.0);
    if (settings.wallHeat.exhaustCrownTemperature) {
        rules.within("wall_heat/exhaust_crown_K", *settings.wallHeat.exhaustCrownTemperature, 200.0,
                     2000.0);
    }
    if (settings.wallHeat.headTemperature) {
        rules.within("wall_heat/head_K", *settings.wallHeat.headTemperature, 200.0, 2000.0);
    }
    rules.notNegative("wall_heat/multiplier", settings.wallHeat.multiplier);
    return problems;
}

} // namespace lobewright::gas
