#pragma once

#include "core/balance/balance.h"
#include "core/contact/contact.h"
#include "core/contact/worst.h"
#include "core/design/design.h"
#include "core/gas/cycle/cycle.h"
#include "core/gas/cycle/pair_chamber.h"
#include "core/loads/loads.h"
#include "core/mechanism/opposed_pair.h"
#include "core/motion/lift_curve.h"
#include "core/ports/events.h"
#include "core/samples.h"

#include <memory>
#include <optional>

namespace lobewright::solution {

/// A stage's result with the inputs it came from: taken over as long as the inputs compare equal.
template <class Inputs, class Output>
struct Stage {
    Inputs inputs;
    Output output;
};

/// What decides the lift curves.
struct MotionInputs {
    design::Tracks tracks;
    bool operator==(const MotionInputs&) const = default;
};

/// What decides volumes and openings: the mechanism without what only loads look at.
struct TimingInputs {
    MotionInputs motion;
    mechanism::Mechanism mechanism;
    ports::Rows ports;
    bool operator==(const TimingInputs&) const = default;
};

/// What decides the gas cycle.
struct GasInputs {
    TimingInputs timing;
    gas::Settings settings;
    double speed = 0.0;
    bool motored = false;
    bool operator==(const GasInputs&) const = default;
};

/// What decides it, and whether it is as exact as the eye only (Request::live).
struct GasStage : Stage<GasInputs, Result<gas::CycleSolution>> {
    bool live = false;
};

/// What the motion alone decides over one period of the track, for studies.
struct PeriodOfTrack {
    Samples theta; ///< shaft angles [rad]; the whole turn where its samples do not repeat
    loads::Kinematics kinematics;
    PerEnd<contact::EndShapes> contact; ///< of straight rollers
    balance::UnitPeaks peaks;
};

struct Pipeline {
    std::shared_ptr<const Stage<MotionInputs, PerEnd<motion::LiftCurve>>> motion;
    std::shared_ptr<const Stage<TimingInputs, ports::PortTiming>> timing;
    std::shared_ptr<const GasStage> gas;
    std::shared_ptr<const GasStage>
        motoredGas; ///< for the lift-off speed; absent when `gas` is motored

    // Of the same timing.
    std::shared_ptr<const balance::UnitBalance> unitBalance;
    std::shared_ptr<const loads::Kinematics> kinematics;
    std::shared_ptr<const gas::PairChamber> chamber;
    std::shared_ptr<const PeriodOfTrack> period;
    std::shared_ptr<const loads::NodeMotion> nodeMotion;

    // What channels and figures were made of, for those who look closer; absent in studies.
    std::shared_ptr<const loads::Loads> loads;
    std::shared_ptr<const contact::Contact> contact;
    std::shared_ptr<const balance::Balance> balance;
};

} // namespace lobewright::solution
