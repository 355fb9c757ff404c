#pragma once

#include "core/result.h"

#include <nlohmann/json.hpp>

#include <string>
#include <string_view>

/// JSON text as a tree, with problems that say where they stand.
namespace lobewright::design {

struct Document {
    nlohmann::json root;
    Problems problems; ///< of syntax, keys given twice and nesting; the tree is unusable with any
};

/// Parses JSON without recursion. Refuses NaN and infinities, numbers too large for a double, keys
/// given twice in one object, and nesting deeper than any design needs.
Document parseDocument(std::string_view text);

/// `parent` with one more part, escaped as RFC 6901 asks.
std::string pointer(const std::string& parent, std::string_view part);

/// The text made fit for a message: control characters shown as spaces, at most 60 bytes.
std::string excerpt(std::string_view text);

} // namespace lobewright::design
