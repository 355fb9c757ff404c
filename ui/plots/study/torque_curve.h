#pragma once

#include "ui/plots/study/study_plot.h"

#include <vector>

namespace lobewright::ui {

class ContactRangeBox;

/// Torque, power and other figures of the design against shaft speed, and when asked the speeds
/// between which the rollers keep contact.
class TorqueCurve : public StudyPlot {
    Q_OBJECT

  public:
    explicit TorqueCurve(QWidget* parent = nullptr);

    ContactRangeBox& contact() { return *contact_; }
    /// Speeds marked where contact begins or ends [1/min].
    std::vector<double> marks() const;

  protected:
    StudyRunner::Work work(const design::Design& design,
                           std::pair<double, double> range) const override;
    const std::vector<std::string>& everyFigure() const override;
    QString axisLabel() const override;
    double parameterOf(const design::Design& design) const override;
    int pointsWanted() const override;
    double speedShare(double parameter) const override;
    std::pair<double, double> ownRange(const design::Design& design) const override;
    void subjectChanged() override;
    void changeEvent(QEvent* event) override;

  private:
    void markContact();

    ContactRangeBox* contact_;
    std::vector<QCPItemStraightLine*> marks_;
};

} // namespace lobewright::ui
