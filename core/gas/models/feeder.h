#pragma once

#include "core/gas/models/compressor.h"
#include "core/gas/models/settings.h"
#include "core/gas/models/supply.h"
#include "core/gas/properties/properties.h"

#include <optional>

namespace lobewright::gas {

/// Air on its way into a plenum.
struct Feed {
    double flow = 0.0;        ///< [kg/s]
    double temperature = 0.0; ///< behind the after-cooler, where there is one [K]
    double wheelWork = 0.0;   ///< of a compressor wheel [J/kg], ≥ 0
    double blowerWork = 0.0;  ///< of a blower [J/kg], ≥ 0
    double hottest = 0.0;     ///< before the after-cooler [K]
};

/// What fills a plenum while shaft and wheel turn at one speed: a blower, a compressor wheel, or a
/// blower behind a wheel.
class Feeder {
  public:
    Feeder() = default; ///< of a supply without plenum
    /// ω of the shaft [rad/s]; `wheelSpeed` [rad/s] counts for a compressor only, > 0.
    Feeder(const Supply& supply, const GasGroup& air, double omega, double wheelSpeed);

    /// Against a pressure in the plenum [Pa].
    Feed feed(double plenumPressure) const;
    /// How the flow falls with that pressure: −dṁ/dp [kg/(s·Pa)], ≥ 0; a blower's does not.
    double slope(double plenumPressure) const;
    const std::optional<TurningWheel>& wheel() const { return wheel_; }

    /// Between wheel and blower nothing changes over a cycle: the blower takes the same volume at
    /// every moment.
    struct Between {
        double flow = 0.0;                        ///< [kg/s]
        double pressure = 0.0, temperature = 0.0; ///< [Pa], behind a cooler [K]
        double hottest = 0.0;                     ///< before it [K]
        double work = 0.0;                        ///< of the wheel [J/kg]
    };
    const std::optional<Between>& between() const { return between_; }

  private:
    double blown_ = 0.0;   ///< by a blower [kg/s]
    double coolest_ = 0.0; ///< that the after-cooler lets out [K]; infinite without one
    std::optional<AdiabaticStage> blower_;
    std::optional<TurningWheel> wheel_;
    std::optional<Between> between_;
};

/// A speed to begin the search for that of a turbine's wheel with: at which the compressor would
/// give a pressure ratio of about 1.6 [rad/s].
double likelySpeed(const Supply& supply, const GasGroup& air);

/// Speed of a geared wheel at shaft speed ω [rad/s].
double gearedSpeed(const Supply& supply, double omega);

} // namespace lobewright::gas
