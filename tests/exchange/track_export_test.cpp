#include "core/exchange/track_export.h"
#include "core/units.h"
#include "tests/exchange/parts.h"

#include <filesystem>
#include <fstream>
#include <sstream>
#include <unistd.h>

namespace lobewright::exchange {
namespace {

using namespace testing;
namespace fs = std::filesystem;

class Folder {
  public:
    Folder()
        : path_(fs::temp_directory_path() / ("lobewright_export_" + std::to_string(::getpid()))) {
        fs::create_directories(path_);
    }
    ~Folder() { fs::remove_all(path_); }
    fs::path operator/(const char* name) const { return path_ / name; }
    std::size_t entries() const {
        return static_cast<std::size_t>(
            std::distance(fs::directory_iterator(path_), fs::directory_iterator()));
    }

  private:
    fs::path path_;
};

std::string contents(const fs::path& file) {
    std::ifstream stream(file, std::ios::binary);
    std::ostringstream text;
    text << stream.rdbuf();
    return text.str();
}

TEST(TrackExport, SaysWhereItComesFromWhereTheFormatAllows) {
    SilentMonitor monitor;
    const std::string origin = originOf("/somewhere/mine.lobewright.json");
    EXPECT_TRUE(origin.starts_with("mine.lobewright.json, 20")) << origin;
    for (const ExportWords& words : exportWords) {
        ExportOptions options;
        options.kind = words.kind;
        options.tolerance = 20.0 * units::micrometre;
        options.origin = origin;
        const auto bytes = exportTrack(design::testing::sample(), options, monitor);
        ASSERT_TRUE(bytes) << words.key;
        std::string text = *bytes; // STEP breaks its lines anywhere
        std::erase_if(text, [](char letter) { return letter == '\n' || letter == '\r'; });
        const bool isSaid = text.find("Source: mine.lobewright.json, 20") != std::string::npos;
        EXPECT_EQ(isSaid, words.kind != ExportKind::stl) << words.key; // 80 bytes have no room
    }
}

/// Stops at the n-th step.
struct Stopper final : Monitor {
    explicit Stopper(int allowed) : left(allowed) {}
    bool step(double fraction, const Message& what) override {
        EXPECT_GE(fraction, last);
        EXPECT_LE(fraction, 1.0);
        EXPECT_FALSE(what.empty());
        last = fraction;
        return left-- > 0;
    }
    int left;
    double last = 0.0;
};

TEST(TrackExport, EveryKindIsWrittenAndNamesTheDesign) {
    const Folder folder;
    SilentMonitor monitor;
    for (const ExportWords& kind : exportWords) {
        ExportOptions options{End::exhaust, kind.kind, 2e-5, {}, {}, {}};
        const fs::path file = folder / "track.part";
        const Problems problems = writeTrack(design::testing::sample(), options, file, monitor);
        ASSERT_TRUE(problems.empty()) << listed(problems);
        const std::string text = contents(file);
        EXPECT_GT(text.size(), 500U) << kind.key;
        EXPECT_NE(text.find("Biogas pump set"), std::string::npos) << kind.key;
        EXPECT_NE(text.find("exhaust track"), std::string::npos) << kind.key;
        EXPECT_EQ(text.find("20 um") != std::string::npos, kind.takesTolerance) << kind.key;
        EXPECT_EQ(words(kind.kind).key, kind.key);
    }
    EXPECT_EQ(folder.entries(), 1U) << "temporary files are gone";
}

// The file of an earlier export stays as it was wherever the work is stopped.
TEST(TrackExport, StoppedWorkLeavesTheOldFile) {
    const Folder folder;
    const fs::path file = folder / "track.step";
    std::ofstream(file) << "old";
    for (const ExportWords& kind : exportWords) {
        const ExportOptions options{End::inlet, kind.kind, 1e-4, {}, {}, {}};
        int allowed = 0;
        for (;; ++allowed) {
            Stopper stopper(allowed);
            const Problems problems =
                writeTrack(designWith(skewTrack(), true), options, file, stopper);
            if (problems.empty()) {
                break;
            }
            EXPECT_EQ(problems.front().message.english(), "cancelled") << kind.key;
            EXPECT_EQ(contents(file), "old") << kind.key;
        }
        EXPECT_GE(allowed, 2) << kind.key << " shows progress";
        std::ofstream(file) << "old";
    }
}

TEST(TrackExport, RefusesTolerancesThatNoFileCanKeep) {
    SilentMonitor monitor;
    for (double tolerance : {0.0, -1.0, 1e-9, 1e-2, std::nan("")}) {
        ExportOptions options;
        options.tolerance = tolerance;
        const auto text = exportTrack(design::testing::sample(), options, monitor);
        ASSERT_FALSE(text) << tolerance;
        EXPECT_EQ(text.problems().front().path, "/tolerance_um");
    }
}

TEST(TrackExport, SaysWhyAFileCannotBeWritten) {
    SilentMonitor monitor;
    ExportOptions options;
    options.kind = ExportKind::liftTable;
    const Problems problems =
        writeTrack(design::testing::sample(), options, "/no/such/folder/lift.csv", monitor);
    ASSERT_EQ(problems.size(), 1U);
    EXPECT_NE(problems.front().message.english().find("/no/such/folder/lift.csv"),
              std::string::npos);
}

} // namespace
} // namespace lobewright::exchange
