#include "ui/plots/study/study_plot.h"

#include "ui/base/controls.h"
#include "ui/base/core_text.h"
#include "ui/base/menus.h"
#include "ui/base/palette.h"
#include "ui/base/units.h"
#include "ui/base/watching.h"
#include "ui/plots/base/bands_behind.h"
#include "ui/plots/base/custom_plot.h"
#include "ui/plots/base/hatching.h"
#include "ui/plots/base/kept_view.h"
#include "ui/plots/base/low_frames.h"
#include "ui/plots/base/plot_export.h"
#include "ui/plots/base/plot_tones.h"

#include <QDoubleSpinBox>
#include <QLabel>
#include <QMenu>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace lobewright::ui {

namespace {

// Figures side by side are told apart by their points as well as by tone: dashes mean the baseline.
constexpr QCPScatterStyle::ScatterShape dotShapes[] = {
    QCPScatterStyle::ssDisc, QCPScatterStyle::ssSquare, QCPScatterStyle::ssDiamond,
    QCPScatterStyle::ssTriangle};

/// Of these and of torques and powers the eye compares heights: their axis starts at zero.
bool startsAtZero(const solution::Figure& figure) {
    return figure.id == "brake_torque" || figure.unit == &in::kW ||
           figure.id.ends_with("_efficiency");
}

/// Events are of one end, though it is part of what they are called.
constexpr std::pair<std::string_view, End> events[] = {{"inlet_opens", End::inlet},
                                                       {"inlet_closes", End::inlet},
                                                       {"exhaust_opens", End::exhaust},
                                                       {"exhaust_closes", End::exhaust}};

std::optional<End> sideOf(const solution::Figure& figure) {
    const auto event =
        std::ranges::find(events, figure.id, [](const auto& row) { return row.first; });
    return event == std::end(events) ? figure.end : event->second;
}

QDoubleSpinBox* rangeBox(const QString& name, QWidget* parent) {
    auto* box = new QDoubleSpinBox(parent);
    box->setRange(-20000.0, 20000.0);
    box->setDecimals(0);
    box->setKeyboardTracking(false);
    box->setButtonSymbols(QAbstractSpinBox::NoButtons);
    describe(*box, name, name);
    box->setMaximumWidth(64);
    return box;
}

} // namespace

StudyPlot::StudyPlot(const QString& title, const QStringList& figures, QWidget* parent)
    : StudyPane(title, parent), figures_(figures), from_(rangeBox(tr("From"), this)),
      to_(rangeBox(tr("To"), this)), plot_(new QCustomPlot(this)), view_(new KeptView(*plot_)),
      mark_(new QCPItemStraightLine(plot_)) {
    setPlot(*plot_);
    foot().setSpacing(8);
    int place = 0;
    for (QWidget* widget :
         {static_cast<QWidget*>(new QLabel(tr("from"), this)), static_cast<QWidget*>(from_),
          static_cast<QWidget*>(new QLabel(tr("to"), this)), static_cast<QWidget*>(to_)})
        foot().insertWidget(place++, widget);
    stopButton().setText(tr("Cancel"));
    plot_->setAccessibleName(title);
    plot_->setMinimumSize(160, 90);
    new LowFrames(*plot_);
    plot_->setMouseTracking(true);
    plot_->setInteractions(QCP::iRangeDrag | QCP::iRangeZoom);
    plot_->axisRect()->setMinimumMargins(QMargins(46, 6, 14, 4));
    for (QCPAxis* axis : {plot_->yAxis, plot_->yAxis2}) {
        axis->ticker()->setTickCount(5);
        axis->setNumberPrecision(5);
    }
    plot_->xAxis->setTickLabelPadding(8); // clear of the lowest number of the right axis
    connect(plot_, &QCustomPlot::mouseDoubleClick, this, &StudyPlot::refill);
    connect(plot_, &QCustomPlot::mouseMove, this, [this](QMouseEvent* event) {
        pointing_ = true;
        readOut(plot_->xAxis->pixelToCoord(event->position().x()));
        plot_->setToolTip(reasonAt(readAt_));
    });
    connect(from_, &QDoubleSpinBox::valueChanged, this, &StudyPlot::rangeTyped);
    connect(to_, &QDoubleSpinBox::valueChanged, this, &StudyPlot::rangeTyped);
    watchRun(now_);
    watchRun(before_);
    whenLookChanges(*this, [this] {
        applyTones();
        readOut(readAt_);
        plot_->replot(QCustomPlot::rpQueuedReplot);
    });
    applyTones();
}

