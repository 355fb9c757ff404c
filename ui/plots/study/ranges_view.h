#pragma once

#include "ui/plots/study/bands_model.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QMenu;
class QProgressBar;
class QPushButton;
class QScrollArea;

namespace lobewright::ui {

class PairPlot;
class TolerancesForm;

/// What is not known of the design: each unknown with what is thought possible and, once published
/// figures have been searched for, what would have to be true for them to hold.
class RangesView : public QWidget {
    Q_OBJECT

  public:
    RangesView(BandsModel& model, QWidget* parent = nullptr);

    void showSolution(const SolutionPointer& solution);
    void addOptions(QMenu& menu);
    /// What was found of the published figures, in words.
    QString found() const;

  Q_SIGNALS:
    /// Someone wants to edit the input at this path.
    void fieldWanted(const QString& path);

  private:
    class Rows;

    void refill();
    void sayWork();
    QString requirementText() const;

    BandsModel& model_;
    QComboBox* purpose_;
    TolerancesForm* tolerances_;
    QPushButton *search_, *stop_;
    QProgressBar* progress_;
    QLabel *heading_, *found_;
    Rows* rows_;
    PairPlot* pair_;
    QScrollArea* scroll_;
};

} // namespace lobewright::ui
