#include "core/text/message.h"

#include <fmt/format.h>

#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright {

namespace {

constexpr TextId asItIs{"%1"};
constexpr int shortest = 0; ///< digits of a number as somebody typed it

} // namespace

double Amount::shown() const {
    return digits == shortest ? fromSi(*unit, value) : value * unit->divisor / unit->factor;
}

Amount Amount::bare() const {
    Amount same = *this;
    same.isBare = true;
    return same;
}

Amount amountIn(const Unit& unit, double value, int digits) {
    return {toSi(unit, value), unit, digits};
}

Amount withDecimals(double si, const Unit& unit, int decimals) {
    return {si, unit, decimals, Amount::Digits::decimals};
}

Amount number(double value, int digits) {
    return {value, in::pure, digits};
}

Amount asTyped(double value, const Unit& unit) {
    return {toSi(unit, value), unit, shortest};
}

Message::Message(std::string words) {
    if (!words.empty()) {
        text = asItIs;
        add(std::move(words));
    }
}

Message::Message(const char* words) : Message(std::string(words)) {}

std::string Message::english() const {
    return MessageReader().read(*this);
}

void Message::add(Message message) {
    arguments.emplace_back(std::vector<Message>{std::move(message)});
}

bool operator==(const Message& a, const Message& b) {
    return a.text == b.text && a.arguments == b.arguments;
}

TextId word(End end) {
    return end == End::inlet ? LW_TEXT("inlet") : LW_TEXT("exhaust");
}

Message ofSide(const Message& what, End end) {
    return {end == End::inlet ? LW_TEXT("%1, inlet side") : LW_TEXT("%1, exhaust side"), what};
}

Message joined(const Message& first, const Message& second) {
    if (first.empty() || second.empty()) {
        return first.empty() ? second : first;
    }
    return {LW_TEXT("%1; %2"), first, second};
}

std::string digitsOf(const Amount& amount, double shown) {
    if (amount.kind == Amount::Digits::decimals) {
        return fmt::format("{:.{}f}", shown, amount.digits);
    }
    // What arithmetic leaves of nothing is nothing: 2.3e-13 N·m.
    constexpr double noise = 1e-9;
    const bool hasUnit = !amount.unit->symbol.empty();
    if (amount.digits != shortest && hasUnit && std::abs(shown) < noise) {
        return "0";
    }
    return amount.digits == shortest ? fmt::format("{}", shown)
                                     : fmt::format("{:.{}g}", shown, amount.digits);
}

std::string withUnit(const std::string& number, std::string_view unit) {
    return fmt::format("{}{}{}", number, unit.empty() || unit == "°" ? "" : " ", unit);
}

std::string MessageReader::amount(const Amount& amount) const {
    return withUnit(digitsOf(amount, amount.shown()), amount.isBare ? "" : amount.unit->symbol);
}

std::string MessageReader::read(const Argument& argument) const {
    struct {
        const MessageReader& reader;
        std::string operator()(const Amount& amount) const { return reader.amount(amount); }
        std::string operator()(long whole) const { return std::to_string(whole); }
        std::string operator()(TextId id) const { return reader.text(id); }
        std::string operator()(const std::string& words) const { return words; }
        std::string operator()(const std::vector<Message>& nested) const {
            return reader.read(nested.front());
        }
    } const spoken{*this};
    return std::visit(spoken, argument);
}

std::string MessageReader::read(const Message& message) const {
    // In one pass: arguments may hold what looks like a place.
    const std::string format = text(message.text);
    std::string result;
    for (std::size_t i = 0; i < format.size(); ++i) {
        const bool isPlace = format[i] == '%' && i + 1 < format.size() && format[i + 1] >= '1' &&
                             format[i + 1] <= '9';
        const auto argument = isPlace ? static_cast<std::size_t>(format[i + 1] - '1') : 0;
        if (isPlace && argument < message.arguments.size()) {
            result += read(message.arguments[argument]);
            ++i;
        } else {
            result += format[i];
        }
    }
    return result;
}

} // namespace lobewright
