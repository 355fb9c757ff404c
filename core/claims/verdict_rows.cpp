#include "core/claims/verdict_rows.h"

#include "core/claims/claims_basis.h"
#include "core/claims/claims_keys.h"
#include "core/enum_table.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::study {

namespace {

RowOutcome outcomeOf(Verdict verdict) {
    using enum RowOutcome;
    return entryOf<Verdict::contradictory>({computed, ordinary, ambitious, onlyWithBoost, beyond,
                                            beyondEstimate, implausible, contradictory},
                                           verdict);
}

RowOutcome outcomeOf(Outcome outcome) {
    using enum RowOutcome;
    return entryOf<Outcome::open>({agrees, disagrees, doubtful, open}, outcome);
}

/// Three digits, five where the number has that many before its point.
Message withUnit(double value, const std::string& unit) {
    const int digits = std::abs(value) >= 1e3 ? 5 : 3;
    const Unit* known = findUnit(unit);
    return known != nullptr ? Message(LW_TEXT("%1"), amountIn(*known, value, digits))
                            : Message(LW_TEXT("%1 %2"), number(value, digits), unit);
}

RowWorking workingOf(const Finding& finding) {
    const bool isPlain = finding.verdict == Verdict::computed || !finding.readings.empty();
    return {finding.quantity,
            Message(LW_TEXT("%1 = %2"), finding.formula, finding.substituted),
            finding.readings.empty() ? withUnit(finding.value, finding.unit) : Message(),
            isPlain ? TextId{} : name(finding.verdict),
            finding.band,
            finding.source,
            finding.note,
            finding.readings,
            finding.unit};
}

/// "Required charging efficiency: 1.4"; where it is open which value, all of them.
Message summaryOf(const Finding& finding) {
    if (finding.readings.empty()) {
        return {LW_TEXT("%1: %2"), finding.quantity, withUnit(finding.value, finding.unit)};
    }
    Message all;
    for (const Reading& reading : finding.readings) {
        all = joined(
            all, Message(LW_TEXT("%1: %2"), reading.what, withUnit(reading.value, finding.unit)));
    }
    return {LW_TEXT("%1: %2"), finding.quantity, all};
}

VerdictCell entryCell(Message text, std::string path) {
    VerdictCell cell;
    cell.text = std::move(text);
    cell.opens = VerdictCell::Opens::entry;
    cell.target = std::move(path);
    return cell;
}

/// The given numbers of a turn, or of the volume, held against each other where all are there.
class OwnArithmetic {
  public:
    explicit OwnArithmetic(const ClaimsReport& report) : report_(report) {}

    std::optional<RowWorking> of(std::string_view path) const {
        return path == "/engine/displacement"      ? displacement()
               : path == "/engine/events_per_turn" ? events()
                                                   : std::nullopt;
    }

  private:
    std::optional<RowWorking> displacement() const {
        const ClaimedEngine& engine = report_.claims.engine;
        if (!engine.bore || !engine.stroke || !engine.pistons) {
            return std::nullopt;
        }
        const double litres = *engine.pistons * units::pi / 4.0 * engine.bore->si *
                              engine.bore->si * engine.stroke->si * 1e3;
        return RowWorking{.quantity = LW_TEXT("Displacement from bore and stroke"),
                          .arithmetic =
                              fmt::format("{:.6g}·π/4·({})²·{}", *engine.pistons,
                                          study::text(*engine.bore), study::text(*engine.stroke)),
                          .value = withUnit(litres, "L"),
                          .source = LW_TEXT("definition")};
    }
    std::optional<RowWorking> events() const {
        const ClaimedEngine& engine = report_.claims.engine;
        const double m = engine.reciprocations.value_or(engine.drive == Drive::crank ? 1.0 : 0.0);
        if (!engine.cycle || !engine.cylinders || m <= 0.0) {
            return std::nullopt;
        }
        const bool isTwoStroke = *engine.cycle == StrokeCycle::twoStroke;
        const double counted = *engine.cylinders * m * (isTwoStroke ? 1.0 : 0.5);
        return RowWorking{.quantity =
                              LW_TEXT("Power strokes counted from chambers and reciprocations"),
                          .arithmetic = {LW_TEXT("%1 chambers·%2 reciprocations·%3"),
                                         number(*engine.cylinders, 6), number(m, 6),
                                         number(isTwoStroke ? 1.0 : 0.5)},
                          .value = {LW_TEXT("%1"), number(counted, 6)},
                          .source = LW_TEXT("definition")};
    }

