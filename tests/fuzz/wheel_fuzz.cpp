// Any bytes as a table of a compressor wheel: refused with reasons or turned into points that are
// finite, never a crash.

#include "core/exchange/wheel_table.h"
#include "tests/fuzz/property.h"

#include <cmath>
#include <cstdint>
#include <string_view>

using namespace lobewright;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const MustBeQuick watch;
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    const auto points = exchange::readWheelTable(text);
    if (!points) {
        mustHold(!points.problems().front().message.empty(), "a refusal has reasons");
        return 0;
    }
    mustHold(!points->empty(), "a table that was read has points");
    for (const gas::WheelPoint& point : *points) {
        mustHold(std::isfinite(point.speed) && std::isfinite(point.flow) &&
                     std::isfinite(point.pressureRatio) && std::isfinite(point.efficiency),
                 "points are finite");
    }
    return 0;
}
