#pragma once

#include "core/study/contours.h"
#include "ui/base/shown.h"
#include "ui/plots/study/study_pane.h"

#include <Eigen/Core>

#include <optional>
#include <vector>

class QCPColorMap;
class QCPColorScale;
class QCPCurve;
class QCPGraph;
class QCPRange;
class QCustomPlot;

namespace lobewright::ui {

/// The design over speed and load: a result as colour and contours over speed and brake torque,
/// below the full-load line. Solved in the background; rows of the map appear as they come.
class LoadMapPlot : public StudyPane {
    Q_OBJECT

  public:
    explicit LoadMapPlot(QWidget* parent = nullptr);

    void showSolution(const SolutionPointer& solution);
    void addOptions(QMenu& menu) override;
    QString state() const { return figure_; }
    void restoreState(const QString& state);
    /// Name of the result shown as contours.
    void setFigure(const QString& figure);
    QCustomPlot& plot() const { return *plot_; }
    /// What the strip says at a speed [1/min] and torque [N·m].
    QString readoutAt(double speed, double torque);

  Q_SIGNALS:
    void stateChanged();

  protected:
    void refill() override;
    Count count() const override;
    QString restingWords() const override;

  private:
    struct Figure {
        QString name, label, unit;
    };
    static const std::vector<Figure>& figures();
    const Figure& figure() const;
    QString labelOf(const Figure& figure) const; ///< of one track without its side
    void start();
    void takePoint(const study::Point& point);
    QCPRange valuesShown() const;
    void fillColours();
    void fillContours();
    void fillLines();
    void applyTones();
    void readOut(double speed, double torque);
    /// Of every grid place, shape (loads, speeds), in the unit shown; gaps NaN.
    Eigen::ArrayXXd values(const QString& name) const;
    double speedAt(double column) const;

    SolutionPointer solution_;
    StudyRunner runner_;
    QString figure_;
    double from_ = 0.0, to_ = 0.0;   ///< speeds [1/min]
    std::vector<std::string> names_; ///< of the values of the points
    std::vector<std::optional<study::Point>> points_;
    Eigen::ArrayXXd torque_, shown_; ///< as values()
    QCustomPlot* plot_;
    QCPColorMap* map_;
    QCPColorScale* scale_;
    QCPGraph *full_, *own_, *offTrack_;
    std::vector<QCPCurve*> contours_;
};

} // namespace lobewright::ui
