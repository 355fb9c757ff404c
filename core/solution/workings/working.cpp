#include "core/solution/workings/working.h"

#include "core/design/fields.h"
#include "core/design/gas_settings.h"
#include "core/solution/missing_piston.h"
#include "core/solution/workings/expression.h"
#include "core/solution/workings/working_recipes.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <cassert>
#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::solution {

namespace {

/// What a mark in a row stands for.
struct Mark {
    std::string_view text;
    std::vector<std::string_view> words;
};

const std::vector<Mark>& marks() {
    static const std::vector<Mark> all = {
        {"{side}", {"inlet", "exhaust"}},
        {"{event}",
         {"inner_dead_centre", "outer_dead_centre", "exhaust_opens", "inlet_opens", "inlet_closes",
          "exhaust_closes"}},
        {"{span}", {"blowdown", "overlap", "after_charge", "inlet_open", "exhaust_open"}},
        {"{highest}", {"lift_off_speed", "contact_speed_high"}},
        {"{loss}", {"ring", "guide", "roller", "slip", "shaft_bearing"}}};
    return all;
}

std::string filled(std::string_view text, std::string_view mark, std::string_view word) {
    std::string result(text);
    for (std::size_t at = result.find(mark); !mark.empty() && at != std::string::npos;
         at = result.find(mark, at)) {
        result.replace(at, mark.size(), word);
    }
    return result;
}

/// The mark and the word for it that make the row that of the figure; absent: it is another's.
std::optional<std::pair<std::string_view, std::string_view>> wordFor(const Recipe& recipe,
                                                                     const Figure& figure) {
    if (recipe.figure == figure.name) {
        return std::pair<std::string_view, std::string_view>();
    }
    for (const Mark& mark : marks()) {
        for (const std::string_view word : mark.words) {
            if (recipe.figure.find(mark.text) != std::string_view::npos &&
                filled(recipe.figure, mark.text, word) == figure.name) {
                return std::pair(mark.text, word);
            }
        }
    }
    return std::nullopt;
}

/// What a symbol stands for where a row names it alone.
std::string_view usualMeaning(std::string_view symbol) {
    static constexpr std::pair<std::string_view, std::string_view> all[] = {
        {"θ", "channel:shaft_angle_deg"},
        {"n", "field:/running/speed_rpm"},
        {"c", "figure:cycles_per_turn"},
        {"z", "field:/mechanism/cylinders"},
        {"D", "field:/mechanism/bore_mm"},
        {"V_s", "figure:swept_volume_cm3"},
        {"V_d", "figure:displacement_cm3"},
        {"T_a", "field:/gas/supply/ambient_temperature_K"},
        {"B", "figure:air_flow_kg_per_h"},
        {"Q", "figure:fuel_heat_J"},
        {"E_t", "field:/materials/track/elastic_modulus_GPa"},
        {"E_r", "field:/materials/roller/elastic_modulus_GPa"},
        {"ν_t", "field:/materials/track/poisson_ratio"},
        {"ν_r", "field:/materials/roller/poisson_ratio"},
        {"alike", "value:cylinders_alike"},
        {"one", "value:single_cycle"}};
    const auto* found = std::ranges::find(all, symbol, [](const auto& one) { return one.first; });
    assert(found != std::end(all));
    return found->second;
}

std::optional<Operand> operand(const Solution& solution, std::string_view symbol,
                               std::string_view kind, std::string_view name) {
    auto found = kind == "field"     ? fieldOperand(solution, name)
                 : kind == "figure"  ? figureOperand(solution, name)
                 : kind == "channel" ? channelOperand(solution, name)
                                     : innerValue(solution, name);
    if (!found && kind == "figure" && isOfMissingPiston(solution, name)) {
        found = constant(LW_TEXT("Head in the place of an exhaust piston"), "", 0.0,
                         LW_TEXT("stands still"));
    }
    if (found) {
        found->symbol = symbol;
    }
    return found;
}

/// "z M=value:loss_ring …"; absent where one of them has no value here.
std::optional<std::vector<Operand>> operands(const Solution& solution, const std::string& list) {
    std::vector<Operand> all;
    std::size_t from = 0;
    while (from < list.size()) {
        const std::size_t to = std::min(list.find(' ', from), list.size());
        const std::string_view entry = std::string_view(list).substr(from, to - from);
        const std::size_t equals = entry.find('=');
        const std::string_view symbol = entry.substr(0, equals);
        const std::string_view meaning =
            equals == std::string_view::npos ? usualMeaning(symbol) : entry.substr(equals + 1);
        const std::size_t colon = meaning.find(':');
        auto found = operand(solution, symbol, meaning.substr(0, colon), meaning.substr(colon + 1));
        if (!found) {
            return std::nullopt;
        }
        all.push_back(std::move(*found));
        from = to + 1;
    }
    return all;
}

std::optional<Working> made(const Solution& solution, const Figure& figure, const Recipe& recipe) {
    const auto word = wordFor(recipe, figure);
    if (!word) {
        return std::nullopt;
    }
    auto inputs = operands(solution, filled(recipe.operands, word->first, word->second));
    if (!inputs) {
        return std::nullopt;
    }
    return Working{.figure = figure.name,
                   .symbol = std::string(recipe.symbol),
                   .formula = std::string(recipe.formula),
                   .operands = std::move(*inputs),
                   .unit = figure.symbolOfUnit(),
                   .value = *figure.value,
                   .source = recipe.source,
                   .note = recipe.note,
                   .tolerance = recipe.tolerance,
                   .absolute = recipe.absolute,
                   .digits = recipe.digits};
}

std::optional<Working> fromTable(const Solution& solution, const Figure& figure) {
    for (const auto& table :
         {geometryRecipes(), timingRecipes(), performanceRecipes(), supplyRecipes(),
          energyRecipes(), loadRecipes(), contactRecipes(), crownRecipes(), balanceRecipes()}) {
        for (const Recipe& recipe : table) {
            auto working = made(solution, figure, recipe);
            if (working && evaluate(*working)) { // no division by what is zero here
                return working;
            }
        }
    }
    return std::nullopt;
}

bool isScalar(const Operand& operand) {
    return operand.values.size() == 1;
}

std::string numberText(double value, int digits) {
    std::string text = fmt::format("{:.{}g}", value, digits);
    return value < 0.0 ? "(" + text + ")" : text;
}

const Operand* find(const Working& working, std::string_view symbol) {
    const auto found = std::ranges::find(working.operands, symbol, &Operand::symbol);
    return found == working.operands.end() ? nullptr : &*found;
}

/// A sign as it is printed; binary plus and minus stand between blanks.
std::string signText(const std::string& sign, bool isBinary) {
    if (sign == "+" || sign == "-") {
        const std::string shown = sign == "-" ? "−" : "+";
        return isBinary ? " " + shown + " " : shown;
    }
    return sign == "*" ? "·" : sign == "," ? ", " : sign;
}

} // namespace

