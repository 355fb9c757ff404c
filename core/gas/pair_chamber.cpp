#include "core/gas/pair_chamber.h"

#include "core/mechanism/extremes.h"

#include <algorithm>

namespace lobewright::gas {

PairChamber::PairChamber(const ports::PortTiming& timing)
    : timing_(timing), motion_(std::make_shared<const mechanism::PairPolynomials>(timing.pair())),
      pistonArea_(timing.pair().pistonArea()), recess_(timing.pair().mechanism().recess) {
    for (const End end : bothEnds) {
        Opening& opening = openings_[end];
        opening.rows = timing.rows()[end];
        for (const ports::Row& row : opening.rows) {
            opening.edge = std::max(opening.edge, row.edge);
        }
    }
    findOpenStretches();
    for (const ports::CycleEvents& cycle : timing.cycles()) {
        cycles_.push_back({cycle.centres.idc, cycle.firstOpening(), cycle.inletOpens,
                           cycle.exhaustOpens, cycle.inletCloses, cycle.exhaustCloses,
                           cycle.lastClosing()});
    }
    kinks_ = timing.pair().junctions();
    kinks_.insert(kinks_.end(), timing.kinks().begin(), timing.kinks().end());
    std::sort(kinks_.begin(), kinks_.end());
}

std::unique_ptr<Chamber> PairChamber::clone() const {
    return std::make_unique<PairChamber>(*this);
}

/// Where ports stay closed, the position of their piston need not be found.
void PairChamber::findOpenStretches() {
    const double period = timing_.pair().period();
    for (const End end : bothEnds) {
        std::vector<bool>& mayOpen = openings_[end].mayOpen;
        mayOpen.assign(motion_->stretches(), false);
        for (const ports::CycleEvents& cycle : timing_.cycles()) {
            const double span = cycle.closes(end) - cycle.opens(end);
            for (std::size_t i = 0; i < mayOpen.size(); ++i) {
                const double into =
                    mechanism::wrapped(motion_->begin(i) - cycle.opens(end), period);
                const double length = motion_->end(i) - motion_->begin(i);
                mayOpen[i] = mayOpen[i] || into <= span || into + length >= period;
            }
        }
    }
}

double PairChamber::effectiveArea(End end, const mechanism::PairPolynomials::Place& place) const {
    const Opening& opening = openings_[end];
    if (!opening.mayOpen[place.stretch]) {
        return 0.0;
    }
    const double position = motion_->position(timing_.pair().uncovers(end), place);
    double area = 0.0;
    if (position < opening.edge) {
        for (const ports::Row& row : opening.rows) {
            area +=
                row.dischargeCoefficient * row.count * ports::openArea(row, row.edge - position);
        }
    }
    return area;
}

ChamberGeometry PairChamber::at(double theta) const {
    const auto place = motion_->place(theta);
    const auto gap = motion_->gap(place);
    return {pistonArea_ * gap.value + recess_, pistonArea_ * gap.rate,
            effectiveArea(End::inlet, place), effectiveArea(End::exhaust, place), gap.value};
}

SpaceBehind PairChamber::behind(double theta, PumpSides sides) const {
    const auto place = motion_->place(theta);
    SpaceBehind space;
    for (const End end : timing_.pair().pistons()) {
        if (end == End::inlet || sides == PumpSides::both) {
            space.volume += pistonArea_ * motion_->position(end, place);
            space.rate += pistonArea_ * motion_->positionRate(end, place);
        }
    }
    return space;
}

double PairChamber::period() const {
    return timing_.pair().period();
}

double PairChamber::cyclesPerTurn() const {
    return timing_.pair().cyclesPerTurn();
}

double PairChamber::bore() const {
    return timing_.pair().mechanism().bore;
}

double PairChamber::sweptVolume() const {
    return timing_.pair().sweptVolume();
}

double PairChamber::meanStrokeSum() const {
    return 2.0 * timing_.pair().meanStroke();
}

} // namespace lobewright::gas
