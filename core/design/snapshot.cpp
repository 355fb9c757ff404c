#include "core/design/snapshot.h"

#include "core/design/document.h"
#include "core/design/validation.h"
#include "core/parsed.h"

#include <fmt/format.h>

#include <algorithm>
#include <span>

LW_TEXTS_OF(Core)

namespace lobewright::design {

namespace {

/// The number made of the digits at `at`, or −1 where not all of them are digits.
int digits(std::string_view text, std::size_t at, std::size_t count) {
    return at + count > text.size() ? -1 : parsed<int>(text.substr(at, count)).value_or(-1);
}

bool isDate(std::string_view text) {
    constexpr int longest[] = {31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    const int year = digits(text, 0, 4), month = digits(text, 5, 2), day = digits(text, 8, 2);
    if (year < 0 || month < 1 || month > 12 || text[4] != '-' || text[7] != '-') {
        return false;
    }
    const bool isLeap = (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;
    return day >= 1 && day <= longest[month - 1] && (month != 2 || day < 29 || isLeap);
}

bool isClock(std::string_view text) {
    const int hour = digits(text, 0, 2), minute = digits(text, 3, 2);
    return text.size() >= 5 && text[2] == ':' && hour >= 0 && hour < 24 && minute >= 0 &&
           minute < 60;
}

bool isZone(std::string_view text) {
    return text.empty() || text == "Z" ||
           ((text[0] == '+' || text[0] == '-') && text.size() == 6 && isClock(text.substr(1)));
}

/// The rule that the name breaks beside these others; empty: none.
Message nameRule(const std::string& name, std::span<const Snapshot> others) {
    if (name.find_first_not_of(" \t\r\n") == std::string::npos) {
        return LW_TEXT("the name of the snapshot is empty; it must say which design was kept");
    }
    if (std::ranges::find(others, name, &Snapshot::name) != others.end()) {
        return Message(LW_TEXT("\"%1\" is the name of another snapshot; no two may be alike"),
                       excerpt(name));
    }
    return {};
}

/// The problems inside one snapshot, with paths as if it were the file.
Problems inside(const Problems& problems, const std::string& place) {
    Problems found;
    for (const Problem& problem : problems) {
        if (problem.path.starts_with(place + "/")) {
            found.push_back({problem.path.substr(place.size()), problem.message});
        }
    }
    return found;
}

} // namespace

bool isDateTime(std::string_view text) {
    if (text.size() < 10 || !isDate(text)) {
        return false;
    }
    if (text.size() == 10) {
        return true;
    }
    std::string_view time = text.substr(10);
    if (time[0] != 'T' || !isClock(time.substr(1))) {
        return false;
    }
    time.remove_prefix(6);
    if (time.starts_with(':')) {
        const int second = digits(time, 1, 2);
        if (second < 0 || second > 60) { // 60: a leap second
            return false;
        }
        time.remove_prefix(3);
    }
    return isZone(time);
}

Design withoutSnapshots(Design design) {
    design.snapshots.clear();
    return design;
}

Result<std::vector<Snapshot>> withSnapshot(const Design& design, const std::string& name,
                                           const std::string& taken) {
    const Message rule = nameRule(name, design.snapshots);
    if (!rule.empty()) {
        return Problem{"/snapshots", rule};
    }
    if (!taken.empty() && !isDateTime(taken)) {
        return Problem{
            "/snapshots",
            Message(
                LW_TEXT(
                    "the time of the snapshot is \"%1\"; it must be a date and time of ISO 8601"),
                excerpt(taken))};
    }
    if (design.snapshots.size() >= mostSnapshots) {
        return Problem{
            "/snapshots",
            Message(
                LW_TEXT("the file keeps %1 snapshots already; delete one that is no longer needed"),
                design.snapshots.size())};
    }
    std::vector<Snapshot> list = design.snapshots;
    list.push_back({name, taken, withoutSnapshots(design)});
    return list;
}

Result<std::vector<Snapshot>> withName(const std::vector<Snapshot>& snapshots, std::size_t index,
                                       const std::string& name) {
    if (index >= snapshots.size()) {
        return Problem{"/snapshots", Message(LW_TEXT("there is no snapshot %1"), index + 1)};
    }
    std::vector<Snapshot> list = snapshots;
    list.erase(list.begin() + static_cast<std::ptrdiff_t>(index));
    const Message rule = nameRule(name, list);
    if (!rule.empty()) {
        return Problem{fmt::format("/snapshots/{}/name", index), rule};
    }
    list = snapshots;
    list[index].name = name;
    return list;
}

std::string freeName(const std::vector<Snapshot>& snapshots, std::string_view stem) {
    for (std::size_t number = snapshots.size() + 1;; ++number) {
        std::string name = fmt::format("{} {}", stem, number);
        if (std::ranges::find(snapshots, name, &Snapshot::name) == snapshots.end()) {
            return name;
        }
    }
}

Problems brokenSnapshotRules(const Design& design, const Problems& known) {
    Problems problems;
    const std::vector<Snapshot>& snapshots = design.snapshots;
    for (std::size_t i = 0; i < snapshots.size(); ++i) {
        const std::string place = fmt::format("/snapshots/{}", i);
        const Problems knownHere = inside(known, place);
        const auto isSound = [&](std::string_view path) {
            return std::ranges::find(knownHere, path, &Problem::path) == knownHere.end();
        };
        const Message rule = nameRule(snapshots[i].name, std::span(snapshots).first(i));
        if (!rule.empty() && isSound("/name")) {
            problems.push_back({place + "/name", rule});
        }
        const std::string& taken = snapshots[i].taken;
        if (!taken.empty() && !isDateTime(taken)) {
            problems.push_back(
                {place + "/taken",
                 Message(
                     LW_TEXT(
                         "the time is \"%1\"; it must be a date and time of ISO 8601, or empty"),
                     excerpt(taken))});
        }
        if (!snapshots[i].design.snapshots.empty()) {
            problems.push_back({place + "/design/snapshots",
                                LW_TEXT("the design of a snapshot holds snapshots; it must not")});
        }
        if (!isSound("/design")) {
            continue; // missing or no group of keys: nothing to judge
        }
        for (const Problem& problem :
             brokenRules(snapshots[i].design, inside(known, place + "/design"))) {
            problems.push_back({place + "/design" + problem.path, problem.message});
        }
        for (const Problem& problem : brokenKnowledgeRules(snapshots[i].design)) {
            problems.push_back({place + "/design" + problem.path, problem.message});
        }
    }
    return problems;
}

} // namespace lobewright::design