void StudyPlot::addBelow(QWidget* widget) {
    auto* column = static_cast<QVBoxLayout*>(layout());
    column->insertWidget(column->indexOf(plot_) + 1, widget, 1);
    column->setStretchFactor(plot_, 4); // what is below grows a little with the window
}

void StudyPlot::watchRun(Run& run) {
    watch(run.runner, {[this, &run] { start(run); },
                       [this, &run](const study::Point& point) { takePoint(run, point); },
                       [this, &run](const study::Table& table) { takeTable(run, table); }});
}

void StudyPlot::showSolution(const SolutionPointer& solution) {
    now_.solution = solution;
    showRange();
    start(now_);
    // The range may follow the design: the baseline is compared over the same one.
    if (before_.solution && before_.range != range())
        start(before_);
    subjectChanged();
    refill();
}

void StudyPlot::showBaseline(const SolutionPointer& baseline) {
    before_.solution = baseline;
    before_.points.clear();
    start(before_);
    refill();
}

void StudyPlot::start(Run& run) {
    run.fresh.clear();
    if (auto names = run.solution ? everyFigure(run.solution->design) : run.names;
        names != run.names) {
        run.names = std::move(names);
        run.points.clear(); // their values stand under other names
    }
    if (!mayStart(run.runner, run.solution && now_.solution))
        return;
    if (run.range != range())
        run.points.clear();
    run.range = range();
    run.runner.request(work(run.solution->design, run.range));
    sayState();
}

std::optional<std::size_t> StudyPlot::Run::placeOf(const QString& figure) const {
    const auto found = std::ranges::find(names, figure.toStdString());
    return found == names.end() ? std::nullopt
                                : std::optional(static_cast<std::size_t>(found - names.begin()));
}

void StudyPlot::startAnew() {
    now_.points.clear();
    before_.points.clear();
    if (!now_.solution)
        return;
    showRange();
    start(now_);
    start(before_);
    subjectChanged();
    refill();
}

/// In a drag old points are as good as new ones; after a jump both together would zigzag.
bool StudyPlot::isFarFromBefore(const Run& run, const study::Point& point) const {
    constexpr double far = 0.05; // of the value
    const auto old = run.points.find(point.parameter);
    if (old == run.points.end() || run.fresh.contains(point.parameter))
        return false;
    const auto valueOf = [](const study::Point& of, std::size_t place) {
        constexpr double none = std::numeric_limits<double>::quiet_NaN();
        return place < of.values.size() ? of.values[place].value_or(none) : none;
    };
    return std::ranges::any_of(figures_, [&](const QString& figure) {
        const auto place = run.placeOf(figure);
        if (!place)
            return false;
        const double now = valueOf(point, *place), before = valueOf(old->second, *place);
        return std::abs(now - before) > far * std::max(std::abs(now), std::abs(before));
    });
}

void StudyPlot::takePoint(Run& run, const study::Point& point) {
    if (isFarFromBefore(run, point)) {
        std::erase_if(run.points,
                      [&run](const auto& entry) { return !run.fresh.contains(entry.first); });
    }
    run.points.insert_or_assign(point.parameter, point);
    run.fresh.insert(point.parameter);
    refill();
}

void StudyPlot::takeTable(Run& run, const study::Table& table) {
    run.points.clear();
    for (const study::Point& point : table.points)
        run.points.emplace(point.parameter, point);
}

std::pair<double, double> StudyPlot::range() const {
    if (range_ || !now_.solution)
        return range_.value_or(std::pair(0.0, 0.0));
    return ownRange(now_.solution->design);
}

void StudyPlot::setRange(const std::optional<std::pair<double, double>>& wanted) {
    range_ = wanted;
    view_->release();
    startAnew();
    Q_EMIT stateChanged();
}

void StudyPlot::rangeTyped() {
    if (from_->value() < to_->value())
        setRange(std::pair(from_->value(), to_->value()));
}

void StudyPlot::showRange() {
    const QSignalBlocker quietFrom(from_), quietTo(to_);
    from_->setValue(range().first);
    to_->setValue(range().second);
}

void StudyPlot::setFigures(const QStringList& figures) {
    figures_ = figures;
    view_->release();
    refill();
    Q_EMIT stateChanged();
}

