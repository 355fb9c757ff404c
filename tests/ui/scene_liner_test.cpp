#include "core/units.h"
#include "tests/ui/scene_fixture.h"
#include "ui/scene/tracks/liner_map.h"

#include <QTest>
#include <gtest/gtest.h>

#include <cmath>

namespace lobewright::ui::test {
namespace {

constexpr double mm = units::millimetre;

class Liner : public ::testing::Test {
  protected:
    Liner() {
        view.resize(700, 600);
        view.show();
    }
    TurnCursor cursor;
    LinerMap view{cursor};
    Applied applied{view, twoLobeDesign()};
};

// Unrolled, the bore is as wide as its circumference; a port covers the arc over its chord.
TEST_F(Liner, PortsAreAsWideAsTheirArcAndEvenlySpaced) {
    const QRectF first = view.portBox(End::inlet, 0, 0), second = view.portBox(End::inlet, 0, 1);
    const double pitch = second.center().x() - first.center().x();
    const double scale = pitch / (units::pi * 64.0 * mm / 10.0); // [px/m]
    EXPECT_NEAR(first.height() / scale, 7.5 * mm, 1e-9);
    EXPECT_NEAR(first.width() / scale, 64.0 * mm * std::asin(12.0 / 64.0), 1e-9);
}

TEST_F(Liner, DraggingTheSideOfAPortWidensTheRow) {
    const Handle side = handleNamed(view, "/ports/inlet/0/width_mm");
    dragMouse(view, side.at, side.at + 2.0 * side.axes[0].perUnit);
    EXPECT_NEAR(applied.design().ports.inlet[0].width, 14.0 * mm, 0.11 * mm);
    EXPECT_EQ(applied.finished(), 1);
    // The side stays under the pointer.
    EXPECT_NEAR(handleNamed(view, "/ports/inlet/0/width_mm").at.x(),
                (side.at + 2.0 * side.axes[0].perUnit).x(), 1.0);
}

TEST_F(Liner, SaysWhatRingsAndSkirtRunInto) {
    EXPECT_TRUE(view.remarks().isEmpty());
    // The skirt of 70 mm stands 34 mm outside of the ports after 36 mm of stroke.
    EXPECT_TRUE(view.allWell().contains(QStringLiteral("34"))) << view.allWell().toStdString();
    design::Design design = twoLobeDesign();
    design.mechanism.piston->length = 34.0 * mm; // 36 mm stroke: the skirt passes its own ports
    design.ports.exhaust[0].width = 30.0 * mm;   // of a 64 mm bore
    design.ports.exhaust[0].count = 5;
    view.showGeometry(geometryOf(design));
    const QStringList remarks = view.remarks();
    ASSERT_EQ(remarks.size(), 4);
    EXPECT_TRUE(remarks[0].contains(QStringLiteral("inlet row 1")));
    EXPECT_TRUE(remarks.join(' ').contains(QStringLiteral("Ring 2 runs over the wide ports")));
}

TEST(LinerPictures, ShowTheThemeAndTheirWords) {
    TurnCursor cursor;
    cursor.setAngle(130.0 * units::degree);
    for (const bool dark : {false, true}) {
        for (const QSize size : {QSize(380, 250), QSize(900, 620)}) {
            LinerMap view(cursor);
            useTones(view, dark);
            view.resize(size);
            design::Design design = twoLobeDesign();
            design.mechanism.piston->length = 34.0 * mm;
            view.showGeometry(geometryOf(dark ? design : twoLobeDesign()));
            expectPicture(
                view, QStringLiteral("liner-%1-%2").arg(size.width()).arg(dark ? "dark" : "light"));
        }
    }
}

} // namespace
} // namespace lobewright::ui::test
