#include "core/draft/draft.h"

#include "core/design/file.h"
#include "core/design/ranged_inputs.h"
#include "core/draft/build.h"
#include "core/draft/comparisons.h"
#include "core/draft/ports.h"
#include "core/study/solve_for.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::draft {

namespace {

using units::bar;
using units::kilowatt;
using units::millimetre;

constexpr double wantedStress = 1200.0; ///< nominal, at the contact [MPa]
constexpr const char* supplyPath = "/gas/supply/pressure_bar";

double valueOf(const solution::Solution& solved, const std::string& name) {
    const auto* figure = solved.figure(name);
    return figure && figure->value ? *figure->value : 0.0;
}

/// The width at which a line contact has the wanted stress under the same force.
double widthForStress(const design::Design& design, const solution::Solution& solved) {
    const double stress = std::max(valueOf(solved, "peak_contact_pressure_inlet_MPa"),
                                   valueOf(solved, "peak_contact_pressure_exhaust_MPa"));
    const auto& m = design.mechanism;
    if (!(stress > 0.0)) {
        return m.roller.width;
    }
    // Relief takes the same share of every width.
    return std::clamp(m.roller.width * std::pow(stress / wantedStress, 2.0), 0.12 * m.bore,
                      0.9 * m.bore);
}

/// Inputs whose change alone breaks a rule of the design: an origin, but no range.
bool hasPartners(const std::string& path) {
    return path.ends_with("/span_deg") || path.ends_with("/lobes") ||
           path == "/mechanism/cylinders";
}

void noteStep(const Step& step, const std::string& source, design::Design& design) {
    for (const std::string& path : step.inputs) {
        const auto field = design::findField(design, path);
        if (!field) {
            continue;
        }
        design::Known known{.origin = step.origin};
        const double low = std::max(step.span.low, field->range.min);
        const double high = std::min(step.span.high, field->range.max);
        if (low < high && !hasPartners(path) && field->range.contains(low) &&
            field->range.contains(high)) {
            known.low = low;
            known.high = high;
        }
        if (known.low && step.inputs.size() > 1) {
            known.group = step.rule ? std::string(step.rule->id) : step.label.text;
        }
        if (step.rule) {
            known.rule = step.rule->id;
        }
        known.source = step.rule || !step.working.empty() ? step.working.english() : source;
        design.knowledge[path] = known;
    }
}

/// Sections that describe the engine; limits and what it is compared with are the person's.
bool describesEngine(const std::string& path) {
    for (const char* section :
         {"/mechanism/", "/tracks/", "/ports/", "/gas/", "/running/", "/friction/", "/materials/",
          "/lubricant/", "/roller_bearing/", "/thrust_bearing/"}) {
        if (path.starts_with(section)) {
            return true;
        }
    }
    return false;
}

/// Every input has an origin: what no step set is the program's default.
void noteOrigins(const Brief& brief, const std::vector<Step>& steps, design::Design& design) {
    for (const Step& step : steps) {
        noteStep(step, brief.source, design);
    }
    if (brief.fuel) {
        design.knowledge["/gas/fuel"] = {.origin = design::Origin::given, .source = brief.source};
    } else {
        design.knowledge["/gas/fuel"] = {.options = {"petrol", "methane", "ethanol"},
                                         .rule = "fuel"};
    }
    design.knowledge["/gas/scavenging/model"] = {
        .options = {"displacement-then-mixing", "perfect-mixing"}, .rule = "scavenging"};
    for (const design::Field& field : design::fields(design)) {
        const bool hasValue = !std::holds_alternative<std::monostate>(field.value);
        if (field.kind != design::FieldKind::text && hasValue && describesEngine(field.path)) {
            design.knowledge.try_emplace(field.path, design::Known{.rule = "default"});
        }
    }
    design.knowledge = design::settledKnowledge(design);
}

class Drafting {
  public:
    Drafting(const Brief& brief, const Options& options, Monitor& monitor)
        : brief_(brief), options_(options), monitor_(monitor) {
        if (!brief_.charging) {
            brief_.charging = options.charging;
        }
    }

