#include "ui/report/report_drawings.h"

#include "core/study/beyond_limits.h"
#include "core/units.h"
#include "ui/base/core_text.h"
#include "ui/base/units.h"
#include "ui/plots/base/angle_ticks.h"
#include "ui/plots/base/kept_view.h"
#include "ui/plots/base/plot_tones.h"
#include "ui/plots/contact/stress_plot.h"
#include "ui/plots/turn/channel_plot.h"
#include "ui/plots/turn/port_plot.h"
#include "ui/plots/turn/position_plot.h"
#include "ui/plots/turn/timing_circle.h"
#include "ui/plots/turn/torque_plot.h"
#include "ui/scene/section/section_painter.h"

#include <QCoreApplication>

#include <algorithm>

namespace lobewright::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Report)
};

constexpr double legendHeight = 15.0;
constexpr double drawnCycleAngle = 75.0 * units::degree; ///< on the way out, ports still shut

/// Name in bold, then a stroke and a name for every curve.
void drawLegend(Sheet& sheet, const QRectF& box, const QString& title,
                const std::vector<std::pair<QPen, QString>>& curves) {
    QCPPainter& painter = sheet.painter();
    painter.setFont(Sheet::font(9.0, true));
    painter.setPen(sheet.tones().ink);
    painter.drawText(box, Qt::AlignLeft | Qt::AlignVCenter, title);
    double x =
        box.left() + QFontMetricsF(painter.font(), painter.device()).horizontalAdvance(title);
    painter.setFont(Sheet::font(8.0));
    const QFontMetricsF metrics(painter.font(), painter.device());
    for (const auto& [pen, name] : curves) {
        x += 16.0;
        painter.setPen(pen);
        painter.drawLine(QPointF(x, box.center().y()), QPointF(x + 20.0, box.center().y()));
        painter.setPen(sheet.tones().ink);
        x += 25.0;
        painter.drawText(QRectF(x, box.top(), 300.0, box.height()),
                         Qt::AlignLeft | Qt::AlignVCenter, name);
        x += metrics.horizontalAdvance(name);
    }
}

void drawPlot(Sheet& sheet, QCustomPlot& plot, const QRectF& box) {
    QCPPainter& painter = sheet.painter();
    plot.setBackground(Qt::NoBrush); // paper has its own ground
    painter.save();
    painter.translate(box.topLeft());
    plot.toPainter(&painter, static_cast<int>(box.width()), static_cast<int>(box.height()));
    painter.restore();
}

/// What all names say before their last comma is in the title already.
void dropCommonWords(std::vector<std::pair<QPen, QString>>& legend) {
    const auto common = [](const QString& name) {
        return name.left(name.lastIndexOf(QLatin1String(", ")));
    };
    const bool isShared = legend.size() > 1 && std::ranges::all_of(legend, [&](const auto& entry) {
                              return entry.second.contains(QLatin1String(", ")) &&
                                     common(entry.second) == common(legend.front().second);
                          });
    if (!isShared)
        return;
    for (auto& [pen, name] : legend)
        name = name.mid(common(name).size() + 2);
}

void drawTurnPlot(Sheet& sheet, TurnPlot& plot, const SolutionPointer& solution, double height) {
    plot.setPalette(sheet.tones().widgetPalette());
    plot.setFont(Sheet::font(9.0));
    plot.canvas().setFont(Sheet::font(9.0));
    plot.showSolution(solution);
    for (const char* layer : {TurnCanvas::cursorLayer, TurnCanvas::handles})
        plot.canvas().layer(QLatin1String(layer))->setVisible(false);
    std::vector<std::pair<QPen, QString>> legend;
    for (const Curve& curve : plot.curves()) {
        if (curve.visible && curve.look.inReadout)
            legend.emplace_back(curve.now->pen(), curve.look.label);
    }
    const QRectF box = sheet.take(height);
    dropCommonWords(legend);
    drawLegend(sheet, QRectF(box.topLeft(), QSizeF(box.width(), legendHeight)), plot.title(),
               legend);
    drawPlot(sheet, plot.canvas(), box.adjusted(0, legendHeight, 0, -8));
}

