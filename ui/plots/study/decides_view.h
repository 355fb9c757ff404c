#pragma once

#include "ui/plots/study/bands_model.h"

#include <QWidget>

class QCPBars;
class QCPGraph;
class QCPItemStraightLine;
class QCPItemRect;
class QComboBox;
class QCustomPlot;
class QLabel;
class QMenu;

namespace lobewright::ui {

class BarTable;
struct Unit;

/// One result of all engines that the design may be: how its values are spread, which unknowns
/// decide it, and what to measure.
class DecidesView : public QWidget {
    Q_OBJECT

  public:
    DecidesView(BandsModel& model, QWidget* parent = nullptr);

    void showSolution(const SolutionPointer& solution) { model_.showSolution(solution); }
    void addOptions(QMenu& menu);
    QString state() const { return QString::fromStdString(model_.result()); }
    void restoreState(const QString& state);
    BarTable& bars() const { return *bars_; }
    /// What to measure, in words.
    QString advice() const;

  Q_SIGNALS:
    void stateChanged();

  private:
    void refill();
    void fillChoices();
    void fillHistogram(const unknowns::Ensemble& ensemble, std::size_t result);
    void fillBars(const unknowns::Ensemble& ensemble);
    QString publishedText(const std::string& result) const;
    void showPublished(const std::string& result, const Unit& unit);
    void applyTones();

    BandsModel& model_;
    QComboBox* results_;
    std::vector<std::string> listedFirst_; ///< results of published figures
    QLabel *band_, *advice_;
    QCustomPlot* plot_;
    QCPBars* columns_;
    QCPItemRect* inner_;
    QCPItemStraightLine* nominal_;
    QCPGraph* published_;
    BarTable* bars_;
};

} // namespace lobewright::ui
