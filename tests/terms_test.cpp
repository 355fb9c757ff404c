// Every text that people read, in both languages, keeps to the terms of resources/terms.json.

#include "tests/places.h"
#include "tests/texts.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <cctype>
#include <filesystem>
#include <fstream>
#include <set>
#include <sstream>
#include <string>
#include <vector>

namespace {

namespace fs = std::filesystem;
using lobewright::test::everyText;
using lobewright::test::read;
using lobewright::test::screenTexts;
using lobewright::test::Text;
using nlohmann::json;

const fs::path resources = fs::path(lobewright::test::sourceFolder()) / "resources";

std::string small(std::string text) {
    std::ranges::transform(text, text.begin(), [](unsigned char c) { return std::tolower(c); });
    return text;
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

std::vector<std::string> breaches(const std::vector<Text>& texts, const json& list,
                                  const std::string& language) {
    std::vector<std::string> found;
    for (const json& term : list) {
        const auto tell = [&](const Text& text, const std::string& phrase) {
            found.push_back(text.place + ": \"" + text.words + "\" says \"" + phrase + "\" for " +
                            term[language].get<std::string>());
        };
        for (const std::string& phrase : listOf(term, "never", language)) {
            for (const Text& text : texts) {
                if (holds(small(text.words), small(phrase))) {
                    tell(text, phrase);
                }
            }
        }
        for (const std::string& label : listOf(term, "never_label", language)) {
            for (const Text& text : texts) {
                if (text.words == label) {
                    tell(text, label);
                }
            }
        }
    }
    return found;
}

TEST_P(Terms, NoTextHoldsAPhraseThatTheListReplaces) {
    const std::vector<Text> texts = everyText(lobewright::test::sourceFolder(), GetParam());
    ASSERT_GT(texts.size(), 4500U);
    EXPECT_EQ(breaches(texts, terms(), GetParam()), std::vector<std::string>());
}

// Counted another way: nothing of the translations is passed over.
TEST_P(Terms, EveryMessageOfTheTranslationsIsRead) {
    const fs::path file = resources / "translations" / "lobewright_de.ts";
    std::size_t messages = 0;
    std::istringstream lines(read(file));
    for (std::string line; std::getline(lines, line);) {
        messages += line.find("</message>") != std::string::npos ? 1U : 0U;
    }
    EXPECT_EQ(screenTexts(file, GetParam() == "en" ? "source" : "translation").size(), messages);
}

// A phrase of the list planted anywhere is found: in a plain text, a plural form, across a line
// break, on a page, in the glossary and in a sample.
TEST_P(Terms, APlantedPhraseIsFound) {
    const std::string& language = GetParam();
    const std::string phrase = language == "en" ? "contact angle" : "Eingriffswinkel";
    const std::string wrapped = language == "en" ? "contact\nangle" : "der\nEingriffswinkel";
    const fs::path root = fs::path(testing::TempDir()) / ("planted-" + language);
    const auto put = [&](const fs::path& file, const std::string& text) {
        fs::create_directories((root / file).parent_path());
        std::ofstream(root / file) << text;
    };
    const auto message = [](const std::string& english, const std::string& german) {
        return "<message><source>" + english + "</source><translation>" + german +
               "</translation></message>\n";
    };
    put("resources/translations/lobewright_de.ts",
        message("The " + phrase + " is", "Der " + phrase + " ist") +
            message("%n " + phrase + "(s)",
                    "<numerusform>ein " + phrase + "</numerusform><numerusform>x</numerusform>") +
            message("a " + wrapped + ".", "Hier " + wrapped + ".") + message("`clean`", "sauber"));
    const std::string help = language == "en" ? "resources/help/" : "resources/help/de/";
    put("resources/help/de/empty.md", "");
    put(help + "page.md", "# Page\n\nOf the " + wrapped + " and\nmore; `" + phrase +
                              "` is a key.\n\n| a | " + phrase + " |\n");
    put("resources/terms.json", "{\"terms\": [{\"en\": \"a\", \"de\": \"b\", \"definition\": "
                                "{\"en\": \"" +
                                    phrase + "\", \"de\": \"" + phrase + "\"}}]}");
    put("resources/track_materials.json", "{}");
    put("resources/changelog.md", "");
    put("README.md", "");
    put("samples/claims/one.json", "{\"notes\": [\"the " + phrase + "\"]}");
    const auto found = breaches(everyText(root, language), terms(), language);
    EXPECT_EQ(found.size(), language == "en" ? 6U : 5U);
    fs::remove_all(root);
}

INSTANTIATE_TEST_SUITE_P(Languages, Terms, testing::Values("en", "de"),
                         [](const auto& instance) { return instance.param; });
