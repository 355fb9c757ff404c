#pragma once

#include <string>
#include <vector>

namespace lobewright::ui {

/// The libraries that views and reports are drawn with, each with its version.
std::vector<std::string> libraries();

} // namespace lobewright::ui
