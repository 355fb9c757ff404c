#include "ui/scene/section/clock_view.h"

#include "core/reference/crank_motion.h"
#include "core/units.h"
#include "ui/base/words.h"
#include "ui/plots/base/plot_export.h"
#include "ui/scene/section/section_painter.h"

#include <QMenu>
#include <QPainter>

#include <algorithm>
#include <array>
#include <cmath>

namespace lobewright::ui {

namespace {

constexpr double margin = 8.0;
constexpr double pinShare = 0.6; ///< of the piston's length, crown to pin

/// Everything along the cylinder of the pair on cranks, from the middle outward [m].
struct CrankSide {
    study::SliderCrank crank;
    double crown = 0.0;  ///< of the crown at inner dead centre
    double length = 0.0; ///< of the piston
    double radius = 0.0, rod = 0.0;

    double crownAt(double tau) const { return crown + crank.stroke() - crank.at(tau).y; }
    double pinAt(double tau) const { return crownAt(tau) + pinShare * length; }
    double centre() const { return crown + pinShare * length + rod + radius; }
    double reach() const { return centre() + 1.35 * radius; }
};

CrankSide sideOf(const ShownEngine& engine, End end) {
    const auto& mechanism = engine.design().mechanism;
    const double stroke = engine.pair().curve(end).stroke();
    const double rodRatio = engine.design().reference.rodRatio;
    const double length = mechanism.piston ? mechanism.piston->length : 1.1 * mechanism.bore;
    return {study::SliderCrank(stroke, rodRatio), 0.5 * mechanism.clearance, length, 0.5 * stroke,
            0.5 * stroke / rodRatio};
}

} // namespace

ClockView::ClockView(TurnCursor& cursor, QWidget* parent) : TurnView(cursor, parent) {
    setObjectName(QStringLiteral("clockView"));
    setAccessibleName(tr("Cam and crank synchronised"));
    setToolTip(tr("Above: this engine. Below: the same pistons and ports on cranks, at the same "
                  "moment. Drag to turn both."));
}

void ClockView::setGear(Gear gear) {
    if (gear == gear_)
        return;
    gear_ = gear;
    update();
}

double ClockView::turnFromInnerDeadCentre(double theta) const {
    return theta - engine().pair().deadCentres().front().idc;
}

double ClockView::crankAngle(End end, double theta) const {
    const auto& pair = engine().pair();
    const double cycles = pair.cyclesPerTurn();
    const double speed = gear_ == Gear::sameSpeed ? 1.0 : cycles;
    const double tau = speed * turnFromInnerDeadCentre(theta);
    // Half the lead on either side of the pair's inner dead centre, in the degrees of a cycle.
    const auto& mechanism = engine().design().mechanism;
    const double half = 0.5 * cycles * (mechanism.exhaustLead + mechanism.adjuster.setting);
    return end == End::exhaust ? tau + half : tau - half;
}

double ClockView::crankLift(End end, double theta) const {
    return sideOf(engine(), end).crank.at(crankAngle(end, theta)).y;
}

void ClockView::addOptions(QMenu& menu) {
    const std::pair<Gear, QString> gears[] = {
        {Gear::sameSpeed, tr("Cranks at the same shaft speed")},
        {Gear::sameStrokes, tr("Cranks with as many power strokes per second")}};
    for (const auto& [gear, title] : gears) {
        QAction* action = menu.addAction(title, this, [this, gear = gear] { setGear(gear); });
        action->setCheckable(true);
        action->setChecked(gear == gear_);
    }
    menu.addSeparator();
    addPictureActions(menu, *this, tr("Cam tracks and cranks"));
}

void ClockView::layOut() {
    const double line = QFontMetricsF(font()).height();
    const double band = 1.6 * line;
    const double half = 0.5 * (height() - 2.0 * band);
    const QRectF above(margin, band, width() - 2.0 * margin, half - margin);
    crankArea_ = QRectF(margin, band + half + band, width() - 2.0 * margin, half - margin);
    cam_ = SectionFrame(engine(), above);
    double reach = 0.0, across = cam_.halfBore() + cam_.wall();
    for (const End end : engine().pair().pistons()) {
        const CrankSide side = sideOf(engine(), end);
        reach = std::max(reach, side.reach());
        across = std::max(across, 1.35 * side.radius);
    }
    scale_ = std::min(0.5 * crankArea_.width() / reach, 0.5 * crankArea_.height() / across);
    if (cam_.scale() > scale_) {
        // One scale for both: the longer engine decides.
        const double share = scale_ / cam_.scale();
        QRectF smaller(0.0, 0.0, above.width() * share, above.height() * share);
        smaller.moveCenter(above.center());
        cam_ = SectionFrame(engine(), smaller);
    }
    scale_ = std::min(scale_, cam_.scale());
}

void ClockView::paintDrawing(QPainter& painter) {
    painter.setFont(font());
    painter.save();
    painter.setClipRect(QRectF(0.0, 0.0, width(), crankArea_.top() - margin));
    SectionPainter(painter, engine(), cam_, tones(), cursor().angle()).paint();
    painter.restore();
    paintCranks(painter);
    paintWords(painter);
}

void ClockView::paintCranks(QPainter& painter) const {
    const QPointF middle = crankArea_.center();
    const double theta = cursor().angle();
    const double b = cam_.halfBore() * scale_, w = cam_.wall() * scale_;
    std::array<double, 2> crowns{};
    crowns[1] = middle.x() + cam_.head() * scale_; // where there is no second piston
    for (const End end : engine().pair().pistons()) {
        const double crown = sideOf(engine(), end).crownAt(crankAngle(end, theta));
        crowns[static_cast<std::size_t>(end)] =
            middle.x() + SectionFrame::outward(end) * crown * scale_;
    }
    painter.setPen(Qt::NoPen);
    painter.setBrush(tones().gas(0.0));
    painter.drawRect(QRectF(crowns[0], middle.y() - b, crowns[1] - crowns[0], 2.0 * b));
    for (const End end : engine().pair().pistons())
        paintCrank(painter, end);

    painter.setPen(QPen(tones().ink, 1.0));
    painter.setBrush(tones().metalPale);
    const double left = middle.x() + cam_.linerEnd(End::inlet) * scale_;
    const double right = middle.x() + cam_.linerEnd(End::exhaust) * scale_;
    for (const double y : {middle.y() - b - w, middle.y() + b})
        painter.drawRect(QRectF(left, y, right - left, w));
    for (const End end : bothEnds) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(tones().side(end));
        for (const auto& row : engine().design().ports[end]) {
            const double inner = middle.x() + cam_.portPlace(end, row.edge) * scale_;
            const double outer = middle.x() + cam_.portPlace(end, row.edge - row.height) * scale_;
            for (const double y : {middle.y() - b - w, middle.y() + b})
                painter.drawRect(QRectF(QPointF(inner, y), QPointF(outer, y + w)).normalized());
        }
    }
}

