#include "ui/plots/base/plot_tones.h"

#include "ui/base/palette.h"
#include "ui/base/type_scale.h"
#include "ui/plots/base/custom_plot.h"
#include "ui/plots/base/plain_ticks.h"

namespace lobewright::ui {

void applyAxisTones(QCPAxis& axis, const Palette& tones, const QFont& letters) {
    for (const auto setPen : {&QCPAxis::setBasePen, &QCPAxis::setTickPen, &QCPAxis::setSubTickPen})
        (axis.*setPen)(QPen(tones.quiet, 1));
    axis.setTickLabelColor(tones.ink);
    axis.setLabelColor(tones.ink);
    axis.setTickLabelFont(letters);
    axis.setLabelFont(letters);
    axis.grid()->setPen(QPen(tones.grid, 1));
    axis.grid()->setZeroLinePen(QPen(tones.grid, 1));
}

void applyPlotTones(QCustomPlot& plot, const Palette& tones) {
    plot.setBackground(tones.paper);
    const QFont small = sized(plot.font(), TypeSize::small);
    for (QCPAxisRect* rect : plot.axisRects()) {
        for (QCPAxis* axis : rect->axes()) {
            usePlainTicks(*axis);
            applyAxisTones(*axis, tones, small);
        }
    }
}

} // namespace lobewright::ui
