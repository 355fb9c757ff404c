#pragma once

#include "core/study/operating_points.h"
#include "ui/base/shown.h"
#include "ui/plots/base/readout_strip.h"
#include "ui/plots/study/study_runner.h"

#include <QWidget>

#include <map>

class QLabel;
class QMenu;
class QToolButton;

namespace lobewright::ui {

class WheelPlot;

/// Where the compressor of the design runs over shaft speed, on the lines of its wheel. Solved in
/// the background; points appear as they come.
class CompressorPlot : public QWidget {
    Q_OBJECT

  public:
    explicit CompressorPlot(QWidget* parent = nullptr);

    void showSolution(const SolutionPointer& solution);
    void addOptions(QMenu& menu);
    static QString title();
    bool isBusy() const { return runner_.isBusy(); }
    WheelPlot& plot() const { return *plot_; }
    /// Solved points by shaft speed [1/min].
    const std::map<double, study::Point>& points() const { return points_; }
    /// What the line below says: the state of the study, or that there is no wheel.
    QString stateText() const;
    /// Shows the point that is nearest to a place, corrected flow [kg/s] and pressure ratio, and
    /// says it in words.
    QString readOut(double flow, double ratio);

  Q_SIGNALS:
    /// The person wants to take the wheel from a table.
    void wheelWanted();

  protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;

  private:
    /// What the study tells of a point.
    struct Run {
        double speed = 0.0, wheelSpeed = 0.0; ///< [1/min]
        double flow = 0.0;                    ///< corrected [kg/s]
        double ratio = 0.0, efficiency = 0.0, surgeMargin = 0.0;
    };
    std::optional<Run> runOf(const study::Point& point) const;
    bool hasWheel() const;
    void start();
    void refill();
    void sayState();

    SolutionPointer solution_;
    StudyRunner runner_;
    bool wanted_ = false, stopped_ = false;
    std::vector<std::string> names_; ///< of the values of the points
    std::map<double, study::Point> points_;
    QLabel* state_;
    QToolButton* stop_;
    ReadoutStrip* readout_;
    WheelPlot* plot_;
};

} // namespace lobewright::ui
