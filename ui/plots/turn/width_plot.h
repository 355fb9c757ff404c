#pragma once

#include "core/track/track.h"
#include "ui/plots/turn/motion_curve.h"
#include "ui/plots/turn/turn_plot.h"

#include <array>

namespace lobewright::ui {

/// One quantity of the contact at inner edge, middle and outer edge of the roller of one side over
/// the turn. All but pressure × slip follow a drag before anything is solved.
class WidthPlot : public TurnPlot {
    Q_OBJECT

  public:
    enum class Quantity {
        pressureAngle,  ///< α(ρ) [deg]
        relativeRadius, ///< of roller and track, the smaller of the flanks in use [mm]
        undercutMargin, ///< how much larger the roller may be there [mm]
        slip,           ///< of the roller's surface on the track [m/s]
        pressureSlip    ///< nominal pressure × slip at the same place [W/mm²]
    };

    WidthPlot(TurnCursor& cursor, Quantity quantity, QWidget* parent = nullptr);

    void setEnd(End end);
    End end() const { return end_; }
    /// The worst value over turn and width: largest magnitude, or least radius or margin; absent
    /// where there is none.
    struct Worst {
        double value = 0.0; ///< in the unit shown
        double theta = 0.0; ///< [rad]
        int station = 0;    ///< 0 inner edge, 1 middle, 2 outer edge
    };
    const std::optional<Worst>& worst() const { return worst_; }

    void addOptions(QMenu& menu) override;
    QString state() const override;
    void restoreState(const QString& state) override;

  protected:
    void refill() override;
    std::vector<ReadoutStrip::Item> remarks() const override;
    QCPRange contentRange(bool onRight) const override;

  private:
    void relabel();
    bool isOneSided() const;
    bool lessIsWorse() const;
    /// At a place across the width.
    Samples valuesOf(const Geometry& geometry, const motion::LiftSamples& lift,
                     size_t station) const;
    void fillFromGeometry();
    void fillFromSolution();
    void findWorst();
    void refineLeastRadius();
    void paintLimits(QCPPainter& painter) const;

    Quantity quantity_;
    End end_ = End::inlet;
    std::array<size_t, 3> curves_{};
    std::optional<Worst> worst_;
};

} // namespace lobewright::ui
