#include "core/claims/verdict.h"

#include "core/claims/verdict_rows.h"
#include "core/units/named.h"

#include <algorithm>
#include <cmath>
#include <utility>

LW_TEXTS_OF(Core)

namespace lobewright::study {

namespace {

/// By which share it is more or less.
double relativeTo(double value, double published) {
    return published != 0.0 ? value / published - 1.0 : 0.0;
}

class DesignCells {
  public:
    DesignCells(const VerdictPage& page, const solution::Solution* design,
                const std::optional<ResultQuantileMap>& bands)
        : page_(page), design_(design), bands_(bands) {}

    void fill(const RowSubject& subject, VerdictRow& row) const {
        const auto published = publishedValue(page_.report.claims, row.id);
        fillDesign(subject, published, row);
        fillBand(subject, published, row);
        if (!row.design.text.empty() && design_ != nullptr) {
            row.designRestsOn = design::originCounts(design_->design);
        }
    }

  private:
    void fillDesign(const RowSubject& subject, std::optional<double> published,
                    VerdictRow& row) const {
        if (design_ == nullptr) {
            row.design.why = page_.designNote;
        } else if (!subject.figure.empty()) {
            fillFigure(subject, published, row);
        } else if (!subject.field.empty()) {
            fillField(std::string(subject.field), published, row);
        } else {
            row.design.why = LW_TEXT("no result of a design applies to it");
        }
    }

    void fillFigure(const RowSubject& subject, std::optional<double> published,
                    VerdictRow& row) const {
        const auto* figure = design_->figure(subject.figure);
        if (figure == nullptr || !figure->value) {
            row.design.why = figure != nullptr && !figure->note.empty()
                                 ? figure->note
                                 : LW_TEXT("the open design has no such result");
            return;
        }
        const Unit& own = *figure->unit;
        row.design.opens = VerdictCell::Opens::figure;
        row.design.target = subject.figure;
        const double value = toSi(own, *figure->value);
        Message text(LW_TEXT("%1"), lobewright::Amount(value, shownIn(subject, own)));
        if (row.isQuoted) { // the statement does not say what it is
            text = {LW_TEXT("%1: %2"), figure->label, text};
        }
        if (!subject.at.empty()) { // of the running speed, not of the highest on the curve
            text = {LW_TEXT("%1 at %2"), text,
                    withDecimals(design_->design.running.speed, in::turnsPerMinute, 0)};
        }
        row.design.text = compared(std::move(text), value, published);
    }

    /// Shares are read in per cent where they are efficiencies.
    static const Unit& shownIn(const RowSubject& subject, const Unit& own) {
        return subject.isPercent ? in::percent : own;
    }

    void fillField(const std::string& path, std::optional<double> published,
                   VerdictRow& row) const {
        const auto field = design::findField(design_->design, path);
        const double* value = field ? std::get_if<double>(&field->value) : nullptr;
        if (value == nullptr) {
            row.design.why = LW_TEXT("the open design has no such input");
            return;
        }
        const Unit& own = unitNamed(field->unit);
        const bool isSame = row.id != "/engine/diameter" && row.id != "/engine/length";
        row.design.opens = VerdictCell::Opens::field;
        row.design.target = path;
        const double designed = toSi(own, *value);
        Message text(LW_TEXT("%1"), lobewright::Amount(designed, own));
        if (!isSame || row.isQuoted) {
            text = {LW_TEXT("%1: %2"), field->label, text};
        }
        row.design.text = compared(std::move(text), designed, isSame ? published : std::nullopt);
    }

    /// With how much it is more or less than published [SI].
    static Message compared(Message text, double value, std::optional<double> published) {
        const double off = published ? relativeTo(value, *published) : 0.0;
        if (std::abs(off) < roundingOfFigures) {
            return text;
        }
        return off < 0.0 ? Message(LW_TEXT("%1, %2 % less"), text, number(-100.0 * off, 2))
                         : Message(LW_TEXT("%1, %2 % more"), text, number(100.0 * off, 2));
    }

