#pragma once

#include "core/track/roller.h"

#include <optional>

namespace lobewright::track {

/// The ring that a track is cut into. What is absent follows from the roller [own estimates]:
/// the face is a tenth of the roller's width wider than the contact at both edges; a closed track's
/// groove opens outward, with half a roller's width between bore and groove floor; a roller's width
/// of material stands behind each flank where it is thinnest.
struct Blank {
    std::optional<double> boreDiameter;    ///< [m]
    std::optional<double> outsideDiameter; ///< [m]
    std::optional<double> grooveDiameter;  ///< floor of the groove of a closed track [m]
    std::optional<double> backThickness;  ///< material below the lowest place of the push flank [m]
    std::optional<double> frontThickness; ///< above the highest place of the pull flank [m]
    bool operator==(const Blank&) const = default;
};

/// Material over the pull flank where that is highest [m].
inline double rimThickness(const Blank& blank, const Roller& roller) {
    return blank.frontThickness.value_or(roller.width);
}

} // namespace lobewright::track
