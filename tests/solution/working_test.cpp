#include "core/design/fields.h"
#include "core/design/file.h"
#include "core/solution/workings/expression.h"
#include "core/solution/workings/working.h"
#include "core/units.h"
#include "tests/places.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

#include <cmath>
#include <filesystem>
#include <map>
#include <set>

namespace lobewright::solution {
namespace {

namespace fs = std::filesystem;

/// Every sample of the program, as it is and with an adjuster that turns and shifts, solved once.
const std::map<std::string, Solution>& solved() {
    static const auto all = [] {
        std::map<std::string, Solution> list;
        SilentMonitor monitor;
        for (const auto& entry :
             fs::directory_iterator(fs::path(test::sourceFolder()) / "samples")) {
            if (!entry.path().string().ends_with(".lobewright.json")) {
                continue;
            }
            const std::string name = entry.path().stem().stem().string();
            const auto design = design::loadDesign(entry.path());
            list.emplace(name, *solve(*design, monitor));
            if (name == "biogas-pump-set") {
                auto changed = *design;
                changed.mechanism.adjuster = {0.03, 4.0 * units::degree, 0.0004};
                changed.running.inertia = 0.8;
                changed.rollerBearing = {45e3, 60e3};
                changed.friction.auxiliaryPower = 150.0;
                list.emplace("adjusted", *solve(changed, monitor));
                changed.running.motored = true;
                list.emplace("motored", *solve(changed, monitor));
                changed = *design;
                changed.gas.fuel = gas::Fuel::petrol;
                changed.gas.burn.bestTorque = true;
                changed.mechanism.closedTrack = true;
                changed.mechanism.roller.crownRadius = 1.0;
                list.emplace("petrol, best torque, crowned", *solve(changed, monitor));
                changed = *design;
                changed.mechanism.cylinderAngles = {0.0, 100.0 * units::degree,
                                                    190.0 * units::degree};
                changed.gas.wallHeat.model = gas::WallHeatModel::none;
                list.emplace("uneven, no wall heat", *solve(changed, monitor));
            }
            if (name == "sketched-lobes-blown") {
                auto changed = *design;
                changed.mechanism.cylinderAngles = {0.0, 50.0 * units::degree,
                                                    100.0 * units::degree, 200.0 * units::degree};
                list.emplace("uneven, blown", *solve(changed, monitor));
            }
        }
        return list;
    }();
    return all;
}

TEST(Working, GivesTheFigureShownOnEverySample) {
    for (const auto& [name, solution] : solved()) {
        for (const Figure& figure : solution.figures) {
            const auto shown = working(solution, figure.name);
            if (!shown) {
                continue;
            }
            const auto value = evaluate(*shown);
            if (!value) {
                ADD_FAILURE() << name << " " << figure.name << " " << shown->formula << ": "
                              << value.problems().front().message.english();
                continue;
            }
            EXPECT_TRUE(shown->isNear(*value))
                << name << " " << figure.name << " = " << *figure.value << ", " << shown->formula
                << " = " << *value;
        }
    }
}

// What stands on the screen: the formula with the numbers as printed in place of the symbols.
TEST(Working, GivesTheFourDigitsOfTheFigureFromTheNumbersAsPrinted) {
    for (const auto& [name, solution] : solved()) {
        for (const Figure& figure : solution.figures) {
            const auto shown = working(solution, figure.name);
            if (!shown || !shown->isClosed() || shown->absolute > 0.0) {
                continue;
            }
            const std::string printed = withNumbers(*shown);
            const auto value =
                evaluate(printed, [&](std::string_view symbol) -> std::optional<Quantity> {
                    for (const Operand& operand : shown->operands) {
                        if (operand.symbol == symbol && operand.values.size() > 1) {
                            return operand.values;
                        }
                    }
                    return std::nullopt;
                });
            ASSERT_TRUE(value) << name << " " << figure.name << ": " << printed;
            EXPECT_NEAR(*value, *figure.value, 5e-5 * std::abs(*figure.value) + 1e-12)
                << name << " " << figure.name << ": " << printed;
        }
    }
}

double figureOf(const Solution& solution, std::string_view name) {
    return *solution.figure(name)->value;
}

/// Every formula works with something other than the figure itself.
TEST(Working, IsThereForEveryFigureThatHasAValue) {
    for (const auto& [name, solution] : solved()) {
        std::string missing;
        for (const Figure& figure : solution.figures) {
            if (figure.value && !working(solution, figure.name)) {
                missing += " " + figure.name;
            }
        }
        EXPECT_EQ(missing, "") << name;
    }
}

TEST(Working, StepsBackToFiguresFieldsAndColumnsThatAreThere) {
    for (const auto& [name, solution] : solved()) {
        for (const Figure& figure : solution.figures) {
            const auto shown = working(solution, figure.name);
            for (const Operand& operand : shown ? shown->operands : std::vector<Operand>()) {
                SCOPED_TRACE(figure.name + " " + operand.symbol);
                EXPECT_FALSE(operand.label.empty());
                switch (operand.kind) {
                case Operand::Kind::figure:
                    EXPECT_NE(solution.figure(operand.name), nullptr);
                    EXPECT_NE(operand.name, figure.name);
                    break;
                case Operand::Kind::field:
                    EXPECT_TRUE(design::findField(solution.design, operand.name));
                    break;
                case Operand::Kind::channel:
                    EXPECT_NE(solution.channel(operand.name), nullptr);
                    break;
                case Operand::Kind::reading:
                    EXPECT_TRUE(operand.angle);
                    break;
                case Operand::Kind::condition:
                    EXPECT_FALSE(operand.note.empty());
                    break;
                case Operand::Kind::constant:
                case Operand::Kind::inner:
                    EXPECT_EQ(operand.values.size(), 1);
                    break;
                }
            }
        }
    }
}

/// Figures that a figure rests on, itself included; empty when it comes back to itself.
bool endsWithoutCircle(const Solution& solution, const std::string& figure,
                       std::set<std::string> above) {
    if (!above.insert(figure).second) {
        return false;
    }
    const auto shown = working(solution, figure);
    for (const Operand& operand : shown ? shown->operands : std::vector<Operand>()) {
        if (operand.kind == Operand::Kind::figure &&
            !endsWithoutCircle(solution, operand.name, above)) {
            return false;
        }
    }
    return true;
}

TEST(Working, NeverComesBackToItself) {
    for (const auto& [name, solution] : solved()) {
        for (const Figure& figure : solution.figures) {
            EXPECT_TRUE(endsWithoutCircle(solution, figure.name, {})) << name << " " << figure.name;
        }
    }
}

TEST(Working, NamesASourceAndUsesEverySymbol) {
    const Solution& solution = solved().at("biogas-pump-set");
    for (const Figure& figure : solution.figures) {
        const auto shown = working(solution, figure.name);
        if (!shown) {
            continue;
        }
        EXPECT_FALSE(shown->source.empty()) << figure.name;
        std::set<std::string> used;
        const auto list = pieces(shown->formula);
        ASSERT_TRUE(list) << figure.name;
        for (const FormulaPiece& piece : *list) {
            used.insert(piece.text);
        }
        for (const Operand& operand : shown->operands) {
            const bool isCondition = operand.kind == solution::Operand::Kind::condition;
            EXPECT_NE(used.contains(operand.symbol), isCondition)
                << figure.name << " " << operand.symbol;
        }
    }
}

// By hand: 58 mm bore, two strokes of 34 mm: π/4·58²·68/1000 = 179.6614 cm³.
TEST(Working, ReadsAsOneWouldWriteIt) {
    const auto shown = working(solved().at("biogas-pump-set"), "swept_volume_cm3");
    ASSERT_TRUE(shown);
    EXPECT_EQ(shown->formula, "π/4·D²·(S_i + S_e)/1000");
    EXPECT_EQ(withNumbers(*shown), "π/4·58²·(34 + 34)/1000");
    EXPECT_NEAR(*evaluate(*shown), 179.6614, 1e-4);
}

// Air at 1.08 bar from 1 bar: what feeds the reservoir is paid by its rise of enthalpy.
TEST(Working, SupplyOfAReservoirIsPaidByTheRiseOfEnthalpy) {
    const Solution& solution = solved().at("biogas-pump-set");
    ASSERT_GT(solution.design.gas.supply.pressure, solution.design.gas.supply.ambientPressure);
    const auto shown = working(solution, "supply_power_kW");
    ASSERT_TRUE(shown);
    EXPECT_EQ(shown->formula, "B·Δh/3600");
    EXPECT_NEAR(*evaluate(*shown), figureOf(solution, "supply_power_kW"),
                1e-9 * figureOf(solution, "supply_power_kW"));
}

TEST(Working, UnknownOrUnavailableFiguresHaveNone) {
    const Solution& solution = solved().at("biogas-pump-set");
    EXPECT_FALSE(working(solution, "no_such_figure"));
    EXPECT_FALSE(working(solution, "roller_life_inlet_h")); // no rating is given
}

} // namespace
} // namespace lobewright::solution
