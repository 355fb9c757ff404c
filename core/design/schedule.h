#pragma once

#include <string>
#include <vector>

namespace lobewright::design {

/// One input that is set by the shaft speed instead of standing still.
struct Schedule {
    std::string input;         ///< JSON pointer, "/mechanism/adjuster/setting_deg"
    std::vector<double> speed; ///< ω [rad/s], rising
    std::vector<double> value; ///< in the unit of the input in the file, one for each speed
    bool operator==(const Schedule&) const = default;
};

} // namespace lobewright::design
