#include "ui/plots/base/plain_ticks.h"

#include <cmath>
#include <typeinfo>

namespace lobewright::ui {

QVector<double> PlainTicks::createTickVector(double step, const QCPRange& range) {
    constexpr double rounding = 1e-9; // of a step
    QVector<double> ticks = QCPAxisTicker::createTickVector(step, range);
    for (double& tick : ticks) {
        if (std::abs(tick) < rounding * step)
            tick = 0.0;
    }
    return ticks;
}

QString PlainTicks::getTickLabel(double tick, const QLocale& locale, QChar format, int precision) {
    return QCPAxisTicker::getTickLabel(tick, locale, format, precision)
        .replace(QLatin1Char('-'), QChar(0x2212));
}

void usePlainTicks(QCPAxis& axis) {
    const QCPAxisTicker& now = *axis.ticker();
    if (typeid(now) != typeid(QCPAxisTicker))
        return;
    const QSharedPointer<QCPAxisTicker> plain(new PlainTicks);
    plain->setTickCount(now.tickCount());
    axis.setTicker(plain);
}

} // namespace lobewright::ui
