#include "ui/plots/base/angle_ticks.h"

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {

constexpr double protractor[] = {0.1, 0.2, 0.5, 1, 2, 5, 10, 15, 30, 45, 60, 90, 180, 360};

/// The smallest step of a protractor that makes at most `count` ticks.
double protractorStep(double length, int count) {
    for (const double step : protractor) {
        if (length / step <= count)
            return step;
    }
    return 360.0;
}

} // namespace

QString degreesText(double degrees, int decimals) {
    QString text = QLocale().toString(std::abs(degrees), 'f', decimals);
    const QString point = QLocale().decimalPoint();
    if (text.contains(point)) {
        while (text.endsWith(QLatin1Char('0')))
            text.chop(1);
        if (text.endsWith(point))
            text.chop(point.size());
    }
    const bool negative = degrees < 0.0 && text != QLatin1String("0");
    return negative ? QChar(0x2212) + text : text;
}

double ShaftTicks::getTickStep(const QCPRange& range) {
    return protractorStep(range.size(), 9);
}

int ShaftTicks::getSubTickCount(double step) {
    return step == 45.0 || step == 90.0 || step == 15.0 ? 2
                                                        : (step == 30.0 || step == 60.0 ? 5 : 4);
}

QString ShaftTicks::getTickLabel(double tick, const QLocale&, QChar, int) {
    return degreesText(tick);
}

void CycleTicks::setCycles(std::vector<double> idcDegrees, int cyclesPerTurn) {
    centres_ = std::move(idcDegrees);
    cycles_ = cyclesPerTurn;
}

double CycleTicks::nearestCentre(double degrees) const {
    return *std::ranges::min_element(
        centres_, {}, [degrees](double centre) { return std::abs(degrees - centre); });
}

double CycleTicks::getTickStep(const QCPRange& range) {
    return protractorStep(range.size() * cycles_, 10);
}

QVector<double> CycleTicks::createTickVector(double step, const QCPRange& range) {
    QVector<double> ticks;
    for (const double centre : centres_) {
        for (double angle = -180.0 + (step > 180.0 ? 180.0 : 0.0); angle < 180.0; angle += step) {
            const double tick = centre + angle / cycles_;
            // Unequal cycles are longer or shorter than 360 cycle degrees: each keeps its half.
            // A wide label on the left edge would run into the caption of the axis.
            const bool collides =
                std::abs(angle) >= 100.0 && tick - range.lower < 0.02 * range.size();
            if (range.contains(tick) && nearestCentre(tick) == centre && !collides)
                ticks.append(tick);
        }
    }
    std::ranges::sort(ticks);
    return ticks;
}

QVector<double> CycleTicks::createSubTickVector(int, const QVector<double>&) {
    return {};
}

QString CycleTicks::getTickLabel(double tick, const QLocale&, QChar, int) {
    const double angle = (tick - nearestCentre(tick)) * cycles_;
    return degreesText(std::round(angle * 10.0) / 10.0);
}

} // namespace lobewright::ui
