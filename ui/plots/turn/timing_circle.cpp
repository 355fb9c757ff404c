#include "ui/plots/turn/timing_circle.h"

#include "core/design/skirt_row.h"
#include "core/ports/skirt_row.h"
#include "core/units.h"
#include "ui/base/drawing.h"
#include "ui/base/watching.h"
#include "ui/plots/base/angle_ticks.h"
#include "ui/plots/base/options_menu.h"
#include "ui/plots/base/plot_export.h"
#include "ui/plots/base/turn_events.h"

#include <QMenu>
#include <QMouseEvent>

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {

/// Clockwise from the top, as pixels from the centre.
QPointF onCircle(const QPointF& centre, double radius, double angle) {
    return {centre.x() + radius * std::sin(angle), centre.y() - radius * std::cos(angle)};
}

/// An arc clockwise from `from` to `to` [rad]; Qt counts anticlockwise from three o'clock.
void drawArc(QPainter& painter, const QPointF& centre, double radius, double from, double to) {
    const QRectF box(centre.x() - radius, centre.y() - radius, 2.0 * radius, 2.0 * radius);
    painter.drawArc(box, qRound((90.0 - to / units::degree) * 16.0),
                    qRound((to - from) / units::degree * 16.0));
}

struct Events {
    double idc, scale;
    double of(double theta) const { return (theta - idc) * scale; }
};

} // namespace

struct TimingCircle::Frame {
    QPointF centre;
    double dial;    ///< radius of the circle of degrees
    double exhaust; ///< radii of the arcs
    double inlet;
    double width;             ///< of the bands
    bool hasBaseline;         ///< whose arcs take the outer part of the bands
    double nowWidth() const { ///< of the present arcs
        return hasBaseline ? 0.58 * width : width;
    }
    double nowRadius(End end) const { return band(end) - 0.5 * (width - nowWidth()); }
    double baselineWidth() const { return 0.3 * width; }
    double baselineRadius(End end) const { return band(end) + 0.5 * (width - baselineWidth()); }
    double band(End end) const { return end == End::inlet ? inlet : exhaust; }
};

struct TimingCircle::Label {
    TurnEvent::Kind kind = TurnEvent::Kind::innerDeadCentre;
    double at = 0.0; ///< on the dial, clockwise from the top [rad]
    double degrees = 0.0, shaftDegrees = 0.0;
    QString text;
    QRectF box;
    bool isRight = true;
};

TimingCircle::TimingCircle(TurnCursor& cursor, QWidget* parent) : QWidget(parent), cursor_(cursor) {
    setAccessibleName(tr("Circular timing diagram"));
    setFocusPolicy(Qt::StrongFocus);
    setToolTip(tr("One gas cycle, clockwise from inner dead centre. Events in cycle degrees from "
                  "inner dead centre, shaft degrees below them; spans in the middle with shaft "
                  "degrees in brackets. Point at the letters of an event to have them spelt out. "
                  "Drag to turn the shaft."));
    connect(&cursor_, &TurnCursor::angleChanged, this, QOverload<>::of(&QWidget::update));
    helpByPlace(*this, [this](const QPoint& at) { return eventAt(at); });
    offerOptions(*this);
}

void TimingCircle::showSolution(const SolutionPointer& solution) {
    if (solution)
        showGeometry(geometryOf(*solution));
}

void TimingCircle::showBaseline(const SolutionPointer& baseline) {
    baseline_ = baseline;
    update();
}

void TimingCircle::showGeometry(const GeometryPointer& geometry) {
    geometry_ = geometry;
    update();
}

TimingCircle::Frame TimingCircle::frame() const {
    const double text = fontMetrics().height();
    const double sideText = fontMetrics().horizontalAdvance(tr("%1° shaft").arg("−000.0"));
    const double radius = std::max(
        30.0, std::min(0.5 * width() - sideText - 10.0, 0.5 * height() - 1.9 * text - 6.0));
    const double width = std::clamp(0.11 * radius, 5.0, 18.0);
    return {QPointF(0.5 * this->width(), 0.5 * height()),
            radius,
            radius - 0.9 * width,
            radius - 2.1 * width,
            width,
            baseline_ != nullptr};
}

