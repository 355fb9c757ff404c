#include "core/design/catalogue_units.h"

#include <variant>

namespace lobewright::design {

namespace {

using motion::Law;
using motion::SegmentKind;

constexpr Choice<SegmentKind> segmentKinds[] = {
    {SegmentKind::rise, {"rise", "Rise"}},
    {SegmentKind::dwell, {"dwell", "Dwell"}},
    {SegmentKind::fall, {"return", "Return"}},
};

constexpr Choice<Law> laws[] = {
    {Law::harmonic, {"harmonic", "Harmonic"}},
    {Law::cycloidal, {"cycloidal", "Cycloidal"}},
    {Law::parabolic, {"parabolic", "Parabolic"}},
    {Law::modifiedTrapezoid, {"modified-trapezoid", "Modified trapezoid"}},
    {Law::modifiedSine, {"modified-sine", "Modified sine"}},
    {Law::polynomial345, {"polynomial-345", "Polynomial 3-4-5"}},
    {Law::polynomial4567, {"polynomial-4567", "Polynomial 4-5-6-7"}},
};

void describeSegment(Visitor& v, motion::Segment& segment) {
    v.choice<SegmentKind>({.name = "kind",
                           .label = "Kind",
                           .help = "A rise moves the piston inward, a return outward; a dwell "
                                   "holds it."},
                          segmentKinds, segment.kind);
    v.number({.name = "span_deg",
              .label = "Span",
              .unit = in::degrees,
              .range = between(0.01, 360.0),
              .help = "Shaft degrees of this segment. The spans of a pattern add up to 360° "
                      "divided by the lobes."},
             segment.span);
    v.branch({"kind", {"rise", "return"}}, segment.kind != SegmentKind::dwell, [&] {
        v.choice<Law>({.name = "law",
                       .label = "Motion law",
                       .help = "How the lift runs over the span (laws of VDI 2143 part 1 and of "
                               "Norton, Cam Design and Manufacturing Handbook)."},
                      laws, segment.law);
        v.number({.name = "lift_mm",
                  .label = "Lift at the end",
                  .unit = in::mm,
                  .range = between(0.0, 2000.0),
                  .presence = Presence::optional,
                  .help = "Empty: a rise ends at the stroke, a return at 0.",
                  .writtenWhenNull = false},
                 segment.endLift);
    });
}

void describeKnot(Visitor& v, motion::Knot& knot) {
    v.number({.name = "angle_deg",
              .label = "Angle",
              .unit = in::degrees,
              .range = {0.0, 360.0, false, true},
              .help = "Place in the pattern, in shaft degrees; knots stand in ascending order."},
             knot.angle);
    v.number({.name = "lift_mm",
              .label = "Lift",
              .unit = in::mm,
              .range = between(-2000.0, 2000.0),
              .help = "The lift curve is the spline through the knots less its lowest value."},
             knot.lift);
    v.number({.name = "slope_mm_per_deg",
              .label = "Slope",
              .unit = in::mmPerDegree,
              .range = between(-1000.0, 1000.0),
              .presence = Presence::optional,
              .help = "Prescribed slope; empty lets the spline choose and keeps the fourth "
                      "derivative continuous.",
              .writtenWhenNull = false},
             knot.slope);
}

void describeHarmonic(Visitor& v, motion::Harmonic& harmonic) {
    v.integer({.name = "order",
               .label = "Order",
               .range = between(1.0, 200.0),
               .help = "k: waves per pattern; the order per turn of the shaft is k times the "
                       "lobes."},
              harmonic.order);
    v.number({.name = "cos_mm",
              .label = "Cosine part",
              .unit = in::mm,
              .range = between(-2000.0, 2000.0),
              .help = "Amplitude of cos(k·φ·lobes)."},
             harmonic.cosine);
    v.number({.name = "sin_mm",
              .label = "Sine part",
              .unit = in::mm,
              .range = between(-2000.0, 2000.0),
              .help = "Amplitude of sin(k·φ·lobes)."},
             harmonic.sine);
}

void describeSegments(Visitor& v, motion::SegmentShape& shape) {
    v.number({.name = "stroke_mm",
              .label = "Stroke",
              .unit = in::mm,
              .range = between(0.1, 2000.0),
              .help = "S: travel of the piston from outer to inner dead centre."},
             shape.stroke);
    v.list({.name = "segments",
            .label = "Segments",
            .range = between(2.0, 200.0),
            .help = "Pieces of the pattern in the order of rotation, from outer dead centre on."},
           "Segment", shape.segments,
           [&](motion::Segment& segment) { describeSegment(v, segment); });
}

/// The shape of the pattern if it is this one, else a stand-in that nobody keeps.
template <class Shape>
Shape& shapeOr(motion::Pattern& pattern, Shape& standIn) {
    auto* shape = std::get_if<Shape>(&pattern.shape);
    return shape ? *shape : standIn;
}

constexpr std::string_view shapeKeys[] = {"segments", "knots", "harmonics"};

void chooseShape(Visitor& v, motion::Pattern& pattern) {
    const std::size_t now = pattern.shape.index();
    const std::size_t chosen = v.oneOf(shapeKeys, now);
    if (chosen == now) {
        return;
    }
    switch (chosen) {
    case 1:
        pattern.shape = motion::KnotShape{};
        break;
    case 2:
        pattern.shape = motion::HarmonicShape{};
        break;
    default:
        pattern.shape = motion::SegmentShape{};
        break;
    }
}

void describePattern(Visitor& v, motion::Pattern& pattern) {
    v.integer({.name = "lobes",
               .label = "Lobes",
               .range = between(1.0, 24.0),
               .help = "How often the pattern repeats in one turn. A pattern of one lobe may hold "
                       "several unequal rises and returns."},
              pattern.lobes);
    chooseShape(v, pattern);
    motion::SegmentShape noSegments;
    motion::KnotShape noKnots;
    motion::HarmonicShape noHarmonics;
    auto& segments = shapeOr(pattern, noSegments);
    auto& knots = shapeOr(pattern, noKnots);
    auto& harmonics = shapeOr(pattern, noHarmonics);
    v.branch({shapeKeys[0], {}}, &segments != &noSegments, [&] { describeSegments(v, segments); });
    v.branch({shapeKeys[1], {}}, &knots != &noKnots, [&] {
        v.list({.name = shapeKeys[1],
                .label = "Knots",
                .range = between(3.0, 500.0),
                .help = "Points of a free-form lobe, joined by a periodic spline of fifth degree."},
               "Knot", knots.knots, [&](motion::Knot& knot) { describeKnot(v, knot); });
    });
    v.branch({shapeKeys[2], {}}, &harmonics != &noHarmonics, [&] {
        v.list({.name = shapeKeys[2],
                .label = "Harmonics",
                .range = between(1.0, 100.0),
                .help = "Lift as a sum of cosine and sine waves over the pattern."},
               "Harmonic", harmonics.harmonics,
               [&](motion::Harmonic& harmonic) { describeHarmonic(v, harmonic); });
    });
}

} // namespace

void describeTracks(Visitor& v, Tracks& tracks) {
    v.section({.name = "inlet",
               .label = "Inlet track",
               .help = "The track that moves the inlet pistons."},
              [&] { describePattern(v, tracks.inlet); });
    const Key exhaust{.name = "exhaust",
                      .label = "Exhaust track",
                      .help = "The track that moves the exhaust pistons: \"same\" as the inlet "
                              "track, or a pattern of its own."};
    const PresenceWords words{{Word{"same", "Same as the inlet track"}, Word{"own", "Its own"}},
                              true};
    const auto fresh = [&] { return tracks.inlet; };
    v.optional(exhaust, words, tracks.exhaust, fresh, [&](motion::Pattern& pattern) {
        v.section(exhaust, [&] { describePattern(v, pattern); });
    });
}

void describeTrackBlank(Visitor& v, track::Blank& blank) {
    v.number({.name = "bore_diameter_mm",
              .label = "Bore diameter",
              .unit = in::mm,
              .range = between(1.0, 20000.0),
              .help =
                  "Bore of the ring that the track is cut into. Empty: an open track is a tenth "
                  "of the roller width wider than the roller on the inside; under the groove "
                  "of a closed track stands half a roller width (own estimate)."},
             blank.boreDiameter);
    v.number({.name = "outside_diameter_mm",
              .label = "Outside diameter",
              .unit = in::mm,
              .range = between(1.0, 20000.0),
              .help =
                  "Outside of the ring that the track is cut into. Empty: a tenth of the roller "
                  "width beyond the outermost contact (own estimate)."},
             blank.outsideDiameter);
    v.number({.name = "groove_diameter_mm",
              .label = "Groove diameter",
              .unit = in::mm,
              .range = between(1.0, 20000.0),
              .help = "Floor of the groove between the flanks of a closed track, which opens "
                      "outward. Empty: a tenth of the roller width inside the roller (own "
                      "estimate)."},
             blank.grooveDiameter);
    v.number({.name = "back_thickness_mm",
              .label = "Back thickness",
              .unit = in::mm,
              .range = between(0.1, 2000.0),
              .help = "Material behind the push flank at its lowest place. Empty: the roller width "
                      "(own estimate)."},
             blank.backThickness);
    v.number({.name = "front_thickness_mm",
              .label = "Front thickness",
              .unit = in::mm,
              .range = between(0.1, 2000.0),
              .help = "Material before the pull flank of a closed track at its highest place. "
                      "Empty: the roller width (own estimate)."},
             blank.frontThickness);
}

} // namespace lobewright::design
