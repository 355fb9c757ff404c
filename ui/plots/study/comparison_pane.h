#pragma once

#include "ui/base/shown.h"
#include "ui/plots/study/comparison_plot.h"
#include "ui/plots/study/comparison_worker.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QMenu;
class QProgressBar;
class QSplitter;
class QToolButton;

namespace lobewright::ui {

class ComparisonTable;

class BandsBehind;

/// The design beside its references: the same pistons on cranks, and a four-stroke; a plot of what
/// the person chooses and a table of everything. Computed in the background.
class ComparisonPane : public QWidget {
    Q_OBJECT

  public:
    explicit ComparisonPane(QWidget* parent = nullptr);

    void showSolution(const SolutionPointer& solution);
    void showClaims(const std::vector<study::ClaimedPoint>& points);
    /// Bands to lie behind the cam-track engine; must outlive the pane.
    void setBands(BandsBehind& bands);
    void addOptions(QMenu& menu);
    /// Basis and quantity, as they are kept between runs.
    QString state() const;
    void restoreState(const QString& state);

    study::Basis basis() const;
    ComparedQuantity quantity() const;
    void setQuantity(ComparedQuantity quantity);
    ComparisonPlot& plot() { return *plot_; }
    ComparisonTable& table() { return *table_; }
    /// What could not be compared and why; empty: nothing.
    QString message() const;
    bool isBusy() const { return worker_.isBusy(); }

  Q_SIGNALS:
    void stateChanged();

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    void buildBar();
    void request();
    void arrived(const ComparisonWorker::Comparisons& comparisons);
    void showBusy(bool busy);
    void backToShown();
    void sayWhatIsShown();
    void shareRoom();

    /// What a comparison is of.
    struct Wish {
        SolutionPointer solution;
        study::Basis basis = study::Basis::displacement;
        ComparedQuantity quantity = ComparedQuantity::position;
        bool operator==(const Wish&) const = default;
    };
    Wish wanted_, shown_;

    ComparisonWorker worker_;
    SolutionPointer solution_;
    BandsBehind* bands_ = nullptr;
    QComboBox *basis_, *quantity_;
    QLabel *heading_, *message_;
    QProgressBar* progress_;
    QToolButton* cancel_;
    QSplitter* split_;
    ComparisonPlot* plot_;
    ComparisonTable* table_;
};

} // namespace lobewright::ui
