#include "core/gas/cycle/cycle.h"
#include "core/gas/models/fuel.h"
#include "core/units.h"
#include "tests/gas/analytic_chamber.h"
#include "tests/gas/engines.h"

#include <gtest/gtest.h>

namespace lobewright::gas {
namespace {

// A solution can be read at any angle and repeats.
TEST(GasTrace, RepeatsWithThePeriodAndFollowsTheCylinders) {
    const Engine engine = pumpEngine();
    const CycleSolution solution = cycleOf(engine);
    const double period = engine.chamber.period();
    for (double theta = -7.0; theta < 7.0; theta += 0.61) {
        const double p = solution.trace->pressure(theta);
        EXPECT_NEAR(solution.trace->pressure(theta + period) / p, 1.0, 1e-9);
        // cylinder 2 does at θ what cylinder 1 did ψ₂ earlier
        EXPECT_NEAR(solution.trace->pressure(theta + engine.run.cylinderAngles[1], 1) / p, 1.0,
                    1e-9);
    }
}

TEST(GasTrace, SamplesObeyTheGasLaw) {
    const Engine engine = pumpEngine();
    const CycleSolution solution = cycleOf(engine);
    const Samples theta = Samples::LinSpaced(200, 0.0, units::turn);
    const GasSamples samples = solution.trace->sample(theta);
    const WorkingGas gas = workingGas(engine.settings.fuel);
    for (Eigen::Index i = 0; i < theta.size(); ++i) {
        const double constant = samples.airMass[i] * gas.air.gasConstant() +
                                samples.productsMass[i] * gas.products.gasConstant();
        EXPECT_NEAR(samples.pressure[i] * engine.chamber.at(theta[i]).volume /
                        (constant * samples.temperature[i]),
                    1.0, 1e-12);
    }
}

// Continuity: no step in the trace is larger than its neighbours allow, also at port events, burn
// ends and the seam of the period.
TEST(GasTrace, IsContinuous) {
    const Engine engine = pumpEngine();
    const CycleSolution solution = cycleOf(engine);
    const double fine = 1e-7;
    for (double theta = 0.0; theta < engine.chamber.period(); theta += 0.0043) {
        const double before = solution.trace->pressure(theta - fine);
        const double after = solution.trace->pressure(theta + fine);
        EXPECT_NEAR(after / before, 1.0, 3e-6) << theta;
    }
    const double seam = engine.chamber.cycles().back().lastClosing;
    EXPECT_NEAR(solution.trace->pressure(seam - 1e-9) / solution.trace->pressure(seam + 1e-9), 1.0,
                2e-6);
}

// Peaks are those of the trace.
TEST(CycleFigures, PeaksAreTheLargestOfTheTrace) {
    const Engine engine = pumpEngine();
    const CycleSolution solution = cycleOf(engine);
    const CycleFigures& f = solution.cycles.front();
    const Samples theta = Samples::LinSpaced(20001, 0.0, engine.chamber.period());
    const GasSamples samples = solution.trace->sample(theta);
    EXPECT_NEAR(samples.pressure.maxCoeff() / f.peakPressure, 1.0, 1e-7);
    EXPECT_LE(samples.pressure.maxCoeff(), f.peakPressure * (1.0 + 1e-12));
    EXPECT_NEAR(samples.temperature.maxCoeff() / f.peakTemperature, 1.0, 1e-7);
    EXPECT_NEAR(solution.trace->pressure(f.peakPressureAngle), f.peakPressure,
                1e-6 * f.peakPressure);
}

// The four ratios hang together by definition [Heywood, §6.6].
TEST(CycleFigures, ScavengingRatiosHangTogether) {
    const CycleFigures f = cycleOf(pumpEngine()).cycles.front();
    EXPECT_NEAR(f.chargingEfficiency, f.deliveryRatio * f.trappingEfficiency, 1e-12);
    EXPECT_NEAR(f.scavengingEfficiency, f.scavengeRatio * f.trappingEfficiency, 1e-12);
    EXPECT_GT(f.purity, f.scavengingEfficiency); // lean: the residual holds air as well
}

// A uniflow engine lies between perfect mixing and perfect displacement. Half of the gas that is
// there when the inlet opens leaves while the blowdown ends, so that only a larger displaced share
// tells.
TEST(Scavenging, ModelsKeepTheirOrder) {
    Engine engine = pumpEngine();
    const auto purity = [&](ScavengingModel model, double displaced, double shortCircuit) {
        engine.settings.scavenging = {model, displaced, shortCircuit};
        return cycleOf(engine).cycles.front().scavengingEfficiency;
    };
    const double mixing = purity(ScavengingModel::perfectMixing, 0.0, 0.0);
    const double both = purity(ScavengingModel::displacementThenMixing, 0.9, 0.0);
    const double displacement = purity(ScavengingModel::perfectDisplacement, 0.0, 0.0);
    const double bypassed = purity(ScavengingModel::perfectMixing, 0.0, 0.3);
    EXPECT_LT(bypassed, mixing);
    EXPECT_LT(mixing, both);
    EXPECT_LT(both, displacement);
}

// Displacement of nothing is mixing.
TEST(Scavenging, NothingDisplacedIsPerfectMixing) {
    Engine engine = pumpEngine();
    const double mixing = cycleOf(engine).cycles.front().work;
    engine.settings.scavenging = {ScavengingModel::displacementThenMixing, 0.0, 0.0};
    EXPECT_NEAR(cycleOf(engine).cycles.front().work / mixing, 1.0, 1e-12);
}

// At the best start the torque is higher than at starts a degree away, and the search is good to a
// twentieth of a degree: the parabola through the neighbours has its top there.
TEST(BestTorque, StartIsWhereTheWorkPeaks) {
    for (Engine engine : {pumpEngine(), buoyEngine()}) {
        engine.settings.burn.bestTorque = true;
        const CycleSolution best = cycleOf(engine);
        engine.settings.burn.bestTorque = false;
        CycleOptions tight;
        tight.relativeTolerance = 1e-9;
        tight.steadyTolerance = 1e-8;
        double work[3];
        for (int i = -1; i <= 1; ++i) {
            engine.settings.burn.start = best.cycles.front().burnStart + i * units::degree;
            work[i + 1] = cycleOf(engine, tight).cycles.front().work;
        }
        EXPECT_GT(work[1], work[0]);
        EXPECT_GT(work[1], work[2]);
        const double top = 0.5 * (work[0] - work[2]) / (work[0] - 2.0 * work[1] + work[2]);
        EXPECT_LT(std::fabs(top), 0.05);
    }
}

/// A chamber that shows one turn of another as two cycles of its period.
class TwoTurns final : public Chamber {
  public:
    explicit TwoTurns(const AnalyticChamber& one) : one_(one), cycles_{one.cycles()} {
        CycleAngles second = cycles_.front();
        for (double* angle :
             {&second.idc, &second.firstOpening, &second.inletOpens, &second.exhaustOpens,
              &second.inletCloses, &second.exhaustCloses, &second.lastClosing}) {
            *angle += one.period();
        }
        cycles_.push_back(second);
    }
    std::unique_ptr<Chamber> clone() const override { return std::make_unique<TwoTurns>(*this); }
    ChamberGeometry at(double theta) const override { return one_.at(theta); }
    double period() const override { return 2.0 * one_.period(); }
    double cyclesPerTurn() const override { return 1.0; }
    double bore() const override { return one_.bore(); }
    double sweptVolume() const override { return one_.sweptVolume(); }
    double meanStrokeSum() const override { return one_.meanStrokeSum(); }
    const std::vector<CycleAngles>& cycles() const override { return cycles_; }
    const std::vector<double>& kinks() const override { return one_.kinks(); }

