#include "ui/plots/contact/stress_plot.h"

#include "core/units.h"
#include "ui/base/menus.h"
#include "ui/base/side_words.h"
#include "ui/base/units.h"
#include "ui/plots/base/hatching.h"

namespace lobewright::ui {

namespace {

QString forceTitle(End end, bool isOnly) {
    return isOnly              ? StressPlot::tr("Contact force")
           : end == End::inlet ? StressPlot::tr("Force, inlet")
                               : StressPlot::tr("Force, exhaust");
}

QPen limitPen(const Palette& tones) {
    return {tones.warning, 1, Qt::DashDotLine};
}

} // namespace

StressPlot::StressPlot(TurnCursor& cursor, QWidget* parent)
    : TurnPlot(cursor, tr("Contact stress"), parent) {
    canvas().setLeftLabel(tr("nominal contact stress"), QStringLiteral("MPa"));
    const QString help = tr("Largest contact stress by Hertz's formulas on the contact line of "
                            "cylinder 1, load spread evenly over the width: nominal, for comparing "
                            "designs, never to release one for manufacture.");
    stress_ = addSides({{}, QStringLiteral("MPa"), help}, trackTitle);
    force_ = addSides({{},
                       QStringLiteral("N"),
                       tr("Contact force N between roller and track."),
                       {},
                       Qt::DotLine,
                       1.2,
                       true},
                      forceTitle);
    setSidesVisible(force_, false);
    canvas().addPaint(TurnCanvas::shading, [this](QCPPainter& painter) { paintLiftOff(painter); });
    canvas().addPaint(TurnCanvas::marks, [this](QCPPainter& painter) { paintLimit(painter); });
}

void StressPlot::refill() {
    for (const End end : bothEnds) {
        setFromChannel(stress_[end],
                       solution::QuantityId{"contact_pressure", &in::MPa, end}.written());
        setFromChannel(force_[end], solution::QuantityId{"contact_force", &in::N, end}.written());
        liftOff_[end].clear();
        const Curve& force = curves()[force_[end]];
        // On a closed track a pull is carried by the outer flank: nothing leaves it.
        if (solution() && !solution()->design.mechanism.closedTrack)
            liftOff_[end] = stretchesWithout(force.theta, force.values);
    }
    finishRefill();
}

QCPRange StressPlot::contentRange(bool onRight) const {
    QCPRange range = TurnPlot::contentRange(onRight);
    range.expand(QCPRange(0.0, range.upper));
    // The limit stays in sight unless the stress is far below it.
    const auto limit = onRight ? std::nullopt : allowable();
    const double shown = limit ? unitFor(QStringLiteral("MPa")).shown(*limit) : 0.0;
    if (limit && shown < 2.5 * range.upper)
        range.expand(QCPRange(0.0, shown));
    return range;
}

std::optional<double> StressPlot::allowable() const {
    const auto safety = figureValue(solution(), "contact_safety_inlet");
    const auto peak = figureValue(solution(), "peak_contact_pressure_inlet_MPa");
    return safety && peak ? std::optional(*safety * *peak) : std::nullopt;
}

QRectF StressPlot::areaOf(const Span& span) const {
    QRectF area = canvas().inside();
    area.setLeft(canvas().xOf(span.from));
    area.setRight(std::max(canvas().xOf(span.to), area.left() + 2.0));
    return area;
}

void StressPlot::paintLiftOff(QCPPainter& painter) const {
    for (const End end : bothEnds) {
        for (const Span& span : liftOff_[end]) {
            const QRectF area = areaOf(span);
            painter.fillRect(area, tones().tint(tones().warning, 0.18));
            hatch(painter, area, tones().tint(tones().side(end), 0.6));
        }
    }
}

std::vector<ReadoutStrip::Item> StressPlot::remarks() const {
    std::vector<ReadoutStrip::Item> items;
    const auto say = [&](const QPen& pen, const QString& words) {
        items.push_back({pen, QString(), words, QString(), QString()});
    };
    if (const auto limit = allowable())
        say(limitPen(tones()), tr("allowable %1").arg(quantityText(*limit, QStringLiteral("MPa"))));
    for (const End end : bothEnds) {
        if (!liftOff_[end].empty()) {
            say(QPen(QBrush(tones().tint(tones().side(end), 0.6), Qt::BDiagPattern), 10.0),
                end == End::inlet ? tr("inlet roller lifts off") : tr("exhaust roller lifts off"));
        }
    }
    return items;
}

void StressPlot::paintLimit(QCPPainter& painter) const {
    const auto limit = allowable();
    if (!limit)
        return;
    const QRectF box = canvas().inside();
    const double y = canvas().yAxis->coordToPixel(unitFor(QStringLiteral("MPa")).shown(*limit));
    painter.setPen(limitPen(tones()));
    if (y > box.top())
        painter.drawLine(QPointF(box.left(), y), QPointF(box.right(), y));
}

void StressPlot::setForcesShown(bool shown) {
    forcesShown_ = shown;
    setSidesVisible(force_, shown);
    canvas().setRightLabel(shown ? tr("contact force") : QString(),
                           shown ? QStringLiteral("N") : QString());
    takeChoice();
}

void StressPlot::addOptions(QMenu& menu) {
    addCheck(menu, tr("Contact &forces"), forcesShown_, this, &StressPlot::setForcesShown);
    menu.addSeparator();
    TurnPlot::addOptions(menu);
}

QString StressPlot::state() const {
    return forcesShown_ ? QStringLiteral("forces") : QString();
}

void StressPlot::restoreState(const QString& state) {
    setForcesShown(state == QLatin1String("forces"));
}

} // namespace lobewright::ui
