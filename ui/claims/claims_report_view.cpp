#include "ui/claims/claims_report_view.h"

#include "ui/base/core_text.h"
#include "ui/base/palette.h"
#include "ui/claims/verdict_html.h"

#include <QEvent>
#include <QPagedPaintDevice>
#include <QScrollBar>
#include <QTextDocument>
#include <QUrl>

namespace lobewright::ui {

ClaimsReportView::ClaimsReportView(QWidget* parent) : QTextBrowser(parent) {
    setAccessibleName(tr("Verdict on the published sheet"));
    setFrameShape(QFrame::NoFrame);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setOpenLinks(false);
    connect(this, &QTextBrowser::anchorClicked, this, &ClaimsReportView::open);
}

void ClaimsReportView::show(const study::VerdictPage& page) {
    verdict_ = page;
    write();
}

void ClaimsReportView::unfoldAll(bool isUnfolded) {
    isAllUnfolded_ = isUnfolded;
    unfolded_.clear();
    turned_.clear();
    write();
}

void ClaimsReportView::open(const QUrl& link) {
    const QString target = link.path();
    const QString kind = link.scheme();
    if (kind == QLatin1String("entry")) {
        Q_EMIT entryWanted(target);
    } else if (kind == QLatin1String("figure")) {
        Q_EMIT figureWanted(target);
    } else if (kind == QLatin1String("field")) {
        Q_EMIT fieldWanted(target);
    } else if (kind == QLatin1String("result")) {
        Q_EMIT resultWanted(target);
    } else if (kind == QLatin1String("all")) {
        unfoldAll(!isAllUnfolded_);
    } else {
        auto& turned = kind == QLatin1String("working") ? unfolded_ : turned_;
        const std::string id = target.toStdString();
        if (turned.erase(id) == 0)
            turned.insert(id);
        write();
    }
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

bool ClaimsReportView::addHeading(const char* key, const QString& title, bool isOpenAtFirst) {
    const bool isOpen = onPaper_ || isAllUnfolded_ || isOpenAtFirst != turned_.contains(key);
    page_ += onPaper_ ? QStringLiteral("<h4>%1</h4>").arg(title.toHtmlEscaped())
                      : QStringLiteral("<h4><a style='text-decoration:none; color:%1' "
                                       "href='section:%2'>%3%4</a></h4>")
                            .arg(tones().ink.name(), QLatin1String(key),
                                 isOpen ? QStringLiteral("▾ ") : QStringLiteral("▸ "),
                                 title.toHtmlEscaped());
    return isOpen;
}

void ClaimsReportView::addDetail(const QString& label, const QString& text) {
    if (text.isEmpty())
        return;
    page_ += QStringLiteral("<p style='margin:0 0 0 16px; color:%1'>%2%3</p>")
                 .arg(tones().quiet.name(),
                      label.isEmpty() ? QString() : label.toHtmlEscaped() + QStringLiteral(": "),
                      text.toHtmlEscaped());
}

void ClaimsReportView::addRows() {
    const VerdictHtml html(verdict_, tones(), !onPaper_);
    page_ += html.summary();
    if (!onPaper_) {
        page_ +=
            QStringLiteral("<p><a style='text-decoration:none' href='all:all'>%1</a></p>")
                .arg(isAllUnfolded_ ? tr("▾ Fold the arithmetic") : tr("▸ Show all arithmetic"));
    }
    page_ += html.header();
    for (const study::VerdictRow& row : verdict_.rows)
        page_ += html.row(row, onPaper_ || isAllUnfolded_ || unfolded_.contains(row.id));
}

void ClaimsReportView::addOthers() {
    if (!addHeading("others", tr("What else follows from the numbers"), false))
        return;
    const VerdictHtml html(verdict_, tones(), !onPaper_);
    for (const study::RowWorking& working : verdict_.others)
        page_ += html.working(working);
}

void ClaimsReportView::addMissing() {
    if (!addHeading("missing", tr("Not given, and what it would decide"), verdict_.rows.empty()))
        return;
    for (const study::WantedNumber& wanted : verdict_.wanted)
        addDetail(coreText(wanted.label), coreText(wanted.decides));
}

void ClaimsReportView::addAssumed() {
    if (!addHeading("assumed", tr("Assumed"), false))
        return;
    for (const Message& assumption : verdict_.report.assumptions)
        addDetail({}, coreText(assumption));
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
                      .arg(QString::fromStdString(verdict_.report.claims.title).toHtmlEscaped(),
                           page_,
                           tr("Estimates only: a verdict compares published numbers with "
                              "arithmetic and published bands, not with any engine that was "
                              "built.")));
    paper.print(&device);
}

void ClaimsReportView::makePage() {
    page_.clear();
    if (!verdict_.rows.empty())
        addRows();
    if (!verdict_.others.empty())
        addOthers();
    if (!verdict_.wanted.empty())
        addMissing();
    if (!verdict_.report.assumptions.empty())
        addAssumed();
}

void ClaimsReportView::write() {
    makePage();
    // Who types in the form keeps their place in the report.
    const int place = verticalScrollBar()->value();
    setHtml(page_);
    verticalScrollBar()->setValue(place);
}

} // namespace lobewright::ui
