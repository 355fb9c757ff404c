#include "core/solution/missing_piston.h"

#include <algorithm>

namespace lobewright::solution {

bool isOfMissingPiston(const Solution& solution, std::string_view name) {
    return solution.pair.mechanism().isOneSided() &&
           std::ranges::any_of(solution.figures, [&](const Figure& figure) {
               return figure.end == End::inlet &&
                      QuantityId{figure.id, figure.unit, End::exhaust}.written() == name;
           });
}

} // namespace lobewright::solution
