// Draws the report of one design; the batch program's command `report` becomes this program.
#include "app/cli/command.h"
#include "app/cli/files.h"
#include "app/cli/program.h"
#include "app/cli/progress.h"
#include "app/cli/report_arguments.h"
#include "app/cli/say.h"
#include "app/cli/solving.h"
#include "core/claims/claims_file.h"
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
#include <variant>

namespace lobewright::cli {

namespace {

/// The published figures where there are any; or the exit status after the reasons have gone to
/// stderr.
std::variant<std::optional<study::Claims>, int> readClaims(const std::string& file) {
    if (file.empty()) {
        return std::nullopt;
    }
    const auto text = readOrReport(file, study::largestClaims + 1);
    if (const int* status = std::get_if<int>(&text)) {
        return *status;
    }
    const auto claims = study::readClaims(std::get<std::string>(text));
    if (!claims) {
        report(file, claims.problems());
        return invalidDesign;
    }
    return *claims;
}

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
    const auto loaded = loadOrReport(given.design);
    if (const int* status = std::get_if<int>(&loaded)) {
        return *status;
    }
    const OutputFile out("--out", given.file, {given.design.file, given.claims});
    if (const int status = out.check()) {
        return status;
    }
    const auto solved = solveOrReport(given.design.file, std::get<design::Design>(loaded));
    if (const int* status = std::get_if<int>(&solved)) {
        return *status;
    }
    const auto& solution = std::get<solution::Solution>(solved);
    if (const std::string why = whyNotSolved(solution); !why.empty()) {
        say("{}: {}\n", printable(given.design.file), why);
        return notSolvable;
    }
    const auto claims = readClaims(given.claims);
    if (const int* status = std::get_if<int>(&claims)) {
        return *status;
    }
    const auto [bytes, wasInterrupted] = watched([&](Progress& progress) {
        return pdfOf(solution, std::get<std::optional<study::Claims>>(claims), progress);
    });
    if (wasInterrupted) {
        say("stopped; nothing was written\n");
        return interrupted;
    }
    if (!bytes) {
        report(given.design.file, bytes.problems());
        return notSolvable;
    }
    return out.write(*bytes);
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
    const int status = reportDesign(given);
    sayCaution(status);
    return status;
}

} // namespace

} // namespace lobewright::cli

int main(int argc, char** argv) {
    using namespace lobewright::cli;
    return runGuarded([&] { return run(argc, argv); });
}
