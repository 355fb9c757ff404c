#include "ui/panels/working_view.h"

#include "core/solution/workings/expression.h"
#include "core/solution/workings/working.h"
#include "core/units.h"
#include "ui/base/controls.h"
#include "ui/base/core_text.h"
#include "ui/base/figure_text.h"
#include "ui/base/layouts.h"
#include "ui/base/palette.h"
#include "ui/base/units.h"
#include "ui/panels/figures_panel.h"
#include "ui/panels/loop_work.h"
#include "ui/panels/working_units.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QShortcut>
#include <QTextBrowser>
#include <QToolButton>
#include <QUrl>

namespace lobewright::ui {

namespace {

using Kind = solution::Operand::Kind;

QString text(const std::string& words) {
    return QString::fromStdString(words).toHtmlEscaped();
}

/// "V_max" with its index set low.
QString symbolText(const std::string& symbol) {
    const QString plain = QString::fromStdString(symbol);
    const QString index = plain.section('_', 1);
    const QString head = plain.section('_', 0, 0).toHtmlEscaped();
    return QStringLiteral("<i>%1</i>").arg(head) +
           (index.isEmpty() ? QString()
                            : QStringLiteral("<sub>%1</sub>").arg(index.toHtmlEscaped()));
}

QString formulaText(const solution::Working& working) {
    const auto list = solution::pieces(working.formula);
    QString shown;
    bool afterValue = false;
    for (const auto& piece : list ? *list : std::vector<solution::FormulaPiece>()) {
        const QString sign = QString::fromStdString(piece.text);
        if (piece.kind == solution::FormulaPiece::Kind::sign) {
            if (sign == QLatin1String("+") || sign == QLatin1String("-")) {
                shown += (afterValue ? QStringLiteral(" %1 ") : QStringLiteral("%1"))
                             .arg(sign == QLatin1String("-") ? QString(QChar(0x2212)) : sign);
            } else {
                shown += sign == QLatin1String("*")   ? QString(QChar(0xB7))
                         : sign == QLatin1String(",") ? QStringLiteral(", ")
                                                      : sign;
            }
            afterValue = sign == QLatin1String(")") || sign == QChar(0xB2) || sign == QChar(0xB3);
            continue;
        }
        const bool isSymbol =
            piece.kind == solution::FormulaPiece::Kind::symbol && sign != QChar(0x3C0);
        shown += isSymbol ? symbolText(piece.text) : sign.toHtmlEscaped();
        afterValue = piece.kind != solution::FormulaPiece::Kind::function;
    }
    // As it is written by hand.
    return shown.replace(QStringLiteral("∮(<i>p</i>, <i>V</i>)"),
                         QStringLiteral("∮<i>p</i> d<i>V</i>"));
}

QString withUnit(double value, const std::string& unit, int digits) {
    return numberWithUnit(value, unit, digits).toHtmlEscaped();
}

/// What stands in the column of values; a metric one also as it is displayed elsewhere.
QString valueOf(const solution::Operand& operand, const ShownWorking& shown,
                const std::string& metric) {
    if (operand.values.size() != 1)
        return WorkingView::tr("column, %1").arg(text(operand.unit.empty() ? "–" : operand.unit));
    const int digits = shown.working.digits;
    const QString value = withUnit(operand.values[0], operand.unit, digits);
    const Unit unit = unitFor(metric);
    if (!shown.isMetric || unit.isMetric())
        return value;
    return value +
           QStringLiteral("<br/>(%1)")
               .arg(withUnit(unit.shown(operand.values[0]), unit.text.toStdString(), digits));
}

/// The label, a link where one can step back to it.
QString linked(const solution::Solution& solution, const solution::Operand& operand) {
    const QString label = coreText(operand.label).toHtmlEscaped();
    const QString target = QString::fromStdString(operand.name);
    if (operand.kind == Kind::figure && solution::working(solution, operand.name))
        return QStringLiteral("<a href=\"figure:%1\">%2</a>").arg(target, label);
    if (operand.kind == Kind::field)
        return QStringLiteral("<a href=\"field:%1\">%2</a>").arg(target, label);
    if (operand.kind == Kind::reading && operand.angle) {
        return QStringLiteral("<a href=\"angle:%1\">%2</a>")
            .arg(QString::number(*operand.angle, 'g', 17), label);
    }
    return label;
}

QString origin(const solution::Operand& operand) {
    QString words;
    switch (operand.kind) {
    case Kind::figure:
        words = WorkingView::tr("result");
        break;
    case Kind::field:
        words = WorkingView::tr("input");
        break;
    case Kind::channel:
        words =
            WorkingView::tr("column %1 of channels.csv").arg(QString::fromStdString(operand.name));
        break;
    case Kind::reading:
        words = WorkingView::tr("at %1° of the shaft")
                    .arg(operand.angle.value_or(0.0) / units::degree, 0, 'f', 2);
        break;
    case Kind::constant:
        words = WorkingView::tr("constant");
        break;
    case Kind::condition:
        break;
    case Kind::inner:
        words = WorkingView::tr("from the solver");
        break;
    }
    if (!operand.note.empty())
        words += QStringLiteral("; ") + coreText(operand.note);
    return words.toHtmlEscaped();
}

/// `metric`: the same working in the units of the core.
QString nearness(const solution::Working& working, const solution::Working& metric) {
    const auto value = solution::evaluate(working);
    const auto inMetric = solution::evaluate(metric);
    if (!value || !inMetric || working.isClosed())
        return {};
    const QString worked = withUnit(*value, working.unit, 6);
    if (!metric.isNear(*inMetric)) {
        return WorkingView::tr("Worked out from the channels and inputs shown: %1. This design "
                               "changes too sharply for the step of the channels; the result "
                               "itself comes from the solver, whose steps are finer.")
            .arg(worked);
    }
    return WorkingView::tr(
               "Worked out from the channels and inputs shown: %1. The result itself comes from "
               "the solver, whose steps are finer than those of the channels.")
        .arg(worked);
}

QString metricNote(const ShownWorking& shown) {
    return shown.isMetric
               ? WorkingView::tr("The formula contains metric unit factors, so its numbers are "
                                 "metric; values in the units chosen are in brackets.")
               : QString();
}

/// Formula, numbers, and what they give.
QString headOf(const ShownWorking& shown) {
    const solution::Working& working = shown.working;
    QString html = QStringLiteral("<p style=\"margin-bottom:2px\">%1 = %2</p>")
                       .arg(symbolText(working.symbol), formulaText(working));
    html += QStringLiteral("<p style=\"margin:2px 0\">= %1</p>")
                .arg(localNumbers(text(withLoopValue(solution::withNumbers(working), working))));
    QString result = figureText(working.value);
    if (!working.unit.empty() && working.unit != "°")
        result += QLatin1Char(' ') + QString::fromStdString(working.unit);
    html += QStringLiteral("<p style=\"margin:2px 0 8px 0\">= <b>%1</b>%2</p>")
                .arg(result.toHtmlEscaped(),
                     shown.converted
                         ? QStringLiteral(" = <b>%1</b>").arg(shown.converted->toHtmlEscaped())
                         : QString());
    return html;
}

QString page(const solution::Solution& solution, const solution::Working& working,
             const QString& quiet) {
    const ShownWorking shown = inDisplayedUnits(working);
    QString html = headOf(shown);
    if (const QString loop = loopWords(working); !loop.isEmpty())
        html += QStringLiteral("<p style=\"margin:2px 0 8px 0\">%1</p>").arg(loop);
    html += QStringLiteral("<table cellspacing=\"0\" cellpadding=\"2\" width=\"100%\">");
    for (std::size_t i = 0; i < working.operands.size(); ++i) {
        const solution::Operand& operand = shown.working.operands[i];
        if (operand.kind == Kind::condition)
            continue;
        html += QStringLiteral("<tr><td>%1</td><td>%2<br/><span style=\"color:%3\">%4</span></td>"
                               "<td align=\"right\">%5</td></tr>")
                    .arg(symbolText(operand.symbol), linked(solution, operand), quiet,
                         origin(operand), valueOf(operand, shown, working.operands[i].unit));
    }
    html += QStringLiteral("</table>");
    for (const QString& more :
         {coreText(working.source).toHtmlEscaped(), coreText(working.note).toHtmlEscaped(),
          nearness(shown.working, working), metricNote(shown)}) {
        if (!more.isEmpty()) {
            html +=
                QStringLiteral("<p style=\"margin:6px 0 0 0; color:%1\">%2</p>").arg(quiet, more);
        }
    }
    return html;
}

} // namespace

WorkingView::WorkingView(QWidget* parent) : QWidget(parent) {
    auto* column = columnOf(this, {8, 4, 8, 4}, 4, {});
    auto* line = new QHBoxLayout;
    back_ = wordButton(tr("Back"), tr("To the previous result (Alt+Left)"), this);
    title_ = new QLabel(this);
    title_->setWordWrap(true);
    auto* close = wordButton(tr("Close"), tr("Only the list of results"), this);
    line->addWidget(title_, 1);
    line->addWidget(back_);
    line->addWidget(close);
    text_ = new QTextBrowser(this);
    text_->setFrameShape(QFrame::NoFrame);
    text_->setOpenLinks(false);
    text_->setAccessibleName(tr("Working of the result"));
    column->addLayout(line);
    column->addWidget(text_, 1);
    connect(&Units::instance(), &Units::changed, this, &WorkingView::refill);
    connect(back_, &QToolButton::clicked, this, &WorkingView::goBack);
    connect(close, &QToolButton::clicked, this, &WorkingView::closed);
    connect(text_, &QTextBrowser::anchorClicked, this, &WorkingView::follow);
    auto* key = new QShortcut(QKeySequence(tr("Alt+Left")), this);
    key->setContext(Qt::WidgetWithChildrenShortcut);
    connect(key, &QShortcut::activated, this, &WorkingView::goBack);
}

void WorkingView::showSolution(const SolutionPointer& solution) {
    solution_ = solution;
    refill();
}

void WorkingView::showFigure(const QString& name) {
    if (figure() == name)
        return;
    trail_ << name;
    refill();
    text_->setFocus(Qt::OtherFocusReason);
}

void WorkingView::goBack() {
    if (trail_.size() > 1) {
        trail_.removeLast();
        refill();
    }
}

QString WorkingView::text() const {
    return text_->toPlainText();
}

void WorkingView::follow(const QUrl& link) {
    const QString target = link.path();
    if (link.scheme() == QLatin1String("figure"))
        showFigure(target);
    else if (link.scheme() == QLatin1String("field"))
        Q_EMIT fieldWanted(target);
    else if (link.scheme() == QLatin1String("angle"))
        Q_EMIT angleWanted(target.toDouble());
    else if (link.scheme() == QLatin1String("view"))
        Q_EMIT viewWanted(target);
}

void WorkingView::refill() {
    back_->setEnabled(trail_.size() > 1);
    if (!solution_ || trail_.isEmpty())
        return;
    const std::string name = figure().toStdString();
    const auto* shown = solution_->figure(name);
    title_->setText(
        QStringLiteral("<b>%1</b>").arg(shown ? coreText(shown->label).toHtmlEscaped() : figure()));
    const auto working = solution::working(*solution_, name);
    if (!working) {
        const QString why =
            shown && !shown->value
                ? coreText(shown->note)
                : tr("It is taken directly from the solver: there is no formula to evaluate.");
        text_->setHtml(QStringLiteral("<p>%1</p>").arg(why.toHtmlEscaped()));
        return;
    }
    text_->setHtml(page(*solution_, *working, Palette::of(*this).quiet.name()));
}

} // namespace lobewright::ui
