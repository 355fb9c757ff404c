#include "core/design/fields.h"
#include "core/editing/design_edits.h"
#include "core/editing/tidy.h"
#include "core/units.h"

#include <fmt/format.h>

#include <charconv>
#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::editing {

namespace {

constexpr double mmPerDegree = units::millimetre / units::degree;

std::optional<double> numberAt(const design::Design& design, const std::string& path) {
    const auto field = design::findField(design, path);
    if (!field)
        return std::nullopt;
    if (const auto* number = std::get_if<double>(&field->value))
        return *number;
    if (const auto* whole = std::get_if<int>(&field->value))
        return *whole;
    return std::nullopt;
}

using Parts = std::vector<std::string>; ///< of "/tracks/inlet/lobes": "", "tracks", …

Parts partsOf(const std::string& path) {
    Parts parts(1);
    for (const char letter : path) {
        if (letter == '/') {
            parts.emplace_back();
        } else {
            parts.back() += letter;
        }
    }
    return parts;
}

bool isSpan(const Parts& parts) {
    return parts.size() == 6 && parts[3] == "segments" && parts[5] == "span_deg";
}

/// The span that gives way to another.
struct Neighbour {
    std::string path;
    int number;      ///< of its segment, counted from 1
    double together; ///< of both spans [deg]
};

std::optional<Neighbour> neighbourOf(const design::Design& design, const std::string& path,
                                     const Parts& parts) {
    int index = 0;
    std::from_chars(parts[4].data(), parts[4].data() + parts[4].size(), index);
    for (const int other : {index + 1, index - 1}) {
        const std::string otherPath =
            fmt::format("/{}/{}/segments/{}/span_deg", parts[1], parts[2], other);
        const auto now = numberAt(design, path), theirs = numberAt(design, otherPath);
        if (now && theirs)
            return Neighbour{otherPath, other + 1, *now + *theirs};
    }
    return std::nullopt;
}

void stretch(motion::Pattern& pattern, int lobes) {
    const double factor = static_cast<double>(pattern.lobes) / lobes;
    pattern.lobes = lobes;
    if (auto* segments = std::get_if<motion::SegmentShape>(&pattern.shape)) {
        // The last span takes what rounding leaves, so that they add up exactly.
        double rest = 360.0 / lobes;
        for (motion::Segment& segment : segments->segments) {
            const bool last = &segment == &segments->segments.back();
            const double span = tidy(last ? rest : segment.span / units::degree * factor);
            rest -= span;
            segment.span = span * units::degree;
        }
    }
    if (auto* knots = std::get_if<motion::KnotShape>(&pattern.shape)) {
        for (motion::Knot& knot : knots->knots) {
            knot.angle = tidy(knot.angle / units::degree * factor) * units::degree;
            if (knot.slope)
                *knot.slope = tidy(*knot.slope / factor / mmPerDegree) * mmPerDegree;
        }
    }
}

} // namespace

Change fieldEdit(const design::Design& design, const std::string& path,
                 const design::FieldValue& value, const Message& label) {
    Change edit{{LW_TEXT("Change %1"), label}, {}};
    const Parts parts = partsOf(path);
    const auto* number = std::get_if<double>(&value);
    const bool isLobes = parts.size() == 4 && parts[3] == "lobes";
    if (isLobes && number && *number >= 1.0 && std::trunc(*number) == *number && *number <= 24.0) {
        design::Design next = design;
        stretch(next.tracks.inlet, static_cast<int>(*number));
        if (next.tracks.exhaust)
            stretch(*next.tracks.exhaust, static_cast<int>(*number));
        edit.replacement = std::move(next);
        return edit;
    }
    if (path == "/mechanism/cylinders" && design.mechanism.cylinderAngles && number &&
        *number >= 1.0 && *number <= 64.0 && std::trunc(*number) == *number) {
        // Listed angles cannot fit another number of cylinders: spread them evenly.
        design::Design next = design;
        next.mechanism.cylinders = static_cast<int>(*number);
        next.mechanism.cylinderAngles.reset();
        next.mechanism.cylinderAngles = mechanism::cylinderAngles(next.mechanism);
        edit.replacement = std::move(next);
        return edit;
    }
    edit.fields.push_back({path, value});
    if (isSpan(parts) && number) {
        if (const auto other = neighbourOf(design, path, parts))
            edit.fields.push_back({other->path, tidy(other->together - *number)});
    }
    return edit;
}

std::optional<Problem> spanProblem(const design::Design& design, const std::string& path,
                                   const design::FieldValue& value) {
    const Parts parts = partsOf(path);
    const auto* number = std::get_if<double>(&value);
    if (!isSpan(parts) || !number || *number <= 0.0)
        return std::nullopt;
    const auto other = neighbourOf(design, path, parts);
    if (!other || tidy(other->together - *number) > 0.0)
        return std::nullopt;
    return Problem{path,
                   {LW_TEXT("%1 leaves segment %2 %3; the span must be less than %4"),
                    amountIn(in::degrees, *number), other->number,
                    amountIn(in::degrees, tidy(other->together - *number)),
                    amountIn(in::degrees, tidy(other->together))}};
}

} // namespace lobewright::editing
