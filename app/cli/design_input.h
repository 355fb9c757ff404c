#pragma once

#include "core/design/design.h"
#include "core/result.h"

#include <optional>
#include <string>
#include <variant>

namespace CLI {
class App;
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

/// The design, or the exit status after the reasons have gone to stderr.
std::variant<design::Design, int> loadOrReport(const std::string& file);
/// The same with speed and motoring applied.
std::variant<design::Design, int> loadOrReport(const DesignArguments& arguments);

/// Every problem on a line of its own: file, path, message.
void report(const std::string& file, const Problems& problems);

} // namespace lobewright::cli
