#include "core/enum_table.h"
#include "core/exchange/bands_files.h"
#include "core/exchange/table_csv.h"
#include "core/parsed.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>
#include <iterator>
#include <limits>

LW_TEXTS_OF(Core)

namespace lobewright::exchange {

using unknowns::Ensemble;
using unknowns::Failure;
using unknowns::Run;

namespace {

constexpr std::string_view kindWords[] = {"", "not-built", "not-run"};

std::string exact(double value) {
    return std::isfinite(value) ? fmt::format("{}", value) : std::string();
}

std::string textOf(const design::FieldValue& value) {
    if (const auto* word = std::get_if<std::string>(&value)) {
        return *word;
    }
    const auto* whole = std::get_if<int>(&value);
    return whole ? fmt::format("{}", *whole) : exact(std::get<double>(value));
}

/// Names of the columns.
std::string header(const Ensemble& ensemble) {
    std::string text = "sample,runs,failure,rule,message";
    for (const std::string& path : unknowns::inputPaths(ensemble.unknowns, ensemble.followers)) {
        text += ',';
        text += csvField(path);
    }
    for (const auto& column : ensemble.results) {
        text += ',';
        text += column.name;
    }
    for (const double speed : ensemble.plan.speeds) {
        for (const auto& column : unknowns::curveColumns()) {
            text +=
                fmt::format(",{}_at_{:.6g}_rpm",
                            column.name == "lift_off_share" ? "keeps_contact" : column.name, speed);
        }
    }
    return text;
}

/// The inputs of an engine, as the table shows them.
std::vector<std::string> inputTexts(const Ensemble& ensemble, const std::vector<double>& shares) {
    std::vector<std::string> texts;
    for (const auto& [path, value] :
         unknowns::valuesAt(ensemble.unknowns, ensemble.followers, shares)) {
        texts.push_back(textOf(value));
    }
    return texts;
}

/// Takes fields of RFC 4180 text one after the other.
class CsvReader {
  public:
    explicit CsvReader(std::string_view text) : text_(text) {}
    bool atEnd() const { return place_ >= text_.size(); }

    /// The fields of the next line.
    std::vector<std::string> line() {
        std::vector<std::string> fields(1);
        bool isQuoted = false;
        for (; !atEnd(); ++place_) {
            const char c = text_[place_];
            if (isQuoted) {
                if (c != '"') {
                    fields.back() += c;
                } else if (place_ + 1 < text_.size() && text_[place_ + 1] == '"') {
                    fields.back() += text_[++place_];
                } else {
                    isQuoted = false;
                }
            } else if (c == '"') {
                isQuoted = true;
            } else if (c == ',') {
                fields.emplace_back();
            } else if (c == '\n') {
                ++place_;
                break;
            } else if (c != '\r') {
                fields.back() += c;
            }
        }
        return fields;
    }

