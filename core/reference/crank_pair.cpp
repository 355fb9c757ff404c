#include "core/reference/crank_pair.h"

#include "core/mechanism/bracketed_root.h"
#include "core/mechanism/extremes.h"
#include "core/ports/events.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::study {

CrankPairChamber::CrankPairChamber(const CrankPairGeometry& geometry) : geometry_(geometry) {
    for (const End end : pistons()) {
        cranks_.emplace_back(geometry.stroke[end], geometry.rodRatio);
    }
}

Result<CrankPairChamber> CrankPairChamber::make(const CrankPairGeometry& geometry) {
    CrankPairChamber chamber(geometry);
    if (auto problem = chamber.findEvents()) {
        return *problem;
    }
    return chamber;
}

std::unique_ptr<gas::Chamber> CrankPairChamber::clone() const {
    return std::make_unique<CrankPairChamber>(*this);
}

double CrankPairChamber::period() const {
    return units::turn;
}

double CrankPairChamber::pistonArea() const {
    return units::pi * geometry_.bore * geometry_.bore / 4.0;
}

double CrankPairChamber::sweptVolume() const {
    return pistonArea() * strokeSum();
}

double CrankPairChamber::strokeSum() const {
    return geometry_.stroke.inlet + (geometry_.oneSided ? 0.0 : geometry_.stroke.exhaust);
}

double CrankPairChamber::meanStrokeSum() const {
    return strokeSum() * 2.0 / static_cast<double>(pistons().size());
}

double CrankPairChamber::tau(End end, double theta) const {
    return theta - units::pi + (end == End::exhaust ? geometry_.lead : 0.0);
}

double CrankPairChamber::gap(double theta) const {
    double gap = geometry_.clearance + geometry_.shift + strokeSum();
    for (const End end : pistons()) {
        gap -= crank(end).at(tau(end, theta)).y;
    }
    return gap;
}

gas::ChamberGeometry CrankPairChamber::at(double theta) const {
    gas::ChamberGeometry state;
    double gap = geometry_.clearance + geometry_.shift + strokeSum();
    for (const End end : pistons()) {
        const motion::Lift lift = crank(end).at(tau(end, theta));
        gap -= lift.y;
        state.volumeRate -= pistonArea() * lift.y1;
        for (const End side : bothEnds) {
            if (uncovers(side) != end) {
                continue;
            }
            double area = 0.0;
            for (const ports::Row& row : geometry_.ports[side]) {
                area += row.dischargeCoefficient * row.count *
                        ports::openArea(row, row.edge - lift.y + shift(end));
            }
            (side == End::inlet ? state.inletArea : state.exhaustArea) = area;
        }
    }
    state.linerLength = gap;
    state.volume = pistonArea() * gap + geometry_.recess;
    return state;
}

gas::SpaceBehind CrankPairChamber::behind(double theta, gas::PumpSides sides) const {
    gas::SpaceBehind space;
    for (const End end : pistons()) {
        if (end == End::inlet || sides == gas::PumpSides::both) {
            const motion::Lift lift = crank(end).at(tau(end, theta));
            space.volume += pistonArea() * (lift.y - shift(end));
            space.rate += pistonArea() * lift.y1;
        }
    }
    return space;
}

std::optional<Problem> CrankPairChamber::findEvents() {
    // Both pistons near inner dead centre: the slope of the volume changes sign in between.
    const double lead =
        geometry_.oneSided
            ? 0.0
            : geometry_.lead - units::turn * std::round(geometry_.lead / units::turn);
    const double inlet = units::pi;
    const double exhaust = units::pi - lead;
    gas::CycleAngles events;
    events.idc = mechanism::bracketedRoot([this](double theta) { return at(theta).volumeRate; },
                                          std::min(inlet, exhaust), std::max(inlet, exhaust));
    if (!(gap(events.idc) > 0.0)) {
        return Problem{"/mechanism/clearance_mm",
                       Message(LW_TEXT("leaves a gap of %1 between the crowns on cranks, must be "
                                       "positive: the pistons collide"),
                               Amount(gap(events.idc), in::mm))};
    }
    for (const End side : bothEnds) {
        const End end = uncovers(side);
        const double ownCentre = end == End::inlet ? inlet : exhaust;
        double highest = -1.0;
        for (const ports::Row& row : geometry_.ports[side]) {
            const double lift = row.edge + shift(end);
            if (!(lift > 0.0 && lift < crank(end).stroke())) {
                return Problem{fmt::format("/ports/{}", name(side)),
                               Message(LW_TEXT("an edge at %1 with a shift of %2 never opens or "
                                               "never closes within a stroke of %3"),
                                       Amount(row.edge, in::mm), Amount(shift(end), in::mm),
                                       Amount(crank(end).stroke(), in::mm))};
            }
            highest = std::max(highest, lift);
            for (const double depth : {row.edge, row.edge - row.height}) {
                const double at = depth + shift(end);
                if (at <= 0.0 || at >= crank(end).stroke()) {
                    continue;
                }
                const double half = crank(end).angleAt(at);
                kinks_.push_back(mechanism::wrapped(ownCentre + half, period()));
                kinks_.push_back(mechanism::wrapped(ownCentre - half, period()));
            }
        }
        const double half = crank(end).angleAt(highest);
        (side == End::inlet ? events.inletOpens : events.exhaustOpens) = ownCentre + half;
        (side == End::inlet ? events.inletCloses : events.exhaustCloses) =
            ownCentre + units::turn - half;
    }
    events.firstOpening = std::min(events.inletOpens, events.exhaustOpens);
    events.lastClosing = std::max(events.inletCloses, events.exhaustCloses);
    if (!(events.firstOpening > events.idc && events.lastClosing < events.idc + units::turn)) {
        return Problem{
            "/mechanism/exhaust_lead_deg",
            Message(LW_TEXT("a lead of %1 of the crank keeps a port open at inner dead centre"),
                    Amount(geometry_.lead, in::degrees))};
    }
    std::sort(kinks_.begin(), kinks_.end());
    const auto same = [](double a, double b) { return b - a < 1e-12; };
    kinks_.erase(std::unique(kinks_.begin(), kinks_.end(), same), kinks_.end());
    cycles_ = {events};
    return std::nullopt;
}

} // namespace lobewright::study
