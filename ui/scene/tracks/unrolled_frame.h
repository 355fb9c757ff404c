#pragma once

#include "ui/scene/base/shown_engine.h"

#include <QPointF>
#include <QPolygonF>
#include <QRectF>

#include <vector>

namespace lobewright::ui {

/// Both tracks unrolled at the pitch radius over one turn, to scale, seen from outside: the inlet
/// track above with its lift downwards, the exhaust track below with its lift upwards. u [rad] is
/// the shaft angle at which a roller at ring angle 0 stands there, so that the two rollers of a
/// cylinder share one u; it grows to the right, 0 … 2π.
class UnrolledFrame {
  public:
    UnrolledFrame() = default;
    /// `line`: height of a line of text [px].
    UnrolledFrame(const ShownEngine& engine, const QRectF& area, double line);
    static constexpr double leadBar = 12.0; ///< that the grip of the exhaust lead takes [px]

    double scale() const { return scale_; } ///< [px/m]
    double pixelsPerRadian() const { return scale_ * pitchRadius_; }
    double x(double u) const { return left_ + u * pixelsPerRadian(); }
    double u(double x) const { return (x - left_) / pixelsPerRadian(); }
    double left() const { return left_; }
    double right() const;
    int samples() const; ///< of a curve over the turn: one a pixel will do
    /// +1: inward is downwards on the screen.
    static double inward(End end) { return end == End::inlet ? 1.0 : -1.0; }
    /// Screen height of the roller axis at a lift [m].
    double y(End end, double lift) const { return zero_[end] + inward(end) * lift * scale_; }
    double blankFace(End end) const { return face_[end]; }
    /// Strip of the blank that no roller reaches, for the caption; in a very flat view it lies
    /// under the rollers.
    const QRectF& caption(End end) const { return caption_[end]; }
    /// Strip between the tracks for the angle axis and the open spans of the ports.
    const QRectF& middle() const { return middle_; }
    /// Strip beyond the blank for the dimension chain; empty when there is no room.
    const QRectF& chain(End end) const { return chain_[end]; }

    /// Pattern angle φ of a track at u [rad].
    double patternAngle(End end, double u) const { return u + lead_[end]; }
    double lead(End end) const { return lead_[end]; }
    QPointF axisPoint(End end, double u) const;

    /// Curves over the turn [px].
    QPolygonF pitchCurve(End end) const;
    QPolygonF surface(End end, bool pullFlank) const;

  private:
    const ShownEngine* engine_ = nullptr;
    double scale_ = 1.0;
    double pitchRadius_ = 0.0;
    double left_ = 0.0;
    PerEnd<double> zero_, face_, lead_;
    PerEnd<QRectF> chain_, caption_;
    QRectF middle_;
};

/// Stretches of u where a track asks for too much, with the worst values.
struct TrackLimits {
    struct Stretch {
        double from = 0.0, to = 0.0;
    };
    std::vector<Stretch> steep;        ///< pressure angle beyond the design's warning limit
    std::vector<Stretch> tooSteep;     ///< beyond the error limit
    std::vector<Stretch> undercut;     ///< relative radius ≤ 0 somewhere on the width
    double largestPressureAngle = 0.0; ///< at the pitch radius, the middle of the width [rad]
    double leastRelativeRadius = 0.0;  ///< over the width, flanks in use [m]; ≤ 0: undercut
    enum class Across { innerEdge, middle, outerEdge };
    Across leastRadiusAt = Across::middle; ///< where on the width that is
};
TrackLimits trackLimits(const ShownEngine& engine, const UnrolledFrame& frame, End end);

} // namespace lobewright::ui
