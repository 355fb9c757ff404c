// Every system call of a write fails in turn. Whatever fails, a file holds its old bytes or all of
// its new ones, the caller is told, and the next write leaves nothing behind.

#include "core/files/write_file.h"
#include "tests/files/failing_calls.h"
#include "tests/files/folder.h"

#include <cerrno>
#include <csignal>
#include <cstring>
#include <set>
#include <sys/wait.h>
#include <unistd.h>

namespace lobewright {
namespace {

namespace fs = std::filesystem;
using test::bytesOf;
using test::FailingCall;
using test::Folder;
using test::put;

constexpr int reasons[] = {ENOSPC, EIO, EACCES};
const std::string oldBytes = "what was there before", newBytes(70000, 'n');

/// Calls the write with its call number 0, 1, … failing, until it makes no more calls. `judge` is
/// called after each. Returns the names of the calls that failed.
template <class Prepare, class Write, class Judge>
std::set<std::string> failInTurn(const Prepare& prepare, const Write& write, const Judge& judge) {
    std::set<std::string> failed;
    for (const int reason : reasons) {
        for (int call = 0;; ++call) {
            EXPECT_LT(call, 1000);
            prepare();
            std::optional<Problem> problem;
            {
                const FailingCall failing(call, reason);
                problem = write();
            }
            const char* name = FailingCall::failed();
            if (name == nullptr) {
                EXPECT_FALSE(problem) << "no call failed";
                break;
            }
            failed.insert(name);
            SCOPED_TRACE(std::string(name) + ", call " + std::to_string(call) + ": " +
                         std::strerror(reason));
            judge(problem);
        }
    }
    return failed;
}

/// Calls the write in a process of its own that is killed before its call number 0, 1, …, until it
/// makes no more calls. `judge` is called after each. Returns how many were killed.
template <class Prepare, class Write, class Judge>
int killInTurn(const Prepare& prepare, const Write& write, const Judge& judge) {
    for (int call = 0; call < 1000; ++call) {
        prepare();
        const pid_t child = ::fork();
        if (child == 0) {
            const FailingCall killing(call, FailingCall::killed);
            ::_exit(write() ? 1 : 0);
        }
        int status = 0;
        EXPECT_EQ(::waitpid(child, &status, 0), child);
        if (WIFEXITED(status)) {
            EXPECT_EQ(WEXITSTATUS(status), 0) << "the write that was not killed";
            return call;
        }
        EXPECT_EQ(WTERMSIG(status), SIGKILL);
        SCOPED_TRACE("killed before call " + std::to_string(call));
        judge();
    }
    ADD_FAILURE() << "a write makes a thousand calls";
    return 0;
}

TEST(WriteFaults, AReplacedFileHoldsTheOldOrTheNew) {
    const Folder folder;
    const fs::path file = folder / "file";
    const auto failed = failInTurn(
        [&] { put(file, oldBytes); }, [&] { return files::writeFile(file, newBytes); },
        [&](const std::optional<Problem>& problem) {
            const std::string bytes = bytesOf(file);
            EXPECT_TRUE(bytes == oldBytes || bytes == newBytes) << bytes.size() << " bytes";
            if (!problem) {
                EXPECT_TRUE(bytes == newBytes) << "nobody was told";
            } else if (problem->message.english().find("does not confirm") == std::string::npos) {
                EXPECT_TRUE(bytes == oldBytes) << problem->message.english();
            }
            EXPECT_FALSE(files::writeFile(file, newBytes)) << "the next write";
            EXPECT_EQ(folder.names(), std::vector<std::string>{"file"});
        });
    for (const char* call : {"stat", "open", "openat", "write", "fchmod", "fchown", "fsync",
                             "flock", "fstat", "close", "renameat", "faccessat"}) {
        EXPECT_TRUE(failed.contains(call))
            << call << " never failed: the test proves nothing of it";
    }
}

TEST(WriteFaults, ANewFileIsThereWholeOrNot) {
    const Folder folder;
    const fs::path file = folder / "file";
    failInTurn([&] { fs::remove(file); }, [&] { return files::writeFile(file, newBytes); },
               [&](const std::optional<Problem>& problem) {
                   EXPECT_TRUE(!fs::exists(file) || bytesOf(file) == newBytes);
                   EXPECT_TRUE(problem || fs::exists(file)) << "nobody was told";
                   EXPECT_FALSE(files::writeFile(file, newBytes)) << "the next write";
                   EXPECT_EQ(folder.names(), std::vector<std::string>{"file"});
               });
}

TEST(WriteFaults, FilesOfASetNeverStandBesideThoseOfAnother) {
    const Folder folder;
    const fs::path first = folder / "first", last = folder / "last";
    const files::Output set[] = {{first, "new first"}, {last, "new last"}};
    const auto failed = failInTurn(
        [&] {
            put(first, "old first");
            put(last, "old last");
        },
        [&] { return files::writeFiles(set); },
        [&](const std::optional<Problem>& problem) {
            const std::string both = bytesOf(first) + ", " + bytesOf(last);
            EXPECT_TRUE(both == "old first, old last" || both == "new first, new last") << both;
            if (!problem) {
                EXPECT_EQ(both, "new first, new last") << "nobody was told";
            }
            EXPECT_FALSE(files::writeFiles(set)) << "the next write";
            EXPECT_EQ(folder.names(), (std::vector<std::string>{"first", "last"}));
        });
    EXPECT_TRUE(failed.contains("linkat"));
}

TEST(WriteFaults, AKillAtAnyCallLeavesTheOldFileOrTheNew) {
    const Folder folder;
    const fs::path file = folder / "file";
    const int killed =
        killInTurn([&] { put(file, oldBytes); }, [&] { return files::writeFile(file, newBytes); },
                   [&] {
                       const std::string bytes = bytesOf(file);
                       EXPECT_TRUE(bytes == oldBytes || bytes == newBytes);
                       EXPECT_FALSE(files::writeFile(file, newBytes)) << "the next";
                       EXPECT_EQ(folder.names(), std::vector<std::string>{"file"});
                   });
    EXPECT_GT(killed, 10);
}

TEST(WriteFaults, AKillAtAnyCallTakesNoMoreOfASetThanItsLastFile) {
    const Folder folder;
    const fs::path first = folder / "first", last = folder / "last";
    const files::Output set[] = {{first, "new first"}, {last, "new last"}};
    std::set<std::string> left;
    const int killed = killInTurn(
        [&] {
            put(first, "old first");
            put(last, "old last");
        },
        [&] { return files::writeFiles(set); },
        [&] {
            left.insert(bytesOf(first) + ", " + (fs::exists(last) ? bytesOf(last) : "none"));
            EXPECT_FALSE(files::writeFiles(set)) << "the next write";
            EXPECT_EQ(folder.names(), (std::vector<std::string>{"first", "last"}));
        });
    EXPECT_GT(killed, 20);
    EXPECT_EQ(left, (std::set<std::string>{"old first, old last", "old first, none",
                                           "new first, none", "new first, new last"}));
}

} // namespace
} // namespace lobewright
