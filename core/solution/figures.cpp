#include "core/solution/figures.h"

#include <cmath>

namespace lobewright::solution {

void FigureList::add(std::string name, std::string label, std::string unit,
                     std::optional<double> value, std::string note) {
    if (value && !std::isfinite(*value)) {
        value.reset();
    }
    if (value) {
        note.clear();
    }
    figures_.push_back(
        {group_, std::move(name), std::move(label), std::move(unit), value, std::move(note)});
}

} // namespace lobewright::solution
