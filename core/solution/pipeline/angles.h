#pragma once

#include "core/ports/events.h"
#include "core/samples.h"

namespace lobewright::solution {

/// Sample angles of one turn [rad]: every half degree from 0 to 2π, plus each dead centre and port
/// event of cylinder 1 exactly. Ascending, without near-repeats; an event takes the place of a grid
/// angle closer than 1e-9 rad.
Samples sampleAngles(const ports::PortTiming& timing, double period);

/// Cycle angle χ = c·(θ − θ_IDC) [rad], shape (samples). With equal lobes wrapped to [−π, π); with
/// unequal lobes counted from the nearest IDC, so that it spans 2π only on average.
Samples cycleAngles(const Samples& theta, const ports::PortTiming& timing, double period,
                    double cyclesPerTurn);

/// Of sampleAngles() one period of the track, both of its ends among them; all of them where the
/// even samples of one period are not those of the next.
Samples onePeriodOf(const Samples& theta, double period);

/// Mean over the turn by angle, for samples crowd at events.
double meanOverTurn(const Samples& values, const Samples& theta);

} // namespace lobewright::solution
