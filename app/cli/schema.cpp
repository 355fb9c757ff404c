#include "core/design/schema.h"

#include "app/cli/command.h"
#include "app/cli/files.h"
#include "app/cli/say.h"

#include <CLI/CLI.hpp>

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
    const auto [command, file] = newCommand(program, action, writeSchema, "schema",
                                            "Print the JSON Schema (2020-12) of the design file");
    command.add_option("--out", file, "Write it to this file instead")->type_name("FILE");
}

} // namespace lobewright::cli
