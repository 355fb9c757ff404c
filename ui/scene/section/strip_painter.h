#pragma once

#include "ui/base/palette.h"
#include "ui/scene/section/engine_frame.h"
#include "ui/scene/section/materials.h"

class QPainter;

namespace lobewright::ui {

/// Draws the track that passes a roller, unrolled and seen from outside, with the force at the
/// contact and its two parts: along the cylinder, and round the shaft, which turns it.
class StripPainter {
  public:
    StripPainter(QPainter& painter, const ShownEngine& engine, const EngineFrame& frame,
                 const Palette& tones, double theta)
        : painter_(painter), engine_(engine), frame_(frame), tones_(tones), materials_(tones),
          theta_(theta) {}

    void paint(End end);
    /// A bar of a round force in the scale of the arrows, with its value, right-aligned in `row`.
    void paintForceScale(const QRectF& row);

  private:
    void paintTrack(End end);
    void paintMoving(End end);
    void paintRoller(End end);
    void paintForce(End end);
    double pixelsPerNewton() const; ///< 0 without forces
    QColor useful() const { return tones_.isDark ? QColor("#7fd39a") : QColor("#23703f"); }

    QPainter& painter_;
    const ShownEngine& engine_;
    const EngineFrame& frame_;
    const Palette& tones_;
    const Materials materials_;
    double theta_;
};

} // namespace lobewright::ui
