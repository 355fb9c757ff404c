#include "core/design/schedule_edits.h"

#include "core/design/schedules.h"
#include "core/units.h"

#include <algorithm>
#include <cassert>

namespace lobewright::design {

namespace {

// As the key of the shaft speed has them.
constexpr double slowest = 5.0 * units::revPerMinute;
constexpr double fastest = 30000.0 * units::revPerMinute;

} // namespace

double leastSpeedStep() {
    return units::revPerMinute;
}

SpeedRange roomOf(const Schedule& schedule, std::size_t point) {
    const auto& speed = schedule.speed;
    assert(point < speed.size());
    return {point == 0 ? slowest : speed[point - 1] + leastSpeedStep(),
            point + 1 == speed.size() ? fastest : speed[point + 1] - leastSpeedStep()};
}

std::optional<Schedule> withPoint(const Schedule& schedule, double speed) {
    const auto above = std::ranges::lower_bound(schedule.speed, speed);
    const auto isNear = [&](double other) {
        return std::abs(other - speed) < leastSpeedStep() * (1.0 - 1e-9);
    };
    if (speed < slowest || speed > fastest || schedule.speed.size() >= mostScheduledSpeeds ||
        std::ranges::any_of(schedule.speed, isNear)) {
        return std::nullopt;
    }
    const double value = valueAt(schedule, speed);
    Schedule next = schedule;
    const auto place = above - schedule.speed.begin();
    next.speed.insert(next.speed.begin() + place, speed);
    next.value.insert(next.value.begin() + place, value);
    return next;
}

std::optional<Schedule> withoutPoint(const Schedule& schedule, std::size_t point) {
    if (schedule.speed.size() < 2 || point >= schedule.speed.size()) {
        return std::nullopt;
    }
    Schedule next = schedule;
    next.speed.erase(next.speed.begin() + static_cast<std::ptrdiff_t>(point));
    next.value.erase(next.value.begin() + static_cast<std::ptrdiff_t>(point));
    return next;
}

Schedule levelSchedule(std::string_view input, double value, double from, double to) {
    assert(from < to);
    return {std::string(input), {from, to}, {value, value}};
}

Design withScheduleAt(Design design, std::size_t index, Schedule schedule) {
    assert(index < design.schedules.size());
    design.schedules[index] = std::move(schedule);
    return design;
}

} // namespace lobewright::design
