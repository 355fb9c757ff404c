#include "app/cli/files.h"

#include "app/cli/command.h"
#include "app/cli/say.h"
#include "core/files/read_file.h"
#include "core/files/write_file.h"

namespace lobewright::cli {

std::variant<std::string, int> readOrReport(const std::string& file, std::uintmax_t most) {
    auto bytes = files::readFile(file, most);
    if (!bytes) {
        say("{}\n", bytes.problems().front().message.english());
        return fileFailure;
    }
    return std::move(bytes).value();
}

namespace {

int statusOf(const std::string& option, const std::optional<Problem>& problem) {
    if (!problem) {
        return done;
    }
    say("{}: {}\n", option, problem->message.english());
    return fileFailure;
}

} // namespace

int OutputFile::check() const {
    return statusOf(option_, files::checkOutput(file_, inputs_));
}

int OutputFile::write(std::string_view bytes) const {
    return statusOf(option_, files::writeFile(file_, bytes, inputs_));
}

} // namespace lobewright::cli
