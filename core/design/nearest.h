#pragma once

#include <span>
#include <string>
#include <string_view>

namespace lobewright::design {

/// Number of single-character insertions, deletions, substitutions and swaps of neighbours that
/// turn one word into the other (Levenshtein distance with transpositions).
int editDistance(std::string_view first, std::string_view second);

/// The word with the smallest edit distance, the first of equals; empty when there are no words.
std::string nearest(std::string_view word, std::span<const std::string> words);

} // namespace lobewright::design
