// The fuzzers' properties without a fuzzer: every file that is named, or lies in a folder that is
// named, goes through once, and so do its beginnings. Built by every compiler, so that the targets
// stay in step with the readers.

#include <cstdint>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

namespace {

constexpr std::size_t beginnings = 16;

std::size_t replay(const std::filesystem::path& file) {
    std::ifstream in(file, std::ios::binary);
    const std::string bytes{std::istreambuf_iterator<char>(in), {}};
    for (std::size_t part = 1; part <= beginnings; ++part) {
        const std::size_t size = bytes.size() * part / beginnings;
        const std::vector<std::uint8_t> data(bytes.begin(),
                                             bytes.begin() + static_cast<std::ptrdiff_t>(size));
        LLVMFuzzerTestOneInput(data.data(), data.size());
    }
    return beginnings;
}

} // namespace

// NOLINTNEXTLINE(bugprone-exception-escape): what is thrown is to end the test
int main(int count, char** names) {
    std::size_t inputs = 0;
    for (int i = 1; i < count; ++i) {
        const std::filesystem::path named(names[i]);
        if (!std::filesystem::is_directory(named)) {
            inputs += replay(named);
            continue;
        }
        for (const auto& entry : std::filesystem::directory_iterator(named)) {
            if (entry.is_regular_file()) {
                inputs += replay(entry.path());
            }
        }
    }
    std::printf("%zu inputs\n", inputs);
    return inputs > 0 ? 0 : 1;
}
