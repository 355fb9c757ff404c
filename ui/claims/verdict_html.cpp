#include "ui/claims/verdict_html.h"

#include "ui/base/core_text.h"
#include "ui/base/figure_text.h"
#include "ui/base/palette.h"
#include "ui/panels/origin_words.h"

#include <QCoreApplication>
#include <QStringList>

namespace lobewright::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Verdict)
};

constexpr int widths[] = {24, 27, 17, 15, 17}; // [%]

QString listed(const std::vector<TextId>& labels) {
    QStringList words;
    for (const TextId label : labels)
        words << inSentence(coreText(label));
    return words.join(QStringLiteral(", "));
}

/// The beginning of a long answer; the rest is unfolded with its arithmetic.
QString shortened(const QString& text) {
    constexpr int longest = 120;
    if (text.size() <= longest)
        return text;
    return text.left(text.lastIndexOf(QLatin1Char(' '), longest)) + QStringLiteral(" …");
}

} // namespace

QString arithmeticText(const Message& text) {
    return localNumbers(coreText(text));
}

QString VerdictHtml::quiet(const QString& html) const {
    return QStringLiteral("<span style='color:%1'>%2</span>").arg(tones_.quiet.name(), html);
}

QString VerdictHtml::summary() const {
    int against = 0, doubtful = 0, open = 0;
    for (const study::VerdictRow& row : page_.rows) {
        const bool isDoubtful = row.outcome == study::RowOutcome::doubtful;
        doubtful += isDoubtful ? 1 : 0;
        against += study::isAgainst(row.outcome) && !isDoubtful ? 1 : 0;
        open += row.outcome >= study::RowOutcome::computed ? 1 : 0;
    }
    const int rest = static_cast<int>(page_.rows.size()) - against - doubtful - open;
    QString text = Words::tr("Of %1 published figures and statements %2 are contradicted, %3 "
                             "doubtful, %4 not contradicted, %5 not judged.")
                       .arg(page_.rows.size())
                       .arg(against)
                       .arg(doubtful)
                       .arg(rest)
                       .arg(open)
                       .toHtmlEscaped();
    if (!page_.designNote.empty()) {
        QString why = coreText(page_.designNote);
        why[0] = why[0].toUpper();
        text += QStringLiteral("<br>") + quiet(why.toHtmlEscaped() + QLatin1Char('.'));
    }
    return QStringLiteral("<p>%1</p>").arg(text);
}

QString VerdictHtml::columns(const QStringList& cells, bool isHeader) const {
    QString html = QStringLiteral("<tr>");
    for (int i = 0; i < cells.size(); ++i) {
        html += QStringLiteral("<td width='%1%' valign='%2'>%3</td>")
                    .arg(widths[i])
                    .arg(isHeader ? QStringLiteral("bottom") : QStringLiteral("top"), cells[i]);
    }
    return html + QStringLiteral("</tr>");
}

QString VerdictHtml::header() const {
    return QStringLiteral("<table width='100%' cellspacing='0' cellpadding='3'>") +
           columns({quiet(Words::tr("Published").toHtmlEscaped()),
                    quiet(Words::tr("Arithmetic").toHtmlEscaped()),
                    quiet(Words::tr("This design").toHtmlEscaped()),
                    quiet(Words::tr("Band, 5 to 95 %").toHtmlEscaped()),
                    quiet(Words::tr("Outcome").toHtmlEscaped())},
                   true) +
           QStringLiteral("</table>");
}

QString VerdictHtml::cell(const study::VerdictCell& cell, const study::VerdictRow& row,
                          bool isUnfolded) const {
    const bool isSame = cell.why == page_.designNote && !page_.designNote.empty();
    QString text = cell.text.empty() ? isSame ? QStringLiteral("–") : coreText(cell.why)
                                     : arithmeticText(cell.text);
    if (row.isQuoted && &cell == &row.published)
        text = Words::tr("“%1”").arg(text);
    if (&cell == &row.arithmetic && isInteractive_ && !isUnfolded)
        text = shortened(text);
    text = text.toHtmlEscaped();
    if (!isInteractive_ || cell.opens == study::VerdictCell::Opens::nothing)
        return cell.text.empty() ? quiet(text) : text;
    const bool isFolded = cell.opens == study::VerdictCell::Opens::working;
    const QString mark = !isFolded    ? QString()
                         : isUnfolded ? QStringLiteral("▾ ")
                                      : QStringLiteral("▸ ");
    const std::string_view kind = study::name(cell.opens);
    const QString colour =
        cell.text.empty() ? QStringLiteral("; color:%1").arg(tones_.quiet.name()) : QString();
    return QStringLiteral("<a style='text-decoration:none%1' href='%2:%3'>%4%5</a>")
        .arg(colour, QString::fromLatin1(kind.data(), static_cast<qsizetype>(kind.size())),
             QString::fromStdString(cell.target), mark, text);
}

