#pragma once

#include "core/claims/claims.h"
#include "core/unknowns/ensemble.h"

#include <string>
#include <vector>

namespace lobewright::unknowns {

/// A published figure as a condition on a result.
struct Condition {
    enum class Sense { atLeast, atMost, about };
    std::string result; ///< name of a result of the ensemble
    Sense sense = Sense::atLeast;
    double target = 0.0;    ///< in the unit of the result, > 0
    double tolerance = 0.0; ///< in the same unit, ≥ 0
    std::string said;       ///< as published, "60 kW"
    bool operator==(const Condition&) const = default;
};

/// The published figures that engines can be held against. Power, torque, mean effective pressure
/// and efficiency must be reached within half of the last digit; the speeds of the highest torque
/// and power must be met within 5 % [own estimate], since a curve is flat at its top.
std::vector<Condition> conditionsOf(const study::Claims& claims);

/// How far a value misses a condition, beyond the tolerance and relative to the target; 0 where it
/// is kept. A value that is not available misses by infinity.
double miss(const Condition& condition, double value);

/// By how much an engine misses all of them: the largest. An engine that does not run misses by
/// infinity.
double miss(const Run& run, const Ensemble& ensemble, const std::vector<Condition>& conditions);

} // namespace lobewright::unknowns
