#pragma once

#include "ui/base/shown.h"
#include "ui/plots/base/custom_plot.h"
#include "ui/plots/base/turn_cursor.h"

#include <optional>

class QMenu;

namespace lobewright::ui {

class HeadLine;
class KeptView;

/// Pressure over chamber volume of cylinder 1: the work of a cycle shaded, which way it runs, its
/// events, the point at the cursor and the baseline.
class PressureVolumePlot : public QCustomPlot {
    Q_OBJECT

  public:
    explicit PressureVolumePlot(TurnCursor& cursor, QWidget* parent = nullptr);

    void showSolution(const SolutionPointer& solution);
    void showBaseline(const SolutionPointer& baseline);
    void addOptions(QMenu& menu);

  private:
    void refill();
    void scaleAxes();
    void applyTones();
    void moveDot();
    /// Of the channels at a shaft angle, as they are shown; none: not solved there.
    std::optional<QPointF> pointAt(double theta) const;
    void paintEvents(QCPPainter& painter) const;
    void paintDirection(QCPPainter& painter) const;
    QString words(double volume, double pressure) const;

    TurnCursor& cursor_;
    SolutionPointer solution_, baseline_;
    QCPCurve *work_, *now_, *before_;
    QCPGraph* dot_;
    HeadLine* readout_;
    KeptView* view_;
};

} // namespace lobewright::ui
