#include "core/solution/workings/expression.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace lobewright::solution {
namespace {

const Samples turn = Samples::LinSpaced(721, 0.0, 360.0);

std::optional<Quantity> symbols(std::string_view name) {
    const double degree = std::acos(-1.0) / 180.0;
    if (name == "a")
        return Quantity::Constant(1, 3.0);
    if (name == "V_max")
        return Quantity::Constant(1, 200.0);
    if (name == "η")
        return Quantity::Constant(1, 0.5);
    if (name == "θ")
        return turn;
    if (name == "y")
        return (turn * degree).sin() + 2.0;
    if (name == "gap") {
        Quantity values = turn;
        values[7] = std::numeric_limits<double>::quiet_NaN();
        return values;
    }
    return std::nullopt;
}

struct Case {
    const char* formula;
    double value;
};

class Formula : public ::testing::TestWithParam<Case> {};

TEST_P(Formula, HasTheValueThatArithmeticGives) {
    const auto value = evaluate(GetParam().formula, symbols);
    ASSERT_TRUE(value) << value.problems().front().message.english();
    EXPECT_NEAR(*value, GetParam().value, 1e-12 * std::max(1.0, std::abs(GetParam().value)));
}

INSTANTIATE_TEST_SUITE_P(
    ByHand, Formula,
    ::testing::Values(Case{"1 + 2·3", 7.0}, Case{"(1 + 2)·3", 9.0}, Case{"10 − 4 − 3", 3.0},
                      Case{"2·−3", -6.0}, Case{"−2²", -4.0}, Case{"2^3^2", 512.0},
                      Case{"8/4/2", 1.0}, Case{"a²/9 + a³/27", 2.0}, Case{"V_max/a/η", 400.0 / 3.0},
                      Case{"√(16)", 4.0}, Case{"√(9)²", 9.0}, Case{"2·π", 6.283185307179586},
                      Case{"cos(60)", 0.5}, Case{"sin(30)", 0.5}, Case{"atan(1)", 45.0},
                      Case{"exp(0)", 1.0}, Case{"abs(−4)", 4.0}, Case{"min(3, 1, 2)", 1.0},
                      Case{"max(3, 1, 2)", 3.0}, Case{"mod(−30, 360)", 330.0},
                      Case{"wrap(190)", -170.0}, Case{"wrap(−180)", -180.0}, Case{"1.5e-3·2", 3e-3},
                      // sin x + 2 has its highest and lowest values at 90° and 270°.
                      Case{"max(y)", 3.0}, Case{"min(y)", 1.0}, Case{"max(abs(y − 2))", 1.0},
                      // Trapezia over whole periods of a sine are exact.
                      Case{"∮(y, θ)/360", 2.0}, Case{"∮(1, θ)", 360.0},
                      Case{"∮((y − 2)², θ)/180", 1.0}, Case{"∫(θ, θ, 10, 20)", 150.0},
                      Case{"∫(y, θ, 350, 370) − ∫(y, θ, −10, 10)", 0.0}, Case{"max(gap)", 360.0},
                      Case{"max(∫(θ, θ))", 64800.0}, Case{"min(∫(θ − 180, θ))", -16200.0}));

class BrokenFormula : public ::testing::TestWithParam<const char*> {};

TEST_P(BrokenFormula, IsRefusedWithAReason) {
    const auto value = evaluate(GetParam(), symbols);
    ASSERT_FALSE(value);
    EXPECT_FALSE(value.problems().front().message.english().empty());
}

INSTANTIATE_TEST_SUITE_P(Everywhere, BrokenFormula,
                         ::testing::Values("", "1 +", "(1", "1)", "1 2", "b", "what(1)", "√()",
                                           "mod(1)", "y", "y·2", "1/0", "√(−1)", "∮(y)", "1 # 2",
                                           "∮(a, a)", "∫(y, θ, y, 3)", "∫(1, θ)", "∫(y, θ)",
                                           "max()", ","),
                         [](const auto& text) { return std::to_string(text.index); });

} // namespace
} // namespace lobewright::solution
