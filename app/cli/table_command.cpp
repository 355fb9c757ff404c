#include "app/cli/table_command.h"

#include "app/cli/design_input.h"
#include "app/cli/files.h"
#include "app/cli/progress.h"
#include "core/exchange/table_csv.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cstdio>

namespace lobewright::cli {

namespace {

/// "I/N" with 1 ≤ I ≤ N ≤ 10000; absent when it is not that.
std::optional<study::Shard> readShard(const std::string& text) {
    if (text.empty()) {
        return study::Shard{};
    }
    int part = 0;
    int of = 0;
    const char* end = text.data() + text.size();
    const auto first = std::from_chars(text.data(), end, part);
    if (first.ec != std::errc() || first.ptr == end || *first.ptr != '/') {
        return std::nullopt;
    }
    const auto second = std::from_chars(first.ptr + 1, end, of);
    if (second.ec != std::errc() || second.ptr != end || part < 1 || of < part || of > 10000) {
        return std::nullopt;
    }
    return study::Shard{part - 1, of};
}

} // namespace

void addRangeArguments(CLI::App& command, RangeArguments& arguments, const std::string& unit) {
    command.add_option("--from", arguments.from, "First value [" + unit + "]")->required();
    command.add_option("--to", arguments.to, "Last value [" + unit + "]")->required();
    command.add_option("--points", arguments.points, "Number of values, both ends included")
        ->required()
        ->check(CLI::Range(2, 100000));
    command
        .add_option(
            "--shard", arguments.shard,
            "Only part I of N (job arrays); the parts concatenate, sort by the first column")
        ->type_name("I/N");
    command.add_option("--out", arguments.file, "Table to write")
        ->required()
        ->type_name("FILE.csv");
}

int writeTable(const std::string& designFile, const RangeArguments& arguments,
               const std::function<Result<study::Table>(const study::Shard&, Monitor&)>& compute) {
    const auto shard = readShard(arguments.shard);
    if (!shard) {
        fmt::print(stderr, "--shard: \"{}\" is not I/N with 1 ≤ I ≤ N\n", arguments.shard);
        return wrongUsage;
    }
    const OutputFile out("--out", arguments.file, {designFile});
    if (const int status = out.check()) {
        return status;
    }
    bool wasInterrupted = false;
    const auto table = [&] {
        Progress progress;
        auto result = compute(*shard, progress);
        wasInterrupted = progress.isInterrupted();
        return result;
    }();
    if (wasInterrupted) {
        fmt::print(stderr, "stopped; nothing was written\n");
        return interrupted;
    }
    if (!table) {
        report(designFile, table.problems());
        return table.problems().front().path.empty() ? wrongUsage : invalidDesign;
    }
    const auto& points = table->points;
    const bool noneSolved =
        !points.empty() && std::all_of(points.begin(), points.end(),
                                       [](const auto& point) { return !point.failure.empty(); });
    if (noneSolved) {
        fmt::print(stderr, "{}: not solvable at any point: {}\n", designFile,
                   points.front().failure.english());
        return notSolvable;
    }
    return out.write(exchange::tableCsv(*table, shard->part == 0));
}

} // namespace lobewright::cli
