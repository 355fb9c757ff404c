#include "ui/plots/study/bands_plot.h"

#include "core/units.h"
#include "ui/base/core_text.h"
#include "ui/base/curve.h"
#include "ui/base/layouts.h"
#include "ui/base/palette.h"
#include "ui/base/units.h"
#include "ui/base/watching.h"
#include "ui/plots/base/custom_plot.h"
#include "ui/plots/base/low_frames.h"
#include "ui/plots/base/plot_export.h"
#include "ui/plots/base/plot_tones.h"

#include <QLabel>
#include <QLocale>

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

using unknowns::CurvePoint;
using unknowns::Quantiles;

namespace {

constexpr double outerShare = 0.14, innerShare = 0.32; // of ink over the paper

QString metricUnitOf(unknowns::CurveQuantity quantity) {
    return QString::fromStdString(
        unknowns::curveColumns()[static_cast<std::size_t>(quantity)].unit);
}

QString labelOf(unknowns::CurveQuantity quantity) {
    return coreText(unknowns::curveColumns()[static_cast<std::size_t>(quantity)].label);
}

/// The points along a curve with one value each; points without it are left out.
template <class Value>
void setGraph(QCPGraph& graph, const std::vector<CurvePoint>& points, const Unit& unit,
              const Value& valueOf) {
    QVector<double> speeds, values;
    for (const CurvePoint& point : points) {
        if (const std::optional<double> value = valueOf(point)) {
            speeds << point.speed;
            values << unit.shown(*value);
        }
    }
    graph.setData(speeds, values, true);
}

} // namespace

BandsPlot::BandsPlot(BandsModel& model, QWidget* parent)
    : QWidget(parent), model_(model), state_(new QLabel(this)), readout_(new ReadoutStrip(this)),
      plot_(new QCustomPlot(this)), panels_{Panel{unknowns::torque}, Panel{unknowns::power}} {
    const QString title = tr("Torque and power as bands");
    setAccessibleName(title);
    plot_->setAccessibleName(title);
    auto* column = columnOf(this, {0, 0, 0, 0}, 0, {readout_, {plot_, 1}});
    state_->setContentsMargins(8, 0, 8, 4);
    state_->setWordWrap(true);
    column->addWidget(state_);
    plot_->setMinimumSize(160, 90);
    new LowFrames(*plot_);
    plot_->setMouseTracking(true);
    plot_->plotLayout()->clear();
    plot_->plotLayout()->setRowSpacing(2);
    for (Panel& panel : panels_)
        addPanel(panel);
    auto* group = new QCPMarginGroup(plot_);
    for (Panel& panel : panels_)
        panel.rect->setMarginGroup(QCP::msLeft | QCP::msRight, group);
    connect(plot_, &QCustomPlot::mouseMove, this, [this](QMouseEvent* event) {
        readOut(panels_[0].rect->axis(QCPAxis::atBottom)->pixelToCoord(event->position().x()));
    });
    connect(&model_, &BandsModel::changed, this, &BandsPlot::refill);
    connect(&model_, &BandsModel::busyChanged, this, &BandsPlot::sayState);
    connect(&Units::instance(), &Units::changed, this, &BandsPlot::refill);
    whenLookChanges(*this, [this] {
        applyTones();
        refill();
    });
    applyTones();
    refill();
}

void BandsPlot::addPanel(Panel& panel) {
    panel.rect = new QCPAxisRect(plot_, true);
    panel.rect->setupFullAxesBox(true);
    const int row = plot_->plotLayout()->rowCount();
    plot_->plotLayout()->addElement(row, 0, panel.rect);
    panel.rect->setMinimumMargins(QMargins(46, 6, 14, 4));
    QCPAxis* x = panel.rect->axis(QCPAxis::atBottom);
    QCPAxis* y = panel.rect->axis(QCPAxis::atLeft);
    y->ticker()->setTickCount(4);
    // Only the lowest speaks of the speed; both have the same.
    const bool isLast = &panel == &panels_.back();
    x->setTickLabels(isLast);
    if (isLast)
        x->setLabel(tr("shaft speed, rpm"));
    const auto graph = [&] {
        auto* made = new QCPGraph(x, y);
        made->setSelectable(QCP::stNone);
        return made;
    };
    panel.outerLow = graph();
    panel.outerHigh = graph();
    panel.outerHigh->setChannelFillGraph(panel.outerLow);
    panel.innerLow = graph();
    panel.innerHigh = graph();
    panel.innerHigh->setChannelFillGraph(panel.innerLow);
    panel.middle = graph();
    panel.nominal = graph();
    panel.claimed = graph();
    panel.claimed->setLineStyle(QCPGraph::lsNone);
}

