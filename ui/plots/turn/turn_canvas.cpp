#include "ui/plots/turn/turn_canvas.h"

#include "core/units.h"
#include "ui/base/curve.h"
#include "ui/base/type_scale.h"
#include "ui/base/units.h"
#include "ui/plots/base/angle_ticks.h"
#include "ui/plots/base/low_frames.h"
#include "ui/plots/base/painted_layer.h"
#include "ui/plots/base/plain_ticks.h"
#include "ui/plots/base/plot_tones.h"
#include "ui/plots/base/turn_events.h"

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {

// Fixed side margins: the cursors of plots that stand above each other stay in line.
// A drag past the right edge stays there instead of starting the turn again.
constexpr double lastAngle = units::turn * (1.0 - 1e-9);
constexpr int laneHeight = 16;  // [px]
constexpr int rightMargin = 14; // where no axis is

} // namespace

TurnCanvas::TurnCanvas(TurnCursor& cursor, QWidget* parent)
    : QCustomPlot(parent), cursor_(cursor), cycleTicks_(new CycleTicks) {
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setNoAntialiasingOnDrag(false);
    setMinimumSize(160, 90);
    buildLayers();
    xAxis->setTicker(QSharedPointer<QCPAxisTicker>(new ShaftTicks));
    xAxis2->setTicker(cycleTicks_);
    xAxis2->setVisible(true);
    yAxis2->setVisible(false);
    for (QCPAxis* axis : {xAxis, xAxis2, yAxis, yAxis2}) {
        axis->setTickLengthIn(0);
        axis->setTickLengthOut(4);
        axis->setSubTickLength(0, 2);
        axis->setTickLabelPadding(2);
        axis->setLabelPadding(2);
        axis->setNumberPrecision(5);
    }
    yAxis->ticker()->setTickCount(5);
    yAxis2->ticker()->setTickCount(5);
    axisRect()->setAutoMargins(QCP::msTop | QCP::msBottom);
    axisRect()->setMinimumMargins(QMargins(0, 4, 0, 4));

    addPaint(
        "axes", [this](QCPPainter& painter) { paintCorners(painter); }, false);
    addPaint(cursorLayer, [this](QCPPainter& painter) { paintCursor(painter); });

    connect(this, &QCustomPlot::afterLayout, this, [this] {
        if (fitFrame())
            layOutAgain(*this);
        fitLabels(); // to the height that it has now
        const int high = axisRect()->height();
        const bool isLeftNew = fitTicks(*yAxis, high), isRightNew = fitTicks(*yAxis2, high);
        if (isLeftNew || isRightNew)
            layOutAgain(*this);
    });
    connect(&cursor_, &TurnCursor::angleChanged, this, [this] { refreshLayer(cursorLayer); });
    connect(&cursor_, &TurnCursor::shownChanged, this, [this] {
        applyShown();
        replot(rpQueuedReplot);
    });
    connect(&Units::instance(), &Units::changed, this, [this] {
        valueZoomed_ = false; // a range of values in the other unit
        setLeftLabel(leftQuantity_, leftUnit_);
        setRightLabel(rightQuantity_, rightUnit_);
    });
    applyShown();
    applyTones();
}

void TurnCanvas::buildLayers() {
    addLayer(QLatin1String(shading), layer(QLatin1String("grid")));
    addLayer(QLatin1String(baseline), layer(QLatin1String(shading)));
    addLayer(QLatin1String(marks), layer(QLatin1String("axes")));
    addLayer(QLatin1String(handles), layer(QLatin1String("overlay")));
    addLayer(QLatin1String(cursorLayer), layer(QLatin1String(handles)));
    layer(QLatin1String(handles))->setMode(QCPLayer::lmBuffered);
    layer(QLatin1String(cursorLayer))->setMode(QCPLayer::lmBuffered);
}

void TurnCanvas::setCycles(const mechanism::OpposedPair& pair) {
    std::vector<double> centres = innerDeadCentres(pair);
    for (double& centre : centres)
        centre /= units::degree;
    cycleTicks_->setCycles(std::move(centres), pair.cyclesPerTurn());
}

void TurnCanvas::setLeftLabel(const QString& quantity, const QString& unit) {
    leftQuantity_ = quantity;
    leftUnit_ = unit;
    fitLabels();
}

