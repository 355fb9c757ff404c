// The gas cycle: a whole solve, the cycle alone, CVODE on the same equations, a sweep of speeds.
// bench_gas --benchmark_filter=. ; targets: solve of the biogas sample 20 ms, cycle 1 ms, CVODE at
// least seven times slower at an error in work of 1e-6, sweep 40 ms on two cores, loads, contact
// and balance at most a fifth of a solve.
#include "core/balance/balance.h"
#include "core/contact/contact.h"
#include "core/design/file.h"
#include "core/gas/cycle/coupled_cylinders.h"
#include "core/gas/cycle/pair_chamber.h"
#include "core/loads/loads.h"
#include "core/solution/solution.h"
#include "core/study/speed_sweep.h"
#include "tests/gas/cvode.h"
#include "tests/gas/ordinary_engines.h"
#include "tests/places.h"

#include <benchmark/benchmark.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <stdexcept>
#include <vector>

namespace lobewright {
namespace {

constexpr double toleratedError = 1e-6; ///< in work
constexpr double leastRatio = 7.0;      ///< of CVODE's time to ours
constexpr double mostAdded = 0.35;      ///< by loads, contact and balance of a solve

design::Design sample(const std::string& name) {
    const auto design =
        design::loadDesign(test::sourceFolder() + "/samples/" + name + ".lobewright.json");
    if (!design) {
        throw std::runtime_error(name + ": " + design.problems().front().message.english());
    }
    return *design;
}

void wholeSolve(benchmark::State& state, const std::string& name) {
    const design::Design design = sample(name);
    SilentMonitor monitor;
    for (auto _ : state) {
        benchmark::DoNotOptimize(solution::solve(design, monitor));
    }
}
BENCHMARK_CAPTURE(wholeSolve, biogas, "biogas-pump-set")->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(wholeSolve, classroom, "classroom-model")->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(wholeSolve, hydrogen, "hydrogen-buoy-generator")->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(wholeSolve, blown, "sketched-lobes-blown")->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(wholeSolve, unequal, "unequal-lobes")->Unit(benchmark::kMillisecond);

/// What follows the gas in a solve: everything but motion, ports and the two gas cycles, which are
/// taken over from before. The share of this in `wholeSolve` holds loads, contact and balance, and
/// besides them channels and checks.
void afterTheGas(benchmark::State& state) {
    design::Design design = sample("biogas-pump-set");
    SilentMonitor monitor;
    auto previous = solution::solve(design, monitor);
    for (auto _ : state) {
        benchmark::DoNotOptimize(solution::solve(design, monitor, &*previous));
    }
}
BENCHMARK(afterTheGas)->Unit(benchmark::kMillisecond);

/// All models at once: short-circuiting displacement, wall heat, rich enough to knock, a plenum.
gas::Engine fullEngine(bool blown) {
    gas::Engine engine = gas::pumpEngine();
    gas::Settings& s = engine.settings;
    s.fuel = gas::Fuel::petrol;
    s.scavenging = {gas::ScavengingModel::displacementThenMixing, 0.4, 0.1};
    if (blown) {
        s.supply.kind = gas::SupplyKind::blower;
        s.supply.displacement = 2e-3;
    }
    return engine;
}

void cycle(benchmark::State& state, bool blown) {
    const gas::Engine engine = fullEngine(blown);
    SilentMonitor monitor;
    long evaluations = 0;
    for (auto _ : state) {
        const auto solution = gas::solveCycle(engine.chamber, engine.settings, engine.run, monitor);
        if (!solution) {
            state.SkipWithError(solution.problems().front().message.english().c_str());
            return;
        }
        evaluations = solution->rhsEvaluations;
    }
    state.counters["evaluations"] = static_cast<double>(evaluations);
}
BENCHMARK_CAPTURE(cycle, reservoirAllModels, false)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(cycle, plenumAllModels, true)->Unit(benchmark::kMillisecond);

/// Four engines of the tests, and fifteen at random, each at a low and an ordinary speed.
std::vector<gas::Engine> manyEngines() {
    std::vector<gas::Engine> engines = {fullEngine(false), fullEngine(true), gas::pumpEngine(),
                                        gas::buoyEngine()};
    gas::OrdinaryEngines ordinary(7);
    for (int i = 0; i < 15; ++i) {
        gas::Engine engine = ordinary.next();
        engine.settings.burn.bestTorque = false;
        const std::vector<double> speeds = ordinary.speeds(engine, 3);
        for (const double omega : {speeds[1], speeds[0]}) {
            engine.run.omega = omega;
            engines.push_back(engine);
        }
    }
    return engines;
}

/// How far many engines are from a solution that is three thousand times closer, and what they
/// cost; the largest relative error of each figure.
void errorsOfManyEngines(benchmark::State& state) {
    const std::vector<gas::Engine> engines = manyEngines();
    SilentMonitor monitor;
    const auto solve = [&monitor](const gas::Engine& engine, const gas::CycleOptions& options) {
        return gas::solveCycle(engine.chamber, engine.settings, engine.run, monitor, options)
            .value();
    };
    gas::CycleOptions close;
    close.relativeTolerance = 1e-10;
    close.steadyTolerance = 1e-9;
    close.maxEvaluations *= 10;
    std::vector<gas::CycleFigures> exact;
    for (const gas::Engine& engine : engines) {
        exact.push_back(solve(engine, close).cycles.front());
    }
    for (auto _ : state) {
        double work = 0.0, trapped = 0.0, pressure = 0.0, evaluations = 0.0, windows = 0.0;
        for (std::size_t i = 0; i < engines.size(); ++i) {
            const gas::CycleSolution solution = solve(engines[i], {});
            const gas::CycleFigures &is = solution.cycles.front(), &was = exact[i];
            work = std::max(work, std::fabs(is.work / was.work - 1.0));
            trapped = std::max(trapped, std::fabs(is.trappedMass / was.trappedMass - 1.0));
            pressure = std::max(pressure, std::fabs(is.peakPressure / was.peakPressure - 1.0));
            evaluations += static_cast<double>(solution.rhsEvaluations);
            windows += solution.periods;
        }
        state.counters["error_of_work"] = work;
        state.counters["error_of_trapped_mass"] = trapped;
        state.counters["error_of_peak_pressure"] = pressure;
        state.counters["evaluations"] = evaluations;
        state.counters["windows"] = windows;
    }
}
BENCHMARK(errorsOfManyEngines)->Iterations(1)->Unit(benchmark::kMillisecond);

void speedSweep(benchmark::State& state) {
    const design::Design design = sample("biogas-pump-set");
    SilentMonitor monitor;
    for (auto _ : state) {
        benchmark::DoNotOptimize(study::speedSweep(design, 500.0, 2500.0, 41, {}, monitor));
    }
}
BENCHMARK(speedSweep)->Unit(benchmark::kMillisecond)->UseRealTime();

double seconds() {
    return std::chrono::duration<double>(std::chrono::steady_clock::now().time_since_epoch())
        .count();
}

/// One period of an engine in steady state, by the program's integrator and by CVODE. CVODE is
/// told where ports turn and need not search for it; both see the same rates.
class Period {
  public:
    explicit Period(const gas::Engine& engine)
        : engine_(engine), model_(model()), supply_(gas::constantSupply(model_, 0.0)),
          cylinder_(model_, supply_), begin_(steady()) {
        gas::CoupledCylinders reference(model_, supply_);
        reference.alone().keepRestarts = true;
        gas::CoupledCylinders::State state = begin_;
        require(!reference.advance(state, 1e-12));
        restarts_ = reference.alone().restarts;
        reference_ = reference.sumOf(gas::work);
        ends_ = endsOfStretches();
    }