void BandsPlot::applyTones() {
    const Palette& tones = Palette::of(*this);
    applyPlotTones(*plot_, tones);
    for (Panel& panel : panels_) {
        for (QCPGraph* edge : {panel.outerLow, panel.outerHigh, panel.innerLow, panel.innerHigh})
            edge->setPen(Qt::NoPen);
        panel.outerHigh->setBrush(tones.tint(tones.ink, outerShare));
        panel.innerHigh->setBrush(tones.tint(tones.ink, innerShare));
        panel.middle->setPen(QPen(tones.quiet, 1.2, Qt::DotLine));
        panel.nominal->setPen(QPen(tones.ink, 2.0));
        panel.claimed->setScatterStyle(
            QCPScatterStyle(QCPScatterStyle::ssDiamond, tones.warning, tones.paper, 9));
    }
    plot_->replot(QCustomPlot::rpQueuedReplot);
}

void BandsPlot::fill(Panel& panel, const std::vector<CurvePoint>& points) {
    const Unit unit = unitFor(metricUnitOf(panel.quantity));
    const auto edge = [&](double Quantiles::*which) {
        return [&panel, which](const CurvePoint& point) -> std::optional<double> {
            const auto& band = point.band[panel.quantity];
            return band ? std::optional((*band).*which) : std::nullopt;
        };
    };
    setGraph(*panel.outerLow, points, unit, edge(&Quantiles::p05));
    setGraph(*panel.outerHigh, points, unit, edge(&Quantiles::p95));
    setGraph(*panel.innerLow, points, unit, edge(&Quantiles::p25));
    setGraph(*panel.innerHigh, points, unit, edge(&Quantiles::p75));
    setGraph(*panel.middle, points, unit, edge(&Quantiles::p50));
    setGraph(*panel.nominal, points, unit,
             [&](const CurvePoint& point) { return point.nominal[panel.quantity]; });
    QCPAxis* y = panel.rect->axis(QCPAxis::atLeft);
    y->setLabel(axisText(labelOf(panel.quantity), metricUnitOf(panel.quantity)));
    double low = 0.0, high = 0.0;
    for (const CurvePoint& point : points) {
        for (const auto& value : {edge(&Quantiles::p05)(point), edge(&Quantiles::p95)(point),
                                  point.nominal[panel.quantity]}) {
            low = std::min(low, unit.shown(value.value_or(0.0)));
            high = std::max(high, unit.shown(value.value_or(0.0)));
        }
    }
    const double room = 0.06 * (high - low);
    y->setRange(low < 0.0 ? low - room : 0.0, high > low ? high + room : 1.0);
    if (!points.empty())
        panel.rect->axis(QCPAxis::atBottom)->setRange(points.front().speed, points.back().speed);
}

/// Published points never set the range; those outside are left to the verdict.
void BandsPlot::fillClaims(Panel& panel) {
    const Unit unit = unitFor(metricUnitOf(panel.quantity));
    QVector<double> speeds, values;
    for (const study::ClaimedPoint& point : model_.claimedPoints()) {
        const double value =
            panel.quantity == unknowns::torque ? point.torque : point.torque * point.speed / 1e3;
        speeds << point.speed / units::revPerMinute;
        values << unit.shown(value);
    }
    panel.claimed->setData(speeds, values);
}

void BandsPlot::refill() {
    points_ =
        model_.ensemble() ? unknowns::curveBands(*model_.ensemble()) : std::vector<CurvePoint>();
    for (Panel& panel : panels_) {
        fill(panel, points_);
        fillClaims(panel);
    }
    if (!points_.empty() && !(readAt_ >= points_.front().speed && readAt_ <= points_.back().speed))
        readAt_ = model_.solution()->design.running.speed / units::revPerMinute;
    plot_->setVisible(!points_.empty()); // empty axes say nothing
    readOut(readAt_);
    sayState();
    plot_->replot(QCustomPlot::rpQueuedReplot);
}

