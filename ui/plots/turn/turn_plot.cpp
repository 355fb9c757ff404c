#include "ui/plots/turn/turn_plot.h"

#include "core/units.h"
#include "ui/base/drawing.h"
#include "ui/base/layouts.h"
#include "ui/base/units.h"
#include "ui/base/watching.h"
#include "ui/plots/base/angle_ticks.h"
#include "ui/plots/base/bands_behind.h"
#include "ui/plots/base/event_lane.h"
#include "ui/plots/base/kept_view.h"
#include "ui/plots/base/plot_export.h"
#include "ui/plots/base/readout_strip.h"
#include "ui/plots/base/thin_line.h"

#include <QMenu>

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {

void fill(QCPGraph& graph, const Samples& theta, const Samples& values) {
    QVector<QCPGraphData> points(static_cast<int>(theta.size()));
    for (Eigen::Index i = 0; i < theta.size(); ++i)
        points[static_cast<int>(i)] = {theta[i] / units::degree, values[i]};
    graph.data()->set(points, true);
}

double largestOf(const Samples& values) {
    const auto range = rangeOf(values);
    return range ? std::max(std::abs(range->lower), std::abs(range->upper)) : 0.0;
}

/// Where the least and the largest finite value stand; −1: there is none.
std::pair<Eigen::Index, Eigen::Index> extremesOf(const Samples& values) {
    Eigen::Index least = -1, most = -1;
    for (Eigen::Index i = 0; i < values.size(); ++i) {
        if (!std::isfinite(values[i]))
            continue;
        if (least < 0 || values[i] < values[least])
            least = i;
        if (most < 0 || values[i] > values[most])
            most = i;
    }
    return {least, most};
}

} // namespace

TurnPlot::TurnPlot(TurnCursor& cursor, const QString& title, QWidget* parent)
    : QWidget(parent), title_(title), canvas_(new TurnCanvas(cursor, this)),
      readout_(new ReadoutStrip(this)) {
    columnOf(this, {0, 0, 0, 0}, 0, {readout_, {canvas_, 1}});
    setFocusProxy(canvas_);
    helpByPlace(*canvas_, [this](const QPoint& at) { return eventAt(at); });
    canvas_->setAccessibleName(title);
    canvas_->addPaint(TurnCanvas::marks, [this](QCPPainter& painter) {
        paintMarks(painter);
        paintRattles(painter);
    });
    canvas_->addPaint(
        TurnCanvas::marks, [this](QCPPainter& painter) { paintLane(painter); }, false);
    canvas_->addPaint(TurnCanvas::cursorLayer, [this](QCPPainter& painter) { paintDots(painter); });
    connect(&cursor, &TurnCursor::angleChanged, this, &TurnPlot::readOut);
    connect(canvas_, &TurnCanvas::menuWanted, this, &TurnPlot::showMenu);
    connect(&Units::instance(), &Units::changed, this, &TurnPlot::refresh);
    connect(canvas_, &TurnCanvas::tonesChanged, this, [this] {
        applyPens();
        refresh();
    });
}

void TurnPlot::setBands(BandsBehind& bands) {
    bands_ = &bands;
    canvas_->addPaint(TurnCanvas::shading, [this](QCPPainter& painter) { paintBands(painter); });
    connect(bands_, &BandsBehind::changed, this, &TurnPlot::refresh);
}

void TurnPlot::refresh() {
    if (geometry_)
        refill();
}

void TurnPlot::takeChoice() {
    refresh();
    Q_EMIT stateChanged();
}

void TurnPlot::showSolution(const SolutionPointer& solution) {
    solution_ = solution;
    if (!solution_)
        return;
    solvedGeometry_ = geometryOf(*solution_);
    showGeometry(solvedGeometry_);
}

void TurnPlot::showBaseline(const SolutionPointer& baseline) {
    baseline_ = baseline;
    baselineGeometry_ = baseline_ ? geometryOf(*baseline_) : nullptr;
    refresh();
}

void TurnPlot::showGeometry(const GeometryPointer& geometry) {
    geometry_ = geometry;
    events_ = turnEvents(geometry_->pair, geometry_->timing);
    rattles_ = isSolved() ? rattles(*solution_) : std::vector<Rattle>();
    canvas_->setCycles(geometry_->pair);
    std::vector<double> stops;
    for (const TurnEvent& event : events_)
        stops.push_back(event.theta);
    canvas_->setStops(std::move(stops));
    refill();
}

size_t TurnPlot::addCurve(const CurveLook& look) {
    Curve curve;
    curve.look = look;
    QCPAxis* value = look.onRight ? canvas_->yAxis2 : canvas_->yAxis;
    curve.before = new ThinGraph(canvas_->xAxis, value); // owned by the plot
    curve.before->setLayer(QLatin1String(TurnCanvas::baseline));
    curve.now = new ThinGraph(canvas_->xAxis, value);
    curves_.push_back(curve);
    applyPens();
    return curves_.size() - 1;
}

