#include "core/editing/knot_edits.h"

#include "core/editing/design_edits.h"
#include "core/motion/lift_curve.h"
#include "core/units.h"

#include <algorithm>
#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::editing {

namespace {

constexpr double anglesPerDegree = 10.0; ///< of a knot put in by hand

motion::Pattern& patternOf(design::Design& design, End end) {
    return patternEnd(design, end) == End::exhaust ? *design.tracks.exhaust : design.tracks.inlet;
}

const std::vector<motion::Knot>* knotsOf(const design::Design& design, End end) {
    const auto* shape = std::get_if<motion::KnotShape>(&design.tracks[end].shape);
    return shape ? &shape->knots : nullptr;
}

std::vector<motion::Knot>& knotsOf(design::Design& design, End end) {
    return std::get<motion::KnotShape>(patternOf(design, end).shape).knots;
}

std::string listOf(const design::Design& design, End end) {
    return std::string("/tracks/") + name(patternEnd(design, end)) + "/knots";
}

/// To this many parts of a unit; divided, so that no dust stays.
double rounded(double value, double parts) {
    return std::round(value * parts) / parts;
}

double within(double angle, double period) {
    const double left = std::fmod(angle, period);
    return left < 0.0 ? left + period : left;
}

Message named(TextId text, const design::Design& design, End end, double angle) {
    return {text, withDecimals(angle, in::degrees, 1), trackName(design, end)};
}

} // namespace

End patternEnd(const design::Design& design, End end) {
    return design.tracks.exhaust ? end : End::inlet;
}

TextId trackLabel(const design::Design& design, End end) {
    if (design.mechanism.isOneSided())
        return LW_TEXT("Track");
    if (!design.tracks.exhaust)
        return LW_TEXT("Both tracks");
    return end == End::inlet ? LW_TEXT("Inlet track") : LW_TEXT("Exhaust track");
}

TextId trackName(const design::Design& design, End end) {
    if (design.mechanism.isOneSided())
        return LW_TEXT("track");
    if (!design.tracks.exhaust)
        return LW_TEXT("both tracks");
    return end == End::inlet ? LW_TEXT("inlet track") : LW_TEXT("exhaust track");
}

std::optional<Change> addKnot(const design::Design& design, End end, double angle) {
    const auto* knots = knotsOf(design, end);
    const auto curve = motion::LiftCurve::make(design.tracks[end]);
    if (!knots || !curve)
        return std::nullopt;
    const double period = curve->period() / units::degree;
    const double place = within(rounded(within(angle, period), anglesPerDegree), period);
    for (const motion::Knot& knot : *knots) {
        const double away = std::remainder(place - knot.angle / units::degree, period);
        if (std::abs(away) < closestKnots)
            return std::nullopt;
    }
    motion::Knot knot;
    knot.angle = place * units::degree;
    // The file's lifts count from anywhere, the curve's from its lowest place.
    const double ground = knots->front().lift - curve->at(knots->front().angle).y;
    knot.lift =
        rounded((curve->at(knot.angle).y + ground) / units::millimetre, 1e4) * units::millimetre;
    Change edit;
    edit.text = named(LW_TEXT("Add knot at %1 (%2)"), design, end, knot.angle);
    design::Design next = design;
    auto& target = knotsOf(next, end);
    const auto before = std::ranges::upper_bound(target, knot.angle, {}, &motion::Knot::angle);
    const int index = static_cast<int>(before - target.begin());
    target.insert(before, knot);
    next.knowledge = design::movedRows(design.knowledge, listOf(design, end),
                                       [&](int row) { return row < index ? row : row + 1; });
    edit.replacement = std::move(next);
    return edit;
}

std::optional<Change> removeKnot(const design::Design& design, End end, int index) {
    auto edit = rowEdit(design, listOf(design, end), index, RowChange::remove);
    if (edit) {
        edit->text = named(LW_TEXT("Remove knot at %1 (%2)"), design, end,
                           (*knotsOf(design, end))[static_cast<size_t>(index)].angle);
    }
    return edit;
}

std::optional<Change> freeSlope(const design::Design& design, End end, int index) {
    const auto* knots = knotsOf(design, end);
    if (!knots || index < 0 || index >= static_cast<int>(knots->size()) ||
        !(*knots)[static_cast<size_t>(index)].slope)
        return std::nullopt;
    Change edit;
    edit.text = named(LW_TEXT("Free the slope at %1 (%2)"), design, end,
                      (*knots)[static_cast<size_t>(index)].angle);
    design::Design next = design;
    knotsOf(next, end)[static_cast<size_t>(index)].slope.reset();
    edit.replacement = std::move(next);
    return edit;
}

int knotAt(const design::Design& design, End end, double angle) {
    const auto* knots = knotsOf(design, end);
    const double period = 360.0 / design.tracks[end].lobes;
    for (size_t i = 0; knots && i < knots->size(); ++i) {
        if (std::abs(std::remainder(angle - (*knots)[i].angle / units::degree, period)) <
            closestKnots)
            return static_cast<int>(i);
    }
    return -1;
}

motion::KnotShape readable(motion::KnotShape shape) {
    for (motion::Knot& knot : shape.knots) {
        knot.angle = rounded(knot.angle / units::degree, 1e6) * units::degree;
        knot.lift = rounded(knot.lift / units::millimetre, 1e5) * units::millimetre;
    }
    return shape;
}

Change knotsEdit(const design::Design& design, End end, const motion::KnotFit& fit) {
    Change edit;
    edit.text = {LW_TEXT("Turn into %1 knots, error %2 (%3)"), fit.shape.knots.size(),
                 Amount(fit.largestError, in::um, 2), trackName(design, end)};
    design::Design next = design;
    patternOf(next, end).shape = readable(fit.shape);
    edit.replacement = std::move(next);
    return edit;
}

double knotShift(const design::Design& design, End end) {
    const auto* knots = knotsOf(design, end);
    if (!knots)
        return 0.0;
    const auto curve = motion::LiftCurve::make(design.tracks[end]);
    return curve ? curve->at(knots->front().angle).y - knots->front().lift : 0.0;
}

std::optional<Change> ownExhaustTrack(const design::Design& design) {
    if (design.tracks.exhaust)
        return std::nullopt;
    Change edit;
    edit.text = LW_TEXT("Give the exhaust track a curve of its own");
    edit.replacement = design;
    edit.replacement->tracks.exhaust = design.tracks.inlet;
    return edit;
}

} // namespace lobewright::editing
