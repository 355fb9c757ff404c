#include "ui/plots/turn/pressure_volume_plot.h"

#include "core/units.h"
#include "ui/base/curve.h"
#include "ui/base/drawing.h"
#include "ui/base/palette.h"
#include "ui/base/unit_words.h"
#include "ui/base/units.h"
#include "ui/base/watching.h"
#include "ui/plots/base/event_lane.h"
#include "ui/plots/base/head_line.h"
#include "ui/plots/base/kept_view.h"
#include "ui/plots/base/low_frames.h"
#include "ui/plots/base/options_menu.h"
#include "ui/plots/base/painted_layer.h"
#include "ui/plots/base/plot_export.h"
#include "ui/plots/base/plot_tones.h"
#include "ui/plots/base/turn_events.h"

#include <QMenu>

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {

/// `until`: angles beyond are left out.
void fill(QCPCurve& curve, const SolutionPointer& solution, double until = units::turn) {
    QVector<QCPCurveData> points;
    const auto* volume = solution ? solution->channel("chamber_volume_cm3") : nullptr;
    const auto* pressure = solution ? solution->channel("pressure_bar") : nullptr;
    if (volume && pressure) {
        for (Eigen::Index i = 0; i < volume->values.size() && solution->theta[i] <= until; ++i) {
            points.append({static_cast<double>(i), unitFor(*volume->unit).shown(volume->values[i]),
                           unitFor(*pressure->unit).shown(pressure->values[i])});
        }
    }
    curve.data()->set(points, true);
}

} // namespace

