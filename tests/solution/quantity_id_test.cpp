#include "core/solution/quantity_id.h"
#include "tests/solution/solved_sample.h"

#include <filesystem>
#include <regex>
#include <set>

namespace lobewright {
namespace {

using solution::QuantityId;

TEST(QuantityId, IsWrittenWithItsSideAndItsUnit) {
    EXPECT_EQ((QuantityId{"peak_contact_pressure", &in::MPa, End::inlet}.written()),
              "peak_contact_pressure_inlet_MPa");
    EXPECT_EQ((QuantityId{"lift", &in::mm, End::exhaust}.written()), "lift_exhaust_mm");
    EXPECT_EQ((QuantityId{"fuel_flow", &in::kgPerHour}.written()), "fuel_flow_kg_per_h");
    EXPECT_EQ((QuantityId{"burn_start", &in::degreesOfCycle}.written()), "burn_start_cycle_deg");
    EXPECT_EQ((QuantityId{"purity"}.written()), "purity");
}

/// Letters, digits and underscores, so that every program can read a heading.
void expectNames(const std::set<std::string>& names) {
    static const std::regex plain("[A-Za-z0-9_]+");
    for (const std::string& name : names) {
        EXPECT_TRUE(std::regex_match(name, plain)) << name;
    }
}

TEST(QuantityId, NamesOfEverySampleArePlainAndFoundByTheirIds) {
    for (const auto& entry :
         std::filesystem::directory_iterator(test::sourceFolder() + "/samples")) {
        const std::string file = entry.path().filename().string();
        const auto end = file.find(".lobewright.json");
        if (end == std::string::npos) {
            continue;
        }
        const auto solved = test::solved(test::sample(file.substr(0, end)));
        std::set<std::string> figures, channels;
        for (const auto& figure : solved.figures) {
            EXPECT_TRUE(figures.insert(figure.name).second) << figure.name << " stands twice";
            EXPECT_EQ(solved.figure(static_cast<const QuantityId&>(figure)), &figure);
            EXPECT_EQ(solved.figure(figure.name), &figure);
        }
        for (const auto& channel : solved.channels) {
            EXPECT_TRUE(channels.insert(channel.name).second) << channel.name << " stands twice";
            EXPECT_EQ(solved.channel(static_cast<const QuantityId&>(channel)), &channel);
        }
        expectNames(figures);
        expectNames(channels);
        for (const auto& check : solved.checks) {
            if (check.figure) {
                EXPECT_NE(solved.figure(*check.figure), nullptr)
                    << check.id << " judges " << check.figure->written();
            }
        }
    }
}

} // namespace
} // namespace lobewright
