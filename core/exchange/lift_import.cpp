#include "core/exchange/lift_import.h"

#include "core/design/document.h"
#include "core/exchange/lift_noise.h"
#include "core/exchange/table_lines.h"
#include "core/motion/knot_fit.h"
#include "core/motion/lift_curve.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::exchange {

namespace {

constexpr int mostLobes = 24; // as a design allows
/// A row for every hundredth of a degree, over several turns.
constexpr std::size_t mostRows = 100'000;
/// Degrees or millimetres of a slip of the pen, whose squares are no numbers any more.
constexpr double farthest = 1e5;

/// "inlet track, 2 lobes, pitch radius …" of a comment line: what this program says of a table that
/// it writes. 0: nothing of the kind.
int lobesSaid(std::string_view line) {
    constexpr std::string_view part = "Part:", word = " lobe";
    const std::size_t begin = line.find(part);
    const std::size_t end = line.find(word);
    if (begin == std::string_view::npos || end == std::string_view::npos || end < begin) {
        return 0;
    }
    std::size_t first = end;
    while (first > begin && line[first - 1] >= '0' && line[first - 1] <= '9') {
        --first;
    }
    int lobes = 0;
    std::from_chars(line.data() + first, line.data() + end, lobes);
    return lobes >= 1 && lobes <= mostLobes ? lobes : 0;
}

struct Table {
    motion::LiftTable rows;
    int lobesSaid = 0; ///< in its comments; 0: not said
};

Result<Table> readTable(std::string_view text) {
    Table read;
    motion::LiftTable& table = read.rows;
    bool hasNames = false;
    const auto take = [&](int count, std::string_view line) -> std::optional<Problem> {
        if (line.starts_with('#') && read.lobesSaid == 0) {
            read.lobesSaid = lobesSaid(line);
        }
        if (line.empty() || line.starts_with('#')) {
            return std::nullopt;
        }
        const std::vector<std::string> columns = columnsOf(line);
        const auto angle = numberOf(columns[0]);
        const auto lift = columns.size() > 1 ? numberOf(columns[1]) : std::nullopt;
        const double degrees = angle.value_or(0.0), millimetres = lift.value_or(0.0);
        if (table.angles.size() == mostRows) {
            return Problem{"/rows", fmt::format("the table has more than {} rows", mostRows)};
        }
        if (angle && lift &&
            !(std::abs(degrees) <= farthest && std::abs(millimetres) <= farthest)) {
            return Problem{
                fmt::format("/lines/{}", count),
                fmt::format("the line reads \"{}\"; angle and lift must lie within ±{:.0f}",
                            shownLine(line), farthest)};
        }
        if (angle && lift) {
            table.angles.push_back(degrees * units::degree);
            table.lifts.push_back(millimetres * units::millimetre);
        } else if (!angle && !lift && table.angles.empty() && !hasNames) {
            hasNames = true;
        } else {
            return Problem{fmt::format("/lines/{}", count),
                           Message(LW_TEXT("the line reads \"%1\"; it must begin with two numbers, "
                                           "angle in degrees and lift in millimetres"),
                                   shownLine(line))};
        }
        return std::nullopt;
    };
    if (auto problem = forEachLine(text, take)) {
        return *problem;
    }
    if (table.angles.size() < 4) {
        return Problem{"/rows",
                       Message(LW_TEXT("the table has %1 rows of numbers; it must have at least 4"),
                               table.angles.size())};
    }
    return read;
}

/// Angle from the first row to the last, and to where the first would come again.
struct Span {
    double length, step;
    double whole() const { return length + step; }
};

Span spanOf(const motion::LiftTable& table) {
    const double length = table.angles.back() - table.angles.front();
    return {length, length / static_cast<double>(table.angles.size() - 1)};
}

/// Lift of the table where its rows are, between them on the parabola through the nearest three.
double liftAt(const motion::LiftTable& table, double angle) {
    const auto next = std::ranges::lower_bound(table.angles, angle);
    const auto size = static_cast<std::ptrdiff_t>(table.angles.size());
    const std::ptrdiff_t middle =
        std::clamp<std::ptrdiff_t>(next - table.angles.begin(), 1, size - 2);
    double lift = 0.0;
    for (std::ptrdiff_t i = middle - 1; i <= middle + 1; ++i) {
        double weight = 1.0;
        for (std::ptrdiff_t k = middle - 1; k <= middle + 1; ++k) {
            if (k != i) {
                const auto a = static_cast<std::size_t>(i), b = static_cast<std::size_t>(k);
                weight *= (angle - table.angles[b]) / (table.angles[a] - table.angles[b]);
            }
        }
        lift += weight * table.lifts[static_cast<std::size_t>(i)];
    }
    return lift;
}

/// Whether a table of one turn says the same again after every period, as nearly as is asked of
/// the fit.
bool repeatsAfter(const motion::LiftTable& table, double period, double tolerance) {
    for (std::size_t i = 0; i < table.angles.size(); ++i) {
        const double again = table.angles[i] + period;
        if (again > table.angles.back()) {
            break;
        }
        if (std::abs(liftAt(table, again) - table.lifts[i]) > tolerance) {
            return false;
        }
    }
    return true;
}

/// The rows of the first repetition alone, where the table goes on.
motion::LiftTable firstPeriod(const motion::LiftTable& table, double period) {
    const double end = table.angles.front() + period * (1.0 + 1e-9);
    const auto beyond = std::ranges::upper_bound(table.angles, end);
    const auto count = beyond - table.angles.begin();
    return {{table.angles.begin(), beyond}, {table.lifts.begin(), table.lifts.begin() + count}};
}

/// Repetitions within a table of one turn: as many as it shows.
int lobesOfTurn(const motion::LiftTable& table, double tolerance) {
    for (int lobes = mostLobes; lobes > 1; --lobes) {
        if (repeatsAfter(table, units::turn / lobes, tolerance)) {
            return lobes;
        }
    }
    return 1;
}

/// Repetitions a turn of a table that covers one: its rows close it, or end one step before.
Result<int> lobesOf(const motion::LiftTable& table, double tolerance) {
    if (!std::ranges::is_sorted(table.angles, std::ranges::less_equal())) {
        return 1; // the fit names the row that steps back
    }
    const Span covered = spanOf(table);
    constexpr double closeness = 0.01; // of a step: rounding of the table's angles
    for (const double span : {covered.length, covered.whole()}) {
        const double count = std::round(units::turn / span);
        const bool isWhole = count >= 1.0 && count <= mostLobes &&
                             std::abs(units::turn / count - span) < closeness * covered.step;
        if (isWhole && count > 1.0) {
            return static_cast<int>(count);
        }
        if (isWhole) {
            return lobesOfTurn(table, tolerance);
        }
    }
    return Problem{
        "/lobes", Message(LW_TEXT("the rows cover %1; they must cover one repetition, 360° divided "
                                  "by the number of lobes, or the number of lobes must be given"),
                          Amount(covered.length, in::degrees, 6))};
}

ImportedLift judged(const motion::LiftTable& table, const motion::KnotFit& fit,
                    const motion::LiftCurve& curve, int lobes) {
    ImportedLift result;
    result.pattern = {lobes, fit.shape};
    // The curve has its lowest lift at 0; the knots still lie where the table is.
    const motion::Knot& knot = fit.shape.knots.front();
    const double zero = knot.lift - curve.at(knot.angle).y;
    double sum = 0.0;
    for (std::size_t i = 0; i < table.angles.size(); ++i) {
        const double angle = table.angles[i];
        const double residual = curve.at(angle).y + zero - table.lifts[i];
        result.rows.push_back({angle, table.lifts[i], residual, curve.at(angle).y2});
        sum += residual * residual;
        if (std::abs(residual) > result.largestResidual) {
            result.largestResidual = std::abs(residual);
            result.angle = angle;
        }
    }
    result.meanSquareRoot = std::sqrt(sum / static_cast<double>(table.angles.size()));
    return result;
}

} // namespace

