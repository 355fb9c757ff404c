#include "core/design/catalogue.h"
#include "core/motion/motion_law.h"

#include <variant>
#include <vector>

LW_TEXTS_OF(Core)

namespace lobewright::design {

namespace {

using motion::Law;
using motion::SegmentKind;

constexpr Choice<SegmentKind> segmentKinds[] = {
    {SegmentKind::rise, {"rise", LW_TEXT("Rise")}},
    {SegmentKind::dwell, {"dwell", LW_TEXT("Dwell")}},
    {SegmentKind::fall, {"return", LW_TEXT("Return")}},
};

const std::vector<Choice<Law>>& laws() {
    static const auto all = [] {
        std::vector<Choice<Law>> choices;
        for (const motion::LawRow& row : motion::laws()) {
            choices.push_back({row.law, {row.key, row.label}});
        }
        return choices;
    }();
    return all;
}

void describeSegment(Visitor& v, motion::Segment& segment) {
    v.choice("kind", LW_TEXT("Type"), segmentKinds, segment.kind,
             LW_TEXT("A rise moves the piston inward, a return outward; a dwell "
                     "holds it."));
    v.number("span_deg", LW_TEXT("Span"), in::degrees, between(0.01, 360.0), segment.span,
             LW_TEXT("Shaft degrees of this segment. The spans of a pattern add up to 360° "
                     "divided by the lobes."));
    v.branch({"kind", {"rise", "return"}}, segment.kind != SegmentKind::dwell, [&] {
        v.choice("law", LW_TEXT("Motion law"), laws(), segment.law,
                 LW_TEXT("How the lift runs over the span (laws of VDI 2143 part 1 and of "
                         "Norton, Cam Design and Manufacturing Handbook)."));
        v.number({.name = "lift_mm",
                  .label = LW_TEXT("Lift at the end"),
                  .unit = in::mm,
                  .range = between(0.0, 2000.0),
                  .presence = Presence::optional,
                  .help = LW_TEXT("Empty: a rise ends at the stroke, a return at 0."),
                  .writtenWhenNull = false},
                 segment.endLift);
    });
}

void describeKnot(Visitor& v, motion::Knot& knot) {
    v.number("angle_deg", LW_TEXT("Angle"), in::degrees, {0.0, 360.0, false, true}, knot.angle,
             LW_TEXT("Position in the pattern, in shaft degrees; knots are in ascending order."));
    v.number("lift_mm", LW_TEXT("Lift"), in::mm, between(-2000.0, 2000.0), knot.lift,
             LW_TEXT("The lift curve is the spline through the knots less its lowest value."));
    v.number({.name = "slope_mm_per_deg",
              .label = LW_TEXT("Slope"),
              .unit = in::mmPerDegree,
              .range = between(-1000.0, 1000.0),
              .presence = Presence::optional,
              .help = LW_TEXT("Prescribed slope; empty lets the spline choose and keeps the fourth "
                              "derivative continuous."),
              .writtenWhenNull = false},
             knot.slope);
}

void describeHarmonic(Visitor& v, motion::Harmonic& harmonic) {
    v.integer("order", "Order", between(1.0, 200.0), harmonic.order,
              LW_TEXT("k: waves per pattern; the shaft order is k times the number of lobes."));
    v.number("cos_mm", LW_TEXT("Cosine part"), in::mm, between(-2000.0, 2000.0), harmonic.cosine,
             LW_TEXT("Amplitude of cos(k·φ·lobes)."));
    v.number("sin_mm", LW_TEXT("Sine part"), in::mm, between(-2000.0, 2000.0), harmonic.sine,
             LW_TEXT("Amplitude of sin(k·φ·lobes)."));
}

void describeSegments(Visitor& v, motion::SegmentShape& shape) {
    v.number("stroke_mm", LW_TEXT("Stroke"), in::mm, between(0.1, 2000.0), shape.stroke,
             LW_TEXT("S: travel of the piston from outer to inner dead centre."));
    v.list("segments", "Segments", between(2.0, 200.0),
           LW_TEXT("Pieces of the pattern in the order of rotation, from outer dead centre on."),
           LW_TEXT("Segment"), shape.segments,
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
    v.integer("lobes", LW_TEXT("Lobes"), between(1.0, 24.0), pattern.lobes,
              LW_TEXT("How often the pattern repeats per revolution. A pattern of one "
                      "lobe may hold several unequal rises and returns."));
    chooseShape(v, pattern);
    motion::SegmentShape noSegments;
    motion::KnotShape noKnots;
    motion::HarmonicShape noHarmonics;
    auto& segments = shapeOr(pattern, noSegments);
    auto& knots = shapeOr(pattern, noKnots);
    auto& harmonics = shapeOr(pattern, noHarmonics);
    v.branch({shapeKeys[0], {}}, &segments != &noSegments, [&] { describeSegments(v, segments); });
    v.branch({shapeKeys[1], {}}, &knots != &noKnots, [&] {
        v.list(shapeKeys[1], "Knots", between(3.0, 500.0),
               LW_TEXT("Points of a free-form lobe, joined by a periodic spline of fifth degree."),
               LW_TEXT("Knot"), knots.knots, [&](motion::Knot& knot) { describeKnot(v, knot); });
    });
    v.branch({shapeKeys[2], {}}, &harmonics != &noHarmonics, [&] {
        v.list(shapeKeys[2], "Harmonics", between(1.0, 100.0),
               LW_TEXT("Lift as a sum of cosine and sine waves over the pattern."),
               LW_TEXT("Harmonic"), harmonics.harmonics,
               [&](motion::Harmonic& harmonic) { describeHarmonic(v, harmonic); });
    });
}

} // namespace

void describeTracks(Visitor& v, Tracks& tracks, bool isOneSided) {
    v.section({.name = "inlet",
               .label = isOneSided ? LW_TEXT("Track") : LW_TEXT("Inlet track"),
               .help = isOneSided ? LW_TEXT("The track that moves the pistons.")
                                  : LW_TEXT("The track that moves the inlet pistons.")},
              [&] { describePattern(v, tracks.inlet); });
    const Key exhaust{.name = "exhaust",
                      .label = LW_TEXT("Exhaust track"),
                      .help =
                          LW_TEXT("The track that moves the exhaust pistons: \"same\" as the inlet "
                                  "track, or a pattern of its own.")};
    const PresenceWords words{
        {Word{"same", LW_TEXT("Same as the inlet track")}, Word{"own", LW_TEXT("Own track")}},
        true};
    const auto fresh = [&] { return tracks.inlet; };
    v.branch(opposed, !isOneSided, [&] {
        v.optional(exhaust, words, tracks.exhaust, fresh, [&](motion::Pattern& pattern) {
            v.section(exhaust, [&] { describePattern(v, pattern); });
        });
    });
}

void describeTrackBlank(Visitor& v, track::Blank& blank) {
    v.number("bore_diameter_mm", LW_TEXT("Bore diameter"), in::mm, between(1.0, 20000.0),
             blank.boreDiameter,
             LW_TEXT("Bore of the ring that the track is cut into. Empty: an open track is a tenth "
                     "of the roller width wider than the roller on the inside; under the groove "
                     "of a closed track stands half a roller width (own estimate)."));
    v.number("outside_diameter_mm", LW_TEXT("Outside diameter"), in::mm, between(1.0, 20000.0),
             blank.outsideDiameter,
             LW_TEXT("Outside of the ring that the track is cut into. Empty: a tenth of the roller "
                     "width beyond the outermost contact (own estimate)."));
    v.number("groove_diameter_mm", LW_TEXT("Groove diameter"), in::mm, between(1.0, 20000.0),
             blank.grooveDiameter,
             LW_TEXT("Floor of the groove between the flanks of a closed track, which opens "
                     "outward. Empty: a tenth of the roller width inside the roller (own "
                     "estimate)."));
    v.number("back_thickness_mm", LW_TEXT("Back thickness"), in::mm, between(0.1, 2000.0),
             blank.backThickness,
             LW_TEXT("Material behind the push flank at its lowest point. Empty: the "
                     "roller width (own estimate)."));
    v.number("front_thickness_mm", LW_TEXT("Front thickness"), in::mm, between(0.1, 2000.0),
             blank.frontThickness,
             LW_TEXT("Material in front of the pull flank of a closed track at its "
                     "highest point. Empty: the roller width (own estimate)."));
}

} // namespace lobewright::design