QString VerdictHtml::basis(const study::VerdictRow& row) const {
    QStringList parts;
    if (!row.given.empty())
        parts << Words::tr("given: %1").arg(listed(row.given));
    if (!row.assumed.empty())
        parts << Words::tr("assumed: %1").arg(listed(row.assumed));
    if (row.designRestsOn) {
        const QString counts = originCountsText(*row.designRestsOn, false);
        parts << (counts.isEmpty() ? Words::tr("the design, all of it chosen")
                                   : Words::tr("the design: %1").arg(counts));
    }
    QString text;
    if (!parts.isEmpty())
        text = Words::tr("Rests on %1.").arg(parts.join(QStringLiteral("; "))) + QLatin1Char(' ');
    return (text + Words::tr("Would be overturned by: %1").arg(arithmeticText(row.overturnedBy)))
        .toHtmlEscaped();
}

QString VerdictHtml::working(const study::RowWorking& working) const {
    QStringList lines;
    const auto add = [&lines](const QString& label, const QString& text) {
        if (!text.isEmpty())
            lines << (label.isEmpty() ? text : label + QStringLiteral(": ") + text).toHtmlEscaped();
    };
    QString formula = arithmeticText(working.arithmetic);
    if (!working.value.empty())
        formula += QStringLiteral(" = ") + coreText(working.value);
    lines << QStringLiteral("<b>%1</b> %2")
                 .arg(coreText(working.quantity).toHtmlEscaped(),
                      working.verdict.empty()
                          ? QString()
                          : QStringLiteral("– ") + coreText(working.verdict).toHtmlEscaped());
    add({}, formula);
    for (const study::Reading& reading : working.readings) {
        add(coreText(reading.what),
            figureText(reading.value) + QLatin1Char(' ') + QString::fromStdString(working.unit) +
                (reading.verdict == study::Verdict::computed
                     ? QString()
                     : QStringLiteral(" – ") + coreText(study::name(reading.verdict))));
    }
    add(Words::tr("band"), arithmeticText(working.band));
    add(Words::tr("source"), coreText(working.source));
    add(Words::tr("note"), coreText(working.note));
    return QStringLiteral("<p style='margin:2px 0 4px 16px'>%1</p>")
        .arg(lines.join(QStringLiteral("<br>")));
}

QString VerdictHtml::row(const study::VerdictRow& row, bool isUnfolded) const {
    const bool isBad = study::isAgainst(row.outcome);
    QString published = cell(row.published, row, false);
    if (!row.isQuoted) {
        published =
            QStringLiteral("<b>%1</b><br>%2").arg(coreText(row.what).toHtmlEscaped(), published);
    }
    const QString outcome = QStringLiteral("<b><span style='color:%1'>%2%3</span></b><br>%4")
                                .arg((isBad ? tones_.warning : tones_.ink).name(),
                                     isBad ? QStringLiteral("▲ ") : QString(),
                                     coreText(study::name(row.outcome)).toHtmlEscaped(),
                                     quiet(Words::tr("confidence: %1")
                                               .arg(coreText(study::name(row.confidence)))
                                               .toHtmlEscaped()));
    QString html = QStringLiteral("<hr/><table width='100%' cellspacing='0' cellpadding='3'>") +
                   columns({published, cell(row.arithmetic, row, isUnfolded),
                            cell(row.design, row, false), cell(row.band, row, false), outcome},
                           false);
    QString below = quiet(basis(row));
    if (isUnfolded) {
        for (const study::RowWorking& one : row.workings)
            below += working(one);
    }
    html += QStringLiteral("<tr><td colspan='5'>%1</td></tr></table>").arg(below);
    return html;
}

} // namespace lobewright::ui
