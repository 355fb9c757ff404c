#include "core/ports/events.h"
#include "core/units.h"

#include <algorithm>
#include <cmath>

namespace lobewright::ports {

double openChord(const Row& row, double uncovered) {
    if (uncovered < 0.0 || uncovered > row.height) {
        return 0.0;
    }
    const double r = row.cornerRadius;
    const double s = r - std::min({uncovered, row.height - uncovered, r});
    return row.width - 2.0 * r + 2.0 * std::sqrt(std::max(r * r - s * s, 0.0));
}

} // namespace lobewright::ports
