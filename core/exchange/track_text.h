#pragma once

#include "core/exchange/track_part.h"

#include <initializer_list>
#include <string>
#include <vector>

/// Words and tables about one track, and what they have in common.
namespace lobewright::exchange {

/// The title on one line, at most this many bytes, cut between characters.
std::string shortTitle(const std::string& title, std::size_t bytes);

TextId word(track::Flank flank);

/// What every text export says first: design, part, what it is, units and tolerance; then the
/// notes. The lines have no marks of a comment.
std::vector<std::string> headLines(const TrackPart& part, const std::string& what,
                                   const std::string& tolerance,
                                   std::initializer_list<const char*> notes = {});

/// The lines as comments before a table: each after "# ", ended by CR LF like the rows.
std::string commented(const std::vector<std::string>& lines);

} // namespace lobewright::exchange
