#include "core/claims/claims_report.h"

#include "core/printable.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <algorithm>

LW_TEXTS_OF(Core)

namespace lobewright::study {

namespace {

using nlohmann::ordered_json;

constexpr TextId caution =
    LW_TEXT("Estimates only. A verdict compares published numbers with arithmetic and with the "
            "bands of the named sources; it says nothing about any engine that was built and "
            "releases none for use.");

/// Number of columns that UTF-8 text takes, one a code point.
std::size_t columns(std::string_view text) {
    std::size_t count = 0;
    for (const char c : text) {
        count += (static_cast<unsigned char>(c) & 0xC0U) != 0x80U ? 1 : 0;
    }
    return count;
}

/// Lines of at most `width` columns, broken at spaces, all indented.
std::string wrapped(std::string_view given, std::size_t indent, std::size_t width) {
    const std::string text = printable(given), margin(indent, ' ');
    std::string result, line;
    const auto flush = [&] {
        if (!line.empty()) {
            result += margin + line + "\n";
            line.clear();
        }
    };
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t space = std::min(text.find(' ', at), text.size());
        const std::string_view word = std::string_view(text).substr(at, space - at);
        if (!line.empty() && indent + columns(line) + 1 + columns(word) > width) {
            flush();
        }
        line.append(line.empty() ? "" : " ").append(word);
        at = space + 1;
    }
    flush();
    return result;
}

std::string heading(std::string_view words) {
    return fmt::format("\n{}\n{}\n", words, std::string(columns(words), '-'));
}

/// Writes the report for people, in the words of one language.
class ReportText {
  public:
    ReportText(std::size_t width, const std::function<std::string(const Message&)>& words)
        : width_(width), words_(words) {}

    /// `verdict`: above the rest; null: none.
    std::string of(const ClaimsReport& report, const VerdictPage* verdict = nullptr);

  private:
    std::string said(const Message& text) const { return words_(text); }
    /// Label in front of wrapped text, which is translated.
    std::string labelled(TextId label, const Message& text) const {
        return quoted(label, said(text));
    }
    /// The same with text of the user.
    std::string quoted(TextId label, std::string_view text) const;
    std::string finding(const Finding& finding) const;
    std::string statement(const StatementRow& row) const;
    std::string conflict(const Conflict& conflict) const;
    std::string row(const VerdictRow& row, const VerdictPage& page) const;
    std::string restsOn(const VerdictRow& row) const;
    std::string listed(const std::vector<TextId>& labels) const;

