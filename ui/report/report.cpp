#include "ui/report/report.h"

#include "core/design/ranged_inputs.h"
#include "core/files/source_date.h"
#include "core/study/speed_sweep.h"
#include "core/units.h"
#include "ui/base/core_text.h"
#include "ui/base/curve.h"
#include "ui/base/units.h"
#include "ui/claims/verdict_html.h"
#include "ui/panels/limits_list.h"
#include "ui/panels/origin_words.h"
#include "ui/plots/base/turn_events.h"
#include "ui/report/report_drawings.h"
#include "ui/report/report_sheet.h"
#include "ui/report/report_unknowns.h"
#include "ui/report/report_words.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QLocale>
#include <QPdfWriter>
#include <QPrinter>
#include <fmt/chrono.h>

#include <algorithm>
#include <cmath>
#include <map>

namespace lobewright::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Report)
};

constexpr int dotsPerInch = 96;
constexpr double wholeSpeeds = 100.0; // [1/min]

QString titleOf(const ReportContent& content) {
    const auto& title = content.solution->design.title;
    return title.empty() ? Words::tr("Untitled design") : QString::fromStdString(title);
}

QString dateOf(const ReportContent& content) {
    return content.date.toString(Qt::ISODate);
}

QString numbersOf(const solution::Check& check) {
    QString text = valueAndLimit(check);
    if (check.angle) {
        text += Words::tr(", at %1° of the shaft")
                    .arg(QLocale().toString(*check.angle / units::degree, 'f', 1));
    }
    return text;
}

void writeLimits(Sheet& sheet, const solution::Solution& solution) {
    sheet.heading(Words::tr("Limits"));
    if (solution.checks.empty())
        sheet.paragraph(Words::tr("No checked limit exceeded (estimates); no remarks."));
    for (const solution::Check& check : solution.checks) {
        const bool isError = check.severity == solution::Severity::error;
        const bool isWarning = check.severity == solution::Severity::warning;
        const bool hasNumbers = check.value != 0.0 || check.limit != 0.0 || check.angle;
        sheet.entry(isError     ? Words::tr("Error")
                    : isWarning ? Words::tr("Warning")
                                : Words::tr("Remark"),
                    coreText(check.message) +
                        (hasNumbers ? QStringLiteral(" (") + numbersOf(check) + QLatin1Char(')')
                                    : QString()),
                    isError || isWarning ? sheet.tones().warning : QColor());
    }
}

/// Origins first: a reader must know what the rest stands on.
void writeOrigins(Sheet& sheet, const design::Design& design) {
    if (design.knowledge.empty())
        return;
    sheet.heading(Words::tr("What this rests on"));
    sheet.paragraph(originCountsText(design::originCounts(design), false) + QLatin1Char('.'));
    std::map<design::Origin, std::vector<Sheet::Row>> rows;
    for (const design::Field& field : design::fields(design)) {
        const design::Known known = design::knownOf(design, field.path);
        const QString range = rangeText(field, known);
        const bool isTold = known.origin == design::Origin::given ||
                            known.origin == design::Origin::measured || !range.isEmpty();
        if (known.origin == design::Origin::chosen || !isTold)
            continue;
        QString name = coreText(field.label);
        if (!field.groupLabel.empty())
            name = coreText(field.groupLabel) + QStringLiteral(": ") + name;
        rows[known.origin].push_back(
            {name, range.isEmpty() ? QString::fromStdString(known.source) : range});
    }
    for (auto& [origin, list] : rows) {
        list.insert(list.begin(), Sheet::Row{originWord(origin), {}, true});
        sheet.columns(list, 2, 7.0);
    }
}

void writeTitlePage(Sheet& sheet, const ReportContent& content) {
    const auto& solution = *content.solution;
    const auto& design = solution.design;
    sheet.title(titleOf(content));
    sheet.caption(
        Words::tr("Cam-track engine; cylinders: %1; cycles per cylinder and revolution: %2; %3 at "
                  "%4 rpm. Computed by Lobewright %5 on %6.")
            .arg(design.mechanism.cylinders)
            .arg(solution.pair.cyclesPerTurn())
            .arg(design.running.motored ? Words::tr("motored") : Words::tr("fired"))
            .arg(localNumbers(QString::number(design.running.speed / units::revPerMinute, 'g', 6)),
                 content.version, dateOf(content)));
    // Above what may flow over to another page.
    sheet.caption(cautionTexts().front());
    if (!design.notes.empty())
        sheet.paragraph(QString::fromStdString(design.notes));
    writeOrigins(sheet, design);
    constexpr double sectionHeight = 175.0; // leaves room for the limits of an ordinary engine
    drawSection(sheet, solution, sectionHeight);
    sheet.heading(Words::tr("Main results"));
    sheet.columns(mainFigures(solution), 2, 8.0);
    writeLimits(sheet, solution);
}