    Result<Draft> run() {
        // The first pass tells the load on the roller, the second is as wide as that asks for; the
        // others move what the limits ask for, as far as the rules go.
        Tuning tuning;
        for (int pass = 0; pass < mostPasses; ++pass) {
            PartOfWork part(monitor_, 0.8 * pass / mostPasses, 0.8 * (pass + 1) / mostPasses);
            if (const auto problems = makePass(tuning, part); !problems.empty()) {
                return problems;
            }
            Tuning next = tuned(tuning, draft_->solution);
            if (pass == 0) {
                next.rollerWidth = widthForStress(draft_->design, draft_->solution);
            }
            if (next == tuning) {
                break;
            }
            tuning = next;
        }
        if (const auto problems = trim(tuning); !problems.empty()) {
            return problems;
        }
        noteOrigins(brief_, draft_->steps, draft_->design);
        // As its file says it, to the last digit; reading keeps every rule.
        auto filed = design::readDesign(design::writeDesign(draft_->design));
        if (!filed) {
            return filed.problems();
        }
        draft_->design = std::move(filed).value();
        draft_->solution.design = draft_->design;
        PartOfWork last(monitor_, 0.8, 1.0);
        const auto curve = speedCurve(brief_, draft_->design, last);
        if (!curve) {
            return Problem{"", LW_TEXT("cancelled")};
        }
        draft_->comparisons = compare(brief_, draft_->design, draft_->solution, *curve, powerNote_);
        draft_->exceeded = exceeded(brief_, draft_->solution);
        draft_->charging = brief_.charging;
        findNearestDuty();
        return std::move(*draft_);
    }

  private:
    /// Gives back width that the last passes left over, where every limit stays as it is.
    Problems trim(Tuning& tuning) {
        tuning_ = tuning;
        const Tuning next = trimmed(tuning, draft_->solution);
        if (next == tuning) {
            return {};
        }
        const Draft wide = *draft_;
        SilentMonitor silent;
        if (auto problems = makePass(next, silent); !problems.empty()) {
            return problems;
        }
        if (exceeded(brief_, draft_->solution).size() > exceeded(brief_, wide.solution).size()) {
            draft_ = wide;
        } else {
            tuning_ = next;
        }
        return {};
    }

    Problems makePass(const Tuning& tuning, Monitor& monitor) {
        Notebook notes(options_.own);
        const Size size = sizeOf(brief_, options_.lobes, tuning, notes);
        design::Design design = build(brief_, size, tuning, notes);
        if (Problems problems = design::validateEngine(design); !problems.empty()) {
            return problems;
        }
        if (size.power && !notes.isOwn("supply-pressure") && !brief_.supplyPressure) {
            PartOfWork search(monitor, 0.0, 0.9);
            if (auto problem = fitSupply(*size.power, search, notes, design)) {
                return {*problem};
            }
        }
        PartOfWork last(monitor, 0.9, 1.0);
        auto solved = solution::solve(design, last);
        if (!solved) {
            return solved.problems();
        }
        if (!notes.isOwn("roller-width")) {
            const double stress = std::max(valueOf(*solved, "peak_contact_pressure_inlet_MPa"),
                                           valueOf(*solved, "peak_contact_pressure_exhaust_MPa"));
            notes.revise("roller-width", design.mechanism.roller.width / millimetre,
                         {LW_TEXT("nominal contact stress %1 at the rated point"),
                          amountIn(in::MPa, stress)});
        }
        draft_ = Draft{std::move(design), std::move(solved).value(), notes.steps(), {}, {}, {}, {}};
        return {};
    }

    /// The supply pressure that gives the power, or the nearest; a problem: cancelled.
    std::optional<Problem> fitSupply(double power, Monitor& monitor, Notebook& notes,
                                     design::Design& design) {
        const Span range = supplyRange(brief_.charging);
        const study::Goal goal{"brake_power_kW", power / kilowatt, supplyPath, range.low / bar,
                               range.high / bar};
        const auto answer = study::solveFor(design, goal, monitor);
        if (!answer) {
            const bool isCancelled = answer.problems().front().path.empty();
            powerNote_ = isCancelled ? Message() : answer.problems().front().message;
            return isCancelled ? std::optional(answer.problems().front()) : std::nullopt;
        }
        const bool isReached = !answer->solutions.empty();
        const study::Trial best = answer->nearest;
        powerNote_ =
            isReached
                ? Message()
                : Message(LW_TEXT("between %1 and %2 of supply pressure the nearest is %3 at "
                                  "%4"),
                          amountIn(in::bar, goal.from, 3).bare(), amountIn(in::bar, goal.to, 3),
                          amountIn(in::kW, best.result), amountIn(in::bar, best.input, 3));
        design = study::withGoal(design, goal, best.input);
        notes.revise(
            "supply-pressure", best.input,
            isReached ? Message(LW_TEXT("brake power %1 at the rated speed"), Amount(power, in::kW))
                      : powerNote_);
        return std::nullopt;
    }