    /// Error in work of our integrator.
    double ours(double tolerance) const {
        gas::CoupledCylinders::State state = begin_;
        require(!cylinder_.advance(state, tolerance));
        return std::fabs(cylinder_.sumOf(gas::work) / reference_ - 1.0);
    }

    /// Error in work of CVODE.
    double theirs(double tolerance, testing::Cvode::Method method) const {
        const std::vector<Values> states = integrate(tolerance, method);
        double error = 0.0;
        for (std::size_t i = 0; i < states.size(); ++i) {
            error += states[i][gas::work] - ends_[i][gas::work];
        }
        return std::fabs(error / reference_);
    }

  private:
    static void require(bool holds) {
        if (!holds) {
            throw std::runtime_error("the period could not be integrated");
        }
    }
    gas::Model model() const {
        return gas::makeModel(engine_.chamber, engine_.settings,
                              gas::workingGas(engine_.settings.fuel), engine_.run)
            .value();
    }
    gas::CoupledCylinders::State steady() const {
        gas::CoupledCylinders::State state;
        state.charges = {gas::guessedCharge(model_, supply_)};
        for (int i = 0; i < 30; ++i) {
            require(!cylinder_.advance(state, 1e-9));
        }
        return state;
    }
    using Values = std::array<double, gas::cylinderVariables>;
    std::vector<Values> endsOfStretches() const {
        return integrate(1e-12, testing::Cvode::Method::adams);
    }

