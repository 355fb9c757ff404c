#pragma once

#include "ui/base/curve.h"
#include "ui/base/shown.h"
#include "ui/editing/edit.h"
#include "ui/plots/base/readout_strip.h"
#include "ui/plots/base/turn_events.h"
#include "ui/plots/turn/turn_canvas.h"

#include <QWidget>

#include <functional>
#include <vector>

class QMenu;

namespace lobewright::ui {

class BandsBehind;

/// A plot of some quantities over one shaft turn: curves now and in the baseline, values at the
/// cursor, marks at the events. What is plotted is the business of the classes derived from it.
class TurnPlot : public QWidget {
    Q_OBJECT

  public:
    TurnPlot(TurnCursor& cursor, const QString& title, QWidget* parent = nullptr);

    void showSolution(const SolutionPointer& solution);
    /// Null: no baseline.
    void showBaseline(const SolutionPointer& baseline);
    /// The quick stages of a design in a drag.
    void showGeometry(const GeometryPointer& geometry);

    /// Bands to lie behind curves that show channels; must outlive the plot.
    void setBands(BandsBehind& bands);

    const QString& title() const { return title_; }
    TurnCanvas& canvas() const { return *canvas_; }
    const std::vector<Curve>& curves() const { return curves_; }
    /// Choices of this plot, for the menu of its pane.
    virtual void addOptions(QMenu& menu);
    /// What addOptions() lets choose, as text to be kept between runs.
    virtual QString state() const { return {}; }
    virtual void restoreState(const QString&) {}

  Q_SIGNALS:
    void edited(const lobewright::ui::Edit& edit);
    void editFinished();
    /// A choice of addOptions() changed.
    void stateChanged();

  protected:
    /// Fills the curves from solution(), geometry() and baseline(); called after each change.
    virtual void refill() = 0;
    /// What the strip above the plot says besides the values at the cursor.
    virtual std::vector<ReadoutStrip::Item> remarks() const { return {}; }
    /// The range of values that must be seen, from the curves shown unless overridden.
    virtual QCPRange contentRange(bool onRight) const;

    const SolutionPointer& solution() const { return solution_; }
    const SolutionPointer& baseline() const { return baseline_; }
    /// Newest pair and ports; the ones of the solution unless a drag is ahead of it.
    const GeometryPointer& geometry() const { return geometry_; }
    /// The solution belongs to the geometry.
    bool isSolved() const { return solution_ && solvedGeometry_ == geometry_; }
    const Palette& tones() const { return canvas_->tones(); }

    size_t addCurve(const CurveLook& look);
    /// A curve for each side; `label`: what it is called, and where it is the only one.
    PerEnd<size_t> addSides(CurveLook look, QString (*label)(End, bool isOnly));
    void clearCurves();
    Curve& curve(size_t index) { return curves_[index]; }
    void setLook(size_t index, const CurveLook& look);
    /// Values in the unit of the look; they are kept and drawn as they are shown now.
    void setValues(size_t index, const Samples& theta, const Samples& values);
    void setBaselineValues(size_t index, const Samples& theta, const Samples& values);
    /// Values from channels of the same name of solution and baseline.
    void setFromChannel(size_t index, std::string_view name);
    /// Shaft angles and what stands there, in the metric unit of the look; empty: nothing.
    struct Line {
        Samples theta, values;
    };
    /// What `of` makes of the solution and of that of the baseline.
    void setFromSolutions(size_t index, const std::function<Line(const solution::Solution&)>& of);
    /// The same of their motion; of the baseline only what the engine itself has.
    void setFromGeometry(size_t index, const std::function<Line(const Geometry&)>& of);
    void setCurveVisible(size_t index, bool visible);
    void setSidesVisible(const PerEnd<size_t>& sides, bool visible);
    /// A choice of addOptions() was made.
    void takeChoice();
    /// Scales, redraws and reads out again.
    void finishRefill();

  private:
    void refresh();
    void applyPens();
    void readOut();
    const QString& labelOf(const CurveLook& look) const;
    void listReadout();
    QString eventAt(const QPointF& position) const;
    void paintBands(QCPPainter& painter) const;
    void listClipped(std::vector<ReadoutStrip::Item>& items) const;
    void paintMarks(QCPPainter& painter) const;
    void paintClipped(QCPPainter& painter, const Curve& curve) const;
    void paintLane(QCPPainter& painter) const;
    void paintRattles(QCPPainter& painter) const;
    void paintDots(QCPPainter& painter) const;
    void showMenu(const QPoint& globalPosition);

    QString title_;
    TurnCanvas* canvas_;
    ReadoutStrip* readout_;
    BandsBehind* bands_ = nullptr;
    std::vector<Curve> curves_;
    std::vector<size_t> readoutCurves_;
    SolutionPointer solution_, baseline_;
    GeometryPointer geometry_, solvedGeometry_, baselineGeometry_;
    std::vector<TurnEvent> events_;
    std::vector<Rattle> rattles_;
};

} // namespace lobewright::ui
