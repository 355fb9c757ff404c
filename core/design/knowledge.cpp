#include "core/design/knowledge.h"

#include "core/design/catalogue.h"
#include "core/design/document.h"
#include "core/units/named.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>

LW_TEXTS_OF(Core)

namespace lobewright::design {

namespace {

std::map<std::string, Field> inputsOf(const Design& design) {
    std::map<std::string, Field> inputs;
    for (Field& field : fieldsOfAllKinds(design)) {
        if (field.kind != FieldKind::text) {
            inputs.emplace(field.path, std::move(field));
        }
    }
    return inputs;
}

bool isNumber(const Field& field) {
    return field.kind == FieldKind::number || field.kind == FieldKind::integer;
}

std::optional<double> numberOf(const Field& field) {
    if (const auto* number = std::get_if<double>(&field.value)) {
        return *number;
    }
    if (const auto* whole = std::get_if<int>(&field.value)) {
        return *whole;
    }
    return std::nullopt;
}

/// A value as the file has it.
Amount amountOf(const Field& field, double value) {
    return asTyped(value, unitNamed(field.unit));
}

std::string listed(const std::vector<std::string>& words) {
    return fmt::format("{}", fmt::join(words, ", "));
}

bool contains(const std::vector<std::string>& words, const std::string& word) {
    return std::ranges::find(words, word) != words.end();
}

/// Collects what one entry breaks.
class EntryRules {
  public:
    EntryRules(const std::string& pointer, const Known& known, const Field& field,
               Problems& problems)
        : place_(design::pointer("/knowledge", pointer)), known_(known), field_(field),
          problems_(problems) {}

    void check() {
        if (known_.low.has_value() != known_.high.has_value()) {
            add(known_.low ? "/low" : "/high",
                Message(LW_TEXT("%1 has only one limit; lower and upper limit must both be given"),
                        field_.label));
        } else if (known_.low) {
            checkRange();
        }
        if (!known_.options.empty()) {
            checkOptions();
        }
    }

  private:
    void add(const char* key, Message message) {
        problems_.push_back({place_ + key, std::move(message)});
    }

    void checkRange() {
        const double low = *known_.low, high = *known_.high;
        if (!isNumber(field_)) {
            add("/low", Message(LW_TEXT("%1 is no number; it can have options, not a range"),
                                field_.label));
        } else if (low >= high) {
            add("/low", Message(LW_TEXT("the lower limit of %1 is %2; it must be below the upper "
                                        "limit, %3"),
                                field_.label, amountOf(field_, low), amountOf(field_, high)));
        } else if (!field_.range.contains(low) || !field_.range.contains(high)) {
            add(field_.range.contains(low) ? "/high" : "/low",
                Message(LW_TEXT("the range of %1 is %2 to %3; its limits must be %4"), field_.label,
                        amountOf(field_, low).bare(), amountOf(field_, high),
                        field_.range.describe(unitNamed(field_.unit))));
        } else if (const auto value = numberOf(field_); value && (*value < low || *value > high)) {
            add("", Message(LW_TEXT("%1 is %2; it must lie within its range, %3 to %4"),
                            field_.label, amountOf(field_, *value), amountOf(field_, low).bare(),
                            amountOf(field_, high)));
        }
    }

    void checkOptions() {
        if (field_.kind != FieldKind::choice) {
            add("/options", Message(LW_TEXT("%1 is no choice; it can have a range, not options"),
                                    field_.label));
            return;
        }
        for (std::size_t i = 0; i < known_.options.size(); ++i) {
            const std::string& option = known_.options[i];
            const auto before = known_.options.begin() + static_cast<std::ptrdiff_t>(i);
            if (!contains(field_.choices, option)) {
                add(fmt::format("/options/{}", i).c_str(),
                    Message(LW_TEXT("\"%1\" is no choice of %2; it must be one of %3"),
                            excerpt(option), field_.label, listed(field_.choices)));
            } else if (std::find(known_.options.begin(), before, option) != before) {
                add(fmt::format("/options/{}", i).c_str(),
                    Message(LW_TEXT("\"%1\" is listed twice; each option must be listed once"),
                            excerpt(option)));
            }
        }
        const auto& word = std::get<std::string>(field_.value);
        if (!contains(known_.options, word)) {
            add("/options", Message(LW_TEXT("%1 is \"%2\"; it must be one of its options, %3"),
                                    field_.label, word, listed(known_.options)));
        }
    }

    std::string place_;
    const Known& known_;
    const Field& field_;
    Problems& problems_;
};

void widen(Known& known, const Field& field) {
    const auto value = numberOf(field);
    if (known.low && known.high && value) {
        known.low = std::min(*known.low, *value);
        known.high = std::max(*known.high, *value);
    }
    const auto* word = std::get_if<std::string>(&field.value);
    if (!known.options.empty() && field.kind == FieldKind::choice && word &&
        !contains(known.options, *word)) {
        known.options.push_back(*word);
    }
}

} // namespace

Known knownOf(const Design& design, const std::string& path) {
    const auto found = design.knowledge.find(path);
    return found == design.knowledge.end() ? Known{.origin = Origin::chosen} : found->second;
}

Problems brokenKnowledgeRules(const Design& design) {
    Problems problems;
    if (design.knowledge.empty()) {
        return problems;
    }
    const auto inputs = inputsOf(design);
    for (const auto& [path, known] : design.knowledge) {
        const auto input = inputs.find(path);
        if (input == inputs.end()) {
            problems.push_back({pointer("/knowledge", path),
                                Message(LW_TEXT("\"%1\" names no input of this design that can "
                                                "have an origin"),
                                        excerpt(path))});
        } else {
            EntryRules(path, known, input->second, problems).check();
        }
    }
    return problems;
}

Knowledge settledKnowledge(const Design& design) {
    if (design.knowledge.empty()) {
        return {};
    }
    const auto inputs = inputsOf(design);
    Knowledge settled;
    for (const auto& [path, known] : design.knowledge) {
        if (const auto input = inputs.find(path); input != inputs.end()) {
            widen(settled[path] = known, input->second);
        }
    }
    return settled;
}

Knowledge movedRows(const Knowledge& knowledge, const std::string& listPath,
                    const std::function<std::optional<int>(int)>& place) {
    Knowledge moved;
    for (const auto& [path, known] : knowledge) {
        int row = 0;
        const char* end = path.data() + path.size();
        const std::size_t start = listPath.size() + 1;
        const auto read = path.starts_with(listPath + "/")
                              ? std::from_chars(path.data() + start, end, row)
                              : std::from_chars_result{end, std::errc::invalid_argument};
        if (read.ec != std::errc()) {
            moved.emplace(path, known);
        } else if (const auto target = place(row)) {
            moved.insert_or_assign(
                fmt::format("{}/{}{}", listPath, *target, std::string(read.ptr, end)), known);
        }
    }
    return moved;
}

} // namespace lobewright::design
