#include "core/exchange/bands_files.h"

#include "core/enum_table.h"
#include "core/exchange/table_csv.h"
#include "core/files/write_file.h"
#include "core/units/unit.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <cmath>

namespace lobewright::exchange {

using Json = nlohmann::ordered_json;
using unknowns::Purpose;
using unknowns::Quantiles;

namespace {

struct PurposeWord {
    Purpose purpose;
    std::string_view word;
};
constexpr PurposeWord purposeWords[] = {
    {Purpose::unknown, "unknown"}, {Purpose::scatter, "scatter"}, {Purpose::free, "free"}};

std::string number(double value) {
    return std::isfinite(value) ? fmt::format("{:.5g}", value) : std::string();
}
std::string number(const std::optional<double>& value) {
    return value ? number(*value) : std::string();
}

/// Five fields, empty where there is no band.
std::string fieldsOf(const std::optional<Quantiles>& band) {
    if (!band) {
        return ",,,,";
    }
    return fmt::format("{},{},{},{},{}", number(band->p05), number(band->p25), number(band->p50),
                       number(band->p75), number(band->p95));
}

double rounded(double value) {
    return roundedTo(6, value);
}

double shareOf(long count, long all) {
    return all > 0 ? rounded(static_cast<double>(count) / static_cast<double>(all)) : 0.0;
}

void addFeasibility(Json& root, const unknowns::Ensemble& ensemble) {
    const auto found = unknowns::feasibility(ensemble);
    root["share_that_runs"] = shareOf(found.runs, found.engines);
    root["share_not_built"] = shareOf(found.notBuilt, found.engines);
    root["share_not_run"] = shareOf(found.notRun, found.engines);
    root["share_without_brake_power"] = shareOf(found.withoutPower, found.engines);
    root["reasons"] = Json::array();
    for (const auto& reason : found.reasons) {
        Json entry;
        entry["kind"] = reason.kind == unknowns::Failure::Kind::notBuilt ? "not-built" : "not-run";
        entry["count"] = reason.count;
        entry["share"] = shareOf(reason.count, found.engines);
        entry["example"] = reason.example.english();
        root["reasons"].push_back(entry);
    }
}

Json surrogateEntry(const unknowns::DecidedResult& decided, const unknowns::Ensemble& ensemble) {
    Json entry;
    entry["result"] = ensemble.results[decided.result].name;
    entry["quality"] = decided.decision.quality ? Json(rounded(*decided.decision.quality)) : Json();
    entry["indices_from"] = decided.decision.isOfSurrogate ? "surrogate" : "samples";
    entry["advice"] = unknowns::sentence(decided.advice, ensemble.unknowns).english();
    return entry;
}

std::string_view wordOf(unknowns::Condition::Sense sense) {
    using Sense = unknowns::Condition::Sense;
    return entryOf<Sense::about, std::string_view>({"at-least", "at-most", "about"}, sense);
}

Json requirementEntry(const unknowns::Requirement& required, const unknowns::Ensemble& ensemble) {
    Json entry;
    entry["conditions"] = Json::array();
    for (const auto& condition : required.conditions) {
        Json row;
        row["result"] = condition.result;
        row["sense"] = wordOf(condition.sense);
        row["target"] = rounded(condition.target);
        row["tolerance"] = rounded(condition.tolerance);
        row["published"] = condition.said;
        entry["conditions"].push_back(row);
    }
    entry["share"] = rounded(required.share);
    entry["engines"] = required.engines;
    entry["tries"] = required.tries;
    entry["verified"] = required.runs.size();
    entry["nearest_misses_by"] =
        std::isfinite(required.nearestMiss) ? Json(rounded(required.nearestMiss)) : Json(nullptr);
    entry["statements"] = Json::array();
    for (const Message& sentence : unknowns::sentences(required, ensemble.unknowns)) {
        entry["statements"].push_back(sentence.english());
    }
    return entry;
}

} // namespace

std::string_view wordOf(Purpose purpose) {
    for (const auto& row : purposeWords) {
        if (row.purpose == purpose) {
            return row.word;
        }
    }
    return {};
}

std::optional<Purpose> purposeOf(std::string_view word) {
    for (const auto& row : purposeWords) {
        if (row.word == word) {
            return row.purpose;
        }
    }
    return std::nullopt;
}

std::string resultsCsv(const BandsStudy& study) {
    std::string text = "name,nominal,p05,p25,p50,p75,p95\r\n";
    for (const auto& result : unknowns::resultBands(study.ensemble)) {
        text += fmt::format("{},{},{}\r\n", result.column.name, number(result.nominal),
                            fieldsOf(result.band));
    }
    return text;
}

std::string curveCsv(const BandsStudy& study) {
    std::string text = "speed_rpm";
    const auto columns = unknowns::curveColumns();
    for (std::size_t i = 0; i < unknowns::keepsContact; ++i) {
        for (const char* edge : {"", "_p05", "_p25", "_p50", "_p75", "_p95"}) {
            text += fmt::format(",{}{}", columns[i].name, edge);
        }
    }
    text += ",lift_off_share\r\n";
    for (const auto& point : unknowns::curveBands(study.ensemble)) {
        text += number(point.speed);
        for (std::size_t i = 0; i < unknowns::keepsContact; ++i) {
            text += fmt::format(",{},{}", number(point.nominal[i]), fieldsOf(point.band[i]));
        }
        text += fmt::format(",{}\r\n", number(point.liftOffShare));
    }
    return text;
}

std::string decidesCsv(const BandsStudy& study) {
    std::string text = "result,input,first_order,total,direction,first_order_error\r\n";
    for (const unknowns::DecidedResult& decided : study.decided) {
        for (const auto& influence : decided.decision.influences) {
            text +=
                fmt::format("{},{},{},{},{},{}\r\n", study.ensemble.results[decided.result].name,
                            csvField(study.ensemble.unknowns[influence.unknown].name),
                            number(influence.first), number(influence.total),
                            unknowns::name(influence.direction), number(influence.error));
        }
    }
    return text;
}

std::string requiredCsv(const BandsStudy& study) {
    std::string text = "input,before_p05,before_p25,before_p50,before_p75,before_p95,"
                       "after_p05,after_p25,after_p50,after_p75,after_p95,lowest,highest,shift\r\n";
    for (const auto& narrowed : study.required->unknowns) {
        text += fmt::format(
            "{},{},{},{},{},{}\r\n", csvField(study.ensemble.unknowns[narrowed.unknown].name),
            fieldsOf(narrowed.before), fieldsOf(narrowed.after), number(narrowed.lowest),
            number(narrowed.highest), number(narrowed.shift));
    }
    return text;
}

std::string pairsCsv(const BandsStudy& study) {
    const auto pair = unknowns::narrowedMost(*study.required);
    if (!pair) {
        return {};
    }
    const auto& unknowns = study.ensemble.unknowns;
    const auto& first = unknowns[pair->first];
    const auto& second = unknowns[pair->second];
    std::string text = fmt::format("kind,{},{}\r\n", csvField(first.name), csvField(second.name));
    const auto add = [&](const char* kind, const std::vector<unknowns::Run>& runs) {
        for (const auto& run : runs) {
            text += fmt::format("{},{},{}\r\n", kind, csvField(first.text(run.shares[pair->first])),
                                csvField(second.text(run.shares[pair->second])));
        }
    };
    add("possible", study.ensemble.runs);
    add("keeps", study.required->runs);
    return text;
}

std::string bandsSummary(const BandsStudy& study) {
    const auto& ensemble = study.ensemble;
    Json root;
    root["format"] = "lobewright-bands";
    root["title"] = study.title;
    root["purpose"] = wordOf(study.purpose);
    root["samples"] = ensemble.plan.samples;
    root["seed"] = ensemble.plan.seed;
    root["part"] = ensemble.plan.part.part + 1;
    root["parts"] = ensemble.plan.part.of;
    root["speeds_rpm"] = ensemble.plan.speeds;
    root["unknowns"] = ensemble.unknowns.size();
    addFeasibility(root, ensemble);
    root["decides"] = Json::array();
    for (const unknowns::DecidedResult& decided : study.decided) {
        root["decides"].push_back(surrogateEntry(decided, ensemble));
    }
    root["published_figures"] =
        study.required ? requirementEntry(*study.required, ensemble) : Json(nullptr);
    return root.dump(2) + "\n";
}

std::optional<Problem> writeBands(const BandsStudy& study, const std::filesystem::path& folder,
                                  std::span<const std::filesystem::path> inputs) {
    if (auto problem = files::makeFolder(folder)) {
        return problem;
    }
    std::vector<std::pair<const char*, std::string>> texts;
    if (study.ensemble.plan.part.of == 1) {
        texts.emplace_back("results.csv", resultsCsv(study));
        texts.emplace_back("curve.csv", curveCsv(study));
        texts.emplace_back("decides.csv", decidesCsv(study));
        if (study.required) {
            texts.emplace_back("required.csv", requiredCsv(study));
            if (auto pairs = pairsCsv(study); !pairs.empty()) {
                texts.emplace_back("pairs.csv", std::move(pairs));
            }
        }
    }
    texts.emplace_back("samples.csv", samplesCsv(study.ensemble));
    texts.emplace_back("summary.json", bandsSummary(study));
    std::vector<files::Output> outputs;
    outputs.reserve(texts.size());
    for (const auto& [name, text] : texts) {
        outputs.push_back({folder / name, text});
    }
    return files::writeFiles(outputs, inputs);
}

} // namespace lobewright::exchange
