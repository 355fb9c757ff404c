#include "core/draft/size.h"

#include "core/claims/bands.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::draft {

namespace {

using units::bar;
using units::cubicCentimetre;
using units::kilowatt;
using units::millimetre;
using units::pi;
using units::revPerMinute;

constexpr Span opposedStrokeToBore{0.65, 0.45, 1.1};
constexpr Span oneSidedStrokeToBore{0.9, 0.7, 1.3};
constexpr double wantedChamber = 350e-6; ///< displacement of one cylinder [m³]

/// The ordinary band of such engines, narrowed by nothing but what is known of the class.
Span ordinary(study::BandQuantity quantity, study::Ignition ignition,
              std::optional<study::Charging> charging, Span otherwise) {
    for (const study::Band& band : study::bands()) {
        const bool fits =
            band.quantity == quantity && band.level == study::BandLevel::ordinary &&
            band.cycle.value_or(study::StrokeCycle::twoStroke) == study::StrokeCycle::twoStroke &&
            band.ignition.value_or(ignition) == ignition &&
            (!band.charging || (charging && *band.charging == *charging));
        if (fits) {
            return {0.5 * (band.low + band.high), band.low, band.high};
        }
    }
    return otherwise;
}

class Sizing {
  public:
    Sizing(const Brief& brief, int lobes, const Tuning& tuning, Notebook& notebook)
        : brief_(brief), tuning_(tuning), notes_(notebook) {
        size_.lobes = lobes;
        size_.pistons = brief.isOneSided ? 1 : 2;
        strokeToBore_ = brief.isOneSided ? oneSidedStrokeToBore : opposedStrokeToBore;
    }

    Size run() {
        chooseFuel();
        noteLobes();
        choosePower();
        chooseSpeedFromFigures();
        if (!hasVolume()) {
            chooseMeanPressure();
        }
        chooseCylinders();
        chooseBoreAndStroke();
        if (!(size_.speed > 0.0)) {
            chooseSpeedFromPistons();
        }
        settleMeanPressure();
        return size_;
    }

  private:
    bool hasVolume() const {
        return brief_.displacement || (brief_.bore && brief_.stroke && brief_.cylinders);
    }

    std::string sourceOf(const Figure& figure) const {
        return brief_.source.empty() ? figure.text
                                     : fmt::format("{}, {}", figure.text, brief_.source);
    }

    void chooseFuel() {
        using gas::Fuel;
        const bool isCompression = brief_.ignition == study::Ignition::compression;
        size_.fuel = brief_.fuel.value_or(isCompression ? Fuel::diesel : Fuel::petrol);
        size_.isDiesel = size_.fuel == Fuel::diesel;
    }

    void noteLobes() {
        if (brief_.lobes == size_.lobes) {
            notes_.given(LW_TEXT("Lobes"), "", size_.lobes, 0.0, brief_.source,
                         {"/tracks/inlet/lobes"});
        } else {
            const double lobes =
                notes_.assume("lobes", LW_TEXT("Lobes"), "", {double(size_.lobes), 1.0, 3.0},
                              {"/tracks/inlet/lobes"});
            size_.lobes = static_cast<int>(std::clamp(std::round(lobes), 1.0, 24.0));
        }
    }

    void choosePower() {
        if (brief_.power) {
            size_.power = notes_.given(LW_TEXT("Power"), "kW", kilowatt, *brief_.power,
                                       sourceOf(*brief_.power));
        } else if (brief_.torque) {
            const auto& speed = brief_.powerSpeed ? brief_.powerSpeed : brief_.torqueSpeed;
            if (speed) {
                const double power = brief_.torque->value * speed->value;
                size_.power =
                    notes_.take("power-from-torque", LW_TEXT("Power"), "kW",
                                {power / kilowatt, power / kilowatt, power / kilowatt},
                                fmt::format("{} · {}", brief_.torque->text, speed->text)) *
                    kilowatt;
                size_.speed = speed->value;
            }
        }
    }

