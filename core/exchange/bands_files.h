#pragma once

#include "core/unknowns/bands.h"
#include "core/unknowns/consistent.h"
#include "core/unknowns/decides.h"
#include "core/unknowns/tolerances.h"

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace lobewright::exchange {

/// Everything that a study over unknowns finds.
struct BandsStudy {
    std::string title; ///< of the design
    unknowns::Purpose purpose = unknowns::Purpose::unknown;
    unknowns::Ensemble ensemble;
    std::vector<unknowns::DecidedResult> decided;
    std::optional<unknowns::Requirement> required; ///< with published figures
};

/// Word of files and options, and back.
std::string_view wordOf(unknowns::Purpose purpose);
std::optional<unknowns::Purpose> purposeOf(std::string_view word);

/// Tables as RFC 4180 text, figures with five significant digits, gaps as empty fields.
std::string resultsCsv(const BandsStudy& study);  ///< name, nominal, p05, p25, p50, p75, p95
std::string curveCsv(const BandsStudy& study);    ///< by speed
std::string decidesCsv(const BandsStudy& study);  ///< result, input, indices, direction
std::string requiredCsv(const BandsStudy& study); ///< input, before and after; needs `required`
/// The two unknowns that are narrowed most, of every engine that was thought possible or keeps to
/// the published figures: kind ("possible", "keeps"), one column each; needs `required`.
std::string pairsCsv(const BandsStudy& study);
/// What was drawn and what it says, as JSON.
std::string bandsSummary(const BandsStudy& study);

/// The files of a study into a folder, all or none; of a part only samples and summary. They
/// replace none of `inputs`. Returns the problem (path ""), if any.
std::optional<Problem> writeBands(const BandsStudy& study, const std::filesystem::path& folder,
                                  std::span<const std::filesystem::path> inputs = {});

/// Every engine: its number in the sequence, inputs, results and curve, and whether it runs.
/// Numbers have the digits that make them the same when read again.
std::string samplesCsv(const unknowns::Ensemble& ensemble);

/// What the summaries of the parts say of the whole.
struct PartPlan {
    unknowns::Plan plan;
    unknowns::Purpose purpose = unknowns::Purpose::unknown;
};
/// Errors (path ""): no summary of a part.
Result<PartPlan> readPartPlan(std::string_view summary);

/// The engines of parts put together, as if they had been computed at once. whole: without engines;
/// texts: of samples.csv of all its parts.
/// Errors (path ""): a table that is none of this design, seed and plan, engines twice or missing.
Result<unknowns::Ensemble> joinedEnsemble(unknowns::Ensemble whole,
                                          const std::vector<std::string>& texts);

} // namespace lobewright::exchange
