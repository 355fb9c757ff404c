#pragma once

#include "core/draft/draft.h"
#include "core/study/line.h"

namespace lobewright::draft {

/// What a draft gives at other speeds than its own.
struct SpeedCurve {
    std::optional<study::Peak> power, torque; ///< [kW], [N·m]; places [1/min]
    std::optional<double> torqueAtItsSpeed;   ///< at the torque speed of the brief [N·m]
};
/// Solved only where a comparison asks for it: a speed of peak power, or a torque that is not that
/// of the rated speed; else empty. Absent: stopped.
std::optional<SpeedCurve> speedCurve(const Brief& brief, const design::Design& design,
                                     Monitor& monitor);

/// Every figure of the brief beside the draft's. `powerNote`: why the power is missed.
std::vector<Comparison> compare(const Brief& brief, const design::Design& design,
                                const solution::Solution& solved, const SpeedCurve& curve,
                                const Message& powerNote);

/// Whether the design keeps the limits of the brief on diameter and length.
bool keepsSize(const Brief& brief, const design::Design& design);

} // namespace lobewright::draft
