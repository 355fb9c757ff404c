#include "app/cli/table_command.h"

#include "app/cli/design_input.h"
#include "app/cli/files.h"
#include "app/cli/number_option.h"
#include "app/cli/progress.h"
#include "app/cli/say.h"
#include "core/exchange/table_csv.h"
#include "core/printable.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <charconv>
#include <cstdio>
#include <filesystem>
#include <system_error>

namespace lobewright::cli {

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

void addRangeArguments(CLI::App& command, RangeArguments& arguments, const std::string& unit) {
    addNumber(command, "--from", arguments.from, "First value [" + unit + "]")->required();
    addNumber(command, "--to", arguments.to, "Last value [" + unit + "]")->required();
    addNumber(command, "--points", arguments.points, 2, mostPoints,
              "Number of values, both ends included")
        ->required();
    command
        .add_option(
            "--part", arguments.shard,
            "Only part I of N (job arrays); the parts concatenate, sort by the first column")
        ->type_name("I/N");
    command.add_option("--shard", arguments.shard)->group(""); // its former name, not listed
    command.add_option("--out", arguments.file, "Table to write")
        ->required()
        ->type_name("FILE.csv");
}

namespace {

/// "sweep.csv" gives "sweep.unfinished.csv".
std::string unfinishedName(const std::string& file) {
    std::filesystem::path name = file;
    name.replace_extension(".unfinished" + name.extension().native());
    return name.native();
}

/// Hours of a long study are not thrown away: what is done goes into a file that says by its name
/// that it is not all. The file that was asked for stays as it is.
int keepUnfinished(const std::string& designFile, const RangeArguments& arguments,
                   const RangeStudy& study, std::vector<study::Point> points) {
    std::error_code error;
    const auto status = std::filesystem::status(arguments.file, error);
    const bool isFile = !std::filesystem::exists(status) || is_regular_file(status);
    if (points.empty() || !isFile) {
        say("stopped; nothing was written\n");
        return interrupted;
    }
    std::ranges::sort(points, {}, &study::Point::index);
    study::Table table{study.parameter, {}, std::move(points)};
    for (const std::string& name : study.figures) {
        table.columns.push_back({name, name, ""});
    }
    const std::string file = unfinishedName(arguments.file);
    if (OutputFile("--out", file, {designFile}).write(exchange::tableCsv(table)) == done) {
        say("stopped; the {} points that are done are in {}; {} was not written\n",
            table.points.size(), printable(file), printable(arguments.file));
    }
    return interrupted;
}

} // namespace

int writeTable(const std::string& designFile, const RangeArguments& arguments,
               const RangeStudy& study) {
    const auto shard = readShard(arguments.shard);
    if (!shard) {
        say("--part: \"{}\" is not I/N with 1 ≤ I ≤ N\n", printable(arguments.shard));
        return wrongUsage;
    }
    const OutputFile out("--out", arguments.file, {designFile});
    out.check();
    std::vector<study::Point> points;
    const auto [table, wasInterrupted] = watched([&](Progress& progress) {
        return study.compute(*shard, progress,
                             [&](const study::Point& point) { points.push_back(point); });
    });
    if (wasInterrupted) {
        return keepUnfinished(designFile, arguments, study, std::move(points));
    }
    if (!table) {
        report(designFile, table.problems());
        return table.problems().front().path.empty() ? wrongUsage : invalidDesign;
    }
    const bool noneSolved =
        !table->points.empty() &&
        std::ranges::none_of(table->points, &Message::empty, &study::Point::failure);
    if (noneSolved) {
        say("{}: not solvable at any point: {}\n", printable(designFile),
            printable(table->points.front().failure.english()));
        return notSolvable;
    }
    return out.write(exchange::tableCsv(*table, shard->part == 0));
}

} // namespace lobewright::cli
