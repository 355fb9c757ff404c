#include "core/ports/events.h"
#include "core/units.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace lobewright::ports {

namespace {

/// Rows that share the circumference, directly or through a third one; indices ascend by lower
/// edge.
std::vector<std::vector<int>> axialGroups(const std::vector<Row>& rows) {
    std::vector<int> order(rows.size());
    std::iota(order.begin(), order.end(), 0);
    const auto row = [&rows](int i) -> const Row& { return rows[static_cast<std::size_t>(i)]; };
    std::sort(order.begin(), order.end(), [&row](int a, int b) {
        return row(a).edge - row(a).height < row(b).edge - row(b).height;
    });
    std::vector<std::vector<int>> groups;
    double reach = 0.0;
    for (const int i : order) {
        if (groups.empty() || row(i).edge - row(i).height >= reach) {
            groups.emplace_back();
            reach = row(i).edge;
        }
        groups.back().push_back(i);
        reach = std::max(reach, row(i).edge);
    }
    return groups;
}

} // namespace

std::vector<Web> webs(const Rows& rows, double bore) {
    std::vector<Web> result;
    for (const End end : bothEnds) {
        for (const std::vector<int>& group : axialGroups(rows[end])) {
            double covered = 0.0;
            int ports = 0;
            for (const int i : group) {
                const Row& row = rows[end][static_cast<std::size_t>(i)];
                covered += row.count * 2.0 * std::asin(std::min(row.width / bore, 1.0));
                ports += row.count;
            }
            const double angle = (units::turn - covered) / std::max(ports, 1);
            result.push_back({end, *std::min_element(group.begin(), group.end()),
                              bore * std::sin(std::max(0.5 * angle, -0.5 * units::pi))});
        }
    }
    return result;
}

} // namespace lobewright::ports
