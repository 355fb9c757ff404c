#include "app/cli/command.h"
#include "app/cli/design_input.h"
#include "app/cli/progress.h"
#include "app/cli/report_pdf.h"
#include "app/cli/solving.h"
#include "core/design/atomic_file.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <cstdio>
#include <memory>

namespace lobewright::cli {

namespace {

struct ReportArguments {
    DesignArguments design;
    std::string file;
};

int reportDesign(const ReportArguments& given) {
    if (!canReport()) {
        fmt::print(stderr, "report: this build has no report; it was made without the desktop "
                           "program, whose plots a report needs\n");
        return wrongUsage;
    }
    const auto loaded = loadOrReport(given.design);
    if (const int* status = std::get_if<int>(&loaded)) {
        return *status;
    }
    const auto solved = solveOrReport(given.design.file, std::get<design::Design>(loaded));
    if (const int* status = std::get_if<int>(&solved)) {
        return *status;
    }
    const auto& solution = std::get<solution::Solution>(solved);
    if (const std::string why = whyNotSolved(solution); !why.empty()) {
        fmt::print(stderr, "{}: {}\n", given.design.file, why);
        return notSolvable;
    }
    bool wasInterrupted = false;
    const auto bytes = [&] {
        Progress progress;
        auto pdf = reportPdf(solution, progress);
        wasInterrupted = progress.isInterrupted();
        return pdf;
    }();
    if (wasInterrupted) {
        fmt::print(stderr, "stopped; nothing was written\n");
        return interrupted;
    }
    if (!bytes) {
        report(given.design.file, bytes.problems());
        return notSolvable;
    }
    if (const auto problem = design::writeAtomically(given.file, *bytes)) {
        fmt::print(stderr, "--out: {}\n", problem->message);
        return wrongUsage;
    }
    return done;
}

} // namespace

void addReport(CLI::App& program, Action& action) {
    CLI::App* command =
        addCommand(program, "report",
                   "Write a report of one design: drawing, figures, plots, limits, sources");
    const auto given = std::make_shared<ReportArguments>();
    addDesignArguments(*command, given->design);
    command->add_option("--out", given->file, "PDF to write")->required()->type_name("FILE.pdf");
    command->callback([&action, given] { action = [given] { return reportDesign(*given); }; });
}

} // namespace lobewright::cli
