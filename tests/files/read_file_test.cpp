#include "core/files/read_file.h"
#include "core/printable.h"
#include "tests/files/folder.h"

#include <sys/stat.h>
#include <thread>

namespace lobewright {
namespace {

namespace fs = std::filesystem;
using files::readFile;
using test::Folder;

std::string problemOf(const Result<std::string>& read) {
    return read ? std::string() : read.problems().front().message.english();
}

TEST(ReadFile, GivesAllBytes) {
    const Folder folder;
    const std::string bytes("a\0b\r\n\xFF", 6);
    test::put(folder / "file", bytes);
    EXPECT_EQ(*readFile(folder / "file", 6), bytes);
    test::put(folder / "nothing", "");
    EXPECT_EQ(*readFile(folder / "nothing", 6), "");
}

TEST(ReadFile, ReadsNoMoreThanItMay) {
    const Folder folder;
    test::put(folder / "file", "1234567");
    EXPECT_EQ(*readFile(folder / "file", 6), "123456");
    EXPECT_EQ(readFile("/dev/zero", 100000)->size(), 100000U);
}

TEST(ReadFile, ReadsAPipe) {
    const Folder folder;
    const fs::path pipe = folder / "pipe";
    ASSERT_EQ(::mkfifo(pipe.c_str(), 0600), 0);
    std::thread writer([&] { test::put(pipe, "through a pipe"); });
    EXPECT_EQ(*readFile(pipe, 100), "through a pipe");
    writer.join();
}

TEST(ReadFile, SaysWhatIsWrong) {
    const Folder folder;
    EXPECT_NE(problemOf(readFile(folder / "none", 1)).find("there is no file"), std::string::npos);
    EXPECT_NE(problemOf(readFile(folder.path(), 1)).find("is a folder"), std::string::npos);
    test::put(folder / "file", "");
    EXPECT_NE(problemOf(readFile(folder / "file/below", 1)).find("Not a directory"),
              std::string::npos);
}

TEST(ReadFile, NamesOfFilesCannotForgeMessages) {
    const std::string message = problemOf(readFile("no\nerror: \x1b[31mred\xFF", 1));
    EXPECT_EQ(message, "there is no file no error:  [31mred?");
}

TEST(Printable, KeepsWhatIsRead) {
    EXPECT_EQ(printable("Prüfstand Ⅲ, λ = 1.1 😀"), "Prüfstand Ⅲ, λ = 1.1 😀");
    EXPECT_EQ(printable(""), "");
}

TEST(Printable, TakesOutWhatSteers) {
    EXPECT_EQ(printable("a\x1b]0;title\x07z\r\n\t"), "a ]0;title z   ");
    EXPECT_EQ(printable("\xC2\x9B"), " ")
        << "one character that begins a command in some terminals";
    EXPECT_EQ(printable("gnp.\xE2\x80\xAE"
                        "exe"),
              "gnp. exe")
        << "right-to-left override";
    EXPECT_EQ(printable("\xE2\x80\xA8"), " ") << "line separator";
}

TEST(Printable, MarksWhatIsNoText) {
    EXPECT_EQ(printable("\xFF\xFE"), "??");
    EXPECT_EQ(printable("\xC0\x80"), "??") << "not the shortest form";
    EXPECT_EQ(printable("\xED\xA0\x80"), "???") << "half of a pair";
    EXPECT_EQ(printable("\xE2\x82"), "??") << "cut off";
    EXPECT_EQ(printable("\xF4\x90\x80\x80"), "????") << "beyond the last character";
}

} // namespace
} // namespace lobewright
