// What an output may replace, and what not.

#include "tests/cli/run_cli.h"
#include "tests/design/sample.h"
#include "tests/files/device.h"

#include <gmock/gmock.h>

namespace lobewright::cli {
namespace {

namespace fs = std::filesystem;
using testing::contents;
using ::testing::HasSubstr;

class CliOutput : public testing::CliTest {
  protected:
    void SetUp() override {
        CliTest::SetUp();
        put("design.json", design::testing::sampleText());
    }
    /// A command that writes quickly.
    testing::Outcome exportTo(const std::string& file) const {
        return run("export design.json --track inlet --kind csv --out " + file);
    }
};

TEST_F(CliOutput, IsNeverTheDesignThatIsRead) {
    fs::create_symlink("design.json", folder_ / "link.json");
    for (const char* name : {"design.json", "./design.json", "link.json"}) {
        const auto outcome = exportTo(name);
        EXPECT_EQ(outcome.status, 5) << name;
        EXPECT_THAT(outcome.err, HasSubstr("reads")) << name;
        EXPECT_EQ(contents(folder_ / "design.json"), design::testing::sampleText()) << name;
    }
    put("table.csv", "0,0\n");
    EXPECT_EQ(run("import-lift design.json table.csv --track inlet --out table.csv").status, 5);
    EXPECT_EQ(run("import-lift design.json table.csv --track inlet --out design.json").status, 5);
    EXPECT_EQ(contents(folder_ / "table.csv"), "0,0\n");
    fs::create_symlink("design.json", folder_ / "summary.json");
    EXPECT_EQ(run("solve design.json --out .").status, 5);
    EXPECT_EQ(contents(folder_ / "design.json"), design::testing::sampleText());
}

TEST_F(CliOutput, GoesIntoADevice) {
    const fs::path null = test::device(folder_, "null");
    ASSERT_EQ(exportTo(null.string()).status, 0);
    EXPECT_TRUE(fs::is_character_file(null));
    const auto full = exportTo(test::device(folder_, "full").string());
    EXPECT_EQ(full.status, 5);
    EXPECT_THAT(full.err, HasSubstr("No space left"));
    EXPECT_THAT(exportTo("/dev/stdout").out, HasSubstr("# Part: "));
}

TEST_F(CliOutput, GoesThroughAPipe) {
    const auto outcome = run("--version; mkfifo pipe; cat pipe >got & '" + test::batchProgram() +
                             "' export design.json --track inlet --kind csv --out pipe; wait");
    EXPECT_EQ(outcome.status, 0) << outcome.err;
    EXPECT_TRUE(fs::is_fifo(folder_ / "pipe"));
    EXPECT_THAT(contents(folder_ / "got"), HasSubstr("# Part: "));
}

TEST_F(CliOutput, FollowsALinkToNothing) {
    fs::create_symlink("target.csv", folder_ / "link.csv");
    EXPECT_EQ(exportTo("link.csv").status, 0);
    EXPECT_TRUE(fs::is_symlink(folder_ / "link.csv"));
    EXPECT_THAT(contents(folder_ / "target.csv"), HasSubstr("# Part: "));
}

TEST_F(CliOutput, RespectsWriteProtection) {
    put("kept.csv", "kept");
    fs::permissions(folder_ / "kept.csv", fs::perms::owner_read);
    const auto outcome = exportTo("kept.csv");
    EXPECT_EQ(outcome.status, 5);
    EXPECT_THAT(outcome.err, HasSubstr("write-protected"));
    EXPECT_EQ(contents(folder_ / "kept.csv"), "kept");
}

// Were the design looked at first, the status would be 4: nothing can burn while the ports are
// open.
TEST_F(CliOutput, IsCheckedBeforeTheWork) {
    auto tree = design::testing::sampleTree();
    tree["gas"]["burn"]["start_deg"] = 150.0;
    put("late.json", tree.dump());
    put("file", "");
    for (const char* command : {"solve late.json --out file", "solve late.json --out file/below",
                                "sweep late.json --from 900 --to 1000 --points 2 --out none/x.csv",
                                "phase-map late.json --from 1 --to 2 --points 2 --out none/x.csv",
                                "compare late.json --out none/x.csv"}) {
        EXPECT_EQ(run(command).status, 5) << command;
    }
#ifdef LOBEWRIGHT_HAS_REPORT
    EXPECT_EQ(run("report late.json --out none/x.pdf").status, 5);
#endif
    fs::create_directories(folder_ / "result" / "channels.csv");
    EXPECT_EQ(run("solve late.json --out result").status, 5);
    EXPECT_EQ(filesIn(folder_ / "result"), 1U);
}

TEST_F(CliOutput, ThatIsTheScreenAndFullEndsInStatus5) {
    EXPECT_EQ(run("check design.json >/dev/full 2>/dev/null #").status, 5);
}

} // namespace
} // namespace lobewright::cli
