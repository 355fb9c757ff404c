#include "core/design/file.h"
#include "core/motion/lift_curve.h"
#include "core/units.h"
#include "tests/ui/desktop_fixture.h"
#include "ui/editing/design_edits.h"
#include "ui/editing/lift_grips.h"
#include "ui/panels/chapters.h"
#include "ui/panels/field_editor.h"
#include "ui/panels/number_edit.h"
#include "ui/panels/number_panel.h"

#include <QLabel>
#include <QTest>

#include <numeric>

using namespace lobewright;
using namespace lobewright::ui;
using namespace lobewright::ui::test;

namespace {

design::Design applied(const design::Design& design, const Edit& edit) {
    design::Design next = edit.replacement.value_or(design);
    for (const FieldChange& change : edit.changes)
        next = *design::withField(next, change.path, change.value);
    return next;
}

const std::vector<motion::Segment>& segments(const design::Design& design) {
    return std::get<motion::SegmentShape>(design.tracks.inlet.shape).segments;
}

double degreesTogether(const design::Design& design) {
    double sum = 0.0;
    for (const motion::Segment& segment : segments(design))
        sum += segment.span / units::degree;
    return sum;
}

FieldEditor* editorOf(NumberPanel& panel, const std::string& path) {
    for (FieldEditor* editor : panel.findChildren<FieldEditor*>()) {
        if (editor->path() == path)
            return editor;
    }
    return nullptr;
}

} // namespace

TEST(DesignEdits, SpanIsTakenFromTheNextSegment) {
    const design::Design design = sampleDesign();
    const double first = segments(design)[0].span / units::degree;
    const double second = segments(design)[1].span / units::degree;
    const design::Design next = applied(
        design, fieldEdit(design, "/tracks/inlet/segments/0/span_deg", first + 1.0, "span"));
    EXPECT_NEAR(segments(next)[0].span / units::degree, first + 1.0, 1e-9);
    EXPECT_NEAR(segments(next)[1].span / units::degree, second - 1.0, 1e-9);
    EXPECT_TRUE(design::validate(next).empty());
}

TEST(DesignEdits, SpanOfTheLastSegmentIsTakenFromTheOneBefore) {
    const design::Design design = sampleDesign();
    const size_t last = segments(design).size() - 1;
    const double span = segments(design)[last].span / units::degree;
    const std::string path = "/tracks/inlet/segments/" + std::to_string(last) + "/span_deg";
    const design::Design next = applied(design, fieldEdit(design, path, span + 2.0, "span"));
    EXPECT_NEAR(degreesTogether(next), 360.0 / design.tracks.inlet.lobes, 1e-9);
}

TEST(DesignEdits, AnotherNumberOfLobesKeepsTheShareOfEachSegment) {
    const design::Design design = sampleDesign();
    const design::Design next =
        applied(design, fieldEdit(design, "/tracks/inlet/lobes", 3.0, "lobes"));
    EXPECT_EQ(next.tracks.inlet.lobes, 3);
    EXPECT_NEAR(degreesTogether(next), 120.0, 1e-9);
    const double factor = design.tracks.inlet.lobes / 3.0;
    for (size_t i = 0; i < segments(design).size(); ++i)
        EXPECT_NEAR(segments(next)[i].span, factor * segments(design)[i].span, 1e-9);
}

TEST(DesignEdits, SplitSegmentKeepsStrokeAndLength) {
    const design::Design design = sampleDesign();
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
    const design::Design design = sampleDesign();
    const design::Design split =
        applied(design, *rowEdit(design, "/tracks/inlet/segments", 0, RowChange::split));
    const design::Design back =
        applied(split, *rowEdit(split, "/tracks/inlet/segments", 1, RowChange::remove));
    ASSERT_EQ(segments(back).size(), segments(design).size());
    EXPECT_NEAR(segments(back)[0].span, segments(design)[0].span, 1e-12);
    EXPECT_EQ(segments(back)[0].endLift, segments(design)[0].endLift);
}

