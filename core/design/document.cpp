#include "core/design/document.h"

#include "core/files/classic_locale.h"
#include "core/printable.h"

#include <fmt/format.h>

#include <algorithm>

LW_TEXTS_OF(Core)

namespace lobewright::design {

namespace {

using nlohmann::json;

constexpr std::size_t deepest = 32;
constexpr std::size_t longestKey = 200; // bytes
/// A design with a hundred snapshots, each with all the knots and ports that are allowed, has half
/// a million.
constexpr std::size_t mostValues = 600'000;

/// Builds the tree from the parser's events and knows the path of the event at hand.
class TreeBuilder : public json::json_sax_t {
  public:
    TreeBuilder(std::string_view text, Document& document) : text_(text), document_(document) {}

    bool null() override { return put(nullptr) != nullptr; }
    bool boolean(bool value) override { return put(value) != nullptr; }
    bool number_integer(number_integer_t value) override { return put(value) != nullptr; }
    bool number_unsigned(number_unsigned_t value) override { return put(value) != nullptr; }
    bool number_float(number_float_t value, const string_t&) override {
        return put(value) != nullptr;
    }
    bool string(string_t& value) override { return put(std::move(value)) != nullptr; }
    bool binary(binary_t&) override { return false; }

    bool start_object(std::size_t) override { return open(json::object()); }
    bool start_array(std::size_t) override { return open(json::array()); }
    bool end_object() override { return close(); }
    bool end_array() override { return close(); }

    bool key(string_t& name) override {
        Level& level = levels_.back();
        level.key = name.substr(0, longestKey);
        level.expectsValue = true;
        if (name.size() > longestKey) {
            return refuse(Message(LW_TEXT("a key has %1 bytes; keys have at most %2"), name.size(),
                                  longestKey));
        }
        if (level.node->contains(name)) {
            return refuse(
                Message(LW_TEXT("\"%1\" is given twice; it must be given once"), excerpt(name)));
        }
        return true;
    }

    bool parse_error(std::size_t position, const std::string&,
                     const nlohmann::detail::exception& error) override {
        addProblem(document_.problems, {path(), reason(position, error)});
        return false;
    }

  private:
    struct Level {
        json* node = nullptr;
        std::string key;
        bool expectsValue = false;
    };

    /// Of the value that comes next; of the container where no value is due.
    std::string path() const {
        std::string text;
        for (const Level& level : levels_) {
            if (level.node->is_array()) {
                const bool isInnermost = &level == &levels_.back();
                text = pointer(text, std::to_string(level.node->size() - (isInnermost ? 0 : 1)));
            } else if (level.expectsValue) {
                text = pointer(text, level.key);
            }
        }
        return text;
    }

    /// False, so that the parser stops, where no more problems are told.
    bool refuse(Message message) {
        return addProblem(document_.problems, {path(), std::move(message)});
    }

    /// Where the value is now; nullptr, so that the parser stops, where there are too many.
    json* put(json value) {
        if (++values_ > mostValues) {
            refuse(Message(LW_TEXT("there are more than %1 values; no design needs that many"),
                           mostValues));
            return nullptr;
        }
        if (levels_.empty()) {
            document_.root = std::move(value);
            return &document_.root;
        }
        Level& level = levels_.back();
        if (level.node->is_array()) {
            level.node->push_back(std::move(value));
            return &level.node->back();
        }
        json& slot = (*level.node)[level.key];
        slot = std::move(value);
        // A container stays the value at this key until it closes.
        level.expectsValue = slot.is_structured();
        return &slot;
    }

    bool open(json container) {
        if (levels_.size() >= deepest) {
            refuse(Message(LW_TEXT("the nesting is deeper than %1 levels; no design needs that"),
                           deepest));
            return false;
        }
        json* node = put(std::move(container));
        if (node != nullptr) {
            levels_.push_back({node, {}, false});
        }
        return node != nullptr;
    }

    bool close() {
        levels_.pop_back();
        if (!levels_.empty()) {
            levels_.back().expectsValue = false;
        }
        return true;
    }

