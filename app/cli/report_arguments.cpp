#include "app/cli/report_arguments.h"

#include "app/cli/files.h"

#include <CLI/CLI.hpp>

namespace lobewright::cli {

void addReportArguments(CLI::App& command, ReportArguments& arguments) {
    addDesignArguments(command, arguments.design);
    command
        .add_option("--claims", arguments.claims,
                    "Published figures of this engine; the report has the verdict on them")
        ->type_name("CLAIMS.json");
    addOutput(command, arguments.file, "PDF to write", "FILE.pdf");
}

} // namespace lobewright::cli
