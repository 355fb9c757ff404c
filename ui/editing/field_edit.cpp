#include "core/design/fields.h"
#include "core/units.h"
#include "ui/editing/design_edits.h"

#include <QCoreApplication>
#include <QStringList>

#include <cmath>

namespace lobewright::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(DesignEdits)
};

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

double tidy(double value) {
    return std::round(value * 1e9) * 1e-9;
}

/// The span that gives way when the span at `path` becomes `value`.
std::optional<FieldChange> givesWay(const design::Design& design, const QStringList& parts,
                                    double value) {
    const std::string path = parts.join(QLatin1Char('/')).toStdString();
    const int index = parts[4].toInt();
    for (const int neighbour : {index + 1, index - 1}) {
        QStringList other = parts;
        other[4] = QString::number(neighbour);
        const std::string otherPath = other.join(QLatin1Char('/')).toStdString();
        const auto now = numberAt(design, path), theirs = numberAt(design, otherPath);
        if (now && theirs)
            return FieldChange{otherPath, tidy(*now + *theirs - value)};
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
            const double span = last ? rest : tidy(segment.span / units::degree * factor);
            rest -= span;
            segment.span = span * units::degree;
        }
    }
    if (auto* knots = std::get_if<motion::KnotShape>(&pattern.shape)) {
        for (motion::Knot& knot : knots->knots) {
            knot.angle *= factor;
            if (knot.slope)
                *knot.slope /= factor;
        }
    }
}

} // namespace

Edit fieldEdit(const design::Design& design, const std::string& path,
               const design::FieldValue& value, const std::string& label) {
    Edit edit;
    edit.text = Words::tr("Change %1").arg(QString::fromStdString(label));
    const QStringList parts = QString::fromStdString(path).split(QLatin1Char('/'));
    const auto* number = std::get_if<double>(&value);
    const bool isSpan = parts.size() == 6 && parts[3] == QLatin1String("segments") &&
                        parts[5] == QLatin1String("span_deg");
    const bool isLobes = parts.size() == 4 && parts[3] == QLatin1String("lobes");
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
    edit.changes.push_back({path, value});
    if (isSpan && number) {
        if (const auto other = givesWay(design, parts, *number))
            edit.changes.push_back(*other);
    }
    return edit;
}

} // namespace lobewright::ui
