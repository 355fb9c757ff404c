// Any bytes as a claims file: read or refused with reasons, never a crash; what was read is written
// so that it reads the same, and every check of it ends in words and in JSON.

#include "core/claims/claims_file.h"
#include "core/claims/claims_report.h"
#include "tests/fuzz/property.h"

#include <nlohmann/json.hpp>

#include <cstdint>
#include <string_view>

using namespace lobewright;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const MustBeQuick watch;
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    const auto read = study::readClaims(text);
    if (!read) {
        mustHold(!read.problems().empty(), "a refusal has reasons");
        return 0;
    }
    const std::string written = study::writeClaims(*read);
    const auto again = study::readClaims(written);
    mustHold(static_cast<bool>(again), "what was written is read",
             again ? ""
                   : again.problems().front().path + ": " +
                         again.problems().front().message.english());
    mustHold(study::writeClaims(*again) == written, "and is written the same", written);
    const auto report = study::checkClaims(*read);
    mustHold(!study::claimsText(report).empty(), "the report has words");
    mustHold(nlohmann::json::accept(study::claimsJson(report)), "the report is JSON");
    return 0;
}
