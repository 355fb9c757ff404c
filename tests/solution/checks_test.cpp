#include "core/solution/checks/checks.h"
#include "core/units.h"
#include "tests/solution/solved_sample.h"

#include <algorithm>

namespace lobewright {
namespace {

using solution::Severity;
using test::figure;
using test::fires;
using test::sample;
using test::solved;

const solution::Check* checkOf(const solution::Solution& solution, const std::string& id) {
    const auto found = std::ranges::find(solution.checks, id, &solution::Check::id);
    return found == solution.checks.end() ? nullptr : &*found;
}

TEST(CheckList, KeepsQuietWithinTheLimitAndNamesTheThresholdThatBroke) {
    solution::CheckList list;
    const solution::CheckSubject subject{"id",    "Quantity", &in::bar,
                                         "/path", "advice",   std::nullopt};
    list.atMost(subject, 1.0, {1.0, 2.0});
    list.atMost(subject, 1.5, {1.0, 2.0});
    list.atMost(subject, 2.5, {1.0, 2.0});
    list.atLeast(subject, 0.4, {0.5, 0.3});
    const auto checks = list.take();
    ASSERT_EQ(checks.size(), 3u);
    EXPECT_EQ(checks[0].severity, Severity::error);
    EXPECT_EQ(checks[0].limit, 2.0);
    EXPECT_EQ(checks[1].severity, Severity::warning);
    EXPECT_EQ(checks[1].limit, 1.0);
    EXPECT_EQ(checks[2].limit, 0.5);
    EXPECT_NE(checks[2].message.english().find("below 0.5 bar: advice"), std::string::npos);
}

TEST(Checks, ParabolicLawWarnsOfInfiniteJerk) {
    auto design = sample("biogas-pump-set");
    EXPECT_FALSE(fires(solved(design), "acceleration-jump"));
    for (auto& segment : std::get<motion::SegmentShape>(design.tracks.inlet.shape).segments) {
        segment.law = motion::Law::parabolic;
    }
    EXPECT_TRUE(fires(solved(design), "acceleration-jump"));
}

// Lobes that differ have cycles that differ: the highest of their pressures is judged.
TEST(Checks, PeakPressureIsThatOfTheWorstCycle) {
    auto design = sample("unequal-lobes");
    const auto cycles = solved(design).gas->cycles;
    const auto [low, high] = std::ranges::minmax(cycles, {}, &gas::CycleFigures::peakPressure);
    ASSERT_GT(high.peakPressure, 1.01 * low.peakPressure);
    design.limits.peakPressure = {0.5 * (low.peakPressure + high.peakPressure),
                                  2.0 * high.peakPressure};
    const auto judged = solved(design);
    const solution::Check* check = checkOf(judged, "peak-pressure");
    ASSERT_NE(check, nullptr);
    EXPECT_NEAR(check->value, high.peakPressure / units::bar, 1e-6);
}

TEST(Checks, AHugeRollerUndercutsAndTheAdviceIsARadiusThatDoesNot) {
    auto design = sample("biogas-pump-set");
    design.mechanism.roller.radius = 1.4 * design.mechanism.pitchRadius;
    const auto solution = solved(design);
    ASSERT_TRUE(fires(solution, "undercut"));
    for (const auto& check : solution.checks) {
        if (check.id == "undercut") {
            EXPECT_LE(check.value, 0.0);
            EXPECT_TRUE(check.angle);
            EXPECT_EQ(check.path, "/mechanism/roller/radius_mm");
        }
    }
}

TEST(Checks, OverspeedLiftsTheRollerAndSaysSo) {
    auto design = sample("biogas-pump-set");
    design.running.speed *= 4.0;
    const auto solution = solved(design);
    const auto* check = checkOf(solution, "lift-off");
    ASSERT_NE(check, nullptr);
    EXPECT_NE(check->message.english().find("Lower the speed"), std::string::npos)
        << check->message.english();
    EXPECT_EQ(figure(solution, "keeps_contact"), 0.0);
}

// Below its lower bound more speed helps, not less.
TEST(Checks, ALiftOffByRingFrictionAsksForMoreSpeed) {
    auto design = sample("biogas-pump-set");
    design.running.speed = 250.0 * units::revPerMinute;
    const auto solution = solved(design);
    const auto* check = checkOf(solution, "lift-off");
    ASSERT_NE(check, nullptr);
    EXPECT_NE(check->message.english().find("Raise the speed"), std::string::npos)
        << check->message.english();
    EXPECT_EQ(check->message.english().find("Lower the speed"), std::string::npos)
        << check->message.english();
    EXPECT_LT(check->value, 0.0);
    EXPECT_GT(figure(solution, "contact_speed_low_fired_rpm"), 250.0);
    EXPECT_GT(figure(solution, "contact_speed_high_fired_rpm"), 250.0);
    EXPECT_EQ(figure(solution, "keeps_contact"), 0.0);
    design.mechanism.closedTrack = true;
    EXPECT_EQ(figure(solved(design), "keeps_contact"), 1.0);
}

TEST(Checks, AnEngineThatKeepsContactOnlyWithSpeedSaysSoForItsStart) {
    const auto solution = solved(sample("biogas-pump-set"));
    const auto* check = checkOf(solution, "contact-when-starting");
    ASSERT_NE(check, nullptr);
    EXPECT_EQ(check->severity, Severity::remark);
    EXPECT_NEAR(check->value, figure(solution, "contact_speed_low_motored_rpm"), 1e-9);
    auto pressed = sample("biogas-pump-set");
    pressed.gas.supply.pressure = 1.6e5;
    pressed.gas.exhaustPressure = 1.5e5;
    EXPECT_FALSE(fires(solved(pressed), "contact-when-starting"));
}

TEST(Checks, AnUnpaidSupplyIsSaidBesideTheBrakeValues) {
    auto design = sample("biogas-pump-set");
    design.gas.supply.kind = gas::SupplyKind::reservoir;
    design.gas.supply.pressure = 1.4e5;
    design.gas.supply.unpaid = true;
    EXPECT_TRUE(fires(solved(design), "supply-power-not-counted"));
    design.gas.supply.unpaid = false;
    EXPECT_FALSE(fires(solved(design), "supply-power-not-counted"));
}

TEST(Checks, AShortSkirtIsNamedWithItsDepthAndAngle) {
    auto design = sample("biogas-pump-set");
    EXPECT_FALSE(fires(solved(design), "skirt-uncovers-port"));
    // Stroke 34 mm; the inlet row reaches out to 7 − 7 = 0: a piston of 24 mm stands 10 mm inward.
    design.mechanism.piston = mechanism::PistonGeometry{24.0e-3, {5.0e-3, 9.0e-3, 20.0e-3}};
    const auto solution = solved(design);
    const auto* check = checkOf(solution, "skirt-uncovers-port");
    ASSERT_NE(check, nullptr);
    EXPECT_EQ(check->severity, Severity::warning);
    EXPECT_NEAR(check->value, 10.0, 1e-6);
    EXPECT_EQ(check->path, "/mechanism/piston/length_mm");
    ASSERT_TRUE(check->angle);
    EXPECT_NEAR(solution.pair.lift(End::inlet, *check->angle).y, 34.0e-3, 1e-7);
}

TEST(Checks, ARingOverWidePortsIsNamedWhereItPassesThem) {
    auto design = sample("biogas-pump-set");
    EXPECT_FALSE(fires(solved(design), "ring-over-wide-port"));
    design.ports.exhaust[0].width = 25.0e-3; // 0.43 of the 58 mm bore
    design.ports.exhaust[0].count = 4;
    const auto solution = solved(design);
    const auto* check = checkOf(solution, "ring-over-wide-port");
    ASSERT_NE(check, nullptr);
    EXPECT_NEAR(check->value, 25.0, 1e-9);
    EXPECT_NEAR(check->limit, 0.4 * 58.0, 1e-9);
    EXPECT_EQ(check->path, "/ports/exhaust/0/width_mm");
    ASSERT_TRUE(check->angle);
    const double ring = solution.pair.lift(End::exhaust, *check->angle).y - 5.0e-3;
    EXPECT_GE(ring, 0.0);
    EXPECT_LE(ring, 9.5e-3);
}

TEST(Checks, RollersThatMeetTheirNeighboursAreAnError) {
    auto design = sample("biogas-pump-set");
    design.mechanism.cylinders = 6;
    EXPECT_FALSE(fires(solved(design), "rollers-meet"));
    design.mechanism.roller.radius = 70.0e-3;
    const auto solution = solved(design);
    const auto* check = checkOf(solution, "rollers-meet");
    ASSERT_NE(check, nullptr);
    EXPECT_EQ(check->severity, Severity::error);
    EXPECT_EQ(check->path, "/mechanism/roller/radius_mm");
}

// Stroke 34, roller radius 24, rim as thick as the roller is wide, 20 mm: 78 mm behind the skirt.
TEST(Checks, ASkirtInTheRimOfAClosedTrackIsAnError) {
    auto design = sample("biogas-pump-set");
    design.mechanism.closedTrack = true;
    const double length = design.mechanism.piston->length;
    design.mechanism.piston->rollerAxis = length + 77.0e-3;
    const auto solution = solved(design);
    const auto* check = checkOf(solution, "skirt-meets-track");
    ASSERT_NE(check, nullptr);
    EXPECT_EQ(check->severity, Severity::error);
    EXPECT_NEAR(check->value, -1.0, 1e-9);
    EXPECT_EQ(check->path, "/mechanism/piston/roller_axis_mm");
    design.mechanism.piston->rollerAxis = length + 79.0e-3;
    EXPECT_FALSE(fires(solved(design), "skirt-meets-track"));
    design.mechanism.piston->rollerAxis.reset();
    EXPECT_FALSE(fires(solved(design), "skirt-meets-track"));
}

// What nobody judged: a tenth of a millimetre between crowns, a fast roller, an unrated bearing.
TEST(Checks, RemarkOnANarrowGapAFastRollerAndABearingWithoutRating) {
    auto design = sample("biogas-pump-set");
    design.rollerBearing.dynamicRating = 30e3;
    auto solution = solved(design);
    for (const char* id : {"narrow-gap", "roller-speed", "roller-life-unknown"}) {
        EXPECT_FALSE(fires(solution, id)) << id;
    }
    design.mechanism.exhaustLead = 0.0; // both at inner dead centre together
    design.mechanism.clearance = 0.1e-3;
    design.running.speed = 2400.0 * units::revPerMinute;
    design.rollerBearing.dynamicRating.reset();
    solution = solved(design);
    for (const char* id : {"narrow-gap", "roller-speed", "roller-life-unknown"}) {
        const auto* check = checkOf(solution, id);
        ASSERT_NE(check, nullptr) << id;
        EXPECT_EQ(check->severity, Severity::remark) << id;
    }
    EXPECT_NEAR(checkOf(solution, "narrow-gap")->value, 0.1, 1e-6);
    const double radius = design.mechanism.roller.radius;
    EXPECT_GT(checkOf(solution, "roller-speed")->value,
              2400.0 * design.mechanism.pitchRadius / radius);
}

// Dangers that no figure shows: gases that escape, and a load that is lost.
TEST(Checks, RemarkOnFuelGasesAndOnLosingTheLoad) {
    auto design = sample("biogas-pump-set");
    for (const auto& [fuel, words] : {std::pair(gas::Fuel::hydrogen, "between 4 and 75 %"),
                                      std::pair(gas::Fuel::methane, "between 5 and 15 %")}) {
        design.gas.fuel = fuel;
        const auto solution = solved(design);
        const auto* check = checkOf(solution, "fuel-gas");
        ASSERT_NE(check, nullptr);
        EXPECT_EQ(check->severity, Severity::remark);
        EXPECT_NE(check->message.english().find(words), std::string::npos);
        EXPECT_EQ(check->path, "/gas/fuel");
    }
    design.gas.fuel = gas::Fuel::diesel;
    design.running.inertia = 0.0;
    auto solution = solved(design);
    EXPECT_FALSE(fires(solution, "fuel-gas"));
    EXPECT_FALSE(fires(solution, "overspeed")) << "no inertia is given";
    design.running.inertia = 0.5;
    solution = solved(design);
    const auto* check = checkOf(solution, "overspeed");
    ASSERT_NE(check, nullptr);
    EXPECT_EQ(check->severity, Severity::remark);
    EXPECT_EQ(check->path, "/running/inertia_kg_m2");
    EXPECT_NE(check->message.english().find("overspeed trip"), std::string::npos);
    design.gas.fuel = gas::Fuel::hydrogen;
    design.running.motored = true;
    solution = solved(design);
    EXPECT_FALSE(fires(solution, "fuel-gas"));
    EXPECT_FALSE(fires(solution, "overspeed"));
}

TEST(Checks, AnInletThatOpensFirstIsNamedWithItsLead) {
    auto design = sample("biogas-pump-set");
    EXPECT_FALSE(fires(solved(design), "inlet-opens-first"));
    design.mechanism.exhaustLead = -8.0 * units::degree;
    const auto solution = solved(design);
    const auto* check = checkOf(solution, "inlet-opens-first");
    ASSERT_NE(check, nullptr);
    EXPECT_EQ(check->severity, Severity::warning);
    EXPECT_NEAR(check->value, -test::figure(solution, "blowdown_deg"), 1e-9);
    EXPECT_EQ(check->path, "/ports/exhaust/0/edge_mm");
    EXPECT_TRUE(check->angle);
}

TEST(Checks, StandErrorsFirst) {
    auto design = sample("biogas-pump-set");
    design.running.speed *= 4.0;
    const auto solution = solved(design);
    ASSERT_FALSE(solution.checks.empty());
    for (std::size_t i = 1; i < solution.checks.size(); ++i) {
        EXPECT_GE(solution.checks[i - 1].severity, solution.checks[i].severity);
    }
}

} // namespace
} // namespace lobewright
