#pragma once

#include "core/gas/cycle/cycle.h"

namespace lobewright::loads {

/// The chamber pressure less what a pump chamber changes on the back of a piston: with it, and the
/// pressure under the pistons held, all forces on a piston are those of p − p_back, where
/// p_back = f·p_u + (1 − f)·p_under and f is the share of the bore that pumps.
class NetPressure final : public gas::GasTrace {
  public:
    /// `trace` must outlive it; `pumpArea`: f, 0 where this piston does not pump;
    /// `underPistonPressure` [Pa].
    NetPressure(const gas::GasTrace& trace, double pumpArea, double underPistonPressure)
        : trace_(trace), pumpArea_(pumpArea), underPistonPressure_(underPistonPressure) {}

    gas::GasSamples sample(const Samples& theta, int cylinder = 0) const override {
        gas::GasSamples samples = trace_.sample(theta, cylinder);
        samples.pressure = onPiston(samples.pressure, theta, cylinder);
        return samples;
    }
    double pressure(double theta, int cylinder = 0) const override {
        const double chamber = trace_.pressure(theta, cylinder);
        if (pumpArea_ <= 0.0) {
            return chamber;
        }
        const Samples under = trace_.pumpPressure(Samples::Constant(1, theta), cylinder);
        return under.size() == 0 ? chamber
                                 : chamber - pumpArea_ * (under[0] - underPistonPressure_);
    }
    /// From the chamber pressures at these angles; shape (samples).
    Samples onPiston(const Samples& pressure, const Samples& theta, int cylinder) const {
        if (pumpArea_ <= 0.0) {
            return pressure;
        }
        const Samples under = trace_.pumpPressure(theta, cylinder);
        return under.size() == 0 ? pressure
                                 : Samples(pressure - pumpArea_ * (under - underPistonPressure_));
    }

  private:
    const gas::GasTrace& trace_;
    double pumpArea_, underPistonPressure_;
};

} // namespace lobewright::loads