PerEnd<size_t> TurnPlot::addSides(CurveLook look, QString (*label)(End, bool)) {
    PerEnd<size_t> sides;
    for (const End end : bothEnds) {
        look.label = label(end, false);
        look.alone = label(end, true);
        look.tone = toneOf(end);
        sides[end] = addCurve(look);
    }
    return sides;
}

void TurnPlot::clearCurves() {
    for (const Curve& curve : curves_) {
        canvas_->removeGraph(curve.now);
        canvas_->removeGraph(curve.before);
    }
    curves_.clear();
}

void TurnPlot::setLook(size_t index, const CurveLook& look) {
    curves_[index].look = look;
    applyPens();
}

void TurnPlot::applyPens() {
    for (const Curve& curve : curves_) {
        const QColor colour = colourOf(tones(), curve.look.tone);
        curve.now->setPen(QPen(colour, curve.look.width, curve.look.style));
        curve.before->setPen(QPen(tones().baseline(colour), 1.4, Qt::DashLine));
    }
}

const QString& TurnPlot::labelOf(const CurveLook& look) const {
    const bool isAlone = geometry_ && geometry_->pair.mechanism().isOneSided();
    return isAlone && !look.alone.isEmpty() ? look.alone : look.label;
}

void TurnPlot::setValues(size_t index, const Samples& theta, const Samples& values) {
    Curve& target = curves_[index];
    target.theta = theta;
    target.values = unitFor(target.look.unit).shown(values);
    target.now->setName(axisText(labelOf(target.look), target.look.unit));
    fill(*target.now, theta, target.values);
}

void TurnPlot::setBaselineValues(size_t index, const Samples& theta, const Samples& values) {
    Curve& target = curves_[index];
    target.baselineTheta = theta;
    target.baselineValues = unitFor(target.look.unit).shown(values);
    target.before->setName(
        tr("%1, baseline").arg(axisText(labelOf(target.look), target.look.unit)));
    fill(*target.before, theta, target.baselineValues);
}

void TurnPlot::setFromChannel(size_t index, std::string_view name) {
    curves_[index].channel = name;
    setFromSolutions(index, [name](const solution::Solution& solution) {
        const auto* channel = solution.channel(name);
        return channel ? Line{solution.theta, channel->values} : Line{};
    });
}

void TurnPlot::setFromSolutions(size_t index,
                                const std::function<Line(const solution::Solution&)>& of) {
    const Line now = solution_ ? of(*solution_) : Line{};
    const Line before = baseline_ ? of(*baseline_) : Line{};
    setValues(index, now.theta, now.values);
    setBaselineValues(index, before.theta, before.values);
}

void TurnPlot::setFromGeometry(size_t index, const std::function<Line(const Geometry&)>& of) {
    const Line now = of(*geometry_);
    const bool isCompared = baselineGeometry_ && now.theta.size() > 0;
    const Line before = isCompared ? of(*baselineGeometry_) : Line{};
    setValues(index, now.theta, now.values);
    setBaselineValues(index, before.theta, before.values);
}

void TurnPlot::setCurveVisible(size_t index, bool visible) {
    curves_[index].visible = visible;
    curves_[index].now->setVisible(visible);
    curves_[index].before->setVisible(visible);
}

void TurnPlot::setSidesVisible(const PerEnd<size_t>& sides, bool visible) {
    for (const End end : bothEnds)
        setCurveVisible(sides[end], visible);
}

QCPRange TurnPlot::contentRange(bool onRight) const {
    std::optional<QCPRange> own, before;
    for (const Curve& curve : curves_) {
        if (curve.visible && curve.look.onRight == onRight) {
            own = united(own, rangeOf(curve.values));
            before = united(before, rangeOf(curve.baselineValues));
            if (const auto* band = bands_ ? bands_->channel(curve.channel) : nullptr) {
                for (const Samples& edge : {band->front(), band->back()})
                    own = united(own, rangeOf(unitFor(curve.look.unit).shown(edge)));
            }
        }
    }
    return ui::contentRange(own, before).value_or(QCPRange(0.0, 1.0));
}

void TurnPlot::finishRefill() {
    const auto padded = [](QCPRange range) {
        double size = range.size();
        if (size <= 0.0)
            size = std::max(1.0, std::abs(range.upper));
        return QCPRange(range.lower - 0.05 * size, range.upper + 0.05 * size);
    };
    const bool right = canvas_->yAxis2->visible();
    canvas_->setContent(padded(contentRange(false)),
                        right ? std::optional(padded(contentRange(true))) : std::nullopt);
    listReadout();
    canvas_->replot(QCustomPlot::rpQueuedReplot);
}

