#include "core/solution/figures/figures.h"

#include "core/solution/sides.h"

#include <cmath>

namespace lobewright::solution {

namespace {

constexpr std::size_t usualCount = 192;

} // namespace

void FigureList::add(QuantityId id, Message label, std::optional<double> value, Message note) {
    if (figures_.empty()) {
        figures_.reserve(usualCount);
    }
    Figure& figure =
        figures_.emplace_back(Figure{std::move(id), group_, {}, std::move(label), {}, {}});
    figure.name = figure.written();
    if (value && std::isfinite(*value)) {
        figure.value = *value * figure.unit->divisor / figure.unit->factor;
    } else {
        figure.note = std::move(note);
    }
}

std::vector<Figure> FigureList::take() {
    nameSides(figures_);
    return std::move(figures_);
}

void FigureList::addYesNo(std::string id, Message label, std::optional<bool> value, Message note) {
    add({std::move(id)}, std::move(label), value ? std::optional(*value ? 1.0 : 0.0) : std::nullopt,
        std::move(note));
    figures_.back().isYesNo = true;
}

} // namespace lobewright::solution
