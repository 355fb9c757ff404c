#include "app/cli/command.h"
#include "app/cli/design_input.h"
#include "app/cli/files.h"
#include "app/cli/number_option.h"
#include "app/cli/progress.h"
#include "app/cli/say.h"
#include "core/design/file.h"
#include "core/printable.h"
#include "core/study/schedule_search.h"
#include "core/units.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <algorithm>

namespace lobewright::cli {

namespace {

struct ScheduleArguments {
    std::string design;
    study::ScheduleGoal goal;
    study::MapSteps speeds;
    std::string file;
};

std::string shown(const std::optional<double>& value) {
    return value ? fmt::format("{:.6g}", *value) : std::string("-");
}

void showRows(const study::ScheduleAnswer& answer) {
    put("{:>10} {:>12} {:>12} {:>12} {:>10} {:>10} {:>10}\n", "speed_rpm", "fixed_Nm", "best_Nm",
        "value", "change_%", "knock", "peak_bar");
    for (const study::ScheduleRow& row : answer.rows) {
        const auto of = [&](auto part) {
            return row.best ? std::optional<double>(part(*row.best)) : std::nullopt;
        };
        const auto gain = row.gain();
        put("{:>10.6g} {:>12} {:>12} {:>12} {:>10} {:>10} {:>10}{}\n", row.speed,
            shown(row.fixed ? std::optional(row.fixed->torque) : std::nullopt),
            shown(of([](const auto& best) { return best.torque; })),
            shown(of([](const auto& best) { return best.value; })),
            gain ? fmt::format("{:+.1f}", 100.0 * *gain) : std::string("-"),
            row.best ? shown(row.best->knockIntegral) : std::string("-"),
            shown(of([](const auto& best) { return best.peakPressure; })),
            row.best && !row.best->isWithin ? "  beyond the limits" : "");
    }
}

int findSchedule(const ScheduleArguments& given) {
    const auto design = loadedDesign(given.design);
    const OutputFile out("--out", given.file, {given.design});
    out.check();
    const auto& [from, to, count] = given.speeds;
    study::ScheduleGoal goal = given.goal;
    goal.speeds = study::evenlySpaced(std::min(from, to), std::max(from, to), count);
    goal.knockIntegral = goal.knockIntegral.value_or(design.limits.knockIntegral.warning);
    goal.peakPressure = goal.peakPressure.value_or(design.limits.peakPressure.warning / units::bar);
    const auto answer = valueOf(
        finished([&](Progress& progress) { return study::findSchedule(design, goal, progress); }),
        given.design, wrongUsage);
    showRows(answer);
    const design::Schedule schedule = answer.schedule();
    if (schedule.speed.empty()) {
        say("{}: not solvable at any speed: {}\n", printable(given.design),
            printable(answer.rows.front().failure.english()));
        return notSolvable;
    }
    put("{}\n", printable(study::scheduleInWords(answer).english()));
    return out.write(design::writeDesign(study::withSchedule(design, schedule)));
}

} // namespace

void addSchedule(CLI::App& program, Action& action) {
    const auto [command, given] =
        newCommand(program, action, findSchedule, "schedule",
                   "Find the value of one input at each speed that gives the "
                   "highest torque within limits; write the design with it");
    addDesignFile(command, given.design);
    addVaried(command, given.goal.input, given.goal.from, given.goal.to,
              "/mechanism/adjuster/setting_deg");
    addSteps(command, "--speeds", given.speeds, "Shaft speeds [1/min], ends included")->required();
    addNumber(command, "--knock", given.goal.knockIntegral,
              "Largest knock integral; the design's warning unless given");
    addNumber(command, "--peak-pressure", given.goal.peakPressure,
              "Largest peak pressure [bar]; the design's warning unless given");
    addOutput(command, given.file, "Design file to write", "DESIGN");
}

} // namespace lobewright::cli
