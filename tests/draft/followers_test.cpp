// What was drafted by a rule goes along when what it follows moves: what was given stays given.
#include "core/claims/claims_file.h"
#include "core/design/file.h"
#include "core/draft/build.h"
#include "core/draft/draft.h"
#include "core/draft/followers.h"
#include "core/units.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lobewright::draft {
namespace {

using units::millimetre;

Draft drafted(const char* engine, const char* figures) {
    const auto claims = study::readClaims(
        std::string(R"({"format": "lobewright-claims", "format_version": 1, "engine": {)") +
        engine + R"(}, "figures": {)" + figures + "}}");
    SilentMonitor monitor;
    return draft(briefOf(claims.value()), {}, monitor).value();
}

/// The draft with these values of inputs and all that follows them.
design::Design moved(const design::Design& design, const design::FieldValues& values) {
    return design::withFields(design, Followers(design).completed(values)).value();
}

double ratioOf(const design::Design& design) {
    const auto volumes = chamberVolumes(design.mechanism, design.tracks.inlet);
    return volumes->largest / volumes->smallest;
}

double strokeOf(const design::Design& design) {
    return std::get<motion::SegmentShape>(design.tracks.inlet.shape).stroke;
}

double displacementOf(const design::Design& design) {
    const auto& m = design.mechanism;
    return m.cylinders * units::pi / 4.0 * m.bore * m.bore * 2.0 * strokeOf(design);
}

TEST(Followers, TheDisplacementAndTheCompressionThatWereGivenStay) {
    const Draft made = drafted(R"("displacement": "900 cm³", "cylinders": 3,
        "compression_ratio": 10.5, "fuel": "petrol")",
                               R"("power": "25 kW", "power_speed": "2000 rpm")");
    const auto& design = made.design;
    EXPECT_NEAR(displacementOf(design), 900e-6, 1e-9);
    for (const double share : {0.8, 0.93, 1.1, 1.25}) {
        SCOPED_TRACE(share);
        const double bore = share * design.mechanism.bore / millimetre;
        const auto next =
            moved(design, {{"/mechanism/bore_mm", bore}, {"/mechanism/exhaust_lead_deg", 6.0}});
        EXPECT_NEAR(next.mechanism.bore, share * design.mechanism.bore, 1e-12);
        EXPECT_NEAR(displacementOf(next), 900e-6, 1e-12);
        EXPECT_NEAR(ratioOf(next), 10.5, 1e-6);
        EXPECT_NEAR(next.mechanism.pistonMass.inlet,
                    std::pow(share, 3.0) * design.mechanism.pistonMass.inlet, 1e-9);
        EXPECT_NEAR(next.mechanism.roller.radius, share * design.mechanism.roller.radius, 1e-9);
        EXPECT_NEAR(next.ports[End::inlet][0].width, share * design.ports[End::inlet][0].width,
                    1e-9);
        EXPECT_NEAR(next.ports[End::inlet][0].height / strokeOf(next),
                    design.ports[End::inlet][0].height / strokeOf(design), 1e-9);
        EXPECT_TRUE(design::validateEngine(next).empty());
    }
}

TEST(Followers, TheDiameterThatWasGivenStays) {
    const Draft made = drafted(R"("diameter": "300 mm", "cylinders": 3, "displacement": "700 cm³")",
                               R"("power_speed": "1500 rpm")");
    const double before = outerDiameter(made.design);
    const auto next =
        moved(made.design, {{"/mechanism/bore_mm", 1.1 * made.design.mechanism.bore / millimetre}});
    EXPECT_LT(next.mechanism.pitchRadius, made.design.mechanism.pitchRadius);
    EXPECT_NEAR(outerDiameter(next), before, 1e-9);
}

// A range of its own is that of the rule's factor, at the size of the design.
TEST(Followers, AnOwnRangeIsKeptBesideTheRule) {
    const Draft made =
        drafted(R"("displacement": "900 cm³", "cylinders": 3)", R"("power_speed": "2000 rpm")");
    const double mass = made.design.mechanism.pistonMass.inlet;
    const auto next =
        moved(made.design, {{"/mechanism/bore_mm", 0.9 * made.design.mechanism.bore / millimetre},
                            {"/mechanism/piston_mass_kg/inlet", 1.2 * mass}});
    EXPECT_NEAR(next.mechanism.pistonMass.inlet, 1.2 * 0.729 * mass, 1e-9);
}

TEST(Followers, WhatWasChosenOrMeasuredFollowsNothing) {
    Draft made =
        drafted(R"("displacement": "900 cm³", "cylinders": 3)", R"("power_speed": "2000 rpm")");
    made.design.knowledge["/tracks/inlet/stroke_mm"].origin = design::Origin::measured;
    EXPECT_FALSE(Followers(made.design).follows("/tracks/inlet/stroke_mm"));
    const auto next =
        moved(made.design, {{"/mechanism/bore_mm", 1.1 * made.design.mechanism.bore / millimetre}});
    EXPECT_EQ(strokeOf(next), strokeOf(made.design));
    made.design.knowledge.clear();
    EXPECT_TRUE(Followers(made.design).paths().empty());
}

TEST(Followers, NothingMovesWhereNothingMoved) {
    const Draft made =
        drafted(R"("displacement": "900 cm³", "cylinders": 3)", R"("power_speed": "2000 rpm")");
    EXPECT_EQ(moved(made.design, {}), made.design);
    EXPECT_GT(Followers(made.design).paths().size(), 8U);
}

} // namespace
} // namespace lobewright::draft
