#include "core/design/file.h"

#include "core/design/atomic_file.h"
#include "core/design/document.h"
#include "core/design/reader.h"
#include "core/design/validation.h"

#include <fmt/format.h>

#include <fstream>
#include <system_error>

namespace lobewright::design {

namespace {

constexpr std::uintmax_t largestFile = 16U * 1024U * 1024U;

std::optional<Problem> tooLarge(std::uintmax_t bytes) {
    if (bytes <= largestFile) {
        return std::nullopt;
    }
    return Problem{"", fmt::format("the file has {} bytes; a design has at most {} (16 MiB)", bytes,
                                   largestFile)};
}

} // namespace

Result<Design> readDesign(std::string_view text) {
    if (const auto problem = tooLarge(text.size())) {
        return *problem;
    }
    const Document document = parseDocument(text);
    if (!document.problems.empty()) {
        return document.problems;
    }
    if (!document.root.is_object()) {
        return Problem{"", "the file holds no group of keys; a design is one JSON object"};
    }
    Reader reader(document.root);
    Design design;
    describe(reader, design);
    Problems problems = reader.finish();
    const Problems broken = brokenRules(design, problems);
    problems.insert(problems.end(), broken.begin(), broken.end());
    const Problems kept = brokenSnapshotRules(design, problems);
    problems.insert(problems.end(), kept.begin(), kept.end());
    if (!problems.empty()) {
        return problems;
    }
    return design;
}

Result<Design> loadDesign(const std::filesystem::path& file) {
    std::error_code error;
    const auto status = std::filesystem::status(file, error);
    if (!std::filesystem::exists(status)) {
        return Problem{"", fmt::format("there is no file {}", file.string())};
    }
    if (std::filesystem::is_directory(status)) {
        return Problem{"", fmt::format("{} is a folder, not a design file", file.string())};
    }
    if (std::filesystem::is_regular_file(status)) {
        if (const auto problem = tooLarge(std::filesystem::file_size(file, error))) {
            return *problem;
        }
    }
    std::ifstream stream(file, std::ios::binary);
    if (!stream) {
        return Problem{"", fmt::format("{} cannot be read: {}", file.string(),
                                       std::generic_category().message(errno))};
    }
    // One byte above the limit is enough to know; a pipe has no size to ask for.
    std::string text;
    std::vector<char> block(1U << 16U);
    while (stream && text.size() <= largestFile) {
        stream.read(block.data(), static_cast<std::streamsize>(block.size()));
        text.append(block.data(), static_cast<std::size_t>(stream.gcount()));
    }
    if (stream.bad()) {
        return Problem{"", fmt::format("{} cannot be read to its end", file.string())};
    }
    return readDesign(text);
}

std::optional<Problem> saveDesign(const Design& design, const std::filesystem::path& file) {
    return writeAtomically(file, writeDesign(design));
}

} // namespace lobewright::design
