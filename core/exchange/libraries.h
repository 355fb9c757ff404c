#pragma once

#include <string>
#include <vector>

namespace lobewright::exchange {

/// The libraries that the computation and its files rest on, each with its version, and the
/// compiler: "Open CASCADE 7.6.3". Figures are only repeated with the same ones.
std::vector<std::string> libraries();

} // namespace lobewright::exchange
