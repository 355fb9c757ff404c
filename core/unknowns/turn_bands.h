#pragma once

#include "core/samples.h"
#include "core/unknowns/ensemble.h"

#include <array>
#include <map>
#include <string>

/// Bands of what is plotted over a turn.
namespace lobewright::unknowns {

/// A channel of all engines that run, shape (angles): values below which the shares
/// `bandShares` of them lie, in the unit of the channel. NaN where no engine has a value.
using ChannelBand = std::array<Samples, 5>;

struct TurnBands {
    Samples theta; ///< shaft angles [rad], 0 … 2π, every degree
    std::map<std::string, ChannelBand, std::less<>> channels; ///< by the name of the channel
    long engines = 0;                                         ///< that run
};

/// Engines that are enough for the edges of bands on a screen.
inline constexpr int turnSamples = 96;

/// All channels of the first `samples` engines of the sequence that `seed` draws, at the design's
/// own speed, on all cores; the same whatever their number. Keeps 4 bytes an engine, channel and
/// degree: some ten megabytes. Errors as computeEnsemble().
Result<TurnBands> turnBands(const design::Design& design, int samples, std::uint64_t seed,
                            Monitor& monitor);

} // namespace lobewright::unknowns
