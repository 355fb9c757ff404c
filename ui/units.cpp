#include "ui/units.h"

#include "ui/plots/curve.h"
#include "ui/scene/words.h"
#include "ui/unit_words.h"

#include <QCoreApplication>
#include <QRegularExpression>
#include <QSettings>

#include <algorithm>
#include <cmath>
#include <vector>

namespace lobewright::ui {

namespace {

// Exact by definition: international inch, avoirdupois pound, standard gravity (NIST SP 811).
constexpr double inch = 25.4;                             // [mm]
constexpr double pound = 0.45359237;                      // [kg]
constexpr double gravity = 9.80665;                       // [m/s²]
constexpr double poundForce = pound * gravity;            // [N]
constexpr double foot = 0.3048;                           // [m]
constexpr double psi = poundForce / (inch * inch * 1e-6); // [Pa]
constexpr double horsepower = 550.0 * foot * poundForce;  // [W]

struct Row {
    const char* metric;
    const char* inch; ///< the same text: common to both systems
    double factor = 1.0;
    double offset = 0.0;
};

constexpr double thermalUnit = 1055.05585262; // international table [J]

const std::vector<Row>& table() {
    static const std::vector<Row> rows = {
        {"mm", "in", 1.0 / inch},
        {"µm", "µin", 1e3 / inch},
        {"m", "ft", 1.0 / foot},
        {"mm²", "in²", 1.0 / (inch * inch)},
        {"cm²", "in²", 100.0 / (inch * inch)},
        {"cm³", "in³", 1000.0 / (inch * inch * inch)},
        {"1/mm", "1/in", inch},
        {"mm/rad", "in/rad", 1.0 / inch},
        {"mm/rad³", "in/rad³", 1.0 / inch},
        {"mm/rad²", "in/rad²", 1.0 / inch},
        {"mm/°", "in/°", 1.0 / inch},
        {"mm/turn", "in/turn", 1.0 / inch},
        {"m/s", "ft/s", 1.0 / foot},
        {"m/s²", "ft/s²", 1.0 / foot},
        {"m/s³", "ft/s³", 1.0 / foot},
        {"s/m", "s/ft", foot},
        {"N", "lbf", 1.0 / poundForce},
        {"kN", "lbf", 1000.0 / poundForce},
        {"N·m", "lb·ft", 1.0 / (poundForce * foot)},
        {"J", "ft·lbf", 1.0 / (poundForce * foot)},
        {"bar", "psi", 1e5 / psi},
        {"MPa", "ksi", 1e3 / psi},
        {"GPa", "10⁶ psi", 1e3 / psi},
        {"1/GPa", "10⁻⁶/psi", psi / 1e3},
        {"Pa·s", "µreyn", 1e6 / psi},
        {"kW", "hp", 1e3 / horsepower},
        {"W", "hp", 1.0 / horsepower},
        {"W/mm²", "hp/in²", inch * inch / horsepower},
        {"kg", "lb", 1.0 / pound},
        {"g", "lb", 1e-3 / pound},
        {"mg", "gr", 1e-6 / pound * 7000.0},
        {"kg/h", "lb/h", 1.0 / pound},
        {"g/kWh", "lb/hp·h", 1e-3 / pound * horsepower * 1e-3},
        {"kg·m²", "lb·ft²", 1.0 / (pound * foot * foot)},
        {"g/s", "lb/s", 1e-3 / pound},
        {"kJ/kg", "Btu/lb", 1e3 * pound / thermalUnit},
        {"MJ/kg", "Btu/lb", 1e6 * pound / thermalUnit},
        {"J/(kg·K)", "ft·lbf/(lb·°F)", pound / (1.8 * poundForce * foot)},
        {"W/(m²·K)", "Btu/(h·ft²·°F)", 3600.0 * foot * foot / (1.8 * thermalUnit)},
        {"K", "°F", 1.8, -459.67},
        {"", ""},
        {"°", "°"},
        {"shaft °", "shaft °"},
        {"cycle °", "cycle °"},
        {"° cycle", "° cycle"},
        {"1/min", "1/min"},
        {"rpm", "rpm"},
        {"1/h", "1/h"},
        {"h", "h"},
        {"ms", "ms"},
        {"s", "s"},
        {"%", "%"},
    };
    return rows;
}

const Row* rowOf(const QString& metric) {
    const auto found = std::ranges::find_if(
        table(), [&](const Row& row) { return metric == QString::fromUtf8(row.metric); });
    return found == table().end() ? nullptr : &*found;
}

// Units that are words are translated; symbols are not in the list of translations.
[[maybe_unused]] const char* const unitWords[] = {
    QT_TRANSLATE_NOOP("Units", "shaft °"), QT_TRANSLATE_NOOP("Units", "cycle °"),
    QT_TRANSLATE_NOOP("Units", "° cycle"), QT_TRANSLATE_NOOP("Units", "rpm"),
    QT_TRANSLATE_NOOP("Units", "mm/turn"), QT_TRANSLATE_NOOP("Units", "in/turn")};

QString inWords(const char* unit) {
    return QCoreApplication::translate("Units", unit);
}

const auto setting = QStringLiteral("window/units");

/// A number, then a unit of the table that is converted; longest units first.
const QRegularExpression& quantityPattern() {
    static const QRegularExpression pattern = [] {
        QStringList units;
        for (const Row& row : table()) {
            if (row.factor != 1.0)
                units << QRegularExpression::escape(QString::fromUtf8(row.metric));
        }
        std::ranges::sort(units, std::ranges::greater(), &QString::size);
        return QRegularExpression(
            QStringLiteral("(?<![\\w.,])([-\u2212]?\\d+(?:[.,]\\d+)?(?:e[-+]?\\d+)?)"
                           "([ \u00A0])(%1)(?![\\w²³°/·])")
                .arg(units.join(QLatin1Char('|'))),
            QRegularExpression::UseUnicodePropertiesOption);
    }();
    return pattern;
}

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
    QSettings().setValue(setting, system == UnitSystem::inch ? QStringLiteral("inch")
                                                             : QStringLiteral("metric"));
    if (std::exchange(system_, system) != system)
        Q_EMIT changed();
}

void Units::restore() {
    const bool inches = QSettings().value(setting).toString() == QLatin1String("inch");
    const UnitSystem kept = inches ? UnitSystem::inch : UnitSystem::metric;
    if (std::exchange(system_, kept) != kept)
        Q_EMIT changed();
}

Unit unitFor(const QString& metric) {
    const Row* row = rowOf(metric);
    if (!row)
        return {metric};
    if (Units::instance().system() == UnitSystem::metric)
        return {inWords(row->metric)};
    return {inWords(row->inch), row->factor, row->offset};
}

Unit unitFor(const std::string& metric) {
    return unitFor(QString::fromStdString(metric));
}

QString metricWord(const QString& metric) {
    return rowOf(metric) ? inWords(rowOf(metric)->metric) : metric;
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

QString inShownUnits(const QString& sentence) {
    if (Units::instance().system() == UnitSystem::metric)
        return sentence;
    QString text;
    qsizetype done = 0;
    auto matches = quantityPattern().globalMatch(sentence);
    while (matches.hasNext()) {
        const auto match = matches.next();
        QString number = match.captured(1);
        number.replace(QChar(0x2212), QLatin1Char('-')).replace(QLatin1Char(','), QLatin1Char('.'));
        const Unit unit = unitFor(match.captured(3));
        text += sentence.mid(done, match.capturedStart() - done) +
                shortText(unit.shown(number.toDouble())) + match.captured(2) + unit.text;
        done = match.capturedEnd();
    }
    return text + sentence.mid(done);
}

} // namespace lobewright::ui
