#include "core/ports/events.h"
#include "core/units.h"

#include <algorithm>
#include <cmath>
#include <utility>
#include <vector>

namespace lobewright::ports {

namespace {

struct Placed {
    End end = End::inlet;
    int index = 0;
    const Row* row = nullptr;
    double lower() const { return row->edge - row->height; }
};

/// Rows that share the circumference, directly or through a third one; ascending by lower edge.
std::vector<std::vector<Placed>> axialGroups(std::vector<Placed> rows) {
    std::sort(rows.begin(), rows.end(),
              [](const Placed& a, const Placed& b) { return a.lower() < b.lower(); });
    std::vector<std::vector<Placed>> groups;
    double reach = 0.0;
    for (const Placed& one : rows) {
        if (groups.empty() || one.lower() >= reach) {
            groups.emplace_back();
            reach = one.row->edge;
        }
        groups.back().push_back(one);
        reach = std::max(reach, one.row->edge);
    }
    return groups;
}

std::vector<Placed> placed(const Rows& rows, End end) {
    std::vector<Placed> result;
    for (const Row& row : rows[end]) {
        result.push_back({end, static_cast<int>(result.size()), &row});
    }
    return result;
}

Web webOf(const std::vector<Placed>& group, double bore) {
    double covered = 0.0;
    int ports = 0;
    const Placed* first = &group.front();
    bool across = false;
    for (const Placed& one : group) {
        covered += one.row->count * 2.0 * std::asin(std::min(one.row->width / bore, 1.0));
        ports += one.row->count;
        across = across || one.end != group.front().end;
        if (std::pair(one.end, one.index) < std::pair(first->end, first->index)) {
            first = &one;
        }
    }
    const double angle = (units::turn - covered) / std::max(ports, 1);
    return {first->end, first->index, across,
            bore * std::sin(std::max(0.5 * angle, -0.5 * units::pi))};
}

} // namespace

std::vector<Web> webs(const Rows& rows, double bore, bool shared) {
    std::vector<std::vector<Placed>> sides{placed(rows, End::inlet), placed(rows, End::exhaust)};
    if (shared) {
        sides.front().insert(sides.front().end(), sides.back().begin(), sides.back().end());
        sides.pop_back();
    }
    std::vector<Web> result;
    for (const std::vector<Placed>& side : sides) {
        for (const std::vector<Placed>& group : axialGroups(side)) {
            result.push_back(webOf(group, bore));
        }
    }
    return result;
}

} // namespace lobewright::ports
