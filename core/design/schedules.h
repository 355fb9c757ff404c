#pragma once

#include "core/design/design.h"
#include "core/design/fields.h"
#include "core/result.h"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

/// Inputs that follow the shaft speed: what may, by which rules, and the design that they make at a
/// speed.
namespace lobewright::design {

inline constexpr std::size_t mostSchedules = 50;        ///< of a design
inline constexpr std::size_t mostScheduledSpeeds = 200; ///< of a schedule

/// Value of the schedule at ω [rad/s], in the unit of its input: through the points by a monotone
/// cubic (Fritsch and Carlson 1980; slopes after Fritsch and Butland 1984, at the ends those of the
/// chords), so that it never passes the values beside it; constant outside. One point: that value.
/// Precondition: speeds rise, and there are as many values as speeds, at least one.
double valueAt(const Schedule& schedule, double speed);

/// Whether an input may follow the speed: a number of the adjuster, of the gas side or of the
/// operating point, but for the speed itself.
bool canFollowSpeed(const Field& field);

/// Those inputs of this design, in file order.
std::vector<Field> inputsThatCanFollowSpeed(const Design& design);

/// The schedule of an input; null where it stands still.
const Schedule* scheduleOf(const Design& design, std::string_view input);

/// The design as it runs at its own speed: every input under a schedule has the value of its
/// schedule there. The schedules stay, so that the same design at another speed is made of it as
/// well. An input of a kind that the design does not use at present is left alone.
Design atItsSpeed(const Design& design);

/// The design with one input standing still again at the value it has in the design.
Design withoutSchedule(Design design, std::string_view input);

/// A design that may have been made from one at its speed: inputs that hold just the value of their
/// schedule get the fixed value that `from` keeps for the day the schedule goes.
Design withFixedValuesOf(Design design, const Design& from);

/// Every rule that a schedule breaks, with its path: it names no input that may follow the speed,
/// or one that another schedule has; no points, or not as many values as speeds; speeds that do not
/// rise; a value outside the range of the input.
Problems brokenScheduleRules(const Design& design);

} // namespace lobewright::design
