#include "ui/plots/turn/torque_plot.h"

#include "core/mechanism/mechanism.h"
#include "core/units.h"
#include "ui/base/menus.h"
#include "ui/base/side_words.h"
#include "ui/base/units.h"
#include "ui/plots/base/thin_line.h"

#include <cmath>

namespace lobewright::ui {

namespace {

constexpr double undoneWork = 1e-3; ///< share of the work moved

struct Totals {
    double min = 0.0, max = 0.0, mean = 0.0;
};

/// Trapezoid mean, for the line in the plot only; the figures have their own quadrature.
std::optional<Totals> totalsOf(const Samples& theta, const Samples& torque) {
    const Eigen::Index n = theta.size();
    if (n < 2 || torque.size() != n || !torque.allFinite())
        return std::nullopt;
    const double area =
        (0.5 * (torque.head(n - 1) + torque.tail(n - 1)) * (theta.tail(n - 1) - theta.head(n - 1)))
            .sum();
    return Totals{torque.minCoeff(), torque.maxCoeff(), area / (theta[n - 1] - theta[0])};
}

QString leverTitle(End end, bool isOnly) {
    return isOnly              ? TorquePlot::tr("Lever arm")
           : end == End::inlet ? TorquePlot::tr("Lever arm, inlet")
                               : TorquePlot::tr("Lever arm, exhaust");
}

QPen meanPen(const Palette& tones) {
    return {tones.ink, 1, Qt::DashDotLine};
}

} // namespace

TorquePlot::TorquePlot(TurnCursor& cursor, QWidget* parent)
    : TurnPlot(cursor, tr("Torque over one revolution"), parent) {
    const auto unit = QStringLiteral("N·m");
    canvas().setLeftLabel(tr("torque"), unit);
    const QString pistonHelp = tr("Torque T of one piston of cylinder 1 on the shaft.");
    piston_ = addSides({{}, unit, pistonHelp, {}, Qt::SolidLine, 1.2}, pistonTitle);
    cylinder_ = addCurve({tr("Cylinder 1"), unit, tr("Both pistons of cylinder 1."), Tone::quiet,
                          Qt::SolidLine, 1.4});
    total_ = addCurve({tr("Engine"), unit, tr("All cylinders at their angles, friction included."),
                       Tone::ink, Qt::SolidLine, 2.4});
    const QString leverHelp =
        tr("−dy/dθ: the track's equivalent of a crank throw; what turns force into torque.");
    lever_ =
        addSides({{}, QStringLiteral("mm/rad"), leverHelp, {}, Qt::DotLine, 1.4, true}, leverTitle);
    setSidesVisible(lever_, false);
    canvas().addPaint(TurnCanvas::marks, [this](QCPPainter& painter) { paintMean(painter); });
}

void TorquePlot::refill() {
    for (const End end : bothEnds) {
        setFromChannel(piston_[end], solution::QuantityId{"torque", &in::Nm, end}.written());
        setFromGeometry(lever_[end], [end](const Geometry& geometry) {
            if (geometry.pair.uncovers(end) != end)
                return Line{};
            const Samples theta = Samples::LinSpaced(721, 0.0, units::turn);
            return Line{theta, -geometry.pair.lift(end, theta).y1 / units::millimetre};
        });
    }
    setFromChannel(cylinder_, "torque_cylinder_Nm");
    setFromChannel(total_, "torque_total_Nm");

    for (QCPGraph* graph : others_)
        canvas().removeGraph(graph);
    others_.clear();
    const Curve& first = curves()[cylinder_];
    if (cylindersShown_ && solution() && first.values.size() > 0) {
        const auto angles = mechanism::cylinderAngles(solution()->design.mechanism);
        for (size_t k = 1; k < angles.size(); ++k) {
            auto* graph = new ThinGraph(canvas().xAxis, canvas().yAxis); // owned by the plot
            graph->setLayer(QLatin1String(TurnCanvas::baseline));
            graph->setPen(QPen(tones().tint(tones().quiet, 0.55), 1));
            graph->setName(axisText(tr("torque of cylinder %1").arg(k + 1), first.look.unit));
            QVector<QCPGraphData> points;
            for (const double theta : first.theta) {
                double at = std::fmod(theta - angles[k] + angles[0], units::turn);
                at = at < 0.0 ? at + units::turn : at;
                points.append({theta / units::degree, valueAt(first.theta, first.values, at)});
            }
            graph->data()->set(points, true);
            others_.push_back(graph);
        }
    }
    finishRefill();
}

QCPRange TorquePlot::contentRange(bool onRight) const {
    QCPRange range = TurnPlot::contentRange(onRight);
    range.expand(QCPRange(0.0, range.upper));
    return range;
}

void TorquePlot::paintMean(QCPPainter& painter) const {
    const Curve& total = curves()[total_];
    const auto totals = totalsOf(total.theta, total.values);
    if (!totals)
        return;
    const QRectF box = canvas().inside();
    const auto yOf = [this](double value) { return canvas().yAxis->coordToPixel(value); };
    painter.setAntialiasing(false);
    painter.setPen(meanPen(tones()));
    painter.drawLine(QPointF(box.left(), yOf(totals->mean)),
                     QPointF(box.right(), yOf(totals->mean)));
    painter.setPen(QPen(tones().quiet, 1, Qt::DotLine));
    for (const double edge : {totals->min, totals->max})
        painter.drawLine(QPointF(box.left(), yOf(edge)), QPointF(box.right(), yOf(edge)));
    painter.setAntialiasing(true);
}

std::vector<ReadoutStrip::Item> TorquePlot::remarks() const {
    const Curve& total = curves()[total_];
    const auto totals = totalsOf(total.theta, total.values);
    if (!totals || !solution())
        return {};
    // The supply and auxiliaries take theirs behind the tracks, evenly: not in this curve.
    const auto brake = figureValue(solution(), "brake_torque_Nm");
    const double shown = unitFor(QStringLiteral("N·m")).shown(brake.value_or(0.0));
    // A roller off its track leaves its work undone, in this curve but not in the brake torque.
    const bool flies =
        std::abs(figureValue(solution(), "work_balance_residual").value_or(0.0)) > undoneWork;
    const bool differs =
        !flies && brake && std::abs(totals->mean - shown) > 0.001 * std::abs(totals->mean);
    QString text = (flies     ? tr("mean %1 %3 (a roller has lifted), peak to peak %2 %3")
                    : differs ? tr("mean %1 (at the shaft %4), peak to peak %2 %3")
                              : tr("mean %1 %3, peak to peak %2 %3"))
                       .arg(valueText(totals->mean, totals->max),
                            valueText(totals->max - totals->min, totals->max),
                            unitFor(QStringLiteral("N·m")).text);
    if (differs)
        text = text.arg(valueText(shown, totals->max));
    if (const auto ripple = figureValue(solution(), "torque_ripple"))
        text += tr(", ripple %1").arg(QLocale().toString(*ripple, 'f', 2));
    return {{meanPen(tones()), {}, text, {}, {}}};
}

void TorquePlot::setPistonsShown(bool shown) {
    pistonsShown_ = shown;
    setSidesVisible(piston_, shown);
    takeChoice();
}

void TorquePlot::setCylindersShown(bool shown) {
    cylindersShown_ = shown;
    takeChoice();
}

void TorquePlot::setLeverShown(bool shown) {
    leverShown_ = shown;
    setSidesVisible(lever_, shown);
    canvas().setRightLabel(shown ? tr("lever arm") : QString(),
                           shown ? QStringLiteral("mm/rad") : QString());
    takeChoice();
}

void TorquePlot::addOptions(QMenu& menu) {
    addCheck(menu, tr("Each &piston of cylinder 1"), pistonsShown_, this,
             &TorquePlot::setPistonsShown);
    addCheck(menu, tr("Each &cylinder"), cylindersShown_, this, &TorquePlot::setCylindersShown);
    addCheck(menu, tr("&Lever arm of the tracks"), leverShown_, this, &TorquePlot::setLeverShown);
    menu.addSeparator();
    TurnPlot::addOptions(menu);
}

QString TorquePlot::state() const {
    QStringList parts;
    if (pistonsShown_)
        parts << QStringLiteral("pistons");
    if (cylindersShown_)
        parts << QStringLiteral("cylinders");
    if (leverShown_)
        parts << QStringLiteral("lever");
    return parts.join(QLatin1Char('+'));
}

void TorquePlot::restoreState(const QString& state) {
    const QStringList parts = state.split(QLatin1Char('+'));
    setPistonsShown(parts.contains(QLatin1String("pistons")));
    setCylindersShown(parts.contains(QLatin1String("cylinders")));
    setLeverShown(parts.contains(QLatin1String("lever")));
}

} // namespace lobewright::ui
