// What manufacture scatters and heat moves.
#include "core/design/fields.h"
#include "core/design/file.h"
#include "core/unknowns/inputs.h"
#include "core/unknowns/tolerances.h"
#include "tests/places.h"

#include <gtest/gtest.h>

namespace lobewright::unknowns::testing {
namespace {

design::Design buoy() {
    return design::loadDesign(test::sourceFolder() +
                              "/samples/hydrogen-buoy-generator.lobewright.json")
        .value();
}

double value(const design::Design& design, const char* path) {
    return std::get<double>(design::findField(design, path)->value);
}

// ΔL = L·α·ΔT by hand: 300 mm of steel 60 K warmer grow 0.216 mm, two pistons of 100 mm of
// aluminium 150 K warmer 0.315 mm each.
TEST(Tolerances, GrowthIsTheClosedForm) {
    Tolerances::Growth growth;
    growth.length = 0.3;
    growth.pistonLength = 0.1;
    growth.shaftTemperature = 293.15 + 60.0;
    growth.pistonTemperature = 293.15 + 150.0;
    growth.blockTemperature = 293.15 + 80.0;
    EXPECT_NEAR(clearanceGrowth(growth), 0.216e-3 - 2.0 * 0.315e-3, 1e-12);
    // The crown comes 0.207 mm inwards, the edge goes 40 mm·23e−6·80 = 0.0736 mm outwards.
    EXPECT_NEAR(edgeGrowth(growth, 0.04), -0.207e-3 - 0.0736e-3, 1e-12);
}

TEST(Tolerances, ScatterPutsRangesAroundLiftEdgesAndClearance) {
    const auto design = withRangesFor(buoy(), Purpose::scatter);
    ASSERT_TRUE(design);
    const auto unknowns = unknownsOf(*design);
    ASSERT_EQ(unknowns.size(), 4u); // one track for both sides, two rows, the clearance
    const auto& lift = design->knowledge.at("/tracks/inlet/stroke_mm");
    EXPECT_NEAR(*lift.low, 28.0 - 0.05, 1e-12);
    EXPECT_NEAR(*lift.high, 28.0 + 0.05, 1e-12);
    const auto& edge = design->knowledge.at("/ports/exhaust/0/edge_mm");
    EXPECT_NEAR(*edge.low, 7.5 - 0.1, 1e-12);
    EXPECT_NEAR(*edge.high, 7.5 + 0.1, 1e-12);
}

TEST(Tolerances, AWarmEngineScattersAroundItsWarmValues) {
    Tolerances tolerances;
    tolerances.growth = Tolerances::Growth{.length = 0.3,
                                           .blockTemperature = 353.15,
                                           .shaftTemperature = 353.15,
                                           .pistonTemperature = 443.15,
                                           .pistonLength = 0.1};
    const auto design = withRangesFor(buoy(), Purpose::scatter, tolerances);
    ASSERT_TRUE(design);
    EXPECT_NEAR(value(*design, "/mechanism/clearance_mm"), 5.6 + 0.216 - 0.63, 1e-9);
    const auto& clearance = design->knowledge.at("/mechanism/clearance_mm");
    EXPECT_NEAR(*clearance.high - *clearance.low, 0.2, 1e-12);
}

TEST(Tolerances, APurposeTakesTheRangesThatAreMeant) {
    design::Design design = buoy();
    design.knowledge.clear();
    design.knowledge["/gas/lambda"] = {.origin = design::Origin::assumed, .low = 2.2, .high = 3.0};
    design.knowledge["/mechanism/exhaust_lead_deg"] = {
        .origin = design::Origin::chosen, .low = 1.0, .high = 5.0};
    const auto unknown = withRangesFor(design, Purpose::unknown);
    const auto free = withRangesFor(design, Purpose::free);
    ASSERT_TRUE(unknown && free);
    ASSERT_EQ(unknownsOf(*unknown).size(), 1u);
    EXPECT_EQ(unknownsOf(*unknown)[0].name, "/gas/lambda");
    ASSERT_EQ(unknownsOf(*free).size(), 1u);
    EXPECT_EQ(unknownsOf(*free)[0].name, "/mechanism/exhaust_lead_deg");
}

} // namespace
} // namespace lobewright::unknowns::testing
