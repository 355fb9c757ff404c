#include "ui/plots/study/comparison_plot.h"

#include "core/units.h"
#include "ui/base/core_text.h"
#include "ui/base/curve.h"
#include "ui/base/palette.h"
#include "ui/base/units.h"
#include "ui/base/watching.h"
#include "ui/plots/base/bands_behind.h"
#include "ui/plots/base/end_labels.h"
#include "ui/plots/base/kept_view.h"
#include "ui/plots/base/low_frames.h"
#include "ui/plots/base/plot_tones.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <utility>

namespace lobewright::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(ComparisonPlot)
};

constexpr std::size_t engineCount = 5;
/// Of the claimed points, in their order.
constexpr QCPScatterStyle::ScatterShape marks[] = {
    QCPScatterStyle::ssCrossSquare, QCPScatterStyle::ssPlusCircle, QCPScatterStyle::ssDiamond};
constexpr double rpm = units::revPerMinute;

QVector<double> vectorOf(const Samples& samples) {
    return QVector<double>(samples.begin(), samples.end());
}

struct Ordinate {
    QString quantity;
    QString unit; ///< metric
    double si;    ///< one of that unit in SI
    /// Over a reciprocation or two turns [SI]; over speed the figure of this name instead.
    Samples study::ComparedCurves::*values;
    const char* figure = nullptr;
};

/// In the order of the quantities.
const Ordinate& ordinateOf(ComparedQuantity quantity) {
    using Curves = study::ComparedCurves;
    const auto torque = QStringLiteral("N·m");
    static const Ordinate all[] = {
        {Words::tr("lift"), QStringLiteral("mm"), units::millimetre, &Curves::lift},
        {Words::tr("lever arm on the output shaft"), QStringLiteral("mm"), units::millimetre,
         &Curves::leverArm},
        {Words::tr("pressure"), QStringLiteral("bar"), units::bar, &Curves::pressure},
        {Words::tr("pressure"), QStringLiteral("bar"), units::bar, &Curves::pressure},
        {Words::tr("torque of the engine"), torque, 1.0, &Curves::totalTorque},
        {Words::tr("piston speed"), QStringLiteral("m/s"), 1.0, &Curves::speed},
        {Words::tr("piston acceleration"), QStringLiteral("m/s²"), 1.0, &Curves::acceleration},
        {Words::tr("brake torque"), torque, 1.0, nullptr, "brake_torque_Nm"},
        {Words::tr("brake power"), QStringLiteral("kW"), units::kilowatt, nullptr,
         "brake_power_kW"}};
    return all[static_cast<std::size_t>(quantity)];
}

} // namespace

const std::vector<ComparedQuantityWord>& comparedQuantities() {
    static const std::vector<ComparedQuantityWord> words = {
        {ComparedQuantity::torque, "torque", Words::tr("Torque over two revolutions")},
        {ComparedQuantity::position, "position", Words::tr("Piston position")},
        {ComparedQuantity::leverArm, "lever-arm", Words::tr("Lever arm")},
        {ComparedQuantity::pressure, "pressure", Words::tr("Pressure")},
        {ComparedQuantity::pressureVolume, "pressure-volume", Words::tr("p–V diagram")},
        {ComparedQuantity::speed, "piston-speed", Words::tr("Piston speed")},
        {ComparedQuantity::acceleration, "acceleration", Words::tr("Piston acceleration")},
        {ComparedQuantity::torqueCurve, "torque-curve", Words::tr("Torque against speed")},
        {ComparedQuantity::powerCurve, "power-curve", Words::tr("Power against speed")}};
    return words;
}

bool isSpeedCurve(ComparedQuantity quantity) {
    return ordinateOf(quantity).figure != nullptr;
}