void TurnPlot::listReadout() {
    readoutCurves_.clear();
    std::vector<ReadoutStrip::Item> items;
    for (size_t i = 0; i < curves_.size(); ++i) {
        const Curve& curve = curves_[i];
        // A one-sided engine has no exhaust piston to say nothing of.
        const bool isOfNoPiston = curve.look.tone == Tone::exhaust && curve.values.size() == 0 &&
                                  geometry_->pair.mechanism().isOneSided();
        if (!curve.visible || !curve.look.inReadout || isOfNoPiston)
            continue;
        readoutCurves_.push_back(i);
        items.push_back({curve.now->pen(),
                         labelOf(curve.look),
                         {},
                         unitFor(curve.look.unit).text,
                         curve.look.help});
        const double at = valueAt(curve.theta, curve.values, canvas_->cursor().angle());
        items.back().value = valueText(at, largestOf(curve.values));
    }
    listClipped(items);
    for (ReadoutStrip::Item& remark : remarks()) {
        remark.isFixed = true;
        items.push_back(std::move(remark));
    }
    if (bands_ && bands_->isShown() &&
        std::ranges::any_of(curves_, [](const Curve& curve) { return !curve.channel.empty(); }))
        items.push_back({QPen(outerBand(tones().ink), 8.0), tr("bands"), bands_->words(true),
                         QString(), QString(), true});
    if (!rattles_.empty()) {
        items.push_back(
            {QPen(tones().warning, 1.5), tr("flank changes per revolution"),
             QString::number(rattles_.size()), QString(),
             tr("Wedges on the lower edge: where the load of cylinder 1 leaves the push "
                "flank of the closed track (down) or comes back to it (up); the roller "
                "rattles and its spin reverses"),
             true});
    }
    readout_->setItems(std::move(items));
}

/// The baseline does not set the range: where it leaves it, how far it goes.
void TurnPlot::listClipped(std::vector<ReadoutStrip::Item>& items) const {
    for (const Curve& curve : curves_) {
        const auto [least, most] = extremesOf(curve.baselineValues);
        const QCPRange range = curve.now->valueAxis()->range();
        if (!curve.visible || least < 0)
            continue;
        const double high = curve.baselineValues[most], low = curve.baselineValues[least];
        QStringList values;
        if (high > range.upper)
            values << QStringLiteral("▲ ") + valueText(high, largestOf(curve.baselineValues));
        if (low < range.lower)
            values << QStringLiteral("▼ ") + valueText(low, largestOf(curve.baselineValues));
        if (!values.isEmpty())
            items.push_back({curve.before->pen(), tr("baseline beyond the range"),
                             values.join(QStringLiteral(", ")), unitFor(curve.look.unit).text,
                             labelOf(curve.look), true});
    }
}

void TurnPlot::readOut() {
    for (size_t i = 0; i < readoutCurves_.size(); ++i) {
        const Curve& curve = curves_[readoutCurves_[i]];
        const double at = valueAt(curve.theta, curve.values, canvas_->cursor().angle());
        readout_->setValue(i, valueText(at, largestOf(curve.values)));
    }
}

/// Dotted lines at the events, and what of the baseline the range does not reach.
void TurnPlot::paintMarks(QCPPainter& painter) const {
    const QRectF box = canvas_->inside();
    painter.setAntialiasing(false); // crisp, and dots cost a tenth
    for (const TurnEvent& event : events_) {
        const double x = canvas_->xOf(event.theta);
        QColor faint = toneOf(tones(), event);
        faint.setAlphaF(0.45F);
        painter.setPen(QPen(faint, 1, Qt::DotLine));
        painter.drawLine(QPointF(x, box.top()), QPointF(x, box.bottom()));
    }
    painter.setAntialiasing(true);
    for (const Curve& curve : curves_) {
        if (curve.visible)
            paintClipped(painter, curve);
    }
}

/// A small arrow at the edge over the highest and the lowest value of a baseline that leaves it.
void TurnPlot::paintClipped(QCPPainter& painter, const Curve& curve) const {
    const QRectF box = canvas_->inside();
    const QCPRange range = curve.now->valueAxis()->range();
    constexpr double half = 4.0, height = 6.0;
    const auto [least, most] = extremesOf(curve.baselineValues);
    fillOnly(painter, tones().baseline(colourOf(tones(), curve.look.tone)));
    for (const auto& [place, isAbove] : {std::pair(most, true), std::pair(least, false)}) {
        if (place < 0 || (isAbove ? curve.baselineValues[place] <= range.upper
                                  : curve.baselineValues[place] >= range.lower))
            continue;
        const double x = canvas_->xOf(curve.baselineTheta[place]);
        const double tip = isAbove ? box.top() : box.bottom();
        const double foot = isAbove ? tip + height : tip - height;
        painter.drawPolygon(QPolygonF({{x - half, foot}, {x + half, foot}, {x, tip}}));
    }
    painter.setBrush(Qt::NoBrush);
}

