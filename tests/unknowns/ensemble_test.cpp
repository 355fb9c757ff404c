// Engines drawn from what is known of a design.
#include "core/design/file.h"
#include "core/study/line.h"
#include "core/unknowns/bands.h"
#include "core/unknowns/consistent.h"
#include "core/unknowns/ensemble.h"
#include "tests/places.h"
#include "tests/unknowns/toy.h"

#include <gmock/gmock.h>
#include <tbb/global_control.h>

#include <algorithm>

namespace lobewright::unknowns::testing {
namespace {

using design::Known;
using design::Origin;
using Engine = unknowns::Run; ///< a test has a Run of its own

/// The buoy generator, of which some things are not known. Its pistons may collide.
design::Design buoy() {
    auto loaded = design::loadDesign(test::sourceFolder() +
                                     "/samples/hydrogen-buoy-generator.lobewright.json");
    design::Design design = std::move(loaded).value();
    design.knowledge.clear();
    design.knowledge["/gas/lambda"] = Known{.low = 2.2, .high = 3.2};
    design.knowledge["/gas/supply/pressure_bar"] = Known{.low = 1.02, .high = 1.2};
    design.knowledge["/gas/scavenging/model"] =
        Known{.options = {"perfect-mixing", "displacement-then-mixing"}};
    design.knowledge["/ports/inlet/0/discharge_coefficient"] =
        Known{.low = 0.6, .high = 0.8, .group = "ports"};
    design.knowledge["/ports/exhaust/0/discharge_coefficient"] =
        Known{.low = 0.6, .high = 0.8, .group = "ports"};
    return design;
}

/// The same with a stroke that may be too short for the ports.
design::Design doubtfulBuoy() {
    design::Design design = buoy();
    design.knowledge["/tracks/inlet/stroke_mm"] = Known{.low = 4.0, .high = 28.0};
    return design;
}

const std::vector<double> threeSpeeds = {300.0, 500.0, 700.0};

Ensemble computed(const design::Design& design, const Plan& plan) {
    SilentMonitor monitor;
    auto result = computeEnsemble(design, plan, monitor);
    EXPECT_TRUE(result);
    return std::move(result).value();
}

/// Bit by bit, gaps included.
void expectSame(const std::vector<double>& a, const std::vector<double>& b) {
    ASSERT_EQ(a.size(), b.size());
    for (std::size_t i = 0; i < a.size(); ++i) {
        EXPECT_TRUE(a[i] == b[i] || (std::isnan(a[i]) && std::isnan(b[i]))) << i;
    }
}
void expectSame(const Run& a, const Run& b) {
    EXPECT_EQ(a.index, b.index);
    EXPECT_EQ(a.shares, b.shares);
    EXPECT_EQ(a.failure.rule, b.failure.rule);
    expectSame(a.results, b.results);
    expectSame(a.curve, b.curve);
}

TEST(Ensemble, MembersOfAGroupAreOneUnknown) {
    const auto unknowns = unknownsOf(buoy());
    ASSERT_EQ(unknowns.size(), 4u);
    const auto ports = std::ranges::find(unknowns, "ports", &Unknown::name);
    ASSERT_NE(ports, unknowns.end());
    EXPECT_EQ(ports->members.size(), 2u);
    std::vector<double> shares(4, 0.25);
    for (const auto& [path, value] : valuesAt(unknowns, {}, shares)) {
        if (path.ends_with("discharge_coefficient")) {
            EXPECT_DOUBLE_EQ(std::get<double>(value), 0.65);
        }
        if (path.ends_with("model")) {
            EXPECT_EQ(std::get<std::string>(value), "perfect-mixing");
        }
    }
}

TEST(Ensemble, DoesNotDependOnTheCores) {
    const Plan plan{.samples = 12, .speeds = threeSpeeds};
    std::vector<Ensemble> all;
    for (const std::size_t threads : {1u, 2u, 7u}) {
        const tbb::global_control limit(tbb::global_control::max_allowed_parallelism, threads);
        all.push_back(computed(doubtfulBuoy(), plan));
    }
    for (const Ensemble& other : all) {
        expectSame(other.nominal, all[0].nominal);
        ASSERT_EQ(other.runs.size(), 12u);
        for (std::size_t i = 0; i < 12; ++i) {
            expectSame(other.runs[i], all[0].runs[i]);
        }
    }
}

TEST(Ensemble, FivePartsAreTheWhole) {
    const auto design = doubtfulBuoy();
    const Ensemble whole = computed(design, {.samples = 12, .speeds = threeSpeeds});
    std::vector<Engine> joined;
    for (int part = 0; part < 5; ++part) {
        const Ensemble some =
            computed(design, {.samples = 12, .speeds = threeSpeeds, .part = {part, 5}});
        std::ranges::copy(some.runs, std::back_inserter(joined));
    }
    std::ranges::sort(joined, {}, &Engine::index);
    ASSERT_EQ(joined.size(), 12u);
    for (std::size_t i = 0; i < 12; ++i) {
        expectSame(joined[i], whole.runs[i]);
    }
}

TEST(Ensemble, AnotherSeedDrawsOtherEngines) {
    const Plan plan{.samples = 2, .speeds = threeSpeeds};
    Plan other = plan;
    other.seed = 2;
    EXPECT_NE(computed(buoy(), plan).runs[0].shares, computed(buoy(), other).runs[0].shares);
}

TEST(Ensemble, EnginesThatCannotBeBuiltAreCountedByReason) {
    const Ensemble ensemble = computed(doubtfulBuoy(), {.samples = 48, .speeds = threeSpeeds});
    const Feasibility found = feasibility(ensemble);
    EXPECT_EQ(found.engines, 48);
    EXPECT_GT(found.notBuilt, 0);
    EXPECT_GT(found.runs, 24);
    long counted = found.runs;
    for (const FailureCount& reason : found.reasons) {
        counted += reason.count;
        EXPECT_FALSE(reason.example.english().empty());
    }
    EXPECT_EQ(counted, found.engines);
    EXPECT_EQ(found.runs + found.notBuilt + found.notRun, found.engines);
    // The numbers of each engine are no reason of its own.
    EXPECT_LE(found.reasons.size(), 4u);
}

TEST(Ensemble, AnEngineOfTheStudyIsTheSameSolvedAlone) {
    const auto design = buoy();
    const Ensemble ensemble = computed(design, {.samples = 2, .speeds = threeSpeeds});
    const Engine& run = ensemble.runs[1];
    const auto alone = design::withFields(design, valuesAt(ensemble.unknowns, {}, run.shares));
    SilentMonitor monitor;
    const auto solved = solution::solve(*alone, monitor);
    ASSERT_TRUE(solved);
    for (const char* name : {"brake_power_kW", "peak_pressure_bar", "compression_ratio"}) {
        const double value = *solved->figure(name)->value;
        EXPECT_NEAR(run.results[*ensemble.result(name)], value, 1e-4 * std::abs(value)) << name;
    }
}

TEST(Ensemble, BandsAreInOrderAndHoldMostEngines) {
    const Ensemble ensemble = computed(buoy(), {.samples = 32, .speeds = threeSpeeds});
    for (const auto& result : resultBands(ensemble)) {
        if (result.band) {
            EXPECT_LE(result.band->p05, result.band->p25) << result.column.name;
            EXPECT_LE(result.band->p25, result.band->p50) << result.column.name;
            EXPECT_LE(result.band->p50, result.band->p75) << result.column.name;
            EXPECT_LE(result.band->p75, result.band->p95) << result.column.name;
        }
    }
    const auto curve = curveBands(ensemble);
    ASSERT_EQ(curve.size(), 3u);
    for (const CurvePoint& point : curve) {
        ASSERT_TRUE(point.band[torque] && point.nominal[torque] && point.liftOffShare);
        EXPECT_LT(point.band[torque]->p05, point.band[torque]->p95);
        EXPECT_GE(*point.liftOffShare, 0.0);
        EXPECT_LE(*point.liftOffShare, 1.0);
    }
}

TEST(Ensemble, ADesignWithoutRangesHasNoUnknowns) {
    design::Design design = buoy();
    design.knowledge.clear();
    SilentMonitor monitor;
    const auto result = computeEnsemble(design, {.samples = 4, .speeds = threeSpeeds}, monitor);
    ASSERT_FALSE(result);
    EXPECT_EQ(result.problems().front().path, "/knowledge");
}

class StopsAtOnce final : public Monitor {
  public:
    bool step(double, const Message&) override { return false; }
};

TEST(Ensemble, StopsWhenAsked) {
    StopsAtOnce monitor;
    EXPECT_FALSE(computeEnsemble(buoy(), {.samples = 64, .speeds = threeSpeeds}, monitor));
}

TEST(Ensemble, RefusesSpeedsOutOfOrder) {
    SilentMonitor monitor;
    for (const auto& speeds : {std::vector{300.0, 500.0}, std::vector{500.0, 300.0, 700.0},
                               std::vector{0.0, 300.0, 700.0}}) {
        EXPECT_FALSE(computeEnsemble(buoy(), {.samples = 4, .speeds = speeds}, monitor));
    }
}

// One engine in twenty reaches this power; those that are found beyond them reach it too.
TEST(Ensemble, WhatWouldHaveToBeTrueHoldsForEveryEngineFound) {
    const auto design = buoy();
    const Ensemble ensemble = computed(design, {.samples = 64, .speeds = threeSpeeds});
    const std::size_t power = *ensemble.result("peak_power_kW");
    auto values = valuesOf(ensemble, power);
    std::ranges::sort(values);
    const double target = quantile(values, 0.95);
    SilentMonitor monitor;
    const auto required = whatWouldHaveToBeTrue(
        design, ensemble, {{"peak_power_kW", Condition::Sense::atLeast, target, 0.0, "most"}},
        {.wanted = 40, .most = 2000}, monitor);
    ASSERT_TRUE(required);
    EXPECT_NEAR(required->share, 0.05, 0.03);
    EXPECT_GE(required->runs.size(), 10u);
    for (const Engine& run : required->runs) {
        EXPECT_GE(run.results[power], target);
    }
    // More fuel in the air and more air give more power: λ has to be low, the supply high.
    const auto of = [&](const char* name) {
        return *std::ranges::find_if(required->unknowns, [&](const Narrowed& narrowed) {
            return ensemble.unknowns[narrowed.unknown].name == name;
        });
    };
    EXPECT_LT(of("/gas/lambda").after.p50, of("/gas/lambda").before.p25);
    EXPECT_GT(of("/gas/supply/pressure_bar").after.p50, of("/gas/supply/pressure_bar").before.p50);
    EXPECT_FALSE(sentences(*required, ensemble.unknowns).empty());
}

// A parabola through three points is itself.
TEST(Ensemble, ThePeakOfACurveIsThatOfItsParabola) {
    const std::vector<double> places = {1.0, 2.0, 4.0};
    const auto parabola = [](double x) { return 7.0 - (x - 2.5) * (x - 2.5); };
    const auto peak = study::peakOf(places, {parabola(1.0), parabola(2.0), parabola(4.0)});
    ASSERT_TRUE(peak);
    EXPECT_NEAR(peak->place, 2.5, 1e-12);
    EXPECT_NEAR(peak->value, 7.0, 1e-12);
    EXPECT_EQ(study::peakOf(places, {3.0, 2.0, 1.0})->place, 1.0);
    EXPECT_EQ(study::peakOf(places, {1.0, 2.0, 3.0})->place, 4.0);
    EXPECT_FALSE(study::peakOf(places, {std::nan(""), std::nan(""), std::nan("")}));
}

} // namespace
} // namespace lobewright::unknowns::testing