TEST(DesignEdits, OnlyRiseCannotBeRemoved) {
    const design::Design design = sampleDesign();
    EXPECT_FALSE(rowEdit(design, "/tracks/inlet/segments", 0, RowChange::remove));
}

TEST(DesignEdits, EveryRowChangeThatIsOfferedLeavesAValidDesign) {
    for (const std::string list : {"/tracks/inlet/segments", "/ports/inlet", "/ports/exhaust",
                                   "/friction/rings", "/mechanism/piston/ring_distances_mm"}) {
        for (const RowChange change :
             {RowChange::split, RowChange::addDwell, RowChange::addBelow, RowChange::remove}) {
            const design::Design design = sampleDesign();
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
    const design::Design design = sampleDesign();
    const auto edit = shapeEdit(design, End::inlet, TrackShape::knots);
    ASSERT_TRUE(edit);
    const design::Design next = applied(design, *edit);
    const auto before = motion::LiftCurve::make(design.tracks.inlet);
    const auto after = motion::LiftCurve::make(next.tracks.inlet);
    ASSERT_TRUE(before && after);
    for (double phi = 0.0; phi < before->period(); phi += 0.05)
        EXPECT_NEAR(after->at(phi).y, before->at(phi).y, 0.05 * before->stroke());
}

TEST(LiftGrips, MovingABoundKeepsThePatternLength) {
    const design::Design design = sampleDesign();
    const auto grips = liftGrips(design, End::inlet);
    ASSERT_EQ(grips.size(), segments(design).size() - 1);
    const design::Design next =
        applied(design, moveGrip(design, grips[0], grips[0].angle - 3.0, grips[0].value));
    EXPECT_NEAR(degreesTogether(next), degreesTogether(design), 1e-9);
    EXPECT_NEAR(segments(next)[0].span, segments(design)[0].span - 3.0 * units::degree, 1e-9);
}

TEST(LiftGrips, BoundStopsBeforeItsNeighbours) {
    const design::Design design = sampleDesign();
    const auto grip = liftGrips(design, End::inlet).front();
    const design::Design next = applied(design, moveGrip(design, grip, 500.0, grip.value));
    EXPECT_GT(segments(next)[1].span, 0.0);
    EXPECT_TRUE(design::validate(next).empty());
}

TEST(NumberText, CommaAndTrueMinusAreRead) {
    EXPECT_EQ(readNumber(QStringLiteral("12,5")), 12.5);
    EXPECT_EQ(readNumber(QStringLiteral("\u22124")), -4.0);
    EXPECT_FALSE(readNumber(QStringLiteral("twelve")));
    EXPECT_FALSE(readNumber(QStringLiteral("nan")));
}

TEST(NumberPanel, ShowsEveryFieldOfTheDesignOnce) {
    NumberPanel panel;
    const design::Design design = sampleDesign();
    panel.show(design);
    for (const design::Field& field : design::fields(design)) {
        int found = 0;
        for (const FieldEditor* editor : panel.findChildren<FieldEditor*>())
            found += editor->path() == field.path ? 1 : 0;
        EXPECT_EQ(found, 1) << field.path;
        if (!field.group.empty()) {
            EXPECT_LT(chapterOf(field) + 1, chapters().size()) << field.path << " has no chapter";
        }
    }
}

TEST(NumberPanel, SearchLeavesOnlyWhatItFinds) {
    NumberPanel panel;
    panel.show(sampleDesign());
    panel.resize(320, 700);
    static_cast<QWidget&>(panel).show();
    panel.focusSearch();
    auto* search = panel.findChild<QLineEdit*>(QString(), Qt::FindDirectChildrenOnly);
    ASSERT_NE(search, nullptr);
    search->setText(QStringLiteral("wiebe"));
    EXPECT_TRUE(editorOf(panel, "/gas/burn/wiebe_a")->isVisible());
    EXPECT_FALSE(editorOf(panel, "/mechanism/bore_mm")->isVisible());
    search->clear();
    EXPECT_TRUE(editorOf(panel, "/running/speed_rpm")->isVisible());
}
