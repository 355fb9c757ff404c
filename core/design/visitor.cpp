#include "core/design/catalogue.h"
#include "core/design/document.h"
#include "core/printable.h"

#include <fmt/format.h>

#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::design {

Message Range::describe(const Unit& unit) const {
    const Amount from = asTyped(min, unit).bare(), to = asTyped(max, unit);
    if (minExcluded) {
        return maxExcluded ? Message(LW_TEXT("> %1 and < %2"), from, to)
                           : Message(LW_TEXT("> %1 and ≤ %2"), from, to);
    }
    return maxExcluded ? Message(LW_TEXT("≥ %1 and < %2"), from, to)
                       : Message(LW_TEXT("≥ %1 and ≤ %2"), from, to);
}

bool Range::contains(double value) const {
    return (minExcluded ? value > min : value >= min) && (maxExcluded ? value < max : value <= max);
}

Message Condition::describe() const {
    if (words.empty()) {
        return Message(LW_TEXT("\"%1\" is given"), key);
    }
    std::string text = fmt::format("\"{}\"", words.front());
    for (std::size_t i = 1; i < words.size(); ++i) {
        text += fmt::format(", \"{}\"", words[i]);
    }
    return words.size() == 1 ? Message(LW_TEXT("\"%1\" is %2"), key, text)
                             : Message(LW_TEXT("\"%1\" is one of %2"), key, text);
}

namespace {

std::string inQuotes(std::string_view text) {
    constexpr std::size_t longest = 60;
    if (text.size() <= longest) {
        return fmt::format("\"{}\"", printable(text));
    }
    std::size_t cut = longest;
    while (cut > 0 && (static_cast<unsigned char>(text[cut]) & 0xC0U) == 0x80U) {
        --cut; // never inside a character
    }
    return fmt::format("\"{}…\"", printable(text.substr(0, cut)));
}

std::string show(const FieldValue& value) {
    struct {
        std::string operator()(double number) const { return fmt::format("{}", number); }
        std::string operator()(int number) const { return fmt::format("{}", number); }
        std::string operator()(bool flag) const { return flag ? "true" : "false"; }
        std::string operator()(const std::string& text) const { return inQuotes(text); }
        std::string operator()(std::monostate) const { return "null"; }
    } const text;
    return std::visit(text, value);
}

std::string listed(std::span<const Word> words) {
    std::string text;
    for (const Word& word : words) {
        text += fmt::format("{}\"{}\"", text.empty() ? "" : ", ", word.key);
    }
    return text;
}

Message expectation(const Scalar& scalar) {
    Message text;
    switch (scalar.kind) {
    case FieldKind::number:
        text = LW_TEXT("a number");
        break;
    case FieldKind::integer:
        text = LW_TEXT("a whole number");
        break;
    case FieldKind::boolean:
        text = LW_TEXT("true or false");
        break;
    case FieldKind::choice:
        text = Message(LW_TEXT("one of %1"), listed(scalar.words));
        break;
    case FieldKind::text:
        text = LW_TEXT("a text");
        break;
    }
    if (scalar.kind == FieldKind::number && !scalar.words.empty()) {
        text = Message(LW_TEXT("a number or %1"), listed(scalar.words));
    }
    return scalar.nullable ? Message(LW_TEXT("%1 or null"), text) : text;
}

Problem broken(const Scalar& scalar, const FieldValue& value) {
    return {"", Message(LW_TEXT("%1 is %2; it must be %3"), scalar.key.label, show(value),
                        expectation(scalar))};
}

bool isWord(std::span<const Word> words, std::string_view text) {
    for (const Word& word : words) {
        if (word.key == text) {
            return true;
        }
    }
    return false;
}

Result<FieldValue> admitNumber(const Scalar& scalar, double value) {
    const Key& key = scalar.key;
    if (!std::isfinite(value) || !key.range.contains(value)) {
        return Problem{"", Message(LW_TEXT("%1 is %2; it must be %3"), key.label,
                                   asTyped(value, key.unit), key.range.describe(key.unit))};
    }
    return FieldValue{value};
}

Result<FieldValue> admitInteger(const Scalar& scalar, const FieldValue& value) {
    const double number =
        std::holds_alternative<int>(value) ? std::get<int>(value) : std::get<double>(value);
    if (std::trunc(number) != number) {
        return broken(scalar, value);
    }
    auto admitted = admitNumber(scalar, number);
    return admitted ? Result<FieldValue>(FieldValue{static_cast<int>(number)}) : admitted;
}

Result<FieldValue> admitText(const Scalar& scalar, const std::string& text) {
    if (scalar.kind != FieldKind::text && !isWord(scalar.words, text)) {
        return broken(scalar, text);
    }
    const std::size_t length = characterCount(text); // as a JSON Schema counts
    if (scalar.kind == FieldKind::text && static_cast<double>(length) > scalar.key.range.max) {
        return Problem{"", Message(LW_TEXT("%1 has %2 characters; it must have at most %3"),
                                   scalar.key.label, length, asTyped(scalar.key.range.max))};
    }
    return FieldValue{text};
}

} // namespace

