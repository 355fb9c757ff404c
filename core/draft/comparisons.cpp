#include "core/draft/comparisons.h"

#include "core/draft/build.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace lobewright::draft {

namespace {

using units::bar;
using units::cubicCentimetre;
using units::kilowatt;
using units::millimetre;
using units::revPerMinute;

class Comparing {
  public:
    Comparing(const Brief& brief, const design::Design& design, const solution::Solution& solved,
              const std::string& powerNote)
        : brief_(brief), design_(design), solved_(solved), powerNote_(powerNote) {}

    std::vector<Comparison> run() {
        compareGeometry();
        compareRunning();
        compareLimits();
        return std::move(rows_);
    }

  private:
    void add(const char* name, const char* label, const char* unit, const Figure& wanted,
             double factor, std::optional<double> reached, const std::string& why) {
        Comparison row{name, label, unit, wanted.value / factor, reached.value_or(0.0), false, {}};
        const double tolerance = std::max(reachedWithin, wanted.precision) * std::abs(row.wanted);
        if (!reached || std::abs(*reached - row.wanted) > tolerance) {
            row.why = why;
        }
        rows_.push_back(row);
    }

    std::optional<double> figure(const std::string& name) const {
        const auto* found = solved_.figure(name);
        return found ? found->value : std::nullopt;
    }

    void compareGeometry() {
        const auto& m = design_.mechanism;
        const auto& shape = std::get<motion::SegmentShape>(design_.tracks.inlet.shape);
        if (brief_.displacement) {
            const std::string why =
                fmt::format("{} cylinders of {:.4g} mm bore and twice {:.4g} mm stroke have {:.5g} "
                            "cm³; bore, stroke and cylinders were taken",
                            m.cylinders, m.bore / millimetre, shape.stroke / millimetre,
                            figure("displacement_cm3").value_or(0.0));
            add("displacement_cm3", "Displacement", "cm³", *brief_.displacement, cubicCentimetre,
                figure("displacement_cm3"), why);
        }
        if (brief_.bore) {
            add("bore_mm", "Bore", "mm", *brief_.bore, millimetre, m.bore / millimetre, "");
        }
        if (brief_.stroke) {
            add("stroke_mm", "Stroke of one piston", "mm", *brief_.stroke, millimetre,
                shape.stroke / millimetre, "");
        }
        const Figure* ratio = brief_.highCompression ? &*brief_.highCompression
                              : brief_.compression   ? &*brief_.compression
                                                     : nullptr;
        if (ratio) {
            add("compression_ratio", "Compression ratio", "", *ratio, 1.0,
                figure("compression_ratio"), "the crowns would meet");
        }
        if (brief_.diameter) {
            add("outer_diameter_mm", "Outer diameter", "mm", *brief_.diameter, millimetre,
                outerDiameter(design_) / millimetre, "the roller stands out over the bore");
        }
        if (brief_.length) {
            add("length_mm", "Length", "mm", *brief_.length, millimetre,
                overallLength(design_) / millimetre,
                "pistons, rollers and tracks of this stroke need another length (estimate)");
        }
    }

    void compareRunning() {
        const double speed = design_.running.speed;
        if (const auto& wanted = brief_.powerSpeed ? brief_.powerSpeed : brief_.maximumSpeed) {
            add("speed_rpm", "Rated speed", "rpm", *wanted, revPerMinute, speed / revPerMinute, "");
        }
        if (brief_.power) {
            add("brake_power_kW", "Brake power", "kW", *brief_.power, kilowatt,
                figure("brake_power_kW"),
                powerNote_.empty() ? "the supply pressure is given" : powerNote_);
        }
        if (brief_.torque) {
            compareTorque(*brief_.torque, speed);
        }
        if (brief_.meanPressure) {
            add("bmep_bar", "Brake mean effective pressure", "bar", *brief_.meanPressure, bar,
                figure("bmep_bar"),
                "at the rated point; the published figure may be the highest at another speed");
        }
        if (brief_.pistonSpeed) {
            add("mean_piston_speed_inlet_m_per_s", "Mean piston speed", "m/s", *brief_.pistonSpeed,
                1.0, figure("mean_piston_speed_inlet_m_per_s"),
                "speed, stroke and lobes give another; they were taken");
        }
        if (brief_.efficiency) {
            add("brake_efficiency", "Brake thermal efficiency", "", *brief_.efficiency, 1.0,
                figure("brake_efficiency"),
                "follows from combustion, wall heat and friction, which are not fitted to it");
        }
        if (brief_.airRatio) {
            add("lambda", "Excess-air ratio", "", *brief_.airRatio, 1.0, design_.gas.lambda, "");
        }
        if (brief_.supplyPressure) {
            add("supply_pressure_bar", "Supply pressure", "bar", *brief_.supplyPressure, bar,
                design_.gas.supply.pressure / bar, "");
        }
    }