void BandsPlot::readOut(double speed) {
    shown_.clear();
    if (points_.empty()) {
        readout_->setItems({});
        return;
    }
    readAt_ = speed;
    const CurvePoint& point = *std::ranges::min_element(
        points_, {}, [speed](const CurvePoint& other) { return std::abs(other.speed - speed); });
    const Palette& tones = Palette::of(*this);
    const auto say = [this](const QPen& pen, const QString& label, const QString& value,
                            const QString& unit) {
        shown_.push_back({pen, label, value, unit, {}});
    };
    say(QPen(Qt::NoPen), tr("at"), shortText(point.speed), metricWord("1/min"));
    for (const Panel& panel : panels_) {
        const Unit unit = unitFor(metricUnitOf(panel.quantity));
        const auto& nominal = point.nominal[panel.quantity];
        say(QPen(tones.ink, 2.0), tr("%1 as designed").arg(labelOf(panel.quantity)),
            nominal ? shortText(unit.shown(*nominal)) : QString(), unit.text);
        const auto& band = point.band[panel.quantity];
        if (!band)
            continue;
        say(QPen(tones.quiet, 1.6, Qt::DotLine), tr("half lie above"),
            shortText(unit.shown(band->p50)), unit.text);
        say(QPen(tones.tint(tones.ink, outerShare), 8.0), tr("90 % of the engines"),
            endsText(unit.shown(band->p05), unit.shown(band->p95)), unit.text);
        say(QPen(tones.tint(tones.ink, innerShare), 8.0), tr("half of them"),
            endsText(unit.shown(band->p25), unit.shown(band->p75)), unit.text);
    }
    if (point.liftOffShare) {
        say(QPen(Qt::NoPen), tr("rollers lift off in"), shortText(100.0 * *point.liftOffShare),
            QStringLiteral("%"));
    }
    readout_->setItems(shown_);
}

QString BandsPlot::readoutText() const {
    QStringList words;
    for (const auto& item : shown_)
        words << item.label + ' ' + item.value + ' ' + item.unit;
    return words.join(QStringLiteral(", "));
}

void BandsPlot::sayState() {
    if (!model_.problems().empty()) {
        state_->setText(
            model_.hasNothingToVary()
                ? tr("Nothing in this design has a range, so everything counts as known. Give the "
                     "inputs that are not certain a range, or look at the scatter of manufacture.")
                : coreText(model_.problems().front().message));
        return;
    }
    if (!model_.ensemble()) {
        state_->setText(model_.isBusy() ? tr("Computing the first engines …") : QString());
        return;
    }
    const auto found = unknowns::feasibility(*model_.ensemble());
    const auto percent = [&](long count) {
        return shortText(100.0 * static_cast<double>(count) / static_cast<double>(found.engines));
    };
    QString text = tr("%1 engines: %2 % run, %3 % cannot be built, %4 % cannot run")
                       .arg(QLocale().toString(static_cast<qlonglong>(found.engines)),
                            percent(found.runs), percent(found.notBuilt), percent(found.notRun));
    if (!found.reasons.empty()) {
        text += QStringLiteral("; ") +
                tr("most often: %1").arg(coreText(found.reasons.front().example));
    }
    if (isDesignOutside()) {
        text += tr(". The design (line) lies outside the band: its inputs stand at the edge of "
                   "what is thought possible");
    }
    if (!model_.claimedPoints().empty())
        text += tr(". Diamonds are the published figures");
    state_->setText(text);
}

bool BandsPlot::isDesignOutside() const {
    return std::ranges::any_of(points_, [this](const CurvePoint& point) {
        return std::ranges::any_of(panels_, [&](const Panel& panel) {
            const auto& band = point.band[panel.quantity];
            const auto& nominal = point.nominal[panel.quantity];
            return band && nominal && (*nominal < band->p05 || *nominal > band->p95);
        });
    });
}

void BandsPlot::addOptions(QMenu& menu) {
    addPictureActions(menu, *plot_, plot_->accessibleName());
}

} // namespace lobewright::ui
