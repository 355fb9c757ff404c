#pragma once

#include "core/design/design.h"
#include "core/editing/change.h"
#include "core/result.h"

#include <optional>
#include <string>

/// Edits whose consequences reach beyond one number, so that the design stays valid: pure
/// functions of the design.
namespace lobewright::editing {

/// The edit for a typed value. A span is given by or taken from the neighbouring segment; another
/// number of lobes stretches the pattern, of both tracks. `label` names the field in the undo step.
Change fieldEdit(const design::Design& design, const std::string& path,
                 const design::FieldValue& value, const Message& label);

/// Why a typed span cannot be given: the neighbour it is taken from has too little. Empty for
/// everything else, which the rules of the design judge.
std::optional<Problem> spanProblem(const design::Design& design, const std::string& path,
                                   const design::FieldValue& value);

/// What can be done to a row of a list of the design.
enum class RowChange { split, addDwell, addBelow, remove, moveUp, moveDown };

/// Whether the path is a list whose rows can be added and removed, e.g. "/ports/inlet".
bool isRowList(const std::string& listPath);
/// The edit, or nothing where it makes no sense for that row.
std::optional<Change> rowEdit(const design::Design& design, const std::string& listPath, int index,
                              RowChange change);

/// How a track is described.
enum class TrackShape { segments, knots, harmonics };
TrackShape shapeOf(const motion::Pattern& pattern);
/// The same lift as nearly as the other description can say it.
std::optional<Change> shapeEdit(const design::Design& design, End end, TrackShape shape);

} // namespace lobewright::editing
