#pragma once

#include "core/motion/motion_law.h"

#include <cctype>
#include <ostream>
#include <string>
#include <string_view>

/// Motion laws in the names of parametrised tests and in what they print when they fail.
namespace lobewright::motion {

/// "modified-sine" as "ModifiedSine".
inline std::string testName(Law law) {
    std::string name;
    bool isFirst = true;
    for (const char letter : std::string_view(rowOf(law).key)) {
        if (letter != '-') {
            name += isFirst ? static_cast<char>(std::toupper(letter)) : letter;
        }
        isFirst = letter == '-';
    }
    return name;
}

inline void PrintTo(Law law, std::ostream* out) {
    *out << testName(law);
}

} // namespace lobewright::motion
