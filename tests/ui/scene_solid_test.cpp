#include "core/design/skirt_row.h"
#include "core/units.h"
#include "tests/ui/drawn_text.h"
#include "tests/ui/scene_fixture.h"
#include "ui/base/palette.h"
#include "ui/scene/base/part_names.h"
#include "ui/scene/solid/engine_solid.h"
#include "ui/scene/solid/liner_mesh.h"
#include "ui/scene/solid/placed_names.h"
#include "ui/scene/solid/solid_points.h"
#include "ui/scene/solid/space_view.h"

#include <QTest>
#include <QToolButton>
#include <QWheelEvent>
#include <gtest/gtest.h>

#include <cmath>

namespace lobewright::ui::test {
namespace {

constexpr double mm = units::millimetre;

/// Least distance of a track's corners to the axis of the roller of cylinder 1, on the outer side
/// of that axis and on its inner side.
std::pair<double, double> nearestTo(const mechanism::OpposedPair& pair, End end, double theta) {
    const SolidMesh mesh = trackMesh(pair, solidSizes(pair), end).running;
    const double inward = end == End::inlet ? 1.0 : -1.0;
    const double z = solidSizes(pair).rollerOrigin[end] + inward * pair.lift(end, theta).y;
    std::pair<double, double> least{1e300, 1e300};
    for (int i = 0; i < mesh.size(); ++i) {
        const float* c = &mesh.corners[static_cast<std::size_t>(6 * i)];
        // Cylinder 1 stands at polar angle 0; the track has turned by θ.
        const double x = c[0] * std::cos(theta) - c[1] * std::sin(theta);
        const double y = c[0] * std::sin(theta) + c[1] * std::cos(theta);
        if (std::abs(x - 95.0 * mm) > 0.5 * 14.0 * mm)
            continue;
        double& side = inward * (c[2] - z) > 0.0 ? least.second : least.first;
        side = std::min(side, std::hypot(y, c[2] - z));
    }
    return least;
}

// Every roller rolls on the drawn solid: turned by θ, no corner of the track comes nearer to any
// roller's axis than its radius, and some corner touches.
TEST(SolidMesh, RollersTouchTheTrackSolidAndNeverCutIntoIt) {
    const auto geometry = geometryOf(twoLobeDesign());
    for (const End end : bothEnds) {
        for (const double theta : {0.3, 1.1, 2.6}) {
            const auto [outer, inner] = nearestTo(geometry->pair, end, theta);
            EXPECT_NEAR(outer, 16.0 * mm, 0.05 * mm) << name(end) << " at " << theta;
            EXPECT_GT(inner, 16.0 * mm);
        }
    }
}

// A closed track holds the roller from both sides.
TEST(SolidMesh, ClosedTrackHasAPullFlankThatTouchesTheRollerToo) {
    auto design = twoLobeDesign();
    design.mechanism.closedTrack = true;
    const auto geometry = geometryOf(design);
    for (const End end : bothEnds) {
        for (const double theta : {0.3, 1.1, 2.6}) {
            const auto [outer, inner] = nearestTo(geometry->pair, end, theta);
            EXPECT_NEAR(outer, 16.0 * mm, 0.05 * mm) << name(end) << " at " << theta;
            EXPECT_NEAR(inner, 16.0 * mm, 0.05 * mm) << name(end) << " at " << theta;
        }
    }
}

// Faces that are turned away are left out: a triangle must be wound as its normals say.
TEST(SolidMesh, TrianglesAreWoundAsTheirNormalsPoint) {
    for (const bool isClosed : {false, true}) {
        auto design = twoLobeDesign();
        design.mechanism.closedTrack = isClosed;
        ShownEngine engine;
        engine.setGeometry(geometryOf(design));
        SolidMesh all = linerMesh(engine, -0.1, 0.1);
        const SolidSizes sizes = solidSizes(engine.pair());
        for (const End end : bothEnds) {
            const TrackMesh track = trackMesh(engine.pair(), sizes, end);
            for (const SolidMesh& mesh : {track.running, track.blank, portMesh(engine, end),
                                          railMesh(engine, end), ringMesh(engine)})
                all.append(mesh);
        }
        all.append(crossheadMesh(engine.pair(), sizes).steel);
        all.append(rollerMarks(engine.pair().mechanism().roller));
        int turned = 0;
        for (int i = 0; i + 2 < all.size(); i += 3) {
            const auto vector = [&](int k, int first) {
                const float* c = &all.corners[static_cast<std::size_t>(6 * (i + k) + first)];
                return QVector3D(c[0], c[1], c[2]);
            };
            const QVector3D face =
                QVector3D::crossProduct(vector(1, 0) - vector(0, 0), vector(2, 0) - vector(0, 0));
            const QVector3D normal = vector(0, 3) + vector(1, 3) + vector(2, 3);
            turned += QVector3D::dotProduct(face, normal) < 0.0F ? 1 : 0;
        }
        EXPECT_EQ(turned, 0) << (isClosed ? "closed" : "open");
    }
}

// Away from the material, so that the side that the rollers see is the one that is drawn.
TEST(SolidMesh, RunningSurfacesFaceTheRollers) {
    const auto geometry = geometryOf(twoLobeDesign());
    for (const End end : bothEnds) {
        const SolidMesh mesh = trackMesh(geometry->pair, solidSizes(geometry->pair), end).running;
        const float inward = end == End::inlet ? 1.0F : -1.0F;
        for (int i = 0; i < mesh.size(); ++i)
            ASSERT_GE(inward * mesh.corners[static_cast<std::size_t>(6 * i + 5)], 0.0F);
    }
}

// The ports are windows of the wall: nothing of it lies in one of them.
TEST(SolidMesh, LinersHaveOpeningsWhereThePortsAre) {
    const auto design = twoLobeDesign();
    ShownEngine engine;
    engine.setGeometry(geometryOf(design));
    const auto& pair = engine.pair();
    const SolidMesh liner = linerMesh(engine, -0.12, 0.12);
    int windows = 0;
    for (const End end : bothEnds) {
        const auto& row = design.ports[end].front();
        const double out = 0.5 * pair.mechanism().clearance + pair.curve(end).stroke();
        const double sign = end == End::inlet ? -1.0 : 1.0;
        const double z = sign * (out - row.edge + 0.5 * row.height);
        for (int k = 0; k < row.count; ++k) {
            const double angle = units::turn * (k + 0.5) / row.count;
            if (std::cos(angle) > 0.2) // cut away, or cut into
                continue;
            ++windows;
            for (int i = 0; i + 2 < liner.size(); i += 3) {
                double x = 0.0, y = 0.0, height = 0.0;
                for (int c = 0; c < 3; ++c) {
                    const float* corner = &liner.corners[static_cast<std::size_t>(6 * (i + c))];
                    x += corner[0] / 3.0;
                    y += corner[1] / 3.0;
                    height += corner[2] / 3.0;
                }
                const double away = std::abs(std::remainder(std::atan2(y, x) - angle, units::turn));
                const double half = std::asin(row.width / pair.mechanism().bore);
                EXPECT_FALSE(away < 0.9 * half && std::abs(height - z) < 0.45 * row.height)
                    << name(end) << " port " << k;
            }
        }
        EXPECT_GT(portMesh(engine, end).size(), 0);
    }
    EXPECT_GT(windows, 4);
}

// What a skirt uncovers for the pump is a window as well, past the crown at outer dead centre, and
// the liner reaches beyond it.
TEST(SolidMesh, LinersAreCutWhereASkirtUncoversARow) {
    ShownEngine engine;
    engine.setGeometry(geometryOf(solvedSample("terrace-sprayer")->design));
    const auto& design = engine.design();
    const ports::Row* skirt = design::skirtRow(design, End::inlet);
    ASSERT_NE(skirt, nullptr);
    const std::size_t before = [&] {
        auto without = design;
        without.gas.supply.pump.skirtRow.reset();
        ShownEngine plain;
        plain.setGeometry(geometryOf(without));
        return openingsOf(plain, End::inlet).size();
    }();
    const auto openings = openingsOf(engine, End::inlet);
    ASSERT_GT(openings.size(), before);
    const auto& pair = engine.pair();
    const double reach = linerReach(engine, End::inlet);
    for (std::size_t i = before; i < openings.size(); ++i) {
        EXPECT_NEAR(openings[i].high - openings[i].low, skirt->height, 1e-12);
        EXPECT_GT(openings[i].low, -reach);
        // The skirt's end stands at its outer edge where it is about to open.
        const double out = 0.5 * pair.mechanism().clearance + pair.curve(End::inlet).stroke();
        const double end = out + drawnPistonLength(pair) - skirt->edge;
        EXPECT_NEAR(-openings[i].low, end, 1e-12);
    }
}

// Behind the eye x/w and y/w are those of a place before it, mirrored.
TEST(SolidPoints, BehindTheEyeNothingIsSeen) {
    QMatrix4x4 screen;
    screen.perspective(90.0F, 1.0F, 0.1F, 10.0F);
    const QSizeF picture(200.0, 100.0);
    const auto before = onScreen(screen, {1.0F, 1.0F, -2.0F}, picture);
    ASSERT_TRUE(before);
    EXPECT_NEAR(before->x(), 150.0, 1e-4);
    EXPECT_NEAR(before->y(), 25.0, 1e-4);
    EXPECT_FALSE(onScreen(screen, {-1.0F, -1.0F, 2.0F}, picture));
    EXPECT_FALSE(onScreen(screen, {0.5F, 0.0F, 0.0F}, picture));
}

TEST(PlacedNames, MeetNeitherEachOtherNorALeader) {
    const QFontMetricsF metrics{QFont()};
    const QRectF room(0.0, 0.0, 600.0, 320.0), picture(200.0, 60.0, 200.0, 200.0);
    const QString words = QStringLiteral("roller track piston gas shaft cylinder ports head");
    // Parts that lie as unhappily as they can: on one level, and each behind another.
    for (const double slope : {0.0, 0.2, -3.0}) {
        std::vector<NamedPart> parts;
        double x = 215.0;
        for (const QString& word : words.split(QLatin1Char(' '))) {
            const QPointF at(x, 150.0 + slope * (x - 300.0) * 0.2);
            parts.push_back({word, at, at});
            x += 22.0;
        }
        const auto placed = placedNames(parts, room, picture, metrics);
        ASSERT_EQ(placed.size(), parts.size());
        for (std::size_t i = 0; i < placed.size(); ++i) {
            EXPECT_TRUE(room.contains(placed[i].box));
            for (std::size_t k = 0; k < placed.size(); ++k) {
                if (i == k)
                    continue;
                EXPECT_FALSE(placed[i].box.intersects(placed[k].box));
                EXPECT_NE(placed[i].leader.intersects(placed[k].leader, nullptr),
                          QLineF::BoundedIntersection)
                    << i << " and " << k << " at slope " << slope;
            }
        }
    }
}

TEST(PlacedNames, LeaveOutTheLastWhereThereIsNoRoom) {
    const QFontMetricsF metrics{QFont()};
    const double line = metrics.height();
    std::vector<NamedPart> parts;
    for (const char* word : {"first", "second", "third"})
        parts.push_back({QString::fromLatin1(word), {300.0, 10.0}, {300.0, 10.0}});
    const auto placed =
        placedNames(parts, QRectF(0.0, 0.0, 600.0, 1.6 * line), QRectF(200, 0, 200, 40), metrics);
    QStringList words;
    for (const PlacedName& name : placed)
        words << name.text;
    EXPECT_EQ(words, QStringList({QStringLiteral("first"), QStringLiteral("second")}));
}

TEST(SolidMesh, TubesHaveTheVolumeOfTheirSize) {
    // Divergence theorem over the triangles, orientation taken from the normals.
    const auto volume = [](const SolidMesh& mesh) {
        double sum = 0.0;
        for (int i = 0; i + 2 < mesh.size(); i += 3) {
            const auto corner = [&](int k) {
                const float* c = &mesh.corners[static_cast<std::size_t>(6 * (i + k))];
                return QVector3D(c[0], c[1], c[2]);
            };
            const float* n = &mesh.corners[static_cast<std::size_t>(6 * i + 3)];
            const QVector3D area =
                QVector3D::crossProduct(corner(1) - corner(0), corner(2) - corner(0));
            const float side =
                QVector3D::dotProduct(area, QVector3D(n[0], n[1], n[2])) < 0 ? -1.0F : 1.0F;
            sum += static_cast<double>(side * QVector3D::dotProduct(corner(0), area)) / 6.0;
        }
        return sum;
    };
    // A regular 48-gon has 0.9971 of the area of its circle.
    EXPECT_NEAR(volume(tubeMesh(0.0, 1.0, -0.5, 1.5, 0.0, units::turn)) / (2.0 * units::pi),
                0.99715, 1e-4);
    EXPECT_NEAR(volume(tubeMesh(0.5, 1.0, 0.0, 1.0, 0.0, units::pi)) / (0.375 * units::pi), 0.99715,
                1e-4);
}

class Solid : public ::testing::Test {
  protected:
    void SetUp() override {
        ASSERT_TRUE(EngineSolid::isAvailable()) << "no OpenGL, not even in software";
        solid.resize(640, 420);
        useTones(solid, false);
        solid.showSolution(inventedSolution(twoLobeDesign()));
        solid.show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(&solid, 5000));
    }
    QImage frame() { return solid.picture(); }
    /// Share of pixels whose hue is near that of a colour.
    static double share(const QImage& image, const QColor& hue) {
        int found = 0;
        for (int y = 0; y < image.height(); y += 2)
            for (int x = 0; x < image.width(); x += 2) {
                const QColor c = image.pixelColor(x, y);
                found += c.hsvSaturation() > 90 && std::abs(c.hsvHue() - hue.hsvHue()) < 12 ? 1 : 0;
            }
        return 4.0 * found / (image.width() * image.height());
    }

