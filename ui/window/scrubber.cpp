#include "ui/window/scrubber.h"

#include "core/units.h"
#include "ui/base/drawing.h"
#include "ui/base/palette.h"
#include "ui/base/watching.h"
#include "ui/plots/base/angle_ticks.h"
#include "ui/plots/base/turn_events.h"
#include "ui/scene/base/shown_engine.h"

#include <QMouseEvent>

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {

constexpr double beside = 7.0;    ///< room for half the mark at both ends [px]
constexpr double band = 12.0;     ///< height of the phases [px]
constexpr double nearTick = 5.0;  ///< of the pointer to a tick that it names [px]
constexpr double rounding = 1e-7; ///< stretches shorter than this are none [rad]

/// Colours of the two sides as everywhere; both at once while gas flows through.
void paintPhase(QPainter& painter, const Palette& tones, const QRectF& box, Phase phase) {
    const auto half = [&](bool upper) {
        const double middle = box.center().y();
        return upper ? QRectF(box.topLeft(), QPointF(box.right(), middle))
                     : QRectF(QPointF(box.left(), middle), box.bottomRight());
    };
    switch (phase) {
    case Phase::compression:
        painter.fillRect(box, tones.tint(tones.ink, 0.16));
        return;
    case Phase::burning:
    case Phase::expansion:
        painter.fillRect(box, tones.tint(tones.burning, 0.75));
        return;
    case Phase::blowdown:
    case Phase::exhaustRemains:
        painter.fillRect(box, tones.tint(tones.exhaust, 0.55));
        return;
    case Phase::inletFirst:
    case Phase::afterCharge:
        painter.fillRect(box, tones.tint(tones.inlet, 0.55));
        return;
    case Phase::scavenging:
        painter.fillRect(half(true), tones.tint(tones.inlet, 0.55));
        painter.fillRect(half(false), tones.tint(tones.exhaust, 0.55));
        return;
    }
}

} // namespace

Scrubber::Scrubber(QWidget* parent) : QSlider(Qt::Horizontal, parent) {
    setObjectName(QStringLiteral("scrubber"));
    setRange(0, 360 * perDegree - 1);
    setSingleStep(perDegree);
    setPageStep(10 * perDegree);
    setAccessibleName(tr("Shaft angle"));
    setMouseTracking(true);
    helpByPlace(*this, [this](const QPoint& at) { return wordsAt(at.x()); });
}

void Scrubber::showGeometry(const GeometryPointer& geometry) {
    ShownEngine engine;
    engine.setGeometry(geometry);
    ticks_.clear();
    stretches_.clear();
    for (const TurnEvent& event : turnEvents(geometry->pair, geometry->timing))
        ticks_.push_back({event.theta, wordsOf(event.kind)});
    // Phases change at events only; the first and the last of a turn are one that wraps.
    for (std::size_t i = 0; i <= ticks_.size(); ++i) {
        const double from = i == 0 ? 0.0 : ticks_[i - 1].theta;
        const double to = i == ticks_.size() ? units::turn : ticks_[i].theta;
        if (to - from > rounding)
            stretches_.push_back({from, to, phaseAt(engine, 0.5 * (from + to))});
    }
    update();
}

double Scrubber::x(double theta) const {
    return beside + (width() - 2.0 * beside) * theta / units::turn;
}

int Scrubber::valueAt(double at) const {
    const double share = (at - beside) / std::max(1.0, width() - 2.0 * beside);
    return std::clamp(static_cast<int>(std::lround(share * 360.0 * perDegree)), minimum(),
                      maximum());
}

void Scrubber::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Palette& tones = Palette::of(*this);
    const double top = 0.5 * (height() - band) - 2.0;
    painter.fillRect(QRectF(x(0.0), top, x(units::turn) - x(0.0), band), tones.grid);
    for (const Stretch& stretch : stretches_)
        paintPhase(painter, tones,
                   QRectF(x(stretch.from), top, x(stretch.to) - x(stretch.from), band),
                   stretch.phase);
    painter.setPen(QPen(tones.ink, 1.0));
    for (const Tick& tick : ticks_)
        painter.drawLine(QPointF(x(tick.theta), top), QPointF(x(tick.theta), top + band + 5.0));
    const double at = x(value() * units::degree / perDegree);
    fillAndOutline(painter, tones.ink, QPen(tones.paper, 1.0));
    painter.drawRoundedRect(QRectF(at - 2.5, 2.0, 5.0, height() - 4.0), 2.0, 2.0);
    if (hasFocus()) {
        outlineOnly(painter, QPen(tones.cursor, 1.0, Qt::DotLine));
        painter.drawRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5));
    }
}

void Scrubber::mousePressEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton)
        setValue(valueAt(event->position().x()));
}

void Scrubber::mouseMoveEvent(QMouseEvent* event) {
    if (event->buttons().testFlag(Qt::LeftButton))
        setValue(valueAt(event->position().x()));
}

QString Scrubber::wordsAt(double at) const {
    for (const Tick& tick : ticks_) {
        if (std::abs(x(tick.theta) - at) <= nearTick)
            return tick.name + QStringLiteral(", ") + degreesText(tick.theta / units::degree) +
                   QChar(0xB0);
    }
    for (const Stretch& stretch : stretches_) {
        if (x(stretch.from) <= at && at <= x(stretch.to))
            return phaseName(stretch.phase);
    }
    return toolTip();
}

} // namespace lobewright::ui
