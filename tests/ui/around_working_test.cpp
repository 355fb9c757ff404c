#include "core/solution/solution.h"
#include "core/solution/workings/expression.h"
#include "tests/ui/desktop_fixture.h"
#include "ui/base/units.h"
#include "ui/document/samples.h"
#include "ui/panels/figures_panel.h"
#include "ui/panels/working_units.h"
#include "ui/panels/working_view.h"

#include <cmath>

using namespace lobewright;
using namespace lobewright::ui;
using namespace lobewright::ui::test;

namespace {

class WorkingUnitsTest : public WindowTest {
  protected:
    ~WorkingUnitsTest() override { Units::instance().setSystem(UnitSystem::metric); }
    QString page(const char* figure) {
        Q_EMIT window_->figures().workingWanted(QString::fromLatin1(figure));
        return window_->working().text();
    }
};

/// The formula with its numbers as they stand on the screen.
Result<double> asPrinted(const solution::Working& working) {
    return solution::evaluate(solution::withNumbers(working),
                              [&](std::string_view symbol) -> std::optional<solution::Quantity> {
                                  for (const auto& operand : working.operands) {
                                      if (operand.symbol == symbol && operand.values.size() > 1)
                                          return operand.values;
                                  }
                                  return std::nullopt;
                              });
}

} // namespace

TEST_F(WorkingUnitsTest, NumbersShownGiveTheFigureShownInTheUnitsShown) {
    int converted = 0, metric = 0;
    for (const Sample& sample : samples()) {
        SilentMonitor monitor;
        const auto solution = solution::solve(*loadSample(sample), monitor);
        ASSERT_TRUE(solution);
        for (const UnitSystem system : {UnitSystem::metric, UnitSystem::inch}) {
            Units::instance().setSystem(system);
            for (const auto& figure : solution->figures) {
                const auto working = solution::working(*solution, figure.name);
                if (!working)
                    continue;
                const ui::Unit unit = unitFor(*figure.unit);
                const ShownWorking shown = inDisplayedUnits(*working);
                const auto value = asPrinted(shown.working);
                ASSERT_TRUE(value) << figure.name << ": " << solution::withNumbers(shown.working);
                const double near =
                    working->tolerance * std::abs(*figure.value) + working->absolute;
                const double allowed = shown.isMetric ? near : std::abs(unit.difference(near));
                const double rounded = 5e-5 * std::abs(shown.working.value) + 1e-12;
                const double off = shown.working.formula.starts_with("wrap")
                                       ? std::remainder(*value - shown.working.value, 360.0)
                                       : *value - shown.working.value;
                EXPECT_LE(std::abs(off), allowed + rounded)
                    << figure.name << ": " << solution::withNumbers(shown.working) << " = "
                    << shown.working.value;
                // The displayed unit is there, whichever way.
                if (shown.isMetric) {
                    ++metric;
                    EXPECT_EQ(shown.converted.has_value(), !unit.isMetric()) << figure.name;
                    EXPECT_DOUBLE_EQ(shown.working.value, *figure.value);
                } else {
                    converted += system == UnitSystem::inch ? 1 : 0;
                    EXPECT_DOUBLE_EQ(shown.working.value, unit.shown(*figure.value));
                    EXPECT_EQ(shown.working.unit, unit.text.toStdString());
                }
                for (const auto& operand : working->operands) {
                    EXPECT_TRUE(isKnownUnit(QString::fromStdString(operand.unit)))
                        << figure.name << " " << operand.symbol << " " << operand.unit;
                }
            }
        }
    }
    EXPECT_GT(converted, 100);
    EXPECT_GT(metric, 50);
}

// 198.2 cm³ over 18.5 cm³ is the same ratio in cubic inches.
TEST_F(WorkingUnitsTest, FormulaWithoutFactorsShowsInches) {
    EXPECT_TRUE(page("compression_ratio").contains(QStringLiteral("cm³")));
    Units::instance().setSystem(UnitSystem::inch);
    const QString text = page("compression_ratio");
    EXPECT_TRUE(text.contains(QStringLiteral("in³"))) << text.toStdString();
    EXPECT_FALSE(text.contains(QStringLiteral("cm³"))) << text.toStdString();
    EXPECT_FALSE(text.contains(QStringLiteral("metric"))) << text.toStdString();
}

// 58 mm are 2.28346 in, 179.66 cm³ are 10.964 in³.
TEST_F(WorkingUnitsTest, FormulaWithMetricFactorsStaysMetricAndShowsInchesBeside) {
    Units::instance().setSystem(UnitSystem::inch);
    const QString text = page("swept_volume_cm3");
    EXPECT_TRUE(text.contains(QStringLiteral("π/4·58²·(34 + 34)/1000"))) << text.toStdString();
    EXPECT_TRUE(text.contains(QStringLiteral("179.7 cm³ = 10.96 in³"))) << text.toStdString();
    EXPECT_TRUE(text.contains(QStringLiteral("(2.28346 in)"))) << text.toStdString();
    EXPECT_TRUE(text.contains(QStringLiteral("metric"))) << text.toStdString();
}
