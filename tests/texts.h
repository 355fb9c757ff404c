#pragma once

#include <filesystem>
#include <string>
#include <vector>

/// What people read, for tests of the words.
namespace lobewright::test {

/// A text and where it stands.
struct Text {
    std::string place, words;
};

std::string read(const std::filesystem::path& file);

/// What lupdate collected in a file: element "source" English, "translation" German.
std::vector<Text> screenTexts(const std::filesystem::path& translations,
                              const std::string& element);

/// What people read in a language ("en", "de") below a source folder: screens and messages, help,
/// the glossary; in English also the pages beside the program, samples and materials.
std::vector<Text> everyText(const std::filesystem::path& root, const std::string& language);

} // namespace lobewright::test
