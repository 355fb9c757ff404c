#include "core/solution/solution.h"

#include <algorithm>

namespace lobewright::solution {

namespace {

template <class List>
auto findByName(const List& list, std::string_view name) -> decltype(&list.front()) {
    const auto place =
        std::find_if(list.begin(), list.end(), [&](const auto& item) { return item.name == name; });
    return place == list.end() ? nullptr : &*place;
}

template <class List>
auto findById(const List& list, const QuantityId& id) -> decltype(&list.front()) {
    const auto place =
        std::find_if(list.begin(), list.end(), [&](const QuantityId& item) { return item == id; });
    return place == list.end() ? nullptr : &*place;
}

} // namespace

const Channel* Solution::channel(std::string_view name) const {
    return findByName(channels, name);
}

const Figure* Solution::figure(std::string_view name) const {
    return findByName(figures, name);
}

const Check* Solution::check(std::string_view id) const {
    const auto found = std::ranges::find(checks, id, &Check::id);
    return found == checks.end() ? nullptr : &*found;
}

const Channel* Solution::channel(const QuantityId& id) const {
    return findById(channels, id);
}

const Figure* Solution::figure(const QuantityId& id) const {
    return findById(figures, id);
}

std::optional<double> Solution::valueOf(const QuantityId& id) const {
    const Figure* found = figure(id);
    return found && found->value ? std::optional(toSi(*id.unit, *found->value)) : std::nullopt;
}

} // namespace lobewright::solution
