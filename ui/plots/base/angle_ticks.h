#pragma once

#include "ui/plots/base/custom_plot.h"

#include <vector>

namespace lobewright::ui {

/// Ticks of a shaft angle axis in degrees, at steps a protractor has.
class ShaftTicks : public QCPAxisTicker {
  protected:
    double getTickStep(const QCPRange& range) override;
    int getSubTickCount(double step) override;
    QString getTickLabel(double tick, const QLocale& locale, QChar format, int precision) override;
};

/// Ticks at round cycle angles on an axis whose coordinates are shaft degrees. Also right where
/// the cycles of a turn are unequal.
class CycleTicks : public QCPAxisTicker {
  public:
    /// Shaft angles of every IDC [deg], ascending, and cycles a turn.
    void setCycles(std::vector<double> idcDegrees, int cyclesPerTurn);

  protected:
    double getTickStep(const QCPRange& range) override;
    QVector<double> createTickVector(double step, const QCPRange& range) override;
    QVector<double> createSubTickVector(int count, const QVector<double>& ticks) override;
    QString getTickLabel(double tick, const QLocale& locale, QChar format, int precision) override;

  private:
    double nearestCentre(double degrees) const;
    std::vector<double> centres_{0.0};
    int cycles_ = 1;
};

/// "−12", "7.5": an angle with a true minus sign and no needless digits.
QString degreesText(double degrees, int decimals = 1);

} // namespace lobewright::ui
