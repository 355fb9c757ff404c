#include "core/solution/pipeline/stages.h"
#include "core/solution/solution.h"
#include "core/units.h"
#include "tests/solution/solved_sample.h"

#include <set>

namespace lobewright {
namespace {

using test::figure;
using test::fires;
using test::sample;
using test::solved;

class EverySample : public testing::TestWithParam<const char*> {};

TEST_P(EverySample, HasOnlyFiniteFiguresAndMotionChannels) {
    const auto solution = solved(sample(GetParam()));
    for (const auto& figure : solution.figures) {
        EXPECT_TRUE(!figure.value || std::isfinite(*figure.value)) << figure.name;
        EXPECT_TRUE(figure.value || !figure.note.empty())
            << figure.name << " is missing without a reason";
    }
    for (const auto& channel : solution.channels) {
        ASSERT_EQ(channel.values.size(), solution.theta.size()) << channel.name;
        EXPECT_FALSE(channel.values.isInf().any()) << channel.name;
        // no film where nothing presses, no enthalpy where nothing passes, no flame ports open
        const bool mayHaveGaps = channel.name.starts_with("film_") ||
                                 channel.name.ends_with("_enthalpy_kJ_per_kg") ||
                                 channel.name == "unburnt_temperature_K";
        if (!mayHaveGaps) {
            EXPECT_FALSE(channel.values.isNaN().any()) << channel.name;
        }
    }
}

TEST_P(EverySample, ClosesMassEnergyAndWork) {
    const auto solution = solved(sample(GetParam()));
    ASSERT_TRUE(solution.gas);
    for (const auto& cycle : solution.gas->cycles) {
        EXPECT_LE(cycle.massResidual, 1e-9);
        EXPECT_LE(cycle.energyResidual, 1e-6);
    }
    EXPECT_LE(figure(solution, "work_balance_residual"), 1e-6);
    EXPECT_NEAR(figure(solution, "audit_residual"), 0.0, 1e-5);
}

TEST_P(EverySample, WithoutFrictionTheShaftGetsAllGasWork) {
    auto design = sample(GetParam());
    design.friction = {};
    design.friction.rings.clear();
    design.friction.guide = design.friction.rolling = design.friction.rollerBearing =
        design.friction.slip = design.friction.shaftBearing = 0.0;
    // A closed track keeps the roller on: lift-off would break the balance of forces.
    design.mechanism.closedTrack = true;
    const auto solution = solved(design);
    const double gas = figure(solution, "gas_work_J");
    EXPECT_NEAR(figure(solution, "shaft_work_J"), gas, 1e-6 * std::abs(gas));
}

INSTANTIATE_TEST_SUITE_P(Samples, EverySample,
                         testing::Values("biogas-pump-set", "hydrogen-buoy-generator",
                                         "classroom-model"),
                         [](const auto& sampled) {
                             std::string name = sampled.param;
                             std::erase(name, '-');
                             return name;
                         });

TEST(Pipeline, NamesEveryAgreedChannelInOrder) {
    const auto solution = solved(sample("biogas-pump-set"));
    std::vector<std::string> expected = {"shaft_angle_deg", "cycle_angle_deg"};
    const auto both = [&](const std::string& before, const std::string& after) {
        expected.push_back(before + "inlet" + after);
        expected.push_back(before + "exhaust" + after);
    };
    both("lift_", "_mm");
    both("velocity_", "_m_per_s");
    both("acceleration_", "_m_per_s2");
    both("jerk_", "_m_per_s3");
    both("pressure_angle_", "_deg");
    both("relative_radius_", "_mm");
    expected.push_back("chamber_volume_cm3");
    both("port_area_", "_mm2");
    for (const char* name : {"pressure_bar", "temperature_K", "air_mass_mg", "products_mass_mg"}) {
        expected.emplace_back(name);
    }
    both("contact_force_", "_N");
    both("side_force_", "_N");
    both("contact_pressure_", "_MPa");
    both("film_", "_um");
    both("torque_", "_Nm");
    for (const char* name : {"torque_cylinder_Nm", "torque_total_Nm", "shaking_force_N",
                             "rocking_moment_x_Nm", "rocking_moment_y_Nm"}) {
        expected.emplace_back(name);
    }
    std::set<std::string> names;
    std::size_t next = 0;
    for (const auto& channel : solution.channels) {
        EXPECT_TRUE(names.insert(channel.name).second) << channel.name << " twice";
        EXPECT_FALSE(channel.label.empty());
        if (next < expected.size() && channel.name == expected[next]) {
            ++next;
        }
    }
    EXPECT_EQ(next, expected.size())
        << "missing or out of order: " << (next < expected.size() ? expected[next] : "");
}

TEST(Pipeline, AHeavierPistonDoesNotSolveTheGasAgain) {
    auto design = sample("biogas-pump-set");
    const auto first = solved(design);
    design.mechanism.pistonMass.inlet *= 1.1;
    const auto second = solved(design, &first);
    EXPECT_EQ(first.stages->gas, second.stages->gas);
    EXPECT_EQ(first.stages->motion, second.stages->motion);
    EXPECT_NE(figure(first, "highest_contact_force_inlet_N"),
              figure(second, "highest_contact_force_inlet_N"));
}

TEST(Pipeline, AMovedPortEdgeDoesNotRedoTheMotion) {
    auto design = sample("biogas-pump-set");
    const auto first = solved(design);
    design.ports.exhaust.front().edge *= 1.05;
    const auto second = solved(design, &first);
    EXPECT_EQ(first.stages->motion, second.stages->motion);
    EXPECT_NE(first.stages->gas, second.stages->gas);
    EXPECT_GT(figure(second, "exhaust_open_deg"), figure(first, "exhaust_open_deg"));
}

// Each change leaves earlier stages as they were: those are taken over, and all figures are those
// of a design that was never anything else.
TEST(Pipeline, TakingStagesOverChangesNoFigure) {
    const auto base = sample("biogas-pump-set");
    const auto first = solved(base);
    auto heavier = base, faster = base, moved = base, ahead = base, lobed = base;
    heavier.mechanism.pistonMass.inlet *= 1.1;
    moved.ports.exhaust.front().edge *= 1.05;
    faster.running.speed *= 1.1;
    ahead.mechanism.exhaustLead *= 1.1;
    std::get<motion::SegmentShape>(lobed.tracks.inlet.shape).stroke *= 1.01;
    const struct {
        const char* what;
        const design::Design& design;
        bool motion, timing, gas; ///< taken over
    } changes[] = {
        {"nothing", base, true, true, true},         {"piston mass", heavier, true, false, true},
        {"speed", faster, true, true, false},        {"port edge", moved, true, false, false},
        {"exhaust lead", ahead, true, false, false}, {"stroke", lobed, false, false, false}};
    for (const auto& change : changes) {
        const auto fresh = solved(change.design);
        const auto reused = solved(change.design, &first);
        EXPECT_EQ(reused.stages->motion == first.stages->motion, change.motion) << change.what;
        EXPECT_EQ(reused.stages->timing == first.stages->timing, change.timing) << change.what;
        EXPECT_EQ(reused.stages->gas == first.stages->gas, change.gas) << change.what;
        ASSERT_EQ(fresh.figures.size(), reused.figures.size());
        for (std::size_t i = 0; i < fresh.figures.size(); ++i) {
            EXPECT_EQ(fresh.figures[i].value, reused.figures[i].value)
                << change.what << ": " << fresh.figures[i].name;
        }
    }
}

TEST(Pipeline, AnInvalidDesignNamesThePathAndSolvesNothing) {
    auto design = sample("biogas-pump-set");
    std::get<motion::SegmentShape>(design.tracks.inlet.shape).segments.front().span += 0.1;
    SilentMonitor monitor;
    const auto result = solution::solve(design, monitor);
    ASSERT_FALSE(result);
    EXPECT_EQ(result.problems().front().path.rfind("/tracks/inlet/segments", 0), 0u)
        << result.problems().front().path;
}

TEST(Pipeline, AMonitorThatStopsYieldsNoResult) {
    class Stopper final : public Monitor {
        bool step(double, const Message&) override { return false; }
    } stopper;
    const auto result = solution::solve(sample("biogas-pump-set"), stopper);
    ASSERT_FALSE(result);
    EXPECT_EQ(result.problems().front().message.english(), "cancelled");
}

TEST(Pipeline, BrakeTorqueIsIndicatedLessTheFrictionParts) {
    const auto solution = solved(sample("biogas-pump-set"));
    double parts = 0.0;
    for (const auto& entry : solution.figures) {
        if (entry.name.rfind("fmep_", 0) == 0 && entry.name != "fmep_bar") {
            parts += *entry.value;
        }
    }
    EXPECT_NEAR(parts, figure(solution, "fmep_bar"), 1e-9);
    EXPECT_NEAR(figure(solution, "bmep_bar"), figure(solution, "imep_bar") - parts, 1e-9);
    // bmep = 2π·T/(c·V_d) [Heywood 1988, §2.7]
    const double displacement = figure(solution, "displacement_cm3") * 1e-6;
    EXPECT_NEAR(figure(solution, "brake_torque_Nm"),
                figure(solution, "bmep_bar") * 1e5 * figure(solution, "cycles_per_turn") *
                    displacement / units::turn,
                1e-6);
}

// With equal pressures on both sides the flow hardly knows its direction; a motored model still
// comes to a steady cycle.
TEST(Pipeline, MotoredModelSettlesAtExactlyTheExhaustPressure) {
    for (const double speed : {0.0, 30.0, 600.0, 1500.0}) {
        auto design = test::sample("classroom-model");
        design.gas.supply.pressure = design.gas.exhaustPressure;
        if (speed > 0.0) {
            design.running.speed = speed * units::revPerMinute;
        }
        EXPECT_TRUE(test::solved(design).gas) << speed;
    }
}

// Mean over a turn: all cylinders do alike, so that the track carries their number of times one.
// Without a helix the adjuster holds just that torque against the track.
TEST(AdjusterFigures, MeanTorqueIsThatOfTheExhaustPistons) {
    auto design = sample("biogas-pump-set");
    design.mechanism.adjuster.helixLead = 0.0;
    const auto solution = solved(design);
    const auto& torque = solution.channel("torque_exhaust_Nm")->values;
    const auto& theta = solution.theta;
    double mean = 0.0; // trapezoids of uneven width
    for (Eigen::Index i = 0; i + 1 < theta.size(); ++i) {
        mean += 0.5 * (torque[i] + torque[i + 1]) * (theta[i + 1] - theta[i]) / units::turn;
    }
    const double expected = -design.mechanism.cylinders * mean;
    EXPECT_NEAR(figure(solution, "adjuster_torque_mean_Nm"), expected, 0.01 * std::abs(expected));
    EXPECT_FALSE(solution.figure("adjuster_axial_force_peak_N")->value);
    EXPECT_EQ(figure(solution, "adjuster_holds_itself"), 0.0); // nothing but torque: it slips
    design.mechanism.adjuster.helixLead = 0.02;
    EXPECT_GT(figure(solved(design), "adjuster_axial_force_peak_N"), 0.0);
}

// C_s = ΔE/(I·ω²): inertia and fluctuation are inversely proportional.
TEST(FluctuationFigures, InertiaForAFluctuationGivesThatFluctuation) {
    auto design = sample("biogas-pump-set");
    design.running.inertia = 0.5;
    const auto solution = solved(design);
    const double found = figure(solution, "coefficient_of_fluctuation");
    EXPECT_NEAR(figure(solution, "inertia_for_2_percent_kg_m2"), 0.5 * found / 0.02, 1e-9);
    design.running.inertia = figure(solution, "inertia_for_1_percent_kg_m2");
    EXPECT_NEAR(figure(solved(design), "coefficient_of_fluctuation"), 0.01, 1e-9);
}

} // namespace
} // namespace lobewright
