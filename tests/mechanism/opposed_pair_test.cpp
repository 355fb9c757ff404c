#include "core/mechanism/opposed_pair.h"
#include "core/units.h"
#include "tests/machines.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lobewright::mechanism {
namespace {

using machines::pair;
using machines::pumpMechanism;
using machines::pumpTrack;
using units::degree;
using units::pi;

TEST(CylinderAngles, AreEvenUnlessListed) {
    Mechanism m = pumpMechanism();
    const auto even = cylinderAngles(m);
    ASSERT_EQ(even.size(), 3u);
    EXPECT_DOUBLE_EQ(even[2], 4.0 * pi / 3.0);
    m.cylinderAngles = {{0.1, 0.4, 0.9}};
    EXPECT_DOUBLE_EQ(cylinderAngles(m)[1], 0.4);
}

// Harmonic tracks by hand: V = A·[c + S/2·(1 + cos Nθ) + S/2·(1 + cos N(θ + δ))] + recess.
TEST(OpposedPair, VolumeOfHarmonicTracksEqualsTheTextbookCosines) {
    Mechanism m = pumpMechanism();
    m.recess = 2e-6;
    const double s = 0.036, n = 2.0, area = pi * 0.064 * 0.064 / 4.0;
    const OpposedPair machine = pair(m, machines::wave(2, s));
    const Samples theta = Samples::LinSpaced(721, -4.0, 4.0);
    const Samples volumes = machine.volume(theta);
    const Samples rates = machine.volumeRate(theta);
    for (Eigen::Index i = 0; i < theta.size(); ++i) {
        const double inlet = n * theta(i), exhaust = n * (theta(i) + 6.0 * degree);
        const double volume =
            area * (0.0075 + s / 2 * (2.0 + std::cos(inlet) + std::cos(exhaust))) + 2e-6;
        const double rate = -area * s / 2 * n * (std::sin(inlet) + std::sin(exhaust));
        EXPECT_NEAR(volumes(i), volume, 1e-12 * machine.sweptVolume());
        EXPECT_NEAR(rates(i), rate, 1e-12 * machine.sweptVolume());
        EXPECT_DOUBLE_EQ(machine.at(theta(i)).volume, machine.volume(theta(i)));
    }
    EXPECT_NEAR(machine.sweptVolume(), area * 2.0 * s, 1e-18);
}

// Two equal harmonics out of phase by δ: least volume half-way between their crests.
TEST(OpposedPair, DeadCentresOfEqualTracksLieHalfTheLeadBeforeTheInletCrest) {
    const OpposedPair machine = pair(pumpMechanism(), machines::wave(2, 0.036));
    ASSERT_EQ(machine.deadCentres().size(), 1u);
    EXPECT_NEAR(machine.deadCentres()[0].idc, 87.0 * degree, 1e-10);
    EXPECT_NEAR(machine.deadCentres()[0].odc, 177.0 * degree, 1e-10);
}

// The mirror symmetry of equal, symmetric lobes fixes the dead centre whatever the law.
TEST(OpposedPair, DeadCentreFollowsFromSymmetryForEveryLaw) {
    for (const motion::Law law : motion::allLaws) {
        for (const double lead : {0.0, 3.0, 9.0, -9.0}) {
            Mechanism m = pumpMechanism();
            m.exhaustLead = lead * degree;
            const OpposedPair machine =
                pair(m, machines::lobe(2, 0.036, 80.0, 6.0, 80.0, 14.0, law));
            EXPECT_NEAR(machine.deadCentres()[0].idc, (83.0 - lead / 2) * degree, 1e-10)
                << static_cast<int>(law) << " " << lead;
        }
    }
}

// Rest from 82° to 86° at the inlet, 2° earlier at the exhaust: common rest 82° … 84°.
TEST(OpposedPair, DeadCentreOnACommonDwellIsItsMiddle) {
    Mechanism m = pumpMechanism();
    m.exhaustLead = 2.0 * degree;
    for (const motion::Law law : motion::allLaws) {
        const OpposedPair machine = pair(m, machines::lobe(2, 0.036, 82.0, 4.0, 78.0, 16.0, law));
        EXPECT_NEAR(machine.deadCentres()[0].idc, 83.0 * degree, 1e-12);
        EXPECT_NEAR(machine.deadCentres()[0].odc, (164.0 + 7.0) * degree, 1e-12);
    }
}

TEST(OpposedPair, FirstDeadCentreIsTheFirstAtOrAfterZero) {
    Mechanism m = pumpMechanism();
    m.exhaustLead = 0.0;
    m.cylinderAngles = {{95.0 * degree, 100.0 * degree}};
    // Crest at φ = 90°, cylinder 1 at 95°: IDC at 185°, less the period of 180°.
    const OpposedPair machine = pair(m, machines::wave(2, 0.036));
    EXPECT_NEAR(machine.deadCentres()[0].idc, 5.0 * degree, 1e-10);
    EXPECT_NEAR(machine.deadCentres()[0].odc, 95.0 * degree, 1e-10);
}

TEST(OpposedPair, UnequalLobesGiveOneCycleForEveryRise) {
    using motion::Law, motion::SegmentKind;
    const motion::Pattern uneven{
        1, motion::SegmentShape{0.04,
                                {{SegmentKind::rise, 80 * degree, Law::polynomial345, {}},
                                 {SegmentKind::fall, 90 * degree, Law::polynomial345, {}},
                                 {SegmentKind::rise, 100 * degree, Law::polynomial345, 0.036},
                                 {SegmentKind::fall, 90 * degree, Law::polynomial345, {}}}}};
    Mechanism m = pumpMechanism();
    m.exhaustLead = 0.0;
    const OpposedPair machine = pair(m, uneven);
    EXPECT_EQ(machine.cyclesPerTurn(), 2);
    ASSERT_EQ(machine.deadCentres().size(), 2u);
    EXPECT_NEAR(machine.deadCentres()[0].idc, 80.0 * degree, 1e-10);
    EXPECT_NEAR(machine.deadCentres()[0].odc, 170.0 * degree, 1e-10);
    EXPECT_NEAR(machine.deadCentres()[1].idc, 270.0 * degree, 1e-10);
    EXPECT_NEAR(machine.deadCentres()[1].odc, 360.0 * degree, 1e-10);
}

// Dead centre of the pair: dV/dθ = 0 within rounding for uneven machines without symmetry.
TEST(OpposedPair, VolumeStandsStillAtDeadCentresOfDissimilarTracks) {
    Mechanism m = pumpMechanism();
    const OpposedPair machine =
        pair(m, machines::lobe(2, 0.036, 82.0, 4.0, 78.0, 16.0, motion::Law::modifiedTrapezoid),
             machines::lobe(2, 0.030, 70.0, 0.5, 90.0, 19.5, motion::Law::polynomial345));
    const DeadCentres c = machine.deadCentres()[0];
    EXPECT_NEAR(machine.volumeRate(c.idc), 0.0, 1e-12 * machine.sweptVolume());
    const Samples all = machine.volume(Samples::LinSpaced(100001, 0.0, machine.period()));
    EXPECT_LE(machine.volume(c.idc), all.minCoeff() * (1.0 + 1e-12));
    EXPECT_GE(machine.volume(c.odc), all.maxCoeff() * (1.0 - 1e-12));
}

TEST(OpposedPair, AdjusterTurnsAndShiftsTheExhaustTrack) {
    Mechanism m = pumpMechanism();
    m.adjuster = {0.050, 5.0 * degree, 0.0008};
    const OpposedPair machine = pair(m, pumpTrack());
    const double shift = 0.050 * 5.0 / 360.0 + 0.0008;
    EXPECT_NEAR(machine.shift(End::exhaust), shift, 1e-15);
    EXPECT_EQ(machine.shift(End::inlet), 0.0);
    EXPECT_NEAR(machine.trackAngle(End::exhaust, 0.3) - 0.3, 11.0 * degree, 1e-15);
    m.adjuster = {};
    m.exhaustLead = 11.0 * degree;
    EXPECT_NEAR(machine.gap(0.2), pair(m, pumpTrack()).gap(0.2) + shift, 1e-15);
}

// The rate is the slope of the volume: Richardson's extrapolation of central differences, with
// lead, a helix, an axial shift and different tracks. Just after inner dead centre the chamber
// grows.
TEST(OpposedPair, VolumeRateIsTheSlopeOfTheVolume) {
    for (const double lead : {-9.0, 0.0, 6.0}) {
        for (const bool closed : {false, true}) {
            Mechanism m = pumpMechanism();
            m.closedTrack = closed;
            m.exhaustLead = lead * degree;
            m.adjuster.helixLead = 0.04;
            m.adjuster.setting = 3.0 * degree;
            m.adjuster.axial = 0.0004;
            const auto made = OpposedPair::make(
                m, {machines::curve(machines::wave(2, 0.036, motion::Law::polynomial4567)),
                    machines::curve(machines::wave(2, 0.030, motion::Law::cycloidal))});
            ASSERT_TRUE(made);
            const auto difference = [&](double at, double h) {
                return (made->volume(at + h) - made->volume(at - h)) / (2.0 * h);
            };
            for (double theta = 0.0; theta < pi; theta += 0.037) {
                const double h = 2e-3;
                const double slope =
                    (4.0 * difference(theta, 0.5 * h) - difference(theta, h)) / 3.0;
                EXPECT_NEAR(made->volumeRate(theta), slope, 5e-8 * made->sweptVolume());
            }
            EXPECT_GT(made->volumeRate(made->deadCentres()[0].idc + 0.05), 0.0);
            EXPECT_LT(made->volumeRate(made->deadCentres()[0].idc - 0.05), 0.0);
        }
    }
}

TEST(OpposedPair, JunctionsOfBothTracksAreListedOnce) {
    Mechanism m = pumpMechanism();
    const auto pattern = machines::lobe(2, 0.036, 82.0, 4.0, 78.0, 16.0, motion::Law::cycloidal);
    EXPECT_EQ(pair(m, pattern).junctions().size(), 8u);
    m.exhaustLead = 0.0;
    EXPECT_EQ(pair(m, pattern).junctions().size(), 4u);
    m.exhaustLead = 4.0 * degree; // end of one dwell meets the start of the other
    EXPECT_EQ(pair(m, pattern).junctions().size(), 7u);
}

TEST(OpposedPair, RejectsTracksThatDoNotBelongTogether) {
    const auto two = machines::curve(machines::wave(2, 0.03));
    const auto three = machines::curve(machines::wave(3, 0.03));
    const auto different = OpposedPair::make(pumpMechanism(), {two, three});
    ASSERT_FALSE(different);
    EXPECT_EQ(different.problems()[0].path, "/tracks/exhaust/lobes");
}

TEST(OpposedPair, RejectsCrownsThatMeet) {
    Mechanism m = pumpMechanism();
    m.clearance = 0.0;
    m.exhaustLead = 0.0;
    const auto curve = machines::curve(pumpTrack());
    const auto touching = OpposedPair::make(m, {curve, curve});
    ASSERT_FALSE(touching);
    EXPECT_EQ(touching.problems()[0].path, "/mechanism/clearance_mm");
    m.clearance = -0.0001; // a lead of 40° keeps the crowns apart
    m.exhaustLead = 40.0 * degree;
    EXPECT_TRUE(OpposedPair::make(m, {curve, curve}));
}

TEST(OpposedPair, RejectsTracksThatUndoEachOther) {
    Mechanism m = pumpMechanism();
    m.exhaustLead = 90.0 * degree;
    const auto curve = machines::curve(machines::wave(2, 0.03));
    const auto opposed = OpposedPair::make(m, {curve, curve});
    ASSERT_FALSE(opposed);
    EXPECT_EQ(opposed.problems()[0].path, "/mechanism/exhaust_lead_deg");
}

TEST(OpposedPair, RejectsSizesThatAreNotPositiveNumbers) {
    const auto curve = machines::curve(pumpTrack());
    for (const double bad : {0.0, -1.0, std::nan(""), HUGE_VAL}) {
        Mechanism m = pumpMechanism();
        m.bore = bad;
        m.pitchRadius = bad;
        const auto made = OpposedPair::make(m, {curve, curve});
        ASSERT_FALSE(made);
        EXPECT_EQ(made.problems().size(), 2u);
    }
}

} // namespace
} // namespace lobewright::mechanism
