#include "core/exchange/lift_import.h"

#include "core/motion/knot_fit.h"
#include "core/motion/lift_curve.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cmath>

namespace lobewright::exchange {

namespace {

constexpr std::string_view blanks = " \t\r";

std::string_view trimmed(std::string_view text) {
    const std::size_t first = text.find_first_not_of(blanks);
    if (first == std::string_view::npos) {
        return {};
    }
    return text.substr(first, text.find_last_not_of(blanks) - first + 1);
}

/// The first two columns of a line.
struct Fields {
    std::string first, second;
};

Fields split(std::string_view line) {
    const bool hasStrongMark = line.find_first_of(";\t") != std::string_view::npos;
    const bool hasComma = line.find(',') != std::string_view::npos;
    const std::string_view marks = hasStrongMark ? ";\t" : hasComma ? "," : " ";
    const std::size_t end = line.find_first_of(marks);
    Fields fields;
    fields.first = trimmed(line.substr(0, end));
    if (end != std::string_view::npos) {
        const std::string_view rest = trimmed(line.substr(end + 1));
        fields.second = trimmed(rest.substr(0, rest.find_first_of(marks)));
    }
    if (hasStrongMark) {
        std::ranges::replace(fields.first, ',', '.');
        std::ranges::replace(fields.second, ',', '.');
    }
    return fields;
}

std::optional<double> number(std::string_view text) {
    if (text.starts_with('+')) {
        text.remove_prefix(1);
    }
    double value = 0.0;
    const auto read = std::from_chars(text.data(), text.data() + text.size(), value);
    const bool isWhole = read.ec == std::errc() && read.ptr == text.data() + text.size();
    return isWhole && std::isfinite(value) ? std::optional(value) : std::nullopt;
}

/// At most this much of a bad line is shown.
constexpr std::size_t shownBytes = 40;

std::string shown(std::string_view line) {
    std::string text;
    for (char letter : line.substr(0, shownBytes)) {
        const auto code = static_cast<unsigned char>(letter);
        text += code < 0x20 || code >= 0x7f ? '?' : letter;
    }
    return text;
}

Result<motion::LiftTable> readTable(std::string_view text) {
    constexpr std::string_view byteOrderMark = "\xEF\xBB\xBF";
    if (text.starts_with(byteOrderMark)) {
        text.remove_prefix(byteOrderMark.size());
    }
    motion::LiftTable table;
    bool hasNames = false;
    for (int count = 1; !text.empty(); ++count) {
        const std::size_t end = std::min(text.find('\n'), text.size());
        const std::string_view line = trimmed(text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
        if (line.empty() || line.starts_with('#')) {
            continue;
        }
        const Fields fields = split(line);
        const auto angle = number(fields.first), lift = number(fields.second);
        if (angle && lift) {
            table.angles.push_back(*angle * units::degree);
            table.lifts.push_back(*lift * units::millimetre);
        } else if (!angle && !lift && table.angles.empty() && !hasNames) {
            hasNames = true;
        } else {
            return Problem{
                fmt::format("/lines/{}", count),
                fmt::format("the line reads \"{}\"; it must begin with two numbers, angle "
                            "in degrees and lift in millimetres",
                            shown(line))};
        }
    }
    if (table.angles.size() < 4) {
        return Problem{"/rows", fmt::format("the table has {} rows of numbers; it must have at "
                                            "least 4",
                                            table.angles.size())};
    }
    return table;
}

/// Repetitions a turn of a table that covers one: its rows close it, or end one step before.
Result<int> lobesOf(const motion::LiftTable& table) {
    if (!std::ranges::is_sorted(table.angles, std::ranges::less_equal())) {
        return 1; // the fit names the row that steps back
    }
    const double length = table.angles.back() - table.angles.front();
    const double step = length / static_cast<double>(table.angles.size() - 1);
    constexpr int most = 24;           // as a design allows
    constexpr double closeness = 0.01; // of a step: rounding of the table's angles
    for (const double span : {length, length + step}) {
        const double count = std::round(units::turn / span);
        const bool isWhole = count >= 1.0 && count <= most &&
                             std::abs(units::turn / count - span) < closeness * step;
        if (isWhole) {
            return static_cast<int>(count);
        }
    }
    return Problem{"/lobes",
                   fmt::format("the rows cover {:.6g}°; they must cover one repetition, a turn "
                               "divided by the lobes, or the number of lobes must be given",
                               length / units::degree)};
}

ImportedLift judged(const motion::LiftTable& table, const motion::KnotFit& fit,
                    const motion::LiftCurve& curve, int lobes) {
    ImportedLift result;
    result.pattern = {lobes, fit.shape};
    result.withinTolerance = fit.withinTolerance;
    // The curve has its lowest lift at 0; the knots still lie where the table is.
    const motion::Knot& knot = fit.shape.knots.front();
    const double zero = knot.lift - curve.at(knot.angle).y;
    double sum = 0.0;
    for (std::size_t i = 0; i < table.angles.size(); ++i) {
        const double angle = table.angles[i];
        const double residual = curve.at(angle).y + zero - table.lifts[i];
        result.rows.push_back({angle, table.lifts[i], residual});
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
    const auto table = readTable(text);
    if (!table) {
        return table.problems();
    }
    const auto lobes = options.lobes > 0 ? Result<int>(options.lobes) : lobesOf(*table);
    if (!lobes) {
        return lobes.problems();
    }
    const auto fit = motion::fitKnots(*table, *lobes, {options.tolerance, options.mostKnots});
    if (!fit) {
        return fit.problems();
    }
    const auto curve = motion::LiftCurve::make({*lobes, fit->shape});
    if (!curve) {
        return curve.problems();
    }
    return judged(*table, *fit, *curve, *lobes);
}

} // namespace lobewright::exchange
