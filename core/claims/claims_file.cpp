#include "core/claims/claims_file.h"

#include "core/claims/claims_keys.h"
#include "core/design/document.h"
#include "core/design/nearest.h"
#include "core/files/read_file.h"
#include "core/files/write_file.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::study {

namespace {

using nlohmann::json;
using nlohmann::ordered_json;

constexpr char formatName[] = "lobewright-claims";
constexpr auto longestText = 4000U;
constexpr auto mostStatements = 200U;

Message shown(const json& value) {
    if (value.is_structured()) {
        return value.is_array() ? LW_TEXT("a list") : LW_TEXT("a group of keys");
    }
    return design::excerpt(value.dump());
}

template <class Key>
std::vector<std::string> choiceWords(const Key& key) {
    std::vector<std::string> words;
    for (const ClaimWord& word : key.words) {
        words.emplace_back(word.key);
    }
    return words;
}

class ClaimsReader {
  public:
    template <class Group>
    void readKey(const ClaimKey<Group>& key, const json& value, const std::string& path,
                 Group& group) {
        using Kind = typename ClaimKey<Group>::Kind;
        switch (key.kind) {
        case Kind::amount:
            readAmount(key, value, path, group);
            break;
        case Kind::count:
            readCount(key, value, path, group);
            break;
        case Kind::choice:
            readChoice(key, value, path, group);
            break;
        case Kind::flag:
            if (value.is_boolean()) {
                group.*(key.flag) = value.get<bool>();
            } else {
                report(path, Message(LW_TEXT("%1 is %2; it must be true or false"), key.label,
                                     shown(value)));
            }
            break;
        case Kind::text:
            readText(key, value, path, group);
            break;
        }
    }

    template <class Group>
    void readGroup(std::span<const ClaimKey<Group>> keys, const json& node, const std::string& path,
                   Group& group, std::vector<std::string> alsoKnown = {}) {
        if (!node.is_object()) {
            report(path, Message(LW_TEXT("this is %1; it must be a group of keys"), shown(node)));
            return;
        }
        for (const auto& [name, value] : node.items()) {
            const auto key = std::ranges::find(keys, name, &ClaimKey<Group>::name);
            const std::string place = design::pointer(path, name);
            if (key != keys.end()) {
                if (!value.is_null()) {
                    readKey(*key, value, place, group);
                }
            } else if (!isFull() && std::ranges::find(alsoKnown, name) == alsoKnown.end()) {
                auto known = alsoKnown;
                for (const auto& one : keys) {
                    known.emplace_back(one.name);
                }
                report(place,
                       Message(LW_TEXT("\"%1\" is not a key here; the nearest known key is \"%2\""),
                               design::excerpt(name), design::nearest(name, known)));
            }
        }
    }

    void readHead(const json& root) {
        const auto format = root.find("format");
        if (format == root.end() || *format != formatName) {
            report("/format", Message(LW_TEXT("Format is %1; it must be \"%2\""),
                                      format == root.end() ? LW_TEXT("missing") : shown(*format),
                                      std::string(formatName)));
        }
        const auto version = root.find("format_version");
        if (version == root.end() || !version->is_number_integer() || *version < 1 ||
            *version > claimsFormatVersion) {
            report("/format_version",
                   Message(LW_TEXT("Format version is %1; it must be a whole number from 1 to %2"),
                           version == root.end() ? LW_TEXT("missing") : shown(*version),
                           claimsFormatVersion));
        }
    }

    void readStatements(const json& list, Claims& claims) {
        if (!list.is_array()) {
            report("/statements",
                   Message(LW_TEXT("Statements is %1; it must be a list"), shown(list)));
            return;
        }
        if (list.size() > mostStatements) {
            report("/statements",
                   Message(LW_TEXT("Statements has %1 entries; the number must be ≤ %2"),
                           list.size(), mostStatements));
            return;
        }
        for (const json& item : list) {
            const std::string path =
                design::pointer("/statements", std::to_string(claims.statements.size()));
            claims.statements.emplace_back();
            readGroup(statementKeys(), item, path, claims.statements.back());
            if (item.is_object() && claims.statements.back().claim.empty()) {
                report(path + "/claim", LW_TEXT("Claim is missing; a statement needs its words"));
            }
        }
    }

    Problems finish() { return std::move(problems_); }

  private:
    bool isFull() const { return problems_.size() > design::mostProblems; }
    void report(const std::string& path, Message message) {
        design::addProblem(problems_, {path, std::move(message)});
    }

    template <class Group>
    void readAmount(const ClaimKey<Group>& key, const json& value, const std::string& path,
                    Group& group) {
        const bool isPureNumber = value.is_number() && key.dimension == Dimension::fraction;
        if (!value.is_string() && !isPureNumber) {
            report(path, Message(LW_TEXT("%1 is %2; it must be %3"), key.label, shown(value),
                                 describe(key.dimension)));
            return;
        }
        const auto read = isPureNumber
                              ? Result<Amount>(amount(value.get<double>(), ""))
                              : parseAmount(value.get_ref<const std::string&>(), key.dimension);
        if (!read) {
            report(path, Message(LW_TEXT("%1: %2"), key.label, read.problems().front().message));
        } else if (!(read->si >= key.least && read->si <= key.most)) {
            const bool isTooSmall = read->si < key.least;
            const double bound = isTooSmall ? key.least : key.most;
            report(path, Message(LW_TEXT("%1 is %2; it must be %3 %4 in SI units"), key.label,
                                 text(*read), std::string(isTooSmall ? "≥" : "≤"),
                                 lobewright::number(bound, 6)));
        } else {
            group.*(key.amount) = *read;
        }
    }

