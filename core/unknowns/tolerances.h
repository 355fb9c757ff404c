#pragma once

#include "core/design/design.h"
#include "core/result.h"

#include <optional>

namespace lobewright::unknowns {

/// What the ranges of a study stand for.
enum class Purpose {
    unknown, ///< what is not known: the ranges that the design carries
    scatter, ///< what manufacture scatters: the tolerances below instead
    free     ///< what may still be chosen: the ranges of inputs with origin "chosen"
};

/// Half widths of what manufacture scatters, and how warm engines run [SI].
struct Tolerances {
    double lift = 0.05e-3;     ///< of a lobe [m]
    double portEdge = 0.1e-3;  ///< [m]
    double clearance = 0.1e-3; ///< between the pistons, cold [m]
    /// Block and track carrier warm up differently: absent, cold.
    struct Growth {
        double length = 0.0;            ///< between the two track planes [m]
        double blockTemperature = 0.0;  ///< [K]
        double shaftTemperature = 0.0;  ///< [K]
        double pistonTemperature = 0.0; ///< [K]
        double pistonLength = 0.0;      ///< roller axis to crown, of one piston [m]
        double blockExpansion = 23e-6;  ///< aluminium [1/K]
        double shaftExpansion = 12e-6;  ///< steel [1/K]
        double pistonExpansion = 21e-6; ///< aluminium with silicon [1/K]
    };
    std::optional<Growth> growth;
};

/// What growth from 293.15 K does to a design [m], ΔL = L·α·ΔT: the shaft moves the tracks apart,
/// the pistons grow towards each other, the block carries its ports outwards.
/// Change of the distance of the crowns at inner dead centre.
double clearanceGrowth(const Tolerances::Growth& growth);
/// Change of the distance of a port edge from the crown at outer dead centre. place: of the edge
/// from the middle of the cylinder [m], > 0.
double edgeGrowth(const Tolerances::Growth& growth, double place);

/// The design with the ranges that the purpose asks for in place of its own. For `scatter` the
/// values themselves are those of the warm engine; a tolerance of 0 leaves an input as it is.
/// Errors: growth or tolerances that no design has (path of the design with the rule).
Result<design::Design> withRangesFor(const design::Design& design, Purpose purpose,
                                     const Tolerances& tolerances = {});

} // namespace lobewright::unknowns
