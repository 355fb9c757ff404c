#pragma once

#include "ui/editing/edit.h"
#include "ui/plots/study/study_plot.h"

#include <vector>

namespace lobewright::ui {

class ContactRangeBox;
class ScheduleStrip;

/// Torque, power and other figures of the design against shaft speed; below them the inputs that
/// follow it, and when asked the speeds between which the rollers keep contact.
class TorqueCurve : public StudyPlot {
    Q_OBJECT

  public:
    explicit TorqueCurve(QWidget* parent = nullptr);

    ContactRangeBox& contact() { return *contact_; }
    /// Speeds marked where contact begins or ends [1/min].
    std::vector<double> marks() const;
    /// The design as it is edited, ahead of its solution.
    void showDesign(const design::Design& design);
    ScheduleStrip& strip() const { return *strip_; }

  Q_SIGNALS:
    void edited(const lobewright::ui::Edit& edit);
    void editFinished();
    /// The person wants an input to follow the speed; empty: one to be chosen.
    void scheduleWanted(const QString& input);

  protected:
    StudyRunner::Work work(const design::Design& design,
                           std::pair<double, double> range) const override;
    std::vector<std::string> everyFigure(const design::Design& design) const override;
    QString axisLabel() const override;
    double parameterOf(const design::Design& design) const override;
    int pointsWanted() const override;
    std::pair<double, double> ownRange(const design::Design& design) const override;
    void subjectChanged() override;
    void addChoices(QMenu& menu) override;

  private:
    void markContact();
    void alignStrip();

    ScheduleStrip* strip_;
    ContactRangeBox* contact_;
    std::vector<QCPItemStraightLine*> marks_;
};

} // namespace lobewright::ui
