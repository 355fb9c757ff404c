#pragma once

#include "ui/base/shown.h"

#include <QWidget>

#include <vector>

class QToolButton;

namespace lobewright::ui {

/// The main figures in one line for the status bar; the difference to the baseline in the tooltip.
class FiguresBar : public QWidget {
    Q_OBJECT

  public:
    explicit FiguresBar(QWidget* parent = nullptr);

    void showSolution(const SolutionPointer& solution);
    void showBaseline(const SolutionPointer& baseline);

  Q_SIGNALS:
    /// The person wants to see how the figure of this name came about.
    void workingWanted(const QString& figure);

  private:
    void refill();
    /// "Needs 1.04 N·m to turn" of a motored engine whose brake value is negative; else empty.
    QString neededText(const solution::Figure& figure) const;
    SolutionPointer solution_, baseline_;
    std::vector<QToolButton*> labels_;
};

} // namespace lobewright::ui
