#include "core/gas/cycle/pump_space.h"

#include "core/gas/models/orifice.h"
#include "core/gas/models/supply.h"
#include "core/mechanism/bracketed_root.h"
#include "core/ports/events.h"
#include "core/units.h"

#include <algorithm>

namespace lobewright::gas {

SpaceBehind PumpSpace::at(double window) const {
    SpaceBehind space{pump.deadVolume, 0.0};
    for (const double lag : lags) {
        const SpaceBehind one = chamber->behind(start + window - lag, pump.sides);
        space.volume += pump.areaFactor * one.volume;
        space.rate += pump.areaFactor * one.rate;
    }
    return space;
}

PumpSpace::Bounds PumpSpace::bounds() const {
    constexpr int steps = 1440;
    Bounds bounds{at(0.0).volume, at(0.0).volume};
    const double step = chamber->period() / (steps * static_cast<double>(chamber->cycles().size()));
    for (double window = step; window < chamber->period(); window += step) {
        const double volume = at(window).volume;
        bounds.smallest = std::min(bounds.smallest, volume);
        bounds.largest = std::max(bounds.largest, volume);
    }
    return bounds;
}

std::array<double, 2> PumpSpace::positions(double window, double lag) const {
    const double area = units::pi / 4.0 * chamber->bore() * chamber->bore();
    const double angle = start + window - lag;
    const double inlet = chamber->behind(angle, PumpSides::inlet).volume / area;
    if (pump.sides == PumpSides::inlet) {
        return {inlet, 0.0};
    }
    return {inlet, chamber->behind(angle, PumpSides::both).volume / area - inlet};
}

double PumpSpace::skirtArea(double window) const {
    if (!pump.skirtRow) {
        return 0.0;
    }
    const ports::Row& row = *pump.skirtRow;
    double area = 0.0;
    for (const double lag : lags) {
        for (const double position : positions(window, lag)) {
            area +=
                row.dischargeCoefficient * row.count * ports::openArea(row, position - row.edge);
        }
    }
    return area;
}

std::vector<double> PumpSpace::skirtEvents() const {
    std::vector<double> events;
    if (!pump.skirtRow) {
        return events;
    }
    const ports::Row& row = *pump.skirtRow;
    constexpr int steps = 720;
    const double period = chamber->period();
    const double step = period / (steps * static_cast<double>(chamber->cycles().size()));
    const std::size_t pistons = positions(0.0, 0.0).size();
    for (const double lag : lags) {
        for (std::size_t piston = 0; piston < pistons; ++piston) {
            for (const double edge : {row.edge, row.edge + row.height}) {
                const auto past = [&](double window) {
                    return positions(window, lag)[piston] - edge;
                };
                for (double from = 0.0; from < period; from += step) {
                    if (past(from) * past(from + step) < 0.0) {
                        events.push_back(mechanism::bracketedRoot(past, from, from + step));
                    }
                }
            }
        }
    }
    return events;
}

double reedFlow(const Supply& supply, const GasGroup& air, double pumpPressure) {
    const Reed& reed = supply.pump.reed;
    const double intake = intakePressure(supply);
    const double drop = intake - pumpPressure - reed.cracking;
    if (drop <= 0.0) {
        return 0.0;
    }
    const double area = reed.area * std::min(drop / reed.fullOpen, 1.0);
    const double t = supply.ambientTemperature;
    const double psi = flowFunction(pumpPressure / intake, air.heatRatio(t)).value;
    return orificeFlow(reed.dischargeCoefficient * area, intake, t, air.gasConstant(), psi);
}

double transferFlow(const Pump& pump, const Stream& chamber, double chamberPressure,
                    const Stream& volume, double volumePressure) {
    const bool out = chamberPressure >= volumePressure;
    const Stream& from = out ? chamber : volume;
    const double high = std::max(chamberPressure, volumePressure);
    const double ratio = std::min(chamberPressure, volumePressure) / high;
    const double flow = orificeFlow(pump.transferArea, high, from.temperature, from.gasConstant,
                                    flowFunction(ratio, from.gamma).value);
    return out ? flow : -flow;
}

double skirtFlow(const Supply& supply, const GasGroup& air, double area, const Stream& inside,
                 double pumpPressure) {
    if (area <= 0.0) {
        return 0.0;
    }
    const double intake = intakePressure(supply);
    const double ratio = pumpPressure / intake;
    if (ratio <= 1.0) {
        const double t = supply.ambientTemperature;
        return orificeFlow(area, intake, t, air.gasConstant(),
                           flowFunction(ratio, air.heatRatio(t)).value);
    }
    return -orificeFlow(area, pumpPressure, inside.temperature, inside.gasConstant,
                        flowFunction(1.0 / ratio, inside.gamma).value);
}

} // namespace lobewright::gas
