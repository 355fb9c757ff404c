// Loads on pressure traces of the solved gas cycle.
#include "core/gas/cycle/pair_chamber.h"
#include "core/loads/loads.h"
#include "core/loads/orders.h"
#include "core/units.h"
#include "tests/machines.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lobewright::loads {
namespace {

using units::degree;
using units::pi;

const Samples theta = evenAngles(720);
constexpr double omega = 1800.0 * units::revPerMinute;

struct Fired {
    mechanism::OpposedPair pair;
    ports::PortTiming timing;
    gas::Settings settings;
    gas::CycleSolution cycle;
    std::vector<double> breaks;
};

Fired fired(gas::Fuel fuel, bool motored, bool closed) {
    auto m = machines::pumpMechanism();
    m.closedTrack = closed;
    const auto pair = machines::pair(m, machines::pumpTrack());
    const auto timing = machines::timing(machines::pumpPorts(), pair);
    gas::Settings settings;
    settings.fuel = fuel;
    settings.lambda = 1.2;
    settings.burn.start = -12.0 * degree;
    settings.burn.duration = 50.0 * degree;
    settings.supply.pressure = 1.3e5;
    settings.supply.temperature = 330.0;
    settings.exhaustPressure = 1.05e5;
    gas::RunConditions run;
    run.omega = omega;
    run.motored = motored;
    run.cylinders = 3;
    run.cylinderAngles = mechanism::cylinderAngles(m);
    SilentMonitor silent;
    auto solved = gas::solveCycle(gas::PairChamber(timing), settings, run, silent);
    EXPECT_TRUE(solved) << (solved ? "" : solved.problems().front().message.english());
    auto cycle = std::move(solved).value();
    std::vector<double> breaks = timing.kinks();
    const double start = pair.deadCentres()[0].idc + cycle.cycles[0].burnStart / 2;
    breaks.push_back(start);
    breaks.push_back(start + settings.burn.duration / 2);
    return {pair, timing, settings, std::move(cycle), breaks};
}

Loads solve(const Fired& engine, const Friction& friction) {
    return solveLoads({engine.pair, friction, omega, 1e5, theta, engine.cycle.trace.get(), nullptr,
                       engine.breaks});
}

struct Case {
    const char* name;
    gas::Fuel fuel;
    bool motored;
};

void PrintTo(const Case& each, std::ostream* out) {
    *out << each.name;
}

class FiredCycle : public testing::TestWithParam<Case> {};

// The gas solver integrates ∮p dV with its states; here it comes from the torque.
TEST_P(FiredCycle, ShaftWorkIsTheWorkOfTheGasWhenFrictionless) {
    const Fired engine = fired(GetParam().fuel, GetParam().motored, true);
    Friction none;
    none.rings.clear();
    none.guide = none.rolling = none.rollerBearing = none.slip = none.shaftBearing = 0.0;
    const Loads loads = solve(engine, none);
    const double work = 2 * 3 * engine.cycle.cycles[0].work;
    const double scale = std::max(std::abs(work), 2 * 3 * 1e5 * engine.pair.sweptVolume());
    EXPECT_NEAR(loads.work.gas, work, 1e-6 * scale);
    EXPECT_NEAR(loads.work.shaft, work, 1e-6 * scale);
}

TEST_P(FiredCycle, ShaftWorkIsGasWorkLessFrictionWithEverythingOn) {
    const Fired engine = fired(GetParam().fuel, GetParam().motored, true);
    const Loads loads = solve(engine, Friction{});
    const double work = 2 * 3 * engine.cycle.cycles[0].work;
    const double scale = std::max(std::abs(work), 2 * 3 * 1e5 * engine.pair.sweptVolume());
    EXPECT_NEAR(loads.work.shaft, work - 2 * pi * loads.losses.total(), 1e-6 * scale);
    EXPECT_LT(loads.work.residual, 1e-6);
    EXPECT_LT(std::abs(loads.work.inertia), 1e-9 * scale);
}

// Power at every single angle, per radian: what the gas and the piston's own inertia give up
// arrives at the shaft or in a loss, T + Σ losses = −[(p − p_under)·A + m·ω²·y'']·y'. A sign that
// is wrong on one stroke, or only while the pull flank carries, would cancel over a turn but not
// here.
TEST_P(FiredCycle, PowerIsAccountedForAtEveryAngle) {
    const Fired engine = fired(GetParam().fuel, GetParam().motored, true);
    const Loads loads = solve(engine, Friction{});
    const Samples pressure = engine.cycle.trace->sample(theta).pressure;
    bool pulled = false;
    for (const End end : bothEnds) {
        const PistonLoads& piston = loads.piston[end];
        const motion::LiftSamples lift = engine.pair.lift(end, theta);
        const Samples given = -((pressure - 1e5) * engine.pair.pistonArea() +
                                engine.pair.mechanism().pistonMass[end] * omega * omega * lift.y2) *
                              lift.y1;
        const Samples taken = piston.torque + piston.ringLoss + piston.guideLoss +
                              piston.rollingLoss + piston.rollerBearingLoss + piston.slipLoss;
        EXPECT_LT((taken - given).abs().maxCoeff(), 1e-11 * given.abs().maxCoeff());
        for (const Samples& loss : {piston.ringLoss, piston.guideLoss, piston.rollingLoss,
                                    piston.rollerBearingLoss, piston.slipLoss}) {
            EXPECT_GE(loss.minCoeff(), 0.0);
        }
        pulled = pulled || (piston.contactForce < 0.0).any();
    }
    EXPECT_TRUE(pulled); // so that the pull flank is looked at as well
}

INSTANTIATE_TEST_SUITE_P(Fuels, FiredCycle,
                         testing::Values(Case{"FiredMethane", gas::Fuel::methane, false},
                                         Case{"FiredHydrogen", gas::Fuel::hydrogen, false},
                                         Case{"FiredPetrol", gas::Fuel::petrol, false},
                                         Case{"MotoredMethane", gas::Fuel::methane, true}),
                         [](const auto& each) { return std::string(each.param.name); });

// Losses of a sound engine of this size: a few tenths of a bar to a bar and a half in all [Heywood
// 1988, ch. 13] (from memory); rings the largest part.
TEST(Friction, OfThePumpEngineIsOfTheUsualSize) {
    const Fired engine = fired(gas::Fuel::methane, false, true);
    const Loads loads = solve(engine, Friction{});
    const double fmep = meanEffectivePressure(engine.pair, loads.losses.total());
    EXPECT_GT(fmep, 0.2e5);
    EXPECT_LT(fmep, 1.5e5);
    for (const double part : {loads.losses.ring, loads.losses.guide, loads.losses.roller,
                              loads.losses.slip, loads.losses.shaftBearing}) {
        EXPECT_GT(part, 0.0);
    }
}

} // namespace
} // namespace lobewright::loads