    void fillBand(const RowSubject& subject, std::optional<double> published,
                  VerdictRow& row) const {
        if (design_ == nullptr) {
            row.band.why = page_.designNote;
            return;
        }
        if (subject.result.empty()) {
            row.band.why = LW_TEXT("no band is computed for it");
            return;
        }
        row.band.opens = VerdictCell::Opens::result;
        row.band.target = subject.result;
        if (!bands_) {
            row.band.why = LW_TEXT("the study of unknowns has not been made");
            return;
        }
        const auto found = bands_->find(subject.result);
        if (found == bands_->end()) {
            row.band.why = LW_TEXT("the study of unknowns has no such result");
            return;
        }
        const ResultQuantiles& band = found->second;
        const Unit& shown = shownIn(subject, *subject.resultUnit);
        const auto edge = [&](double value) {
            return lobewright::Amount(toSi(*subject.resultUnit, value), shown, 3);
        };
        row.band.text = {LW_TEXT("%1 … %2"), edge(band.p05).bare(), edge(band.p95)};
        if (published && !row.isQuoted) {
            weigh(band, fromSi(*subject.resultUnit, *published), *subject.resultUnit, row);
        }
    }

    /// A figure that nineteen of twenty possible engines miss is at least doubtful.
    void weigh(const ResultQuantiles& band, double published, const Unit& unit,
               VerdictRow& row) const {
        const double rounding = roundingOfFigures * std::abs(published);
        const bool isAbove = published > band.p95 + rounding;
        if (!isAbove && published >= band.p05 - rounding) {
            return;
        }
        row.outcome = std::min(row.outcome, RowOutcome::doubtful);
        if (row.confidence == Confidence::low) {
            row.confidence = Confidence::medium;
        }
        row.overturnedBy = joined(
            row.overturnedBy, isAbove ? Message(LW_TEXT("19 of 20 possible engines stay below %1: "
                                                        "narrower or other ranges of its inputs."),
                                                amountIn(unit, band.p95, 3))
                                      : Message(LW_TEXT("19 of 20 possible engines lie above %1: "
                                                        "narrower or other ranges of its inputs."),
                                                amountIn(unit, band.p05, 3)));
    }

    const VerdictPage& page_;
    const solution::Solution* design_;
    const std::optional<ResultQuantileMap>& bands_;
};

/// Whether the design was made of these figures and has their name still.
bool isDraftOf(const Claims& claims, const solution::Solution& design) {
    return !claims.title.empty() && claims.title == design.design.title;
}

RowSubject subjectOf(const VerdictPage& page, const VerdictRow& row) {
    const auto subjects = rowSubjects();
    if (const auto found = std::ranges::find(subjects, std::string_view(row.id), &RowSubject::path);
        found != subjects.end()) {
        return *found;
    }
    for (std::size_t i = 0; i < page.report.statements.size(); ++i) {
        if (row.id == "/statements/" + std::to_string(i)) {
            return subjectOf(page.report.statements[i].statement);
        }
    }
    return {};
}

} // namespace

void addDesign(VerdictPage& page, const solution::Solution* design,
               const std::optional<ResultQuantileMap>& bands) {
    const DesignCells cells(page, design, bands);
    for (VerdictRow& row : page.rows) {
        if (row.id.starts_with("conflict/")) {
            row.design.why = row.band.why =
                LW_TEXT("published numbers are only compared with each other");
            continue;
        }
        cells.fill(subjectOf(page, row), row);
    }
}

VerdictPage verdictPage(const Claims& claims, const solution::Solution* design,
                        const std::optional<ResultQuantileMap>& bands) {
    VerdictPage page;
    const solution::Solution* shown = nullptr;
    if (design == nullptr) {
        page.designNote = LW_TEXT("no design is open");
    } else if (const EngineMatch match = matchEngine(claims, *design); !match.differs.empty()) {
        page.designNote = {LW_TEXT("the open design is another engine: %1"), match.differs};
    } else if (match.compared == 0 && !isDraftOf(claims, *design)) {
        page.designNote = LW_TEXT("no given figure shows whether the open design is this engine; "
                                  "chambers, lobes, displacement, bore or stroke would");
    } else {
        shown = design;
    }
    page.report = checkClaims(claims, design);
    // Statements are answered from the design only where the check does so.
    const bool isSame = design != nullptr && isSameEngine(claims, *design);
    page.rows = arithmeticRows(page.report);
    page.others = otherWorkings(page.report, page.rows);
    addBasis(page, isSame ? design : nullptr);
    addDesign(page, shown, bands);
    std::ranges::stable_sort(page.rows, {}, [](const VerdictRow& row) {
        return std::pair(row.outcome, row.confidence);
    });
    return page;
}

} // namespace lobewright::study