void StudyPlot::toggle(const QString& figure, bool shown) {
    QStringList next = figures_;
    next.removeAll(figure);
    if (shown)
        next.append(figure);
    // At most two units share the plot: a third one replaces the first.
    QStringList units;
    for (auto i = next.size() - 1; i >= 0; --i) {
        const QString unit = unitOf(next[i]);
        if (!units.contains(unit) && units.size() == 2)
            next.removeAt(i);
        else if (!units.contains(unit))
            units.append(unit);
    }
    setFigures(next);
}

const solution::Figure* StudyPlot::figureOf(const QString& name) const {
    return now_.solution ? now_.solution->figure(name.toStdString()) : nullptr;
}

QString StudyPlot::labelOf(const QString& figure) const {
    const auto* found = figureOf(figure);
    return found ? coreText(found->label) : figure;
}

QString StudyPlot::unitOf(const QString& figure) const {
    const auto* found = figureOf(figure);
    return found ? QString::fromStdString(found->symbolOfUnit()) : QString();
}

Tone StudyPlot::toneOf(qsizetype place) const {
    const auto* figure = figureOf(figures_[place]);
    if (const auto side = figure ? sideOf(*figure) : std::nullopt)
        return *side == End::inlet ? Tone::inlet : Tone::exhaust;
    return place % 2 == 0 ? Tone::ink : Tone::quiet;
}

void StudyPlot::fill(QCPGraph& graph, const Run& run, const QString& figure) const {
    const Unit unit = unitFor(unitOf(figure));
    QVector<QCPGraphData> line;
    if (const auto place = run.solution ? run.placeOf(figure) : std::nullopt) {
        for (const auto& [parameter, point] : run.points) {
            line.append({parameter, unit.shown(point.values[*place].value_or(
                                        std::numeric_limits<double>::quiet_NaN()))});
        }
    }
    graph.data()->set(line, true);
}

void StudyPlot::setBands(BandsBehind& bands) {
    bands_ = &bands;
    connect(bands_, &BandsBehind::changed, this, &StudyPlot::refill);
}

/// Two filled areas of a figure that the bands know.
void StudyPlot::addBand(const QString& figure, QCPAxis* axis) {
    using unknowns::Quantiles;
    const auto quantity = bands_ ? curveQuantity(figure) : std::nullopt;
    if (!quantity || bands_->curve().empty())
        return;
    const Unit unit = unitFor(unitOf(figure));
    const auto edge = [&](double Quantiles::*which) {
        QCPGraph* graph = plot_->addGraph(plot_->xAxis, axis);
        graph->setPen(Qt::NoPen);
        for (const unknowns::CurvePoint& point : bands_->curve()) {
            if (const auto& band = point.band[*quantity])
                graph->addData(point.speed, unit.shown((*band).*which));
        }
        return graph;
    };
    QCPGraph* low = edge(&Quantiles::p05);
    QCPGraph* outer = edge(&Quantiles::p95);
    outer->setChannelFillGraph(low);
    QCPGraph* innerLow = edge(&Quantiles::p25);
    QCPGraph* inner = edge(&Quantiles::p75);
    inner->setChannelFillGraph(innerLow);
    bandGraphs_.push_back({outer, inner, figures_.indexOf(figure)});
}

void StudyPlot::refill() {
    plot_->clearGraphs();
    graphs_.clear();
    bandGraphs_.clear();
    findBeyond();
    QStringList units;
    for (const QString& figure : figures_) {
        const QString unit = unitOf(figure);
        if (!units.contains(unit))
            units.append(unit);
        QCPAxis* axis = units.indexOf(unit) == 0 ? plot_->yAxis : plot_->yAxis2;
        addBand(figure, axis);
        QCPGraph* before = plot_->addGraph(plot_->xAxis, axis);
        QCPGraph* now = plot_->addGraph(plot_->xAxis, axis);
        const QString name = axisText(labelOf(figure), unit);
        now->setName(name);
        before->setName(tr("%1, baseline").arg(name));
        fill(*before, before_, figure);
        fill(*now, now_, figure);
        graphs_.push_back({now, before});
    }
    plot_->yAxis2->setVisible(units.size() > 1);
    plot_->yAxis->setLabel(unitFor(units.value(0)).text);
    plot_->yAxis2->setLabel(unitFor(units.value(1)).text);
    plot_->xAxis->setLabel(axisLabel());
    scaleAxes();
    hatchBeyond();
    if (now_.solution) {
        const double at = parameterOf(now_.solution->design);
        standAt(*mark_, at);
        if (!pointing_)
            readAt_ = at;
    }
    applyTones();
    readOut(readAt_);
    plot_->replot(QCustomPlot::rpQueuedReplot);
}

