#include "ui/report/report_unknowns.h"

#include "core/design/ranged_inputs.h"
#include "core/unknowns/bands.h"
#include "ui/base/core_text.h"
#include "ui/base/curve.h"
#include "ui/base/units.h"
#include "ui/plots/base/bands_behind.h"
#include "ui/plots/base/plot_tones.h"

#include <QCoreApplication>
#include <QLocale>

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(ReportUnknowns)
};

QString percent(long count, long all) {
    return shortText(all > 0 ? 100.0 * static_cast<double>(count) / static_cast<double>(all) : 0.0);
}

/// "12 … 18 kW; as designed 15.5 kW"
QString bandText(const unknowns::ResultBand& result) {
    const Unit unit = unitFor(result.column.unit);
    const auto shown = [&](double value) { return shortText(unit.shown(value)); };
    const QString behind = unit.text.isEmpty() ? QString() : QLatin1Char(' ') + unit.text;
    if (!result.band)
        return Words::tr("not known of any engine");
    QString text =
        QStringLiteral("%1 … %2").arg(shown(result.band->p05), shown(result.band->p95)) + behind;
    if (result.nominal)
        text += Words::tr("; as designed %1").arg(shown(*result.nominal)) + behind;
    return text;
}

/// Torque or power against speed: bands, and the design as it is.
void drawCurve(Sheet& sheet, const std::vector<unknowns::CurvePoint>& points,
               unknowns::CurveQuantity quantity, double height) {
    const Palette& tones = sheet.tones();
    QCustomPlot plot;
    applyPlotTones(plot, tones);
    const auto column = unknowns::curveColumns()[static_cast<std::size_t>(quantity)];
    const Unit unit = unitFor(column.unit);
    using unknowns::Quantiles;
    const auto edge = [&](double Quantiles::*which) {
        QCPGraph* graph = plot.addGraph();
        graph->setPen(Qt::NoPen);
        for (const auto& point : points) {
            if (const auto& band = point.band[quantity])
                graph->addData(point.speed, unit.shown((*band).*which));
        }
        return graph;
    };
    const auto fill = [&](double Quantiles::*low, double Quantiles::*high, const QColor& colour) {
        QCPGraph* below = edge(low);
        QCPGraph* above = edge(high);
        above->setChannelFillGraph(below);
        above->setBrush(colour);
    };
    fill(&Quantiles::p05, &Quantiles::p95, outerBand(tones.ink));
    fill(&Quantiles::p25, &Quantiles::p75, innerBand(tones.ink));
    QCPGraph* nominal = plot.addGraph();
    nominal->setPen(QPen(tones.ink, 1.8));
    for (const auto& point : points) {
        if (point.nominal[quantity])
            nominal->addData(point.speed, unit.shown(*point.nominal[quantity]));
    }
    plot.rescaleAxes();
    plot.yAxis->setRangeLower(std::min(0.0, plot.yAxis->range().lower));
    plot.xAxis->setLabel(Words::tr("shaft speed, rpm"));
    plot.yAxis->setLabel(axisText(coreText(column.label), QString::fromStdString(column.unit)));
    const QRectF box = sheet.take(height);
    QCPPainter& painter = sheet.painter();
    plot.setBackground(Qt::NoBrush); // paper has its own ground
    painter.save();
    painter.translate(box.topLeft());
    plot.toPainter(&painter, static_cast<int>(box.width()), static_cast<int>(box.height()));
    painter.restore();
}

