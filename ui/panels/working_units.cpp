#include "ui/panels/working_units.h"

#include "ui/base/core_text.h"
#include "ui/base/figure_text.h"
#include "ui/base/units.h"
#include "ui/panels/figures_panel.h"

#include <cmath>

namespace lobewright::ui {

namespace {

/// Every value of the working in the unit displayed for it.
solution::Working converted(solution::Working working) {
    for (solution::Operand& operand : working.operands) {
        const Unit unit = unitFor(operand.unit);
        operand.values = unit.shown(operand.values);
        operand.unit = unit.text.toStdString();
    }
    const Unit unit = unitFor(working.unit);
    working.value = unit.shown(working.value);
    working.absolute = std::abs(unit.difference(working.absolute));
    working.unit = unit.text.toStdString();
    return working;
}

/// Other numbers in the same formula, each moved by another share.
solution::Working moved(solution::Working working) {
    double share = 1.01;
    for (solution::Operand& operand : working.operands) {
        operand.values *= share;
        share += 0.007;
    }
    return working;
}

/// Whether the formula gives the same in displayed units as in metric ones: for these numbers and
/// for others, so that no figure of 0 agrees by chance.
bool holdsConverted(const solution::Working& working) {
    const Unit unit = unitFor(working.unit);
    for (const solution::Working& metric : {working, moved(working)}) {
        const auto expected = solution::evaluate(metric);
        const auto value = solution::evaluate(converted(metric));
        if (!expected || !value)
            return false;
        const double wanted = unit.shown(*expected);
        const double scale = std::abs(wanted) + std::abs(unit.difference(working.absolute));
        if (!(std::abs(*value - wanted) <= 1e-9 * scale + 1e-15))
            return false;
    }
    return true;
}

solution::Working inMetricWords(solution::Working working) {
    const auto word = [](const std::string& unit) {
        return metricWord(QString::fromStdString(unit)).toStdString();
    };
    for (solution::Operand& operand : working.operands)
        operand.unit = word(operand.unit);
    working.unit = word(working.unit);
    return working;
}

} // namespace

ShownWorking inDisplayedUnits(const solution::Working& working) {
    if (Units::instance().system() == UnitSystem::metric || holdsConverted(working))
        return {converted(working), std::nullopt, false};
    ShownWorking shown{inMetricWords(working), std::nullopt, true};
    const Unit unit = unitFor(working.unit);
    if (!unit.isMetric())
        shown.converted = figureText(unit.shown(working.value)) + QLatin1Char(' ') + unit.text;
    return shown;
}

QString numberWithUnit(double value, const std::string& unit, int digits) {
    const QString shown = QString::fromStdString(unit);
    const QString number =
        localNumbers(QString::number(value, 'g', digits)).replace(QLatin1Char('-'), QChar(0x2212));
    return number + (shown.isEmpty() || shown == QChar(0xB0) ? QString() : QString(' ')) + shown;
}

} // namespace lobewright::ui
