#include "app/cli/design_input.h"

#include "app/cli/command.h"
#include "app/cli/files.h"
#include "app/cli/number_option.h"
#include "app/cli/say.h"
#include "core/claims/claims_file.h"
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

void endWith(const std::string& file, const Problems& problems, int status) {
    report(file, problems);
    throw Refusal{status};
}

design::Design loadedDesign(const std::string& file) {
    return valueOf(design::readDesign(readInput(file, design::largestDesign + 1)), file,
                   invalidDesign);
}

design::Design loadedDesign(const DesignArguments& arguments) {
    auto design = loadedDesign(arguments.file);
    design.running.motored = design.running.motored || arguments.motored;
    if (!arguments.speed) {
        return design;
    }
    auto changed = design::withField(design, "/running/speed_rpm", *arguments.speed);
    if (!changed) {
        say("--speed: {}\n", changed.problems().front().message.english());
        throw Refusal{wrongUsage};
    }
    return std::move(changed).value();
}

study::Claims loadedClaims(const std::string& file) {
    return valueOf(study::readClaims(readInput(file, study::largestClaims + 1)), file,
                   invalidDesign);
}

} // namespace lobewright::cli
