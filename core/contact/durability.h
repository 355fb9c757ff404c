#pragma once

#include "core/contact/contact.h"

/// What a track and its roller stand, from the worst places and the load history.
namespace lobewright::contact {

struct Allowable {
    double stress = 0.0; ///< σ_allow [Pa]
    std::optional<double> cycles;
};
/// Error: material not in the table and no allowable stress given ("/materials/track").
Result<Allowable> allowable(const Materials& materials);

/// Error: no width is left ("/mechanism/roller/edge_relief_mm"). [m]
Result<double> loadedWidth(const mechanism::Mechanism& mechanism);

/// Safety, passes and life of a track whose highest pressure is known.
void addDurability(TrackContact& track, const Inputs& inputs, End end, const Allowable& limit);

} // namespace lobewright::contact
