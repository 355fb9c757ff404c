#include "core/gas/cycle/pair_chamber.h"

#include "core/mechanism/extremes.h"
#include "core/wide.h"

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

/// Where ports stay closed, the positions of the pistons need not be found.
void PairChamber::findOpenStretches() {
    const double period = timing_.pair().period();
    mayOpen_.assign(motion_->stretches(), 0);
    for (const ports::CycleEvents& cycle : timing_.cycles()) {
        const double span = cycle.lastClosing() - cycle.firstOpening();
        for (std::size_t i = 0; i < mayOpen_.size(); ++i) {
            const double into =
                mechanism::wrapped(motion_->begin(i) - cycle.firstOpening(), period);
            const double length = motion_->end(i) - motion_->begin(i);
            if (into <= span || into + length >= period) {
                mayOpen_[i] = 1;
            }
        }
    }
}

inline double PairChamber::effectiveArea(const Opening& opening, double position) const {
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
    return geometryAt(theta);
}

LW_WIDE ChamberGeometry PairChamber::geometryAt(double theta) const {
    const auto place = motion_->place(theta);
    const auto motion = motion_->motion(place);
    ChamberGeometry geometry{pistonArea_ * motion.gap + recess_, pistonArea_ * motion.gapRate, 0.0,
                             0.0, motion.gap};
    if (mayOpen_[place.stretch]) {
        geometry.inletArea = effectiveArea(openings_.inlet, motion.positions.inlet);
        geometry.exhaustArea = effectiveArea(
            openings_.exhaust, motion.positions[timing_.pair().uncovers(End::exhaust)]);
    }
    return geometry;
}

double PairChamber::volume(double theta) const {
    return pistonArea_ * motion_->motion(motion_->place(theta)).gap + recess_;
}

SpaceBehind PairChamber::behind(double theta, PumpSides sides) const {
    const auto place = motion_->place(theta);
    const PerEnd<double> positions = motion_->motion(place).positions;
    const PerEnd<double> rates = motion_->positionRates(place);
    SpaceBehind space;
    for (const End end : timing_.pair().pistons()) {
        if (end == End::inlet || sides == PumpSides::both) {
            space.volume += pistonArea_ * positions[end];
            space.rate += pistonArea_ * rates[end];
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
