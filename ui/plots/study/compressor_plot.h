#pragma once

#include "ui/base/shown.h"
#include "ui/plots/study/study_pane.h"

#include <map>

namespace lobewright::ui {

class WheelPlot;

/// Where the compressor of the design runs over shaft speed, on the lines of its wheel. Solved in
/// the background; points appear as they come.
class CompressorPlot : public StudyPane {
    Q_OBJECT

  public:
    explicit CompressorPlot(QWidget* parent = nullptr);

    void showSolution(const SolutionPointer& solution);
    void addOptions(QMenu& menu) override;
    WheelPlot& plot() const { return *plot_; }
    /// Solved points by shaft speed [1/min].
    const std::map<double, study::Point>& points() const { return points_; }
    /// Shows the point that is nearest to a place, corrected flow [kg/s] and pressure ratio, and
    /// says it in words.
    QString readOut(double flow, double ratio);

  Q_SIGNALS:
    /// The person wants to take the wheel from a table.
    void wheelWanted();

  protected:
    void refill() override;
    Count count() const override;
    QString restingWords() const override;

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

    SolutionPointer solution_;
    StudyRunner runner_;
    std::vector<std::string> names_; ///< of the values of the points
    std::map<double, study::Point> points_;
    WheelPlot* plot_;
};

} // namespace lobewright::ui
