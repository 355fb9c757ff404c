#include "core/editing/design_edits.h"
#include "core/editing/knot_edits.h"
#include "core/editing/tidy.h"
#include "core/motion/knot_fit.h"
#include "core/units.h"

#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::editing {

namespace {

constexpr int handyKnots = 24; // more are hard to pull by hand; own estimate
constexpr int orderCount = 12; // enough to follow a rise, a return and two dwells
constexpr int fitSamples = 720;

/// To a decimal of millimetres, without dust in the file.
double roundedLength(double metres, double perMillimetre) {
    return std::round(metres * 1e3 * perMillimetre) / perMillimetre / 1e3;
}

/// Cosine and sine parts by the discrete Fourier sum over one pattern.
motion::HarmonicShape asHarmonics(const motion::LiftCurve& curve) {
    const Samples turn = Samples::LinSpaced(fitSamples + 1, 0.0, units::turn).head(fitSamples);
    const Samples lift = curve.sample(turn / curve.lobes()).y;
    motion::HarmonicShape shape;
    for (int order = 1; order <= orderCount; ++order) {
        const double cosine = 2.0 * (lift * (order * turn).cos()).mean();
        const double sine = 2.0 * (lift * (order * turn).sin()).mean();
        shape.harmonics.push_back({order, roundedLength(cosine, 1e4), roundedLength(sine, 1e4)});
    }
    return shape;
}

/// A plain lobe of the same stroke: the other descriptions have no segments to read off.
motion::SegmentShape asSegments(const motion::LiftCurve& curve) {
    const double degrees = 360.0 / curve.lobes();
    const auto part = [&](motion::SegmentKind kind, double span) {
        motion::Segment segment;
        segment.kind = kind;
        segment.span = span * units::degree;
        segment.law = motion::Law::modifiedSine;
        return segment;
    };
    const double move = tidy(0.45 * degrees), rest = tidy(0.05 * degrees);
    using Kind = motion::SegmentKind;
    return {roundedLength(curve.stroke(), 1e2),
            {part(Kind::rise, move), part(Kind::dwell, rest), part(Kind::fall, move),
             part(Kind::dwell, tidy(degrees - 2.0 * move - rest))}};
}

} // namespace

TrackShape shapeOf(const motion::Pattern& pattern) {
    return static_cast<TrackShape>(pattern.shape.index());
}

std::optional<Change> shapeEdit(const design::Design& design, End end, TrackShape shape) {
    const auto curve = motion::LiftCurve::make(design.tracks[end]);
    if (!curve || shapeOf(design.tracks[end]) == shape)
        return std::nullopt;
    Change edit;
    design::Design next = design;
    auto& pattern =
        end == End::exhaust && next.tracks.exhaust ? *next.tracks.exhaust : next.tracks.inlet;
    switch (shape) {
    case TrackShape::segments:
        pattern.shape = asSegments(*curve);
        edit.text = LW_TEXT("Describe the track by segments");
        break;
    case TrackShape::knots:
        return knotsEdit(design, end, motion::fitKnots(*curve, {10e-6, handyKnots}).value());
    case TrackShape::harmonics:
        pattern.shape = asHarmonics(*curve);
        edit.text = LW_TEXT("Describe the track by harmonics");
        break;
    }
    edit.replacement = std::move(next);
    return edit;
}

} // namespace lobewright::editing
