#include "ui/claims/claims_report_view.h"

#include "ui/base/core_text.h"
#include "ui/base/figure_text.h"
#include "ui/base/palette.h"
#include "ui/panels/figures_panel.h"

#include <QEvent>
#include <QPagedPaintDevice>
#include <QScrollBar>
#include <QTextDocument>

namespace lobewright::ui {

namespace {

/// With the numbers that are put into a formula as the language writes them.
QString arithmetic(const Message& text) {
    return localNumbers(coreText(text));
}

bool isBad(study::Verdict verdict) {
    return verdict == study::Verdict::outsideBand || verdict == study::Verdict::outsideEstimate ||
           verdict == study::Verdict::implausible || verdict == study::Verdict::contradictory;
}

} // namespace

ClaimsReportView::ClaimsReportView(QWidget* parent) : QTextBrowser(parent) {
    setAccessibleName(tr("What follows from the claims"));
    setFrameShape(QFrame::NoFrame);
}

void ClaimsReportView::show(const study::ClaimsReport& report) {
    report_ = report;
    write();
}

void ClaimsReportView::changeEvent(QEvent* event) {
    QTextBrowser::changeEvent(event);
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::StyleChange)
        write();
}

void ClaimsReportView::showEvent(QShowEvent* event) {
    const int place = verticalScrollBar()->value();
    QTextBrowser::showEvent(event); // scrolls to a cursor that nobody sees
    verticalScrollBar()->setValue(place);
}

void ClaimsReportView::addHeading(const QString& title) {
    page_ += QStringLiteral("<h4>%1</h4>").arg(title.toHtmlEscaped());
}

void ClaimsReportView::addRow(const QString& what, const QString& value, TextId verdict,
                              bool isBad) {
    const QColor tone = isBad ? tones().warning : tones().ink;
    page_ += QStringLiteral("<table width='100%' cellspacing='0' cellpadding='0' "
                            "style='margin-top:6px'><tr><td>%1</td><td align='right'><b>%2</b> "
                            "<span style='color:%3'>%4</span></td></tr></table>")
                 .arg(what.toHtmlEscaped(), value.toHtmlEscaped(), tone.name(),
                      coreText(verdict).toHtmlEscaped());
}

void ClaimsReportView::addDetail(const QString& label, const QString& text) {
    if (text.isEmpty())
        return;
    page_ += QStringLiteral("<p style='margin:0 0 0 16px; color:%1'>%2%3</p>")
                 .arg(tones().quiet.name(),
                      label.isEmpty() ? QString() : label.toHtmlEscaped() + QStringLiteral(": "),
                      text.toHtmlEscaped());
}

void ClaimsReportView::addConflicts() {
    addHeading(tr("Given numbers that do not fit each other"));
    for (const study::Conflict& conflict : report_.conflicts) {
        addRow(coreText(conflict.message), {}, study::name(conflict.verdict), true);
        addDetail({}, arithmetic(conflict.arithmetic));
    }
}

void ClaimsReportView::addFindings() {
    addHeading(tr("What follows from the numbers"));
    for (const study::Finding& finding : report_.findings) {
        const bool isPlain = finding.verdict == study::Verdict::computed;
        const auto valued = [&finding](double value) {
            return figureText(value) + QLatin1Char(' ') + QString::fromStdString(finding.unit);
        };
        addRow(coreText(finding.quantity),
               finding.readings.empty() ? valued(finding.value) : QString(),
               isPlain || !finding.readings.empty() ? TextId{} : study::name(finding.verdict),
               isBad(finding.verdict));
        for (const study::Reading& reading : finding.readings)
            addDetail(coreText(reading.what),
                      valued(reading.value) +
                          (reading.verdict == study::Verdict::computed
                               ? QString()
                               : QStringLiteral(" – ") + coreText(study::name(reading.verdict))));
        addDetail({}, coreText(finding.formula) + QStringLiteral(" = ") +
                          arithmetic(finding.substituted));
        addDetail(tr("band"), arithmetic(finding.band));
        addDetail(tr("source"), coreText(finding.source));
        addDetail(tr("note"), coreText(finding.note));
    }
}

void ClaimsReportView::addStatements() {
    addHeading(tr("Statements"));
    for (const study::StatementRow& row : report_.statements) {
        addRow(tr("“%1”").arg(QString::fromStdString(row.statement.claim)), {},
               study::name(row.outcome), row.outcome == study::Outcome::disagrees);
        addDetail({}, coreText(row.computed));
        addDetail({}, arithmetic(row.arithmetic));
        const std::string& date = row.statement.date;
        addDetail(tr("published in"),
                  QString::fromStdString(row.statement.source.empty() || date.empty()
                                             ? row.statement.source + date
                                             : row.statement.source + ", " + date));
        addDetail(tr("confidence"), coreText(study::name(row.confidence)));
        addDetail(tr("would be overturned by"), coreText(row.overturnedBy));
    }
}

void ClaimsReportView::addMissing() {
    addHeading(tr("Not given, and what it would decide"));
    for (const study::MissingNumber& missing : report_.missing)
        addDetail(coreText(missing.label), coreText(missing.decides));
}

const Palette& ClaimsReportView::tones() const {
    return onPaper_ ? Palette::lightTones() : Palette::of(*this);
}

void ClaimsReportView::printOn(QPagedPaintDevice& device) {
    onPaper_ = true;
    makePage();
    onPaper_ = false;
    QTextDocument paper;
    paper.setHtml(QStringLiteral("<h3>%1</h3>%2<p>%3</p>")
                      .arg(QString::fromStdString(report_.claims.title).toHtmlEscaped(), page_,
                           tr("Estimates only: a verdict compares published numbers with "
                              "arithmetic and published bands, not with any engine that was "
                              "built.")));
    paper.print(&device);
}

void ClaimsReportView::makePage() {
    page_.clear();
    if (!report_.conflicts.empty())
        addConflicts();
    if (!report_.findings.empty())
        addFindings();
    if (!report_.statements.empty())
        addStatements();
    if (!report_.missing.empty())
        addMissing();
    if (!report_.assumptions.empty()) {
        addHeading(tr("Assumed"));
        for (const Message& assumption : report_.assumptions)
            addDetail({}, coreText(assumption));
    }
}

void ClaimsReportView::write() {
    makePage();
    // Who types in the form keeps their place in the report.
    const int place = verticalScrollBar()->value();
    setHtml(page_);
    verticalScrollBar()->setValue(place);
}

} // namespace lobewright::ui
