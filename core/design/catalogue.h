#pragma once

#include "core/design/design.h"
#include "core/design/fields.h"
#include "core/units/unit.h"

#include <array>
#include <cstddef>
#include <functional>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

LW_TEXTS_OF(Core)

/// The one description of the design file. `describe` walks a design in file order and shows every
/// key, with its label, unit, range and help, to a visitor; reader, writer, field list,
/// single-value edits, range checks and the schema are visitors, so that no key is written twice.
namespace lobewright::design {

/// Whether a key may be left out. `inherited`: as the section it stands in.
enum class Presence { inherited, required, optional };

/// Everything to know about one key.
struct Key {
    std::string_view name;
    Message label;
    const Unit& unit = in::pure; ///< a row of the table: messages point to it
    Range range{};               ///< numbers: values; lists: number of items
    Presence presence = Presence::inherited;
    Message help{};
    /// False: an absent value or an empty list is left out instead of shown as null or [].
    bool writtenWhenNull = true;
};

/// A word of the file with the words of the trade for it.
struct Word {
    std::string_view key;
    TextId label;
};

template <class E>
struct Choice {
    E value;
    Word word;
};

/// How an optional section or list is absent: first word absent, second word present. In the file
/// absent is null, or the word itself where `absentIsWord`.
struct PresenceWords {
    std::array<Word, 2> words;
    bool absentIsWord = false;
};

/// When the keys of a branch are used: `key` holds one of `words`; without words: `key` is there.
/// A key of the same section, or a pointer from the root of the design ("/mechanism/arrangement").
struct Condition {
    std::string_view key;
    std::vector<std::string_view> words;
    Message describe() const; ///< e.g. `"kind" is "blower"`
};

/// One value with access to where it is stored, in the unit of the file.
struct Scalar {
    const Key& key;
    FieldKind kind = FieldKind::number;
    bool nullable = false;
    std::span<const Word> words; ///< choices; of a number: words accepted instead of it
    FieldValue value;
    std::function<void(const FieldValue&)> store; ///< takes an admitted value
};

/// The value in the type of its kind (3 for 3.0, …), or the rule it breaks (path empty).
Result<FieldValue> admit(const Scalar& scalar, const FieldValue& value);

/// Base of everything that walks a design.
class Visitor {
  public:
    virtual ~Visitor() = default;

    void number(const Key& key, double& value);
    void number(const Key& key, std::optional<double>& value);
    /// As most keys are, in one row: its value a double or an optional one.
    template <class Value>
    void number(std::string_view name, const Message& label, const Unit& unit, const Range& range,
                Value& value, const Message& help, Presence presence = Presence::inherited) {
        number({name, label, unit, range, presence, help}, value);
    }
    /// A number, or one word instead of it.
    void numberOrWord(const Key& key, double& value, const Word& word, bool& isWord);
    void numbers(const Key& key, const Key& item, std::vector<double>& values);
    void texts(const Key& key, const Key& item, std::vector<std::string>& values);
    void integer(std::string_view name, const Message& label, const Range& range, int& value,
                 const Message& help);
    void flag(std::string_view name, const Message& label, bool& value, const Message& help);
    void text(const Key& key, std::string& value);
    /// A text that must be one of the words.
    void textChoice(const Key& key, std::span<const Word> words, std::string& value);
    /// A key whose value never differs.
    void fixed(const Key& key, const FieldValue& value) { mark(key, value); }

