#include "core/files/source_date.h"

#include "core/parsed.h"

#include <fmt/chrono.h>

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
    constexpr long long yearTenThousand = 253402300800; // dates have four digits of a year
    const auto seconds = parsed<long long>(given);
    return seconds && *seconds >= 0 && *seconds < yearTenThousand
               ? std::optional(static_cast<std::time_t>(*seconds))
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
