#include "tests/texts.h"

#include <nlohmann/json.hpp>

#include <fstream>
#include <regex>
#include <sstream>

namespace lobewright::test {

namespace fs = std::filesystem;
using nlohmann::json;

std::string read(const fs::path& file) {
    std::ifstream in(file);
    std::stringstream text;
    text << in.rdbuf();
    return text.str();
}

namespace {

std::string unescaped(std::string text) {
    const std::pair<const char*, const char*> entities[] = {
        {"&lt;", "<"}, {"&gt;", ">"}, {"&quot;", "\""}, {"&apos;", "'"}, {"&amp;", "&"}};
    for (const auto& [entity, character] : entities) {
        for (std::size_t at; (at = text.find(entity)) != std::string::npos;) {
            text.replace(at, std::string(entity).size(), character);
        }
    }
    return text;
}

/// Without line breaks, which wrapping puts anywhere, and without the marks of plural forms.
std::string inOneLine(std::string text) {
    static const std::regex mark("<[^>]*>"), blanks("\\s+");
    text = std::regex_replace(text, mark, " ");
    return std::regex_replace(text, blanks, " ");
}

/// A page paragraph by paragraph, without names of keys and files.
std::vector<Text> pageTexts(const fs::path& file) {
    std::vector<Text> texts;
    const std::regex code("`[^`]*`");
    std::ifstream in(file);
    std::string paragraph;
    int number = 0, first = 1;
    bool isCode = false;
    const auto close = [&] {
        if (!paragraph.empty()) {
            texts.push_back({file.filename().string() + ":" + std::to_string(first),
                             std::regex_replace(inOneLine(paragraph), code, "")});
        }
        paragraph.clear();
    };
    for (std::string line; std::getline(in, line);) {
        ++number;
        if (line.starts_with("```")) {
            isCode = !isCode;
        } else if (line.empty() || line.front() == '|' || line.starts_with("- ") || isCode) {
            close();
        }
        if (paragraph.empty()) {
            first = number;
        }
        if (!isCode) {
            paragraph += line + ' ';
        }
    }
    close();
    return texts;
}

std::vector<Text> helpTexts(const fs::path& folder) {
    std::vector<Text> texts;
    for (const auto& entry : fs::directory_iterator(folder)) {
        if (entry.path().extension() == ".md") {
            const auto page = pageTexts(entry.path());
            texts.insert(texts.end(), page.begin(), page.end());
        }
    }
    return texts;
}

/// Every text of a JSON file with its place; of an object with both languages that of one.
void gather(const json& value, const std::string& place, const std::string& language,
            std::vector<Text>& texts) {
    if (value.is_string()) {
        texts.push_back({place, value.get<std::string>()});
    } else if (value.is_object() && value.contains("en") && value.contains("de")) {
        gather(value[language], place, language, texts);
    } else if (value.is_structured()) {
        for (const auto& [key, member] : value.items()) {
            if (key != "never" && key != "never_label") {
                gather(member, std::string(place).append("/").append(key), language, texts);
            }
        }
    }
}

} // namespace

std::vector<Text> screenTexts(const fs::path& translations, const std::string& element) {
    std::vector<Text> texts;
    const std::string file = read(translations);
    const std::string open = "<" + element, close = "</" + element + ">";
    for (std::size_t at = file.find(open); at != std::string::npos; at = file.find(open, at)) {
        const std::size_t begin = file.find('>', at) + 1;
        const std::size_t end = file.find(close, begin);
        texts.push_back({element, unescaped(inOneLine(file.substr(begin, end - begin)))});
        at = end;
    }
    return texts;
}

std::vector<Text> everyText(const fs::path& root, const std::string& language) {
    const bool english = language == "en";
    const fs::path shared = root / "resources";
    std::vector<Text> texts = screenTexts(shared / "translations" / "lobewright_de.ts",
                                          english ? "source" : "translation");
    const auto add = [&](const std::vector<Text>& more) {
        texts.insert(texts.end(), more.begin(), more.end());
    };
    add(helpTexts(english ? shared / "help" : shared / "help" / "de"));
    std::vector<Text> values;
    gather(json::parse(read(shared / "terms.json")), "terms.json", language, values);
    if (english) {
        add(pageTexts(root / "README.md"));
        add(pageTexts(shared / "changelog.md"));
        gather(json::parse(read(shared / "track_materials.json")), "track_materials.json", language,
               values);
        for (const auto& entry : fs::recursive_directory_iterator(root / "samples")) {
            if (entry.path().extension() == ".json") {
                gather(json::parse(read(entry.path())), entry.path().filename().string(), language,
                       values);
            }
        }
    }
    add(values);
    return texts;
}

} // namespace lobewright::test
