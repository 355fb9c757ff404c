#include "core/contact/settings.h"
#include "core/contact/track_materials.h"
#include "tests/places.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <fstream>
#include <set>

namespace lobewright::contact {
namespace {

TEST(TrackMaterials, BuiltInTableIsTheResourceFile) {
    std::ifstream file(lobewright::test::sourceFolder() + "/resources/track_materials.json");
    const auto table = nlohmann::json::parse(file).at("materials");
    ASSERT_EQ(table.size(), trackMaterials().size());
    for (std::size_t i = 0; i < table.size(); ++i) {
        EXPECT_EQ(table[i].at("key"), trackMaterials()[i].key);
        EXPECT_DOUBLE_EQ(table[i].at("allowable_MPa").get<double>() * 1e6,
                         trackMaterials()[i].allowableStress);
    }
}

TEST(TrackMaterials, EveryRowSaysWhereItComesFrom) {
    std::set<std::string> keys;
    for (const TrackMaterial& material : trackMaterials()) {
        EXPECT_TRUE(keys.insert(material.key).second) << material.key;
        EXPECT_FALSE(material.label.empty());
        EXPECT_FALSE(material.source.empty());
        EXPECT_FALSE(material.confidence.empty());
        EXPECT_FALSE(material.hardness.empty());
        EXPECT_GT(material.allowableStress, 500e6);
        EXPECT_LT(material.allowableStress, 2000e6);
        EXPECT_GE(material.cycles, 1e6);
    }
}

TEST(TrackMaterials, DefaultMaterialIsInTheTable) {
    const TrackMaterial* material = findTrackMaterial(Materials{}.track);
    ASSERT_NE(material, nullptr);
    EXPECT_DOUBLE_EQ(material->allowableStress, 1500e6);
    EXPECT_EQ(findTrackMaterial("cheese"), nullptr);
}

} // namespace
} // namespace lobewright::contact