    void compareTorque(const Figure& torque, double speed) {
        const auto reached = figure("brake_torque_Nm");
        const bool isAtRatedSpeed =
            !brief_.torqueSpeed || std::abs(brief_.torqueSpeed->value - speed) < 1e-3 * speed;
        if (isAtRatedSpeed && !brief_.power) {
            add("brake_torque_Nm", "Brake torque", "N·m", torque, 1.0, reached,
                powerNote_.empty() ? "the supply pressure is given" : powerNote_);
            return;
        }
        const std::string where =
            brief_.torqueSpeed
                ? fmt::format("published at {}; the draft is fitted at the rated speed",
                              brief_.torqueSpeed->text)
                : std::string("the highest torque lies at a speed that is not published");
        add("brake_torque_Nm", "Brake torque", "N·m", torque, 1.0, reached, where);
    }

    void limit(const char* name, const char* label, const char* unit, double wanted, double reached,
               bool isKept, const std::string& why) {
        rows_.push_back({name, label, unit, wanted, reached, true, isKept ? "" : why});
    }

    void compareLimits() {
        if (brief_.diameterLimit) {
            const double reached = outerDiameter(design_);
            limit("outer_diameter_mm", "Outer diameter", "mm", *brief_.diameterLimit / millimetre,
                  reached / millimetre, reached <= *brief_.diameterLimit,
                  fmt::format("{:.3g} mm too large; the nearest is {:.4g} mm",
                              (reached - *brief_.diameterLimit) / millimetre,
                              reached / millimetre));
        }
        if (brief_.lengthLimit) {
            const double reached = overallLength(design_);
            limit("length_mm", "Length", "mm", *brief_.lengthLimit / millimetre,
                  reached / millimetre, reached <= *brief_.lengthLimit,
                  fmt::format("{:.3g} mm too long; the nearest is {:.4g} mm",
                              (reached - *brief_.lengthLimit) / millimetre, reached / millimetre));
        }
        if (brief_.life) {
            const auto inlet = figure("roller_life_inlet_h"),
                       exhaust = figure("roller_life_exhaust_h");
            const double reached = std::min(inlet.value_or(0.0), exhaust.value_or(0.0));
            const double wanted = *brief_.life / 3600.0;
            limit("roller_life_h", "Rating life of the rollers", "h", wanted, reached,
                  reached >= wanted, fmt::format("the nearest is {:.4g} h", reached));
        }
    }

    const Brief& brief_;
    const design::Design& design_;
    const solution::Solution& solved_;
    const std::string& powerNote_;
    std::vector<Comparison> rows_;
};

} // namespace

std::vector<Comparison> compare(const Brief& brief, const design::Design& design,
                                const solution::Solution& solved, const std::string& powerNote) {
    return Comparing(brief, design, solved, powerNote).run();
}

bool keepsSize(const Brief& brief, const design::Design& design) {
    const bool isSlim = !brief.diameterLimit || outerDiameter(design) <= *brief.diameterLimit;
    return isSlim && (!brief.lengthLimit || overallLength(design) <= *brief.lengthLimit);
}

} // namespace lobewright::draft
