#include "core/draft/comparisons.h"

#include "core/draft/build.h"
#include "core/study/speed_sweep.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <string_view>

LW_TEXTS_OF(Core)

namespace lobewright::draft {

namespace {

using units::bar;
using units::cubicCentimetre;
using units::kilowatt;
using units::millimetre;
using units::revPerMinute;

/// Whether the torque that is given is that at the speed of the draft [rad/s].
bool isTorqueAtRatedSpeed(const Brief& brief, double speed) {
    return !brief.torqueSpeed || std::abs(brief.torqueSpeed->value - speed) < 1e-3 * speed;
}

class Comparing {
  public:
    Comparing(const Brief& brief, const design::Design& design, const solution::Solution& solved,
              const SpeedCurve& curve, const Message& powerNote)
        : brief_(brief), design_(design), solved_(solved), curve_(curve), powerNote_(powerNote) {}

    std::vector<Comparison> run() {
        compareGeometry();
        compareRunning();
        compareLimits();
        return std::move(rows_);
    }

  private:
    void add(const char* name, TextId label, const char* unit, const Figure& wanted, double factor,
             std::optional<double> reached, const Message& why) {
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
            const Message why(LW_TEXT("%1 cylinders of %2 bore and twice %3 stroke have %4; bore, "
                                      "stroke and cylinders were used"),
                              m.cylinders, Amount(m.bore, in::mm), Amount(shape.stroke, in::mm),
                              amountIn(in::cm3, figure("displacement_cm3").value_or(0.0), 5));
            add("displacement_cm3", LW_TEXT("Displacement"), "cm³", *brief_.displacement,
                cubicCentimetre, figure("displacement_cm3"), why);
        }
        if (brief_.bore) {
            add("bore_mm", LW_TEXT("Bore"), "mm", *brief_.bore, millimetre, m.bore / millimetre,
                "");
        }
        if (brief_.stroke) {
            add("stroke_mm", LW_TEXT("Stroke of one piston"), "mm", *brief_.stroke, millimetre,
                shape.stroke / millimetre, "");
        }
        const Figure* ratio = brief_.highCompression ? &*brief_.highCompression
                              : brief_.compression   ? &*brief_.compression
                                                     : nullptr;
        if (ratio) {
            add("compression_ratio", LW_TEXT("Compression ratio"), "", *ratio, 1.0,
                figure("compression_ratio"), LW_TEXT("the crowns would meet"));
        }
        if (brief_.diameter) {
            add("outer_diameter_mm", LW_TEXT("Outer diameter"), "mm", *brief_.diameter, millimetre,
                outerDiameter(design_) / millimetre,
                LW_TEXT("the roller projects beyond the bore"));
        }
        if (brief_.length) {
            add("length_mm", LW_TEXT("Length"), "mm", *brief_.length, millimetre,
                overallLength(design_) / millimetre,
                LW_TEXT(
                    "pistons, rollers and tracks of this stroke need another length (estimate)"));
        }
    }

