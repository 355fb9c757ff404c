#include "ui/base/curve.h"

#include "core/units/unit.h"

#include <QLocale>

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

QColor colourOf(const Palette& palette, Tone tone) {
    constexpr QColor Palette::*tones[] = {
        &Palette::inlet,       &Palette::exhaust,    &Palette::ink,
        &Palette::quiet,       &Palette::warning,    &Palette::crank,
        &Palette::gearedCrank, &Palette::fourStroke, &Palette::fourStrokeSupplied};
    return palette.*tones[static_cast<std::size_t>(tone)];
}

QString valueText(double value, double largest) {
    if (!std::isfinite(value))
        return {};
    const double size = std::abs(largest);
    constexpr int most = 6;
    constexpr double nothing =
        0.5e-6; // what so many decimals cannot show is the rounding of a zero
    int decimals = 0;
    if (size >= nothing && std::isfinite(size))
        decimals = std::clamp(3 - static_cast<int>(std::floor(std::log10(size))), 0, most);
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    QString text = locale.toString(std::abs(value), 'f', decimals);
    const bool isZero = locale.toDouble(text) == 0.0;
    return value < 0.0 && !isZero ? QChar(0x2212) + text : text;
}

QString shortText(double value) {
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    constexpr double nothing = 1e-12; // rounding of what cancels
    if (std::abs(value) < nothing)
        return locale.toString(0);
    // Engineers read 217557, not 2.176e+05.
    const bool isLarge = std::abs(value) >= 1e4 && std::abs(value) < 1e7;
    const QString text = isLarge ? locale.toString(std::abs(value), 'f', 0)
                                 : locale.toString(std::abs(value), 'g', 4);
    return value < 0.0 ? QChar(0x2212) + text : text;
}

QString endsText(double low, double high) {
    const QString between = QStringLiteral(" … ");
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    constexpr int usual = 4, most = 12;
    constexpr double honest = 0.05; // of the width of the range
    const double width = high - low;
    for (int digits = usual; width > 0.0 && digits <= most; ++digits) {
        const double from = roundedTo(digits, low), to = roundedTo(digits, high);
        if (std::max(std::abs(from - low), std::abs(to - high)) > honest * width)
            continue;
        if (digits == usual)
            break;
        const auto text = [&](double value) {
            return (value < 0.0 ? QString(QChar(0x2212)) : QString()) +
                   locale.toString(std::abs(value), 'f', QLocale::FloatingPointShortest);
        };
        return text(from) + between + text(to);
    }
    return shortText(low) + between + shortText(high);
}

} // namespace lobewright::ui
