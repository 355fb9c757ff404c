// What other programs read: names may be added, none may be renamed or taken away. The list is that
// of the first published files.
#include "tests/cli/run_cli.h"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

#include <fstream>
#include <map>
#include <set>
#include <string>
#include <vector>

namespace lobewright::cli::testing {
namespace {

using nlohmann::json;

/// Names by section, "[sweep]" …
using Names = std::map<std::string, std::set<std::string>>;

Names storedNames() {
    std::ifstream file(test::sourceFolder() + "/tests/cli/names_of_files.txt");
    Names names;
    std::string line, section;
    while (std::getline(file, line)) {
        if (line.starts_with("[")) {
            section = line.substr(1, line.size() - 2);
        } else if (!line.empty()) {
            names[section].insert(line);
        }
    }
    return names;
}

/// Keys of the design file, as JSON pointers, from its schema.
void addKeys(const json& node, const std::string& path, std::set<std::string>& keys) {
    if (!node.is_object()) {
        return;
    }
    const json properties = node.value("properties", json::object());
    for (const auto& [name, child] : properties.items()) {
        keys.insert(path + "/" + name);
        addKeys(child, path + "/" + name, keys);
    }
    if (node.contains("items")) {
        addKeys(node["items"], path + "/*", keys);
    }
    for (const char* list : {"oneOf", "anyOf", "allOf"}) {
        const json choices = node.value(list, json::array());
        for (const json& choice : choices) {
            addKeys(choice, path, keys);
        }
    }
    for (const char* branch : {"then", "else", "if"}) {
        if (node.contains(branch)) {
            addKeys(node[branch], path, keys);
        }
    }
    const json definitions = node.value("$defs", json::object());
    for (const auto& [name, child] : definitions.items()) {
        addKeys(child, "$" + name, keys);
    }
}

class Contract : public CliTest {
  protected:
    void addColumns(const std::string& section, const std::string& file) {
        std::ifstream stream(folder_ / file);
        std::string line;
        while (std::getline(stream, line) && line.starts_with("#")) {
        }
        while (!line.empty() && (line.back() == '\r' || line.back() == '\n')) {
            line.pop_back();
        }
        std::stringstream cells(line);
        for (std::string name; std::getline(cells, name, ',');) {
            names_[section].insert(name);
        }
    }
    void addTable(const std::string& section, const std::string& arguments) {
        ASSERT_EQ(run(arguments + " --out table.csv").status, 0) << arguments;
        addColumns(section, "table.csv");
    }
    void addSolution(const std::string& name) {
        ASSERT_EQ(run("solve " + sample(name) + " --out solved").status, 0) << name;
        addColumns("channels.csv", "solved/channels.csv");
        const json summary = json::parse(contents(folder_ / "solved" / "summary.json"));
        for (const auto& [group, figures] : summary.items()) {
            if (!figures.is_object()) {
                names_["summary.json"].insert(group);
                continue;
            }
            for (const auto& [figure, value] : figures.items()) {
                names_["summary.json"].insert(group + "/" + figure);
            }
        }
        for (const json& check : summary["checks"]) {
            for (const auto& [key, value] : check.items()) {
                names_["summary.json checks"].insert(key);
            }
        }
    }
    void addBands(const std::string& design) {
        ASSERT_EQ(
            run("bands " + design + " --samples 16 --points 3 --from 400 --to 600 --claims '" +
                test::sourceFolder() + "/samples/claims/irrigation-set.claims.json' --out bands")
                .status,
            0);
        for (const std::string file : {"results.csv", "curve.csv", "decides.csv", "samples.csv"}) {
            addColumns("bands " + file, "bands/" + file);
        }
        std::ifstream results(folder_ / "bands" / "results.csv");
        std::string line;
        for (std::getline(results, line); std::getline(results, line);) {
            names_["bands results"].insert(line.substr(0, line.find(',')));
        }
        const json summary = json::parse(contents(folder_ / "bands" / "summary.json"));
        for (const auto& [key, value] : summary.items()) {
            names_["bands summary.json"].insert(key);
        }
    }
    /// Of the sample with some figures in units of the trade, which add the findings of conversion.
    void addClaims() {
        std::ifstream sample(test::sourceFolder() + "/samples/claims/irrigation-set.claims.json");
        json sheet = json::parse(sample);
        sheet["engine"]["mass"] = "105 lb";
        sheet["figures"]["power"] = "64 hp";
        sheet["figures"]["torque"] = "265 lb·ft";
        std::ofstream(folder_ / "trade.claims.json") << sheet;
        const Outcome claims = run("claims trade.claims.json --json");
        const json report = json::parse(claims.out);
        for (const auto& [key, rows] : report.items()) {
            names_["claims"].insert(key);
            if (rows.is_array() && !rows.empty() && rows.front().is_object()) {
                for (const auto& [name, value] : rows.front().items()) {
                    names_["claims"].insert(key + "/" + name);
                }
            }
        }
        for (const json& finding : report["findings"]) {
            names_["claims findings"].insert(finding["id"].get<std::string>());
        }
    }

    Names names_;
};

TEST_F(Contract, NoNameInAnyFileIsRenamedOrMissing) {
    for (const char* name :
         {"biogas-pump-set", "classroom-model", "hydrogen-buoy-generator", "sketched-lobes-blown",
          "unequal-lobes", "turbocharged-works-generator", "terrace-sprayer"}) {
        addSolution(name);
    }
    const std::string design = sample("biogas-pump-set");
    const std::string points = " --from 0 --to 2 --points 2";
    addTable("sweep", "sweep " + design + " --from 900 --to 1000 --points 2");
    for (const char* name : {"turbocharged-works-generator", "terrace-sprayer"}) {
        addTable("sweep", "sweep " + sample(name) + " --from 1100 --to 1200 --points 2");
    }
    addTable("phase-map", "phase-map " + design + points);
    addTable("phase-map", "phase-map " + design + " --over adjuster" + points);
    addTable("map", "map " + design + " --speeds 900:1000:2 --loads 0.5:1:2");
    addTable("compare", "compare " + design);
    for (const std::string kind : {"csv", "cutter-path", "inspection"}) {
        addTable("export " + kind, "export " + design + " --track inlet --kind " + kind);
    }
    addBands(sample("hydrogen-buoy-generator"));
    addKeys(json::parse(run("schema").out), "", names_["design file"]);
    addClaims();

    const Names stored = storedNames();
    EXPECT_GE(stored.size(), 10U);
    for (const auto& [section, names] : stored) {
        EXPECT_FALSE(names.empty()) << section;
        for (const std::string& name : names) {
            EXPECT_TRUE(names_[section].contains(name)) << "missing in " << section << ": " << name;
        }
    }
}

} // namespace
} // namespace lobewright::cli::testing
