#include "app/cli/table_command.h"

#include "app/cli/design_input.h"
#include "app/cli/files.h"
#include "app/cli/number_option.h"
#include "app/cli/progress.h"
#include "app/cli/say.h"
#include "core/exchange/table_csv.h"
#include "core/parsed.h"
#include "core/printable.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <cstdio>
#include <filesystem>
#include <system_error>

namespace lobewright::cli {

study::Shard readShard(const std::string& text) {
    if (text.empty()) {
        return {};
    }
    const std::size_t slash = std::min(text.find('/'), text.size());
    const auto part = parsed<int>(std::string_view(text).substr(0, slash));
    const auto of = parsed<int>(std::string_view(text).substr(std::min(slash + 1, text.size())));
    if (!part || !of || *part < 1 || *of < *part || *of > 10000) {
        say("--part: \"{}\" is not I/N with 1 ≤ I ≤ N\n", printable(text));
        throw Refusal{wrongUsage};
    }
    return {*part - 1, *of};
}

std::optional<std::vector<double>> readSpeeds(const std::optional<double>& from,
                                              const std::optional<double>& to,
                                              const std::optional<int>& points) {
    if (!from && !to && !points) {
        return std::nullopt;
    }
    if (!(from && to && points)) {
        say("--from, --to and --points belong together\n");
        throw Refusal{wrongUsage};
    }
    return study::evenlySpaced(*from, *to, *points);
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
    addOutput(command, arguments.file, "Table to write", "FILE.csv");
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
    const study::Shard shard = readShard(arguments.shard);
    const OutputFile out("--out", arguments.file, {designFile});
    out.check();
    std::vector<study::Point> points;
    const auto [table, wasInterrupted] = watched([&](Progress& progress) {
        return study.compute(shard, progress,
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
    return out.write(exchange::tableCsv(*table, shard.part == 0));
}

} // namespace lobewright::cli
