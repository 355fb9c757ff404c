#include "core/design/fields.h"

#include "core/design/catalogue.h"

#include <fmt/format.h>

#include <algorithm>

LW_TEXTS_OF(Core)

namespace lobewright::design {

namespace {

std::vector<std::string> keysOf(std::span<const Word> words) {
    std::vector<std::string> keys;
    for (const Word& word : words) {
        keys.emplace_back(word.key);
    }
    return keys;
}

std::vector<TextId> labelsOf(std::span<const Word> words) {
    std::vector<TextId> labels;
    for (const Word& word : words) {
        labels.emplace_back(word.label);
    }
    return labels;
}

class FieldLister final : public Visitor {
  public:
    explicit FieldLister(bool ofAllKinds) : ofAllKinds_(ofAllKinds) {}
    std::vector<Field> fields;

    bool walksSnapshots() const override { return false; }

  protected:
    void scalar(const Scalar& scalar) override {
        const Key& key = scalar.key;
        fields.push_back({pathOf(key.name), path(), label(), key.label,
                          std::string(key.unit.symbol), key.help, scalar.kind, scalar.value,
                          scalar.nullable, key.range, keysOf(scalar.words),
                          labelsOf(scalar.words)});
    }
    void mark(const Key&, const FieldValue&) override {}
    bool enter(const Key&) override { return true; }
    std::optional<std::size_t> enterList(const Key&, std::size_t size) override { return size; }
    bool isPresent(const Key& key, const PresenceWords& words, bool now) override {
        scalar({key,
                FieldKind::choice,
                false,
                words.words,
                std::string(words.words[now ? 1 : 0].key),
                {}});
        return now;
    }
    bool enterBranch(const Condition&, bool applies) override { return applies || ofAllKinds_; }

  private:
    bool ofAllKinds_;
};

std::vector<Field> listed(const Design& design, bool ofAllKinds) {
    FieldLister lister(ofAllKinds);
    Design shown = design;
    describe(lister, shown);
    return std::move(lister.fields);
}

/// Changes the one value at a path.
class FieldSetter final : public Visitor {
  public:
    FieldSetter(std::string_view path, const FieldValue& value) : target_(path), value_(value) {}

    bool isFound() const { return isFound_; }
    const std::optional<Problem>& problem() const { return problem_; }
    bool walksSnapshots() const override { return false; }

  protected:
    void scalar(const Scalar& scalar) override {
        if (pathOf(scalar.key.name) != target_) {
            return;
        }
        isFound_ = true;
        const auto admitted = admit(scalar, value_);
        if (admitted) {
            scalar.store(*admitted);
        } else {
            problem_ = Problem{std::string(target_), admitted.problems().front().message};
        }
    }
    void mark(const Key&, const FieldValue&) override {}
    bool enter(const Key& key) override { return leadsOn(key); }
    std::optional<std::size_t> enterList(const Key& key, std::size_t size) override {
        return leadsOn(key) ? std::optional(size) : std::nullopt;
    }
    bool isPresent(const Key& key, const PresenceWords& words, bool now) override {
        bool isGiven = now;
        scalar({key, FieldKind::choice, false, words.words, {}, [&](const FieldValue& word) {
                    isGiven = std::get<std::string>(word) == words.words[1].key;
                }});
        return isGiven;
    }

  private:
    /// Sections off the way to the target are left alone.
    bool leadsOn(const Key& key) const { return target_.starts_with(pathOf(key.name)); }

    std::string_view target_;
    const FieldValue& value_;
    bool isFound_ = false;
    std::optional<Problem> problem_;
};

/// Finds single values out of their range.
class RangeCheck final : public Visitor {
  public:
    explicit RangeCheck(WithSnapshots snapshots) : snapshots_(snapshots) {}
    bool walksSnapshots() const override { return snapshots_ == WithSnapshots::yes; }
    Problems problems;

  protected:
    void scalar(const Scalar& scalar) override {
        const auto admitted = admit(scalar, scalar.value);
        if (!admitted) {
            problems.push_back({pathOf(scalar.key.name), admitted.problems().front().message});
        }
    }
    void mark(const Key&, const FieldValue&) override {}
    bool enter(const Key&) override { return true; }
    std::optional<std::size_t> enterList(const Key& key, std::size_t size) override {
        if (!key.range.contains(static_cast<double>(size))) {
            problems.push_back(
                {pathOf(key.name), Message(LW_TEXT("%1 has %2 entries; the number must be %3"),
                                           key.label, size, key.range.describe())});
        }
        return size;
    }
    std::optional<std::vector<std::string>> enterEntries(const Key&,
                                                         std::vector<std::string> names) override {
        return names;
    }
    bool isPresent(const Key&, const PresenceWords&, bool now) override { return now; }

  private:
    WithSnapshots snapshots_;
};

} // namespace

std::vector<Field> fields(const Design& design) {
    return listed(design, false);
}

std::vector<Field> fieldsOfAllKinds(const Design& design) {
    return listed(design, true);
}

std::optional<Field> findField(const Design& design, std::string_view path) {
    for (Field& field : fields(design)) {
        if (field.path == path) {
            return std::move(field);
        }
    }
    return std::nullopt;
}

Result<Design> withField(const Design& design, std::string_view path, const FieldValue& value) {
    FieldSetter setter(path, value);
    Design changed = design;
    describe(setter, changed);
    if (setter.problem()) {
        return *setter.problem();
    }
    if (!setter.isFound()) {
        return Problem{std::string(path),
                       Message(LW_TEXT("this design has no value \"%1\""), path)};
    }
    return changed;
}

Result<Design> withFields(const Design& design, const FieldValues& values) {
    Design changed = design;
    for (const auto& [path, value] : values) {
        auto next = withField(changed, path, value);
        if (!next) {
            return next.problems();
        }
        changed = std::move(next).value();
    }
    return changed;
}

Problems checkRanges(const Design& design, WithSnapshots snapshots) {
    RangeCheck check(snapshots);
    Design shown = design;
    describe(check, shown);
    return std::move(check.problems);
}

TextId choiceLabel(const Field& field, std::string_view choice) {
    for (std::size_t i = 0; i < std::min(field.choices.size(), field.choiceLabels.size()); ++i) {
        if (field.choices[i] == choice) {
            return field.choiceLabels[i];
        }
    }
    return {};
}

} // namespace lobewright::design
