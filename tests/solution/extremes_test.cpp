// Every number of a design at both ends of its range: an answer or a clear refusal, never a fault.
#include "core/design/fields.h"
#include "core/design/file.h"
#include "core/solution/solution.h"
#include "core/units.h"
#include "tests/solution/solved_sample.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

#include <cmath>
#include <set>

namespace lobewright::solution {
namespace {

using design::Design;
using design::Field;

/// The optional keys of a sample filled in, so that each is there to be tried.
Design filledIn(Design design) {
    for (const auto& [path, value] : std::vector<std::pair<std::string, design::FieldValue>>{
             {"/mechanism/roller/crown_radius_mm", 500.0},
             {"/gas/knock/octane_number", 95.0},
             {"/contact/roller_bearing/dynamic_rating_kN", 40.0},
             {"/contact/roller_bearing/static_rating_kN", 50.0},
             {"/gas/combustion/start_deg", -10.0},
             {"/running/inertia_kg_m2", 0.2}}) {
        if (const auto next = design::withField(design, path, value))
            design = *next;
    }
    return design;
}

/// What is wrong with the answer to a design; empty: nothing.
std::string faultOfAnswer(const Design& design) {
    SilentMonitor monitor;
    const auto solution = solve(design, monitor);
    if (!solution) {
        return solution.problems().front().message.empty() ? "a refusal without words" : "";
    }
    for (const Figure& figure : solution->figures) {
        if (figure.value && !std::isfinite(*figure.value)) {
            return fmt::format("{} is {}", figure.name, *figure.value);
        }
        if (!figure.value && figure.note.empty()) {
            return fmt::format("{} is missing without a reason", figure.name);
        }
    }
    for (const Channel& channel : solution->channels) {
        if (channel.values.isInf().any()) {
            return fmt::format("{} is infinite", channel.name);
        }
    }
    for (const Check& check : solution->checks) {
        if (!std::isfinite(check.value) || !std::isfinite(check.limit)) {
            return fmt::format("check {} judges {} by {}", check.id, check.value, check.limit);
        }
    }
    return solution->gas || !solution->checks.empty() ? "" : "no gas cycle and no reason";
}

class Extremes : public testing::TestWithParam<const char*> {};

TEST_P(Extremes, EveryNumberAtTheEndsOfItsRangeHasAnAnswerOrAReason) {
    const Design design = filledIn(test::sample(GetParam()));
    int solved = 0;
    for (const Field& field : design::fields(design)) {
        const bool isNumber =
            field.kind == design::FieldKind::number || field.kind == design::FieldKind::integer;
        if (!isNumber) {
            continue;
        }
        EXPECT_FALSE(field.range.minExcluded) << field.path << " has no least value";
        for (const double value : {field.range.min, field.range.max}) {
            if (!field.range.contains(value)) {
                continue;
            }
            const auto changed = design::withField(design, field.path, value);
            ASSERT_TRUE(changed) << field.path << " refuses its own bound " << value;
            if (!design::validateEngine(*changed).empty()) {
                continue; // refused, with a reason: the rules are tested elsewhere
            }
            SCOPED_TRACE(fmt::format("{} = {}", field.path, value));
            EXPECT_EQ(faultOfAnswer(*changed), "");
            ++solved;
        }
    }
    EXPECT_GT(solved, 60);
}

INSTANTIATE_TEST_SUITE_P(Samples, Extremes,
                         testing::Values("biogas-pump-set", "sketched-lobes-blown",
                                         "unequal-lobes"));

} // namespace
} // namespace lobewright::solution