  private:
    AnalyticChamber one_;
    std::vector<CycleAngles> cycles_;
};

// A period of two equal cycles is the cycle twice.
TEST(UnequalLobes, EqualCyclesOfAPeriodAreAlike) {
    const AnalyticChamber one;
    Settings settings = plainSettings();
    settings.burn.start = -10.0 * units::degree;
    SilentMonitor monitor;
    const auto single = solveCycle(one, settings, running(1500.0), monitor);
    const auto twin = solveCycle(TwoTurns(one), settings, running(1500.0), monitor);
    ASSERT_TRUE(single && twin);
    ASSERT_EQ(twin->cycles.size(), 2u);
    for (const CycleFigures& cycle : twin->cycles) {
        EXPECT_NEAR(cycle.work / single->cycles.front().work, 1.0, 3e-6);
        EXPECT_NEAR(cycle.peakPressure / single->cycles.front().peakPressure, 1.0, 3e-6);
        EXPECT_NEAR(cycle.deliveredMass / single->cycles.front().deliveredMass, 1.0, 3e-6);
        EXPECT_LE(cycle.massResidual, 1e-9);
        EXPECT_LE(cycle.energyResidual, 1e-6);
    }
    EXPECT_NEAR(twin->cycles[1].peakPressureAngle - twin->cycles[0].peakPressureAngle, units::turn,
                1e-4);
}

// More wall heat, less work; the correlations agree in size.
TEST(WallHeatModels, LossesCostWork) {
    Engine engine = pumpEngine();
    const auto with = [&](WallHeatModel model, double multiplier) {
        engine.settings.wallHeat.model = model;
        engine.settings.wallHeat.multiplier = multiplier;
        return cycleOf(engine).cycles.front();
    };
    const CycleFigures none = with(WallHeatModel::none, 1.0);
    const CycleFigures woschni = with(WallHeatModel::woschni, 1.0);
    const CycleFigures twice = with(WallHeatModel::woschni, 2.0);
    const CycleFigures hohenberg = with(WallHeatModel::hohenberg, 1.0);
    EXPECT_EQ(none.wallHeat, 0.0);
    EXPECT_GT(none.work, woschni.work);
    EXPECT_GT(woschni.work, twice.work);
    EXPECT_NEAR(hohenberg.wallHeat / woschni.wallHeat, 1.0, 0.5);
}

// Exhaust crowns run hotter: half of the crowns' share follows their temperature.
TEST(WallHeatModels, ExhaustCrownHasATemperatureOfItsOwn) {
    Engine engine = pumpEngine();
    engine.settings.wallHeat.exhaustCrownTemperature = engine.settings.wallHeat.crownTemperature;
    const double same = cycleOf(engine).cycles.front().wallHeat;
    engine.settings.wallHeat.exhaustCrownTemperature.reset();
    EXPECT_EQ(cycleOf(engine).cycles.front().wallHeat, same);
    engine.settings.wallHeat.exhaustCrownTemperature = 650.0;
    EXPECT_LT(cycleOf(engine).cycles.front().wallHeat, same);
}

// Knock: only petrol, and a higher octane number delays it.
TEST(KnockIndicator, IsForPetrolOnlyAndFollowsTheOctaneNumber) {
    Engine engine = pumpEngine();
    EXPECT_FALSE(cycleOf(engine).cycles.front().knockIntegral);
    engine.settings.fuel = Fuel::petrol;
    const CycleFigures ordinary = cycleOf(engine).cycles.front();
    engine.settings.octaneNumber = 110.0;
    const CycleFigures high = cycleOf(engine).cycles.front();
    ASSERT_TRUE(ordinary.knockIntegral && high.knockIntegral);
    // each cycle repeats itself to 1e-6, so their quotient holds to a few of that
    EXPECT_NEAR(*high.knockIntegral / *ordinary.knockIntegral, std::pow(95.0 / 110.0, 3.402), 5e-6);
    EXPECT_EQ(ordinary.knockAngle.has_value(), *ordinary.knockIntegral >= 1.0);
    engine.run.motored = true;
    EXPECT_FALSE(cycleOf(engine).cycles.front().knockIntegral);
}

// Tighter tolerances change nothing that is shown.
TEST(Solver, DefaultToleranceIsTightEnough) {
    for (const Engine& engine : {pumpEngine(), buoyEngine()}) {
        CycleOptions tight;
        tight.relativeTolerance = 1e-10;
        tight.steadyTolerance = 1e-8;
        const CycleFigures a = cycleOf(engine).cycles.front();
        const CycleFigures b = cycleOf(engine, tight).cycles.front();
        EXPECT_NEAR(a.work / b.work, 1.0, 5e-6);
        EXPECT_NEAR(a.peakPressure / b.peakPressure, 1.0, 1e-5);
        EXPECT_NEAR(a.trappedMass / b.trappedMass, 1.0, 5e-6);
    }
}

// Slow engines with wide ports are stiff; they must stay cheap enough to drag.
TEST(Solver, SlowEnginesStayCheap) {
    Engine engine = classroomEngine();
    engine.settings.supply.pressure = 1.003 * units::bar;
    for (const double speed : {30.0, 100.0, 300.0}) {
        engine.run = running(speed, 1, true);
        const CycleSolution solution = cycleOf(engine);
        EXPECT_LT(solution.rhsEvaluations, 100000) << speed;
        EXPECT_LE(solution.cycles.front().massResidual, 1e-9);
        EXPECT_LE(solution.cycles.front().energyResidual, 1e-6);
    }
}

} // namespace
} // namespace lobewright::gas
