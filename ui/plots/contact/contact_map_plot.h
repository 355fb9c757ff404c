#pragma once

#include "core/solution/pipeline/closer_look.h"
#include "ui/base/shown.h"
#include "ui/plots/base/custom_plot.h"
#include "ui/plots/base/turn_cursor.h"

class QMenu;

namespace lobewright::ui {

class HeadLine;

/// The contact of roller and track over shaft angle and width: stress, shear, film, λ or slip of
/// one side, with the worst place marked.
class ContactMapPlot : public QCustomPlot {
    Q_OBJECT

  public:
    enum class Quantity { pressure, shear, film, filmRatio, slip };
    /// The worst place: largest, or least where less is worse and something presses.
    struct Worst {
        double theta = 0.0;  ///< [rad]
        double offset = 0.0; ///< from the pitch radius, outward positive [m]
        double value = 0.0;  ///< in the unit shown
    };

    explicit ContactMapPlot(TurnCursor& cursor, QWidget* parent = nullptr);

    void showSolution(const SolutionPointer& solution);
    void addOptions(QMenu& menu);
    QString state() const;
    void restoreState(const QString& state);
    void show(End end, Quantity quantity);
    /// Absent where nothing presses.
    const std::optional<Worst>& worst() const { return worst_; }

  Q_SIGNALS:
    void stateChanged();

  private:
    void refill();
    void fill(const contact::ContactMap& map, const Eigen::ArrayXXd& values, double unit);
    void markWorst();
    void applyTones();
    void moveCursor();
    End shownEnd() const; ///< the chosen one, as far as the engine has it
    bool lessIsWorse() const;
    bool oneFilmPerContact() const; ///< there is a solution

    TurnCursor& cursor_;
    SolutionPointer solution_;
    End end_ = End::inlet;
    Quantity quantity_ = Quantity::pressure;
    std::optional<Worst> worst_;
    QCPColorMap* map_;
    QCPColorScale* scale_;
    QCPItemStraightLine* line_;
    QCPGraph* mark_;
    HeadLine* text_;
};

} // namespace lobewright::ui
