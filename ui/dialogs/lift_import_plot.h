#pragma once

#include "core/exchange/lift_import.h"
#include "ui/plots/base/custom_plot.h"

namespace lobewright::ui {

/// A lift table with the pattern made of it, its acceleration with the noise left in that, and what
/// is left between pattern and table.
class LiftImportPlot : public QCustomPlot {
    Q_OBJECT

  public:
    explicit LiftImportPlot(QWidget* parent = nullptr);

    /// The tolerance is drawn as the band that the residual shall keep.
    void setFit(const exchange::ImportedLift& lift);
    /// Graphs of the acceleration: the pattern's, and a standard deviation of noise above and
    /// below.
    QCPGraph& acceleration() const { return *acceleration_; }
    void clear();

  private:
    void applyTones();

    QCPAxisRect *above_ = nullptr, *middle_ = nullptr, *below_ = nullptr;
    QCPGraph *table_ = nullptr, *pattern_ = nullptr, *residual_ = nullptr, *upper_ = nullptr,
             *lower_ = nullptr, *acceleration_ = nullptr, *noisy_ = nullptr, *quieter_ = nullptr;
};

} // namespace lobewright::ui
