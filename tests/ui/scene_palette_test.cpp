// Colours have to stay apart for people who see two primaries only.
#include "core/units.h"
#include "tests/ui/sight.h"
#include "ui/base/palette.h"

#include <QMetaEnum>
#include <QPalette>
#include <gtest/gtest.h>

#include <array>
#include <cmath>

namespace lobewright::ui {
namespace {

using namespace test;

double difference(const QColor& a, const QColor& b, const Sight& sight) {
    return colourDifference(seenBy(sight, a), seenBy(sight, b));
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

// Pairs 1, 4, 7, 16, 19 and 33 of the test data of Sharma, Wu & Dalal 2005, table 1, from memory.
TEST(ColourDifference, IsThatOfThePublishedPairs) {
    EXPECT_NEAR(ciede2000({50, 2.6772, -79.7751}, {50, 0, -82.7485}), 2.0425, 1e-4);
    EXPECT_NEAR(ciede2000({50, -1.3802, -84.2814}, {50, 0, -82.7485}), 1.0000, 1e-4);
    EXPECT_NEAR(ciede2000({50, 0, 0}, {50, -1, 2}), 2.3669, 1e-4);
    EXPECT_NEAR(ciede2000({50, 2.5, 0}, {50, 0, -2.5}), 4.3065, 1e-4);
    EXPECT_NEAR(ciede2000({50, 2.5, 0}, {56, -27, -3}), 31.9030, 1e-4);
    EXPECT_NEAR(ciede2000({6.7747, -0.2908, -2.4247}, {5.8714, -0.0985, -2.2286}), 0.6377, 1e-4);
}

TEST(ColourDifference, GreysLookTheSameToEverySight) {
    for (const Sight& sight : sights()) {
        EXPECT_LT(difference(QColor("#808080"), QColor("#808080"), sight) +
                      colourDifference(seenBy(sight, QColor("#808080")), QColor("#808080")),
                  0.1)
            << sight.name;
    }
}

struct Pair {
    const char* name;
    QColor a, b;
    double least;
};

// 2.3 is just noticeable side by side; 10 and more is told apart at a glance, also in thin lines
// (common practice).
TEST_P(Tones, WhatMustBeToldApartDiffersForEverySight) {
    const Palette& p = tones();
    std::vector<Pair> pairs{
        {"inlet and exhaust", p.inlet, p.exhaust, 20.0},
        {"inlet and warning", p.inlet, p.warning, 10.0},
        {"exhaust and warning", p.exhaust, p.warning, 10.0},
        {"fresh and burnt gas", p.fresh, p.burnt, 10.0},
        {"metal and burnt gas", p.metal, p.burnt, 10.0},
        {"metal and fresh gas", p.metal, p.fresh, 10.0},
        {"burning and burnt gas", p.burning, p.burnt, 9.0},
        {"areas of both sides", p.sideFill(End::inlet), p.sideFill(End::exhaust), 10.0},
        {"baselines of both sides", p.baseline(p.inlet), p.baseline(p.exhaust), 10.0},
        {"ink and quiet ink", p.ink, p.quiet, 10.0}};
    for (const auto& [name, colour] :
         {std::pair("inlet", p.inlet), {"exhaust", p.exhaust}, {"warning", p.warning}}) {
        pairs.push_back({name, colour, p.ink, 15.0});
        pairs.push_back({name, colour, p.baseline(colour), 10.0});
        pairs.push_back({name, p.baseline(colour), p.paper, 10.0});
    }
    // Cranks stand beside the tracks of both sides, four-strokes beside cranks only.
    const std::pair<const char*, QColor> engines[] = {
        {"crank", p.crank},
        {"geared crank", p.gearedCrank},
        {"four-stroke", p.fourStroke},
        {"supplied four-stroke", p.fourStrokeSupplied}};
    for (std::size_t i = 0; i < std::size(engines); ++i) {
        const auto& [name, colour] = engines[i];
        pairs.push_back({name, colour, p.ink, 9.5});
        for (std::size_t k = 0; k < i; ++k)
            pairs.push_back({name, colour, engines[k].second, 9.5});
        if (i < 2) {
            pairs.push_back({name, colour, p.inlet, 9.5});
            pairs.push_back({name, colour, p.exhaust, 9.5});
        }
    }
    for (const Sight& sight : sights()) {
        for (const Pair& pair : pairs) {
            EXPECT_GT(difference(pair.a, pair.b, sight), pair.least)
                << pair.name << " for " << sight.name;
        }
    }
}

// WCAG 2.1 success criteria 1.4.3 (text 4.5 : 1) and 1.4.11 (graphics 3 : 1).
TEST_P(Tones, TextAndLinesHaveTheContrastThatReadingNeeds) {
    const Palette& p = tones();
    for (const QColor& ground : {p.paper, p.panel}) {
        EXPECT_GT(contrast(p.ink, ground), 7.0);
        EXPECT_GT(contrast(p.quiet, ground), 4.5);
        // Names of the sides, of limits and of curves are written in their colours.
        for (const QColor& text : {p.inlet, p.exhaust, p.warning, p.crank, p.gearedCrank,
                                   p.fourStroke, p.fourStrokeSupplied})
            EXPECT_GT(contrast(text, ground), 4.5) << text.name().toStdString();
    }
}

// Whatever Qt itself writes, on whatever it writes it.
TEST_P(Tones, WordsOfWidgetsHaveTheContrastThatReadingNeeds) {
    const QPalette q = tones().widgetPalette();
    const std::pair<QPalette::ColorRole, QPalette::ColorRole> written[] = {
        {QPalette::WindowText, QPalette::Window},  {QPalette::Text, QPalette::Base},
        {QPalette::Text, QPalette::AlternateBase}, {QPalette::PlaceholderText, QPalette::Base},
        {QPalette::ButtonText, QPalette::Button},  {QPalette::HighlightedText, QPalette::Highlight},
        {QPalette::Link, QPalette::Base},          {QPalette::Link, QPalette::Window},
        {QPalette::LinkVisited, QPalette::Base},   {QPalette::ToolTipText, QPalette::ToolTipBase}};
    for (const auto& [text, ground] : written) {
        EXPECT_GT(contrast(q.color(text), q.color(ground)), 4.5)
            << QMetaEnum::fromType<QPalette::ColorRole>().valueToKey(text) << " on "
            << QMetaEnum::fromType<QPalette::ColorRole>().valueToKey(ground);
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
