#include "app/cli/files.h"

#include "app/cli/command.h"
#include "app/cli/say.h"
#include "core/files/read_file.h"
#include "core/files/write_file.h"

#include <CLI/CLI.hpp>

namespace lobewright::cli {

std::string readInput(const std::string& file, std::uintmax_t most) {
    auto bytes = files::readFile(file, most);
    if (!bytes) {
        say("{}\n", bytes.problems().front().message.english());
        throw Refusal{fileFailure};
    }
    return std::move(bytes).value();
}

void addOutput(CLI::App& command, std::string& file, const std::string& help,
               const std::string& type) {
    command.add_option("--out", file, help)->required()->type_name(type);
}

void endAt(const std::string& option, const std::optional<Problem>& problem) {
    if (problem) {
        say("{}: {}\n", option, problem->message.english());
        throw Refusal{fileFailure};
    }
}

void OutputFile::check() const {
    endAt(option_, files::checkOutput(file_, inputs_));
}

int OutputFile::write(std::string_view bytes) const {
    endAt(option_, files::writeFile(file_, bytes, inputs_));
    return done;
}

} // namespace lobewright::cli
