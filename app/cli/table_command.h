#pragma once

#include "app/cli/command.h"
#include "core/study/operating_points.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace CLI {
class App;
}

namespace lobewright::cli {

/// "I/N" with 1 ≤ I ≤ N ≤ 10000, everything where it is empty; ends the command when it is not
/// that.
study::Shard readShard(const std::string& text);

/// The speeds that --from, --to and --points [1/min] ask for; absent where none of them is given.
/// Ends the command where one is without the others.
std::optional<std::vector<double>> readSpeeds(const std::optional<double>& from,
                                              const std::optional<double>& to,
                                              const std::optional<int>& points);

/// Arguments that all studies over a range share.
struct RangeArguments {
    double from = 0.0, to = 0.0;
    int points = 2;
    std::string shard; ///< "I/N", I from 1 to N; empty: everything
    std::string file;  ///< of the table
};

/// --from --to --points [--part I/N] --out FILE.csv
void addRangeArguments(CLI::App& command, RangeArguments& arguments, const std::string& unit);

/// A study of one design over a range.
struct RangeStudy {
    study::Column parameter;
    std::vector<std::string> figures;
    std::function<Result<study::Table>(const study::Shard&, Monitor&, const study::PointSink&)>
        compute;
};

/// Computes a table under progress and Ctrl-C and writes it as RFC 4180 text, all or nothing. With
/// --part only the first part carries the line of names, so that the parts concatenate. Stopped by
/// Ctrl-C, it keeps the points that are done in a file beside it, NAME.unfinished.csv.
int writeTable(const std::string& designFile, const RangeArguments& arguments,
               const RangeStudy& study);

} // namespace lobewright::cli
