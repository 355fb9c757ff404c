#include "core/exchange/solution_files.h"

#include "core/files/write_file.h"
#include "core/text/caution.h"
#include "core/units.h"
#include "core/units/unit.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <iterator>

namespace lobewright::exchange {

using Json = nlohmann::ordered_json;

namespace {

constexpr const char* channelsName = "channels.csv";
constexpr const char* summaryName = "summary.json";

double degrees(double radians) {
    return radians / units::degree;
}

/// Enough digits for any use, few enough that 12.3 is not written 12.300000000000001.
double rounded(double value) {
    return roundedTo(12, value);
}

Json orNull(const std::optional<double>& value) {
    return value ? Json(rounded(*value)) : Json(nullptr);
}

Json cycleEntry(const solution::Solution& solution, std::size_t index) {
    const auto& events = solution.timing.cycles()[index];
    Json entry;
    entry["inner_dead_centre_deg"] = rounded(degrees(events.centres.idc));
    entry["outer_dead_centre_deg"] = rounded(degrees(events.centres.odc));
    entry["exhaust_opens_deg"] = rounded(degrees(events.exhaustOpens));
    entry["inlet_opens_deg"] = rounded(degrees(events.inletOpens));
    entry["inlet_closes_deg"] = rounded(degrees(events.inletCloses));
    entry["exhaust_closes_deg"] = rounded(degrees(events.exhaustCloses));
    if (solution.gas) {
        const auto& cycle = solution.gas->cycles[index];
        entry["imep_bar"] = rounded(cycle.imep / units::bar);
        entry["trapped_mass_mg"] = rounded(cycle.trappedMass / units::milligram);
        entry["peak_pressure_bar"] = rounded(cycle.peakPressure / units::bar);
        entry["peak_temperature_K"] = rounded(cycle.peakTemperature);
        entry["burn_start_cycle_deg"] = rounded(degrees(cycle.burnStart));
        entry["delivery_ratio"] = rounded(cycle.deliveryRatio);
        entry["knock_integral"] = orNull(cycle.knockIntegral);
    }
    return entry;
}

Json checkEntry(const solution::Check& check) {
    Json entry;
    entry["id"] = check.id;
    entry["severity"] = word(check.severity);
    entry["message"] = check.message.english();
    entry["value"] = rounded(check.value);
    entry["limit"] = rounded(check.limit);
    entry["unit"] = check.unit->symbol;
    entry["path"] = check.path;
    entry["shaft_angle_deg"] = check.angle ? Json(rounded(degrees(*check.angle))) : Json(nullptr);
    return entry;
}

} // namespace

std::string_view word(solution::Severity severity) {
    using solution::Severity;
    return severity == Severity::error     ? "error"
           : severity == Severity::warning ? "warning"
                                           : "remark";
}

std::string channelsCsv(const solution::Solution& solution) {
    std::string text;
    auto out = std::back_inserter(text);
    for (std::size_t i = 0; i < solution.channels.size(); ++i) {
        fmt::format_to(out, "{}{}", i ? "," : "", solution.channels[i].name);
    }
    text += "\r\n";
    for (Eigen::Index row = 0; row < solution.theta.size(); ++row) {
        for (std::size_t i = 0; i < solution.channels.size(); ++i) {
            if (i) {
                text += ',';
            }
            const double value = solution.channels[i].values[row];
            if (std::isfinite(value)) {
                fmt::format_to(out, "{:.9g}", value);
            }
        }
        text += "\r\n";
    }
    return text;
}

std::string summaryJson(const solution::Solution& solution) {
    Json summary;
    summary["format"] = "lobewright-summary";
    summary["program"] = "Lobewright " LOBEWRIGHT_VERSION;
    summary["caution"] = caution().text;
    summary["title"] = solution.design.title;
    for (const auto& figure : solution.figures) {
        summary[figure.group][figure.name] = orNull(figure.value);
    }
    summary["cycles"] = Json::array();
    for (std::size_t i = 0; i < solution.timing.cycles().size(); ++i) {
        summary["cycles"].push_back(cycleEntry(solution, i));
    }
    summary["checks"] = Json::array();
    for (const auto& check : solution.checks) {
        summary["checks"].push_back(checkEntry(check));
    }
    return summary.dump(2) + "\n";
}

std::optional<Problem> checkSolutionFolder(const std::filesystem::path& folder,
                                           std::span<const std::filesystem::path> inputs) {
    if (auto problem = files::checkFolder(folder)) {
        return problem;
    }
    if (std::error_code error; !std::filesystem::exists(folder, error)) {
        return std::nullopt;
    }
    for (const char* name : {channelsName, summaryName}) {
        if (auto problem = files::checkOutput(folder / name, inputs)) {
            return problem;
        }
    }
    return std::nullopt;
}

std::optional<Problem> writeSolution(const solution::Solution& solution,
                                     const std::filesystem::path& folder,
                                     std::span<const std::filesystem::path> inputs) {
    if (auto problem = files::makeFolder(folder)) {
        return problem;
    }
    const std::string channels = channelsCsv(solution), summary = summaryJson(solution);
    const files::Output both[] = {{folder / channelsName, channels},
                                  {folder / summaryName, summary}};
    return files::writeFiles(both, inputs);
}

} // namespace lobewright::exchange