void writeTrackPage(Sheet& sheet, const ReportContent& content) {
    sheet.newPage();
    sheet.heading(Words::tr("Tracks"));
    constexpr double forFigures = 250.0;
    drawTrackPlots(sheet, content.solution, (sheet.room() - forFigures) / 4.0);
    sheet.columns(trackFigures(*content.solution), 2, 8.0);
    sheet.caption(Words::tr("At the pitch radius, over one revolution. Undercut margin: how much "
                            "larger the roller's radius may become before the track has a cusp "
                            "anywhere on its width; negative: it is undercut."));
}

void writePortPage(Sheet& sheet, const ReportContent& content) {
    // Below the limits of an engine that has many, circle and curve are drawn smaller.
    constexpr double needed = 650.0, ample = 790.0, curveHeight = 300.0;
    if (sheet.room() < needed)
        sheet.newPage();
    const double side = sheet.room() < ample ? 260.0 : 310.0;
    sheet.heading(Words::tr("Port timing and speed"));
    const QRectF box = sheet.take(side);
    drawTimingCircle(sheet, content.solution,
                     QRectF(box.left() - 8.0, box.top(), box.width() * 0.62, side));
    QCPPainter& painter = sheet.painter();
    painter.setPen(sheet.tones().quiet);
    painter.setFont(Sheet::font(8.5));
    painter.drawText(
        QRectF(box.left() + 0.68 * box.width(), box.top() + 40.0, 0.32 * box.width(), side - 40.0),
        Qt::TextWordWrap,
        Words::tr("One gas cycle, clockwise from inner dead centre (IDC). Outer arc: "
                  "exhaust ports open; inner arc: inlet ports open; shaded: both. "
                  "EO, EC exhaust opens, closes; IO, IC inlet opens, closes. Cycle "
                  "degrees from IDC, shaft degrees below them."));
    sheet.columns(timingFigures(*content.solution), 2, 8.5);
    sheet.space(10.0);
    drawTorqueCurve(sheet, content, std::min(curveHeight, sheet.room() - 60.0));
}

void writeBaseline(Sheet& sheet, const ReportContent& content) {
    const auto& now = *content.solution;
    const auto& before = *content.baseline;
    const auto numbers = changedNumbers(now.design, before.design);
    const auto figures = changedFigures(now, before);
    sheet.newPage();
    sheet.heading(Words::tr("Beside the baseline “%1”").arg(content.baselineName));
    if (numbers.empty() && figures.empty())
        sheet.paragraph(Words::tr("Inputs and results are the same."));
    if (!numbers.empty()) {
        sheet.caption(Words::tr("Inputs that differ:"));
        sheet.columns(numbers, 1, 8.0);
    }
    if (!figures.empty()) {
        sheet.caption(Words::tr("Results that differ:"));
        sheet.columns(figures, 1, 8.0);
    }
}

/// Published figures and statements, the weightiest first, with all their arithmetic.
void writeVerdict(Sheet& sheet, const study::VerdictPage& page) {
    sheet.newPage();
    const std::string& title = page.report.claims.title;
    sheet.heading(title.empty() ? Words::tr("Verdict on published figures")
                                : Words::tr("Verdict on “%1”").arg(QString::fromStdString(title)));
    const VerdictHtml html(page, sheet.tones(), false);
    sheet.richText(html.summary());
    sheet.richText(html.header());
    for (const study::VerdictRow& row : page.rows)
        sheet.richText(html.row(row, true));
    sheet.caption(Words::tr("A verdict compares published numbers with arithmetic, published bands "
                            "and this design, not with any engine that was built."));
}

