#include "core/gas/models/feeder.h"
#include "core/units.h"
#include "tests/gas/engines.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lobewright::gas {
namespace {

constexpr double ambient = 1e5, warm = 298.15;

TurningWheel turning(const Wheel& wheel, double speed) {
    return {wheel, dryAir(), ambient, warm, speed};
}

double rise(const TurningWheel& wheel, double phi) {
    const double gamma = dryAir().heatRatio(warm);
    return std::pow(wheel.pressureRatio(phi * wheel.flowUnit()), (gamma - 1.0) / gamma) - 1.0;
}

double powerAt(const TurningWheel& wheel, double phi) {
    const double flow = phi * wheel.flowUnit();
    return flow * wheel.compression(flow).work;
}

// The laws of similarity of any turbomachinery text: at one flow coefficient the isentropic rise
// of enthalpy goes as the square of the speed, the power as its cube (the heat of air changes with
// temperature, so the cube holds in the limit of small rises).
TEST(CompressorWheel, RisesWithTheSquareAndTakesPowerWithTheCubeOfItsSpeed) {
    const Wheel wheel;
    const TurningWheel slow = turning(wheel, 200.0), fast = turning(wheel, 400.0);
    for (const double phi : {0.03, 0.045, 0.06, 0.08, 0.1}) {
        EXPECT_NEAR(rise(fast, phi) / rise(slow, phi), 4.0, 1e-9) << phi;
        EXPECT_NEAR(powerAt(fast, phi) / powerAt(slow, phi), 8.0, 1e-4) << phi;
    }
}

TEST(CompressorWheel, CompressesIsentropicallyWhereNothingIsLost) {
    Wheel wheel;
    wheel.bestEfficiency = 1.0;
    const TurningWheel fast = turning(wheel, 8000.0);
    const double flow = wheel.bestFlow * fast.flowUnit();
    EXPECT_NEAR(fast.efficiency(flow), 1.0, 1e-15);
    const double gamma = dryAir().heatRatio(warm);
    EXPECT_NEAR(fast.compression(flow).outletTemperature /
                    (warm * std::pow(fast.pressureRatio(flow), (gamma - 1.0) / gamma)),
                1.0, 1e-12);
    // and ψ·u² is the isentropic rise of enthalpy of a gas of constant heat
    const double x = (wheel.bestFlow - wheel.peakFlow) / (wheel.chokeFlow - wheel.peakFlow);
    const double head = wheel.headCoefficient * (1.0 - x * x) * fast.tipSpeed() * fast.tipSpeed();
    EXPECT_NEAR(dryAir().heat(warm) * (fast.compression(flow).outletTemperature - warm) / head, 1.0,
                1e-12);
}

// A wheel of 0.5 m at 290 turns a second, slip factor 0.9, power input factor 1.04, isentropic
// efficiency 0.78, 9 kg/s of air at 295 K and 1.1 bar: rise of temperature 193 K, pressure ratio
// 4.23, power 1746 kW [Cohen, Rogers & Saravanamuttoo, Gas Turbine Theory, example 4.1, from
// memory; they take c_p 1005 J/(kg·K) and γ 1.4].
TEST(CompressorWheel, AgreesWithATextbookExample) {
    const GasGroup air = GasGroup::constant(287.0, 1005.0);
    Wheel wheel;
    wheel.diameter = 0.5;
    wheel.headCoefficient = 0.9 * 1.04 * 0.78;
    wheel.bestEfficiency = 0.78;
    const TurningWheel turned(wheel, air, 1.1e5, 295.0, 290.0 * units::turn);
    EXPECT_NEAR(turned.tipSpeed(), 455.5, 0.1);
    EXPECT_NEAR(turned.flowCoefficient(9.0), 0.061, 5e-4); // what the defaults stand around
    // their wheel runs where its head is highest; so does this one, at its best flow
    wheel.peakFlow = wheel.bestFlow = turned.flowCoefficient(9.0);
    const TurningWheel there(wheel, air, 1.1e5, 295.0, 290.0 * units::turn);
    EXPECT_NEAR(there.pressureRatio(9.0), 4.23, 0.02);
    EXPECT_NEAR(there.compression(9.0).outletTemperature - 295.0, 193.0, 0.5);
    EXPECT_NEAR(9.0 * there.compression(9.0).work, 1746e3, 5e3);
}

// A wheel of 0.6 m at 16,000 turns a minute, slip factor 0.9, work factor 1.05, efficiency 0.88,
// air at 350 K: tip speed 502.65 m/s, outlet 587.6 K, pressure ratio 5.15 [an examination problem
// with its solution, as published in collections; secondary].
TEST(CompressorWheel, AgreesWithAnExaminationProblem) {
    const GasGroup air = GasGroup::constant(287.0, 1005.0);
    Wheel wheel;
    wheel.diameter = 0.6;
    wheel.headCoefficient = 0.9 * 1.05 * 0.88;
    wheel.bestEfficiency = 0.88;
    wheel.peakFlow = wheel.bestFlow = 0.06;
    const TurningWheel turned(wheel, air, 1e5, 350.0, 16000.0 * units::revPerMinute);
    const double flow = 0.06 * turned.flowUnit();
    EXPECT_NEAR(turned.tipSpeed(), 502.654, 1e-3);
    EXPECT_NEAR(turned.compression(flow).outletTemperature, 587.577, 3e-2);
    EXPECT_NEAR(turned.pressureRatio(flow), 5.15, 0.02);
}

TEST(CompressorWheel, FlowAndPressureAnswerEachOther) {
    const TurningWheel wheel = turning(Wheel{}, 9000.0);
    double before = 1e300;
    for (double phi = 0.002; phi < 0.15; phi += 0.004) {
        const double flow = phi * wheel.flowUnit();
        const double pressure = ambient * wheel.pressureRatio(flow);
        EXPECT_LT(pressure, before) << phi; // one pressure, one flow
        EXPECT_NEAR(wheel.flowAgainst(pressure) / flow, 1.0, 1e-9) << phi;
        before = pressure;
    }
    EXPECT_EQ(wheel.flowAgainst(10.0 * ambient), 0.0);
    // the line left of the peak is nearly level
    EXPECT_NEAR(rise(wheel, 0.0) / rise(wheel, 0.045), 1.015, 1e-3);
}

/// Points of a wheel as if its coefficients had been measured, at speeds corrected to 288 K.
Wheel measured(const Wheel& wheel, std::initializer_list<double> speeds) {
    Wheel table = wheel;
    table.characteristic = WheelCharacteristic::table;
    table.referencePressure = 1.013e5;
    table.referenceTemperature = 288.0;
    for (const double speed : speeds) {
        const TurningWheel turned(wheel, dryAir(), 1.013e5, 288.0, speed);
        for (int i = 0; i <= 12; ++i) {
            const double phi = wheel.surgeFlow + (wheel.chokeFlow - wheel.surgeFlow) * i / 12.0;
            const double flow = phi * turned.flowUnit();
            table.points.push_back(
                {speed, flow, turned.pressureRatio(flow), turned.efficiency(flow)});
        }
    }
    return table;
}

// A table that coefficients would have given makes the same wheel, at its speeds, between and
// beyond them, in air of another state than it was measured in.
TEST(MeasuredWheel, IsThatOfItsCoefficients) {
    const Wheel wheel;
    const Wheel table = measured(wheel, {4000.0, 7000.0, 10000.0});
    EXPECT_FALSE(flawOfTable(table));
    for (const double speed : {3000.0, 5500.0, 7000.0, 9500.0, 12000.0}) {
        const TurningWheel one = turning(wheel, speed), other = turning(table, speed);
        for (const double phi : {0.05, 0.06, 0.08, 0.1}) {
            const double flow = phi * one.flowUnit();
            EXPECT_NEAR(other.pressureRatio(flow) / one.pressureRatio(flow), 1.0, 2e-3)
                << speed << ' ' << phi;
            EXPECT_NEAR(other.efficiency(flow), one.efficiency(flow), 3e-3) << speed << ' ' << phi;
            EXPECT_NEAR(other.flowAgainst(ambient * other.pressureRatio(flow)) / flow, 1.0, 1e-9);
        }
        EXPECT_NEAR(other.curve().surgeFlow(), wheel.surgeFlow, 1e-4);
        EXPECT_NEAR(other.curve().chokeFlow(), wheel.chokeFlow, 1e-4);
    }
}

TEST(MeasuredWheel, SaysWhatATableLacks) {
    Wheel table = measured(Wheel{}, {5000.0});
    table.points.resize(2);
    ASSERT_TRUE(flawOfTable(table));
    EXPECT_NE(flawOfTable(table)->message.english().find("three"), std::string::npos);
    table = measured(Wheel{}, {5000.0});
    for (WheelPoint& point : table.points) {
        point.pressureRatio = 1.0 + point.flow; // rises to the last
    }
    ASSERT_TRUE(flawOfTable(table));
    EXPECT_NE(flawOfTable(table)->message.english().find("fall"), std::string::npos);
    table.points.clear();
    EXPECT_TRUE(flawOfTable(table));
}

Engine wheelEngine() {
    Engine engine = pumpEngine();
    engine.settings.supply.kind = SupplyKind::compressor;
    engine.settings.supply.compressor.gearRatio = 24.0;
    engine.settings.supply.compressor.wheel.diameter = 0.105;
    engine.settings.exhaustPressure = 1.0e5;
    return engine;
}

// A search that ends early leaves a plenum that still fills: the balance counts what it stores.
TEST(GearedCompressor, BalanceCountsWhatThePlenumStores) {
    CycleOptions early;
    early.steadyTolerance = 3e-2;
    const CycleSolution solution = cycleOf(wheelEngine(), early);
    ASSERT_TRUE(solution.compressor);
    EXPECT_LT(solution.compressor->massResidual, 1e-6);
    EXPECT_LT(solution.compressor->energyResidual, 1e-6);
}

TEST(GearedCompressor, KeepsMassAndEnergyOfEnginePlenumAndWheel) {
    const Engine engine = wheelEngine();
    const CycleSolution solution = cycleOf(engine);
    ASSERT_TRUE(solution.compressor);
    const CompressorFigures& compressor = *solution.compressor;
    EXPECT_LT(compressor.massResidual, 1e-6);
    EXPECT_LT(compressor.energyResidual, 1e-6);
    for (const CycleFigures& cycle : solution.cycles) {
        EXPECT_LT(cycle.massResidual, 1e-9);
        EXPECT_LT(cycle.energyResidual, 1e-6);
    }
    // what the wheel gives is what the cylinders take
    const double drawn = solution.cycles.front().deliveredMass * engine.run.cylinders *
                         engine.chamber.cyclesPerTurn() * engine.run.omega / units::turn;
    EXPECT_NEAR(drawn / compressor.flow, 1.0, 2e-5);
    EXPECT_EQ(solution.supplyPower, compressor.power);
    EXPECT_TRUE(solution.supplyPaid);
    EXPECT_GT(compressor.pressureRatio, 1.1);
}

// The wheel stands where its curve and the engine's meet.
TEST(GearedCompressor, RunsOnItsCurve) {
    Engine engine = wheelEngine();
    engine.settings.supply.plenumVolume = 20e-3; // hardly any ripple
    const CycleSolution solution = cycleOf(engine);
    const Supply& supply = engine.settings.supply;
    const Feeder feeder(supply, dryAir(), engine.run.omega, gearedSpeed(supply, engine.run.omega));
    const auto& wheel = feeder.wheel();
    ASSERT_TRUE(wheel);
    EXPECT_NEAR(wheel->pressureRatio(solution.compressor->flow), solution.compressor->pressureRatio,
                3e-3);
    EXPECT_NEAR(solution.compressor->power,
                solution.compressor->flow * wheel->compression(solution.compressor->flow).work,
                2e-3 * solution.compressor->power);
}

// A wheel follows the speed as the square, the time of a cycle as the inverse: where the exhaust
// stands at ambient pressure the delivery ratio hardly changes, and there is an answer from 5 to
// 150 % of the speed, in surge as well.
TEST(GearedCompressor, AnswersFromFiveToAHundredAndFiftyPercentOfTheSpeed) {
    for (const double diameter : {0.105, 0.16}) {
        Engine engine = wheelEngine();
        engine.settings.supply.compressor.wheel.diameter = diameter;
        for (const double share : {0.05, 0.1, 0.25, 0.5, 1.0, 1.25, 1.5}) {
            engine.run = running(1800.0 * share, 3);
            SilentMonitor monitor;
            const auto solved = solveCycle(engine.chamber, engine.settings, engine.run, monitor);
            ASSERT_TRUE(solved) << diameter << ' ' << share << ' '
                                << solved.problems().front().message.english();
            EXPECT_GT(solved->cycles.front().deliveryRatio, 0.2) << diameter << ' ' << share;
            const bool surges = solved->compressor->flowCoefficient <
                                engine.settings.supply.compressor.wheel.surgeFlow;
            EXPECT_EQ(surges, diameter > 0.15) << share;
        }
    }
}

TEST(GearedCompressor, RunsOnAMeasuredWheelAsOnItsCoefficients) {
    Engine engine = wheelEngine();
    const CycleSolution one = cycleOf(engine);
    Wheel& wheel = engine.settings.supply.compressor.wheel;
    wheel = measured(wheel, {2000.0, 4000.0, 6000.0});
    const CycleSolution other = cycleOf(engine);
    EXPECT_NEAR(other.plenumPressure / one.plenumPressure, 1.0, 2e-3);
    EXPECT_NEAR(other.cycles.front().work / one.cycles.front().work, 1.0, 1e-2);
    EXPECT_LT(other.compressor->energyResidual, 1e-6);
    EXPECT_LT(other.compressor->massResidual, 1e-6);
}

// A window as long as the phase between evenly phased cylinders shows what all of them integrated
// over a whole period show, with a wheel as with a blower.
TEST(GearedCompressor, WindowOfEvenCylindersShowsTheWholePeriod) {
    const Engine engine = wheelEngine();
    CycleOptions together;
    together.integrateTogether = true;
    const CycleSolution a = cycleOf(engine), b = cycleOf(engine, together);
    EXPECT_NEAR(a.cycles.front().work / b.cycles.front().work, 1.0, 1e-5);
    EXPECT_NEAR(a.supplyPower / b.supplyPower, 1.0, 1e-5);
}

// The blower takes a volume: what a cooler before it makes denser is more mass, and by as much as
// its temperature falls where the wheel's pressure stays.
TEST(Intercooler, GivesTheBlowerDenserAir) {
    Supply supply = wheelEngine().settings.supply;
    supply.compressor.stages = Stages::wheelThenBlower;
    supply.displacement = 0.6e-3;
    const GasGroup& air = dryAir();
    const double omega = 1800.0 * units::revPerMinute, wheel = gearedSpeed(supply, omega);
    const Feeder hot(supply, air, omega, wheel);
    ASSERT_TRUE(hot.between());
    EXPECT_EQ(hot.between()->temperature, hot.between()->hottest);
    ASSERT_GT(hot.between()->hottest, 315.0);
    supply.compressor.interCoolerTemperature = 305.0;
    const Feeder cold(supply, air, omega, wheel);
    EXPECT_EQ(cold.between()->temperature, 305.0);
    EXPECT_GT(cold.between()->hottest, 305.0);
    const auto density = [](const Feeder& feeder) {
        return feeder.between()->pressure / feeder.between()->temperature;
    };
    EXPECT_NEAR(cold.between()->flow / hot.between()->flow, density(cold) / density(hot), 1e-12);
    EXPECT_GT(cold.between()->flow, 1.02 * hot.between()->flow);
    // behind the same pressure ratio of the blower there is less work to do on cooler air
    const double plenum = 1.3 * cold.between()->pressure;
    const double ratio = hot.between()->pressure / cold.between()->pressure;
    EXPECT_LT(cold.feed(plenum).blowerWork, hot.feed(plenum * ratio).blowerWork);
    // a cooler does not heat
    supply.compressor.interCoolerTemperature = 900.0;
    const Feeder idle(supply, air, omega, wheel);
    EXPECT_EQ(idle.between()->flow, hot.between()->flow);
    EXPECT_EQ(idle.between()->temperature, hot.between()->temperature);
}

TEST(Intercooler, KeepsMassAndEnergyOfEngineAndPlenum) {
    Engine engine = wheelEngine();
    engine.settings.supply.compressor.stages = Stages::wheelThenBlower;
    engine.settings.supply.displacement = 0.9e-3;
    const CycleSolution hot = cycleOf(engine);
    engine.settings.supply.compressor.interCoolerTemperature = 303.0;
    const CycleSolution cold = cycleOf(engine);
    EXPECT_LT(cold.compressor->massResidual, 1e-6);
    EXPECT_LT(cold.compressor->energyResidual, 1e-6);
    EXPECT_LT(cold.cycles.front().energyResidual, 1e-6);
    EXPECT_GT(cold.cycles.front().trappedMass, hot.cycles.front().trappedMass);
}

TEST(CompressorWheel, CorrectsItsFlowToTheReferenceState) {
    Wheel wheel;
    EXPECT_EQ(correctedFlow(0.1, wheel.referencePressure, wheel.referenceTemperature, wheel), 0.1);
    // thin hot air: the same wheel at the same Mach number passes less of it
    EXPECT_NEAR(correctedFlow(0.1, 0.8e5, 4.0 * wheel.referenceTemperature, wheel), 0.25, 1e-15);
}

} // namespace
} // namespace lobewright::gas
