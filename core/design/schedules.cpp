#include "core/design/schedules.h"

#include "core/design/document.h"
#include "core/pchip.h"
#include "core/units/named.h"

#include <fmt/format.h>

#include <algorithm>

LW_TEXTS_OF(Core)

namespace lobewright::design {

namespace {

constexpr std::string_view shaftSpeed = "/running/speed_rpm";

/// The points with one more on the straight line beyond either end: the slopes at the ends are then
/// those of the chords, and two or three points will do.
boost::math::interpolators::pchip<std::vector<double>> curveOf(const Schedule& schedule) {
    std::vector<double> x = schedule.speed, y = schedule.value;
    const std::size_t last = x.size() - 1;
    x.push_back(2.0 * x[last] - x[last - 1]);
    y.push_back(2.0 * y[last] - y[last - 1]);
    x.insert(x.begin(), 2.0 * x[0] - x[1]);
    y.insert(y.begin(), 2.0 * y[0] - y[1]);
    return {std::move(x), std::move(y)};
}

/// Collects what one schedule breaks.
class ScheduleRules {
  public:
    ScheduleRules(const Schedule& schedule, std::size_t index, Problems& problems)
        : schedule_(schedule), place_(fmt::format("/schedules/{}", index)), problems_(problems) {}

    void check(const std::vector<Field>& inputs, const Design& design, std::size_t index) {
        const auto field = std::ranges::find(inputs, schedule_.input, &Field::path);
        if (field == inputs.end()) {
            add("/input", Message(LW_TEXT("\"%1\" names no number of the adjuster, of the gas side "
                                          "or of the operating point that can follow the speed"),
                                  excerpt(schedule_.input)));
        } else if (scheduleOf(design, schedule_.input) != &design.schedules[index]) {
            add("/input", Message(LW_TEXT("%1 has a schedule already; an input can have only one"),
                                  field->label));
        }
        checkSpeeds();
        if (field != inputs.end()) {
            checkValues(*field);
        }
    }

  private:
    void add(const std::string& key, Message message) {
        problems_.push_back({place_ + key, std::move(message)});
    }

    void checkSpeeds() {
        const auto& speed = schedule_.speed;
        if (speed.empty()) {
            add("/speed_rpm", LW_TEXT("a schedule needs at least one speed with its value"));
        } else if (speed.size() != schedule_.value.size()) {
            add("/value", Message(LW_TEXT("there are %1 values for %2 speeds; there must be one "
                                          "value for each speed"),
                                  schedule_.value.size(), speed.size()));
        }
        for (std::size_t i = 1; i < speed.size(); ++i) {
            if (!(speed[i] > speed[i - 1])) {
                add(fmt::format("/speed_rpm/{}", i),
                    Message(LW_TEXT("the speed is %1 after %2; speeds must ascend"),
                            Amount(speed[i], in::rpm, 6), Amount(speed[i - 1], in::rpm, 6)));
                return;
            }
        }
    }

    void checkValues(const Field& field) {
        for (std::size_t i = 0; i < schedule_.value.size(); ++i) {
            if (!field.range.contains(schedule_.value[i])) {
                add(fmt::format("/value/{}", i),
                    Message(LW_TEXT("%1 is %2 in the schedule; it must be %3"), field.label,
                            asTyped(schedule_.value[i], unitNamed(field.unit)),
                            field.range.describe(unitNamed(field.unit))));
            }
        }
    }

    const Schedule& schedule_;
    std::string place_;
    Problems& problems_;
};

} // namespace

double valueAt(const Schedule& schedule, double speed) {
    const auto& [input, speeds, values] = schedule;
    if (speed <= speeds.front() || speeds.size() == 1) {
        return values.front();
    }
    if (speed >= speeds.back()) {
        return values.back();
    }
    const auto above = std::ranges::upper_bound(speeds, speed) - speeds.begin();
    const auto i = static_cast<std::size_t>(above);
    const auto [low, high] = std::minmax(values[i - 1], values[i]);
    return std::clamp(curveOf(schedule)(speed), low, high); // but for rounding it lies between
}

bool canFollowSpeed(const Field& field) {
    const auto isIn = [&](std::string_view section) { return field.path.starts_with(section); };
    return field.kind == FieldKind::number && field.path != shaftSpeed &&
           (isIn("/mechanism/adjuster/") || isIn("/gas/") || isIn("/running/"));
}

std::vector<Field> inputsThatCanFollowSpeed(const Design& design) {
    std::vector<Field> inputs = fields(design);
    std::erase_if(inputs, [](const Field& field) { return !canFollowSpeed(field); });
    return inputs;
}

const Schedule* scheduleOf(const Design& design, std::string_view input) {
    const auto found = std::ranges::find(design.schedules, input, &Schedule::input);
    return found == design.schedules.end() ? nullptr : &*found;
}

Design atItsSpeed(const Design& design) {
    Design running = design;
    for (const Schedule& schedule : design.schedules) {
        if (auto set =
                withField(running, schedule.input, valueAt(schedule, design.running.speed))) {
            running = std::move(set).value();
        }
    }
    return running;
}

Design withoutSchedule(Design design, std::string_view input) {
    std::erase_if(design.schedules,
                  [&](const Schedule& schedule) { return schedule.input == input; });
    return design;
}

Design withFixedValuesOf(Design design, const Design& from) {
    for (const Schedule& schedule : from.schedules) {
        const auto kept = findField(from, schedule.input),
                   given = findField(design, schedule.input);
        const Schedule* own = scheduleOf(design, schedule.input);
        if (!kept || !given || own == nullptr || own->speed.empty() ||
            own->speed.size() != own->value.size()) {
            continue;
        }
        const auto* value = std::get_if<double>(&given->value);
        const auto running = findField(atItsSpeed(design), schedule.input);
        if (!value || !running || FieldValue(*value) != running->value) {
            continue; // a value of its own
        }
        if (auto set = withField(design, schedule.input, kept->value)) {
            design = std::move(set).value();
        }
    }
    return design;
}

Problems brokenScheduleRules(const Design& design) {
    Problems problems;
    if (design.schedules.empty()) {
        return problems;
    }
    std::vector<Field> inputs = fieldsOfAllKinds(design);
    std::erase_if(inputs, [](const Field& field) { return !canFollowSpeed(field); });
    for (std::size_t i = 0; i < design.schedules.size(); ++i) {
        ScheduleRules(design.schedules[i], i, problems).check(inputs, design, i);
    }
    return problems;
}

} // namespace lobewright::design