Result<ImportedLift> importLift(std::string_view text, const ImportOptions& options) {
    if (text.size() > largestLiftTable) {
        return Problem{
            "/rows",
            Message(LW_TEXT("the table has more than %1 bytes (16 MiB); no lift table is larger"),
                    largestLiftTable)};
    }
    const auto read = readTable(text);
    if (!read) {
        return read.problems();
    }
    const motion::LiftTable& table = read->rows;
    const int given = options.lobes > 0 ? options.lobes : read->lobesSaid;
    const double noise = liftNoise(table);
    const std::size_t rows = table.angles.size();
    const double proposed = std::max(finestProposal, largestOfNoise(noise, rows));
    const double tolerance = options.tolerance > 0.0 ? options.tolerance : proposed;
    // Between two rows the noise of both shows.
    const double alike = std::max(tolerance, std::sqrt(2.0) * largestOfNoise(noise, rows));
    const auto lobes = given > 0 ? Result<int>(given) : lobesOf(table, alike);
    if (!lobes) {
        return lobes.problems();
    }
    const double period = units::turn / *lobes;
    const bool isRegular = std::ranges::is_sorted(table.angles, std::ranges::less_equal());
    const bool goesOn = isRegular && spanOf(table).length <= units::turn * (1.0 + 1e-9);
    const auto fit = motion::fitKnots(goesOn ? firstPeriod(table, period) : table, *lobes,
                                      {tolerance, options.mostKnots});
    if (!fit) {
        Problems told; // one bad column has as many as the table has rows
        design::addProblems(told, fit.problems());
        return told;
    }
    const auto curve = motion::LiftCurve::make({*lobes, fit->shape});
    if (!curve) {
        return curve.problems();
    }
    ImportedLift lift = judged(table, *fit, *curve, *lobes);
    // Every row counts, those of the other repetitions too.
    lift.withinTolerance = fit->withinTolerance && lift.largestResidual <= tolerance * (1.0 + 1e-6);
    lift.tolerance = tolerance;
    lift.noise = noise;
    lift.proposedTolerance = proposed;
    const double perPeriod = static_cast<double>(rows) * period / spanOf(table).whole();
    lift.accelerationNoise = accelerationNoise(noise, static_cast<std::size_t>(perPeriod),
                                               fit->shape.knots.size(), period);
    return lift;
}

} // namespace lobewright::exchange
