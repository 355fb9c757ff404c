#include "core/files/source_date.h"

#include <fmt/chrono.h>

#include <charconv>
#include <cstdlib>
#include <optional>
#include <string_view>

namespace lobewright::files {

namespace {

std::optional<std::time_t> fixedDate() {
    const char* given = std::getenv("SOURCE_DATE_EPOCH");
    if (given == nullptr) {
        return std::nullopt;
    }
    const std::string_view text = given;
    constexpr long long yearTenThousand = 253402300800; // dates have four digits of a year
    long long seconds = 0;
    const auto read = std::from_chars(text.data(), text.data() + text.size(), seconds);
    const bool isWhole = read.ec == std::errc() && read.ptr == text.data() + text.size();
    return isWhole && seconds >= 0 && seconds < yearTenThousand
               ? std::optional(static_cast<std::time_t>(seconds))
               : std::nullopt;
}

} // namespace

bool isDateFixed() {
    return fixedDate().has_value();
}

std::tm dateOfFiles() {
    const auto fixed = fixedDate();
    return fixed ? fmt::gmtime(*fixed) : fmt::localtime(std::time(nullptr));
}

std::string dayOfFiles() {
    return fmt::format("{:%Y-%m-%d}", dateOfFiles());
}

} // namespace lobewright::files
