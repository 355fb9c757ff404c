#include "core/gas/cycle/cycle.h"
#include "core/gas/models/knock.h"
#include "core/units.h"
#include "tests/gas/analytic_chamber.h"
#include "tests/gas/engines.h"

#include <boost/math/quadrature/gauss.hpp>
#include <gtest/gtest.h>

#include <stdexcept>

namespace lobewright::gas {
namespace {

CycleSolution solved(const Chamber& chamber, const Settings& settings, const WorkingGas& gas,
                     const RunConditions& run, const CycleOptions& options = {}) {
    SilentMonitor monitor;
    const auto result = solveCycle(chamber, settings, gas, run, monitor, options);
    if (!result) {
        throw std::runtime_error(result.problems().front().message.english());
    }
    return *result;
}

/// ∫p dV of the trace over an interval, Gauss–Legendre on many pieces.
double traceWork(const CycleSolution& solution, const Chamber& chamber, double from, double to,
                 int pieces = 400) {
    double sum = 0.0;
    for (int i = 0; i < pieces; ++i) {
        const double a = from + (to - from) * i / pieces;
        const double b = from + (to - from) * (i + 1) / pieces;
        sum += boost::math::quadrature::gauss<double, 7>::integrate(
            [&](double x) { return solution.trace->pressure(x) * chamber.at(x).volumeRate; }, a, b);
    }
    return sum;
}

// Adiabatic, closed, constant heat: p·V^γ stays what it was at the last closing (any
// thermodynamics text).
TEST(LimitingCases, ClosedAdiabaticCompressionIsIsentropic) {
    const AnalyticChamber chamber;
    for (const double gamma : {1.3, 1.4, 5.0 / 3.0}) {
        CycleOptions tight;
        tight.relativeTolerance = 1e-9;
        const CycleSolution solution =
            solved(chamber, plainSettings(), constantGas(gamma), running(1500.0, 1, true), tight);
        const CycleAngles& cycle = chamber.cycles().front();
        const double closing = cycle.lastClosing - chamber.period();
        const auto invariant = [&](double theta) {
            return solution.trace->pressure(theta) * std::pow(chamber.at(theta).volume, gamma);
        };
        for (const double theta : {-1.5, -0.7, 0.0, 0.4, 1.9}) {
            EXPECT_NEAR(invariant(theta) / invariant(closing), 1.0, 1e-7) << theta;
        }
    }
}

// Heat added at once at inner dead centre of a gas of constant heat: the closed part of the cycle
// turns 1 − r^(1−γ) of it into work [Heywood, §5.4.2], r from the port closing to the clearance.
TEST(LimitingCases, InstantBurnGivesTheOttoEfficiency) {
    const AnalyticChamber chamber;
    Settings settings = plainSettings();
    settings.burn.start = -0.005 * units::degree;
    settings.burn.duration = 0.01 * units::degree;
    settings.burn.wiebeA = 30.0;
    for (const double gamma : {1.3, 1.4}) {
        const CycleSolution solution =
            solved(chamber, settings, constantGas(gamma), running(1500.0));
        const CycleAngles& cycle = chamber.cycles().front();
        const double closing = cycle.lastClosing - chamber.period();
        const double work = traceWork(solution, chamber, closing, 0.0) +
                            traceWork(solution, chamber, 0.0, cycle.firstOpening);
        const double ratio = chamber.at(closing).volume / chamber.at(0.0).volume;
        EXPECT_NEAR(work / solution.cycles.front().heatReleased, 1.0 - std::pow(ratio, 1.0 - gamma),
                    1e-5);
    }
}

// The work counted by the integrator is the area of the p–V diagram that the trace draws.
TEST(LimitingCases, TraceEnclosesTheWork) {
    const Engine engine = pumpEngine();
    SilentMonitor monitor;
    const auto solution = solveCycle(engine.chamber, engine.settings, engine.run, monitor);
    ASSERT_TRUE(solution);
    const double begin = engine.chamber.cycles().back().lastClosing - engine.chamber.period();
    const double area =
        traceWork(*solution, engine.chamber, begin, begin + engine.chamber.period(), 3000);
    EXPECT_NEAR(area / solution->cycles.front().work, 1.0, 1e-6);
}

// The integral over a constant state is the time over the delay [Livengood & Wu 1955]; a burn too
// lean to matter ends the count at 90 % of what burns.
TEST(LimitingCases, KnockIntegralOfAConstantStateIsTimeOverDelay) {
    AnalyticChamber::Shape shape;
    shape.sweptVolume = 0.0;
    shape.clearanceVolume = 2e-4;
    const AnalyticChamber chamber(shape);
    Settings settings = plainSettings();
    settings.supply.pressure = 20e5;
    settings.exhaustPressure = 19.98e5;
    settings.supply.temperature = 800.0;
    settings.lambda = 1e9;
    settings.burn.start = 0.0;
    settings.burn.duration = 40.0 * units::degree;
    WorkingGas gas = constantGas();
    gas.octaneNumber = 95.0;
    const RunConditions run = running(1000.0);
    const CycleSolution solution = solved(chamber, settings, gas, run);
    const double closing = chamber.cycles().front().lastClosing - chamber.period();
    // 90 % of 1 − exp(−6.908) has burnt at ξ³ = −ln(1 − 0.9·(1 − exp(−6.908)))/6.908
    const double xi = std::cbrt(-std::log(1.0 - 0.9 * (1.0 - std::exp(-6.908))) / 6.908);
    const double time = (xi * settings.burn.duration - closing) / run.omega;
    const CycleFigures& f = solution.cycles.front();
    EXPECT_NEAR(f.trappedTemperature, 800.0, 1.0);
    const double delay = 0.01768 * std::pow(0.95, 3.402) *
                         std::pow(f.trappedPressure / 101325.0, -1.7) *
                         std::exp(3800.0 / f.trappedTemperature);
    ASSERT_TRUE(f.knockIntegral);
    EXPECT_NEAR(*f.knockIntegral / (time / delay), 1.0, 1e-5);
}

// Ahead of the flame the gas is compressed isentropically: with a gas of constant heat its
// temperature follows p^((γ−1)/γ), so that the integral can be had from the trace alone.
TEST(LimitingCases, KnockIntegralFollowsTheIsentropicUnburntGas) {
    const Engine engine = pumpEngine();
    Settings settings = engine.settings;
    settings.wallHeat.model = WallHeatModel::none;
    WorkingGas gas = workingGas(Fuel::petrol);
    const double gamma = 1.35;
    gas.air = gas.products = GasGroup::constant(287.0, gamma / (gamma - 1.0) * 287.0);
    const CycleSolution solution = solved(engine.chamber, settings, gas, engine.run);
    const CycleAngles& cycle = engine.chamber.cycles().front();
    const double c = engine.chamber.cyclesPerTurn();
    const double start = cycle.idc + settings.burn.start / c;
    const double xi = std::cbrt(-std::log(1.0 - 0.9 * (1.0 - std::exp(-6.908))) / 6.908);
    const double end = start + xi * settings.burn.duration / c;
    const double closing = cycle.lastClosing - engine.chamber.period();
    const double t0 = solution.cycles.front().trappedTemperature;
    const double p0 = solution.cycles.front().trappedPressure;
    const auto rate = [&](double theta) {
        const double p = solution.trace->pressure(theta);
        const double t = t0 * std::pow(p / p0, (gamma - 1.0) / gamma);
        return 1.0 / (engine.run.omega * ignitionDelay(95.0, p, t));
    };
    double sum = 0.0;
    for (int i = 0; i < 200; ++i) {
        const double width = (end - closing) / 200.0;
        sum += boost::math::quadrature::gauss<double, 7>::integrate(rate, closing + i * width,
                                                                    closing + (i + 1) * width);
    }
    EXPECT_NEAR(*solution.cycles.front().knockIntegral / sum, 1.0, 1e-5);
}

// Fuel heat = indicated work + wall heat + exhaust enthalpy − supply enthalpy + unburnt, over a
// steady cycle.
TEST(LimitingCases, FirstLawAuditCloses) {
    for (const Engine& engine : {pumpEngine(), buoyEngine()}) {
        SilentMonitor monitor;
        const auto solution = solveCycle(engine.chamber, engine.settings, engine.run, monitor);
        ASSERT_TRUE(solution);
        const CycleFigures& f = solution->cycles.front();
        const double sum = f.work + f.wallHeat + f.exhaustEnthalpy - f.supplyEnthalpy +
                           (f.fuelHeat - f.heatReleased);
        EXPECT_NEAR(sum / f.fuelHeat, 1.0, 1e-6);
    }
}

// What does not burn is exp(−a) of the burnable fuel and the share that combustion efficiency
// leaves; rich of λ = 1 the oxygen decides.
TEST(LimitingCases, RichMixtureBurnsOnlyWhatTheOxygenAllows) {
    Engine engine = pumpEngine();
    engine.settings.lambda = 0.8;
    SilentMonitor monitor;
    const auto solution = solveCycle(engine.chamber, engine.settings, engine.run, monitor);
    ASSERT_TRUE(solution);
    const CycleFigures& f = solution->cycles.front();
    EXPECT_NEAR(f.burntFuelMass / f.fuelMass, 0.8 * (1.0 - std::exp(-6.908)), 1e-6);
    EXPECT_NEAR(f.heatReleased / f.fuelHeat,
                0.8 * (1.0 - std::exp(-6.908)) * engine.settings.combustionEfficiency, 1e-6);
}

} // namespace
} // namespace lobewright::gas
