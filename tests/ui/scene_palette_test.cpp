// Colours have to stay apart for people who see two primaries only.
#include "core/units.h"
#include "ui/palette.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>

namespace lobewright::ui {
namespace {

using Triple = std::array<double, 3>;
using Matrix = std::array<Triple, 3>;

double linear(double channel) {
    return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

Triple times(const Matrix& m, const Triple& v) {
    Triple result{};
    for (std::size_t i = 0; i < 3; ++i)
        for (std::size_t j = 0; j < 3; ++j)
            result[i] += m[i][j] * v[j];
    return result;
}

Triple linearRgb(const QColor& colour) {
    return {linear(static_cast<double>(colour.redF())),
            linear(static_cast<double>(colour.greenF())),
            linear(static_cast<double>(colour.blueF()))};
}

// Full-strength simulation matrices for linear RGB: Machado, Oliveira & Fernandes 2009, table 1
// (severity 1.0), from memory. Each row sums to 1, so that greys stay grey.
const Matrix normal{{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}};
const Matrix protan{{{0.152286, 1.052583, -0.204868},
                     {0.114503, 0.786281, 0.099216},
                     {-0.003882, -0.048116, 1.051998}}};
const Matrix deutan{{{0.367322, 0.860646, -0.227968},
                     {0.280085, 0.672501, 0.047413},
                     {-0.011820, 0.042940, 0.968881}}};
const Matrix tritan{{{1.255528, -0.076749, -0.178779},
                     {-0.078411, 0.930809, 0.147602},
                     {0.004733, 0.691367, 0.303900}}};

// Perceptual coordinates: Ottosson's Oklab (2020), from memory.
Triple oklab(const QColor& colour, const Matrix& sight) {
    Triple rgb = times(sight, linearRgb(colour));
    for (double& channel : rgb)
        channel = std::clamp(channel, 0.0, 1.0);
    Triple cones = times({{{0.4122214708, 0.5363325363, 0.0514459929},
                           {0.2119034982, 0.6806995451, 0.1073969566},
                           {0.0883024619, 0.2817188376, 0.6299787005}}},
                         rgb);
    for (double& cone : cones)
        cone = std::cbrt(cone);
    return times({{{0.2104542553, 0.7936177850, -0.0040720468},
                   {1.9779984951, -2.4285922050, 0.4505937099},
                   {0.0259040371, 0.7827717662, -0.8086757660}}},
                 cones);
}

double difference(const QColor& a, const QColor& b, const Matrix& sight) {
    const Triple p = oklab(a, sight), q = oklab(b, sight);
    return std::hypot(p[0] - q[0], p[1] - q[1], p[2] - q[2]);
}

// Relative luminance and contrast: WCAG 2.1.
double contrast(const QColor& a, const QColor& b) {
    const auto luminance = [](const QColor& colour) {
        const Triple rgb = linearRgb(colour);
        return 0.2126 * rgb[0] + 0.7152 * rgb[1] + 0.0722 * rgb[2];
    };
    const double x = luminance(a) + 0.05, y = luminance(b) + 0.05;
    return std::max(x, y) / std::min(x, y);
}

class Tones : public ::testing::TestWithParam<bool> {
  protected:
    const Palette& tones() const {
        return GetParam() ? Palette::darkTones() : Palette::lightTones();
    }
};

// 0.1 in Oklab is five times the 0.02 that is just noticeable side by side (common practice).
TEST_P(Tones, SidesWarningAndInkStayApartForEverySight) {
    const Palette& p = tones();
    for (const Matrix& sight : {normal, protan, deutan, tritan}) {
        EXPECT_GT(difference(p.inlet, p.exhaust, sight), 0.2);
        EXPECT_GT(difference(p.inlet, p.warning, sight), 0.1);
        EXPECT_GT(difference(p.exhaust, p.warning, sight), 0.1);
        for (const QColor& colour : {p.inlet, p.exhaust, p.warning})
            EXPECT_GT(difference(p.ink, colour, sight), 0.1);
    }
}

TEST_P(Tones, FreshAndBurntGasStayApartForEverySight) {
    const Palette& p = tones();
    for (const Matrix& sight : {normal, protan, deutan, tritan}) {
        EXPECT_GT(difference(p.fresh, p.burnt, sight), 0.1);
        EXPECT_GT(difference(p.metal, p.burnt, sight), 0.1);
        EXPECT_GT(difference(p.metal, p.fresh, sight), 0.1);
    }
}

// WCAG 2.1 success criteria 1.4.3 (text 4.5 : 1) and 1.4.11 (graphics 3 : 1).
TEST_P(Tones, TextAndLinesHaveTheContrastThatReadingNeeds) {
    const Palette& p = tones();
    for (const QColor& ground : {p.paper, p.panel}) {
        EXPECT_GT(contrast(p.ink, ground), 7.0);
        EXPECT_GT(contrast(p.quiet, ground), 4.5);
        for (const QColor& line : {p.inlet, p.exhaust, p.warning})
            EXPECT_GT(contrast(line, ground), 4.0);
    }
}

TEST_P(Tones, GasRunsInFlatStepsFromFreshToBurnt) {
    const Palette& p = tones();
    EXPECT_EQ(p.gas(0.0).rgb(), p.fresh.rgb());
    EXPECT_EQ(p.gas(1.0).rgb(), p.burnt.rgb());
    EXPECT_EQ(p.gas(0.50).rgb(), p.gas(0.54).rgb());
    EXPECT_NE(p.gas(0.50).rgb(), p.gas(0.70).rgb());
    EXPECT_EQ(p.gas(std::nan("")).rgb(), p.fresh.rgb());
    EXPECT_EQ(p.gas(7.0).rgb(), p.burnt.rgb());
}

INSTANTIATE_TEST_SUITE_P(Themes, Tones, ::testing::Bool(),
                         [](const auto& theme) { return theme.param ? "Dark" : "Light"; });

} // namespace
} // namespace lobewright::ui
