#pragma once

#include "core/samples.h"
#include "core/solution/solution.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// How a figure came about, shown so that anybody can follow it with a calculator.
namespace lobewright::solution {

/// One input of a working.
struct Operand {
    enum class Kind {
        figure,    ///< of the summary; `name` is its name, and it may have a working of its own
        field,     ///< of the design; `name` is its path
        channel,   ///< a column of channels.csv over the turn; `name` is its name
        reading,   ///< a value at an angle, from the column `name` where that is not empty
        constant,  ///< of physics or of a table; `note` names the source
        condition, ///< no number: the formula holds only where `note` says
        inner      ///< a sum that no table shows; `note` says what is summed
    };
    Kind kind = Kind::inner;
    std::string symbol = {}; ///< as in the formula, "V_min"
    Message label;           ///< "Smallest chamber volume"
    std::string unit;        ///< "cm³"
    Samples values;          ///< shape (1); channels: (samples)
    std::string name = {};
    Message note = {};
    std::optional<double> angle = {}; ///< shaft angle of a reading [rad]
};

struct Working {
    std::string figure;       ///< name in the summary
    std::string symbol;       ///< of the figure, "ε"
    std::string formula = {}; ///< right-hand side in symbols, as solution::evaluate() reads it
    std::vector<Operand> operands = {};
    std::string unit;   ///< of the figure and of the formula's value
    double value = 0.0; ///< the figure
    Message source;     ///< book, standard, or "definition"
    Message note = {};  ///< what to know, may be empty
    /// How near the formula comes to the figure, relative: rounding where it is closed, the step
    /// of the samples where it sums or searches columns.
    double tolerance = 1e-9;
    /// The same for figures that are differences of nearly equal ones, in their own unit.
    double absolute = 0.0;
    int digits = 6; ///< of the numbers that stand in the formula; more where they nearly cancel

    bool isClosed() const { return tolerance <= 1e-9; }
    /// Whether what the formula gives is as near as promised; it may not be where a design moves
    /// too sharply for the step of the columns.
    bool isNear(double worked) const;
};

/// The working of a figure of this solution; absent where none is known, where the figure has no
/// value, or where this design is outside the formula.
std::optional<Working> working(const Solution& solution, std::string_view figure);

/// The formula with the numbers put in, in symbols where arrays stand: "198.2/18.5".
std::string withNumbers(const Working& working);

/// The value of the formula for these operands. Error: see evaluate().
Result<double> evaluate(const Working& working);

} // namespace lobewright::solution
