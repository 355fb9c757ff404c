#include "ui/base/figure_text.h"

#include "ui/base/curve.h"
#include "ui/base/unit_words.h"
#include "ui/base/units.h"

#include <QCoreApplication>
#include <QLocale>

#include <cmath>

namespace lobewright::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(FiguresPanel)
};

constexpr double cyclePeriod = 360.0; // [cycle °]
constexpr int degreeDecimals = 2;

QString signedText(double value, const QString& magnitude) {
    return (value > 0.0 ? QStringLiteral("+") : QString(QChar(0x2212))) + magnitude;
}

QString magnitudeText(double value) {
    return QLocale().toString(std::abs(value), 'g', 3);
}

bool isAngle(const lobewright::Unit& unit) {
    return unit.symbol.ends_with("°");
}

/// The shorter way round for event angles; spans and other angles differ plainly.
double angleChange(double now, double before, const solution::Figure& figure, double shaftPeriod) {
    const bool isEvent = figure.group == "timing" || figure.group == "geometry";
    const double period = figure.unit == &in::degreesOfCycle ? cyclePeriod
                          : figure.unit == &in::shaftDegrees ? shaftPeriod
                                                             : 0.0;
    return isEvent && period > 0.0 ? std::remainder(now - before, period) : now - before;
}

} // namespace

QString figureText(double value) {
    if (value != 0.0 && (std::abs(value) < 1e-3 || std::abs(value) >= 1e6))
        return QLocale().toString(value, 'g', 3);
    return valueText(value, value);
}

QString figureText(const solution::Figure& figure) {
    if (!figure.value)
        return Words::tr("not available");
    if (figure.isYesNo)
        return *figure.value != 0.0 ? Words::tr("yes") : Words::tr("no");
    const Unit unit = unitFor(*figure.unit);
    const double value = unit.shown(*figure.value);
    return withUnit(figureText(figure.unit == &in::pure ? value : withoutNoise(value)), unit.text);
}

FigureChange figureChange(const solution::Figure& now, const solution::Figure& before,
                          double shaftPeriod) {
    if (!now.value || !before.value)
        return {};
    const double value = *now.value, old = *before.value;
    const Unit unit = unitFor(*now.unit);
    FigureChange change;
    QString difference;
    if (now.isYesNo) {
        change.text = value == old ? QStringLiteral("=") : Words::tr("changed");
    } else if (isAngle(*now.unit)) {
        const double turned = angleChange(value, old, now, shaftPeriod);
        const QString degrees = QLocale().toString(std::abs(turned), 'f', degreeDecimals);
        const bool isEqual = degrees == QLocale().toString(0.0, 'f', degreeDecimals);
        change.text = isEqual ? QStringLiteral("=") : signedText(turned, degrees + QChar(0xB0));
        difference = change.text;
    } else if (figureText(value) == figureText(old)) {
        change.text = QStringLiteral("=");
    } else {
        const double shown = unit.difference(value - old);
        difference = (signedText(shown, magnitudeText(shown)) + ' ' + unit.text).trimmed();
        const double percent = 100.0 * (value - old) / std::abs(old);
        // A share of next to nothing, across zero or of a negative value misleads.
        const bool hasShare = value > 0.0 && old > 0.0 && std::abs(percent) < 1000.0;
        change.text =
            hasShare ? signedText(percent, QLocale().toString(std::abs(percent), 'f',
                                                              std::abs(percent) < 10.0 ? 1 : 0) +
                                               QStringLiteral(" %"))
                     : signedText(shown, magnitudeText(shown));
    }
    change.sentence =
        difference.isEmpty()
            ? Words::tr("%1 in the baseline").arg(figureText(before))
            : Words::tr("%1 against %2 of the baseline").arg(difference, figureText(before));
    return change;
}

} // namespace lobewright::ui
