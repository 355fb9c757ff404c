#include "core/editing/design_edits.h"
#include "core/editing/segment_lift.h"
#include "core/editing/tidy.h"
#include "core/enum_table.h"
#include "core/motion/lift_curve.h"
#include "core/units.h"

#include <algorithm>
#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::editing {

namespace {

using motion::Segment;
using motion::SegmentKind;

// The part of a segment that a new dwell takes from its end.
constexpr double dwellShare = 0.1;

/// Gives a part of one segment's span to another, both in readable degrees.
void shareSpan(Segment& giver, Segment& taker, double share) {
    const double together = giver.span / units::degree;
    const double given = tidy(share * together);
    taker.span = given * units::degree;
    giver.span = tidy(together - given) * units::degree;
}

template <class Row>
bool hasRow(const std::vector<Row>& rows, int index) {
    return index >= 0 && static_cast<std::size_t>(index) < rows.size();
}

bool split(motion::SegmentShape& shape, int index) {
    auto& segments = shape.segments;
    Segment& whole = segments[static_cast<size_t>(index)];
    Segment second = whole;
    shareSpan(whole, second, 0.5);
    if (whole.kind != SegmentKind::dwell)
        whole.endLift = 0.5 * (endLift(shape, index - 1) + endLift(shape, index));
    segments.insert(segments.begin() + index + 1, second);
    return true;
}

bool addDwell(motion::SegmentShape& shape, int index) {
    auto& segments = shape.segments;
    Segment dwell;
    shareSpan(segments[static_cast<size_t>(index)], dwell, dwellShare);
    segments.insert(segments.begin() + index + 1, dwell);
    return true;
}

bool removeSegment(motion::SegmentShape& shape, int index) {
    auto& segments = shape.segments;
    const int count = static_cast<int>(segments.size());
    const Segment gone = segments[static_cast<size_t>(index)];
    int heir = index > 0 ? index - 1 : index + 1;
    if (gone.kind != SegmentKind::dwell) {
        // Only its like can take over its part of the lift.
        const auto takes = [&](int i) {
            return i >= 0 && i < count && segments[static_cast<size_t>(i)].kind == gone.kind;
        };
        if (takes(index - 1)) {
            heir = index - 1;
        } else if (takes(index + 1)) {
            heir = index + 1;
        } else {
            return false;
        }
        if (heir == index - 1)
            segments[static_cast<size_t>(heir)].endLift = gone.endLift;
    }
    if (count <= 2)
        return false;
    Segment& grown = segments[static_cast<size_t>(heir)];
    grown.span = tidy((grown.span + gone.span) / units::degree) * units::degree;
    segments.erase(segments.begin() + index);
    return true;
}

bool changeSegments(motion::SegmentShape& shape, int index, RowChange change) {
    if (!hasRow(shape.segments, index))
        return false;
    switch (change) {
    case RowChange::split:
        return split(shape, index);
    case RowChange::addDwell:
        return addDwell(shape, index);
    case RowChange::remove:
        return removeSegment(shape, index);
    default:
        return false;
    }
}

bool changeKnots(motion::Pattern& pattern, int index, RowChange change) {
    auto& knots = std::get<motion::KnotShape>(pattern.shape).knots;
    if (!hasRow(knots, index))
        return false;
    const auto place = knots.begin() + index;
    if (change == RowChange::remove) {
        if (knots.size() <= 3)
            return false;
        knots.erase(place);
        return true;
    }
    if (change != RowChange::addBelow)
        return false;
    const double period = units::turn / pattern.lobes;
    const double next = place + 1 == knots.end() ? period : (place + 1)->angle;
    motion::Knot knot;
    knot.angle = tidy(0.5 * (place->angle + next) / units::degree) * units::degree;
    if (const auto curve = motion::LiftCurve::make(pattern)) {
        // On the curve as it is: the new knot does not change the shape much.
        const double ground = place->lift - curve->at(place->angle).y;
        knot.lift =
            tidy((curve->at(knot.angle).y + ground) / units::millimetre) * units::millimetre;
    }
    knots.insert(place + 1, knot);
    return true;
}

template <class Row>
bool changeRows(std::vector<Row>& rows, int index, RowChange change, size_t least) {
    if (!hasRow(rows, index))
        return false;
    const auto place = rows.begin() + index;
    if (change == RowChange::addBelow) {
        rows.insert(place + 1, Row(*place));
        return true;
    }
    if (change == RowChange::remove && rows.size() > least) {
        rows.erase(place);
        return true;
    }
    return false;
}

template <class Row>
bool moveRow(std::vector<Row>& rows, int index, RowChange change) {
    const int other = change == RowChange::moveUp ? index - 1 : index + 1;
    if (!hasRow(rows, index) || !hasRow(rows, other))
        return false;
    std::swap(rows[static_cast<size_t>(index)], rows[static_cast<size_t>(other)]);
    return true;
}

bool isMove(RowChange change) {
    return change == RowChange::moveUp || change == RowChange::moveDown;
}

bool changeTrack(motion::Pattern& pattern, const std::string& list, int index, RowChange change) {
    if (auto* shape = std::get_if<motion::SegmentShape>(&pattern.shape);
        shape && list == "segments") {
        return isMove(change) ? moveRow(shape->segments, index, change)
                              : changeSegments(*shape, index, change);
    }
    if (std::holds_alternative<motion::KnotShape>(pattern.shape) && list == "knots")
        return changeKnots(pattern, index, change);
    if (auto* shape = std::get_if<motion::HarmonicShape>(&pattern.shape);
        shape && list == "harmonics") {
        if (!changeRows(shape->harmonics, index, change, 1))
            return false;
        if (change == RowChange::addBelow) { // a wave of its own, silent until it is given a height
            shape->harmonics[static_cast<size_t>(index) + 1] = {
                std::ranges::max(shape->harmonics, {}, &motion::Harmonic::order).order + 1, 0.0,
                0.0};
        }
        return true;
    }
    return false;
}

bool changePorts(std::vector<ports::Row>& rows, int index, RowChange change) {
    if (isMove(change))
        return moveRow(rows, index, change);
    if (!changeRows(rows, index, change, 1))
        return false;
    if (change == RowChange::addBelow) {
        // Below the row it was copied from, smaller, where the bore is still whole.
        ports::Row& fresh = rows[static_cast<size_t>(index) + 1];
        const double spare = fresh.edge - fresh.height;
        if (spare <= 0.0) {
            fresh.height *= 0.5;
            fresh.edge = fresh.height;
            fresh.width *= 0.5;
            fresh.cornerRadius = std::min(fresh.cornerRadius, 0.25 * fresh.height);
            fresh.cornerRadius = std::min(fresh.cornerRadius, 0.25 * fresh.width);
            rows[static_cast<size_t>(index)].width *= 0.5;
            auto& old = rows[static_cast<size_t>(index)];
            old.cornerRadius = std::min(old.cornerRadius, 0.5 * old.width);
        } else {
            fresh.edge = spare;
            fresh.height = std::min(fresh.height, spare);
            fresh.cornerRadius = std::min(fresh.cornerRadius, 0.5 * fresh.height);
        }
    }
    return true;
}

bool changeRingDistances(std::vector<double>& distances, int index, RowChange change) {
    if (!changeRows(distances, index, change, 1))
        return false;
    if (change == RowChange::addBelow) {
        auto& fresh = distances[static_cast<size_t>(index) + 1];
        const bool last = static_cast<size_t>(index) + 2 == distances.size();
        fresh = last ? fresh + 3e-3 : 0.5 * (fresh + distances[static_cast<size_t>(index) + 2]);
    }
    return true;
}

bool applyChange(design::Design& design, const std::string& path, int index, RowChange change) {
    for (const End end : bothEnds) {
        const std::string track = std::string("/tracks/") + name(end) + "/";
        if (path.starts_with(track)) {
            if (end == End::exhaust && !design.tracks.exhaust)
                return false;
            auto& pattern = end == End::exhaust ? *design.tracks.exhaust : design.tracks.inlet;
            return changeTrack(pattern, path.substr(track.size()), index, change);
        }
        if (path == std::string("/ports/") + name(end))
            return changePorts(design.ports[end], index, change);
    }
    if (path == "/friction/rings") {
        return isMove(change) ? moveRow(design.friction.rings, index, change)
                              : changeRows(design.friction.rings, index, change, 1);
    }
    if (path == "/mechanism/piston/ring_distances_mm" && design.mechanism.piston && !isMove(change))
        return changeRingDistances(design.mechanism.piston->ringDistances, index, change);
    return false;
}

TextId words(RowChange change) {
    return entryOf<RowChange::moveDown>({LW_TEXT("Split segment %1 into two with a stop between"),
                                         LW_TEXT("Add dwell after segment %1"),
                                         LW_TEXT("Add row after %1"), LW_TEXT("Remove row %1"),
                                         LW_TEXT("Move row %1 up"), LW_TEXT("Move row %1 down")},
                                        change);
}

bool isDwell(const design::Design& design, const std::string& listPath, int index) {
    const End end = listPath.starts_with("/tracks/exhaust") ? End::exhaust : End::inlet;
    const auto* shape = std::get_if<motion::SegmentShape>(&design.tracks[end].shape);
    return shape && shape->segments[static_cast<size_t>(index)].kind == SegmentKind::dwell;
}

/// Where a row stands after the change; none: it is gone.
std::optional<int> placeAfter(RowChange change, int index, int row) {
    switch (change) {
    case RowChange::remove:
        if (row == index)
            return std::nullopt;
        return row > index ? row - 1 : row;
    case RowChange::moveUp:
        return row == index ? row - 1 : row == index - 1 ? row + 1 : row;
    case RowChange::moveDown:
        return row == index ? row + 1 : row == index + 1 ? row - 1 : row;
    case RowChange::split:
    case RowChange::addDwell:
    case RowChange::addBelow:
        break;
    }
    return row > index ? row + 1 : row;
}

} // namespace

bool isRowList(const std::string& path) {
    return path.ends_with("/segments") || path.ends_with("/knots") ||
           path.ends_with("/harmonics") || path == "/ports/inlet" || path == "/ports/exhaust" ||
           path == "/friction/rings" || path == "/mechanism/piston/ring_distances_mm";
}

std::optional<Change> rowEdit(const design::Design& design, const std::string& listPath, int index,
                              RowChange change) {
    design::Design next = design;
    if (!applyChange(next, listPath, index, change))
        return std::nullopt;
    Change edit;
    edit.text = {words(change), index + 1};
    if (change == RowChange::split && isDwell(design, listPath, index))
        edit.text = {LW_TEXT("Split dwell %1"), index + 1};
    next.knowledge = design::movedRows(design.knowledge, listPath,
                                       [&](int row) { return placeAfter(change, index, row); });
    edit.replacement = std::move(next);
    return edit;
}

} // namespace lobewright::editing
