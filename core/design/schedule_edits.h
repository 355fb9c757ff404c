#pragma once

#include "core/design/design.h"

#include <cstddef>
#include <optional>
#include <string_view>

/// Edits of schedules over the shaft speed: pure functions that keep their speeds rising.
namespace lobewright::design {

/// The least distance of two speeds of a schedule [rad/s]: 1/min.
double leastSpeedStep();

/// The speeds between which a point may be moved [rad/s]: those of its neighbours, less the least
/// distance; at the ends as far as the shaft may turn.
struct SpeedRange {
    double min = 0.0, max = 0.0;
};
SpeedRange roomOf(const Schedule& schedule, std::size_t point);

/// With one point more, on the curve at ω [rad/s]; absent where one lies that near already, or
/// beyond the speeds of a shaft.
std::optional<Schedule> withPoint(const Schedule& schedule, double speed);

/// With one point less; absent where it is the only one.
std::optional<Schedule> withoutPoint(const Schedule& schedule, std::size_t point);

/// A schedule of two points at the ends of a range [rad/s] that changes nothing: both have the
/// value. from < to.
Schedule levelSchedule(std::string_view input, double value, double from, double to);

/// The design with the schedule at this index replaced.
Design withScheduleAt(Design design, std::size_t index, Schedule schedule);

} // namespace lobewright::design
