#pragma once

#include "core/design/file.h"
#include "tests/places.h"

#include <nlohmann/json.hpp>

#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>

namespace lobewright::design::testing {

inline std::string sampleText(const std::string& name = "biogas-pump-set") {
    const std::filesystem::path folder =
        std::filesystem::path(lobewright::test::sourceFolder()) / "samples";
    std::ifstream stream(folder / (name + ".lobewright.json"));
    std::stringstream text;
    text << stream.rdbuf();
    return text.str();
}

inline nlohmann::json sampleTree(const std::string& name = "biogas-pump-set") {
    return nlohmann::json::parse(sampleText(name));
}

inline Design sample(const std::string& name = "biogas-pump-set") {
    return *readDesign(sampleText(name));
}

/// Every problem on a line of its own, for failure messages.
inline std::string listed(const Problems& problems) {
    std::string text;
    for (const Problem& problem : problems) {
        text += problem.path + ": " + problem.message.english() + "\n";
    }
    return text;
}

} // namespace lobewright::design::testing
