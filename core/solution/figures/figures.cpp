#include "core/solution/figures/figures.h"

#include <cmath>

namespace lobewright::solution {

void FigureList::add(std::string name, Message label, std::string unit, std::optional<double> value,
                     Message note) {
    if (value && !std::isfinite(*value)) {
        value.reset();
    }
    if (value) {
        note = {};
    }
    figures_.push_back({group_, std::move(name), std::move(label), std::move(unit), value,
                        std::move(note), false});
}

void FigureList::addYesNo(std::string name, Message label, std::optional<bool> value,
                          Message note) {
    add(std::move(name), std::move(label), "",
        value ? std::optional(*value ? 1.0 : 0.0) : std::nullopt, std::move(note));
    figures_.back().isYesNo = true;
}

} // namespace lobewright::solution
