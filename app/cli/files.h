#pragma once

#include <cstdint>
#include <filesystem>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace lobewright::cli {

/// The bytes of an input, or the exit status after the reason has gone to stderr.
std::variant<std::string, int> readOrReport(const std::string& file, std::uintmax_t most);

/// The file that an option names to be written. It is never one that the command reads.
class OutputFile {
  public:
    OutputFile(std::string option, std::string file, std::vector<std::filesystem::path> inputs)
        : option_(std::move(option)), file_(std::move(file)), inputs_(std::move(inputs)) {}

    /// done, or the exit status after the reason has gone to stderr, before any work is done.
    int check() const;
    /// The same after an attempt to write.
    int write(std::string_view bytes) const;

  private:
    std::string option_, file_;
    std::vector<std::filesystem::path> inputs_;
};

} // namespace lobewright::cli
