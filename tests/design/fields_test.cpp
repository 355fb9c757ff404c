#include "core/design/fields.h"
#include "core/design/key_list.h"
#include "core/design/nearest.h"
#include "core/design/reader.h"
#include "tests/design/sample.h"

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <set>

namespace lobewright::design {
namespace {

using testing::listed;
using testing::sample;
using testing::sampleTree;

TEST(Fields, EveryFieldOfTheSampleStandsInItsFileUnderItsPath) {
    const auto written = nlohmann::json::parse(writeDesign(sample()));
    for (const Field& field : fields(sample())) {
        // Presence of an optional section is a field without a value of its own.
        if (field.choices == std::vector<std::string>{"not-given", "given"} ||
            field.choices == std::vector<std::string>{"even", "listed"}) {
            continue;
        }
        const auto pointer = nlohmann::json::json_pointer(field.path);
        if (!written.contains(pointer)) {
            EXPECT_TRUE(field.path.ends_with("/lift_mm")) << field.path;
            continue;
        }
        const auto& json = written[pointer];
        if (const double* number = std::get_if<double>(&field.value)) {
            EXPECT_EQ(json, *number) << field.path;
        } else if (const int* count = std::get_if<int>(&field.value)) {
            EXPECT_EQ(json, *count) << field.path;
        } else if (const bool* flag = std::get_if<bool>(&field.value)) {
            EXPECT_EQ(json, *flag) << field.path;
        } else if (const auto* text = std::get_if<std::string>(&field.value)) {
            EXPECT_EQ(json, *text) << field.path;
        } else {
            EXPECT_TRUE(json.is_null()) << field.path;
        }
    }
}

TEST(Fields, EveryFieldCanBeSetToItsOwnValueWithoutChange) {
    const Design design = sample();
    for (const Field& field : fields(design)) {
        const auto same = withField(design, field.path, field.value);
        ASSERT_TRUE(same) << field.path << listed(same.problems());
        EXPECT_EQ(*same, design) << field.path;
    }
}

TEST(Fields, EveryNumberTakesItsBoundsAndRefusesWhatLiesBeyond) {
    const Design design = sample();
    for (const Field& field : fields(design)) {
        if (field.kind != FieldKind::number) {
            continue;
        }
        const double span = field.range.max - field.range.min;
        const auto inside = withField(design, field.path, field.range.min + 0.5 * span);
        EXPECT_TRUE(inside) << field.path;
        for (const double value : {field.range.min - 0.01 * span, field.range.max + 0.01 * span,
                                   std::nan(""), std::numeric_limits<double>::infinity(), 1e300}) {
            const auto outside = withField(design, field.path, value);
            ASSERT_FALSE(outside) << field.path << " took " << value;
            EXPECT_EQ(outside.problems().front().path, field.path);
        }
        EXPECT_FALSE(withField(design, field.path, std::string("nonsense"))) << field.path;
        EXPECT_FALSE(withField(design, field.path, true)) << field.path;
    }
}

/// A design with every kind of key in use.
Design everyKind() {
    auto tree = sampleTree();
    tree["tracks"]["exhaust"] = tree["tracks"]["inlet"];
    tree["tracks"]["inlet"] = {{"lobes", 2},
                               {"knots",
                                {{{"angle_deg", 0.0}, {"lift_mm", 0.0}, {"slope_mm_per_deg", 0.0}},
                                 {{"angle_deg", 60.0}, {"lift_mm", 20.0}},
                                 {{"angle_deg", 90.0}, {"lift_mm", 34.0}}}}};
    tree["mechanism"]["cylinder_angles_deg"] = {0.0, 110.0, 230.0};
    tree["gas"]["supply"] = {{"kind", "blower"}};
    tree["gas"]["scavenging"] = {{"model", "displacement-then-mixing"}};
    return *readDesign(tree.dump());
}

/// What the file says, without the rules between values.
Design readWithoutRules(const std::string& text) {
    const auto tree = nlohmann::json::parse(text);
    Reader reader(tree);
    Design design;
    describe(reader, design);
    EXPECT_EQ(listed(reader.finish()), "");
    return design;
}

// Every unit of every key: the decimal given is the decimal written, and reads back to the same
// bits.
TEST(Fields, EveryNumberConvertsForthAndBack) {
    for (const Design& design : {sample(), everyKind()}) {
        for (const Field& field : fields(design)) {
            if (field.kind != FieldKind::number) {
                continue;
            }
            const double span = field.range.max - field.range.min;
            for (const double part : {0.0123, 0.25, 0.4567, 0.999}) {
                const double rough = field.range.min + part * span;
                const double value = std::stod(fmt::format("{:.6g}", rough));
                const auto changed = withField(design, field.path, value);
                ASSERT_TRUE(changed) << field.path << listed(changed.problems());
                const std::string text = writeDesign(*changed);
                const auto written = nlohmann::json::parse(text);
                EXPECT_EQ(written.at(nlohmann::json::json_pointer(field.path)).dump(),
                          nlohmann::json(value).dump())
                    << field.path;
                EXPECT_EQ(readWithoutRules(text), *changed) << field.path;
            }
        }
    }
}

// A value that the file may hold must not be refused by the stage that uses it.
TEST(Fields, TheGasStageTakesWhatTheFileMayHold) {
    for (const Design& design : {sample(), everyKind()}) {
        for (const Field& field : fields(design)) {
            if (field.kind != FieldKind::number || !field.path.starts_with("/gas/")) {
                continue;
            }
            const double span = field.range.max - field.range.min;
            for (const double value :
                 {field.range.min + (field.range.minExcluded ? 1e-6 * span : 0.0),
                  field.range.max - (field.range.maxExcluded ? 1e-6 * span : 0.0)}) {
                const auto changed = withField(design, field.path, value);
                ASSERT_TRUE(changed) << field.path << listed(changed.problems());
                EXPECT_EQ(listed(gas::validate(changed->gas)), "") << field.path;
            }
        }
    }
}

TEST(Fields, EveryFieldHasALabelAndHelp) {
    for (const Field& field : fields(sample())) {
        EXPECT_FALSE(field.label.empty()) << field.path;
        EXPECT_FALSE(field.help.empty()) << field.path;
    }
}

TEST(Fields, PathsAreUnique) {
    std::set<std::string> seen;
    for (const Field& field : fields(sample())) {
        EXPECT_TRUE(seen.insert(field.path).second) << field.path;
    }
}

TEST(Fields, ChangingTheSupplyKindShowsTheKeysOfTheOtherKind) {
    const auto blown = withField(sample(), "/gas/supply/kind", std::string("blower"));
    ASSERT_TRUE(blown);
    EXPECT_TRUE(findField(*blown, "/gas/supply/displacement_cm3_per_turn"));
    EXPECT_FALSE(findField(*blown, "/gas/supply/pressure_bar"));
    EXPECT_EQ(listed(validate(*blown)), "");
}

TEST(Fields, AnOwnExhaustTrackStartsAsACopyOfTheInletTrack) {
    const Design design = sample();
    const auto own = withField(design, "/tracks/exhaust", std::string("own"));
    ASSERT_TRUE(own);
    ASSERT_TRUE(own->tracks.exhaust);
    EXPECT_EQ(*own->tracks.exhaust, design.tracks.inlet);
    EXPECT_EQ(*withField(*own, "/tracks/exhaust", std::string("same")), design);
}

TEST(Fields, ListedCylinderAnglesStartEvenlySpaced) {
    const auto withAngles =
        withField(sample(), "/mechanism/cylinder_angles_deg", std::string("listed"));
    ASSERT_TRUE(withAngles);
    const auto second = findField(*withAngles, "/mechanism/cylinder_angles_deg/1");
    ASSERT_TRUE(second);
    EXPECT_NEAR(std::get<double>(second->value), 120.0, 1e-12);
    EXPECT_EQ(listed(validate(*withAngles)), "");
}

TEST(Fields, BurnStartTakesANumberOrTheSearch) {
    const auto searched = withField(sample(), "/gas/burn/start_deg", std::string("best-torque"));
    ASSERT_TRUE(searched);
    EXPECT_TRUE(searched->gas.burn.bestTorque);
    const auto fixed = withField(*searched, "/gas/burn/start_deg", -20.0);
    ASSERT_TRUE(fixed);
    EXPECT_FALSE(fixed->gas.burn.bestTorque);
    EXPECT_FALSE(withField(sample(), "/gas/burn/start_deg", std::string("best")));
}

TEST(Fields, WholeNumbersMayComeAsDecimalsWithoutFraction) {
    EXPECT_TRUE(withField(sample(), "/ports/inlet/0/count", 8.0));
    EXPECT_FALSE(withField(sample(), "/ports/inlet/0/count", 8.5));
}

TEST(Fields, AnUnknownPathIsAProblemAtThatPath) {
    const auto result = withField(sample(), "/mechanism/boer_mm", 60.0);
    ASSERT_FALSE(result);
    EXPECT_EQ(result.problems().front().path, "/mechanism/boer_mm");
}

TEST(KeyList, HoldsTheKeysOfEveryKind) {
    EXPECT_THAT(keyPaths(),
                ::testing::IsSupersetOf({"/format", "/tracks/exhaust/knots/*/slope_mm_per_deg",
                                         "/gas/supply/pressure_bar", "/gas/supply/plenum_cm3",
                                         "/mechanism/cylinder_angles_deg"}));
}

// Distances counted by hand; the swap of neighbours counts once (Damerau 1964).
TEST(EditDistance, CountsInsertionsDeletionsSubstitutionsAndSwaps) {
    EXPECT_EQ(editDistance("bore_mm", "bore_mm"), 0);
    EXPECT_EQ(editDistance("boer_mm", "bore_mm"), 1);
    EXPECT_EQ(editDistance("bor_mm", "bore_mm"), 1);
    EXPECT_EQ(editDistance("kitten", "sitting"), 3);
    EXPECT_EQ(editDistance("", "abc"), 3);
}

} // namespace
} // namespace lobewright::design
