#include "ui/scene/solid/placed_names.h"

#include <algorithm>
#include <utility>

namespace lobewright::ui {

namespace {

constexpr double besidePicture = 16.0; ///< [px] between picture and names
constexpr double besideName = 4.0;     ///< [px] between a name and its leader
constexpr double betweenNames = 4.0;   ///< [px]

enum class Column { left, right };

/// The inner edge of the column, towards the picture.
double edgeOf(Column column, const std::vector<const NamedPart*>& parts, const QRectF& room,
              const QRectF& picture, const QFontMetricsF& metrics) {
    double widest = 0.0;
    for (const NamedPart* part : parts)
        widest = std::max(widest, metrics.horizontalAdvance(part->text));
    return column == Column::left
               ? std::max(room.left() + widest, picture.left() - besidePicture)
               : std::min(room.right() - widest, picture.right() + besidePicture);
}

void uncross(std::vector<const NamedPart*>& order, const std::vector<double>& tops, double x,
             double line) {
    const auto leader = [&](std::size_t i) {
        return QLineF(QPointF(x, tops[i] + 0.5 * line), order[i]->rest);
    };
    // Every exchange makes the leaders shorter together: this ends.
    bool again = true;
    for (int round = 0; again && round < 32; ++round) {
        again = false;
        for (std::size_t i = 0; i < order.size(); ++i) {
            for (std::size_t k = i + 1; k < order.size(); ++k) {
                if (leader(i).intersects(leader(k), nullptr) != QLineF::BoundedIntersection)
                    continue;
                std::swap(order[i], order[k]);
                again = true;
            }
        }
    }
}

void place(std::vector<PlacedName>& placed, Column column, std::vector<const NamedPart*> parts,
           const QRectF& room, const QRectF& picture, const QFontMetricsF& metrics) {
    if (parts.empty())
        return;
    const double line = metrics.height(), step = line + betweenNames;
    const bool isLeft = column == Column::left;
    const double edge = edgeOf(column, parts, room, picture, metrics);
    const double start = edge + (isLeft ? besideName : -besideName);
    // A leader that would have to run back over its own column has no name.
    std::erase_if(parts, [&](const NamedPart* part) {
        return isLeft ? part->at.x() < start || part->rest.x() < start
                      : part->at.x() > start || part->rest.x() > start;
    });
    std::ranges::stable_sort(
        parts, [](const NamedPart* a, const NamedPart* b) { return a->rest.y() < b->rest.y(); });
    std::vector<double> tops;
    for (const NamedPart* part : parts) {
        const double wanted = std::max(part->rest.y() - 0.5 * line, room.top());
        tops.push_back(tops.empty() ? wanted : std::max(wanted, tops.back() + step));
    }
    double lowest = room.bottom() - line;
    for (std::size_t i = tops.size(); i-- > 0; lowest = tops[i] - step)
        tops[i] = std::min(tops[i], lowest);
    uncross(parts, tops, start, line);
    for (std::size_t i = 0; i < parts.size(); ++i) {
        const double wide = metrics.horizontalAdvance(parts[i]->text);
        const QRectF box(isLeft ? edge - wide : edge, tops[i], wide, line);
        placed.push_back(
            {parts[i]->text, box, QLineF(QPointF(start, box.center().y()), parts[i]->at)});
    }
}

} // namespace

std::vector<PlacedName> placedNames(const std::vector<NamedPart>& parts, const QRectF& room,
                                    const QRectF& picture, const QFontMetricsF& metrics) {
    const auto most =
        static_cast<std::size_t>(std::max(0.0, room.height() / (metrics.height() + betweenNames)));
    std::vector<const NamedPart*> order;
    for (const NamedPart& part : parts) {
        if (order.size() < 2 * most)
            order.push_back(&part);
    }
    // Half of them on either side: no column is long, no leader runs far.
    std::ranges::stable_sort(
        order, [](const NamedPart* a, const NamedPart* b) { return a->rest.x() < b->rest.x(); });
    const auto middle = order.begin() + static_cast<std::ptrdiff_t>((order.size() + 1) / 2);
    std::vector<const NamedPart*> left(order.begin(), middle), right(middle, order.end());
    std::vector<PlacedName> placed;
    place(placed, Column::left, std::move(left), room, picture, metrics);
    place(placed, Column::right, std::move(right), room, picture, metrics);
    return placed;
}

} // namespace lobewright::ui