    const ClaimsReport& report_;
};

bool isInConflict(const ClaimsReport& report, std::string_view path) {
    return std::ranges::any_of(report.conflicts, [path](const Conflict& conflict) {
        return std::ranges::find(conflict.paths, path) != conflict.paths.end();
    });
}

/// Strongest first; of equals as listed.
std::vector<const Finding*> findingsOf(const ClaimsReport& report, const RowSubject& subject) {
    std::vector<const Finding*> found;
    for (const std::string_view id : subject.findings) {
        if (const Finding* finding = id.empty() ? nullptr : report.finding(id)) {
            found.push_back(finding);
        }
    }
    std::ranges::stable_sort(found, {},
                             [](const Finding* finding) { return outcomeOf(finding->verdict); });
    return found;
}

void addOwnArithmetic(const ClaimsReport& report, const RowSubject& subject, VerdictRow& row) {
    auto own = OwnArithmetic(report).of(subject.path);
    if (!own) {
        return;
    }
    row.outcome =
        isInConflict(report, subject.path) ? RowOutcome::contradictory : RowOutcome::agrees;
    row.confidence = Confidence::high;
    row.arithmetic.text = {LW_TEXT("%1: %2"), own->quantity, own->value};
    row.workings.insert(row.workings.begin(), std::move(*own));
}

VerdictRow figureRow(const ClaimsReport& report, const RowSubject& subject) {
    VerdictRow row;
    row.id = subject.path;
    row.what = claimLabel(subject.path);
    Message published = publishedText(report.claims, subject.path);
    const Message at = publishedText(report.claims, subject.at);
    if (!at.empty()) {
        published = {LW_TEXT("%1 at %2"), published, at};
    }
    row.published = entryCell(std::move(published), row.id);
    for (const Finding* finding : findingsOf(report, subject)) {
        if (row.workings.empty()) {
            row.arithmetic.text = summaryOf(*finding);
            row.outcome = outcomeOf(finding->verdict);
            // A band, an assumption or a bound: not arithmetic on the given numbers alone.
            row.confidence = finding->band.empty() && finding->note.empty() ? Confidence::high
                                                                            : Confidence::medium;
        }
        row.workings.push_back(workingOf(*finding));
    }
    addOwnArithmetic(report, subject, row);
    if (row.arithmetic.text.empty()) {
        row.arithmetic.why = subject.findings.front().empty()
                                 ? LW_TEXT("no arithmetic on published figures applies to it")
                                 : LW_TEXT("too few numbers are given for any computation");
    } else {
        row.arithmetic.opens = VerdictCell::Opens::working;
        row.arithmetic.target = row.id;
    }
    return row;
}

Message listed(const std::vector<Message>& messages) {
    Message all;
    for (const Message& message : messages) {
        all = all.empty() ? message : Message(LW_TEXT("%1, %2"), all, message);
    }
    return all;
}

VerdictRow conflictRow(const ClaimsReport& report, std::size_t index) {
    const Conflict& conflict = report.conflicts[index];
    VerdictRow row;
    row.id = fmt::format("conflict/{}", index);
    std::vector<Message> names, texts;
    for (const std::string& path : conflict.paths) {
        names.emplace_back(claimLabel(path));
        texts.push_back(publishedText(report.claims, path));
        row.given.push_back(claimLabel(path));
    }
    row.what = listed(names);
    row.published = entryCell(listed(texts), conflict.paths.front());
    row.arithmetic = {conflict.message, {}, VerdictCell::Opens::working, row.id};
    row.workings.push_back({.quantity = conflict.message, .arithmetic = conflict.arithmetic});
    row.outcome = outcomeOf(conflict.verdict);
    row.confidence = Confidence::high;
    return row;
}

VerdictRow statementRow(const ClaimsReport& report, std::size_t index) {
    const StatementRow& said = report.statements[index];
    VerdictRow row;
    row.id = fmt::format("/statements/{}", index);
    row.what = Message(said.statement.claim);
    row.isQuoted = true;
    row.published = entryCell(row.what, row.id);
    row.arithmetic.text = said.computed;
    row.arithmetic.opens = VerdictCell::Opens::working;
    row.arithmetic.target = row.id;
    row.workings.push_back({.quantity = said.computed, .arithmetic = said.arithmetic});
    row.outcome = outcomeOf(said.outcome);
    row.confidence = said.confidence;
    row.overturnedBy = said.overturnedBy;
    return row;
}

} // namespace

std::vector<VerdictRow> arithmeticRows(const ClaimsReport& report) {
    std::vector<VerdictRow> rows;
    for (std::size_t i = 0; i < report.conflicts.size(); ++i) {
        rows.push_back(conflictRow(report, i));
    }
    for (const RowSubject& subject : rowSubjects()) {
        const bool isPart =
            !subject.partOf.empty() && !publishedText(report.claims, subject.partOf).empty();
        if (!isPart && !publishedText(report.claims, subject.path).empty()) {
            rows.push_back(figureRow(report, subject));
        }
    }
    for (std::size_t i = 0; i < report.statements.size(); ++i) {
        rows.push_back(statementRow(report, i));
    }
    return rows;
}

std::vector<RowWorking> otherWorkings(const ClaimsReport& report,
                                      const std::vector<VerdictRow>& rows) {
    std::vector<RowWorking> others;
    for (const Finding& finding : report.findings) {
        const bool isShown = std::ranges::any_of(rows, [&finding](const VerdictRow& row) {
            return std::ranges::any_of(row.workings, [&finding](const RowWorking& working) {
                return working.quantity == finding.quantity;
            });
        });
        if (!isShown) {
            others.push_back(workingOf(finding));
        }
    }
    return others;
}

TextId name(RowOutcome outcome) {
    return entryOf<RowOutcome::open>(
        {name(Verdict::contradictory), name(Outcome::disagrees), name(Verdict::outsideBand),
         name(Verdict::outsideEstimate), name(Verdict::implausible), name(Verdict::onlyWithBoost),
         name(Outcome::doubtful), name(Verdict::ambitious), name(Outcome::agrees),
         name(Verdict::ordinary), LW_TEXT("not judged"), name(Outcome::open)},
        outcome);
}

bool isAgainst(RowOutcome outcome) {
    return outcome <= RowOutcome::doubtful && outcome != RowOutcome::onlyWithBoost;
}

std::string_view name(VerdictCell::Opens opens) {
    return entryOf<VerdictCell::Opens::result, std::string_view>(
        {"nothing", "entry", "working", "figure", "field", "result"}, opens);
}

} // namespace lobewright::study
