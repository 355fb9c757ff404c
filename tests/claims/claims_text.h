#pragma once

#include "core/claims/claims_check.h"
#include "core/claims/claims_file.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <string>

/// Claims written as a file would have them, for tests that read as one.
namespace lobewright::study {

inline std::string claimsFile(const std::string& groups) {
    return R"({"format": "lobewright-claims", "format_version": 1)" +
           (groups.empty() ? "" : ", " + groups) + "}";
}

inline Claims claimsOf(const std::string& groups) {
    const auto read = readClaims(claimsFile(groups));
    if (!read) {
        for (const Problem& problem : read.problems()) {
            ADD_FAILURE() << problem.path << ": " << problem.message.english();
        }
        return {};
    }
    return *read;
}

inline ClaimsReport reportOf(const std::string& groups) {
    return checkClaims(claimsOf(groups));
}

/// The conflict that names the key and has the verdict, or null.
inline const Conflict* conflict(const ClaimsReport& report, Verdict verdict,
                                const std::string& path) {
    const auto found = std::ranges::find_if(report.conflicts, [&](const Conflict& one) {
        return one.verdict == verdict && std::ranges::count(one.paths, path) > 0;
    });
    return found == report.conflicts.end() ? nullptr : &*found;
}

} // namespace lobewright::study
