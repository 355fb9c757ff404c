#pragma once

#include "ui/plots/shown.h"

#include <QTreeWidget>

class QMenu;

namespace lobewright::ui {

/// Every figure of the summary in its group, with the difference to the baseline.
class FiguresPanel : public QTreeWidget {
    Q_OBJECT

  public:
    explicit FiguresPanel(QWidget* parent = nullptr);

    void showSolution(const SolutionPointer& solution);
    void showBaseline(const SolutionPointer& baseline);
    void addOptions(QMenu& menu);
    /// What a figure is: its name or remark, its formula in symbols, and where that is from.
    QString helpOn(const QString& figure) const;

  Q_SIGNALS:
    /// The person wants to see how the figure of this name came about.
    void workingWanted(const QString& figure);

  protected:
    /// Made when it is asked for: a drag fills the panel many times a second.
    bool viewportEvent(QEvent* event) override;

  private:
    void refill();
    QTreeWidgetItem* groupItem(const QString& key);
    SolutionPointer solution_, baseline_;
};

/// "62.4", "0.312", "2 105": four digits, as figures are quoted.
QString figureText(double value);

} // namespace lobewright::ui
