#pragma once

#include "core/exchange/lift_import.h"
#include "ui/plots/base/custom_plot.h"

namespace lobewright::ui {

/// A lift table with the pattern made of it, and below, what is left between the two.
class LiftImportPlot : public QCustomPlot {
    Q_OBJECT

  public:
    explicit LiftImportPlot(QWidget* parent = nullptr);

    /// `tolerance` [m] is drawn as the band that the residual shall keep.
    void setFit(const exchange::ImportedLift& lift, double tolerance);
    void clear();

  protected:
    void changeEvent(QEvent* event) override;

  private:
    void applyTones();

    QCPAxisRect *above_ = nullptr, *below_ = nullptr;
    QCPGraph *table_ = nullptr, *pattern_ = nullptr, *residual_ = nullptr, *upper_ = nullptr,
             *lower_ = nullptr;
};

} // namespace lobewright::ui