void ClockView::paintCrank(QPainter& painter, End end) const {
    const CrankSide side = sideOf(engine(), end);
    const double tau = crankAngle(end, cursor().angle());
    const double out = SectionFrame::outward(end);
    const QPointF middle = crankArea_.center();
    const auto at = [&](double z, double t) { return middle + scale_ * QPointF(out * z, t); };
    const double b = cam_.halfBore() - 0.6 / scale_;
    const double crown = side.crownAt(tau), pin = side.pinAt(tau);
    painter.setPen(QPen(tones().ink, 1.0));
    painter.setBrush(tones().metal);
    painter.drawRect(QRectF(at(crown, -b), at(crown + side.length, b)).normalized());

    // Inner dead centre: the crank points along the cylinder towards the piston.
    const QPointF centre = at(side.centre(), 0.0);
    const QPointF crankPin =
        at(side.centre() - side.radius * std::cos(tau), side.radius * std::sin(tau));
    painter.setBrush(tones().metalPale);
    painter.drawEllipse(centre, 1.3 * side.radius * scale_, 1.3 * side.radius * scale_);
    const double thick = std::max(4.0, 0.28 * b * scale_);
    painter.setPen(QPen(tones().ink, thick + 2.0, Qt::SolidLine, Qt::RoundCap));
    painter.drawLine(at(pin, 0.0), crankPin);
    painter.setPen(QPen(tones().metal, thick, Qt::SolidLine, Qt::RoundCap));
    painter.drawLine(at(pin, 0.0), crankPin);
    painter.setPen(QPen(tones().side(end), 2.2));
    painter.drawLine(centre, crankPin);
    painter.setPen(QPen(tones().ink, 1.0));
    painter.setBrush(tones().paper);
    for (const QPointF& joint : {at(pin, 0.0), crankPin, centre})
        painter.drawEllipse(joint, 0.32 * thick, 0.32 * thick);
    painter.setPen(QPen(tones().side(end), 3.0, Qt::SolidLine, Qt::FlatCap));
    painter.drawLine(at(crown + 1.5 / scale_, -b), at(crown + 1.5 / scale_, b));
}

