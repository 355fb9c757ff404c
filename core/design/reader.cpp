#include "core/design/reader.h"

#include "core/design/document.h"
#include "core/design/key_list.h"
#include "core/design/nearest.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <limits>

LW_TEXTS_OF(Core)

namespace lobewright::design {

namespace {

using nlohmann::json;

TextId typeName(const json& value) {
    return value.is_object()  ? LW_TEXT("a group of keys")
           : value.is_array() ? LW_TEXT("a list")
                              : LW_TEXT("a single value");
}

/// The value as a field has it; nothing for lists and objects.
std::optional<FieldValue> fieldValue(const json& value) {
    if (value.is_null()) {
        return std::monostate{};
    }
    if (value.is_boolean()) {
        return value.get<bool>();
    }
    if (value.is_string()) {
        return value.get<std::string>();
    }
    if (value.is_number()) {
        return value.get<double>();
    }
    return std::nullopt;
}

std::size_t indexOf(std::string_view digits) {
    std::size_t index = 0;
    std::from_chars(digits.data(), digits.data() + digits.size(), index);
    return index;
}

} // namespace

Reader::Reader(const json& root) {
    levels_.push_back({&root, {}});
}

Problems Reader::finish() {
    reportUnknownKeys();
    return std::move(problems_);
}

const json* Reader::find(std::string_view name) const {
    const json& node = *levels_.back().node;
    if (node.is_array()) {
        return &node.at(indexOf(name));
    }
    const auto found = node.find(std::string(name));
    return found == node.end() ? nullptr : &*found;
}

const json* Reader::child(std::string_view name) {
    levels_.back().known.emplace_back(name);
    return find(name);
}

void Reader::report(const std::string& path, Message message) {
    addProblem(problems_, {path, std::move(message)});
}

bool Reader::reportUnused(const Key& key, const json* value) {
    if (unused_ == nullptr) {
        return false;
    }
    // Of several shapes, oneOf() has reported the surplus ones already.
    if (value != nullptr && unused_->key != key.name) {
        report(pathOf(key.name), Message(LW_TEXT("%1 is used only where %2; leave it out"),
                                         key.label, unused_->describe()));
    }
    return true;
}

void Reader::reportMissing(const Key& key) {
    if (isRequired(key) && !levels_.back().isStandIn) {
        report(pathOf(key.name),
               Message(LW_TEXT("%1 is missing; \"%2\" must be given"), key.label, key.name));
    }
}

void Reader::scalar(const Scalar& scalar) {
    const json* given = child(scalar.key.name);
    if (reportUnused(scalar.key, given)) {
        return;
    }
    if (given == nullptr) {
        reportMissing(scalar.key);
        return;
    }
    const std::string place = pathOf(scalar.key.name);
    const auto value = fieldValue(*given);
    if (!value) {
        report(place, Message(LW_TEXT("%1 is %2; it must be a single value"), scalar.key.label,
                              typeName(*given)));
        return;
    }
    const auto admitted = admit(scalar, *value);
    if (admitted) {
        scalar.store(*admitted);
    } else {
        report(place, admitted.problems().front().message);
    }
}

void Reader::mark(const Key& key, const FieldValue& value) {
    const json* given = child(key.name);
    if (given == nullptr) {
        reportMissing(key);
        return;
    }
    if (const auto* text = std::get_if<std::string>(&value)) {
        if (*given != *text) {
            report(pathOf(key.name), Message(LW_TEXT("%1 is %2; it must be \"%3\""), key.label,
                                             excerpt(given->dump()), *text));
        }
        return;
    }
    const int version = std::get<int>(value);
    const bool isVersion = given->is_number_integer() && *given >= 1;
    if (!isVersion) {
        report(pathOf(key.name),
               Message(LW_TEXT("%1 is %2; it must be a whole number from 1 to %3"), key.label,
                       excerpt(given->dump()), version));
    } else if (*given > version) {
        report(pathOf(key.name),
               Message(LW_TEXT("%1 is %2, written by a newer program; this one reads up to %3"),
                       key.label, excerpt(given->dump()), version));
    }
}

bool Reader::enter(const Key& key) {
    const json* given = child(key.name);
    if (reportUnused(key, given)) {
        return false;
    }
    if (given == nullptr) {
        reportMissing(key);
        return false;
    }
    if (!given->is_object()) {
        report(pathOf(key.name), Message(LW_TEXT("%1 is %2; it must be a group of keys"), key.label,
                                         typeName(*given)));
        return false;
    }
    levels_.push_back({given, {}});
    return true;
}

void Reader::leave() {
    reportUnknownKeys();
    levels_.pop_back();
}

std::optional<std::size_t> Reader::enterList(const Key& key, std::size_t) {
    const json* given = child(key.name);
    if (reportUnused(key, given)) {
        return std::nullopt;
    }
    if (given == nullptr) {
        reportMissing(key);
        return std::nullopt;
    }
    if (!given->is_array()) {
        report(pathOf(key.name),
               Message(LW_TEXT("%1 is %2; it must be a list"), key.label, typeName(*given)));
        return std::nullopt;
    }
    const std::size_t size = given->size();
    if (!key.range.contains(static_cast<double>(size))) {
        report(pathOf(key.name), Message(LW_TEXT("%1 has %2 entries; the number must be %3"),
                                         key.label, size, key.range.describe()));
        if (static_cast<double>(size) > key.range.max) {
            return std::nullopt;
        }
    }
    levels_.push_back({given, {}});
    return size;
}

void Reader::enterObject(const json& item, const std::string& place) {
    static const json nothing = json::object();
    if (!item.is_object()) {
        report(place,
               Message(LW_TEXT("this entry is %1; it must be a group of keys"), typeName(item)));
    }
    levels_.push_back({item.is_object() ? &item : &nothing, {}, !item.is_object()});
}

void Reader::enterItem(std::size_t index) {
    enterObject(levels_.back().node->at(index), pathOf(std::to_string(index)));
}

std::optional<std::vector<std::string>> Reader::enterEntries(const Key& key,
                                                             std::vector<std::string>) {
    if (!enter(key)) {
        return std::nullopt;
    }
    std::vector<std::string> names;
    for (const auto& entry : levels_.back().node->items()) {
        names.push_back(entry.key());
    }
    return names;
}

void Reader::enterEntry(const std::string& name) {
    enterObject(levels_.back().node->at(name), pathOf(name));
}

bool Reader::isPresent(const Key& key, const PresenceWords& words, bool) {
    const json* given = find(key.name);
    const bool isWrongWord = given != nullptr && words.absentIsWord && given->is_string() &&
                             *given != words.words[0].key;
    const bool isAbsent =
        given == nullptr || (words.absentIsWord ? given->is_string() : given->is_null());
    if (!isAbsent) {
        return true; // enter() or enterList() goes on
    }
    levels_.back().known.emplace_back(key.name);
    if (reportUnused(key, given)) {
        return false;
    }
    if (given == nullptr) {
        reportMissing(key);
    } else if (isWrongWord) {
        report(pathOf(key.name),
               Message(LW_TEXT("%1 is \"%2\"; it must be \"%3\" or a group of keys"), key.label,
                       excerpt(given->get<std::string>()), words.words[0].key));
    }
    return false;
}

bool Reader::enterBranch(const Condition& condition, bool applies) {
    unused_ = applies ? nullptr : &condition;
    return true;
}

std::size_t Reader::oneOf(std::span<const std::string_view> keys, std::size_t now) {
    std::optional<std::size_t> found;
    int count = 0;
    std::string listed;
    for (std::size_t i = 0; i < keys.size(); ++i) {
        listed += fmt::format("{}\"{}\"", i == 0 ? "" : ", ", keys[i]);
        if (levels_.back().node->contains(keys[i])) {
            found = found.value_or(i);
            ++count;
        }
    }
    if (count != 1) {
        report(path(), Message(LW_TEXT("%1 has %2 of %3; it must have exactly one"), label(),
                               count == 0 ? LW_TEXT("none") : LW_TEXT("more than one"), listed));
    }
    return found.value_or(now);
}

void Reader::reportUnknownKeys() {
    const Level& level = levels_.back();
    for (const auto& entry : level.node->items()) {
        const auto isKnown = std::ranges::find(level.known, entry.key()) != level.known.end();
        if (isKnown) {
            continue;
        }
        if (problems_.size() > mostProblems) {
            return; // looking for the nearest key takes its time
        }
        const std::string name = excerpt(entry.key());
        const Message home = sectionOf(entry.key());
        Message advice;
        if (!home.empty()) {
            advice = Message(LW_TEXT("it belongs in %1"), home);
        } else {
            advice = Message(LW_TEXT("the nearest known key is \"%1\""),
                             nearest(entry.key(), level.known));
        }
        report(pointer(path(), entry.key()),
               Message(LW_TEXT("\"%1\" is not a key here; %2"), name, advice));
    }
}

} // namespace lobewright::design