void writeSheets(Sheet& sheet, const ReportContent& content) {
    writeTitlePage(sheet, content);
    // Many limits flow over to a second page: what needs no page of its own fills it.
    const bool flowsOver = sheet.pages() > 1;
    if (flowsOver)
        writePortPage(sheet, content);
    if (content.verdict && !content.verdict->rows.empty())
        writeVerdict(sheet, *content.verdict);
    sheet.newPage();
    sheet.heading(Words::tr("Over one revolution"));
    if (!rattles(*content.solution).empty()) {
        sheet.caption(Words::tr("Wedges on the lower edge: where the load of cylinder 1 leaves the "
                                "push flank of the closed track (down) or comes back to it (up); "
                                "the roller rattles there."));
    }
    drawTurnPlots(sheet, content.solution, sheet.room() / 4.0);
    if (!flowsOver)
        writePortPage(sheet, content);
    writeTrackPage(sheet, content);
    if (content.unknowns)
        writeUnknowns(sheet, *content.unknowns);
    if (content.baseline)
        writeBaseline(sheet, content);
    constexpr double forAssumptions = 600.0; // else a page may be left all but empty
    if (sheet.room() < forAssumptions)
        sheet.newPage();
    sheet.heading(Words::tr("Assumptions and sources"));
    for (const auto& [name, text] : assumptions(*content.solution))
        sheet.entry(name, text);
    sheet.heading(Words::tr("Cautions"));
    for (const QString& text : cautionTexts())
        sheet.paragraph(text);
    sheet.heading(Words::tr("Inputs of the design"));
    sheet.columns(designNumbers(content.solution->design), 3, 6.6);
}

/// One run over all pages; `pages` 0 while their number is not known. Returns their number.
int paintOn(const ReportContent& content, QPagedPaintDevice& device, int pages) {
    Sheet sheet(device,
                {titleOf(content),
                 Words::tr("Lobewright %1, %2").arg(content.version, dateOf(content)), pages});
    writeSheets(sheet, content);
    return sheet.pages();
}

int paint(const ReportContent& content, QIODevice& device, const QPageSize& size, int pages) {
    QPdfWriter writer(&device);
    writer.setResolution(dotsPerInch);
    writer.setPageSize(size);
    writer.setPageMargins(QMarginsF());
    writer.setTitle(titleOf(content));
    writer.setCreator(QStringLiteral("Lobewright ") + content.version);
    return paintOn(content, writer, pages);
}

} // namespace

QDate reportDate() {
    return QDate::fromString(QString::fromStdString(files::dayOfFiles()), Qt::ISODate);
}

std::pair<double, double> reportSpeeds(const design::Design& design) {
    const double speed = design.running.speed / units::revPerMinute;
    const double from = std::round(0.3 * speed / wholeSpeeds) * wholeSpeeds;
    const double to = std::ceil(1.8 * speed / wholeSpeeds) * wholeSpeeds;
    return {std::max(from, 0.5 * wholeSpeeds), to};
}

Result<study::Table> reportTorqueCurve(const design::Design& design, Monitor& monitor,
                                       const study::PointSink& sink) {
    const auto [from, to] = reportSpeeds(design);
    return study::speedSweep(design, from, to, reportCurvePoints, {}, monitor, sink);
}

namespace {
/// Qt writes the time of day into every PDF; where the environment fixes the date of files, digits
/// of the same number take its place, so that nothing else moves.
void fixDate(QByteArray& pdf) {
    const QByteArray mark = "/CreationDate (D:";
    const qsizetype begin = pdf.indexOf(mark);
    if (!files::isDateFixed() || begin < 0)
        return;
    const std::string date = fmt::format("{:%Y%m%d%H%M%S}", files::dateOfFiles());
    pdf.replace(begin + mark.size(), static_cast<qsizetype>(date.size()), date.c_str());
}

const Problem withoutGas{
    "", QT_TRANSLATE_NOOP("Core", "the gas cycle could not be solved; a report needs its "
                                  "solution")};
} // namespace

Result<QByteArray> reportPdf(const ReportContent& content) {
    if (!content.solution->gas)
        return withoutGas;
    QByteArray bytes;
    int pages = 0;
    for (int run = 0; run < 2; ++run) { // the second knows how many pages there are
        bytes.clear();
        QBuffer buffer(&bytes);
        buffer.open(QIODevice::WriteOnly);
        pages = paint(content, buffer, QPageSize(QPageSize::A4), pages);
    }
    fixDate(bytes);
    return bytes;
}

Result<int> printReport(const ReportContent& content, QPrinter& printer) {
    if (!content.solution->gas)
        return withoutGas;
    printer.setFullPage(true); // the sheets keep margins of their own
    printer.setResolution(dotsPerInch);
    QBuffer counted;
    counted.open(QIODevice::WriteOnly);
    const int pages = paint(content, counted, printer.pageLayout().pageSize(), 0);
    return paintOn(content, printer, pages);
}

} // namespace lobewright::ui