std::optional<Operand> fieldOperand(const Solution& solution, std::string_view path) {
    design::Design run = solution.design;
    run.gas = design::gasSettings(run); // as the load sets it
    const auto field = design::findField(run, path);
    if (!field) {
        return std::nullopt;
    }
    double value = 0.0;
    if (const double* number = std::get_if<double>(&field->value)) {
        value = *number;
    } else if (const int* whole = std::get_if<int>(&field->value)) {
        value = *whole;
    } else if (const bool* is = std::get_if<bool>(&field->value)) {
        value = *is ? 1.0 : 0.0;
    } else {
        return std::nullopt;
    }
    return Operand{.kind = Operand::Kind::field,
                   .label = field->label,
                   .unit = field->unit,
                   .values = Samples::Constant(1, value),
                   .name = field->path};
}

Operand inner(Message label, std::string unit, double number, Message note) {
    return {.kind = Operand::Kind::inner,
            .label = std::move(label),
            .unit = std::move(unit),
            .values = Samples::Constant(1, number),
            .note = std::move(note)};
}

Operand constant(Message label, std::string unit, double number, Message note) {
    Operand operand = inner(std::move(label), std::move(unit), number, std::move(note));
    operand.kind = Operand::Kind::constant;
    return operand;
}

Operand reading(Message label, std::string unit, double number, double theta, Message note,
                std::string channel) {
    Operand operand = inner(std::move(label), std::move(unit), number, std::move(note));
    operand.kind = Operand::Kind::reading;
    operand.name = std::move(channel);
    operand.angle = theta;
    return operand;
}

