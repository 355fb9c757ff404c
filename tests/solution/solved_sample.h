#pragma once

#include "core/design/file.h"
#include "core/solution/solution.h"
#include "tests/places.h"

#include <gtest/gtest.h>

#include <stdexcept>
#include <string>

namespace lobewright::test {

/// A design of the samples folder; a sample that does not load is a broken test set-up.
inline design::Design sample(const std::string& name) {
    auto design = design::loadDesign(sourceFolder() + "/samples/" + name + ".lobewright.json");
    if (!design) {
        throw std::runtime_error(name + ": " + design.problems().front().path + " " +
                                 design.problems().front().message.english());
    }
    return *design;
}

inline solution::Solution solved(const design::Design& design,
                                 const solution::Solution* previous = nullptr) {
    SilentMonitor monitor;
    auto solution = solution::solve(design, monitor, previous);
    if (!solution) {
        throw std::runtime_error(solution.problems().front().path + " " +
                                 solution.problems().front().message.english());
    }
    return std::move(solution).value();
}

inline double figure(const solution::Solution& solution, const std::string& name) {
    const auto* found = solution.figure(name);
    if (!found || !found->value) {
        throw std::runtime_error("no figure " + name);
    }
    return *found->value;
}

inline bool fires(const solution::Solution& solution, const std::string& id) {
    for (const auto& check : solution.checks) {
        if (check.id == id) {
            return true;
        }
    }
    return false;
}

} // namespace lobewright::test