ComparisonPlot::ComparisonPlot(QWidget* parent)
    : QCustomPlot(parent), shown_(engineCount, true), view_(new KeptView(*this)),
      ends_(new EndLabels(*this)) {
    setMinimumSize(160, 120);
    new LowFrames(*this);
    setAccessibleName(tr("Engines compared"));
    setInteractions(QCP::iRangeDrag | QCP::iRangeZoom);
    legend->setVisible(true);
    // Below the plot, where it hides nothing.
    auto* row = new QCPLayoutGrid;
    plotLayout()->addElement(1, 0, row);
    row->addElement(0, 0, legend);
    row->setMargins(QMargins(8, 0, 8, 4));
    // Nor does it, without a name in it, hold the plot to its own width.
    constexpr int anyWidth = 100000;
    row->setMaximumSize(anyWidth, QWIDGETSIZE_MAX);
    legend->setFillOrder(QCPLegend::foColumnsFirst);
    plotLayout()->setRowStretchFactor(1, 0.001);
    connect(this, &QCustomPlot::mouseDoubleClick, this, [this] { refill(); });
    connect(&Units::instance(), &Units::changed, this, &ComparisonPlot::refill);
    waiting_ = new QCPItemText(this);
    waiting_->setClipToAxisRect(false);
    waiting_->position->setType(QCPItemPosition::ptViewportRatio);
    waiting_->position->setCoords(0.5, 0.5);
    waiting_->setText(tr("The engines compared are being computed."));
    whenLookChanges(*this, [this] {
        applyTones();
        refill();
    });
    applyTones();
    refill();
}

void ComparisonPlot::show(const std::vector<study::Comparison>& comparisons,
                          ComparedQuantity quantity) {
    comparisons_ = comparisons;
    if (quantity_ != quantity)
        view_->release();
    quantity_ = quantity;
    refill();
}

void ComparisonPlot::showClaims(const std::vector<study::ClaimedPoint>& points) {
    claims_ = points;
    if (isSpeedCurve(quantity_))
        refill();
}

void ComparisonPlot::setEngineShown(study::Compared engine, bool shown) {
    shown_[static_cast<std::size_t>(engine)] = shown;
    refill();
}

bool ComparisonPlot::isEngineShown(study::Compared engine) const {
    return shown_[static_cast<std::size_t>(engine)];
}

QPen ComparisonPlot::penOf(study::Compared engine) const {
    // Told apart by hue: a dash would mean the baseline.
    const Palette& tones = Palette::of(*this);
    constexpr double width = 1.8;
    switch (engine) {
    case study::Compared::camTrack:
        return QPen(tones.ink, 2.4);
    case study::Compared::cranksSameSpeed:
        return QPen(tones.crank, width);
    case study::Compared::cranksSamePistonSpeed:
        return QPen(tones.gearedCrank, width);
    case study::Compared::fourStrokeAmbient:
        return QPen(tones.fourStroke, width);
    case study::Compared::fourStrokeSameSupply:
        return QPen(tones.fourStrokeSupplied, width);
    }
    return QPen(tones.ink);
}

void ComparisonPlot::addCurve(study::Compared engine, const QVector<double>& x,
                              const QVector<double>& y) {
    // A curve, not a graph: over the volume it turns back.
    auto* curve = new QCPCurve(xAxis, yAxis);
    QVector<QCPCurveData> points;
    for (int i = 0; i < x.size(); ++i)
        points.append({static_cast<double>(i), x[i], y[i]});
    curve->data()->set(points, true);
    curve->setPen(penOf(engine));
    curve->setName(coreText(study::label(engine)));
}

void ComparisonPlot::addStrokeCurves() {
    if (comparisons_.empty())
        return;
    std::vector<EndLabels::Label> ends;
    for (const study::ComparedEngine& engine : comparisons_.front().engines) {
        if (!engine.curves || !isEngineShown(engine.engine))
            continue;
        const study::ComparedCurves& curves = *engine.curves;
        const Ordinate& ordinate = ordinateOf(quantity_);
        const Samples volume = curves.volume / units::cubicCentimetre;
        const Samples x = quantity_ == ComparedQuantity::torque ? curves.turnAngle / units::degree
                          : quantity_ == ComparedQuantity::pressureVolume
                              ? unitFor(QStringLiteral("cm³")).shown(volume)
                              : Samples(curves.strokeAngle / units::degree);
        const Samples y = curves.*ordinate.values / ordinate.si;
        const QVector<double> values = vectorOf(unitFor(ordinate.unit).shown(y));
        addCurve(engine.engine, vectorOf(x), values);
        nameAtEnd(ends, engine.engine, x[x.size() - 1], values.last());
    }
    ends_->setLabels(std::move(ends));
}

/// Beside its line instead of in a legend.
void ComparisonPlot::nameAtEnd(std::vector<EndLabels::Label>& ends, study::Compared engine,
                               double x, double y) {
    if (!hasRoomAtEnds_)
        return;
    plottable(plottableCount() - 1)->removeFromLegend();
    ends.push_back({coreText(study::label(engine)), penOf(engine).color(), x, y});
}

