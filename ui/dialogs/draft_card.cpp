#include "ui/dialogs/draft_card.h"

#include "core/draft/build.h"
#include "core/units.h"
#include "ui/base/core_text.h"
#include "ui/base/figure_text.h"
#include "ui/base/palette.h"
#include "ui/base/units.h"
#include "ui/dialogs/draft_picture.h"

#include <QLabel>
#include <QPainter>
#include <QRadioButton>
#include <QVBoxLayout>

#include <algorithm>

namespace lobewright::ui {

namespace {

QString figureOf(const draft::Draft& made, const char* name) {
    const auto* figure = made.solution.figure(name);
    return figure ? figureText(*figure) : DraftCard::tr("not available");
}

/// The larger of both sides.
QString largerOf(const draft::Draft& made, const char* inlet, const char* exhaust) {
    const auto* first = made.solution.figure(inlet);
    const auto* second = made.solution.figure(exhaust);
    if (!first || !second)
        return DraftCard::tr("not available");
    const bool isSecond = second->value.value_or(0.0) > first->value.value_or(0.0);
    return figureText(isSecond ? *second : *first);
}

QString candidateName(int lobes, int cylinders) {
    const QString first =
        lobes == 1 ? DraftCard::tr("1 lobe") : DraftCard::tr("%1 lobes").arg(lobes);
    const QString second =
        cylinders == 1 ? DraftCard::tr("1 cylinder") : DraftCard::tr("%1 cylinders").arg(cylinders);
    return QStringLiteral("%1, %2").arg(first, second);
}

QString row(const QString& label, const QString& value) {
    return QStringLiteral("<tr><td>%1&nbsp;</td><td align=right>%2</td></tr>").arg(label, value);
}

QString sixFigures(const draft::Draft& made) {
    const auto& design = made.design;
    const QString speed =
        quantityText(design.running.speed / units::revPerMinute, QStringLiteral("1/min"));
    return QStringLiteral("<table width=100% cellspacing=0>") +
           row(DraftCard::tr("Power"), figureOf(made, "brake_power_kW")) +
           row(DraftCard::tr("Shaft speed"), speed) +
           row(DraftCard::tr("Displacement"), figureOf(made, "displacement_cm3")) +
           row(DraftCard::tr("Outer diameter"),
               quantityText(draft::outerDiameter(design) / units::millimetre,
                            QStringLiteral("mm"))) +
           row(DraftCard::tr("Supply pressure"),
               quantityText(design.gas.supply.pressure / units::bar, QStringLiteral("bar"))) +
           row(DraftCard::tr("Contact stress"), largerOf(made, "peak_contact_pressure_inlet_MPa",
                                                         "peak_contact_pressure_exhaust_MPa")) +
           QStringLiteral("</table>");
}

/// How many limits the candidate exceeds, with the sentences as the help of the label.
QLabel* limitsLabel(const draft::Draft& made, QWidget* parent) {
    QStringList exceeded;
    bool isError = false;
    for (const auto& check : made.solution.checks) {
        if (check.severity == solution::Severity::remark)
            continue;
        exceeded << coreText(check.message);
        isError = isError || check.severity == solution::Severity::error;
    }
    auto* label = new QLabel(exceeded.isEmpty() ? DraftCard::tr("within all limits")
                             : exceeded.size() == 1
                                 ? DraftCard::tr("1 limit exceeded")
                                 : DraftCard::tr("%1 limits exceeded").arg(exceeded.size()),
                             parent);
    label->setToolTip(exceeded.join(QLatin1Char('\n')));
    const Palette& tones = Palette::of(*parent);
    QPalette palette = label->palette();
    palette.setColor(QPalette::WindowText, isError ? tones.warning : tones.quiet);
    label->setPalette(palette);
    return label;
}

} // namespace

DraftCard::DraftCard(const draft::Draft& made, double largest, QWidget* parent) : QWidget(parent) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(8, 6, 8, 6);
    column->setSpacing(4);
    button_ = new QRadioButton(
        candidateName(made.design.tracks.inlet.lobes, made.design.mechanism.cylinders), this);
    column->addWidget(button_);
    column->addWidget(new DraftPicture(made.design, largest, this), 1);
    column->addWidget(new QLabel(sixFigures(made), this));
    column->addWidget(limitsLabel(made, this));
    connect(button_, &QRadioButton::toggled, this, qOverload<>(&DraftCard::update));
    setMinimumWidth(170);
    setMaximumWidth(260);
}

void DraftCard::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Palette& tones = Palette::of(*this);
    const bool isChosen = button_->isChecked();
    painter.setPen(
        QPen(isChosen ? palette().color(QPalette::Highlight) : tones.grid, isChosen ? 2.0 : 1.0));
    painter.setBrush(tones.paper);
    painter.drawRoundedRect(QRectF(rect()).adjusted(1.0, 1.0, -1.0, -1.0), 5.0, 5.0);
}

void DraftCard::mousePressEvent(QMouseEvent*) {
    button_->click();
    button_->setFocus();
}

} // namespace lobewright::ui