/// What a person looks at stays; else the design's own curves decide, not the baseline.
void StudyPlot::scaleAxes() {
    if (view_->isChosen())
        return;
    for (QCPAxis* axis : {plot_->yAxis, plot_->yAxis2}) {
        std::optional<QCPRange> own, others;
        bool isFromZero = false;
        for (size_t i = 0; i < graphs_.size(); ++i) {
            if (graphs_[i].now->valueAxis() != axis)
                continue;
            own = united(own, rangeOf(*graphs_[i].now, Qt::Vertical));
            others = united(others, rangeOf(*graphs_[i].before, Qt::Vertical));
            const auto* figure = figureOf(figures_[static_cast<qsizetype>(i)]);
            isFromZero |= figure && startsAtZero(*figure);
        }
        for (const Band& band : bandGraphs_) {
            if (band.outer->valueAxis() == axis) {
                own = united(own, united(rangeOf(*band.outer, Qt::Vertical),
                                         rangeOf(*band.outer->channelFillGraph(), Qt::Vertical)));
            }
        }
        constexpr double room = 0.06;
        showContent(*axis, contentRange(own, others), room);
        if (isFromZero && own && own->lower >= 0.0)
            axis->setRangeLower(0.0);
    }
    if (now_.solution)
        plot_->xAxis->setRange(range().first, range().second);
}

void StudyPlot::applyTones() {
    // The plot inside learns of another theme after its owner.
    const Palette& tones = Palette::of(*this);
    applyPlotTones(*plot_, tones);
    mark_->setPen(QPen(tones.cursor, 1.2));
    for (const Band& band : bandGraphs_) {
        const QColor colour = colourOf(tones, toneOf(band.figure));
        band.outer->setBrush(outerBand(colour));
        band.inner->setBrush(innerBand(colour));
    }
    for (size_t i = 0; i < graphs_.size(); ++i) {
        const auto place = static_cast<qsizetype>(i);
        const QColor colour = colourOf(tones, toneOf(place));
        const auto shape = dotShapes[i % std::size(dotShapes)];
        graphs_[i].now->setPen(QPen(colour, 1.8));
        graphs_[i].now->setScatterStyle(
            QCPScatterStyle(shape, colour, colour, shape == dotShapes[0] ? 3.5 : 5.5));
        graphs_[i].before->setPen(QPen(tones.baseline(colour), 1.4, Qt::DashLine));
    }
    for (QCPItemRect* hatch : hatches_)
        hatch->setBrush(QBrush(beyondHatch(tones)));
}

StudyPane::Count StudyPlot::count() const {
    const auto failed = std::ranges::count_if(
        now_.points, [](const auto& entry) { return !entry.second.failure.empty(); });
    const qsizetype wanted = pointsWanted();
    return {std::min(static_cast<qsizetype>(now_.fresh.size()), wanted), wanted, failed,
            static_cast<qsizetype>(now_.points.size())};
}

void StudyPlot::addOptions(QMenu& menu) {
    addChoices(menu);
    QMenu* choice = menu.addMenu(tr("&Results"));
    for (const std::string& name : now_.names) {
        const QString figure = QString::fromStdString(name);
        const QString unit = unitFor(unitOf(figure)).text;
        addCheck(
            *choice, unit.isEmpty() ? labelOf(figure) : tr("%1 (%2)").arg(labelOf(figure), unit),
            figures_.contains(figure), this, [this, figure](bool shown) { toggle(figure, shown); });
    }
    menu.addAction(tr("Range &follows the design"), this, [this] { setRange({}); });
    if (bands_)
        bands_->addAction(menu);
    menu.addSeparator();
    addPictureActions(menu, *this, title());
}

QString StudyPlot::state() const {
    QString text = figures_.join(QLatin1Char('+'));
    if (range_)
        text += QStringLiteral(";%1;%2").arg(range_->first).arg(range_->second);
    return text;
}

void StudyPlot::restoreState(const QString& state) {
    const QStringList parts = state.split(QLatin1Char(';'));
    const QStringList kept = parts.value(0).split(QLatin1Char('+'), Qt::SkipEmptyParts);
    if (!kept.isEmpty())
        setFigures(kept);
    bool isFrom = false, isTo = false;
    const double from = parts.value(1).toDouble(&isFrom), to = parts.value(2).toDouble(&isTo);
    if (isFrom && isTo && from < to)
        setRange(std::pair(from, to));
}

} // namespace lobewright::ui