const ports::CycleEvents& TimingCircle::cycle(const ports::PortTiming& timing) const {
    return timing.cycles()[cyclePlace(timing, cursor_.angle()).cycle];
}

double TimingCircle::handAngle() const {
    return geometry_->pair.cyclesPerTurn() * cyclePlace(geometry_->timing, cursor_.angle()).offset;
}

void TimingCircle::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), Palette::of(*this).paper);
    paintInto(painter);
    if (hasFocus()) {
        outlineOnly(painter, QPen(Palette::of(*this).cursor, 1.0, Qt::DotLine));
        painter.drawRect(QRectF(rect()).adjusted(1.5, 1.5, -1.5, -1.5));
    }
}

void TimingCircle::paintInto(QPainter& painter) const {
    painter.setFont(font());
    if (!geometry_ || geometry_->timing.cycles().empty())
        return;
    const Frame place = frame();
    paintDial(painter, place);
    if (baseline_)
        paintBaseline(painter, place);
    paintPorts(painter, place);
    paintEvents(painter, place);
    if (handShown_)
        paintHand(painter, place);
    paintMiddle(painter, place);
}

void TimingCircle::paintDial(QPainter& painter, const Frame& place) const {
    const Palette& tones = Palette::of(*this);
    outlineOnly(painter, QPen(tones.quiet, 1));
    painter.drawEllipse(place.centre, place.dial, place.dial);
    for (int degrees = 0; degrees < 360; degrees += 10) {
        const double angle = degrees * units::degree;
        const double length = degrees % 30 == 0 ? 6.0 : 3.0;
        painter.drawLine(onCircle(place.centre, place.dial, angle),
                         onCircle(place.centre, place.dial - length, angle));
    }
    painter.setPen(QPen(tones.grid, 1));
    painter.drawLine(onCircle(place.centre, place.dial, 0.0),
                     onCircle(place.centre, place.dial, units::pi));
    painter.drawLine(onCircle(place.centre, place.dial, 0.5 * units::pi),
                     onCircle(place.centre, place.dial, 1.5 * units::pi));
}

void TimingCircle::paintPorts(QPainter& painter, const Frame& place) const {
    const Palette& tones = Palette::of(*this);
    const auto& now = cycle(geometry_->timing);
    const Events angle{now.centres.idc, static_cast<double>(geometry_->pair.cyclesPerTurn())};
    // The overlap as a quiet sector between both arcs.
    const double both[] = {std::max(now.exhaustOpens, now.inletOpens),
                           std::min(now.exhaustCloses, now.inletCloses)};
    if (both[1] > both[0]) {
        fillOnly(painter, tones.tint(tones.ink, 0.08));
        const double r = place.inlet - 0.5 * place.width;
        const QRectF box(place.centre.x() - r, place.centre.y() - r, 2.0 * r, 2.0 * r);
        painter.drawPie(box, qRound((90.0 - angle.of(both[1]) / units::degree) * 16.0),
                        qRound((angle.of(both[1]) - angle.of(both[0])) / units::degree * 16.0));
        painter.setBrush(Qt::NoBrush);
    }
    for (const End end : bothEnds) {
        painter.setPen(QPen(tones.side(end), place.nowWidth(), Qt::SolidLine, Qt::FlatCap));
        drawArc(painter, place.centre, place.nowRadius(end), angle.of(now.opens(end)),
                angle.of(now.closes(end)));
    }
    paintSkirt(painter, place);
}

