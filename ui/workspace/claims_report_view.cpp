#include "ui/workspace/claims_report_view.h"

#include "ui/editing/figures_panel.h"
#include "ui/palette.h"

#include <QHeaderView>

namespace lobewright::ui {

namespace {

QString words(std::string_view text) {
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

bool isBad(study::Verdict verdict) {
    return verdict == study::Verdict::outsideBand || verdict == study::Verdict::implausible ||
           verdict == study::Verdict::contradictory;
}

} // namespace

ClaimsReportView::ClaimsReportView(QWidget* parent) : QTreeWidget(parent) {
    setAccessibleName(tr("What follows from the claims"));
    setColumnCount(3);
    setHeaderLabels({tr("Quantity"), tr("Value"), tr("Verdict")});
    setFrameShape(QFrame::NoFrame);
    setWordWrap(true);
    setIndentation(14);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    setSelectionMode(QAbstractItemView::SingleSelection);
    header()->setSectionResizeMode(0, QHeaderView::Stretch);
    header()->setSectionResizeMode(1, QHeaderView::ResizeToContents);
    header()->setSectionResizeMode(2, QHeaderView::ResizeToContents);
    header()->setStretchLastSection(false);
}

QTreeWidgetItem* ClaimsReportView::addHeading(const QString& title) {
    auto* item = new QTreeWidgetItem(this, {title});
    QFont bold = font();
    bold.setBold(true);
    item->setFont(0, bold);
    item->setFirstColumnSpanned(true);
    item->setExpanded(true);
    return item;
}

QTreeWidgetItem* ClaimsReportView::addRow(QTreeWidgetItem& heading, const QString& what,
                                          const QString& value, const QString& verdict,
                                          bool isBad) {
    auto* row = new QTreeWidgetItem(&heading, {what, value, verdict});
    row->setTextAlignment(1, Qt::AlignRight | Qt::AlignVCenter);
    if (isBad)
        row->setForeground(2, Palette::of(*this).warning);
    row->setExpanded(true);
    return row;
}

void ClaimsReportView::addDetail(QTreeWidgetItem& row, const QString& label,
                                 const std::string& text) {
    if (text.empty())
        return;
    auto* detail =
        new QTreeWidgetItem(&row, {(label.isEmpty() ? QString() : label + QStringLiteral(": ")) +
                                   QString::fromStdString(text)});
    detail->setFirstColumnSpanned(true);
    detail->setForeground(0, Palette::of(*this).quiet);
    detail->setToolTip(0, detail->text(0));
}

void ClaimsReportView::show(const study::ClaimsReport& report) {
    clear();
    if (!report.conflicts.empty()) {
        QTreeWidgetItem* heading = addHeading(tr("Given numbers that do not fit each other"));
        for (const study::Conflict& conflict : report.conflicts) {
            QTreeWidgetItem* row = addRow(*heading, QString::fromStdString(conflict.message), {},
                                          words(study::name(conflict.verdict)), true);
            addDetail(*row, {}, conflict.arithmetic);
        }
    }
    if (!report.findings.empty()) {
        QTreeWidgetItem* heading = addHeading(tr("What follows from the numbers"));
        for (const study::Finding& finding : report.findings) {
            QTreeWidgetItem* row = addRow(
                *heading, QString::fromStdString(finding.quantity),
                figureText(finding.value) + QLatin1Char(' ') + QString::fromStdString(finding.unit),
                words(study::name(finding.verdict)), isBad(finding.verdict));
            addDetail(*row, {}, finding.formula + " = " + finding.substituted);
            addDetail(*row, tr("band"), finding.band);
            addDetail(*row, tr("source"), finding.source);
            addDetail(*row, tr("note"), finding.note);
        }
    }
    if (!report.statements.empty()) {
        QTreeWidgetItem* heading = addHeading(tr("Statements"));
        for (const study::StatementRow& one : report.statements) {
            QTreeWidgetItem* row =
                addRow(*heading, QString::fromStdString(one.statement.claim), {},
                       words(study::name(one.outcome)), one.outcome == study::Outcome::disagrees);
            addDetail(*row, {}, one.computed);
            addDetail(*row, {}, one.arithmetic);
            addDetail(*row, tr("confidence"), std::string(study::name(one.confidence)));
            addDetail(*row, tr("would be overturned by"), one.overturnedBy);
        }
    }
    if (!report.missing.empty()) {
        QTreeWidgetItem* heading = addHeading(tr("Not given, and what it would decide"));
        for (const study::MissingNumber& missing : report.missing)
            addDetail(*heading, QString::fromStdString(missing.label), missing.decides);
    }
    if (!report.assumptions.empty()) {
        QTreeWidgetItem* heading = addHeading(tr("Assumed"));
        for (const std::string& assumption : report.assumptions)
            addDetail(*heading, {}, assumption);
    }
}

} // namespace lobewright::ui