    TurnCursor cursor;
    EngineSolid solid{cursor};
};

// Only what the rollers run on has the colour of its side: each is seen from the other end.
TEST_F(Solid, ShowsBothTracksInTheHuesOfTheirSides) {
    const QImage image = frame();
    EXPECT_GT(share(image, Palette::lightTones().inlet), 0.01);
    EXPECT_EQ(image.pixelColor(3, 3).name(), Palette::lightTones().paper.name());
    EngineSolid::View view;
    view.azimuth = -view.azimuth;
    solid.setView(view);
    EXPECT_GT(share(frame(), Palette::lightTones().exhaust), 0.01);
}

TEST_F(Solid, TurnsWithTheShaftAndOrbitsWithTheHand) {
    const QImage before = frame();
    cursor.setAngle(0.6);
    const QImage turned = frame();
    EXPECT_NE(turned, before);
    dragMouse(solid, {300, 200}, {380, 220});
    EXPECT_NEAR(solid.view().azimuth, EngineSolid::View{}.azimuth + 0.4F * 80.0F, 0.01F);
    EXPECT_NE(frame(), turned);
    QTest::keyClick(&solid, Qt::Key_Home);
    EXPECT_EQ(solid.view(), EngineSolid::View{});
    QWheelEvent wheel(QPointF(300, 200), solid.mapToGlobal(QPointF(300, 200)), {}, QPoint(0, 240),
                      Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
    QApplication::sendEvent(&solid, &wheel);
    EXPECT_NEAR(solid.view().distance, 0.81F, 1e-4F);
    for (int i = 0; i < 60; ++i)
        QTest::keyClick(&solid, Qt::Key_Up);
    EXPECT_LE(solid.view().height, 89.0F);
}

TEST_F(Solid, WholeEngineIsInThePictureFromAnySide) {
    // Nothing but paper on the rim of the picture.
    for (const float azimuth : {-35.0F, 20.0F, 90.0F, 200.0F}) {
        solid.setView({azimuth, 20.0F, 1.0F});
        const QImage image = frame();
        for (int x = 0; x < image.width(); x += 5)
            EXPECT_EQ(image.pixelColor(x, 2).name(), Palette::lightTones().paper.name());
        for (int y = 0; y < image.height() - 30; y += 5)
            EXPECT_EQ(image.pixelColor(2, y).name(), Palette::lightTones().paper.name());
    }
}

TEST_F(Solid, PartsStandApartAndTheEyeGoesToARoller) {
    const QImage whole = frame();
    EngineSolid::View view;
    view.apart = 1.0F;
    solid.setView(view);
    const QImage exploded = frame();
    EXPECT_NE(exploded, whole);
    for (int y = 0; y < exploded.height() - 30; y += 5) // still all of it
        EXPECT_EQ(exploded.pixelColor(2, y).name(), Palette::lightTones().paper.name());
    view = {};
    view.onRoller = true;
    view.azimuth = 215.0F;
    view.distance = 0.32F;
    solid.setView(view);
    // The inlet track alone fills much of the picture there.
    const QImage near = frame();
    EXPECT_GT(share(near, Palette::lightTones().inlet), 0.03);
    EXPECT_LT(share(near, Palette::lightTones().exhaust), 0.01);
    const QString folder = qEnvironmentVariable("LOBEWRIGHT_PICTURES");
    if (!folder.isEmpty()) {
        exploded.save(folder + "/solid-exploded.png");
        near.save(folder + "/solid-roller.png");
    }
}

// The names stand beside the engine, apart from each other and from the numbers of the cylinders.
TEST_F(Solid, NamesItsPartsBesideThem) {
    for (const QSize size : {QSize(520, 300), QSize(640, 340), QSize(1270, 660)}) {
        solid.resize(size);
        for (const float azimuth : {-35.0F, 0.0F, 60.0F, 150.0F, 215.0F}) {
            solid.setView({azimuth, 22.0F, 1.0F});
            for (const double angle : {0.0, 1.0, 2.2}) {
                cursor.setAngle(angle);
                const auto names = solid.names();
                EXPECT_GE(names.size(), 7U) << size.width() << " at " << azimuth;
                const auto texts = drawnText(solid);
                EXPECT_GE(texts.size(), names.size());
                for (std::size_t i = 0; i < texts.size(); ++i) {
                    EXPECT_TRUE(QRectF(solid.rect()).contains(texts[i].box))
                        << texts[i].text.toStdString();
                    for (std::size_t k = i + 1; k < texts.size(); ++k) {
                        EXPECT_FALSE(texts[i]
                                         .box.adjusted(1, 3, -1, -3)
                                         .intersects(texts[k].box.adjusted(1, 3, -1, -3)))
                            << texts[i].text.toStdString() << " meets "
                            << texts[k].text.toStdString();
                    }
                }
            }
        }
    }
}

TEST_F(Solid, OneSwitchHidesTheNames) {
    PartNames names;
    names.setShown(true);
    solid.setPartNames(names);
    const QImage before = frame();
    EXPECT_FALSE(solid.names().empty());
    names.setShown(false);
    EXPECT_TRUE(solid.names().empty());
    EXPECT_NE(frame(), before);
    EXPECT_FALSE(PartNames().areShown()) << "not kept";
    names.setShown(true);
}

// However coarse it became while playing, at rest every pixel is drawn again.
TEST_F(Solid, IsFullAtRestAfterPlaying) {
    const double angle = cursor.angle();
    const QImage before = frame();
    cursor.setPlaying(true);
    for (int i = 0; i < 6; ++i)
        EXPECT_EQ(frame().size(), before.size());
    cursor.setPlaying(false);
    cursor.setAngle(angle);
    EXPECT_EQ(frame(), before);
}

TEST(SolidButtons, TurnTheView) {
    ASSERT_TRUE(EngineSolid::isAvailable()) << "no OpenGL, not even in software";
    TurnCursor cursor;
    SpaceView view(cursor);
    view.resize(640, 420);
    view.showSolution(inventedSolution(twoLobeDesign()));
    view.show();
    ASSERT_NE(view.solid(), nullptr);
    const auto buttons = view.findChildren<QToolButton*>();
    ASSERT_EQ(buttons.size(), 5);
    for (auto* button : buttons) {
        EXPECT_FALSE(button->toolTip().isEmpty());
        const EngineSolid::View before = view.solid()->view();
        button->click();
        if (button != buttons.front()) {
            EXPECT_NE(view.solid()->view(), before) << button->text().toStdString();
        }
    }
    buttons.front()->click();
    EXPECT_EQ(view.solid()->view().azimuth, EngineSolid::View{}.azimuth);
    EXPECT_FALSE(view.solid()->view().onRoller);
}

TEST_F(Solid, PicturesStandOnThePaperOfTheirTheme) {
    for (const bool dark : {false, true}) {
        useTones(solid, dark);
        solid.setView({});
        cursor.setAngle(0.7);
        const QString folder = qEnvironmentVariable("LOBEWRIGHT_PICTURES");
        const QImage image = frame();
        const QColor paper = (dark ? Palette::darkTones() : Palette::lightTones()).paper;
        EXPECT_EQ(image.pixelColor(2, 2).name(), paper.name());
        int drawn = 0, looked = 0;
        for (int y = image.height() / 3; y < 2 * image.height() / 3; y += 4) {
            for (int x = image.width() / 3; x < 2 * image.width() / 3; x += 4, ++looked)
                drawn += image.pixelColor(x, y) != paper ? 1 : 0;
        }
        EXPECT_GT(drawn, looked / 3);
        if (!folder.isEmpty())
            image.save(folder + (dark ? "/solid-dark.png" : "/solid-light.png"));
    }
}

} // namespace
} // namespace lobewright::ui::test
