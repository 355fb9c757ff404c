// The section as one picture of the engine: drums, crossheads and unrolled tracks in projection.
#include "core/units.h"
#include "tests/ui/drawn_text.h"
#include "tests/ui/scene_fixture.h"
#include "ui/base/palette.h"
#include "ui/scene/section/gas_tone.h"
#include "ui/scene/section/section_view.h"

#include <QApplication>
#include <QLinearGradient>
#include <QTest>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace lobewright::ui::test {
namespace {

constexpr double deg = units::degree;
constexpr double mm = units::millimetre;

class EnginePicture : public ::testing::Test {
  protected:
    EnginePicture() {
        view.resize(760, 560);
        view.showSolution(inventedSolution(twoLobeDesign()));
        view.show();
    }
    bool draws(const QString& words) {
        return std::ranges::any_of(
            drawnText(view), [&](const DrawnText& drawn) { return drawn.text.contains(words); });
    }
    /// Turns the shaft to so many degrees of the cycle from inner dead centre.
    void turnTo(double cycleDegrees) {
        const auto& engine = view.engine();
        cursor.setAngle(engine.timing().cycles().front().centres.idc +
                        cycleDegrees * deg / engine.pair().cyclesPerTurn());
    }

    TurnCursor cursor;
    SectionView view{cursor};
};

// In the plane of the cylinder the surface lies a roller's radius behind its axis where the track
// is level, and further where it slopes, for it touches the roller beside the plane.
TEST_F(EnginePicture, DrumTouchesTheRollerInThePlane) {
    const EngineFrame& picture = view.picture();
    const double r = view.engine().design().mechanism.roller.radius;
    for (double theta = 0.0; theta < units::turn; theta += 0.21) {
        for (const End end : bothEnds) {
            const double axis = picture.cylinder().rollerAxis(end, theta);
            const double face = EngineFrame::zAt(picture.face(end, theta, false), 0.0);
            const double away = SectionFrame::outward(end) * (face - axis);
            EXPECT_GE(away, r - 0.05 * mm) << theta;
            EXPECT_LE(away, 1.25 * r) << theta;
            const double slope = view.engine().pair().lift(end, theta).y1;
            if (std::abs(slope) < 1e-6) {
                EXPECT_NEAR(away, r, 0.05 * mm) << theta;
            }
        }
    }
}

// The far half of a drum turns towards the cylinder: what is behind now stands there later.
TEST_F(EnginePicture, DrumsTurnAsRigidBodies) {
    const EngineFrame& picture = view.picture();
    for (const double angle : {0.3, 1.0, 1.9, 2.8}) {
        for (const End end : bothEnds) {
            const double now = EngineFrame::zAt(picture.face(end, 0.4, false), angle);
            const double later = EngineFrame::zAt(picture.face(end, 0.4 + angle, false), 0.0);
            EXPECT_NEAR(now, later, 0.05 * mm) << angle;
        }
    }
}

TEST_F(EnginePicture, UnrolledTracksStandInProjectionOverTheirRollers) {
    const EngineFrame& picture = view.picture();
    ASSERT_TRUE(picture.hasStrips());
    for (const double theta : {0.0, 0.7, 1.5}) {
        for (const End end : bothEnds) {
            const double section =
                picture.cylinder().at(picture.cylinder().rollerAxis(end, theta), 0.0).x();
            const double strip =
                picture.unrolled().at(picture.unrolled().rollerAxis(end, theta), 0.0).x();
            EXPECT_NEAR(section, strip, 1e-6);
            EXPECT_GT(strip, picture.strip(end).left());
            EXPECT_LT(strip, picture.strip(end).right());
            EXPECT_LE(picture.strip(end).bottom(), picture.machine().top());
        }
    }
    EXPECT_GE(picture.strip(End::inlet).height(), 90.0);
}

TEST_F(EnginePicture, ShaftLiesInTheLowerThird) {
    const double share = view.picture().at(0.0, 0.0).y() / view.height();
    EXPECT_GT(share, 0.6);
    EXPECT_LT(share, 0.85);
}

// Outward on the expansion the piston pushes the track on; inward it is pushed by the track.
TEST_F(EnginePicture, SaysWhenTheForceTurnsTheShaftAndWhenItSlowsIt) {
    turnTo(60.0);
    EXPECT_TRUE(draws(QStringLiteral("turns the shaft")));
    EXPECT_FALSE(draws(QStringLiteral("slows the shaft")));
    turnTo(-60.0);
    EXPECT_TRUE(draws(QStringLiteral("slows the shaft")));
    turnTo(175.0);
    EXPECT_TRUE(draws(QStringLiteral("lifts off")));
}

TEST_F(EnginePicture, NamesWhatTurnsWhatSlidesAndWhatPushes) {
    turnTo(80.0);
    for (const char* words : {"turns", "slides", "gas pushes", "track moves"})
        EXPECT_TRUE(draws(QString::fromLatin1(words))) << words;
    turnTo(180.0);
    EXPECT_FALSE(draws(QStringLiteral("gas pushes")));
}

TEST_F(EnginePicture, DropsTheUnrolledTracksWhereThereIsNoRoomForThem) {
    view.resize(420, 260);
    EXPECT_FALSE(view.picture().hasStrips());
    EXPECT_FALSE(draws(QStringLiteral("track moves")));
    EXPECT_TRUE(draws(QStringLiteral("bar")));
}

TEST_F(EnginePicture, FlashesAtTheStartOfCombustionOnly) {
    turnTo(-11.9);
    const QImage start = view.grab().toImage();
    turnTo(-12.1);
    EXPECT_NE(start, view.grab().toImage());
    const auto at = [&] { return view.frame().at(0.0, -0.84 * view.frame().halfBore()).toPoint(); };
    const auto isBright = [&](const QImage& image) {
        return image.pixelColor(at() * image.devicePixelRatio()) == QColor("#fff1a8");
    };
    EXPECT_TRUE(isBright(start));
    EXPECT_FALSE(isBright(view.grab().toImage()));
}

TEST_F(EnginePicture, FindsTheCylinderBeyondTheShaft) {
    EXPECT_FALSE(view.opposite()); // three cylinders
    design::Design four = twoLobeDesign();
    four.mechanism.cylinders = 4;
    view.showSolution(inventedSolution(four));
    ASSERT_TRUE(view.opposite());
    EXPECT_EQ(*view.opposite(), 2);
}

TEST_F(EnginePicture, HandlesAppearOnApproach) {
    QTest::mouseMove(&view, QPoint(5, 5));
    QTest::qWait(20);
    const QImage far = view.grab().toImage();
    const QPointF edge = handleNamed(view, "/ports/exhaust/0/edge_mm").at;
    QTest::mouseMove(&view, (edge + QPointF(0.0, 30.0)).toPoint());
    QTest::qWait(20);
    EXPECT_NE(view.grab().toImage(), far);
    QTest::mouseMove(&view, QPoint(5, 5));
    QTest::qWait(20);
    EXPECT_EQ(view.grab().toImage(), far);
}

TEST(EnginePictures, OneSidedEngineHasOneDrumAndAHead) {
    TurnCursor cursor;
    SectionView view(cursor);
    view.resize(760, 560);
    design::Design design = twoLobeDesign();
    design.mechanism.arrangement = mechanism::Arrangement::oneSided;
    view.showGeometry(geometryOf(design));
    EXPECT_FALSE(view.picture().strip(End::inlet).isEmpty());
    EXPECT_TRUE(view.picture().strip(End::exhaust).isEmpty());
    expectPicture(view, QStringLiteral("engine-one-sided"));
}

// Without colour vision hotter is still told from colder.
TEST(HeatTones, ChangeTheirLightnessOneWay) {
    for (const Palette* tones : {&Palette::lightTones(), &Palette::darkTones()}) {
        const auto lightness = [&](double kelvin) {
            const QColor tone = heatTone(*tones, kelvin);
            return 0.2126 * tone.redF() + 0.7152 * tone.greenF() + 0.0722 * tone.blueF();
        };
        for (double kelvin = HeatRange::cold; kelvin < HeatRange::hot; kelvin += 50.0) {
            const double step = lightness(kelvin + 50.0) - lightness(kelvin);
            EXPECT_TRUE(tones->isDark ? step > -1e-6 : step < 1e-6) << kelvin;
        }
        EXPECT_EQ(heatTone(*tones, 10.0), heatTone(*tones, HeatRange::cold));
        EXPECT_EQ(heatTone(*tones, 9000.0), heatTone(*tones, HeatRange::hot));
        EXPECT_EQ(heatTone(*tones, std::nan("")), tones->panel);
    }
}

} // namespace
} // namespace lobewright::ui::test
