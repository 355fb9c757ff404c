// A study makes its figures of one period of the track and of the worst places alone; they are
// those of the whole solution.
#include "core/design/file.h"
#include "core/solution/solution.h"
#include "tests/places.h"

#include <gtest/gtest.h>

#include <cmath>
#include <filesystem>

namespace lobewright::solution {
namespace {

std::vector<std::string> samples() {
    std::vector<std::string> names;
    for (const auto& entry :
         std::filesystem::directory_iterator(test::sourceFolder() + "/samples")) {
        if (entry.path().string().ends_with(".lobewright.json")) {
            names.push_back(entry.path().string());
        }
    }
    return names;
}

/// Every figure of the study beside that of the whole; motored figures ask for a motored run.
void expectFiguresOf(const Solution& whole, const Solution& study, const std::string& what) {
    EXPECT_GT(study.figures.size(), 10u) << what;
    for (const Figure& figure : study.figures) {
        const Figure* other = whole.figure(figure.name);
        if (!other) {
            // The least of an order that is listed at all is rounding.
            EXPECT_NE(figure.name.find("_order_"), std::string::npos) << what << figure.name;
            continue;
        }
        if (figure.name.find("motored") != std::string::npos) {
            continue;
        }
        EXPECT_EQ(figure.value.has_value(), other->value.has_value()) << what << figure.name;
        if (figure.value && other->value) {
            // Residuals and what cancels are rounding of what they are made of.
            const bool isRounding = std::abs(*other->value) < 1e-9;
            EXPECT_NEAR(*figure.value, *other->value,
                        isRounding ? 1e-9 : 1e-11 * std::abs(*other->value))
                << what << ": " << figure.name;
        }
    }
}

void expectSame(const design::Design& design, const std::string& what) {
    SilentMonitor monitor;
    const auto whole = solve(design, monitor);
    ASSERT_TRUE(whole) << what;
    const auto all = solve(design, monitor, nullptr, Detail::figures);
    ASSERT_TRUE(all) << what;
    EXPECT_TRUE(all->channels.empty());
    expectFiguresOf(*whole, *all, what + " all: ");
    Request some(Detail::figures);
    some.groups = {"performance", "loads", "contact", "shaking"};
    const auto few = solve(design, monitor, nullptr, some);
    ASSERT_TRUE(few) << what;
    EXPECT_NE(few->figure("shaking_force_peak_N"), nullptr);
    EXPECT_EQ(few->figure("energy_fluctuation_J"), nullptr);
    expectFiguresOf(*whole, *few, what + " some: ");
    // Stages of either kind lend the other what they have.
    const auto after = solve(design, monitor, &*few);
    ASSERT_TRUE(after) << what;
    EXPECT_EQ(after->theta.size(), whole->theta.size());
    expectFiguresOf(*whole, *after, what + " after: ");
    const auto before = solve(design, monitor, &*whole, some);
    ASSERT_TRUE(before) << what;
    expectFiguresOf(*whole, *before, what + " before: ");
}

TEST(StudyFigures, AreThoseOfTheWholeSolution) {
    for (const std::string& file : samples()) {
        auto loaded = design::loadDesign(file);
        ASSERT_TRUE(loaded) << file;
        expectSame(*loaded, std::filesystem::path(file).stem().string());
    }
}

TEST(StudyFigures, AreThoseOfOpenAndClosedTracksAndCrownedRollers) {
    for (const bool isClosed : {false, true}) {
        for (const bool isCrowned : {false, true}) {
            auto loaded = design::loadDesign(test::sourceFolder() +
                                             "/samples/hydrogen-buoy-generator.lobewright.json");
            design::Design design = std::move(loaded).value();
            design.mechanism.closedTrack = isClosed;
            design.mechanism.roller.crownRadius = isCrowned ? std::optional(0.4) : std::nullopt;
            // Fast enough to lift off an open track.
            for (const double factor : {1.0, 3.0}) {
                design::Design at = design;
                at.running.speed *= factor;
                expectSame(at, std::string(isClosed ? "closed " : "open ") +
                                   (isCrowned ? "crowned " : "straight ") + std::to_string(factor));
            }
        }
    }
}

} // namespace
} // namespace lobewright::solution
