#pragma once

#include "core/design/fields.h"
#include "core/text/message.h"

#include <optional>
#include <string>
#include <vector>

namespace lobewright::editing {

/// One value of the design to be changed, named by its path in the design file.
struct FieldChange {
    std::string path;
    design::FieldValue value; ///< in the unit of the file
};

/// What an edit makes of a design.
struct Change {
    Message text;                    ///< name of the undo step, e.g. "Move knot 2 (inlet track)"
    std::vector<FieldChange> fields; ///< changed together, in this order
    /// For edits of structure (rows added, removed, reordered): the whole design as it shall be;
    /// `fields` is then empty.
    std::optional<design::Design> replacement = std::nullopt;
    /// The same, not empty, for the moves of one drag.
    std::string mergeKey = {};
};

} // namespace lobewright::editing