    void compareRunning() {
        const double speed = design_.running.speed;
        if (const auto& wanted = brief_.powerSpeed ? brief_.powerSpeed : brief_.maximumSpeed) {
            add("speed_rpm", LW_TEXT("Rated speed"), "rpm", *wanted, revPerMinute,
                speed / revPerMinute, "");
        }
        if (brief_.powerSpeed && !brief_.isDuty) {
            comparePeak("peak_power_speed_rpm", LW_TEXT("Speed of peak power"), in::kW,
                        *brief_.powerSpeed, curve_.power, figure("brake_power_kW"));
        }
        if (brief_.power) {
            add("brake_power_kW", LW_TEXT("Brake power"), "kW", *brief_.power, kilowatt,
                figure("brake_power_kW"),
                powerNote_.empty() ? LW_TEXT("the supply pressure is given") : powerNote_);
        }
        if (brief_.torque) {
            compareTorque(*brief_.torque, speed);
        }
        if (brief_.meanPressure) {
            add("bmep_bar", LW_TEXT("Brake mean effective pressure"), "bar", *brief_.meanPressure,
                bar, figure("bmep_bar"),
                LW_TEXT("at the rated point; the published figure may be the highest at another "
                        "speed"));
        }
        if (brief_.pistonSpeed) {
            add("mean_piston_speed_inlet_m_per_s", LW_TEXT("Mean piston speed"), "m/s",
                *brief_.pistonSpeed, 1.0, figure("mean_piston_speed_inlet_m_per_s"),
                LW_TEXT("speed, stroke and lobes give another value; they were used"));
        }
        if (brief_.efficiency) {
            add("brake_efficiency", LW_TEXT("Brake thermal efficiency"), "", *brief_.efficiency,
                1.0, figure("brake_efficiency"),
                LW_TEXT(
                    "follows from combustion, wall heat and friction, which are not fitted to it"));
        }
        if (brief_.airRatio) {
            add("lambda", LW_TEXT("Excess-air ratio"), "", *brief_.airRatio, 1.0,
                design_.gas.lambda, "");
        }
        if (brief_.supplyPressure) {
            add("supply_pressure_bar", LW_TEXT("Supply pressure"), "bar", *brief_.supplyPressure,
                bar, design_.gas.supply.pressure / bar, "");
        }
    }

    /// Where the curve of the draft over the speed is highest.
    void comparePeak(const char* name, TextId label, const Unit& unit, const Figure& wanted,
                     const std::optional<study::Peak>& peak, std::optional<double> atWanted) {
        Message why = LW_TEXT("the draft gives none between 30 and 170 % of its speed");
        if (peak) {
            why = {LW_TEXT("the curve of the draft is highest there, with %1, and has %2 at the "
                           "speed given: the heights of the ports shift it"),
                   amountIn(unit, peak->value), amountIn(unit, atWanted.value_or(0.0))};
        }
        add(name, label, "rpm", wanted, revPerMinute,
            peak ? std::optional(peak->place) : std::nullopt, why);
    }

    void compareTorque(const Figure& torque, double speed) {
        const auto reached = figure("brake_torque_Nm");
        const bool isAtRatedSpeed = isTorqueAtRatedSpeed(brief_, speed);
        if (isAtRatedSpeed && !brief_.power) {
            add("brake_torque_Nm", LW_TEXT("Brake torque"), "N·m", torque, 1.0, reached,
                powerNote_.empty() ? LW_TEXT("the supply pressure is given") : powerNote_);
            return;
        }
        if (!brief_.torqueSpeed) {
            const auto& peak = curve_.torque;
            add("peak_torque_Nm", LW_TEXT("Peak torque"), "N·m", torque, 1.0,
                peak ? std::optional(peak->value) : std::nullopt,
                LW_TEXT("the draft is fitted to the power at the rated speed; the speed of peak "
                        "torque is not given"));
            return;
        }
        add("brake_torque_Nm", LW_TEXT("Brake torque"), "N·m", torque, 1.0,
            isAtRatedSpeed ? reached : curve_.torqueAtItsSpeed,
            Message(LW_TEXT("at %1; the draft is fitted to the power at the rated speed"),
                    brief_.torqueSpeed->text));
        if (!isAtRatedSpeed) {
            comparePeak("peak_torque_speed_rpm", LW_TEXT("Speed of peak torque"), in::Nm,
                        *brief_.torqueSpeed, curve_.torque, curve_.torqueAtItsSpeed);
        }
    }

    void limit(const char* name, TextId label, const char* unit, double wanted, double reached,
               bool isKept, const Message& why) {
        rows_.push_back({name, label, unit, wanted, reached, true, isKept ? Message() : why});
    }

