#include "core/editing/lift_grips.h"

#include "core/editing/knot_edits.h"
#include "core/editing/segment_lift.h"
#include "core/editing/tidy.h"
#include "core/motion/knot_influence.h"
#include "core/motion/lift_curve.h"
#include "core/units.h"

#include <algorithm>
#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::editing {

namespace {

// A segment dragged towards nothing stops here [deg]: shorter ones can be typed.
constexpr double shortestSpan = 0.5;
constexpr double leastLift = 0.5, mostLift = 2000.0; ///< of a move and of a knot [mm]
constexpr double steepest = 1e3;                     ///< [mm/deg], [mm/deg²]

constexpr double slopeUnit = units::millimetre / units::degree;
constexpr double curvatureUnit = slopeUnit / units::degree;
constexpr double liftGrain = 1e-4; ///< of a lift that follows an acceleration [mm]

std::string trackPath(End end) {
    return std::string("/tracks/") + name(end);
}

std::string itemPath(End end, const char* list, int index, const char* key) {
    return trackPath(end) + '/' + list + '/' + std::to_string(index) + '/' + key;
}

std::vector<LiftGrip> boundGrips(const design::Design& design, const motion::SegmentShape& shape,
                                 End end) {
    std::vector<LiftGrip> grips;
    double angle = 0.0;
    for (int i = 1; i < static_cast<int>(shape.segments.size()); ++i) {
        angle += shape.segments[static_cast<size_t>(i - 1)].span / units::degree;
        LiftGrip grip;
        grip.end = end;
        grip.index = i;
        grip.angle = angle;
        const double before = shape.segments[static_cast<size_t>(i - 1)].span / units::degree;
        const double after = shape.segments[static_cast<size_t>(i)].span / units::degree;
        const double least = std::min({shortestSpan, before, after});
        grip.angleFrom = angle - before + least;
        grip.angleTo = angle + after - least;
        grip.value = endLift(shape, i - 1) / units::millimetre;
        grip.valueFrom = std::min(leastLift, grip.value);
        grip.valueTo = mostLift;
        grip.label = {LW_TEXT("%1, boundary %2"), trackLabel(design, end), i};
        grip.anglePath = itemPath(end, "segments", i - 1, "span_deg");
        if (const int mover = movingSegment(shape, i - 1); mover >= 0) {
            const motion::Segment& segment = shape.segments[static_cast<size_t>(mover)];
            if (segment.endLift) {
                grip.valuePath = itemPath(end, "segments", mover, "lift_mm");
                grip.valueTo = std::max(shape.stroke / units::millimetre, grip.value);
            } else if (segment.kind == motion::SegmentKind::rise) {
                grip.valuePath = trackPath(end) + "/stroke_mm";
            }
        }
        grip.movesValue = !grip.valuePath.empty();
        grips.push_back(grip);
    }
    return grips;
}

std::vector<LiftGrip> knotGrips(const design::Design& design, const motion::KnotShape& shape,
                                End end, LiftGrip::Curve curve) {
    const auto made = motion::LiftCurve::make(design.tracks[end]);
    if (!made)
        return {};
    const auto& knots = shape.knots;
    const double shift = made->at(knots.front().angle).y - knots.front().lift;
    std::vector<LiftGrip> grips;
    for (int i = 0; i < static_cast<int>(knots.size()); ++i) {
        const auto index = static_cast<size_t>(i);
        const motion::Knot& knot = knots[index];
        LiftGrip grip;
        grip.kind = LiftGrip::Kind::knot;
        grip.curve = curve;
        grip.end = end;
        grip.index = i;
        grip.angle = knot.angle / units::degree;
        grip.angleFrom = i == 0 ? 0.0 : knots[index - 1].angle / units::degree + closestKnots;
        grip.angleTo =
            (index + 1 == knots.size() ? made->period() : knots[index + 1].angle) / units::degree -
            closestKnots;
        grip.movesAngle = grip.angleFrom <= grip.angleTo;
        grip.valueTo = curve == LiftGrip::Curve::lift ? mostLift : steepest;
        grip.valueFrom = -grip.valueTo;
        grip.shift = shift / units::millimetre;
        grip.label = {LW_TEXT("%1, knot %2"), trackLabel(design, end), i + 1};
        grip.anglePath = itemPath(end, "knots", i, "angle_deg");
        grip.valuePath = itemPath(end, "knots", i, "lift_mm");
        const motion::Lift here = made->at(knot.angle);
        switch (curve) {
        case LiftGrip::Curve::lift:
            grip.value = knot.lift / units::millimetre;
            break;
        case LiftGrip::Curve::velocity:
            grip.value = here.y1 / slopeUnit;
            grip.valuePath = itemPath(end, "knots", i, "slope_mm_per_deg");
            break;
        case LiftGrip::Curve::acceleration:
            grip.value = here.y2 / curvatureUnit;
            break;
        }
        grips.push_back(grip);
    }
    return grips;
}

void moveBound(const motion::SegmentShape& shape, const LiftGrip& grip, double angle,
               Change& edit) {
    const auto index = static_cast<size_t>(grip.index);
    const double before = shape.segments[index - 1].span / units::degree;
    const double after = shape.segments[index].span / units::degree;
    const double first = tidy(before + angle - grip.angle);
    edit.fields.push_back({grip.anglePath, first});
    edit.fields.push_back(
        {itemPath(grip.end, "segments", grip.index, "span_deg"), tidy(before + after - first)});
}

/// The lift that gives a knot this acceleration [mm]: the spline is linear in its lifts.
double liftFor(const motion::Pattern& pattern, const LiftGrip& grip, double acceleration) {
    const auto& shape = std::get<motion::KnotShape>(pattern.shape);
    const auto index = static_cast<size_t>(grip.index);
    const double rate = motion::curvaturePerLift(shape, pattern.lobes, index);
    const double change = (acceleration - grip.value) * curvatureUnit / rate;
    return (shape.knots[index].lift + change) / units::millimetre;
}

} // namespace

