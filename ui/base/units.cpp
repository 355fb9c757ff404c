#include "ui/base/units.h"

#include "ui/base/curve.h"
#include "ui/base/unit_words.h"
#include "ui/base/words.h"

#include <QCoreApplication>
#include <QSettings>

#include <algorithm>
#include <cmath>
#include <string_view>
#include <utility>

namespace lobewright::ui {

namespace {

const lobewright::Unit* rowOf(const QString& metric) {
    return findUnit(metric.toStdString());
}

// Units that are words are translated; symbols are not in the list of translations.
[[maybe_unused]] const char* const unitWords[] = {
    QT_TRANSLATE_NOOP("Units", "shaft °"), QT_TRANSLATE_NOOP("Units", "cycle °"),
    QT_TRANSLATE_NOOP("Units", "° cycle"), QT_TRANSLATE_NOOP("Units", "rpm"),
    QT_TRANSLATE_NOOP("Units", "mm/rev"),  QT_TRANSLATE_NOOP("Units", "in/rev")};

QString inWords(std::string_view unit) {
    // Symbols of files; on screen they are said as in sentences.
    constexpr std::pair<std::string_view, const char*> said[] = {
        {in::rpm.symbol, "rpm"},
        {in::mmPerTurn.symbol, "mm/rev"},
        {in::mmPerTurn.inchSymbol, "in/rev"}};
    for (const auto& [symbol, words] : said) {
        if (unit == symbol)
            return QCoreApplication::translate("Units", words);
    }
    return QCoreApplication::translate("Units", std::string(unit).c_str());
}

const auto unitSetting = QStringLiteral("window/units");

} // namespace

double Unit::metric(double shown) const {
    if (isMetric())
        return shown;
    return QString::number((shown - offset) / factor, 'g', 15).toDouble();
}

int Unit::decimals(int metricDecimals) const {
    return std::max(0, metricDecimals + static_cast<int>(std::ceil(-std::log10(factor))));
}

double Unit::step(double metricStep) const {
    if (isMetric() || metricStep <= 0.0)
        return metricStep;
    const double wanted = metricStep * factor;
    const double power = std::pow(10.0, std::floor(std::log10(wanted)));
    double best = power;
    for (const double plain : {1.0, 2.0, 5.0, 10.0}) {
        if (std::abs(std::log(plain * power / wanted)) < std::abs(std::log(best / wanted)))
            best = plain * power;
    }
    return best / factor;
}

Units& Units::instance() {
    static Units units;
    return units;
}

void Units::setSystem(UnitSystem system) {
    QSettings().setValue(unitSetting, system == UnitSystem::inch ? QStringLiteral("inch")
                                                                 : QStringLiteral("metric"));
    if (std::exchange(system_, system) != system)
        Q_EMIT changed();
}

void Units::restore() {
    const bool inches = QSettings().value(unitSetting).toString() == QLatin1String("inch");
    const UnitSystem kept = inches ? UnitSystem::inch : UnitSystem::metric;
    if (std::exchange(system_, kept) != kept)
        Q_EMIT changed();
}

Unit unitFor(const QString& metric) {
    const lobewright::Unit* row = rowOf(metric);
    return row ? unitFor(*row) : Unit{metric};
}

Unit unitFor(const lobewright::Unit& metric) {
    if (Units::instance().system() == UnitSystem::metric || metric.inchSymbol.empty())
        return {inWords(metric.symbol)};
    return {inWords(metric.inchSymbol), metric.inchFactor, metric.inchOffset};
}

Unit unitFor(const std::string& metric) {
    return unitFor(QString::fromStdString(metric));
}

QString metricWord(const QString& metric) {
    return rowOf(metric) ? inWords(rowOf(metric)->symbol) : metric;
}

bool isKnownUnit(const QString& metric) {
    return rowOf(metric) != nullptr;
}

QString withUnit(const QString& number, const QString& unit) {
    if (unit.isEmpty())
        return number;
    const bool joined = unit == QChar(0xB0);
    return joined ? number + unit : number + QChar(0xA0) + unit;
}

QString axisText(const QString& quantity, const QString& metric) {
    const QString unit = unitFor(metric).text;
    if (quantity.isEmpty() || unit.isEmpty())
        return quantity + unit;
    return quantity + QStringLiteral(", ") + unit;
}

double withoutNoise(double value) {
    return std::abs(value) < 1e-9 ? 0.0 : value;
}

QString quantityText(double metric, const QString& unit) {
    const Unit shown = unitFor(unit);
    const double value = unit.isEmpty() ? metric : withoutNoise(shown.shown(metric));
    return withUnit(shortText(value), shown.text);
}

QString quantityText(double metric, const QString& unit, int metricDecimals) {
    const Unit shown = unitFor(unit);
    return withUnit(words::number(shown.shown(metric), shown.decimals(metricDecimals)), shown.text);
}

} // namespace lobewright::ui
