#pragma once

#include "ui/base/palette.h"
#include "ui/scene/section/engine_frame.h"
#include "ui/scene/section/materials.h"

class QPainter;

namespace lobewright::ui {

/// Draws the section of the engine: what turns (shaft and track drums), what slides (pistons and
/// crossheads with their rollers) and what stands still (liner, belts, guide rails).
class EnginePainter {
  public:
    /// `named`: with the words that say what each does. `theta`: shaft angle at which cylinder 1 is
    /// where the cylinder drawn is [rad].
    EnginePainter(QPainter& painter, const ShownEngine& engine, const EngineFrame& frame,
                  const Palette& tones, double theta, bool named = true)
        : painter_(painter), engine_(engine), frame_(frame), tones_(tones), materials_(tones),
          theta_(theta), named_(named) {}

    void paint();
    /// The cylinder on the other side of the shaft, where one stands there, at its own angle.
    void paintOpposite(double theta);

  private:
    void paintShaft();
    void paintTurning();
    void paintFarDrum(End end);
    void paintCutDrum(End end);
    void paintDrumCut(End end, double angle, double side);
    void paintKey(End end);
    void paintCylinder(double theta);
    void paintRails(End end);
    void paintCrosshead(End end, double theta);
    void paintRoller(End end, double theta);
    void paintSliding(End end);
    void paintGasPush(End end);
    void paintGasWord();
    double pushShare() const;
    void fill(const QPolygonF& part, const QColor& tone, bool cut);
    QPolygonF polygon(std::initializer_list<QPointF> zAndRho) const;

    /// Measures of the crosshead along the cylinder from the roller axis, outward positive, and
    /// across it [m].
    struct Crosshead {
        double plateFrom, plateTo; ///< the plate that carries fork and shoes
        double block;              ///< where the block within the skirt begins
        double tip;                ///< end of the fork
        double shoe;               ///< end of the shoes
        double armIn, armOut;      ///< of a fork arm, from the middle
        double half;               ///< where the shoes slide
    };
    Crosshead crosshead() const;

    QPainter& painter_;
    const ShownEngine& engine_;
    const EngineFrame& frame_;
    const Palette& tones_;
    const Materials materials_;
    double theta_;
    bool named_;
};

} // namespace lobewright::ui
