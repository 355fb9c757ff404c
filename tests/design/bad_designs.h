#pragma once

#include <string>
#include <vector>

/// Malformed and impossible designs, each made from the biogas sample by one change.
namespace lobewright::design::testing {

struct BadDesign {
    std::string name;          ///< what is wrong, in words
    std::string text;          ///< the file
    std::string path;          ///< the path that must be named among the problems
    bool breaksSchema = false; ///< JSON that the published schema refuses too
};

std::vector<BadDesign> badDesigns();

} // namespace lobewright::design::testing
