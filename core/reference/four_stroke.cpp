#include "core/reference/four_stroke.h"

#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::study {

namespace {

double boreFor(double sweptVolume, double strokeToBore) {
    return std::cbrt(4.0 * sweptVolume / (units::pi * strokeToBore));
}

void require(Problems& problems, bool holds, const char* key, TextId what, double value,
             TextId rule) {
    if (!holds) {
        problems.push_back(
            {fmt::format("/reference/four_stroke/{}", key),
             Message(LW_TEXT("%1 is %2; it must be %3"), what, number(value, 6), rule)});
    }
}

Problems validate(const design::FourStroke& e) {
    Problems problems;
    const auto positive = [&](const char* key, TextId what, double value) {
        require(problems, value > 0.0 && std::isfinite(value), key, what, value,
                LW_TEXT("positive"));
    };
    positive("stroke_to_bore", LW_TEXT("Stroke/bore ratio"), e.strokeToBore);
    positive("inlet_valves", LW_TEXT("Inlet valves"), e.inletValves);
    positive("exhaust_valves", LW_TEXT("Exhaust valves"), e.exhaustValves);
    positive("inlet_seat_to_bore", LW_TEXT("Inlet seat diameter divided by bore"), e.inletSeat);
    positive("exhaust_seat_to_bore", LW_TEXT("Exhaust seat diameter divided by bore"),
             e.exhaustSeat);
    positive("valve_lift_to_seat", LW_TEXT("Valve lift divided by seat diameter"), e.valveLift);
    require(problems, e.compressionRatio > 1.0, "compression_ratio", LW_TEXT("Compression ratio"),
            e.compressionRatio, LW_TEXT("above 1"));
    require(problems, e.dischargeCoefficient > 0.0 && e.dischargeCoefficient <= 1.0,
            "discharge_coefficient", LW_TEXT("Discharge coefficient"), e.dischargeCoefficient,
            LW_TEXT("above 0 and ≤ 1"));
    const auto inside = [&](const char* key, TextId what, double angle, double most) {
        require(problems, angle > -most && angle < most, key, what, angle / units::degree,
                LW_TEXT("within ±90°"));
    };
    inside("inlet_opens_deg", LW_TEXT("Inlet opening"), e.inletOpens, 90.0 * units::degree);
    inside("inlet_closes_deg", LW_TEXT("Inlet closing"), e.inletCloses, 90.0 * units::degree);
    inside("exhaust_opens_deg", LW_TEXT("Exhaust opening"), e.exhaustOpens, 90.0 * units::degree);
    inside("exhaust_closes_deg", LW_TEXT("Exhaust closing"), e.exhaustCloses, 90.0 * units::degree);
    return problems;
}

} // namespace

double valveLift(double theta, double opens, double closes, double largestLift) {
    if (theta <= opens || theta >= closes) {
        return 0.0;
    }
    const double s = std::sin(units::pi * (theta - opens) / (closes - opens));
    return largestLift * s * s;
}

double valveArea(int valves, double seatDiameter, double lift) {
    const double curtain = units::pi * seatDiameter * lift;
    const double seat = units::pi * seatDiameter * seatDiameter / 4.0;
    return valves * std::min(curtain, seat);
}

double fourStrokeFmep(double omega) {
    const double thousands = omega / units::revPerMinute / 1000.0;
    return (0.97 + 0.15 * thousands + 0.05 * thousands * thousands - 0.2) * units::bar;
}

Result<FourStrokeChamber> FourStrokeChamber::make(const design::FourStroke& engine,
                                                  double sweptVolume, double rodRatio) {
    Problems problems = validate(engine);
    if (!(sweptVolume > 0.0) || !(rodRatio > 0.0 && rodRatio < 1.0)) {
        problems.push_back(
            {"/reference/rod_ratio",
             Message(LW_TEXT("swept volume is %1 m³ and crank radius / rod length %2; they must be "
                             "positive, the ratio below 1"),
                     number(sweptVolume), number(rodRatio))});
    }
    if (!problems.empty()) {
        return problems;
    }
    return FourStrokeChamber(engine, sweptVolume, rodRatio);
}

FourStrokeChamber::FourStrokeChamber(const design::FourStroke& engine, double sweptVolume,
                                     double rodRatio)
    : engine_(engine), sweptVolume_(sweptVolume), bore_(boreFor(sweptVolume, engine.strokeToBore)),
      crank_(engine.strokeToBore * bore_, rodRatio),
      clearanceVolume_(sweptVolume / (engine.compressionRatio - 1.0)) {
    gas::CycleAngles events;
    events.idc = 0.0;
    events.exhaustOpens = units::pi - engine.exhaustOpens;
    events.inletOpens = units::turn - engine.inletOpens;
    events.exhaustCloses = units::turn + engine.exhaustCloses;
    events.inletCloses = 3.0 * units::pi + engine.inletCloses;
    events.firstOpening = events.exhaustOpens;
    events.lastClosing = events.inletCloses;
    cycles_ = {events};
    findKinks();
}

std::unique_ptr<gas::Chamber> FourStrokeChamber::clone() const {
    return std::make_unique<FourStrokeChamber>(*this);
}

double FourStrokeChamber::period() const {
    return 2.0 * units::turn;
}

double FourStrokeChamber::pistonArea() const {
    return units::pi * bore_ * bore_ / 4.0;
}

void FourStrokeChamber::findKinks() {
    const gas::CycleAngles& events = cycles_.front();
    const auto add = [&](double opens, double closes) {
        kinks_.push_back(opens);
        kinks_.push_back(closes);
        // Above a quarter of the seat diameter the seat, not the curtain, limits the flow.
        if (engine_.valveLift > 0.25) {
            const double share = std::asin(std::sqrt(0.25 / engine_.valveLift)) / units::pi;
            kinks_.push_back(opens + share * (closes - opens));
            kinks_.push_back(closes - share * (closes - opens));
        }
    };
    add(events.exhaustOpens, events.exhaustCloses);
    add(events.inletOpens, events.inletCloses);
    std::sort(kinks_.begin(), kinks_.end());
}

gas::ChamberGeometry FourStrokeChamber::at(double theta) const {
    const double wrapped = theta - period() * std::floor(theta / period());
    const motion::Lift lift = crank_.at(wrapped);
    const gas::CycleAngles& events = cycles_.front();
    const double inletSeat = engine_.inletSeat * bore_;
    const double exhaustSeat = engine_.exhaustSeat * bore_;
    gas::ChamberGeometry state;
    const double gap = crank_.stroke() - lift.y;
    state.volume = clearanceVolume_ + pistonArea() * gap;
    state.volumeRate = -pistonArea() * lift.y1;
    state.linerLength = state.volume / pistonArea(); // flat head, flat crown
    state.inletArea = engine_.dischargeCoefficient *
                      valveArea(engine_.inletValves, inletSeat,
                                valveLift(wrapped, events.inletOpens, events.inletCloses,
                                          engine_.valveLift * inletSeat));
    state.exhaustArea = engine_.dischargeCoefficient *
                        valveArea(engine_.exhaustValves, exhaustSeat,
                                  valveLift(wrapped, events.exhaustOpens, events.exhaustCloses,
                                            engine_.valveLift * exhaustSeat));
    return state;
}

} // namespace lobewright::study
