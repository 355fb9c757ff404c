// Bands of a design of which not everything is known, from a shell.
#include "tests/cli/run_cli.h"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

#include <fstream>

namespace lobewright::cli::testing {
namespace {

using nlohmann::json;
using ::testing::HasSubstr;

class Bands : public CliTest {
  protected:
    const std::string few_ = "bands " + sample("hydrogen-buoy-generator") +
                             " --samples 24 --from 400 --to 600 --points 3 ";
    std::string file(const std::string& name) const { return contents(folder_ / name); }
};

TEST_F(Bands, FivePartsJoinedAreTheWholeBitForBit) {
    ASSERT_EQ(run(few_ + "--out whole").status, 0);
    std::string join = "bands " + sample("hydrogen-buoy-generator") + " --out joined";
    for (int part = 1; part <= 5; ++part) {
        ASSERT_EQ(run(few_ + fmt::format("--part {}/5 --out part{}", part, part)).status, 0);
        join += fmt::format(" --join part{}", part);
    }
    EXPECT_FALSE(std::filesystem::exists(folder_ / "part1" / "results.csv"));
    const Outcome joined = run(join);
    ASSERT_EQ(joined.status, 0) << joined.err;
    for (const char* name :
         {"results.csv", "curve.csv", "decides.csv", "samples.csv", "summary.json"}) {
        EXPECT_EQ(file(std::string("joined/") + name), file(std::string("whole/") + name)) << name;
        EXPECT_FALSE(file(std::string("whole/") + name).empty()) << name;
    }
}

TEST_F(Bands, PartsThatAreMissingTwiceOrForeignAreRefused) {
    ASSERT_EQ(run(few_ + "--part 1/2 --out one").status, 0);
    const std::string join = "bands " + sample("hydrogen-buoy-generator") + " --out joined ";
    const Outcome missing = run(join + "--join one");
    EXPECT_EQ(missing.status, 4);
    EXPECT_THAT(missing.err, HasSubstr("in none of the parts"));
    const Outcome twice = run(join + "--join one --join one");
    EXPECT_EQ(twice.status, 4);
    EXPECT_THAT(twice.err, HasSubstr("in two of the parts"));
    ASSERT_EQ(run(few_ + "--seed 2 --part 2/2 --out two").status, 0);
    const Outcome foreign = run(join + "--join one --join two");
    EXPECT_EQ(foreign.status, 4);
    EXPECT_THAT(foreign.err, HasSubstr("belongs to another design or seed"));
    EXPECT_FALSE(std::filesystem::exists(folder_ / "joined" / "results.csv"));
}

TEST_F(Bands, SharesAddToOneAndEveryEngineIsListed) {
    ASSERT_EQ(run(few_ + "--out bands").status, 0);
    const json summary = json::parse(file("bands/summary.json"));
    double sum = summary["share_that_runs"].get<double>();
    for (const json& reason : summary["reasons"]) {
        sum += reason["share"].get<double>();
    }
    EXPECT_NEAR(sum, 1.0, 1e-5);
    const std::string samples = file("bands/samples.csv");
    EXPECT_EQ(std::ranges::count(samples, '\n'), 25);
}

TEST_F(Bands, OfADesignThatIsWhollyKnownThereAreNone) {
    const Outcome outcome = run("bands " + sample("classroom-model") + " --out bands");
    EXPECT_EQ(outcome.status, 3);
    EXPECT_THAT(outcome.err, HasSubstr("everything counts as known"));
}

TEST_F(Bands, TheScatterOfManufactureNeedsNoRanges) {
    const Outcome outcome =
        run("bands " + sample("classroom-model") +
            " --purpose scatter --samples 24 --from 200 --to 400 --points 3 --out bands");
    EXPECT_EQ(outcome.status, 0) << outcome.err;
    EXPECT_EQ(json::parse(file("bands/summary.json"))["purpose"], "scatter");
    EXPECT_THAT(file("bands/samples.csv"), HasSubstr("/mechanism/clearance_mm"));
}

// All of the engines that reach a power that some reach: the two inputs that matter most, of the
// possible engines and of those that keep to it.
TEST_F(Bands, TheTwoInputsThatMatterMostAreWrittenInPairs) {
    ASSERT_EQ(run(few_ + "--out before").status, 0);
    const std::string results = file("before/results.csv");
    const auto peak = results.substr(results.find("peak_power_kW"));
    const double nominal = std::stod(peak.substr(peak.find(',') + 1));
    std::ofstream(folder_ / "claims.json")
        << fmt::format(R"({{"format": "lobewright-claims", "format_version": 1,
                            "figures": {{"power": "{:.3g} kW"}}}})",
                       nominal);
    const Outcome outcome = run(few_ + "--claims claims.json --out bands");
    ASSERT_EQ(outcome.status, 0) << outcome.err;
    const std::string pairs = file("bands/pairs.csv");
    EXPECT_EQ(pairs.find("kind,/"), 0u) << pairs.substr(0, 80);
    EXPECT_EQ(std::ranges::count(pairs.substr(0, pairs.find('\r')), ','), 2);
    EXPECT_THAT(pairs, HasSubstr("\r\npossible,"));
    EXPECT_THAT(pairs, HasSubstr("\r\nkeeps,"));
}

TEST_F(Bands, WrongArgumentsAreRefused) {
    EXPECT_EQ(run(few_ + "--part 3/2 --out bands").status, 2);
    EXPECT_EQ(run(few_ + "--purpose other --out bands").status, 2);
    EXPECT_EQ(run(few_ + "--tolerances 1,2 --purpose scatter --out bands").status, 2);
    EXPECT_EQ(run("bands " + sample("hydrogen-buoy-generator") + " --from 300 --out bands").status,
              2);
    EXPECT_EQ(run("bands " + sample("hydrogen-buoy-generator") +
                  " --samples 24 --from 600 --to 300 --points 3 --out bands")
                  .status,
              2);
}

} // namespace
} // namespace lobewright::cli::testing
