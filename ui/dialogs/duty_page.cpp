#include "ui/dialogs/duty_page.h"

#include "core/gas/models/fuel.h"
#include "ui/base/controls.h"
#include "ui/base/core_text.h"
#include "ui/base/palette.h"

#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QRegularExpression>

#include <algorithm>

namespace lobewright::ui {

namespace {

struct DutyLine {
    QString key, label, example;
    QChar sign;
};

std::vector<DutyLine> dutyLines() {
    const QChar equal('='), below('<'), above('>');
    return {
        {QStringLiteral("power"), DutyPage::tr("&Power"), QStringLiteral("12 kW"), equal},
        {QStringLiteral("torque"), DutyPage::tr("or &torque"), QStringLiteral("64 N·m"), equal},
        {QStringLiteral("speed"), DutyPage::tr("&Shaft speed"), QStringLiteral("1800 rpm"), equal},
        {QStringLiteral("diameter"), DutyPage::tr("&Diameter below"), QStringLiteral("400 mm"),
         below},
        {QStringLiteral("length"), DutyPage::tr("&Length below"), QStringLiteral("800 mm"), below},
        {QStringLiteral("life"), DutyPage::tr("L&ife above"), QStringLiteral("2000 h"), above},
        {QStringLiteral("cylinders"), DutyPage::tr("&Cylinders"), QStringLiteral("3"), equal},
        {QStringLiteral("lobes"), DutyPage::tr("L&obes per track"), QStringLiteral("2"), equal},
        {QStringLiteral("compression"), DutyPage::tr("Co&mpression ratio"), QStringLiteral("10"),
         equal},
        {QStringLiteral("supply"), DutyPage::tr("S&upply pressure"), QStringLiteral("1.4 bar"),
         equal}};
}

/// With a decimal point: the comma parts the entries of a duty.
QString withPoint(const QString& text) {
    static const QRegularExpression comma(QStringLiteral("(?<=\\d),(?=\\d)"));
    return text.trimmed().replace(comma, QStringLiteral(".")).remove(QLatin1Char(','));
}

} // namespace

DutyPage::DutyPage(QWidget* parent)
    : QWidget(parent), fuel_(new QComboBox(this)), problem_(new QLabel(this)) {
    auto* form = new QFormLayout(this);
    form->setContentsMargins(0, 0, 0, 0);
    auto* hint = new QLabel(
        tr("What the engine shall do, each with its unit. Power or torque is enough."), this);
    hint->setWordWrap(true);
    form->addRow(hint);
    for (const DutyLine& entry : dutyLines()) {
        auto* line = new QLineEdit(this);
        line->setObjectName(entry.key);
        line->setPlaceholderText(tr("e.g. %1").arg(entry.example));
        form->addRow(entry.label, line);
        connect(line, &QLineEdit::editingFinished, this, &DutyPage::changed);
        lines_[entry.key] = line;
    }
    fuel_->setObjectName(QStringLiteral("fuel"));
    fuel_->addItem(tr("not decided"), QString());
    for (const gas::FuelData& fuel : gas::allFuels())
        fuel_->addItem(coreText(fuel.word), QString::fromLatin1(fuel.name));
    form->addRow(tr("&Fuel"), fuel_);
    connect(fuel_, &QComboBox::activated, this, &DutyPage::changed);
    makeParagraph(*problem_, "problem");
    form->addRow(problem_);
}

void DutyPage::setLine(const QString& key, const QString& value) {
    if (key == QLatin1String("fuel")) {
        fuel_->setCurrentIndex(std::max(0, fuel_->findData(value)));
    } else {
        lines_.at(key)->setText(value);
    }
    Q_EMIT changed();
}

std::optional<draft::Brief> DutyPage::brief() {
    problem_->clear();
    QStringList entries;
    for (const DutyLine& entry : dutyLines()) {
        const QString value = withPoint(lines_.at(entry.key)->text());
        if (!value.isEmpty())
            entries << entry.key + entry.sign + value;
    }
    if (lines_.at(QStringLiteral("power"))->text().trimmed().isEmpty() &&
        lines_.at(QStringLiteral("torque"))->text().trimmed().isEmpty())
        return std::nullopt;
    if (!fuel_->currentData().toString().isEmpty())
        entries << QStringLiteral("fuel=") + fuel_->currentData().toString();
    const auto duty = draft::readDuty(entries.join(QStringLiteral(", ")).toStdString());
    if (duty)
        return *duty;
    QPalette palette = problem_->palette();
    palette.setColor(QPalette::WindowText, Palette::of(*this).warning);
    problem_->setPalette(palette);
    QStringList words;
    for (const Problem& problem : duty.problems()) {
        QString label = QString::fromStdString(problem.path);
        for (const DutyLine& entry : dutyLines()) {
            if (entry.key == label)
                label = QString(entry.label).remove(QLatin1Char('&'));
        }
        words << QStringLiteral("%1: %2").arg(label, coreText(problem.message));
    }
    problem_->setText(words.join(QLatin1Char('\n')));
    return std::nullopt;
}

} // namespace lobewright::ui
