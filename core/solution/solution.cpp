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

} // namespace

const Channel* Solution::channel(std::string_view name) const {
    return findByName(channels, name);
}

const Figure* Solution::figure(std::string_view name) const {
    return findByName(figures, name);
}

} // namespace lobewright::solution
