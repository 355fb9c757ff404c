// What the core says must be readable in any language and any system of units: here in a language
// that has none of our letters, with units that nobody has. A letter that is left over is a text
// that was put together outside the messages, or a unit that stands in a text.
#include "core/claims/claims_file.h"
#include "core/claims/verdict.h"
#include "core/design/fields.h"
#include "core/editing/design_edits.h"
#include "core/editing/lift_grips.h"
#include "core/solution/workings/working.h"
#include "core/study/beyond_limits.h"
#include "core/study/speed_sweep.h"
#include "tests/design/bad_designs.h"
#include "tests/design/sample.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <regex>
#include <set>
#include <sstream>

namespace lobewright {
namespace {

namespace fs = std::filesystem;

/// Every letter of a text is a sign of its own; places stay. Lengths are in furlongs, and what is
/// no length in sevenths of something else.
class Invented : public MessageReader {
  public:
    std::string amount(const Amount& amount) const override {
        const bool isLength = amount.unit == &in::mm || amount.unit == &in::m;
        const double shown = isLength ? amount.value / 201.168 : 7.0 * amount.shown();
        const bool isPlain = amount.isBare || amount.unit->symbol.empty();
        return digitsOf(amount, shown) + (isPlain ? "" : isLength ? " ƒ" : " ж");
    }

  protected:
    std::string text(TextId id) const override {
        std::string signs;
        for (const char letter : std::string_view(id.text)) {
            const bool isLetter =
                (letter >= 'a' && letter <= 'z') || (letter >= 'A' && letter <= 'Z');
            signs += isLetter ? "ŋ" : std::string(1, letter);
        }
        return signs;
    }
};

/// What is the user's own: names of files and keys, formulas, words of a library.
void addOwnWords(const Message& message, std::vector<std::string>& words) {
    for (const Argument& argument : message.arguments) {
        if (const auto* own = std::get_if<std::string>(&argument)) {
            words.push_back(*own);
        } else if (const auto* inner = std::get_if<std::vector<Message>>(&argument)) {
            for (const Message& each : *inner) {
                addOwnWords(each, words);
            }
        }
    }
}

class EveryMessage : public testing::Test {
  protected:
    /// `input`: whatever the user wrote; its words may come back.
    void look(const Message& message, const std::string& where) {
        if (message.empty()) {
            return;
        }
        seen_.insert(message.text.text);
        std::vector<std::string> own;
        addOwnWords(message, own);
        std::string read = Invented().read(message);
        for (const std::string& words : own) {
            // Two plain words in a row are a sentence of ours, unless the user wrote them.
            static const std::regex sentence("[a-z]{3,} [a-z]{3,}");
            if (std::regex_search(words, sentence) && input_.find(words) == std::string::npos &&
                library_.find(words.substr(0, 6)) == std::string::npos) {
                ADD_FAILURE() << where << ": \"" << words << "\" is no text of the sources";
            }
            if (const auto at = read.find(words); !words.empty() && at != std::string::npos) {
                read.erase(at, words.size());
            }
        }
        static const std::regex number("[0-9.]+e[+-]?[0-9]+|-?inf|nan"), place("%[1-9]"),
            letter("[A-Za-z]");
        read = std::regex_replace(read, number, "0");
        EXPECT_FALSE(std::regex_search(read, letter)) << where << ": " << message.english() << "\n"
                                                      << read;
        EXPECT_FALSE(std::regex_search(read, place)) << where << ": a place is empty: " << read;
    }
    void look(const Problems& problems) {
        for (const Problem& problem : problems) {
            look(problem.message, "problem at " + problem.path);
        }
    }
    void look(const solution::Solution& solved) {
        for (const auto& check : solved.checks) {
            look(check.message, "check " + check.id);
        }
        for (const auto& channel : solved.channels) {
            look(channel.label, channel.name);
        }
        for (const auto& figure : solved.figures) {
            look(figure.label, figure.name);
            look(figure.note, figure.name);
            if (const auto working = solution::working(solved, figure.name)) {
                look(working->source, "working of " + figure.name);
                look(working->note, "working of " + figure.name);
                for (const auto& operand : working->operands) {
                    look(operand.label, "operand " + operand.symbol + " of " + figure.name);
                    look(operand.note, "operand " + operand.symbol + " of " + figure.name);
                }
            }
        }
    }
    void look(const study::Finding& finding) {
        for (const Message* each : {&finding.quantity, &finding.formula, &finding.substituted,
                                    &finding.band, &finding.source, &finding.note}) {
            look(*each, "finding " + finding.id);
        }
        for (const auto& reading : finding.readings) {
            look(reading.what, "finding " + finding.id);
        }
    }
    void look(const study::VerdictPage& page) {
        for (const auto& finding : page.report.findings) {
            look(finding);
        }
        for (const Message& assumption : page.report.assumptions) {
            look(assumption, "assumption");
        }
        for (const auto& conflict : page.report.conflicts) {
            look(conflict.message, "conflict");
            look(conflict.arithmetic, "conflict");
        }
        for (const auto& row : page.report.statements) {
            for (const Message* each : {&row.computed, &row.arithmetic, &row.overturnedBy}) {
                look(*each, "statement");
            }
        }
        for (const auto& row : page.rows) {
            look(row.what, row.id);
            look(row.overturnedBy, row.id);
            for (const auto* cell : {&row.published, &row.arithmetic, &row.design, &row.band}) {
                look(cell->text, row.id);
                look(cell->why, row.id);
            }
        }
        look(page.designNote, "note on the design");
    }

