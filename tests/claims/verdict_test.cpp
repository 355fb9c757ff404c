#include "core/claims/claims_file.h"
#include "core/claims/claims_keys.h"
#include "core/claims/claims_report.h"
#include "core/claims/verdict.h"
#include "core/design/fields.h"
#include "core/solution/workings/working.h"
#include "tests/claims/claims_text.h"
#include "tests/places.h"
#include "tests/solution/solved_sample.h"

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>
#include <set>

namespace lobewright::study {
namespace {

using ::testing::Contains;
using ::testing::HasSubstr;
using ::testing::Not;

Claims example() {
    const auto claims =
        loadClaims(lobewright::test::sourceFolder() + "/samples/claims/irrigation-set.claims.json");
    EXPECT_TRUE(claims);
    return *claims;
}

const VerdictRow& rowOf(const VerdictPage& page, const std::string& id) {
    const auto found = std::ranges::find(page.rows, id, &VerdictRow::id);
    if (found == page.rows.end()) {
        throw std::runtime_error("no row " + id);
    }
    return *found;
}

std::vector<std::string> english(const std::vector<TextId>& labels) {
    std::vector<std::string> words;
    words.reserve(labels.size());
    for (const TextId label : labels) {
        words.emplace_back(label.text);
    }
    return words;
}

/// Claims that the sample of a biogas pump set keeps to, with what is published of it.
Claims ofThePumpSet(const std::string& figures) {
    return claimsOf(R"("engine": {"cycle": "two-stroke", "cylinders": 3,
        "reciprocations_per_turn": 2, "bore": "58 mm"}, "figures": {)" +
                    figures + "}");
}

const solution::Solution& pumpSet() {
    static const auto solved =
        lobewright::test::solved(lobewright::test::sample("biogas-pump-set"));
    return solved;
}

/// What a cell promises: something to read or a reason, and a place to go to behind what it shows.
void expectCell(const VerdictCell& cell, const VerdictRow& row, const char* column) {
    SCOPED_TRACE(row.id + " " + column);
    EXPECT_NE(cell.text.empty(), cell.why.empty());
    if (cell.text.empty()) {
        return;
    }
    ASSERT_NE(cell.opens, VerdictCell::Opens::nothing);
    EXPECT_FALSE(cell.target.empty());
    switch (cell.opens) {
    case VerdictCell::Opens::working:
        EXPECT_EQ(cell.target, row.id);
        EXPECT_FALSE(row.workings.empty());
        break;
    case VerdictCell::Opens::figure:
        EXPECT_TRUE(solution::working(pumpSet(), cell.target)) << cell.target;
        break;
    case VerdictCell::Opens::field:
        EXPECT_TRUE(design::findField(pumpSet().design, cell.target)) << cell.target;
        break;
    default:
        break;
    }
}

void expectWhole(const VerdictPage& page) {
    for (const VerdictRow& row : page.rows) {
        expectCell(row.published, row, "published");
        expectCell(row.arithmetic, row, "arithmetic");
        expectCell(row.design, row, "design");
        expectCell(row.band, row, "band");
        EXPECT_FALSE(row.overturnedBy.empty()) << row.id;
        EXPECT_FALSE(row.what.empty()) << row.id;
    }
}

TEST(Verdict, EveryCellOfTheExampleOpensItsWorkingOrSaysWhyItIsEmpty) {
    const VerdictPage page = verdictPage(example(), &pumpSet());
    ASSERT_GE(page.rows.size(), 10U);
    expectWhole(page);
    // The engine of the example has 60 mm bore, the open one 58 mm.
    EXPECT_THAT(page.designNote.english(), HasSubstr("another engine"));
    // Nothing that the check found out is left off the page.
    std::set<std::string> shown;
    for (const VerdictRow& row : page.rows) {
        for (const RowWorking& working : row.workings) {
            shown.insert(working.quantity.english());
        }
    }
    for (const RowWorking& working : page.others) {
        EXPECT_TRUE(shown.insert(working.quantity.english()).second) << working.quantity.english();
    }
    for (const Finding& finding : page.report.findings) {
        EXPECT_TRUE(shown.contains(finding.quantity.english())) << finding.id;
    }
}

TEST(Verdict, StandsByWeightWhateverTheOrderOfTheInput) {
    Claims claims = example();
    const auto order = [](const VerdictPage& page) {
        std::vector<std::string> words;
        for (const VerdictRow& row : page.rows) {
            words.push_back(row.what.english());
        }
        return words;
    };
    const VerdictPage page = verdictPage(claims);
    EXPECT_TRUE(std::ranges::is_sorted(page.rows, {}, [](const VerdictRow& row) {
        return std::pair(row.outcome, row.confidence);
    }));
    // "Nine power strokes" agrees and "waters a hectare" cannot be judged, in either order.
    std::ranges::reverse(claims.statements);
    const auto reversed = order(verdictPage(claims));
    const auto at = [&reversed](const char* words) {
        return std::ranges::find(reversed, words) - reversed.begin();
    };
    EXPECT_LT(at("Nine power strokes in every revolution"),
              at("Waters a hectare for the price of a meal"));
    EXPECT_EQ(order(page).back(), "Waters a hectare for the price of a meal");
}

TEST(Verdict, AContradictionIsOnTop) {
    Claims claims = example();
    claims.figures.powerSpeed = amount(900.0, "rpm"); // 48 kW at 360 N·m need 1273 rpm
    const VerdictPage page = verdictPage(claims);
    EXPECT_EQ(page.rows.front().outcome, RowOutcome::contradictory);
    EXPECT_THAT(english(page.rows.front().given),
                ::testing::IsSupersetOf({"Power", "Torque", "Speed of peak power"}));
    EXPECT_THAT(page.rows.front().published.text.english(), HasSubstr("900 rpm"));
    expectWhole(page);
}

TEST(Verdict, NamesWhatARowRestsOn) {
    const VerdictPage page = verdictPage(claimsOf(R"(
        "engine": {"cycle": "two-stroke", "cylinders": 3, "reciprocations_per_turn": 1,
                   "displacement": "0.66 L", "mass": "48 kg"},
        "figures": {"power": "48 kW", "power_speed": "3000 rpm"})"));
    const VerdictRow& power = rowOf(page, "/figures/power");
    const auto given = english(power.given);
    EXPECT_THAT(given, Contains("Power"));
    EXPECT_THAT(given, Contains("Displacement"));
    EXPECT_THAT(given, Not(Contains("Mass")));
    const VerdictRow& mass = rowOf(page, "/engine/mass");
    EXPECT_THAT(english(mass.given), Contains("Power"));
    EXPECT_THAT(english(mass.given), Contains("Mass"));
    EXPECT_THAT(english(mass.given), Not(Contains("Displacement")));
    // Boosted or not decides which band a pressure is held against.
    EXPECT_THAT(english(power.assumed), Contains("Supply"));
}

// The charge that a power needs is computed with an efficiency and an air ratio that nobody gave.
TEST(Verdict, NamesWhatWasAssumed) {
    const VerdictPage page = verdictPage(claimsOf(R"(
        "engine": {"cycle": "two-stroke", "ignition": "spark", "cylinders": 1,
                   "reciprocations_per_turn": 1, "displacement": "0.1 L"},
        "figures": {"power": "20 kW", "power_speed": "3000 rpm"},
        "statements": [{"claim": "Breathes by itself", "kind": "boosted", "holds": false}])"));
    const auto assumed = english(rowOf(page, "/statements/0").assumed);
    EXPECT_THAT(assumed, Contains("Excess-air ratio λ"));
    EXPECT_THAT(assumed, Contains("Brake thermal efficiency or fuel consumption"));
    EXPECT_THAT(assumed, Contains("Fuel"));
}

TEST(Verdict, SaysWhichNumberWouldDecideMost) {
    const VerdictPage page = verdictPage(claimsOf(R"(
        "engine": {"cycle": "two-stroke", "ignition": "spark", "charging": "naturally-aspirated",
                   "displacement": "0.66 L", "cylinders": 3, "reciprocations_per_turn": 2,
                   "fuel": "petrol"},
        "figures": {"power": "48 kW", "torque": "200 N·m"},
        "statements": [{"claim": "Breathes by itself", "kind": "boosted", "holds": false}])"));
    ASSERT_FALSE(page.wanted.empty());
    EXPECT_TRUE(
        std::ranges::is_sorted(page.wanted, std::greater<>(),
                               [](const WantedNumber& wanted) { return wanted.rows.size(); }));
    const auto speed = std::ranges::find(page.wanted, "/figures/power_speed", &WantedNumber::path);
    ASSERT_NE(speed, page.wanted.end());
    EXPECT_THAT(speed->rows, Contains("/figures/power"));
    // What is given is not asked for.
    EXPECT_EQ(std::ranges::find(page.wanted, "/engine/fuel", &WantedNumber::path),
              page.wanted.end());
    // With the number that is wanted the rows no longer rest on an assumption.
    Claims more = page.report.claims;
    more.figures.powerSpeed = amount(3000.0, "rpm");
    EXPECT_THAT(english(rowOf(verdictPage(more), "/figures/power").assumed),
                Not(Contains("Speed of peak power")));
}

TEST(Verdict, HoldsTheOpenDesignAgainstThePublishedFigures) {
    const double power = *pumpSet().figure("brake_power_kW")->value;
    const VerdictPage page = verdictPage(
        ofThePumpSet(fmt::format(R"("power": "{:.4f} kW", "mean_effective_pressure": "12 bar")",
                                 2.0 * power)),
        &pumpSet());
    EXPECT_TRUE(page.designNote.empty()) << page.designNote.english();
    const VerdictRow& row = rowOf(page, "/figures/power");
    EXPECT_EQ(row.design.opens, VerdictCell::Opens::figure);
    EXPECT_EQ(row.design.target, "brake_power_kW");
    EXPECT_THAT(row.design.text.english(), HasSubstr("50 % less"));
    ASSERT_TRUE(row.designRestsOn);
    EXPECT_EQ(*row.designRestsOn, design::originCounts(pumpSet().design));
    EXPECT_THAT(row.band.why.english(), HasSubstr("has not been made"));
    EXPECT_EQ(row.band.opens, VerdictCell::Opens::result);
    expectWhole(page);
}

TEST(Verdict, SaysWhyTheOpenDesignIsNotTheEngine) {
    Claims other = ofThePumpSet(R"("power": "12 kW")");
    other.engine.bore = amount(70.0, "mm");
    const VerdictPage page = verdictPage(other, &pumpSet());
    EXPECT_THAT(page.designNote.english(), HasSubstr("58 mm"));
    EXPECT_EQ(rowOf(page, "/figures/power").design.why, page.designNote);
    EXPECT_THAT(
        verdictPage(claimsOf(R"("figures": {"power": "12 kW"})"), &pumpSet()).designNote.english(),
        HasSubstr("no given figure shows"));
    EXPECT_THAT(verdictPage(other).designNote.english(), HasSubstr("no design"));
}

TEST(Verdict, AFigureThatThePossibleEnginesMissIsDoubtful) {
    const Claims claims = ofThePumpSet(R"("power": "12 kW")");
    const auto outcome = [&](double low, double high) {
        const double step = (high - low) / 4.0;
        const ResultQuantileMap bands{
            {"peak_power_kW", {low, low + step, low + 2.0 * step, low + 3.0 * step, high}}};
        const VerdictPage page = verdictPage(claims, &pumpSet(), bands);
        expectWhole(page);
        return rowOf(page, "/figures/power");
    };
    const RowOutcome without = rowOf(verdictPage(claims, &pumpSet()), "/figures/power").outcome;
    const VerdictRow inside = outcome(8.0, 15.0);
    EXPECT_EQ(inside.outcome, without);
    EXPECT_EQ(inside.band.text.english(), "8 … 15 kW");
    EXPECT_EQ(inside.band.target, "peak_power_kW");
    const VerdictRow below = outcome(5.0, 9.0);
    EXPECT_EQ(below.outcome, std::min(without, RowOutcome::doubtful));
    EXPECT_THAT(below.overturnedBy.english(), HasSubstr("stay below 9 kW"));
    EXPECT_THAT(outcome(20.0, 30.0).overturnedBy.english(), HasSubstr("lie above 20 kW"));
    // Within the rounding of a published figure it is still reached.
    EXPECT_EQ(outcome(5.0, 11.9).outcome, without);
}

TEST(Verdict, NothingGivenIsNothingButAListOfWhatWouldHelp) {
    const VerdictPage page = verdictPage({}, &pumpSet());
    EXPECT_TRUE(page.rows.empty());
    EXPECT_EQ(page.wanted.size(), page.report.missing.size());
}

// Every kind of statement and every figure has its four cells, given nothing else and given all.
TEST(Verdict, NoRowIsEmptyWithoutAReason) {
    Claims claims = example();
    for (int kind = 0; kind <= static_cast<int>(StatementKind::oilConsumption); ++kind) {
        claims.statements.push_back({});
        claims.statements.back().claim = "said";
        claims.statements.back().kind = static_cast<StatementKind>(kind);
    }
    forEachGroup([&](const char*, const auto& keys, auto member) {
        for (const auto& key : keys) {
            auto& group = claims.*member;
            if (key.amount != nullptr && !(group.*(key.amount))) {
                group.*(key.amount) = amount(0.5, shownUnit(key.dimension).symbol);
            }
        }
    });
    expectWhole(verdictPage(claims));
    claims.engine = ofThePumpSet("").engine;
    const VerdictPage page = verdictPage(claims, &pumpSet(), ResultQuantileMap{});
    EXPECT_TRUE(page.designNote.empty());
    expectWhole(page);
}

TEST(Verdict, IsInTheTextAndInTheFileForMachines) {
    const VerdictPage page = verdictPage(example(), &pumpSet());
    const std::string text = claimsText(page, 90);
    EXPECT_THAT(text, HasSubstr("Verdict"));
    EXPECT_THAT(text, HasSubstr("rests on"));
    for (const VerdictRow& row : page.rows) {
        if (!row.isQuoted) {
            EXPECT_THAT(text, HasSubstr(row.what.english()));
        }
    }
    const auto root = nlohmann::json::parse(claimsJson(page));
    // What was there before stays as it was.
    auto before = nlohmann::json::parse(claimsJson(page.report));
    for (const auto& [key, value] : before.items()) {
        EXPECT_EQ(root.at(key), value) << key;
    }
    ASSERT_EQ(root["verdict"].size(), page.rows.size());
    for (std::size_t i = 0; i < page.rows.size(); ++i) {
        const auto& row = root["verdict"][i];
        EXPECT_EQ(row["id"], page.rows[i].id);
        for (const char* column : {"published", "arithmetic", "this_design", "band"}) {
            EXPECT_TRUE(row[column].contains("text") && row[column].contains("why")) << column;
        }
        EXPECT_TRUE(row["rests_on"]["given"].is_array());
        EXPECT_FALSE(row["outcome"].get<std::string>().empty());
    }
    EXPECT_EQ(root["wanted"].size(), page.wanted.size());
}

} // namespace
} // namespace lobewright::study
