#pragma once

#include "ui/plots/study/study_plot.h"

namespace lobewright::ui {

/// Torque, power and other figures of the design against shaft speed.
class TorqueCurve : public StudyPlot {
    Q_OBJECT

  public:
    explicit TorqueCurve(QWidget* parent = nullptr);

  protected:
    StudyRunner::Work work(const design::Design& design,
                           std::pair<double, double> range) const override;
    const std::vector<std::string>& everyFigure() const override;
    QString axisLabel() const override;
    double parameterOf(const design::Design& design) const override;
    int pointsWanted() const override;
    double speedShare(double parameter) const override;
    std::pair<double, double> ownRange(const design::Design& design) const override;
};

} // namespace lobewright::ui
