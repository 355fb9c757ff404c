#pragma once

#include "core/design/design.h"
#include "core/mechanism/opposed_pair.h"
#include "core/ports/events.h"
#include "core/solution/solution.h"

#include <memory>
#include <optional>
#include <string_view>

/// What the window hands to its views. A view (plot, section, unrolled track, panel) has
///   void showSolution(const SolutionPointer&)   the finished solution of the current design
///   void showBaseline(const SolutionPointer&)   drawn behind in a lighter tone; null: none
///   void showGeometry(const GeometryPointer&)   optional: motion and ports at once in a drag
/// and, where it has handles, the signals edited(const Edit&) and editFinished().
namespace lobewright::ui {

using SolutionPointer = std::shared_ptr<const solution::Solution>;

/// The quick stages of a design that is being dragged, shown before its gas cycle is solved.
struct Geometry {
    design::Design design;
    mechanism::OpposedPair pair;
    ports::PortTiming timing;
};
using GeometryPointer = std::shared_ptr<const Geometry>;

inline GeometryPointer geometryOf(const solution::Solution& solution) {
    return std::make_shared<const Geometry>(
        Geometry{solution.design, solution.pair, solution.timing});
}

/// Of the figure of this name; absent where there is no solution, no such figure or no value.
inline std::optional<double> figureValue(const SolutionPointer& solution, std::string_view name) {
    const auto* figure = solution ? solution->figure(name) : nullptr;
    return figure ? figure->value : std::nullopt;
}

} // namespace lobewright::ui
