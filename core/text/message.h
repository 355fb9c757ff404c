#pragma once

#include "core/ends.h"
#include "core/units/unit.h"

#include <string>
#include <string_view>
#include <type_traits>
#include <variant>
#include <vector>

/// What the core says to people: a text of the sources with typed values for its places, so that
/// every reader can have it in another language and in other units.
namespace lobewright {

// Qt Linguist's extractor reads LW_TEXT as tr() and this as Q_DECLARE_TR_FUNCTIONS (options of
// resources/translations/refresh): every text of the core has the context "Core".
#define LW_TEXTS_OF(context)
LW_TEXTS_OF(Core)

/// A text of the sources; %1 … %9 stand for its arguments.
struct TextId {
    const char* text = "";
    constexpr bool empty() const { return *text == '\0'; }
    bool operator==(const TextId& other) const {
        return std::string_view(text) == std::string_view(other.text);
    }
};
/// Takes one literal; the only way to make a text that people read.
#define LW_TEXT(literal) (::lobewright::TextId{"" literal})

/// A value with its unit, as precise as it is meant to be read.
struct Amount {
    enum class Digits { significant, decimals };

    constexpr Amount(double si, const Unit& shownIn, int many = 4, Digits as = Digits::significant)
        : value(si), unit(&shownIn), digits(many), kind(as) {}
    Amount(double si, const Unit&& shownIn, int many = 4, Digits as = Digits::significant) = delete;

    double value;     ///< SI
    const Unit* unit; ///< of the table; that which a metric reader sees
    int digits;       ///< significant ones, or decimals in that unit
    Digits kind;
    bool isBare = false;

    double shown() const; ///< in its unit
    /// Without the word of its unit, which a neighbour tells: the 5 of "5 to 8 mm".
    Amount bare() const;
    bool operator==(const Amount&) const = default;
};
/// The same for a value that stands in its unit already.
Amount amountIn(const Unit& unit, double value, int digits = 4);
/// With so many decimals in its unit.
Amount withDecimals(double si, const Unit& unit, int decimals);
/// A pure number.
Amount number(double value, int digits = 4);
/// A number as somebody typed it: the shortest text that means this double.
Amount asTyped(double value, const Unit& unit = in::pure);

struct Message;
/// A std::string is the user's own, a name of a file or of a key, or a formula: never translated.
using Argument = std::variant<Amount, long, TextId, std::string, std::vector<Message>>;

struct Message {
    TextId text{};
    std::vector<Argument> arguments{};

    Message() = default;
    Message(TextId id) : text(id) {} // NOLINT: a text is a message
    template <class First, class... Rest>
    Message(TextId id, First&& first, Rest&&... rest) : text(id) {
        arguments.reserve(1 + sizeof...(Rest));
        add(std::forward<First>(first));
        (add(std::forward<Rest>(rest)), ...);
    }
    /// Words that no table knows, e.g. those of the operating system.
    Message(std::string words);                                      // NOLINT: see above
    Message(const char* words);                                      // NOLINT
    Message(std::string_view words) : Message(std::string(words)) {} // NOLINT

    bool empty() const { return text.empty(); }
    /// In plain English and metric units: for the batch program, files and logs.
    std::string english() const;

  private:
    void add(const Amount& amount) { arguments.emplace_back(amount); }
    void add(TextId id) { arguments.emplace_back(id); }
    template <class Whole, std::enable_if_t<std::is_integral_v<Whole>, int> = 0>
    void add(Whole whole) {
        arguments.emplace_back(static_cast<long>(whole));
    }
    void add(std::string words) { arguments.emplace_back(std::move(words)); }
    void add(std::string_view words) { arguments.emplace_back(std::string(words)); }
    void add(const char*) = delete; ///< a text of the sources is a TextId
    void add(Message message);
};
bool operator==(const Message& a, const Message& b);

/// "inlet", "exhaust".
TextId word(End end);
/// "Stroke, inlet side".
Message ofSide(const Message& what, End end);
/// "a; b"; either may be empty.
Message joined(const Message& first, const Message& second);

/// Puts messages into words. This one knows plain English and metric units; others tell other words
/// for a text and for an amount.
class MessageReader {
  public:
    virtual ~MessageReader() = default;
    std::string read(const Message& message) const;
    /// "12.5 mm", "35°".
    virtual std::string amount(const Amount& amount) const;

  protected:
    virtual std::string text(TextId id) const { return id.text; }
    std::string read(const Argument& argument) const;
};

/// "4.5" with the digits of the amount, of a value in the unit shown.
std::string digitsOf(const Amount& amount, double shown);
/// "4.5 mm", "4.5°", "4.5".
std::string withUnit(const std::string& number, std::string_view unit);

} // namespace lobewright
