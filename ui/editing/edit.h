#pragma once

#include "core/editing/change.h"

#include <QMetaType>
#include <QString>

#include <optional>
#include <string>
#include <vector>

namespace lobewright::ui {

using editing::FieldChange;

/// What a view asks for when a person moves a handle or types a number. Views emit
/// `edited(const Edit&)`; only the document writes the design, as one undo step per edit.
struct Edit {
    Edit() = default;
    Edit(QString name, std::vector<FieldChange> fields, std::optional<design::Design> design = {},
         QString key = {})
        : text(std::move(name)), changes(std::move(fields)), replacement(std::move(design)),
          mergeKey(std::move(key)) {}
    Edit(editing::Change change); // NOLINT: a change of the design is an edit

    QString text;                     ///< name of the undo step, e.g. "Move inlet port edge"
    std::vector<FieldChange> changes; ///< applied together, in this order
    /// For edits of structure (rows added, removed, reordered): the whole design as it shall be,
    /// but for the snapshots, which stay; `changes` is then empty.
    std::optional<design::Design> replacement;
    /// Same non-empty key in successive edits: one undo step, until a view emits
    /// `editFinished()` (button released). Empty: a step of its own.
    QString mergeKey;
    /// The list of snapshots as it shall be; none: it stays.
    std::optional<std::vector<design::Snapshot>> snapshots = std::nullopt;
    /// Origins and ranges as they shall be; none: they stay, widened to hold the new values.
    std::optional<design::Knowledge> knowledge = std::nullopt;
};

} // namespace lobewright::ui

Q_DECLARE_METATYPE(lobewright::ui::Edit)
