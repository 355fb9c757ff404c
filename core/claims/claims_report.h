#pragma once

#include "core/claims/verdict.h"

#include <functional>
#include <string>

/// The claims check for people and for machines.
namespace lobewright::study {

/// Plain text, at most `width` ≥ 60 columns wide: findings with their arithmetic, contradictions,
/// statements, missing numbers, assumptions, cautions. `words` reads every label and sentence,
/// maybe in another language.
std::string claimsText(const ClaimsReport& report, std::size_t width = 100,
                       const std::function<std::string(const Message&)>& words = &Message::english);

/// JSON with "findings", "conflicts", "statements", "missing" and "assumptions"; numbers in the
/// units named beside them.
std::string claimsJson(const ClaimsReport& report);

/// The same with the verdict on top: under "verdict" and "wanted" in the JSON.
std::string claimsText(const VerdictPage& page, std::size_t width = 100,
                       const std::function<std::string(const Message&)>& words = &Message::english);
std::string claimsJson(const VerdictPage& page);

} // namespace lobewright::study
