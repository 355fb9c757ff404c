#include "app/cli/design_input.h"

#include "app/cli/command.h"
#include "app/cli/files.h"
#include "app/cli/number_option.h"
#include "app/cli/say.h"
#include "core/design/fields.h"
#include "core/design/file.h"
#include "core/printable.h"

#include <CLI/CLI.hpp>

namespace lobewright::cli {

void addDesignFile(CLI::App& command, std::string& file) {
    command.add_option("DESIGN", file, "Design file (*.lobewright.json)")->required();
}

void addDesignArguments(CLI::App& command, DesignArguments& arguments) {
    addDesignFile(command, arguments.file);
    addNumber(command, "--speed", arguments.speed, "Shaft speed in 1/min, instead of the file's")
        ->type_name("RPM");
    command.add_flag("--motored", arguments.motored, "Turn the engine from outside, without fuel");
}

void report(const std::string& file, const Problems& problems) {
    const std::string name = printable(file);
    for (const Problem& problem : problems) {
        say("{}: {}{}{}\n", name, printable(problem.path), problem.path.empty() ? "" : ": ",
            printable(problem.message.english()));
    }
    say("{}: {} problem{}\n", name, problems.size(), problems.size() == 1 ? "" : "s");
}

std::variant<design::Design, int> loadOrReport(const std::string& file) {
    const auto text = readOrReport(file, design::largestDesign + 1);
    if (const int* status = std::get_if<int>(&text)) {
        return *status;
    }
    auto loaded = design::readDesign(std::get<std::string>(text));
    if (!loaded) {
        report(file, loaded.problems());
        return invalidDesign;
    }
    return std::move(loaded).value();
}

std::variant<design::Design, int> loadOrReport(const DesignArguments& arguments) {
    auto loaded = loadOrReport(arguments.file);
    auto* design = std::get_if<design::Design>(&loaded);
    if (design == nullptr) {
        return loaded;
    }
    design->running.motored = design->running.motored || arguments.motored;
    if (arguments.speed) {
        auto changed = design::withField(*design, "/running/speed_rpm", *arguments.speed);
        if (!changed) {
            say("--speed: {}\n", changed.problems().front().message.english());
            return wrongUsage;
        }
        *design = std::move(changed).value();
    }
    return loaded;
}

} // namespace lobewright::cli