    void compareLimits() {
        if (brief_.diameterLimit) {
            const double reached = outerDiameter(design_);
            limit("outer_diameter_mm", LW_TEXT("Outer diameter"), "mm",
                  *brief_.diameterLimit / millimetre, reached / millimetre,
                  reached <= *brief_.diameterLimit,
                  {LW_TEXT("%1 too large; the nearest is %2"),
                   Amount(reached - *brief_.diameterLimit, in::mm, 3), Amount(reached, in::mm)});
        }
        if (brief_.lengthLimit) {
            const double reached = overallLength(design_);
            limit("length_mm", LW_TEXT("Length"), "mm", *brief_.lengthLimit / millimetre,
                  reached / millimetre, reached <= *brief_.lengthLimit,
                  {LW_TEXT("%1 too long; the nearest is %2"),
                   Amount(reached - *brief_.lengthLimit, in::mm, 3), Amount(reached, in::mm)});
        }
        if (brief_.life) {
            const auto inlet = figure("roller_life_inlet_h"),
                       exhaust = figure("roller_life_exhaust_h");
            const double reached = std::min(inlet.value_or(0.0), exhaust.value_or(0.0));
            const double wanted = *brief_.life / 3600.0;
            limit("roller_life_h", LW_TEXT("Rating life of the rollers"), "h", wanted, reached,
                  reached >= wanted, {LW_TEXT("the nearest is %1"), amountIn(in::hours, reached)});
        }
    }

    const Brief& brief_;
    const design::Design& design_;
    const solution::Solution& solved_;
    const SpeedCurve& curve_;
    const Message& powerNote_;
    std::vector<Comparison> rows_;
};

/// Brake power and torque at these speeds [1/min]. Absent: stopped.
std::optional<study::Table> tableOver(const std::vector<double>& speeds,
                                      const design::Design& design, Monitor& monitor) {
    std::vector<study::Variant> variants;
    for (const double speed : speeds) {
        variants.push_back({speed, design});
        variants.back().design.running.speed = speed * revPerMinute;
    }
    auto table = study::solveVariants(study::speedSweepParameter(), variants, {},
                                      {"brake_power_kW", "brake_torque_Nm"}, monitor);
    return table ? std::optional(std::move(table).value()) : std::nullopt;
}

std::optional<study::Peak> highest(const study::Table& table, std::string_view name) {
    std::vector<double> speeds;
    for (const study::Point& point : table.points) {
        speeds.push_back(point.parameter);
    }
    const Samples values = table.values(name);
    return study::peakOf(speeds, std::vector<double>(values.begin(), values.end()));
}

} // namespace

std::optional<SpeedCurve> speedCurve(const Brief& brief, const design::Design& design,
                                     Monitor& monitor) {
    const double own = design.running.speed / revPerMinute;
    const bool isElsewhere = brief.torque && !isTorqueAtRatedSpeed(brief, design.running.speed);
    const bool isAnywhere = brief.torque && brief.power && !brief.torqueSpeed;
    SpeedCurve curve;
    if (!(brief.powerSpeed && !brief.isDuty) && !isElsewhere && !isAnywhere) {
        return curve;
    }
    std::vector<double> speeds;
    for (int percent = 30; percent <= 170; percent += 10) {
        speeds.push_back(percent / 100.0 * own);
    }
    PartOfWork most(monitor, 0.0, 0.9), rest(monitor, 0.9, 1.0);
    const auto table = tableOver(speeds, design, most);
    if (!table) {
        return std::nullopt;
    }
    curve.power = highest(*table, "brake_power_kW");
    curve.torque = highest(*table, "brake_torque_Nm");
    if (isElsewhere) {
        const auto at = tableOver({brief.torqueSpeed->value / revPerMinute}, design, rest);
        if (!at) {
            return std::nullopt;
        }
        curve.torqueAtItsSpeed = at->points.front().values[1];
    }
    return curve;
}

std::vector<Comparison> compare(const Brief& brief, const design::Design& design,
                                const solution::Solution& solved, const SpeedCurve& curve,
                                const Message& powerNote) {
    return Comparing(brief, design, solved, curve, powerNote).run();
}

bool keepsSize(const Brief& brief, const design::Design& design) {
    const bool isSlim = !brief.diameterLimit || outerDiameter(design) <= *brief.diameterLimit;
    return isSlim && (!brief.lengthLimit || overallLength(design) <= *brief.lengthLimit);
}

} // namespace lobewright::draft
