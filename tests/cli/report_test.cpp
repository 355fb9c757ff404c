#include "tests/cli/run_cli.h"
#include "tests/design/sample.h"
#include "tests/places.h"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

namespace lobewright::cli {
namespace {

namespace fs = std::filesystem;
using testing::contents;
using ::testing::HasSubstr;

class CliReport : public testing::CliTest {
  protected:
    /// What a tool of the system says about the report.
    std::string ask(const std::string& command) const {
        const auto answer = folder_ / "answer";
        const std::string line =
            fmt::format("cd '{}' && {} >'{}' 2>&1", folder_.string(), command, answer.string());
        EXPECT_EQ(std::system(line.c_str()), 0) << line << "\n" << testing::contents(answer);
        std::string text = testing::contents(answer);
        fs::remove(answer);
        return text;
    }
};

#ifdef LOBEWRIGHT_HAS_REPORT

// Poppler reads the file back: an independent reader of PDF.
TEST_F(CliReport, HasItsPagesTextAndFontsWithoutADisplay) {
    const auto outcome = run("report " + sample("biogas-pump-set") + " --out r.pdf");
    ASSERT_EQ(outcome.status, 0) << outcome.err;
    EXPECT_EQ(outcome.err, testing::cautionLine());
    const std::string info = ask("pdfinfo r.pdf");
    EXPECT_THAT(info, HasSubstr("Biogas pump set"));
    EXPECT_THAT(info, HasSubstr("Pages:           6"));
    EXPECT_THAT(info, HasSubstr("(A4)"));

    const std::string text = ask("pdftotext -layout r.pdf -");
    for (const char* wanted : {"Biogas pump set",
                               "Section through cylinder 1",
                               "Main results",
                               "Brake torque",
                               "Piston position",
                               "Port timing",
                               "Torque over one revolution",
                               "Contact stress",
                               "EO 102.6°",
                               "Torque and power against speed",
                               "Limits",
                               "Assumptions and sources",
                               "Woschni",
                               "Cautions",
                               "qualified engineer",
                               "independent overspeed trip",
                               "Inputs of the design",
                               "Pitch radius",
                               "Tracks",
                               "Page 1 of 6",
                               "Page 6 of 6",
                               "Lobewright "}) {
        EXPECT_THAT(text, HasSubstr(wanted));
    }
    std::istringstream fonts(ask("pdffonts r.pdf"));
    int count = 0;
    for (std::string line; std::getline(fonts, line);) {
        if (line.find("CID") != std::string::npos) {
            EXPECT_THAT(line, HasSubstr("yes")) << "not embedded";
            ++count;
        }
    }
    EXPECT_GE(count, 1);
    // Vector drawings: nothing of it is a picture of dots.
    std::istringstream images(ask("pdfimages -list r.pdf"));
    int lines = 0;
    for (std::string line; std::getline(images, line);) {
        ++lines;
    }
    EXPECT_EQ(lines, 2); // the heading of the list alone
}

// The figures printed are those of the summary.
TEST_F(CliReport, SaysTheFiguresOfTheSummary) {
    ASSERT_EQ(run("report " + sample("classroom-model") + " --out r.pdf").status, 0);
    ASSERT_EQ(run("solve " + sample("classroom-model") + " --out s").status, 0);
    const auto summary = nlohmann::json::parse(contents(folder_ / "s" / "summary.json"));
    const std::string text = ask("pdftotext -layout r.pdf -");
    const double power = summary["performance"]["brake_power_kW"];
    const double ratio = summary["geometry"]["compression_ratio"];
    EXPECT_THAT(text, HasSubstr(fmt::format("{:.3g}", power).substr(0, 4)));
    EXPECT_THAT(text, HasSubstr(fmt::format("{:.4g}", ratio)));
}

TEST_F(CliReport, CtrlCLeavesNoFile) {
    const auto outcome = run("--version"); // the program is there
    ASSERT_EQ(outcome.status, 0);
    // The whole report takes a third of a second.
    const std::string line =
        fmt::format("cd '{}' && timeout -s INT 0.1 '{}' report {} --out r.pdf 2>/dev/null",
                    folder_.string(), test::batchProgram(), sample("sketched-lobes-blown"));
    const int status = std::system(line.c_str());
    EXPECT_NE(WEXITSTATUS(status), 0);
    EXPECT_EQ(filesIn(folder_), 0U);
}

TEST_F(CliReport, InvalidDesignEndsInStatus3AndDeadEngineInStatus4) {
    auto tree = design::testing::sampleTree();
    tree["mechanism"]["bore_mm"] = -1;
    put("bad.json", tree.dump());
    const auto bad = run("report bad.json --out r.pdf");
    EXPECT_EQ(bad.status, 3);
    EXPECT_THAT(bad.err, HasSubstr("/mechanism/bore_mm"));

    tree =
        design::testing::sampleTree(); // the exhaust presses harder than the supply: no fresh air
    tree["gas"]["supply"]["pressure_bar"] = 0.5;
    tree["gas"]["exhaust_pressure_bar"] = 3.0;
    put("dead.json", tree.dump());
    const auto dead = run("report dead.json --out r.pdf");
    EXPECT_EQ(dead.status, 4) << dead.err;
    EXPECT_FALSE(dead.err.empty());
    EXPECT_FALSE(fs::exists(folder_ / "r.pdf"));
}

TEST_F(CliReport, FolderThatIsNotThereSaysSo) {
    const auto outcome = run("report " + sample("classroom-model") + " --out no/such/r.pdf");
    EXPECT_EQ(outcome.status, 5);
    EXPECT_THAT(outcome.err, HasSubstr("--out: "));
}

// The batch program alone, as it stands where it was built without the desktop.
TEST_F(CliReport, WithoutTheReportProgramBesideItSaysWhatIsMissing) {
    fs::copy_file(test::batchProgram(), folder_ / "lobewright-cli");
    const std::string line = fmt::format("cd '{}' && ./lobewright-cli report {} --out r.pdf 2>err",
                                         folder_.string(), sample("classroom-model"));
    EXPECT_EQ(WEXITSTATUS(std::system(line.c_str())), 2);
    EXPECT_THAT(contents(folder_ / "err"),
                HasSubstr((folder_ / "lobewright-report").string() + " cannot be started"));
    EXPECT_FALSE(fs::exists(folder_ / "r.pdf"));
}

TEST_F(CliReport, ArgumentsReachTheReportProgram) {
    auto tree = design::testing::sampleTree();
    put("-odd name.json", tree.dump());
    const auto outcome = run("report --speed 777 --motored --out r.pdf -- '-odd name.json'");
    ASSERT_EQ(outcome.status, 0) << outcome.err;
    EXPECT_THAT(ask("pdftotext -layout r.pdf -"), HasSubstr("777"));
}

#else

TEST_F(CliReport, BuildWithoutThePlotsSaysThatItHasNone) {
    const auto outcome = run("report " + sample("classroom-model") + " --out r.pdf");
    EXPECT_EQ(outcome.status, 2);
    EXPECT_THAT(outcome.err, HasSubstr("This build has no report"));
    EXPECT_FALSE(fs::exists(folder_ / "r.pdf"));
}

#endif

} // namespace
} // namespace lobewright::cli
