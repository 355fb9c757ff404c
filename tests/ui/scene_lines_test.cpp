#include "tests/ui/scene_fixture.h"
#include "ui/plots/base/hatching.h"
#include "ui/plots/base/thin_line.h"

#include <QImage>
#include <QPainter>
#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <numbers>

using namespace lobewright::ui;
using namespace lobewright::ui::test;

namespace {

QPolygonF wave(int points) {
    QPolygonF line;
    for (int i = 0; i < points; ++i) {
        const double x = 400.0 * i / (points - 1);
        line << QPointF(x, 60.0 * std::sin(2.0 * std::numbers::pi * x / 130.0));
    }
    return line;
}

class SeenGraph : public ThinGraph {
  public:
    using ThinGraph::getOptimizedLineData;
    using ThinGraph::ThinGraph;
};

} // namespace

// A spike that leaves the picture by far would keep the painter busy for minutes.
TEST(ThinLine, LeavesThePictureOnlyAsFarAsCanBeDrawnAtOnce) {
    QCustomPlot plot;
    plot.resize(400, 300);
    plot.yAxis->setRange(0.0, 1.0);
    plot.xAxis->setRange(0.0, 4.0);
    plot.replot();
    auto* graph = new SeenGraph(plot.xAxis, plot.yAxis);
    graph->setData({0.0, 1.0, 2.0, 3.0, 4.0},
                   {0.5, 0.5, 7e8, std::numeric_limits<double>::quiet_NaN(), -7e8});
    QVector<QCPGraphData> line;
    graph->getOptimizedLineData(&line, graph->data()->constBegin(), graph->data()->constEnd());
    int gaps = 0, onTheWay = 0;
    for (const QCPGraphData& point : line) {
        if (std::isnan(point.value)) {
            ++gaps;
            continue;
        }
        EXPECT_LE(std::abs(plot.yAxis->coordToPixel(point.value)), 20001.0) << point.key;
        if (point.key > 1.0 && point.key < 2.0) { // still on the line to the spike
            ++onTheWay;
            EXPECT_NEAR(point.value, 0.5 + (point.key - 1.0) * (7e8 - 0.5), 1e-6 * point.value);
        }
    }
    EXPECT_EQ(gaps, 1);
    EXPECT_EQ(onTheWay, 1);
}

TEST(ThinLine, StaysWithinTheToleranceOfEveryPointLeftOut) {
    const QPolygonF line = wave(1441);
    for (const double tolerance : {0.05, 0.12, 0.5}) {
        const auto needed = neededPoints(line, tolerance);
        ASSERT_EQ(needed.front(), 0);
        ASSERT_EQ(needed.back(), line.size() - 1);
        EXPECT_LT(static_cast<qsizetype>(needed.size()), line.size() / 5);
        for (size_t k = 1; k < needed.size(); ++k) {
            ASSERT_LT(needed[k - 1], needed[k]);
            for (qsizetype i = needed[k - 1] + 1; i < needed[k]; ++i) {
                EXPECT_LE(distanceToStretch(line[i], line[needed[k - 1]], line[needed[k]]),
                          tolerance + 1e-12);
            }
        }
    }
}

TEST(ThinLine, KeepsCornersGapsAndTheirEnds) {
    const double gap = std::numeric_limits<double>::quiet_NaN();
    const QPolygonF line(
        {{0, 0}, {1, 0}, {2, 0}, {2, 5}, {3, 5}, {4, gap}, {5, 1}, {6, 1}, {7, 1}});
    EXPECT_EQ(neededPoints(line, 0.1), (std::vector<qsizetype>{0, 2, 3, 4, 5, 6, 8}));
    EXPECT_TRUE(neededPoints({}, 0.1).empty());
    EXPECT_EQ(neededPoints(QPolygonF({{1, 1}}), 0.1), (std::vector<qsizetype>{0}));
}

// A line that turns back on itself is not its chord.
TEST(ThinLine, KeepsReversals) {
    const QPolygonF line({{0, 0}, {9, 0}, {3, 0}});
    EXPECT_EQ(neededPoints(line, 0.1).size(), 3u);
}

TEST(ThinGraph, KeepsItsDataWhole) {
    QCustomPlot plot;
    auto* graph = new ThinGraph(plot.xAxis, plot.yAxis);
    for (const QPointF& point : wave(721))
        graph->addData(point.x(), point.y());
    plot.rescaleAxes();
    plot.toPixmap(300, 200);
    EXPECT_EQ(graph->dataCount(), 721);
}

// What is drawn differs from the whole line by less than the eye tells: hardly a pixel by a tenth.
TEST(ThinGraph, LooksLikeTheWholeGraph) {
    const auto picture = [](auto* graph) {
        for (const QPointF& point : wave(721))
            graph->addData(point.x(), point.y());
        graph->setPen(QPen(Qt::black, 2.0));
        graph->setAdaptiveSampling(false);
        graph->parentPlot()->rescaleAxes();
        return graph->parentPlot()->toPixmap(400, 260).toImage();
    };
    QCustomPlot whole, thin;
    const QImage a = picture(whole.addGraph());
    const QImage b = picture(new ThinGraph(thin.xAxis, thin.yAxis));
    int different = 0;
    for (int y = 0; y < a.height(); ++y) {
        for (int x = 0; x < a.width(); ++x)
            different += std::abs(qGray(a.pixel(x, y)) - qGray(b.pixel(x, y))) > 40 ? 1 : 0;
    }
    EXPECT_LE(different, 20);
}

TEST(Hatching, StaysInsideAndContinuesFromAreaToArea) {
    const auto drawn = [](const QList<QRectF>& areas) {
        QImage image(120, 80, QImage::Format_RGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        for (const QRectF& area : areas)
            hatch(painter, area, Qt::black);
        painter.end();
        return image;
    };
    const QImage one = drawn({QRectF(20, 10, 80, 60)});
    int inside = 0;
    for (int y = 0; y < one.height(); ++y) {
        for (int x = 0; x < one.width(); ++x) {
            const bool isDrawn = one.pixel(x, y) != qRgb(255, 255, 255);
            inside += isDrawn ? 1 : 0;
            EXPECT_TRUE(!isDrawn || QRect(19, 9, 82, 62).contains(x, y)) << x << ' ' << y;
        }
    }
    EXPECT_GT(inside, 80 * 60 / 12);
    const QImage two = drawn({QRectF(20, 10, 40, 60), QRectF(60, 10, 40, 60)});
    int different = 0;
    for (int y = 0; y < one.height(); ++y) {
        for (int x = 0; x < one.width(); ++x)
            different += one.pixel(x, y) != two.pixel(x, y) ? 1 : 0;
    }
    EXPECT_LT(different, 30); // at the seam
}
