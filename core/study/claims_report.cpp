#include "core/study/claims_report.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

namespace lobewright::study {

namespace {

using nlohmann::ordered_json;

constexpr const char* caution =
    "Estimates only. A verdict compares published numbers with arithmetic and with the bands of "
    "the "
    "named sources; it says nothing about any engine that was built, and none releases one.";

/// Number of columns that UTF-8 text takes, one a code point.
std::size_t columns(std::string_view text) {
    std::size_t count = 0;
    for (const char c : text) {
        count += (static_cast<unsigned char>(c) & 0xC0U) != 0x80U ? 1 : 0;
    }
    return count;
}

/// Lines of at most `width` columns, broken at spaces, all indented.
std::string wrapped(std::string_view text, std::size_t indent, std::size_t width) {
    const std::string margin(indent, ' ');
    std::string result, line;
    const auto flush = [&] {
        if (!line.empty()) {
            result += margin + line + "\n";
            line.clear();
        }
    };
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t space = std::min(text.find(' ', at), text.size());
        const std::string_view word = text.substr(at, space - at);
        if (!line.empty() && indent + columns(line) + 1 + columns(word) > width) {
            flush();
        }
        line.append(line.empty() ? "" : " ").append(word);
        at = space + 1;
    }
    flush();
    return result;
}

/// Label in front of wrapped text.
std::string labelled(std::string_view label, std::string_view text, std::size_t width) {
    constexpr std::size_t indent = 4, labelWidth = 12;
    if (text.empty()) {
        return "";
    }
    std::string body = wrapped(text, indent + labelWidth, width);
    const std::size_t room = labelWidth - std::min(labelWidth, columns(label));
    body.replace(indent, labelWidth, std::string(label) + std::string(room, ' '));
    return body;
}

std::string heading(std::string_view words) {
    return fmt::format("\n{}\n{}\n", words, std::string(columns(words), '-'));
}

std::string findingText(const Finding& finding, std::size_t width) {
    std::string text =
        wrapped(fmt::format("{}: {:.5g}{}{} — {}", finding.quantity, finding.value,
                            finding.unit.empty() ? "" : " ", finding.unit, name(finding.verdict)),
                2, width);
    text += labelled("arithmetic", finding.formula + " = " + finding.substituted, width);
    text += labelled("band", finding.band, width);
    text += labelled("source", finding.source, width);
    text += labelled("note", finding.note, width);
    return text;
}

std::string statementText(const StatementRow& row, std::size_t width) {
    const Statement& said = row.statement;
    std::string text = wrapped(fmt::format("\"{}\" — {}", said.claim, name(row.outcome)), 2, width);
    text += labelled("source", said.source + (said.date.empty() ? "" : ", " + said.date), width);
    text += labelled("computed", row.computed, width);
    text += labelled("arithmetic", row.arithmetic, width);
    text += labelled("confidence", name(row.confidence), width);
    text += labelled("overturned", row.overturnedBy, width);
    return text;
}

ordered_json findingJson(const Finding& finding) {
    return {{"id", finding.id},
            {"quantity", finding.quantity},
            {"formula", finding.formula},
            {"substituted", finding.substituted},
            {"value", finding.value},
            {"unit", finding.unit},
            {"band", finding.band},
            {"source", finding.source},
            {"verdict", name(finding.verdict)},
            {"note", finding.note}};
}

} // namespace

std::string claimsText(const ClaimsReport& report, std::size_t width) {
    const Claims& claims = report.claims;
    std::string text;
    if (!claims.title.empty()) {
        text += claims.title + "\n";
    }
    if (!claims.source.empty()) {
        text += wrapped(claims.source + (claims.date.empty() ? "" : ", " + claims.date), 0, width);
    }
    if (!report.conflicts.empty()) {
        text += heading("Given numbers that do not fit each other");
        for (const Conflict& conflict : report.conflicts) {
            text +=
                wrapped(fmt::format("{}: {}", name(conflict.verdict), conflict.message), 2, width);
            text += labelled("arithmetic", conflict.arithmetic, width);
            text += labelled("keys", fmt::format("{}", fmt::join(conflict.paths, ", ")), width);
        }
    }
    if (!report.findings.empty()) {
        text += heading("What follows from the numbers");
        for (const Finding& finding : report.findings) {
            text += findingText(finding, width);
        }
    }
    if (!report.statements.empty()) {
        text += heading("Statements");
        for (const StatementRow& row : report.statements) {
            text += statementText(row, width);
        }
    }
    if (!report.missing.empty()) {
        text += heading("Numbers not given, and what they would decide");
        for (const MissingNumber& missing : report.missing) {
            text += wrapped(fmt::format("{}: {}", missing.label, missing.decides), 2, width);
        }
    }
    if (!report.assumptions.empty()) {
        text += heading("Assumed");
        for (const std::string& assumption : report.assumptions) {
            text += wrapped(assumption, 2, width);
        }
    }
    return text + "\n" + wrapped(caution, 0, width);
}

std::string claimsJson(const ClaimsReport& report) {
    ordered_json root;
    root["title"] = report.claims.title;
    root["findings"] = ordered_json::array();
    for (const Finding& finding : report.findings) {
        root["findings"].push_back(findingJson(finding));
    }
    root["conflicts"] = ordered_json::array();
    for (const Conflict& conflict : report.conflicts) {
        root["conflicts"].push_back({{"verdict", name(conflict.verdict)},
                                     {"paths", conflict.paths},
                                     {"message", conflict.message},
                                     {"arithmetic", conflict.arithmetic}});
    }
    root["statements"] = ordered_json::array();
    for (const StatementRow& row : report.statements) {
        root["statements"].push_back({{"claim", row.statement.claim},
                                      {"source", row.statement.source},
                                      {"date", row.statement.date},
                                      {"outcome", name(row.outcome)},
                                      {"computed", row.computed},
                                      {"arithmetic", row.arithmetic},
                                      {"confidence", name(row.confidence)},
                                      {"overturned_by", row.overturnedBy}});
    }
    root["missing"] = ordered_json::array();
    for (const MissingNumber& missing : report.missing) {
        root["missing"].push_back(
            {{"path", missing.path}, {"label", missing.label}, {"decides", missing.decides}});
    }
    root["assumptions"] = report.assumptions;
    root["caution"] = caution;
    return root.dump(2, ' ', false, ordered_json::error_handler_t::replace) + "\n";
}

} // namespace lobewright::study
