#pragma once

#include "ui/scene/base/shown_engine.h"

#include <QString>

namespace lobewright::ui {

/// What happens in the chamber, as the trade names it.
enum class Phase {
    compression,
    burning,
    expansion,
    blowdown,      ///< exhaust ports open alone, before the inlet
    inletFirst,    ///< inlet ports open before the exhaust ports
    scavenging,    ///< both open
    afterCharge,   ///< inlet still open, exhaust closed
    exhaustRemains ///< exhaust still open, inlet closed
};

/// Phase of cylinder 1 at θ.
Phase phaseAt(const ShownEngine& engine, double theta);
QString phaseName(Phase phase);

} // namespace lobewright::ui
