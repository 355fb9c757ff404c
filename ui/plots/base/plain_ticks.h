#pragma once

#include "ui/plots/base/custom_plot.h"

namespace lobewright::ui {

/// Ticks of a value axis: true minus signs, and a zero that is 0 whatever the steps add up to.
class PlainTicks : public QCPAxisTicker {
  protected:
    QVector<double> createTickVector(double step, const QCPRange& range) override;
    QString getTickLabel(double tick, const QLocale& locale, QChar format, int precision) override;
};

/// Gives an axis that has QCustomPlot's own ticks plain ones.
void usePlainTicks(QCPAxis& axis);

} // namespace lobewright::ui
