// Figures of a cycle worked out again from its trace, with the equations written down anew.
#include "core/gas/models/fuel.h"
#include "core/units.h"
#include "tests/gas/engines.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lobewright::gas {
namespace {

struct Solved {
    Engine engine;
    CycleSolution cycle;
    CycleFigures figures;
};

Solved solved(Engine engine) {
    SilentMonitor monitor;
    CycleOptions tight;
    tight.relativeTolerance = 1e-9;
    tight.steadyTolerance = 1e-8;
    auto cycle = solveCycle(engine.chamber, engine.settings, engine.run, monitor, tight);
    EXPECT_TRUE(cycle) << (cycle ? "" : cycle.problems().front().message.english());
    const CycleFigures figures = cycle->cycles.front();
    return {std::move(engine), std::move(cycle).value(), figures};
}

Engine petrolEngine() {
    Engine engine = pumpEngine();
    engine.settings.fuel = Fuel::petrol;
    engine.settings.wallHeat.model = WallHeatModel::hohenberg;
    engine.settings.wallHeat.exhaustCrownTemperature = 560.0;
    return engine;
}

constexpr int fine = 20001; // odd

/// Simpson's rule over even samples.
double integral(const Samples& theta, const Samples& f) {
    double sum = f[0] + f[f.size() - 1];
    for (Eigen::Index i = 1; i + 1 < f.size(); ++i) {
        sum += (i % 2 == 1 ? 4.0 : 2.0) * f[i];
    }
    return sum * (theta[1] - theta[0]) / 3.0;
}

// ∮p dV over the period, pressure and volume read separately.
TEST(Audit, WorkIsTheAreaOfThePressureVolumeLoop) {
    const Solved s = solved(petrolEngine());
    const double period = s.engine.chamber.period();
    const Samples theta = Samples::LinSpaced(fine, 0.0, period);
    const Samples pressure = s.cycle.trace->sample(theta).pressure;
    double area = 0.0; // shoelace formula of the loop
    for (Eigen::Index i = 0; i + 1 < theta.size(); ++i) {
        area += 0.5 * (pressure[i] + pressure[i + 1]) *
                (s.engine.chamber.at(theta[i + 1]).volume - s.engine.chamber.at(theta[i]).volume);
    }
    EXPECT_NEAR(area, s.figures.work, 1e-6 * s.figures.work);
    EXPECT_NEAR(s.figures.imep * s.engine.chamber.sweptVolume(), s.figures.work, 1e-12 * area);
}

// h = 130·V^−0.06·p^0.8·T^−0.4·(S̄p + 1.4)^0.8 (V in m³, p in bar) on two crowns and the open liner,
// each against its own temperature [Hohenberg 1979, SAE 790825 (from memory)].
TEST(Audit, WallHeatFollowsFromPressureAndTemperature) {
    const Solved s = solved(petrolEngine());
    const Settings& settings = s.engine.settings;
    const Samples theta = Samples::LinSpaced(fine, 0.0, s.engine.chamber.period());
    const GasSamples gas = s.cycle.trace->sample(theta);
    const double bore = 0.064, stroke = 0.036; // of the pump engine
    const double crown = units::pi * bore * bore / 4.0;
    const double speed = 2.0 * (stroke + stroke) / 2.0 * 2.0 * 1800.0 / 60.0;
    Samples flow(theta.size());
    for (Eigen::Index i = 0; i < theta.size(); ++i) {
        const double volume = s.engine.chamber.at(theta[i]).volume;
        const double t = gas.temperature[i];
        const double h = 130.0 * std::pow(volume, -0.06) * std::pow(1e-5 * gas.pressure[i], 0.8) *
                         std::pow(t, -0.4) * std::pow(speed + 1.4, 0.8);
        const double liner = units::pi * bore * (volume / crown);
        flow[i] = h * (crown * (t - settings.wallHeat.crownTemperature) + crown * (t - 560.0) +
                       liner * (t - settings.wallHeat.linerTemperature));
    }
    const double heat = integral(theta, flow) / (1800.0 * units::revPerMinute);
    EXPECT_NEAR(heat, s.figures.wallHeat, 2e-5 * s.figures.wallHeat);
}

// First law between the last closing and the first opening, where nothing flows: the internal
// energy grows by the heat of the burnt fuel less wall heat and work; masses follow from
// stoichiometry.
TEST(Audit, ClosedPartObeysTheFirstLaw) {
    Engine engine = petrolEngine();
    engine.settings.wallHeat.model = WallHeatModel::none;
    const Solved s = solved(std::move(engine));
    const CycleAngles& cycle = s.engine.chamber.cycles().front();
    const double from = cycle.lastClosing - s.engine.chamber.period();
    const Samples theta = Samples::LinSpaced(fine, from, cycle.firstOpening);
    const GasSamples gas = s.cycle.trace->sample(theta);
    const WorkingGas fuel = workingGas(Fuel::petrol);
    const auto energy = [&](Eigen::Index i) {
        return gas.airMass[i] * fuel.air.internalEnergy(gas.temperature[i]) +
               gas.productsMass[i] * fuel.products.internalEnergy(gas.temperature[i]);
    };
    double work = 0.0;
    for (Eigen::Index i = 0; i + 1 < theta.size(); ++i) {
        work += 0.5 * (gas.pressure[i] + gas.pressure[i + 1]) *
                (s.engine.chamber.at(theta[i + 1]).volume - s.engine.chamber.at(theta[i]).volume);
    }
    const Eigen::Index last = theta.size() - 1;
    const double air = gas.airMass[0];
    // m_f = m_air/(λ·AFR); all of it burns but exp(−a), a = 6.908; petrol C8H14.96: AFR 14.6004
    const double burnt = air / (s.engine.settings.lambda * 14.6004) * (1.0 - std::exp(-6.908));
    const double heat = s.engine.settings.combustionEfficiency * 44.0e6 * burnt;
    EXPECT_NEAR(energy(last) - energy(0), heat - work, 1e-5 * heat);
    EXPECT_NEAR(gas.airMass[last], air - 14.6004 * burnt, 1e-5 * air);
    EXPECT_NEAR(gas.productsMass[last] - gas.productsMass[0], 15.6004 * burnt, 1e-5 * air);
}

// Livengood & Wu on the trace: ∫dt/τ from the last closing to 90 % of the burn, the unburnt gas
// from the burn start on compressed without loss, dT/dp = R·T/(c_p·p); τ after Douaud & Eyzat with
// p in atmospheres [Heywood, eq. 9.59 (from memory)].
TEST(Audit, KnockIntegralFollowsFromTheTrace) {
    const Solved s = solved(petrolEngine());
    ASSERT_TRUE(s.figures.knockIntegral);
    const CycleAngles& cycle = s.engine.chamber.cycles().front();
    const Burn& burn = s.engine.settings.burn;
    const double perTurn = 2.0;
    const double start = cycle.idc + burn.start / perTurn;
    const double share = 0.9 * (1.0 - std::exp(-burn.wiebeA));
    const double end =
        start + burn.duration / perTurn *
                    std::pow(-std::log(1.0 - share) / burn.wiebeA, 1.0 / (burn.wiebeM + 1.0));
    const WorkingGas fuel = workingGas(Fuel::petrol);
    const double closing = cycle.lastClosing - s.engine.chamber.period();
    const auto rate = [](double pressure, double temperature) {
        return std::pow(pressure / 101325.0, 1.7) * std::exp(-3800.0 / temperature) /
               (0.01768 * std::pow(0.95, 3.402));
    };
    double sum = 0.0;
    double unburnt = 0.0, before = 0.0, air = 0.0;
    const auto add = [&](double from, double to) {
        const Samples theta = Samples::LinSpaced(fine, from, to);
        const GasSamples gas = s.cycle.trace->sample(theta);
        Samples rates(theta.size());
        for (Eigen::Index i = 0; i < theta.size(); ++i) {
            if (from == closing) {
                unburnt = gas.temperature[i];
                air = gas.airMass[0] / (gas.airMass[0] + gas.productsMass[0]);
            } else if (i > 0) {
                const double r =
                    air * fuel.air.gasConstant() + (1.0 - air) * fuel.products.gasConstant();
                const double cp =
                    air * fuel.air.heat(unburnt) + (1.0 - air) * fuel.products.heat(unburnt);
                unburnt *= std::pow(gas.pressure[i] / before, r / cp);
            }
            before = gas.pressure[i];
            rates[i] = rate(gas.pressure[i], unburnt);
        }
        sum += integral(theta, rates);
    };
    add(closing, start);
    add(start, end);
    const double expected = sum / (1800.0 * units::revPerMinute);
    EXPECT_NEAR(*s.figures.knockIntegral, expected, 1e-4 * expected);
}

} // namespace
} // namespace lobewright::gas