    template <class E>
    void choice(const Key& key, std::span<const Choice<E>> choices, E& value);
    template <class Choices, class E>
    void choice(std::string_view name, const Message& label, const Choices& choices, E& value,
                const Message& help, Presence presence = Presence::inherited) {
        choice({.name = name, .label = label, .presence = presence, .help = help},
               std::span<const Choice<E>>(choices), value);
    }
    template <class Body>
    void section(const Key& key, Body body);
    template <class Body>
    void section(std::string_view name, const Message& label, Body body) {
        section(Key{.name = name, .label = label}, body);
    }
    template <class T, class Fresh, class Body>
    void optional(const Key& key, const PresenceWords& words, std::optional<T>& value, Fresh fresh,
                  Body body);
    template <class Item, class Body>
    void list(const Key& key, TextId itemLabel, std::vector<Item>& items, Body body);
    template <class Item, class Body>
    void list(std::string_view name, const Message& label, const Range& size, const Message& help,
              TextId itemLabel, std::vector<Item>& items, Body body) {
        list(Key{.name = name, .label = label, .range = size, .help = help}, itemLabel, items,
             body);
    }
    /// A section whose keys are not fixed; the body sees each entry.
    template <class Item, class Body>
    void entries(const Key& key, TextId itemLabel, std::map<std::string, Item>& items, Body body);
    /// Keys that are used only under a condition. The body also runs where a visitor wants to see
    /// unused keys.
    template <class Body>
    void branch(const Condition& condition, bool applies, Body body);
    /// Exactly one of the keys is there; returns which.
    virtual std::size_t oneOf(std::span<const std::string_view> keys, std::size_t now) {
        (void)keys;
        return now;
    }

    /// Whether values that are not shown are to become their defaults.
    virtual bool fillsDefaults() const { return false; }
    /// Whether the designs kept as snapshots are shown too.
    virtual bool walksSnapshots() const { return true; }
    /// The design of a snapshot, once a visitor has entered its section.
    virtual void snapshotDesign(Design& design);

  protected:
    virtual void scalar(const Scalar& scalar) = 0;
    virtual void mark(const Key& key, const FieldValue& value) = 0;
    /// Sections: false skips the body.
    virtual bool enter(const Key& key) = 0;
    virtual void leave() {}
    /// Lists: the number of items to walk, nothing to leave the list as it is.
    virtual std::optional<std::size_t> enterList(const Key& key, std::size_t size) = 0;
    virtual void leaveList() {}
    virtual void enterItem(std::size_t index) { (void)index; }
    virtual void leaveItem() {}
    /// Sections without fixed keys, with those that they have: the entries to walk, nothing to
    /// leave them as they are.
    virtual std::optional<std::vector<std::string>> enterEntries(const Key&,
                                                                 std::vector<std::string>) {
        return std::nullopt;
    }
    virtual void leaveEntries() {}
    virtual void enterEntry(const std::string& name) { (void)name; }
    virtual void leaveEntry() {}
    /// True for a visitor that fills lists and optional sections itself: it gets new ones.
    virtual bool startsEmpty() const { return false; }
    /// Whether an optional section or list is there.
    virtual bool isPresent(const Key& key, const PresenceWords& words, bool now) = 0;
    virtual bool enterBranch(const Condition& condition, bool applies) {
        (void)condition;
        return applies;
    }
    virtual void leaveBranch() {}

    bool isRequired(const Key& key) const;
    const std::string& path() const { return places_.back().path; }
    std::string pathOf(std::string_view name) const; ///< of a key of the section at hand
    const Message& label() const { return places_.back().label; }