    std::size_t width_;
    const std::function<std::string(const Message&)>& words_;
};

std::string ReportText::quoted(TextId label, std::string_view text) const {
    constexpr std::size_t indent = 4, labelWidth = 12;
    if (text.empty()) {
        return "";
    }
    const std::string shown = said(label);
    std::string body = wrapped(text, indent + labelWidth, width_);
    const std::size_t room = labelWidth - std::min(labelWidth - 1, columns(shown));
    body.replace(indent, labelWidth, shown + std::string(room, ' '));
    return body;
}

std::string ReportText::finding(const Finding& finding) const {
    const auto valued = [&](double value, Verdict verdict) {
        return fmt::format("{:.5g}{}{} — {}", value, finding.unit.empty() ? "" : " ", finding.unit,
                           said(name(verdict)));
    };
    std::string text =
        wrapped(said(finding.quantity) +
                    (finding.readings.empty() ? ": " + valued(finding.value, finding.verdict) : ""),
                2, width_);
    for (const Reading& reading : finding.readings) {
        text +=
            wrapped(said(reading.what) + ": " + valued(reading.value, reading.verdict), 4, width_);
    }
    text +=
        quoted(LW_TEXT("arithmetic"), said(finding.formula) + " = " + said(finding.substituted));
    text += labelled(LW_TEXT("band"), finding.band);
    text += labelled(LW_TEXT("source"), finding.source);
    text += labelled(LW_TEXT("note"), finding.note);
    return text;
}

std::string ReportText::statement(const StatementRow& row) const {
    const Statement& claimed = row.statement;
    std::string text =
        wrapped(fmt::format("\"{}\" — {}", claimed.claim, said(name(row.outcome))), 2, width_);
    text += quoted(LW_TEXT("source"),
                   claimed.source + (claimed.date.empty() ? "" : ", " + claimed.date));
    text += labelled(LW_TEXT("computed"), row.computed);
    text += labelled(LW_TEXT("arithmetic"), row.arithmetic);
    text += labelled(LW_TEXT("confidence"), name(row.confidence));
    text += labelled(LW_TEXT("overturned"), row.overturnedBy);
    return text;
}

std::string ReportText::conflict(const Conflict& conflict) const {
    std::string text = wrapped(
        fmt::format("{}: {}", said(name(conflict.verdict)), said(conflict.message)), 2, width_);
    text += labelled(LW_TEXT("arithmetic"), conflict.arithmetic);
    return text + quoted(LW_TEXT("keys"), fmt::format("{}", fmt::join(conflict.paths, ", ")));
}

std::string ReportText::listed(const std::vector<TextId>& labels) const {
    std::vector<std::string> words(labels.size());
    std::ranges::transform(labels, words.begin(), [this](TextId label) { return said(label); });
    return fmt::format("{}", fmt::join(words, ", "));
}

std::string ReportText::restsOn(const VerdictRow& row) const {
    std::vector<std::string> parts;
    const auto add = [this, &parts](TextId what, const std::string& text) {
        parts.push_back(said(Message(LW_TEXT("%1: %2"), what, text)));
    };
    if (!row.given.empty()) {
        add(LW_TEXT("given"), listed(row.given));
    }
    if (!row.assumed.empty()) {
        add(LW_TEXT("assumed"), listed(row.assumed));
    }
    if (row.designRestsOn) {
        const auto& n = *row.designRestsOn;
        parts.push_back(said(
            Message(LW_TEXT("the design: %1 given, %2 measured, %3 derived, %4 assumed, %5 chosen"),
                    n.given, n.measured, n.derived, n.assumed, n.chosen)));
    }
    return fmt::format("{}", fmt::join(parts, "; "));
}

std::string ReportText::row(const VerdictRow& row, const VerdictPage& page) const {
    const std::string what = row.isQuoted ? fmt::format("\"{}\"", said(row.what)) : said(row.what);
    std::string text = wrapped(fmt::format("{} — {}", what, said(name(row.outcome))), 2, width_);
    const auto cell = [&](TextId label, const VerdictCell& one) {
        // What holds for the whole column is said once above it.
        if (!one.text.empty() || one.why != page.designNote) {
            text += labelled(label,
                             one.text.empty() ? Message(LW_TEXT("none: %1"), one.why) : one.text);
        }
    };
    if (!row.isQuoted) {
        cell(LW_TEXT("published"), row.published);
    }
    cell(LW_TEXT("arithmetic"), row.arithmetic);
    cell(LW_TEXT("this design"), row.design);
    cell(LW_TEXT("band"), row.band);
    text += quoted(LW_TEXT("rests on"), restsOn(row));
    text += labelled(LW_TEXT("confidence"), name(row.confidence));
    return text + labelled(LW_TEXT("overturned"), row.overturnedBy);
}

std::string ReportText::of(const ClaimsReport& report, const VerdictPage* verdict) {
    const Claims& claims = report.claims;
    std::string text;
    if (!claims.title.empty()) {
        text += printable(claims.title) + "\n";
    }
    if (!claims.source.empty()) {
        text += wrapped(claims.source + (claims.date.empty() ? "" : ", " + claims.date), 0, width_);
    }
    const auto section = [&](TextId title, const auto& rows, auto write) {
        text += rows.empty() ? "" : heading(said(title));
        for (const auto& row : rows) {
            text += write(row);
        }
    };
    if (verdict != nullptr && !verdict->rows.empty()) {
        text += heading(said(LW_TEXT("Verdict, the weightiest first")));
        text += verdict->designNote.empty() ? "" : wrapped(said(verdict->designNote), 2, width_);
        for (const VerdictRow& one : verdict->rows) {
            text += row(one, *verdict);
        }
        const auto& wanted = verdict->wanted;
        if (!wanted.empty() && !wanted.front().rows.empty()) {
            text += "\n" + wrapped(said({LW_TEXT("Rows that %1 would decide: %2."),
                                         wanted.front().label, wanted.front().rows.size()}),
                                   2, width_);
        }
    }
    section(LW_TEXT("Given numbers that do not fit each other"), report.conflicts,
            [&](const Conflict& row) { return conflict(row); });
    section(LW_TEXT("What follows from the numbers"), report.findings,
            [&](const Finding& row) { return finding(row); });
    section(LW_TEXT("Statements"), report.statements,
            [&](const StatementRow& row) { return statement(row); });
    section(LW_TEXT("Numbers not given, and what they would decide"), report.missing,
            [&](const MissingNumber& row) {
                return wrapped(fmt::format("{}: {}", said(row.label), said(row.decides)), 2,
                               width_);
            });
    section(LW_TEXT("Assumed"), report.assumptions,
            [&](const Message& row) { return wrapped(said(row), 2, width_); });
    return text + "\n" + wrapped(said(caution), 0, width_);
}

/// A list, each entry as `entry` writes it.
template <class Rows, class Entry>
ordered_json listJson(const Rows& rows, Entry entry) {
    ordered_json list = ordered_json::array();
    for (const auto& row : rows) {
        list.push_back(entry(row));
    }
    return list;
}

ordered_json readingJson(const Reading& reading) {
    return {{"what", reading.what.english()},
            {"value", reading.value},
            {"verdict", name(reading.verdict).text}};
}

ordered_json findingJson(const Finding& finding) {
    return {{"id", finding.id},
            {"quantity", finding.quantity.english()},
            {"formula", finding.formula.english()},
            {"substituted", finding.substituted.english()},
            {"value", finding.value},
            {"unit", finding.unit},
            {"band", finding.band.english()},
            {"source", finding.source.english()},
            {"verdict", name(finding.verdict).text},
            {"note", finding.note.english()},
            {"readings", listJson(finding.readings, readingJson)}};
}

ordered_json reportJson(const ClaimsReport& report) {
    ordered_json root;
    root["title"] = report.claims.title;
    root["findings"] = listJson(report.findings, findingJson);
    root["conflicts"] = listJson(report.conflicts, [](const Conflict& conflict) -> ordered_json {
        return {{"verdict", name(conflict.verdict).text},
                {"paths", conflict.paths},
                {"message", conflict.message.english()},
                {"arithmetic", conflict.arithmetic.english()}};
    });
    root["statements"] = listJson(report.statements, [](const StatementRow& row) -> ordered_json {
        return {{"claim", row.statement.claim},
                {"source", row.statement.source},
                {"date", row.statement.date},
                {"outcome", name(row.outcome).text},
                {"computed", row.computed.english()},
                {"arithmetic", row.arithmetic.english()},
                {"confidence", name(row.confidence).text},
                {"overturned_by", row.overturnedBy.english()}};
    });
    root["missing"] = listJson(report.missing, [](const MissingNumber& missing) -> ordered_json {
        return {{"path", missing.path},
                {"label", missing.label.text},
                {"decides", missing.decides.text}};
    });
    root["assumptions"] =
        listJson(report.assumptions, [](const Message& one) { return one.english(); });
    root["caution"] = caution.text;
    return root;
}

ordered_json cellJson(const VerdictCell& cell) {
    return {{"text", cell.text.english()},
            {"why", cell.why.english()},
            {"opens", name(cell.opens)},
            {"target", cell.target}};
}

ordered_json wordsJson(const std::vector<TextId>& labels) {
    return listJson(labels, [](TextId label) { return label.text; });
}

ordered_json rowJson(const VerdictRow& row) {
    ordered_json rests = {{"given", wordsJson(row.given)}, {"assumed", wordsJson(row.assumed)}};
    if (row.designRestsOn) {
        const auto& n = *row.designRestsOn;
        rests["design"] = {{"given", n.given},
                           {"measured", n.measured},
                           {"derived", n.derived},
                           {"assumed", n.assumed},
                           {"chosen", n.chosen}};
    }
    return {{"id", row.id},
            {"what", row.what.english()},
            {"published", cellJson(row.published)},
            {"arithmetic", cellJson(row.arithmetic)},
            {"this_design", cellJson(row.design)},
            {"band", cellJson(row.band)},
            {"outcome", name(row.outcome).text},
            {"confidence", name(row.confidence).text},
            {"rests_on", rests},
            {"overturned_by", row.overturnedBy.english()}};
}

std::string written(const ordered_json& root) {
    return root.dump(2, ' ', false, ordered_json::error_handler_t::replace) + "\n";
}

} // namespace

std::string claimsText(const ClaimsReport& report, std::size_t width,
                       const std::function<std::string(const Message&)>& words) {
    return ReportText(width, words).of(report);
}

std::string claimsText(const VerdictPage& page, std::size_t width,
                       const std::function<std::string(const Message&)>& words) {
    return ReportText(width, words).of(page.report, &page);
}

std::string claimsJson(const ClaimsReport& report) {
    return written(reportJson(report));
}

std::string claimsJson(const VerdictPage& page) {
    ordered_json root = reportJson(page.report);
    root["verdict"] = listJson(page.rows, rowJson);
    root["wanted"] = listJson(page.wanted, [](const WantedNumber& wanted) -> ordered_json {
        return {{"path", wanted.path},
                {"label", wanted.label.text},
                {"decides", wanted.decides.text},
                {"rows", wanted.rows}};
    });
    root["design_note"] = page.designNote.english();
    return written(root);
}

} // namespace lobewright::study
