#pragma once

#include "core/result.h"

#include <nlohmann/json.hpp>

#include <string>
#include <string_view>

/// JSON text as a tree, with problems that say where they stand.
namespace lobewright::design {

struct Document { // NOLINT(bugprone-exception-escape): moving a tree throws nothing
    nlohmann::json root;
    /// Of syntax, keys given twice, nesting and size; the tree is unusable with any.
    Problems problems;
};

/// A list of a million wrong keys helps nobody: so many problems of a file are told.
inline constexpr std::size_t mostProblems = 100;

/// Adds a problem to those of a file; beyond the most only a word that there are more. False: the
/// list is full.
bool addProblem(Problems& problems, Problem problem);
/// The same for many.
void addProblems(Problems& problems, const Problems& more);

/// Parses JSON without recursion. Refuses NaN and infinities, numbers too large for a double, keys
/// given twice in one object, and nesting deeper, keys longer and values more than any design
/// needs: whatever the text, memory and time stay within a small multiple of those of a large
/// design.
Document parseDocument(std::string_view text);

/// `parent` with one more part, escaped as RFC 6901 asks.
std::string pointer(const std::string& parent, std::string_view part);

/// The text made fit for a message: printable(), at most 60 characters.
std::string excerpt(std::string_view text);

} // namespace lobewright::design
