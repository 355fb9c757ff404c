#pragma once

#include "core/ends.h"
#include "core/mechanism/opposed_pair.h"
#include "core/text/message.h"

#include <algorithm>
#include <string_view>
#include <vector>

/// How the parts of a side are called: an engine with one track has nothing to tell apart, and its
/// track is "the track".
namespace lobewright::solution {

/// "inlet track", "exhaust track", "track".
TextId trackWord(const mechanism::OpposedPair& pair, End end);
/// "of the inlet piston", "of the exhaust piston", "of the piston".
TextId ofPistonWords(const mechanism::OpposedPair& pair, End end);
/// "The roller of the inlet side", …, "The roller"; at the beginning of a sentence.
TextId rollerWords(const mechanism::OpposedPair& pair, End end);
/// "the roller of the inlet side", …, "the roller"; within a sentence.
TextId rollerWithin(bool isOneSided, End end);
/// "Film thickness, inlet side"; of one track "Film thickness".
Message ofTrack(const mechanism::OpposedPair& pair, const Message& what, End end);

/// Adds the side to the labels of figures or channels whose other side stands in the list as well.
template <class Item>
void nameSides(std::vector<Item>& items) {
    std::vector<std::string_view> exhaust;
    for (const Item& item : items) {
        if (item.end == End::exhaust) {
            exhaust.push_back(item.id);
        }
    }
    std::ranges::sort(exhaust);
    for (Item& item : items) {
        if (item.end && std::ranges::binary_search(exhaust, std::string_view(item.id))) {
            item.label = ofSide(item.label, *item.end);
        }
    }
}

} // namespace lobewright::solution
