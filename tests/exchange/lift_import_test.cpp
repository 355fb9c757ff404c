#include "core/design/file.h"
#include "core/exchange/lift_import.h"
#include "core/exchange/track_export.h"
#include "core/exchange/track_tables.h"
#include "core/units.h"
#include "tests/exchange/parts.h"

#include <fmt/format.h>
#include <gmock/gmock.h>

#include <filesystem>
#include <iterator>
#include <sstream>

namespace lobewright::exchange {
namespace {

using namespace testing;
using units::degree;
using units::micrometre;
using units::millimetre;

/// Rows of angle and lift of a curve over one repetition, with noise of this spread [m].
std::string tableOf(const motion::LiftCurve& curve, int rows, double noise) {
    std::mt19937 random(3);
    std::uniform_real_distribution<double> spread(-noise, noise);
    std::string text;
    for (int i = 0; i < rows; ++i) {
        const double phi = curve.period() * i / rows;
        fmt::format_to(std::back_inserter(text), "{:.6f},{:.7f}\n", phi / degree,
                       (curve.at(phi).y + spread(random)) / millimetre);
    }
    return text;
}

ImportedLift imported(const std::string& text, const ImportOptions& options) {
    const auto result = importLift(text, options);
    EXPECT_TRUE(result) << listed(result.problems());
    return *result;
}

TEST(LiftImport, FollowsAMeasuredLobeWithinTheToleranceAndSaysSo) {
    const motion::LiftCurve curve = machines::curve(skewTrack());
    const ImportedLift lift =
        imported(tableOf(curve, 360, 2.0 * micrometre), {0, 8.0 * micrometre, 120});
    EXPECT_EQ(lift.pattern.lobes, 2) << "from the span of the rows";
    EXPECT_TRUE(lift.withinTolerance);
    EXPECT_LE(lift.largestResidual, 8.0 * micrometre);
    EXPECT_LT(lift.meanSquareRoot, lift.largestResidual);
    ASSERT_EQ(lift.rows.size(), 360U);
    // What it says of every row is what the finished pattern does there, and the noise is gone
    // rather than followed: the pattern is closer to the true curve than the tolerance.
    const motion::LiftCurve made = machines::curve(lift.pattern);
    double worst = 0.0, shift = 0.0;
    for (const ImportedRow& at : lift.rows) {
        shift = at.lift + at.residual - made.at(at.angle).y;
        worst = std::max(worst, std::abs(at.lift + at.residual - curve.at(at.angle).y));
    }
    for (const ImportedRow& at : lift.rows) {
        EXPECT_NEAR(at.lift + at.residual - made.at(at.angle).y, shift, 1e-12);
    }
    EXPECT_LT(worst, 8.0 * micrometre);
    EXPECT_NEAR(made.stroke(), 0.034, 10.0 * micrometre);
}

/// Rows over a whole turn, with normally distributed noise of this standard deviation [m].
std::string turnOf(const motion::LiftCurve& curve, int rows, double noise) {
    std::mt19937 random(11);
    std::normal_distribution<double> spread(0.0, noise > 0.0 ? noise : 1e-30);
    std::string text;
    for (int i = 0; i <= rows; ++i) {
        const double phi = units::turn * i / rows;
        fmt::format_to(std::back_inserter(text), "{:.6f},{:.7f}\n", phi / degree,
                       (curve.at(phi).y + spread(random)) / millimetre);
    }
    return text;
}

TEST(LiftImport, MeasuresTheNoiseAndProposesATolerance) {
    const motion::LiftCurve curve = machines::curve(skewTrack());
    for (const double noise : {2.0 * micrometre, 12.0 * micrometre}) {
        const ImportedLift lift = imported(turnOf(curve, 720, noise), {});
        EXPECT_NEAR(lift.noise, noise, 0.15 * noise);
        EXPECT_GT(lift.proposedTolerance, 3.0 * noise);
        EXPECT_LT(lift.proposedTolerance, 6.0 * noise);
        EXPECT_EQ(lift.tolerance, lift.proposedTolerance);
        EXPECT_TRUE(lift.withinTolerance);
    }
    const ImportedLift clean = imported(turnOf(curve, 720, 0.0), {});
    EXPECT_LT(clean.noise, 0.5 * micrometre);
    EXPECT_EQ(clean.proposedTolerance, finestProposal);
}

// At 25 µm such noise was followed, and a turn of two lobes was taken for one lobe.
TEST(LiftImport, SeesThatANoisyTurnRepeats) {
    const motion::LiftCurve curve = machines::curve(skewTrack());
    const std::string table = turnOf(curve, 720, 12.0 * micrometre);
    EXPECT_EQ(imported(table, {}).pattern.lobes, 2);
    EXPECT_EQ(imported(table, {0, 25.0 * micrometre, 120}).pattern.lobes, 2);
}

// The noise left in the acceleration is what the fit differs from the true curve, within a factor
// of two and a half either way; less of it is left than a tolerance below the noise leaves.
TEST(LiftImport, TellsTheNoiseLeftInTheAcceleration) {
    const motion::LiftCurve curve = machines::curve(skewTrack());
    const std::string table = turnOf(curve, 720, 12.0 * micrometre);
    const auto strays = [&](const ImportedLift& lift) {
        const motion::LiftCurve made = machines::curve(lift.pattern);
        double sum = 0.0;
        int count = 0;
        for (double phi = 0.005; phi < curve.period(); phi += 0.01) {
            const double off = made.at(phi).y2 - curve.at(phi).y2;
            sum += off * off;
            ++count;
        }
        return std::sqrt(sum / count);
    };
    const ImportedLift calm = imported(table, {});
    const ImportedLift tight = imported(table, {0, 33.0 * micrometre, 200});
    EXPECT_GT(tight.accelerationNoise, calm.accelerationNoise);
    EXPECT_GT(strays(tight), strays(calm));
    EXPECT_GT(tight.accelerationNoise, 0.4 * strays(tight));
    EXPECT_LT(tight.accelerationNoise, 2.5 * strays(tight));
    double highest = 0.0;
    for (const ImportedRow& row : calm.rows) {
        EXPECT_NEAR(row.acceleration, machines::curve(calm.pattern).at(row.angle).y2, 1e-9);
        highest = std::max(highest, std::abs(row.acceleration));
    }
    EXPECT_GT(highest, 0.0);
}

TEST(LiftImport, SaysWhenTheKnotsAllowedCannotFollow) {
    const motion::LiftCurve curve = machines::curve(skewTrack());
    const ImportedLift lift = imported(tableOf(curve, 360, 0.0), {2, 0.01 * micrometre, 8});
    EXPECT_FALSE(lift.withinTolerance);
    EXPECT_GT(lift.largestResidual, 0.01 * micrometre);
    EXPECT_NEAR(
        lift.rows.at(static_cast<std::size_t>(std::lround(lift.angle / curve.period() * 360.0)))
            .residual,
        0.0, lift.largestResidual * (1.0 + 1e-9));
}

TEST(LiftImport, ReadsTheUsualWaysOfWritingTables) {
    const motion::LiftCurve curve = machines::curve(harmonicTrack());
    const auto knots = [&](const std::string& text) {
        const ImportedLift lift = imported(text, {2, 1.0 * micrometre, 120});
        EXPECT_EQ(lift.rows.size(), 90U);
        return std::get<motion::KnotShape>(lift.pattern.shape).knots;
    };
    const std::string plain = tableOf(curve, 90, 0.0);
    const auto expected = knots(plain);
    std::string semicolons = plain, blanks = plain, tabs = plain, crlf, third;
    std::ranges::replace(semicolons, ',', ';');
    std::ranges::replace(semicolons, '.', ',');
    std::ranges::replace(blanks, ',', ' ');
    std::ranges::replace(tabs, ',', '\t');
    for (char letter : plain) {
        if (letter == '\n') {
            crlf += '\r';
            third += ",7,x";
        }
        crlf += letter;
        third += letter;
    }
    EXPECT_EQ(knots(semicolons), expected);
    EXPECT_EQ(knots(blanks), expected);
    EXPECT_EQ(knots(tabs), expected);
    EXPECT_EQ(knots(fmt::format("\xEF\xBB\xBF# measured\r\n\r\nangle,lift\r\n{}", crlf)), expected);
    EXPECT_EQ(knots(third), expected);
}

// What this program exports it also imports: the lift table of one lobe.
TEST(LiftImport, ReadsTheLiftTableThatIsExported) {
    SilentMonitor monitor;
    const TrackPart track = part(designWith(knotTrack()));
    const auto text = liftTable(track, 1.0 * degree, monitor);
    ASSERT_TRUE(text);
    const ImportedLift lift = imported(*text, {0, 3.0 * micrometre, 120});
    EXPECT_EQ(lift.pattern.lobes, 1);
    EXPECT_TRUE(lift.withinTolerance);
    const motion::LiftCurve made = machines::curve(lift.pattern);
    for (double phi = 0.0; phi < units::turn; phi += 0.1) {
        EXPECT_NEAR(made.at(phi).y, track.curve().at(phi).y, 6.0 * micrometre);
    }
}

/// Without the comments, as another program might write the same turn.
std::string bare(const std::string& table) {
    std::string rows;
    std::istringstream lines(table);
    for (std::string line; std::getline(lines, line);) {
        if (!line.starts_with('#')) {
            rows += line + '\n';
        }
    }
    return rows;
}

// Of every sample, as it is exported without any option: over a turn, however many lobes that has.
TEST(LiftImport, ReadsTheExportedTableOfEverySample) {
    for (const auto& entry : std::filesystem::directory_iterator("samples")) {
        if (!entry.path().string().ends_with(".lobewright.json")) {
            continue;
        }
        const auto design = design::loadDesign(entry.path());
        ASSERT_TRUE(design) << entry.path();
        SilentMonitor monitor;
        ExportOptions options;
        options.end = End::inlet;
        options.kind = ExportKind::liftTable;
        const auto text = exportTrack(*design, options, monitor);
        ASSERT_TRUE(text) << entry.path();
        const motion::LiftCurve curve = machines::curve(design->tracks.inlet);
        for (const std::string& table : {*text, bare(*text)}) {
            const ImportedLift lift = imported(table, {});
            EXPECT_EQ(lift.pattern.lobes, design->tracks.inlet.lobes) << entry.path();
            EXPECT_TRUE(lift.withinTolerance) << entry.path() << lift.largestResidual;
            EXPECT_EQ(lift.rows.size(), 721U); // the last is the first again
            const motion::LiftCurve made = machines::curve(lift.pattern);
            for (double phi = 0.0; phi < units::turn; phi += 0.1) {
                EXPECT_NEAR(made.at(phi).y, curve.at(phi).y, 12.0 * micrometre) << entry.path();
            }
        }
        EXPECT_TRUE(
            imported(*text, {design->tracks.inlet.lobes, 5.0 * micrometre, 120}).withinTolerance)
            << "lobes given by hand";
    }
}

TEST(LiftImport, SeparateLobesOfATurnAreJudgedInEveryRow) {
    const motion::LiftCurve curve = machines::curve(skewTrack());
    std::string text;
    for (int i = 0; i < 720; ++i) {
        const double phi = units::turn * i / 720;
        const double more = phi > units::pi ? 20.0 * micrometre * std::sin(phi) : 0.0;
        fmt::format_to(std::back_inserter(text), "{:.6f},{:.7f}\n", phi / degree,
                       (curve.at(phi).y + more) / millimetre);
    }
    const ImportedLift forced = imported(text, {2, 5.0 * micrometre, 60});
    EXPECT_FALSE(forced.withinTolerance) << "the second lobe strays from the first";
    EXPECT_NEAR(forced.largestResidual, 20.0 * micrometre, 5.0 * micrometre);
}

/// Path of the first problem; empty where the table is taken.
std::string refusal(const std::string& text) {
    const auto result = importLift(text, {});
    if (result) {
        return {};
    }
    EXPECT_FALSE(result.problems().front().message.english().empty());
    return result.problems().front().path;
}

TEST(LiftImport, RefusesWhatIsNoLiftTable) {
    const std::string good = tableOf(machines::curve(harmonicTrack()), 90, 0.0);
    EXPECT_EQ(refusal(""), "/rows");
    EXPECT_EQ(refusal("angle,lift\n"), "/rows");
    EXPECT_EQ(refusal("0,1\n1,2\n2,3\n"), "/rows");
    EXPECT_EQ(refusal(fmt::format("angle,lift\nnames,again\n{}", good)), "/lines/2");
    EXPECT_EQ(refusal(fmt::format("{}180.5,high\n", good)), "/lines/91");
    EXPECT_EQ(refusal(fmt::format("{}180.5\n", good)), "/lines/91");
    EXPECT_EQ(refusal(fmt::format("0,nan\n{}", good)), "/lines/1");
    EXPECT_EQ(refusal(fmt::format("0,1e999\n{}", good)), "/lines/1");
    EXPECT_EQ(refusal("0,1\n10,2\n20,3\n30,2\n41,1\n"), "/lobes");
    EXPECT_EQ(refusal("0,1\n0,2\n0,3\n0,2\n"), "/rows/1/angle_deg");
    EXPECT_EQ(refusal("0,1\n100,2\n50,3\n300,2\n"), "/rows/2/angle_deg");
}

// Found by the fuzzer: the squares of such a row are infinite.
TEST(LiftImport, RefusesARowFarFromAnyLobe) {
    const auto lift = importLift("0;0\n10;1\n20;2\n30;3e279\n40;2\n50;1\n", {});
    ASSERT_FALSE(lift);
    EXPECT_EQ(lift.problems().front().path, "/lines/4");
}

TEST(LiftImport, BadBytesAndLengthsNeverCrash) {
    std::mt19937 random(5);
    const std::string good = tableOf(machines::curve(harmonicTrack()), 24, 0.0);
    std::uniform_int_distribution<int> byte(0, 255);
    for (int i = 0; i < 300; ++i) {
        std::string text(good, 0, random() % good.size());
        for (int k = 0; k < 3 && !text.empty(); ++k) {
            text[random() % text.size()] = static_cast<char>(byte(random));
        }
        const auto result = importLift(text, {0, 10.0 * micrometre, 12});
        if (result) {
            EXPECT_TRUE(std::isfinite(result->largestResidual));
        } else {
            EXPECT_FALSE(result.problems().empty());
        }
    }
}

} // namespace
} // namespace lobewright::exchange