  private:
    std::string_view text_;
    std::size_t place_ = 0;
};

/// A gap is an empty field.
std::optional<double> valueOf(const std::string& text) {
    return text.empty() ? std::numeric_limits<double>::quiet_NaN() : parsed<double>(text);
}

Failure failureOf(const std::vector<std::string>& fields) {
    if (fields[1] == "1") {
        return {};
    }
    return {fields[2] == kindWords[2] ? Failure::Kind::notRun : Failure::Kind::notBuilt, fields[3],
            Message(fields[4])};
}

/// The engine of a line; absent where the line is none of this ensemble.
std::optional<Run> runOf(const std::vector<std::string>& fields, const Ensemble& whole,
                         const unknowns::Matrix& shares) {
    constexpr std::size_t before = 5;
    const std::size_t results = whole.results.size();
    const std::size_t curve =
        whole.plan.speeds.size() * static_cast<std::size_t>(unknowns::curveQuantities);
    const auto index = parsed<long>(fields[0]);
    if (!index || *index < 0 || *index >= shares.rows()) {
        return std::nullopt;
    }
    Run run;
    run.index = *index;
    run.shares.assign(shares.row(*index).begin(), shares.row(*index).end());
    const auto inputs = inputTexts(whole, run.shares);
    if (fields.size() != before + inputs.size() + results + curve ||
        !std::equal(inputs.begin(), inputs.end(), fields.begin() + before)) {
        return std::nullopt;
    }
    run.failure = failureOf(fields);
    for (std::size_t i = 0; i < results + curve; ++i) {
        const auto value = valueOf(fields[before + inputs.size() + i]);
        if (!value) {
            return std::nullopt;
        }
        (i < results ? run.results : run.curve).push_back(*value);
    }
    return run;
}

} // namespace

std::string samplesCsv(const Ensemble& ensemble) {
    std::string text = header(ensemble) + "\r\n";
    for (const Run& run : ensemble.runs) {
        text += fmt::format("{},{},{},{},{}", run.index, run.runs() ? 1 : 0,
                            entryOf<Failure::Kind::notRun>(kindWords, run.failure.kind),
                            csvField(run.failure.rule), csvField(run.failure.message.english()));
        for (const std::string& input : inputTexts(ensemble, run.shares)) {
            text += ',';
            text += csvField(input);
        }
        for (const auto* values : {&run.results, &run.curve}) {
            for (const double value : *values) {
                text += ',';
                text += exact(value);
            }
        }
        text += "\r\n";
    }
    return text;
}

Result<PartPlan> readPartPlan(std::string_view summary) {
    const auto json = nlohmann::json::parse(summary, nullptr, false);
    const Problem wrong{"", LW_TEXT("This is not the summary of a part of a study over unknowns.")};
    if (!json.is_object() || json.value("format", "") != "lobewright-bands") {
        return wrong;
    }
    try {
        PartPlan part;
        part.plan.samples = json.at("samples").get<int>();
        part.plan.seed = json.at("seed").get<std::uint64_t>();
        part.plan.speeds = json.at("speeds_rpm").get<std::vector<double>>();
        const auto purpose = purposeOf(json.at("purpose").get<std::string>());
        if (!purpose || part.plan.samples < 1 || part.plan.samples > unknowns::mostSamples) {
            return wrong;
        }
        part.purpose = *purpose;
        return part;
    } catch (const nlohmann::json::exception&) {
        return wrong;
    }
}

Result<Ensemble> joinedEnsemble(Ensemble whole, const std::vector<std::string>& texts) {
    const auto library = unknowns::statistics();
    if (!library) {
        return library.problems();
    }
    const unknowns::Matrix shares = unknowns::sharesOf(
        **library, static_cast<int>(whole.unknowns.size()), whole.plan.seed, 0, whole.plan.samples);
    for (const std::string& text : texts) {
        CsvReader reader(text);
        if (fmt::format("{}", fmt::join(reader.line(), ",")) != header(whole)) {
            return Problem{"", LW_TEXT("A table of samples has other columns than this design and "
                                       "these speeds give.")};
        }
        while (!reader.atEnd()) {
            auto run = runOf(reader.line(), whole, shares);
            if (!run) {
                return Problem{"",
                               LW_TEXT("A table of samples belongs to another design or seed.")};
            }
            whole.runs.push_back(std::move(*run));
        }
    }
    std::ranges::sort(whole.runs, {}, &Run::index);
    for (std::size_t i = 0; i < static_cast<std::size_t>(whole.plan.samples); ++i) {
        if (i >= whole.runs.size() || whole.runs[i].index > static_cast<long>(i)) {
            return Problem{"", Message(LW_TEXT("Engine %1 of %2 is in none of the parts."), i,
                                       whole.plan.samples)};
        }
        if (whole.runs[i].index < static_cast<long>(i)) {
            return Problem{
                "", Message(LW_TEXT("Engine %1 is in two of the parts."), whole.runs[i].index)};
        }
    }
    return whole;
}

} // namespace lobewright::exchange
