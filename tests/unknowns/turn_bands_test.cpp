// Bands of channels over a turn.
#include "core/design/file.h"
#include "core/solution/solution.h"
#include "core/unknowns/bands.h"
#include "core/unknowns/turn_bands.h"
#include "tests/places.h"
#include "tests/unknowns/toy.h"

#include <tbb/global_control.h>

namespace lobewright::unknowns::testing {
namespace {

design::Design buoy() {
    auto loaded = design::loadDesign(test::sourceFolder() +
                                     "/samples/hydrogen-buoy-generator.lobewright.json");
    design::Design design = std::move(loaded).value();
    design.knowledge.clear();
    design.knowledge["/gas/lambda"] = design::Known{.low = 2.2, .high = 3.2};
    design.knowledge["/mechanism/clearance_mm"] = design::Known{.low = 4.0, .high = 8.0};
    return design;
}

TEST(TurnBands, AreTheQuantilesOfTheEnginesAtEveryDegree) {
    const auto design = buoy();
    SilentMonitor monitor;
    constexpr int count = 9;
    const auto bands = turnBands(design, count, 1, monitor);
    ASSERT_TRUE(bands);
    EXPECT_EQ(bands->engines, count);
    ASSERT_EQ(bands->theta.size(), 361);
    const auto unknowns = unknownsOf(design);
    const Matrix shares = sharesOf(library(), 2, 1, 0, count);
    std::vector<solution::Solution> engines;
    for (int i = 0; i < count; ++i) {
        const auto engine = withShares(design, unknowns, {}, {shares(i, 0), shares(i, 1)});
        ASSERT_TRUE(engine);
        engines.push_back(solution::solve(*engine, monitor).value());
    }
    for (const char* name : {"pressure_bar", "torque_total_Nm", "lift_inlet_mm"}) {
        const auto found = bands->channels.find(name);
        ASSERT_NE(found, bands->channels.end()) << name;
        for (const int degree : {0, 17, 90, 180, 271, 360}) {
            std::vector<double> values;
            for (const auto& engine : engines) {
                const auto at = std::ranges::min_element(engine.theta, {}, [&](double theta) {
                    return std::abs(theta - bands->theta[degree]);
                });
                values.push_back(engine.channel(name)->values[at - engine.theta.begin()]);
            }
            const auto expected = quantiles(values);
            const double tolerance = 1e-5 * (std::abs(expected->p95) + std::abs(expected->p05)) +
                                     1e-6; // kept with seven digits
            EXPECT_NEAR(found->second[0][degree], expected->p05, tolerance) << name << degree;
            EXPECT_NEAR(found->second[2][degree], expected->p50, tolerance) << name << degree;
            EXPECT_NEAR(found->second[4][degree], expected->p95, tolerance) << name << degree;
        }
    }
}

TEST(TurnBands, DoNotDependOnTheCores) {
    SilentMonitor monitor;
    std::vector<TurnBands> all;
    for (const std::size_t threads : {1u, 2u, 7u}) {
        const tbb::global_control limit(tbb::global_control::max_allowed_parallelism, threads);
        all.push_back(turnBands(buoy(), 6, 3, monitor).value());
    }
    for (const TurnBands& other : all) {
        ASSERT_EQ(other.channels.size(), all[0].channels.size());
        for (const auto& [name, band] : other.channels) {
            for (std::size_t edge = 0; edge < band.size(); ++edge) {
                const Samples& expected = all[0].channels.at(name)[edge];
                for (Eigen::Index i = 0; i < expected.size(); ++i) {
                    EXPECT_TRUE(band[edge][i] == expected[i] ||
                                (std::isnan(band[edge][i]) && std::isnan(expected[i])))
                        << name;
                }
            }
        }
    }
}

TEST(TurnBands, ADesignOfWhichAllIsKnownHasNone) {
    auto design = buoy();
    design.knowledge.clear();
    SilentMonitor monitor;
    const auto bands = turnBands(design, 4, 1, monitor);
    ASSERT_FALSE(bands);
    EXPECT_EQ(bands.problems().front().path, "/knowledge");
}

} // namespace
} // namespace lobewright::unknowns::testing
