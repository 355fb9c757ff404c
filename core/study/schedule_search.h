#pragma once

#include "core/design/fields.h"
#include "core/design/schedule.h"
#include "core/study/operating_points.h"

#include <optional>
#include <string>
#include <vector>

namespace lobewright::study {

/// "Set the adjuster at every speed for the highest torque, between −10° and 20°, with the knock
/// integral below 0.8 and the peak pressure below 120 bar."
struct ScheduleGoal {
    std::string input;                   ///< JSON pointer of a number that can follow the speed
    double from = 0.0, to = 0.0;         ///< its range, in the unit of the file
    std::vector<double> speeds;          ///< [1/min], rising
    std::optional<double> knockIntegral; ///< not to be exceeded; absent: no limit
    std::optional<double> peakPressure;  ///< [bar], likewise
};

/// The engine at one speed with one value of the input.
struct ScheduledValue {
    double value = 0.0;  ///< in the unit of the file
    double torque = 0.0; ///< brake [N·m]
    std::optional<double> knockIntegral;
    double peakPressure = 0.0; ///< [bar]
    bool isWithin = true;      ///< keeps the limits of the goal
};

/// One speed. `fixed`: with the value that the design has; absent where the engine does not run.
/// `best`: where no value of the range keeps the limits, that which exceeds them least; absent
/// where the engine runs with none, and `failure` says why.
struct ScheduleRow {
    double speed = 0.0; ///< [1/min]
    std::optional<ScheduledValue> fixed, best;
    Message failure;
    /// (best − fixed)/|fixed| of the torque; absent where one is missing or the torque is 0.
    std::optional<double> gain() const;
};

struct ScheduleAnswer {
    design::Field input;
    std::vector<ScheduleRow> rows; ///< as the speeds of the goal

    /// The best values over the speeds; no points where the engine runs nowhere.
    design::Schedule schedule() const;
};

/// The value of the input at each speed that gives the highest brake torque within the limits: a
/// grid over the range, then twice a finer one beside the best and where a limit stops the way to
/// more torque, to 1/128 of the range. Where a limit decides, the best value lies that near on its
/// safe side. Peaks closer together than an eighth of the range may be taken for one.
/// Errors: the input cannot follow the speed, the range does not ascend or leaves the admissible
/// values (path of the input); no speeds, or speeds not positive and rising; cancelled (path "").
Result<ScheduleAnswer> findSchedule(const design::Design& design, const ScheduleGoal& goal,
                                    Monitor& monitor);

/// What the schedule buys and costs against the fixed value, speed range by speed range, in one
/// sentence; another where the fixed value exceeds a limit or nothing keeps it.
Message scheduleInWords(const ScheduleAnswer& answer);

/// The design with this schedule in place of one that the input may have had.
design::Design withSchedule(design::Design design, const design::Schedule& schedule);

} // namespace lobewright::study