void ComparisonPlot::addSpeedCurves() {
    const char* name = ordinateOf(quantity_).figure;
    std::vector<EndLabels::Label> ends;
    for (std::size_t e = 0; e < engineCount; ++e) {
        const auto engine = static_cast<study::Compared>(e);
        QVector<double> x, y;
        for (const study::Comparison& comparison : comparisons_) {
            const study::ComparedEngine& row = comparison.engines[e];
            const solution::Figure* speed = row.figure("shaft_speed_rpm");
            const solution::Figure* value = row.figure(name);
            if (speed && speed->value && value && value->value) {
                x.append(*speed->value);
                y.append(unitFor(*value->unit).shown(*value->value));
            }
        }
        if (x.isEmpty() || !isEngineShown(engine))
            continue;
        addCurve(engine, x, y);
        nameAtEnd(ends, engine, x.last(), y.last());
    }
    ends_->setLabels(std::move(ends));
}

void ComparisonPlot::setBands(BandsBehind& bands) {
    bands_ = &bands;
    connect(bands_, &BandsBehind::changed, this, &ComparisonPlot::refill);
}

/// The upper edge, filled down to the lower one.
QCPGraph* ComparisonPlot::addBandEdges(const QVector<double>& x, const QVector<double>& low,
                                       const QVector<double>& high) {
    QCPGraph* below = addGraph();
    below->setData(x, low, true);
    QCPGraph* above = addGraph();
    above->setData(x, high, true);
    above->setChannelFillGraph(below);
    for (QCPGraph* graph : {below, above}) {
        graph->setPen(Qt::NoPen);
        graph->removeFromLegend();
    }
    return above;
}

/// Of the cam-track engine: against speed, or its torque over two turns, which repeats.
void ComparisonPlot::addBands() {
    if (!bands_ || !bands_->isShown() || !isEngineShown(study::Compared::camTrack))
        return;
    QVector<double> x;
    std::array<QVector<double>, 5> edges;
    const Unit unit = unitFor(ordinateOf(quantity_).unit);
    if (isSpeedCurve(quantity_)) {
        const auto quantity =
            quantity_ == ComparedQuantity::torqueCurve ? unknowns::torque : unknowns::power;
        for (const unknowns::CurvePoint& point : bands_->curve()) {
            if (const auto& band = point.band[quantity]) {
                x.append(point.speed);
                const double values[] = {band->p05, band->p25, band->p50, band->p75, band->p95};
                for (std::size_t i = 0; i < edges.size(); ++i)
                    edges[i].append(unit.shown(values[i]));
            }
        }
    } else if (const auto* band = quantity_ == ComparedQuantity::torque
                                      ? bands_->channel("torque_total_Nm")
                                      : nullptr) {
        const Eigen::Index last = bands_->theta().size() - 1; // a whole turn after the first
        for (Eigen::Index i = 0; i < 2 * last; ++i) {
            x.append(bands_->theta()[i % last] / units::degree + (i >= last ? 360.0 : 0.0));
            for (std::size_t k = 0; k < edges.size(); ++k)
                edges[k].append(unit.shown((*band)[k][i % last]));
        }
    }
    const QColor colour = penOf(study::Compared::camTrack).color();
    addBandEdges(x, edges[0], edges[4])->setBrush(outerBand(colour));
    addBandEdges(x, edges[1], edges[3])->setBrush(innerBand(colour));
}

void ComparisonPlot::addClaims() {
    const Palette& tones = Palette::of(*this);
    std::size_t number = 0;
    for (const study::ClaimedPoint& point : claims_) {
        auto* mark = addGraph();
        const Ordinate& words = ordinateOf(quantity_);
        const double value =
            quantity_ == ComparedQuantity::torqueCurve ? point.torque : point.torque * point.speed;
        mark->addData(point.speed / rpm, unitFor(words.unit).shown(value / words.si));
        mark->setLineStyle(QCPGraph::lsNone);
        mark->setScatterStyle(
            QCPScatterStyle(marks[number++ % std::size(marks)], tones.ink, tones.paper, 11));
        mark->setName(coreText(point.label));
        claimMarks_.push_back(mark);
    }
}

