#include "core/design/schema.h"

#include "app/cli/command.h"
#include "app/cli/files.h"
#include "app/cli/say.h"

#include <CLI/CLI.hpp>

#include <memory>

namespace lobewright::cli {

namespace {

int writeSchema(const std::string& file) {
    const std::string schema = design::designSchema();
    if (file.empty()) {
        put("{}", schema);
        return done;
    }
    return OutputFile("--out", file, {}).write(schema);
}

} // namespace

void addSchema(CLI::App& program, Action& action) {
    CLI::App* command =
        addCommand(program, "schema", "Print the JSON Schema (2020-12) of the design file");
    const auto file = std::make_shared<std::string>();
    command->add_option("--out", *file, "Write it to this file instead")->type_name("FILE");
    command->callback([&action, file] { action = [file] { return writeSchema(*file); }; });
}

} // namespace lobewright::cli
