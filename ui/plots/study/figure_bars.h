#pragma once

#include "ui/base/shown.h"
#include "ui/plots/base/bar_table.h"

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
    void addOptions(QMenu& menu);

  protected:
    virtual std::vector<Section> sectionsOf(const solution::Solution& solution) const = 0;
    /// A figure with its baseline as a row.
    Row row(const solution::Figure& figure, Tone tone) const;
    /// The value of a figure; absent when there is none.
    static std::optional<double> valueOf(const SolutionPointer& solution, std::string_view name);
    const SolutionPointer& baseline() const { return baseline_; }
    void refill();
    void contextMenuEvent(QContextMenuEvent* event) override;

  private:
    SolutionPointer solution_, baseline_;
};

/// Where the heat of the fuel goes (first law over a mean cycle), and what friction takes.
class EnergyAudit : public FigureBars {
    Q_OBJECT

  public:
    explicit EnergyAudit(QWidget* parent = nullptr);

  protected:
    std::vector<Section> sectionsOf(const solution::Solution& solution) const override;
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