template <class Plot>
void drawTurnPlot(Sheet& sheet, const SolutionPointer& solution, double height) {
    TurnCursor cursor;
    Plot plot(cursor);
    drawTurnPlot(sheet, plot, solution, height);
}

void setUpAxes(QCustomPlot& plot, const Palette& tones) {
    plot.axisRect()->setAutoMargins(QCP::msAll);
    plot.plotLayout()->setMargins(QMargins(0, 0, 0, 0));
    for (QCPAxis* axis : {plot.xAxis, plot.xAxis2, plot.yAxis, plot.yAxis2}) {
        applyAxisTones(*axis, tones, Sheet::font(8.0));
        axis->setTickLengthIn(0);
        axis->setTickLengthOut(4);
        axis->setSubTickLength(0, 2);
        axis->grid()->setZeroLinePen(QPen(tones.quiet, 1));
    }
}

/// Points of one column where the engine runs; its largest and smallest value.
/// Values in the unit shown now of the metric one.
QCPRange addColumn(QCPGraph& graph, const study::Table& table, std::string_view name,
                   const QString& metric) {
    const Unit unit = unitFor(metric);
    QVector<double> x, y;
    const auto column = table.column(name);
    for (const study::Point& point : table.points) {
        if (column && !point.values.empty() && point.values[*column]) {
            x.append(point.parameter);
            y.append(unit.shown(*point.values[*column]));
        }
    }
    graph.setData(x, y);
    QCPRange range(0.0, 1e-9);
    for (const double value : y)
        range.expand(value);
    return {range.lower * 1.05, range.upper * 1.12};
}

/// Shades the speeds at which the engine could not be run, as on the screen. Empty: none; else
/// every reason.
QString shadeBeyondLimits(QCustomPlot& plot, const ReportContent& content, const QColor& colour) {
    const auto& points = content.torqueCurve.points;
    QStringList reasons;
    for (std::size_t i = 0; i < points.size(); ++i) {
        const QString reason = coreText(study::speaksAgainst(points[i]));
        if (reason.isEmpty())
            continue;
        if (!reasons.contains(reason))
            reasons << reason;
        const auto between = [&](std::size_t a, std::size_t b) {
            return 0.5 * (points[a].parameter + points[b].parameter);
        };
        auto* shade = new QCPItemRect(&plot);
        shade->setLayer(QStringLiteral("background"));
        shade->setPen(Qt::NoPen);
        shade->setBrush(colour);
        for (auto* corner : {shade->topLeft, shade->bottomRight}) {
            corner->setTypeX(QCPItemPosition::ptPlotCoords);
            corner->setTypeY(QCPItemPosition::ptAxisRectRatio);
        }
        shade->topLeft->setCoords(i > 0 ? between(i - 1, i) : points[i].parameter, 0.0);
        shade->bottomRight->setCoords(
            i + 1 < points.size() ? between(i, i + 1) : points[i].parameter, 1.0);
    }
    return reasons.join(QLatin1String(", "));
}

} // namespace

void drawSection(Sheet& sheet, const solution::Solution& solution, double height) {
    ShownEngine engine;
    const auto shared = std::make_shared<const solution::Solution>(solution);
    engine.setSolution(shared);
    const double idc = solution.timing.cycles().front().centres.idc;
    const double theta = idc + drawnCycleAngle / solution.pair.cyclesPerTurn();
    const QRectF box = sheet.take(height);
    const SectionFrame frame(engine, box.adjusted(4, 6, -4, -6));
    QCPPainter& painter = sheet.painter();
    painter.save();
    painter.setClipRect(box);
    painter.setFont(Sheet::font(8.5));
    SectionPainter(painter, engine, frame, sheet.tones(), theta).paint();
    painter.restore();
    const double ratio = 96.0 / 0.0254 / frame.scale();
    QString text = Words::tr("Section through cylinder 1 at %1° of the shaft, %2° of the cycle "
                             "after inner dead centre; scale 1 : %3. Inlet side at the left.")
                       .arg(degreesText(theta / units::degree), degreesText(75.0))
                       .arg(ratio, 0, 'f', 2);
    if (!solution.design.mechanism.piston)
        text += Words::tr(" Piston length assumed.");
    sheet.caption(text);
}

