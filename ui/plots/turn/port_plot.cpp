#include "ui/plots/turn/port_plot.h"

#include "core/units.h"
#include "ui/base/drawing.h"
#include "ui/base/menus.h"
#include "ui/plots/base/angle_ticks.h"

namespace lobewright::ui {

namespace {
constexpr int areaSamples = 721; // every half degree and both ends
constexpr double overlapTint = 0.14;
} // namespace

QString spanText(double shaftAngle, int cyclesPerTurn, double omega) {
    const double degrees = shaftAngle / units::degree;
    QString text = PortPlot::tr("%1° shaft, %2° cycle")
                       .arg(degreesText(degrees), degreesText(degrees * cyclesPerTurn));
    if (omega > 0.0)
        text += PortPlot::tr(", %1 ms").arg(degreesText(shaftAngle / omega * 1e3, 2));
    return text;
}

PortPlot::PortPlot(TurnCursor& cursor, QWidget* parent)
    : TurnPlot(cursor, tr("Port timing"), parent) {
    canvas().setLeftLabel(tr("open area"), QStringLiteral("mm²"));
    const QString help = tr("Geometric area that the piston uncovers, all rows of one side.");
    area_ = addSides({{}, QStringLiteral("mm²"), help}, [](End end, bool) {
        return end == End::inlet ? tr("Inlet ports") : tr("Exhaust ports");
    });
    canvas().addPaint(TurnCanvas::shading, [this](QCPPainter& painter) { paintShading(painter); });
}

void PortPlot::refill() {
    const mechanism::OpposedPair& pair = geometry()->pair;
    Samples theta = Samples::LinSpaced(areaSamples, 0.0, units::turn);
    if (isSolved())
        theta = solution()->theta; // every event is a sample
    for (const End end : bothEnds) {
        setValues(area_[end], theta, geometry()->timing.area(end, theta) / units::squareMillimetre);
        if (!baseline()) {
            setBaselineValues(area_[end], {}, {});
            continue;
        }
        const Samples& there = baselineByCycle_ ? theta : baseline()->theta;
        setBaselineValues(
            area_[end], there,
            baseline()->timing.area(end, baselineByCycle_ ? baselineAngles(theta) : there) /
                units::squareMillimetre);
    }
    spans_ = portSpans(pair, geometry()->timing);
    finishRefill();
}

Samples PortPlot::baselineAngles(const Samples& theta) const {
    const mechanism::OpposedPair &now = geometry()->pair, &before = baseline()->pair;
    const double stretch =
        static_cast<double>(now.cyclesPerTurn()) / static_cast<double>(before.cyclesPerTurn());
    return before.deadCentres().front().idc + (theta - now.deadCentres().front().idc) * stretch;
}

void PortPlot::setBaselineByCycle(bool byCycle) {
    if (byCycle == baselineByCycle_)
        return;
    baselineByCycle_ = byCycle;
    takeChoice();
}

void PortPlot::addOptions(QMenu& menu) {
    addCheck(menu, tr("Baseline over c&ycle degrees"), baselineByCycle_, this,
             &PortPlot::setBaselineByCycle)
        ->setToolTip(tr("Aligns both engines by cycle degrees, whatever their numbers of lobes"));
    menu.addSeparator();
    TurnPlot::addOptions(menu);
}

QString PortPlot::state() const {
    return baselineByCycle_ ? QStringLiteral("baseline-by-cycle") : QString();
}

void PortPlot::restoreState(const QString& state) {
    setBaselineByCycle(state == QLatin1String("baseline-by-cycle"));
}

QPolygonF PortPlot::area(const Span& span,
                         const std::function<double(Eigen::Index)>& height) const {
    QPolygonF shape;
    const Samples& theta = curves()[area_.inlet].theta;
    const double ground = canvas().yAxis->coordToPixel(0.0);
    for (Eigen::Index i = 0; i < theta.size(); ++i) {
        if (theta[i] < span.from || theta[i] > span.to)
            continue;
        if (shape.isEmpty())
            shape.append({canvas().xOf(theta[i]), ground});
        shape.append({canvas().xOf(theta[i]), canvas().yAxis->coordToPixel(height(i))});
    }
    if (!shape.isEmpty())
        shape.append({shape.last().x(), ground});
    return shape;
}

QPolygonF PortPlot::areaUnder(size_t of, const Span& span) const {
    const Samples& values = curves()[of].values;
    return area(span, [&values](Eigen::Index i) { return values[i]; });
}

QPolygonF PortPlot::areaUnderBoth(const Span& span) const {
    const Samples& inlet = curves()[area_.inlet].values;
    const Samples& exhaust = curves()[area_.exhaust].values;
    return area(span, [&](Eigen::Index i) { return std::min(inlet[i], exhaust[i]); });
}

void PortPlot::paintShading(QCPPainter& painter) const {
    if (!geometry())
        return;
    fillOnly(painter, tones().sideFill(End::exhaust));
    for (const Span& span : spans_.blowdown)
        painter.drawPolygon(areaUnder(area_.exhaust, span));
    painter.setBrush(tones().sideFill(End::inlet));
    for (const Span& span : spans_.afterCharge)
        painter.drawPolygon(areaUnder(area_.inlet, span));
    painter.setBrush(QBrush(tones().tint(tones().ink, overlapTint)));
    for (const Span& span : spans_.overlap) {
        const QPolygonF shape = areaUnderBoth(span);
        painter.drawPolygon(shape);
    }
    painter.setBrush(Qt::NoBrush);
}

std::vector<ReadoutStrip::Item> PortPlot::remarks() const {
    if (!geometry())
        return {};
    const double omega = geometry()->design.running.speed;
    const int cycles = geometry()->pair.cyclesPerTurn();
    const auto& cycle = geometry()->timing.cycles().front();
    const auto item = [&](const QString& label, const QColor& colour,
                          double (ports::CycleEvents::*span)() const) {
        QString value = spanText((cycle.*span)(), cycles, omega);
        if (baseline()) {
            value += tr(" (was %1)")
                         .arg(degreesText((baseline()->timing.cycles().front().*span)() *
                                          baseline()->pair.cyclesPerTurn() / units::degree) +
                              QChar(0xB0));
        }
        return ReadoutStrip::Item{QPen(colour, 9), label, value, {}, {}};
    };
    std::vector<ReadoutStrip::Item> items = {
        item(tr("Blowdown"), tones().sideFill(End::exhaust), &ports::CycleEvents::blowdown),
        item(tr("Overlap"), tones().tint(tones().ink, overlapTint), &ports::CycleEvents::overlap),
        item(tr("After-charge"), tones().sideFill(End::inlet), &ports::CycleEvents::afterCharge)};
    items[0].help = tr("From exhaust opens to inlet opens.");
    items[1].help = tr("Inlet and exhaust open.");
    items[2].help =
        tr("From exhaust closes to inlet closes; negative when the exhaust closes last.");
    return items;
}

} // namespace lobewright::ui
