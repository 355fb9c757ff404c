#pragma once

#include "ui/scene/base/turn_view.h"

#include <QDir>
#include <QSize>

#include <functional>
#include <optional>

namespace lobewright::ui {

/// A drawing as numbered pictures over one turn, ready to be joined into a loop.
struct FrameExport {
    QDir folder;           ///< must exist
    QString stem;          ///< "section" gives section-0001.png …
    int frames = 120;      ///< evenly over one turn, ≥ 1; the last joins the first
    QSize size{1280, 720}; ///< [px], of the pictures
    /// Of picture 0 … frames − 1.
    QString file(int picture) const;
};

/// Writes the frames of a view. `step` is told how many are done and returns false to stop.
/// Cursor, size and appearance of the view are as before afterwards. Returns what went wrong,
/// nothing if all frames were written; after stopping or an error no picture of this run is left.
std::optional<QString> exportFrames(TurnView& view, TurnCursor& cursor, const FrameExport& wanted,
                                    const std::function<bool(int)>& step);

} // namespace lobewright::ui
