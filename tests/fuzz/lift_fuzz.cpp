// Any bytes as a lift table: refused with reasons or turned into knots that are finite and in
// order, never a crash. The first byte chooses the lobes and whether knots are scarce.

#include "core/exchange/lift_import.h"
#include "tests/fuzz/property.h"

#include <cmath>
#include <cstdint>
#include <string_view>

using namespace lobewright;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const MustBeQuick watch;
    if (size == 0) {
        return 0;
    }
    exchange::ImportOptions options;
    options.lobes = data[0] % 8U;
    options.mostKnots = (data[0] & 0x80U) != 0 ? 3 : 40;
    const std::string_view text(reinterpret_cast<const char*>(data) + 1, size - 1);
    const auto lift = exchange::importLift(text, options);
    if (!lift) {
        mustHold(!lift.problems().front().message.empty(), "a refusal has reasons");
        return 0;
    }
    const auto& knots = std::get<motion::KnotShape>(lift->pattern.shape).knots;
    for (std::size_t i = 0; i < knots.size(); ++i) {
        mustHold(std::isfinite(knots[i].angle) && std::isfinite(knots[i].lift), "knots are finite");
        mustHold(i == 0 || knots[i].angle > knots[i - 1].angle, "knots are in order");
    }
    mustHold(std::isfinite(lift->largestResidual) && std::isfinite(lift->meanSquareRoot),
             "residuals are finite");
    mustHold(!lift->withinTolerance || lift->largestResidual <= lift->tolerance * 1.00001,
             "within tolerance is what it says");
    return 0;
}
