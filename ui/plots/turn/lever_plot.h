#pragma once

#include "ui/plots/turn/turn_plot.h"

class QLabel;

namespace lobewright::solution {
struct LeverArms;
}

namespace lobewright::ui {

/// Lever arm −y' of both tracks compared with a crank of equal stroke, geared to the same cycles
/// and on its own shaft, and what it teaches.
class LeverPlot : public TurnPlot {
    Q_OBJECT

  public:
    explicit LeverPlot(TurnCursor& cursor, QWidget* parent = nullptr);

  protected:
    void refill() override;

  private:
    /// What the curves teach, with this engine's numbers.
    QString lesson(const solution::LeverArms& arms) const;

    PerEnd<size_t> track_;
    size_t geared_, crank_;
    QLabel* lesson_; ///< below the curves
};

/// What the main bearings of the shaft carry over a turn.
class BearingPlot : public TurnPlot {
    Q_OBJECT

  public:
    explicit BearingPlot(TurnCursor& cursor, QWidget* parent = nullptr);

  protected:
    void refill() override;

  private:
    PerEnd<size_t> radial_;
    size_t thrust_;
    bool known_ = false;
};

} // namespace lobewright::ui
