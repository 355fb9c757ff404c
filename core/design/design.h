#pragma once

#include "core/contact/settings.h"
#include "core/design/knowledge.h"
#include "core/design/reference.h"
#include "core/design/schedule.h"
#include "core/ends.h"
#include "core/gas/models/settings.h"
#include "core/loads/settings.h"
#include "core/mechanism/mechanism.h"
#include "core/motion/pattern.h"
#include "core/ports/row.h"
#include "core/track/blank.h"
#include "core/units.h"

#include <optional>
#include <string>
#include <vector>

namespace lobewright::design {

/// Two thresholds of one check; which side is bad depends on the check.
struct Limit {
    double warning = 0.0;
    double error = 0.0;
    bool operator==(const Limit&) const = default;
};

/// Default limits [own estimates], in SI.
struct Limits {
    Limit pressureAngle{35.0 * units::pi / 180.0, 45.0 * units::pi / 180.0}; ///< [rad]
    Limit meanPistonSpeed{16.0, 22.0};                                       ///< [m/s]
    Limit peakPressure{120e5, 180e5};                                        ///< [Pa]
    Limit filmRatio{1.0, 0.5};                                               ///< λ of the oil film
    Limit contactSafety{1.2, 1.0};
    Limit rollerLife{1000.0 * 3600.0, 100.0 * 3600.0}; ///< [s]
    Limit guideBracket{0.3, 0.0};                      ///< jam margin cos α − μ_e·|sin α|
    Limit knockIntegral{0.8, 1.0};
    bool operator==(const Limits&) const = default;
};

struct Tracks {
    motion::Pattern inlet;
    std::optional<motion::Pattern> exhaust; ///< absent: "same" as the inlet
    const motion::Pattern& operator[](End end) const {
        return end == End::exhaust && exhaust ? *exhaust : inlet;
    }
    bool operator==(const Tracks&) const = default;
};

/// What is set to run an engine below full load.
enum class LoadBy {
    supply, ///< pressure of a constant supply, or that before the intake of any other
    mixture ///< fuel for the same air
};

struct Running {
    double speed = 1500.0 * 2.0 * units::pi / 60.0; ///< ω [rad/s]
    double underPistonPressure = 1e5;               ///< [Pa]
    bool motored = false;                           ///< turned from outside, no fuel
    double inertia = 0.0; ///< of everything that turns with the shaft [kg·m²]; 0: not given
    double load = 1.0;    ///< 0 … 1, full load
    LoadBy loadBy = LoadBy::supply;
    std::optional<double> loadFloor; ///< pressure of load 0 by supply [Pa]; see gasSettings()
    bool operator==(const Running&) const = default;
};

struct Snapshot;

/// Everything a person decides about an engine, in SI. A plain value.
struct Design {
    std::string title, notes;
    mechanism::Mechanism mechanism;
    Tracks tracks;
    ports::Rows ports;
    gas::Settings gas;
    Running running;
    loads::Friction friction;
    contact::Materials materials;
    contact::Lubricant lubricant;
    contact::RollerBearing rollerBearing;
    contact::ThrustBearing thrustBearing; ///< of a one-sided engine
    Reference reference;
    track::Blank trackBlank;
    Limits limits;
    std::vector<Schedule> schedules; ///< inputs that follow the speed; see atItsSpeed()
    Knowledge knowledge;             ///< origins and ranges of inputs; no stage looks at them
    std::vector<Snapshot> snapshots; ///< alternatives kept beside it; no stage looks at them
    bool operator==(const Design&) const = default;
};

/// A design as it was, kept under a name so that it can be compared and restored.
struct Snapshot {
    std::string name;  ///< not empty, no two alike
    std::string taken; ///< date and time of ISO 8601, "2026-03-01T14:05:00Z"; empty: not known
    Design design;     ///< without snapshots of its own
    bool operator==(const Snapshot&) const = default;
};

} // namespace lobewright::design
