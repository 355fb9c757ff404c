#include "core/unknowns/inputs.h"

#include "core/draft/rules.h"
#include "core/units/named.h"

#include <fmt/format.h>

#include <algorithm>
#include <cassert>
#include <cmath>
#include <map>

LW_TEXTS_OF(Core)

namespace lobewright::unknowns {

namespace {

double numberOf(const design::FieldValue& value) {
    const auto* whole = std::get_if<int>(&value);
    return whole ? *whole : std::get<double>(value);
}

Marginal marginalOf(const design::RangedInput& input) {
    Marginal marginal;
    if (input.isChoice()) {
        marginal.kind = Marginal::Kind::choice;
        marginal.options = static_cast<int>(input.known.options.size());
        return marginal;
    }
    marginal.low = *input.known.low;
    marginal.high = *input.known.high;
    marginal.mode = numberOf(input.field.value);
    marginal.least = input.field.range.min;
    marginal.most = input.field.range.max;
    switch (input.known.spread) {
    case design::Spread::uniform:
        marginal.kind = Marginal::Kind::uniform;
        break;
    case design::Spread::triangular:
        marginal.kind = Marginal::Kind::triangular;
        break;
    case design::Spread::normal:
        marginal.kind = Marginal::Kind::normal;
        break;
    }
    return marginal;
}

/// Both sides have rows of ports and may have tracks of their own.
Message withSide(const design::Field& field) {
    for (const auto& [start, end] :
         {std::pair{"/ports/inlet", End::inlet}, std::pair{"/ports/exhaust", End::exhaust},
          std::pair{"/tracks/exhaust", End::exhaust}}) {
        if (field.path.starts_with(start)) {
            return ofSide(field.label, end);
        }
    }
    return field.label;
}

/// A group that a rule made is called as the rule says what it is of.
Message labelOf(const std::string& group, const design::Field& first) {
    if (group.empty()) {
        return withSide(first);
    }
    const draft::Rule* rule = draft::findRule(group);
    return rule ? Message(rule->title) : Message(LW_TEXT("%1 (group %2)"), first.label, group);
}

/// With the section of the input, "Roller: Radius", where another is called the same.
void tellApart(std::vector<Unknown>& unknowns) {
    std::map<std::string, int> times;
    for (const Unknown& unknown : unknowns) {
        ++times[unknown.label.english()];
    }
    for (Unknown& unknown : unknowns) {
        const Message& section = unknown.members.front().field.groupLabel;
        if (times[unknown.label.english()] > 1 && !section.empty()) {
            unknown.label = Message(LW_TEXT("%1: %2"), section, unknown.label);
        }
    }
}

} // namespace

design::FieldValue Member::value(double share) const {
    const double value = marginal.value(share);
    if (marginal.kind == Marginal::Kind::choice) {
        return options[static_cast<std::size_t>(value)];
    }
    if (field.kind == design::FieldKind::integer) {
        return static_cast<int>(std::lround(value));
    }
    return value;
}

std::string Unknown::text(double share) const {
    const auto value = members.front().value(share);
    if (const auto* word = std::get_if<std::string>(&value)) {
        return *word;
    }
    return fmt::format("{}", numberOf(value));
}

TextId Unknown::optionLabel(std::size_t option) const {
    const Member& first = members.front();
    return design::choiceLabel(first.field, first.options[option]);
}

std::vector<Unknown> unknownsOf(const design::Design& design) {
    std::vector<Unknown> unknowns;
    for (design::RangedInput& input : design::rangedInputs(design)) {
        const std::string& group = input.known.group;
        Member member{std::move(input.field), marginalOf(input), input.known.options};
        const auto same = std::ranges::find_if(unknowns, [&](const Unknown& unknown) {
            return !group.empty() && unknown.name == group;
        });
        if (same != unknowns.end()) {
            same->members.push_back(std::move(member));
            continue;
        }
        Unknown unknown;
        unknown.name = group.empty() ? member.field.path : group;
        unknown.label = labelOf(group, member.field);
        unknown.unit = member.field.unit;
        unknown.members.push_back(std::move(member));
        unknowns.push_back(std::move(unknown));
    }
    tellApart(unknowns);
    return unknowns;
}

design::FieldValues valuesAt(std::span<const Unknown> unknowns, const draft::Followers& followers,
                             std::span<const double> shares) {
    assert(unknowns.size() == shares.size());
    design::FieldValues values;
    for (std::size_t i = 0; i < unknowns.size(); ++i) {
        for (const Member& member : unknowns[i].members) {
            values.emplace_back(member.field.path, member.value(shares[i]));
        }
    }
    return followers.completed(std::move(values));
}

std::vector<std::string> inputPaths(std::span<const Unknown> unknowns,
                                    const draft::Followers& followers) {
    std::vector<std::string> paths;
    for (const Unknown& unknown : unknowns) {
        for (const Member& member : unknown.members) {
            paths.push_back(member.field.path);
        }
    }
    for (std::string& path : followers.paths()) {
        if (std::ranges::find(paths, path) == paths.end()) {
            paths.push_back(std::move(path));
        }
    }
    return paths;
}

Amount inUnitOf(const Unknown& unknown, double value, int digits) {
    return amountIn(unitNamed(unknown.unit), value, digits);
}

std::vector<Marginal> marginalsOf(std::span<const Unknown> unknowns) {
    std::vector<Marginal> marginals;
    for (const Unknown& unknown : unknowns) {
        marginals.push_back(unknown.marginal());
    }
    return marginals;
}

} // namespace lobewright::unknowns
