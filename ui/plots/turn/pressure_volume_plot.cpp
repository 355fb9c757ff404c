#include "ui/plots/turn/pressure_volume_plot.h"

#include "ui/base/curve.h"
#include "ui/base/palette.h"
#include "ui/base/units.h"
#include "ui/plots/base/kept_view.h"
#include "ui/plots/base/plot_export.h"
#include "ui/plots/base/plot_tones.h"
#include "ui/plots/base/turn_events.h"

#include <QMenu>

#include <cmath>

namespace lobewright::ui {

namespace {

void fill(QCPCurve& curve, const SolutionPointer& solution) {
    QVector<QCPCurveData> points;
    const auto* volume = solution ? solution->channel("chamber_volume_cm3") : nullptr;
    const auto* pressure = solution ? solution->channel("pressure_bar") : nullptr;
    if (volume && pressure) {
        for (Eigen::Index i = 0; i < volume->values.size(); ++i)
            points.append({static_cast<double>(i), unitFor(*volume->unit).shown(volume->values[i]),
                           unitFor(*pressure->unit).shown(pressure->values[i])});
    }
    curve.data()->set(points, true);
}

} // namespace

PressureVolumePlot::PressureVolumePlot(TurnCursor& cursor, QWidget* parent)
    : QCustomPlot(parent), cursor_(cursor), view_(new KeptView(*this)) {
    setAccessibleName(tr("p–V diagram"));
    setMinimumSize(160, 120);
    before_ = new QCPCurve(xAxis, yAxis);
    now_ = new QCPCurve(xAxis, yAxis);
    addLayer(QStringLiteral("cursor"), layer(QStringLiteral("overlay")));
    layer(QStringLiteral("cursor"))->setMode(QCPLayer::lmBuffered);
    dot_ = addGraph();
    dot_->setName({});
    dot_->setLineStyle(QCPGraph::lsNone);
    dot_->setLayer(QStringLiteral("cursor"));
    readout_ = new QCPItemText(this);
    readout_->setLayer(QStringLiteral("cursor"));
    readout_->position->setType(QCPItemPosition::ptAxisRectRatio);
    readout_->position->setCoords(0.98, 0.04);
    readout_->setPositionAlignment(Qt::AlignRight | Qt::AlignTop);
    setInteractions(QCP::iRangeDrag | QCP::iRangeZoom);
    connect(this, &QCustomPlot::mouseDoubleClick, this, [this] { refill(); });
    connect(&Units::instance(), &Units::changed, this, &PressureVolumePlot::refill);
    connect(&cursor_, &TurnCursor::angleChanged, this, [this] {
        moveDot();
        layer(QStringLiteral("cursor"))->replot();
    });
    applyTones();
}

void PressureVolumePlot::showSolution(const SolutionPointer& solution) {
    solution_ = solution;
    refill();
}

void PressureVolumePlot::showBaseline(const SolutionPointer& baseline) {
    baseline_ = baseline;
    refill();
}

void PressureVolumePlot::refill() {
    xAxis->setLabel(axisText(tr("chamber volume"), QStringLiteral("cm³")));
    yAxis->setLabel(axisText(tr("pressure"), QStringLiteral("bar")));
    now_->setName(yAxis->label());
    before_->setName(tr("%1, baseline").arg(yAxis->label()));
    fill(*now_, solution_);
    fill(*before_, baseline_);
    scaleAxes();
    moveDot();
    replot(rpQueuedReplot);
}

void PressureVolumePlot::scaleAxes() {
    if (view_->isChosen())
        return;
    constexpr double room = 0.04;
    for (const auto along : {Qt::Horizontal, Qt::Vertical}) {
        showContent(along == Qt::Horizontal ? *xAxis : *yAxis,
                    contentRange(rangeOf(*now_, along), rangeOf(*before_, along)), room);
    }
}

void PressureVolumePlot::moveDot() {
    dot_->data()->clear();
    readout_->setText({});
    const auto* volume = solution_ ? solution_->channel("chamber_volume_cm3") : nullptr;
    const auto* pressure = solution_ ? solution_->channel("pressure_bar") : nullptr;
    if (!volume || !pressure)
        return;
    const double v = valueAt(solution_->theta, volume->values, cursor_.angle());
    const double p = valueAt(solution_->theta, pressure->values, cursor_.angle());
    if (!std::isfinite(v) || !std::isfinite(p))
        return;
    const Unit volumes = unitFor(*volume->unit), pressures = unitFor(*pressure->unit);
    dot_->addData(volumes.shown(v), pressures.shown(p));
    readout_->setText(quantityText(v, QStringLiteral("cm³")) + QStringLiteral(", ") +
                      quantityText(p, QStringLiteral("bar")));
}

void PressureVolumePlot::applyTones() {
    const Palette& tones = Palette::of(*this);
    applyPlotTones(*this, Palette::of(*this));
    now_->setPen(QPen(tones.ink, 1.8));
    before_->setPen(QPen(tones.baseline(tones.ink), 1.4));
    dot_->setScatterStyle(QCPScatterStyle(QCPScatterStyle::ssDisc, tones.cursor, 8));
    readout_->setColor(tones.ink);
    readout_->setFont(font());
}

void PressureVolumePlot::changeEvent(QEvent* event) {
    QCustomPlot::changeEvent(event);
    if (event->type() == QEvent::PaletteChange) {
        applyTones();
        replot(rpQueuedReplot);
    }
}

void PressureVolumePlot::addOptions(QMenu& menu) {
    menu.addAction(tr("Show the &whole cycle"), this, [this] {
        view_->release();
        refill();
    });
    menu.addSeparator();
    addPictureActions(menu, *this, accessibleName());
}

void PressureVolumePlot::contextMenuEvent(QContextMenuEvent* event) {
    QMenu menu(this);
    addOptions(menu);
    menu.exec(event->globalPos());
}

} // namespace lobewright::ui