/// A low plot names only the unit: a title that is cut off at both ends names nothing.
void TurnCanvas::fitLabels() {
    const auto fit = [this](QCPAxis& axis, const QString& quantity, const QString& unit) {
        const QString whole = axisText(quantity, unit);
        const double room = axisRect()->height();
        const bool fits = QFontMetricsF(axis.labelFont()).horizontalAdvance(whole) <= room;
        if (isSparkline_) {
            axis.setLabel({});
            return;
        }
        axis.setLabel(fits || unit.isEmpty() ? whole : axisText({}, unit));
    };
    fit(*yAxis, leftQuantity_, leftUnit_);
    fit(*yAxis2, rightQuantity_, rightUnit_);
}

/// What finds no room goes, the cycle's angles first, then every number: the curves keep theirs.
/// True: something came or went.
bool TurnCanvas::fitFrame() {
    const int letters = QFontMetrics(xAxis->tickLabelFont()).height();
    const int lane = std::max(laneHeight, letters);
    const int axis = letters + xAxis->tickLengthOut() + xAxis->tickLabelPadding();
    const int high = viewport().height(); // on paper another one than the widget's
    const bool hasCycleAngles = high - lane - 2 * axis >= leastFrame;
    const bool isSparkline = !hasCycleAngles && high - lane - axis < leastFrame;
    const bool isChanged = isSparkline != isSparkline_ || hasCycleAngles != xAxis2->tickLabels();
    isSparkline_ = isSparkline;
    plotLayout()->setMargins(QMargins(0, isSparkline_ ? 0 : lane, 0, 0));
    xAxis2->setTicks(hasCycleAngles);
    xAxis2->setTickLabels(hasCycleAngles);
    for (QCPAxis* each : {xAxis, yAxis, yAxis2}) {
        each->setTicks(!isSparkline_);
        each->setTickLabels(!isSparkline_);
    }
    fitLabels();
    return isChanged;
}

void TurnCanvas::setRightLabel(const QString& quantity, const QString& unit) {
    rightQuantity_ = quantity;
    rightUnit_ = unit;
    const QString text = axisText(quantity, unit);
    yAxis2->setVisible(!text.isEmpty());
    fitLabels();
    fitSides();
}

/// Room for five digits with their sign, and the name of the axis beside them.
int TurnCanvas::sideMargin() const {
    constexpr int gaps = 9; // [px]
    const QFontMetrics letters(xAxis->tickLabelFont());
    return letters.horizontalAdvance(QStringLiteral("−00000")) + letters.height() + gaps;
}

void TurnCanvas::fitSides() {
    axisRect()->setMargins(
        QMargins(sideMargin(), 0, yAxis2->visible() ? sideMargin() : rightMargin, 0));
}

void TurnCanvas::addPaint(const char* layerName, Paint paint, bool inside) {
    new PaintedLayer(*this, layerName, std::move(paint), inside); // owned by the plot
}

double TurnCanvas::xOf(double theta) const {
    return xAxis->coordToPixel(theta / units::degree);
}

double TurnCanvas::thetaAt(double x) const {
    return xAxis->pixelToCoord(x) * units::degree;
}

QRectF TurnCanvas::lane() const {
    return {static_cast<double>(axisRect()->left()), 0.0, static_cast<double>(axisRect()->width()),
            static_cast<double>(plotLayout()->margins().top())};
}

QRectF TurnCanvas::inside() const {
    return axisRect()->rect();
}

void TurnCanvas::setContent(const QCPRange& left, const std::optional<QCPRange>& right) {
    leftContent_ = left;
    rightContent_ = right;
    if (valueZoomed_ || isHeld_)
        return;
    yAxis->setRange(left);
    if (right)
        yAxis2->setRange(*right);
}

void TurnCanvas::holdContent(bool isHeld) {
    isHeld_ = isHeld;
    if (isHeld)
        return;
    setContent(leftContent_, rightContent_);
    replot(rpQueuedReplot);
}

void TurnCanvas::refreshLayer(const char* name) {
    layer(QLatin1String(name))->replot();
}

void TurnCanvas::resetView() {
    valueZoomed_ = false;
    setContent(leftContent_, rightContent_);
    cursor_.showWholeTurn();
    replot(rpQueuedReplot);
}