    Message reason(std::size_t position, const nlohmann::detail::exception& error) const {
        if (text_.find_first_not_of(" \t\r\n") == std::string_view::npos) {
            return LW_TEXT("the file is empty; it must hold a design");
        }
        const std::size_t last = std::min(position == 0 ? 0 : position - 1, text_.size());
        const std::string_view before = text_.substr(0, last);
        const auto line = std::count(before.begin(), before.end(), '\n') + 1;
        const std::size_t lineStart = before.rfind('\n') + 1; // npos + 1 = 0
        constexpr int outOfRange = 406;
        return Message(LW_TEXT("line %1, column %2: %3"), line, last - lineStart + 1,
                       error.id == outOfRange
                           ? Message(LW_TEXT("the number is too large; numbers must be finite"))
                           : syntaxReason(last));
    }

    Message syntaxReason(std::size_t last) const {
        if (last >= text_.size()) {
            return LW_TEXT("the text ends before the design is complete");
        }
        const std::size_t separator = text_.find_last_of(" \t\r\n,:[{", last);
        const std::size_t start = separator == std::string_view::npos || separator == last
                                      ? (separator == last ? last : 0)
                                      : separator + 1;
        std::string_view token = text_.substr(start);
        token = token.substr(0, std::min(token.find_first_of(" \t\r\n,]}"), std::size_t{40}));
        std::string lower(token);
        std::ranges::transform(lower, lower.begin(), [](unsigned char c) {
            return static_cast<char>(c >= 'A' && c <= 'Z' ? c + ('a' - 'A') : c);
        });
        const auto bare = lower.substr(std::min(lower.find_first_not_of("+-"), lower.size()));
        if (bare.starts_with("nan") || bare.starts_with("inf")) {
            return Message(LW_TEXT("%1 is not a number of JSON; numbers must be finite"),
                           excerpt(token));
        }
        return Message(LW_TEXT("not valid JSON near \"%1\""), excerpt(token));
    }

    std::string_view text_;
    Document& document_;
    std::vector<Level> levels_;
    std::size_t values_ = 0;
};

} // namespace

bool addProblem(Problems& problems, Problem problem) {
    if (problems.size() < mostProblems) {
        problems.push_back(std::move(problem));
    } else if (problems.size() == mostProblems) {
        problems.push_back({"", LW_TEXT("there are more problems than are listed here")});
    }
    return problems.size() <= mostProblems;
}

void addProblems(Problems& problems, const Problems& more) {
    for (const Problem& problem : more) {
        if (!addProblem(problems, problem)) {
            return;
        }
    }
}

namespace {

/// The parser repeats everything since its last token, each blank in eight letters, where it stops
/// at an error.
constexpr std::size_t mostBlanks = 100'000;

bool hasTooManyBlanks(std::string_view text) {
    std::size_t run = 0;
    for (const char c : text) {
        const bool isBlank = c == ' ' || c == '\n' || c == '\r' || c == '\t';
        run = isBlank ? run + 1 : 0;
        if (run > mostBlanks) {
            return true;
        }
    }
    return false;
}

} // namespace

Document parseDocument(std::string_view text) {
    Document document;
    if (hasTooManyBlanks(text)) {
        addProblem(document.problems,
                   {"", Message(LW_TEXT("there are more than %1 blanks in a row"), mostBlanks)});
        return document;
    }
    const files::ClassicLocale numbers; // the parser asks the C library
    TreeBuilder builder(text, document);
    json::sax_parse(text, &builder);
    return document;
}

std::string pointer(const std::string& parent, std::string_view part) {
    std::string text = parent + "/";
    for (const char c : part) {
        if (c == '~') {
            text += "~0";
        } else if (c == '/') {
            text += "~1";
        } else {
            text += c;
        }
    }
    return text;
}

std::string excerpt(std::string_view text) {
    constexpr std::size_t longest = 60;
    std::size_t end = 0;
    for (std::size_t i = 0; i < longest && end < text.size(); ++i) {
        end += firstCharacter(text.substr(end)).bytes;
    }
    return printable(text.substr(0, end)) + (end < text.size() ? "..." : "");
}

} // namespace lobewright::design
