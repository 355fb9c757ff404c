#pragma once

#include "ui/base/shown.h"
#include "ui/plots/base/bar_table.h"
#include "ui/plots/study/energy_flow.h"

class QMenu;

namespace lobewright::ui {

/// Figures of the solution as a table with bars: a base for those who choose the figures.
class FigureBars : public BarTable {
    Q_OBJECT

  public:
    FigureBars(const QString& title, QWidget* parent);

    void showSolution(const SolutionPointer& solution);
    /// Null: no baseline.
    void showBaseline(const SolutionPointer& baseline);
    virtual void addOptions(QMenu& menu);

  protected:
    virtual std::vector<Section> sectionsOf(const solution::Solution& solution) const = 0;
    /// A figure with its baseline as a row.
    Row row(const solution::Figure& figure, Tone tone) const;
    const SolutionPointer& solution() const { return solution_; }
    const SolutionPointer& baseline() const { return baseline_; }
    void refill();

  private:
    SolutionPointer solution_, baseline_;
};

/// Where the heat of the fuel goes (first law over a mean cycle), and what friction takes: as
/// streams where all of them run one way and have room, else as bars.
class EnergyAudit : public FigureBars {
    Q_OBJECT

  public:
    explicit EnergyAudit(QWidget* parent = nullptr);

    void addOptions(QMenu& menu) override;
    void setAsBars(bool asBars);
    /// As it would be drawn now; none: bars are drawn.
    std::optional<FlowLayout> flow() const;

  protected:
    std::vector<Section> sectionsOf(const solution::Solution& solution) const override;
    void paintEvent(QPaintEvent* event) override;
    QString helpAt(const QPoint& at) const override;

  private:
    std::optional<EnergyFlow> streams() const;
    bool asBars_ = false;
};

/// Shaft orders of shaking force, rocking moments and torque; what would cancel the axial force;
/// speed fluctuation and the inertia it asks for.
class OrderBars : public FigureBars {
    Q_OBJECT

  public:
    explicit OrderBars(QWidget* parent = nullptr);

  protected:
    std::vector<Section> sectionsOf(const solution::Solution& solution) const override;

  private:
    Section remedySection(const solution::Solution& solution) const;
    Section fluctuationSection(const solution::Solution& solution) const;
};

} // namespace lobewright::ui
