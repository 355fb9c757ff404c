#pragma once

#include "core/lessons/task.h"

#include <QWidget>

namespace lobewright::ui {

/// What makes up a change: one bar for each cause from where the one before ended, so that the last
/// ends at the answer; the guess is a line across all of them.
class CauseBars : public QWidget {
    Q_OBJECT

  public:
    explicit CauseBars(QWidget* parent = nullptr);

    /// Values in SI, shown in the unit of the task.
    void setCauses(const lessons::Task& task, const lessons::Verdict& verdict, double guess);
    void clear();

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return sizeHint(); }

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    struct Bar {
        QString words;
        double from = 0.0, to = 0.0; ///< SI
    };
    QString valueText(double si) const;
    double rowHeight() const;

    lessons::Task task_;
    std::vector<Bar> bars_;
    double guess_ = 0.0, answer_ = 0.0;
};

} // namespace lobewright::ui