    template <class Group>
    void readCount(const ClaimKey<Group>& key, const json& value, const std::string& path,
                   Group& group) {
        if (!value.is_number()) {
            report(path,
                   Message(LW_TEXT("%1 is %2; it must be a number"), key.label, shown(value)));
            return;
        }
        const auto number = value.get<double>();
        if (number < key.least || number > key.most) {
            report(path, Message(LW_TEXT("%1 is %2; it must be ≥ %3 and ≤ %4"), key.label,
                                 asTyped(number), lobewright::number(key.least, 6),
                                 lobewright::number(key.most, 6)));
        } else if (key.whole && number != std::floor(number)) {
            report(path, Message(LW_TEXT("%1 is %2; it must be a whole number"), key.label,
                                 asTyped(number)));
        } else {
            group.*(key.count) = number;
        }
    }

    template <class Group>
    void readChoice(const ClaimKey<Group>& key, const json& value, const std::string& path,
                    Group& group) {
        const auto words = choiceWords(key);
        const std::string word = value.is_string() ? value.get<std::string>() : std::string();
        const auto found = std::ranges::find(words, word);
        if (found != words.end()) {
            key.choose(group, static_cast<std::size_t>(found - words.begin()));
        } else {
            report(path, Message(LW_TEXT("%1 is %2; it must be one of %3; the nearest is \"%4\""),
                                 key.label, shown(value), fmt::format("{}", fmt::join(words, ", ")),
                                 design::nearest(word, words)));
        }
    }

    template <class Group>
    void readText(const ClaimKey<Group>& key, const json& value, const std::string& path,
                  Group& group) {
        if (!value.is_string()) {
            report(path, Message(LW_TEXT("%1 is %2; it must be a text"), key.label, shown(value)));
            return;
        }
        group.*(key.text) = value.get<std::string>();
        if ((group.*(key.text)).size() > longestText) {
            report(path, Message(LW_TEXT("%1 has %2 bytes; it must have at most %3"), key.label,
                                 (group.*(key.text)).size(), longestText));
        }
    }

    Problems problems_;
};

template <class Group>
ordered_json written(std::span<const ClaimKey<Group>> keys, const Group& group) {
    using Kind = typename ClaimKey<Group>::Kind;
    ordered_json node = ordered_json::object();
    for (const auto& key : keys) {
        const std::string name(key.name);
        if (key.kind == Kind::text) {
            node[name] = group.*(key.text);
        } else if (key.kind == Kind::amount && group.*(key.amount)) {
            const Amount& value = *(group.*(key.amount));
            node[name] =
                value.unit.empty() ? ordered_json(value.number) : ordered_json(text(value));
        } else if (key.kind == Kind::count && group.*(key.count)) {
            const double value = *(group.*(key.count));
            const auto whole = static_cast<long>(value);
            node[name] =
                static_cast<double>(whole) == value ? ordered_json(whole) : ordered_json(value);
        } else if (key.kind == Kind::flag && group.*(key.flag)) {
            node[name] = *(group.*(key.flag));
        } else if (key.kind == Kind::choice && key.chosen(group)) {
            node[name] = key.words[*key.chosen(group)].key;
        }
    }
    return node;
}

} // namespace

Result<Claims> readClaims(std::string_view text) {
    if (text.size() > largestClaims) {
        return Problem{
            "",
            Message(LW_TEXT("the file has more than %1 bytes (1 MiB); no claims file is larger"),
                    largestClaims)};
    }
    design::Document document = design::parseDocument(text);
    if (!document.problems.empty()) {
        return document.problems;
    }
    const json& root = document.root;
    if (!root.is_object()) {
        return Problem{"",
                       Message(LW_TEXT("the file is %1; it must be a group of keys"), shown(root))};
    }
    ClaimsReader reader;
    Claims claims;
    std::vector<std::string> groups = {"format", "format_version", "statements"};
    forEachGroup([&](const char* name, const auto&, const auto&) { groups.emplace_back(name); });
    reader.readHead(root);
    reader.readGroup(claimHeadKeys(), root, "", claims, groups);
    forEachGroup([&](const char* name, const auto& keys, auto member) {
        if (const auto node = root.find(name); node != root.end()) {
            reader.readGroup(keys, *node, design::pointer("", name), claims.*member);
        }
    });
    if (const auto list = root.find("statements"); list != root.end()) {
        reader.readStatements(*list, claims);
    }
    Problems problems = reader.finish();
    if (!problems.empty()) {
        return problems;
    }
    return claims;
}

Result<Claims> loadClaims(const std::filesystem::path& file) {
    const auto text = files::readFile(file, largestClaims + 1);
    return text ? readClaims(*text) : Result<Claims>(text.problems());
}

std::string writeClaims(const Claims& claims) {
    ordered_json root = ordered_json::object();
    root["format"] = formatName;
    root["format_version"] = claimsFormatVersion;
    root.update(written(claimHeadKeys(), claims));
    forEachGroup([&](const char* name, const auto& keys, auto member) {
        root[name] = written(keys, claims.*member);
    });
    root["statements"] = ordered_json::array();
    for (const Statement& statement : claims.statements) {
        root["statements"].push_back(written(statementKeys(), statement));
    }
    return root.dump(2, ' ', false, json::error_handler_t::replace) + "\n";
}

std::optional<Problem> saveClaims(const Claims& claims, const std::filesystem::path& file) {
    return files::writeFile(file, writeClaims(claims));
}

} // namespace lobewright::study
