#include "ui/window/figures_bar.h"

#include "ui/base/core_text.h"
#include "ui/base/figure_text.h"
#include "ui/base/unit_words.h"
#include "ui/base/units.h"
#include "ui/panels/figures_panel.h"

#include <QHBoxLayout>
#include <QToolButton>

namespace lobewright::ui {

namespace {

struct Shown {
    const char* figure;
    QString label;
    double factor = 1.0; ///< to the metric unit shown here
    QString unit{};
};

const std::vector<Shown>& shown() {
    static const std::vector<Shown> all = {
        {"brake_power_kW", FiguresBar::tr("Power"), 1.0, QStringLiteral("kW")},
        {"brake_torque_Nm", FiguresBar::tr("Torque"), 1.0, QStringLiteral("N·m")},
        {"brake_efficiency", FiguresBar::tr("Efficiency"), 100.0, QStringLiteral("%")},
        {"peak_pressure_bar", FiguresBar::tr("Peak"), 1.0, QStringLiteral("bar")},
        {"compression_ratio", FiguresBar::tr("Compression"), 1.0, QString()}};
    return all;
}

} // namespace

FiguresBar::FiguresBar(QWidget* parent) : QWidget(parent) {
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(2);
    for (size_t i = 0; i < shown().size(); ++i) {
        auto* label = new QToolButton(this);
        label->setAutoRaise(true);
        connect(label, &QToolButton::clicked, this, [this, name = shown()[i].figure] {
            Q_EMIT workingWanted(QString::fromLatin1(name));
        });
        labels_.push_back(label);
        layout->addWidget(label);
    }
    connect(&Units::instance(), &Units::changed, this, &FiguresBar::refill);
}

void FiguresBar::showSolution(const SolutionPointer& solution) {
    solution_ = solution;
    refill();
}

void FiguresBar::showBaseline(const SolutionPointer& baseline) {
    baseline_ = baseline;
    refill();
}

QString FiguresBar::neededText(const solution::Figure& figure) const {
    if (!solution_->design.running.motored || !figure.value || *figure.value >= 0.0)
        return {};
    if (figure.name == "brake_torque_Nm")
        return tr("Needs %1 to turn").arg(quantityText(-*figure.value, QStringLiteral("N·m")));
    if (figure.name != "brake_power_kW")
        return {};
    const double power = -*figure.value;
    return tr("Driven by %1")
        .arg(power < 0.1 ? quantityText(1e3 * power, QStringLiteral("W"))
                         : quantityText(power, QStringLiteral("kW")));
}

void FiguresBar::refill() {
    if (!solution_)
        return;
    const auto* paid = solution_->figure("supply_power_counted");
    const bool unpaid = paid && paid->value && *paid->value == 0.0;
    for (size_t i = 0; i < labels_.size(); ++i) {
        const Shown& entry = shown()[i];
        const auto* figure = solution_->figure(entry.figure);
        const Unit unit = unitFor(entry.unit);
        const auto valueOf = [&](const solution::Figure& of) {
            return withUnit(figureText(withoutNoise(unit.shown(*of.value * entry.factor))),
                            unit.text);
        };
        const QString value = figure && figure->value ? valueOf(*figure) : tr("none");
        labels_[i]->setText(entry.label + ' ' + value);
        if (const QString needed = figure ? neededText(*figure) : QString(); !needed.isEmpty())
            labels_[i]->setText(needed);
        QString help = figure ? coreText(figure->label) : QString();
        if (figure && !figure->note.empty())
            help += QLatin1Char('\n') + coreText(figure->note);
        const auto* before = baseline_ ? baseline_->figure(entry.figure) : nullptr;
        if (before && before->value)
            help += QLatin1Char('\n') + tr("Baseline: %1").arg(valueOf(*before));
        labels_[i]->setToolTip(help + QLatin1Char('\n') + tr("Click to see the working"));
    }
    if (unpaid)
        labels_[0]->setText(labels_[0]->text() + tr(" (supply power not counted)"));
}

} // namespace lobewright::ui
