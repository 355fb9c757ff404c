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
    void paintGas();
    void paintFarPorts(End end);
    void paintPiston(End end);
    void paintLiner();
    void paintHead();
    bool cuts(End end, double side) const; ///< whether the ports of an end lie in this wall
    double aroundBore(End end, double share) const; ///< place of a port [rad]
    void paintPortFlow(End end);
    void paintRoller(End end);
    void paintForce(End end);
    void paintBaseline();
    void paintGap();
    QColor gasTone() const;
    QColor outline() const { return tones_.ink; }

    QPainter& painter_;
    const ShownEngine& engine_;
    const SectionFrame& frame_;
    const Palette& tones_;
    double theta_;
};

} // namespace lobewright::ui
