#include "core/design/document.h"
#include "core/design/key_list.h"
#include "core/design/reader.h"
#include "core/design/schema.h"
#include "tests/design/bad_designs.h"
#include "tests/design/sample.h"
#include "tests/design/schema_check.h"
#include "tests/places.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cstdlib>
#include <filesystem>
#include <set>
#include <unistd.h>

namespace lobewright::design {
namespace {

namespace fs = std::filesystem;

const fs::path source = lobewright::test::sourceFolder();
const fs::path published = source / "resources" / "design.schema.json";

std::string contents(const fs::path& file) {
    std::ifstream stream(file, std::ios::binary);
    std::stringstream text;
    text << stream.rdbuf();
    return text.str();
}

/// Pointers of all properties of a schema; "*" for list entries.
void collect(const nlohmann::json& schema, const std::string& path, std::set<std::string>& paths,
             const nlohmann::json& root) {
    if (schema.contains("$ref")) { // "#/properties/gas"
        const std::string target = schema["$ref"].get<std::string>().substr(1);
        collect(root.at(nlohmann::json::json_pointer(target)), path, paths, root);
    }
    if (schema.contains("oneOf")) {
        for (const auto& form : schema["oneOf"]) {
            collect(form, path, paths, root);
        }
    }
    if (schema.contains("items")) {
        collect(schema["items"], path + "/*", paths, root);
    }
    if (schema.contains("additionalProperties") && schema["additionalProperties"].is_object()) {
        collect(schema["additionalProperties"], path + "/*", paths, root);
    }
    if (schema.contains("properties")) {
        for (const auto& entry : schema["properties"].items()) {
            const std::string place = path + "/" + entry.key();
            paths.insert(place);
            collect(entry.value(), place, paths, root);
        }
    }
}

TEST(PublishedSchema, IsTheOneOfThisVersion) {
    EXPECT_EQ(contents(published), designSchema())
        << "write it anew: lobewright-cli schema --out resources/design.schema.json";
}

TEST(PublishedSchema, HasTheKeysOfTheCatalogue) {
    std::set<std::string> inSchema;
    const auto schema = nlohmann::json::parse(contents(published));
    collect(schema, "", inSchema, schema);
    std::set<std::string> known(keyPaths().begin(), keyPaths().end());
    for (const char* entry :
         {"/mechanism/piston/ring_distances_mm/*", "/mechanism/cylinder_angles_deg/*",
          "/knowledge/*/options/*", "/schedules/*/speed_rpm/*", "/schedules/*/value/*"}) {
        EXPECT_EQ(known.erase(entry), 1U) << entry; // single values, no keys
        EXPECT_EQ(known.erase(std::string("/snapshots/*/design") + entry), 1U) << entry;
    }
    EXPECT_EQ(inSchema, known);
}

/// Whether schema and reader of single values agree on a tree; both reasons where they do not.
std::string disagreement(const nlohmann::json& schema, const nlohmann::json& tree) {
    Reader reader(tree);
    Design design;
    describe(reader, design);
    const Problems problems = reader.finish();
    const std::string broken = testing::brokenSchemaRule(schema, tree);
    return problems.empty() == broken.empty()
               ? std::string()
               : "schema: \"" + broken + "\"; program: \"" + testing::listed(problems) + "\"";
}

TEST(PublishedSchema, AcceptsWhatTheProgramAccepts) {
    const auto schema = nlohmann::json::parse(contents(published));
    for (const char* sample : {"biogas-pump-set", "sketched-lobes-blown", "unequal-lobes"}) {
        const auto tree = testing::sampleTree(sample);
        EXPECT_EQ(disagreement(schema, tree), "") << sample;
    }
    for (const auto& bad : testing::badDesigns()) {
        const Document document = parseDocument(bad.text);
        if (document.problems.empty() && document.root.is_object()) {
            EXPECT_EQ(disagreement(schema, document.root), "") << bad.name;
        }
    }
}

// Every value of a design, and every group, replaced by what may stand elsewhere in a file.
TEST(PublishedSchema, AgreesWithTheProgramOnEveryOddValue) {
    const auto schema = nlohmann::json::parse(contents(published));
    const std::vector<nlohmann::json> odd = {nullptr,
                                             true,
                                             0,
                                             -1,
                                             1,
                                             2.5,
                                             1e300,
                                             -1e-300,
                                             65,
                                             "",
                                             "same",
                                             "off",
                                             "reservoir",
                                             std::string(501, 'x'),
                                             nlohmann::json::array(),
                                             nlohmann::json::array({1.0}),
                                             nlohmann::json::object(),
                                             nlohmann::json::object({{"kind", "rise"}})};
    for (const char* sample : {"biogas-pump-set", "sketched-lobes-blown"}) {
        const auto tree = testing::sampleTree(sample);
        const auto flat = tree.flatten();
        std::set<std::string> places;
        for (const auto& leaf : flat.items()) {
            for (std::string place = leaf.key(); !place.empty();
                 place = place.substr(0, place.rfind('/'))) {
                places.insert(place);
            }
        }
        for (const std::string& place : places) {
            for (const auto& value : odd) {
                auto changed = tree;
                changed[nlohmann::json::json_pointer(place)] = value;
                EXPECT_EQ(disagreement(schema, changed), "")
                    << place << " is " << value.dump().substr(0, 40);
            }
        }
    }
}

TEST(PublishedSchema, CountsCharactersAsTheProgramDoes) {
    const auto schema = nlohmann::json::parse(contents(published));
    auto tree = testing::sampleTree();
    std::string title;
    for (int i = 0; i < 500; ++i) {
        title += "ü";
    }
    tree["title"] = title;
    EXPECT_EQ(disagreement(schema, tree), "");
    EXPECT_TRUE(readDesign(tree.dump())) << "500 characters, 1000 bytes";
    tree["title"] = title + "ü";
    EXPECT_EQ(disagreement(schema, tree), "");
    EXPECT_FALSE(readDesign(tree.dump()));
}

/// Files of good and bad designs, judged by an independent validator of JSON Schema.
class IndependentValidator : public ::testing::Test {
  protected:
    void SetUp() override {
        folder_ = fs::temp_directory_path() / ("lobewright-schema-" + std::to_string(::getpid()));
        fs::create_directories(folder_ / "good");
        fs::create_directories(folder_ / "bad");
    }
    void TearDown() override { fs::remove_all(folder_); }
    void put(const std::string& name, const std::string& text) const {
        std::ofstream(folder_ / name, std::ios::binary) << text;
    }
    fs::path folder_;
};

TEST_F(IndependentValidator, AcceptsSamplesAndWrittenDesignsAndRefusesBadOnes) {
    int samples = 0;
    for (const auto& entry : fs::directory_iterator(source / "samples")) {
        if (!entry.path().string().ends_with(".lobewright.json")) {
            continue; // claims stand in a folder beside the designs
        }
        const std::string text = contents(entry.path());
        const auto design = readDesign(text);
        ASSERT_TRUE(design) << entry.path() << testing::listed(design.problems());
        put("good/" + entry.path().filename().string(), text);
        put("good/written-" + entry.path().filename().string(), writeDesign(*design));
        ++samples;
    }
    EXPECT_GE(samples, 1);
    Design blown = testing::sample();
    blown.gas.supply.kind = gas::SupplyKind::blower;
    blown.gas.scavenging.model = gas::ScavengingModel::displacementThenMixing;
    blown.gas.burn.bestTorque = true;
    put("good/blower.json", writeDesign(blown));
    Design guessed = testing::sample();
    guessed.knowledge["/mechanism/bore_mm"] = {.origin = Origin::measured,
                                               .low = 55.0,
                                               .high = 62.0,
                                               .spread = Spread::normal,
                                               .group = "section",
                                               .source = "side view, p. 2"};
    guessed.knowledge["/gas/scavenging/model"] = {.options = {"perfect-mixing"}};
    put("good/knowledge.json", writeDesign(guessed));
    Design keeping = testing::sample();
    keeping.snapshots = {{"with a blower", "2026-03-01T14:05:00Z", blown},
                         {"as drawn", "", keeping}};
    put("good/snapshots.json", writeDesign(keeping));
    int number = 0;
    for (const auto& bad : testing::badDesigns()) {
        if (bad.breaksSchema) {
            put("bad/" + std::to_string(++number) + " " + bad.name + ".json", bad.text);
        }
    }
    const std::string command = "python3 '" +
                                (source / "tests/design/validate_schema.py").string() + "' '" +
                                published.string() + "' '" + folder_.string() + "'";
    EXPECT_EQ(std::system(command.c_str()), 0) << command;
}

} // namespace
} // namespace lobewright::design
