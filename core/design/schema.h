#pragma once

#include <string>

namespace lobewright::design {

/// The design file described in JSON Schema 2020-12: keys, types, units, ranges, defaults and help.
/// Rules between values (spans, ports against stroke, …) are beyond it; validate() knows them.
std::string designSchema();

} // namespace lobewright::design
