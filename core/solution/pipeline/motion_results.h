#pragma once

#include "core/solution/checks/checks.h"
#include "core/solution/figures/channels.h"
#include "core/solution/pipeline/stages.h"

namespace lobewright::solution {

/// What a complete solution shows of the motion alone: it can be made while the gas is solved.
struct MotionResults {
    ChannelList channels;
    CheckList checks;
};

/// theta, chi: sample and cycle angles [rad], shape (samples); `kinematics` of them.
MotionResults motionResults(const design::Design& design, const ports::PortTiming& timing,
                            const loads::Kinematics& kinematics, const Samples& theta,
                            const Samples& chi);

} // namespace lobewright::solution