void drawTurnPlots(Sheet& sheet, const SolutionPointer& solution, double heightEach) {
    drawTurnPlot<PositionPlot>(sheet, solution, heightEach);
    drawTurnPlot<PortPlot>(sheet, solution, heightEach);
    drawTurnPlot<TorquePlot>(sheet, solution, heightEach);
    drawTurnPlot<StressPlot>(sheet, solution, heightEach);
}

void drawTrackPlots(Sheet& sheet, const SolutionPointer& solution, double heightEach) {
    const std::pair<QString, const char*> plots[] = {
        {Words::tr("Tracks unrolled"), "lift_%1_mm"},
        {Words::tr("Acceleration"), "acceleration_%1_m_per_s2"},
        {Words::tr("Pressure angle"), "pressure_angle_%1_deg"},
        {Words::tr("Relative radius of curvature"), "relative_radius_%1_mm"}};
    for (const auto& [title, channel] : plots) {
        TurnCursor cursor;
        QStringList channels;
        for (const char* side : {"inlet", "exhaust"})
            channels << QString::fromLatin1(channel).arg(QLatin1String(side));
        ChannelPlot plot(cursor, title, channels);
        drawTurnPlot(sheet, plot, solution, heightEach);
    }
}

void drawTimingCircle(Sheet& sheet, const SolutionPointer& solution, const QRectF& box) {
    TurnCursor cursor;
    TimingCircle circle(cursor);
    QPalette palette = sheet.tones().widgetPalette();
    circle.setPalette(palette);
    circle.setFont(Sheet::font(8.5));
    circle.setHandShown(false);
    circle.resize(box.size().toSize());
    circle.showSolution(solution);
    QCPPainter& painter = sheet.painter();
    painter.save();
    painter.translate(box.topLeft());
    circle.paintInto(painter);
    painter.restore();
}

void drawTorqueCurve(Sheet& sheet, const ReportContent& content, double height) {
    const Palette& tones = sheet.tones();
    QCustomPlot plot;
    setUpAxes(plot, tones);
    const QPen torquePen(tones.ink, 2.0), powerPen(tones.quiet, 1.6, Qt::DashLine);
    QCPGraph* torque = plot.addGraph();
    QCPGraph* power = plot.addGraph(plot.xAxis, plot.yAxis2);
    torque->setPen(torquePen);
    power->setPen(powerPen);
    plot.yAxis2->setVisible(true);
    plot.yAxis->setRange(
        addColumn(*torque, content.torqueCurve, "brake_torque_Nm", QStringLiteral("N·m")));
    plot.yAxis2->setRange(
        addColumn(*power, content.torqueCurve, "brake_power_kW", QStringLiteral("kW")));
    const auto& design = content.solution->design;
    const auto [from, to] = reportSpeeds(design);
    plot.xAxis->setRange(from, to);
    plot.xAxis->setLabel(Words::tr("shaft speed, rpm"));
    plot.yAxis->setLabel(axisText(Words::tr("brake torque"), QStringLiteral("N·m")));
    plot.yAxis2->setLabel(axisText(Words::tr("brake power"), QStringLiteral("kW")));
    const double speed = design.running.speed / units::revPerMinute;
    auto* mark = new QCPItemStraightLine(&plot);
    standAt(*mark, speed);
    mark->setPen(QPen(tones.cursor, 1, Qt::DotLine));
    const QColor shade = tones.tint(tones.warning, 0.16);
    const QString why = shadeBeyondLimits(plot, content, shade);
    if (!why.isEmpty())
        sheet.caption(Words::tr("Shaded: speeds at which the engine cannot be run (%1).").arg(why));
    const QRectF box = sheet.take(height);
    drawLegend(sheet, QRectF(box.topLeft(), QSizeF(box.width(), legendHeight)),
               Words::tr("Torque and power against speed"),
               {{torquePen, Words::tr("Brake torque")},
                {powerPen, Words::tr("Brake power")},
                {mark->pen(), Words::tr("speed of this report, %1 rpm").arg(speed, 0, 'f', 0)}});
    drawPlot(sheet, plot, box.adjusted(0, legendHeight + 3, 0, 0));
}

} // namespace lobewright::ui
