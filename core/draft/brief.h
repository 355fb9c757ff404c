#pragma once

#include "core/claims/claims.h"
#include "core/result.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// From a handful of figures to a whole engine.
namespace lobewright::draft {

/// A figure that is known, in SI.
struct Figure {
    double value = 0.0;
    double precision = 0.0; ///< half the last digit with which it was published, relative
    std::string text;       ///< as published, "120 hp"
    bool operator==(const Figure&) const = default;
};

/// What is known of an engine, or wanted of it. Everything may be missing.
struct Brief {
    std::string title;
    std::string source; ///< where the figures are from; empty: not said
    std::optional<int> cylinders, lobes;
    bool isDuty = false;     ///< its speed is the one it runs at, not where its power is highest
    bool isOneSided = false; ///< as many pistons as chambers: one against a head, not two opposed
    std::optional<gas::Fuel> fuel;
    std::optional<study::Ignition> ignition;
    std::optional<study::Charging> charging;
    std::optional<bool> supplyUnpaid; ///< the published power does not pay for the supply
    std::optional<Figure> displacement, bore,
        stroke; ///< of the engine; of one cylinder, one piston
    std::optional<Figure> compression, highCompression; ///< geometric; the second: other setting
    std::optional<Figure> diameter, length;             ///< over everything
    std::optional<Figure> power, powerSpeed, torque, torqueSpeed, maximumSpeed;
    std::optional<Figure> meanPressure, pistonSpeed, airRatio, supplyPressure;
    std::optional<Figure> efficiency; ///< brake, of the lower heating value
    // A duty also limits.
    std::optional<double> diameterLimit, lengthLimit; ///< [m]
    std::optional<double> life;                       ///< [s]
    bool operator==(const Brief&) const = default;
};

/// The figures of a claims file that a design can follow.
Brief briefOf(const study::Claims& claims);

/// Whether a design can follow the figure at this path of the claims file, "/figures/power".
bool isFollowed(std::string_view path);

/// A duty such as "power=12 kW, speed=1800 rpm, fuel=methane, diameter<320 mm, length<700 mm".
/// Keys: power, speed, torque, fuel, cylinders, lobes, supply, compression, diameter, length (with
/// < as limits, with = as sizes), life (with >, hours). Power or torque must be there.
/// Errors (path: the key): unknown key (names the nearest), wrong sign, a figure that cannot be
/// read, given twice.
Result<Brief> readDuty(std::string_view text);

} // namespace lobewright::draft