void TurnCanvas::applyShown() {
    const QCPRange range(cursor_.shownFrom() / units::degree, cursor_.shownTo() / units::degree);
    xAxis->setRange(range);
    xAxis2->setRange(range);
}

void TurnCanvas::applyTones() {
    const Palette& palette = tones();
    setBackground(palette.paper);
    const QFont small = sized(font(), TypeSize::small);
    for (QCPAxis* axis : {xAxis, xAxis2, yAxis, yAxis2}) {
        usePlainTicks(*axis);
        applyAxisTones(*axis, palette, small);
        axis->grid()->setZeroLinePen(QPen(palette.quiet, 1));
    }
    xAxis->grid()->setZeroLinePen(QPen(palette.grid, 1));
    fitSides();
    fitFrame();
}

void TurnCanvas::changeEvent(QEvent* event) {
    QCustomPlot::changeEvent(event);
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) {
        applyTones();
        Q_EMIT tonesChanged();
        replot(rpQueuedReplot);
    }
}

void TurnCanvas::paintCorners(QCPPainter& painter) const {
    if (isSparkline_) {
        paintEnds(painter);
        return;
    }
    QFont small = xAxis->tickLabelFont();
    const int room = sideMargin() - 12;
    for (const QString& word : {tr("shaft °"), tr("cycle °")}) // the margin does not grow with them
        small = fitted(small, room / QFontMetricsF(small).horizontalAdvance(word));
    painter.setFont(small);
    painter.setPen(tones().quiet);
    const QRect box = axisRect()->rect();
    const int height = QFontMetrics(painter.font()).height();
    const QRect below(0, box.bottom() + 7, sideMargin() - 10, height);
    const QRect above(0, box.top() - 7 - height, sideMargin() - 10, height);
    painter.drawText(below, Qt::AlignRight | Qt::AlignVCenter, tr("shaft °"));
    if (xAxis2->tickLabels())
        painter.drawText(above, Qt::AlignRight | Qt::AlignVCenter, tr("cycle °"));
}

/// The ends of the scale, beside the frame.
void TurnCanvas::paintEnds(QCPPainter& painter) const {
    constexpr int gap = 4; // [px]
    const QRect box = axisRect()->rect();
    painter.setFont(xAxis->tickLabelFont());
    painter.setPen(tones().quiet);
    if (box.height() < 2 * painter.fontMetrics().height())
        return;
    const QRect left(0, box.top(), box.left() - gap, box.height());
    const QRect right(box.right() + gap, box.top(), width() - box.right() - gap, box.height());
    for (const auto& [axis, place, side] :
         {std::tuple(yAxis, left, Qt::AlignRight), std::tuple(yAxis2, right, Qt::AlignLeft)}) {
        if (!axis->visible())
            continue;
        painter.drawText(place, side | Qt::AlignTop, shortText(axis->range().upper));
        painter.drawText(place, side | Qt::AlignBottom, shortText(axis->range().lower));
    }
}

void TurnCanvas::paintCursor(QCPPainter& painter) const {
    const QRectF box = inside();
    const double x = xOf(cursor_.angle());
    painter.setPen(QPen(tones().cursor, 1.4));
    painter.drawLine(QPointF(x, box.top()), QPointF(x, box.bottom()));
    if (hold_ == Hold::range) {
        const double from = xOf(rangeFrom_);
        QColor veil = tones().cursor;
        veil.setAlphaF(0.18F);
        painter.fillRect(QRectF(QPointF(from, box.top()), QPointF(lastAt_.x(), box.bottom())),
                         veil);
    }
}

void TurnCanvas::zoomAngle(double factor, double about) {
    const double from = about - (about - cursor_.shownFrom()) * factor;
    cursor_.show(from, from + (cursor_.shownTo() - cursor_.shownFrom()) * factor);
}

void TurnCanvas::zoomValue(double factor, double about) {
    valueZoomed_ = true;
    const double centre = yAxis->pixelToCoord(about), centre2 = yAxis2->pixelToCoord(about);
    yAxis->scaleRange(factor, centre);
    yAxis2->scaleRange(factor, centre2);
    replot(rpQueuedReplot);
}

