#include "tests/ui/sight.h"

#include <QHash>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace lobewright::ui::test {

namespace {

// IEC 61966-2-1.
double linear(double channel) {
    return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

double encoded(double channel) {
    return channel <= 0.0031308 ? 12.92 * channel : 1.055 * std::pow(channel, 1.0 / 2.4) - 0.055;
}

/// CIE L*a*b* of a colour of the screen, white point D65.
Triple labOf(const QColor& colour) {
    const Triple xyz = times({{{0.4124564, 0.3575761, 0.1804375},
                               {0.2126729, 0.7151522, 0.0721750},
                               {0.0193339, 0.1191920, 0.9503041}}},
                             linearRgb(colour));
    const Triple white{0.95047, 1.0, 1.08883};
    Triple f{};
    for (std::size_t i = 0; i < 3; ++i) {
        const double t = xyz[i] / white[i];
        f[i] = t > 216.0 / 24389.0 ? std::cbrt(t) : (24389.0 / 27.0 * t + 16.0) / 116.0;
    }
    return {116.0 * f[1] - 16.0, 500.0 * (f[0] - f[1]), 200.0 * (f[1] - f[2])};
}

constexpr double degree = std::numbers::pi / 180.0;

double hueOf(double a, double b) {
    const double hue = std::atan2(b, a) / degree;
    return hue < 0.0 ? hue + 360.0 : hue;
}

} // namespace

// Machado, Oliveira & Fernandes 2009, table 1 (severity 1.0), from memory.
const std::array<Sight, 4>& sights() {
    static const std::array<Sight, 4> all{{{"normal", {{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}}},
                                           {"protanopia",
                                            {{{0.152286, 1.052583, -0.204868},
                                              {0.114503, 0.786281, 0.099216},
                                              {-0.003882, -0.048116, 1.051998}}}},
                                           {"deuteranopia",
                                            {{{0.367322, 0.860646, -0.227968},
                                              {0.280085, 0.672501, 0.047413},
                                              {-0.011820, 0.042940, 0.968881}}}},
                                           {"tritanopia",
                                            {{{1.255528, -0.076749, -0.178779},
                                              {-0.078411, 0.930809, 0.147602},
                                              {0.004733, 0.691367, 0.303900}}}}}};
    return all;
}

Triple times(const Matrix& m, const Triple& v) {
    Triple result{};
    for (std::size_t i = 0; i < 3; ++i) {
        for (std::size_t j = 0; j < 3; ++j)
            result[i] += m[i][j] * v[j];
    }
    return result;
}

Triple linearRgb(const QColor& colour) {
    return {linear(static_cast<double>(colour.redF())),
            linear(static_cast<double>(colour.greenF())),
            linear(static_cast<double>(colour.blueF()))};
}

QColor seenBy(const Sight& sight, const QColor& colour) {
    const Triple rgb = times(sight.matrix, linearRgb(colour));
    const auto channel = [](double value) {
        return static_cast<float>(encoded(std::clamp(value, 0.0, 1.0)));
    };
    return QColor::fromRgbF(channel(rgb[0]), channel(rgb[1]), channel(rgb[2]));
}

QImage seenBy(const Sight& sight, const QImage& picture) {
    QImage seen = picture.convertToFormat(QImage::Format_RGB32);
    QHash<QRgb, QRgb> known; // a drawing has few colours
    for (int y = 0; y < seen.height(); ++y) {
        auto* line = reinterpret_cast<QRgb*>(seen.scanLine(y));
        for (int x = 0; x < seen.width(); ++x) {
            auto found = known.find(line[x]);
            if (found == known.end())
                found = known.insert(line[x], seenBy(sight, QColor(line[x])).rgb());
            line[x] = *found;
        }
    }
    return seen;
}

// CIE 142-2001; Sharma, Wu & Dalal 2005 for the order of the steps.
double ciede2000(const Triple& p, const Triple& q) {
    const auto [l1, a1, b1] = p;
    const auto [l2, a2, b2] = q;
    const double mean = 0.5 * (std::hypot(a1, b1) + std::hypot(a2, b2));
    const double mean7 = std::pow(mean, 7.0), twentyFive7 = std::pow(25.0, 7.0);
    const double g = 0.5 * (1.0 - std::sqrt(mean7 / (mean7 + twentyFive7)));
    const double c1 = std::hypot((1.0 + g) * a1, b1), c2 = std::hypot((1.0 + g) * a2, b2);
    const double h1 = hueOf((1.0 + g) * a1, b1), h2 = hueOf((1.0 + g) * a2, b2);
    const bool grey = c1 * c2 == 0.0;
    double turn = grey ? 0.0 : h2 - h1;
    turn += turn > 180.0 ? -360.0 : turn < -180.0 ? 360.0 : 0.0;
    const double dH = 2.0 * std::sqrt(c1 * c2) * std::sin(0.5 * turn * degree);
    double hue = h1 + h2;
    if (!grey) {
        hue = std::abs(h1 - h2) <= 180.0 ? 0.5 * hue
                                         : 0.5 * (hue < 360.0 ? hue + 360.0 : hue - 360.0);
    }
    const double l = 0.5 * (l1 + l2), c = 0.5 * (c1 + c2);
    const double t =
        1.0 - 0.17 * std::cos((hue - 30.0) * degree) + 0.24 * std::cos(2.0 * hue * degree) +
        0.32 * std::cos((3.0 * hue + 6.0) * degree) - 0.20 * std::cos((4.0 * hue - 63.0) * degree);
    const double sl =
        1.0 + 0.015 * (l - 50.0) * (l - 50.0) / std::sqrt(20.0 + (l - 50.0) * (l - 50.0));
    const double sc = 1.0 + 0.045 * c, sh = 1.0 + 0.015 * c * t;
    const double c7 = std::pow(c, 7.0);
    const double bend = (hue - 275.0) / 25.0;
    const double rt = -2.0 * std::sqrt(c7 / (c7 + twentyFive7)) *
                      std::sin(60.0 * std::exp(-bend * bend) * degree);
    const double x = (l2 - l1) / sl, y = (c2 - c1) / sc, z = dH / sh;
    return std::sqrt(x * x + y * y + z * z + rt * y * z);
}

double colourDifference(const QColor& a, const QColor& b) {
    return ciede2000(labOf(a), labOf(b));
}

} // namespace lobewright::ui::test
