#include "core/solution/figures/channels.h"

#include "core/track/track.h"
#include "core/units.h"

#include <cassert>
#include <cmath>
#include <limits>

LW_TEXTS_OF(Core)

namespace lobewright::solution {

void ChannelList::add(std::string name, Message label, std::string symbol, std::string unit,
                      const Samples& values, double unitFactor) {
    assert(values.size() == samples_);
    channels_.push_back({std::move(name), std::move(label), std::move(symbol), std::move(unit),
                         (values / unitFactor).unaryExpr([](double value) {
                             return std::isfinite(value) ? value
                                                         : std::numeric_limits<double>::quiet_NaN();
                         })});
}

void addMotionChannels(ChannelList& list, const ports::PortTiming& timing, const Samples& theta,
                       const Samples& chi, double speed) {
    const auto& pair = timing.pair();
    list.add("shaft_angle_deg", LW_TEXT("Shaft angle"), "θ", "°", theta, units::degree);
    list.add("cycle_angle_deg", LW_TEXT("Cycle angle from inner dead centre"), "χ", "°", chi,
             units::degree);

    const PerEnd<motion::LiftSamples> lifts{pair.lift(End::inlet, theta),
                                            pair.lift(End::exhaust, theta)};
    const auto addBoth = [&](const std::string& before, const std::string& after,
                             const Message& label, const std::string& symbol,
                             const std::string& unit, auto&& quantity, double factor) {
        for (const End end : pair.pistons()) {
            list.add(before + name(end) + after, ofSide(label, end), symbol, unit,
                     quantity(lifts[end]), factor);
        }
    };
    const double radius = pair.mechanism().pitchRadius;
    using Lift = motion::LiftSamples;
    addBoth(
        "lift_", "_mm", LW_TEXT("Lift"), "y", "mm", [](const Lift& l) -> Samples { return l.y; },
        units::millimetre);
    addBoth(
        "velocity_", "_m_per_s", LW_TEXT("Piston velocity"), "ẏ", "m/s",
        [&](const Lift& l) -> Samples { return speed * l.y1; }, 1.0);
    addBoth(
        "acceleration_", "_m_per_s2", LW_TEXT("Piston acceleration"), "ÿ", "m/s²",
        [&](const Lift& l) -> Samples { return speed * speed * l.y2; }, 1.0);
    addBoth(
        "jerk_", "_m_per_s3", LW_TEXT("Piston jerk"), "y⃛", "m/s³",
        [&](const Lift& l) -> Samples { return speed * speed * speed * l.y3; }, 1.0);
    addBoth(
        "lever_arm_", "_mm", LW_TEXT("Lever arm of the track"), "−y′", "mm",
        [](const Lift& l) -> Samples { return -l.y1; }, units::millimetre);
    addBoth(
        "pressure_angle_", "_deg", LW_TEXT("Pressure angle at the pitch radius"), "α", "°",
        [&](const Lift& l) { return track::contactAngle(l, radius); }, units::degree);
    addBoth(
        "relative_radius_", "_mm",
        LW_TEXT("Relative radius of curvature of roller and track at the pitch radius"), "R", "mm",
        [&](const Lift& l) {
            return track::relativeRadius(l, radius, pair.mechanism().roller.radius,
                                         track::Flank::push);
        },
        units::millimetre);

    list.add("chamber_volume_cm3", LW_TEXT("Chamber volume"), "V", "cm³", pair.volume(theta),
             units::cubicCentimetre);
    for (const End end : bothEnds) {
        list.add(std::string("port_area_") + name(end) + "_mm2",
                 ofSide(LW_TEXT("Open port area"), end), "A", "mm²", timing.area(end, theta),
                 units::squareMillimetre);
    }
}

void addGasChannels(ChannelList& list, const gas::CycleSolution* gas, const Samples& theta) {
    gas::GasSamples samples;
    if (gas) {
        samples = gas->trace->sample(theta);
    } else {
        const Samples gap =
            Samples::Constant(theta.size(), std::numeric_limits<double>::quiet_NaN());
        samples = {gap, gap, gap, gap};
    }
    list.add("pressure_bar", LW_TEXT("Chamber pressure"), "p", "bar", samples.pressure, units::bar);
    list.add("temperature_K", LW_TEXT("Mean gas temperature"), "T", "K", samples.temperature);
    list.add("air_mass_mg", LW_TEXT("Air in the chamber"), "m", "mg", samples.airMass,
             units::milligram);
    list.add("products_mass_mg", LW_TEXT("Burnt gas in the chamber"), "m", "mg",
             samples.productsMass, units::milligram);
}

} // namespace lobewright::solution
