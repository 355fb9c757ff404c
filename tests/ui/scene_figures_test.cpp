// Figures that arithmetic leaves of nothing: shown as nothing, or in words.
#include "core/track/undercut.h"
#include "core/units.h"
#include "tests/ui/drawn_text.h"
#include "tests/ui/scene_fixture.h"
#include "ui/base/curve.h"
#include "ui/base/units.h"
#include "ui/panels/number_edit.h"
#include "ui/plots/base/bar_table.h"
#include "ui/plots/base/readout_strip.h"
#include "ui/plots/turn/width_plot.h"
#include "ui/report/report_words.h"

#include <QTest>
#include <gtest/gtest.h>

#include <cmath>

namespace lobewright::ui::test {
namespace {

constexpr double um = units::micrometre;

QString textOn(QWidget& widget) {
    QStringList words;
    for (const DrawnText& text : drawnText(widget))
        words << text.text;
    return words.join(QLatin1Char('|'));
}

/// Lobes of five micrometres: curved so little that any roller may run on them.
design::Design nearlyStraightLobes() {
    design::Design design = twoLobeDesign();
    std::get<motion::SegmentShape>(design.tracks.inlet.shape).stroke = 5.0 * um;
    design.ports.inlet = {{2.0 * um, 2.0 * um, 0.012, 10, 0.0, 0.7}};
    design.ports.exhaust = {{2.2 * um, 2.2 * um, 0.012, 9, 0.0, 0.7}};
    return design;
}

} // namespace

// The margin was 965815076915 mm.
TEST(UndercutMargin, OfANearlyStraightLobeIsAnyRadius) {
    const design::Design design = nearlyStraightLobes();
    const GeometryPointer geometry = geometryOf(design);
    const double largest = track::rollerRadiusLimit(
        geometry->pair.curve(End::inlet).at(0.0), design.mechanism.pitchRadius, track::Flank::push);
    ASSERT_GT(std::abs(largest), 10.0) << "metres: what was shown as a margin";
    TurnCursor cursor;
    WidthPlot plot(cursor, WidthPlot::Quantity::undercutMargin);
    plot.resize(500, 300);
    plot.show();
    plot.showGeometry(geometry);
    EXPECT_FALSE(plot.worst());
    for (const Curve& curve : plot.curves())
        EXPECT_TRUE(curve.values.isNaN().all());
    auto* strip = plot.findChild<ReadoutStrip*>();
    ASSERT_TRUE(strip);
    const QString said = textOn(*strip);
    EXPECT_TRUE(said.contains("none")) << said.toStdString();
    EXPECT_FALSE(said.contains("mm")) << said.toStdString();
    for (const Sheet::Row& row : trackFigures(*inventedSolution(design))) {
        if (row.name.contains("Undercut margin")) {
            EXPECT_EQ(row.value, "none reached");
        }
    }
}

TEST(Readout, OfWhatIsNotThereHasNoUnit) {
    ReadoutStrip strip;
    strip.resize(400, 30);
    strip.setItems({{QPen(), "Torque", QString(), QStringLiteral("N·m"), {}}});
    const QString said = textOn(strip);
    EXPECT_TRUE(said.contains("none")) << said.toStdString();
    EXPECT_FALSE(said.contains(QStringLiteral("N·m"))) << said.toStdString();
    BarTable table;
    table.resize(400, 120);
    table.setSections({{"Torque", {}, {{"order 2", QStringLiteral("N·m"), {}, {}, {}}}}});
    EXPECT_FALSE(textOn(table).contains(QStringLiteral("N·m"))) << textOn(table).toStdString();
}

// 2.3e-13 N·m of torque, bars of 1e-10 J.
TEST(Bars, OfRoundingErrorsAreEmptyAndSayNought) {
    BarTable table;
    table.resize(400, 160);
    table.setSections({{"Orders",
                        {},
                        {{"order 1", QStringLiteral("N·m"), {}, 2.3e-13, {}},
                         {"order 2", QStringLiteral("N·m"), {}, -1.0e-13, {}}}},
                       {"Heat", {}, {{"walls", QStringLiteral("J"), {}, 1e-10, {}}}}});
    const QString said = textOn(table);
    EXPECT_TRUE(said.contains(quantityText(0.0, QStringLiteral("N·m")))) << said.toStdString();
    EXPECT_FALSE(said.contains(QStringLiteral("e-"))) << said.toStdString();
    int strokes = 0;
    for (const DrawnStroke& stroke : drawn(table).strokes)
        strokes += stroke.line.boundingRect().width() > 20.0 ? 1 : 0;
    EXPECT_EQ(strokes, 0) << "no bar is drawn";
}

// A lift of 1.602042E-05 mm stood in the inputs.
TEST(NumberText, OfACurveThatIsNoughtButForRoundingHasNoDecimals) {
    EXPECT_EQ(valueText(0.0, 0.0).toStdString(), "0");
    EXPECT_EQ(valueText(-3e-13, 2e-12).toStdString(), "0");
    EXPECT_EQ(valueText(-0.75, 0.8).toStdString(), "\u22120.7500");
}

TEST(NumberText, OfSmallNumbersHasNoExponent) {
    EXPECT_EQ(numberText(2e-5), "0.00002");
    EXPECT_EQ(numberText(-0.0004), "-0.0004");
    EXPECT_EQ(numberText(123456789.0), "123456789");
    EXPECT_EQ(numberText(0.0), "0");
    for (const double number : {0.1, 1.0 / 3.0, 86.7544631, 1e-6, 4.2e15, 6.02e23})
        EXPECT_EQ(readNumber(numberText(number)), number);
}

// "1400 … 1401" told of a range of 1.4 rpm that it had 1.
TEST(EndsText, TellsTheWidthOfARange) {
    const QString between = QStringLiteral(" … ");
    EXPECT_EQ(endsText(0.6, 0.8), "0.6" + between + "0.8");
    EXPECT_EQ(endsText(1399.6, 1400.6), "1399.6" + between + "1400.6");
    EXPECT_EQ(endsText(1500.0, 2500.0), "1500" + between + "2500");
    EXPECT_EQ(endsText(-0.05, 0.05), QString(QChar(0x2212)) + "0.05" + between + "0.05");
    EXPECT_EQ(endsText(5.0, 5.0), "5" + between + "5");
}

// "hatched:" was glued to its swatch.
TEST(ReadoutStrip, ABroadSwatchLeavesRoomBeforeItsWord) {
    ReadoutStrip strip;
    strip.resize(300, 30);
    strip.setItems({{QPen(Qt::red, 9.0), QStringLiteral("hatched"), QStringLiteral("5"),
                     QStringLiteral("kW"), QString(), true}});
    strip.show();
    const QImage image = strip.grab().toImage();
    int last = -1;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            const QColor tone = image.pixelColor(x, y);
            if (tone.red() > 200 && tone.green() < 90)
                last = std::max(last, x);
        }
    }
    ASSERT_GE(last, 0);
    double word = 1e9;
    for (const DrawnText& text : drawnText(strip)) {
        if (text.text.startsWith(QStringLiteral("hatched")))
            word = text.box.left();
    }
    EXPECT_GE(word, last + 3.0);
}

} // namespace lobewright::ui::test
