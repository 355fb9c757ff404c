#pragma once

#include "core/gas/models/settings.h"
#include "ui/plots/base/custom_plot.h"
#include "ui/plots/base/end_labels.h"

#include <vector>

namespace lobewright::ui {

/// A compressor wheel: pressure ratio over corrected flow at several speeds, between its surge line
/// and its choke, with points measured or run laid over it.
class WheelPlot : public QCustomPlot {
    Q_OBJECT

  public:
    explicit WheelPlot(QWidget* parent = nullptr);

    /// At corrected speeds [rad/s]; the axes take in all that is drawn.
    void setWheel(const gas::Wheel& wheel, const std::vector<double>& speeds);
    void clearWheel();
    /// Places laid over the lines: corrected flow [kg/s] and pressure ratio.
    struct Place {
        double flow = 0.0, ratio = 0.0;
    };
    /// In their order, joined by a line; empty: none.
    void setOperatingLine(const std::vector<Place>& line);
    /// Points of a table, or the present operating point alone.
    void setPoints(const std::vector<Place>& points);
    int lineCount() const { return static_cast<int>(lines_.size()); }
    /// From surge to choke at each speed, the surge line, what is laid over.
    QCPCurve& surge() const { return *surge_; }
    QCPCurve& operatingLine() const { return *operating_; }
    QCPGraph& points() const { return *points_; }

  private:
    void fitAxes();
    void applyTones();

    std::vector<QCPCurve*> lines_;
    QCPCurve *surge_, *operating_;
    QCPGraph* points_;
    EndLabels* ends_;
    std::vector<EndLabels::Label> names_; ///< speeds of the lines
};

} // namespace lobewright::ui
