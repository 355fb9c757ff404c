#include "core/design/fields.h"
#include "core/units.h"
#include "ui/base/units.h"
#include "ui/editing/design_edits.h"
#include "ui/editing/tidy.h"

#include <QCoreApplication>
#include <QStringList>

#include <cmath>

namespace lobewright::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(DesignEdits)
};

constexpr double slopeUnit = units::millimetre / units::degree;

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

bool isSpan(const QStringList& parts) {
    return parts.size() == 6 && parts[3] == QLatin1String("segments") &&
           parts[5] == QLatin1String("span_deg");
}

/// The span that gives way to another.
struct Neighbour {
    std::string path;
    int number;      ///< of its segment, counted from 1
    double together; ///< of both spans [deg]
};

std::optional<Neighbour> neighbourOf(const design::Design& design, const QStringList& parts) {
    const std::string path = parts.join(QLatin1Char('/')).toStdString();
    const int index = parts[4].toInt();
    for (const int other : {index + 1, index - 1}) {
        QStringList place = parts;
        place[4] = QString::number(other);
        const std::string otherPath = place.join(QLatin1Char('/')).toStdString();
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
                *knot.slope = tidy(*knot.slope / factor / slopeUnit) * slopeUnit;
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
    if (isSpan(parts) && number) {
        if (const auto other = neighbourOf(design, parts))
            edit.changes.push_back({other->path, tidy(other->together - *number)});
    }
    return edit;
}

std::optional<Problem> spanProblem(const design::Design& design, const std::string& path,
                                   const design::FieldValue& value) {
    const QStringList parts = QString::fromStdString(path).split(QLatin1Char('/'));
    const auto* number = std::get_if<double>(&value);
    if (!isSpan(parts) || !number || *number <= 0.0)
        return std::nullopt;
    const auto other = neighbourOf(design, parts);
    if (!other || tidy(other->together - *number) > 0.0)
        return std::nullopt;
    const QString degrees = QStringLiteral("°");
    const QString text = Words::tr("%1 leaves segment %2 %3; the span must be less than %4")
                             .arg(quantityText(*number, degrees))
                             .arg(other->number)
                             .arg(quantityText(tidy(other->together - *number), degrees),
                                  quantityText(tidy(other->together), degrees));
    return Problem{path, text.toStdString()};
}

} // namespace lobewright::ui