/// Where skirts uncover the row that fills their pump, inside the arcs of the ports.
void TimingCircle::paintSkirt(QPainter& painter, const Frame& place) const {
    const auto& now = cycle(geometry_->timing);
    const Events angle{now.centres.idc, static_cast<double>(geometry_->pair.cyclesPerTurn())};
    double radius = place.inlet - 1.2 * place.width;
    for (const End end : geometry_->pair.pistons()) {
        const auto* row = design::skirtRow(geometry_->design, end);
        const auto open =
            row ? ports::skirtOpening(*row, geometry_->pair, end, now.centres) : std::nullopt;
        if (!open)
            continue;
        const QColor tone = Palette::of(*this).inlet;
        painter.setPen(QPen(tone, 0.35 * place.width, Qt::DotLine, Qt::FlatCap));
        drawArc(painter, place.centre, radius, angle.of(open->opens), angle.of(open->closes));
        painter.setPen(tone);
        if (end == End::inlet)
            painter.drawText(QRectF(place.centre.x() - radius, place.centre.y() - radius,
                                    2.0 * radius, 2.0 * fontMetrics().height())
                                 .translated(0.0, 0.3 * place.width),
                             Qt::AlignCenter, tr("intake"));
        radius -= 0.8 * place.width;
    }
}

void TimingCircle::paintBaseline(QPainter& painter, const Frame& place) const {
    const Palette& tones = Palette::of(*this);
    const auto& before = cycle(baseline_->timing);
    const Events angle{before.centres.idc, static_cast<double>(baseline_->pair.cyclesPerTurn())};
    for (const End end : bothEnds) {
        painter.setPen(QPen(tones.baseline(tones.side(end)), place.baselineWidth(), Qt::SolidLine,
                            Qt::FlatCap));
        drawArc(painter, place.centre, place.baselineRadius(end), angle.of(before.opens(end)),
                angle.of(before.closes(end)));
    }
}

std::vector<TimingCircle::Label> TimingCircle::labels(const Frame& place) const {
    using Kind = TurnEvent::Kind;
    const auto& now = cycle(geometry_->timing);
    const Events angle{now.centres.idc, static_cast<double>(geometry_->pair.cyclesPerTurn())};
    std::vector<Label> all;
    for (const auto& [kind, theta] : {std::pair(Kind::innerDeadCentre, now.centres.idc),
                                      std::pair(Kind::exhaustOpens, now.exhaustOpens),
                                      std::pair(Kind::inletOpens, now.inletOpens),
                                      std::pair(Kind::exhaustCloses, now.exhaustCloses),
                                      std::pair(Kind::inletCloses, now.inletCloses)}) {
        Label label;
        label.kind = kind;
        label.at = angle.of(theta);
        label.degrees = std::remainder(label.at / units::degree, 360.0);
        label.shaftDegrees = label.degrees / geometry_->pair.cyclesPerTurn();
        all.push_back(label);
    }
    // From top to bottom on each side, each label below the one before it.
    std::ranges::sort(all, {}, [&](const Label& label) { return onCircle({}, 1.0, label.at).y(); });
    double lowest[2] = {0.0, 0.0};
    for (Label& label : all) {
        const QPointF rim = onCircle(place.centre, place.dial, label.at);
        label.text = label.kind == Kind::innerDeadCentre
                         ? letters(label.kind)
                         : tr("%1 %2°\n%3° shaft")
                               .arg(letters(label.kind), degreesText(label.degrees),
                                    degreesText(label.shaftDegrees));
        const QSizeF size = fontMetrics().size(0, label.text) + QSize(2, 0);
        label.isRight = std::sin(label.at) >= 0.0;
        label.box = QRectF(QPointF(), size);
        if (label.kind == Kind::innerDeadCentre) {
            label.box.moveCenter(rim - QPointF(0, 0.7 * size.height()));
        } else {
            const QPointF out = onCircle(place.centre, place.dial + 7.0, label.at);
            label.box.moveTop(
                std::max(out.y() - 0.5 * size.height(), lowest[label.isRight ? 1 : 0]));
            label.box.moveLeft(label.isRight ? out.x() : out.x() - size.width());
            label.box.moveBottom(std::min(label.box.bottom(), height() - 1.0));
            lowest[label.isRight ? 1 : 0] = label.box.bottom();
        }
    }
    return all;
}

