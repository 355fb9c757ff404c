#pragma once

#include "ui/plots/base/readout_strip.h"
#include "ui/plots/study/bands_model.h"

#include <QWidget>

#include <array>

class QCPAxisRect;
class QCPGraph;
class QCustomPlot;
class QLabel;
class QMenu;

namespace lobewright::ui {

/// Torque and power of all engines that the design may be, against speed: where 90 % and half of
/// them lie, the design as it is, and published points.
class BandsPlot : public QWidget {
    Q_OBJECT

  public:
    BandsPlot(BandsModel& model, QWidget* parent = nullptr);

    void showSolution(const SolutionPointer& solution) { model_.showSolution(solution); }
    void addOptions(QMenu& menu);
    QCustomPlot& plot() const { return *plot_; }
    /// What the strip below the plot says at a speed [1/min].
    QString readoutText() const;

  private:
    struct Panel {
        unknowns::CurveQuantity quantity;
        QCPAxisRect* rect = nullptr;
        QCPGraph *outerLow = nullptr, *outerHigh = nullptr, *innerLow = nullptr,
                 *innerHigh = nullptr, *middle = nullptr, *nominal = nullptr, *claimed = nullptr;
    };
    void addPanel(Panel& panel);
    void refill();
    void fill(Panel& panel, const std::vector<unknowns::CurvePoint>& points);
    void fillClaims(Panel& panel);
    void applyTones();
    void readOut(double speed);
    void sayState();
    bool isDesignOutside() const;

    BandsModel& model_;
    QLabel* state_;
    ReadoutStrip* readout_;
    QCustomPlot* plot_;
    std::array<Panel, 2> panels_;
    std::vector<unknowns::CurvePoint> points_;
    std::vector<ReadoutStrip::Item> shown_;
    double readAt_ = 0.0;
};

} // namespace lobewright::ui
