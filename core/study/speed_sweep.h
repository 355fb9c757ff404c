#pragma once

#include "core/study/operating_points.h"

namespace lobewright::study {

/// Figures of the speed sweep that every engine has, by name.
const std::vector<std::string>& speedSweepFigures();
/// Those of a design: with the figures of its air supply behind them.
std::vector<std::string> speedSweepFigures(const design::Design& design);

/// What a speed sweep varies.
Column speedSweepParameter();

/// A design at many speeds. from, to: shaft speed [1/min], > 0; points ≥ 2.
/// Errors: range or count not positive (path ""), cancelled, the design is invalid.
Result<Table> speedSweep(const design::Design& design, double from, double to, int points,
                         const Shard& shard, Monitor& monitor, const PointSink& sink = {});

} // namespace lobewright::study
