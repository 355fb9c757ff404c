#include "tests/cli/run_cli.h"
#include "tests/design/bad_designs.h"
#include "tests/design/sample.h"
#include "tests/places.h"

#include <gmock/gmock.h>

namespace lobewright::cli {
namespace {

namespace fs = std::filesystem;
using testing::contents;
using ::testing::HasSubstr;

class Cli : public testing::CliTest {};

TEST_F(Cli, SolvingASampleWritesSummaryAndChannelsAndNothingElse) {
    const auto outcome = run("solve " + sample("biogas-pump-set") + " --out result");
    ASSERT_EQ(outcome.status, 0) << outcome.err;
    EXPECT_EQ(outcome.err, testing::cautionLine());
    EXPECT_EQ(filesIn(folder_), 1U);
    EXPECT_EQ(filesIn(folder_ / "result"), 2U);
    const auto summary = nlohmann::json::parse(contents(folder_ / "result" / "summary.json"));
    EXPECT_GT(summary["performance"]["imep_bar"].get<double>(), 0.0);
    EXPECT_TRUE(summary.contains("checks"));
    EXPECT_EQ(summary["caution"].get<std::string>(), caution().text);
    EXPECT_THAT(summary["program"].get<std::string>(), HasSubstr("Lobewright "));
    const std::string csv = contents(folder_ / "result" / "channels.csv");
    EXPECT_TRUE(csv.starts_with("shaft_angle_deg,cycle_angle_deg,lift_inlet_mm,"));
}

TEST_F(Cli, SpeedAndMotoringOverrideTheFile) {
    ASSERT_EQ(run("solve " + sample("biogas-pump-set") + " --speed 900 --motored --out a").status,
              0);
    const auto summary = nlohmann::json::parse(contents(folder_ / "a" / "summary.json"));
    EXPECT_LT(summary["performance"]["imep_bar"].get<double>(), 0.0); // pumping and wall heat
}

TEST_F(Cli, EveryBadDesignEndsInStatus3WithItsPathOnStderrAndNoOutput) {
    for (const auto& bad : design::testing::badDesigns()) {
        SCOPED_TRACE(bad.name);
        put("bad.json", bad.text);
        const auto outcome = run("solve bad.json --out result");
        EXPECT_EQ(outcome.status, 3) << outcome.err;
        EXPECT_THAT(outcome.err, HasSubstr("bad.json: " + bad.path));
        EXPECT_EQ(outcome.out, "");
        EXPECT_FALSE(fs::exists(folder_ / "result"));
    }
}

TEST_F(Cli, CheckRefusesABadDesignInTheSameWay) {
    auto tree = design::testing::sampleTree();
    tree["mechanism"]["bore_mm"] = -1;
    tree["running"]["speed_rpm"] = "fast";
    put("bad.json", tree.dump());
    const auto outcome = run("check bad.json");
    EXPECT_EQ(outcome.status, 3);
    EXPECT_THAT(outcome.err, HasSubstr("bad.json: /mechanism/bore_mm: Bore is -1 mm"));
    EXPECT_THAT(outcome.err, HasSubstr("bad.json: /running/speed_rpm: "));
    EXPECT_THAT(outcome.err, HasSubstr("2 problems"));
}

TEST_F(Cli, CheckListsTheLimits) {
    const auto outcome = run("check " + sample("biogas-pump-set"));
    EXPECT_EQ(outcome.status, 0) << outcome.err;
    EXPECT_THAT(outcome.out, HasSubstr("errors: "));
}

TEST_F(Cli, SolveForWritesTheDesignThatReachesTheTarget) {
    const std::string question = "solve-for " + sample("biogas-pump-set") +
                                 " --result peak_pressure_bar --vary /gas/supply/pressure_bar"
                                 " --from 1.1 --to 2.5 --out made.json --value ";
    auto outcome = run(question + "60");
    ASSERT_EQ(outcome.status, 0) << outcome.err;
    EXPECT_THAT(outcome.out, HasSubstr("brake_power_kW")); // what else changed
    ASSERT_EQ(run("solve made.json --out result").status, 0);
    const auto summary = nlohmann::json::parse(contents(folder_ / "result" / "summary.json"));
    EXPECT_NEAR(summary["performance"]["peak_pressure_bar"].get<double>(), 60.0, 1e-3);
    fs::remove(folder_ / "made.json");
    outcome = run(question + "500");
    EXPECT_EQ(outcome.status, 4);
    EXPECT_THAT(outcome.err, HasSubstr("not reachable"));
    EXPECT_THAT(outcome.err, HasSubstr("at 2.5 bar"));
    EXPECT_FALSE(fs::exists(folder_ / "made.json"));
}

TEST_F(Cli, ContactSpeedsTellsWhereRollersLeaveTheirTracks) {
    const std::string command = "contact-speeds " + sample("biogas-pump-set");
    auto outcome = run(command + " --from 200 --to 2400");
    ASSERT_EQ(outcome.status, 0) << outcome.err;
    EXPECT_THAT(outcome.out, HasSubstr("The rollers keep contact from "));
    EXPECT_THAT(outcome.out, HasSubstr("ring friction holds the piston back"));
    EXPECT_THAT(outcome.out, HasSubstr("inertia exceeds the gas force"));
    EXPECT_EQ(outcome.err, testing::cautionLine());
    outcome = run(command + " --from 900 --to 800");
    EXPECT_EQ(outcome.status, 2);
    EXPECT_THAT(outcome.err, HasSubstr("--to the larger"));
    EXPECT_EQ(outcome.out, "");
}

TEST_F(Cli, DraftsAnEngineFromClaimsOrADuty) {
    put("sheet.json", R"({"format": "lobewright-claims", "format_version": 1,
        "engine": {"bore": "60 mm", "stroke": "40 mm", "cylinders": 3},
        "figures": {"power": "18 kW", "power_speed": "1800 rpm"}})");
    auto outcome = run("draft sheet.json --lobes 2 --out drafted.json");
    ASSERT_EQ(outcome.status, 0) << outcome.err;
    EXPECT_THAT(outcome.out, HasSubstr("pitch-radius"));
    EXPECT_EQ(run("solve drafted.json --out result").status, 0);
    outcome = run("draft --duty 'power=5 kW, speed=1500 rpm, fuel=methane' --out duty.json");
    EXPECT_EQ(outcome.status, 0) << outcome.err;
    outcome = run("draft --duty 'powr=5 kW' --out none.json");
    EXPECT_EQ(outcome.status, 2);
    EXPECT_THAT(outcome.err, HasSubstr("the nearest is \"power\""));
    EXPECT_FALSE(fs::exists(folder_ / "none.json"));
}

TEST_F(Cli, WrongUsageEndsInStatus2) {
    for (const std::string& arguments :
         {std::string(), std::string("dance"), "solve " + sample("biogas-pump-set"),
          std::string("solve --out result"), "check " + sample("biogas-pump-set") + " --unknown",
          "check " + sample("biogas-pump-set") + " --speed fast",
          "check " + sample("biogas-pump-set") + " --speed -5",
          "check " + sample("biogas-pump-set") + " --speed nan"}) {
        const auto outcome = run(arguments);
        EXPECT_EQ(outcome.status, 2) << arguments << outcome.err;
        EXPECT_NE(outcome.err, "") << arguments;
    }
    EXPECT_FALSE(fs::exists(folder_ / "result"));
}

TEST_F(Cli, HelpAndVersionAreEverywhere) {
    for (const char* command : {"", "solve", "sweep", "contact-speeds", "phase-map", "compare",
                                "claims", "check", "schema"}) {
        const auto help = run(fmt::format("{} --help", command));
        EXPECT_EQ(help.status, 0) << command;
        EXPECT_THAT(help.out, HasSubstr("Exit status")) << command;
        const auto version = run(fmt::format("{} --version", command));
        EXPECT_EQ(version.status, 0) << command;
        EXPECT_TRUE(version.out.starts_with("lobewright-cli ")) << command << version.out;
    }
}

TEST_F(Cli, AnOutputThatCannotBeWrittenIsSaidAndLeavesNothing) {
    put("file", "");
    const auto outcome = run("solve " + sample("biogas-pump-set") + " --out file");
    EXPECT_EQ(outcome.status, 5);
    EXPECT_THAT(outcome.err, HasSubstr("--out"));
    EXPECT_EQ(filesIn(folder_), 1U);
}

TEST_F(Cli, AnInputThatCannotBeReadEndsInStatus5) {
    for (const char* arguments :
         {"solve missing.json --out result", "check .", "claims none.json"}) {
        const auto outcome = run(arguments);
        EXPECT_EQ(outcome.status, 5) << arguments << outcome.err;
        EXPECT_NE(outcome.err, "") << arguments;
    }
    EXPECT_FALSE(fs::exists(folder_ / "result"));
}

TEST_F(Cli, SchemaIsThePublishedOne) {
    const std::string published =
        contents(fs::path(test::sourceFolder()) / "resources" / "design.schema.json");
    EXPECT_EQ(run("schema").out, published);
    EXPECT_EQ(run("schema --out schema.json").status, 0);
    EXPECT_EQ(contents(folder_ / "schema.json"), published);
}

std::vector<std::string> samples() {
    std::vector<std::string> names;
    for (const auto& entry : fs::directory_iterator(fs::path(test::sourceFolder()) / "samples")) {
        const std::string file = entry.path().filename().string();
        if (!file.ends_with(".lobewright.json")) {
            continue;
        }
        names.push_back(file.substr(0, file.find(".lobewright.json")));
    }
    return names;
}

TEST_F(Cli, EverySampleRunsWithinItsLimitsAndSaysWhatToLookAt) {
    EXPECT_GE(samples().size(), 5U);
    for (const std::string& name : samples()) {
        SCOPED_TRACE(name);
        const auto checked = run("check " + sample(name));
        EXPECT_EQ(checked.status, 0) << checked.err;
        EXPECT_THAT(checked.out, HasSubstr("errors: 0, warnings: 0"));
        ASSERT_EQ(run("solve " + sample(name) + " --out " + name).status, 0);
        const auto summary = nlohmann::json::parse(contents(folder_ / name / "summary.json"));
        const auto tree = design::testing::sampleTree(name);
        const bool isMotored = tree["running"].value("motored", false);
        const double power = summary["performance"]["brake_power_kW"];
        EXPECT_EQ(power > 0.0, !isMotored) << power;
        EXPECT_THAT(tree["notes"].get<std::string>(), HasSubstr("Invented"));
        EXPECT_THAT(tree["notes"].get<std::string>(), HasSubstr("Look at:"));
    }
}

// Every value is admissible, but nothing can burn while the ports stand open.
TEST_F(Cli, AValidDesignThatCannotBeSolvedEndsInStatus4AndSaysWhy) {
    auto tree = design::testing::sampleTree();
    tree["gas"]["burn"]["start_deg"] = 150.0;
    put("late.json", tree.dump());
    for (const char* arguments : {"solve late.json --out result", "check late.json"}) {
        const auto outcome = run(arguments);
        EXPECT_EQ(outcome.status, 4) << outcome.err;
        EXPECT_THAT(outcome.err, HasSubstr("not solvable: ")) << arguments;
    }
    EXPECT_FALSE(fs::exists(folder_ / "result"));
}

TEST_F(Cli, CtrlCStopsLongWorkAndKeepsThePointsThatAreDoneInAFileThatSaysSo) {
    const auto outcome = run(
        "sweep " + sample("biogas-pump-set") +
        " --from 300 --to 1000 --points 100000 --out sweep.csv 2>/dev/null & pid=$!; sleep 0.5; "
        "while kill -INT $pid 2>/dev/null; do sleep 0.2; done; wait $pid");
    EXPECT_EQ(outcome.status, 130) << outcome.err;
    EXPECT_FALSE(fs::exists(folder_ / "sweep.csv"));
    if (filesIn(folder_) > 0) { // a slow machine has no point yet
        EXPECT_EQ(filesIn(folder_), 1U);
        const std::string kept = contents(folder_ / "sweep.unfinished.csv");
        EXPECT_TRUE(kept.starts_with("speed_rpm,brake_torque_Nm,")) << kept.substr(0, 80);
        EXPECT_THAT(kept, ::testing::EndsWith(",\r\n"));
    }
}

} // namespace
} // namespace lobewright::cli
