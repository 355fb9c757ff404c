#pragma once

#include "app/cli/design_input.h"

#include <string>

namespace lobewright::cli {

/// What the command `report` and the program that draws the report are both told.
struct ReportArguments {
    DesignArguments design;
    std::string file;   ///< the PDF to write
    std::string claims; ///< published figures to be judged in it; empty: none
};

inline constexpr const char* reportDescription =
    "Write a report of one design: drawing, figures, plots, limits, sources";

/// DESIGN [--speed RPM] [--motored] [--claims CLAIMS.json] --out FILE.pdf
void addReportArguments(CLI::App& command, ReportArguments& arguments);

} // namespace lobewright::cli
