#include "core/gas/pair_chamber.h"

#include <algorithm>

namespace lobewright::gas {

PairChamber::PairChamber(const ports::PortTiming& timing) : timing_(timing) {
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

ChamberGeometry PairChamber::at(double theta) const {
    const ports::ChamberState state = timing_.at(theta);
    return {state.pair.volume, state.pair.volumeRate, state.effectiveArea.inlet,
            state.effectiveArea.exhaust, state.pair.gap};
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
    return timing_.pair().curve(End::inlet).stroke() + timing_.pair().curve(End::exhaust).stroke();
}

} // namespace lobewright::gas
