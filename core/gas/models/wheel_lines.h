#pragma once

#include "core/gas/models/settings.h"

#include <vector>

namespace lobewright::gas {

/// A compressor wheel at one speed in the reference state of its table, from surge to choke in even
/// steps of flow.
struct WheelLine {
    double speed = 0.0;        ///< corrected [rad/s]
    std::vector<double> flow;  ///< corrected [kg/s], ascending
    std::vector<double> ratio; ///< of pressures
    std::vector<double> efficiency;
};

/// Lines at corrected speeds > 0 [rad/s], in their order; `points` ≥ 2 on each. The wheel must obey
/// the rules of `validate`.
std::vector<WheelLine> wheelLines(const Wheel& wheel, const std::vector<double>& speeds,
                                  int points = 41);

/// The corrected speeds that a table was measured at, ascending and each once [rad/s].
std::vector<double> measuredSpeeds(const Wheel& wheel);

} // namespace lobewright::gas
