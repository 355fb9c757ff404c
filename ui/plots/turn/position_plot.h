#pragma once

#include "ui/plots/turn/motion_curve.h"
#include "ui/plots/turn/turn_plot.h"

namespace lobewright::ui {

class LiftHandles;

/// Where both pistons stand over the turn: lift from outer dead centre, port edges as lines below
/// which a port is uncovered, bounds and knots as handles. Velocity, acceleration or jerk can be
/// laid over it, with their jumps marked and the knots to be pulled on velocity and acceleration.
class PositionPlot : public TurnPlot {
    Q_OBJECT

  public:
    enum class Overlay { none, velocity, acceleration, jerk };

    explicit PositionPlot(TurnCursor& cursor, QWidget* parent = nullptr);

    LiftHandles& handles() const { return *handles_; }
    Overlay overlay() const { return overlay_; }
    void setOverlay(Overlay overlay);
    /// Of the derivative laid over the lift; empty without one.
    const std::vector<ShownJump>& jumps() const { return jumps_; }
    void addOptions(QMenu& menu) override;
    QString state() const override;
    void restoreState(const QString& state) override;

  protected:
    void refill() override;
    std::vector<ReadoutStrip::Item> remarks() const override;

  private:
    void fillDerivatives();
    void addKnotActions(QMenu& menu);
    void paintZero(QCPPainter& painter) const;
    void paintPortEdges(QCPPainter& painter) const;
    void paintJumps(QCPPainter& painter) const;
    LiftHandles* handles_;
    Overlay overlay_ = Overlay::none;
    PerEnd<size_t> lift_, derivative_;
    std::vector<ShownJump> jumps_;
};

} // namespace lobewright::ui