void TurnPlot::paintLane(QCPPainter& painter) const {
    std::vector<LaneLetters> all;
    for (const TurnEvent& event : events_)
        all.push_back({canvas_->xOf(event.theta), letters(event.kind), toneOf(tones(), event)});
    painter.setFont(canvas_->xAxis->tickLabelFont());
    ui::paintLane(painter, canvas_->lane(), all);
}

/// The event whose letters stand here, spelt out; empty: none.
QString TurnPlot::eventAt(const QPointF& position) const {
    if (!canvas_->lane().contains(position))
        return {};
    constexpr double reach = 14.0; // [px]
    const TurnEvent* nearest = nullptr;
    double least = reach;
    for (const TurnEvent& event : events_) {
        const double away = std::abs(canvas_->xOf(event.theta) - position.x());
        if (away < least) {
            least = away;
            nearest = &event;
        }
    }
    if (!nearest)
        return {};
    const double cycle = cycleAngle(geometry_->pair, nearest->theta) / units::degree;
    return tr("%1: %2, at %3° of the shaft, %4° of the cycle")
        .arg(letters(nearest->kind), wordsOf(nearest->kind),
             degreesText(nearest->theta / units::degree, 2), degreesText(cycle, 2));
}

void TurnPlot::paintBands(QCPPainter& painter) const {
    for (const Curve& curve : curves_) {
        const auto* band = curve.visible ? bands_->channel(curve.channel) : nullptr;
        if (!band)
            continue;
        const Unit unit = unitFor(curve.look.unit);
        const QCPAxis* values = curve.now->valueAxis();
        const auto line = [&](std::size_t edge) {
            QPolygonF points;
            for (Eigen::Index i = 0; i < bands_->theta().size(); ++i)
                points.append({canvas_->xOf(bands_->theta()[i]),
                               values->coordToPixel(unit.shown((*band)[edge][i]))});
            return points;
        };
        const QColor colour = colourOf(tones(), curve.look.tone);
        paintBand(painter, line(0), line(4), outerBand(colour));
        paintBand(painter, line(1), line(3), innerBand(colour));
    }
}

/// A wedge on the lower edge in the colour of the side: down where the roller leaves the push
/// flank, up where it comes back to it.
void TurnPlot::paintRattles(QCPPainter& painter) const {
    const QRectF box = canvas_->inside();
    constexpr double half = 4.0, height = 7.0;
    for (const Rattle& rattle : rattles_) {
        const double x = canvas_->xOf(rattle.theta);
        if (x < box.left() || x > box.right())
            continue;
        const double foot = box.bottom() - (rattle.leavesPush ? height : 0.0);
        const double tip = box.bottom() - (rattle.leavesPush ? 0.0 : height);
        fillOnly(painter, tones().side(rattle.end));
        painter.drawPolygon(QPolygonF({{x - half, foot}, {x + half, foot}, {x, tip}}));
    }
    painter.setBrush(Qt::NoBrush);
}

void TurnPlot::paintDots(QCPPainter& painter) const {
    const double theta = canvas_->cursor().angle();
    for (const Curve& curve : curves_) {
        if (!curve.visible)
            continue;
        const double value = valueAt(curve.theta, curve.values, theta);
        if (!std::isfinite(value))
            continue;
        fillAndOutline(painter, colourOf(tones(), curve.look.tone), QPen(tones().paper, 1));
        painter.drawEllipse(
            QPointF(canvas_->xOf(theta), curve.now->valueAxis()->coordToPixel(value)), 3.2, 3.2);
    }
    painter.setBrush(Qt::NoBrush);
}

void TurnPlot::addOptions(QMenu& menu) {
    menu.addAction(tr("Zoom &in"), canvas_, &TurnCanvas::zoomIn);
    menu.addAction(tr("Zoom &out"), canvas_, &TurnCanvas::zoomOut);
    menu.addAction(tr("Show the &whole turn"), canvas_, &TurnCanvas::resetView);
    if (bands_)
        bands_->addAction(menu);
    menu.addSeparator();
    addPictureActions(menu, *this, title_);
}

void TurnPlot::showMenu(const QPoint& globalPosition) {
    QMenu menu(this);
    addOptions(menu);
    menu.exec(globalPosition);
}

} // namespace lobewright::ui
