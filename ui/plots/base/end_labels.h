#pragma once

#include "ui/plots/base/custom_plot.h"

#include <QColor>
#include <QString>

#include <vector>

namespace lobewright::ui {

/// Names of curves beside their right ends, in the margin, each in the colour of its curve. Where
/// ends are near one another the names move apart, and a line leads to each.
class EndLabels final : public QCPLayerable {
  public:
    struct Label {
        QString text;
        QColor colour;
        double key = 0.0, value = 0.0; ///< where the curve ends, in coordinates of the axes
    };
    explicit EndLabels(QCustomPlot& plot);

    /// Makes room for them at the right; none: the room is given back.
    void setLabels(std::vector<Label> labels);
    const std::vector<Label>& labels() const { return labels_; }

  protected:
    void applyDefaultAntialiasingHint(QCPPainter* painter) const override;
    void draw(QCPPainter* painter) override;

  private:
    std::vector<Label> labels_;
};

/// Heights apart by `apart` at least, as near as can be to what is wanted and within [top, bottom],
/// in the order of `wanted`.
std::vector<double> spreadOut(const std::vector<double>& wanted, double apart, double top,
                              double bottom);

} // namespace lobewright::ui
