#include "core/gas/cycle/methods.h"

#include "core/gas/cycle/state.h"

namespace lobewright::gas {
namespace {

std::vector<VariableRange> coupledRanges(std::size_t cylinders, const std::vector<int>& outside) {
    std::vector<VariableRange> ranges;
    for (std::size_t k = 0; k < cylinders; ++k) {
        const int first = static_cast<int>(k) * cylinderVariables;
        ranges.push_back({first, first + coupledVariables});
    }
    for (const int variable : outside) {
        const int index = static_cast<int>(cylinders) * cylinderVariables + variable;
        if (variable > 0 && ranges.back().end == index) {
            ++ranges.back().end;
        } else {
            ranges.push_back({index, index + 1});
        }
    }
    return ranges;
}

std::vector<int> stiffVariables(std::size_t cylinders, const std::vector<int>& outside) {
    std::vector<int> indices;
    for (std::size_t k = 0; k < cylinders; ++k) {
        for (const Variable variable : {airMass, productsMass, temperature}) {
            indices.push_back(static_cast<int>(k) * cylinderVariables + variable);
        }
    }
    for (const int variable : outside) {
        indices.push_back(static_cast<int>(cylinders) * cylinderVariables + variable);
    }
    return indices;
}

} // namespace

std::size_t sizeOf(std::size_t cylinders, int outsideSize) {
    return cylinders * cylinderVariables + static_cast<std::size_t>(outsideSize);
}

Methods::Methods(std::size_t cylinders, const std::vector<int>& outside, int outsideSize)
    : stiff(stiffVariables(cylinders, outside)),
      explicitly(static_cast<int>(sizeOf(cylinders, outsideSize)),
                 coupledRanges(cylinders, outside)),
      implicitly(static_cast<int>(sizeOf(cylinders, outsideSize)), stiff,
                 coupledRanges(cylinders, outside)) {
    const auto count = static_cast<Eigen::Index>(stiff.size());
    derivatives.setZero(count, count);
}

} // namespace lobewright::gas