    void chooseSpeedFromFigures() {
        const auto& speed = brief_.powerSpeed ? brief_.powerSpeed : brief_.maximumSpeed;
        if (speed) {
            size_.speed = notes_.given(LW_TEXT("Shaft speed"), "rpm", revPerMinute, *speed,
                                       sourceOf(*speed), {"/running/speed_rpm"});
        } else if (size_.power && brief_.torque && !(size_.speed > 0.0)) {
            const auto at = [&](double share) {
                return *size_.power / (share * brief_.torque->value) / revPerMinute;
            };
            size_.speed =
                notes_.take("speed-from-torque", LW_TEXT("Shaft speed"), "rpm",
                            {at(0.93), at(1.0), at(0.85)},
                            fmt::format("{}/(2π·0.93·{})", powerText(), brief_.torque->text),
                            {"/running/speed_rpm"}) *
                revPerMinute;
        } else if (brief_.torqueSpeed && !(size_.speed > 0.0)) {
            size_.speed = brief_.torqueSpeed->value;
        }
    }

    std::string powerText() const {
        return brief_.power ? brief_.power->text
                            : fmt::format("{:.4g} kW", size_.power.value_or(0.0) / kilowatt);
    }

    study::Ignition ignition() const {
        return size_.isDiesel ? study::Ignition::compression : study::Ignition::spark;
    }

    void chooseMeanPressure() {
        if (brief_.meanPressure) {
            size_.meanPressure = notes_.given(LW_TEXT("Brake mean effective pressure"), "bar", bar,
                                              *brief_.meanPressure, sourceOf(*brief_.meanPressure));
            return;
        }
        const bool isBoosted = brief_.charging == study::Charging::boosted;
        const Span otherwise =
            isBoosted ? Span{8 * bar, 6 * bar, 11 * bar} : Span{5 * bar, 4 * bar, 6 * bar};
        Span band = ordinary(study::BandQuantity::meanEffectivePressure, ignition(),
                             brief_.charging, otherwise);
        band.value = band.low + tuning_.meanPressure * (band.high - band.low);
        size_.meanPressure =
            notes_.assume("mean-pressure", LW_TEXT("Brake mean effective pressure"), "bar",
                          {band.value / bar, band.low / bar, band.high / bar}) *
            bar;
    }

    void choosePistonSpeed() {
        if (brief_.pistonSpeed) {
            pistonSpeed_ = notes_.given(LW_TEXT("Mean piston speed"), "m/s", 1.0,
                                        *brief_.pistonSpeed, sourceOf(*brief_.pistonSpeed));
            return;
        }
        Span band = ordinary(study::BandQuantity::meanPistonSpeed, ignition(), brief_.charging,
                             {11.0, 8.0, 15.0});
        band.value = band.low + tuning_.pistonSpeed * (band.high - band.low);
        pistonSpeed_ = notes_.assume("piston-speed", LW_TEXT("Mean piston speed"), "m/s", band);
    }

    /// Displacement where it is known without the number of cylinders; 0 where not.
    double volumeSoFar() {
        if (brief_.displacement) {
            return notes_.given(LW_TEXT("Displacement"), "cm³", cubicCentimetre,
                                *brief_.displacement, sourceOf(*brief_.displacement));
        }
        if (hasVolume() || !(size_.speed > 0.0) || !size_.power) {
            return 0.0;
        }
        const double volume =
            *size_.power / (size_.meanPressure * size_.speed / units::turn * size_.lobes);
        const double shown = volume / cubicCentimetre;
        return notes_.take(
                   "displacement-from-power", LW_TEXT("Displacement"), "cm³", {shown, shown, shown},
                   fmt::format("{}/({:.3g} bar · {:.5g} rpm · {})", powerText(),
                               size_.meanPressure / bar, size_.speed / revPerMinute, size_.lobes)) *
               cubicCentimetre;
    }