    /// By halving: how much power an engine has that keeps the limits on its size.
    void findNearestDuty() {
        const bool isTooLarge = std::ranges::any_of(draft_->comparisons, [](const auto& row) {
            return row.isLimit && !row.why.empty() && row.unit == "mm";
        });
        if (!isTooLarge || !brief_.power) {
            return;
        }
        double low = 1e-3 * brief_.power->value, high = brief_.power->value;
        const auto fits = [&](double power) {
            Brief smaller = brief_;
            smaller.power->value = power;
            Notebook notes(options_.own);
            const Size size = sizeOf(smaller, options_.lobes, tuning_, notes);
            Tuning scaled = tuning_;
            scaled.rollerWidth =
                draft_->design.mechanism.roller.width * size.bore / draft_->design.mechanism.bore;
            return keepsSize(smaller, build(smaller, size, scaled, notes));
        };
        if (!fits(low)) {
            return;
        }
        for (int i = 0; i < 30; ++i) {
            const double middle = 0.5 * (low + high);
            (fits(middle) ? low : high) = middle;
        }
        draft_->nearestPower = low;
    }

    static constexpr int mostPasses = 24;

    Brief brief_;
    const Options& options_;
    Monitor& monitor_;
    Tuning tuning_;              ///< of the last pass
    std::optional<Draft> draft_; ///< of the last pass
    Message powerNote_;
};

} // namespace

Result<Draft> draft(const Brief& brief, const Options& options, Monitor& monitor) {
    return Drafting(brief, options, monitor).run();
}

std::vector<Options> candidates(const Brief& brief) {
    using study::Charging;
    const std::vector<int> lobes = brief.lobes ? std::vector{*brief.lobes} : std::vector{1, 2, 3};
    const bool isOpen = !brief.charging && !brief.supplyPressure;
    std::vector<Options> all;
    for (const int number : lobes) {
        if (isOpen) {
            all.push_back({number, Charging::naturallyAspirated, {}});
            all.push_back({number, Charging::boosted, {}});
        } else {
            all.push_back({number, brief.charging, {}});
        }
    }
    return all;
}

std::string describe(const Draft& draft) {
    std::string text;
    const auto line = [&text](const std::string& row) { text += row + "\n"; };
    static constexpr const char* origins[] = {"given", "measured", "derived", "assumed", "chosen"};
    for (const Step& step : draft.steps) {
        const bool hasRange = step.span.low < step.span.high;
        line(fmt::format("{:<9} {:<40} {:>10.5g} {:<7} {}", origins[static_cast<int>(step.origin)],
                         step.label.text, step.span.value, step.unit,
                         hasRange ? fmt::format("{:.4g} ... {:.4g}", step.span.low, step.span.high)
                                  : std::string()));
        if (step.rule) {
            line(fmt::format("          {}: {}{}{} [{}]", step.rule->id, step.rule->formula.text,
                             step.working.empty() ? "" : "; ", step.working.english(),
                             step.rule->source.text));
        }
    }
    line("");
    for (const Comparison& row : draft.comparisons) {
        line(fmt::format("{:<40} {} {:>10.5g} {:<7} draft {:>10.5g}  {}", row.label.english(),
                         row.isLimit ? "limit" : "given", row.wanted, row.unit, row.reached,
                         row.why.empty() ? "reached" : row.why.english()));
    }
    for (const Exceeded& row : draft.exceeded) {
        std::vector<std::string_view> names;
        for (const TextId label : row.forcedBy) {
            names.emplace_back(label.text);
        }
        line(fmt::format("limit exceeded: {} [follows from {}]", row.message.english(),
                         names.empty() ? "the rules" : fmt::format("{}", fmt::join(names, ", "))));
    }
    if (draft.nearestPower) {
        line(fmt::format("Within the limits on its size the engine has {:.4g} kW",
                         *draft.nearestPower / kilowatt));
    }
    return text;
}

} // namespace lobewright::draft