    std::string input_;
    const std::string library_ = "[json.parse error syntax error unexpected";
    std::set<std::string> seen_; ///< texts that were read
};

/// The design with every limit so tight that it is passed.
design::Design tightened(design::Design design) {
    design::Limits& limits = design.limits;
    limits.pressureAngle = {1e-3, 1e-3};
    limits.meanPistonSpeed = {1e-3, 1e-3};
    limits.peakPressure = {1.0, 1.0};
    limits.filmRatio = limits.contactSafety = {100.0, 100.0};
    limits.rollerLife = {3.6e12, 3.6e12};
    limits.guideBracket = {1.0, 1.0};
    limits.knockIntegral = {1e-6, 1e-6};
    return design;
}

TEST_F(EveryMessage, OfASolvedSampleIsReadInAnInventedLanguageAndUnits) {
    SilentMonitor monitor;
    for (const auto& entry : fs::directory_iterator(fs::path(test::sourceFolder()) / "samples")) {
        if (!entry.path().string().ends_with(".lobewright.json")) {
            continue;
        }
        std::stringstream text;
        text << std::ifstream(entry.path()).rdbuf();
        input_ = text.str();
        const auto design = design::readDesign(input_);
        ASSERT_TRUE(design) << entry.path();
        for (const design::Field& field : design::fieldsOfAllKinds(*design)) {
            look(field.groupLabel, field.path);
            look(field.label, field.path);
            look(field.help, field.path);
        }
        for (const design::Design& each : {*design, tightened(*design)}) {
            const auto solved = solution::solve(each, monitor);
            ASSERT_TRUE(solved) << entry.path();
            look(*solved);
            look(study::beyondLimits(*solved), "point of a study");
        }
    }
    EXPECT_GT(seen_.size(), 500u);
}

TEST_F(EveryMessage, OfABrokenDesignIsReadInAnInventedLanguageAndUnits) {
    for (const auto& bad : design::testing::badDesigns()) {
        input_ = bad.text;
        const auto read = design::readDesign(bad.text);
        if (!read) {
            look(read.problems());
        }
    }
    EXPECT_GT(seen_.size(), 30u);
}

TEST_F(EveryMessage, OfPublishedFiguresIsReadInAnInventedLanguageAndUnits) {
    const fs::path file =
        fs::path(test::sourceFolder()) / "samples" / "claims" / "irrigation-set.claims.json";
    std::stringstream text;
    text << std::ifstream(file).rdbuf();
    input_ = text.str();
    const auto claims = study::readClaims(input_);
    ASSERT_TRUE(claims);
    look(study::verdictPage(*claims));
    SilentMonitor monitor;
    const auto solved = solution::solve(design::testing::sample(), monitor);
    ASSERT_TRUE(solved);
    look(study::verdictPage(*claims, &*solved));
    for (const char* broken : {R"({"format": "lobewright-claims"})",
                               R"({"format": "lobewright-claims", "format_version": 1,
                                   "engine": {"cycel": "two-stroke"},
                                   "figures": {"power": "48 leagues", "torque": 12}})",
                               R"({"format": "lobewright-claims", "format_version": 1,
                                   "engine": {"cycle": "six-stroke", "chambers": -3}})"}) {
        input_ = broken;
        const auto read = study::readClaims(broken);
        ASSERT_FALSE(read) << broken;
        look(read.problems());
    }
}

TEST_F(EveryMessage, OfAnEditIsReadInAnInventedLanguageAndUnits) {
    const design::Design design = design::testing::sample();
    for (const char* list : {"/tracks/inlet/segments", "/ports/inlet", "/friction/rings"}) {
        for (const auto change : {editing::RowChange::split, editing::RowChange::addDwell,
                                  editing::RowChange::addBelow, editing::RowChange::remove,
                                  editing::RowChange::moveUp, editing::RowChange::moveDown}) {
            if (const auto edit = editing::rowEdit(design, list, 1, change)) {
                look(edit->text, list);
            }
        }
    }
    for (const auto shape : {editing::TrackShape::knots, editing::TrackShape::harmonics}) {
        const auto edit = editing::shapeEdit(design, End::inlet, shape);
        ASSERT_TRUE(edit);
        look(edit->text, "shape");
        for (const auto& grip : editing::liftGrips(*edit->replacement, End::inlet)) {
            look(grip.label, grip.anglePath);
            look(editing::moveGrip(*edit->replacement, grip, grip.angle, grip.value).text,
                 grip.anglePath);
        }
    }
    EXPECT_GT(seen_.size(), 8u);
}

} // namespace
} // namespace lobewright
