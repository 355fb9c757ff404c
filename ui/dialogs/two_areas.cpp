#include "ui/dialogs/two_areas.h"

#include "ui/base/palette.h"
#include "ui/plots/base/plot_tones.h"

namespace lobewright::ui {

std::pair<QCPAxisRect*, QCPAxisRect*> stackTwoAreas(QCustomPlot& plot) {
    QCPLayoutGrid* grid = plot.plotLayout();
    grid->clear();
    auto* above = new QCPAxisRect(&plot);
    auto* below = new QCPAxisRect(&plot);
    grid->addElement(0, 0, above);
    grid->addElement(1, 0, below);
    grid->setRowStretchFactor(0, 3.0);
    grid->setRowStretchFactor(1, 2.0);
    auto* margins = new QCPMarginGroup(&plot);
    for (QCPAxisRect* area : {above, below})
        area->setMarginGroup(QCP::msLeft | QCP::msRight, margins);
    return {above, below};
}

QCPAxisRect* addAreaBetween(QCustomPlot& plot, QCPAxisRect& above, QCPAxisRect& below) {
    QCPLayoutGrid* grid = plot.plotLayout();
    auto* between = new QCPAxisRect(&plot);
    grid->take(&below);
    grid->addElement(1, 0, between);
    grid->addElement(2, 0, &below);
    grid->setRowStretchFactor(1, 2.0);
    grid->setRowStretchFactor(2, 2.0);
    between->setMarginGroup(QCP::msLeft | QCP::msRight, above.marginGroup(QCP::msLeft));
    return between;
}

QCPGraph* graphOn(QCustomPlot& plot, QCPAxisRect& area) {
    return plot.addGraph(area.axis(QCPAxis::atBottom), area.axis(QCPAxis::atLeft));
}

QCPLegend* legendAbove(QCustomPlot& plot) {
    QCPLayoutGrid* grid = plot.plotLayout();
    auto* legend = new QCPLegend;
    grid->insertRow(0);
    grid->addElement(0, 0, legend);
    grid->setRowStretchFactor(0, 0.001);
    legend->setLayer(QStringLiteral("legend"));
    legend->setFillOrder(QCPLayoutGrid::foColumnsFirst);
    legend->setBorderPen(Qt::NoPen);
    legend->setBrush(Qt::NoBrush);
    return legend;
}

void applyAreaTones(QCustomPlot& plot) {
    const Palette& tones = Palette::of(plot);
    plot.setBackground(tones.paper);
    for (int i = 0; i < plot.plotLayout()->elementCount(); ++i) {
        if (auto* legend = qobject_cast<QCPLegend*>(plot.plotLayout()->elementAt(i)))
            legend->setTextColor(tones.ink);
    }
    for (QCPAxisRect* area : plot.axisRects()) {
        for (QCPAxis* axis : area->axes()) {
            applyAxisTones(*axis, tones, axis->labelFont());
            axis->grid()->setZeroLinePen(tones.quiet);
        }
    }
}

} // namespace lobewright::ui
