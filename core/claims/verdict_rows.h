#pragma once

#include "core/claims/verdict.h"

#include <array>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

/// Rows of the verdict before the design, the bands and their order. Internal to the verdict.
namespace lobewright::study {

/// A published figure that makes a row, and where it is looked up.
struct RowSubject {
    std::string_view path{};
    /// Published beside it: "48 kW at 1400 rpm"; empty: nothing.
    std::string_view at{};
    std::array<std::string_view, 4> findings{}; ///< identifiers of what judges it
    std::string_view figure{};                  ///< of a solution; empty: none
    std::string_view field{};                   ///< of a design, where there is no figure
    std::string_view result{};                  ///< of a study over unknowns; empty: none
    const Unit* resultUnit = &in::pure;
    bool isPercent = false; ///< a share that is read in per cent
    /// Shown as another row's `at` where that one is given.
    std::string_view partOf{};
};
std::span<const RowSubject> rowSubjects();

/// Where a design and its bands answer a statement; all empty: nowhere.
RowSubject subjectOf(const Statement& statement);

/// The text of a key as it was published, "48 kW"; empty: it is not given.
Message publishedText(const Claims& claims, std::string_view path);
/// The value in SI; absent: not given, or no number.
std::optional<double> publishedValue(const Claims& claims, std::string_view path);
/// Rows with what was published, arithmetic and outcome, in the order of the claims.
std::vector<VerdictRow> arithmeticRows(const ClaimsReport& report);

/// The findings of the report that stand in no row.
std::vector<RowWorking> otherWorkings(const ClaimsReport& report,
                                      const std::vector<VerdictRow>& rows);

/// Fills in what each row rests on, and lists what would decide more. `design`: of the same engine,
/// or null.
void addBasis(VerdictPage& page, const solution::Solution* design);

/// Fills in the cells of the design and of the bands, and what they say to the outcome.
void addDesign(VerdictPage& page, const solution::Solution* design,
               const std::optional<ResultQuantileMap>& bands);

} // namespace lobewright::study
