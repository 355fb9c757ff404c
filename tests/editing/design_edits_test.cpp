// Edits of a design as whoever presses the button means them: what must stay stays.
#include "core/editing/design_edits.h"
#include "core/motion/lift_curve.h"
#include "tests/editing/edited.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace lobewright::editing::testing {
namespace {

TEST(DesignEdits, SpanIsTakenFromTheNextSegment) {
    const design::Design design = sample();
    const double first = segments(design)[0].span / units::degree;
    const double second = segments(design)[1].span / units::degree;
    const design::Design next = applied(
        design, fieldEdit(design, "/tracks/inlet/segments/0/span_deg", first + 1.0, "span"));
    EXPECT_NEAR(segments(next)[0].span / units::degree, first + 1.0, 1e-9);
    EXPECT_NEAR(segments(next)[1].span / units::degree, second - 1.0, 1e-9);
    EXPECT_TRUE(design::validate(next).empty());
}

TEST(DesignEdits, SpanOfTheLastSegmentIsTakenFromTheOneBefore) {
    const design::Design design = sample();
    const size_t last = segments(design).size() - 1;
    const double span = segments(design)[last].span / units::degree;
    const std::string path = "/tracks/inlet/segments/" + std::to_string(last) + "/span_deg";
    const design::Design next = applied(design, fieldEdit(design, path, span + 2.0, "span"));
    EXPECT_NEAR(degreesTogether(next), 360.0 / design.tracks.inlet.lobes, 1e-9);
}

TEST(DesignEdits, AnotherNumberOfLobesKeepsTheShareOfEachSegment) {
    const design::Design design = sample();
    const design::Design next =
        applied(design, fieldEdit(design, "/tracks/inlet/lobes", 3.0, "lobes"));
    EXPECT_EQ(next.tracks.inlet.lobes, 3);
    EXPECT_NEAR(degreesTogether(next), 120.0, 1e-9);
    const double factor = design.tracks.inlet.lobes / 3.0;
    for (size_t i = 0; i < segments(design).size(); ++i)
        EXPECT_NEAR(segments(next)[i].span, factor * segments(design)[i].span, 1e-9);
}

TEST(DesignEdits, SplitSegmentKeepsStrokeAndLength) {
    const design::Design design = sample();
    const auto edit = rowEdit(design, "/tracks/inlet/segments", 0, RowChange::split);
    ASSERT_TRUE(edit);
    const design::Design next = applied(design, *edit);
    EXPECT_EQ(segments(next).size(), segments(design).size() + 1);
    EXPECT_NEAR(degreesTogether(next), degreesTogether(design), 1e-9);
    EXPECT_TRUE(design::validate(next).empty());
    const auto before = motion::LiftCurve::make(design.tracks.inlet);
    const auto after = motion::LiftCurve::make(next.tracks.inlet);
    ASSERT_TRUE(before && after);
    EXPECT_DOUBLE_EQ(after->stroke(), before->stroke());
}

TEST(DesignEdits, SplitAndRemoveIsWhereItBegan) {
    const design::Design design = sample();
    const design::Design split =
        applied(design, *rowEdit(design, "/tracks/inlet/segments", 0, RowChange::split));
    const design::Design back =
        applied(split, *rowEdit(split, "/tracks/inlet/segments", 1, RowChange::remove));
    ASSERT_EQ(segments(back).size(), segments(design).size());
    EXPECT_NEAR(segments(back)[0].span, segments(design)[0].span, 1e-12);
    EXPECT_EQ(segments(back)[0].endLift, segments(design)[0].endLift);
}

TEST(DesignEdits, OnlyRiseCannotBeRemoved) {
    const design::Design design = sample();
    EXPECT_FALSE(rowEdit(design, "/tracks/inlet/segments", 0, RowChange::remove));
}

TEST(DesignEdits, OfARowOrAListThatIsNotThereAreNone) {
    const design::Design design = sample();
    for (const char* list :
         {"/tracks/inlet/segments", "/tracks/inlet/knots", "/tracks/exhaust/segments",
          "/ports/inlet", "/friction/rings", "/mechanism/piston/ring_distances_mm", "/ports"}) {
        for (const RowChange change : {RowChange::split, RowChange::addDwell, RowChange::addBelow,
                                       RowChange::remove, RowChange::moveUp, RowChange::moveDown}) {
            EXPECT_FALSE(rowEdit(design, list, -1, change)) << list;
            EXPECT_FALSE(rowEdit(design, list, 99, change)) << list;
        }
    }
}

TEST(DesignEdits, EveryRowChangeThatIsOfferedLeavesAValidDesign) {
    for (const std::string list : {"/tracks/inlet/segments", "/ports/inlet", "/ports/exhaust",
                                   "/friction/rings", "/mechanism/piston/ring_distances_mm"}) {
        for (const RowChange change :
             {RowChange::split, RowChange::addDwell, RowChange::addBelow, RowChange::remove}) {
            const design::Design design = sample();
            if (const auto edit = rowEdit(design, list, 0, change)) {
                const Problems problems = design::validate(applied(design, *edit));
                EXPECT_TRUE(problems.empty())
                    << list << ' ' << static_cast<int>(change) << ": "
                    << (problems.empty() ? "" : problems.front().message.english());
            }
        }
    }
}

TEST(DesignEdits, KnotsFollowTheSegmentsTheyReplace) {
    // Twelve knots and a spline of fifth degree: within a few hundredths of the stroke, common
    // practice for a first sketch.
    const design::Design design = sample();
    const auto edit = shapeEdit(design, End::inlet, TrackShape::knots);
    ASSERT_TRUE(edit);
    const design::Design next = applied(design, *edit);
    const auto before = motion::LiftCurve::make(design.tracks.inlet);
    const auto after = motion::LiftCurve::make(next.tracks.inlet);
    ASSERT_TRUE(before && after);
    for (double phi = 0.0; phi < before->period(); phi += 0.05)
        EXPECT_NEAR(after->at(phi).y, before->at(phi).y, 0.05 * before->stroke());
}

TEST(DesignEdits, SplittingAMoveSaysThatItStopsBetween) {
    const design::Design design = sample();
    const auto edit = rowEdit(design, "/tracks/inlet/segments", 0, RowChange::split);
    ASSERT_TRUE(edit);
    EXPECT_TRUE(edit->text.english().find("stop between") != std::string::npos);
    const auto& shape = std::get<motion::SegmentShape>(edit->replacement->tracks.inlet.shape);
    const auto curve = motion::LiftCurve::make(edit->replacement->tracks.inlet);
    ASSERT_TRUE(curve);
    EXPECT_NEAR(curve->at(shape.segments[0].span).y1, 0.0, 1e-9); // it does
    const auto dwell =
        std::ranges::find(std::get<motion::SegmentShape>(design.tracks.inlet.shape).segments,
                          motion::SegmentKind::dwell, &motion::Segment::kind);
    const auto index = static_cast<int>(
        dwell - std::get<motion::SegmentShape>(design.tracks.inlet.shape).segments.begin());
    EXPECT_EQ(rowEdit(design, "/tracks/inlet/segments", index, RowChange::split)->text.english(),
              "Split dwell " + std::to_string(index + 1));
}

TEST(DesignEdits, SpanThatLeavesTheNeighbourNothingIsRefusedWithBothNumbers) {
    const design::Design design = sample();
    const std::string path = "/tracks/inlet/segments/0/span_deg";
    const double together = (segments(design)[0].span + segments(design)[1].span) / units::degree;
    EXPECT_FALSE(spanProblem(design, path, together - 0.1));
    const auto problem = spanProblem(design, path, together);
    ASSERT_TRUE(problem);
    EXPECT_EQ(problem->path, path);
    EXPECT_EQ(problem->message.english(),
              Message(LW_TEXT("%1 leaves segment %2 %3; the span must be less than %4"),
                      amountIn(in::degrees, together), 2, amountIn(in::degrees, 0.0),
                      amountIn(in::degrees, together))
                  .english());
    EXPECT_FALSE(spanProblem(design, "/mechanism/bore_mm", 1e6)) << "not a span";
}

TEST(DesignEdits, AnotherNumberOfCylindersSpreadsListedAnglesEvenly) {
    design::Design design = sample();
    design.mechanism.cylinders = 3;
    design.mechanism.cylinderAngles = {0.0, 100.0 * units::degree, 200.0 * units::degree};
    const design::Design next =
        applied(design, fieldEdit(design, "/mechanism/cylinders", 4.0, "cylinders"));
    ASSERT_TRUE(next.mechanism.cylinderAngles);
    ASSERT_EQ(next.mechanism.cylinderAngles->size(), 4u);
    for (std::size_t i = 0; i < 4; ++i) {
        EXPECT_NEAR((*next.mechanism.cylinderAngles)[i],
                    static_cast<double>(i) * 90.0 * units::degree, 1e-12);
    }
}

} // namespace
} // namespace lobewright::editing::testing
