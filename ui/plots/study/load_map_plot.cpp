#include "ui/plots/study/load_map_plot.h"

#include "core/study/load_map.h"
#include "core/units.h"
#include "ui/base/curve.h"
#include "ui/base/menus.h"
#include "ui/base/palette.h"
#include "ui/base/units.h"
#include "ui/base/watching.h"
#include "ui/plots/base/custom_plot.h"
#include "ui/plots/base/kept_view.h"
#include "ui/plots/base/low_frames.h"
#include "ui/plots/base/plot_export.h"
#include "ui/plots/base/plot_tones.h"

#include <QMenu>

#include <algorithm>
#include <cmath>
#include <limits>

namespace lobewright::ui {

namespace {

constexpr int speedCount = 13, loadCount = 9;
constexpr double leastLoad = 0.2;
constexpr double wholeSpeeds = 100.0; // ends of the range [1/min]
constexpr int cellsAcross = 160, cellsUp = 100, wantedLevels = 8;
constexpr std::size_t numberedLevels = 3; // room in the lowest frame
constexpr double noValue = std::numeric_limits<double>::quiet_NaN();
/// Without torque an engine burns infinitely much for its work: beyond so many times the least, the
/// map says no more than that.
constexpr double mostConsumption = 2.5;

/// Least and largest finite value; 0 and 1 where there are none, or all are alike.
QCPRange boundsOf(const Eigen::ArrayXXd& values) {
    const auto range = rangeOf(values.reshaped());
    return range && range->size() > 0.0 ? *range : QCPRange(0.0, 1.0);
}

} // namespace

const std::vector<LoadMapPlot::Figure>& LoadMapPlot::figures() {
    static const std::vector<Figure> all = {
        {QStringLiteral("brake_specific_fuel_g_per_kWh"), tr("Brake specific fuel consumption"),
         QStringLiteral("g/kWh")},
        {QStringLiteral("brake_efficiency"), tr("Brake thermal efficiency"), QString()},
        {QStringLiteral("peak_pressure_bar"), tr("Peak pressure"), QStringLiteral("bar")},
        {QStringLiteral("knock_integral"), tr("Knock integral"), QString()},
        {QStringLiteral("delivery_ratio"), tr("Delivery ratio"), QString()},
        {QStringLiteral("supply_pressure_bar"), tr("Supply pressure"), QStringLiteral("bar")},
        {QStringLiteral("brake_power_kW"), tr("Brake power"), QStringLiteral("kW")},
        {QStringLiteral("compressor_pressure_ratio"), tr("Pressure ratio of the compressor"),
         QString()},
        {QStringLiteral("compressor_efficiency"), tr("Efficiency of the compressor"), QString()},
        {QStringLiteral("compressor_surge_margin"), tr("Surge margin of the compressor"),
         QString()},
        {QStringLiteral("off_track_share_inlet"), tr("Share of the revolution off the inlet track"),
         QString()},
        {QStringLiteral("off_track_share_exhaust"),
         tr("Share of the revolution off the exhaust track"), QString()}};
    return all;
}

const LoadMapPlot::Figure& LoadMapPlot::figure() const {
    const auto found = std::ranges::find(figures(), figure_, &Figure::name);
    const bool isThere =
        names_.empty() || std::ranges::find(names_, figure_.toStdString()) != names_.end();
    return found == figures().end() || !isThere ? figures().front() : *found;
}

QString LoadMapPlot::labelOf(const Figure& figure) const {
    const bool isOnly =
        !names_.empty() && std::ranges::find(names_, "off_track_share_exhaust") == names_.end();
    return isOnly && figure.name == QLatin1String("off_track_share_inlet")
               ? tr("Share of the revolution off the track")
               : figure.label;
}

LoadMapPlot::LoadMapPlot(QWidget* parent)
    : StudyPane(tr("Map over speed and load"), parent), figure_(figures().front().name),
      plot_(new QCustomPlot(this)), map_(new QCPColorMap(plot_->xAxis, plot_->yAxis)),
      scale_(new QCPColorScale(plot_)), full_(plot_->addGraph()), own_(plot_->addGraph()),
      offTrack_(plot_->addGraph()) {
    setPlot(*plot_);
    plot_->setAccessibleName(title());
    plot_->setMinimumSize(160, 120);
    new LowFrames(*plot_);
    plot_->setMouseTracking(true);
    map_->setInterpolate(false);
    map_->setTightBoundary(true);
    plot_->plotLayout()->addElement(0, 1, scale_);
    scale_->setBarWidth(10);
    scale_->setType(QCPAxis::atRight);
    map_->setColorScale(scale_);
    auto* margins = new QCPMarginGroup(plot_);
    plot_->axisRect()->setMarginGroup(QCP::msTop | QCP::msBottom, margins);
    scale_->setMarginGroup(QCP::msTop | QCP::msBottom, margins);
    full_->setName(tr("full load"));
    own_->setLineStyle(QCPGraph::lsNone);
    own_->setName(tr("operating point"));
    offTrack_->setLineStyle(QCPGraph::lsNone);
    offTrack_->setName(tr("a roller is off its track"));
    plot_->xAxis->setLabel(tr("shaft speed, rpm"));
    connect(plot_, &QCustomPlot::mouseMove, this, [this](QMouseEvent* event) {
        readOut(plot_->xAxis->pixelToCoord(event->position().x()),
                plot_->yAxis->pixelToCoord(event->position().y()));
    });
    watch(runner_, {[this] { start(); }, [this](const study::Point& point) { takePoint(point); },
                    [this](const study::Table& table) {
                        for (const study::Point& point : table.points)
                            points_[point.index] = point;
                    }});
    whenLookChanges(*this, [this] {
        applyTones();
        plot_->replot(QCustomPlot::rpQueuedReplot);
    });
    applyTones();
}

void LoadMapPlot::showSolution(const SolutionPointer& solution) {
    solution_ = solution;
    start();
}

void LoadMapPlot::start() {
    if (!mayStart(runner_, solution_ != nullptr))
        return;
    const double speed = solution_->design.running.speed / units::revPerMinute;
    const double from =
        std::max(std::round(0.3 * speed / wholeSpeeds) * wholeSpeeds, 0.5 * wholeSpeeds);
    const double to = std::ceil(1.4 * speed / wholeSpeeds) * wholeSpeeds;
    auto names = study::loadMapColumns(solution_->design);
    if (from != from_ || to != to_ || points_.empty() || names != names_)
        points_.assign(speedCount * loadCount, std::nullopt);
    from_ = from;
    to_ = to;
    names_ = std::move(names);
    runner_.request(
        [design = solution_->design, from, to](Monitor& monitor, const study::PointSink& sink) {
            return study::loadMap(design, {from, to, speedCount}, {1.0, leastLoad, loadCount},
                                  monitor, sink);
        });
    refill();
    sayState();
}

void LoadMapPlot::takePoint(const study::Point& point) {
    points_[point.index] = point;
    if ((point.index + 1) % speedCount == 0 || !runner_.isBusy())
        refill();
}

Eigen::ArrayXXd LoadMapPlot::values(const QString& name) const {
    const auto place = std::ranges::find(names_, name.toStdString());
    const auto found = std::ranges::find(figures(), name, &Figure::name);
    const Unit unit =
        unitFor(found != figures().end() ? found->unit : QStringLiteral("N·m")); // the torque
    Eigen::ArrayXXd all = Eigen::ArrayXXd::Constant(loadCount, speedCount, noValue);
    for (const auto& point : points_) {
        if (!point || !point->failure.empty() || place == names_.end())
            continue;
        const auto value = point->values[static_cast<std::size_t>(place - names_.begin())];
        // Full load is the first row of the study and the last of the map.
        const auto row = loadCount - 1 - static_cast<int>(point->index) / speedCount;
        all(row, static_cast<int>(point->index) % speedCount) =
            value ? unit.shown(*value) : noValue;
    }
    return all;
}

double LoadMapPlot::speedAt(double column) const {
    return from_ + (to_ - from_) * column / (speedCount - 1);
}

void LoadMapPlot::refill() {
    if (points_.empty())
        return;
    torque_ = values(QStringLiteral("brake_torque_Nm"));
    shown_ = values(figure().name);
    const QCPRange torques = boundsOf(torque_);
    plot_->xAxis->setRange(from_, to_);
    plot_->yAxis->setRange(torques.lower - 0.02 * torques.size(),
                           torques.upper + 0.08 * torques.size());
    plot_->yAxis->setLabel(axisText(tr("brake torque"), QStringLiteral("N·m")));
    scale_->axis()->setLabel(axisText(labelOf(figure()), figure().unit));
    map_->setName(axisText(labelOf(figure()), figure().unit));
    fillColours();
    fillContours();
    fillLines();
    applyTones();
    plot_->replot(QCustomPlot::rpQueuedReplot);
}

QCPRange LoadMapPlot::valuesShown() const {
    QCPRange range = boundsOf(shown_);
    if (figure().name == figures().front().name)
        range.upper = std::min(range.upper, mostConsumption * range.lower);
    return range;
}

void LoadMapPlot::fillColours() {
    map_->data()->setSize(cellsAcross, cellsUp);
    map_->data()->setRange(plot_->xAxis->range(), plot_->yAxis->range());
    for (int i = 0; i < cellsAcross; ++i) {
        const double column = (speedCount - 1.0) * i / (cellsAcross - 1);
        for (int k = 0; k < cellsUp; ++k) {
            double speed = 0.0, torque = 0.0;
            map_->data()->cellToCoord(i, k, &speed, &torque);
            const auto row = study::rowWith(torque_, column, torque);
            map_->data()->setCell(i, k, row ? study::valueAt(shown_, {*row, column}) : noValue);
        }
    }
    map_->setDataRange(valuesShown()); // gaps would spoil the plot's own search for it
}

void LoadMapPlot::fillContours() {
    for (QCPCurve* curve : contours_)
        plot_->removePlottable(curve);
    contours_.clear();
    // What a line stands for is read off the scale: a number on a line would lie on the map.
    const auto levels = QSharedPointer<QCPAxisTickerText>::create();
    const double most = valuesShown().upper;
    const auto all = study::roundLevels(shown_.min(most), wantedLevels);
    const std::size_t stride = (all.size() + numberedLevels - 1) / numberedLevels;
    for (std::size_t number = 0; number < all.size(); ++number) {
        const double level = all[number];
        auto* curve = new QCPCurve(plot_->xAxis, plot_->yAxis);
        curve->setName({});
        for (const study::ContourPiece& piece : study::contourPieces(shown_, level)) {
            const auto add = [&](const study::GridPlace& at) {
                const QPointF point(speedAt(at.column), study::valueAt(torque_, at));
                curve->addData(point.x(), point.y());
            };
            add(piece.from);
            add(piece.to);
            curve->addData(noValue, noValue);
        }
        contours_.push_back(curve);
        if (number % stride == 0)
            levels->addTick(level, shortText(level));
    }
    scale_->axis()->setTicker(levels);
}

void LoadMapPlot::fillLines() {
    for (QCPGraph* graph : {full_, own_, offTrack_})
        graph->data()->clear();
    const Eigen::ArrayXXd inlet = values(QStringLiteral("off_track_share_inlet"));
    const Eigen::ArrayXXd exhaust = values(QStringLiteral("off_track_share_exhaust"));
    for (int column = 0; column < speedCount; ++column) {
        full_->addData(speedAt(column), torque_(loadCount - 1, column));
        for (int row = 0; row < loadCount; ++row) {
            if (inlet(row, column) > 0.0 || exhaust(row, column) > 0.0)
                offTrack_->addData(speedAt(column), torque_(row, column));
        }
    }
    if (const auto torque = figureValue(solution_, "brake_torque_Nm"))
        own_->addData(solution_->design.running.speed / units::revPerMinute,
                      unitFor(QStringLiteral("N·m")).shown(*torque));
}

void LoadMapPlot::applyTones() {
    const Palette& tones = Palette::of(*this);
    applyPlotTones(*plot_, tones);
    applyAxisTones(*scale_->axis(), tones, plot_->xAxis->labelFont());
    QCPColorGradient gradient;
    gradient.clearColorStops();
    gradient.setColorStopAt(0.0, tones.tint(tones.inlet, 0.10));
    gradient.setColorStopAt(1.0, tones.tint(tones.inlet, 0.75));
    gradient.setNanHandling(QCPColorGradient::nhNanColor);
    gradient.setNanColor(tones.paper);
    map_->setGradient(gradient);
    full_->setPen(QPen(tones.ink, 2.4));
    own_->setScatterStyle(
        QCPScatterStyle(QCPScatterStyle::ssCrossCircle, QPen(tones.cursor, 1.8), tones.paper, 10));
    offTrack_->setScatterStyle(
        QCPScatterStyle(QCPScatterStyle::ssCircle, QPen(tones.warning, 1.6), Qt::NoBrush, 6));
    for (QCPCurve* curve : contours_)
        curve->setPen(QPen(tones.quiet, 1.0));
}

StudyPane::Count LoadMapPlot::count() const {
    const auto all = static_cast<qsizetype>(points_.size());
    const auto known = std::ranges::count_if(points_, [](const auto& point) { return !!point; });
    const auto failed = std::ranges::count_if(
        points_, [](const auto& point) { return point && !point->failure.empty(); });
    return {known, all, failed, all};
}

QString LoadMapPlot::restingWords() const {
    return solution_ && solution_->design.running.loadBy == design::LoadBy::mixture
               ? tr("load by mixture")
               : tr("load by supply");
}

void LoadMapPlot::readOut(double speed, double torque) {
    std::vector<ReadoutStrip::Item> items;
    const Palette& tones = Palette::of(*this);
    const auto item = [&](const QPen& pen, const QString& label, const QString& value,
                          const QString& unit) {
        items.push_back({pen, label, value, unit, QString()});
    };
    const double column = (speed - from_) / (to_ - from_) * (speedCount - 1);
    const bool isInside = torque_.size() > 0 && column >= 0.0 && column <= speedCount - 1;
    const auto row = isInside ? study::rowWith(torque_, column, torque) : std::nullopt;
    double value = noValue, share = noValue;
    if (row) {
        value = study::valueAt(shown_, {*row, column});
        share = leastLoad + (1.0 - leastLoad) * *row / (loadCount - 1);
    }
    const auto text = [](double number) {
        return std::isfinite(number) ? shortText(number) : QString();
    };
    item(QPen(tones.tint(tones.inlet, 0.75), 3.0), labelOf(figure()), text(value),
         unitFor(figure().unit).text);
    item(QPen(tones.ink, 2.4), tr("full load"),
         text(isInside ? study::valueAt(torque_, {loadCount - 1.0, column}) : noValue),
         unitFor(QStringLiteral("N·m")).text);
    item(QPen(tones.cursor, 1.2), tr("at"), shortText(speed), tr("rpm"));
    item(QPen(Qt::NoPen), tr("torque"), shortText(torque), unitFor(QStringLiteral("N·m")).text);
    item(QPen(Qt::NoPen), tr("load"), text(std::round(share * 1000.0) / 10.0), QStringLiteral("%"));
    readout().setItems(std::move(items));
}

QString LoadMapPlot::readoutAt(double speed, double torque) {
    const double column = (speed - from_) / (to_ - from_) * (speedCount - 1);
    const auto row = study::rowWith(torque_, column, unitFor(QStringLiteral("N·m")).shown(torque));
    readOut(speed, unitFor(QStringLiteral("N·m")).shown(torque));
    return row ? shortText(study::valueAt(shown_, {*row, column})) : QString();
}

void LoadMapPlot::setFigure(const QString& figure) {
    if (figure == figure_)
        return;
    figure_ = figure;
    refill();
    Q_EMIT stateChanged();
}

void LoadMapPlot::restoreState(const QString& state) {
    if (std::ranges::find(figures(), state, &Figure::name) != figures().end())
        setFigure(state);
}

void LoadMapPlot::addOptions(QMenu& menu) {
    for (const Figure& figure : figures()) {
        if (std::ranges::find(names_, figure.name.toStdString()) == names_.end())
            continue; // the air supply has none
        addChoice(menu, labelOf(figure), figure.name == this->figure().name, this,
                  [this, name = figure.name] { setFigure(name); });
    }
    menu.addSeparator();
    addPictureActions(menu, *this, title());
}

} // namespace lobewright::ui
