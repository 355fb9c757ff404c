#pragma once

#include "core/motion/pattern.h"

#include <ostream>
#include <string>

/// Motion laws in the names of parametrised tests and in what they print when they fail.
namespace lobewright::motion {

inline std::string testName(Law law) {
    switch (law) {
    case Law::harmonic:
        return "Harmonic";
    case Law::cycloidal:
        return "Cycloidal";
    case Law::parabolic:
        return "Parabolic";
    case Law::modifiedTrapezoid:
        return "ModifiedTrapezoid";
    case Law::modifiedSine:
        return "ModifiedSine";
    case Law::polynomial345:
        return "Polynomial345";
    case Law::polynomial4567:
        return "Polynomial4567";
    }
    return "";
}

inline void PrintTo(Law law, std::ostream* out) {
    *out << testName(law);
}

} // namespace lobewright::motion