void writeRequired(Sheet& sheet, const unknowns::Requirement& required,
                   const std::vector<unknowns::Unknown>& unknowns) {
    sheet.heading(Words::tr("What would have to be true"));
    if (required.runs.empty()) {
        const auto engines = required.engines + required.tries;
        QString text = Words::tr("None of %1 engines keeps to the published figures.")
                           .arg(QLocale().toString(static_cast<qlonglong>(engines)));
        if (std::isfinite(required.nearestMiss)) {
            text += QLatin1Char(' ') + Words::tr("The nearest misses by %1 %.")
                                           .arg(shortText(100.0 * required.nearestMiss));
        }
        sheet.paragraph(text);
        return;
    }
    sheet.paragraph(Words::tr("%1 % of the possible engines keep to the published figures.")
                        .arg(shortText(100.0 * required.share)));
    for (const Message& sentence : unknowns::sentences(required, unknowns))
        sheet.paragraph(coreText(sentence));
    std::vector<Sheet::Row> rows;
    for (const auto& narrowed : required.unknowns) {
        const unknowns::Unknown& unknown = unknowns[narrowed.unknown];
        if (unknown.marginal().kind == unknowns::Marginal::Kind::choice)
            continue;
        const Unit unit = unitFor(unknown.unit);
        const auto range = [&](const unknowns::Quantiles& band) {
            return endsText(unit.shown(band.p05), unit.shown(band.p95));
        };
        rows.push_back({coreText(unknown.label),
                        Words::tr("%1 of %2 %3")
                            .arg(range(narrowed.after), range(narrowed.before), unit.text)});
    }
    sheet.caption(Words::tr("9 of 10 of those that keep to them, of what was thought possible:"));
    sheet.columns(rows, 1, 8.0);
}

} // namespace

Result<std::shared_ptr<const ReportUnknowns>>
reportUnknowns(const design::Design& design, Monitor& monitor,
               const std::shared_ptr<const ReportUnknowns>& known,
               const std::vector<unknowns::Condition>& conditions) {
    if (design::rangedInputs(design).empty())
        return std::shared_ptr<const ReportUnknowns>();
    const auto library = unknowns::statistics();
    if (!library)
        return library.problems();
    ReportUnknowns result;
    if (known) {
        result = *known;
    } else {
        unknowns::Plan plan;
        plan.speeds = unknowns::usualSpeeds(design);
        auto ensemble = unknowns::computeEnsemble(design, plan, monitor);
        if (!ensemble)
            return ensemble.problems();
        result.ensemble = std::move(ensemble).value();
    }
    auto decided =
        unknowns::decideAll(**library, result.ensemble, unknowns::principalResults(), monitor);
    if (!decided)
        return Problem{"", QT_TRANSLATE_NOOP("Core", "cancelled")};
    result.decided = std::move(*decided);
    if (!conditions.empty() && !result.required) {
        auto required = unknowns::whatWouldHaveToBeTrue(
            design, result.ensemble, conditions, {.seed = result.ensemble.plan.seed}, monitor);
        if (!required)
            return required.problems();
        result.required = std::move(required).value();
    }
    return std::make_shared<const ReportUnknowns>(std::move(result));
}

void writeUnknowns(Sheet& sheet, const ReportUnknowns& known) {
    const auto found = unknowns::feasibility(known.ensemble);
    sheet.newPage();
    sheet.heading(Words::tr("What is not known"));
    sheet.caption(
        Words::tr("%1 engines drawn from the ranges of %2 inputs: %3 % run, %4 % cannot be built, "
                  "%5 % cannot run. Filled: where 9 of 10 of them lie, darker half of them; the "
                  "line is the design as it is.")
            .arg(QLocale().toString(static_cast<qlonglong>(found.engines)),
                 QLocale().toString(static_cast<qlonglong>(known.ensemble.unknowns.size())),
                 percent(found.runs, found.engines), percent(found.notBuilt, found.engines),
                 percent(found.notRun, found.engines)));
    const auto points = unknowns::curveBands(known.ensemble);
    drawCurve(sheet, points, unknowns::torque, 180.0);
    drawCurve(sheet, points, unknowns::power, 180.0);
    const auto bands = unknowns::resultBands(known.ensemble);
    std::vector<Sheet::Row> rows;
    for (const std::string& name : unknowns::principalResults()) {
        if (const auto result = known.ensemble.result(name))
            rows.push_back({coreText(bands[*result].column.label), bandText(bands[*result])});
    }
    sheet.caption(Words::tr("Results, 9 of 10 engines:"));
    sheet.columns(rows, 1, 8.0);
    sheet.heading(Words::tr("What decides this"));
    for (const auto& decided : known.decided) {
        sheet.entry(coreText(bands[decided.result].column.label),
                    coreText(unknowns::sentence(decided.advice, known.ensemble.unknowns)));
    }
    if (known.required)
        writeRequired(sheet, *known.required, known.ensemble.unknowns);
}

} // namespace lobewright::ui
