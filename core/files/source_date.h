#pragma once

#include <ctime>
#include <string>

namespace lobewright::files {

/// The moment that files tell of themselves: now, in local time; where the variable
/// SOURCE_DATE_EPOCH gives seconds since 1970, that moment in UTC, so that the same design gives
/// the same bytes (reproducible-builds.org, SOURCE_DATE_EPOCH specification 1.1).
std::tm dateOfFiles();

/// Its day, "2026-03-31".
std::string dayOfFiles();

/// Whether SOURCE_DATE_EPOCH fixes it.
bool isDateFixed();

} // namespace lobewright::files
