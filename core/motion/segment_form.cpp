#include "core/motion/lift_form.h"
#include "core/motion/motion_law.h"
#include "core/units.h"

#include <fmt/format.h>

#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::motion {
namespace {

/// Shorter segments are indistinguishable from a jump [own estimate].
constexpr double shortestSpan = 1e-6 * units::degree;
constexpr double spanSumTolerance = 1e-9; // rad

std::string segmentPlace(std::size_t segment, const char* key) {
    return fmt::format("/segments/{}/{}", segment, key);
}

double endLift(const Segment& segment, double start, double stroke) {
    switch (segment.kind) {
    case SegmentKind::rise:
        return segment.endLift.value_or(stroke);
    case SegmentKind::fall:
        return segment.endLift.value_or(0.0);
    case SegmentKind::dwell:
        break;
    }
    return segment.endLift.value_or(start);
}

void checkSpans(const SegmentShape& shape, double period, Problems& problems) {
    double sum = 0.0;
    bool summable = true;
    for (std::size_t i = 0; i < shape.segments.size(); ++i) {
        const double span = shape.segments[i].span;
        if (!(span > 0.0) || !std::isfinite(span)) {
            problems.push_back(
                {segmentPlace(i, "span_deg"),
                 Message(LW_TEXT("span is %1, must be positive"), Amount(span, in::degrees, 9))});
            summable = false;
        } else if (span < shortestSpan) {
            problems.push_back(
                {segmentPlace(i, "span_deg"),
                 Message(LW_TEXT("span is %1, must be at least %2"), Amount(span, in::degrees, 9),
                         Amount(shortestSpan, in::degrees, 9))});
            summable = false;
        }
        sum += span;
    }
    if (summable && std::abs(sum - period) > spanSumTolerance) {
        problems.push_back(
            {"/segments", Message(LW_TEXT("the spans add up to %1; they must add up to %2 (360° "
                                          "divided by the number of lobes)"),
                                  Amount(sum, in::degrees, 10), Amount(period, in::degrees, 10))});
    }
}

void checkDirection(const Segment& segment, std::size_t i, double start, double end,
                    Problems& problems) {
    const char* key = segment.endLift ? "lift_mm" : "kind";
    const auto breaks = [&](TextId what, TextId rule) {
        problems.push_back({segmentPlace(i, key),
                            Message(LW_TEXT("%1 goes from %2 to %3, %4"), what,
                                    Amount(start, in::mm, 9), Amount(end, in::mm, 9), rule)});
    };
    if (segment.kind == SegmentKind::rise && !(end > start))
        breaks(LW_TEXT("rise"), LW_TEXT("must end higher than it starts"));
    if (segment.kind == SegmentKind::fall && !(end < start))
        breaks(LW_TEXT("return"), LW_TEXT("must end lower than it starts"));
    if (segment.kind == SegmentKind::dwell && end != start)
        breaks(LW_TEXT("dwell"), LW_TEXT("must keep its lift"));
}

void checkLifts(const SegmentShape& shape, Problems& problems) {
    double lift = 0.0, highest = 0.0;
    for (std::size_t i = 0; i < shape.segments.size(); ++i) {
        const double end = endLift(shape.segments[i], lift, shape.stroke);
        if (!(end >= 0.0 && end <= shape.stroke)) {
            problems.push_back(
                {segmentPlace(i, "lift_mm"),
                 Message(LW_TEXT("end lift is %1, must be within 0 … %2 (the stroke)"),
                         Amount(end, in::mm, 9), Amount(shape.stroke, in::mm, 9))});
            lift = shape.segments[i].kind == SegmentKind::rise ? shape.stroke : 0.0;
            continue;
        }
        checkDirection(shape.segments[i], i, lift, end, problems);
        lift = end;
        highest = std::max(highest, end);
    }
    if (!problems.empty())
        return;
    if (highest == 0.0) {
        problems.push_back(
            {"/segments", LW_TEXT("pattern has no rise, needs at least one rise and one return")});
    } else if (highest != shape.stroke) {
        problems.push_back(
            {"/stroke_mm",
             Message(LW_TEXT("highest lift is %1, the stroke is %2, one rise must reach it"),
                     Amount(highest, in::mm, 9), Amount(shape.stroke, in::mm, 9))});
    }
    if (lift != 0.0) {
        problems.push_back(
            {"/segments",
             Message(LW_TEXT("pattern ends at lift %1, must end at 0 mm, where it starts"),
                     Amount(lift, in::mm, 9))});
    }
}

Problems check(const SegmentShape& shape, double period) {
    Problems problems;
    if (shape.segments.empty()) {
        problems.push_back(
            {"/segments", LW_TEXT("there are 0 segments, need at least one rise and one "
                                  "return")});
    }
    checkSpans(shape, period, problems);
    if (!(shape.stroke >= smallestStroke) || !std::isfinite(shape.stroke)) {
        problems.push_back(
            {"/stroke_mm",
             Message(LW_TEXT("stroke is %1, must be positive, at least %2"),
                     Amount(shape.stroke, in::mm, 9), Amount(smallestStroke, in::mm, 3))});
        return problems;
    }
    Problems lifts;
    checkLifts(shape, lifts);
    problems.insert(problems.end(), lifts.begin(), lifts.end());
    return problems;
}

/// One segment with its bounds on the period [rad] and its lifts [m].
struct Placed {
    const Segment* segment;
    int index;
    double begin, end;
    double from, to;
};

std::vector<Placed> placeSegments(const SegmentShape& shape, double period) {
    double sum = 0.0;
    for (const Segment& segment : shape.segments)
        sum += segment.span;
    std::vector<Placed> placed;
    double passed = 0.0, lift = 0.0;
    for (const Segment& segment : shape.segments) {
        const double begin = passed / sum * period;
        passed += segment.span;
        const bool last = placed.size() + 1 == shape.segments.size();
        const double to = endLift(segment, lift, shape.stroke);
        placed.push_back({&segment, static_cast<int>(placed.size()), begin,
                          last ? period : passed / sum * period, lift, to});
        lift = to;
    }
    return placed;
}

/// The law stretched over its segment; its second half counted backwards from the end.
void addLaw(const Placed& at, LiftForm& form) {
    const std::vector<Piece>& half = rowOf(at.segment->law).firstHalf;
    const double span = at.end - at.begin;
    for (const Piece& unit : half) {
        Piece piece = unit;
        piece.begin = piece.origin = at.begin + unit.begin * span;
        piece.rate = 1.0 / span;
        piece.base = at.from;
        piece.scale = at.to - at.from;
        form.pieces.push_back(piece);
    }
    for (std::size_t i = half.size(); i-- > 0;) {
        Piece piece = half[i];
        const double unitEnd = i + 1 < half.size() ? half[i + 1].begin : 0.5;
        piece.begin = at.end - unitEnd * span;
        piece.origin = at.end - half[i].begin * span;
        piece.rate = -1.0 / span;
        piece.base = at.to;
        piece.scale = at.from - at.to;
        form.pieces.push_back(piece);
    }
    for (double x : innerJunctions(at.segment->law)) {
        form.junctions.push_back(
            {x < 0.5 ? at.begin + x * span : at.end - (1.0 - x) * span, {}, {}, at.index, true});
    }
}

void addDwell(const Placed& at, LiftForm& form) {
    Piece piece;
    piece.begin = piece.origin = at.begin;
    piece.base = at.from;
    form.pieces.push_back(piece);
    if (!form.plateaus.empty() && form.plateaus.back().end == at.begin) {
        form.plateaus.back().end = at.end;
    } else {
        form.plateaus.push_back({at.begin, at.end, at.from});
    }
}

/// Joins a plateau that runs over the end of the period.
void joinWrappedPlateau(LiftForm& form) {
    if (form.plateaus.size() < 2)
        return;
    const Plateau first = form.plateaus.front();
    if (first.begin != 0.0 || form.plateaus.back().end != form.period)
        return;
    form.plateaus.back().end += first.end;
    form.plateaus.erase(form.plateaus.begin());
}

/// Where a rise is followed by a return or the other way round, dwells between included; rises in
/// a row, dwells between or not, are one.
std::vector<TurningPoint> findTurns(const std::vector<Placed>& placed, double period) {
    std::vector<Placed> moves;
    for (const Placed& each : placed) {
        if (each.segment->kind != SegmentKind::dwell)
            moves.push_back(each);
    }
    std::vector<TurningPoint> turns;
    for (std::size_t i = 0; i < moves.size(); ++i) {
        const Placed& next = moves[(i + 1) % moves.size()];
        if (moves[i].segment->kind == next.segment->kind)
            continue;
        const double end = next.begin + (i + 1 == moves.size() ? period : 0.0);
        turns.push_back(
            {moves[i].end, end, moves[i].to, moves[i].segment->kind == SegmentKind::rise});
    }
    return turns;
}

} // namespace

Result<LiftForm> makeForm(const SegmentShape& shape, double period) {
    if (Problems problems = check(shape, period); !problems.empty())
        return problems;
    const std::vector<Placed> placed = placeSegments(shape, period);
    LiftForm form;
    form.period = period;
    form.stroke = shape.stroke;
    form.turningPoints = findTurns(placed, period);
    settleTurningPoints(form);
    for (const Placed& each : placed) {
        form.junctions.push_back({each.begin, {}, {}, each.index, false});
        if (each.segment->kind == SegmentKind::dwell) {
            addDwell(each, form);
        } else {
            addLaw(each, form);
        }
    }
    joinWrappedPlateau(form);
    form.index();
    evaluateJunctions(form);
    return form;
}

} // namespace lobewright::motion
