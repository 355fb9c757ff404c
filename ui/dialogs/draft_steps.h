#pragma once

#include "core/draft/draft.h"

#include <QWidget>

class QLabel;
class QTableWidget;

namespace lobewright::ui {

/// Every number of a draft with its range and origin, and below how the chosen one came about. A
/// person may type another in place of what a rule gives.
class DraftSteps : public QWidget {
    Q_OBJECT

  public:
    explicit DraftSteps(QWidget* parent = nullptr);

    /// Null: nothing. The draft must live as long as it is shown.
    void show(const draft::Draft* made);

  Q_SIGNALS:
    /// The person's own number for what this rule gives, in the unit of the step; nothing: the
    /// rule's again.
    void ownNumber(const std::string& rule, std::optional<double> number);

  private:
    void addRow(const draft::Step& step);
    void take(int row, int column);
    void explain(int row);

    const draft::Draft* made_ = nullptr;
    QTableWidget* table_;
    QLabel* working_;
    int row_ = -1;           ///< chosen by the person; stays over drafts made anew
    bool isFilling_ = false; ///< by the program, not by the person
};

} // namespace lobewright::ui
