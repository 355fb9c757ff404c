#pragma once

#include "ui/plots/base/custom_plot.h"

#include <functional>
#include <utility>

namespace lobewright::ui {

/// Something of a plot's own that is painted in its pixels on one of its layers. Owned by the plot.
class PaintedLayer final : public QCPLayerable {
  public:
    using Paint = std::function<void(QCPPainter&)>;

    /// `inside`: clipped to the axes.
    PaintedLayer(QCustomPlot& plot, const char* layer, Paint paint, bool inside)
        : QCPLayerable(&plot, QLatin1String(layer)), paint_(std::move(paint)), inside_(inside) {}

  protected:
    void applyDefaultAntialiasingHint(QCPPainter* painter) const override {
        painter->setAntialiasing(true);
    }
    QRect clipRect() const override {
        return inside_ ? parentPlot()->axisRect()->rect() : parentPlot()->viewport();
    }
    void draw(QCPPainter* painter) override { paint_(*painter); }

  private:
    Paint paint_;
    bool inside_;
};

} // namespace lobewright::ui
