#pragma once

#include "core/units.h"

namespace lobewright::design {

/// A conventional four-stroke with poppet valves, of the displacement of the engine it is compared
/// with. Valve angles count from the dead centre of their name. Defaults: own estimates on the
/// typical values of Heywood 1988, ch. 6 (from memory).
struct FourStroke {
    int cylinders = 0; ///< 0: as many as the engine it is compared with
    double strokeToBore = 1.0;
    double compressionRatio = 10.5;
    int inletValves = 2; ///< a cylinder
    int exhaustValves = 2;
    double inletSeat = 0.36; ///< inner seat diameter by bore
    double exhaustSeat = 0.31;
    double valveLift = 0.25; ///< largest lift by inner seat diameter
    double dischargeCoefficient = 0.65;
    double inletOpens = 15.0 * units::degree;    ///< before top dead centre [rad]
    double inletCloses = 50.0 * units::degree;   ///< after bottom dead centre [rad]
    double exhaustOpens = 50.0 * units::degree;  ///< before bottom dead centre [rad]
    double exhaustCloses = 15.0 * units::degree; ///< after top dead centre [rad]
    bool bestTorque = true;                   ///< start of burn searched for the highest net work
    double burnStart = -20.0 * units::degree; ///< from firing top dead centre [crank rad]
    bool operator==(const FourStroke&) const = default;
};

/// What an engine is compared with.
struct Reference {
    double rodRatio = 0.28;          ///< crank radius by rod length [own estimate]
    double crankBearingFmep = 0.2e5; ///< of the pair on cranks [Pa] [own estimate]
    FourStroke fourStroke;
    bool operator==(const Reference&) const = default;
};

} // namespace lobewright::design
