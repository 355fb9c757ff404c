#include "core/solution/figures/channels.h"

#include "core/solution/sides.h"
#include "core/track/track.h"
#include "core/units.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <iterator>
#include <limits>

LW_TEXTS_OF(Core)

namespace lobewright::solution {

void ChannelList::add(QuantityId id, Message label, std::string symbol, const Samples& values) {
    assert(values.size() == samples_);
    const Unit& unit = *id.unit;
    Channel channel{std::move(id), {}, std::move(label), std::move(symbol), {}};
    channel.name = channel.written();
    channel.values = (values * unit.divisor / unit.factor).unaryExpr([](double value) {
        return std::isfinite(value) ? value : std::numeric_limits<double>::quiet_NaN();
    });
    channels_.push_back(std::move(channel));
}

void ChannelList::append(ChannelList more) {
    std::ranges::move(more.channels_, std::back_inserter(channels_));
}

std::vector<Channel> ChannelList::take() {
    nameSides(channels_);
    return std::move(channels_);
}

void addMotionChannels(ChannelList& list, const ports::PortTiming& timing,
                       const PerEnd<motion::LiftSamples>& lifts, const Samples& theta,
                       const Samples& chi, double speed) {
    const auto& pair = timing.pair();
    list.add({"shaft_angle", &in::degrees}, LW_TEXT("Shaft angle"), "θ", theta);
    list.add({"cycle_angle", &in::degrees}, LW_TEXT("Cycle angle from inner dead centre"), "χ",
             chi);

    const double radius = pair.mechanism().pitchRadius;
    using Lift = motion::LiftSamples;
    const auto addBoth = [&](const char* id, const Unit& unit, const Message& label,
                             const char* symbol, auto&& quantity) {
        for (const End end : pair.pistons()) {
            list.add({id, &unit, end}, label, symbol, quantity(lifts[end]));
        }
    };
    addBoth("lift", in::mm, LW_TEXT("Lift"), "y", [](const Lift& l) -> Samples { return l.y; });
    addBoth("velocity", in::metrePerSecond, LW_TEXT("Piston velocity"), "ẏ",
            [&](const Lift& l) -> Samples { return speed * l.y1; });
    addBoth("acceleration", in::metrePerSecond2, LW_TEXT("Piston acceleration"), "ÿ",
            [&](const Lift& l) -> Samples { return speed * speed * l.y2; });
    addBoth("jerk", in::metrePerSecond3, LW_TEXT("Piston jerk"), "y⃛",
            [&](const Lift& l) -> Samples { return speed * speed * speed * l.y3; });
    addBoth("lever_arm", in::mm, LW_TEXT("Lever arm of the track"), "−y′",
            [](const Lift& l) -> Samples { return -l.y1; });
    addBoth("pressure_angle", in::degrees, LW_TEXT("Pressure angle at the pitch radius"), "α",
            [&](const Lift& l) { return track::contactAngle(l, radius); });
    addBoth("relative_radius", in::mm,
            LW_TEXT("Relative radius of curvature of roller and track at the pitch radius"), "R",
            [&](const Lift& l) {
                return track::relativeRadius(l, radius, pair.mechanism().roller.radius,
                                             track::Flank::push);
            });

    list.add({"chamber_volume", &in::cm3}, LW_TEXT("Chamber volume"), "V", pair.volume(theta));
    for (const End end : bothEnds) {
        list.add({"port_area", &in::mm2, end}, LW_TEXT("Open port area"), "A",
                 timing.area(end, theta));
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
    list.add({"pressure", &in::bar}, LW_TEXT("Chamber pressure"), "p", samples.pressure);
    list.add({"temperature", &in::kelvin}, LW_TEXT("Mean gas temperature"), "T",
             samples.temperature);
    list.add({"air_mass", &in::mg}, LW_TEXT("Air in the chamber"), "m", samples.airMass);
    list.add({"products_mass", &in::mg}, LW_TEXT("Burnt gas in the chamber"), "m",
             samples.productsMass);
}

} // namespace lobewright::solution
