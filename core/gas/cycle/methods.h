#pragma once

#include "core/gas/integrators/dormand_prince.h"
#include "core/gas/integrators/radau.h"

#include <Eigen/Core>

#include <vector>

namespace lobewright::gas {

inline constexpr int stiffCount = 3; ///< stiff variables of a cylinder: air, products, temperature

/// The integrators for a number of cylinders with what stands outside their ports.
struct Methods {
    /// `outside`: variables there that the rates depend on, of `outsideSize`.
    Methods(std::size_t cylinders, const std::vector<int>& outside, int outsideSize);

    std::vector<int> stiff; ///< variables: those of each cylinder, then `outside`
    DormandPrince explicitly;
    Radau implicitly;
    Eigen::MatrixXd derivatives; ///< ∂f/∂y of the stiff variables
};

/// Variables of so many cylinders, and of what stands outside their ports.
std::size_t sizeOf(std::size_t cylinders, int outsideSize);

} // namespace lobewright::gas
