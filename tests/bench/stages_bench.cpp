// What loads, contact and balance add to the gas cycle of a three-cylinder engine at 0.5° output:
// bench_stages --benchmark_filter=. ; the three together should stay below a fifth of a solve.
#include "core/balance/balance.h"
#include "core/contact/contact.h"
#include "core/gas/cycle/pair_chamber.h"
#include "core/loads/orders.h"
#include "tests/machines.h"

#include <benchmark/benchmark.h>

namespace lobewright {
namespace {

struct Pump {
    mechanism::Mechanism mechanism;
    mechanism::OpposedPair pair;
    ports::PortTiming timing;
    gas::Settings settings;
    gas::RunConditions run;
    gas::CycleSolution cycle;
    loads::Friction friction;
    contact::Materials materials;
    contact::Lubricant oil;
    contact::RollerBearing bearing;
    Samples theta = loads::evenAngles(720);
    loads::Loads loads;

    explicit Pump(std::optional<double> crown = {})
        : mechanism(withCrown(crown)), pair(machines::pair(mechanism, machines::pumpTrack())),
          timing(machines::timing(machines::pumpPorts(), pair)) {
        settings.lambda = 1.1;
        settings.burn.start = -12.0 * units::degree;
        settings.burn.duration = 50.0 * units::degree;
        settings.supply.pressure = 1.3e5;
        settings.supply.temperature = 330.0;
        run.omega = 1800.0 * units::revPerMinute;
        run.cylinders = mechanism.cylinders;
        run.cylinderAngles = mechanism::cylinderAngles(mechanism);
        cycle = solveGas();
        loads = solveLoads();
    }
    static mechanism::Mechanism withCrown(std::optional<double> crown) {
        auto m = machines::pumpMechanism();
        m.roller.crownRadius = crown;
        return m;
    }
    gas::CycleSolution solveGas() const {
        SilentMonitor silent;
        return gas::solveCycle(gas::PairChamber(timing), settings, run, silent).value();
    }
    loads::Loads solveLoads() const {
        return loads::solveLoads(
            {pair, friction, run.omega, 1e5, theta, cycle.trace.get(), nullptr, timing.kinks()});
    }
};

void gasCycle(benchmark::State& state) {
    const Pump pump;
    for (auto _ : state) {
        benchmark::DoNotOptimize(pump.solveGas());
    }
}
BENCHMARK(gasCycle)->Unit(benchmark::kMicrosecond);

void loadsStage(benchmark::State& state) {
    const Pump pump;
    for (auto _ : state) {
        benchmark::DoNotOptimize(pump.solveLoads());
    }
}
BENCHMARK(loadsStage)->Unit(benchmark::kMicrosecond);

void contactStage(benchmark::State& state, std::optional<double> crown) {
    const Pump pump(crown);
    for (auto _ : state) {
        benchmark::DoNotOptimize(contact::solveContact(
            {pump.pair, pump.loads, pump.materials, pump.oil, pump.bearing, pump.run.omega}));
    }
}
BENCHMARK_CAPTURE(contactStage, straight, std::nullopt)->Unit(benchmark::kMicrosecond);
BENCHMARK_CAPTURE(contactStage, crowned, std::optional(0.4))->Unit(benchmark::kMicrosecond);

void balanceStage(benchmark::State& state) {
    const Pump pump;
    for (auto _ : state) {
        const balance::UnitBalance unit = balance::unitBalance(pump.pair, pump.theta);
        benchmark::DoNotOptimize(
            balance::solveBalance({unit, pump.loads.evenTotalTorque, pump.run.omega, 0.3}));
    }
}
BENCHMARK(balanceStage)->Unit(benchmark::kMicrosecond);

} // namespace
} // namespace lobewright
