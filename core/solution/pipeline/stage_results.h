#pragma once

#include "core/balance/balance.h"
#include "core/contact/contact.h"
#include "core/design/design.h"
#include "core/gas/cycle/cycle.h"
#include "core/loads/loads.h"
#include "core/ports/events.h"
#include "core/samples.h"

namespace lobewright::solution {

/// Results of all stages side by side, for those who make channels, figures and checks of them.
struct StageResults {
    const design::Design& design;
    const ports::PortTiming& timing;
    const Result<gas::CycleSolution>& gas;
    const loads::Loads& loads;
    const Samples& theta; ///< sample angles [rad]
    const Samples& chi;   ///< cycle angles [rad]

    const mechanism::OpposedPair& pair() const { return timing.pair(); }
    double omega() const { return design.running.speed; }
    /// Whether a roller of that end leaves its track, which only an open one lets it.
    bool leavesTrack(End end) const {
        return !pair().mechanism().closedTrack && !loads.contactSpeeds[end].include(omega());
    }
};

} // namespace lobewright::solution