int ClockView::gasCycle(double theta) const {
    // A cycle runs from one last port closing to the next, so compression belongs to the firing
    // that it serves.
    const auto& pair = engine().pair();
    const auto events = engine().eventsSince(theta);
    const auto& centres = pair.deadCentres();
    int number = 0;
    double nearest = units::turn;
    for (std::size_t j = 0; j < centres.size(); ++j) {
        const double periods = (events.centres.idc - centres[j].idc) / pair.period();
        const double off = std::abs(periods - std::round(periods));
        if (off < nearest) {
            nearest = off;
            number = static_cast<int>(std::lround(periods)) * static_cast<int>(centres.size()) +
                     static_cast<int>(j);
        }
    }
    constexpr double rounding = 1e-9;
    if (theta + rounding >= events.lastClosing())
        ++number;
    const int all = pair.cyclesPerTurn();
    return ((number % all) + all) % all + 1;
}

QString ClockView::camWords() const {
    const double theta = cursor().angle();
    return tr("Cam tracks: shaft %1, gas cycle %2 of %3 per revolution")
        .arg(words::degrees(theta, 1))
        .arg(gasCycle(theta))
        .arg(engine().pair().cyclesPerTurn());
}

QString ClockView::crankWords() const {
    const double theta = cursor().angle();
    const double tau = 0.5 * (crankAngle(End::inlet, theta) + crankAngle(End::exhaust, theta));
    const double turned = tau - units::turn * std::floor(tau / units::turn);
    const QString angle = words::degrees(turned, 1);
    if (gear_ == Gear::sameSpeed)
        return tr("Cranks at the same shaft speed: %1 after inner dead centre, one power stroke "
                  "per revolution")
            .arg(angle);
    return tr("Cranks that turn %1 times as fast: %2 after inner dead centre")
        .arg(engine().pair().cyclesPerTurn())
        .arg(angle);
}

void ClockView::paintWords(QPainter& painter) const {
    const double line = painter.fontMetrics().height();
    const auto put = [&](double y, const QString& words) {
        const QRectF row(margin, y, width() - 2.0 * margin, line);
        const QString shown =
            painter.fontMetrics().elidedText(words, Qt::ElideRight, static_cast<int>(row.width()));
        // On paper of its own: where the pane is low the tracks reach up to it.
        const QRectF written = painter.boundingRect(row, Qt::AlignHCenter, shown);
        painter.fillRect(written.adjusted(-4, -1, 4, 1), tones().paper);
        painter.setPen(tones().ink);
        painter.drawText(row, Qt::AlignHCenter, shown);
    };
    put(0.3 * line, camWords());
    put(crankArea_.top() - 1.3 * line, crankWords());
}

} // namespace lobewright::ui
