#include "core/gas/cycle/coupled_cylinders.h"
#include "core/gas/models/supply.h"
#include "core/units.h"
#include "tests/gas/analytic_chamber.h"
#include "tests/gas/engines.h"

#include <gtest/gtest.h>

namespace lobewright::gas {
namespace {

Settings blown(double plenumVolume) {
    Settings settings = plainSettings();
    settings.supply.kind = SupplyKind::blower;
    settings.supply.displacement = 2e-4;
    settings.supply.driveRatio = 1.0;
    settings.supply.volumetricEfficiency = 1.0;
    settings.supply.plenumVolume = plenumVolume;
    settings.supply.afterCoolerTemperature = 300.0;
    return settings;
}

Model modelOf(const Chamber& chamber, const Settings& settings, const WorkingGas& gas,
              const RunConditions& run) {
    auto made = makeModel(chamber, settings, gas, run);
    if (!made) {
        throw std::runtime_error(made.problems().front().message.english());
    }
    return std::move(made).value();
}

Charge chargeAt(const Model& model, double pressure, double t) {
    Charge charge;
    charge.air =
        pressure * model.chamber->at(model.start).volume / (model.gas.air.gasConstant() * t);
    charge.temperature = charge.exhaustTemperature = t;
    return charge;
}

/// The charge after a period of one cylinder on the supply of the settings.
Charge afterAPeriod(const Model& model, const Charge& charge, double tolerance) {
    CoupledCylinders cylinder(model, constantSupply(model, 0.0));
    CoupledCylinders::State state;
    state.charges = {charge};
    EXPECT_FALSE(cylinder.advance(state, tolerance));
    return state.charges.front();
}

// With the ports shut for good the plenum is a vessel filled at a constant rate with gas of
// constant temperature: m = m₀ + ṁ·t, U = U₀ + ṁ·c_p·T_in·t (adiabatic filling, any thermodynamics
// text).
TEST(Plenum, FillsLikeAClosedVessel) {
    AnalyticChamber::Shape shape;
    shape.inletArea = shape.exhaustArea = 0.0;
    const AnalyticChamber chamber(shape);
    Settings settings = blown(5e-4);
    settings.supply.ambientTemperature = 350.0; // the cooler brings it down to 300 K throughout
    const WorkingGas gas = constantGas();
    const Model model = modelOf(chamber, settings, gas, running(1500.0, 1, true));
    CoupledCylinders cylinder(model, phasesOf(running(1500.0), model.period()));
    CoupledCylinders::State state;
    state.charges = {chargeAt(model, 1e5, 300.0)};
    const double m0 = 1e5 * 5e-4 / (287.0 * 280.0);
    state.plenum[plenumMass] = m0;
    state.plenum[plenumTemperature] = 280.0;
    ASSERT_FALSE(cylinder.advance(state, 1e-8));
    const double filled =
        blowerFlow(settings.supply, gas.air, model.omega) * chamber.period() / model.omega;
    const double cp = gas.air.heat(300.0), cv = cp - 287.0;
    const double expected = (m0 * cv * 280.0 + filled * cp * 300.0) / (cv * (m0 + filled));
    EXPECT_NEAR(state.plenum[plenumMass] / (m0 + filled), 1.0, 1e-10);
    EXPECT_NEAR(state.plenum[plenumTemperature] / expected, 1.0, 1e-8);
}

// A vessel of constant volume and heat that fills through a choked port from a steady supply:
// dm = const, and with h of the supply m·T grows by γ·T_s·dm, so that p rises in a straight line
// [Heywood, appendix C, for the choked rate].
TEST(Plenum, ChokedInflowFillsTheChamberInAStraightLine) {
    AnalyticChamber::Shape shape;
    shape.sweptVolume = 0.0;
    shape.clearanceVolume = 2e-4;
    shape.inletArea = 3e-6;
    shape.exhaustArea = 0.0;
    const AnalyticChamber chamber(shape);
    Settings settings = plainSettings();
    settings.supply.pressure = 20e5;
    settings.exhaustPressure = 1e5;
    const double gamma = 1.4;
    const Model model = modelOf(chamber, settings, constantGas(gamma), running(1500.0, 1, true));
    const Charge filled = afterAPeriod(model, chargeAt(model, 1e5, 300.0), 1e-9);
    const double areaIntegral = 3e-6 * shape.inletHalfSpan; // ∫sin² over the opening
    const double choked = std::sqrt(gamma) * std::pow(2.0 / (gamma + 1.0), 3.0);
    const double mass = areaIntegral / model.omega * 20e5 / std::sqrt(287.0 * 300.0) * choked;
    const double rise = gamma * 287.0 * 300.0 * mass / 2e-4;
    const double p = filled.air * 287.0 * filled.temperature / 2e-4;
    EXPECT_NEAR((p - 1e5) / rise, 1.0, 1e-8);
    EXPECT_LT(p, 10e5); // choked to the end
}

// A vessel that empties through a choked port stays isentropic: with a constant port
// p = p₀·(1 + (γ−1)/2·ψ*·√(R·T₀)·∫A dt/V)^(−2γ/(γ−1)) (any gas dynamics text).
TEST(Plenum, ChokedOutflowFollowsTheBlowdownLaw) {
    AnalyticChamber::Shape shape;
    shape.sweptVolume = 0.0;
    shape.clearanceVolume = 2e-4;
    shape.inletArea = 0.0;
    shape.exhaustArea = 2e-5;
    const AnalyticChamber chamber(shape);
    Settings settings = plainSettings();
    settings.supply.pressure = 1e5;
    settings.exhaustPressure = 1e5;
    const double gamma = 1.4;
    const Model model = modelOf(chamber, settings, constantGas(gamma), running(1500.0, 1, true));
    const Charge left = afterAPeriod(model, chargeAt(model, 40e5, 1200.0), 1e-10);
    const double areaTime = 2e-5 * shape.exhaustHalfSpan / model.omega;
    const double choked = std::sqrt(gamma) * std::pow(2.0 / (gamma + 1.0), 3.0);
    const double base =
        1.0 + 0.5 * (gamma - 1.0) * choked * std::sqrt(287.0 * 1200.0) * areaTime / 2e-4;
    const double expected = 40e5 * std::pow(base, -2.0 * gamma / (gamma - 1.0));
    const double p = left.air * 287.0 * left.temperature / 2e-4;
    EXPECT_GT(expected, 2e5); // choked to the end
    EXPECT_NEAR(p / expected, 1.0, 1e-7);
}

Engine blownPump(double plenumVolume = 1e-3) {
    Engine engine = pumpEngine();
    engine.settings.supply.kind = SupplyKind::blower;
    engine.settings.supply.displacement = 1.6e-3;
    engine.settings.supply.driveRatio = 1.0;
    engine.settings.supply.plenumVolume = plenumVolume;
    return engine;
}

// In the steady state the cylinders draw what the blower gives, turn for turn.
TEST(Plenum, DeliveryIsWhatTheBlowerGives) {
    const Engine engine = blownPump();
    const CycleSolution solution = cycleOf(engine);
    const double perCycle = blowerFlow(engine.settings.supply, dryAir(), engine.run.omega) *
                            engine.chamber.period() / engine.run.omega / engine.run.cylinders;
    EXPECT_NEAR(solution.cycles.front().deliveredMass / perCycle, 1.0, 2e-5);
}

// Power of the blower is its flow times the work of compression at the mean pressure, but for the
// ripple of the pressure.
TEST(Plenum, BlowerPowerIsFlowTimesWork) {
    const Engine engine = blownPump(20e-3);
    const CycleSolution solution = cycleOf(engine);
    const double flow = blowerFlow(engine.settings.supply, dryAir(), engine.run.omega);
    const double work = compress(engine.settings.supply, dryAir(), solution.plenumPressure).work;
    EXPECT_NEAR(solution.supplyPower / (flow * work), 1.0, 1e-3);
}

// A window as long as the phase between evenly phased cylinders shows what all of them integrated
// over a whole period show.
TEST(Plenum, WindowOfEvenCylindersShowsTheWholePeriod) {
    const Engine engine = blownPump();
    CycleOptions together;
    together.integrateTogether = true;
    together.steadyTolerance = 1e-7;
    CycleOptions window;
    window.steadyTolerance = 1e-7;
    const CycleSolution a = cycleOf(engine, window);
    const CycleSolution b = cycleOf(engine, together);
    EXPECT_NEAR(a.cycles.front().work / b.cycles.front().work, 1.0, 3e-6);
    EXPECT_NEAR(a.plenumPressure / b.plenumPressure, 1.0, 1e-6);
    EXPECT_NEAR(a.supplyPower / b.supplyPower, 1.0, 1e-5);
    for (double theta = 0.0; theta < 6.28; theta += 0.37) {
        for (int k = 0; k < 3; ++k) {
            EXPECT_NEAR(a.trace->pressure(theta, k) / b.trace->pressure(theta, k), 1.0, 2e-5);
        }
    }
}

// Mass and energy of the plenum over a period, written down anew from what the recorded flows
// carry: it gains what the blower delivers and loses what every cylinder draws at its enthalpy.
TEST(Plenum, KeepsMassAndEnergy) {
    const Engine engine = blownPump(4e-4);
    CycleOptions tight;
    tight.relativeTolerance = 1e-9;
    tight.steadyTolerance = 1e-8;
    const CycleSolution solution = cycleOf(engine, tight);
    constexpr int intervals = 60000; // a third of them from one cylinder to the next
    const double period = engine.chamber.period();
    const double step = period / intervals;
    const Samples theta =
        Samples::LinSpaced(intervals, 0.5 * step, period - 0.5 * step); // midpoints
    const GasFlows flows = solution.flows->sample(theta);
    const Supply& supply = engine.settings.supply;
    const GasGroup& air = dryAir();
    const double time = step / engine.run.omega;
    const double blown = blowerFlow(supply, air, engine.run.omega);
    const auto massAt = [&](int i) {
        return flows.supplyPressure[i] * supply.plenumVolume /
               (air.gasConstant() * flows.supplyTemperature[i]);
    };
    double mass = massAt(0), worstMass = 0.0;
    double energy = mass * air.internalEnergy(flows.supplyTemperature[0]), worstEnergy = 0.0;
    const auto rates = [&](int i) {
        double drawn = 0.0;
        for (int k = 0; k < 3; ++k) {
            drawn += flows.fresh[(i + k * intervals / 3) % intervals];
        }
        const double inlet = compress(supply, air, flows.supplyPressure[i]).outletTemperature;
        return std::pair(blown - drawn, blown * air.enthalpy(inlet) -
                                            drawn * air.enthalpy(flows.supplyTemperature[i]));
    };
    for (int i = 1; i < intervals; ++i) {
        mass += 0.5 * time * (rates(i - 1).first + rates(i).first);
        energy += 0.5 * time * (rates(i - 1).second + rates(i).second);
        const double u = massAt(i) * air.internalEnergy(flows.supplyTemperature[i]);
        worstMass = std::max(worstMass, std::fabs(mass / massAt(i) - 1.0));
        worstEnergy = std::max(worstEnergy, std::fabs(energy - u) / (massAt(i) * 7e4));
    }
    EXPECT_LT(worstMass, 5e-5); // the flow jumps where a slug has returned
    EXPECT_LT(worstEnergy, 5e-5);
}

// The same through the path for unevenly phased cylinders: a phase moved by a millionth of a degree
// is uneven to the program but the same engine.
TEST(Plenum, UnevenPathMeetsTheEvenOne) {
    Engine engine = blownPump();
    const CycleSolution even = cycleOf(engine);
    engine.run.cylinderAngles[1] += 1e-6 * units::degree;
    const CycleSolution uneven = cycleOf(engine);
    ASSERT_EQ(uneven.cylinders.size(), 3u);
    for (const auto& cycles : uneven.cylinders) {
        EXPECT_NEAR(cycles.front().work / even.cycles.front().work, 1.0, 2e-5);
    }
    EXPECT_NEAR(uneven.plenumPressure / even.plenumPressure, 1.0, 2e-6);
    for (double theta = 0.0; theta < 6.28; theta += 0.37) {
        for (int k = 0; k < 3; ++k) {
            EXPECT_NEAR(uneven.trace->pressure(theta, k) / even.trace->pressure(theta, k), 1.0,
                        1e-4);
        }
    }
}

// Cylinders crowded together rob each other: the one that breathes right after another gets less.
TEST(Plenum, CrowdedCylindersRobEachOther) {
    Engine engine = blownPump(3e-4);
    engine.run.cylinders = 2;
    engine.run.cylinderAngles = {0.0, 20.0 * units::degree};
    const CycleSolution solution = cycleOf(engine);
    ASSERT_EQ(solution.cylinders.size(), 2u);
    const double first = solution.cylinders[0].front().deliveredMass;
    const double second = solution.cylinders[1].front().deliveredMass;
    EXPECT_GT(first, 1.02 * second);
    const double perCycle = blowerFlow(engine.settings.supply, dryAir(), engine.run.omega) *
                            engine.chamber.period() / engine.run.omega;
    EXPECT_NEAR((first + second) / perCycle, 1.0, 1e-4);
}

// A blower that is too small starves the engine as its leakage through time grows.
TEST(Plenum, SmallBlowerStarvesTheEngine) {
    Engine engine = blownPump();
    const double plenty = cycleOf(engine).cycles.front().imep;
    engine.settings.supply.displacement *= 0.4;
    const CycleSolution starved = cycleOf(engine);
    EXPECT_LT(starved.cycles.front().imep, 0.75 * plenty);
    EXPECT_LT(starved.cycles.front().deliveryRatio, 0.5);
}

// Compressed air from a reservoir is paid for, or shown as not paid for.
TEST(ReservoirSupply, PowerIsThatOfTheAirDelivered) {
    Engine engine = pumpEngine();
    const CycleSolution solution = cycleOf(engine);
    const double cyclesPerSecond =
        engine.run.cylinders * engine.chamber.cyclesPerTurn() * engine.run.omega / units::turn;
    const double work = compress(engine.settings.supply, dryAir(), 1.3e5).work;
    EXPECT_NEAR(solution.supplyPower,
                cyclesPerSecond * solution.cycles.front().deliveredMass * work,
                1e-6 * solution.supplyPower);
    EXPECT_TRUE(solution.supplyPaid);
    engine.settings.supply.unpaid = true;
    const CycleSolution unpaid = cycleOf(engine);
    EXPECT_FALSE(unpaid.supplyPaid);
    EXPECT_EQ(unpaid.supplyPower, solution.supplyPower);
    EXPECT_NE(unpaid.remarks.back().english().find("not counted"), std::string::npos);
}

} // namespace
} // namespace lobewright::gas
