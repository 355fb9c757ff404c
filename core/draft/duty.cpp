#include "core/design/nearest.h"
#include "core/draft/brief.h"
#include "core/gas/models/fuel.h"
#include "core/parsed.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <set>

LW_TEXTS_OF(Core)

namespace lobewright::draft {

namespace {

using study::Dimension;

std::string_view trimmed(std::string_view text) {
    const auto first = text.find_first_not_of(" \t\r\n");
    if (first == std::string_view::npos) {
        return {};
    }
    return text.substr(first, text.find_last_not_of(" \t\r\n") - first + 1);
}

Problem wrong(std::string_view key, Message message) {
    return {std::string(key), std::move(message)};
}

/// One entry, "diameter<320 mm".
struct Entry {
    std::string key;
    char sign = '=';
    std::string value;
};

std::vector<std::string> words() {
    return {"power",  "speed",       "torque",   "fuel",   "cylinders", "lobes",
            "supply", "compression", "diameter", "length", "life"};
}

class DutyReader {
  public:
    Result<Brief> read(std::string_view text) {
        while (!trimmed(text).empty()) {
            const auto comma = text.find(',');
            readEntry(trimmed(text.substr(0, comma)));
            text = comma == std::string_view::npos ? std::string_view() : text.substr(comma + 1);
        }
        if (problems_.empty() && !brief_.power && !brief_.torque) {
            problems_.push_back(
                wrong("power", LW_TEXT("a duty must give its power or its torque")));
        }
        if (!problems_.empty()) {
            return problems_;
        }
        brief_.isDuty = true;
        brief_.title = "Draft from a duty";
        return brief_;
    }

  private:
    void fail(const Entry& entry, Message message) {
        problems_.push_back(wrong(entry.key, std::move(message)));
    }

    void readEntry(std::string_view text) {
        const auto place = text.find_first_of("=<>");
        if (place == std::string_view::npos) {
            problems_.push_back(wrong("", {LW_TEXT("\"%1\" is not of the form key=value"), text}));
            return;
        }
        const Entry entry{std::string(trimmed(text.substr(0, place))), text[place],
                          std::string(trimmed(text.substr(place + 1)))};
        const auto known = words();
        if (std::ranges::find(known, entry.key) == known.end()) {
            fail(entry, {LW_TEXT("\"%1\" is no key of a duty; the nearest is \"%2\""), entry.key,
                         design::nearest(entry.key, known)});
        } else if (!seen_.insert(entry.key).second) {
            fail(entry, {LW_TEXT("%1 is given twice"), entry.key});
        } else {
            take(entry);
        }
    }

    void take(const Entry& entry) {
        const std::string& key = entry.key;
        const bool isLimit = key == "diameter" || key == "length";
        const bool isSignRight = key == "life" ? entry.sign == '>'
                                 : isLimit     ? entry.sign != '>'
                                               : entry.sign == '=';
        if (!isSignRight) {
            fail(entry, {LW_TEXT("%1 must be given with %2"), key,
                         key == "life" ? TextId{">"}
                         : isLimit     ? LW_TEXT("< or =")
                                       : TextId{"="}});
        } else if (key == "fuel") {
            takeFuel(entry);
        } else if (key == "cylinders") {
            brief_.cylinders = count(entry, 64);
        } else if (key == "lobes") {
            brief_.lobes = count(entry, 24);
        } else if (key == "life") {
            takeLife(entry);
        } else {
            takeFigure(entry);
        }
    }

    void takeFuel(const Entry& entry) {
        std::vector<std::string> names;
        for (const gas::FuelData& fuel : gas::allFuels()) {
            if (entry.value == fuel.name) {
                brief_.fuel = static_cast<gas::Fuel>(names.size());
                return;
            }
            names.emplace_back(fuel.name);
        }
        fail(entry, {LW_TEXT("\"%1\" is no fuel of the program; it must be one of %2"), entry.value,
                     fmt::format("{}", fmt::join(names, ", "))});
    }

    std::optional<double> number(const Entry& entry, std::string_view text) {
        const auto value = parsed<double>(text);
        if (!value) {
            fail(entry, {LW_TEXT("%1 is \"%2\"; it must be a number"), entry.key, entry.value});
        }
        return value;
    }

    std::optional<int> count(const Entry& entry, int most) {
        const auto value = number(entry, entry.value);
        if (!value) {
            return std::nullopt;
        }
        if (*value < 1.0 || *value > most || std::trunc(*value) != *value) {
            fail(entry, {LW_TEXT("%1 is %2; it must be a whole number from 1 to %3"), entry.key,
                         asTyped(*value), most});
            return std::nullopt;
        }
        return static_cast<int>(*value);
    }

    void takeLife(const Entry& entry) {
        std::string_view text = entry.value;
        if (text.ends_with('h')) {
            text.remove_suffix(1);
        }
        if (const auto hours = number(entry, trimmed(text))) {
            if (*hours > 0.0 && *hours < 1e9) {
                brief_.life = *hours * 3600.0;
            } else {
                fail(entry, LW_TEXT("the life must be positive"));
            }
        }
    }

    void takeFigure(const Entry& entry) {
        struct Key {
            std::string_view name;
            Dimension dimension;
            std::optional<Figure> Brief::*member;
        };
        static const Key keys[] = {{"power", Dimension::power, &Brief::power},
                                   {"speed", Dimension::speed, &Brief::powerSpeed},
                                   {"torque", Dimension::torque, &Brief::torque},
                                   {"supply", Dimension::pressure, &Brief::supplyPressure},
                                   {"compression", Dimension::fraction, &Brief::compression},
                                   {"diameter", Dimension::length, &Brief::diameter},
                                   {"length", Dimension::length, &Brief::length}};
        const auto* key = std::ranges::find(keys, entry.key, &Key::name);
        const auto amount = study::parseAmount(entry.value, key->dimension);
        if (!amount) {
            fail(entry, amount.problems().front().message);
        } else if (!(amount->si > 0.0)) {
            fail(entry, {LW_TEXT("%1 must be positive"), entry.key});
        } else if (entry.sign == '<') {
            (entry.key == "diameter" ? brief_.diameterLimit : brief_.lengthLimit) = amount->si;
        } else {
            brief_.*key->member = Figure{amount->si, 0.0, study::text(*amount)};
        }
    }

    Brief brief_;
    Problems problems_;
    std::set<std::string> seen_;
};

} // namespace

Result<Brief> readDuty(std::string_view text) {
    return DutyReader().read(text);
}

} // namespace lobewright::draft