PressureVolumePlot::PressureVolumePlot(TurnCursor& cursor, QWidget* parent)
    : QCustomPlot(parent), cursor_(cursor), view_(new KeptView(*this)) {
    setAccessibleName(tr("p–V diagram"));
    setMinimumSize(160, 120);
    new LowFrames(*this);
    offerOptions(*this);
    work_ = new QCPCurve(xAxis, yAxis);
    work_->setName({});
    work_->setPen(Qt::NoPen);
    before_ = new QCPCurve(xAxis, yAxis);
    now_ = new QCPCurve(xAxis, yAxis);
    addLayer(QStringLiteral("cursor"), layer(QStringLiteral("overlay")));
    layer(QStringLiteral("cursor"))->setMode(QCPLayer::lmBuffered);
    dot_ = addGraph();
    dot_->setName({});
    dot_->setLineStyle(QCPGraph::lsNone);
    dot_->setLayer(QStringLiteral("cursor"));
    readout_ = new HeadLine(*this, "cursor");
    new PaintedLayer(
        *this, "main", [this](QCPPainter& painter) { paintDirection(painter); }, true);
    new PaintedLayer(
        *this, "axes", [this](QCPPainter& painter) { paintEvents(painter); }, false);
    setInteractions(QCP::iRangeDrag | QCP::iRangeZoom);
    connect(this, &QCustomPlot::mouseDoubleClick, this, [this] { refill(); });
    connect(&Units::instance(), &Units::changed, this, &PressureVolumePlot::refill);
    connect(&cursor_, &TurnCursor::angleChanged, this, [this] {
        moveDot();
        if (readout_->needsRoom())
            replot(rpQueuedReplot);
        else
            layer(QStringLiteral("cursor"))->replot();
    });
    whenLookChanges(*this, [this] {
        applyTones();
        replot(rpQueuedReplot);
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
    // One cycle: laid over itself twice the area would be left out.
    fill(*work_, solution_, solution_ ? solution_->pair.period() : 0.0);
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
    const auto at = pointAt(cursor_.angle());
    if (!at)
        return;
    dot_->addData(at->x(), at->y());
    readout_->setText(words(at->x(), at->y()));
}

std::optional<QPointF> PressureVolumePlot::pointAt(double theta) const {
    const auto* volume = solution_ ? solution_->channel("chamber_volume_cm3") : nullptr;
    const auto* pressure = solution_ ? solution_->channel("pressure_bar") : nullptr;
    if (!volume || !pressure)
        return std::nullopt;
    const double v = valueAt(solution_->theta, volume->values, theta);
    const double p = valueAt(solution_->theta, pressure->values, theta);
    if (!std::isfinite(v) || !std::isfinite(p))
        return std::nullopt;
    return QPointF(unitFor(*volume->unit).shown(v), unitFor(*pressure->unit).shown(p));
}

/// The point at the cursor, and what the shaded area comes to.
QString PressureVolumePlot::words(double volume, double pressure) const {
    const Unit volumes = unitFor(QStringLiteral("cm³")), pressures = unitFor(QStringLiteral("bar"));
    QString text = withUnit(shortText(volume), volumes.text) + QStringLiteral(", ") +
                   withUnit(shortText(pressure), pressures.text);
    const auto imep = figureValue(solution_, "imep_bar");
    const auto work = figureValue(solution_, "indicated_work_J");
    if (imep && work) {
        text += QStringLiteral("    ") + tr("area %1, imep %2")
                                             .arg(quantityText(*work, QStringLiteral("J")),
                                                  quantityText(*imep, QStringLiteral("bar")));
    }
    return text;
}

/// A dot on the curve for every event of a cycle, its letters in a lane above the frame.
void PressureVolumePlot::paintEvents(QCPPainter& painter) const {
    if (!solution_ || !xAxis->visible())
        return;
    const Palette& tones = Palette::of(*this);
    const QRectF box = axisRect()->rect();
    std::vector<LaneLetters> all;
    for (const TurnEvent& event : turnEvents(solution_->pair, solution_->timing)) {
        const auto at = event.cycle == 0 ? pointAt(event.theta) : std::nullopt;
        if (!at)
            continue;
        const QPointF place(xAxis->coordToPixel(at->x()), yAxis->coordToPixel(at->y()));
        if (!box.contains(place))
            continue;
        const QColor colour = toneOf(tones, event);
        constexpr double radius = 3.0; // [px]
        fillAndOutline(painter, colour, QPen(tones.paper, 1));
        painter.drawEllipse(place, radius, radius);
        QColor faint = colour;
        faint.setAlphaF(0.45F);
        painter.setPen(QPen(faint, 1, Qt::DotLine));
        painter.drawLine(QPointF(place.x(), box.top()), place - QPointF(0.0, radius));
        all.push_back({place.x(), letters(event.kind), colour});
    }
    painter.setBrush(Qt::NoBrush);
    std::ranges::stable_sort(all, {}, &LaneLetters::x);
    painter.setFont(xAxis->tickLabelFont());
    const double line = painter.fontMetrics().height();
    paintLane(painter, QRectF(box.left(), box.top() - line - 2.0, box.width(), line), all);
}

/// Two heads on the curve, half way through the compression and through the expansion.
void PressureVolumePlot::paintDirection(QCPPainter& painter) const {
    if (!solution_)
        return;
    const double period = solution_->pair.period();
    const auto pixelAt = [&](double theta) -> std::optional<QPointF> {
        const auto at = pointAt(theta);
        return at ? std::optional(
                        QPointF(xAxis->coordToPixel(at->x()), yAxis->coordToPixel(at->y())))
                  : std::nullopt;
    };
    const double centre = solution_->pair.deadCentres().front().idc;
    fillOnly(painter, Palette::of(*this).ink);
    for (const double share : {-0.14, 0.14}) { // of a cycle, from inner dead centre
        const double theta = std::fmod(centre + (1.0 + share) * period, units::turn);
        const auto from = pixelAt(theta), to = pixelAt(std::min(theta + 0.01, units::turn));
        if (!from || !to || *from == *to)
            continue;
        QLineF along(*from, *to);
        constexpr double length = 9.0, half = 4.0; // [px]
        along.setLength(1.0);
        const QPointF ahead = along.p2() - along.p1(), aside(-ahead.y(), ahead.x());
        painter.drawPolygon(
            QPolygonF({*from + length * ahead, *from + half * aside, *from - half * aside}));
    }
    painter.setBrush(Qt::NoBrush);
}

void PressureVolumePlot::applyTones() {
    const Palette& tones = Palette::of(*this);
    applyPlotTones(*this, Palette::of(*this));
    // A line above the frame for the letters of events.
    axisRect()->setMinimumMargins(
        QMargins(0, QFontMetrics(xAxis->tickLabelFont()).height() + 4, 8, 0));
    work_->setBrush(tones.tint(tones.ink, 0.10));
    now_->setPen(QPen(tones.ink, 1.8));
    before_->setPen(QPen(tones.baseline(tones.ink), 1.4, Qt::DashLine));
    dot_->setScatterStyle(QCPScatterStyle(QCPScatterStyle::ssDisc, tones.cursor, 8));
}

void PressureVolumePlot::addOptions(QMenu& menu) {
    menu.addAction(tr("Show the &whole cycle"), this, [this] {
        view_->release();
        refill();
    });
    menu.addSeparator();
    addPictureActions(menu, *this, accessibleName());
}

} // namespace lobewright::ui
