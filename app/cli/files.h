#pragma once

#include "core/result.h"

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace CLI {
class App;
}

namespace lobewright::cli {

/// The bytes of an input; ends the command where it cannot be read.
std::string readInput(const std::string& file, std::uintmax_t most);

/// Ends the command where there is a problem with what an option names.
void endAt(const std::string& option, const std::optional<Problem>& problem);

/// --out FILE, which a command must be given.
void addOutput(CLI::App& command, std::string& file, const std::string& help,
               const std::string& type = "FILE");

/// The file that an option names to be written. It is never one that the command reads.
class OutputFile {
  public:
    OutputFile(std::string option, std::string file, std::vector<std::filesystem::path> inputs)
        : option_(std::move(option)), file_(std::move(file)), inputs_(std::move(inputs)) {}

    /// Ends the command where it cannot be written, before any work is done.
    void check() const;
    /// done; else ends the command.
    int write(std::string_view bytes) const;

  private:
    std::string option_, file_;
    std::vector<std::filesystem::path> inputs_;
};

} // namespace lobewright::cli
