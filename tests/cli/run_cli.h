#pragma once

#include "core/text/caution.h"
#include "tests/places.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <sys/wait.h>
#include <unistd.h>

namespace lobewright::cli::testing {

struct Outcome {
    int status = -1;
    std::string out, err;
};

inline std::string contents(const std::filesystem::path& file) {
    std::ifstream stream(file, std::ios::binary);
    std::stringstream text;
    text << stream.rdbuf();
    return text.str();
}

/// What every command that gave figures says on stderr, and nothing more.
inline std::string cautionLine() {
    return std::string(shortCaution().text) + '\n';
}

/// Runs the built program in a folder of its own.
class CliTest : public ::testing::Test {
  protected:
    void SetUp() override {
        const auto* info = ::testing::UnitTest::GetInstance()->current_test_info();
        folder_ = std::filesystem::temp_directory_path() /
                  fmt::format("lobewright-cli-{}-{}", info->name(), ::getpid());
        std::filesystem::create_directories(folder_);
    }
    void TearDown() override { std::filesystem::remove_all(folder_); }

    /// `arguments` as in a shell.
    Outcome run(const std::string& arguments) const {
        const auto out = folder_ / "stdout";
        const auto err = folder_ / "stderr";
        const std::string command =
            fmt::format("cd '{}' && '{}' {} >'{}' 2>'{}'", folder_.string(), test::batchProgram(),
                        arguments, out.string(), err.string());
        const int status = std::system(command.c_str());
        Outcome outcome{WIFEXITED(status) ? WEXITSTATUS(status) : -1, contents(out), contents(err)};
        std::filesystem::remove(out);
        std::filesystem::remove(err);
        return outcome;
    }
    void put(const std::string& name, const std::string& text) const {
        std::ofstream(folder_ / name, std::ios::binary) << text;
    }
    static std::string sample(const std::string& name) {
        return fmt::format("'{}/samples/{}.lobewright.json'", test::sourceFolder(), name);
    }
    std::size_t filesIn(const std::filesystem::path& folder) const {
        return static_cast<std::size_t>(
            std::distance(std::filesystem::directory_iterator(folder), {}));
    }
    std::filesystem::path folder_;
};

} // namespace lobewright::cli::testing
