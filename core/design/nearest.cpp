#include "core/design/nearest.h"

#include <algorithm>
#include <limits>
#include <vector>

namespace lobewright::design {

int editDistance(std::string_view first, std::string_view second) {
    const std::size_t columns = second.size() + 1;
    std::vector<int> beforeLast(columns), last(columns), row(columns);
    for (std::size_t j = 0; j < columns; ++j) {
        last[j] = static_cast<int>(j);
    }
    for (std::size_t i = 1; i <= first.size(); ++i) {
        row[0] = static_cast<int>(i);
        for (std::size_t j = 1; j < columns; ++j) {
            const int change = first[i - 1] == second[j - 1] ? 0 : 1;
            row[j] = std::min({last[j] + 1, row[j - 1] + 1, last[j - 1] + change});
            const bool isSwap =
                i > 1 && j > 1 && first[i - 1] == second[j - 2] && first[i - 2] == second[j - 1];
            if (isSwap) {
                row[j] = std::min(row[j], beforeLast[j - 2] + 1);
            }
        }
        std::swap(beforeLast, last);
        std::swap(last, row);
    }
    return last[second.size()];
}

std::string nearest(std::string_view word, std::span<const std::string> words) {
    constexpr std::size_t longestKey = 64; // longer ones resemble nothing; keeps the cost bounded
    std::string best;
    int least = std::numeric_limits<int>::max();
    for (const std::string& candidate : words) {
        const int distance = editDistance(word.substr(0, longestKey), candidate);
        if (distance < least) {
            least = distance;
            best = candidate;
        }
    }
    return best;
}

} // namespace lobewright::design
