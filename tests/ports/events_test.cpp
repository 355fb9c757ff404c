#include "core/ports/events.h"
#include "core/units.h"
#include "tests/machines.h"

#include <boost/math/quadrature/tanh_sinh.hpp>
#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace lobewright::ports {
namespace {

using machines::pair;
using machines::pumpMechanism;
using machines::pumpPorts;
using machines::pumpTrack;
using machines::timing;
using units::degree;
using units::pi;

// Harmonic track: y = S/2·(1 − cos Nφ) passes the edge at cos Nφ = 1 − 2·edge/S.
TEST(PortEvents, OfHarmonicTracksEqualTheArcCosine) {
    const double s = 0.036;
    const auto machine = pair(pumpMechanism(), machines::wave(2, s));
    const PortTiming ports = timing(pumpPorts(), machine);
    ASSERT_EQ(ports.cycles().size(), 1u);
    const CycleEvents& cycle = ports.cycles()[0];
    const double inlet = std::acos(1.0 - 2.0 * 0.0075 / s) / 2.0;
    const double exhaust = std::acos(1.0 - 2.0 * 0.0105 / s) / 2.0;
    EXPECT_NEAR(cycle.inletOpens, pi - inlet, 1e-10);
    EXPECT_NEAR(cycle.inletCloses, pi + inlet, 1e-10);
    EXPECT_NEAR(cycle.exhaustOpens, pi - 6 * degree - exhaust, 1e-10);
    EXPECT_NEAR(cycle.exhaustCloses, pi - 6 * degree + exhaust, 1e-10);
    EXPECT_EQ(cycle.firstOpening(), cycle.exhaustOpens);
    EXPECT_EQ(cycle.lastClosing(), cycle.inletCloses);
    EXPECT_NEAR(cycle.overlap(), cycle.exhaustCloses - cycle.inletOpens, 1e-15);
    EXPECT_GT(cycle.blowdown(), 0.0);
    EXPECT_GT(cycle.afterCharge(), 0.0);
}

TEST(PortEvents, StandInTheCycleOfTheirDeadCentre) {
    for (const motion::Law law : motion::allLaws) {
        for (const double first : {0.0, 50.0, 130.0}) {
            auto m = pumpMechanism();
            m.cylinderAngles = {{first * degree, 200 * degree, 300 * degree}};
            const auto machine = pair(m, machines::lobe(2, 0.036, 82, 4, 78, 16, law));
            const PortTiming ports = timing(pumpPorts(), machine);
            const CycleEvents& c = ports.cycles()[0];
            EXPECT_LT(c.centres.idc, c.exhaustOpens);
            EXPECT_LT(c.exhaustOpens, c.inletOpens);
            EXPECT_LT(c.inletOpens, c.centres.odc);
            EXPECT_LT(c.centres.odc, c.inletCloses);
            EXPECT_LT(c.lastClosing(), c.centres.idc + machine.period());
            for (const End end : bothEnds) {
                const double edge = ports.rows()[end][0].edge;
                for (const double angle : {c.opens(end), c.closes(end)}) {
                    EXPECT_NEAR(machine.lift(end, angle).y, edge, 1e-15);
                }
            }
        }
    }
}

TEST(PortEvents, OutwardShiftLengthensTheOpeningOfTheExhaust) {
    auto m = pumpMechanism();
    const PortTiming plain = timing(pumpPorts(), pair(m, pumpTrack()));
    m.adjuster.axial = 0.001;
    const PortTiming shifted = timing(pumpPorts(), pair(m, pumpTrack()));
    EXPECT_LT(shifted.cycles()[0].exhaustOpens, plain.cycles()[0].exhaustOpens);
    EXPECT_GT(shifted.cycles()[0].exhaustCloses, plain.cycles()[0].exhaustCloses);
    EXPECT_NEAR(shifted.cycles()[0].inletOpens, plain.cycles()[0].inletOpens, 1e-10);
}

TEST(PortEvents, EndWithSeveralRowsOpensWithItsInnermostEdge) {
    Rows rows = pumpPorts();
    rows.exhaust.push_back({0.012, 0.003, 0.004, 6, 0.0, 0.6});
    const auto machine = pair(pumpMechanism(), pumpTrack());
    const PortTiming both = timing(rows, machine);
    rows.exhaust.erase(rows.exhaust.begin());
    const PortTiming alone = timing(rows, machine);
    EXPECT_DOUBLE_EQ(both.cycles()[0].exhaustOpens, alone.cycles()[0].exhaustOpens);
}

TEST(PortEvents, UnequalLobesHaveEventsOfTheirOwn) {
    using motion::Law, motion::SegmentKind;
    const motion::Pattern uneven{
        1, motion::SegmentShape{0.04,
                                {{SegmentKind::rise, 80 * degree, Law::polynomial345, {}},
                                 {SegmentKind::fall, 90 * degree, Law::polynomial345, {}},
                                 {SegmentKind::rise, 100 * degree, Law::polynomial345, 0.036},
                                 {SegmentKind::fall, 90 * degree, Law::polynomial345, {}}}}};
    const auto machine = pair(pumpMechanism(), uneven);
    const PortTiming ports = timing(pumpPorts(), machine);
    ASSERT_EQ(ports.cycles().size(), 2u);
    EXPECT_LT(ports.cycles()[0].lastClosing(), ports.cycles()[1].centres.idc);
    EXPECT_NE(ports.cycles()[0].blowdown(), ports.cycles()[1].blowdown());
}

TEST(PortArea, OfAnEndIsTheSumOfItsRows) {
    Rows rows = pumpPorts();
    rows.inlet.push_back({0.005, 0.005, 0.004, 6, 0.001, 0.5});
    const auto machine = pair(pumpMechanism(), pumpTrack());
    const PortTiming ports = timing(rows, machine);
    const Samples theta = Samples::LinSpaced(500, 0.0, 2.0 * pi);
    const Samples area = ports.area(End::inlet, theta);
    const Samples effective = ports.effectiveArea(End::inlet, theta);
    for (Eigen::Index i = 0; i < theta.size(); ++i) {
        const double y = machine.lift(End::inlet, theta(i)).y;
        const double first = 10 * openArea(rows.inlet[0], 0.0075 - y);
        const double second = 6 * openArea(rows.inlet[1], 0.005 - y);
        EXPECT_NEAR(area(i), first + second, 1e-18);
        EXPECT_NEAR(effective(i), 0.7 * first + 0.5 * second, 1e-18);
        EXPECT_DOUBLE_EQ(ports.at(theta(i)).area.inlet, area(i));
        EXPECT_DOUBLE_EQ(ports.at(theta(i)).effectiveArea.inlet, effective(i));
        EXPECT_DOUBLE_EQ(ports.area(End::inlet, theta(i)), area(i));
        EXPECT_DOUBLE_EQ(ports.effectiveArea(End::inlet, theta(i)), effective(i));
    }
    EXPECT_NEAR(area.maxCoeff(), ports.fullArea(End::inlet), 1e-18);
}

TEST(PortKinks, MarkBeginAndEndOfOpening) {
    const auto machine = pair(pumpMechanism(), pumpTrack());
    Rows rows = pumpPorts();
    rows.inlet[0].height = 0.006; // fully open 1.5 mm above ODC
    const PortTiming ports = timing(rows, machine);
    // Inlet: opens, fully open, closes from full, closed. Exhaust: edge = height, full only at ODC.
    EXPECT_EQ(ports.kinks().size(), 6u);
    for (std::size_t i = 1; i < ports.kinks().size(); ++i) {
        EXPECT_LT(ports.kinks()[i - 1], ports.kinks()[i]);
    }
}

// Against tanh-sinh quadrature of the same area between opening, full opening and closing.
TEST(AreaIntegral, AgreesWithAnIndependentQuadrature) {
    Rows rows = pumpPorts();
    rows.inlet[0].height = 0.006;
    const auto machine = pair(pumpMechanism(), pumpTrack());
    const PortTiming ports = timing(rows, machine);
    boost::math::quadrature::tanh_sinh<double> integrate;
    for (const End end : bothEnds) {
        const CycleEvents& c = ports.cycles()[0];
        std::vector<double> cuts{c.opens(end), c.closes(end), c.centres.odc};
        for (const std::vector<double>* angles : {&ports.kinks(), &machine.junctions()}) {
            for (double angle : *angles) {
                while (angle < c.opens(end)) {
                    angle += machine.period();
                }
                cuts.push_back(std::min(angle, c.closes(end)));
            }
        }
        std::sort(cuts.begin(), cuts.end());
        double expected = 0.0;
        for (std::size_t i = 1; i < cuts.size(); ++i) {
            if (cuts[i] - cuts[i - 1] > 1e-9) {
                expected += integrate.integrate([&](double t) { return ports.area(end, t); },
                                                cuts[i - 1], cuts[i]);
            }
        }
        const double found = ports.areaIntegral(end, c.opens(end), c.closes(end));
        EXPECT_NEAR(found, expected, 1e-9 * expected);
        EXPECT_NEAR(ports.areaIntegral(end, 0.1, 0.1 + 3 * machine.period()), 3 * found,
                    1e-12 * found);
        EXPECT_DOUBLE_EQ(ports.areaIntegral(end, 1.0, 0.0), -ports.areaIntegral(end, 0.0, 1.0));
    }
}

TEST(SpecificTimeArea, IsAreaIntegralOverSpeedAndSweptVolume) {
    const auto machine = pair(pumpMechanism(), pumpTrack());
    const PortTiming ports = timing(pumpPorts(), machine);
    const CycleEvents& c = ports.cycles()[0];
    const double omega = 1800.0 * units::revPerMinute;
    const auto found = specificTimeAreas(ports, c, machine.sweptVolume(), omega);
    const double scale = 1.0 / omega / machine.sweptVolume();
    EXPECT_NEAR(found.inlet, scale * ports.areaIntegral(End::inlet, 0.0, pi), 1e-12 * found.inlet);
    EXPECT_NEAR(found.exhaust, scale * ports.areaIntegral(End::exhaust, 0.0, pi),
                1e-12 * found.exhaust);
    EXPECT_GT(found.blowdown, 0.0);
    EXPECT_LT(found.blowdown, found.exhaust);
    EXPECT_NEAR(specificTimeAreas(ports, c, machine.sweptVolume(), 2 * omega).inlet,
                found.inlet / 2, 1e-15);
}

struct BadRow {
    const char* name;
    const char* key;
    void (*spoil)(Row&);
};
void PrintTo(const BadRow& row, std::ostream* out) {
    *out << row.name;
}

class PortRules : public testing::TestWithParam<BadRow> {};

TEST_P(PortRules, BrokenRuleNamesItsKey) {
    const auto machine = pair(pumpMechanism(), pumpTrack());
    Rows rows = pumpPorts();
    GetParam().spoil(rows.exhaust[0]);
    const auto made = PortTiming::make(rows, machine);
    ASSERT_FALSE(made);
    EXPECT_EQ(made.problems()[0].path, std::string("/exhaust/0/") + GetParam().key);
}

constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();
INSTANTIATE_TEST_SUITE_P(
    Rows, PortRules,
    testing::Values(
        BadRow{"EdgeBeyondTheStroke", "edge_mm", [](Row& r) { r.edge = 0.040; }},
        BadRow{"EdgeAtTheStroke", "edge_mm", [](Row& r) { r.edge = 0.036; }},
        BadRow{"EdgeAtTheCrown", "edge_mm", [](Row& r) { r.edge = 0.0; }},
        BadRow{"EdgeNotANumber", "edge_mm", [](Row& r) { r.edge = notANumber; }},
        BadRow{"NoHeight", "height_mm", [](Row& r) { r.height = 0.0; }},
        BadRow{"ChordOfTheBore", "width_mm", [](Row& r) { r.width = 0.064; }},
        BadRow{"NegativeWidth", "width_mm", [](Row& r) { r.width = -0.001; }},
        BadRow{"NoPorts", "count", [](Row& r) { r.count = 0; }},
        BadRow{"CornerTooRound", "corner_radius_mm", [](Row& r) { r.cornerRadius = 0.0061; }},
        BadRow{"NegativeCorner", "corner_radius_mm", [](Row& r) { r.cornerRadius = -0.001; }},
        BadRow{"CoefficientAboveOne", "discharge_coefficient",
               [](Row& r) { r.dischargeCoefficient = 1.1; }},
        BadRow{"CoefficientNotANumber", "discharge_coefficient",
               [](Row& r) { r.dischargeCoefficient = notANumber; }}),
    [](const auto& each) { return std::string(each.param.name); });

TEST(PortRules, AxialShiftMovesTheLimitsOfTheEdge) {
    auto m = pumpMechanism();
    m.adjuster.axial = -0.002; // track inward: the piston stops 2 mm short of its ODC
    Rows rows = pumpPorts();
    rows.exhaust[0] = {0.0015, 0.0015, 0.012, 9, 0.0, 0.7};
    const auto never = PortTiming::make(rows, pair(m, pumpTrack()));
    ASSERT_FALSE(never);
    EXPECT_NE(never.problems()[0].message.english().find("never open"), std::string::npos);
}

TEST(PortRules, EveryEndNeedsARow) {
    Rows rows = pumpPorts();
    rows.inlet.clear();
    const auto made = PortTiming::make(rows, pair(pumpMechanism(), pumpTrack()));
    ASSERT_FALSE(made);
    EXPECT_EQ(made.problems()[0].path, "/inlet");
}

TEST(PortRules, PortOpenAtInnerDeadCentreIsRejected) {
    auto m = pumpMechanism();
    m.exhaustLead = 60.0 * degree;
    Rows rows = pumpPorts();
    rows.exhaust[0].edge = 0.030;
    const auto made = PortTiming::make(rows, pair(m, pumpTrack()));
    ASSERT_FALSE(made);
    EXPECT_EQ(made.problems()[0].path, "/exhaust/0/edge_mm");
}

} // namespace
} // namespace lobewright::ports
