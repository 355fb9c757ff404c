// Files hold the same bytes whatever language the machine is set to, and mean the same when read.

#include "core/claims/claims_file.h"
#include "core/claims/claims_report.h"
#include "core/contact/track_materials.h"
#include "core/design/file.h"
#include "core/design/schema.h"
#include "core/exchange/lift_import.h"
#include "core/exchange/solution_files.h"
#include "core/exchange/table_csv.h"
#include "core/exchange/track_export.h"
#include "core/reference/comparison.h"
#include "core/study/phase_map.h"
#include "core/study/speed_sweep.h"
#include "core/units.h"
#include "tests/design/sample.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

#include <clocale>
#include <cstdlib>
#include <filesystem>
#include <locale>
#include <map>
#include <string>

namespace lobewright {
namespace {

using design::testing::sample;
using design::testing::sampleText;

/// Name of a file to its bytes.
using Written = std::map<std::string, std::string>;

template <class Value>
Value must(Result<Value> result) {
    if (!result) {
        throw std::runtime_error(design::testing::listed(result.problems()));
    }
    return std::move(result).value();
}

Written tracks(const design::Design& design) {
    SilentMonitor monitor;
    Written written;
    for (const exchange::ExportWords& kind : exchange::exportWords) {
        exchange::ExportOptions options;
        options.kind = kind.kind;
        options.tolerance = 20.0 * units::micrometre;
        std::string text = must(exchange::exportTrack(design, options, monitor));
        if (kind.kind == exchange::ExportKind::step) {
            text.erase(0, text.find("DATA;")); // the head has the time of day
        }
        written[std::string(kind.key)] = std::move(text);
    }
    return written;
}

Written studies(const design::Design& design) {
    SilentMonitor monitor;
    Written written;
    written["sweep"] = exchange::tableCsv(
        must(study::speedSweep(design, 1500.5, 1800.25, 2, study::Shard{}, monitor)));
    written["phase map"] = exchange::tableCsv(must(
        study::phaseMap(design, study::PhaseParameter{}, 3.5, 6.25, 2, study::Shard{}, monitor)));
    written["compare"] = study::comparisonCsv(must(study::compareSpeeds(
        design, {1650.5 * units::revPerMinute}, study::Basis::displacement, monitor)));
    return written;
}

/// What was read, said again without the reader's own writer.
std::string importedAgain(const std::string& table) {
    const auto lift = must(exchange::importLift(table, {}));
    std::string text;
    for (const auto& row : lift.rows) {
        text += fmt::format("{:.17g} {:.17g} {:.17g}\n", row.angle, row.lift, row.residual);
    }
    return text;
}

/// Everything that is read and written, from the text of the samples on.
Written everything() {
    const design::Design design = must(design::readDesign(sampleText()));
    Written written = tracks(design);
    written.merge(studies(design));
    SilentMonitor monitor;
    const auto solution = must(solution::solve(design, monitor));
    written["summary.json"] = exchange::summaryJson(solution);
    written["channels.csv"] = exchange::channelsCsv(solution);
    written["design"] = design::writeDesign(design);
    written["bore"] = fmt::format("{:.17g}", design.mechanism.bore);
    written["schema"] = design::designSchema();
    const auto claims = must(
        study::loadClaims(test::sourceFolder() + "/samples/claims/irrigation-set.claims.json"));
    written["claims"] = study::writeClaims(claims);
    written["claims.json"] = study::claimsJson(study::checkClaims(claims));
    written["claims.txt"] = study::claimsText(study::checkClaims(claims));
    written["imported"] = importedAgain(written.at("csv"));
    written["imported with commas"] =
        importedAgain("0;0,5\n15;1\n30;1,75\n45;2,5\n60;2,75\n75;1,5\n90;0,5\n");
    return written;
}

/// Sets the language of the whole process, and takes it back.
class Language {
  public:
    explicit Language(const std::string& name) {
        const auto folder = std::filesystem::read_symlink("/proc/self/exe").parent_path();
        ::setenv("LOCPATH", (folder / "locales").c_str(), 1);
        std::locale::global(std::locale(name)); // throws where it is missing; sets that of C too
    }
    ~Language() { std::locale::global(std::locale::classic()); }
    Language(const Language&) = delete;
    Language& operator=(const Language&) = delete;
};

class Files : public ::testing::TestWithParam<const char*> {};

TEST_P(Files, AreTheSameInEveryLanguage) {
    const Written plain = everything();
    const Language language(GetParam());
    const Written foreign = everything();
    ASSERT_EQ(plain.size(), foreign.size());
    for (const auto& [name, bytes] : plain) {
        EXPECT_TRUE(bytes == foreign.at(name)) << name << " differs in " << GetParam();
    }
}

TEST_P(Files, AreTriedInALanguageThatIsReallySet) {
    const Language language(GetParam());
    const bool hasComma = fmt::format("{}", GetParam()) != "ar_EG.UTF-8";
    EXPECT_EQ(std::strtod("1.5", nullptr) != 1.5, hasComma) << "or the test above proves nothing";
}

// Run alone the table is read in the language, which is what this asks; after other tests it is
// kept.
TEST_P(Files, OfTheProgramItselfAreReadInEveryLanguage) {
    const Language language(GetParam());
    ASSERT_FALSE(contact::trackMaterials().empty());
    for (const contact::TrackMaterial& material : contact::trackMaterials()) {
        EXPECT_GT(material.allowableStress, 100.0 * units::megapascal) << material.key;
        EXPECT_GT(material.cycles, 1e6) << material.key;
    }
}

INSTANTIATE_TEST_SUITE_P(InEvery, Files,
                         ::testing::Values("de_DE.UTF-8", "tr_TR.UTF-8", "ar_EG.UTF-8",
                                           "ps_AF.UTF-8"),
                         [](const auto& row) { return std::string(row.param).substr(0, 2); });

} // namespace
} // namespace lobewright