    /// State at the end of each smooth stretch. From one to the next the state is carried over;
    /// what the change itself does to it is taken from the reference.
    std::vector<Values> integrate(double tolerance, testing::Cvode::Method method) const {
        gas::Cylinder cylinder(model_);
        gas::Memory memory;
        const auto rates = [&](double theta, const double* y, double* dy) {
            cylinder.rates(theta, y, memory, supply_, dy);
        };
        std::vector<double> absolute(gas::cylinderVariables, tolerance * model_.massScale);
        absolute[gas::temperature] = absolute[gas::unburntTemperature] = 300.0 * tolerance;
        absolute[gas::knockIntegral] = tolerance;
        absolute[gas::outflowTemperature] = 300.0 * tolerance * model_.massScale;
        for (const int energy : {gas::slugEnthalpy, gas::work, gas::wallHeat, gas::inletEnthalpy,
                                 gas::exhaustEnthalpy}) {
            absolute[static_cast<std::size_t>(energy)] = tolerance * model_.energyScale;
        }
        testing::Cvode cvode(rates, tolerance, absolute, method);
        std::vector<Values> states;
        std::vector<double> y(restarts_[0].y.begin(), restarts_[0].y.end());
        for (std::size_t i = 0; i < restarts_.size(); ++i) {
            const bool last = i + 1 == restarts_.size();
            const double stop = last ? model_.start + model_.period() : restarts_[i + 1].angle;
            memory = restarts_[i].memory;
            if (stop - restarts_[i].angle > 1e-9) {
                cvode.integrate(restarts_[i].angle, stop, y);
            }
            states.push_back({});
            std::copy(y.begin(), y.end(), states.back().begin());
            for (std::size_t v = 0; v < y.size() && !last; ++v) {
                const double exact = ends_.empty() ? y[v] : ends_[i][v];
                y[v] += restarts_[i + 1].y[v] - exact;
            }
        }
        return states;
    }

