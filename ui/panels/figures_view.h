#pragma once

#include "ui/base/shown.h"

#include <QWidget>

class QCheckBox;
class QLineEdit;

namespace lobewright::ui {

class FiguresPanel;

/// The figures with a line to find some of them and, with a baseline, a choice of what changed.
class FiguresView : public QWidget {
    Q_OBJECT

  public:
    explicit FiguresView(QWidget* parent = nullptr);

    FiguresPanel& panel() { return *panel_; }
    void showSolution(const SolutionPointer& solution);
    void showBaseline(const SolutionPointer& baseline);

  private:
    QLineEdit* search_;
    QCheckBox* changedOnly_;
    FiguresPanel* panel_;
};

} // namespace lobewright::ui