Operand angleReading(Message label, double theta, Message note) {
    return reading(std::move(label), "shaft °", theta / units::degree, theta, std::move(note));
}

std::optional<Operand> condition(bool holds, const Message& where) {
    if (!holds) {
        return std::nullopt;
    }
    return Operand{.kind = Operand::Kind::condition,
                   .label = LW_TEXT("Holds for"),
                   .unit = {},
                   .values = Samples::Constant(1, 1.0),
                   .note = where};
}

std::optional<Operand> figureOperand(const Solution& solution, std::string_view name) {
    const Figure* figure = solution.figure(name);
    if (figure == nullptr || !figure->value) {
        return std::nullopt;
    }
    return Operand{.kind = Operand::Kind::figure,
                   .label = figure->label,
                   .unit = figure->symbolOfUnit(),
                   .values = Samples::Constant(1, *figure->value),
                   .name = figure->name};
}

std::optional<Operand> channelOperand(const Solution& solution, std::string_view name) {
    const Channel* channel = solution.channel(name);
    if (channel == nullptr) {
        return std::nullopt;
    }
    return Operand{.kind = Operand::Kind::channel,
                   .label = channel->label,
                   .unit = channel->symbolOfUnit(),
                   .values = channel->values,
                   .name = channel->name};
}

std::optional<Operand> readingOperand(const Solution& solution, std::string_view channel,
                                      double theta) {
    auto operand = channelOperand(solution, channel);
    const Samples& angles = solution.theta;
    if (!operand || angles.size() < 2) {
        return std::nullopt;
    }
    const double at = theta - units::turn * std::floor(theta / units::turn);
    const auto next = std::upper_bound(angles.begin(), angles.end() - 1, at);
    const Eigen::Index i = std::max<Eigen::Index>(1, next - angles.begin());
    const double share = (at - angles[i - 1]) / (angles[i] - angles[i - 1]);
    const double value = operand->values[i - 1] * (1.0 - share) + operand->values[i] * share;
    if (!std::isfinite(value)) {
        return std::nullopt;
    }
    operand->kind = Operand::Kind::reading;
    operand->values = Samples::Constant(1, value);
    operand->angle = at;
    return operand;
}

std::optional<Operand> innerValue(const Solution& solution, std::string_view name) {
    for (const auto& look :
         {geometryValue, gasValue, supplyValue, energyValue, loadValue, balanceValue, crownValue}) {
        if (auto found = look(solution, name)) {
            return found;
        }
    }
    return std::nullopt;
}

std::optional<Working> working(const Solution& solution, std::string_view name) {
    const Figure* figure = solution.figure(name);
    if (figure == nullptr || !figure->value) {
        return std::nullopt;
    }
    if (auto found = fromTable(solution, *figure)) {
        return found;
    }
    for (const auto& make : {portAreaWorking, orderWorking, cyclesWorking, firingWorking}) {
        if (auto found = make(solution, *figure)) {
            return found;
        }
    }
    return std::nullopt;
}

std::string withNumbers(const Working& working) {
    const auto list = pieces(working.formula);
    std::string text;
    bool afterValue = false;
    for (const FormulaPiece& piece : list ? *list : std::vector<FormulaPiece>()) {
        if (piece.kind == FormulaPiece::Kind::sign) {
            text += signText(piece.text, afterValue);
            afterValue = piece.text == ")" || piece.text == "²" || piece.text == "³";
            continue;
        }
        const Operand* input =
            piece.kind == FormulaPiece::Kind::symbol ? find(working, piece.text) : nullptr;
        text += input != nullptr && isScalar(*input) ? numberText(input->values[0], working.digits)
                                                     : piece.text;
        afterValue = piece.kind != FormulaPiece::Kind::function;
    }
    return text;
}

bool Working::isNear(double worked) const {
    const double off =
        formula.starts_with("wrap") ? std::remainder(worked - value, 360.0) : worked - value;
    return std::abs(off) <= tolerance * std::abs(value) + absolute;
}

Result<double> evaluate(const Working& working) {
    return evaluate(working.formula, [&](std::string_view symbol) -> std::optional<Quantity> {
        const Operand* input = find(working, symbol);
        return input != nullptr ? std::optional(input->values) : std::nullopt;
    });
}

} // namespace lobewright::solution