Result<FieldValue> admit(const Scalar& scalar, const FieldValue& value) {
    const bool isNumber =
        std::holds_alternative<double>(value) || std::holds_alternative<int>(value);
    if (std::holds_alternative<std::monostate>(value)) {
        return scalar.nullable ? Result<FieldValue>(value) : broken(scalar, value);
    }
    if (scalar.kind == FieldKind::integer && isNumber) {
        return admitInteger(scalar, value);
    }
    if (scalar.kind == FieldKind::number && isNumber) {
        return admitNumber(scalar, std::holds_alternative<int>(value) ? std::get<int>(value)
                                                                      : std::get<double>(value));
    }
    if (scalar.kind == FieldKind::boolean && std::holds_alternative<bool>(value)) {
        return value;
    }
    const bool takesText = scalar.kind == FieldKind::text || !scalar.words.empty();
    if (takesText && std::holds_alternative<std::string>(value)) {
        return admitText(scalar, std::get<std::string>(value));
    }
    return broken(scalar, value);
}

void Visitor::push(std::string_view name, const Message& label, bool required) {
    Place place{pathOf(name), label, required};
    places_.push_back(std::move(place));
}

std::string Visitor::pathOf(std::string_view name) const {
    return pointer(path(), name);
}

bool Visitor::isRequired(const Key& key) const {
    return key.presence == Presence::inherited ? places_.back().required
                                               : key.presence == Presence::required;
}

void Visitor::number(const Key& key, double& value) {
    scalar(
        {key, FieldKind::number, false, {}, fromSi(key.unit, value), [&](const FieldValue& given) {
             value = toSi(key.unit, std::get<double>(given));
         }});
}

void Visitor::number(const Key& key, std::optional<double>& value) {
    FieldValue now = std::monostate{};
    if (value) {
        now = fromSi(key.unit, *value);
    }
    scalar({key, FieldKind::number, true, {}, now, [&](const FieldValue& given) {
                value.reset();
                if (const double* number = std::get_if<double>(&given)) {
                    value = toSi(key.unit, *number);
                }
            }});
}

void Visitor::numberOrWord(const Key& key, double& value, const Word& word, bool& isWord) {
    FieldValue now = fromSi(key.unit, value);
    if (isWord) {
        now = std::string(word.key);
    }
    scalar({key, FieldKind::number, false, std::span(&word, 1), now, [&](const FieldValue& given) {
                const double* number = std::get_if<double>(&given);
                isWord = number == nullptr;
                if (number) {
                    value = toSi(key.unit, *number);
                }
            }});
}

void Visitor::numbers(const Key& key, const Key& item, std::vector<double>& values) {
    const auto size = enterList(key, values.size());
    if (!size) {
        return;
    }
    values.resize(*size);
    push(key.name, key.label, true);
    for (std::size_t i = 0; i < *size; ++i) {
        const std::string name = std::to_string(i);
        Key numbered = item;
        numbered.name = name;
        numbered.label = Message(LW_TEXT("%1 %2"), item.label, i + 1);
        number(numbered, values[i]);
    }
    leaveList();
    pop();
}

void Visitor::texts(const Key& key, const Key& item, std::vector<std::string>& values) {
    const auto size = enterList(key, values.size());
    if (!size) {
        return;
    }
    values.resize(*size);
    push(key.name, key.label, true);
    for (std::size_t i = 0; i < *size; ++i) {
        const std::string name = std::to_string(i);
        Key numbered = item;
        numbered.name = name;
        text(numbered, values[i]);
    }
    leaveList();
    pop();
}

void Visitor::integer(std::string_view name, const Message& label, const Range& range, int& value,
                      const Message& help) {
    const Key key{.name = name, .label = label, .range = range, .help = help};
    scalar({key, FieldKind::integer, false, {}, value, [&](const FieldValue& given) {
                value = std::get<int>(given);
            }});
}

void Visitor::flag(std::string_view name, const Message& label, bool& value, const Message& help) {
    const Key key{.name = name, .label = label, .help = help};
    scalar({key, FieldKind::boolean, false, {}, value, [&](const FieldValue& given) {
                value = std::get<bool>(given);
            }});
}

void Visitor::text(const Key& key, std::string& value) {
    scalar({key, FieldKind::text, false, {}, value, [&](const FieldValue& given) {
                value = std::get<std::string>(given);
            }});
}

void Visitor::textChoice(const Key& key, std::span<const Word> words, std::string& value) {
    scalar({key, FieldKind::choice, false, words, value,
            [&](const FieldValue& given) { value = std::get<std::string>(given); }});
}

} // namespace lobewright::design