void TimingCircle::paintEvents(QPainter& painter, const Frame& place) const {
    using Kind = TurnEvent::Kind;
    const Palette& tones = Palette::of(*this);
    for (const Label& label : labels(place)) {
        const QColor colour =
            label.kind == Kind::innerDeadCentre                                     ? tones.quiet
            : label.kind == Kind::exhaustOpens || label.kind == Kind::exhaustCloses ? tones.exhaust
                                                                                    : tones.inlet;
        painter.setPen(QPen(colour, 1.4));
        painter.drawLine(onCircle(place.centre, place.inlet - 0.5 * place.width, label.at),
                         onCircle(place.centre, place.dial + 5.0, label.at));
        painter.drawText(label.box,
                         Qt::AlignVCenter | (label.isRight ? Qt::AlignLeft : Qt::AlignRight),
                         label.text);
    }
}

QString TimingCircle::eventAt(const QPointF& position) const {
    if (!geometry_ || geometry_->timing.cycles().empty())
        return {};
    constexpr double reach = 4.0; // [px]
    const Frame place = frame();
    for (const Label& label : labels(place)) {
        const QPointF along = onCircle(place.centre, place.dial, label.at) - place.centre;
        const QPointF from = position - place.centre;
        const double across = std::abs(along.x() * from.y() - along.y() * from.x()) / place.dial;
        const double out = QPointF::dotProduct(along, from) / place.dial;
        const bool onMark =
            across < reach && out > place.inlet - 0.5 * place.width && out < place.dial + 5.0;
        if (label.box.contains(position) || onMark)
            return tr("%1: %2, at %3° of the cycle from inner dead centre, %4° of the shaft")
                .arg(letters(label.kind), wordsOf(label.kind), degreesText(label.degrees, 2),
                     degreesText(label.shaftDegrees, 2));
    }
    return {};
}

void TimingCircle::paintMiddle(QPainter& painter, const Frame& place) const {
    const Palette& tones = Palette::of(*this);
    const auto& now = cycle(geometry_->timing);
    const int cycles = geometry_->pair.cyclesPerTurn();
    const double room = 2.0 * (place.inlet - place.width);
    const double line = fontMetrics().height();
    using Lines = std::vector<std::pair<QString, QColor>>;
    const auto linesOf = [&](bool withShaft, bool withBaseline) {
        Lines lines;
        const auto angles = [&](double span, int perTurn) {
            const QString cycle = degreesText(span * perTurn / units::degree);
            return withShaft ? tr("%1° (%2°)").arg(cycle, degreesText(span / units::degree))
                             : cycle + QChar(0x00B0);
        };
        const auto add = [&](const QString& name, double (ports::CycleEvents::*span)() const,
                             const QColor& colour) {
            lines.emplace_back(name + QLatin1Char(' ') + angles((now.*span)(), cycles), colour);
            if (withBaseline)
                lines.emplace_back(tr("baseline %1")
                                       .arg(angles((cycle(baseline_->timing).*span)(),
                                                   baseline_->pair.cyclesPerTurn())),
                                   tones.quiet);
        };
        add(tr("blowdown"), &ports::CycleEvents::blowdown, tones.exhaust);
        add(tr("overlap"), &ports::CycleEvents::overlap, tones.ink);
        add(tr("after-charge"), &ports::CycleEvents::afterCharge, tones.inlet);
        return lines;
    };
    const auto fits = [&](const Lines& lines) {
        return static_cast<double>(lines.size() + 1) * line < room &&
               std::ranges::all_of(lines, [&](const auto& entry) {
                   return fontMetrics().horizontalAdvance(entry.first) < 0.94 * room;
               });
    };
    // A small circle says less, and nothing where not even that fits: the port plot says the same.
    Lines lines = linesOf(true, baseline_ != nullptr);
    if (!fits(lines) && baseline_)
        lines = linesOf(false, true);
    if (!fits(lines))
        lines = linesOf(true, false);
    if (!fits(lines))
        lines = linesOf(false, false);
    if (!fits(lines))
        return;
    double y = place.centre.y() - 0.5 * static_cast<double>(lines.size()) * line -
               (lines.size() > 3 ? 0.0 : 0.32 * place.inlet);
    for (const auto& [words, colour] : lines) {
        const QRectF box(place.centre.x() - 0.5 * room, y, room, line);
        // The hand passes behind the words.
        painter.fillRect(painter.boundingRect(box, Qt::AlignCenter, words).adjusted(-3, 0, 3, 0),
                         handShown_ ? QBrush(tones.paper) : QBrush(Qt::NoBrush));
        painter.setPen(colour);
        painter.drawText(box, Qt::AlignCenter, words);
        y += line;
    }
}

