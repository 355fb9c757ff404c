#pragma once

#include "core/design/design.h"
#include "core/gas/cycle/cycle.h"
#include "core/mechanism/opposed_pair.h"
#include "core/monitor.h"
#include "core/ports/events.h"
#include "core/result.h"
#include "core/samples.h"
#include "core/solution/quantity_id.h"

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lobewright::solution {

/// One quantity over a turn, in the unit of tables and screens.
struct Channel : QuantityId {
    std::string name;   ///< as written in channels.csv: "lift_inlet_mm"
    Message label;      ///< "Lift, inlet side"
    std::string symbol; ///< "y"
    Samples values; ///< shape (samples); not-a-value is stored as NaN only here and shown as a gap
};

/// One figure of the summary, in the unit of its name.
struct Figure : QuantityId {
    std::string group;           ///< "performance"
    std::string name;            ///< as written in the summary: "imep_bar"
    Message label;               ///< "Indicated mean effective pressure"
    std::optional<double> value; ///< absent: not available, `note` says why
    Message note;
    bool isYesNo = false; ///< 1 and 0 mean yes and no
};

enum class Severity { remark, warning, error };

/// One entry of the limits list.
struct Check {
    std::string id; ///< "lift-off"
    Severity severity = Severity::remark;
    Message message;                 ///< one sentence with what to change
    double value = 0.0, limit = 0.0; ///< in the unit
    const Unit* unit = &in::pure;
    std::string path = {};                 ///< field of the design to look at, may be empty
    std::optional<double> angle = {};      ///< shaft angle of the worst place [rad]
    std::optional<QuantityId> figure = {}; ///< that is judged
    std::optional<End> end = {};           ///< side that it is about
};

struct Pipeline; ///< results of the stages with the inputs they came from; see stages.h

/// Everything computed from one design. A plain value; cheap to copy (stages are shared).
struct Solution {
    design::Design design; ///< at its speed: inputs under a schedule have its value there
    mechanism::OpposedPair pair;
    ports::PortTiming timing;
    std::optional<gas::CycleSolution>
        gas;       ///< absent when the gas could not be solved; a check says why
    Samples theta; ///< [rad] 0 … 2π, 0.5° and every event; of figures alone one period of the track
    std::vector<Channel> channels;
    std::vector<Figure> figures;
    std::vector<Check> checks;
    std::shared_ptr<const Pipeline> stages; ///< for reuse by the next solve
    bool live = false;                      ///< its gas cycles came of Request::live

    const Channel* channel(std::string_view name) const; ///< null when there is none of that name
    const Figure* figure(std::string_view name) const;   ///< null when there is none of that name
    const Check* check(std::string_view id) const;       ///< null when there is none
    const Channel* channel(const QuantityId& id) const;  ///< null when there is none
    const Figure* figure(const QuantityId& id) const;    ///< null when there is none
    /// Of a figure [SI]; absent when there is none or it is not available.
    std::optional<double> valueOf(const QuantityId& id) const;
};

/// How much to compute beyond the stages.
enum class Detail {
    everything,
    /// No channels, no motored run for the lift-off speed, no checks but those of the gas: for
    /// studies.
    figures
};

/// What of a solution is wanted.
struct Request {
    Request(Detail wanted = Detail::everything) : detail(wanted) {} // NOLINT: a detail is a request
    Detail detail;
    std::vector<std::string> groups; ///< of figures; empty: all; "shaking": peaks of "balance" only
    bool valid = false;              ///< the design is known to obey every rule
    /// For a picture under the hand: the gas cycle begins where that of `previous` ended, keeps its
    /// burn start where the best one is asked for, and is as exact as the eye (3e-4).
    bool live = false;
    /// Where the search for the gas cycle may begin; the answer is as exact as from nowhere, but
    /// may differ from it within that. Not for `live`.
    std::shared_ptr<const gas::CycleStart> near = nullptr;
};

/// Design → Solution, every input under a schedule at its value for the design's speed. Stages
/// whose inputs equal those of `previous` are taken over from it. Errors: the design is invalid
/// (paths), or cancelled (path ""). A gas cycle that does not converge is not an error: the
/// kinematic part is returned with an error check "not-converged".
Result<Solution> solve(const design::Design& design, Monitor& monitor,
                       const Solution* previous = nullptr, const Request& request = {});

} // namespace lobewright::solution
