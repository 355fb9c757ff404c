#include "core/files/write_file.h"
#include "tests/files/device.h"
#include "tests/files/folder.h"

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <thread>
#include <unistd.h>

namespace lobewright {
namespace {

namespace fs = std::filesystem;
using files::checkOutput;
using files::writeFile;
using files::writeFiles;
using test::bytesOf;
using test::Folder;
using test::put;

std::string said(const std::optional<Problem>& problem) {
    return problem ? problem->message.english() : std::string();
}

TEST(WriteFile, MakesAndReplaces) {
    const Folder folder;
    EXPECT_EQ(said(writeFile(folder / "file", "old")), "");
    EXPECT_EQ(bytesOf(folder / "file"), "old");
    EXPECT_EQ(said(writeFile(folder / "file", "new")), "");
    EXPECT_EQ(bytesOf(folder / "file"), "new");
    EXPECT_EQ(folder.names(), std::vector<std::string>{"file"});
}

TEST(WriteFile, KeepsTheMode) {
    const Folder folder;
    put(folder / "file", "old");
    ASSERT_EQ(::chmod((folder / "file").c_str(), 0640), 0);
    EXPECT_EQ(said(writeFile(folder / "file", "new")), "");
    struct stat status {};
    ASSERT_EQ(::stat((folder / "file").c_str(), &status), 0);
    EXPECT_EQ(status.st_mode & 07777U, 0640U);
}

TEST(WriteFile, NeverGoesAgainstWriteProtection) {
    const Folder folder;
    put(folder / "file", "old");
    ASSERT_EQ(::chmod((folder / "file").c_str(), 0444), 0);
    EXPECT_NE(said(checkOutput(folder / "file")).find("write-protected"), std::string::npos);
    EXPECT_NE(said(writeFile(folder / "file", "new")).find("write-protected"), std::string::npos);
    EXPECT_EQ(bytesOf(folder / "file"), "old");
}

TEST(WriteFile, NeverReplacesWhatTheCommandReads) {
    const Folder folder;
    put(folder / "design", "input");
    fs::create_hard_link(folder / "design", folder / "other name");
    fs::create_symlink("design", folder / "link");
    const fs::path inputs[] = {folder / "design"};
    for (const char* name : {"design", "other name", "link"}) {
        EXPECT_NE(said(checkOutput(folder / name, inputs)).find("reads"), std::string::npos)
            << name;
        EXPECT_NE(said(writeFile(folder / name, "new", inputs)).find("reads"), std::string::npos)
            << name;
    }
    EXPECT_EQ(bytesOf(folder / "design"), "input");
}

TEST(WriteFile, FollowsLinksThatStay) {
    const Folder folder;
    fs::create_directory(folder / "below");
    put(folder / "below/file", "old");
    fs::create_symlink("below/file", folder / "link");
    fs::create_symlink("link", folder / "link of a link");
    EXPECT_EQ(said(writeFile(folder / "link of a link", "new")), "");
    EXPECT_EQ(bytesOf(folder / "below/file"), "new");
    EXPECT_TRUE(fs::is_symlink(folder / "link"));
    EXPECT_TRUE(fs::is_symlink(folder / "link of a link"));
}

TEST(WriteFile, MakesWhatADanglingLinkLeadsTo) {
    const Folder folder;
    fs::create_directory(folder / "below");
    fs::create_symlink("below/file", folder / "link");
    EXPECT_EQ(said(writeFile(folder / "link", "new")), "");
    EXPECT_EQ(bytesOf(folder / "below/file"), "new");
    EXPECT_TRUE(fs::is_symlink(folder / "link"));
}

TEST(WriteFile, RefusesALinkThatLeadsToItself) {
    const Folder folder;
    fs::create_symlink("link", folder / "link");
    EXPECT_NE(said(writeFile(folder / "link", "new")), "");
    EXPECT_TRUE(fs::is_symlink(folder / "link"));
}

TEST(WriteFile, WritesIntoPipes) {
    const Folder folder;
    const fs::path pipe = folder / "pipe";
    ASSERT_EQ(::mkfifo(pipe.c_str(), 0600), 0);
    std::string got;
    std::thread reader([&] { got = bytesOf(pipe); });
    EXPECT_EQ(said(writeFile(pipe, "through a pipe")), "");
    reader.join();
    EXPECT_EQ(got, "through a pipe");
    EXPECT_TRUE(fs::is_fifo(pipe));
}

TEST(WriteFile, SurvivesAPipeThatNobodyReads) {
    const Folder folder;
    const fs::path pipe = folder / "pipe";
    ASSERT_EQ(::mkfifo(pipe.c_str(), 0600), 0);
    std::thread reader([&] { ::close(::open(pipe.c_str(), O_RDONLY)); });
    const std::string much(std::size_t{1} << 20U, 'x'); // more than a pipe holds
    EXPECT_NE(said(writeFile(pipe, much)).find("Broken pipe"), std::string::npos);
    reader.join();
}

TEST(WriteFile, WritesIntoDevices) {
    const Folder folder;
    const fs::path null = test::device(folder.path(), "null");
    EXPECT_EQ(said(writeFile(null, "gone")), "");
    EXPECT_TRUE(fs::is_character_file(null));
    const fs::path full = test::device(folder.path(), "full");
    EXPECT_NE(said(writeFile(full, "no room")).find("No space"), std::string::npos);
}

TEST(WriteFile, AddsToAFileThatIsTheStandardOutput) {
    const Folder folder;
    const int file = ::open((folder / "out").c_str(), O_WRONLY | O_CREAT | O_APPEND, 0600);
    ASSERT_GE(file, 0);
    ASSERT_EQ(::write(file, "before ", 7), 7);
    EXPECT_EQ(said(writeFile("/proc/self/fd/" + std::to_string(file), "after")), "");
    ::close(file);
    EXPECT_EQ(bytesOf(folder / "out"), "before after");
}

TEST(WriteFile, HasRoomForTheLongestName) {
    const Folder folder;
    const std::string name(255, 'n');
    EXPECT_EQ(said(writeFile(folder / name, "new")), "");
    EXPECT_EQ(bytesOf(folder / name), "new");
    EXPECT_NE(said(writeFile(folder / (name + "n"), "new")).find("name too long"),
              std::string::npos);
}

TEST(WriteFile, SaysWhyThereIsNoPlace) {
    const Folder folder;
    put(folder / "file", "old");
    EXPECT_NE(said(writeFile(folder.path(), "new")).find("Is a directory"), std::string::npos);
    EXPECT_NE(said(writeFile(folder / "none/file", "new")).find("No such file"), std::string::npos);
    EXPECT_NE(said(writeFile(folder / "file/below", "new")).find("Not a directory"),
              std::string::npos);
    EXPECT_NE(said(writeFile("", "new")), "");
    EXPECT_EQ(folder.names(), std::vector<std::string>{"file"});
}

TEST(WriteFile, SweepsWhatAKilledWriteLeft) {
    const Folder folder;
    put(folder / ".lobewright-0123456789abcdef.part", "half");
    put(folder / ".lobewright-0123456789abcdef.part.mine", "not ours");
    put(folder / "file", "old");
    EXPECT_EQ(said(writeFile(folder / "file", "new")), "");
    EXPECT_EQ(folder.names(),
              (std::vector<std::string>{".lobewright-0123456789abcdef.part.mine", "file"}));
}

TEST(WriteFile, LeavesAWriteThatIsUnderWay) {
    const Folder folder;
    const std::string name = ".lobewright-0123456789abcdef.part";
    put(folder / name, "half");
    const int other = ::open((folder / name).c_str(), O_RDONLY);
    ASSERT_EQ(::flock(other, LOCK_EX), 0);
    EXPECT_EQ(said(writeFile(folder / "file", "new")), "");
    EXPECT_EQ(folder.names(), (std::vector<std::string>{name, "file"}));
    ::close(other);
}

TEST(WriteFile, ManyMayWriteTheSameFileAtOnce) {
    const Folder folder;
    const std::string one(100000, '1'), two(100000, '2');
    std::vector<std::thread> writers;
    std::vector<std::string> problems(4);
    for (std::size_t i = 0; i < problems.size(); ++i) {
        writers.emplace_back([&, i] {
            for (int k = 0; k < 20 && problems[i].empty(); ++k) {
                problems[i] = said(writeFile(folder / "file", i % 2 == 0 ? one : two));
            }
        });
    }
    for (std::thread& writer : writers) {
        writer.join();
    }
    EXPECT_EQ(problems, std::vector<std::string>(4));
    const std::string bytes = bytesOf(folder / "file");
    EXPECT_TRUE(bytes == one || bytes == two);
    EXPECT_EQ(folder.names(), std::vector<std::string>{"file"});
}

TEST(WriteFiles, WritesASetOrNothing) {
    const Folder folder;
    put(folder / "a", "old a");
    const files::Output good[] = {{folder / "a", "new a"}, {folder / "b", "new b"}};
    EXPECT_EQ(said(writeFiles(good)), "");
    EXPECT_EQ(bytesOf(folder / "a") + bytesOf(folder / "b"), "new anew b");
    fs::create_directory(folder / "c");
    const files::Output bad[] = {{folder / "a", "newer"}, {folder / "c", "a folder is there"}};
    EXPECT_NE(said(writeFiles(bad)), "");
    EXPECT_EQ(bytesOf(folder / "a"), "new a");
    EXPECT_EQ(folder.names(), (std::vector<std::string>{"a", "b", "c"}));
}

TEST(CheckFolder, KnowsWhatCanBeMade) {
    const Folder folder;
    put(folder / "file", "");
    EXPECT_EQ(said(files::checkFolder(folder.path())), "");
    EXPECT_EQ(said(files::checkFolder(folder / "to/be/made/")), "");
    EXPECT_NE(said(files::checkFolder(folder / "file")), "");
    EXPECT_NE(said(files::checkFolder(folder / "file/below")), "");
    EXPECT_EQ(folder.names(), std::vector<std::string>{"file"});
}

} // namespace
} // namespace lobewright
