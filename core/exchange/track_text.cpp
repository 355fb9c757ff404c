#include "core/exchange/track_text.h"

#include "core/text/caution.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>

LW_TEXTS_OF(Core)

namespace lobewright::exchange {

std::string shortTitle(const std::string& title, std::size_t bytes) {
    std::string line;
    for (const char letter : title) {
        const auto code = static_cast<unsigned char>(letter);
        line += code < 0x20 || code == 0x7f ? ' ' : letter;
    }
    if (line.size() > bytes) {
        const auto continues = [&](std::size_t at) {
            return (static_cast<unsigned char>(line[at]) & 0xC0) == 0x80;
        };
        while (bytes > 0 && continues(bytes)) {
            --bytes;
        }
        line.resize(bytes);
    }
    return line;
}

TextId word(track::Flank flank) {
    return flank == track::Flank::push ? LW_TEXT("push") : LW_TEXT("pull");
}

namespace {

/// A line each: STEP and DXF allow no longer ones than 255 characters.
void addSentences(std::vector<std::string>& lines, const std::string& text) {
    for (std::size_t begin = 0; begin < text.size();) {
        const std::size_t end = std::min(text.find(". ", begin), text.size() - 1);
        lines.push_back((begin == 0 ? "Caution: " : "  ") + text.substr(begin, end + 1 - begin));
        begin = end + 2;
    }
}

} // namespace

std::vector<std::string> headLines(const TrackPart& part, const std::string& what,
                                   const std::string& tolerance,
                                   std::initializer_list<const char*> notes) {
    std::vector<std::string> lines{
        "Design: " + shortTitle(part.title, 500),
        fmt::format("Part: {}, {} lobe{}, pitch radius {:.6g} mm, roller radius {:.6g} mm",
                    part.name().english(), part.curve().lobes(),
                    part.curve().lobes() == 1 ? "" : "s", part.pitchRadius / units::millimetre,
                    part.roller.radius / units::millimetre),
        "Content: " + what, "Units: millimetres and degrees unless a name says otherwise",
        "Tolerance: " + tolerance};
    addSentences(lines, caution().text);
    if (!part.origin.empty()) {
        lines.insert(lines.begin() + 1, "Source: " + shortTitle(part.origin, 300));
    }
    lines.insert(lines.end(), notes.begin(), notes.end());
    return lines;
}

std::string commented(const std::vector<std::string>& lines) {
    std::string text;
    for (const std::string& line : lines) {
        text += "# " + line + "\r\n";
    }
    return text;
}

} // namespace lobewright::exchange
