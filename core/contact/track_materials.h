#pragma once

#include "core/text/message.h"

#include <string>
#include <string_view>
#include <vector>

namespace lobewright::contact {

/// A track material with its heat treatment.
struct TrackMaterial {
    std::string key;              ///< as in the design file
    TextId label;                 ///< trade words
    double allowableStress = 0.0; ///< σ_allow of line contact [Pa]
    double cycles = 0.0;          ///< load cycles to which the figure refers
    std::string hardness;         ///< range for which it holds
    TextId source;
    std::string confidence; ///< how well the figure is supported
};

/// The table that is built in, in the order of the resource file.
const std::vector<TrackMaterial>& trackMaterials();
/// Null when the table has no such key.
const TrackMaterial* findTrackMaterial(std::string_view key);

} // namespace lobewright::contact
