#include "core/design/file.h"
#include "tests/design/sample.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

#include <filesystem>
#include <sys/stat.h>

namespace lobewright::design {
namespace {

using testing::listed;
using testing::sample;
using testing::sampleText;
using testing::sampleTree;

TEST(DesignFile, SampleReadsWithoutProblem) {
    const auto design = readDesign(sampleText());
    ASSERT_TRUE(design) << listed(design.problems());
    EXPECT_EQ(design->mechanism.cylinders, 3);
    EXPECT_DOUBLE_EQ(design->mechanism.bore, 0.058);
    EXPECT_DOUBLE_EQ(design->running.speed, 1000.0 * 2.0 * 3.14159265358979323846 / 60.0);
    EXPECT_FALSE(design->tracks.exhaust);
}

TEST(DesignFile, WrittenDesignReadsBackBitForBit) {
    const Design design = sample();
    const auto again = readDesign(writeDesign(design));
    ASSERT_TRUE(again) << listed(again.problems());
    EXPECT_EQ(*again, design);
    EXPECT_EQ(writeDesign(*again), writeDesign(design));
}

// Whatever decimal a person types in any unit comes back as typed, not as 35.99999999999999.
TEST(DesignFile, TypedDecimalsComeBackAsTyped) {
    for (int i = 1; i < 2000; ++i) {
        nlohmann::json tree = sampleTree();
        const double typed = i / 100.0;
        tree["mechanism"]["exhaust_lead_deg"] = typed;
        tree["mechanism"]["clearance_mm"] = typed;
        tree["gas"]["exhaust_pressure_bar"] = (50 + i) / 1000.0;
        tree["running"]["speed_rpm"] = (500 + i) / 100.0;
        tree["mechanism"]["recess_cm3"] = typed;
        const auto design = readDesign(tree.dump());
        ASSERT_TRUE(design) << listed(design.problems());
        const auto written = nlohmann::json::parse(writeDesign(*design));
        EXPECT_EQ(written["mechanism"]["exhaust_lead_deg"].dump(), nlohmann::json(typed).dump());
        EXPECT_EQ(written["mechanism"]["clearance_mm"], tree["mechanism"]["clearance_mm"]);
        EXPECT_EQ(written["mechanism"]["recess_cm3"], tree["mechanism"]["recess_cm3"]);
        EXPECT_EQ(written["running"]["speed_rpm"], tree["running"]["speed_rpm"]);
        EXPECT_EQ(written["gas"]["exhaust_pressure_bar"], tree["gas"]["exhaust_pressure_bar"]);
    }
}

TEST(DesignFile, DefaultsAreWrittenOutInCleanDecimals) {
    const auto written = nlohmann::json::parse(writeDesign(sample()));
    EXPECT_EQ(written["limits"]["pressure_angle_deg"]["warning"].dump(), "35.0");
    EXPECT_EQ(written["limits"]["roller_life_h"]["error"].dump(), "100.0");
    EXPECT_EQ(written["friction"]["rings"][0]["tension_pressure_MPa"].dump(), "0.15");
    EXPECT_EQ(written["lubricant"]["pressure_coefficient_per_GPa"].dump(), "20.0");
    EXPECT_EQ(written["materials"]["track"]["elastic_modulus_GPa"].dump(), "206.0");
    EXPECT_EQ(written["materials"]["track"]["roughness_um"].dump(), "0.2");
    EXPECT_EQ(written["gas"]["wall_heat"]["model"], "woschni");
    EXPECT_EQ(written["gas"]["supply"]["ambient_temperature_K"].dump(), "298.15");
    EXPECT_TRUE(written["gas"]["octane_number"].is_null());
}

TEST(DesignFile, SectionsOtherThanGeometryMayBeLeftOut) {
    nlohmann::json tree = sampleTree();
    tree.erase("gas");
    tree.erase("running");
    tree.erase("title");
    tree["mechanism"].erase("piston");
    const auto design = readDesign(tree.dump());
    ASSERT_TRUE(design) << listed(design.problems());
    EXPECT_EQ(design->gas, gas::Settings{});
    EXPECT_EQ(design->running, Running{});
    EXPECT_FALSE(design->mechanism.piston);
}

TEST(DesignFile, OptionalValuesOfAnOwnExhaustTrackAreNotInheritedFromTheInletTrack) {
    nlohmann::json tree = sampleTree();
    auto& segments = tree["tracks"]["inlet"]["segments"];
    tree["tracks"]["exhaust"] = tree["tracks"]["inlet"];
    segments[0]["lift_mm"] = 34.0;
    const auto design = readDesign(tree.dump());
    ASSERT_TRUE(design) << listed(design.problems());
    const auto& own = std::get<motion::SegmentShape>(design->tracks.exhaust->shape);
    EXPECT_FALSE(own.segments[0].endLift);
}

TEST(DesignFile, KnotsAndHarmonicsReadBackBitForBit) {
    nlohmann::json tree = sampleTree();
    tree["tracks"]["inlet"] = {
        {"lobes", 2},
        {"knots",
         {{{"angle_deg", 0.0}, {"lift_mm", 0.0}},
          {{"angle_deg", 47.3}, {"lift_mm", 17.1}, {"slope_mm_per_deg", 0.61}},
          {{"angle_deg", 90.0}, {"lift_mm", 34.0}},
          {{"angle_deg", 131.0}, {"lift_mm", 17.0}}}}};
    tree["tracks"]["exhaust"] = {{"lobes", 2},
                                 {"harmonics",
                                  {{{"order", 1}, {"cos_mm", -17.0}, {"sin_mm", 0.0}},
                                   {{"order", 2}, {"cos_mm", 0.7}, {"sin_mm", 0.1}}}}};
    const auto design = readDesign(tree.dump());
    ASSERT_TRUE(design) << listed(design.problems());
    const auto again = readDesign(writeDesign(*design));
    ASSERT_TRUE(again) << listed(again.problems());
    EXPECT_EQ(*again, *design);
}

TEST(DesignFile, BurnStartMayBeSearchedForBestTorque) {
    nlohmann::json tree = sampleTree();
    tree["gas"]["burn"]["start_deg"] = "best-torque";
    const auto design = readDesign(tree.dump());
    ASSERT_TRUE(design) << listed(design.problems());
    EXPECT_TRUE(design->gas.burn.bestTorque);
    EXPECT_EQ(nlohmann::json::parse(writeDesign(*design))["gas"]["burn"]["start_deg"],
              "best-torque");
}

class SavedDesign : public ::testing::Test {
  protected:
    void SetUp() override {
        const auto* info = ::testing::UnitTest::GetInstance()->current_test_info();
        folder_ = std::filesystem::temp_directory_path() /
                  fmt::format("lobewright-{}-{}", info->name(), ::getpid());
        std::filesystem::create_directories(folder_);
    }
    void TearDown() override {
        std::filesystem::permissions(folder_, std::filesystem::perms::owner_all);
        std::filesystem::remove_all(folder_);
    }
    std::filesystem::path folder_;
};

TEST_F(SavedDesign, LoadsAsItWas) {
    const Design design = sample();
    const auto file = folder_ / "pump set.lobewright.json";
    EXPECT_FALSE(saveDesign(design, file));
    const auto loaded = loadDesign(file);
    ASSERT_TRUE(loaded) << listed(loaded.problems());
    EXPECT_EQ(*loaded, design);
}

TEST_F(SavedDesign, LeavesNoOtherFileAndKeepsLinksAndPermissions) {
    const auto file = folder_ / "real.json";
    const auto link = folder_ / "link.json";
    EXPECT_FALSE(saveDesign(sample(), file));
    std::filesystem::permissions(file, std::filesystem::perms{0640});
    std::filesystem::create_symlink("real.json", link);
    EXPECT_FALSE(saveDesign(sample(), link));
    EXPECT_TRUE(std::filesystem::is_symlink(link));
    EXPECT_EQ(std::filesystem::status(file).permissions(), std::filesystem::perms{0640});
    const auto files = std::distance(std::filesystem::directory_iterator(folder_), {});
    EXPECT_EQ(files, 2);
}

TEST_F(SavedDesign, SaysWhyItCannotBeWritten) {
    const auto problem = saveDesign(sample(), folder_ / "missing" / "design.json");
    ASSERT_TRUE(problem);
    EXPECT_NE(problem->message.english().find("cannot be written"), std::string::npos)
        << problem->message.english();
}

TEST_F(SavedDesign, MissingFilesAndFoldersAreProblems) {
    EXPECT_FALSE(loadDesign(folder_ / "nothing.json"));
    EXPECT_FALSE(loadDesign(folder_));
}

} // namespace
} // namespace lobewright::design
