// Every text that people read, in both languages, keeps to the terms of resources/terms.json.

#include "tests/places.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <cctype>
#include <filesystem>
#include <fstream>
#include <regex>
#include <set>
#include <sstream>
#include <string>
#include <vector>

namespace {

namespace fs = std::filesystem;
using nlohmann::json;

const fs::path resources = fs::path(lobewright::test::sourceFolder()) / "resources";

std::string read(const fs::path& file) {
    std::ifstream in(file);
    std::stringstream text;
    text << in.rdbuf();
    return text.str();
}

std::string small(std::string text) {
    std::ranges::transform(text, text.begin(), [](unsigned char c) { return std::tolower(c); });
    return text;
}

/// A text on screen and where it stands.
struct Text {
    std::string place, words;
};

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

/// What lupdate collected: sources are English, translations German.
std::vector<Text> screenTexts(const std::string& element) {
    std::vector<Text> texts;
    const std::string file = read(resources / "translations" / "lobewright_de.ts");
    const std::string open = "<" + element, close = "</" + element + ">";
    for (std::size_t at = file.find(open); at != std::string::npos; at = file.find(open, at)) {
        const std::size_t begin = file.find('>', at) + 1;
        const std::size_t end = file.find(close, begin);
        texts.push_back({element, unescaped(file.substr(begin, end - begin))});
        at = end;
    }
    return texts;
}

/// Help pages line by line, without names of keys and files.
std::vector<Text> helpTexts(const fs::path& folder) {
    std::vector<Text> texts;
    const std::regex code("`[^`]*`");
    for (const auto& entry : fs::directory_iterator(folder)) {
        if (entry.path().extension() != ".md") {
            continue;
        }
        std::ifstream in(entry.path());
        std::string line;
        for (int number = 1; std::getline(in, line); ++number) {
            texts.push_back({entry.path().filename().string() + ":" + std::to_string(number),
                             std::regex_replace(line, code, "")});
        }
    }
    return texts;
}

std::vector<Text> everyText(const std::string& language) {
    const bool english = language == "en";
    std::vector<Text> texts = screenTexts(english ? "source" : "translation");
    const auto help = helpTexts(english ? resources / "help" : resources / "help" / "de");
    texts.insert(texts.end(), help.begin(), help.end());
    return texts;
}

/// Whether a phrase stands in a text as words of its own, whatever their case.
bool holds(const std::string& text, const std::string& phrase) {
    const auto partOfWord = [](char c) {
        return std::isalpha(static_cast<unsigned char>(c)) || static_cast<unsigned char>(c) >= 0x80;
    };
    for (std::size_t at = text.find(phrase); at != std::string::npos;
         at = text.find(phrase, at + 1)) {
        const std::size_t end = at + phrase.size();
        if ((at == 0 || !partOfWord(text[at - 1])) &&
            (end == text.size() || !partOfWord(text[end]))) {
            return true;
        }
    }
    return false;
}

std::vector<std::string> listOf(const json& term, const char* list, const std::string& language) {
    if (!term.contains(list) || !term[list].contains(language)) {
        return {};
    }
    return term[list][language].get<std::vector<std::string>>();
}

json terms() {
    return json::parse(read(resources / "terms.json"))["terms"];
}

class Terms : public testing::TestWithParam<std::string> {};

} // namespace

TEST(TermsList, EveryTermHasBothLanguagesAndADefinitionAndStandsOnce) {
    std::set<std::pair<std::string, std::string>> words;
    for (const json& term : terms()) {
        for (const char* language : {"en", "de"}) {
            ASSERT_FALSE(term[language].get<std::string>().empty()) << term;
            EXPECT_TRUE(words.insert({language, term[language].get<std::string>()}).second)
                << term[language];
            EXPECT_GT(term["definition"][language].get<std::string>().size(), 15U) << term;
        }
    }
    EXPECT_GT(words.size(), 80U);
}

TEST_P(Terms, NoTextHoldsAPhraseThatTheListReplaces) {
    const std::vector<Text> texts = everyText(GetParam());
    ASSERT_GT(texts.size(), 1000U);
    for (const json& term : terms()) {
        for (const std::string& phrase : listOf(term, "never", GetParam())) {
            for (const Text& text : texts) {
                EXPECT_FALSE(holds(small(text.words), small(phrase)))
                    << text.place << ": \"" << text.words << "\" says \"" << phrase << "\" for "
                    << term[GetParam()];
            }
        }
        for (const std::string& label : listOf(term, "never_label", GetParam())) {
            for (const Text& text : texts) {
                EXPECT_NE(text.words, label) << text.place << ": say " << term[GetParam()];
            }
        }
    }
}

INSTANTIATE_TEST_SUITE_P(Languages, Terms, testing::Values("en", "de"),
                         [](const auto& instance) { return instance.param; });
