#pragma once

#include "core/ends.h"
#include "core/motion/knot_fit.h"
#include "ui/plots/base/custom_plot.h"

namespace lobewright::ui {

/// What a track loses when it is turned into knots: the acceleration before and after, where most
/// of it shows, and below, what is left between the lifts.
class KnotFitPlot : public QCustomPlot {
    Q_OBJECT

  public:
    explicit KnotFitPlot(QWidget* parent = nullptr);
    /// The side whose hue the curves have.
    void setEnd(End end);

    /// ω [rad/s] scales the acceleration.
    void show(const motion::LiftCurve& before, const motion::LiftCurve& after,
              const motion::KnotShape& knots, double omega);
    using QWidget::show;

  private:
    void fillAccelerations(const motion::LiftCurve& before, const motion::LiftCurve& after,
                           double omega);
    void applyTones();

    QCPAxisRect *above_ = nullptr, *below_ = nullptr;
    QCPGraph *before_ = nullptr, *after_ = nullptr, *knots_ = nullptr, *deviation_ = nullptr;
    End end_ = End::inlet;
};

} // namespace lobewright::ui
