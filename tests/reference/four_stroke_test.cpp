#include "core/gas/models/fuel.h"
#include "core/loads/quadrature.h"
#include "core/reference/crank_pair.h"
#include "core/reference/four_stroke.h"
#include "core/units.h"

#include <Eigen/LU>
#include <gtest/gtest.h>

#include <cmath>

namespace lobewright::study {
namespace {

constexpr double degree = units::degree;

FourStrokeChamber chamberOf(const design::FourStroke& engine, double sweptVolume = 0.5e-3) {
    auto made = FourStrokeChamber::make(engine, sweptVolume, 0.28);
    EXPECT_TRUE(made);
    return std::move(made).value();
}

gas::Settings petrol() {
    gas::Settings s;
    s.fuel = gas::Fuel::petrol;
    s.lambda = 1.0;
    s.burn.start = -0.5 * 22.0 * degree; // 22 crank degrees before top dead centre
    s.burn.duration = 0.5 * 60.0 * degree;
    return s;
}

gas::CycleSolution solved(const gas::Chamber& chamber, const gas::Settings& settings, double rpm,
                          bool motored) {
    gas::RunConditions run;
    run.omega = rpm * units::revPerMinute;
    run.motored = motored;
    run.cylinders = 1;
    run.cylinderAngles = {0.0};
    SilentMonitor monitor;
    gas::CycleOptions options;
    options.relativeTolerance = 1e-10;
    options.steadyTolerance = 1e-10;
    auto solution = gas::solveCycle(chamber, settings, run, monitor, options);
    EXPECT_TRUE(solution) << (solution ? "" : solution.problems().front().message.english());
    return std::move(solution).value();
}

/// ∫p dV over [from, to] [J].
double work(const FourStrokeChamber& chamber, const gas::CycleSolution& gas, double from,
            double to) {
    const auto nodes = loads::periodQuadrature(chamber.period(), chamber.kinks(), 2.0 * degree);
    double sum = 0.0;
    for (Eigen::Index i = 0; i < nodes.theta.size(); ++i) {
        const double theta = nodes.theta(i);
        if (theta > from && theta < to) {
            sum += nodes.weight(i) * gas.trace->pressure(theta) * chamber.at(theta).volumeRate;
        }
    }
    return sum;
}

TEST(FourStroke, GeometryIsThatOfBoreStrokeAndCompression) {
    const auto chamber = chamberOf({});
    EXPECT_NEAR(chamber.crank().stroke(), chamber.bore(), 1e-15);
    EXPECT_NEAR(units::pi / 4.0 * std::pow(chamber.bore(), 3.0), 0.5e-3, 1e-15);
    const double least = chamber.at(0.0).volume;
    EXPECT_NEAR(chamber.at(units::pi).volume / least, 10.5, 1e-12);
    EXPECT_NEAR(chamber.at(2.0 * units::pi).volume, least, 1e-18);
    EXPECT_DOUBLE_EQ(chamber.period(), 4.0 * units::pi);
    // Mean piston speed 2·S·n = meanStrokeSum·c·n
    EXPECT_NEAR(chamber.meanStrokeSum() * chamber.cyclesPerTurn(), 2.0 * chamber.bore(), 1e-15);
}

TEST(FourStroke, ValvesOpenWhereTheirEventsSay) {
    const auto chamber = chamberOf({});
    const gas::CycleAngles& events = chamber.cycles().front();
    EXPECT_NEAR(events.exhaustOpens / degree, 130.0, 1e-10);
    EXPECT_NEAR(events.inletOpens / degree, 345.0, 1e-10);
    EXPECT_NEAR(events.exhaustCloses / degree, 375.0, 1e-10);
    EXPECT_NEAR(events.inletCloses / degree, 590.0, 1e-10);
    EXPECT_EQ(chamber.at(129.9 * degree).exhaustArea, 0.0);
    EXPECT_GT(chamber.at(131.0 * degree).exhaustArea, 0.0);
    EXPECT_EQ(chamber.at(590.1 * degree).inletArea, 0.0);
    // Midway the valves stand at 0.25 D, where curtain and seat are equal: n·π·D²/4·C_d.
    const double seat = 0.36 * chamber.bore();
    EXPECT_NEAR(chamber.at(0.5 * (345.0 + 590.0) * degree).inletArea,
                0.65 * 2.0 * units::pi * seat * seat / 4.0, 1e-12);
}

TEST(FourStroke, CurtainLimitsSmallLiftsAndTheSeatLargeOnes) {
    EXPECT_NEAR(valveArea(2, 0.03, 0.003), 2.0 * units::pi * 0.03 * 0.003, 1e-15);
    EXPECT_NEAR(valveArea(2, 0.03, 0.009), 2.0 * units::pi * 0.0009 / 4.0, 1e-15);
    EXPECT_DOUBLE_EQ(valveLift(1.0, 0.0, 2.0, 0.01), 0.01);
    EXPECT_DOUBLE_EQ(valveLift(2.5, 0.0, 2.0, 0.01), 0.0);
}

// Published values: 4 (Heywood 1988, §13.2; from memory).
// Heywood 1988, §13.2, total motored friction of four cylinders, from memory: 1.17, 1.47, 2.37 and
// 3.67 bar at 1000, 2000, 4000 and 6000 rev/min; less 0.2 bar of pumping (own estimate).
TEST(FourStroke, FrictionIsThatOfTheFitLessPumping) {
    for (const auto& [rpm, fit] : {std::pair{1000.0, 1.17}, std::pair{2000.0, 1.47},
                                   std::pair{4000.0, 2.37}, std::pair{6000.0, 3.67}}) {
        EXPECT_NEAR(fourStrokeFmep(rpm * units::revPerMinute) / units::bar, fit - 0.2, 1e-9);
    }
}

// Bands: volumetric efficiency of naturally aspirated spark-ignition engines at its best 80 … 90 %
// (Heywood 1988, §2.10, from memory; 75 … 95 % taken over speeds); bmep at full load 8.5 … 10.5 bar
// (encyclopedia page on brake mean effective pressure) with fmep of the fit; brake efficiency from
// 25 to 31 % (270 … 330 g/kWh, Heywood table 2.1), to 36 % with a compression ratio of 10.5 (own
// estimate). A single zone without dissociation adds up to a tenth to both.
TEST(FourStroke, AnOrdinaryEngineStandsInItsPublishedBands) {
    const auto chamber = chamberOf({});
    for (const double rpm : {2000.0, 3000.0, 4500.0}) {
        const auto gas = solved(chamber, petrol(), rpm, false);
        const gas::CycleFigures& cycle = gas.cycles.front();
        EXPECT_GT(cycle.deliveryRatio, 0.75) << rpm;
        EXPECT_LT(cycle.deliveryRatio, 0.95) << rpm;
        const double fmep = fourStrokeFmep(rpm * units::revPerMinute);
        const double bmep = (cycle.imep - fmep) / units::bar;
        EXPECT_GT(bmep, 8.0) << rpm;
        EXPECT_LT(bmep, 11.5) << rpm;
        EXPECT_GT(cycle.indicatedEfficiency, 0.30) << rpm;
        EXPECT_LT(cycle.indicatedEfficiency, 0.42) << rpm;
        const double brake = cycle.indicatedEfficiency * (1.0 - fmep / cycle.imep);
        EXPECT_GT(brake, 0.25) << rpm;
        EXPECT_LT(brake, 0.36) << rpm;
        EXPECT_LT(cycle.massResidual, 1e-9);
        EXPECT_LT(cycle.energyResidual, 1e-6);
    }
}

TEST(FourStroke, GasExchangeCostsWorkAndBoostGivesItBack) {
    const auto chamber = chamberOf({});
    const auto motored = solved(chamber, petrol(), 3000.0, true);
    // From bottom dead centre to bottom dead centre the piston drives gas out and draws it in.
    EXPECT_LT(work(chamber, motored, units::pi, 3.0 * units::pi), 0.0);
    EXPECT_LT(motored.cycles.front().imep, 0.0);
    EXPECT_NEAR(work(chamber, motored, 0.0, chamber.period()), motored.cycles.front().work,
                1e-6 * std::abs(motored.cycles.front().work));
    gas::Settings boosted = petrol();
    boosted.supply.pressure = 1.6e5;
    const auto fed = solved(chamber, boosted, 1500.0, true);
    EXPECT_GT(work(chamber, fed, units::pi, 3.0 * units::pi), 0.0);
}

TEST(FourStroke, PumpingGrowsWithSpeed) {
    const auto chamber = chamberOf({});
    double last = 0.0;
    for (const double rpm : {1500.0, 3000.0, 6000.0}) {
        const auto gas = solved(chamber, petrol(), rpm, true);
        const double loop = work(chamber, gas, units::pi, 3.0 * units::pi);
        EXPECT_LT(loop, last);
        last = loop;
    }
}

/// Two opposed pistons of half the stroke make the same volume law as one piston against a head.
/// Ports open and close where the valves do: exhaust 130° after and 130° before inner dead centre.
CrankPairChamber twin(const FourStrokeChamber& chamber) {
    CrankPairGeometry g;
    g.bore = chamber.bore();
    g.stroke = {0.5 * chamber.bore(), 0.5 * chamber.bore()};
    g.rodRatio = chamber.crank().rodRatio();
    g.clearance = chamber.clearanceVolume() / chamber.pistonArea();
    const SliderCrank half(g.stroke.inlet, g.rodRatio);
    const double exhaustEdge = half.at(130.0 * degree).y;
    const double inletEdge = half.at(145.0 * degree).y;
    g.ports.exhaust = {{exhaustEdge, exhaustEdge, 0.01, 24, 0.0, 0.7}};
    g.ports.inlet = {{inletEdge, inletEdge, 0.01, 24, 0.0, 0.7}};
    auto made = CrankPairChamber::make(g);
    EXPECT_TRUE(made);
    return std::move(made).value();
}

Eigen::Vector3d stateOf(const gas::CycleSolution& gas) {
    const gas::CycleFigures& cycle = gas.cycles.front();
    return {std::log(cycle.trappedPressure), std::log(cycle.trappedTemperature), cycle.purity};
}

/// The two-stroke at the exhaust pressure, supply pressure and supply temperature that trap this
/// state, by Newton's method. It runs slowly, to be scavenged well.
gas::CycleSolution trapping(const CrankPairChamber& chamber, gas::Settings settings,
                            const Eigen::Vector3d& wanted) {
    Eigen::Vector3d unknown(wanted(0), std::log(1.1), std::log(310.0));
    const auto at = [&](const Eigen::Vector3d& x) {
        settings.exhaustPressure = std::exp(x(0));
        settings.supply.pressure = std::exp(x(0) + x(1));
        settings.supply.temperature = std::exp(x(2));
        return solved(chamber, settings, 800.0, false);
    };
    gas::CycleSolution solution = at(unknown);
    for (int i = 0; i < 12; ++i) {
        const Eigen::Vector3d open = stateOf(solution) - wanted;
        if (open.cwiseAbs().maxCoeff() < 1e-10) {
            break;
        }
        Eigen::Matrix3d slope;
        for (int j = 0; j < 3; ++j) {
            Eigen::Vector3d beside = unknown;
            beside(j) += 1e-4;
            slope.col(j) = (stateOf(at(beside)) - stateOf(solution)) / 1e-4;
        }
        unknown -= slope.partialPivLu().solve(open);
        solution = at(unknown);
    }
    EXPECT_LT((stateOf(solution) - wanted).cwiseAbs().maxCoeff(), 1e-9);
    return solution;
}

TEST(FourStroke, ClosedPartIsThatOfATwoStrokeOfTheSameVolumeAndCharge) {
    const auto four = chamberOf({});
    const auto two = twin(four);
    for (double theta = 0.0; theta < units::turn; theta += 0.1) {
        // The pair stands at inner dead centre at θ = π.
        EXPECT_NEAR(two.at(theta + units::pi).volume, four.at(theta).volume,
                    1e-13 * four.sweptVolume());
    }
    // Wall heat scales with the speed of the pistons, which is half here: left out.
    gas::Settings settings = petrol();
    settings.wallHeat.model = gas::WallHeatModel::none;
    const auto fourGas = solved(four, settings, 3000.0, false);
    gas::Settings twoSettings = settings;
    twoSettings.burn.start *= 2.0; // cycle degrees are crank degrees here
    twoSettings.burn.duration *= 2.0;
    const auto twoGas = trapping(two, twoSettings, stateOf(fourGas));
    for (double angle = -129.0; angle < 129.5; angle += 3.0) {
        const double expected = fourGas.trace->pressure(angle * degree);
        EXPECT_NEAR(twoGas.trace->pressure(units::pi + angle * degree), expected, 1e-7 * expected)
            << angle;
    }
}

TEST(FourStroke, NumbersOutOfRangeAreNamed) {
    design::FourStroke engine;
    engine.compressionRatio = 0.5;
    engine.inletValves = 0;
    engine.inletOpens = 100.0 * degree;
    const auto made = FourStrokeChamber::make(engine, 0.5e-3, 0.28);
    ASSERT_FALSE(made);
    EXPECT_EQ(made.problems().size(), 3u);
    for (const Problem& problem : made.problems()) {
        EXPECT_EQ(problem.path.rfind("/reference/four_stroke/", 0), 0u);
    }
    EXPECT_FALSE(FourStrokeChamber::make({}, 0.5e-3, 1.2));
    EXPECT_FALSE(FourStrokeChamber::make({}, 0.0, 0.28));
}

} // namespace
} // namespace lobewright::study
