#pragma once

#include "core/study/phase_map.h"
#include "ui/plots/study/study_plot.h"

namespace lobewright::ui {

/// What turning one track does: figures of the design against exhaust lead or adjuster setting.
class PhasePlot : public StudyPlot {
    Q_OBJECT

  public:
    explicit PhasePlot(QWidget* parent = nullptr);

    study::PhaseParameter parameter() const { return parameter_; }
    void setParameter(study::PhaseParameter parameter);
    QString state() const override;
    void restoreState(const QString& state) override;

  protected:
    StudyRunner::Work work(const design::Design& design,
                           std::pair<double, double> range) const override;
    std::vector<std::string> everyFigure(const design::Design& design) const override;
    QString axisLabel() const override;
    double parameterOf(const design::Design& design) const override;
    int pointsWanted() const override;
    std::pair<double, double> ownRange(const design::Design& design) const override;
    void addChoices(QMenu& menu) override;

  private:
    study::PhaseParameter parameter_ = study::PhaseParameter::exhaustLead;
};

} // namespace lobewright::ui