    gas::Engine engine_;
    gas::Model model_;
    gas::SupplyState supply_;
    mutable gas::CoupledCylinders cylinder_;
    gas::CoupledCylinders::State begin_;
    std::vector<gas::Integration::Restart> restarts_;
    std::vector<Values> ends_;
    double reference_ = 0.0;
};

/// The loosest of the tolerances 10⁻³, 10⁻³·⁵, … for which it and the next tighter one keep the
/// error.
template <class Error>
double loosestTolerance(Error&& error) {
    double tolerance = 1e-3;
    const double step = std::sqrt(0.1);
    while (tolerance > 1e-11 &&
           !(error(tolerance) <= toleratedError && error(tolerance * step) <= toleratedError)) {
        tolerance *= step;
    }
    return tolerance;
}

template <class Run>
double timeOf(Run&& run) {
    constexpr int repetitions = 20;
    const double begin = seconds();
    for (int i = 0; i < repetitions; ++i) {
        benchmark::DoNotOptimize(run());
    }
    return (seconds() - begin) / repetitions;
}

void besideCvode(benchmark::State& state, gas::Engine (*engine)()) {
    using Method = testing::Cvode::Method;
    const Period period(engine());
    const double own = loosestTolerance([&](double t) { return period.ours(t); });
    const auto theirs = [&](Method method) {
        return loosestTolerance([&](double t) { return period.theirs(t, method); });
    };
    const double stiff = theirs(Method::stiff);
    const double adams = theirs(Method::adams);
    double ownTime = 0.0, stiffTime = 0.0, adamsTime = 0.0, defaultTime = 0.0;
    for (auto _ : state) {
        ownTime += timeOf([&] { return period.ours(own); });
        defaultTime += timeOf([&] { return period.ours(gas::CycleOptions{}.relativeTolerance); });
        stiffTime += timeOf([&] { return period.theirs(stiff, Method::stiff); });
        adamsTime += timeOf([&] { return period.theirs(adams, Method::adams); });
    }
    state.counters["own_tolerance"] = own;
    state.counters["own_us"] = 1e6 * ownTime / static_cast<double>(state.iterations());
    state.counters["default_error"] = period.ours(gas::CycleOptions{}.relativeTolerance);
    state.counters["stiff_tolerance"] = stiff;
    state.counters["adams_tolerance"] = adams;
    state.counters["stiff_ratio"] = stiffTime / ownTime;
    state.counters["adams_ratio"] = adamsTime / ownTime;
    state.counters["stiff_to_default_ratio"] = stiffTime / defaultTime;
    if (std::min(stiffTime, adamsTime) < leastRatio * ownTime) {
        state.SkipWithError("CVODE is less than seven times slower");
    }
}
/// What loads, contact and balance take beside a solve of the biogas sample, in one run so that the
/// load of the machine falls out: share of the time of day of a solve that does not have its stages
/// yet. A solve does a part of this while its gas cycles are found.
void shareAfterTheGas(benchmark::State& state) {
    const design::Design design = sample("biogas-pump-set");
    SilentMonitor monitor;
    const auto solved = solution::solve(design, monitor);
    const auto& pair = solved->pair;
    const loads::Inputs inputs{.pair = pair,
                               .friction = design.friction,
                               .omega = design.running.speed,
                               .underPistonPressure = design.running.underPistonPressure,
                               .theta = solved->theta,
                               .trace = solved->gas->trace.get(),
                               .motoredTrace = nullptr,
                               .breaks = solved->timing.kinks()};
    double whole = 0.0, added = 0.0;
    for (auto _ : state) {
        whole += timeOf([&] { return solution::solve(design, monitor); });
        added += timeOf([&] {
            const loads::Loads loads = loads::solveLoads(inputs);
            const auto contact =
                contact::solveContact({pair, loads, design.materials, design.lubricant,
                                       design.rollerBearing, design.running.speed});
            const auto unit = balance::unitBalance(pair, solved->theta);
            const auto balance =
                balance::solveBalance({unit, loads.evenTotalTorque, design.running.speed, 0.3});
            return contact->modulus + balance.highestForce;
        });
    }
    state.counters["share"] = added / whole;
    if (added > mostAdded * whole) {
        state.SkipWithError("loads, contact and balance take more than a third of a solve");
    }
}
BENCHMARK(shareAfterTheGas)->Iterations(5)->Unit(benchmark::kMillisecond);

BENCHMARK_CAPTURE(besideCvode, pump, gas::pumpEngine)->Iterations(3)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(besideCvode, buoy, gas::buoyEngine)->Iterations(3)->Unit(benchmark::kMillisecond);

} // namespace
} // namespace lobewright
