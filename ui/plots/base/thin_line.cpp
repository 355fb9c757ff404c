#include "ui/plots/base/thin_line.h"

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {

constexpr double unseen = 0.12;       ///< [px]
constexpr qsizetype longestSkip = 24; ///< bounds the work on straight lines

bool isPoint(const QPointF& point) {
    return std::isfinite(point.x()) && std::isfinite(point.y());
}

bool isNear(const QPointF& point, const QPointF& from, const QPointF& to, double tolerance) {
    const QPointF along = to - from, off = point - from;
    const double length2 = QPointF::dotProduct(along, along);
    const double share =
        length2 > 0.0 ? std::clamp(QPointF::dotProduct(off, along) / length2, 0.0, 1.0) : 0.0;
    const QPointF away = off - share * along;
    return QPointF::dotProduct(away, away) <= tolerance * tolerance;
}

} // namespace

std::vector<qsizetype> neededPoints(const QPolygonF& line, double tolerance) {
    std::vector<qsizetype> needed;
    if (line.isEmpty())
        return needed;
    needed.push_back(0);
    const qsizetype last = line.size() - 1;
    const auto canSkipTo = [&](qsizetype from, qsizetype to) {
        if (to > last || to - from > longestSkip || !isPoint(line[to]))
            return false;
        for (qsizetype i = from + 1; i < to; ++i) {
            if (!isNear(line[i], line[from], line[to], tolerance))
                return false;
        }
        return true;
    };
    for (qsizetype at = 0; at < last;) {
        qsizetype next = at + 1;
        while (isPoint(line[at]) && isPoint(line[next]) && canSkipTo(at, next + 1))
            ++next;
        needed.push_back(next);
        at = next;
    }
    return needed;
}

QPolygonF thinned(const QPolygonF& line) {
    QPolygonF thin;
    for (const qsizetype i : neededPoints(line, unseen))
        thin << line[i];
    return thin;
}

void ThinGraph::getOptimizedLineData(QVector<QCPGraphData>* lineData,
                                     const QCPGraphDataContainer::const_iterator& begin,
                                     const QCPGraphDataContainer::const_iterator& end) const {
    QPolygonF pixels;
    pixels.reserve(end - begin);
    for (auto point = begin; point != end; ++point) {
        pixels << QPointF(keyAxis()->coordToPixel(point->key),
                          valueAxis()->coordToPixel(point->value));
    }
    lineData->clear();
    // A line that leaves for millions of pixels would keep the painter busy for minutes.
    constexpr double farOut = 20000.0; // [px], within the coordinates that Qt draws at once
    const auto limited = [&](double pixel) { return std::clamp(pixel, -farOut, farOut); };
    const auto valueAt = [&](double pixel) { return valueAxis()->pixelToCoord(pixel); };
    QPointF before = pixels.value(0);
    for (const qsizetype i : neededPoints(pixels, unseen)) {
        const QPointF here = pixels[i];
        const QPointF way = here - before;
        for (const double edge : {before.y(), here.y()}) {
            const double share = (limited(edge) - before.y()) / way.y(); // 0 and 1: at an end
            if (share > 0.0 && share < 1.0) {
                lineData->append(QCPGraphData(keyAxis()->pixelToCoord(before.x() + share * way.x()),
                                              valueAt(limited(edge))));
            }
        }
        const bool isFar = std::abs(here.y()) > farOut;
        lineData->append(isFar ? QCPGraphData((begin + i)->key, valueAt(limited(here.y())))
                               : *(begin + i));
        before = here;
    }
}

} // namespace lobewright::ui
