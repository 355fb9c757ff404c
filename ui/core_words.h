#pragma once

#include <QString>

#include <string>
#include <string_view>

/// The words of the core, which knows no languages, in the language of the program.
namespace lobewright::ui {

/// A label, explanation or sentence of the core, translated. Numbers in it may vary: "Segment 3"
/// is found as "Segment %1". A sentence with values is found by its format, and its values are
/// translated in turn, but for what stands in quotation marks. What ends with ", inlet side", and
/// remarks that are joined by semicolons, are put together. Without a translation the text comes
/// back as it is.
QString coreText(std::string_view text);
/// The same with soft hyphens, where a long word may be broken.
QString coreTextToWrap(std::string_view text);
inline QString coreText(const std::string& text) {
    return coreText(std::string_view(text));
}
inline QString coreText(const char* text) {
    return coreText(std::string_view(text));
}

/// Numbers with the decimal mark of the language; those of sections (§ 2.7) stay.
QString localNumbers(const QString& text);

/// A label within a sentence: English writes it small, German keeps it as it is.
QString inSentence(const QString& label);

/// The text under which a translation is looked up: numbers replaced by %1, %2 …; side cut off.
QString coreTemplate(const QString& text);

} // namespace lobewright::ui
