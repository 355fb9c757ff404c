#include "tests/cli/run_cli.h"
#include "tests/design/sample.h"

#include <gmock/gmock.h>

namespace lobewright::cli {
namespace {

namespace fs = std::filesystem;
using testing::contents;
using ::testing::HasSubstr;
using ::testing::StartsWith;

class CliExport : public testing::CliTest {
  protected:
    std::string exporting(const std::string& kind, const std::string& rest = {}) const {
        return "export " + sample("biogas-pump-set") + " --track inlet --kind " + kind +
               " --out track " + rest;
    }
};

TEST_F(CliExport, EveryKindWritesOneFile) {
    for (const auto& [kind, start] : {std::pair{"step", "ISO-10303-21;"},
                                      {"stl", "Lobewright, mm"},
                                      {"dxf", "999"},
                                      {"csv", "# Design: "},
                                      {"cutter-path", "# Design: "},
                                      {"inspection", "# Design: "}}) {
        const auto outcome = run(exporting(kind));
        ASSERT_EQ(outcome.status, 0) << kind << outcome.err;
        EXPECT_EQ(outcome.out + outcome.err, testing::cautionLine()) << kind;
        std::string text = contents(folder_ / "track");
        text.erase(0, text.find_first_not_of(' '));
        EXPECT_THAT(text.substr(0, 40), StartsWith(start));
        std::erase(text, '\n');           // which STEP puts anywhere
        if (kind != std::string("stl")) { // its header has 80 bytes
            EXPECT_THAT(text, HasSubstr("not a basis for manufacture, release or operation."))
                << kind;
            EXPECT_THAT(text, HasSubstr("independent overspeed trip")) << kind;
        }
        fs::remove(folder_ / "track");
        EXPECT_EQ(filesIn(folder_), 0U);
    }
}

TEST_F(CliExport, OptionsReachTheFile) {
    ASSERT_EQ(run(exporting("inspection", "--radii 96,104 --step 90")).status, 0);
    const std::string table = contents(folder_ / "track");
    EXPECT_THAT(table, HasSubstr("push,90,96.000000,"));
    EXPECT_THAT(table, HasSubstr("push,270,104.000000,"));
    ASSERT_EQ(run(exporting("cutter-path", "--cutter-radius 12 --tolerance 20")).status, 0);
    EXPECT_THAT(contents(folder_ / "track"), HasSubstr("cutter of radius 12 mm"));
    EXPECT_THAT(contents(folder_ / "track"), HasSubstr("within 20 um"));
}

TEST_F(CliExport, WrongOptionsEndInStatus2AndNameTheOption) {
    for (const auto& [kind, rest, said] :
         {std::tuple{"step", "--tolerance 0", "--tolerance: tolerance is 0"},
          {"step", "--radii 100", "--radii: not used"},
          {"stl", "--cutter-radius 5", "--cutter-radius: not used"},
          {"csv", "--step 0", "--step: step is 0"},
          {"dxf", "--radii 500", "--radii: radius is 500"},
          {"cutter-path", "--cutter-radius -1", "--cutter-radius: the cutter radius is -1"},
          {"cube", "", "--kind"}}) {
        const auto outcome = run(exporting(kind, rest));
        EXPECT_EQ(outcome.status, 2) << kind << rest;
        EXPECT_THAT(outcome.err, HasSubstr(said));
        EXPECT_EQ(filesIn(folder_), 0U);
    }
}

TEST_F(CliExport, UndercutEndsInStatus4WithItsPlace) {
    auto tree = design::testing::sampleTree();
    tree["mechanism"]["roller"]["radius_mm"] = 110.0;
    put("thick.json", tree.dump());
    const auto outcome = run("export thick.json --track inlet --kind step --out track");
    EXPECT_EQ(outcome.status, 4) << outcome.err;
    EXPECT_THAT(outcome.err, HasSubstr("thick.json: /mechanism/roller/radius_mm: a roller of 110 "
                                       "mm radius undercuts the push flank of the inlet track"));
    EXPECT_FALSE(fs::exists(folder_ / "track"));
}

TEST_F(CliExport, TableThatCannotBeWrittenSaysWhy) {
    const auto outcome = run("export " + sample("biogas-pump-set") +
                             " --track exhaust --kind csv --out no/such/folder/lift.csv");
    EXPECT_EQ(outcome.status, 5);
    EXPECT_THAT(outcome.err, HasSubstr("--out: "));
}

class CliImportLift : public testing::CliTest {};

// A lift table out of the program and back in: the same motion as knots.
TEST_F(CliImportLift, TableBecomesKnotsWithTheResidualShown) {
    ASSERT_EQ(run("export " + sample("biogas-pump-set") +
                  " --track inlet --kind csv --step 1 --out turn.csv")
                  .status,
              0);
    std::string half; // one of the two lobes
    std::istringstream lines(contents(folder_ / "turn.csv"));
    for (std::string line; std::getline(lines, line) && !line.starts_with("180,");) {
        half += line + "\n";
    }
    put("lobe.csv", half);
    const auto outcome = run("import-lift " + sample("biogas-pump-set") +
                             " lobe.csv --track inlet --tolerance 60 --residuals left.csv --out "
                             "knots.lobewright.json");
    ASSERT_EQ(outcome.status, 0) << outcome.err;
    EXPECT_THAT(outcome.out, HasSubstr("180 rows, 2 lobes a turn, "));
    EXPECT_THAT(outcome.out, HasSubstr("largest residual "));
    EXPECT_THAT(contents(folder_ / "left.csv"), StartsWith("angle_deg,lift_mm,residual_um\r\n0,"));
    const auto made = nlohmann::json::parse(contents(folder_ / "knots.lobewright.json"));
    EXPECT_EQ(made["tracks"]["inlet"]["lobes"], 2);
    EXPECT_GT(made["tracks"]["inlet"]["knots"].size(), 5U);
    EXPECT_FALSE(made["tracks"]["inlet"].contains("segments"));
    EXPECT_EQ(run("export knots.lobewright.json --track exhaust --kind step --out t.step").status,
              0);
}

// The table as it is written, over the whole turn, without a word about its lobes.
TEST_F(CliImportLift, WholeTurnIsTakenAsItIsExported) {
    ASSERT_EQ(
        run("export " + sample("biogas-pump-set") + " --track inlet --kind csv --out turn.csv")
            .status,
        0);
    EXPECT_THAT(contents(folder_ / "turn.csv"),
                HasSubstr("# Source: biogas-pump-set.lobewright.json, 20"));
    const auto outcome = run("import-lift " + sample("biogas-pump-set") +
                             " turn.csv --track inlet --out knots.lobewright.json");
    ASSERT_EQ(outcome.status, 0) << outcome.err;
    EXPECT_THAT(outcome.out, HasSubstr("721 rows, 2 lobes a turn, "));
}

TEST_F(CliImportLift, RefusesWithoutTouchingTheOutput) {
    put("bad.csv", "angle,lift\n0,0\n10,high\n");
    put("few.csv", "0,0\n30,9\n60,25\n90,34\n120,20\n150,3\n");
    put("old.json", "old");
    const auto ask = [&](const std::string& rest) {
        return run("import-lift " + sample("biogas-pump-set") + " " + rest +
                   " --track inlet --out old.json");
    };
    EXPECT_EQ(ask("bad.csv").status, 2);
    EXPECT_THAT(ask("bad.csv").err, HasSubstr("bad.csv: /lines/3: "));
    EXPECT_EQ(ask("missing.csv").status, 5);
    const auto coarse = ask("few.csv --knots 4 --tolerance 0.1");
    EXPECT_EQ(coarse.status, 4);
    EXPECT_THAT(coarse.err, HasSubstr("4 knots do not come within 0.1 µm"));
    EXPECT_THAT(coarse.out, HasSubstr("largest residual "));
    EXPECT_EQ(contents(folder_ / "old.json"), "old");
}

// A measured wheel at two speeds takes the place of the coefficients, and the engine runs on it.
TEST_F(CliImportLift, WheelsPointsBecomeThoseOfTheDesign) {
    const std::string generator = sample("turbocharged-works-generator");
    put("wheel.csv", "speed,flow,ratio,efficiency\n"
                     "60000,0.030,1.25,0.66\n60000,0.050,1.24,0.75\n60000,0.070,1.18,0.70\n"
                     "90000,0.045,1.62,0.67\n90000,0.070,1.60,0.76\n90000,0.105,1.42,0.69\n");
    const auto outcome =
        run("import-wheel " + generator + " wheel.csv --out wheel.lobewright.json");
    ASSERT_EQ(outcome.status, 0) << outcome.err;
    EXPECT_THAT(outcome.out, HasSubstr("6 points at 2 speeds"));
    const auto made = nlohmann::json::parse(contents(folder_ / "wheel.lobewright.json"));
    const auto& wheel = made["gas"]["supply"]["wheel"];
    EXPECT_EQ(wheel["characteristic"], "table");
    EXPECT_EQ(wheel["map"].size(), 6U);
    EXPECT_EQ(wheel["map"][1]["flow_kg_per_s"], 0.05);
    EXPECT_EQ(run("solve wheel.lobewright.json --out solved").status, 0);
}

TEST_F(CliImportLift, WheelsPointsNeedACompressorAndFourNumbers) {
    put("wheel.csv", "60000,0.030,1.25,0.66\n60000,0.050,1.24\n");
    put("good.csv", "60000,0.03,1.25,0.66\n60000,0.05,1.24,0.75\n60000,0.07,1.18,0.7\n");
    const std::string end = " --out out.lobewright.json";
    const auto torn =
        run("import-wheel " + sample("turbocharged-works-generator") + " wheel.csv" + end);
    EXPECT_EQ(torn.status, 2);
    EXPECT_THAT(torn.err, HasSubstr("/lines/2"));
    const auto none = run("import-wheel " + sample("biogas-pump-set") + " good.csv" + end);
    EXPECT_EQ(none.status, 3);
    EXPECT_THAT(none.err, HasSubstr("no compressor"));
}

} // namespace
} // namespace lobewright::cli
