#include "ui/scene/section/firing_order.h"

#include <QStringList>

#include <algorithm>
#include <cmath>
#include <utility>

namespace lobewright::ui {

namespace {

// Ring angles are typed in decimals; nearer than this they are meant to be together [rad].
constexpr double together = 1e-6;

} // namespace

FiringOrder firingOrder(const mechanism::OpposedPair& pair) {
    FiringOrder order;
    order.period = pair.period();
    std::vector<std::pair<double, int>> all;
    const auto angles = mechanism::cylinderAngles(pair.mechanism());
    for (std::size_t k = 0; k < angles.size(); ++k) {
        for (const auto& centres : pair.deadCentres()) {
            const double at = centres.idc + angles[k] - angles.front();
            double theta = at - order.period * std::floor(at / order.period);
            if (order.period - theta < together)
                theta = 0.0;
            all.emplace_back(theta, static_cast<int>(k));
        }
    }
    std::sort(all.begin(), all.end());
    for (const auto& [theta, cylinder] : all) {
        if (order.moments.empty() || theta - order.moments.back().theta > together)
            order.moments.push_back({theta, {}});
        order.moments.back().cylinders.push_back(cylinder);
    }
    // Start with cylinder 1, as the trade writes it.
    const auto first = std::find_if(order.moments.begin(), order.moments.end(), [](const auto& m) {
        return std::find(m.cylinders.begin(), m.cylinders.end(), 0) != m.cylinders.end();
    });
    std::rotate(order.moments.begin(), first, order.moments.end());
    for (auto& moment : order.moments)
        std::sort(moment.cylinders.begin(), moment.cylinders.end());
    return order;
}

double FiringOrder::evenInterval() const {
    const double even = period / static_cast<double>(moments.size());
    for (std::size_t i = 0; i < moments.size(); ++i) {
        double step = moments[(i + 1) % moments.size()].theta - moments[i].theta;
        if (step <= together)
            step += period;
        if (std::abs(step - even) > together)
            return 0.0;
    }
    return even;
}

int FiringOrder::placeOf(int cylinder) const {
    for (std::size_t i = 0; i < moments.size(); ++i) {
        if (std::find(moments[i].cylinders.begin(), moments[i].cylinders.end(), cylinder) !=
            moments[i].cylinders.end())
            return static_cast<int>(i) + 1;
    }
    return 0;
}

QString FiringOrder::text() const {
    QStringList parts;
    for (const auto& moment : moments) {
        QStringList one;
        for (const int cylinder : moment.cylinders)
            one << QString::number(cylinder + 1);
        parts << one.join(QLatin1Char('+'));
    }
    return parts.join(QStringLiteral(" \u2013 "));
}

} // namespace lobewright::ui
