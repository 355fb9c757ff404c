#pragma once

#include <vector>

namespace lobewright::exchange {

/// Halves the intervals between ascending bounds until `isFine(begin, end)` holds for each, but no
/// interval more than `deepest` times. Returns the new bounds, the old ones among them.
template <class IsFine>
std::vector<double> refined(const std::vector<double>& bounds, IsFine isFine, int deepest = 16) {
    struct Waiting {
        double end;
        int depth;
    };
    std::vector<double> result{bounds.front()};
    for (std::size_t i = 0; i + 1 < bounds.size(); ++i) {
        std::vector<Waiting> waiting{{bounds[i + 1], 0}};
        while (!waiting.empty()) {
            const double begin = result.back();
            const Waiting next = waiting.back();
            if (next.depth >= deepest || isFine(begin, next.end)) {
                result.push_back(next.end);
                waiting.pop_back();
            } else {
                waiting.back().depth = next.depth + 1;
                waiting.push_back({0.5 * (begin + next.end), next.depth + 1});
            }
        }
    }
    return result;
}

} // namespace lobewright::exchange
