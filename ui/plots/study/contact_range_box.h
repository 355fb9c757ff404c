#pragma once

#include "core/study/contact_ranges.h"
#include "ui/base/background_work.h"
#include "ui/base/shown.h"

#include <QWidget>

#include <optional>

class QLabel;
class QToolButton;

namespace lobewright::ui {

/// Finds the speeds at which the rollers keep contact, beside the window and only when asked, and
/// says them in a line.
class ContactRangeBox : public QWidget {
    Q_OBJECT

  public:
    explicit ContactRangeBox(QWidget* parent = nullptr);

    /// What is asked about next; what was found for another engine or other speeds goes.
    void setSubject(const SolutionPointer& solution, std::pair<double, double> speeds);
    const std::optional<study::ContactRanges>& found() const { return found_; }
    bool isBusy() const { return work_.isBusy(); }
    QString text() const;

  Q_SIGNALS:
    void changed();

  private:
    void find();
    void say(const QString& text, const QString& more);

    SolutionPointer solution_;
    std::pair<double, double> speeds_{0.0, 0.0}; ///< [1/min]
    std::optional<study::ContactRanges> found_;
    QToolButton* find_;
    QLabel* answer_;
    BackgroundWork work_;
};

} // namespace lobewright::ui