void TurnCanvas::toStop(bool forward) {
    if (const auto stop = nextStop(stops_, cursor_.angle(), forward))
        cursor_.setAngle(*stop);
}

void TurnCanvas::panBy(const QPointF& pixels) {
    const double width = cursor_.shownTo() - cursor_.shownFrom();
    const double step = -pixels.x() / inside().width() * width;
    const double from = std::clamp(cursor_.shownFrom() + step, 0.0, units::turn - width);
    cursor_.show(from, from + width);
    if (pixels.y() != 0.0) {
        valueZoomed_ = true;
        for (QCPAxis* axis : {yAxis, yAxis2})
            axis->moveRange(axis->range().size() * pixels.y() / inside().height());
        replot(rpQueuedReplot);
    }
}

void TurnCanvas::mousePressEvent(QMouseEvent* event) {
    const QPointF at = event->position();
    lastAt_ = at;
    if (event->button() == Qt::RightButton) {
        Q_EMIT menuWanted(event->globalPosition().toPoint());
    } else if (event->button() == Qt::MiddleButton) {
        hold_ = Hold::pan;
        setCursor(Qt::ClosedHandCursor);
    } else if (event->button() == Qt::LeftButton && (event->modifiers() & Qt::ShiftModifier)) {
        hold_ = Hold::range;
        rangeFrom_ = thetaAt(at.x());
    } else if (event->button() == Qt::LeftButton) {
        hold_ = Hold::cursor;
        cursor_.setAngle(std::clamp(thetaAt(at.x()), 0.0, lastAngle));
    }
    event->accept();
}

void TurnCanvas::mouseMoveEvent(QMouseEvent* event) {
    const QPointF at = event->position();
    switch (hold_) {
    case Hold::nothing:
        setCursor(Qt::ArrowCursor);
        break;
    case Hold::cursor:
        cursor_.setAngle(std::clamp(thetaAt(at.x()), 0.0, lastAngle));
        break;
    case Hold::pan:
        panBy(at - lastAt_);
        break;
    case Hold::range:
        break;
    }
    lastAt_ = at;
    if (hold_ == Hold::range)
        refreshLayer(cursorLayer);
    event->accept();
}

void TurnCanvas::mouseReleaseEvent(QMouseEvent* event) {
    const Hold held = std::exchange(hold_, Hold::nothing);
    if (held == Hold::pan)
        setCursor(Qt::ArrowCursor);
    if (held == Hold::range) {
        const double to = thetaAt(event->position().x());
        if (std::abs(xOf(to) - xOf(rangeFrom_)) > 4.0)
            cursor_.show(std::min(rangeFrom_, to), std::max(rangeFrom_, to));
        refreshLayer(cursorLayer);
    }
    event->accept();
}

void TurnCanvas::mouseDoubleClickEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton)
        return;
    resetView();
    event->accept();
}

void TurnCanvas::wheelEvent(QWheelEvent* event) {
    const double factor = std::pow(0.85, event->angleDelta().y() / 120.0);
    if (event->modifiers() & Qt::ControlModifier)
        zoomValue(factor, event->position().y());
    else
        zoomAngle(factor, thetaAt(event->position().x()));
    event->accept();
}

void TurnCanvas::keyPressEvent(QKeyEvent* event) {
    double step = 0.5;
    if (event->modifiers() & Qt::ShiftModifier)
        step = 0.1;
    if (event->modifiers() & Qt::ControlModifier)
        step = 10.0;
    switch (event->key()) {
    case Qt::Key_Left:
        cursor_.setAngle(cursor_.angle() - step * units::degree);
        break;
    case Qt::Key_Right:
        cursor_.setAngle(cursor_.angle() + step * units::degree);
        break;
    case Qt::Key_Plus:
    case Qt::Key_Equal:
        zoomIn();
        break;
    case Qt::Key_Minus:
        zoomOut();
        break;
    case Qt::Key_Space:
        cursor_.togglePlaying();
        break;
    case Qt::Key_PageDown:
        toStop(true);
        break;
    case Qt::Key_PageUp:
        toStop(false);
        break;
    case Qt::Key_Home:
        resetView();
        break;
    default:
        QCustomPlot::keyPressEvent(event);
    }
}

} // namespace lobewright::ui
