#pragma once

#include "core/motion/pattern.h"
#include "core/result.h"

#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

namespace lobewright::exchange {

/// No lift table is larger [bytes].
inline constexpr std::uintmax_t largestLiftTable = std::uintmax_t{16} << 20;

/// One row of a lift table with what the pattern made of it makes there.
struct ImportedRow {
    double angle = 0.0;    ///< as in the table [rad]
    double lift = 0.0;     ///< as in the table [m]
    double residual = 0.0; ///< pattern less table, after the shift that the pattern's zero asks [m]
    double acceleration = 0.0; ///< y'' of the pattern there [m/rad²]
};

/// A lift table turned into a free-form lobe.
struct ImportedLift {
    motion::Pattern pattern;
    std::vector<ImportedRow> rows;
    double largestResidual = 0.0;   ///< magnitude [m]
    double angle = 0.0;             ///< where it is [rad]
    double meanSquareRoot = 0.0;    ///< root of the mean squared residual [m]
    bool withinTolerance = false;   ///< false: the closest that the allowed knots could follow
    double tolerance = 0.0;         ///< that asked for, given or proposed [m]
    double noise = 0.0;             ///< standard deviation of one row, measured [m]
    double proposedTolerance = 0.0; ///< above that noise [m]
    double accelerationNoise = 0.0; ///< what of it is left in y'' of the pattern [m/rad²]
};

/// Tolerance proposed where the table is not noisier [m].
inline constexpr double finestProposal = 5e-6;

struct ImportOptions {
    int lobes = 0;          ///< repetitions a turn; 0: as the table says or shows
    double tolerance = 0.0; ///< largest residual allowed [m]; 0: as proposed
    int mostKnots = 120;    ///< ≥ 3
};

/// Reads a table of angle [degrees] and lift [mm] over one repetition of the pattern or over a
/// whole turn and smooths a spline through it. How often the pattern repeats is read from the
/// comments of a table that this program wrote, else from the span of the rows, or where they cover
/// a turn from where they say the same again, as nearly as the noise measured in them lets it be
/// seen. Without a tolerance the largest residual that this noise explains is allowed, at least
/// `finestProposal`: closer, and the fit follows the noise. Fitted is the first repetition; every
/// row is judged. Columns are separated by semicolons or tabs, else by commas, else by blanks; with
/// semicolons and tabs decimal commas are understood. Lines that begin with "#", empty lines and
/// one line of names are skipped; further columns are ignored. Errors: a row that is not two
/// numbers ("/lines/12"), a span that is no whole part of a turn
/// ("/lobes"), and those of motion::fitKnots, which count rows from 0 ("/rows/11/angle_deg").
Result<ImportedLift> importLift(std::string_view text, const ImportOptions& options);

} // namespace lobewright::exchange
