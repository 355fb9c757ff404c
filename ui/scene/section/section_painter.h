#pragma once

#include "ui/base/palette.h"
#include "ui/scene/section/section_frame.h"

class QPainter;

namespace lobewright::ui {

/// Draws the machine of a section at one angle of the cylinder shown; no captions, no handles.
class SectionPainter {
  public:
    SectionPainter(QPainter& painter, const ShownEngine& engine, const SectionFrame& frame,
                   const Palette& tones, double theta)
        : painter_(painter), engine_(engine), frame_(frame), tones_(tones), theta_(theta) {}

    void paint();

  private:
    void paintTrack(End end);
    void paintRod(End end);
    void paintRoller(End end);
    void paintForce(End end);
    void paintGap();

    QPainter& painter_;
    const ShownEngine& engine_;
    const SectionFrame& frame_;
    const Palette& tones_;
    double theta_;
};

} // namespace lobewright::ui
