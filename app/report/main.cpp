// Draws the report of one design; the batch program's command `report` becomes this program.
#include "app/cli/command.h"
#include "app/cli/files.h"
#include "app/cli/program.h"
#include "app/cli/progress.h"
#include "app/cli/report_arguments.h"
#include "app/cli/say.h"
#include "app/cli/solving.h"
#include "core/claims/verdict.h"
#include "core/files/source_date.h"
#include "core/printable.h"
#include "ui/report/report.h"
#include "ui/window/libraries.h"

#include <CLI/CLI.hpp>
#include <QApplication>
#include <QHashFunctions>
#include <fmt/format.h>

#include <memory>
#include <optional>

namespace lobewright::cli {

namespace {

/// The bytes of the PDF. Computes the torque curve first, and what is not known, under the monitor.
/// Errors: cancelled, the gas cycle was not solved.
Result<std::string> pdfOf(const solution::Solution& solution,
                          const std::optional<study::Claims>& claims, Monitor& monitor) {
    auto table = ui::reportTorqueCurve(solution.design, monitor);
    if (!table) {
        return table.problems();
    }
    auto unknowns = ui::reportUnknowns(solution.design, monitor, nullptr,
                                       claims ? unknowns::conditionsOf(*claims)
                                              : std::vector<unknowns::Condition>());
    if (!unknowns) {
        return unknowns.problems();
    }
    QHashSeed::setDeterministicGlobalSeed(); // fonts are written in the order of a hash
    qputenv("QT_QPA_PLATFORM", "offscreen"); // drawn on paper alone: no display is asked for
    if (files::isDateFixed()) {
        qputenv("TZ", "UTC0"); // the offset from it is written too
    }
    // Nor is there a session whose folders could be missing, as Qt would remark.
    qInstallMessageHandler([](QtMsgType, const QMessageLogContext&, const QString&) {});
    int count = 1;
    char name[] = "lobewright-report";
    char* arguments[] = {name, nullptr};
    const QApplication application(count, arguments);
    ui::ReportContent content{std::make_shared<const solution::Solution>(solution),
                              std::move(table).value(), QStringLiteral(LOBEWRIGHT_VERSION),
                              ui::reportDate()};
    content.unknowns = std::move(unknowns).value();
    if (claims) {
        content.verdict = study::verdictPage(
            *claims, &solution,
            content.unknowns ? std::optional(unknowns::bandsByName(content.unknowns->ensemble))
                             : std::nullopt);
    }
    const auto bytes = ui::reportPdf(content);
    if (!bytes) {
        return bytes.problems();
    }
    return bytes->toStdString();
}

int reportDesign(const ReportArguments& given) {
    const auto design = loadedDesign(given.design);
    const OutputFile out("--out", given.file, {given.design.file, given.claims});
    out.check();
    const auto solution = solvedDesign(given.design.file, design);
    if (const std::string why = whyNotSolved(solution); !why.empty()) {
        say("{}: {}\n", printable(given.design.file), why);
        return notSolvable;
    }
    const auto claims =
        given.claims.empty() ? std::nullopt : std::optional(loadedClaims(given.claims));
    const auto bytes =
        finished([&](Progress& progress) { return pdfOf(solution, claims, progress); });
    return out.write(valueOf(bytes, given.design.file, notSolvable));
}

int run(int argc, char** argv) {
    CLI::App program(reportDescription, "lobewright-report");
    program.set_version_flag("--version",
                             [] { return versionOf("lobewright-report", ui::libraries()); });
    ReportArguments given;
    addReportArguments(program, given);
    try {
        program.parse(argc, argv);
    } catch (const CLI::ParseError& error) {
        return endOf(program, error);
    }
    return statusOf([&] { return reportDesign(given); });
}

} // namespace

} // namespace lobewright::cli

int main(int argc, char** argv) {
    using namespace lobewright::cli;
    return runGuarded([&] { return run(argc, argv); });
}
