#include "core/gas/cycle/pair_chamber.h"
#include "core/reference/crank_pair.h"
#include "core/units.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lobewright::study {
namespace {

constexpr double mm = 1e-3;

CrankPairGeometry geometry() {
    CrankPairGeometry g;
    g.bore = 64 * mm;
    g.stroke = {36 * mm, 36 * mm};
    g.rodRatio = 0.28;
    g.clearance = 7.5 * mm;
    g.lead = 12.0 * units::degree;
    g.ports.inlet = {{7.5 * mm, 7.5 * mm, 12 * mm, 10, 1.5 * mm, 0.7}};
    g.ports.exhaust = {{10.5 * mm, 10.5 * mm, 12 * mm, 9, 1.5 * mm, 0.7}};
    return g;
}

/// The slider-crank motion as a track: its Fourier series, which at this rod ratio falls below
/// rounding before order 40.
motion::Pattern track(const CrankPairGeometry& g) {
    constexpr int points = 256;
    const SliderCrank crank(g.stroke.inlet, g.rodRatio);
    motion::HarmonicShape shape;
    for (int order = 1; order <= 40; ++order) {
        double sum = 0.0;
        for (int j = 0; j < points; ++j) {
            const double phi = units::turn * j / points;
            sum += crank.at(phi - units::pi).y * std::cos(order * phi);
        }
        shape.harmonics.push_back({order, 2.0 * sum / points, 0.0});
    }
    return {1, shape};
}

ports::PortTiming camTiming(const CrankPairGeometry& g) {
    const auto curve = motion::LiftCurve::make(track(g));
    mechanism::Mechanism m;
    m.cylinders = 1;
    m.pitchRadius = 95 * mm;
    m.bore = g.bore;
    m.clearance = g.clearance;
    m.recess = g.recess;
    m.exhaustLead = g.lead;
    m.adjuster.axial = g.shift;
    m.roller = {16 * mm, 14 * mm, std::nullopt, 0.0};
    m.pistonMass = {0.6, 0.6};
    if (g.oneSided) {
        m.arrangement = mechanism::Arrangement::oneSided;
    }
    const auto pair = mechanism::OpposedPair::make(m, {*curve, *curve});
    EXPECT_TRUE(pair);
    return *ports::PortTiming::make(g.ports, *pair);
}

/// The ordinary two-stroke: one piston against a head, both rows in its way.
CrankPairGeometry ordinary() {
    CrankPairGeometry g = geometry();
    g.oneSided = true;
    g.lead = 0.0;
    g.stroke = {64 * mm, 0.0};
    g.ports.inlet = {{14 * mm, 14 * mm, 12 * mm, 8, 1.5 * mm, 0.7}};
    g.ports.exhaust = {{21 * mm, 21 * mm, 15 * mm, 4, 1.5 * mm, 0.7}};
    return g;
}

gas::Settings settings() {
    gas::Settings s;
    s.lambda = 1.1;
    s.supply.pressure = 1.3e5;
    s.supply.temperature = 330.0;
    s.exhaustPressure = 1.05e5;
    return s;
}

gas::RunConditions run(bool motored) {
    gas::RunConditions r;
    r.omega = 3000.0 * units::revPerMinute;
    r.motored = motored;
    r.cylinders = 1;
    r.cylinderAngles = {0.0};
    return r;
}

void expectSameGeometry(CrankPairGeometry g) {
    g.shift = 0.8 * mm;
    g.recess = 2e-6;
    const auto crank = CrankPairChamber::make(g);
    ASSERT_TRUE(crank);
    const gas::PairChamber cam(camTiming(g));
    const gas::CycleAngles& a = crank->cycles().front();
    const gas::CycleAngles& b = cam.cycles().front();
    EXPECT_NEAR(a.idc, b.idc, 1e-10);
    EXPECT_NEAR(a.inletOpens, b.inletOpens, 1e-10);
    EXPECT_NEAR(a.exhaustOpens, b.exhaustOpens, 1e-10);
    EXPECT_NEAR(a.inletCloses, b.inletCloses, 1e-10);
    EXPECT_NEAR(a.exhaustCloses, b.exhaustCloses, 1e-10);
    ASSERT_EQ(crank->kinks().size(), cam.kinks().size());
    for (std::size_t i = 0; i < cam.kinks().size(); ++i) {
        EXPECT_NEAR(crank->kinks()[i], cam.kinks()[i], 1e-10);
    }
    for (double theta = 0.0; theta < units::turn; theta += 0.01) {
        const auto x = crank->at(theta);
        const auto y = cam.at(theta);
        EXPECT_NEAR(x.volume, y.volume, 1e-12 * y.volume);
        EXPECT_NEAR(x.volumeRate, y.volumeRate, 1e-12 * cam.sweptVolume());
        EXPECT_NEAR(x.inletArea, y.inletArea, 1e-14);
        EXPECT_NEAR(x.exhaustArea, y.exhaustArea, 1e-14);
        EXPECT_NEAR(x.linerLength, y.linerLength, 1e-14);
    }
}

TEST(CrankPair, EventsAndVolumesAreThoseOfATrackOfTheSameMotion) {
    expectSameGeometry(geometry());
}

TEST(CrankPair, OneSidedEventsAndVolumesAreThoseOfATrackOfTheSameMotion) {
    expectSameGeometry(ordinary());
}

/// `near`: relative. The pump takes its volume's slope from polynomials, which costs digits.
void expectSameCycle(const CrankPairGeometry& g, const gas::Settings& settings,
                     double near = 1e-8) {
    const auto crank = CrankPairChamber::make(g);
    ASSERT_TRUE(crank);
    const gas::PairChamber cam(camTiming(g));
    SilentMonitor monitor;
    gas::CycleOptions tight; // so that errors of the integration do not show
    tight.relativeTolerance = 1e-9;
    for (const bool motored : {false, true}) {
        const auto a = gas::solveCycle(*crank, settings, run(motored), monitor, tight);
        const auto b = gas::solveCycle(cam, settings, run(motored), monitor, tight);
        ASSERT_TRUE(a) << a.problems().front().message.english();
        ASSERT_TRUE(b) << b.problems().front().message.english();
        using F = gas::CycleFigures;
        for (const auto member :
             {&F::work, &F::imep, &F::fuelMass, &F::wallHeat, &F::trappedMass, &F::trappedPressure,
              &F::trappedTemperature, &F::purity, &F::deliveredMass, &F::deliveryRatio,
              &F::trappingEfficiency, &F::peakPressure, &F::peakTemperature}) {
            const double expected = b->cycles.front().*member;
            EXPECT_NEAR(a->cycles.front().*member, expected, near * std::abs(expected));
        }
        const Samples theta = Samples::LinSpaced(361, 0.0, units::turn);
        const Samples pressure = b->trace->sample(theta).pressure;
        EXPECT_LT((a->trace->sample(theta).pressure / pressure - 1.0).abs().maxCoeff(), near);
    }
}

/// The strongest check of both: two independent mechanisms, one gas.
TEST(CrankPair, CycleIsThatOfATrackOfTheSameMotion) {
    expectSameCycle(geometry(), settings());
}

TEST(CrankPair, OneSidedCycleIsThatOfTheOrdinaryTwoStroke) {
    expectSameCycle(ordinary(), settings());
}

TEST(CrankPair, OneSidedCycleWithPumpIsThatOfTheOrdinaryTwoStroke) {
    gas::Settings pumped = settings();
    pumped.exhaustPressure = 1.01e5;
    pumped.supply.kind = gas::SupplyKind::underPiston;
    pumped.supply.pump.deadVolume = 350e-6;
    pumped.supply.pump.reed.area = 450e-6;
    expectSameCycle(ordinary(), pumped, 1e-5);
}

TEST(CrankPair, CompressionIsThatOfClearanceAndStrokes) {
    CrankPairGeometry g = geometry();
    g.lead = 0.0;
    const auto crank = CrankPairChamber::make(g);
    ASSERT_TRUE(crank);
    const double least = crank->at(crank->cycles().front().idc).volume;
    EXPECT_NEAR(least, units::pi / 4.0 * 0.064 * 0.064 * 0.0075, 1e-15);
    EXPECT_NEAR(crank->at(0.0).volume / least, (7.5 + 72.0) / 7.5, 1e-12);
    EXPECT_NEAR(crank->sweptVolume(), units::pi / 4.0 * 0.064 * 0.064 * 0.072, 1e-15);
}

TEST(CrankPair, ImpossibleGeometryIsNamed) {
    CrankPairGeometry g = geometry();
    g.clearance = -1.0 * mm;
    const auto collides = CrankPairChamber::make(g);
    ASSERT_FALSE(collides);
    EXPECT_EQ(collides.problems().front().path, "/mechanism/clearance_mm");
    g = geometry();
    g.ports.exhaust.front().edge = 40 * mm;
    const auto never = CrankPairChamber::make(g);
    ASSERT_FALSE(never);
    EXPECT_EQ(never.problems().front().path, "/ports/exhaust");
}

} // namespace
} // namespace lobewright::study
