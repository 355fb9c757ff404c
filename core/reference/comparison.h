#pragma once

#include "core/design/design.h"
#include "core/monitor.h"
#include "core/result.h"
#include "core/samples.h"
#include "core/solution/solution.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

LW_TEXTS_OF(Core)

/// The engine beside what it would replace: the same pistons on cranks, and a conventional
/// four-stroke of the same displacement.
namespace lobewright::study {

/// What is made equal. Cranks stand there twice in any case: at the same shaft speed, and geared so
/// that the pistons run as fast.
enum class Basis {
    displacement,    ///< the four-stroke turns as fast
    displacedVolume, ///< … displaces as much volume a second
    pistonSpeed,     ///< … has the same mean piston speed
    power ///< turns as fast; every engine is enlarged (more equal cylinders) to the power
};
struct BasisWord {
    Basis basis;
    std::string_view key;
    TextId label;
};
inline constexpr BasisWord basisWords[] = {
    {Basis::displacement, "displacement", LW_TEXT("equal displacement, equal shaft speed")},
    {Basis::displacedVolume, "displaced-volume", LW_TEXT("equal volume displaced per second")},
    {Basis::pistonSpeed, "piston-speed", LW_TEXT("equal mean piston speed")},
    {Basis::power, "power", LW_TEXT("equal power, enlarged by cylinders")}};
TextId label(Basis basis);

enum class Compared {
    camTrack,
    cranksSameSpeed,       ///< at the shaft speed of the design
    cranksSamePistonSpeed, ///< geared by the cycles per turn
    fourStrokeAmbient,     ///< breathing ambient air
    fourStrokeSameSupply   ///< at the supply state of the design
};
std::string_view key(Compared engine); ///< "cam-track"
TextId label(Compared engine);         ///< "Cam track"

/// Curves of cylinder 1 and of the whole engine, referred to the output shaft.
struct ComparedCurves {
    /// Angle of one reciprocation from firing inner dead centre, −π … π, shape (samples) [rad]:
    /// cycle angle of a two-stroke, crank angle of a four-stroke.
    Samples strokeAngle;
    Samples lift;         ///< inlet-side (or only) piston [m]
    Samples speed;        ///< dy/dt [m/s]
    Samples acceleration; ///< [m/s²]
    Samples leverArm;     ///< torque on the output shaft by axial force, −dy/dθ [m]
    Samples pressure;     ///< [Pa]
    Samples volume;       ///< [m³]
    Samples turnAngle;    ///< of the output shaft, two turns, shape (turn samples) [rad]
    Samples totalTorque;  ///< whole engine on the output shaft [N·m]
};

/// Note of a loss that a fit of the whole friction contains without telling it apart.
inline constexpr TextId withinTheFit = LW_TEXT("within the fit");

/// One row. All rows of a comparison have the same figures in the same order.
struct ComparedEngine {
    Compared engine = Compared::camTrack;
    Message problem;                       ///< why it could not be solved; empty: solved
    std::vector<solution::Figure> figures; ///< group "comparison"; absent values say why
    std::optional<ComparedCurves> curves;  ///< absent with a problem

    const solution::Figure* figure(std::string_view name) const;
};

struct Comparison {
    Basis basis = Basis::displacement;
    double speed = 0.0;                  ///< of the design's shaft [rad/s]
    std::vector<ComparedEngine> engines; ///< in the order of Compared
};

/// The design and its references at the design's speed. Errors: the design is invalid or its own
/// gas cycle cannot be solved, or cancelled (path ""). A reference that cannot be solved is a row
/// with its problem. Stages of `previous` are taken over where they fit.
Result<Comparison> compare(const design::Design& design, Basis basis, Monitor& monitor,
                           const solution::Solution* previous = nullptr);

/// One comparison for each speed [rad/s, > 0], side by side on all processors. Errors as compare();
/// a speed at which the design itself has no solution is left out, unless none has one.
Result<std::vector<Comparison>> compareSpeeds(const design::Design& design,
                                              const std::vector<double>& speeds, Basis basis,
                                              Monitor& monitor);

/// RFC 4180, one line for each engine and speed: basis, engine, problem, then the figures by name.
/// Lines end with CR LF.
std::string comparisonCsv(const std::vector<Comparison>& comparisons);

} // namespace lobewright::study
