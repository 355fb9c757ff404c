#include "ui/editing/lift_grips.h"

#include "core/units.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(LiftGrips)
};

// A segment dragged towards nothing stops here [deg]: shorter ones can be typed.
constexpr double shortestSpan = 0.5;
constexpr double closestKnots = 0.5;

std::string trackPath(End end) {
    return std::string("/tracks/") + name(end);
}

std::string itemPath(End end, const char* list, int index, const char* key) {
    return trackPath(end) + '/' + list + '/' + std::to_string(index) + '/' + key;
}

QString trackLabel(End end) {
    return end == End::inlet ? Words::tr("Inlet track") : Words::tr("Exhaust track");
}

double endLift(const motion::SegmentShape& shape, int index) {
    for (int i = index; i >= 0; --i) {
        const motion::Segment& segment = shape.segments[static_cast<size_t>(i)];
        if (segment.kind == motion::SegmentKind::dwell)
            continue;
        const double whole = segment.kind == motion::SegmentKind::rise ? shape.stroke : 0.0;
        return segment.endLift.value_or(whole) / units::millimetre;
    }
    return 0.0;
}

/// The last segment up to `index` that moves; it sets the lift at the end of `index`.
int movingSegment(const motion::SegmentShape& shape, int index) {
    while (index >= 0 &&
           shape.segments[static_cast<size_t>(index)].kind == motion::SegmentKind::dwell)
        --index;
    return index;
}

std::vector<LiftGrip> boundGrips(const motion::SegmentShape& shape, End end) {
    std::vector<LiftGrip> grips;
    double angle = 0.0;
    for (int i = 1; i < static_cast<int>(shape.segments.size()); ++i) {
        angle += shape.segments[static_cast<size_t>(i - 1)].span / units::degree;
        LiftGrip grip;
        grip.end = end;
        grip.index = i;
        grip.angle = angle;
        grip.lift = endLift(shape, i - 1);
        grip.label = Words::tr("%1, bound %2").arg(trackLabel(end)).arg(i);
        grip.anglePath = itemPath(end, "segments", i - 1, "span_deg");
        if (const int mover = movingSegment(shape, i - 1); mover >= 0) {
            const motion::Segment& segment = shape.segments[static_cast<size_t>(mover)];
            if (segment.endLift)
                grip.liftPath = itemPath(end, "segments", mover, "lift_mm");
            else if (segment.kind == motion::SegmentKind::rise)
                grip.liftPath = trackPath(end) + "/stroke_mm";
        }
        grip.movesLift = !grip.liftPath.empty();
        grips.push_back(grip);
    }
    return grips;
}

std::vector<LiftGrip> knotGrips(const motion::KnotShape& shape, End end) {
    std::vector<LiftGrip> grips;
    for (int i = 0; i < static_cast<int>(shape.knots.size()); ++i) {
        const motion::Knot& knot = shape.knots[static_cast<size_t>(i)];
        LiftGrip grip;
        grip.kind = LiftGrip::Kind::knot;
        grip.end = end;
        grip.index = i;
        grip.angle = knot.angle / units::degree;
        grip.lift = knot.lift / units::millimetre;
        grip.label = Words::tr("%1, knot %2").arg(trackLabel(end)).arg(i + 1);
        grip.anglePath = itemPath(end, "knots", i, "angle_deg");
        grip.liftPath = itemPath(end, "knots", i, "lift_mm");
        grips.push_back(grip);
    }
    return grips;
}

/// Rounds away the dust of adding spans, so that files and fields stay readable.
double tidy(double value) {
    return std::round(value * 1e9) * 1e-9;
}

void moveBound(const motion::SegmentShape& shape, const LiftGrip& grip, double angle, Edit& edit) {
    const auto index = static_cast<size_t>(grip.index);
    const double before = shape.segments[index - 1].span / units::degree;
    const double after = shape.segments[index].span / units::degree;
    const double least = std::min({shortestSpan, before, after});
    const double first = std::clamp(before + angle - grip.angle, least, before + after - least);
    edit.changes.push_back({grip.anglePath, tidy(first)});
    edit.changes.push_back({itemPath(grip.end, "segments", grip.index, "span_deg"),
                            tidy(before + after - tidy(first))});
}

void moveKnot(const motion::Pattern& pattern, const LiftGrip& grip, double angle, Edit& edit) {
    const auto& knots = std::get<motion::KnotShape>(pattern.shape).knots;
    const auto index = static_cast<size_t>(grip.index);
    const double period = 360.0 / pattern.lobes;
    const double from =
        grip.index == 0 ? 0.0 : knots[index - 1].angle / units::degree + closestKnots;
    const double to = index + 1 == knots.size()
                          ? period - closestKnots
                          : knots[index + 1].angle / units::degree - closestKnots;
    if (from <= to)
        edit.changes.push_back({grip.anglePath, tidy(std::clamp(angle, from, to))});
}

} // namespace

std::vector<LiftGrip> liftGrips(const design::Design& design, End end) {
    if (end == End::exhaust && !design.tracks.exhaust)
        return {};
    const motion::Pattern& pattern = design.tracks[end];
    if (const auto* segments = std::get_if<motion::SegmentShape>(&pattern.shape))
        return boundGrips(*segments, end);
    if (const auto* knots = std::get_if<motion::KnotShape>(&pattern.shape))
        return knotGrips(*knots, end);
    return {};
}

Edit moveGrip(const design::Design& design, const LiftGrip& grip, double angle, double lift) {
    Edit edit;
    edit.text = grip.kind == LiftGrip::Kind::knot
                    ? Words::tr("Move knot %1 (%2)").arg(grip.index + 1).arg(trackLabel(grip.end))
                    : Words::tr("Move bound %1 (%2)").arg(grip.index).arg(trackLabel(grip.end));
    edit.mergeKey = QString::fromStdString(grip.anglePath + grip.liftPath);
    const motion::Pattern& pattern = design.tracks[grip.end];
    if (grip.movesAngle && grip.kind == LiftGrip::Kind::knot)
        moveKnot(pattern, grip, angle, edit);
    else if (grip.movesAngle)
        moveBound(std::get<motion::SegmentShape>(pattern.shape), grip, angle, edit);
    if (grip.movesLift)
        edit.changes.push_back({grip.liftPath, tidy(lift)});
    return edit;
}

} // namespace lobewright::ui