double valueStep(LiftGrip::Curve curve, bool fine) {
    const double coarse = curve == LiftGrip::Curve::lift       ? 0.5
                          : curve == LiftGrip::Curve::velocity ? 0.01
                                                               : 0.001;
    return fine ? 0.1 * coarse : coarse;
}

double angleStep(bool fine) {
    return fine ? 0.05 : 0.5;
}

std::vector<LiftGrip> liftGrips(const design::Design& design, End end, LiftGrip::Curve curve) {
    if (end == End::exhaust && !design.tracks.exhaust)
        return {};
    const motion::Pattern& pattern = design.tracks[end];
    const auto* segments = std::get_if<motion::SegmentShape>(&pattern.shape);
    if (segments && curve == LiftGrip::Curve::lift)
        return boundGrips(design, *segments, end);
    if (const auto* knots = std::get_if<motion::KnotShape>(&pattern.shape))
        return knotGrips(design, *knots, end, curve);
    return {};
}

Change moveGrip(const design::Design& design, const LiftGrip& grip, double angle, double value) {
    Change edit;
    const TextId track = trackName(design, grip.end);
    if (grip.kind == LiftGrip::Kind::bound) {
        edit.text = {LW_TEXT("Move boundary %1 (%2)"), grip.index, track};
    } else if (grip.curve == LiftGrip::Curve::velocity) {
        edit.text = {LW_TEXT("Change slope at knot %1 (%2)"), grip.index + 1, track};
    } else {
        edit.text = {LW_TEXT("Move knot %1 (%2)"), grip.index + 1, track};
    }
    edit.mergeKey = grip.anglePath + grip.valuePath + std::to_string(static_cast<int>(grip.curve));
    const motion::Pattern& pattern = design.tracks[grip.end];
    const double kept = std::clamp(angle, grip.angleFrom, std::max(grip.angleFrom, grip.angleTo));
    if (grip.movesAngle && grip.kind == LiftGrip::Kind::bound) {
        moveBound(std::get<motion::SegmentShape>(pattern.shape), grip, kept, edit);
    } else if (grip.movesAngle && angle != grip.angle) {
        edit.fields.push_back({grip.anglePath, tidy(kept)});
    }
    if (!grip.movesValue)
        return edit;
    if (grip.curve == LiftGrip::Curve::lift) {
        edit.fields.push_back({grip.valuePath, tidy(value)});
    } else if (value != grip.value) {
        const bool isSlope = grip.curve == LiftGrip::Curve::velocity;
        const double asked =
            isSlope ? value : std::round(liftFor(pattern, grip, value) / liftGrain) * liftGrain;
        edit.fields.push_back({grip.valuePath, tidy(asked)});
    }
    return edit;
}

} // namespace lobewright::editing