void ComparisonPlot::nameAxes() {
    const Ordinate& words = ordinateOf(quantity_);
    yAxis->setLabel(axisText(words.quantity, words.unit));
    xAxis->setLabel(isSpeedCurve(quantity_)                 ? tr("speed of the output shaft, rpm")
                    : quantity_ == ComparedQuantity::torque ? tr("angle of the output shaft, °")
                    : quantity_ == ComparedQuantity::pressureVolume
                        ? axisText(tr("chamber volume"), QStringLiteral("cm³"))
                        : tr("angle from firing dead centre, one stroke out and back = 360°"));
}

void ComparisonPlot::refill() {
    clearPlottables();
    claimMarks_.clear();
    ends_->setLabels({});
    if (!comparisons_.empty())
        addBands();
    if (isSpeedCurve(quantity_)) {
        addSpeedCurves();
        addClaims();
    } else {
        addStrokeCurves();
    }
    showAxes(plottableCount() > 0 || itemCount() > 1);
    nameAxes();
    scaleAxes();
    replot(rpQueuedReplot);
}

/// The engines decide; a published figure far from them is told in the legend instead.
void ComparisonPlot::scaleAxes() {
    if (view_->isChosen())
        return;
    for (const auto along : {Qt::Horizontal, Qt::Vertical}) {
        std::optional<QCPRange> own, claimed;
        for (int i = 0; i < plottableCount(); ++i) {
            auto& range =
                std::find(claimMarks_.begin(), claimMarks_.end(), plottable(i)) == claimMarks_.end()
                    ? own
                    : claimed;
            range = united(range, rangeOf(*plottable(i), along));
        }
        showContent(along == Qt::Horizontal ? *xAxis : *yAxis, contentRange(own, claimed),
                    along == Qt::Horizontal ? 0.02 : 0.05);
        // Of torque and power the eye compares heights.
        if (along == Qt::Vertical && isSpeedCurve(quantity_) && own && own->lower >= 0.0)
            yAxis->setRangeLower(0.0);
    }
    for (QCPGraph* mark : claimMarks_) {
        const QCPGraphData& point = *mark->data()->constBegin();
        if (!xAxis->range().contains(point.key) || !yAxis->range().contains(point.value)) {
            mark->setName(tr("%1 (outside: %2 at %3 rpm)")
                              .arg(mark->name(), shortText(point.value), shortText(point.key)));
        }
    }
}

/// Axes without anything on them say nothing true: a sentence stands there instead.
void ComparisonPlot::showAxes(bool shown) {
    axisRect()->setVisible(shown);
    legend->setVisible(shown && isNamed_ && legend->itemCount() > 0);
    waiting_->setVisible(!shown);
}

void ComparisonPlot::applyTones() {
    waiting_->setColor(Palette::of(*this).quiet);
    const Palette& tones = Palette::of(*this);
    applyPlotTones(*this, Palette::of(*this));
    for (QCPAxis* axis : {xAxis, yAxis})
        axis->grid()->setZeroLinePen(QPen(tones.quiet, 1)); // curves on both sides of it
    legend->setBrush(tones.panel);
    legend->setBorderPen(QPen(tones.grid, 1));
    legend->setTextColor(tones.ink);
    legend->setFont(xAxis->labelFont());
}

void ComparisonPlot::resizeEvent(QResizeEvent* event) {
    // Where there is no room for it the table below names the engines.
    constexpr int line = 45, axes = 60,
                  gap = 8; // [px] of the sample of a name, of the plot, of rows
    const QFontMetrics letters(legend->font());
    int widest = 0;
    for (std::size_t e = 0; e < engineCount; ++e) {
        widest = std::max(widest, letters.horizontalAdvance(
                                      coreText(study::label(static_cast<study::Compared>(e)))));
    }
    const int columns = std::clamp(width() / (widest + line), 1, 3);
    const int rows = (static_cast<int>(engineCount) + columns - 1) / columns;
    // Names beside the curves may take a third of the width.
    const bool hadRoom = std::exchange(hasRoomAtEnds_, 3 * widest < width() - axes);
    if (hadRoom != hasRoomAtEnds_ && !comparisons_.empty())
        refill();
    isNamed_ =
        height() >= rows * (letters.height() + gap) + leastFrame + axes && width() >= widest + axes;
    legend->setVisible(axisRect()->visible() && isNamed_ && legend->itemCount() > 0);
    legend->setWrap(columns);
    legend->setFillOrder(QCPLegend::foColumnsFirst); // arranges the entries anew
    QCustomPlot::resizeEvent(event);
}

} // namespace lobewright::ui
