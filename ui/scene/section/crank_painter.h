#pragma once

#include "core/reference/crank_motion.h"
#include "ui/base/palette.h"
#include "ui/scene/section/section_frame.h"

class QPainter;

namespace lobewright::ui {

/// One piston on its crank, everything along the cylinder counted from its middle outward [m].
struct CrankSide {
    study::SliderCrank crank;
    double crown = 0.0;  ///< of the crown at inner dead centre
    double length = 0.0; ///< of the piston
    double shift = 0.0;  ///< of the adjuster, outward
    double radius = 0.0, rod = 0.0;

    static CrankSide of(const ShownEngine& engine, End end);
    double crownAt(double tau) const { return crown + shift + crank.stroke() - crank.at(tau).y; }
    double pinAt(double tau) const;
    double centre() const;
    double reach() const { return centre() + 1.35 * radius; }
};

/// Draws the pair on cranks below the section that it is compared with; no captions.
class CrankPainter {
  public:
    /// `cam`: bore, ports and liner of the section. `area`, `scale`: where the cranks are drawn and
    /// how large [px], [px/m]. `tau`: crank angles from inner dead centre [rad]. `gas`: in their
    /// own chamber.
    CrankPainter(QPainter& painter, const ShownEngine& engine, const SectionFrame& cam,
                 const Palette& tones, const QRectF& area, double scale, const PerEnd<double>& tau,
                 const std::optional<GasMoment>& gas);

    void paint();
    /// How far the row of this edge stands open, from its inner edge outward [m].
    static double openHeight(const ShownEngine& engine, End side, const ports::Row& row,
                             const PerEnd<double>& tau);

  private:
    void paintGas();
    void paintCrank(End end);
    void paintLiner();
    void paintPorts(End side, double wallTop);
    QPointF at(End end, double z, double t) const;

    QPainter& painter_;
    const ShownEngine& engine_;
    const SectionFrame& cam_;
    const Palette& tones_;
    QPointF middle_;
    double scale_;
    PerEnd<double> tau_;
    std::optional<GasMoment> gas_;
};

} // namespace lobewright::ui
