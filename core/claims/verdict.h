#pragma once

#include "core/claims/claims_check.h"
#include "core/design/ranged_inputs.h"

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// What is left of published figures and statements: one row each, beside arithmetic, beside the
/// open design and beside the band of all engines that are thought possible.
namespace lobewright::study {

/// Values below which 5, 25, 50, 75 and 95 % of the possible engines lie.
struct ResultQuantiles {
    double p05 = 0.0, p25 = 0.0, p50 = 0.0, p75 = 0.0, p95 = 0.0;
};
/// By the name of the result, "peak_power_kW"; values in the unit of that name.
using ResultQuantileMap = std::map<std::string, ResultQuantiles, std::less<>>;

/// What a row comes to, by weight: what excludes a statement first, what says nothing last.
enum class RowOutcome {
    contradictory, ///< arithmetic on the published numbers says no
    disagrees,
    beyond,         ///< above every published band that applies
    beyondEstimate, ///< the same, the highest band an estimate of the program
    implausible,
    onlyWithBoost,
    doubtful,
    ambitious,
    agrees,
    ordinary,
    computed, ///< a figure that no band judges
    open      ///< nothing can be said
};
TextId name(RowOutcome outcome);
/// Whether it speaks against what was published.
bool isAgainst(RowOutcome outcome);

/// What a place of the table shows and what it opens.
struct VerdictCell {
    enum class Opens {
        nothing,
        entry,   ///< of the claims; `target` is its path, "/figures/power"
        working, ///< the formulas of the row; `target` is the row's id
        figure,  ///< how a figure of the design came about; its name
        field,   ///< an input of the design; its path
        result   ///< the band of a result; its name
    };
    Message text; ///< empty: nothing to show
    Message why;  ///< why there is nothing; empty where there is a text
    Opens opens = Opens::nothing;
    std::string target{};
};
std::string_view name(VerdictCell::Opens opens);

/// One formula with its numbers and what it is judged by.
struct RowWorking {
    Message quantity{};   ///< "Power per displacement"
    Message arithmetic{}; ///< "P/V_d = 48000 W/(0.00066 m³)"
    Message value{};      ///< "72.7 kW/L"; empty where the arithmetic ends with it
    TextId verdict{};     ///< of the band; empty: not judged
    Message band{}, source{}, note{};
    std::vector<Reading> readings{}; ///< where it is open which value it is
    std::string unit{};              ///< of the readings
};

struct VerdictRow {
    /// Path of the claims, "/figures/power", "/statements/0"; of numbers that do not fit each
    /// other "conflict/0".
    std::string id;
    Message what; ///< "Power"; of a statement its own words
    bool isQuoted = false;
    VerdictCell published, arithmetic, design, band;
    std::vector<RowWorking> workings; ///< the deciding one first
    RowOutcome outcome = RowOutcome::open;
    Confidence confidence = Confidence::low;
    std::vector<TextId> given;   ///< published numbers that the arithmetic changes with
    std::vector<TextId> assumed; ///< numbers that it takes for granted
    /// Origins of the inputs of the design, where the design is shown.
    std::optional<design::OriginCounts> designRestsOn;
    Message overturnedBy;
};

/// A number that is not given, with the rows that it would decide.
struct WantedNumber {
    std::string path;
    TextId label;
    TextId decides;
    std::vector<std::string> rows; ///< their ids
};

struct VerdictPage {
    ClaimsReport report;
    std::vector<VerdictRow> rows;     ///< by weight
    std::vector<RowWorking> others;   ///< what follows from the numbers besides
    std::vector<WantedNumber> wanted; ///< that which decides most first
    Message designNote;               ///< why the design is not shown; empty: it is
};

/// Never fails. `design`: solved, or null. `bands`: of the possible engines of that design; absent:
/// not computed. Every row has its four cells, each with a text or a reason.
VerdictPage verdictPage(const Claims& claims, const solution::Solution* design = nullptr,
                        const std::optional<ResultQuantileMap>& bands = std::nullopt);

} // namespace lobewright::study