    /// Of one cylinder.
    double swept(double bore, double stroke) const {
        return size_.pistons * pi / 4.0 * bore * bore * stroke;
    }

    /// Bore of z cylinders that give the power at this mean pressure and piston speed.
    double boreFromPower(int cylinders) const {
        return std::sqrt(8.0 * size_.power.value_or(10.0 * kilowatt) /
                         (size_.pistons * pi * cylinders * size_.meanPressure * pistonSpeed_));
    }

    void chooseCylinders() {
        size_.displacement = volumeSoFar();
        const bool isSizedByPower = !(size_.displacement > 0.0) && !hasVolume();
        if (isSizedByPower) {
            choosePistonSpeed();
        }
        if (brief_.cylinders) {
            size_.cylinders = *brief_.cylinders;
            notes_.given(LW_TEXT("Cylinders"), "", size_.cylinders, 0.0, brief_.source,
                         {"/mechanism/cylinders"});
            return;
        }
        const auto chamber = [&](int z) {
            if (brief_.bore && brief_.stroke) {
                return swept(brief_.bore->value, brief_.stroke->value);
            }
            if (isSizedByPower) {
                const double bore = boreFromPower(z);
                return swept(bore, strokeToBore_.value * bore);
            }
            return size_.displacement / z;
        };
        int best = 2;
        for (int z = 3; z <= 6; ++z) {
            const auto off = [&](int n) { return std::abs(std::log(chamber(n) / wantedChamber)); };
            best = off(z) < off(best) - 1e-12 ? z : best;
        }
        if (brief_.bore && brief_.stroke && size_.displacement > 0.0) {
            best =
                std::clamp(static_cast<int>(std::lround(size_.displacement / chamber(1))), 1, 16);
        }
        size_.cylinders = static_cast<int>(
            std::clamp(notes_.assume("cylinders", LW_TEXT("Cylinders"), "",
                                     {double(best), 2.0, 6.0}, {"/mechanism/cylinders"}),
                       1.0, 64.0));
    }

    void chooseBoreAndStroke() {
        const double z = size_.cylinders, k = size_.pistons;
        const double fromPower =
            size_.displacement > 0.0 || hasVolume() ? 0.0 : boreFromPower(size_.cylinders);
        if (brief_.bore) {
            size_.bore = noteLength(LW_TEXT("Bore"), *brief_.bore, "/mechanism/bore_mm");
        }
        if (brief_.stroke) {
            size_.stroke = noteLength(LW_TEXT("Stroke"), *brief_.stroke, strokePath);
        }
        const double volume = size_.displacement;
        if (!brief_.bore && volume > 0.0 && brief_.stroke) {
            const double bore = std::sqrt(4.0 * volume / (k * pi * z * size_.stroke));
            size_.bore = noteRule("bore-from-stroke", LW_TEXT("Bore"), {bore, bore, bore},
                                  fmt::format("√(4·{:.5g} cm³/({}·π·{}·{:.4g} mm))",
                                              volume / cubicCentimetre, size_.pistons,
                                              size_.cylinders, size_.stroke / millimetre),
                                  "/mechanism/bore_mm");
        } else if (!brief_.bore && volume > 0.0) {
            const auto at = [&](double x) { return std::cbrt(4.0 * volume / (k * pi * z * x)); };
            size_.bore =
                noteRule("bore-from-displacement", LW_TEXT("Bore"),
                         {at(strokeToBore_.value), at(strokeToBore_.high), at(strokeToBore_.low)},
                         fmt::format("∛(4·{:.5g} cm³/({}·π·{}·{:.3g}))", volume / cubicCentimetre,
                                     size_.pistons, size_.cylinders, strokeToBore_.value),
                         "/mechanism/bore_mm");
        } else if (!brief_.bore) {
            const double bore = fromPower;
            size_.bore = noteRule(
                "bore-from-power", LW_TEXT("Bore"), {bore, 0.8 * bore, 1.25 * bore},
                fmt::format("√(8·{}/({}·π·{}·{:.3g} bar·{:.3g} m/s))", powerText(), size_.pistons,
                            size_.cylinders, size_.meanPressure / bar, pistonSpeed_),
                "/mechanism/bore_mm");
        }
        if (!brief_.stroke && volume > 0.0) {
            const double stroke = 4.0 * volume / (k * pi * z * size_.bore * size_.bore);
            // The range of the stroke is that of the bore: one follows the other.
            size_.stroke =
                noteRule("stroke-from-displacement", LW_TEXT("Stroke"), {stroke, stroke, stroke},
                         fmt::format("2·{:.5g} cm³/(π·{}·({:.4g} mm)²)", volume / cubicCentimetre,
                                     size_.cylinders, size_.bore / millimetre),
                         strokePath);
        } else if (!brief_.stroke) {
            size_.stroke = noteRule(
                "stroke-from-bore", LW_TEXT("Stroke"),
                {strokeToBore_.value * size_.bore, strokeToBore_.low * size_.bore,
                 strokeToBore_.high * size_.bore},
                fmt::format("{:.3g}·{:.4g} mm", strokeToBore_.value, size_.bore / millimetre),
                strokePath);
        }
        size_.displacement = z * swept(size_.bore, size_.stroke);
        if (!brief_.displacement) {
            const double shown = size_.displacement / cubicCentimetre;
            notes_.result(
                "displacement-from-bore", LW_TEXT("Displacement"), "cm³", {shown, shown, shown},
                fmt::format("{}·(π/4)·({:.4g} mm)²·{}·{:.4g} mm", size_.cylinders,
                            size_.bore / millimetre, size_.pistons, size_.stroke / millimetre));
        }
    }