  private:
    struct Place {
        std::string path;
        Message label;
        bool required = true;
    };
    void push(std::string_view name, const Message& label, bool required);
    void pop() { places_.pop_back(); }
    std::vector<Place> places_{Place{}};
};

/// Shows every key of the design to the visitor, in file order.
void describe(Visitor& visitor, Design& design);
/// The same without format and snapshots.
void describeEngine(Visitor& visitor, Design& design);
void describeSnapshots(Visitor& visitor, std::vector<Snapshot>& snapshots);
void describeMechanism(Visitor& visitor, mechanism::Mechanism& mechanism);
void describeKnowledge(Visitor& visitor, Knowledge& knowledge);
void describeTracks(Visitor& visitor, Tracks& tracks, bool isOneSided);
void describePorts(Visitor& visitor, ports::Rows& rows, bool isOneSided);
/// One row of ports.
void describeRow(Visitor& v, ports::Row& row);
void describeGas(Visitor& visitor, gas::Settings& gas, bool isOneSided);
void describeSupply(Visitor& visitor, gas::Supply& supply);
void describeRunning(Visitor& visitor, Running& running);
void describeSchedules(Visitor& visitor, std::vector<Schedule>& schedules);
void describeFriction(Visitor& visitor, loads::Friction& friction);
void describeContact(Visitor& visitor, Design& design);
void describeReference(Visitor& visitor, Reference& reference);
void describeTrackBlank(Visitor& visitor, track::Blank& blank);
void describeLimits(Visitor& visitor, Limits& limits);
/// One limit of the checks: its section in the file, its largest value there, what it is kept in.
struct LimitRow {
    std::string_view key;
    TextId label;
    const Unit* unit;
    double largest;
    Limit Limits::*member;
    TextId help;
};
std::span<const LimitRow> limitRows();

/// Which keys an arrangement has.
inline const Condition opposed{"/mechanism/arrangement", {"opposed"}};
inline const Condition oneSided{"/mechanism/arrangement", {"one-sided"}};

/// The bounds of a key are those of what could be built and run, generously: from model engines of
/// a few millimetres to engines larger than any ship's. They are there so that every value within
/// them can be computed with; whether it is a good one is for the limits list to say.
inline constexpr Range between(double min, double max) {
    return {min, max, false, false};
}

template <class E>
void Visitor::choice(const Key& key, std::span<const Choice<E>> choices, E& value) {
    std::vector<Word> words;
    std::string now;
    for (const auto& choice : choices) {
        words.push_back(choice.word);
        if (choice.value == value) {
            now = choice.word.key;
        }
    }
    const auto store = [&](const FieldValue& word) {
        for (const auto& choice : choices) {
            if (choice.word.key == std::get<std::string>(word)) {
                value = choice.value;
            }
        }
    };
    scalar({key, FieldKind::choice, false, words, now, store});
}

template <class Body>
void Visitor::section(const Key& key, Body body) {
    if (!enter(key)) {
        return;
    }
    push(key.name, key.label, isRequired(key));
    body();
    leave();
    pop();
}

template <class T, class Fresh, class Body>
void Visitor::optional(const Key& key, const PresenceWords& words, std::optional<T>& value,
                       Fresh fresh, Body body) {
    if (!isPresent(key, words, value.has_value())) {
        value.reset();
        return;
    }
    if (startsEmpty()) {
        value.emplace();
    } else if (!value) {
        value = fresh();
    }
    body(*value);
}

template <class Item, class Body>
void Visitor::list(const Key& key, TextId itemLabel, std::vector<Item>& items, Body body) {
    const auto size = enterList(key, items.size());
    if (!size) {
        return;
    }
    if (startsEmpty()) {
        items.clear();
    }
    items.resize(*size);
    push(key.name, key.label, true);
    for (std::size_t i = 0; i < *size; ++i) {
        enterItem(i);
        push(std::to_string(i), {LW_TEXT("%1 %2"), itemLabel, i + 1}, true);
        body(items[i]);
        leaveItem();
        pop();
    }
    leaveList();
    pop();
}

template <class Item, class Body>
void Visitor::entries(const Key& key, TextId itemLabel, std::map<std::string, Item>& items,
                      Body body) {
    std::vector<std::string> present;
    present.reserve(items.size());
    for (const auto& entry : items) {
        present.push_back(entry.first);
    }
    const auto names = enterEntries(key, std::move(present));
    if (!names) {
        return;
    }
    push(key.name, key.label, true);
    for (const std::string& name : *names) {
        enterEntry(name);
        push(name, itemLabel, true);
        body(items[name]);
        leaveEntry();
        pop();
    }
    leaveEntries();
    pop();
}

template <class Body>
void Visitor::branch(const Condition& condition, bool applies, Body body) {
    if (enterBranch(condition, applies)) {
        body();
        leaveBranch();
    }
}

} // namespace lobewright::design
