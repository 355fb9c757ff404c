#include "app/cli/report_arguments.h"

#include <CLI/CLI.hpp>

namespace lobewright::cli {

void addReportArguments(CLI::App& command, ReportArguments& arguments) {
    addDesignArguments(command, arguments.design);
    command
        .add_option("--claims", arguments.claims,
                    "Published figures of this engine; the report has the verdict on them")
        ->type_name("CLAIMS.json");
    command.add_option("--out", arguments.file, "PDF to write")->required()->type_name("FILE.pdf");
}

} // namespace lobewright::cli
