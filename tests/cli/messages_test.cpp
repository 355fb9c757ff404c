// What the batch program says to whom, whatever a file is called or has in it, and wherever it says
// it.

#include "core/printable.h"
#include "tests/cli/run_cli.h"
#include "tests/design/sample.h"

#include <gmock/gmock.h>

namespace lobewright::cli {
namespace {

namespace fs = std::filesystem;
using testing::contents;
using ::testing::HasSubstr;
using ::testing::Not;

class CliMessages : public testing::CliTest {
  protected:
    /// In a shell, with redirections of its own; what it prints goes nowhere else.
    int statusOf(const std::string& arguments) const { return run(arguments + " #").status; }
};

/// A title that would end the line and colour the next one red.
const std::string forged = "Calm\n\x1b[31merror: forged\r\x07";

void expectNoForgery(const std::string& text) {
    EXPECT_THAT(text, Not(HasSubstr("\x1b")));
    EXPECT_THAT(text, Not(HasSubstr("\x07")));
    EXPECT_THAT(text, Not(HasSubstr("\nerror: forged")));
}

TEST_F(CliMessages, TitlesCannotForgeThem) {
    auto tree = design::testing::sampleTree();
    tree["title"] = forged;
    put("design.json", tree.dump());
    const auto solved = run("solve design.json --out result");
    EXPECT_EQ(solved.status, 0) << solved.err;
    EXPECT_THAT(solved.out, HasSubstr("Calm  [31merror: forged"));
    expectNoForgery(solved.out);
    for (const char* kind : {"csv", "cutter-path", "inspection", "dxf", "step"}) {
        const std::string arguments =
            fmt::format("export design.json --track inlet --kind {}", kind);
        ASSERT_EQ(run(arguments + " --out track").status, 0) << kind;
        expectNoForgery(contents(folder_ / "track"));
    }
}

TEST_F(CliMessages, KeysAndValuesOfFilesCannotForgeThem) {
    auto tree = design::testing::sampleTree();
    tree[forged] = 1;
    tree["gas"]["fuel"] = forged;
    tree["format"] = forged;
    put("bad.json", tree.dump());
    const auto checked = run("check bad.json");
    EXPECT_EQ(checked.status, 3);
    expectNoForgery(checked.err);
    const nlohmann::json statement = {{"claim", forged}, {"source", forged}};
    const nlohmann::json claims = {{"format", "lobewright-claims"},
                                   {"format_version", 1},
                                   {"title", forged},
                                   {"source", forged},
                                   {"statements", nlohmann::json::array({statement})}};
    put("claims.json", claims.dump());
    const auto said = run("claims claims.json");
    EXPECT_EQ(said.status, 0) << said.err;
    expectNoForgery(said.out);
}

TEST_F(CliMessages, NamesOfFilesCannotForgeThem) {
    const std::string name = "\x1b[31m\xFF.json"; // not even UTF-8
    put(name, design::testing::sampleText());
    put("bad" + name, "{}");
    EXPECT_EQ(run("check '" + name + "'").status, 0);
    for (const char* arguments : {"check 'bad{}'", "check 'missing{}'", "'{}'", "check a '{}'"}) {
        const auto outcome = run(fmt::format(fmt::runtime(arguments), name));
        EXPECT_NE(outcome.status, 0) << arguments;
        expectNoForgery(outcome.err);
        EXPECT_THAT(outcome.err, Not(HasSubstr("\xFF"))) << arguments;
    }
    ASSERT_EQ(run("export '" + name + "' --track inlet --kind csv --out track.csv").status, 0);
    EXPECT_THAT(contents(folder_ / "track.csv"), HasSubstr("# Source:  [31m?.json, "));
}

TEST_F(CliMessages, AnUnwritableErrorStreamDoesNotEndTheProgram) {
    EXPECT_EQ(statusOf("check missing.json 2>/dev/full"), 5);
    EXPECT_EQ(statusOf("check missing.json 2>&-"), 5);
    EXPECT_EQ(statusOf("nonsense 2>/dev/full"), 2);
}

TEST_F(CliMessages, AnUnwritableOutputEndsInStatus5) {
    put("design.json", design::testing::sampleText());
    EXPECT_EQ(statusOf("check design.json >/dev/full 2>&1"), 5);
    EXPECT_EQ(statusOf("check design.json >&- 2>/dev/null"), 5);
    EXPECT_EQ(statusOf("schema >/dev/full 2>&1"), 5);
}

// The first file opened takes the number of a closed stream, and with it all that is said.
TEST_F(CliMessages, DoNotGoIntoTheFileWhereTheStreamsAreClosed) {
    put("design.json", design::testing::sampleText());
    ASSERT_EQ(statusOf("solve design.json --out open >/dev/null"), 0);
    statusOf("solve design.json --out closed <&- >&- 2>&-");
    for (const char* name : {"summary.json", "channels.csv"}) {
        EXPECT_EQ(contents(folder_ / "closed" / name), contents(folder_ / "open" / name)) << name;
    }
}

TEST_F(CliMessages, ASlipInACommandIsToldTheNearest) {
    const auto outcome = run("sovle design.json");
    EXPECT_EQ(outcome.status, 2);
    EXPECT_THAT(outcome.err, HasSubstr("\"sovle\" is no command; the nearest is \"solve\""));
}

TEST_F(CliMessages, NumbersAreReadAsFilesHaveThem) {
    put("design.json", design::testing::sampleText());
    for (const char* number : {"inf", "nan", "0x10", "1,650", "1e999", "12rpm", "''", "1_0"}) {
        const auto outcome = run(fmt::format("check design.json --speed {}", number));
        EXPECT_EQ(outcome.status, 2) << number;
        EXPECT_THAT(outcome.err, HasSubstr("--speed")) << number;
    }
    for (const char* points : {"0x10", "1e1", "2.5", "1", "100001", "inf"}) {
        const auto outcome = run(fmt::format(
            "sweep design.json --from 900 --to 1000 --points {} --out sweep.csv", points));
        EXPECT_EQ(outcome.status, 2) << points;
        EXPECT_THAT(outcome.err, HasSubstr("--points")) << points;
    }
    EXPECT_EQ(run("sweep design.json --from inf --to 1000 --points 2 --out x.csv").status, 2);
    EXPECT_EQ(run("check design.json --speed 1.65e3").status, 0);
    EXPECT_EQ(run("export design.json --track inlet --kind dxf --radii 95,100.5 --out x").status,
              0);
}

TEST_F(CliMessages, ASecondFileIsNotIgnored) {
    put("design.json", design::testing::sampleText());
    const auto outcome = run("check design.json design.json");
    EXPECT_EQ(outcome.status, 2);
    EXPECT_THAT(outcome.err, HasSubstr("design.json"));
}

TEST_F(CliMessages, TheVersionNamesEveryLibrary) {
    const auto version = run("--version");
    EXPECT_EQ(version.status, 0);
    for (const char* library :
         {"lobewright-cli 0.", "Eigen 3.", "Boost 1.", "fmt ", "JSON for", "oneTBB 2",
          "Open CASCADE 7.", "dxflib 3.", "CLI11 2.", "compiler "}) {
        EXPECT_THAT(version.out, HasSubstr(library));
    }
#ifdef LOBEWRIGHT_HAS_REPORT
    const auto report = fs::path(test::batchProgram()).parent_path() / "lobewright-report";
    const auto drawn = run("--version >/dev/null; '" + report.string() + "' --version");
    EXPECT_THAT(drawn.out, HasSubstr("Qt 6."));
    EXPECT_THAT(drawn.out, HasSubstr("QCustomPlot 2."));
#endif
}

TEST_F(CliMessages, TheSameDesignGivesTheSameBytesWhereTheDateIsFixed) {
    put("design.json", design::testing::sampleText());
    const auto twice = [&](const std::string& arguments, const std::string& file) {
        std::string bytes[2];
        for (std::string& made : bytes) {
            const std::string command = fmt::format(
                "--version >/dev/null; TZ=Asia/Kolkata SOURCE_DATE_EPOCH=86399 '{}' {} --out {} #",
                test::batchProgram(), arguments, file);
            EXPECT_EQ(run(command).status, 0) << arguments;
            made = contents(folder_ / file);
        }
        EXPECT_TRUE(bytes[0] == bytes[1]) << arguments;
        return bytes[0];
    };
    EXPECT_THAT(twice("export design.json --track inlet --kind step --tolerance 20", "a.step"),
                HasSubstr("1970-01-01T23:59:59"));
    EXPECT_THAT(twice("export design.json --track inlet --kind dxf", "a.dxf"),
                HasSubstr("1970-01-01"));
#ifdef LOBEWRIGHT_HAS_REPORT
    EXPECT_THAT(twice("report design.json", "a.pdf"), HasSubstr("(D:19700101235959Z)"));
#endif
}

} // namespace
} // namespace lobewright::cli
