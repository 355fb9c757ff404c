#pragma once

#include "ui/base/curve.h"
#include "ui/base/shown.h"
#include "ui/plots/study/study_pane.h"

#include <QHash>

#include <map>
#include <set>

class QCPAxis;
class QCPGraph;
class QCPItemRect;
class QCPItemStraightLine;
class QCustomPlot;
class QDoubleSpinBox;

namespace lobewright::ui {

class BandsBehind;
class KeptView;

/// Figures of many variants of the design against what is varied. The study runs in the background
/// and its points appear as they come; the newest design replaces one that still runs. Baseline
/// behind, the present setting marked, at most two units at a time. Where a roller lifts off or a
/// limit errs the plot is hatched: the engine cannot run there.
class StudyPlot : public StudyPane {
    Q_OBJECT

  public:
    void showSolution(const SolutionPointer& solution);
    /// Null: no baseline.
    void showBaseline(const SolutionPointer& baseline);

    /// Bands to lie behind figures against shaft speed; must outlive the plot.
    void setBands(BandsBehind& bands);

    /// Names of the figures shown.
    const QStringList& figures() const { return figures_; }
    void setFigures(const QStringList& figures);
    /// What is varied between, in the unit of the table; empty: follows the design.
    void setRange(const std::optional<std::pair<double, double>>& range);
    std::pair<double, double> range() const;
    /// Points so far, by parameter.
    const std::map<double, study::Point>& points() const { return now_.points; }
    const std::map<double, study::Point>& baselinePoints() const { return before_.points; }
    QCustomPlot& plot() const { return *plot_; }
    /// Points that could not be run, and why.
    const std::map<double, QString>& beyond() const { return beyond_; }
    /// What the readout shows now, in words.
    QString readoutText() const;

    void addOptions(QMenu& menu) override;
    virtual QString state() const;
    virtual void restoreState(const QString& state);

  Q_SIGNALS:
    void stateChanged();

  protected:
    StudyPlot(const QString& title, const QStringList& figures, QWidget* parent);

    virtual StudyRunner::Work work(const design::Design& design,
                                   std::pair<double, double> range) const = 0;
    /// Names of the values of a point, in their order.
    virtual std::vector<std::string> everyFigure(const design::Design& design) const = 0;
    /// "shaft speed, rpm"
    virtual QString axisLabel() const = 0;
    virtual double parameterOf(const design::Design& design) const = 0;
    virtual int pointsWanted() const = 0;
    const SolutionPointer& solution() const { return now_.solution; }
    virtual std::pair<double, double> ownRange(const design::Design& design) const = 0;
    virtual void addChoices(QMenu&) {}
    /// Another solution or range is shown.
    virtual void subjectChanged() {}

    /// Puts a widget between the plot and the line below it.
    void addBelow(QWidget* widget);
    /// Another parameter: nothing that is shown belongs to it.
    void startAnew();
    void refill() override;
    Count count() const override;

  private:
    /// One design's study.
    struct Run {
        StudyRunner runner;
        SolutionPointer solution;
        std::pair<double, double> range;
        std::vector<std::string> names; ///< of the values of the points
        std::map<double, study::Point> points;
        std::set<double> fresh; ///< parameters of those that the study that runs gave
        /// Of the values of a figure among those of the points; absent: there are none.
        std::optional<std::size_t> placeOf(const QString& figure) const;
    };
    bool isFarFromBefore(const Run& run, const study::Point& point) const;
    void watchRun(Run& run);
    void start(Run& run);
    void takePoint(Run& run, const study::Point& point);
    void takeTable(Run& run, const study::Table& table);
    void rangeTyped();
    void showRange();
    void toggle(const QString& figure, bool shown);
    void scaleAxes();
    void fill(QCPGraph& graph, const Run& run, const QString& figure) const;
    void addBand(const QString& figure, QCPAxis* axis);
    void findBeyond();
    void hatchBeyond();
    void listClipped(std::vector<ReadoutStrip::Item>& items) const;
    void readOutPlace(std::vector<ReadoutStrip::Item>& items, const study::Point* nearest) const;
    QString helpOn(const QString& figure);
    /// Why the point nearest to this place cannot run; empty: it can.
    QString reasonAt(double parameter) const;
    const study::Point* nearestTo(double parameter) const;
    QString valueWords(const QString& figure, const study::Point* nearest) const;
    void applyTones();
    void readOut(double parameter);
    QString labelOf(const QString& figure) const;
    QString unitOf(const QString& figure) const;
    const solution::Figure* figureOf(const QString& name) const;
    Tone toneOf(qsizetype place) const;

    QStringList figures_;
    std::optional<std::pair<double, double>> range_;
    Run now_, before_;
    QDoubleSpinBox *from_, *to_;
    QCustomPlot* plot_;
    KeptView* view_;
    QCPItemStraightLine* mark_;
    struct Graphs {
        QCPGraph *now, *before;
    };
    std::vector<Graphs> graphs_; ///< by figure
    struct Band {
        QCPGraph *outer, *inner;
        qsizetype figure;
    };
    std::vector<Band> bandGraphs_;
    BandsBehind* bands_ = nullptr;
    QHash<QString, QString> helps_; ///< what figures are, once asked for
    SolutionPointer helpsOf_;
    std::map<double, QString> beyond_;
    std::vector<QCPItemRect*> hatches_;
    std::vector<ReadoutStrip::Item> shown_; ///< above the plot
    double readAt_ = 0.0;
    bool pointing_ = false;
};

} // namespace lobewright::ui
