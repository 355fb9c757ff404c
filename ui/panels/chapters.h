#pragma once

#include "core/design/fields.h"

#include <QString>

#include <vector>

namespace lobewright::ui {

/// A part of the design as the number panel groups it, under a plain name.
struct Chapter {
    QString key;   ///< kept between runs
    QString title; ///< "Inlet track"
    QString hint;  ///< one line on what is decided here
    /// The same of an engine with one track, empty where they are the same.
    QString oneSidedTitle, oneSidedHint;
    bool opensFirst = false;
    /// Beginnings of the groups that belong here; "=" at the front: exactly that group.
    std::vector<std::string> groups;

    const QString& titleOf(const design::Design& design) const {
        return design.mechanism.isOneSided() && !oneSidedTitle.isEmpty() ? oneSidedTitle : title;
    }
    const QString& hintOf(const design::Design& design) const {
        return design.mechanism.isOneSided() && !oneSidedHint.isEmpty() ? oneSidedHint : hint;
    }
};

/// In the order of the panel; together they hold every field.
const std::vector<Chapter>& chapters();
/// Index of the chapter that a field belongs to; the last one where none claims it.
size_t chapterOf(const design::Field& field);

} // namespace lobewright::ui
