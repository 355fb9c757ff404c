#pragma once

#include "core/design/design.h"
#include "core/result.h"

#include <optional>
#include <string>
#include <utility>

namespace CLI {
class App;
}

namespace lobewright::study {
struct Claims;
}

namespace lobewright::cli {

/// The arguments that say which design runs how.
struct DesignArguments {
    std::string file;
    std::optional<double> speed; ///< [1/min]
    bool motored = false;
};

/// DESIGN [--speed RPM] [--motored]
void addDesignArguments(CLI::App& command, DesignArguments& arguments);
/// DESIGN alone.
void addDesignFile(CLI::App& command, std::string& file);

/// What a file holds; each ends the command where it cannot be used.
design::Design loadedDesign(const std::string& file);
/// With speed and motoring applied.
design::Design loadedDesign(const DesignArguments& arguments);
study::Claims loadedClaims(const std::string& file);

/// Every problem on a line of its own: file, path, message.
void report(const std::string& file, const Problems& problems);
/// The same, and ends the command with a status.
[[noreturn]] void endWith(const std::string& file, const Problems& problems, int status);

/// What there is; else ends the command as endWith() does.
template <class T>
T valueOf(Result<T> result, const std::string& file, int status) {
    if (!result) {
        endWith(file, result.problems(), status);
    }
    return std::move(result).value();
}

} // namespace lobewright::cli
