#pragma once

#include "core/design/design.h"
#include "core/result.h"

#include <QByteArray>
#include <QString>

#include <optional>

class QWidget;

namespace lobewright::ui {

/// A design as it was read, with the digest (FileWatch) of its file.
struct LoadedDesign {
    Result<design::Design> design;
    QByteArray digest;
};

/// Reads a file on a thread of its own, so that the window keeps painting; what takes longer than a
/// moment shows that, and can be cancelled. Nothing: it was.
std::optional<LoadedDesign> loadDesign(QWidget* window, const QString& file);

} // namespace lobewright::ui
