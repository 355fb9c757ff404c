// Holds the layout rules of DEVELOPERS.md: which folder may include which, and no Qt in the core.

#include "tests/places.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <regex>
#include <set>
#include <string>
#include <vector>

namespace {

namespace fs = std::filesystem;

const fs::path root = lobewright::test::sourceFolder();

/// Order of the data flow; a folder may include itself and those before it.
const std::vector<std::string> coreOrder = {
    "units",     "text",    "files",   "motion",   "track",    "mechanism", "ports",   "gas",
    "loads",     "contact", "balance", "design",   "editing",  "solution",  "lessons", "study",
    "reference", "claims",  "draft",   "unknowns", "exchange", "picture"};
const std::vector<std::string> uiOrder = {"base",    "editing", "handles", "document", "plots",
                                          "scene",   "picture", "panels",  "help",     "claims",
                                          "dialogs", "report",  "window"};

struct Include {
    fs::path file; ///< relative to the project
    int line = 0;
    std::string target;
};

std::vector<Include> includesBelow(const std::string& folder) {
    std::vector<Include> found;
    const std::regex pattern(R"(^\s*#\s*include\s*["<]([^">]+)[">])");
    for (const auto& entry : fs::recursive_directory_iterator(root / folder)) {
        const auto extension = entry.path().extension();
        if (extension != ".h" && extension != ".cpp") {
            continue;
        }
        std::ifstream in(entry.path());
        std::string line;
        for (int number = 1; std::getline(in, line); ++number) {
            std::smatch match;
            if (std::regex_search(line, match, pattern)) {
                found.push_back({fs::relative(entry.path(), root), number, match[1]});
            }
        }
    }
    return found;
}

std::string where(const Include& include) {
    return include.file.string() + ":" + std::to_string(include.line) + " includes " +
           include.target;
}

/// Second part of "core/<folder>/file.h"; empty for files directly in core.
std::string coreFolder(const fs::path& path) {
    auto part = path.begin();
    if (part == path.end() || *part != "core" || std::distance(path.begin(), path.end()) < 3) {
        return {};
    }
    return (++part)->string();
}

long rank(const std::string& folder) {
    const auto place = std::find(coreOrder.begin(), coreOrder.end(), folder);
    return place == coreOrder.end() ? -1 : place - coreOrder.begin();
}

TEST(Layout, CoreHasNoQt) {
    const std::regex qt(R"(^(Q[A-Z][A-Za-z]*|Qt[A-Z].*|qcustomplot\.h)(/|$))");
    for (const auto& include : includesBelow("core")) {
        EXPECT_FALSE(std::regex_search(include.target, qt)) << where(include);
    }
}

TEST(Layout, CoreFoldersIncludeOnlyFoldersAboveThem) {
    for (const auto& include : includesBelow("core")) {
        EXPECT_NE(include.target.rfind("ui/", 0), 0u) << where(include);
        EXPECT_NE(include.target.rfind("app/", 0), 0u) << where(include);
        const auto from = coreFolder(include.file);
        const auto to = coreFolder(include.target);
        if (to.empty()) {
            continue;
        }
        ASSERT_GE(rank(to), 0) << where(include) << ": unknown folder";
        if (from.empty()) { // result.h, monitor.h: every stage speaks through them
            EXPECT_LE(rank(to), rank("text")) << where(include) << ": only units and text";
            continue;
        }
        EXPECT_LE(rank(to), rank(from)) << where(include);
    }
}

TEST(Layout, EveryCoreFolderIsKnown) {
    for (const auto& entry : fs::directory_iterator(root / "core")) {
        if (entry.is_directory()) {
            EXPECT_GE(rank(entry.path().filename().string()), 0) << entry.path();
        }
    }
}

TEST(Layout, TestsOfACoreFolderStandUnderItsName) {
    for (const std::string& folder : coreOrder) {
        EXPECT_TRUE(fs::exists(root / "tests" / folder / "CMakeLists.txt")) << folder;
    }
}

TEST(Layout, DesktopNeverIncludesThePrograms) {
    for (const auto& include : includesBelow("ui")) {
        EXPECT_NE(include.target.rfind("app/", 0), 0u) << where(include);
    }
}

/// Second part of "ui/<folder>/file.h".
long uiRank(const fs::path& path) {
    const auto folder = std::distance(path.begin(), path.end()) < 3
                            ? uiOrder.end()
                            : std::find(uiOrder.begin(), uiOrder.end(), *std::next(path.begin()));
    return folder == uiOrder.end() ? -1 : folder - uiOrder.begin();
}

TEST(Layout, DesktopFoldersIncludeOnlyFoldersAboveThem) {
    std::size_t looked = 0;
    for (const auto& include : includesBelow("ui")) {
        if (!include.target.starts_with("ui/")) {
            continue;
        }
        ++looked;
        ASSERT_GE(uiRank(include.file), 0) << where(include) << ": unknown folder";
        ASSERT_GE(uiRank(include.target), 0) << where(include) << ": unknown folder";
        EXPECT_LE(uiRank(include.target), uiRank(include.file)) << where(include);
    }
    EXPECT_GT(looked, 100u);
}

/// Open CASCADE takes longer to read than all other headers: only what makes STEP solids pays.
TEST(Layout, OnlyTheStepFilesReadOpenCascade) {
    for (const auto& include : includesBelow("core")) {
        // The number of its version is a header of one page.
        const bool isOther =
            include.target == "Standard_Version.hxx" || include.target.starts_with("openturns/");
        if (include.target.ends_with(".hxx") && !isOther) {
            EXPECT_EQ(include.file.filename().string().rfind("step_", 0), 0u) << where(include);
        }
    }
}

/// Its headers take four seconds to read and its libraries load as long as the rest of the program.
TEST(Layout, OnlyTheLoadedLibraryReadsOpenTurns) {
    for (const auto& include : includesBelow("core")) {
        if (include.target.starts_with("openturns/")) {
            EXPECT_EQ(include.file.parent_path(), "core/unknowns/module") << where(include);
        }
    }
}

TEST(Layout, TopLevelHasOnlyTheAgreedEntries) {
    const std::set<std::string> agreed = {"CMakeLists.txt", "CMakePresets.json",
                                          "README.md",      "DEVELOPERS.md",
                                          "LICENSE",        "app",
                                          "core",           "ui",
                                          "resources",      "tests",
                                          "samples",        "build"};
    for (const auto& entry : fs::directory_iterator(root)) {
        const auto name = entry.path().filename().string();
        EXPECT_TRUE(name.front() == '.' || agreed.contains(name)) << name;
    }
}

/// Lines of our own code that match, as file:line: text; comments left out.
std::vector<std::string> linesWith(const std::regex& pattern,
                                   const std::vector<std::string>& folders) {
    std::vector<std::string> found;
    for (const std::string& folder : folders) {
        for (const auto& entry : fs::recursive_directory_iterator(root / folder)) {
            const auto extension = entry.path().extension();
            if (extension != ".h" && extension != ".cpp") {
                continue;
            }
            std::ifstream in(entry.path());
            std::string line;
            for (int number = 1; std::getline(in, line); ++number) {
                if (std::regex_search(line.substr(0, line.find("//")), pattern)) {
                    found.push_back(fs::relative(entry.path(), root).string() + ":" +
                                    std::to_string(number) + ": " + line);
                }
            }
        }
    }
    return found;
}

/// Letters have four sizes, distances are steps of four pixels: ui/base/type_scale.h.
TEST(Layout, LettersAndDistancesAreThoseOfTheOneTable) {
    // The table itself, the person's own size, and paper, which has its own.
    const std::regex exempt("^ui/(base/type_scale|window/preferences|report/report_sheet)[.]cpp.*");
    for (const std::string& line : linesWith(std::regex(R"(set(Pixel|Point)SizeF?\()"), {"ui"})) {
        EXPECT_TRUE(std::regex_match(line, exempt)) << line;
    }
    const std::regex distance(
        R"(set(?:ContentsMargins|(?:Horizontal|Vertical)?Spacing)\(([0-9, ]+)\))");
    const std::regex number("[0-9]+");
    for (const std::string& line : linesWith(distance, {"ui"})) {
        std::smatch match;
        std::regex_search(line, match, distance);
        const std::string numbers = match[1];
        for (std::sregex_iterator each(numbers.begin(), numbers.end(), number), end; each != end;
             ++each) {
            EXPECT_EQ(std::stoi(each->str()) % 4, 0) << line;
        }
    }
}

// The C library reads and writes numbers as the user's language does: "7.6667" is 7 in German. Only
// std::from_chars, std::to_chars and fmt do not care.
TEST(Layout, NumbersOfFilesNeverKnowTheLanguageOfTheMachine) {
    const std::regex functions(
        R"(\b(strto(d|f|ld|l|ul|ll|ull|imax|umax)|sto(d|f|ld|i|l|ul|ll|ull)|ato(f|i|l|ll)|(v|f|s|vs|vf)?scanf|(v|f|s|sn|vs|vsn|vf|d|as|vas)?printf|lexical_cast|setlocale|to_string_with_locale)\s*(<[^>]*>)?\s*\()");
    const std::regex classes(
        R"(std::locale(?!::classic)|std::(num_get|num_put|put_time|get_time)|setlocale|\{[^{}]*:[^{}]*L\})");
    for (const std::string& line : linesWith(functions, {"core", "app", "ui"})) {
        ADD_FAILURE() << line;
    }
    for (const std::string& line : linesWith(classes, {"core", "app", "ui"})) {
        ADD_FAILURE() << line;
    }
    for (const std::string& line :
         linesWith(std::regex("stringstream\\s"), {"core", "app", "ui"})) {
        std::ifstream in(root / line.substr(0, line.find(':')));
        const std::string text{std::istreambuf_iterator<char>(in), {}};
        EXPECT_NE(text.find("imbue(std::locale::classic())"), std::string::npos) << line;
    }
    // What people read on screen may be in their language, what the batch program writes never.
    for (const std::string& line : linesWith(std::regex(R"(\bQLocale\b)"), {"core", "app"})) {
        ADD_FAILURE() << line;
    }
}

// fmt::print throws where the stream cannot be written, in the middle of the work or of another
// mistake's message; app/cli/say.h does not.
TEST(Layout, WhatIsPrintedNeverEndsTheProgram) {
    for (const std::string& line :
         linesWith(std::regex(R"(fmt::print\()"), {"core", "app", "ui"})) {
        ADD_FAILURE() << line;
    }
}

} // namespace
