#pragma once

#include "core/result.h"

#include <span>
#include <string>
#include <vector>

/// Lengths, angles and curves read off a picture by clicking on it.
namespace lobewright::picture {

/// A place in the picture: to the right and down, in pixels.
struct Place {
    double x = 0.0, y = 0.0;
    bool operator==(const Place&) const = default;
};

/// How far the ends of a length may be off together [pixel].
inline constexpr double placing = 2.0;

/// What was read, with the range that the true value lies in.
struct Reading {
    double value = 0.0, low = 0.0, high = 0.0; ///< [m] or [rad]
};

/// How long a pixel is.
class Scale {
  public:
    /// From two places a known length apart [m]. Errors (path ""): the length is not positive, or
    /// the places lie so close that the scale would be off by more than a tenth.
    static Result<Scale> make(Place a, Place b, double length);

    double pixel() const { return pixel_; } ///< [m]
    /// Of every length: the scale was placed by hand too.
    double relativeError() const { return relativeError_; }
    /// A length of so many pixels.
    Reading length(double pixels) const;

  private:
    Scale(double pixel, double relativeError) : pixel_(pixel), relativeError_(relativeError) {}
    double pixel_, relativeError_;
};

/// The axis of the shaft through two places. They must not be one.
struct Axis {
    Place a, b;
};

Reading distance(const Scale& scale, Place a, Place b);
/// The part of a distance along the axis: a stroke in a section.
Reading along(const Scale& scale, const Axis& axis, Place a, Place b);
/// The part square to the axis: a bore in a section.
Reading across(const Scale& scale, const Axis& axis, Place a, Place b);
/// How far a place is off the axis: the pitch radius of a cylinder's centre line.
Reading fromAxis(const Scale& scale, const Axis& axis, Place place);
/// The circle through places on its edge, by least squares of their distances from it. Errors
/// (path ""): fewer than three, or all in a line.
struct Circle {
    Place centre;
    double radius = 0.0; ///< [pixel]
};
Result<Circle> circle(std::span<const Place> edge);
/// Between the arms from the corner to a and b, 0 … π [rad]. Errors (path ""): an arm shorter than
/// what the places may be off.
Result<Reading> angle(Place a, Place corner, Place b);

/// One reading of several of the same: their mean, with the wider of their spread and the widest of
/// their ranges. At least one.
Reading together(std::span<const Reading> readings);

/// A lobe traced along an unrolled track from one outer dead centre to the next, as a table of
/// angle [degrees] and lift [mm] that the lift import reads. The line from the first to the last
/// place is one repetition of `lobes` a turn; what lies beside it, on whichever side the most does,
/// is lift. Errors (path ""): fewer than five places, or they do not go on in one direction.
/// Smooth it to `traceTolerance`: as far as a hand strays from a line, so that its tremble is not
/// followed.
Result<std::string> liftTable(const Scale& scale, std::span<const Place> trace, int lobes);

/// Largest residual to be allowed where a traced lobe is smoothed [m].
double traceTolerance(const Scale& scale);

} // namespace lobewright::picture