void TimingCircle::paintHand(QPainter& painter, const Frame& place) const {
    const double at = handAngle();
    painter.setPen(QPen(Palette::of(*this).cursor, 1.6));
    painter.drawLine(onCircle(place.centre, 0.55 * place.inlet, at),
                     onCircle(place.centre, place.dial + 3.0, at));
}

void TimingCircle::turnTo(const QPointF& position) {
    if (!geometry_)
        return;
    const QPointF from = position - frame().centre;
    const double wanted = std::atan2(from.x(), -from.y());
    const double now = handAngle();
    const double turn = std::remainder(wanted - now, units::turn);
    cursor_.setAngle(cursor_.angle() + turn / geometry_->pair.cyclesPerTurn());
}

void TimingCircle::mousePressEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton)
        turnTo(event->position());
}

void TimingCircle::mouseMoveEvent(QMouseEvent* event) {
    if (event->buttons() & Qt::LeftButton)
        turnTo(event->position());
}

void TimingCircle::keyPressEvent(QKeyEvent* event) {
    const double step = event->modifiers().testFlag(Qt::ShiftModifier)     ? 0.1
                        : event->modifiers().testFlag(Qt::ControlModifier) ? 10.0
                                                                           : 1.0;
    const int key = event->key();
    if (key == Qt::Key_Left || key == Qt::Key_Right) {
        cursor_.setAngle(cursor_.angle() + (key == Qt::Key_Right ? step : -step) * units::degree);
    } else if (key == Qt::Key_Space) {
        cursor_.togglePlaying();
    } else if ((key == Qt::Key_PageUp || key == Qt::Key_PageDown) && geometry_) {
        std::vector<double> stops;
        for (const TurnEvent& happening : turnEvents(geometry_->pair, geometry_->timing))
            stops.push_back(happening.theta);
        if (const auto to = nextStop(stops, cursor_.angle(), key == Qt::Key_PageDown))
            cursor_.setAngle(*to);
    } else {
        QWidget::keyPressEvent(event);
    }
}

DataSheet TimingCircle::dataSheet() const {
    DataSheet sheet{{tr("event"), tr("shaft angle, °"), tr("cycle angle, °"),
                     tr("shaft angle, °, baseline"), tr("cycle angle, °, baseline")},
                    {}};
    if (!geometry_)
        return sheet;
    const auto before =
        baseline_ ? turnEvents(baseline_->pair, baseline_->timing) : std::vector<TurnEvent>();
    const auto cells = [](const mechanism::OpposedPair& pair, double theta) {
        return QStringList{dataText(theta / units::degree),
                           dataText(cycleAngle(pair, theta) / units::degree)};
    };
    for (const TurnEvent& happening : turnEvents(geometry_->pair, geometry_->timing)) {
        QStringList row{wordsOf(happening.kind)};
        row << cells(geometry_->pair, happening.theta);
        const auto same = std::ranges::find_if(before, [&](const TurnEvent& other) {
            return other.kind == happening.kind && other.cycle == happening.cycle;
        });
        row << (same == before.end() ? QStringList{QString(), QString()}
                                     : cells(baseline_->pair, same->theta));
        sheet.rows.push_back(row);
    }
    return sheet;
}

void TimingCircle::addOptions(QMenu& menu) {
    addPictureActions(menu, *this, accessibleName());
}

} // namespace lobewright::ui
