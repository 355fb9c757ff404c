#include "app/cli/command.h"
#include "app/cli/design_input.h"
#include "app/cli/number_option.h"
#include "app/cli/progress.h"
#include "app/cli/say.h"
#include "core/printable.h"
#include "core/study/contact_ranges.h"
#include "core/units.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <optional>

namespace lobewright::cli {

namespace {

struct ContactArguments {
    DesignArguments design;
    std::optional<double> from, to; ///< [1/min]
};

int findContactSpeeds(const ContactArguments& given) {
    const auto design = loadedDesign(given.design);
    const double speed = design.running.speed / units::revPerMinute;
    const double from = given.from.value_or(0.05 * speed), to = given.to.value_or(3.0 * speed);
    if (!(from > 0.0 && from < to)) {
        say("--from {:.9g} --to {:.9g}: both must be positive and --to the larger\n", from, to);
        return wrongUsage;
    }
    const auto [ranges, wasInterrupted] = watched(
        [&](Progress& progress) { return study::contactRanges(design, from, to, progress); });
    if (wasInterrupted) {
        say("stopped\n");
        return interrupted;
    }
    if (!ranges) {
        report(given.design.file, ranges.problems());
        return notSolvable;
    }
    for (const Message& sentence : study::sentences(*ranges)) {
        put("{}\n", printable(sentence.english()));
    }
    return done;
}

} // namespace

void addContactSpeeds(CLI::App& program, Action& action) {
    const auto [command, given] =
        newCommand(program, action, findContactSpeeds, "contact-speeds",
                   "Find the speeds at which the rollers keep to their tracks, the gas solved at "
                   "each of them");
    addDesignArguments(command, given.design);
    addNumber(command, "--from", given.from,
              "First speed in 1/min; a twentieth of the running speed unless given");
    addNumber(command, "--to", given.to,
              "Last speed in 1/min; three times the running speed unless given");
}

} // namespace lobewright::cli
