#pragma once

#include "ui/base/palette.h"
#include "ui/scene/section/materials.h"
#include "ui/scene/section/section_frame.h"

class QPainter;

namespace lobewright::ui {

/// Draws one cylinder in section at one angle: liner, ports and belts, head, gas and pistons,
/// without what drives them.
class CylinderPainter {
  public:
    CylinderPainter(QPainter& painter, const ShownEngine& engine, const SectionFrame& frame,
                    const Palette& tones, double theta)
        : painter_(painter), engine_(engine), frame_(frame), tones_(tones), materials_(tones),
          theta_(theta) {}

    /// From the back to the front: what the pistons cover, the pistons, what covers them.
    void paintBehind();
    void paintPiston(End end);
    void paintAround();

    /// How far a belt stands out of the liner, of half the bore.
    static constexpr double beltShare = 0.3;

  private:
    void paintBaseline();
    void paintGas();
    void paintFarPorts(End end);
    void paintRings(End end);
    void paintBelt(End end, double side);
    void paintLiner();
    /// The row that the skirt uncovers, where the pump has one.
    void paintSkirtIntake();
    void paintHead();
    void paintPortFlow(End end);
    void paintPlug();
    double flash() const;                  ///< 1 at the start of combustion, falling to 0
    bool cuts(End end, double side) const; ///< whether the ports of an end lie in this wall
    double aroundBore(End end, double share) const; ///< place of a port [rad]
    struct Span {
        double inner, outer; ///< z [m]
    };
    Span rowsOf(End end) const;
    /// Where the row under the skirt of a piston that pumps lies; absent where it has none.
    std::optional<Span> skirtRowOf(End end) const;
    struct Flow {
        bool inward;
        double share; ///< of the largest flow through any port, 0 … 1
    };
    std::optional<Flow> flowThrough(End end, double open) const;

    QPainter& painter_;
    const ShownEngine& engine_;
    const SectionFrame& frame_;
    const Palette& tones_;
    const Materials materials_;
    double theta_;
};

} // namespace lobewright::ui
