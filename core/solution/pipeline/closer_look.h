#pragma once

#include "core/contact/contact.h"
#include "core/loads/free_body.h"
#include "core/solution/solution.h"

#include <optional>

/// What a screen shows beside channels and figures, from the stages that a complete solution keeps.
/// Each is absent for a solution of Detail::figures.
namespace lobewright::solution {

/// The air's way from ambient to chamber: means over a turn.
struct SupplyPath {
    struct State {
        double pressure = 0.0, temperature = 0.0; ///< [Pa], [K]
    };
    gas::SupplyKind kind = gas::SupplyKind::reservoir;
    std::optional<gas::PumpFigures> pump; ///< instead of a compression to one pressure
    bool drawsUnderSkirt = false;         ///< a pump that its skirt opens, without a reed
    bool hasTransfer = false;             ///< `ready` is a volume between pump and ports
    bool compresses = false;              ///< false: nothing lies above ambient pressure
    State ambient;
    State compressed;            ///< behind blower or compressor, before any cooler
    std::optional<State> cooled; ///< behind the after-cooler; absent: no cooler
    State ready;                 ///< plenum or reservoir, before the inlet ports
    State trapped;               ///< chamber at the last port closing
    double power = 0.0;          ///< [W], ≥ 0
    bool paid = true;            ///< the shaft pays for it
    /// A compressor wheel: what stands behind it, where a blower follows, and what it takes [W].
    struct Wheel {
        std::optional<State> behind; ///< before a cooler that stands between
        std::optional<State> cooled; ///< behind it; absent: no cooler
        double power = 0.0;
    };
    std::optional<Wheel> wheel;
    /// The turbine that drives it.
    struct Turbine {
        State before, behind;               ///< exhaust plenum, and after the expansion
        double power = 0.0, friction = 0.0; ///< from the gas, lost in the bearings [W]
        bool isSustained = true;
    };
    std::optional<Turbine> turbine;
};
/// Absent when the gas could not be solved.
std::optional<SupplyPath> supplyPath(const Solution& solution);

/// contact::contactMap of one track.
std::optional<contact::ContactMap> contactMap(const Solution& solution, End end, int widths);

/// Lever arm −y' of a track at the samples, and that of a crank with the track's stroke and the
/// reference rod [m], which stands at its inner dead centre with the pair.
struct LeverArms {
    PerEnd<Samples> track;
    PerEnd<Samples> crank; ///< per angle of its own shaft, which turns once a cycle
    PerEnd<Samples>
        geared; ///< the same crank, geared to as many cycles per revolution as the track
};
LeverArms leverArms(const Solution& solution);

/// Bearing reactions on the shaft over the turn; absent too where the piston has no length, on
/// which the distance of the bearings rests.
std::optional<loads::ShaftReactions> shaftReactions(const Solution& solution);

/// Forces on a piston of cylinder 1 at the sample next to an angle [rad].
std::optional<loads::PistonPolygon> pistonPolygon(const Solution& solution, End end, double theta);

} // namespace lobewright::solution
