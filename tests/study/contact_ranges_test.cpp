#include "core/study/contact_ranges.h"
#include "core/study/speed_sweep.h"
#include "core/units.h"
#include "tests/solution/solved_sample.h"

namespace lobewright::study {
namespace {

using test::figure;
using test::sample;

ContactRanges ranges(const design::Design& design, double from, double to) {
    SilentMonitor monitor;
    const auto found = contactRanges(design, from, to, monitor);
    if (!found) {
        throw std::runtime_error(found.problems().front().message.english());
    }
    return *found;
}

bool keepsContact(design::Design design, double rpm) {
    design.running.speed = rpm * units::revPerMinute;
    return figure(test::solved(design), "keeps_contact") == 1.0;
}

// Each end is where a solution of its own loses contact, and the sweep's column says the same
// between.
TEST(ContactRanges, EndWhereSolutionsAtThoseSpeedsLoseContact) {
    const auto design = sample("biogas-pump-set");
    const auto found = ranges(design, 200.0, 2400.0);
    ASSERT_EQ(found.kept.size(), 1U);
    const ContactRange& range = found.kept.front();
    ASSERT_TRUE(range.below);
    ASSERT_TRUE(range.above);
    EXPECT_FALSE(keepsContact(design, range.from * 0.9995));
    EXPECT_TRUE(keepsContact(design, range.from * 1.0005));
    EXPECT_TRUE(keepsContact(design, range.to * 0.9995));
    EXPECT_FALSE(keepsContact(design, range.to * 1.0005));
    SilentMonitor monitor;
    const auto table = speedSweep(design, 200.0, 2400.0, 23, {}, monitor);
    ASSERT_TRUE(table);
    for (const Point& point : table->points) {
        const bool isInside = range.from <= point.parameter && point.parameter <= range.to;
        EXPECT_EQ(*point.values[*table->column("keeps_contact")], isInside ? 1.0 : 0.0)
            << point.parameter;
    }
}

TEST(ContactRanges, SayWhatEndsThem) {
    const auto found = ranges(sample("biogas-pump-set"), 200.0, 2400.0);
    const ContactRange& range = found.kept.front();
    // What presses the roller on and what pulls it off are equal there.
    for (const auto* loss : {&*range.below, &*range.above}) {
        const double size = std::abs(loss->shares.inertia) + std::abs(loss->shares.gas);
        EXPECT_LT(std::abs(loss->shares.total()), 1e-3 * size);
    }
    EXPECT_GT(range.below->shares.inertia, 0.0);
    EXPECT_LT(range.above->shares.inertia, 0.0);
    const auto told = sentences(found);
    ASSERT_EQ(told.size(), 3U);
    EXPECT_NE(told[1].english().find("ring friction holds the piston back"), std::string::npos);
    EXPECT_NE(told[2].english().find("inertia exceeds the gas force"), std::string::npos);
}

TEST(ContactRanges, ReachToTheEndsOfWhatWasLookedAt) {
    const auto found = ranges(sample("biogas-pump-set"), 900.0, 1100.0);
    ASSERT_EQ(found.kept.size(), 1U);
    EXPECT_EQ(found.kept.front().from, 900.0);
    EXPECT_EQ(found.kept.front().to, 1100.0);
    EXPECT_FALSE(found.kept.front().below || found.kept.front().above);
    EXPECT_EQ(sentences(found).size(), 1U);
}

TEST(ContactRanges, AClosedTrackHoldsTheRollersAtEverySpeed) {
    auto design = sample("biogas-pump-set");
    design.mechanism.closedTrack = true;
    const auto found = ranges(design, 200.0, 2400.0);
    EXPECT_TRUE(found.isClosed);
    EXPECT_EQ(sentences(found).size(), 1U);
}

TEST(ContactRanges, RefuseSpeedsOutOfOrderAndStopWhenAsked) {
    SilentMonitor monitor;
    const auto design = sample("biogas-pump-set");
    EXPECT_FALSE(contactRanges(design, 0.0, 1000.0, monitor));
    EXPECT_FALSE(contactRanges(design, 1000.0, 900.0, monitor));
    class StopAfter final : public Monitor {
        int left_ = 45; // past the speeds tried first
        bool step(double, const Message&) override { return --left_ > 0; }
    } stopping;
    const auto stopped = contactRanges(design, 200.0, 2400.0, stopping);
    ASSERT_FALSE(stopped);
    EXPECT_EQ(stopped.problems().front().message.english(), "cancelled");
}

} // namespace
} // namespace lobewright::study
