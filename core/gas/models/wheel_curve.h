#pragma once

#include "core/gas/models/settings.h"
#include "core/gas/properties/properties.h"
#include "core/result.h"

#include <memory>
#include <optional>

namespace lobewright::gas {

/// One speed of a compressor wheel in coefficients, φ = ṁ/(ρ₁·u·D²) of flow and ψ of isentropic
/// head. Flow and head answer each other over the whole line: left of the peak it is nearly level.
class WheelCurve {
  public:
    virtual ~WheelCurve() = default;
    virtual double headCoefficient(double phi) const = 0;
    /// Of a head coefficient; may be negative where the head is beyond the wheel.
    virtual double flowCoefficient(double psi) const = 0;
    virtual double efficiency(double phi) const = 0; ///< isentropic, > 0
    virtual double surgeFlow() const = 0;            ///< φ below which the wheel surges
    virtual double chokeFlow() const = 0;            ///< φ beyond which it gives no more
    virtual double bestFlow() const = 0;             ///< φ of the best efficiency
};

/// The curve at a speed corrected to the reference state of a table [rad/s]; that of coefficients
/// is the same at every speed. `air` as the table was measured with.
std::shared_ptr<const WheelCurve> curveOf(const Wheel& wheel, const GasGroup& air,
                                          double correctedSpeed);

/// What makes a table unfit to be a wheel's: fewer than three points at a speed, or no fall of
/// pressure to the right of its peak. Path relative to the wheel.
std::optional<Problem> flawOfTable(const Wheel& wheel);

} // namespace lobewright::gas
