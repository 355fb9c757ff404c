#pragma once

#include "core/mechanism/opposed_pair.h"

#include <QString>

#include <vector>

namespace lobewright::ui {

/// Cylinders in the order in which they reach inner dead centre within one period of the track,
/// beginning with cylinder 1.
struct FiringOrder {
    struct Moment {
        double theta = 0.0;         ///< shaft angle in [0, period) [rad]
        std::vector<int> cylinders; ///< from 0; several when they fire together
    };
    std::vector<Moment> moments; ///< in the order of rotation
    double period = 0.0;         ///< [rad]

    /// Interval between all neighbours [rad], 0 when they are not equal.
    double evenInterval() const;
    /// Place of a cylinder in the order, from 1; its first one if it fires more than once.
    int placeOf(int cylinder) const;
    /// "1 – 3 – 2", together "1+4 – 2+5".
    QString text() const;
};

FiringOrder firingOrder(const mechanism::OpposedPair& pair);

} // namespace lobewright::ui
