#pragma once

#include "ui/plots/turn_plot.h"

namespace lobewright::ui {

class LiftHandles;

/// Where both pistons stand over the turn: lift from outer dead centre, port edges as lines below
/// which a port is uncovered, bounds and knots as handles. Velocity, acceleration or jerk can be
/// laid over it.
class PositionPlot : public TurnPlot {
    Q_OBJECT

  public:
    enum class Overlay { none, velocity, acceleration, jerk };

    explicit PositionPlot(TurnCursor& cursor, QWidget* parent = nullptr);

    LiftHandles& handles() const { return *handles_; }
    void setOverlay(Overlay overlay);
    void addOptions(QMenu& menu) override;
    QString state() const override;
    void restoreState(const QString& state) override;

  protected:
    void refill() override;

  private:
    void paintPortEdges(QCPPainter& painter) const;
    LiftHandles* handles_;
    Overlay overlay_ = Overlay::none;
    PerEnd<size_t> lift_, derivative_;
};

} // namespace lobewright::ui