    double noteLength(TextId label, const Figure& figure, const std::string& path) {
        return notes_.given(label, "mm", millimetre, figure, sourceOf(figure), {path});
    }

    double noteRule(std::string_view rule, TextId label, Span span, const std::string& working,
                    const std::string& path) {
        return notes_.take(rule, label, "mm",
                           {span.value / millimetre, span.low / millimetre, span.high / millimetre},
                           working, {path}) *
               millimetre;
    }

    void chooseSpeedFromPistons() {
        if (!(pistonSpeed_ > 0.0)) {
            choosePistonSpeed();
        }
        const auto at = [&](double speed) {
            return speed / (2.0 * size_.stroke * size_.lobes) * units::turn / revPerMinute;
        };
        const double n = at(pistonSpeed_);
        const Span span = brief_.pistonSpeed ? Span{n, n, n} : Span{n, 0.7 * n, 1.35 * n};
        size_.speed = notes_.take("speed-from-piston-speed", LW_TEXT("Shaft speed"), "rpm", span,
                                  fmt::format("{:.3g} m/s/(2·{:.4g} mm·{})", pistonSpeed_,
                                              size_.stroke / millimetre, size_.lobes),
                                  {"/running/speed_rpm"}) *
                      revPerMinute;
    }

    /// What the power asks for, or what is ordinary where no power is given.
    void settleMeanPressure() {
        if (size_.power) {
            size_.meanPressure =
                *size_.power / (size_.displacement * size_.speed / units::turn * size_.lobes);
        } else if (!(size_.meanPressure > 0.0)) {
            chooseMeanPressure();
        }
    }

    static constexpr const char* strokePath = "/tracks/inlet/stroke_mm";
    const Brief& brief_;
    const Tuning& tuning_;
    Notebook& notes_;
    Size size_;
    Span strokeToBore_;
    double pistonSpeed_ = 0.0;
};

} // namespace

Size sizeOf(const Brief& brief, int lobes, const Tuning& tuning, Notebook& notebook) {
    return Sizing(brief, lobes, tuning, notebook).run();
}

} // namespace lobewright::draft
